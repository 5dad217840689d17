#include <shop/state.h>

#include <algorithm>

namespace asleft {

namespace {

template <class Rows, class Id>
auto rowWithId(const Rows &rows, Id id) -> const typename Rows::value_type *
{
    const auto row = std::ranges::find(rows, id, &Rows::value_type::id);
    return row == rows.end() ? nullptr : &*row;
}

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
        point->checkAgainWhy.clear();
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
        if (point && point->left && point->left->seq == keep.reading)
            point->kept = keep.reason;
    }

    void operator()(const CheckAgainFact &again)
    {
        for (const PointId id : again.points) {
            PointState *point = ofThisJob(id);
            if (!point || point->stage != PointStage::Left)
                continue;
            point->stage = PointStage::CheckAgain;
            point->checkAgainWhy = again.why;
        }
    }

    void operator()(const CautionsFact &) {}
    void operator()(const WithdrawFact &) {}

private:
    PointState *ofThisJob(PointId id)
    {
        const auto found = m_state.points.find(id);
        return found == m_state.points.end() ? nullptr : &found->second;
    }

    [[nodiscard]] Judged judged(const ReadingFact &reading) const
    {
        const Spec *spec = reading.judgedBy ? m_state.frame->spec(*reading.judgedBy) : nullptr;
        return {m_act.seq, m_act.what.at, m_act.what.who, reading, verdictOf(reading, spec)};
    }

    void foundReading(PointState &point, const ReadingFact &reading)
    {
        point.found = judged(reading);
        if (point.stage == PointStage::Untouched)
            point.stage = PointStage::Found;
    }

    void leftReading(PointState &point, const ReadingFact &reading)
    {
        // A correction mends what was written about a past reading; it does not lock a nut that was opened since.
        if (reading.corrects && !(point.left && point.left->seq == *reading.corrects))
            return;
        point.left = judged(reading);
        point.kept.reset();
        if (reading.corrects)
            return;
        point.stage = PointStage::Left;
        point.nutOpenSince.reset();
        point.checkAgainWhy.clear();
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
}

void lay(JobState &state, const Act &act)
{
    // Of other jobs only the crank's moves are here: the crank belongs to the engine.
    if (act.what.job != state.frame->job.id && !std::holds_alternative<CrankFact>(act.what.fact))
        return;
    std::visit(Folding(state, act), act.what.fact);
}

void layAll(JobState &state)
{
    startAfresh(state);
    state.withdrawn = withdrawnAmong(state.acts);
    for (const Act &act : state.acts) {
        if (state.inForce(act))
            lay(state, act);
    }
}

} // namespace

const SettingPoint *JobFrame::point(PointId id) const
{
    return rowWithId(engine.points, id);
}

const SettingPoint *JobFrame::pointAt(AdjusterRef valve) const
{
    const auto found = std::ranges::find(engine.points, valve, &SettingPoint::adjuster);
    return found == engine.points.end() ? nullptr : &*found;
}

const Step *JobFrame::step(StepId id) const
{
    return rowWithId(job.steps, id);
}

const Person *JobFrame::person(PersonId id) const
{
    return rowWithId(people, id);
}

const Spec *JobFrame::spec(SpecId id) const
{
    return rowWithId(specs, id);
}

const Spec *JobFrame::specNow(SpecSubject subject) const
{
    const Spec *newest = nullptr;
    for (const Spec &spec : specs) {
        if (spec.subject == subject && (!newest || spec.revision > newest->revision))
            newest = &spec;
    }
    return newest;
}

const Spec *JobFrame::lashNow(Side side) const
{
    return specNow(side == Side::Intake ? SpecSubject::IntakeLash : SpecSubject::ExhaustLash);
}

const SpecBand<Length> *JobFrame::lashBandsNow(Side side) const
{
    const Spec *spec = lashNow(side);
    return spec ? std::get_if<SpecBand<Length>>(&spec->asked) : nullptr;
}

bool PointState::settled() const
{
    if (stage != PointStage::Left || !left)
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
    layAll(state);
    return state;
}

void foldOne(JobState &state, const Act &act)
{
    if (std::ranges::find(state.acts, act.seq, &Act::seq) != state.acts.end())
        return;
    // Another seat's act may arrive behind one of ours with a higher seq.
    const bool inOrder = state.acts.empty() || state.acts.back().seq < act.seq;
    state.acts.insert(std::ranges::upper_bound(state.acts, act.seq, {}, &Act::seq), act);
    if (inOrder && !act.what.withdraws)
        lay(state, state.acts.back());
    else
        layAll(state);
}

} // namespace asleft
