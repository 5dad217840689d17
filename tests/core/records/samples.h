#pragma once

#include "story.h"

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

inline std::vector<Spec> usualSpecs()
{
    return {specOf(SpecId(1), SpecSubject::IntakeLash, bands("0.30 ± 0.05 mm", ".012 ± .002 in")),
            specOf(SpecId(2), SpecSubject::ExhaustLash, bands("0.40 ± 0.05 mm"), {"", "", Certainty::FromMemory}),
            specOf(SpecId(3), SpecSubject::Injector, bands("36.0 ± 0.2 mm")),
            specOf(SpecId(4), SpecSubject::LockNut, torqueBands("22 ± 2 N·m"))};
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
    auto frame = std::make_shared<JobFrame>(usualFrame());
    fit(*frame, *designEngine(text));
    frame->vehicle.mark = "LK 4021";
    frame->specs = usualSpecs();
    frame->people = {{PersonId(1), "M.K.", ""}};
    frame->job.steps = {{StepId(1), StepKind::ValveSet, "Set the valves", "", Gate::FirstStart, {Caution::HotParts, Caution::HandsClear}}};
    return frame;
}

inline JobState stateOf(const std::shared_ptr<JobFrame> &frame)
{
    return fold(frame, {});
}

} // namespace asleft
