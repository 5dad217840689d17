#include "sheet_joints.h"

#include <show/joint_words.h>
#include <show/palette.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

class SheetWords {
    Q_DECLARE_TR_FUNCTIONS(SheetWords)
};

constexpr double beside = 6; ///< between a box and its words
constexpr double below = 4;

bool isOfJoint(const Step &step)
{
    return step.kind == StepKind::Loosen || step.kind == StepKind::Tighten;
}

QString passesOf(const Joint &joint)
{
    QStringList passes;
    for (std::size_t pass = 0; pass < joint.passes.size(); ++pass)
        passes.append(passName(joint, pass, 0));
    return SheetWords::tr("Passes: %1", "of a joint").arg(passes.join(SheetWords::tr("; ", "between passes")));
}

/// What stands under a line; of a loosening only in which order, since its torque is not the one to tighten to.
QStringList linesOf(const Step &step, const Joint &joint)
{
    const bool loosen = step.kind == StepKind::Loosen;
    const QString order = loosen ? SheetWords::tr("Loosen in the reverse of: %1", "order").arg(orderLine(joint))
                                 : SheetWords::tr("Order: %1").arg(orderLine(joint));
    QStringList lines{jointLine(joint)};
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

void addJoint(SheetPages &pages, const Step &step, const Joint &joint)
{
    const QStringList title =
        sheetLines(QString::fromStdString(step.title).trimmed(), SheetFont::Strong, pages.width() - pencilHeight - beside);
    const QStringList lines = linesOf(step, joint);
    if (!pages.hasRoom(pencilHeight + below + heightOf(pages, lines)))
        pages.nextPage();
    addTitle(pages, title);
    for (const QString &line : lines)
        pages.paragraph(line);
    pages.gap(below);
}

} // namespace

void addJoints(SheetPages &pages, const JobFrame &frame)
{
    const QString heading = SheetWords::tr("Fasteners");
    bool first = true;
    for (const Step &step : frame.job.steps) {
        const Joint *joint = isOfJoint(step) && step.joint ? frame.jointNow(*step.joint) : nullptr;
        if (!joint)
            continue;
        if (first) {
            if (!pages.hasRoom(pages.heightOf(heading, SheetFont::Heading) + pencilHeight + below + heightOf(pages, linesOf(step, *joint))))
                pages.nextPage();
            pages.paragraph(heading, SheetFont::Heading);
        }
        first = false;
        addJoint(pages, step, *joint);
    }
    if (!first)
        pages.gap(below);
}

} // namespace asleft
