#include <work/jobs.h>

#include "internals.h"

#include <store/things.h>

#include <algorithm>

namespace asleft {

namespace {

/// The joints the lines of a sheet speak of are the engine's own.
Done ownJoints(Database &database, EngineId engine, const JobSheet &sheet)
{
    const auto known = joints(database, engine);
    if (!known)
        return tl::unexpected(known.error());
    const bool own = std::ranges::all_of(sheet.lines, [&](const SheetLine &line) {
        return !line.joint || std::ranges::find(*known, *line.joint, &Joint::id) != known->end();
    });
    return own ? Done{} : Done(fail(ErrorKind::NotFound, Noun::Joint));
}

} // namespace

Result<JobId> openJob(Garage &garage, VehicleId vehicle, EngineId engine, const JobSheet &sheet, std::string_view title)
{
    if (const Done may = writable(garage); !may)
        return tl::unexpected(may.error());
    const auto wanted = checkedName(title, Noun::Job);
    if (!wanted)
        return tl::unexpected(wanted.error());
    auto opened = inTransaction(garage, [&](Transaction &transaction) -> Result<JobId> {
        const auto worked = asleft::engine(transaction.database(), engine);
        if (!worked)
            return tl::unexpected(worked.error());
        if (worked->vehicle != vehicle)
            return fail(ErrorKind::NotFound, Noun::Engine);
        if (const Done own = ownJoints(transaction.database(), engine, sheet); !own)
            return tl::unexpected(own.error());
        return insertJob(transaction, {vehicle, engine, *wanted, garage.now(), sheet.lines});
    });
    if (opened)
        Q_EMIT garage.changed({Change::What::Jobs});
    return opened;
}

Result<std::vector<JobLine>> jobs(Garage &garage, int most, const JobLine *after)
{
    const auto place = after ? std::optional(JobPlace{after->worked, after->id}) : std::nullopt;
    const auto rows = jobs(*garage.internals().database, most, place);
    if (!rows)
        return tl::unexpected(rows.error());
    std::vector<JobLine> lines;
    lines.reserve(rows->size());
    for (const JobRow &row : *rows)
        lines.push_back({row.id, row.vehicle, row.vehicleName, row.title, row.opened, row.lastAct, row.place.worked});
    return lines;
}

} // namespace asleft
