// What a joint's text says, and what its passes go by.
#include "joint_texts.h"
#include "typed.h"

#include <measure/format.h>

#include <gtest/gtest.h>

#include <functional>

namespace asleft {
namespace joint_tests {

/// Screws that are turned on by an angle from a snug torque; there is no target.
JointText turnedOn()
{
    JointText text;
    text.name = "Head";
    text.thread = "M12x1.25";
    text.strength = "10.9";
    text.pattern = rowsPattern(2, 5).value();
    text.passes = "40 N·m, +45°, +45°, +45°, +30°";
    text.singleUse = SingleUse::TorqueToYield;
    return text;
}

TEST(ReadJoint, ReadsEveryPart)
{
    const Joint joint = jointOfText(coverText());
    EXPECT_EQ(joint.text, coverText());
    EXPECT_EQ(joint.thread, parseThread("M8").value());
    EXPECT_EQ(joint.strength, StrengthClass::C8_8);
    EXPECT_EQ(joint.order, generateOrder(coverText().pattern));
    EXPECT_TRUE(joint.orderGenerated);
    ASSERT_TRUE(joint.target);
    EXPECT_EQ(joint.target->first.low, torque("28 N·m"));
    EXPECT_EQ(joint.target->first.high, torque("36 N·m"));
    EXPECT_FALSE(joint.target->second);
    EXPECT_EQ(joint.passes, (std::vector<Pass>{PercentOfTarget{50}, AtTarget{}, Settle{3}}));
    EXPECT_EQ(joint.tightening().order, joint.order);
    EXPECT_EQ(joint.tightening().passes, joint.passes);
}

TEST(ReadJoint, KeepsWhatWasTypedWithoutTheBlanksAroundIt)
{
    JointText text = coverText();
    text.name = " Cover, upper \n";
    text.thread = "\tm8 × 1.25 ";
    text.strength = " 8,8 ";
    text.order = " 1 2 3 4 5 6 7 8 9 10 11 12\n";
    text.target = " 32 +/- 4 Nm ";
    text.passes = " 50%; target ";
    text.driveSize = " 13 mm ";
    text.engagement = " 20 mm ";
    text.source = {" Manual ", " 4-12 ", Certainty::ToldByPerson};
    text.answered = " the manual says so twice ";
    text.pattern.places[3].thread = " M6 ";
    text.pattern.places[3].length = " 30 mm ";
    const Joint joint = jointOfText(text);
    JointText kept = coverText();
    kept.name = "Cover, upper";
    kept.thread = "m8 × 1.25";
    kept.strength = "8,8";
    kept.order = "1 2 3 4 5 6 7 8 9 10 11 12";
    kept.target = "32 +/- 4 Nm";
    kept.passes = "50%; target";
    kept.driveSize = "13 mm";
    kept.engagement = "20 mm";
    kept.source = {"Manual", "4-12", Certainty::ToldByPerson};
    kept.answered = "the manual says so twice";
    kept.pattern.places[3].thread = "M6";
    kept.pattern.places[3].length = "30 mm";
    EXPECT_EQ(joint.text, kept);
    EXPECT_EQ(joint.thread, parseThread("M8").value());
    EXPECT_EQ(jointOfText(joint.text).text, kept) << "what was kept reads as the same again";
}

TEST(ReadJoint, NeedsNoMoreThanANameAPatternAndATarget)
{
    JointText text;
    text.name = "Cover";
    text.pattern = rowPattern(4).value();
    text.target = "9";
    text.unit = TorqueUnit::PoundInch;
    const Joint joint = jointOfText(text);
    EXPECT_FALSE(joint.thread);
    EXPECT_FALSE(joint.strength);
    EXPECT_EQ(joint.order, (TighteningOrder{2, 3, 1, 4})); // from the centre of a row of four: CHECKVALUES, published
    EXPECT_EQ(joint.passes, std::vector<Pass>{AtTarget{}});
    EXPECT_EQ(targetOf(joint)->value, torque("9 lbf·in"));
}

TEST(ReadJoint, TheManualsOrderIsNotGenerated)
{
    JointText text = coverText();
    text.pattern = rowPattern(4).value();
    text.order = "4-3-2-1";
    const Joint joint = jointOfText(text);
    EXPECT_EQ(joint.order, (TighteningOrder{4, 3, 2, 1}));
    EXPECT_FALSE(joint.orderGenerated);
}

TEST(ReadJoint, PassesThatAskForNoTargetNeedNone)
{
    const Joint joint = jointOfText(turnedOn());
    EXPECT_FALSE(joint.target);
    EXPECT_FALSE(targetOf(joint));
    ASSERT_EQ(joint.passes.size(), 5U);
    EXPECT_EQ(totalAngle(joint.passes, 4), degrees(165)); // TM 10-3930-669-20 Table E-1
    JointText byHand = turnedOn();
    byHand.passes = "finger";
    EXPECT_EQ(jointOfText(byHand).passes, std::vector<Pass>{FingerTight{}});
}

TEST(ReadJoint, ReadsNumbersByTheMark)
{
    JointText text = coverText();
    text.target = "32,5 ± 2,5 N·m";
    text.passes = "10,5 N·m, target";
    const Joint joint = jointOfText(text, DecimalMark::Comma);
    EXPECT_EQ(targetOf(joint)->value, torque("32.5 N·m"));
    EXPECT_EQ(std::get<AtTorque>(joint.passes[0]).torque.value, torque("10.5 N·m"));
    text.target = "1.250 N·m"; // with a comma for the mark it may be a thousand
    EXPECT_EQ(readJoint(text, DecimalMark::Comma).error().kind, ErrorKind::AmbiguousNumber);
}

TEST(ReadJoint, BothPrintedTargets)
{
    JointText text = coverText();
    text.otherTarget = "21-26 lbf·ft";
    const Joint both = jointOfText(text);
    ASSERT_TRUE(both.target && both.target->second);
    EXPECT_EQ(both.target->second->unit, TorqueUnit::PoundFoot);
    EXPECT_EQ(targetOf(both)->value, torque("32 N·m")) << "the passes go by the first";
    text.target.clear();
    const Joint other = jointOfText(text);
    ASSERT_TRUE(other.target);
    EXPECT_EQ(other.target->first.unit, TorqueUnit::PoundFoot) << "in the second field alone it counts all the same";
}

TEST(ReadJoint, EitherGroundAllowsToSettle)
{
    for (const SettleGround ground : {SettleGround::Limiters, SettleGround::ManualSaysSo}) {
        JointText text = coverText();
        text.settle = ground;
        EXPECT_TRUE(readJoint(text));
    }
}

struct Refusal {
    const char *what;
    std::function<void(JointText &)> spoil;
    Error error;
};
void PrintTo(const Refusal &refusal, std::ostream *out)
{
    *out << refusal.what;
}

class RefusedJoint : public testing::TestWithParam<Refusal> {};

TEST_P(RefusedJoint, SaysWhy)
{
    JointText text = coverText();
    GetParam().spoil(text);
    const auto joint = readJoint(text);
    ASSERT_FALSE(joint);
    EXPECT_EQ(joint.error().kind, GetParam().error.kind);
    EXPECT_EQ(joint.error().arguments, GetParam().error.arguments);
}

Refusal pattern(const char *what, std::function<void(Pattern &)> spoil, Error error)
{
    return {what, [spoil = std::move(spoil)](JointText &text) { spoil(text.pattern); }, std::move(error)};
}
Refusal order(const char *typed, Error error)
{
    return {typed, [typed](JointText &text) { text.order = typed; }, std::move(error)};
}
Refusal target(const char *typed, Error error)
{
    return {typed, [typed](JointText &text) { text.target = typed; }, std::move(error)};
}
Refusal otherTarget(const char *typed, Error error)
{
    return {typed, [typed](JointText &text) { text.otherTarget = typed; }, std::move(error)};
}
Refusal passes(const char *typed, Error error)
{
    return {typed, [typed](JointText &text) { text.passes = typed; }, std::move(error)};
}

Pattern manyPlaces(int count)
{
    Pattern many{PatternKind::Row, {}};
    for (int i = 1; i <= count; ++i)
        many.places.push_back({i, static_cast<double>(i), 0});
    return many;
}

INSTANTIATE_TEST_SUITE_P(
    NameThreadAndClass, RefusedJoint,
    testing::Values(
        Refusal{"no name", [](JointText &text) { text.name = " \t"; }, {ErrorKind::NameMissing, {}, Noun::Joint}},
        Refusal{"thread", [](JointText &text) { text.thread = "eight"; }, {ErrorKind::ThreadUnread, {"eight"}}},
        Refusal{"no such pitch", [](JointText &text) { text.thread = "M8x3"; }, {ErrorKind::ThreadUnknown, {"M8x3", "M8, M8x1, M8x0.75"}}},
        Refusal{
            "one fastener's thread", [](JointText &text) { text.pattern.places[4].thread = "five"; }, {ErrorKind::ThreadUnread, {"five"}}},
        Refusal{"class", [](JointText &text) { text.strength = "11.9"; }, {ErrorKind::ClassUnknown, {"11.9"}}}));

INSTANTIATE_TEST_SUITE_P(
    Patterns, RefusedJoint,
    testing::Values(pattern("none", [](Pattern &places) { places.places.clear(); }, {ErrorKind::PatternCount, {"0", "1", "200"}}),
                    pattern("10 000", [](Pattern &places) { places = manyPlaces(10'000); },
                            {ErrorKind::PatternCount, {"10000", "1", "200"}}),
                    pattern("a number twice", [](Pattern &places) { places.places[1].number = 1; }, {ErrorKind::PatternNumber, {"1"}}),
                    pattern("number 0", [](Pattern &places) { places.places[1].number = 0; }, {ErrorKind::PatternNumber, {"0"}}),
                    pattern("on top of another",
                            [](Pattern &places) {
                                places.places[1].x = places.places[0].x;
                                places.places[1].y = places.places[0].y;
                            },
                            {ErrorKind::PlacesTooClose, {"1", "2"}})));

INSTANTIATE_TEST_SUITE_P(Orders, RefusedJoint,
                         testing::Values(order("1-2-3-4-5-6-7-8-9-10-11-eleven", {ErrorKind::OrderUnread, {"eleven"}}),
                                         order("1-2-3-4-5-6-7-8-9-10-11-13", {ErrorKind::OrderUnknown, {"13"}}),
                                         order("1-2-3-4-5-6-7-8-9-10-11-7", {ErrorKind::OrderTwice, {"7"}}),
                                         order("1-2-3-4-5-6-7-8-9-10-12", {ErrorKind::OrderMissing, {"11"}})));

INSTANTIATE_TEST_SUITE_P(Targets, RefusedJoint,
                         testing::Values(target("thirty", {ErrorKind::NotANumber, {"thirty"}}),
                                         target("-5 N·m", {ErrorKind::NegativeValue, {"-5 N·m"}}),
                                         target("32 mm", {ErrorKind::UnknownUnit, {"mm", acceptedUnits<Torque>()}}),
                                         target("1,250 N·m", {ErrorKind::AmbiguousNumber, {"1,250 N·m"}}),
                                         target("36-28 N·m", {ErrorKind::BandUpsideDown, {"36.0 N·m", "28.0 N·m"}}),
                                         target("", {ErrorKind::TargetMissing, {"50 %"}}),
                                         target("0 N·m", {ErrorKind::PassesFall, {"50 %"}}),
                                         otherTarget("high", {ErrorKind::NotANumber, {"high"}}),
                                         otherTarget("30 ± 4 N·m", {ErrorKind::BandSameSystem, {"30 ± 4 N·m"}}),
                                         otherTarget("60-70 lbf·ft", {ErrorKind::BandSystemsDiffer, {"32 ± 4 N·m", "60-70 lbf·ft"}})));

INSTANTIATE_TEST_SUITE_P(
    Passes, RefusedJoint,
    testing::Values(
        passes("half, target", {ErrorKind::PassUnread, {"half"}}), passes("120 %", {ErrorKind::PassOverTarget, {"120 %"}}),
        passes("40 N·m, target", {ErrorKind::PassOverTarget, {"40 N·m"}}), passes("target, 50 %", {ErrorKind::PassesFall, {"50 %"}}),
        passes("50 %, finger, target", {ErrorKind::FingerNotFirst, {}}), passes("finger, +90°", {ErrorKind::AngleWithoutSnug, {"+90°"}}),
        passes("50 %, +2 turns, +1°", {ErrorKind::AngleTooLarge, {"721"}}),
        passes("50 %, +90°, target", {ErrorKind::TorqueAfterAngle, {"target"}}),
        passes("50 %, 75 %", {ErrorKind::PassesStopShort, {"75 %"}}), passes("finger", {ErrorKind::PassesStopShort, {"finger"}}),
        passes("target, +90°, settle 3", {ErrorKind::SettleAfterAngle, {}}), passes("50 %, settle 3", {ErrorKind::SettleMisplaced, {}}),
        passes("finger,5%,10%,15%,20%,25%,30%,35%,40%,45%,50%,55%,60%", {ErrorKind::PassesTooMany, {"13", "12"}}),
        Refusal{"no ground to settle", [](JointText &text) { text.settle = SettleGround::No; }, {ErrorKind::SettleNotAllowed, {}}}));

struct TargetCase {
    const char *typed;
    const char *value;
    const char *shown;
};

class TargetOf : public testing::TestWithParam<TargetCase> {};

TEST_P(TargetOf, IsTheNominalElseTheMiddle)
{
    JointText text = coverText();
    text.target = GetParam().typed;
    const auto target = targetOf(jointOfText(text));
    ASSERT_TRUE(target);
    EXPECT_EQ(target->value, torque(GetParam().value));
    EXPECT_EQ(formatTyped(*target), GetParam().shown);
}

INSTANTIATE_TEST_SUITE_P(All, TargetOf,
                         testing::Values(TargetCase{"32 ± 4 N·m", "32 N·m", "32 N·m"}, TargetCase{"32", "32 N·m", "32 N·m"},
                                         TargetCase{"32 +4 -0 N·m", "32 N·m", "32 N·m"},  // not the middle
                                         TargetCase{"40 ft-lb", "40 lbf·ft", "40 ft-lb"}, // in its own words
                                         TargetCase{"40 ft-lb ± 10 %", "40 lbf·ft", "40 lbf·ft"},
                                         TargetCase{"28-36 N·m", "32 N·m", "32 N·m"}, TargetCase{"28-35 N·m", "31.5 N·m", "31.5 N·m"},
                                         TargetCase{"20-25 lbf·ft", "22.5 lbf·ft", "22.5 lbf·ft"}, // both ends are rounded already
                                         TargetCase{"2.5-3.1 kgf·m", "2.8 kgf·m", "2.8 kgf·m"},
                                         TargetCase{"at least 30 N·m", "30 N·m", "30 N·m"}, // one limit: that
                                         TargetCase{"at most 12 lbf·in", "12 lbf·in", "12 lbf·in"}));

/// As a manual prints it in both systems, each rounded for itself: 24 N·m are 17.7 lbf·ft.
JointText inBoth()
{
    JointText text = coverText();
    text.target = "24 N·m";
    text.otherTarget = "18 lbf·ft";
    return text;
}

TEST(TargetOf, IsThatPrintedInTheSystemOfTheUnit)
{
    const Joint joint = jointOfText(inBoth());
    EXPECT_EQ(formatTyped(*targetOf(joint)), "24 N·m");
    EXPECT_EQ(formatTyped(*targetOf(joint, TorqueUnit::PoundFoot)), "18 lbf·ft");
    EXPECT_EQ(formatTyped(*targetOf(joint, TorqueUnit::PoundInch)), "18 lbf·ft");
    EXPECT_EQ(formatTyped(*targetOf(joint, TorqueUnit::KilogramForceMetre)), "24 N·m");
    EXPECT_EQ(formatTyped(*targetOf(jointOfText(coverText()), TorqueUnit::PoundFoot)), "32 N·m") << "printed in one only";
}

TEST(WantedInPass, GoesByTheTargetOfTheUnit)
{
    JointText text = inBoth();
    text.passes = "finger, 50 %, 20 N·m, target, settle 2";
    const Joint joint = jointOfText(text);
    const auto wanted = [&](std::size_t pass) { return wantedInPass(joint, pass, TorqueUnit::PoundFoot); };
    EXPECT_FALSE(wanted(0));
    EXPECT_EQ(wanted(1), torque("9 lbf·ft"));
    EXPECT_EQ(wanted(2), torque("20 N·m")) << "typed in its own unit it is asked in any";
    EXPECT_EQ(wanted(3), torque("18 lbf·ft"));
    EXPECT_EQ(wanted(4), torque("18 lbf·ft"));
    EXPECT_EQ(wantedInPass(joint, 1), torque("12 N·m"));
    EXPECT_EQ(wantedInPass(joint, 3), torque("24 N·m"));
    EXPECT_FALSE(wantedInPass(jointOfText(turnedOn()), 1)) << "an angle";
}

TEST(BandOfPass, OfThePassesThatEndAtTheTarget)
{
    JointText text = inBoth();
    text.passes = "finger, 50 %, 20 N·m, target, settle 2";
    const Joint joint = jointOfText(text);
    for (const std::size_t pass : {0U, 1U, 2U})
        EXPECT_FALSE(bandOfPass(joint, pass, TorqueUnit::NewtonMetre)) << pass;
    for (const std::size_t pass : {3U, 4U}) {
        EXPECT_EQ(bandOfPass(joint, pass, TorqueUnit::NewtonMetre), &joint.target->first);
        EXPECT_EQ(bandOfPass(joint, pass, TorqueUnit::PoundInch), &*joint.target->second);
    }
    EXPECT_FALSE(bandOfPass(jointOfText(turnedOn()), 0, TorqueUnit::NewtonMetre)) << "there is no target";
}

TEST(BandOfPass, ATorqueTypedAsTheTargetIsTheTarget)
{
    JointText text = inBoth();
    text.passes = "12 N·m, 24 N·m";
    const Joint joint = jointOfText(text);
    EXPECT_FALSE(bandOfPass(joint, 0, TorqueUnit::NewtonMetre));
    EXPECT_EQ(bandOfPass(joint, 1, TorqueUnit::NewtonMetre), &joint.target->first);
    EXPECT_EQ(wantedInPass(joint, 1, TorqueUnit::PoundFoot), torque("18 lbf·ft"));
    text.target = "20-28 N·m"; // 24 is the middle
    text.otherTarget.clear();
    EXPECT_TRUE(bandOfPass(jointOfText(text), 1, TorqueUnit::PoundFoot));
}

TEST(ThreadOf, IsTheFastenersOwnElseTheJoints)
{
    JointText text = coverText();
    text.pattern.places[2].thread = "M6";
    Joint joint = jointOfText(text);
    EXPECT_EQ(threadOf(joint, 1), parseThread("M8").value());
    EXPECT_EQ(threadOf(joint, 3), parseThread("M6").value());
    EXPECT_FALSE(threadOf(joint, 13));
    text.thread.clear();
    joint = jointOfText(text);
    EXPECT_FALSE(threadOf(joint, 1));
    EXPECT_EQ(threadOf(joint, 3), parseThread("M6").value());
}

} // namespace joint_tests
} // namespace asleft
