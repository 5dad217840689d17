#pragma once

#include "joint_texts.h"
#include "story.h"

namespace asleft {

inline const JointId cover{1};
inline const JointId headBolts{2};
inline const JointId smallScrew{3};
inline const ToolId wrench{1};
inline const ToolId dialWrench{2};

/// A joint as readJoint() would read it, put together by hand.
inline Joint jointOf(JointId id, std::string_view pattern, std::string_view order, std::string_view passes)
{
    Joint joint{.id = id, .engine = ourEngine, .text = {}};
    joint.text.name = "joint";
    joint.text.pattern = parsePattern(pattern).value();
    joint.order = parseOrder(order, joint.text.pattern).value();
    joint.passes = parsePasses(passes, TorqueUnit::NewtonMetre).value();
    return joint;
}

/// A cover of four at 32 ± 4 N·m, half first and then until none moves, and its line; three head bolts that are used once, turned on from
/// a snug torque; a screw whose 3 N·m stand alone. The lines: the cover loosened, the cover tightened, the bolts tightened.
inline JobFrame jointFrame()
{
    JobFrame frame = usualFrame();
    Joint first = jointOf(cover, "circle of 4", "1-3-2-4", "50 %, target, settle 2");
    first.target = torqueBands("32 ± 4 N·m", "24 ± 3 lbf·ft");
    Joint bolts = jointOf(headBolts, "row of 3", "2-1-3", "finger, 40 N·m, +90°");
    bolts.text.singleUse = SingleUse::TorqueToYield;
    Joint screw = jointOf(smallScrew, "1", "1", "target");
    screw.target = torqueBands("3 N·m");
    frame.joints = {first, bolts, screw};
    const auto step = [](int id, StepKind kind, Gate before, JointId joint) {
        return Step{StepId(id), kind, "joint", "", before, {}, joint};
    };
    frame.job.steps = {step(1, StepKind::Loosen, Gate::TurningTheCrank, cover), step(2, StepKind::Tighten, Gate::TurningTheCrank, cover),
                       step(3, StepKind::Tighten, Gate::HandOver, headBolts)};
    return frame;
}

/// Of the cover; what is `shown` was set on the wrench or read from the dial.
inline TicksFact ticks(const std::vector<int> &fasteners, int pass, TickHow how = TickHow::SetTool, std::string_view shown = {},
                       int round = 1)
{
    TicksFact fact{.joint = cover, .ticks = {}, .how = how};
    for (const int fastener : fasteners)
        fact.ticks.push_back({{fastener, pass, round}});
    if (how == TickHow::ByFeel) {
        fact.reason = "no wrench reaches";
    } else if (!shown.empty()) {
        fact.tool = how == TickHow::SetTool ? wrench : dialWrench;
        (how == TickHow::SetTool ? fact.setting : fact.reading) = typedTorque(shown);
    }
    return fact;
}

/// Of the cover.
inline LoosenedFact loosened(const std::vector<int> &fasteners, FoundHow how, std::string_view measured = {}, std::string note = {})
{
    LoosenedFact fact{.joint = cover, .fasteners = fasteners, .how = how, .note = std::move(note)};
    if (!measured.empty())
        fact.torque = typedTorque(measured);
    return fact;
}

/// Acts on the joints of one job, told in order.
class JointStory : public Story {
public:
    JointStory() : Story(jointFrame()) {}
    explicit JointStory(JobFrame told) : Story(std::move(told)) {}

    JointId joint = cover; ///< the acts told from here on are about it
    int revision = 1;

    /// The fact, said of the joint in hand.
    template <class Fact>
    [[nodiscard]] Fact here(Fact fact) const
    {
        fact.joint = joint;
        fact.revision = revision;
        return fact;
    }
    [[nodiscard]] TicksFact ticked(int pass, const std::vector<int> &fasteners, int round = 1) const
    {
        return here(ticks(fasteners, pass, TickHow::SetTool, {}, round));
    }
    /// With a wrench that was set to this.
    ActSeq set(std::string_view setting, int pass, const std::vector<int> &fasteners)
    {
        return log(here(ticks(fasteners, pass, TickHow::SetTool, setting)));
    }
    ActSeq read(std::string_view reading, std::string_view uncertainty, int pass, const std::vector<int> &fasteners)
    {
        TicksFact fact = here(ticks(fasteners, pass, TickHow::ReadTool, reading));
        fact.uncertainty = torque(uncertainty);
        return log(std::move(fact));
    }
    ActSeq byFeel(int pass, const std::vector<int> &fasteners) { return log(here(ticks(fasteners, pass, TickHow::ByFeel))); }
    ActSeq settle(int round, const std::vector<int> &fasteners, bool moved, int pass = 2)
    {
        TicksFact fact = ticked(pass, fasteners, round);
        fact.setting = typedTorque("32 N·m");
        for (Tick &tick : fact.ticks)
            tick.moved = moved;
        return log(std::move(fact));
    }
    ActSeq untick(int pass, const std::vector<int> &fasteners)
    {
        UntickedFact fact{joint, {}};
        for (const int fastener : fasteners)
            fact.places.push_back({fastener, pass, 1});
        return log(std::move(fact));
    }
    ActSeq loosened(const std::vector<int> &fasteners, FoundHow how = FoundHow::NotNoted, std::string_view measured = {})
    {
        return log(here(asleft::loosened(fasteners, how, measured)));
    }
    ActSeq begin(int by) { return log(JointBegunFact{joint, by}); }
    ActSeq fitted(const std::vector<int> &fasteners, Fitted as) { return log(FittedFact{joint, fasteners, as}); }
    ActSeq accept(AcceptedWhat what, const std::vector<int> &fasteners = {}, const std::string &reason = "checked")
    {
        return log(AcceptedFact{joint, what, fasteners, reason});
    }
    ActSeq finding(const std::string &text) { return log(FindingFact{FastenerSubject{joint, {1}}, text}); }

    /// The cover tightened to its end, with nothing the matter.
    void tightenCover()
    {
        const std::vector<int> all{1, 3, 2, 4};
        set("16 N·m", 0, all);
        set("32 N·m", 1, all);
        settle(1, all, false);
    }
    /// Another revision of the joint, with other passes.
    void revise(std::string_view passes, Certainty certainty = Certainty::ReadInManual)
    {
        Joint next = *frame.jointNow(joint);
        ++next.revision;
        next.passes = parsePasses(passes, TorqueUnit::NewtonMetre).value();
        next.text.source.certainty = certainty;
        frame.joints.push_back(next);
    }

    [[nodiscard]] JointState now() const { return state().joints.at(joint); }
    [[nodiscard]] FastenerState fastener(int number) const { return now().fasteners.at(number); }
    [[nodiscard]] FastenerStage stage(int number) const { return fastener(number).stage; }
    [[nodiscard]] bool settled() const { return now().settled(jointInHand(state(), joint)); }
    [[nodiscard]] JointWants wants() const { return jointWants(jointInHand(state(), joint), now()); }
    [[nodiscard]] std::optional<TickSlot> next() const { return now().progress.next; }
};

inline TickSlot place(int fastener, int pass, int round = 1)
{
    return {fastener, pass, round};
}

} // namespace asleft
