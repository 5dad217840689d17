#include <work/jobs.h>

#include "inside.h"

#include <store/things.h>

namespace asleft {

namespace {

/// More than anybody scrolls through.
constexpr int mostListed = 500;

} // namespace

Result<JobId> openJob(Garage &garage, VehicleId vehicle, EngineId engine, const JobSheet &sheet, std::string_view title)
{
    if (const Done may = writable(garage); !may)
        return tl::unexpected(may.error());
    const auto wanted = checkedName(title, "job");
    if (!wanted)
        return tl::unexpected(wanted.error());
    auto opened = inTransaction(garage, [&](Transaction &transaction) -> Result<JobId> {
        const auto worked = asleft::engine(transaction.database(), engine);
        if (!worked)
            return tl::unexpected(worked.error());
        if (worked->vehicle != vehicle)
            return fail(ErrorKind::NotFound, "engine");
        return insertJob(transaction, {vehicle, engine, *wanted, garage.now(), sheet.lines});
    });
    if (opened)
        Q_EMIT garage.changed({Change::What::Jobs});
    return opened;
}

Result<std::vector<JobLine>> jobs(Garage &garage)
{
    const auto rows = jobsLastWorked(*garage.inside().database, mostListed);
    if (!rows)
        return tl::unexpected(rows.error());
    std::vector<JobLine> lines;
    lines.reserve(rows->size());
    for (const JobRow &row : *rows)
        lines.push_back({row.id, row.vehicle, row.vehicleName, row.title, row.opened, row.lastAct});
    return lines;
}

} // namespace asleft
