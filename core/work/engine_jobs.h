#pragma once

#include <shop/state.h>
#include <store/database.h>

namespace asleft {

/// Whether any job of this engine has acts, wherever it was when the job was opened.
Result<bool> isWorkedOn(Database &database, EngineId engine);

/// Points of a job's engine whose lock nut was opened in another job and not locked since, there or here.
struct OpenElsewhere {
    std::vector<PointId> points;
    std::string job; ///< title of the one that opened the first of them
};
/// Looks at the twenty jobs opened last at each place the engine has been.
Result<OpenElsewhere> nutsOpenElsewhere(Database &database, const JobState &state);

} // namespace asleft
