#pragma once

#include <engine/plan.h>

namespace asleft {

/// The crank angles of the plan with the fewest positions, ascending from 0: see planFor(). Refuses with PlanNotReached.
Result<std::vector<Angle>> fewestCranks(const EngineDesign &design, CrankMarks marks, Angle leastMargin);

} // namespace asleft
