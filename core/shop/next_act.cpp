#include <shop/outlook.h>

#include "joint_open.h"

#include <algorithm>

namespace asleft {

namespace {

/// One left outside its band goes first, then those to feel.
int urgency(const NextAct &act)
{
    return std::holds_alternative<next::SetOrKeep>(act) ? 0 : std::holds_alternative<next::FeelPoint>(act) ? 1 : 2;
}

/// Of the unsettled points for which `allowed` holds: one left outside its band, else the first to feel, else the first to set.
template <class Allowed>
std::optional<NextAct> firstWanted(const JobState &state, Allowed allowed)
{
    std::optional<NextAct> best;
    for (const SettingPoint &point : state.frame->engine.points) {
        if (state.point(point.id).settled() || !allowed(point))
            continue;
        const NextAct act = pointAct(state, point.id);
        if (!best || urgency(act) < urgency(*best))
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

/// The point whose screw is turned by an act.
std::optional<PointId> setBy(const NextAct &act)
{
    using Point = std::optional<PointId>;
    return std::visit(Overloaded{
                          []<OneOf<next::LockNut, next::SetPoint, next::SetOrKeep> Sets>(const Sets &sets) { return Point(sets.point); },
                          []<OneOf<next::NothingOpen, next::ConfirmCrank, next::FeelPoint, next::TurnCrank, next::DoStep, next::LoosenJoint,
                                   next::TightenNext, next::SettleJoint>
                                 Other>(const Other &) { return Point(); },
                      },
                      act);
}

NextAct bridgeFirst(const JobState &state, const NextAct &act)
{
    const auto id = setBy(act);
    const SettingPoint *point = id ? state.frame->point(*id) : nullptr;
    const SettingPoint *bridge = point ? bridgeBefore(state, *point) : nullptr;
    return bridge ? pointAct(state, bridge->id) : act;
}

/// \pre the joint is not settled
NextAct tightenAct(const JobState &state, const next::OfJoint &where, const JointState &joint)
{
    const bool saysFirst = jointWants(jointInHand(state, where.joint), joint).kind == JointWants::Kind::SayFitted;
    if (saysFirst || !joint.progress.next)
        return next::SettleJoint{where};
    return next::TightenNext{where, *joint.progress.next};
}

/// \pre the step is not done
NextAct stepAct(const JobState &state, const Step &step)
{
    const JointState *joint = jointOfStep(state, step);
    switch (step.kind) {
    case StepKind::Note: break;
    case StepKind::ValveSet: return nextValveAct(state);
    case StepKind::Loosen:
        if (joint)
            return next::LoosenJoint{step.id, *step.joint};
        break;
    case StepKind::Tighten:
        if (joint)
            return tightenAct(state, {step.id, *step.joint}, *joint);
        break;
    }
    return next::DoStep{step.id};
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
    case PointStage::NutOpen: return next::LockNut{id};
    case PointStage::Untouched: return next::FeelPoint{id};
    case PointStage::Left: return next::SetOrKeep{id};
    case PointStage::Found:
    case PointStage::CheckAgain: break;
    }
    return next::SetPoint{id};
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
        return bridgeFirst(state, next::LockNut{open.front()});
    const auto anywhere = firstWanted(state, [](const SettingPoint &) { return true; });
    if (!anywhere)
        return {};
    if (!state.crank || !state.crank->crank)
        return next::ConfirmCrank{};
    if (const auto atHand = firstWanted(state, [&](const SettingPoint &point) { return here(state, point.id) == Here::InPlan; }))
        return bridgeFirst(state, *atHand);
    if (const auto position = nearestAhead(state))
        return next::TurnCrank{*position};
    return bridgeFirst(state, *anywhere);
}

bool stepDone(const JobState &state, const Step &step)
{
    const JointState *joint = jointOfStep(state, step);
    const bool byAct = state.stepsDone.contains(step.id);
    switch (step.kind) {
    case StepKind::Note: return byAct;
    case StepKind::ValveSet: return std::ranges::all_of(state.points, [](const auto &point) { return point.second.settled(); });
    case StepKind::Loosen: return byAct || (joint && foundInFull(*joint));
    case StepKind::Tighten: return joint ? joint->settled(jointInHand(state, *step.joint)) : byAct;
    }
    return byAct;
}

const Step *firstUndone(const JobState &state)
{
    const auto &steps = state.frame->job.steps;
    const auto found = std::ranges::find_if(steps, [&](const Step &step) { return !stepDone(state, step); });
    return found == steps.end() ? nullptr : &*found;
}

NextAct nextAct(const JobState &state)
{
    const NextAct valves = nextValveAct(state);
    if (std::holds_alternative<next::LockNut>(valves))
        return valves;
    const Step *step = firstUndone(state);
    return step ? stepAct(state, *step) : NextAct();
}

std::optional<PointId> pointOf(const NextAct &act)
{
    using Point = std::optional<PointId>;
    return std::visit(
        Overloaded{
            [](const next::OfPoint &at) { return Point(at.point); },
            [](const next::OfJoint &) { return Point(); },
            []<OneOf<next::NothingOpen, next::ConfirmCrank, next::TurnCrank, next::DoStep> Other>(const Other &) { return Point(); },
        },
        act);
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
