#include <bench/other_stations.h>

#include <algorithm>

namespace asleft {

const Act *actOf(const JobState &state, ActSeq seq)
{
    const auto act = std::ranges::find(state.acts, seq, &Act::seq);
    return act == state.acts.end() ? nullptr : &*act;
}

const Act &spokenOf(const JobState &state, const Act &act)
{
    const Act *withdrawn = act.what.withdraws ? actOf(state, *act.what.withdraws) : nullptr;
    return withdrawn ? *withdrawn : act;
}

OtherStations::OtherStations(const JobState &state, std::string station) : m_station(std::move(station))
{
    hearAll(state);
}

void OtherStations::hearAll(const JobState &state)
{
    if (!state.acts.empty())
        m_heard = state.acts.back().seq;
}

const Act *OtherStations::heardOf(const JobState &state, const std::function<bool(const Act &)> &isAbout)
{
    const Act *news = nullptr;
    for (const Act &act : state.acts)
        if ((!m_heard || act.seq > *m_heard) && act.what.station != m_station && isAbout(act))
            news = &act;
    hearAll(state);
    return news;
}

const Act *underneath(const JobState &state, const Act &act)
{
    for (const PointId point : pointsOf(act.what.fact)) {
        const PointState &now = state.point(point);
        if (now.left && now.left->seq == act.seq && now.leftByTwo)
            return actOf(state, now.leftByTwo->seq);
    }
    return nullptr;
}

} // namespace asleft
