#include <engine/phase.h>

#include "cam.h"

#include <algorithm>
#include <cassert>

namespace asleft {

namespace {

Angle halfCycle(const EngineDesign &design)
{
    return Angle::ofSmallest(cycleOf(design).smallest() / 2);
}

Angle middle(CrankArc arc)
{
    return arc.starts + Angle::ofSmallest((arc.ends - arc.starts).smallest() / 2);
}

/// Crank degrees from the cylinder's own firing dead centre to the event.
Angle afterFiring(const EngineDesign &design, CrankEvent event)
{
    switch (event) {
    case CrankEvent::Compression: return {};
    case CrankEvent::Overlap: return halfCycle(design);
    case CrankEvent::ExhaustOpens: return exhaustArc(design).starts;
    case CrankEvent::IntakeCloses: return intakeArc(design).ends;
    case CrankEvent::IntakeFullyOpen: return middle(intakeArc(design));
    case CrankEvent::ExhaustFullyOpen: return middle(exhaustArc(design));
    }
    return {};
}

/// At the very end of its arc a valve just meets its seat and holds nothing, so that end does not count; nor does the ramp, which
/// might take up the lash or might not.
bool surelyHeld(const EngineDesign &design, AdjusterRef valve, Angle crank)
{
    return margin(design, valve, crank) + design.cam.rampAllowance < Angle{};
}

} // namespace

Angle cycleOf(const EngineDesign &design)
{
    return design.cycle == Cycle::TwoStroke ? degrees(360) : degrees(720);
}

Angle inCycle(const EngineDesign &design, Angle angle)
{
    return wrapped(angle, cycleOf(design));
}

Angle travel(const EngineDesign &design, Angle from, Angle to)
{
    return inCycle(design, inCycle(design, to) - inCycle(design, from));
}

Angle firingAngle(const EngineDesign &design, Cylinder cylinder)
{
    const auto found = std::find(design.firingOrder.begin(), design.firingOrder.end(), cylinder);
    assert(found != design.firingOrder.end());
    Angle angle;
    for (auto gap = design.gaps.begin(); gap != design.gaps.begin() + (found - design.firingOrder.begin()); ++gap)
        angle += *gap;
    return angle;
}

Angle phase(const EngineDesign &design, Cylinder cylinder, Angle crank)
{
    return travel(design, firingAngle(design, cylinder), crank);
}

Angle margin(const EngineDesign &design, AdjusterRef adjuster, Angle crank)
{
    const Angle clear = clearOf(loadedArcs(design, loaderOf(adjuster)), phase(design, adjuster.cylinder, crank), cycleOf(design));
    return clear - design.cam.rampAllowance;
}

bool maySet(const EngineDesign &design, AdjusterRef adjuster, Angle crank)
{
    return margin(design, adjuster, crank) > Angle{};
}

Angle crankAt(const EngineDesign &design, CrankPosition place)
{
    return inCycle(design, firingAngle(design, place.cylinder) + afterFiring(design, place.event));
}

CrankReading readCrank(const EngineDesign &design, Angle crank)
{
    assert(!design.firingOrder.empty());
    CrankReading nearest{{}, cycleOf(design)};
    // Only a place strictly nearer replaces one found before: that keeps compression before overlap, then the firing order.
    for (const CrankEvent event : {CrankEvent::Compression, CrankEvent::Overlap}) {
        Angle at = afterFiring(design, event);
        for (std::size_t i = 0; i < design.firingOrder.size(); at += design.gaps[i++])
            if (const Angle after = travel(design, at, crank); after < nearest.after)
                nearest = {{design.firingOrder[i], event}, after};
    }
    return nearest;
}

std::optional<Cylinder> companion(const EngineDesign &design, Cylinder cylinder)
{
    if (design.cycle == Cycle::TwoStroke)
        return std::nullopt;
    const Angle onCompression = firingAngle(design, cylinder);
    Angle fires;
    for (std::size_t i = 0; i < design.firingOrder.size(); fires += design.gaps[i++])
        if (inCycle(design, fires + halfCycle(design)) == onCompression)
            return design.firingOrder[i];
    return std::nullopt;
}

StrokeCheck strokeCheck(const EngineDesign &design, Cylinder cylinder)
{
    StrokeCheck check{cylinder, companion(design, cylinder)};
    check.everyTdcFires = design.cycle == Cycle::TwoStroke;
    if (check.everyTdcFires)
        return check;

    const AdjusterRef intake{cylinder, Side::Intake};
    const AdjusterRef exhaust{cylinder, Side::Exhaust};
    const Angle onCompression = crankAt(design, {cylinder, CrankEvent::Compression});
    const Angle atOverlap = crankAt(design, {cylinder, CrankEvent::Overlap});
    const bool bothLoose = maySet(design, intake, onCompression) && maySet(design, exhaust, onCompression);
    check.loosenessTells = bothLoose && (surelyHeld(design, intake, atOverlap) || surelyHeld(design, exhaust, atOverlap));
    if (check.companion)
        check.changeOverShows = surelyHeld(design, {*check.companion, Side::Intake}, onCompression) &&
                                surelyHeld(design, {*check.companion, Side::Exhaust}, onCompression);
    return check;
}

} // namespace asleft
