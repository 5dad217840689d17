#pragma once

#include <shop/state.h>
#include <store/database.h>

namespace asleft {

/// Whether any job of this engine has acts, wherever it was when the job was opened.
Result<bool> isWorkedOn(Database &database, EngineId engine);

/// What other jobs have left at a job's engine that speaks against turning its crank.
struct OpenElsewhere {
    std::vector<PointId> nuts;             ///< points whose lock nut was opened there and not locked since, there or here
    std::string job;                       ///< title of the one that opened the first of them
    std::optional<Moment> bleedsDown = {}; ///< until when tappets set there or here do
};
/// Looks at the twenty jobs of the engine opened last at each place it has been.
Result<OpenElsewhere> openElsewhere(Database &database, const JobState &state);

} // namespace asleft
