#pragma once

#include "engine_jobs.h"

#include <work/entries.h>
#include <work/garage.h>

namespace asleft {

/// The plan JobBook::proposedPlan() proposes.
CrankPlan proposedPlan(const JobState &state);

/// Where mark and stroke say the crank stands; nothing for unknown.
Fact confirmedFrom(std::optional<Angle> crank, const JobState &state);
/// The crank turned to there; refuses what JobBook::turnCrank() refuses.
Result<Fact> turnedFrom(Angle to, bool despiteBleedDown, const JobState &state, const Session &session, Garage &garage);

/// What other jobs of the engine have left open: all of them have one crank.
Result<OpenElsewhere> leftElsewhere(Garage &garage, const JobState &state);
/// Refuses with NutStillOpen; of one open in another job, that job's title is a second argument.
Done noNutOpen(const JobState &state, const OpenElsewhere &elsewhere);
/// Refuses with StillBleedingDown.
Done bledDown(const JobState &state, const OpenElsewhere &elsewhere, Moment now);

} // namespace asleft
