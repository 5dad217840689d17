#include <store/things.h>

#include "changes.h"
#include "connection.h"

#include <cassert>
#include <limits>

namespace asleft {

using namespace store;

namespace {

Result<StepId> insertStep(Connection &connection, JobId job, std::size_t place, const SheetLine &line)
{
    auto id = insertRow<StepId>(
        connection, "INSERT INTO job_step (job, place, kind, title, detail, before_gate, joint) VALUES (?, ?, ?, ?, ?, ?, ?) RETURNING id",
        values(job, place, line.kind, line.title, line.detail, line.before, line.joint));
    for (std::size_t caution = 0; id && caution < line.cautions.size(); ++caution)
        if (auto done = connection.run("INSERT INTO job_step_caution (job_step, place, caution) VALUES (?, ?, ?)",
                                       values(*id, caution, line.cautions[caution]));
            !done)
            return tl::unexpected(done.error());
    return id;
}

Result<std::vector<Step>> stepsOf(Connection &connection, JobId job)
{
    auto steps = allRows(connection, "SELECT id, kind, title, detail, before_gate, joint FROM job_step WHERE job = ? ORDER BY place",
                         values(job), [](Row &row) {
                             return Step{row.id<StepId>(),      row.word<StepKind>(), row.text(), row.text(), row.word<Gate>(), {},
                                         row.idIfAny<JointId>()};
                         });
    if (!steps)
        return steps;
    for (Step &step : *steps) {
        auto cautions = allRows(connection, "SELECT caution FROM job_step_caution WHERE job_step = ? ORDER BY place", values(step.id),
                                [](Row &row) { return row.word<Caution>(); });
        if (!cautions)
            return tl::unexpected(cautions.error());
        step.cautions = *std::move(cautions);
    }
    return steps;
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
    auto id = insertRow<JobId>(connection, "INSERT INTO job (vehicle, engine, title, opened_ms) VALUES (?, ?, ?, ?) RETURNING id",
                               values(job.vehicle, job.engine, job.title, job.opened));
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
    auto job = foundRow(
        connection, "SELECT id, vehicle, engine, title, opened_ms FROM job WHERE id = ?", values(id),
        [](Row &row) { return Job{row.id<JobId>(), row.id<VehicleId>(), row.id<EngineId>(), row.text(), row.moment(), {}}; }, Noun::Job);
    if (!job)
        return job;
    auto steps = stepsOf(connection, id);
    if (!steps)
        return tl::unexpected(steps.error());
    job->steps = *std::move(steps);
    return job;
}

} // namespace asleft
