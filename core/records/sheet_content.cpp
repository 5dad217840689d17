#include "sheet_content.h"
#include "sheet_words.h"

#include "sheet_joints.h"
#include "sheet_table.h"

#include <draw/head.h>
#include <words/cautions.h>
#include <words/crank.h>
#include <words/numbers.h>
#include <words/points.h>
#include <words/specs.h>
#include <words/times.h>

#include <QCoreApplication>
#include <QPageSize>
#include <QPainter>

#include <algorithm>
#include <array>
#include <set>

namespace asleft {

namespace {

/// The smallest type on a head, 11 pixels, comes out at 9 points.
constexpr double headScale = 9.0 / 11;
/// Heights a head is drawn in, in pixels; the first in which its points are large enough to be pencilled into.
constexpr std::array<double, 4> headHeights{220, 280, 340, 430};
constexpr double pencilledPoint = 34;
constexpr double leastRound = 430;
constexpr int leastRemarks = 4; // lines
constexpr int mostRemarks = 10;

QString textOf(const std::string &text)
{
    return QString::fromStdString(text).trimmed();
}

QString joined(QStringList parts)
{
    parts.removeAll(QString());
    return parts.join(SheetWords::tr(" · ", "between the parts of a line"));
}

QString engineLine(const Engine &engine)
{
    const EngineText text = describeDesign(engine.design);
    return joined({textOf(engine.name), layoutName(engine.design.layout), cycleName(engine.design.cycle),
                   SheetWords::tr("firing order %1").arg(textOf(text.firingOrder))});
}

SheetPages::Frame frameOf(const JobFrame &frame, Moment printed)
{
    const QString empty = SheetWords::tr("Nothing read before is on this sheet.");
    return {sheetTitle(frame), joined({SheetWords::tr("Bench sheet"), engineLine(frame.engine)}),
            SheetWords::tr("printed %1").arg(momentText(printed)), SheetWords::tr("%1 %2", "two sentences").arg(standingSentence(), empty)};
}

/// A box to write into, with what belongs in it before it. Where it ends.
double addField(SheetPages &pages, QPointF topLeft, const QString &words, double boxWidth)
{
    const double width = sheetWidth(words, SheetFont::Body);
    pages.text(topLeft + QPointF(0, (pencilHeight - sheetLine(SheetFont::Body)) / 2), words, SheetFont::Body, ink(Look::Light).text);
    const QRectF box(topLeft.x() + width + 5, topLeft.y(), boxWidth, pencilHeight);
    pages.rectangle(box);
    return box.right() + 12;
}

struct Field {
    QString words;
    double least; ///< width of its box
};

/// Fields beside each other, as many as a line holds; what is left of the line goes to their boxes, but not to boxes to be ticked.
void addFields(SheetPages &pages, const QList<Field> &fields)
{
    qsizetype first = 0;
    while (first < fields.size()) {
        double used = 0;
        qsizetype count = 0;
        qsizetype growing = 0;
        for (qsizetype at = first; at < fields.size(); ++at) {
            const double wanted = sheetWidth(fields[at].words, SheetFont::Body) + 5 + fields[at].least + 12;
            if (count > 0 && used + wanted - 12 > pages.width())
                break;
            used += wanted;
            growing += fields[at].least > pencilHeight ? 1 : 0;
            ++count;
        }
        const double more = growing > 0 ? std::max(0.0, pages.width() - used + 12) / static_cast<double>(growing) : 0;
        QPointF at = pages.take(pencilHeight + 6).topLeft();
        for (qsizetype field = first; field < first + count; ++field)
            at.setX(addField(pages, at, fields[field].words, fields[field].least + (fields[field].least > pencilHeight ? more : 0)));
        first += count;
    }
}

void addConditions(SheetPages &pages)
{
    addFields(pages, {{SheetWords::tr("Engine cold"), pencilHeight},
                      {SheetWords::tr("hot"), pencilHeight},
                      {SheetWords::tr("temperature"), 70},
                      {SheetWords::tr("hours since it ran"), 60},
                      {SheetWords::tr("Who"), 50},
                      {SheetWords::tr("date"), 60},
                      {SheetWords::tr("meter"), 60},
                      {SheetWords::tr("measured with"), 100}});
    pages.gap(4);
}

/// On paper the castings are only hinted at, so that a pencil shows.
Ink paperInk()
{
    Ink light = ink(Look::Light);
    light.paper = Qt::white;
    light.casting = QColor(0xF6F4EE);
    return light;
}

bool isGood(const HeadPlan &plan)
{
    const bool named =
        std::none_of(plan.pointLabels.begin(), plan.pointLabels.end(), [](const PlacedText &text) { return text.text.isEmpty(); });
    return named && plan.pointDiameter >= pencilledPoint;
}

HeadPlan headPlan(const EngineDesign &design, double width)
{
    for (const double height : headHeights) {
        // A radial engine is round.
        if (design.layout == Layout::Radial && height < leastRound)
            continue;
        HeadPlan plan = planHead(design, {width, height});
        if (isGood(plan) || height == headHeights.back())
            return plan;
    }
    return planHead(design, {width, headHeights.back()});
}

void addHeadDrawing(SheetPages &pages, const EngineDesign &design)
{
    const HeadPlan plan = headPlan(design, pages.width() / headScale);
    const QRectF box = pages.take(plan.size.height() * headScale + 8);
    pages.add([plan, box](QPainter &painter) {
        const Ink ink = paperInk();
        painter.save();
        painter.translate(box.topLeft());
        painter.scale(headScale, headScale);
        paintHead(painter, plan, ink);
        for (qsizetype point = 0; point < plan.points.size(); ++point)
            paintPoint(painter, plan.pointRect(point), PointLook{}, ink);
        painter.restore();
    });
}

/// Those of the valve set and those before the crank is turned, each once.
std::set<Caution> cautionsOf(const Job &job)
{
    std::set<Caution> cautions{Caution::StandsAndChocks, Caution::Neutral, Caution::BatteryOff, Caution::HandsClear};
    for (const Step &step : job.steps) {
        if (step.kind == StepKind::ValveSet)
            cautions.insert(step.cautions.begin(), step.cautions.end());
    }
    return cautions;
}

/// Their names: what each asks for is said where the crank of the job is turned.
void addCautions(SheetPages &pages, const JobFrame &frame)
{
    QStringList names;
    for (const Caution caution : cautionsOf(frame.job))
        names.append(cautionWords(caution).title);
    pages.paragraph(SheetWords::tr("Before the crank is turned: %1", "cautions").arg(joined(names)), SheetFont::Strong);
    if (frame.engine.bleedDown)
        pages.paragraph(SheetWords::tr("Hydraulic tappets: after the last one is set, wait %1 min before the crank is turned.")
                            .arg(static_cast<qlonglong>(frame.engine.bleedDown->count())));
    pages.gap(8);
}

/// Where the manual prints two bands, the one that was not measured in is to be crossed out.
template <typename Bands>
QString unitsOf(const Bands &bands)
{
    const QString first = unitText(bands.first.unit);
    if (!bands.second || bands.second->unit == bands.first.unit)
        return first;
    return SheetWords::tr("%1 / %2", "units to choose from").arg(first, unitText(bands.second->unit));
}

/// What is printed in the boxes of a reading.
void nameUnits(SheetRow &row, const Spec &spec)
{
    row.found = row.left = std::visit([](const auto &bands) { return unitsOf(bands); }, spec.asked);
    if (std::holds_alternative<SpecBand<Angle>>(spec.asked))
        row.left = SheetWords::tr("turned, %1", "in the box of a screw turned on from zero lash; unit").arg(row.left);
}

void addLockNut(SheetPages &pages, const JobFrame &frame)
{
    const Spec *lockNut = frame.specNow(SpecSubject::LockNut);
    if (lockNut)
        pages.paragraph(SheetWords::tr("Lock nut: %1").arg(specLine(*lockNut)), SheetFont::Strong);
    else
        addFields(pages, {{SheetWords::tr("Lock nut torque, not known here; manual and page"), 120}});
    pages.gap(6);
}

SheetRow rowOf(const JobFrame &frame, AdjusterRef adjuster)
{
    SheetRow row;
    row.point = pointShort(frame.engine.design, adjuster);
    row.name = pointName(frame.engine.design, adjuster);
    const Spec *spec = frame.specNow(adjuster);
    if (!spec) {
        row.asked = SheetWords::tr("no spec yet");
        return row;
    }
    const QString band = std::visit([](const auto &bands) { return bandText(bands); }, spec->asked);
    const bool assumed = std::visit([](const auto &bands) { return bands.first.toleranceAssumed; }, spec->asked);
    row.asked = assumed ? SheetWords::tr("%1, tolerance assumed", "band").arg(band) : band;
    row.source = joined({conditionName(spec->condition), sourceText(spec->source)});
    nameUnits(row, *spec);
    return row;
}

SheetRow rowOf(const JobFrame &frame, const PlanPoint &point)
{
    SheetRow row = rowOf(frame, point.adjuster);
    if (point.doubtful())
        row.note = marginText(frame.engine.design, point);
    return row;
}

bool isDeadCentre(CrankEvent event)
{
    return event == CrankEvent::Compression || event == CrankEvent::Overlap;
}

/// How a position is found: from the one before, what to look for, and how the stroke is told.
QStringList howToFind(const EngineDesign &design, const CrankPlan &plan, std::size_t at)
{
    const PlanPosition &position = plan.positions[at];
    QStringList how;
    if (at > 0) {
        const Angle from = plan.positions[at - 1].crank;
        how << travelSentence(design, from, position.crank) << pinionSentence(design, from, position.crank);
    } else {
        how << SheetWords::tr("The normal direction is %1.").arg(rotationName(design.rotation));
    }
    how << findingSentence(design, position);
    if (isDeadCentre(position.place.event))
        how << strokeCheckSentence(design, strokeCheck(design, position.place.cylinder));
    how.removeAll(QString());
    return how;
}

/// What was checked before a position is worked on. A two-stroke has no stroke to mistake.
QString tickWords(const EngineDesign &design, CrankEvent event)
{
    if (!isDeadCentre(event))
        return SheetWords::tr("turned and checked");
    return design.cycle == Cycle::TwoStroke ? SheetWords::tr("turned, mark checked") : SheetWords::tr("turned, mark and stroke checked");
}

SheetTable tableOf(const JobFrame &frame, const CrankPlan &plan, std::size_t at)
{
    const EngineDesign &design = frame.engine.design;
    const QString name = positionName(design, plan.positions[at]);
    SheetTable table;
    table.title = SheetWords::tr("%1.  %2", "number of the position, its name").arg(at + 1).arg(name);
    table.goesOn = SheetWords::tr("%1, continued").arg(table.title);
    table.how = howToFind(design, plan, at);
    table.tick = tickWords(design, plan.positions[at].place.event);
    for (const PlanPoint &point : plan.positions[at].points)
        table.rows.push_back(rowOf(frame, point));
    return table;
}

SheetTable unreachedTable(const JobFrame &frame, const CrankPlan &plan)
{
    SheetTable table;
    table.title = SheetWords::tr("Set by no position of the plan");
    table.goesOn = SheetWords::tr("%1, continued").arg(table.title);
    table.how = {SheetWords::tr("Turn the crank on until the rocker is loose and stays loose as the crank is rocked, then set it.")};
    for (const AdjusterRef adjuster : plan.unreached)
        table.rows.push_back(rowOf(frame, adjuster));
    return table;
}

std::vector<SheetTable> tablesOf(const JobFrame &frame, const CrankPlan &plan)
{
    std::vector<SheetTable> tables;
    for (std::size_t at = 0; at < plan.positions.size(); ++at)
        tables.push_back(tableOf(frame, plan, at));
    if (!plan.unreached.empty())
        tables.push_back(unreachedTable(frame, plan));
    std::erase_if(tables, [](const SheetTable &table) { return table.rows.empty(); });
    return tables;
}

/// What holds for all positions, and the first of them begun, stay together.
void addPlanHead(SheetPages &pages, const EngineDesign &design, const CrankPlan &plan, const std::vector<SheetTable> &tables)
{
    const QString title = joined({SheetWords::tr("Positions of the crank"), planSource(design, plan)});
    const QString warning = planWarning(design, plan);
    const QString advice = overshotSentence();
    const double gap = 6;
    double height = pages.heightOf(title, SheetFont::Strong) + gap;
    for (const QString &words : {warning, advice})
        height += pages.heightOf(words, SheetFont::Body);
    if (!tables.empty() && !pages.hasRoom(height + openingHeight(pages, tables.front())))
        pages.nextPage();
    pages.paragraph(title, SheetFont::Strong);
    pages.paragraph(warning);
    pages.paragraph(advice);
    pages.gap(gap);
}

void addPositions(SheetPages &pages, const JobFrame &frame, const CrankPlan &plan)
{
    const auto tables = tablesOf(frame, plan);
    addPlanHead(pages, frame.engine.design, plan, tables);
    for (const SheetTable &table : tables)
        addTable(pages, table);
}

void addRemarks(SheetPages &pages)
{
    const QString title = SheetWords::tr("Remarks");
    if (!pages.hasRoom(pages.heightOf(title, SheetFont::Heading) + leastRemarks * pencilHeight))
        pages.nextPage();
    pages.paragraph(title, SheetFont::Heading);
    int lines = leastRemarks;
    while (lines < mostRemarks && pages.hasRoom((lines + 1) * pencilHeight))
        ++lines;
    pages.writingLines(lines);
}

} // namespace

QSizeF sheetSize(SheetPaper paper)
{
    return QPageSize(paper == SheetPaper::A4 ? QPageSize::A4 : QPageSize::Letter).size(QPageSize::Point);
}

QString sheetTitle(const JobFrame &frame)
{
    return joined({textOf(frame.vehicle.name), textOf(frame.vehicle.mark), textOf(frame.job.title)});
}

SheetPages layOutSheet(const JobState &state, const CrankPlan &plan, SheetPaper paper, Moment printed)
{
    const JobFrame &frame = *state.frame;
    SheetPages pages(sheetSize(paper), frameOf(frame, printed));
    addConditions(pages);
    addCautions(pages, frame);
    addHeadDrawing(pages, frame.engine.design);
    addLockNut(pages, frame);
    addPositions(pages, frame, plan);
    addJoints(pages, state);
    addRemarks(pages);
    return pages;
}

} // namespace asleft
