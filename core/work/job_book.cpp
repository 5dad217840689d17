#include <work/job_book.h>

#include "inside.h"
#include "job_frame.h"

#include <store/journal.h>

#include <algorithm>

namespace asleft {

namespace {

bool touchesFrame(const Change &change, const JobFrame &frame)
{
    switch (change.what) {
    case Change::What::Vehicles:
    case Change::What::Specs: return !change.engine || *change.engine == frame.engine.id;
    case Change::What::People:
    case Change::What::Tools: return true;
    case Change::What::Jobs:
    case Change::What::Acts: return false;
    }
    return false;
}

std::string namesOf(const JobFrame &frame, const std::vector<PointId> &points)
{
    std::string names;
    for (const PointId id : points) {
        const SettingPoint *point = frame.point(id);
        names += (names.empty() ? "" : ", ") + (point ? shortName(frame.engine.design, point->adjuster) : std::string("?"));
    }
    return names;
}

/// Whether withdrawing this withdrawal would set a turn of the crank in force again.
bool bringsBackATurn(const JobState &state, ActSeq withdrawal)
{
    const auto act = std::ranges::find(state.acts, withdrawal, &Act::seq);
    if (act == state.acts.end() || !act->what.withdraws)
        return false;
    const auto target = std::ranges::find(state.acts, *act->what.withdraws, &Act::seq);
    const auto *crank = target == state.acts.end() ? nullptr : std::get_if<CrankFact>(&target->what.fact);
    return crank && crank->how == CrankHow::Turned;
}

std::string nameOf(const JobFrame &frame, PointId point)
{
    return namesOf(frame, {point});
}

} // namespace

Result<std::unique_ptr<JobBook>> JobBook::open(Garage &garage, JobId job)
{
    Database &database = *garage.inside().database;
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
        if (change.what == Change::What::Acts)
            catchUp(); // another open job may have moved this engine's crank
        else if (touchesFrame(change, *m_state.frame))
            reloadFrame();
    });
}

const Tool *JobBook::tool() const
{
    if (!m_sitting.tool)
        return nullptr;
    const auto &sets = m_state.frame->tools;
    const auto found = std::ranges::find(sets, *m_sitting.tool, &Tool::id);
    return found == sets.end() ? nullptr : &*found;
}

void JobBook::setWho(PersonId who)
{
    m_sitting.who = who;
    Q_EMIT changed();
}

void JobBook::setTool(std::optional<ToolId> set)
{
    m_sitting.tool = set;
    Q_EMIT changed();
}

void JobBook::setCondition(EngineCondition condition)
{
    m_sitting.condition = condition;
    Q_EMIT changed();
}

Result<ActSeq> JobBook::openNut(PointId point)
{
    if (!m_state.frame->point(point))
        return fail(ErrorKind::WrongJob, "point");
    return logOnce(NutOpenFact{point}, m_state.point(point).stage == PointStage::NutOpen);
}

Result<ActSeq> JobBook::keepAsLeft(PointId point, std::string_view reason)
{
    if (!m_state.frame->point(point))
        return fail(ErrorKind::WrongJob, "point");
    const PointState &now = m_state.point(point);
    if (now.stage != PointStage::Left || !now.left || now.settled())
        return fail(ErrorKind::NothingToKeep, nameOf(*m_state.frame, point));
    return log(KeepFact{now.left->seq, point, trimmedText(reason)});
}

Result<ActSeq> JobBook::sendToCheckAgain(const std::vector<PointId> &points, std::string_view why)
{
    const bool known = std::ranges::all_of(points, [&](PointId point) { return m_state.frame->point(point) != nullptr; });
    if (points.empty() || !known)
        return fail(ErrorKind::WrongJob, "point");
    std::vector<PointId> left;
    std::ranges::copy_if(points, std::back_inserter(left), [&](PointId point) { return m_state.point(point).stage == PointStage::Left; });
    if (left.empty() && m_sitting.who)
        return fail(ErrorKind::NotFound, "point that was left");
    return log(CheckAgainFact{std::move(left), trimmedText(why)});
}

Result<ActSeq> JobBook::confirmCrank(std::optional<Angle> crank)
{
    const auto stands = crank ? std::optional(inCycle(*crank)) : std::nullopt;
    return log(CrankFact{m_state.frame->engine.id, stands, CrankHow::Confirmed});
}

Result<ActSeq> JobBook::turnCrank(Angle to)
{
    if (const Done fresh = catchUp(); !fresh)
        return tl::unexpected(fresh.error());
    if (const auto open = openNuts(m_state); !open.empty())
        return fail(ErrorKind::NutStillOpen, namesOf(*m_state.frame, open));
    if (!m_sitting.crankConfirmed || !m_state.crank || !m_state.crank->crank)
        return fail(ErrorKind::CrankNotConfirmed);
    if (!m_sitting.turningCautionsRead)
        return fail(ErrorKind::CautionsNotRead);
    return log(CrankFact{m_state.frame->engine.id, inCycle(to), CrankHow::Turned});
}

Result<ActSeq> JobBook::readTurningCautions()
{
    return log(CautionsFact{turningCautions()});
}

Result<ActSeq> JobBook::choosePlan(const CrankPlan &plan)
{
    return log(PlanFact{m_state.frame->engine.id, plan});
}

Result<ActSeq> JobBook::markStepDone(StepId step)
{
    if (!m_state.frame->step(step))
        return fail(ErrorKind::WrongJob, "step");
    return logOnce(StepDoneFact{step}, m_state.stepsDone.contains(step));
}

Result<ActSeq> JobBook::undo()
{
    if (const Done fresh = catchUp(); !fresh)
        return tl::unexpected(fresh.error());
    const auto last = undoable(m_state, m_garage.seat());
    if (!last)
        return fail(ErrorKind::NothingToUndo);
    if (const Act *resting = restingOn(m_state, *last))
        return fail(ErrorKind::RestedOn, namesOf(*m_state.frame, pointsOf(resting->what.fact)));
    return log(WithdrawFact{}, *last);
}

Result<ActSeq> JobBook::redo()
{
    const auto withdrawal = redoable(m_state, m_garage.seat());
    if (!withdrawal)
        return fail(ErrorKind::NothingToUndo);
    // Taking a turn of the crank up again is turning it: no nut may have been opened meanwhile.
    const auto open = openNuts(m_state);
    if (!open.empty() && bringsBackATurn(m_state, *withdrawal))
        return fail(ErrorKind::NutStillOpen, namesOf(*m_state.frame, open));
    return log(WithdrawFact{}, *withdrawal);
}

std::vector<Caution> JobBook::turningCautions()
{
    return {Caution::Neutral, Caution::StandsAndChocks, Caution::BatteryOff, Caution::HandsClear};
}

CrankPlan JobBook::proposedPlan() const
{
    const JobFrame &frame = *m_state.frame;
    if (frame.table) {
        const SpecSource &source = frame.table->source;
        const std::string page = source.page.empty() ? std::string() : (source.manual.empty() ? "p. " : " p. ") + source.page;
        if (auto plan = planFromTable(frame.engine.design, frame.table->lines, source.manual + page))
            return std::move(*plan);
    }
    CrankPlan two = generatePlan(frame.engine.design, PlanWay::TwoPositions);
    return two.unreached.empty() ? two : generatePlan(frame.engine.design, PlanWay::EachOnCompression);
}

Result<ActSeq> JobBook::logOnce(Fact fact, bool standsAlready)
{
    if (standsAlready) {
        const auto same = [&](const Act &act) { return m_state.inForce(act) && act.what.fact == fact; };
        const auto act = std::find_if(m_state.acts.rbegin(), m_state.acts.rend(), same);
        if (act != m_state.acts.rend())
            return act->seq;
    }
    return log(std::move(fact));
}

Result<ActSeq> JobBook::log(Fact fact, std::optional<ActSeq> withdraws)
{
    if (!m_sitting.who)
        return fail(ErrorKind::PersonMissing);
    const auto &around = m_garage.inside().surroundings;
    NewAct act{{}, m_state.frame->job.id, *m_sitting.who, around.seat, around.clock->now(), withdraws, std::move(fact)};
    const bool again = m_failed && m_failed->fact == act.fact && m_failed->withdraws == act.withdraws && m_failed->who == act.who;
    if (again)
        act = *m_failed;
    else
        act.uid = around.uids->next();

    auto seq = inTransaction(m_garage, [&](Transaction &transaction) { return append(transaction, act); });
    if (!seq) {
        m_failed = std::move(act);
        return seq;
    }
    m_failed.reset();
    const auto crankBefore = m_state.crank;
    // Read back rather than laid on from memory: another seat's acts may stand before ours. If that cannot be read now, ours is
    // stored all the same and is shown.
    if (!readOn())
        foldOne(m_state, Act{*seq, act});
    sittingFollows(act.fact, m_state.crank != crankBefore);
    Q_EMIT changed();
    Q_EMIT m_garage.changed({.what = Change::What::Acts, .job = m_state.frame->job.id});
    return seq;
}

void JobBook::sittingFollows(const Fact &fact, bool crankMoved)
{
    if (const auto *crank = std::get_if<CrankFact>(&fact); crank && crank->how == CrankHow::Confirmed)
        m_sitting.crankConfirmed = true;
    if (std::holds_alternative<CautionsFact>(fact))
        m_sitting.turningCautionsRead = true;
    // Whoever takes back where the crank stands is asked again before it is turned.
    if (std::holds_alternative<WithdrawFact>(fact) && crankMoved)
        m_sitting.crankConfirmed = false;
}

Done JobBook::catchUp()
{
    const auto news = readOn();
    if (!news)
        return tl::unexpected(news.error());
    if (*news)
        Q_EMIT changed();
    return {};
}

Result<bool> JobBook::readOn()
{
    Database &database = *m_garage.inside().database;
    const auto moment = Snapshot::begin(database);
    if (!moment)
        return tl::unexpected(moment.error());
    const auto version = database.dataVersion();
    if (!version)
        return tl::unexpected(version.error());
    const auto acts = actsAfter(database, m_readUpTo, m_state.frame->job.id, m_state.frame->engine.id);
    if (!acts)
        return tl::unexpected(acts.error());
    // What another seat's acts speak of (a new spec, a new person) has to be known before they are folded.
    const bool othersWrote = *version != m_version;
    if (othersWrote) {
        auto frame = loadFrame(m_garage, m_state.frame->job.id);
        if (!frame)
            return tl::unexpected(frame.error());
        m_state = fold(std::move(*frame), std::vector<Act>(m_state.acts));
        m_version = *version;
    }
    for (const Act &act : *acts)
        foldOne(m_state, act);
    if (!acts->empty())
        m_readUpTo = acts->back().seq;
    return othersWrote || !acts->empty();
}

Done JobBook::reloadFrame()
{
    auto frame = loadFrame(m_garage, m_state.frame->job.id);
    if (!frame)
        return tl::unexpected(frame.error());
    m_state = fold(std::move(*frame), std::vector<Act>(m_state.acts));
    Q_EMIT changed();
    return {};
}

} // namespace asleft
