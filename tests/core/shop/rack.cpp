// What to set a wrench to, and what a joint asks of the tools of a shop.
#include "joint_texts.h"
#include "typed.h"

#include <measure/format.h>
#include <measure/judge.h>

#include <gtest/gtest.h>

namespace asleft {
namespace rack_tests {

using std::chrono::days;
using std::chrono::sys_days;

constexpr sys_days today = std::chrono::year{2027} / 3 / 15;

Tool wrench(std::string_view least, std::string_view most, std::string_view lever = "400 mm", ToolKind kind = ToolKind::TorqueSet)
{
    Tool tool{ToolId(1), "wrench", "", {}, kind};
    tool.torque =
        TorqueTool{.read = kind == ToolKind::TorqueRead, .least = typedTorque(least), .most = typedTorque(most), .calibrationDue = today};
    if (!lever.empty()) {
        tool.lever = length(lever);
        tool.torque->lever = tool.lever->value;
    }
    return tool;
}
Tool adapter(std::string_view text)
{
    Tool tool{ToolId(2), "adapter", "", {}, ToolKind::Adapter};
    tool.length = length(text);
    return tool;
}
AdapterFit fit(std::string_view text, std::int64_t angle)
{
    return {length(text).value, degrees(angle)};
}

struct SettingCase {
    const char *most; ///< of the wrench, in its own unit
    const char *wanted;
    std::optional<AdapterFit> fit;
    const char *shown;
};

class Setting : public testing::TestWithParam<SettingCase> {};

TEST_P(Setting, IsInTheWrenchsOwnUnitAndFigures)
{
    const auto setting = settingOn(wrench("0", GetParam().most), torque(GetParam().wanted), GetParam().fit);
    ASSERT_TRUE(setting);
    EXPECT_EQ(formatTyped(*setting), GetParam().shown);
    EXPECT_EQ(setting->value, torque(GetParam().shown)) << "of the figures, not of what was rounded to them";
}

// 32 N·m are 23.602 lbf·ft, 283.23 lbf·in, 3.2631 kgf·m: from the exact definitions. With an adapter: T·L/(L + E·cos a).
INSTANTIATE_TEST_SUITE_P(
    All, Setting,
    testing::Values(SettingCase{"200 N·m", "32 N·m", {}, "32.0 N·m"}, SettingCase{"150 lbf·ft", "32 N·m", {}, "23.6 lbf·ft"},
                    SettingCase{"400 lbf·in", "32 N·m", {}, "283 lbf·in"}, SettingCase{"20 kgf·m", "32 N·m", {}, "3.26 kgf·m"},
                    SettingCase{"500 kgf·cm", "32 N·m", {}, "326 kgf·cm"}, SettingCase{"200 N·m", "32 N·m", fit("40 mm", 90), "32.0 N·m"},
                    SettingCase{"200 N·m", "32 N·m", fit("0 mm", 0), "32.0 N·m"},
                    SettingCase{"200 N·m", "32 N·m", fit("40 mm", 0), "29.1 N·m"},       // 32·400/440
                    SettingCase{"200 N·m", "32 N·m", fit("40 mm", 180), "35.6 N·m"},     // 32·400/360
                    SettingCase{"150 lbf·ft", "32 N·m", fit("40 mm", 0), "21.5 lbf·ft"}, // 21.456
                    SettingCase{"200 N·m", "32.25 N·m", {}, "32.2 N·m"},                 // a half goes to the even one
                    SettingCase{"200 N·m", "32.35 N·m", {}, "32.4 N·m"},
                    SettingCase{"200 N·m", "10 N·m", {}, "10.0 N·m"},   // a step is one percent
                    SettingCase{"200 N·m", "9.96 N·m", {}, "9.96 N·m"}, // it would be more
                    SettingCase{"30 N·m", "0.3 N·m", {}, "0.300 N·m"}, SettingCase{"400 lbf·in", "99.5 lbf·in", {}, "99.5 lbf·in"},
                    SettingCase{"20 kgf·m", "0.5 kgf·m", {}, "0.500 kgf·m"}, SettingCase{"200 N·m", "0 N·m", {}, "0.0 N·m"}));

struct BandCase {
    const char *most; ///< of the wrench, in its own unit
    const char *band;
    const char *wanted;
    std::optional<AdapterFit> fit;
    const char *shown;
};

class SettingInBand : public testing::TestWithParam<BandCase> {};

TEST_P(SettingInBand, IsNeverRoundedOutOfIt)
{
    const Tool tool = wrench("0", GetParam().most);
    const auto band = parseBand<Torque>(GetParam().band, TorqueUnit::NewtonMetre).value();
    const auto setting = settingOn(tool, torque(GetParam().wanted), GetParam().fit, &band);
    ASSERT_TRUE(setting);
    EXPECT_EQ(formatTyped(*setting), GetParam().shown);
    const bool adapted = GetParam().fit && !changesNothing(*GetParam().fit);
    const Torque got = adapted ? torqueAtFastener(setting->value, *tool.torque->lever, *GetParam().fit).value() : setting->value;
    EXPECT_EQ(outsideBy(got, band), Torque());
}

// 11 N·m are 8.1132 lbf·ft, 10 N·m 7.3756 lbf·ft, 20 lbf·ft 27.116 N·m: from the exact definitions. With an adapter: T·L/(L + E·cos a).
INSTANTIATE_TEST_SUITE_P(All, SettingInBand,
                         testing::Values(BandCase{"50 lbf·ft", "at least 11 N·m", "11 N·m", {}, "8.12 lbf·ft"},
                                         BandCase{"50 lbf·ft", "at most 10 N·m", "10 N·m", {}, "7.37 lbf·ft"},
                                         BandCase{"200 N·m", "at least 20 lbf·ft", "20 lbf·ft", {}, "27.2 N·m"},
                                         BandCase{"50 lbf·ft", "at least 11 N·m", "11 N·m", fit("40 mm", 0), "7.38 lbf·ft"},   // 7.3756
                                         BandCase{"50 lbf·ft", "at most 10 N·m", "10 N·m", fit("40 mm", 180), "8.19 lbf·ft"},  // 8.1951
                                         BandCase{"200 N·m", "at least 20 lbf·ft", "20 lbf·ft", fit("40 mm", 45), "25.4 N·m"}, // 25.325
                                         BandCase{"200 N·m", "at least 20 lbf·ft", "20 lbf·ft", fit("40 mm", 90), "27.2 N·m"},
                                         BandCase{"200 N·m", "28-36 N·m", "32.04 N·m", {}, "32.0 N·m"},        // nothing is in its way
                                         BandCase{"200 N·m", "32.02-32.06 N·m", "32.04 N·m", {}, "32.04 N·m"}, // neither way at a tenth
                                         BandCase{"200 N·m", "32.06-32.09 N·m", "32.07 N·m", {}, "32.07 N·m"},
                                         BandCase{"200 N·m", "at least 32.02 N·m", "32.04 N·m", {}, "32.1 N·m"}));

TEST(SettingOn, WhatIsNotInTheBandIsRoundedAsEver)
{
    const auto band = parseBand<Torque>("at least 20 lbf·ft", TorqueUnit::NewtonMetre).value();
    EXPECT_EQ(settingOn(wrench("20", "200"), torque("26.04 N·m"), {}, &band)->text, "26.0");
}

TEST(SettingOn, AReadWrenchShowsTheSame)
{
    EXPECT_EQ(settingOn(wrench("5", "50 lbf·ft", "", ToolKind::TorqueRead), torque("32 N·m"), {})->text, "23.6");
}

TEST(SettingOn, ALeverIsNeededOnlyWhereItChangesSomething)
{
    const Tool unknown = wrench("20", "200", "");
    const Torque wanted = torque("32 N·m");
    EXPECT_TRUE(settingOn(unknown, wanted, {}));
    EXPECT_EQ(settingOn(unknown, wanted, fit("40 mm", 90))->value, wanted);
    EXPECT_EQ(settingOn(unknown, wanted, fit("0 mm", 45))->value, wanted);
    EXPECT_EQ(settingOn(unknown, wanted, fit("40 mm", 0)).error(), (Error{ErrorKind::LeverMissing, {"wrench"}}));
}

TEST(SettingOn, RefusesWhatIsNoTorqueWrenchAndFitsThatCannotBe)
{
    const Torque wanted = torque("32 N·m");
    EXPECT_EQ(settingOn(adapter("40 mm"), wanted, {}).error(), (Error{ErrorKind::ToolNotForTorque, {"adapter"}}));
    EXPECT_EQ(settingOn(Tool{ToolId(3), "leaves", "", {}}, wanted, {}).error(), (Error{ErrorKind::ToolNotForTorque, {"leaves"}}));
    EXPECT_EQ(settingOn(wrench("20", "200"), wanted, fit("2001 mm", 0)).error().kind, ErrorKind::AdapterOutOfRange);
    EXPECT_EQ(settingOn(wrench("20", "200"), wanted, fit("390 mm", 180)).error().kind, ErrorKind::AdapterReversed);
}

TEST(RackOf, SortsTorqueWrenchesAndAdaptersOut)
{
    const std::vector<Tool> tools{Tool{ToolId(3), "leaves", "", {}},
                                  wrench("6", "30"),
                                  adapter("40 mm"),
                                  wrench("20", "200", "", ToolKind::TorqueRead),
                                  Tool{ToolId(4), "not described", "", {}, ToolKind::TorqueSet},
                                  Tool{ToolId(5), "socket", "", {}, ToolKind::Socket},
                                  adapter("60 mm")};
    const Rack rack = rackOf(tools);
    EXPECT_EQ(rack.wrenches, (std::vector<const Tool *>{&tools[1], &tools[3]}));
    EXPECT_EQ(rack.torqueTools, (std::vector<TorqueTool>{*tools[1].torque, *tools[3].torque}));
    EXPECT_EQ(rack.adapters, (std::vector<const Tool *>{&tools[2], &tools[6]}));
    EXPECT_EQ(rack.adapterLengths, (std::vector<Length>{length("40 mm").value, length("60 mm").value}));
}

/// The torque wrenches of a small shop.
const std::vector<Tool> smallShop{wrench("6", "30", "250 mm"), wrench("20", "200", "480 mm")};

std::vector<ToolWanted> wantedBy(std::string_view target, std::string_view passes, const std::vector<Tool> &tools = smallShop)
{
    JointText text = rowText(4, std::string(target));
    text.passes = passes;
    text.settle = SettleGround::ManualSaysSo;
    return toolsWanted(jointOfText(text), rackOf(tools), today);
}

std::vector<std::size_t> reaching(const ToolWanted &wanted)
{
    std::vector<std::size_t> tools;
    for (const ToolReach &reach : wanted.advice.reaching)
        tools.push_back(reach.tool);
    return tools;
}

using Tools = std::vector<std::size_t>;

TEST(ToolsWanted, OfEachTorqueOnceInTheOrderOfThePasses)
{
    const auto wanted = wantedBy("32 ± 4 N·m", "finger, 50 %, target, settle 3");
    ASSERT_EQ(wanted.size(), 2U);
    EXPECT_EQ(wanted[0].torque, torque("16 N·m"));
    EXPECT_FALSE(wanted[0].target);
    EXPECT_EQ(reaching(wanted[0]), (Tools{0}));
    EXPECT_TRUE(wanted[0].advice.reaching[0].wellInside);
    EXPECT_EQ(wanted[1].torque, torque("32 N·m"));
    EXPECT_TRUE(wanted[1].target);
    EXPECT_EQ(reaching(wanted[1]), (Tools{1}));
    EXPECT_FALSE(wanted[1].advice.reaching[0].wellInside) << "below a fifth of 200 N·m no wrench is tested";
    EXPECT_FALSE(wanted[1].advice.reaching[0].calibrationOverdue) << "due today";
    EXPECT_TRUE(wanted[1].advice.waysOut.empty());
}

TEST(ToolsWanted, NoneForASmallScrewAndWhatHelps)
{
    const auto wanted = wantedBy("3 N·m", "");
    ASSERT_EQ(wanted.size(), 1U);
    EXPECT_TRUE(wanted[0].target);
    EXPECT_TRUE(wanted[0].advice.reaching.empty());
    EXPECT_EQ(wanted[0].advice.misses.size(), 2U);
    ASSERT_EQ(wanted[0].advice.waysOut.size(), 2U);
    EXPECT_EQ(wanted[0].advice.waysOut[0].kind, WayOut::Kind::Borrow);
    EXPECT_EQ(wanted[0].advice.waysOut[0].most, torque("15 N·m"));
    EXPECT_EQ(wanted[0].advice.waysOut[1].kind, WayOut::Kind::ByFeel);
}

TEST(ToolsWanted, AnAdapterOnTheRackIsAWayOut)
{
    std::vector<Tool> tools = smallShop;
    tools.push_back(adapter("100 mm"));
    const auto wanted = wantedBy("5 N·m", "", tools); // 5·250/(250 − 100) = 8.33 N·m
    ASSERT_FALSE(wanted[0].advice.waysOut.empty());
    const WayOut &way = wanted[0].advice.waysOut[0];
    EXPECT_EQ(way.kind, WayOut::Kind::WithAdapter);
    EXPECT_EQ(way.reach->tool, 0U);
    EXPECT_EQ(way.reach->adapter, 0U);
    EXPECT_EQ(way.angle, degrees(180));
}

TEST(ToolsWanted, ATargetPrintedInBothSystemsByTheWrenchsOwn)
{
    JointText text = rowText(1, "24 N·m");
    text.otherTarget = "18 lbf·ft";
    text.passes = "50 %, 24 N·m";
    const std::vector<Tool> tools{wrench("6", "30"), wrench("6 lbf·ft", "50 lbf·ft"), wrench("6 lbf·ft", "17.8 lbf·ft")};
    const Joint joint = jointOfText(text);
    const auto wanted = toolsWanted(joint, rackOf(tools), today);
    ASSERT_EQ(wanted.size(), 2U);
    EXPECT_EQ(wanted[1].torque, torque("24 N·m"));
    EXPECT_TRUE(wanted[1].target);
    EXPECT_EQ(reaching(wanted[1]), (Tools{0, 1})) << "17.8 lbf·ft are more than 24 N·m, but the manual says 18 there";
    EXPECT_EQ(wanted[1].advice.reaching[1].setting, torque("18 lbf·ft"));
    EXPECT_EQ(wanted[0].advice.reaching.back().setting, torque("9 lbf·ft"));
}

// 20 lbf·ft are 27.116 N·m: 27.1 would be low, and 27.2 the wrench does not have.
TEST(ToolsWanted, ReachesOnlyWithFiguresInTheBand)
{
    const std::vector<Tool> tools{wrench("5", "27.1"), wrench("5", "27.2")};
    EXPECT_EQ(reaching(wantedBy("at least 20 lbf·ft", "", tools)[0]), Tools{1});
    const Tool &small = tools[1];
    const Joint joint = jointOfText(rowText(1, "at least 20 lbf·ft"));
    const auto set = settingOn(small, *wantedInPass(joint, 0), {}, bandOfPass(joint, 0, TorqueUnit::NewtonMetre));
    EXPECT_EQ(set->value, toolsWanted(joint, rackOf(tools), today)[0].advice.reaching[0].setting) << "the same as is set";
}

TEST(AdviceFor, NothingForPassesWithoutATorque)
{
    JointText text = rowText(1, "");
    text.passes = "finger, 20 N·m, +90°";
    const Joint joint = jointOfText(text);
    EXPECT_FALSE(adviceFor(joint, 0, rackOf(smallShop), today));
    EXPECT_TRUE(adviceFor(joint, 1, rackOf(smallShop), today));
    EXPECT_FALSE(adviceFor(joint, 2, rackOf(smallShop), today));
    const auto adapted = adviceFor(joint, 1, rackOf(smallShop), today, fit("50 mm", 0));
    EXPECT_EQ(adapted->reaching.at(0).setting, torque("16.7 N·m")) << "20 × 250/300";
}

TEST(ToolsWanted, OfAnAngleOnlyTheSnugTorque)
{
    const auto wanted = wantedBy("", "40 N·m, +45°, +45°, +45°, +30°");
    ASSERT_EQ(wanted.size(), 1U);
    EXPECT_EQ(wanted[0].torque, torque("40 N·m"));
    EXPECT_FALSE(wanted[0].target) << "there is none";
    EXPECT_EQ(reaching(wanted[0]), (Tools{1}));
    EXPECT_TRUE(wantedBy("", "finger").empty());
}

TEST(ToolsWanted, ADayLaterTheCalibrationIsOverdue)
{
    const Joint joint = jointOfText(rowText(1, "50 N·m"));
    EXPECT_TRUE(toolsWanted(joint, rackOf(smallShop), today + days(1))[0].advice.reaching[0].calibrationOverdue);
    const auto bare = toolsWanted(joint, rackOf({}), today);
    ASSERT_EQ(bare.size(), 1U) << "with nothing on the rack it is said all the more";
    EXPECT_TRUE(bare[0].advice.reaching.empty());
}

} // namespace rack_tests
} // namespace asleft
