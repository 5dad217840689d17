#include <work/job_book.h>
#include <work/workshop.h>

#include "crank_moves.h"
#include "internals.h"
#include "job_frame.h"
#include "job_journal.h"
#include "joint_facts.h"
#include "taking_back.h"
#include "valve_facts.h"

#include <QScopedValueRollback>

#include <algorithm>

namespace asleft {

namespace {

/// What a session knows of the crank after these acts. What was written on paper is not what mark and stroke say now; whoever takes back
/// where the crank stands is asked again before it is turned.
void follow(Session &session, const std::vector<NewAct> &acts, bool ofSheet, bool crankMoved)
{
    for (const NewAct &act : acts) {
        if (const auto *crank = std::get_if<CrankFact>(&act.fact); crank && (ofSheet || crank->how == CrankHow::Confirmed))
            session.crankConfirmed = !ofSheet;
        if (std::holds_alternative<CautionsFact>(act.fact))
            session.turningCautionsRead = true;
        if (std::holds_alternative<WithdrawFact>(act.fact) && crankMoved)
            session.crankConfirmed = false;
    }
}

Result<Fact> stepDoneFrom(StepId step, const JobFrame &frame)
{
    const Step *line = frame.step(step);
    if (!line)
        return fail(ErrorKind::WrongJob, Noun::Step);
    if (line->kind == StepKind::Tighten && line->joint)
        return fail(ErrorKind::StepByFasteners, frame.jointNow(*line->joint)->text.name);
    return StepDoneFact{step};
}

const TickMade *lastTick(const FastenerState &fastener)
{
    return fastener.ticks.empty() ? nullptr : &fastener.ticks.back();
}

const TickMade *decidingTick(const FastenerState &fastener)
{
    return fastener.deciding();
}

} // namespace

/// Tells what has changed when an act is over and nothing of the book is needed any more: whoever is told may close the job.
class JobBook::Telling {
public:
    explicit Telling(JobBook &book) : m_book(book) {}
    Telling(const Telling &) = delete;
    Telling &operator=(const Telling &) = delete;
    /// Whether a book tells of an act of its own just now: it knows that act and need not read it.
    static bool isOf(const JobBook &book) { return teller == &book; }
    ~Telling()
    {
        Garage &garage = m_book.m_garage;
        const Change acts{.what = Change::What::Acts, .job = m_book.state().frame->job.id};
        const bool logged = std::exchange(m_book.m_logged, false);
        if (m_book.m_journal->takeNews())
            Q_EMIT m_book.changed();
        if (!logged)
            return;
        const QScopedValueRollback telling(teller, static_cast<const JobBook *>(&m_book));
        Q_EMIT garage.changed(acts);
    }

private:
    /// Only compared, never looked into, since whoever is told may have closed the job.
    static inline const JobBook *teller = nullptr;

    JobBook &m_book;
};

Result<std::unique_ptr<JobBook>> JobBook::open(Garage &garage, JobId job)
{
    auto journal = JobJournal::open(garage, job);
    if (!journal)
        return tl::unexpected(journal.error());
    return std::unique_ptr<JobBook>(new JobBook(garage, std::move(*journal)));
}

JobBook::JobBook(Garage &garage, std::unique_ptr<JobJournal> journal) : m_garage(garage), m_journal(std::move(journal))
{
    connect(&garage, &Garage::changed, this, &JobBook::heed);
}

JobBook::~JobBook() = default;

void JobBook::heed(const Change &change)
{
    if (change.what == Change::What::Acts && Telling::isOf(*this))
        return;
    const Telling atEnd(*this);
    if (change.what == Change::What::Acts)
        (void)m_journal->readOn(); // another open job may have moved this engine's crank
    else if (touchesFrame(change, *state().frame))
        (void)m_journal->reloadFrame();
}

Done JobBook::catchUp()
{
    const Telling atEnd(*this);
    return m_journal->readOn();
}

const JobState &JobBook::state() const
{
    return m_journal->state();
}

const Tool *JobBook::tool() const
{
    return m_session.tool ? state().frame->tool(*m_session.tool) : nullptr;
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

// How acts are logged.

Done JobBook::mayAct() const
{
    if (Done may = writable(m_garage); !may)
        return may;
    return m_session.who ? Done{} : Done(fail(ErrorKind::PersonMissing));
}

Done JobBook::mayActNow()
{
    Done may = mayAct();
    return may ? m_journal->readOn() : may;
}

Result<ActSeq> JobBook::store(std::vector<NewAct> acts, const FilledSheet *sheet)
{
    const auto crankBefore = state().crank;
    const auto last = m_journal->store(acts, sheet ? std::optional(*sheet) : std::nullopt);
    if (!last)
        return last;
    m_logged = true;
    follow(m_session, acts, sheet != nullptr, state().crank != crankBefore);
    return last;
}

Result<ActSeq> JobBook::log(Result<Fact> fact, std::optional<ActSeq> withdraws)
{
    if (const Done may = mayAct(); !may)
        return tl::unexpected(may.error());
    if (!fact)
        return tl::unexpected(fact.error());
    return store({m_journal->newAct(std::move(*fact), *m_session.who, withdraws)});
}

Result<ActSeq> JobBook::logOnce(Result<Fact> fact, bool standsAlready)
{
    if (fact && standsAlready && mayAct()) {
        const auto same = [&](const Act &act) { return state().inForce(act) && act.what.fact == *fact; };
        const auto act = std::find_if(state().acts.rbegin(), state().acts.rend(), same);
        if (act != state().acts.rend())
            return act->seq;
    }
    return log(std::move(fact));
}

// Valves.

Result<ReadingAsLogged> JobBook::wouldLog(const ReadingEntry &entry, std::optional<EngineCondition> condition) const
{
    Session session = m_session;
    session.condition = condition.value_or(session.condition);
    return readingAsLogged(entry, state(), session);
}

Result<ActSeq> JobBook::logReading(const ReadingEntry &entry)
{
    const Telling atEnd(*this);
    return log(wouldLog(entry).map([](ReadingAsLogged &&reading) { return Fact(std::move(reading.fact)); }));
}

Result<ActSeq> JobBook::leaveAllHere()
{
    const Telling atEnd(*this);
    return log(allLeftFrom(state(), m_session));
}

Result<ActSeq> JobBook::openNut(PointId point)
{
    const Telling atEnd(*this);
    auto opened = nutOpenFrom(point, state());
    const bool isOpen = opened && state().point(point).stage == PointStage::NutOpen;
    return logOnce(std::move(opened), isOpen);
}

Result<ActSeq> JobBook::keepAsLeft(PointId point, std::string_view reason)
{
    const Telling atEnd(*this);
    return log(keptFrom(point, reason, state()));
}

Result<ActSeq> JobBook::sendToCheckAgain(const std::vector<PointId> &points, Disturbance cause, std::string_view why)
{
    const Telling atEnd(*this);
    return log(checkAgainFrom(points, cause, why, state()));
}

Result<ActSeq> JobBook::logSheet(const std::vector<SheetEntry> &lines, std::optional<Moment> at)
{
    const Telling atEnd(*this);
    if (const Done may = mayActNow(); !may)
        return tl::unexpected(may.error());
    const auto sheet = filledSheet(lines, at, *state().frame, m_session);
    if (!sheet)
        return tl::unexpected(sheet.error());
    if (const auto *failed = m_journal->failedActs(*sheet))
        return store(*failed, &*sheet);
    auto acts = actsOf(*sheet, state(), m_session, m_journal->newAct(WithdrawFact{}, *m_session.who));
    if (!acts)
        return tl::unexpected(acts.error());
    return store(std::move(*acts), &*sheet);
}

// Steps.

Result<ActSeq> JobBook::markStepDone(StepId step)
{
    const Telling atEnd(*this);
    return logOnce(stepDoneFrom(step, *state().frame), state().stepsDone.contains(step));
}

// The crank, and taking back.

Result<ActSeq> JobBook::confirmCrank(std::optional<Angle> crank)
{
    const Telling atEnd(*this);
    return log(confirmedFrom(crank, state()));
}

Result<ActSeq> JobBook::turnCrank(Angle to, bool despiteBleedDown)
{
    const Telling atEnd(*this);
    if (const Done may = mayActNow(); !may)
        return tl::unexpected(may.error());
    return log(turnedFrom(to, despiteBleedDown, state(), m_session, m_garage));
}

Result<ActSeq> JobBook::readTurningCautions()
{
    const Telling atEnd(*this);
    return log(CautionsFact{turningCautions()});
}

std::vector<Caution> JobBook::turningCautions()
{
    return {Caution::Neutral, Caution::StandsAndChocks, Caution::BatteryOff, Caution::HandsClear};
}

Result<ActSeq> JobBook::choosePlan(const CrankPlan &plan)
{
    const Telling atEnd(*this);
    return log(PlanFact{state().frame->engine.id, plan});
}

CrankPlan JobBook::proposedPlan() const
{
    return asleft::proposedPlan(state());
}

Result<std::optional<ActSeq>> JobBook::mayTakeBackNow(const std::function<bool(const Fact &)> &isThis)
{
    if (const Done may = mayAct(); !may)
        return tl::unexpected(may.error());
    return m_journal->readOnToTakeBack(isThis);
}

Result<ActSeq> JobBook::withdraw(Result<ActSeq> (*which)(const JobState &, Garage &))
{
    const auto arrived = mayTakeBackNow(isWithdrawal);
    if (!arrived)
        return tl::unexpected(arrived.error());
    if (*arrived)
        return **arrived;
    const auto taken = which(state(), m_garage);
    return taken ? log(WithdrawFact{}, *taken) : taken;
}

Result<ActSeq> JobBook::undo()
{
    const Telling atEnd(*this);
    return withdraw(toUndo);
}

Result<ActSeq> JobBook::redo()
{
    const Telling atEnd(*this);
    return withdraw(toRedo);
}

// Joints.

Result<const Joint *> JobBook::jointOf(JointId joint) const
{
    if (!state().frame->jointNow(joint))
        return fail(ErrorKind::WrongJob, Noun::Joint);
    return &jointInHand(state(), joint);
}

Result<const Joint *> JobBook::jointToWork(JointId joint)
{
    return mayActNow().and_then([&] { return jointOf(joint); });
}

Result<ActSeq> JobBook::loosen(const LoosenEntry &entry)
{
    const Telling atEnd(*this);
    const auto joint = jointToWork(entry.joint);
    if (!joint)
        return tl::unexpected(joint.error());
    return log(loosenedFrom(entry, **joint, *state().frame));
}

Result<TicksAsLogged> JobBook::wouldLog(const TickEntry &entry) const
{
    const auto joint = jointOf(entry.joint);
    if (!joint)
        return tl::unexpected(joint.error());
    return ticksAsLogged(entry, **joint, *state().frame, localDay(m_garage.now()));
}

Result<ActSeq> JobBook::tick(const TickEntry &entry)
{
    const Telling atEnd(*this);
    const auto joint = jointToWork(entry.joint);
    if (!joint)
        return tl::unexpected(joint.error());
    auto ticks = wouldLog(entry);
    if (!ticks)
        return tl::unexpected(ticks.error());
    if (!m_journal->arrivedBefore(m_journal->newAct(ticks->fact, *m_session.who))) {
        if (const Done turn = inTurn(ticks->fact, **joint, state().joints.at(entry.joint).progress); !turn)
            return tl::unexpected(turn.error());
    }
    return log(std::move(ticks->fact));
}

Result<ActSeq> JobBook::untickFrom(JointId joint, int fastener, const TickMade *(*first)(const FastenerState &))
{
    // As it stood when it was said: one that failed then and was on disk all the same says just this.
    const auto before = untickedFrom(state(), joint, fastener, first);
    const auto arrived = mayTakeBackNow([&](const Fact &fact) { return before && fact == Fact(*before); });
    if (!arrived)
        return tl::unexpected(arrived.error());
    if (*arrived)
        return **arrived;
    const auto known = jointOf(joint);
    if (!known)
        return tl::unexpected(known.error());
    if (const auto there = fastenersIn(**known, {fastener}); !there)
        return tl::unexpected(there.error());
    auto unticked = untickedFrom(state(), joint, fastener, first);
    if (!unticked)
        return fail(ErrorKind::NotTicked, std::to_string(fastener));
    return log(std::move(*unticked));
}

Result<ActSeq> JobBook::untick(JointId joint, int fastener)
{
    const Telling atEnd(*this);
    return untickFrom(joint, fastener, lastTick);
}

Result<ActSeq> JobBook::untickTarget(JointId joint, int fastener)
{
    const Telling atEnd(*this);
    return untickFrom(joint, fastener, decidingTick);
}

Result<ActSeq> JobBook::sayFitted(JointId joint, const std::vector<int> &fasteners, Fitted fitted)
{
    const Telling atEnd(*this);
    const auto known = jointToWork(joint);
    if (!known)
        return tl::unexpected(known.error());
    auto said = fittedFrom(**known, fasteners, fitted);
    const bool stands = said && saidFitted(*said, state().joints.at(joint));
    return logOnce(std::move(said), stands);
}

Result<ActSeq> JobBook::acceptJoint(JointId joint, AcceptedWhat what, const std::vector<int> &fasteners, std::string_view reason)
{
    const Telling atEnd(*this);
    const auto known = jointToWork(joint);
    if (!known)
        return tl::unexpected(known.error());
    auto accepted = acceptedFrom(**known, state().joints.at(joint), what, fasteners, reason);
    if (accepted || accepted.error().kind != ErrorKind::NothingToAccept)
        return log(std::move(accepted));
    // It may have been on disk all the same: then there is nothing left to accept because of it.
    const Act *last = lastOn(state(), joint);
    const auto *before = last ? std::get_if<AcceptedFact>(&last->what.fact) : nullptr;
    const bool same = before && before->what == what && before->reason == trimmed(reason);
    if (same && m_journal->arrivedBefore(m_journal->newAct(*before, *m_session.who)))
        return log(*before);
    return tl::unexpected(accepted.error());
}

Result<ActSeq> JobBook::beginJoint(JointId joint)
{
    const Telling atEnd(*this);
    if (const auto known = jointToWork(joint); !known)
        return tl::unexpected(known.error());
    const Fact begun = JointBegunFact{joint, state().frame->jointNow(joint)->revision};
    const Act *last = lastOn(state(), joint);
    return logOnce(begun, last && last->what.fact == begun);
}

Result<ActSeq> JobBook::noteFinding(const Subject &subject, std::string_view text)
{
    const Telling atEnd(*this);
    if (const Done may = mayActNow(); !may)
        return tl::unexpected(may.error());
    return log(findingFrom(subject, text, state()));
}

} // namespace asleft
