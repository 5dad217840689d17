#include <store/things.h>

#include "changes.h"
#include "thing_rows.h"

#include <cassert>
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

/// What jobRowOf() takes.
const std::string jobColumns = "SELECT job.id, job.vehicle, vehicle.name, job.engine, engine.name, job.title, job.opened_ms, "
                               "(SELECT act.at_ms FROM act WHERE act.job = job.id ORDER BY act.seq DESC LIMIT 1), "
                               "(SELECT count(*) FROM act WHERE act.job = job.id) "
                               "FROM job JOIN vehicle ON vehicle.id = job.vehicle JOIN engine ON engine.id = job.engine ";

JobRow jobRowOf(Row &row)
{
    JobRow job{row.id<JobId>(), row.id<VehicleId>(), row.text(), row.id<EngineId>(), row.text(), row.text(), row.moment(), {}, 0};
    if (const auto last = row.numberIfAny())
        job.lastAct = Moment{*last};
    job.acts = row.number();
    return job;
}

} // namespace

Result<JobId> insertJob(Transaction &transaction, const NewJob &job)
{
    Connection &connection = Internals::of(transaction);
    auto id = insertDescribed<JobId>(connection, "job", Job{JobId(0), job.vehicle, job.engine, job.title, job.opened, {}});
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

Result<std::vector<JobRow>> jobsLastWorked(Database &database, int most)
{
    // Chosen first and looked at afterwards: counting the acts of every job to show a few of them would read the whole journal.
    static const std::string lastWork = "coalesce((SELECT act.at_ms FROM act WHERE act.job = job.id ORDER BY act.seq DESC LIMIT 1), "
                                        "job.opened_ms) DESC, job.id DESC ";
    static const std::string chosen =
        jobColumns + "WHERE job.id IN (SELECT job.id FROM job ORDER BY " + lastWork + "LIMIT ?) ORDER BY " + lastWork;
    return allRows(Internals::of(database), chosen, values(most), jobRowOf);
}

Result<std::vector<JobRow>> jobs(Database &database, const JobsAsked &asked)
{
    // Several statements rather than one with "? IS NULL OR": that would walk through every job.
    static const std::string all = jobColumns + "WHERE job.id < ? ORDER BY job.id DESC LIMIT ?";
    static const std::string ofVehicle = jobColumns + "WHERE job.vehicle = ? AND job.id < ? ORDER BY job.id DESC LIMIT ?";
    static const std::string ofEngine = jobColumns + "WHERE job.vehicle = ? AND job.engine = ? AND job.id < ? ORDER BY job.id DESC LIMIT ?";
    const std::int64_t before = asked.before ? asked.before->key() : std::numeric_limits<std::int64_t>::max();
    assert(asked.vehicle || !asked.engine);
    Connection &connection = Internals::of(database);
    if (asked.engine)
        return allRows(connection, ofEngine, values(*asked.vehicle, *asked.engine, before, asked.most), jobRowOf);
    if (asked.vehicle)
        return allRows(connection, ofVehicle, values(*asked.vehicle, before, asked.most), jobRowOf);
    return allRows(connection, all, values(before, asked.most), jobRowOf);
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
