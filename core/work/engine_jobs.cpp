#include "engine_jobs.h"

#include <shop/outlook.h>
#include <store/journal.h>
#include <store/things.h>

#include <algorithm>
#include <map>

namespace asleft {

namespace {

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

Result<OpenElsewhere> openElsewhere(Database &database, const JobState &state)
{
    std::vector<PointId> points;
    for (const SettingPoint &point : state.frame->engine.points)
        points.push_back(point.id);
    const auto acts = newestAtPoints(database, points, state.frame->job.id);
    if (!acts)
        return tl::unexpected(acts.error());
    if (acts->empty())
        return OpenElsewhere{};
    ActsOfEngine engine(state);
    std::map<ActSeq, JobId> jobs;
    for (const Act &act : *acts) {
        jobs.emplace(act.seq, act.what.job);
        engine.take(act);
    }
    const JobState whole = engine.folded();
    OpenElsewhere open{.nuts = {}, .job = {}, .bleedsDown = bleedDownUntil(whole)};
    for (const PointId point : openNuts(whole)) {
        const Act *opened = openedBy(whole, point);
        const auto known = opened ? jobs.find(opened->seq) : jobs.end();
        if (known == jobs.end())
            continue; // opened here: known already
        if (open.nuts.empty()) {
            const auto itself = job(database, known->second);
            if (!itself)
                return tl::unexpected(itself.error());
            open.job = itself->title;
        }
        open.nuts.push_back(point);
    }
    return open;
}

} // namespace asleft
