#include <work/job_book.h>

#include "internals.h"
#include "job_frame.h"
#include "names.h"

#include <store/journal.h>

#include <algorithm>

namespace asleft {

namespace {

bool touchesFrame(const Change &change, const JobFrame &frame)
{
    switch (change.what) {
    case Change::What::Specs:
    case Change::What::Joints: return !change.engine || *change.engine == frame.engine.id;
    case Change::What::Vehicles: // the job's vehicle may hold another engine by now
    case Change::What::People:
    case Change::What::Tools:
    case Change::What::Rules: return true;
    case Change::What::Jobs: return change.job == frame.job.id; // it got a further line
    case Change::What::Acts: return false;
    }
    return false;
}

} // namespace

Result<std::unique_ptr<JobBook>> JobBook::open(Garage &garage, JobId job)
{
    Database &database = *garage.internals().database;
    const auto moment = Snapshot::begin(database);
    if (!moment)
        return tl::unexpected(moment.error());
    const auto version = database.dataVersion();
    if (!version)
        return tl::unexpected(version.error());
    auto frame = loadFrame(garage, job);
    if (!frame)
        return tl::unexpected(frame.error());
    const auto acts = jobActs(database, job, (*frame)->engine.id);
    if (!acts)
        return tl::unexpected(acts.error());
    return std::unique_ptr<JobBook>(new JobBook(garage, fold(std::move(*frame), *acts), *version));
}

JobBook::JobBook(Garage &garage, JobState state, std::int64_t version) : m_garage(garage), m_state(std::move(state)), m_version(version)
{
    if (!m_state.acts.empty())
        m_readUpTo = m_state.acts.back().seq;
    connect(&garage, &Garage::changed, this, [this](const Change &change) {
        if (change.what == Change::What::Acts && m_telling)
            return;
        if (change.what == Change::What::Acts)
            m_frameStale = !catchUp() || m_frameStale; // another open job may have moved this engine's crank
        else if (touchesFrame(change, *m_state.frame))
            reloadFrame();
    });
}

const Tool *JobBook::tool() const
{
    return m_session.tool ? m_state.frame->tool(*m_session.tool) : nullptr;
}

void JobBook::setWho(PersonId who)
{
    m_session.who = who;
    Q_EMIT changed();
}

void JobBook::setTool(std::optional<ToolId> set)
{
    m_session.tool = set;
    Q_EMIT changed();
}

void JobBook::setCondition(EngineCondition condition, std::optional<TypedTemperature> temperature,
                           std::optional<std::int64_t> minutesSinceRun)
{
    m_session.condition = condition;
    m_session.temperature = std::move(temperature);
    m_session.minutesSinceRun = minutesSinceRun;
    Q_EMIT changed();
}

Result<ActSeq> JobBook::openNut(PointId point)
{
    if (const Done may = mayAct(); !may)
        return tl::unexpected(may.error());
    if (!m_state.frame->point(point))
        return fail(ErrorKind::WrongJob, Noun::Point);
    return logOnce(NutOpenFact{point}, m_state.point(point).stage == PointStage::NutOpen);
}

Result<ActSeq> JobBook::keepAsLeft(PointId point, std::string_view reason)
{
    if (const Done may = mayAct(); !may)
        return tl::unexpected(may.error());
    if (!m_state.frame->point(point))
        return fail(ErrorKind::WrongJob, Noun::Point);
    const PointState &now = m_state.point(point);
    if (now.stage != PointStage::Left || !now.left || now.settled())
        return fail(ErrorKind::NothingToKeep, namesOf(*m_state.frame, {point}));
    auto why = checkedNote(reason);
    if (!why)
        return tl::unexpected(why.error());
    return log(KeepFact{now.left->seq, point, std::move(*why)});
}

Result<ActSeq> JobBook::sendToCheckAgain(const std::vector<PointId> &points, Disturbance cause, std::string_view why)
{
    if (const Done may = mayAct(); !may)
        return tl::unexpected(may.error());
    const bool known = std::ranges::all_of(points, [&](PointId point) { return m_state.frame->point(point) != nullptr; });
    if (points.empty() || !known)
        return fail(ErrorKind::WrongJob, Noun::Point);
    std::vector<PointId> left;
    std::ranges::copy_if(points, std::back_inserter(left), [&](PointId point) { return m_state.point(point).stage == PointStage::Left; });
    if (left.empty())
        return fail(ErrorKind::NotFound, Noun::PointThatWasLeft);
    auto note = checkedNote(why);
    if (!note)
        return tl::unexpected(note.error());
    return log(CheckAgainFact{std::move(left), std::move(*note), cause});
}

Result<ActSeq> JobBook::choosePlan(const CrankPlan &plan)
{
    return log(PlanFact{m_state.frame->engine.id, plan});
}

Result<ActSeq> JobBook::markStepDone(StepId step)
{
    if (const Done may = mayAct(); !may)
        return tl::unexpected(may.error());
    const Step *line = m_state.frame->step(step);
    if (!line)
        return fail(ErrorKind::WrongJob, Noun::Step);
    if (line->kind == StepKind::Tighten && line->joint)
        return fail(ErrorKind::StepByFasteners, line->title);
    return logOnce(StepDoneFact{step}, m_state.stepsDone.contains(step));
}

CrankPlan JobBook::proposedPlan() const
{
    const JobFrame &frame = *m_state.frame;
    const EngineDesign &design = frame.engine.design;
    if (frame.table) {
        const SpecSource &source = frame.table->source;
        const std::string page = source.page.empty() ? std::string() : (source.manual.empty() ? "p. " : " p. ") + source.page;
        if (auto plan = planFromTable(design, frame.table->lines, source.manual + page))
            return std::move(*plan);
    }
    const auto from = m_state.crank ? m_state.crank->crank : std::nullopt;
    const auto generated = [&](PlanWay way) {
        auto plan = planFor(design, {.way = way, .from = from});
        return plan ? std::move(*plan) : generatePlan(design, way);
    };
    CrankPlan two = generated(PlanWay::TwoPositions);
    if (two.unreached.empty())
        return two;
    CrankPlan each = generated(PlanWay::EachOnCompression);
    return each.unreached.size() < two.unreached.size() ? each : two;
}

} // namespace asleft
