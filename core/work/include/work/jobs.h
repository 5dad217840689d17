#pragma once

#include <shop/things.h>
#include <work/garage.h>

#include <vector>

namespace asleft {

/// The job sheets that come with the program.
std::vector<JobSheet> builtInSheets();

/// Opens a job with the lines of a sheet; refuses a title that is empty or too long, an engine that is not in this vehicle and a line's
/// joint that is not of this engine (NotFound).
/// On an engine on the stand too: the vehicle is then the stand.
Result<JobId> openJob(Garage &garage, VehicleId vehicle, EngineId engine, const JobSheet &sheet, std::string_view title);

struct JobLine {
    JobId id;
    VehicleId vehicle;
    std::string vehicleName;
    std::string title;
    Moment opened;
    std::optional<Moment> lastAct;
    std::int64_t worked = 0; ///< where it stands in the list: seq of its last act, or of the garage's when it was opened
};
/// As many as are looked at together.
inline constexpr int jobsAtOnce = 100;
/// Those worked on last, the latest first, by the journal's order; after a line, those that follow it.
Result<std::vector<JobLine>> jobs(Garage &garage, int most = jobsAtOnce, const JobLine *after = nullptr);

} // namespace asleft
