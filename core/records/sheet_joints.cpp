#include "sheet_joints.h"
#include "sheet_words.h"

#include <draw/palette.h>
#include <words/job.h>
#include <words/joints.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

constexpr double beside = 6; ///< between a box and its words
constexpr double below = 4;

bool isOfJoint(const Step &step)
{
    return step.kind == StepKind::Loosen || step.kind == StepKind::Tighten;
}

/// The one a line is about, as it is worked; nullptr where it is about none, or about one that is gone.
const Joint *jointOf(const Step &step, const JobState &state)
{
    const bool known = isOfJoint(step) && step.joint && state.joints.contains(*step.joint);
    return known ? &jointInHand(state, *step.joint) : nullptr;
}

QString passesOf(const Joint &joint)
{
    QStringList passes;
    for (std::size_t pass = 0; pass < joint.passes.size(); ++pass)
        passes.append(passName(joint, pass, 0));
    return SheetWords::tr("Passes: %1", "of a joint").arg(passes.join(SheetWords::tr("; ", "between passes")));
}

QString newerLine(const Joint &joint, const Joint &newest)
{
    return SheetWords::tr("This is revision %1, by which the work was begun; there is revision %2.")
        .arg(joint.revision)
        .arg(newest.revision);
}

/// What stands under a line; of a loosening only in which order, since its torque is not the one to tighten to.
QStringList linesOf(const Step &step, const Joint &joint, const JobFrame &frame)
{
    const bool loosen = step.kind == StepKind::Loosen;
    const QString order = SheetWords::tr("Order: %1").arg(loosen ? looseningLine(joint) : orderLine(joint));
    QStringList lines{jointLine(joint)};
    if (const Joint *newest = frame.jointNow(joint.id); newest && newest->revision > joint.revision)
        lines << newerLine(joint, *newest);
    if (!loosen)
        lines << jointSpecLine(joint) << passesOf(joint);
    if (joint.order.size() > 1)
        lines << order;
    return loosen ? lines : lines + jointCautions(joint);
}

double heightOf(const SheetPages &pages, const QStringList &lines)
{
    double height = 0;
    for (const QString &line : lines)
        height += pages.heightOf(line, SheetFont::Body);
    return height;
}

/// The box and the title of a line beside it.
void addTitle(SheetPages &pages, const QStringList &title)
{
    const double height = static_cast<double>(title.size()) * sheetLine(SheetFont::Strong);
    const QRectF line = pages.take(std::max(height, pencilHeight) + below);
    pages.rectangle({line.left(), line.top(), pencilHeight, pencilHeight});
    double y = line.top() + std::max(0.0, (pencilHeight - height) / 2);
    for (const QString &words : title) {
        pages.text({line.left() + pencilHeight + beside, y}, words, SheetFont::Strong, ink(Look::Light).text);
        y += sheetLine(SheetFont::Strong);
    }
}

void addJoint(SheetPages &pages, const Step &step, const Joint &joint, const JobFrame &frame)
{
    const QStringList title = sheetLines(stepTitle(step, frame).trimmed(), SheetFont::Strong, pages.width() - pencilHeight - beside);
    const QStringList lines = linesOf(step, joint, frame);
    if (!pages.hasRoom(pencilHeight + below + heightOf(pages, lines)))
        pages.nextPage();
    addTitle(pages, title);
    for (const QString &line : lines)
        pages.paragraph(line);
    pages.gap(below);
}

} // namespace

void addJoints(SheetPages &pages, const JobState &state)
{
    const JobFrame &frame = *state.frame;
    const QString heading = SheetWords::tr("Fasteners");
    bool first = true;
    for (const Step &step : frame.job.steps) {
        const Joint *joint = jointOf(step, state);
        if (!joint)
            continue;
        if (first) {
            if (!pages.hasRoom(pages.heightOf(heading, SheetFont::Heading) + pencilHeight + below +
                               heightOf(pages, linesOf(step, *joint, frame))))
                pages.nextPage();
            pages.paragraph(heading, SheetFont::Heading);
        }
        first = false;
        addJoint(pages, step, *joint, frame);
    }
    if (!first)
        pages.gap(below);
}

} // namespace asleft
