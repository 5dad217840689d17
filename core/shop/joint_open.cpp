#include "joint_open.h"

#include "joint_fold.h"

#include <algorithm>

namespace asleft {

namespace {

using Items = std::vector<OpenItem>;

/// A joint, the revision it is worked by, and how far it has come.
struct Worked {
    JointId id;
    const Joint &joint;
    const JointState &state;

    [[nodiscard]] bool isSingleUse() const { return joint.text.singleUse != SingleUse::No; }
};

template <class Look>
void eachJoint(const JobState &state, Look look)
{
    for (const auto &[id, joint] : state.joints)
        look(Worked{id, jointInHand(state, id), joint});
}

/// What must not happen while it is not tight: the first thing that one of its lines names. Nothing where nobody has to do with it.
std::optional<Gate> gateOf(const JobState &state, const Worked &worked)
{
    std::optional<Gate> gate;
    for (const Step &step : state.frame->job.steps) {
        if (step.kind == StepKind::Tighten && step.joint == worked.id)
            gate = std::min(gate.value_or(step.before), step.before);
    }
    if (!gate && worked.state.begun)
        return Gate::FirstStart;
    return gate;
}

template <class Item, class Holds>
void addCount(const Worked &worked, Holds holds, Items &items)
{
    const auto count = std::ranges::count_if(worked.state.fasteners, [&](const auto &fastener) { return holds(fastener.second); });
    if (count > 0)
        items.push_back(Item{worked.id, static_cast<int>(count)});
}

template <class Item, class Holds>
void addEach(const Worked &worked, Holds holds, Items &items)
{
    for (const auto &[number, fastener] : worked.state.fasteners) {
        if (holds(fastener))
            items.push_back(Item{worked.id, number});
    }
}

void addTorques(const Worked &worked, Items &items)
{
    const auto stands = [](const FastenerState &fastener) { return fastener.outside() && !fastener.torqueAccepted; };
    const auto unproved = [](const FastenerState &fastener) { return fastener.verdict() == Verdict::TooClose; };
    const auto isOutside = [&](const FastenerState &fastener) { return stands(fastener) && !unproved(fastener); };
    const auto isUnproved = [&](const FastenerState &fastener) { return stands(fastener) && unproved(fastener); };
    addEach<open::TorqueOutside>(worked, isOutside, items);
    addEach<open::TorqueUnproved>(worked, isUnproved, items);
}

template <class Holds>
bool anyTick(const Worked &worked, Holds holds)
{
    return std::ranges::any_of(worked.state.fasteners,
                               [&](const auto &fastener) { return std::ranges::any_of(fastener.second.ticks, holds); });
}

/// Of the two bands a manual prints, only one may stand without limits of its own.
bool judgedByAssumed(const Joint &joint, const TickMade &made)
{
    if (!made.verdict || !made.torque)
        return false;
    const auto &shown = made.fact.how == TickHow::ReadTool ? made.fact.reading : made.fact.setting;
    const Band<Torque> *band = bandOfPass(joint, static_cast<std::size_t>(made.tick.place.pass), shown->unit);
    return band && band->toleranceAssumed;
}

void addUnsure(const Worked &worked, Items &items)
{
    const bool ticked = anyTick(worked, [](const TickMade &) { return true; });
    if (ticked && worked.joint.text.source.certainty != Certainty::ReadInManual)
        items.push_back(open::JointUnsure{worked.id});
    if (anyTick(worked, [&](const TickMade &made) { return judgedByAssumed(worked.joint, made); }))
        items.push_back(open::JointAssumed{worked.id});
}

void addOverdue(const Worked &worked, Items &items)
{
    std::set<std::optional<ToolId>> overdue;
    for (const auto &[number, fastener] : worked.state.fasteners) {
        for (const TickMade &made : fastener.ticks) {
            if (made.fact.calibrationOverdue)
                overdue.insert(made.fact.tool);
        }
    }
    for (const auto &tool : overdue)
        items.push_back(open::CalibrationOverdue{worked.id, tool});
}

} // namespace

const JointState *jointOfStep(const JobState &state, const Step &step)
{
    if (!step.joint || (step.kind != StepKind::Loosen && step.kind != StepKind::Tighten))
        return nullptr;
    const auto joint = state.joints.find(*step.joint);
    return joint == state.joints.end() ? nullptr : &joint->second;
}

void addLooseFasteners(const JobState &state, Gate gate, std::vector<OpenItem> &items)
{
    eachJoint(state, [&](const Worked &worked) {
        const auto isLoose = [](const FastenerState &fastener) { return fastener.stage != FastenerStage::Tight; };
        if (gateOf(state, worked) == gate)
            addCount<open::FastenersLoose>(worked, isLoose, items);
    });
}

void addJointsBeforeStart(const JobState &state, std::vector<OpenItem> &items)
{
    eachJoint(state, [&](const Worked &worked) {
        const auto isAmiss = [](const FastenerState &fastener) { return fastener.amiss; };
        addEach<open::FastenerFound>(worked, isAmiss, items);
        addTorques(worked, items);
        if (worked.state.progress.unsettled && !worked.state.unsettledAccepted)
            items.push_back(open::Unsettled{worked.id});
        const auto isUnsaid = [](const FastenerState &fastener) { return !fastener.fitted; };
        if (worked.isSingleUse() && gateOf(state, worked))
            addCount<open::FittedUnsaid>(worked, isUnsaid, items);
        const auto isReused = [](const FastenerState &fastener) { return fastener.reused(); };
        addCount<open::Reused>(worked, isReused, items);
        if (worked.state.begun && !asksTheSame(worked.joint, *state.frame->jointNow(worked.id)))
            items.push_back(open::JointRevised{worked.id});
    });
}

void addJointsAtHandOver(const JobState &state, std::vector<OpenItem> &items)
{
    eachJoint(state, [&](const Worked &worked) {
        const auto isByFeel = [](const FastenerState &fastener) { return fastener.byFeel() && !fastener.feelAccepted; };
        addEach<open::FastenerByFeel>(worked, isByFeel, items);
        addUnsure(worked, items);
        addOverdue(worked, items);
    });
}

} // namespace asleft
