#include <words/crank.h>
#include <words/numbers.h>

#include <QCoreApplication>

#include <cmath>

namespace asleft {

namespace {

class TurningWords {
    Q_DECLARE_TR_FUNCTIONS(TurningWords)
};

QString bothTell(const QString &own, const QString &other)
{
    return TurningWords::tr(
               "No. %1 is on compression when both its rockers are loose; the valves of no. %2 then change over as the crank is rocked.")
        .arg(own, other);
}

QString changeOverTells(const QString &own, const QString &other)
{
    return TurningWords::tr("Looseness proves nothing here. Rock the crank: no. %1 is on compression when the valves of no. %2 change "
                            "over, exhaust closing as intake opens.")
        .arg(own, other);
}

QString ownChangeOverTells(const QString &own)
{
    return TurningWords::tr(
               "Looseness proves nothing here. Rock the crank: no. %1 is at overlap when its own valves change over, exhaust closing "
               "as intake opens; else it is on compression.")
        .arg(own);
}

bool isWhole(double turns)
{
    return std::abs(turns - std::round(turns)) < 1e-9;
}

QString pinionTurns(double turns)
{
    if (isWhole(turns))
        return TurningWords::tr("%n turn(s)", nullptr, static_cast<int>(std::lround(turns)));
    return TurningWords::tr("about %1 turns").arg(QLocale().toString(turns, 'f', 1));
}

} // namespace

QString strokeCheckSentence(const EngineDesign &design, const StrokeCheck &check)
{
    if (check.everyTdcFires)
        return TurningWords::tr("A two-stroke fires at every top dead centre: the mark alone tells.");
    const QString own = QString::fromStdString(design.label(check.cylinder));
    const QString other = check.companion ? QString::fromStdString(design.label(*check.companion)) : QString();
    if (check.loosenessTells && check.changeOverShows && check.companion)
        return bothTell(own, other);
    if (check.loosenessTells)
        return TurningWords::tr("No. %1 is on compression when both its rockers are loose; at overlap at least one of them is held.")
            .arg(own);
    if (check.changeOverShows)
        return check.companion ? changeOverTells(own, other) : ownChangeOverTells(own);
    return TurningWords::tr(
               "Looseness proves nothing here: the rockers of no. %1 stand alike on both strokes. The maker's mark on the cam drive or "
               "the distributor must tell.")
        .arg(own);
}

QString travelSentence(const EngineDesign &design, Angle from, Angle to)
{
    const Angle way = travel(design, from, to);
    if (way == Angle())
        return TurningWords::tr("The crank stands there already.");
    return TurningWords::tr("Turn %1 in the normal direction, %2.").arg(degreesText(way), rotationName(design.rotation));
}

QString pinionSentence(const EngineDesign &design, Angle from, Angle to)
{
    const Angle way = travel(design, from, to);
    if (!design.barring || design.barring->pinionTeeth <= 0 || way == Angle())
        return {};
    // Two gears in mesh turn against each other, the smaller as many times faster as it has fewer teeth.
    const double turns = toDegrees(way) / 360 * design.barring->ringTeeth / design.barring->pinionTeeth;
    const Rotation against = design.rotation == Rotation::Clockwise ? Rotation::Anticlockwise : Rotation::Clockwise;
    return TurningWords::tr("The pinion turns against the crank: %1 of it, %2.").arg(pinionTurns(turns), rotationName(against));
}

} // namespace asleft
