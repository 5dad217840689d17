#pragma once

#include <engine/design.h>

#include <array>

namespace asleft {

/// Fills in the cam events of the engine, whose cycle and valves are known by then, and refuses those that cannot be.
void readCam(const EngineText &text, EngineReading &reading);

/// While the intakes are off their seats. A two-stroke has none: the arc is empty, at bottom dead centre.
CrankArc intakeArc(const EngineDesign &design);
CrankArc exhaustArc(const EngineDesign &design);

/// What an adjuster is loaded by; those of one cylinder that share it are free and loaded together.
enum class Loader { Intake, Exhaust, Injector };
constexpr std::size_t loaderCount = 3;
Loader loaderOf(AdjusterRef adjuster);

/// The arcs in which a loader presses: one, or two where the exhaust valves lift again.
struct LoadedArcs {
    std::array<CrankArc, 2> arcs;
    std::size_t count = 1;
};
LoadedArcs loadedArcs(const EngineDesign &design, Loader loader);

/// The distance from `phase` to the nearest end of an arc, before the ramp allowance is taken off; negative inside one.
/// \pre 0 ≤ phase < cycle
Angle clearOf(const LoadedArcs &loaded, Angle phase, Angle cycle);

/// The rest of `angle` in 0 ≤ a < cycle.
constexpr Angle wrapped(Angle angle, Angle cycle)
{
    const std::int64_t rest = angle.smallest() % cycle.smallest();
    return Angle::ofSmallest(rest < 0 ? rest + cycle.smallest() : rest);
}

} // namespace asleft
