// What is still open of joints, and what to do next about them.
#include "joint_story.h"
#include "kinds.h"

namespace asleft {
namespace joint_open_tests {

StillOpen open(const JointStory &story)
{
    return stillOpen(story.state(), Moment{1'000'000});
}

/// The first item of a kind.
template <class Kind>
std::optional<Kind> item(const std::vector<OpenItem> &items)
{
    const auto found = ofKind<Kind>(items);
    return found.empty() ? std::nullopt : std::optional(found.front());
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
    const std::vector<OpenItem> turning{open::FastenersLoose{cover, 4}, open::StepUndone{StepId(1)}};
    EXPECT_EQ(open(story).turning, turning);
    EXPECT_EQ(open(story).firstStart, (std::vector<OpenItem>{open::FittedUnsaid{headBolts, 3}}));
    EXPECT_EQ(open(story).handOver, (std::vector<OpenItem>{open::FastenersLoose{headBolts, 3}}))
        << "and nothing of the screw, with which nobody has to do";
}

TEST(JointOpen, OfTwoLinesTheStricterGate)
{
    JointStory story;
    story.frame.job.steps.push_back({StepId(4), StepKind::Tighten, "again", "", Gate::FirstStart, {}, headBolts});
    EXPECT_TRUE(item<open::FastenersLoose>(open(story).firstStart));
    EXPECT_FALSE(item<open::FastenersLoose>(open(story).handOver));
    std::swap(story.frame.job.steps[2], story.frame.job.steps[3]);
    EXPECT_TRUE(item<open::FastenersLoose>(open(story).firstStart)) << "whichever comes first";
}

TEST(JointOpen, WithoutALineItHindersTheFirstStartOnceBegun)
{
    JointStory story(without(jointFrame(), StepKind::Tighten));
    EXPECT_TRUE(open(story).firstStart.empty());
    story.loosened({1}, FoundHow::NotNoted);
    EXPECT_EQ(open(story).firstStart, (std::vector<OpenItem>{open::FastenersLoose{cover, 4}}));
}

TEST(JointOpen, TightNothingOfItIsOpen)
{
    JointStory story(without(jointFrame(), StepKind::Loosen));
    story.tightenCover();
    EXPECT_TRUE(open(story).turning.empty());
    EXPECT_TRUE(areOf<open::FittedUnsaid>(open(story).firstStart));
}

TEST(JointOpen, FoundAmissUntilItIsSaidWhatWentIn)
{
    for (const FoundHow how : {FoundHow::Missing, FoundHow::Broken, FoundHow::WrongLength}) {
        JointStory story;
        story.loosened({2}, how);
        EXPECT_EQ(item<open::FastenerFound>(open(story).firstStart), (open::FastenerFound{cover, 2}));
        EXPECT_EQ(story.wants(), (JointWants{JointWants::Kind::SayFitted, {2}}));
        story.set("16 N·m", 0, {2});
        EXPECT_TRUE(item<open::FastenerFound>(open(story).firstStart)) << "a tick says nothing of what was tightened";
        story.fitted({2}, Fitted::New);
        EXPECT_FALSE(item<open::FastenerFound>(open(story).firstStart));
        EXPECT_EQ(story.fastener(2).ticks.size(), 1U);
        story.loosened({2});
        EXPECT_FALSE(item<open::FastenerFound>(open(story).firstStart)) << "there was another one in it since";
    }
    JointStory story;
    story.loosened({2}, FoundHow::LooseByFeel);
    EXPECT_FALSE(item<open::FastenerFound>(open(story).firstStart));
}

TEST(JointOpen, FoundAmissAndUsedAllTheSameUntilAccepted)
{
    JointStory story;
    story.loosened({2}, FoundHow::WrongLength);
    story.fitted({2}, Fitted::Reused);
    EXPECT_FALSE(item<open::FastenerFound>(open(story).firstStart));
    EXPECT_EQ(item<open::Reused>(open(story).firstStart)->count, 1);
    story.accept(AcceptedWhat::Reused, {2});
    EXPECT_FALSE(item<open::Reused>(open(story).firstStart));
}

TEST(JointOpen, TorquesOutsideOrUnprovedUntilAccepted)
{
    JointStory story;
    story.set("27.9 N·m", 1, {1});
    story.set("36.1 N·m", 1, {2});
    story.read("28.5 N·m", "1 N·m", 1, {3});
    const auto items = open(story).firstStart;
    ASSERT_TRUE((areOf<open::TorqueOutside, open::TorqueOutside, open::TorqueUnproved, open::FittedUnsaid>(items)));
    EXPECT_EQ(items[1], OpenItem(open::TorqueOutside{cover, 2}));
    EXPECT_EQ(items[2], OpenItem(open::TorqueUnproved{cover, 3}));
    story.accept(AcceptedWhat::Torque, {1, 2, 3});
    EXPECT_TRUE(areOf<open::FittedUnsaid>(open(story).firstStart));
}

TEST(JointOpen, UnsettledUntilAccepted)
{
    JointStory story;
    const std::vector<int> all{1, 3, 2, 4};
    story.set("16 N·m", 0, all);
    story.set("32 N·m", 1, all);
    story.settle(1, all, true);
    EXPECT_FALSE(item<open::Unsettled>(open(story).firstStart));
    story.settle(2, all, true);
    EXPECT_EQ(item<open::Unsettled>(open(story).firstStart), (open::Unsettled{cover}));
    EXPECT_FALSE(item<open::FastenersLoose>(open(story).turning));
    story.accept(AcceptedWhat::Unsettled);
    EXPECT_FALSE(item<open::Unsettled>(open(story).firstStart));
}

TEST(JointOpen, WhatIsFittedAgainUntilAccepted)
{
    JointStory story;
    story.joint = headBolts;
    story.fitted({1, 2}, Fitted::Reused);
    EXPECT_EQ(item<open::FittedUnsaid>(open(story).firstStart)->count, 1);
    EXPECT_EQ(item<open::Reused>(open(story).firstStart)->count, 2);
    story.accept(AcceptedWhat::Reused, {1});
    EXPECT_EQ(item<open::Reused>(open(story).firstStart)->count, 1);
    story.accept(AcceptedWhat::Reused, {2});
    EXPECT_FALSE(item<open::Reused>(open(story).firstStart));
}

TEST(JointOpen, ByFeelUntilAcceptedAndNothingElse)
{
    JointStory story;
    story.frame.job.steps.clear();
    story.joint = smallScrew;
    story.byFeel(0, {1});
    StillOpen wanted;
    wanted.handOver = {open::FastenerByFeel{smallScrew, 1}};
    EXPECT_EQ(open(story), wanted);
    story.accept(AcceptedWhat::ByFeel, {1});
    EXPECT_EQ(open(story), StillOpen{});
}

TEST(JointOpen, AnOlderRevisionOnceItIsWorkedBy)
{
    JointStory story;
    story.loosened({1});
    story.revise("target");
    EXPECT_FALSE(item<open::JointRevised>(open(story).firstStart)) << "no tick goes by the old one";
    story.set("16 N·m", 0, {1});
    EXPECT_EQ(item<open::JointRevised>(open(story).firstStart), (open::JointRevised{cover}));
    story.begin(2);
    EXPECT_FALSE(item<open::JointRevised>(open(story).firstStart));
}

TEST(JointOpen, ARevisionThatAsksTheSameIsNotToldOf)
{
    JointStory story;
    story.set("16 N·m", 0, {1});
    story.revise("50 %, target, settle 2", Certainty::FromMemory); // the passes it had
    story.frame.joints.back().text.name = "Cover, upper";
    EXPECT_EQ(story.now().revision, 1);
    EXPECT_FALSE(item<open::JointRevised>(open(story).firstStart));
    story.revise("50 %, target, settle 2");
    story.frame.joints.back().text.condition = ThreadCondition::Oiled;
    EXPECT_TRUE(item<open::JointRevised>(open(story).firstStart));
}

TEST(JointOpen, UnsureValuesOnceTheyAreUsed)
{
    JointStory story;
    story.joint = smallScrew;
    story.revise("target", Certainty::FromMemory);
    story.revision = 2;
    story.loosened({1});
    EXPECT_FALSE(item<open::JointUnsure>(open(story).handOver));
    EXPECT_FALSE(item<open::JointAssumed>(open(story).handOver));
    story.set("3 N·m", 0, {1});
    EXPECT_TRUE(item<open::JointUnsure>(open(story).handOver));
    EXPECT_EQ(item<open::JointAssumed>(open(story).handOver), (open::JointAssumed{smallScrew}));
}

TEST(JointOpen, OverdueToolsOncePerJointAndTool)
{
    JointStory story;
    const auto overdue = [&](ToolId tool, int pass, const std::vector<int> &fasteners) {
        TicksFact fact = story.ticked(pass, fasteners);
        fact.tool = tool;
        fact.setting = typedTorque("32 N·m");
        fact.calibrationOverdue = true;
        story.log(fact);
    };
    overdue(dialWrench, 0, {1, 2});
    overdue(wrench, 1, {1, 2, 3});
    overdue(dialWrench, 2, {4});
    story.set("16 N·m", 0, {3});
    std::vector<std::optional<ToolId>> tools;
    for (const auto &each : ofKind<open::CalibrationOverdue>(open(story).handOver))
        tools.push_back(each.tool);
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
    EXPECT_FALSE(item<open::StepUndone>(open(story).turning));
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
    EXPECT_EQ(nextAct(story.state()), NextAct(next::DoStep{StepId(1)}));
    EXPECT_TRUE(item<open::StepUndone>(open(story).firstStart));
    story.done(1);
    EXPECT_EQ(nextAct(story.state()), NextAct{});
    EXPECT_FALSE(item<open::StepUndone>(open(story).firstStart));
}

TEST(JointNext, ThroughTheLines)
{
    JointStory story;
    EXPECT_EQ(nextAct(story.state()), (NextAct(next::LoosenJoint{StepId(1), cover})));
    story.loosened({1, 2, 3, 4});
    const auto tick = [](StepId step, JointId joint, TickSlot slot) { return NextAct(next::TightenNext{step, joint, slot}); };
    EXPECT_EQ(nextAct(story.state()), tick(StepId(2), cover, place(1, 0)));
    story.set("16 N·m", 0, {1});
    EXPECT_EQ(nextAct(story.state()), tick(StepId(2), cover, place(3, 0)));
    story.tightenCover();
    const NextAct word = next::SettleJoint{StepId(3), headBolts};
    EXPECT_EQ(nextAct(story.state()), word) << "new or not is asked before the first tick";
    story.joint = headBolts;
    story.fitted({1, 2, 3}, Fitted::Reused);
    EXPECT_EQ(nextAct(story.state()), tick(StepId(3), headBolts, place(2, 0)));
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
    EXPECT_EQ(nextAct(story.state()), NextAct(next::LockNut{story.at("I1")}));
}

} // namespace joint_open_tests
} // namespace asleft
