#include "names.h"

#include <measure/format.h>

#include <algorithm>

namespace asleft {

namespace {

std::string placeOf(const JobState &state, Angle crank)
{
    if (state.plan) {
        const auto here = std::ranges::find(state.plan->positions, crank, &PlanPosition::crank);
        if (here != state.plan->positions.end())
            return describePoints(state.frame->engine.design, *here);
    }
    return formatExact(crank, AngleUnit::Degree);
}

std::string nameOf(const EngineDesign &design, const CrankPlan &plan)
{
    if (!plan.source.empty() || plan.positions.empty())
        return plan.source;
    return describePoints(design, plan.positions.front());
}

/// "Rocker cover 3, 4".
std::string nameOf(const JobFrame &frame, JointId id, const std::vector<int> &fasteners)
{
    const Joint *joint = frame.jointNow(id);
    std::string name = joint ? joint->text.name : std::string("?");
    for (std::size_t i = 0; i < fasteners.size(); ++i)
        name += (i == 0 ? " " : ", ") + std::to_string(fasteners[i]);
    return name;
}

} // namespace

std::string namesOf(const JobFrame &frame, const std::vector<PointId> &points)
{
    std::string names;
    for (const PointId id : points) {
        const SettingPoint *point = frame.point(id);
        names += (names.empty() ? "" : ", ") + (point ? shortName(frame.engine.design, point->adjuster) : std::string("?"));
    }
    return names;
}

std::string placeOf(const JobState &state, const Act &act)
{
    const Fact &fact = act.what.fact;
    if (const auto *moved = std::get_if<CrankFact>(&fact))
        return moved->crank ? placeOf(state, *moved->crank) : std::string();
    if (const auto *chosen = std::get_if<PlanFact>(&fact))
        return nameOf(state.frame->engine.design, chosen->plan);
    if (const auto joint = jointOf(fact))
        return nameOf(*state.frame, *joint, fastenersOf(fact));
    return namesOf(*state.frame, pointsOf(fact));
}

} // namespace asleft
