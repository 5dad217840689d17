#include <store/things.h>

#include "changes.h"
#include "thing_rows.h"

#include <limits>

namespace asleft {

using namespace store;

namespace {

Result<StepId> insertStep(Connection &connection, JobId job, std::size_t place, const SheetLine &line)
{
    const Step step{StepId(0), line.kind, line.title, line.detail, line.before, line.cautions, line.joint};
    auto id = insertDescribed<StepId>(connection, "job_step", step, "job, place", values(job, place));
    if (!id)
        return id;
    return writeLists(connection, "job_step", values(*id), step).map([&] { return *id; });
}

Result<std::vector<Step>> stepsOf(Connection &connection, JobId job)
{
    static const std::string select = "SELECT id, " + namesOf<Step>() + " FROM job_step WHERE job = ? ORDER BY place";
    auto steps = allRows(connection, select, values(job), taken<Step>);
    if (!steps)
        return steps;
    return readListsOf(connection, "job_step", Noun::Step, *steps, [](const Step &step) { return step.id.key(); }).map([&] {
        return *std::move(steps);
    });
}

JobRow jobRowOf(Row &row)
{
    JobRow job{row.id<JobId>(), row.id<VehicleId>(), row.text(), row.id<EngineId>(), row.text(),
               row.text(),      row.moment(),        {},         {0, JobId(0)}};
    if (const auto last = row.numberIfAny())
        job.lastAct = Moment{*last};
    job.place = {row.number(), job.id};
    return job;
}

/// Which acts the rows of last work follow from: every job's own last one; before it has one, the garage's when it was opened.
constexpr std::string_view lastActs = "(SELECT id, (SELECT max(seq) FROM act WHERE act.job = job.id) AS last FROM job)";

} // namespace

Result<JobId> insertJob(Transaction &transaction, const NewJob &job)
{
    Connection &connection = Internals::of(transaction);
    auto id = insertDescribed<JobId>(connection, "job", Job{JobId(0), job.vehicle, job.engine, job.title, job.opened, {}});
    if (id)
        if (const Done worked = connection.run("INSERT INTO job_worked (job, seq) SELECT ?, coalesce(max(seq), 0) FROM act", values(*id));
            !worked)
            return tl::unexpected(worked.error());
    for (std::size_t place = 0; id && place < job.lines.size(); ++place)
        if (auto step = insertStep(connection, *id, place, job.lines[place]); !step)
            return tl::unexpected(step.error());
    return id;
}

Result<StepId> appendStep(Transaction &transaction, JobId job, const SheetLine &line)
{
    Connection &connection = Internals::of(transaction);
    const auto place = oneRow(connection, "SELECT coalesce(max(place) + 1, 0) FROM job_step WHERE job = ?", values(job),
                              [](Row &row) { return static_cast<std::size_t>(row.number()); });
    if (!place)
        return tl::unexpected(place.error());
    return insertStep(connection, job, place->value_or(0), line);
}

Result<std::vector<JobRow>> jobs(Database &database, int most, const std::optional<JobPlace> &after)
{
    static const std::string select =
        "SELECT job.id, job.vehicle, vehicle.name, job.engine, engine.name, job.title, job.opened_ms, act.at_ms, job_worked.seq "
        "FROM job_worked JOIN job ON job.id = job_worked.job JOIN vehicle ON vehicle.id = job.vehicle "
        "JOIN engine ON engine.id = job.engine LEFT JOIN act ON act.seq = job_worked.seq AND act.job = job.id "
        "WHERE (job_worked.seq, job_worked.job) < (?, ?) ORDER BY job_worked.seq DESC, job_worked.job DESC LIMIT ?";
    constexpr std::int64_t beyond = std::numeric_limits<std::int64_t>::max();
    const JobPlace from = after.value_or(JobPlace{beyond, JobId(beyond)});
    return allRows(Internals::of(database), select, values(from.worked, from.job, most), jobRowOf);
}

Result<bool> lastWorkedAsActsSay(Database &database)
{
    static const std::string wrong = "SELECT count(*) FROM " + std::string(lastActs) +
                                     " AS told LEFT JOIN job_worked ON job_worked.job = told.id "
                                     "WHERE job_worked.seq IS NULL OR (told.last IS NOT NULL AND job_worked.seq <> told.last)";
    return oneRow(Internals::of(database), wrong, {}, [](Row &row) { return row.number(); }).map([](std::optional<std::int64_t> count) {
        return count == 0;
    });
}

Done tellLastWorkedAnew(Transaction &transaction)
{
    static const std::string anew =
        "INSERT INTO job_worked (job, seq) SELECT id, coalesce(last, max(last) OVER (ORDER BY id), 0) FROM " + std::string(lastActs);
    Connection &connection = Internals::of(transaction);
    return connection.run("DELETE FROM job_worked", {}).and_then([&] { return connection.run(anew, {}); });
}

Result<bool> engineWorkedOn(Database &database, EngineId engine)
{
    return oneRow(Internals::of(database),
                  "SELECT 1 FROM job WHERE engine = ? AND EXISTS (SELECT 1 FROM act WHERE act.job = job.id) LIMIT 1", values(engine),
                  [](Row &row) { return row.number(); })
        .map([](std::optional<std::int64_t> found) { return found.has_value(); });
}

Result<Job> job(Database &database, JobId id)
{
    Connection &connection = Internals::of(database);
    static const std::string select = "SELECT id, " + namesOf<Job>() + " FROM job WHERE id = ?";
    auto job = foundRow(connection, select, values(id), taken<Job>, Noun::Job);
    if (!job)
        return job;
    auto steps = stepsOf(connection, id);
    if (!steps)
        return tl::unexpected(steps.error());
    job->steps = *std::move(steps);
    return job;
}

} // namespace asleft
