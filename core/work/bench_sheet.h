#pragma once

#include <work/entries.h>
#include <work/garage.h>

namespace asleft {

/// A bench sheet that was filled in with a pencil, and what the session knows of it.
struct FilledSheet {
    std::vector<SheetEntry> lines; ///< the filled-in ones, along the engine
    std::optional<Moment> at;
    std::optional<PersonId> who;
    std::optional<ToolId> tool;
    EngineCondition condition;
    std::optional<TypedTemperature> temperature;
    std::optional<std::int64_t> minutesSinceRun;
    bool operator==(const FilledSheet &) const = default;
};

/// Without the lines nobody wrote on. Refuses a point of another job (WrongJob), one that stands in two lines (TablePointTwice), and an
/// empty sheet (NothingToLog).
Result<FilledSheet> filledSheet(const std::vector<SheetEntry> &lines, std::optional<Moment> at, const JobFrame &frame,
                                const Session &session);

/// The acts a sheet becomes in a job that stands as `state`. `blank` is an act of this session that says nothing yet.
Result<std::vector<NewAct>> actsOf(const FilledSheet &sheet, JobState state, const Session &session, NewAct blank);

} // namespace asleft
