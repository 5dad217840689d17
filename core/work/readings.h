#pragma once

#include <work/job_book.h>

namespace asleft {

/// What a person says of a point, as a reading of a job that stands as `state`: the spec's own leaf or turns filled in where no value is
/// said, and what the session knows. Refuses with WrongJob, with NotFound where a spec is wanted and there is none, and readings without
/// their values as JobBook::logReading() says.
Result<ReadingFact> readingFrom(const ReadingEntry &entry, const JobState &state, const Session &session);

} // namespace asleft
