// Whether a joint's torque makes sense for its threads, and whether two revisions ask the same.
#include "joint_texts.h"
#include "typed.h"

#include <measure/format.h>

#include <gtest/gtest.h>

#include <functional>

namespace asleft {
namespace joint_checks_tests {

/// One screw with this thread, class and target.
JointText screw(const char *thread, const char *strength, const char *target)
{
    JointText text;
    text.name = "Screw";
    text.thread = thread;
    text.strength = strength;
    text.pattern = rowPattern(1).value();
    text.target = target;
    return text;
}

TEST(PreloadCheck, ReckonsTheTarget)
{
    const auto check = preloadCheck(jointOfText(screw("M8", "8.8", "25 ± 3 N·m")));
    ASSERT_TRUE(check);
    EXPECT_DOUBLE_EQ(check->nutFactor, 0.20);                  // zinc, dry (Shigley, Table 8-15)
    EXPECT_DOUBLE_EQ(check->newtons, 25 / (0.20 * 0.008));     // F = T/(K·d)
    EXPECT_NEAR(*check->shareOfProof, 15'625 / 21'200., 2e-3); // proof load of M8 8.8, three figures: ISO 898-1
    EXPECT_FALSE(check->doubt);
}

TEST(PreloadCheck, GoesByTheManualsConditionElseByTheFinishDry)
{
    JointText text = screw("M8", "8.8", "25 N·m");
    text.finish = Finish::Black;
    EXPECT_DOUBLE_EQ(preloadCheck(jointOfText(text))->nutFactor, 0.30); // Shigley, Table 8-15
    text.condition = ThreadCondition::Oiled;
    EXPECT_DOUBLE_EQ(preloadCheck(jointOfText(text))->nutFactor, 0.18);
}

TEST(PreloadCheck, NeedsATorqueAndAThread)
{
    EXPECT_FALSE(preloadCheck(jointOfText(screw("", "8.8", "25 N·m"))));
    JointText byHand = screw("M8", "8.8", "");
    byHand.passes = "finger";
    EXPECT_FALSE(preloadCheck(jointOfText(byHand)));
}

TEST(PreloadCheck, AsksWhetherTheUnitSlipped)
{
    for (const char *target : {"60 lbf·ft", "60 ± 5 lbf·ft", "55-65 lbf·ft"}) {
        const auto check = preloadCheck(jointOfText(screw("M5", "8.8", target)));
        ASSERT_TRUE(check && check->doubt) << target;
        EXPECT_GT(check->doubt->times, 12) << "some 13 times what an M5 takes";
        EXPECT_LT(check->doubt->times, 14);
        EXPECT_EQ(check->doubt->meant, TorqueUnit::PoundInch);
        EXPECT_EQ(check->doubt->meantValue, torque("60 lbf·in")) << target;
    }
}

TEST(PreloadCheck, TakesAnOrdinaryClassForTheDoubtAlone)
{
    const auto metric = preloadCheck(jointOfText(screw("M5", "", "60 lbf·ft")));
    EXPECT_FALSE(metric->shareOfProof);
    EXPECT_EQ(metric->doubt, preloadCheck(jointOfText(screw("M5", "8.8", "60 lbf·ft")))->doubt);
    const auto inch = preloadCheck(jointOfText(screw("1/4-20", "", "100 lbf·ft")));
    EXPECT_FALSE(inch->shareOfProof);
    ASSERT_TRUE(inch->doubt);
    EXPECT_EQ(inch->doubt, preloadCheck(jointOfText(screw("1/4-20", "grade 5", "100 lbf·ft")))->doubt);
}

TEST(PreloadCheck, ASnugTorqueBeforeAnAngleIsNeverTooLittle)
{
    JointText text = screw("M12", "8.8", "2 N·m"); // a fortieth of what it takes
    const auto whole = preloadCheck(jointOfText(text));
    ASSERT_TRUE(whole && whole->doubt);
    EXPECT_LT(whole->doubt->times, 0.05);
    text.passes = "target, +90°";
    EXPECT_FALSE(preloadCheck(jointOfText(text))->doubt);
    text.target = "500 N·m"; // but it may be too much
    EXPECT_TRUE(preloadCheck(jointOfText(text))->doubt);
}

TEST(PreloadCheck, WithoutATargetTheHighestTorqueOfThePasses)
{
    JointText text = screw("M12x1.25", "10.9", "");
    text.passes = "20 N·m, 40 N·m, +45°, +45°";
    const auto check = preloadCheck(jointOfText(text));
    ASSERT_TRUE(check);
    EXPECT_EQ(formatTyped(check->torque), "40 N·m");
    EXPECT_DOUBLE_EQ(check->newtons, 40 / (0.20 * 0.012)); // F = T/(K·d)
    EXPECT_FALSE(check->doubt);
    text.passes = "20 lbf·ft, 400 lbf·ft, +90°";
    EXPECT_TRUE(preloadCheck(jointOfText(text))->doubt);
}

TEST(PreloadCheck, OfSeveralThreadsTheWorst)
{
    JointText text = screw("M8", "8.8", "25 N·m");
    text.pattern = rowPattern(4).value();
    text.pattern.places[1].thread = "M10";
    text.pattern.places[2].thread = "M5";
    const auto check = preloadCheck(jointOfText(text));
    ASSERT_TRUE(check && check->doubt);
    EXPECT_EQ(check->thread, parseThread("M5").value());
    text.pattern.places[2].thread = "M8";
    EXPECT_EQ(preloadCheck(jointOfText(text))->thread, parseThread("M8").value()) << "nothing to ask: the nearest to its proof load";
    text.strength.clear();
    EXPECT_EQ(preloadCheck(jointOfText(text))->thread, parseThread("M8").value()) << "nothing to tell them apart: the joint's own";
    text.thread.clear();
    EXPECT_EQ(preloadCheck(jointOfText(text))->thread, parseThread("M10").value()) << "of those that have one";
    text.thread = "M3";
    for (FastenerPosition &place : text.pattern.places)
        place.thread = "M8";
    EXPECT_EQ(preloadCheck(jointOfText(text))->thread, parseThread("M8").value()) << "no fastener has the joint's own";
}

TEST(AsksTheSame, HoweverItIsTyped)
{
    JointText text = screw("M8", "8.8", "32 ± 4 N·m");
    text.pattern = rowPattern(4).value();
    text.passes = "20 N·m, target, +90°";
    JointText other = text;
    other.name = "Another name";
    other.thread = "m8 × 1.25";
    other.strength = "8,8";
    other.target = "32 +/- 4 Nm";
    other.passes = "20Nm; 100 %; +1/4 turn";
    other.pattern.places[2].thread = "M8";
    other.order = "2-3-1-4"; // as generated
    other.source = {"Manual", "4-12", Certainty::ReadInManual};
    other.driveSize = "13 mm";
    EXPECT_TRUE(asksTheSame(jointOfText(text), jointOfText(other)));
}

TEST(AsksTheSame, NotWhereTheHandHasToDoOtherwise)
{
    JointText text = screw("M8", "8.8", "32 ± 4 N·m");
    text.pattern = rowPattern(4).value();
    const Joint first = jointOfText(text);
    const std::function<void(JointText &)> changes[] = {
        [](JointText &to) { to.target = "32 ± 3 N·m"; },
        [](JointText &to) { to.target = "28-36 N·m"; },
        [](JointText &to) { to.otherTarget = "24 ± 3 lbf·ft"; },
        [](JointText &to) { to.passes = "50 %, target"; },
        [](JointText &to) { to.passes = "16 N·m, target"; },
        [](JointText &to) { to.order = "1-2-3-4"; },
        [](JointText &to) { to.thread = "M8x1"; },
        [](JointText &to) { to.pattern.places[3].thread = "M6"; },
        [](JointText &to) { to.strength = "10.9"; },
        [](JointText &to) { to.condition = ThreadCondition::Oiled; },
        [](JointText &to) { to.pattern = rowPattern(5).value(); },
    };
    for (std::size_t i = 0; i < std::size(changes); ++i) {
        JointText changed = text;
        changes[i](changed);
        EXPECT_FALSE(asksTheSame(first, jointOfText(changed))) << i;
        EXPECT_FALSE(asksTheSame(jointOfText(changed), first)) << i;
    }
}

} // namespace joint_checks_tests
} // namespace asleft
