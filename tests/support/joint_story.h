#pragma once

#include "story.h"

namespace asleft {

constexpr JointId coverId{1};
constexpr JointId screwId{2};
constexpr ToolId smallWrench{1};
constexpr ToolId dialWrench{2};
constexpr ToolId crowfoot{3};

/// Twelve around a cover, 32 ± 4 N·m in two passes and settling.
inline JointText coverText()
{
    JointText text;
    text.name = "Rocker cover";
    text.thread = "M8";
    text.strength = "8.8";
    text.pattern = *coverPattern(12);
    text.target = "32 ± 4 N·m";
    text.passes = "50 %, target, settle 3";
    text.settle = SettleGround::Limiters;
    text.condition = ThreadCondition::Oiled;
    text.drive = DriveKind::Socket;
    text.driveSize = "13 mm";
    text.source = {"Workshop Manual", "41", Certainty::ReadInManual};
    return text;
}

inline Joint jointOfText(const JointText &text, JointId id = coverId)
{
    Joint joint = *readJoint(text);
    joint.id = id;
    return joint;
}

inline Torque torque(const char *text)
{
    return parse<Torque>(text, TorqueUnit::NewtonMetre)->value;
}

inline Typed<Torque> typedTorque(const char *text)
{
    return *parse<Torque>(text, TorqueUnit::NewtonMetre);
}

inline Tool torqueWrench(ToolId id, ToolKind kind, const char *name, const char *least, const char *most)
{
    Tool tool{.id = id, .name = name, .leavesText = {}, .leaves = {}, .kind = kind};
    TorqueTool range;
    range.read = kind == ToolKind::TorqueRead;
    range.least = typedTorque(least);
    range.most = typedTorque(most);
    range.calibrationDue = std::chrono::year(2027) / 3 / 31;
    range.lever = micrometres(300'000);
    tool.torque = range;
    return tool;
}

/// The tractor with its cover, and with a small screw where `several`; with a wrench in pounds, one with a dial, and an adapter of 40 mm.
inline JobFrame jointFrame(const JointText &cover = coverText(), bool several = false)
{
    JobFrame frame = tractorFrame();
    frame.joints = {jointOfText(cover)};
    if (several) {
        JointText screw = coverText();
        screw.name = "Sensor screw";
        screw.pattern = *rowPattern(1);
        screw.target = "3 N·m";
        screw.passes = screw.strength = "";
        screw.thread = "M5";
        screw.settle = SettleGround::No;
        screw.condition = {};
        frame.joints.push_back(jointOfText(screw, screwId));
    }
    Tool adapter{.id = crowfoot, .name = "crow-foot 13", .leavesText = {}, .leaves = {}, .kind = ToolKind::Adapter};
    adapter.length = *parse<Length>("40 mm", LengthUnit::Millimetre);
    frame.tools = {torqueWrench(smallWrench, ToolKind::TorqueSet, "small wrench", "4 lbf·ft", "40 lbf·ft"),
                   torqueWrench(dialWrench, ToolKind::TorqueRead, "dial wrench", "20 N·m", "200 N·m"), adapter};
    frame.job.steps.push_back({StepId(3), StepKind::Loosen, "Loosen the cover", "", Gate::FirstStart, {}, coverId});
    frame.job.steps.push_back({StepId(4), StepKind::Tighten, "Tighten the cover", "", Gate::FirstStart, {}, coverId});
    return frame;
}

inline LoosenedFact loosened(std::vector<int> fasteners, FoundHow how, const char *at = nullptr, const char *note = "")
{
    LoosenedFact fact{.joint = coverId, .fasteners = std::move(fasteners), .how = how, .note = note};
    if (at)
        fact.torque = typedTorque(at);
    return fact;
}

inline TicksFact ticks(std::vector<int> fasteners, int pass, TickHow how, const char *shown = nullptr)
{
    TicksFact fact{.joint = coverId, .ticks = {}, .how = how};
    for (const int fastener : fasteners)
        fact.ticks.push_back({{fastener, pass, 1}});
    if (shown && how == TickHow::SetTool) {
        fact.setting = typedTorque(shown);
        fact.tool = smallWrench;
    } else if (shown) {
        fact.reading = typedTorque(shown);
        fact.tool = dialWrench;
    }
    return fact;
}

} // namespace asleft
