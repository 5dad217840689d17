#pragma once

#include <work/entries.h>

namespace asleft {

/// What a person says of a point, as a reading of a job that stands as `state`: the spec's own leaf or turns filled in where no value is
/// said, and what the session knows. Refuses with WrongJob, with NotFound where a spec is wanted and there is none, and readings without
/// their values as JobBook::logReading() says.
Result<ReadingFact> readingFrom(const ReadingEntry &entry, const JobState &state, const Session &session);

/// The same with what it would be worth.
Result<ReadingAsLogged> readingAsLogged(const ReadingEntry &entry, const JobState &state, const Session &session);

/// Every point the plan sets here whose lash is not settled, as left at the spec's leaf; NotFound where there is none.
Result<Fact> allLeftFrom(const JobState &state, const Session &session);
/// Refuses a point of another job (WrongJob).
Result<Fact> nutOpenFrom(PointId point, const JobState &state);
/// Refuse what JobBook::keepAsLeft() and JobBook::sendToCheckAgain() refuse.
Result<Fact> keptFrom(PointId point, std::string_view reason, const JobState &state);
Result<Fact> checkAgainFrom(const std::vector<PointId> &points, Disturbance cause, std::string_view why, const JobState &state);

} // namespace asleft
