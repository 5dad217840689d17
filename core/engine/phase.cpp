#include <engine/phase.h>

#include <algorithm>
#include <cassert>

namespace asleft {

namespace {

constexpr Angle halfCycle = degrees(360);

/// Where in its cylinder's cycle a valve leaves its seat and for how long.
struct OpenArc {
    Angle opens;
    Angle length;
};

OpenArc openArc(const CamEvents &cam, Side side)
{
    constexpr Angle stroke = degrees(180);
    if (side == Side::Intake)
        return {degrees(360) - cam.intakeOpensBeforeTdc, stroke + cam.intakeOpensBeforeTdc + cam.intakeClosesAfterBdc};
    return {degrees(180) - cam.exhaustOpensBeforeBdc, stroke + cam.exhaustOpensBeforeBdc + cam.exhaustClosesAfterTdc};
}

/// The margin before the ramp allowance is taken off: below zero where the valve is off its seat.
Angle marginOfEvents(const EngineDesign &design, AdjusterRef valve, Angle crank)
{
    const OpenArc arc = openArc(design.cam, valve.side);
    const Angle sinceOpening = travel(arc.opens, phase(design, valve.cylinder, crank));
    if (sinceOpening < arc.length)
        return -std::min(sinceOpening, arc.length - sinceOpening);
    return std::min(sinceOpening - arc.length, fullCycle - sinceOpening);
}

/// At the very end of its arc a valve just meets its seat and holds nothing, so that end does not count; nor does the ramp, which
/// might take up the lash or might not.
bool surelyHeld(const EngineDesign &design, AdjusterRef valve, Angle crank)
{
    return marginOfEvents(design, valve, crank) < Angle{};
}

} // namespace

Angle inCycle(Angle angle)
{
    const std::int64_t rest = angle.smallest() % fullCycle.smallest();
    return Angle::ofSmallest(rest < 0 ? rest + fullCycle.smallest() : rest);
}

Angle travel(Angle from, Angle to)
{
    return inCycle(inCycle(to) - inCycle(from));
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
    return travel(firingAngle(design, cylinder), crank);
}

Angle margin(const EngineDesign &design, AdjusterRef valve, Angle crank)
{
    return marginOfEvents(design, valve, crank) - design.cam.rampAllowance;
}

bool maySet(const EngineDesign &design, AdjusterRef valve, Angle crank)
{
    return margin(design, valve, crank) > Angle{};
}

Angle crankAt(const EngineDesign &design, CrankPlace place)
{
    const Angle fires = firingAngle(design, place.cylinder);
    return inCycle(place.event == CrankEvent::Compression ? fires : fires + halfCycle);
}

CrankSaying sayCrank(const EngineDesign &design, Angle crank)
{
    assert(!design.firingOrder.empty());
    CrankSaying nearest{{}, fullCycle};
    // Only a place strictly nearer replaces one found before: that keeps compression before overlap, then the firing order.
    for (const CrankEvent stroke : {CrankEvent::Compression, CrankEvent::Overlap})
        for (const Cylinder cylinder : design.firingOrder) {
            const CrankPlace place{cylinder, stroke};
            const Angle after = travel(crankAt(design, place), crank);
            if (after < nearest.after)
                nearest = {place, after};
        }
    return nearest;
}

std::optional<Cylinder> companion(const EngineDesign &design, Cylinder cylinder)
{
    const Angle onCompression = crankAt(design, {cylinder, CrankEvent::Compression});
    for (const Cylinder other : design.firingOrder)
        if (crankAt(design, {other, CrankEvent::Overlap}) == onCompression)
            return other;
    return std::nullopt;
}

StrokeCheck strokeCheck(const EngineDesign &design, Cylinder cylinder)
{
    const AdjusterRef intake{cylinder, Side::Intake};
    const AdjusterRef exhaust{cylinder, Side::Exhaust};
    const Angle onCompression = crankAt(design, {cylinder, CrankEvent::Compression});
    const Angle atOverlap = crankAt(design, {cylinder, CrankEvent::Overlap});
    const bool bothLoose = maySet(design, intake, onCompression) && maySet(design, exhaust, onCompression);

    StrokeCheck check{cylinder, companion(design, cylinder)};
    check.loosenessTells = bothLoose && (surelyHeld(design, intake, atOverlap) || surelyHeld(design, exhaust, atOverlap));
    if (check.companion)
        check.changeOverShows = surelyHeld(design, {*check.companion, Side::Intake}, onCompression) &&
                                surelyHeld(design, {*check.companion, Side::Exhaust}, onCompression);
    return check;
}

} // namespace asleft
