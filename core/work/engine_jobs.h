#pragma once

#include <shop/state.h>
#include <store/database.h>

namespace asleft {

/// What other jobs have left at a job's engine that speaks against turning its crank.
struct OpenElsewhere {
    std::vector<PointId> nuts;             ///< points whose lock nut was opened there and not locked since, there or here
    std::string job;                       ///< title of the one that opened the first of them
    std::optional<Moment> bleedsDown = {}; ///< until when tappets set there or here do
};
Result<OpenElsewhere> openElsewhere(Database &database, const JobState &state);

} // namespace asleft
