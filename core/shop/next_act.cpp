#include <shop/outlook.h>

#include "joint_open.h"

#include <algorithm>

namespace asleft {

namespace {

/// Of the unsettled points for which `allowed` holds: one left outside its band, else the first to feel, else the first to set.
template <class Allowed>
std::optional<NextAct> firstWanted(const JobState &state, Allowed allowed)
{
    std::optional<NextAct> best;
    for (const SettingPoint &point : state.frame->engine.points) {
        if (state.point(point.id).settled() || !allowed(point))
            continue;
        const NextAct act = pointAct(state, point.id);
        const auto rank = [](NextAct::Kind kind) {
            return kind == NextAct::Kind::SetOrKeep ? 0 : kind == NextAct::Kind::FeelPoint ? 1 : 2;
        };
        if (!best || rank(act.kind) < rank(best->kind))
            best = act;
    }
    return best;
}

/// Whether turning to a position of the plan gets anything done. What a generated plan sets where it may not be set, by the rule of nine
/// or with another cam than the engine has now, is not set there: to turn to it would be to turn for ever.
bool hasWork(const JobState &state, const PlanPosition &position)
{
    return std::ranges::any_of(position.points, [&](const PlanPoint &planned) {
        const SettingPoint *point = state.frame->pointAt(planned.adjuster);
        const bool wanted = point && !state.point(point->id).settled();
        return wanted && (!state.plan->generated || maySet(state.frame->engine.design, planned.adjuster, position.crank));
    });
}

/// Every CrankEvent has its angle, so a position is known by that alone.
bool isAt(const JobState &state, const PlanPosition &position, Angle crank)
{
    const EngineDesign &design = state.frame->engine.design;
    return inCycle(design, position.crank) == inCycle(design, crank);
}

/// A manual's table may name one place in several lines.
bool planSetsHere(const JobState &state, AdjusterRef valve, Angle crank)
{
    return std::ranges::any_of(state.plan->positions, [&](const PlanPosition &position) {
        return isAt(state, position, crank) && std::ranges::find(position.points, valve, &PlanPoint::adjuster) != position.points.end();
    });
}

std::optional<std::size_t> nearestAhead(const JobState &state)
{
    std::optional<std::size_t> nearest;
    if (!state.plan)
        return nearest;
    const Angle from = *state.crank->crank;
    const auto ahead = [&](std::size_t i) { return travel(state.frame->engine.design, from, state.plan->positions[i].crank); };
    for (std::size_t i = 0; i < state.plan->positions.size(); ++i) {
        if (hasWork(state, state.plan->positions[i]) && (!nearest || ahead(i) < ahead(*nearest)))
            nearest = i;
    }
    return nearest;
}

/// The bridge screw that has to be set before this lash is.
const SettingPoint *bridgeBefore(const JobState &state, const SettingPoint &lash)
{
    const SettingPoint *bridge = bridgeOf(*state.frame, lash);
    return bridge && !state.point(bridge->id).settled() ? bridge : nullptr;
}

NextAct bridgeFirst(const JobState &state, const NextAct &act)
{
    const bool sets = act.kind == NextAct::Kind::LockNut || act.kind == NextAct::Kind::SetPoint || act.kind == NextAct::Kind::SetOrKeep;
    const SettingPoint *point = sets ? state.frame->point(*act.point) : nullptr;
    const SettingPoint *bridge = point ? bridgeBefore(state, *point) : nullptr;
    return bridge ? pointAct(state, bridge->id) : act;
}

/// \pre the step is not done
NextAct jointStepAct(const JobState &state, const Step &step, const JointState &joint)
{
    NextAct act{.kind = NextAct::Kind::LoosenJoint, .step = step.id, .joint = step.joint};
    if (step.kind == StepKind::Loosen)
        return act;
    const auto wants = jointWants(jointInHand(state, *step.joint), joint).kind;
    const bool wantsAWord = joint.progress.finished() || wants == JointWants::Kind::SayFitted;
    act.kind = wantsAWord ? NextAct::Kind::SettleJoint : NextAct::Kind::TightenNext;
    if (!wantsAWord)
        act.tick = joint.progress.next;
    return act;
}

bool foundInFull(const JointState &joint)
{
    return std::ranges::all_of(joint.fasteners, [](const auto &fastener) { return fastener.second.found.has_value(); });
}

} // namespace

std::optional<std::size_t> planPositionHere(const JobState &state)
{
    if (!state.plan || !state.crank || !state.crank->crank)
        return std::nullopt;
    const auto &positions = state.plan->positions;
    const auto here = [&](const PlanPosition &position) { return isAt(state, position, *state.crank->crank); };
    const auto found = std::ranges::find_if(positions, here);
    if (found == positions.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - positions.begin());
}

Here here(const JobState &state, PointId id)
{
    const SettingPoint *point = state.frame->point(id);
    if (!point || !state.crank || !state.crank->crank)
        return Here::Unknown;
    const Angle crank = *state.crank->crank;
    const bool free = maySet(state.frame->engine.design, point->adjuster, crank);
    // The manual's word goes before the geometry; a generated plan is only worth the geometry it was made from.
    if (state.plan && planSetsHere(state, point->adjuster, crank) && (free || !state.plan->generated))
        return Here::InPlan;
    if (!free)
        return Here::NotHere;
    return planPositionHere(state) ? Here::Possible : Here::InPlan;
}

NextAct pointAct(const JobState &state, PointId id)
{
    const PointState &point = state.point(id);
    if (point.settled())
        return {};
    switch (point.stage) {
    case PointStage::NutOpen: return {.kind = NextAct::Kind::LockNut, .point = id};
    case PointStage::Untouched: return {.kind = NextAct::Kind::FeelPoint, .point = id};
    case PointStage::Left: return {.kind = NextAct::Kind::SetOrKeep, .point = id};
    case PointStage::Found:
    case PointStage::CheckAgain: break;
    }
    return {.kind = NextAct::Kind::SetPoint, .point = id};
}

bool canBeLeftHere(const JobState &state, const SettingPoint &point)
{
    const bool asked = state.frame->lashBandsNow(point.adjuster) || state.frame->turnsNow(point.adjuster);
    if (!asked || here(state, point.id) != Here::InPlan || state.point(point.id).settled())
        return false;
    const SettingPoint *bridge = bridgeBefore(state, point);
    return !bridge || canBeLeftHere(state, *bridge);
}

NextAct nextValveAct(const JobState &state)
{
    if (const auto open = openNuts(state); !open.empty())
        return bridgeFirst(state, {.kind = NextAct::Kind::LockNut, .point = open.front()});
    const auto anywhere = firstWanted(state, [](const SettingPoint &) { return true; });
    if (!anywhere)
        return {};
    if (!state.crank || !state.crank->crank)
        return {.kind = NextAct::Kind::ConfirmCrank};
    if (const auto atHand = firstWanted(state, [&](const SettingPoint &point) { return here(state, point.id) == Here::InPlan; }))
        return bridgeFirst(state, *atHand);
    if (const auto position = nearestAhead(state))
        return {.kind = NextAct::Kind::TurnCrank, .position = position};
    return bridgeFirst(state, *anywhere);
}

bool stepDone(const JobState &state, const Step &step)
{
    if (step.kind == StepKind::ValveSet)
        return std::ranges::all_of(state.points, [](const auto &point) { return point.second.settled(); });
    const JointState *joint = jointOfStep(state, step);
    if (joint && step.kind == StepKind::Tighten)
        return joint->settled(jointInHand(state, *step.joint));
    return state.stepsDone.contains(step.id) || (joint && foundInFull(*joint));
}

NextAct nextAct(const JobState &state)
{
    const NextAct valves = nextValveAct(state);
    if (valves.kind == NextAct::Kind::LockNut)
        return valves;
    for (const Step &step : state.frame->job.steps) {
        if (stepDone(state, step))
            continue;
        if (step.kind == StepKind::ValveSet) {
            NextAct act = valves;
            act.step = step.id;
            return act;
        }
        if (const JointState *joint = jointOfStep(state, step))
            return jointStepAct(state, step, *joint);
        return {.kind = NextAct::Kind::DoStep, .step = step.id};
    }
    return {};
}

Phase phaseNow(const PointState &point)
{
    return point.stage == PointStage::Untouched ? Phase::AsFound : Phase::AsLeft;
}

std::vector<PointId> openNuts(const JobState &state)
{
    std::vector<PointId> open;
    for (const SettingPoint &point : state.frame->engine.points) {
        if (state.point(point.id).stage == PointStage::NutOpen)
            open.push_back(point.id);
    }
    return open;
}

} // namespace asleft
