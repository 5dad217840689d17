#include "cam.h"

#include "engine_words.h"

#include <engine/phase.h>

#include <algorithm>

namespace asleft {

namespace {

constexpr Angle stroke = degrees(180);

tl::unexpected<Error> refuseArc(Noun whose, Angle open)
{
    return fail(ErrorKind::CamArcTooLong, whose, plainDegrees(open));
}

/// Refuses an arc that is `shut` long with both events at their dead centres and with these events is none, or the whole cycle.
Done checkEvents(Noun whose, Angle shut, Angle opensEarly, Angle closesLate, Angle cycle)
{
    // An event a whole cycle away is no event, however well the other one makes up for it.
    const auto held = [&](Angle event) { return std::clamp(event, -cycle, cycle); };
    const bool eventsFit = held(opensEarly) == opensEarly && held(closesLate) == closesLate;
    const Angle open = shut + held(opensEarly) + held(closesLate);
    if (eventsFit && open > Angle{} && open < cycle)
        return {};
    return refuseArc(whose, open);
}

Done checkArc(Noun whose, const std::optional<CrankArc> &arc, Angle cycle)
{
    if (!arc)
        return {};
    const auto held = [&](Angle end) { return std::clamp(end, -cycle, cycle * 2); };
    const bool endsFit = held(arc->starts) == arc->starts && held(arc->ends) == arc->ends;
    const Angle open = held(arc->ends) - held(arc->starts);
    if (endsFit && open > Angle{} && open < cycle)
        return {};
    return refuseArc(whose, open);
}

Done checkRamp(Angle ramp)
{
    constexpr std::int64_t most = 360;
    if (ramp < Angle{})
        return fail(ErrorKind::NegativeValue, plainDegrees(ramp));
    if (ramp > degrees(most))
        return fail(ErrorKind::ValueTooLarge, plainDegrees(ramp), std::to_string(most));
    return {};
}

void checkCam(const CamEvents &cam, Cycle kind, Angle cycle, std::map<EngineField, Error> &refusals)
{
    const auto keep = [&](EngineField field, const Done &checked) {
        if (!checked)
            refusals.emplace(field, checked.error());
    };
    const Angle exhaustShut = kind == Cycle::FourStroke ? stroke : Angle{};
    keep(EngineField::IntakeEvents, checkEvents(Noun::IntakeArc, stroke, cam.intakeOpensBeforeTdc, cam.intakeClosesAfterBdc, cycle));
    keep(EngineField::ExhaustEvents,
         checkEvents(Noun::ExhaustArc, exhaustShut, cam.exhaustOpensBeforeBdc, cam.exhaustClosesAfterTdc, cycle));
    keep(EngineField::ExhaustAgain, checkArc(Noun::SecondExhaustArc, cam.exhaustAgain, cycle));
    keep(EngineField::Injector, checkArc(Noun::InjectorArc, cam.injector, cycle));
    keep(EngineField::Ramp, checkRamp(cam.rampAllowance));
}

bool sameEvents(const CamEvents &a, const CamEvents &b)
{
    return a.intakeOpensBeforeTdc == b.intakeOpensBeforeTdc && a.intakeClosesAfterBdc == b.intakeClosesAfterBdc &&
           a.exhaustOpensBeforeBdc == b.exhaustOpensBeforeBdc && a.exhaustClosesAfterTdc == b.exhaustClosesAfterTdc;
}

/// The four events alone: ramp, other arcs and check lift stay as they were typed.
void takeEvents(const CamEvents &from, CamEvents &cam)
{
    cam.intakeOpensBeforeTdc = from.intakeOpensBeforeTdc;
    cam.intakeClosesAfterBdc = from.intakeClosesAfterBdc;
    cam.exhaustOpensBeforeBdc = from.exhaustOpensBeforeBdc;
    cam.exhaustClosesAfterTdc = from.exhaustClosesAfterTdc;
}

} // namespace

CamEvents twoStrokeCam()
{
    CamEvents cam;
    cam.intakeOpensBeforeTdc = {};
    cam.intakeClosesAfterBdc = {};
    cam.exhaustOpensBeforeBdc = degrees(90);
    cam.exhaustClosesAfterTdc = degrees(60);
    return cam;
}

void readCam(const EngineText &text, EngineReading &reading)
{
    EngineDesign &design = reading.design;
    design.cam = text.cam;
    const CamEvents usual = design.cycle == Cycle::TwoStroke ? twoStrokeCam() : CamEvents();
    const bool ofTwoStroke = sameEvents(text.cam, twoStrokeCam()); // assumed before the cycle was changed
    if (text.cam.assumed && (design.cycle == Cycle::TwoStroke || ofTwoStroke))
        takeEvents(usual, design.cam);
    if (design.cycle == Cycle::TwoStroke) {
        design.cam.intakeOpensBeforeTdc = usual.intakeOpensBeforeTdc;
        design.cam.intakeClosesAfterBdc = usual.intakeClosesAfterBdc;
    }
    checkCam(design.cam, design.cycle, cycleOf(design), reading.refusals);
}

CrankArc intakeArc(const EngineDesign &design)
{
    if (design.cycle == Cycle::TwoStroke)
        return {stroke, stroke};
    return {stroke * 2 - design.cam.intakeOpensBeforeTdc, stroke * 3 + design.cam.intakeClosesAfterBdc};
}

CrankArc exhaustArc(const EngineDesign &design)
{
    const Angle closes = design.cycle == Cycle::TwoStroke ? stroke : stroke * 2;
    return {stroke - design.cam.exhaustOpensBeforeBdc, closes + design.cam.exhaustClosesAfterTdc};
}

Loader loaderOf(AdjusterRef adjuster)
{
    switch (adjuster.kind) {
    case PointKind::Injector: return Loader::Injector;
    case PointKind::Decompressor: return Loader::Exhaust;
    case PointKind::BridgeScrew:
    case PointKind::Lash: break;
    }
    return adjuster.side == Side::Intake ? Loader::Intake : Loader::Exhaust;
}

LoadedArcs loadedArcs(const EngineDesign &design, Loader loader)
{
    switch (loader) {
    case Loader::Intake: return {{intakeArc(design)}, 1};
    case Loader::Injector: return {{design.cam.injector.value_or(CrankArc{degrees(-70), degrees(70)})}, 1};
    case Loader::Exhaust: break;
    }
    if (design.cam.exhaustAgain)
        return {{exhaustArc(design), *design.cam.exhaustAgain}, 2};
    return {{exhaustArc(design)}, 1};
}

Angle clearOf(const LoadedArcs &loaded, Angle phase, Angle cycle)
{
    Angle least = cycle;
    for (std::size_t i = 0; i < loaded.count; ++i) {
        const CrankArc &arc = loaded.arcs[i];
        const Angle length = arc.ends - arc.starts;
        const Angle since = wrapped(phase - arc.starts, cycle);
        const Angle clear = since < length ? -std::min(since, length - since) : std::min(since - length, cycle - since);
        least = std::min(least, clear);
    }
    return least;
}

} // namespace asleft
