#pragma once

#include "engine_texts.h"

#include <shop/state.h>

#include <memory>
#include <ostream>
#include <string>
#include <vector>

namespace asleft {

/// For what a test says of its parameters.
inline void PrintTo(const EngineText &text, std::ostream *out)
{
    *out << text.cylinders << " cylinders of layout " << static_cast<int>(text.layout) << ", valves " << text.valves;
}

inline Spec lashSpec(std::int64_t id, SpecSubject subject, const char *band, const char *second, SpecSource source)
{
    SpecBand<Length> bands{*parseBand<Length>(band, LengthUnit::Millimetre), std::nullopt};
    if (second)
        bands.second = *parseBand<Length>(second, LengthUnit::Inch);
    return {SpecId(id), EngineId(1), subject, 1, EngineCondition::Cold, std::move(source), bands};
}

inline std::vector<Spec> usualSpecs()
{
    return {
        lashSpec(1, SpecSubject::IntakeLash, "0.30 ± 0.05 mm", ".012 ± .002 in", {"Hollin Workshop Manual", "41", Certainty::ReadInManual}),
        lashSpec(2, SpecSubject::ExhaustLash, "0.40 ± 0.05 mm", nullptr, {"", "", Certainty::FromMemory}),
        lashSpec(3, SpecSubject::Injector, "36.0 ± 0.2 mm", nullptr, {"Hollin Workshop Manual", "60", Certainty::ReadInManual}),
        {SpecId(4),
         EngineId(1),
         SpecSubject::LockNut,
         1,
         EngineCondition::Cold,
         {"Hollin Workshop Manual", "42", Certainty::ReadInManual},
         SpecBand<Torque>{*parseBand<Torque>("22 ± 2 N·m", TorqueUnit::NewtonMetre), std::nullopt}}};
}

/// Bridges with their screws, injectors, decompressors, and a pinion to bar it over with.
inline EngineText sixWithEverything()
{
    EngineText text = engineText(Layout::InLine, 6, "1-5-3-6-2-4");
    text.valves = "2+2";
    text.bridged = text.bridgeScrews = text.injectors = text.decompressors = true;
    text.barring = "132/11";
    return text;
}

/// An invented vehicle whose engine is to be set.
inline std::shared_ptr<JobFrame> frameOf(const EngineText &text)
{
    auto frame = std::make_shared<JobFrame>(
        JobFrame{{JobId(1), VehicleId(1), EngineId(1), "Valve set", Moment{}, {}},
                 {VehicleId(1), "Hollin 40 tractor", "LK 4021", "", false},
                 {EngineId(1), VehicleId(1), "Hollin engine", *designEngine(text), {}, std::nullopt, std::nullopt, {}},
                 std::nullopt,
                 usualSpecs(),
                 std::nullopt,
                 {{PersonId(1), "M.K.", ""}},
                 {},
                 DecisionRule::Simple});
    std::int64_t id = 1;
    for (const AdjusterRef adjuster : frame->engine.design.adjusters())
        frame->engine.points.push_back({PointId(id++), adjuster});
    frame->job.steps = {{StepId(1), StepKind::ValveSet, "Set the valves", "", Gate::FirstStart, {Caution::HotParts, Caution::HandsClear}}};
    return frame;
}

inline JobState stateOf(const std::shared_ptr<JobFrame> &frame)
{
    return fold(frame, {});
}

} // namespace asleft
