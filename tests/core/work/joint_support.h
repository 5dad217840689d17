#pragma once

#include "joint_texts.h"
#include "support.h"

#include <work/joints.h>

#include <algorithm>

namespace asleft {

/// Two screws in a row: finger-tight, 20 N·m, and on by 90°; not to be used twice.
inline JointText studText()
{
    JointText text;
    text.name = "Bearing cap";
    text.pattern = rowPattern(2).value();
    text.passes = "finger, 20 N·m, +90°";
    text.singleUse = SingleUse::TorqueToYield;
    return text;
}

/// What acts have made of a joint: all of its state but the progress, which follows from the rest.
inline bool saysTheSame(const JointState &one, const JointState &other)
{
    return one.revision == other.revision && one.begun == other.begun && one.fasteners == other.fasteners &&
           one.progress.next == other.progress.next && one.unsettledAccepted == other.unsettledAccepted;
}
inline bool sameJoints(const std::map<JointId, JointState> &some, const std::map<JointId, JointState> &others)
{
    return std::ranges::equal(
        some, others, [](const auto &one, const auto &other) { return one.first == other.first && saysTheSame(one.second, other.second); });
}

/// The tractor with three joints, and a rack of a small and a large wrench that are set, and one that is read.
class JointTest : public BookTest {
protected:
    [[nodiscard]] const JointState &joint(JointId id) const { return book->state().joints.at(id); }
    [[nodiscard]] const FastenerState &fastener(JointId id, int number) const { return joint(id).fasteners.at(number); }
    [[nodiscard]] std::vector<TickSlot> restOf(JointId id) const
    {
        return restOfPass(jointInHand(book->state(), id).tightening(), joint(id).progress);
    }
    /// The next place of a joint.
    [[nodiscard]] TickSlot next(JointId id) const { return joint(id).progress.next.value(); }
    [[nodiscard]] static TickEntry with(JointId id, std::vector<TickSlot> places, ToolId wrench)
    {
        return {.joint = id, .places = std::move(places), .how = TickHow::SetTool, .tool = wrench};
    }
    [[nodiscard]] static TickEntry read(JointId id, std::vector<TickSlot> places, ToolId wrench, std::string_view shown)
    {
        return {.joint = id, .places = std::move(places), .how = TickHow::ReadTool, .tool = wrench, .reading = typedTorque(shown)};
    }
    [[nodiscard]] static TickEntry byFeel(JointId id, std::vector<TickSlot> places, std::string reason = "no wrench")
    {
        return {.joint = id, .places = std::move(places), .how = TickHow::ByFeel, .reason = std::move(reason)};
    }
    /// All of the pass in hand.
    ActSeq wholePass(JointId id, ToolId wrench) { return need(book->tick(with(id, restOf(id), wrench))); }
    [[nodiscard]] const TicksFact &lastTicks() const { return std::get<TicksFact>(book->state().acts.back().what.fact); }

    JointId cover = need(addJoint(*garage, tractor.engine, coverText()));
    JointId cap = need(addJoint(*garage, tractor.engine, studText()));
    JointId bracket = need(addJoint(*garage, tractor.engine, rowText(2)));
    ToolId small = need(addTorqueWrench(*garage, wrenchText("Small", "6", "30")));
    ToolId large = need(addTorqueWrench(*garage, largeText()));
    ToolId dial = need(addTorqueWrench(*garage, dialText()));

    static TorqueWrenchText largeText()
    {
        TorqueWrenchText text = wrenchText("Large", "20", "200");
        text.lever = "400 mm";
        text.calibrationDue = "1970-01-01"; // the first day of the scripted clock
        return text;
    }
    static TorqueWrenchText dialText()
    {
        TorqueWrenchText text = wrenchText("Dial", "10", "100");
        text.kind = ToolKind::TorqueRead;
        text.lever = "400 mm";
        return text;
    }
};

} // namespace asleft
