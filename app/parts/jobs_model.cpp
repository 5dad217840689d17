#include <parts/jobs_model.h>

#include <words/job.h>
#include <words/times.h>
#include <words/vehicles.h>
#include <work/job_book.h>

#include <algorithm>
#include <iterator>
#include <unordered_set>

namespace asleft {

namespace {

RuledRow rowOf(const JobLine &job, Moment now)
{
    RuledRow row;
    row.id = job.id.key();
    row.title = QString::fromStdString(job.title);
    row.note = QString::fromStdString(job.vehicleName);
    row.right = momentText(job.lastAct.value_or(job.opened), now);
    return row;
}

JobGlance::Line lineOf(const JobState &state, const Step &step)
{
    JobGlance::Line line;
    line.look = stepLookOf(state, step);
    line.row.id = step.id.key();
    line.row.title = stepTitle(step, *state.frame);
    line.row.right = stepWords(line.look);
    line.row.quiet = line.look == StepLook::Done;
    return line;
}

} // namespace

JobsModel::JobsModel(Garage &garage, QObject *parent) : QObject(parent), m_garage(garage)
{
    connect(&garage, &Garage::changed, this, &JobsModel::heed);
}

void JobsModel::heed(const Change &change)
{
    using What = Change::What;
    if (m_isRead && (change.what == What::Jobs || change.what == What::Vehicles))
        reload();
    if (change.what != What::Acts)
        return;
    m_outdated = true;
    Q_EMIT outdated();
}

void JobsModel::refresh()
{
    if (m_outdated)
        reload();
}

const std::vector<JobLine> &JobsModel::jobs()
{
    if (!m_isRead)
        reload();
    return m_jobs;
}

const JobLine *JobsModel::at(qint64 id) const
{
    const auto found = std::ranges::find_if(m_jobs, [id](const JobLine &job) { return job.id.key() == id; });
    return found == m_jobs.end() ? nullptr : &*found;
}

Result<JobGlance> JobsModel::glance(JobId job) const
{
    const auto book = JobBook::open(m_garage, job);
    if (!book)
        return tl::unexpected(book.error());
    const JobState &state = (*book)->state();
    JobGlance glance;
    glance.resume = resumeLines(state, m_garage.now(), nullptr);
    glance.vehicle = QString::fromStdString(state.frame->vehicle.name);
    if (state.frame->meter)
        glance.meter = meterText(*state.frame->meter);
    for (const Step &step : state.frame->job.steps)
        glance.lines.append(lineOf(state, step));
    return glance;
}

Result<JobJoints> JobsModel::jointsOf(JobId job) const
{
    const auto book = JobBook::open(m_garage, job);
    if (!book)
        return tl::unexpected(book.error());
    const JobFrame &frame = *(*book)->state().frame;
    JobJoints joints{frame.engine.id, {}};
    for (const Step &step : frame.job.steps) {
        const bool both = step.joint && step.kind == StepKind::Tighten && std::ranges::any_of(frame.job.steps, [&](const Step &other) {
                              return other.kind == StepKind::Loosen && other.joint == step.joint;
                          });
        if (both)
            joints.present.push_back(*step.joint);
    }
    return joints;
}

Done JobsModel::addJoint(JobId job, const Joint &joint)
{
    return addJointToJob(m_garage, job, joint);
}

Result<JobId> JobsModel::open(VehicleId vehicle, EngineId engine, const JobSheet &sheet, const QString &title)
{
    return openJob(m_garage, vehicle, engine, sheet, title.toStdString());
}

void JobsModel::reload()
{
    m_isRead = true;
    m_outdated = false;
    // One more than there were, so that a new one pushes none out.
    const int most = std::max(jobsAtOnce, int(m_jobs.size()) + 1);
    take(asleft::jobs(m_garage, most), most, false);
    Q_EMIT changed();
}

void JobsModel::readFurther()
{
    take(asleft::jobs(m_garage, jobsAtOnce, m_jobs.empty() ? nullptr : &m_jobs.back()), jobsAtOnce, true);
    if (m_failure)
        Q_EMIT changed();
}

void JobsModel::take(Result<std::vector<JobLine>> read, int most, bool further)
{
    m_failure = read ? std::nullopt : std::optional(read.error());
    if (!read)
        return;
    const bool isAll = int(read->size()) < most;
    if (!further)
        m_jobs.clear();
    // A job that was worked on since stands further up.
    std::unordered_set<JobId> known;
    for (const JobLine &job : m_jobs)
        known.insert(job.id);
    std::ranges::copy_if(*read, std::back_inserter(m_jobs), [&known](const JobLine &job) { return !known.contains(job.id); });
    QList<RuledRow> rows;
    for (const JobLine &job : m_jobs)
        rows.append(rowOf(job, m_garage.now()));
    m_rows.setFurther(isAll ? std::function<void()>() : [this] { readFurther(); });
    m_rows.setRows(rows);
}

} // namespace asleft
