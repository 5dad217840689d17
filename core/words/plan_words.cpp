#include <words/crank.h>
#include <words/numbers.h>
#include <words/points.h>

#include <QCoreApplication>
#include <QStringList>

namespace asleft {

namespace {

class PlanWords {
    Q_DECLARE_TR_FUNCTIONS(PlanWords)
};

/// So many points are named; of more, only how many.
constexpr qsizetype mostNamed = 6;

QString namesOf(const EngineDesign &design, const std::vector<AdjusterRef> &points)
{
    QStringList names;
    for (const AdjusterRef point : points)
        names.append(pointShort(design, point));
    const QString comma = PlanWords::tr(", ", "between names of points");
    if (names.size() <= mostNamed)
        return names.join(comma);
    return PlanWords::tr("%1 and %2 more", "names of points")
        .arg(names.first(mostNamed - 1).join(comma), QString::number(names.size() - mostNamed + 1));
}

std::vector<AdjusterRef> doubtfulPoints(const CrankPlan &plan)
{
    std::vector<AdjusterRef> doubtful;
    for (const PlanPosition &position : plan.positions) {
        for (const PlanPoint &point : position.points) {
            if (point.doubtful())
                doubtful.push_back(point.adjuster);
        }
    }
    return doubtful;
}

QString doubtWarning(const EngineDesign &design, const CrankPlan &plan, const QString &names)
{
    if (!plan.generated)
        return PlanWords::tr("By the cam %1 may be pressed where the table sets them. The table was kept; compare it with the manual.")
            .arg(names);
    if (plan.way == PlanWay::RuleOfNine)
        return PlanWords::tr(
                   "The rule of nine does not fit this head: its intakes and exhausts do not mirror each other, and by the cam %1 may be "
                   "pressed where it sets them. Choose another way.")
            .arg(names);
    return design.cam.assumed
               ? PlanWords::tr(
                     "By the assumed cam %1 may be pressed where the plan sets them. Type the cam's events, or choose another way.")
                     .arg(names)
               : PlanWords::tr("By the cam %1 may be pressed where the plan sets them. Choose another way.").arg(names);
}

} // namespace

QString planWayName(PlanWay way)
{
    switch (way) {
    case PlanWay::TwoPositions: return PlanWords::tr("two positions");
    case PlanWay::EachOnCompression: return PlanWords::tr("each cylinder on its own compression");
    case PlanWay::CompanionAtOverlap: return PlanWords::tr("companion at overlap");
    case PlanWay::OpeningAndClosing: return PlanWords::tr("opening and closing");
    case PlanWay::Fewest: return PlanWords::tr("fewest positions");
    case PlanWay::RuleOfNine: return PlanWords::tr("rule of nine");
    }
    return {};
}

QString planWayNote(PlanWay way)
{
    switch (way) {
    case PlanWay::TwoPositions:
        return PlanWords::tr("The first cylinder on compression, then half a cycle on: about half the points each.");
    case PlanWay::EachOnCompression: return PlanWords::tr("Every cylinder in firing order on its own compression, all its points there.");
    case PlanWay::CompanionAtOverlap:
        return PlanWords::tr("Rock the crank until a cylinder's valves change over, then set the one that is on compression with it.");
    case PlanWay::OpeningAndClosing:
        return PlanWords::tr("Set the intake as the exhaust of that cylinder begins to open, the exhaust as its intake has just closed.");
    case PlanWay::Fewest: return PlanWords::tr("As few turns of the crank as reach every point; needs the events of the cam.");
    case PlanWay::RuleOfNine:
        return PlanWords::tr("In-line four, valves 1 to 8 from the front: where one is fully open, set the one that makes nine with it.");
    }
    return {};
}

QString crankMarksName(CrankMarks marks)
{
    switch (marks) {
    case CrankMarks::EveryTdc: return PlanWords::tr("dead centre of every cylinder");
    case CrankMarks::FirstOnly: return PlanWords::tr("only the mark of the first cylinder");
    case CrankMarks::AnyAngle: return PlanWords::tr("any angle, by a degree wheel");
    }
    return {};
}

QString planWarning(const EngineDesign &design, const CrankPlan &plan)
{
    QStringList warnings;
    const std::vector<AdjusterRef> doubtful = doubtfulPoints(plan);
    if (!doubtful.empty())
        warnings.append(doubtWarning(design, plan, namesOf(design, doubtful)));
    if (!plan.unreached.empty())
        warnings.append(
            PlanWords::tr("No position of this plan sets %1. Turn the crank on until their rockers are loose, or choose another way.")
                .arg(namesOf(design, plan.unreached)));
    return warnings.join(u' ');
}

namespace {

QString typedSource(const CrankPlan &plan)
{
    const QString manual = QString::fromStdString(plan.source);
    if (plan.page.empty())
        return manual.isEmpty() ? PlanWords::tr("typed table, no source given") : manual;
    const QString page = PlanWords::tr("p. %1").arg(QString::fromStdString(plan.page));
    return manual.isEmpty() ? page : PlanWords::tr("%1 %2", "manual, page").arg(manual, page);
}

} // namespace

QString planSource(const EngineDesign &design, const CrankPlan &plan)
{
    if (!plan.generated)
        return typedSource(plan);
    const QString way = planWayName(plan.way);
    return design.cam.assumed ? PlanWords::tr("generated: %1, cam assumed").arg(way) : PlanWords::tr("generated: %1").arg(way);
}

QString marginText(const EngineDesign &design, const PlanPoint &point)
{
    if (!point.doubtful())
        return PlanWords::tr("margin %1").arg(degreesText(point.margin));
    const QString name = pointInText(design, point.adjuster);
    if (point.adjuster.kind == PointKind::Injector)
        return PlanWords::tr("doubtful: by its cam %1 may be pressed here. Compare the table with the manual.").arg(name);
    return PlanWords::tr("doubtful: by its cam %1 may be off its seat here. Compare the table with the manual.").arg(name);
}

} // namespace asleft
