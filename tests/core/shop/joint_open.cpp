// What is still open of joints, and what to do next about them.
#include "joint_story.h"

namespace asleft {
namespace joint_open_tests {

using Open = OpenItem::Kind;
using Next = NextAct::Kind;

std::vector<Open> kinds(const std::vector<OpenItem> &items)
{
    std::vector<Open> kinds;
    for (const OpenItem &item : items)
        kinds.push_back(item.kind);
    return kinds;
}

StillOpen open(const JointStory &story)
{
    return stillOpen(story.state(), Moment{1'000'000});
}

std::optional<OpenItem> item(const std::vector<OpenItem> &items, Open kind)
{
    const auto found = std::ranges::find(items, kind, &OpenItem::kind);
    return found == items.end() ? std::nullopt : std::optional(*found);
}

JobFrame without(JobFrame frame, StepKind kind)
{
    std::erase_if(frame.job.steps, [&](const Step &step) { return step.kind == kind; });
    return frame;
}

TEST(JointOpen, LooseFastenersStandUnderTheGateOfTheirLine)
{
    JointStory story;
    story.set("16 N·m", 0, {1});
    const std::vector<OpenItem> turning{{.kind = Open::FastenersLoose, .count = 4, .joint = cover},
                                        {.kind = Open::StepUndone, .step = StepId(1)}};
    EXPECT_EQ(open(story).turning, turning);
    EXPECT_EQ(open(story).firstStart, (std::vector<OpenItem>{{.kind = Open::FittedUnsaid, .count = 3, .joint = headBolts}}));
    EXPECT_EQ(open(story).handOver, (std::vector<OpenItem>{{.kind = Open::FastenersLoose, .count = 3, .joint = headBolts}}))
        << "and nothing of the screw, with which nobody has to do";
}

TEST(JointOpen, OfTwoLinesTheStricterGate)
{
    JointStory story;
    story.frame.job.steps.push_back({StepId(4), StepKind::Tighten, "again", "", Gate::FirstStart, {}, headBolts});
    EXPECT_TRUE(item(open(story).firstStart, Open::FastenersLoose));
    EXPECT_FALSE(item(open(story).handOver, Open::FastenersLoose));
    std::swap(story.frame.job.steps[2], story.frame.job.steps[3]);
    EXPECT_TRUE(item(open(story).firstStart, Open::FastenersLoose)) << "whichever comes first";
}

TEST(JointOpen, WithoutALineItHindersTheFirstStartOnceBegun)
{
    JointStory story(without(jointFrame(), StepKind::Tighten));
    EXPECT_TRUE(open(story).firstStart.empty());
    story.loosened({1}, FoundHow::NotNoted);
    EXPECT_EQ(open(story).firstStart, (std::vector<OpenItem>{{.kind = Open::FastenersLoose, .count = 4, .joint = cover}}));
}

TEST(JointOpen, TightNothingOfItIsOpen)
{
    JointStory story(without(jointFrame(), StepKind::Loosen));
    story.tightenCover();
    EXPECT_TRUE(open(story).turning.empty());
    EXPECT_EQ(kinds(open(story).firstStart), std::vector{Open::FittedUnsaid});
}

TEST(JointOpen, FoundAmissUntilItIsSaidWhatWentIn)
{
    for (const FoundHow how : {FoundHow::Missing, FoundHow::Broken, FoundHow::WrongLength}) {
        JointStory story;
        story.loosened({2}, how);
        EXPECT_EQ(item(open(story).firstStart, Open::FastenerFound),
                  (OpenItem{.kind = Open::FastenerFound, .joint = cover, .fastener = 2}));
        EXPECT_EQ(story.wants(), (JointWants{JointWants::Kind::SayFitted, {2}}));
        story.set("16 N·m", 0, {2});
        EXPECT_TRUE(item(open(story).firstStart, Open::FastenerFound)) << "a tick says nothing of what was tightened";
        story.fitted({2}, Fitted::New);
        EXPECT_FALSE(item(open(story).firstStart, Open::FastenerFound));
        EXPECT_EQ(story.fastener(2).ticks.size(), 1U);
        story.loosened({2});
        EXPECT_FALSE(item(open(story).firstStart, Open::FastenerFound)) << "there was another one in it since";
    }
    JointStory story;
    story.loosened({2}, FoundHow::LooseByFeel);
    EXPECT_FALSE(item(open(story).firstStart, Open::FastenerFound));
}

TEST(JointOpen, FoundAmissAndUsedAllTheSameUntilAccepted)
{
    JointStory story;
    story.loosened({2}, FoundHow::WrongLength);
    story.fitted({2}, Fitted::Reused);
    EXPECT_FALSE(item(open(story).firstStart, Open::FastenerFound));
    EXPECT_EQ(item(open(story).firstStart, Open::Reused)->count, 1);
    story.accept(AcceptedWhat::Reused, {2});
    EXPECT_FALSE(item(open(story).firstStart, Open::Reused));
}

TEST(JointOpen, TorquesOutsideOrUnprovedUntilAccepted)
{
    JointStory story;
    story.set("27.9 N·m", 1, {1});
    story.set("36.1 N·m", 1, {2});
    story.read("28.5 N·m", "1 N·m", 1, {3});
    const auto items = open(story).firstStart;
    EXPECT_EQ(kinds(items), (std::vector{Open::TorqueOutside, Open::TorqueOutside, Open::TorqueUnproved, Open::FittedUnsaid}));
    EXPECT_EQ(items[1].fastener, 2);
    EXPECT_EQ(items[2].fastener, 3);
    story.accept(AcceptedWhat::Torque, {1, 2, 3});
    EXPECT_EQ(kinds(open(story).firstStart), std::vector{Open::FittedUnsaid});
}

TEST(JointOpen, UnsettledUntilAccepted)
{
    JointStory story;
    const std::vector<int> all{1, 3, 2, 4};
    story.set("16 N·m", 0, all);
    story.set("32 N·m", 1, all);
    story.settle(1, all, true);
    EXPECT_FALSE(item(open(story).firstStart, Open::Unsettled));
    story.settle(2, all, true);
    EXPECT_EQ(item(open(story).firstStart, Open::Unsettled), (OpenItem{.kind = Open::Unsettled, .joint = cover}));
    EXPECT_FALSE(item(open(story).turning, Open::FastenersLoose));
    story.accept(AcceptedWhat::Unsettled);
    EXPECT_FALSE(item(open(story).firstStart, Open::Unsettled));
}

TEST(JointOpen, WhatIsFittedAgainUntilAccepted)
{
    JointStory story;
    story.joint = headBolts;
    story.fitted({1, 2}, Fitted::Reused);
    EXPECT_EQ(item(open(story).firstStart, Open::FittedUnsaid)->count, 1);
    EXPECT_EQ(item(open(story).firstStart, Open::Reused)->count, 2);
    story.accept(AcceptedWhat::Reused, {1});
    EXPECT_EQ(item(open(story).firstStart, Open::Reused)->count, 1);
    story.accept(AcceptedWhat::Reused, {2});
    EXPECT_FALSE(item(open(story).firstStart, Open::Reused));
}

TEST(JointOpen, ByFeelUntilAcceptedAndNothingElse)
{
    JointStory story;
    story.frame.job.steps.clear();
    story.joint = smallScrew;
    story.byFeel(0, {1});
    StillOpen wanted;
    wanted.handOver = {{.kind = Open::FastenerByFeel, .joint = smallScrew, .fastener = 1}};
    EXPECT_EQ(open(story), wanted);
    story.accept(AcceptedWhat::ByFeel, {1});
    EXPECT_EQ(open(story), StillOpen{});
}

TEST(JointOpen, AnOlderRevisionOnceItIsWorkedBy)
{
    JointStory story;
    story.loosened({1});
    story.revise("target");
    EXPECT_FALSE(item(open(story).firstStart, Open::JointRevised)) << "no tick goes by the old one";
    story.set("16 N·m", 0, {1});
    EXPECT_EQ(item(open(story).firstStart, Open::JointRevised), (OpenItem{.kind = Open::JointRevised, .joint = cover}));
    story.begin(2);
    EXPECT_FALSE(item(open(story).firstStart, Open::JointRevised));
}

TEST(JointOpen, ARevisionThatAsksTheSameIsNotToldOf)
{
    JointStory story;
    story.set("16 N·m", 0, {1});
    story.revise("50 %, target, settle 2", Certainty::FromMemory); // the passes it had
    story.frame.joints.back().text.name = "Cover, upper";
    EXPECT_EQ(story.now().revision, 1);
    EXPECT_FALSE(item(open(story).firstStart, Open::JointRevised));
    story.revise("50 %, target, settle 2");
    story.frame.joints.back().text.condition = ThreadCondition::Oiled;
    EXPECT_TRUE(item(open(story).firstStart, Open::JointRevised));
}

TEST(JointOpen, UnsureValuesOnceTheyAreUsed)
{
    JointStory story;
    story.joint = smallScrew;
    story.revise("target", Certainty::FromMemory);
    story.revision = 2;
    story.loosened({1});
    EXPECT_FALSE(item(open(story).handOver, Open::JointUnsure));
    EXPECT_FALSE(item(open(story).handOver, Open::JointAssumed));
    story.set("3 N·m", 0, {1});
    EXPECT_TRUE(item(open(story).handOver, Open::JointUnsure));
    EXPECT_EQ(item(open(story).handOver, Open::JointAssumed), (OpenItem{.kind = Open::JointAssumed, .joint = smallScrew}));
}

TEST(JointOpen, OverdueToolsOncePerJointAndTool)
{
    JointStory story;
    const auto overdue = [&](ToolId tool, int pass, const std::vector<int> &fasteners) {
        TicksFact fact = story.ticked(pass, fasteners);
        fact.tool = tool;
        fact.setting = torque("32 N·m");
        fact.calibrationOverdue = true;
        story.log(fact);
    };
    overdue(dialWrench, 0, {1, 2});
    overdue(wrench, 1, {1, 2, 3});
    overdue(dialWrench, 2, {4});
    story.set("16 N·m", 0, {3});
    std::vector<std::optional<ToolId>> tools;
    for (const OpenItem &each : open(story).handOver) {
        if (each.kind == Open::CalibrationOverdue)
            tools.push_back(each.tool);
    }
    EXPECT_EQ(tools, (std::vector<std::optional<ToolId>>{wrench, dialWrench}));
}

TEST(JointSteps, LoosenedByItsActOrWhenAllWereFound)
{
    JointStory story;
    const Step line = story.frame.job.steps[0];
    story.loosened({1, 2, 3});
    EXPECT_FALSE(stepDone(story.state(), line));
    JointStory byAct = story;
    byAct.done(1);
    EXPECT_TRUE(stepDone(byAct.state(), line));
    story.loosened({4}, FoundHow::Missing);
    EXPECT_TRUE(stepDone(story.state(), line));
    EXPECT_FALSE(item(open(story).turning, Open::StepUndone));
}

TEST(JointSteps, ATighteningIsNotDoneByAnAct)
{
    JointStory story;
    const Step line = story.frame.job.steps[1];
    story.done(2);
    EXPECT_FALSE(stepDone(story.state(), line));
    story.tightenCover();
    EXPECT_TRUE(stepDone(story.state(), line));
}

TEST(JointSteps, ALineWhoseJointThereIsNotIsDoneLikeANote)
{
    JointStory story;
    story.frame.job.steps = {{StepId(1), StepKind::Tighten, "", "", Gate::FirstStart, {}, JointId(9)}};
    EXPECT_EQ(nextAct(story.state()), (NextAct{.kind = Next::DoStep, .step = StepId(1)}));
    EXPECT_TRUE(item(open(story).firstStart, Open::StepUndone));
    story.done(1);
    EXPECT_EQ(nextAct(story.state()), NextAct{});
    EXPECT_FALSE(item(open(story).firstStart, Open::StepUndone));
}

TEST(JointNext, ThroughTheLines)
{
    JointStory story;
    EXPECT_EQ(nextAct(story.state()), (NextAct{.kind = Next::LoosenJoint, .step = StepId(1), .joint = cover}));
    story.loosened({1, 2, 3, 4});
    const NextAct first{.kind = Next::TightenNext, .step = StepId(2), .joint = cover, .tick = place(1, 0)};
    EXPECT_EQ(nextAct(story.state()), first);
    story.set("16 N·m", 0, {1});
    EXPECT_EQ(nextAct(story.state()).tick, place(3, 0));
    story.tightenCover();
    const NextAct word{.kind = Next::SettleJoint, .step = StepId(3), .joint = headBolts};
    EXPECT_EQ(nextAct(story.state()), word) << "new or not is asked before the first tick";
    story.joint = headBolts;
    story.fitted({1, 2, 3}, Fitted::Reused);
    EXPECT_EQ(nextAct(story.state()).tick, place(2, 0));
    for (int pass = 0; pass < 3; ++pass)
        story.set("40 N·m", pass, {1, 2, 3});
    EXPECT_EQ(nextAct(story.state()), word) << "reuse is accepted at the end";
    story.accept(AcceptedWhat::Reused, {1, 2, 3});
    EXPECT_EQ(nextAct(story.state()), NextAct{});
}

TEST(JointNext, OpenNutsGoFirst)
{
    JointStory story;
    story.nutOpen("I1");
    EXPECT_EQ(nextAct(story.state()), (NextAct{.kind = Next::LockNut, .point = story.at("I1")}));
}

} // namespace joint_open_tests
} // namespace asleft
