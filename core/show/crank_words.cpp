#include <show/words.h>

#include <QCoreApplication>

namespace asleft {

namespace {

class CrankWords {
    Q_DECLARE_TR_FUNCTIONS(CrankWords)
};

QString labelOf(const EngineDesign &design, Cylinder cylinder)
{
    return QString::fromStdString(design.label(cylinder));
}

QString bothTell(const QString &own, const QString &other)
{
    return CrankWords::tr(
               "No. %1 is on compression when both its rockers are loose; the valves of no. %2 then change over as the crank is rocked.")
        .arg(own, other);
}

QString changeOverTells(const QString &own, const QString &other)
{
    return CrankWords::tr("Looseness proves nothing here. Rock the crank: no. %1 is on compression when the valves of no. %2 change over, "
                          "exhaust closing as intake opens.")
        .arg(own, other);
}

QString ownChangeOverTells(const QString &own)
{
    return CrankWords::tr(
               "Looseness proves nothing here. Rock the crank: no. %1 is at overlap when its own valves change over, exhaust closing "
               "as intake opens; else it is on compression.")
        .arg(own);
}

} // namespace

QString sideName(Side side)
{
    return side == Side::Intake ? CrankWords::tr("intake") : CrankWords::tr("exhaust");
}

QString pointName(const EngineDesign &design, AdjusterRef valve)
{
    const QString label = labelOf(design, valve.cylinder);
    return valve.side == Side::Intake ? CrankWords::tr("Intake %1").arg(label) : CrankWords::tr("Exhaust %1").arg(label);
}

QString pointInText(const EngineDesign &design, AdjusterRef valve)
{
    const QString label = labelOf(design, valve.cylinder);
    return valve.side == Side::Intake ? CrankWords::tr("intake %1").arg(label) : CrankWords::tr("exhaust %1").arg(label);
}

QString pointShort(const EngineDesign &design, AdjusterRef valve)
{
    return QString::fromStdString(shortName(design, valve));
}

QString pointName(const JobFrame &frame, PointId point)
{
    const SettingPoint *found = frame.point(point);
    return found ? pointName(frame.engine.design, found->adjuster) : QString();
}

QString pointInText(const JobFrame &frame, PointId point)
{
    const SettingPoint *found = frame.point(point);
    return found ? pointInText(frame.engine.design, found->adjuster) : QString();
}

QString pointShort(const JobFrame &frame, PointId point)
{
    const SettingPoint *found = frame.point(point);
    return found ? pointShort(frame.engine.design, found->adjuster) : QString();
}

QString placeName(const EngineDesign &design, CrankPlace place)
{
    const QString label = labelOf(design, place.cylinder);
    return place.event == CrankEvent::Compression ? CrankWords::tr("No. %1 on compression").arg(label)
                                                  : CrankWords::tr("No. %1 at overlap").arg(label);
}

QString placeInText(const EngineDesign &design, CrankPlace place)
{
    const QString label = labelOf(design, place.cylinder);
    return place.event == CrankEvent::Compression ? CrankWords::tr("no. %1 on compression").arg(label)
                                                  : CrankWords::tr("no. %1 at overlap").arg(label);
}

QString crankName(const EngineDesign &design, std::optional<Angle> crank)
{
    if (!crank)
        return CrankWords::tr("Unknown");
    const CrankSaying saying = sayCrank(design, *crank);
    return saying.after == Angle() ? placeName(design, saying.place) : crankInText(design, crank);
}

QString crankInText(const EngineDesign &design, std::optional<Angle> crank)
{
    if (!crank)
        return CrankWords::tr("unknown");
    const CrankSaying saying = sayCrank(design, *crank);
    const QString place = placeInText(design, saying.place);
    return saying.after == Angle() ? place : CrankWords::tr("%1 after %2").arg(degreesText(saying.after), place);
}

QString crankKnown(const JobState &state, Moment now)
{
    if (!state.crank)
        return CrankWords::tr("nobody has said yet");
    const QString time = momentText(state.crank->at, now);
    if (!state.crank->crank)
        return CrankWords::tr("said to be unknown %1").arg(time);
    return state.crank->how == CrankHow::Confirmed ? CrankWords::tr("confirmed %1").arg(time) : CrankWords::tr("turned there %1").arg(time);
}

QString strokeCheckSentence(const EngineDesign &design, const StrokeCheck &check)
{
    const QString own = labelOf(design, check.cylinder);
    const QString other = check.companion ? labelOf(design, *check.companion) : QString();
    if (check.loosenessTells && check.changeOverShows && check.companion)
        return bothTell(own, other);
    if (check.loosenessTells)
        return CrankWords::tr("No. %1 is on compression when both its rockers are loose; at overlap at least one of them is held.")
            .arg(own);
    if (check.changeOverShows)
        return check.companion ? changeOverTells(own, other) : ownChangeOverTells(own);
    return CrankWords::tr(
               "Looseness proves nothing here: the rockers of no. %1 stand alike on both strokes. The maker's mark on the cam drive or "
               "the distributor must tell.")
        .arg(own);
}

QString rotationName(Rotation rotation)
{
    return rotation == Rotation::Clockwise ? CrankWords::tr("clockwise seen from the front")
                                           : CrankWords::tr("anticlockwise seen from the front");
}

QString travelSentence(const EngineDesign &design, Angle from, Angle to)
{
    const Angle way = travel(from, to);
    if (way == Angle())
        return CrankWords::tr("The crank stands there already.");
    return CrankWords::tr("Turn %1 in the normal direction, %2.").arg(degreesText(way), rotationName(design.rotation));
}

QString overshotSentence()
{
    return CrankWords::tr("Gone past the mark? Go back well past it and come up to it again in the normal direction.");
}

QString layoutName(Layout layout)
{
    switch (layout) {
    case Layout::InLine: return CrankWords::tr("in line");
    case Layout::Vee: return CrankWords::tr("V");
    case Layout::Flat: return CrankWords::tr("flat");
    }
    return {};
}

QString planWayName(PlanWay way)
{
    switch (way) {
    case PlanWay::TwoPositions: return CrankWords::tr("two positions");
    case PlanWay::EachOnCompression: return CrankWords::tr("each cylinder on its own compression");
    }
    return {};
}

QString planSource(const EngineDesign &design, const CrankPlan &plan)
{
    if (!plan.generated)
        return plan.source.empty() ? CrankWords::tr("typed table, no source given") : QString::fromStdString(plan.source);
    const QString way = planWayName(plan.way);
    return design.cam.assumed ? CrankWords::tr("generated: %1, cam assumed").arg(way) : CrankWords::tr("generated: %1").arg(way);
}

QString marginText(const EngineDesign &design, const PlanPoint &point)
{
    if (!point.doubtful())
        return CrankWords::tr("margin %1").arg(degreesText(point.margin));
    return CrankWords::tr("doubtful: by its cam %1 may be off its seat here. Compare the table with the manual.")
        .arg(pointInText(design, point.adjuster));
}

} // namespace asleft
