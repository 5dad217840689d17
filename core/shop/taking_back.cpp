#include <shop/outlook.h>

#include "bridges.h"

#include <algorithm>

namespace asleft {

namespace {

bool takesBack(const Act &act)
{
    return std::holds_alternative<WithdrawFact>(act.what.fact);
}

bool isCautions(const Act &act)
{
    return std::holds_alternative<CautionsFact>(act.what.fact);
}

/// The plan a job began with: stored by the program itself, and a job is not worked without one.
bool isFirstPlan(const JobState &state, const Act &act)
{
    const auto plan = [&](const Act &each) {
        return each.what.job == state.frame->job.id && std::holds_alternative<PlanFact>(each.what.fact);
    };
    const auto first = std::ranges::find_if(state.acts, plan);
    return first != state.acts.end() && first->seq == act.seq;
}

/// The points an act says were left.
std::vector<PointId> leftBy(const Act &act)
{
    if (const auto *reading = std::get_if<ReadingFact>(&act.what.fact))
        return reading->phase == Phase::AsLeft ? std::vector{reading->point} : std::vector<PointId>{};
    return std::holds_alternative<AllLeftFact>(act.what.fact) ? pointsOf(act.what.fact) : std::vector<PointId>{};
}

/// A lash is set over its bridge as the bridge was left before.
bool isSetOverBridge(const JobFrame &frame, const Act &later, const Act &earlier)
{
    if (later.seq <= earlier.seq)
        return false;
    const auto lashes = leftBy(later);
    return std::ranges::any_of(leftBy(earlier), [&](PointId id) {
        const SettingPoint *bridge = frame.point(id);
        const SettingPoint *lash = bridge ? lashOfBridge(frame, *bridge) : nullptr;
        return lash && std::ranges::find(lashes, lash->id) != lashes.end();
    });
}

} // namespace

std::optional<ActSeq> undoable(const JobState &state, std::string_view station)
{
    for (auto act = state.acts.rbegin(); act != state.acts.rend(); ++act) {
        const bool mine = act->what.station == station && act->what.job == state.frame->job.id;
        if (mine && state.inForce(*act) && !takesBack(*act) && !isCautions(*act) && !isFirstPlan(state, *act))
            return act->seq;
    }
    return std::nullopt;
}

std::optional<ActSeq> redoable(const JobState &state, std::string_view station)
{
    for (auto act = state.acts.rbegin(); act != state.acts.rend(); ++act) {
        const bool mine = act->what.station == station && act->what.job == state.frame->job.id;
        if (!mine || isCautions(*act) || !state.inForce(*act))
            continue;
        // A withdrawal of a withdrawal was a redo; what comes before it may be redone too.
        if (!takesBack(*act))
            return std::nullopt;
        const auto target = std::ranges::find(state.acts, *act->what.withdraws, &Act::seq);
        if (target != state.acts.end() && !takesBack(*target))
            return act->seq;
    }
    return std::nullopt;
}

const Act *restingOn(const JobState &state, ActSeq earlier)
{
    const auto found = std::ranges::find(state.acts, earlier, &Act::seq);
    if (found == state.acts.end())
        return nullptr;
    const auto rests = [&](const Act &act) {
        const bool leans = restsOn(act, *found) || isSetOverBridge(*state.frame, act, *found);
        return leans && state.inForce(act) && !isFirstPlan(state, act);
    };
    const auto later = std::ranges::find_if(state.acts, rests);
    return later == state.acts.end() ? nullptr : &*later;
}

const Act *lastAct(const JobState &state)
{
    for (auto act = state.acts.rbegin(); act != state.acts.rend(); ++act) {
        if (act->what.job == state.frame->job.id && state.inForce(*act) && !takesBack(*act) && !isCautions(*act))
            return &*act;
    }
    return nullptr;
}

} // namespace asleft
