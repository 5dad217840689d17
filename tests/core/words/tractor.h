#pragma once

#include "joint_story.h"
#include "samples.h"

#include <QDateTime>

namespace asleft {

constexpr JointId screwId{2};
constexpr ToolId crowfoot{3};

/// 14 November 2023, 16:12 in local time, some minutes on.
inline Moment atMinute(int minute)
{
    const QDateTime start(QDate(2023, 11, 14), QTime(16, 12));
    return {start.toMSecsSinceEpoch() + minute * 60'000LL};
}

/// A tractor with an in-line four: intakes 0.30 ± 0.05 mm from memory, exhausts 0.35 to 0.45 mm by the manual, all cold.
inline JobFrame tractorFrame()
{
    JobFrame frame = usualFrame();
    frame.engine.screw.pitch = "1 mm";
    frame.engine.adjuster = ScrewAdjuster{micrometres(1000)};
    frame.specs = {specOf(intakeSpec, SpecSubject::IntakeLash, bands("0.30 ± 0.05 mm"), {"", "", Certainty::FromMemory}),
                   specOf(exhaustSpec, SpecSubject::ExhaustLash, bands("0.35 to 0.45 mm"))};
    frame.people = {{PersonId(1), "M.K.", ""}};
    frame.job.steps = {{StepId(1), StepKind::Note, "Cover off", "", Gate::FirstStart, {}},
                       {StepId(2), StepKind::ValveSet, "Set the valves", "", Gate::FirstStart, {}}};
    return frame;
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
inline JobFrame coverFrame(const JointText &text = coverText(), bool several = false)
{
    JobFrame frame = tractorFrame();
    frame.joints = {jointOfText(text)};
    if (several) {
        JointText screw = sensorText();
        screw.target = "3 N·m";
        frame.joints.push_back(jointOfText(screw));
        frame.joints.back().id = screwId;
    }
    Tool adapter{.id = crowfoot, .name = "crow-foot 13", .leavesText = {}, .leaves = {}, .kind = ToolKind::Adapter};
    adapter.length = length("40 mm");
    frame.tools = {torqueWrench(wrench, ToolKind::TorqueSet, "small wrench", "4 lbf·ft", "40 lbf·ft"),
                   torqueWrench(dialWrench, ToolKind::TorqueRead, "dial wrench", "20 N·m", "200 N·m"), adapter};
    frame.job.steps.push_back({StepId(3), StepKind::Loosen, "Loosen the cover", "", Gate::FirstStart, {}, cover});
    frame.job.steps.push_back({StepId(4), StepKind::Tighten, "Tighten the cover", "", Gate::FirstStart, {}, cover});
    return frame;
}

/// An act a minute.
struct TractorStory : Story {
    explicit TractorStory(JobFrame told = tractorFrame()) : Story(std::move(told))
    {
        clock = atMinute(0).utcMilliseconds;
        betweenActs = 60'000;
    }
};

} // namespace asleft
