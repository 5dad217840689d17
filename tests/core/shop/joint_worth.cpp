// What a tick is worth, what of it is accepted, and what was found loose.
#include "joint_story.h"

namespace asleft {
namespace joint_worth_tests {

TEST(TickMade, ASetToolIsJudgedByItsSettingLimitsIncluded)
{
    JointStory story;
    const auto verdict = [&](std::string_view setting) {
        story.set(setting, 1, {1});
        return story.fastener(1).verdict();
    };
    EXPECT_EQ(verdict("28 N·m"), Verdict::Inside);
    EXPECT_EQ(verdict("36 N·m"), Verdict::Inside);
    EXPECT_EQ(verdict("27.99 N·m"), Verdict::Low);
    EXPECT_EQ(verdict("36.01 N·m"), Verdict::High);
    // 27 lbf·ft is 36.61 N·m: above the band in newton-metres, on the limit of the one in pound-feet.
    EXPECT_EQ(verdict("27 lbf·ft"), Verdict::Inside);
    EXPECT_EQ(verdict("27.1 lbf·ft"), Verdict::High);
}

TEST(TickMade, AReadToolByItsReadingAndUncertainty)
{
    JointStory story;
    const auto verdict = [&](std::string_view reading, std::string_view uncertainty) {
        story.read(reading, uncertainty, 1, {1});
        return story.fastener(1).verdict();
    };
    EXPECT_EQ(verdict("29 N·m", "1 N·m"), Verdict::Inside);
    EXPECT_EQ(verdict("28.9 N·m", "1 N·m"), Verdict::TooClose);
    EXPECT_EQ(verdict("27 N·m", "1 N·m"), Verdict::Low);
    EXPECT_EQ(verdict("28 N·m", "0 N·m"), Verdict::Inside);
}

TEST(TickMade, OnlyTargetAndSettlePassesAreJudged)
{
    JointStory story;
    story.set("1 N·m", 0, {1});
    EXPECT_FALSE(story.fastener(1).verdict());
    EXPECT_EQ(story.fastener(1).ticks.front().torque, torque("1 N·m"));
    story.settle(1, {1}, true);
    EXPECT_EQ(story.fastener(1).verdict(), Verdict::Inside);
    story.byFeel(0, {2});
    EXPECT_FALSE(story.fastener(2).verdict()) << "half of it by feel decides nothing";
    EXPECT_EQ(story.fastener(2).ticks.front().verdict, Verdict::ByFeel);
    EXPECT_FALSE(story.fastener(2).ticks.front().torque);
}

TEST(TickMade, OutOfRangeOrUnknownIsNotProved)
{
    JointStory story;
    TicksFact fact = story.ticked(1, {1});
    fact.setting = typedTorque("32 N·m");
    fact.outOfRange = true;
    story.log(fact);
    EXPECT_EQ(story.fastener(1).verdict(), Verdict::TooClose);
    fact = story.ticked(1, {2});
    story.log(fact);
    EXPECT_EQ(story.fastener(2).verdict(), Verdict::TooClose) << "nobody knows what it was set to";
}

TEST(TickMade, ThroughAnAdapterByWhatTheFastenerGot)
{
    // FAA AC 43.13-1B, ch. 7: a wrench of lever L with an adapter of length E straight out gives T = S·(L + E)/L.
    JointStory story;
    TicksFact fact = story.ticked(1, {1});
    fact.setting = typedTorque("25.6 N·m");
    fact.fit = FitUsed{ToolId(7), {length("100 mm").value, degrees(0)}};
    story.log(fact);
    EXPECT_FALSE(story.fastener(1).ticks.front().torque) << "of a wrench whose lever nobody knows";
    fact.lever = length("400 mm").value;
    story.log(fact);
    EXPECT_EQ(story.fastener(1).ticks.front().torque, torque("32 N·m"));
    EXPECT_EQ(story.fastener(1).verdict(), Verdict::Inside);
    fact.fit->fit.angle = degrees(90);
    fact.lever.reset();
    story.log(fact);
    EXPECT_EQ(story.fastener(1).ticks.front().torque, torque("25.6 N·m")) << "across, it changes nothing";
    EXPECT_EQ(story.fastener(1).verdict(), Verdict::Low);
}

TEST(JointVerdicts, ByFeelAcceptedAndTickedAgain)
{
    JointStory story;
    story.joint = smallScrew;
    story.accept(AcceptedWhat::ByFeel, {1});
    story.byFeel(0, {1});
    EXPECT_FALSE(story.fastener(1).feelAccepted) << "accepted before it was there";
    EXPECT_EQ(story.fastener(1).verdict(), Verdict::ByFeel);
    EXPECT_TRUE(story.settled()) << "by feel is done";
    story.accept(AcceptedWhat::ByFeel, {1}, "no wrench goes in");
    EXPECT_EQ(story.fastener(1).feelAccepted, "no wrench goes in");
    story.byFeel(0, {1});
    EXPECT_FALSE(story.fastener(1).feelAccepted) << "a new tick wants a new word";
    story.set("3 N·m", 0, {1});
    story.accept(AcceptedWhat::ByFeel, {1});
    EXPECT_FALSE(story.fastener(1).byFeel());
    EXPECT_FALSE(story.fastener(1).feelAccepted) << "nothing of it is by feel now";
    EXPECT_EQ(story.fastener(1).verdict(), Verdict::Inside);
}

TEST(JointVerdicts, ATorqueOutsideAcceptedAndTickedAgain)
{
    JointStory story;
    story.joint = smallScrew;
    story.set("2 N·m", 0, {1});
    EXPECT_FALSE(story.settled());
    EXPECT_EQ(story.wants(), (JointWants{JointWants::Kind::TorqueOutside, {1}}));
    story.accept(AcceptedWhat::Torque, {1});
    EXPECT_TRUE(story.settled());
    story.set("2 N·m", 0, {1});
    EXPECT_FALSE(story.settled());
    story.set("3 N·m", 0, {1});
    EXPECT_TRUE(story.settled());
    story.accept(AcceptedWhat::Torque, {1});
    EXPECT_FALSE(story.fastener(1).torqueAccepted) << "nothing to accept";
}

TEST(JointVerdicts, ATickTakenOffVoidsWhatWasAccepted)
{
    JointStory story;
    story.byFeel(0, {1, 2});
    story.byFeel(1, {1, 2});
    story.accept(AcceptedWhat::ByFeel, {1, 2});
    story.untick(0, {1});
    EXPECT_TRUE(story.fastener(1).byFeel()) << "its target still is";
    EXPECT_FALSE(story.fastener(1).feelAccepted);
    EXPECT_TRUE(story.fastener(2).feelAccepted);
}

TEST(JointVerdicts, ByFeelBeforeTheTargetIsGoneOver)
{
    JointStory story;
    story.byFeel(0, {1});
    EXPECT_FALSE(story.fastener(1).byFeel());
    story.set("32 N·m", 1, {1});
    EXPECT_FALSE(story.fastener(1).byFeel());
    EXPECT_EQ(story.fastener(1).verdict(), Verdict::Inside);
}

TEST(JointVerdicts, ByFeelHidesNothingThatWasMeasuredAtTheTarget)
{
    JointStory story;
    const ActSeq measured = story.set("20 N·m", 1, {1});
    TicksFact fact = story.ticked(2, {1});
    fact.how = TickHow::ByFeel;
    story.log(fact);
    const FastenerState low = story.fastener(1);
    EXPECT_EQ(low.verdict(), Verdict::Low);
    EXPECT_TRUE(low.outside());
    EXPECT_TRUE(low.byFeel()) << "and that its last round was by feel is said too";
    ASSERT_TRUE(low.deciding());
    EXPECT_EQ(low.deciding()->seq, measured);
    story.accept(AcceptedWhat::ByFeel, {1});
    story.accept(AcceptedWhat::Torque, {1});
    EXPECT_TRUE(story.fastener(1).feelAccepted && story.fastener(1).torqueAccepted);
}

TEST(JointVerdicts, MeasuredAfterAllIsNotByFeel)
{
    JointStory story;
    story.byFeel(1, {1});
    EXPECT_TRUE(story.fastener(1).byFeel());
    EXPECT_FALSE(story.fastener(1).deciding());
    EXPECT_FALSE(story.fastener(1).outside());
    const ActSeq settled = story.settle(1, {1}, false);
    EXPECT_FALSE(story.fastener(1).byFeel()) << "of several ticks at the target the last counts";
    EXPECT_EQ(story.fastener(1).deciding()->seq, settled);
}

TEST(JointVerdicts, OfTorqueAndAngleEitherByFeelIsByFeel)
{
    JointStory story;
    story.joint = headBolts;
    story.byFeel(0, {1, 2, 3});
    EXPECT_FALSE(story.fastener(1).byFeel()) << "finger-tight";
    story.byFeel(1, {1});
    story.set("40 N·m", 1, {2, 3});
    TicksFact turned = story.ticked(2, {1, 3});
    turned.how = TickHow::ByAngle;
    story.log(turned);
    story.byFeel(2, {2});
    EXPECT_TRUE(story.fastener(1).byFeel()) << "no torque comes after the snug one";
    EXPECT_TRUE(story.fastener(2).byFeel());
    EXPECT_EQ(story.fastener(2).verdict(), Verdict::ByFeel);
    EXPECT_FALSE(story.fastener(3).byFeel());
    EXPECT_FALSE(story.fastener(3).verdict());
}

TEST(JointVerdicts, ASnugTorqueOutOfRangeIsNotProvedThoughThereIsNoBand)
{
    JointStory story;
    story.joint = headBolts;
    TicksFact snug = story.ticked(1, {1, 2});
    snug.setting = typedTorque("40 N·m");
    snug.outOfRange = true;
    const ActSeq made = story.log(snug);
    snug.outOfRange = false;
    snug.ticks = {{place(2, 1), false}};
    story.log(snug);
    TicksFact turned = story.ticked(2, {1, 2});
    turned.how = TickHow::ByAngle;
    story.log(turned);
    EXPECT_EQ(story.fastener(1).verdict(), Verdict::TooClose);
    EXPECT_EQ(story.fastener(1).deciding()->seq, made);
    EXPECT_TRUE(story.fastener(1).outside());
    EXPECT_FALSE(story.fastener(2).verdict());
    story.joint = cover;
    TicksFact half = story.ticked(0, {1});
    half.setting = typedTorque("16 N·m");
    half.outOfRange = true;
    story.log(half);
    EXPECT_FALSE(story.fastener(1).verdict()) << "the target comes after it";
}

TEST(JointVerdicts, ATorqueTypedAsTheTargetIsJudgedAsTheTarget)
{
    JointStory story;
    story.frame.joints[0].passes = parsePasses("16 N·m, 32 N·m", TorqueUnit::NewtonMetre).value();
    story.set("16 N·m", 0, {1});
    EXPECT_FALSE(story.fastener(1).verdict());
    story.set("27.9 N·m", 1, {1});
    EXPECT_EQ(story.fastener(1).verdict(), Verdict::Low);
    story.set("27 lbf·ft", 1, {1});
    EXPECT_EQ(story.fastener(1).verdict(), Verdict::Inside) << "by the band printed in its own system";
}

TEST(JointVerdicts, FoundLoose)
{
    JointStory story;
    story.loosened({1}, FoundHow::LooseByFeel);
    story.loosened({2}, FoundHow::Measured, "13.9 N·m");
    story.loosened({3}, FoundHow::Measured, "1 N·m");
    story.loosened({4}, FoundHow::TightByFeel);
    const JobState state = story.state();
    EXPECT_EQ(foundLoose(state.joints.at(cover)), std::vector{1}) << "a loosening torque is not judged";
}

} // namespace joint_worth_tests
} // namespace asleft
