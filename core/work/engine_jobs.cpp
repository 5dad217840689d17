#include "engine_jobs.h"

#include <shop/outlook.h>
#include <store/journal.h>
#include <store/things.h>

#include <algorithm>
#include <limits>
#include <map>

namespace asleft {

namespace {

constexpr int jobsLookedAt = 20;

/// The jobs of an engine that have acts, at most so many at each place it has been.
Result<std::vector<JobRow>> workedJobs(Database &database, EngineId engine, int mostAtPlace)
{
    const auto fits = engineFits(database, engine);
    if (!fits)
        return tl::unexpected(fits.error());
    std::set<VehicleId> places;
    for (const EngineFit &fit : *fits)
        places.insert(fit.vehicle);
    std::vector<JobRow> worked;
    for (const VehicleId place : places) {
        const auto rows = jobs(database, {.vehicle = place, .before = {}, .most = mostAtPlace, .engine = engine});
        if (!rows)
            return tl::unexpected(rows.error());
        std::ranges::copy_if(*rows, std::back_inserter(worked), [](const JobRow &row) { return row.acts > 0; });
    }
    return worked;
}

/// The acts of several jobs of one engine, as if it had been a single job: a nut is locked by whoever locks it.
class ActsOfEngine {
public:
    explicit ActsOfEngine(const JobState &state) : m_state(state)
    {
        for (const Act &act : state.acts)
            take(act);
    }

    void take(Act act)
    {
        act.what.job = m_state.frame->job.id;
        m_acts.insert_or_assign(act.seq, std::move(act));
    }

    [[nodiscard]] JobState folded() const
    {
        std::vector<Act> inOrder;
        for (const auto &[seq, act] : m_acts)
            inOrder.push_back(act);
        return fold(m_state.frame, inOrder);
    }

private:
    const JobState &m_state;
    std::map<ActSeq, Act> m_acts;
};

/// The act in force that opened this nut last.
const Act *openedBy(const JobState &state, PointId point)
{
    const auto opened = std::find_if(state.acts.rbegin(), state.acts.rend(), [&](const Act &act) {
        const auto *nut = std::get_if<NutOpenFact>(&act.what.fact);
        return nut && nut->point == point && state.inForce(act);
    });
    return opened == state.acts.rend() ? nullptr : &*opened;
}

} // namespace

Result<bool> isWorkedOn(Database &database, EngineId engine)
{
    return workedJobs(database, engine, std::numeric_limits<int>::max()).map([](const auto &worked) { return !worked.empty(); });
}

Result<OpenElsewhere> openElsewhere(Database &database, const JobState &state)
{
    const auto others = workedJobs(database, state.frame->engine.id, jobsLookedAt);
    if (!others)
        return tl::unexpected(others.error());
    ActsOfEngine engine(state);
    std::map<ActSeq, std::string> titles;
    for (const JobRow &other : *others) {
        if (other.id == state.frame->job.id)
            continue;
        const auto acts = jobActs(database, other.id, state.frame->engine.id);
        if (!acts)
            return tl::unexpected(acts.error());
        for (const Act &act : *acts) {
            if (act.what.job == other.id)
                titles.emplace(act.seq, other.title);
            engine.take(act);
        }
    }
    if (titles.empty())
        return OpenElsewhere{};
    const JobState whole = engine.folded();
    OpenElsewhere open{.nuts = {}, .job = {}, .bleedsDown = bleedDownUntil(whole)};
    for (const PointId point : openNuts(whole)) {
        const Act *opened = openedBy(whole, point);
        const auto title = opened ? titles.find(opened->seq) : titles.end();
        if (title == titles.end())
            continue; // opened here: known already
        if (open.nuts.empty())
            open.job = title->second;
        open.nuts.push_back(point);
    }
    return open;
}

} // namespace asleft
