#include <shop/state.h>

#include "bridges.h"
#include "history.h"
#include "joint_fold.h"

#include <algorithm>

namespace asleft {

namespace {

/// Lays one act's fact onto a state. Only acts in force reach it.
class Folding {
public:
    Folding(JobState &state, const Act &act) : m_state(state), m_act(act) {}

    void operator()(const ReadingFact &reading)
    {
        if (PointState *point = ofThisJob(reading.point))
            reading.phase == Phase::AsFound ? foundReading(*point, reading) : leftReading(*point, reading);
    }

    void operator()(const AllLeftFact &all)
    {
        for (const ReadingFact &reading : all.readings)
            (*this)(reading);
    }

    void operator()(const NutOpenFact &open)
    {
        PointState *point = ofThisJob(open.point);
        if (!point)
            return;
        if (point->stage != PointStage::NutOpen)
            point->nutOpenSince = m_act.what.at;
        point->stage = PointStage::NutOpen;
        point->left.reset();
        point->kept.reset();
        nothingDisturbs(*point);
        point->leftByTwo.reset();
    }

    void operator()(const CrankFact &moved)
    {
        if (moved.engine == m_state.frame->engine.id)
            m_state.crank = CrankState{moved.crank, moved.how, m_act.what.at, m_act.seq};
    }

    void operator()(const PlanFact &chosen) { m_state.plan = chosen.plan; }
    void operator()(const StepDoneFact &done) { m_state.stepsDone.insert(done.step); }

    void operator()(const KeepFact &keep)
    {
        PointState *point = ofThisJob(keep.point);
        if (!point || !point->left || point->left->seq != keep.reading)
            return;
        point->kept = keep.reason;
        point->leftByTwo.reset();
    }

    void operator()(const CheckAgainFact &again)
    {
        for (const PointId id : again.points) {
            if (PointState *point = ofThisJob(id))
                disturb(*point, again.cause, again.why);
        }
    }

    void operator()(const FindingFact &found) { m_state.findings.push_back({m_act.seq, m_act.what.at, m_act.what.who, found}); }

    // These change nothing: what was withdrawn is not folded at all.
    void operator()(const CautionsFact &) {}
    void operator()(const WithdrawFact &) {}
    /// A joint is folded as a whole.
    void operator()(const JointFact auto &) {}

private:
    PointState *ofThisJob(PointId id)
    {
        const auto found = m_state.points.find(id);
        return found == m_state.points.end() ? nullptr : &found->second;
    }

    [[nodiscard]] Judged judged(const ReadingFact &reading) const
    {
        const Spec *spec = reading.judgedBy ? m_state.frame->spec(*reading.judgedBy) : nullptr;
        return {m_act.seq, m_act.what.at, m_act.what.who, m_act.what.station, reading, verdictOf(reading, spec)};
    }

    void foundReading(PointState &point, const ReadingFact &reading)
    {
        point.found = judged(reading);
        if (point.stage == PointStage::Untouched)
            point.stage = PointStage::Found;
    }

    void leftReading(PointState &point, const ReadingFact &reading)
    {
        if (reading.corrects) {
            correctLeft(point, reading);
            return;
        }
        point.leftByTwo = cameOnTopOf(point);
        point.left = judged(reading);
        point.kept.reset();
        point.stage = PointStage::Left;
        point.nutOpenSince.reset();
        nothingDisturbs(point);
        disturbPairOf(reading.point);
    }

    /// A correction mends what was written about a past reading; it does not lock a nut that was opened since.
    void correctLeft(PointState &point, const ReadingFact &reading)
    {
        if (!point.left || point.left->seq != *reading.corrects)
            return;
        // The computer the reading came on top of corrects it, so it knows of both.
        if (point.leftByTwo && isKnownHere(*point.leftByTwo))
            point.leftByTwo.reset();
        point.left = judged(reading);
        point.kept.reset();
    }

    [[nodiscard]] bool isKnownHere(const Judged &judged) const { return knownAt(m_state, judged, m_act.what.station); }

    /// Another computer's reading that this act's computer shows no sign of knowing.
    [[nodiscard]] std::optional<Judged> cameOnTopOf(const PointState &point) const
    {
        if (point.stage != PointStage::Left || isKnownHere(*point.left))
            return std::nullopt;
        // Both computers see that a point was left by two; whichever of them sets it once more has settled it.
        if (point.leftByTwo && isKnownHere(*point.leftByTwo))
            return std::nullopt;
        return point.left;
    }

    static void disturb(PointState &point, Disturbance cause, const std::string &why)
    {
        if (point.stage != PointStage::Left)
            return;
        point.stage = PointStage::CheckAgain;
        point.checkAgainWhy = why;
        point.disturbance = cause;
        point.leftByTwo.reset();
    }

    static void nothingDisturbs(PointState &point)
    {
        point.checkAgainWhy.clear();
        point.disturbance.reset();
    }

    /// A lash was set over its bridge as the bridge stood then.
    void disturbPairOf(PointId bridge)
    {
        const SettingPoint *screw = m_state.frame->point(bridge);
        const SettingPoint *lash = screw ? lashOfBridge(*m_state.frame, *screw) : nullptr;
        PointState *pair = lash ? ofThisJob(lash->id) : nullptr;
        const bool leftBefore = pair && pair->left && pair->left->seq < m_act.seq; // not at one stroke with the bridge
        if (leftBefore)
            disturb(*pair, Disturbance::BridgeSet, {});
    }

    JobState &m_state;
    const Act &m_act;
};

/// Newest first, so that a withdrawal that was itself withdrawn no longer takes anything back.
std::set<ActSeq> withdrawnAmong(const std::vector<Act> &acts)
{
    std::set<ActSeq> withdrawn;
    for (auto act = acts.rbegin(); act != acts.rend(); ++act) {
        if (act->what.withdraws && !withdrawn.contains(act->seq))
            withdrawn.insert(*act->what.withdraws);
    }
    return withdrawn;
}

void startAfresh(JobState &state)
{
    state.points.clear();
    for (const SettingPoint &point : state.frame->engine.points)
        state.points.emplace(point.id, PointState{});
    state.crank.reset();
    state.plan.reset();
    state.stepsDone.clear();
    state.findings.clear();
}

void apply(JobState &state, const Act &act)
{
    // Of other jobs only the crank's moves are here: the crank belongs to the engine.
    if (act.what.job != state.frame->job.id && !std::holds_alternative<CrankFact>(act.what.fact))
        return;
    std::visit(Folding(state, act), act.what.fact);
}

void applyAll(JobState &state)
{
    startAfresh(state);
    state.withdrawn = withdrawnAmong(state.acts);
    for (const Act &act : state.acts) {
        if (state.inForce(act))
            apply(state, act);
    }
    foldJoints(state);
}

} // namespace

bool PointState::settled() const
{
    if (stage != PointStage::Left || !left || leftByTwo)
        return false;
    switch (left->verdict) {
    case Verdict::Low:
    case Verdict::High:
    case Verdict::TooClose: return kept.has_value();
    case Verdict::Inside:
    case Verdict::ByFeel:
    case Verdict::NotComparable:
    case Verdict::NoSpec: return true;
    }
    return true;
}

JobState fold(std::shared_ptr<const JobFrame> frame, std::span<const Act> acts)
{
    JobState state;
    state.frame = std::move(frame);
    state.acts.assign(acts.begin(), acts.end());
    applyAll(state);
    return state;
}

void foldOne(JobState &state, const Act &act)
{
    if (std::ranges::find(state.acts, act.seq, &Act::seq) != state.acts.end())
        return;
    // Another computer's act may arrive behind one of ours with a higher seq.
    const bool inOrder = state.acts.empty() || state.acts.back().seq < act.seq;
    state.acts.insert(std::ranges::upper_bound(state.acts, act.seq, {}, &Act::seq), act);
    if (!inOrder || act.what.withdraws) {
        applyAll(state);
        return;
    }
    apply(state, act);
    if (const auto joint = jointOf(act.what.fact); joint && act.what.job == state.frame->job.id)
        foldJoint(state, *joint);
}

} // namespace asleft
