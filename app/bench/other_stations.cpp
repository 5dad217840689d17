#include <bench/other_stations.h>

#include <algorithm>

namespace asleft {

namespace {

const Act *actOf(const JobState &state, ActSeq seq)
{
    const auto act = std::ranges::find(state.acts, seq, &Act::seq);
    return act == state.acts.end() ? nullptr : &*act;
}

bool isAbout(const JobState &state, const Act &act, PointId point)
{
    const Act *spoken = act.what.withdraws ? actOf(state, *act.what.withdraws) : &act;
    return spoken && std::ranges::count(pointsOf(spoken->what.fact), point) > 0;
}

} // namespace

OtherStations::OtherStations(const JobState &state, std::string station) : m_station(std::move(station))
{
    heardOf(state, std::nullopt);
}

const Act *OtherStations::heardOf(const JobState &state, std::optional<PointId> point)
{
    const Act *news = nullptr;
    for (const Act &act : state.acts) {
        const bool heard = m_heard && act.seq <= *m_heard;
        if (!heard && point && act.what.station != m_station && isAbout(state, act, *point))
            news = &act;
    }
    if (!state.acts.empty())
        m_heard = state.acts.back().seq;
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
