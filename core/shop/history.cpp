#include "history.h"

#include <algorithm>

namespace asleft {

namespace {

const Act *actAt(const JobState &state, ActSeq seq)
{
    const auto act = std::ranges::lower_bound(state.acts, seq, {}, &Act::seq);
    return act == state.acts.end() || act->seq != seq ? nullptr : &*act;
}

/// What an act's reading of this point corrects.
std::optional<ActSeq> correctedBy(const Act &act, PointId point)
{
    if (const auto *reading = std::get_if<ReadingFact>(&act.what.fact))
        return reading->corrects;
    if (const auto *all = std::get_if<AllLeftFact>(&act.what.fact)) {
        const auto own = std::ranges::find(all->readings, point, &ReadingFact::point);
        return own == all->readings.end() ? std::nullopt : own->corrects;
    }
    return std::nullopt;
}

} // namespace

std::vector<const Act *> historyOf(const JobState &state, const Judged &judged)
{
    std::vector<const Act *> history;
    std::optional<ActSeq> seq = judged.seq;
    while (const Act *act = seq ? actAt(state, *seq) : nullptr) {
        history.push_back(act);
        const auto earlier = correctedBy(*act, judged.reading.point);
        seq = earlier && *earlier < act->seq ? earlier : std::nullopt;
    }
    return history;
}

Moment takenAt(const JobState &state, const Judged &judged)
{
    const auto history = historyOf(state, judged);
    return history.empty() ? judged.at : history.back()->what.at;
}

bool knownAt(const JobState &state, const Judged &judged, std::string_view station)
{
    return std::ranges::any_of(historyOf(state, judged), [station](const Act *act) { return act->what.station == station; });
}

} // namespace asleft
