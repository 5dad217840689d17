// Which torque wrench on the rack reaches a torque, and what helps where none does.
#include <joints/choice.h>
#include <measure/parse.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace asleft {
namespace choice_tests {

using std::chrono::days;
using std::chrono::sys_days;

constexpr sys_days today = std::chrono::year{2027} / 3 / 15;
constexpr Torque hair = Torque::ofSmallest(1);

Typed<Torque> typed(std::string_view text)
{
    return parse<Torque>(text, TorqueUnit::NewtonMetre).value();
}
Torque torque(std::string_view text)
{
    return typed(text).value;
}
Length length(std::string_view text)
{
    return parse<Length>(text, LengthUnit::Millimetre).value().value;
}
TorqueTool wrench(std::string_view least, std::string_view most)
{
    return {.least = typed(least), .most = typed(most), .calibrationDue = today + days(100)};
}
TorqueTool withLever(TorqueTool tool, std::string_view lever)
{
    tool.lever = length(lever);
    return tool;
}
TorqueTool due(TorqueTool tool, std::optional<sys_days> date)
{
    tool.calibrationDue = date;
    return tool;
}
TorqueTool deviating(TorqueTool tool, Rational percent)
{
    tool.deviationPercent = percent;
    return tool;
}

using Indices = std::vector<std::size_t>;
using Kinds = std::vector<WayOut::Kind>;

Indices toolsOf(const std::vector<ToolReach> &reaches)
{
    Indices tools;
    for (const ToolReach &reach : reaches)
        tools.push_back(reach.tool);
    return tools;
}
Kinds kindsOf(const ToolAdvice &advice)
{
    Kinds kinds;
    for (const WayOut &way : advice.waysOut)
        kinds.push_back(way.kind);
    return kinds;
}
const Kinds borrowOrFeel{WayOut::Kind::Borrow, WayOut::Kind::ByFeel};
const Kinds adapterBorrowOrFeel{WayOut::Kind::WithAdapter, WayOut::Kind::Borrow, WayOut::Kind::ByFeel};

/// A small wrench and a large one: the rack of most small shops (common practice, no source).
const std::vector<TorqueTool> rack{withLever(wrench("6", "30"), "250 mm"), withLever(wrench("20", "200"), "480 mm")};

ToolAdvice choose(std::string_view wanted, std::span<const TorqueTool> tools, std::span<const Length> adapters = {},
                  const std::optional<AdapterFit> &fit = {})
{
    return chooseTool(torque(wanted), tools, adapters, today, fit);
}

TEST(Choice, BothReachAndTheOneWellInsideComesFirst)
{
    const ToolAdvice advice = choose("25", rack);
    ASSERT_EQ(toolsOf(advice.reaching), (Indices{0, 1}));
    EXPECT_TRUE(advice.misses.empty());
    EXPECT_TRUE(advice.waysOut.empty());
    const ToolReach &small = advice.reaching[0];
    EXPECT_EQ(small.setting, torque("25"));
    EXPECT_TRUE(small.reaches && small.wellInside);
    EXPECT_FALSE(small.calibrationOverdue || small.calibrationUnknown);
    EXPECT_FALSE(small.adapter);
    EXPECT_DOUBLE_EQ(small.shareOfRange, 25.0 / 30);
    EXPECT_EQ(small.deviation, Rational(4));
    EXPECT_FALSE(advice.reaching[1].wellInside) << "25 is below a fifth of 200";
}

TEST(Choice, TheLargeOneAloneReaches)
{
    for (const std::string_view wanted : {"32", "36"}) {
        const ToolAdvice advice = choose(wanted, rack, std::vector{length("50 mm")});
        ASSERT_EQ(toolsOf(advice.reaching), (Indices{1})) << wanted;
        EXPECT_FALSE(advice.reaching[0].wellInside) << "below a fifth of 200, where it is not tested";
        ASSERT_EQ(toolsOf(advice.misses), (Indices{0}));
        EXPECT_GT(advice.misses[0].setting, rack[0].most.value);
        EXPECT_FALSE(advice.misses[0].reaches || advice.misses[0].wellInside);
        EXPECT_TRUE(advice.waysOut.empty()) << "one reaches, be it near the end of its range";
    }
}

TEST(Choice, ASmallScrewNoneReaches)
{
    const ToolAdvice advice = choose("3", rack, std::vector{length("40 mm")});
    EXPECT_TRUE(advice.reaching.empty());
    EXPECT_EQ(toolsOf(advice.misses), (Indices{0, 1}));
    for (const ToolReach &miss : advice.misses)
        EXPECT_LT(miss.setting, rack[miss.tool].least.value);
    // 40 mm back along 250 mm: 3 × 250/210 = 3.57, still below 6.
    ASSERT_EQ(kindsOf(advice), borrowOrFeel);
    EXPECT_EQ(advice.waysOut[0].most, torque("15")) << "ISO 6789 tests from a fifth of the largest torque";
    EXPECT_FALSE(advice.waysOut[0].reach || advice.waysOut[0].angle);
    EXPECT_FALSE(advice.waysOut[1].reach || advice.waysOut[1].angle || advice.waysOut[1].most);
}

TEST(Choice, AnAdapterTurnedBackRaisesTheSetting)
{
    const std::vector adapters{length("40 mm"), length("150 mm"), length("200 mm")};
    const ToolAdvice advice = choose("3", rack, adapters);
    ASSERT_EQ(kindsOf(advice), adapterBorrowOrFeel);
    const WayOut &way = advice.waysOut[0];
    EXPECT_EQ(way.angle, degrees(180));
    ASSERT_TRUE(way.reach);
    EXPECT_EQ(way.reach->tool, 0U);
    EXPECT_EQ(way.reach->adapter, 1U) << "the shorter of the two that do";
    EXPECT_EQ(way.reach->setting, torque("7.5")) << "3 × 250/(250 - 150)";
    EXPECT_TRUE(way.reach->reaches && way.reach->wellInside);
}

TEST(Choice, AnAdapterStraightOutLowersIt)
{
    const std::vector adapters{length("150 mm"), length("480 mm"), length("320 mm")};
    const ToolAdvice advice = choose("300", rack, adapters);
    ASSERT_EQ(kindsOf(advice), adapterBorrowOrFeel);
    const WayOut &way = advice.waysOut[0];
    EXPECT_EQ(way.angle, degrees(0));
    ASSERT_TRUE(way.reach);
    EXPECT_EQ(way.reach->tool, 1U);
    EXPECT_EQ(way.reach->adapter, 2U);
    EXPECT_EQ(way.reach->setting, torque("180")) << "300 × 480/(480 + 320)";
    EXPECT_DOUBLE_EQ(way.reach->shareOfRange, 0.9);
    EXPECT_EQ(advice.waysOut[1].most, torque("1500"));
}

TEST(Choice, WithoutALeverNoAdapterHelps)
{
    const std::vector bare{wrench("6", "30"), wrench("20", "200")};
    const std::vector adapters{length("150 mm"), length("320 mm"), Length()};
    EXPECT_EQ(kindsOf(choose("300", bare, adapters)), borrowOrFeel);
    EXPECT_EQ(kindsOf(choose("300", rack)), borrowOrFeel) << "no adapters";
    EXPECT_EQ(kindsOf(choose("300", rack, std::vector{Length(), length("3000 mm"), -length("5 mm")})), borrowOrFeel);
    EXPECT_EQ(kindsOf(choose("300", {})), borrowOrFeel) << "an empty rack";
}

TEST(Choice, TheBestOfSeveralWithAnAdapter)
{
    const std::vector adapters{length("250 mm")};
    std::vector tools{due(rack[1], today - days(1)), deviating(rack[1], Rational(3)), deviating(rack[1], Rational(2))};
    EXPECT_EQ(choose("300", tools, adapters).waysOut.at(0).reach->tool, 2U);
    tools[2].calibrationDue = today - days(1);
    EXPECT_EQ(choose("300", tools, adapters).waysOut.at(0).reach->tool, 1U);
    EXPECT_FALSE(choose("300", tools, adapters).waysOut.at(0).reach->calibrationOverdue);
}

TEST(Choice, AFitCorrectsTheSettingByEachToolsOwnLever)
{
    const AdapterFit fit{length("50 mm"), degrees(0)};
    const ToolAdvice advice = choose("24", rack, {}, fit);
    ASSERT_EQ(toolsOf(advice.reaching), (Indices{0, 1}));
    EXPECT_EQ(advice.reaching[0].setting, torque("20")) << "24 × 250/300";
    EXPECT_EQ(advice.reaching[1].setting, torque("21.7")) << "24 × 480/530, in figures that can be set";

    const ToolAdvice lowered = choose("36", rack, {}, fit);
    EXPECT_EQ(toolsOf(lowered.reaching), (Indices{0, 1})) << "36 at the fastener is 30 on the small one, the end of its range";
    EXPECT_EQ(lowered.reaching[0].setting, torque("30"));
}

TEST(Choice, AFitOfNothingOrAcrossNeedsNoLever)
{
    const std::vector bare{wrench("6", "30"), rack[1]};
    for (const AdapterFit &fit : {AdapterFit{Length(), degrees(30)}, AdapterFit{length("50 mm"), degrees(90)}}) {
        const ToolAdvice advice = choose("25", bare, {}, fit);
        ASSERT_EQ(toolsOf(advice.reaching), (Indices{0, 1}));
        for (const ToolReach &reach : advice.reaching)
            EXPECT_EQ(reach.setting, torque("25"));
    }
}

TEST(Choice, AFitWithoutALeverOrTooFarBackMisses)
{
    const std::vector bare{wrench("6", "30"), rack[1]};
    const ToolAdvice advice = choose("25", bare, {}, AdapterFit{length("50 mm"), degrees(0)});
    EXPECT_EQ(toolsOf(advice.reaching), (Indices{1}));
    ASSERT_EQ(toolsOf(advice.misses), (Indices{0}));
    EXPECT_EQ(advice.misses[0].setting, torque("25")) << "in its range, and yet a miss: the lever is not known";
    EXPECT_FALSE(advice.misses[0].reaches || advice.misses[0].wellInside);

    const ToolAdvice reversed = choose("25", rack, {}, AdapterFit{length("240 mm"), degrees(180)});
    EXPECT_EQ(toolsOf(reversed.misses), (Indices{0})) << "240 mm back leaves 10 of 250";
    EXPECT_EQ(toolsOf(reversed.reaching), (Indices{1})) << "25 × 480/240";
    EXPECT_EQ(reversed.reaching[0].setting, torque("50"));
    EXPECT_TRUE(reversed.reaching[0].wellInside);
}

TEST(Choice, OverdueIsTheDayAfter)
{
    const auto reach = [](std::optional<sys_days> date) { return choose("25", std::vector{due(wrench("6", "30"), date)}).reaching.at(0); };
    EXPECT_TRUE(reach(today - days(1)).calibrationOverdue);
    EXPECT_FALSE(reach(today).calibrationOverdue) << "due today is still in time";
    EXPECT_FALSE(reach(today + days(1)).calibrationOverdue);
    EXPECT_FALSE(reach({}).calibrationOverdue);
    EXPECT_TRUE(reach({}).calibrationUnknown);
    EXPECT_FALSE(reach(today - days(1)).calibrationUnknown);
}

TEST(Choice, OverdueReachesButComesLast)
{
    const std::vector tools{due(wrench("6", "30"), today - days(1)), wrench("20", "200")};
    const ToolAdvice advice = choose("25", tools);
    EXPECT_EQ(toolsOf(advice.reaching), (Indices{1, 0}));
    EXPECT_TRUE(advice.reaching[1].calibrationOverdue && advice.reaching[1].wellInside);
}

TEST(Choice, TheOrderOfEqualTools)
{
    const std::vector tools{wrench("5", "100"), deviating(wrench("5", "100"), Rational(3)), wrench("5", "60"), wrench("5", "60"),
                            deviating(wrench("5", "40"), Rational(7, 2))};
    EXPECT_EQ(toolsOf(choose("30", tools).reaching), (Indices{1, 4, 2, 3, 0})) << "deviation, then the smallest, then as they lie";
}

TEST(Choice, TheEndsOfARangeAreInIt)
{
    const std::vector one{wrench("6", "30")};
    const auto reaches = [&](Torque wanted) { return !chooseTool(wanted, one, {}, today).reaching.empty(); };
    EXPECT_TRUE(reaches(torque("6")));
    EXPECT_FALSE(reaches(torque("5.99")));
    EXPECT_TRUE(reaches(torque("30")));
    EXPECT_FALSE(reaches(torque("30.1")));
    EXPECT_FALSE(reaches(Torque()));
}

// What is set are figures: 36.01 N·m through an adapter are 30.008 on the wrench, which is set to 30.0.
TEST(Choice, AtTheEndsOfARangeTheFiguresDecide)
{
    const std::vector one{rack[0]};
    const auto reaches = [&](std::string_view wanted) { return !choose(wanted, one).reaching.empty(); };
    EXPECT_TRUE(reaches("30.04"));
    EXPECT_FALSE(reaches("30.06"));
    EXPECT_TRUE(reaches("5.996"));
    EXPECT_FALSE(reaches("5.994"));
    const AdapterFit fit{length("50 mm"), degrees(0)};
    EXPECT_EQ(choose("36.01", one, {}, fit).reaching.at(0).setting, torque("30"));
    const std::vector inches{wrench("30 lbf·ft", "150 lbf·ft")};
    EXPECT_EQ(choose("40.66", inches).reaching.at(0).setting, torque("30 lbf·ft")) << "29.989 lbf·ft";
}

TEST(Choice, EachToolMayBeAskedItsOwn)
{
    const std::vector both{wrench("6", "30"), wrench("6 lbf·ft", "18 lbf·ft")};
    const auto metric = parseBand<Torque>("at least 24 N·m", TorqueUnit::NewtonMetre).value();
    const auto inch = parseBand<Torque>("at least 18.04 lbf·ft", TorqueUnit::PoundFoot).value();
    EXPECT_EQ(toolsOf(choose("24", both).reaching), (Indices{1, 0})) << "the smaller of two that reach 24 N·m, 17.7 lbf·ft";
    const std::vector<ToolAsk> asks{{torque("24"), &metric}, {torque("18.04 lbf·ft"), &inch}};
    const ToolAdvice advice = chooseTool(torque("24"), both, {}, today, {}, asks);
    ASSERT_EQ(toolsOf(advice.reaching), (Indices{0}));
    ASSERT_EQ(toolsOf(advice.misses), (Indices{1}));
    EXPECT_EQ(advice.misses[0].setting, torque("18.1 lbf·ft")) << "18.0 would leave the band";
}

// ISO 6789: tested at 20, 60 and 100 % of the largest torque.
TEST(Choice, WellInsideFromAFifth)
{
    const std::vector one{wrench("20", "200")};
    const auto well = [&](Torque wanted) { return chooseTool(wanted, one, {}, today).reaching.at(0).wellInside; };
    EXPECT_TRUE(well(torque("40")));
    EXPECT_FALSE(well(torque("39.9")));
    EXPECT_TRUE(well(torque("120")));
    EXPECT_TRUE(well(torque("200")));
    EXPECT_FALSE(well(torque("20")));
}

// ISO 6789: 6 % up to a largest torque of 10 N·m, 4 % above.
TEST(Choice, DeviationByTheLargestTorqueUnlessItsOwn)
{
    EXPECT_EQ(deviationOf(wrench("2", "10")), Rational(6));
    EXPECT_EQ(deviationOf(wrench("2", "10.1")), Rational(4));
    EXPECT_EQ(deviationOf(deviating(wrench("2", "10"), Rational(5, 2))), Rational(5, 2));
    EXPECT_EQ(deviationAt(wrench("20", "200"), torque("100")), torque("4"));
    EXPECT_EQ(deviationAt(wrench("2", "10"), torque("8")), torque("0.48"));
    EXPECT_EQ(deviationAt(deviating(wrench("2", "10"), Rational(5, 2)), torque("8")), torque("0.2"));
    EXPECT_EQ(deviationAt(wrench("20", "200"), hair), hair) << "rounded up";
    EXPECT_EQ(deviationAt(wrench("20", "200"), Torque::ofSmallest(26)), hair * 2);
    EXPECT_EQ(deviationAt(wrench("20", "200"), Torque()), Torque());
}

TEST(TorqueTools, ThatCanBe)
{
    for (const TorqueTool &tool : {wrench("6", "30"), wrench("0", "30"), wrench("30", "30"), wrench("50 in-lb", "250 in-lb"),
                                   withLever(wrench("6", "30"), "3000 mm"), deviating(wrench("6", "30"), Rational(50)),
                                   deviating(wrench("6", "30"), Rational(1, 100)), due(wrench("6", "30"), {})})
        EXPECT_TRUE(checkTorqueTool(tool).has_value()) << tool.least.text << " to " << tool.most.text;
}

TEST(TorqueTools, ThatCannot)
{
    const auto error = [](const TorqueTool &tool) {
        const Done done = checkTorqueTool(tool);
        EXPECT_FALSE(done.has_value());
        return done ? Error{ErrorKind::NotFound, {}} : done.error();
    };
    EXPECT_EQ(error(wrench("30", "6 N·m")), (Error{ErrorKind::TorqueRange, {"30 N·m", "6 N·m"}}));
    EXPECT_EQ(error(wrench("0", "0")), (Error{ErrorKind::TorqueRange, {"0 N·m", "0 N·m"}}));
    EXPECT_EQ(error(wrench("10 in-lb", "1")), (Error{ErrorKind::TorqueRange, {"10 in-lb", "1 N·m"}})) << "1.13 to 1 N·m";
    TorqueTool negative = wrench("6", "30");
    negative.least.value = -hair;
    EXPECT_EQ(error(negative).kind, ErrorKind::TorqueRange);

    EXPECT_EQ(error(deviating(wrench("6", "30"), Rational())), (Error{ErrorKind::DeviationOutOfRange, {"0"}}));
    EXPECT_EQ(error(deviating(wrench("6", "30"), Rational(101, 2))), (Error{ErrorKind::DeviationOutOfRange, {"50.5"}}));
    EXPECT_EQ(error(deviating(wrench("6", "30"), Rational(-4))), (Error{ErrorKind::DeviationOutOfRange, {"-4"}}));

    EXPECT_EQ(error(withLever(wrench("6", "30"), "0")), (Error{ErrorKind::LeverOutOfRange, {}}));
    EXPECT_EQ(error(withLever(wrench("6", "30"), "3000.001")), (Error{ErrorKind::LeverOutOfRange, {}}));
}

/// A rack that could be, of up to six wrenches.
std::vector<TorqueTool> anyRack(std::mt19937_64 &random)
{
    const auto upTo = [&random](std::int64_t most) { return std::uniform_int_distribution<std::int64_t>(0, most)(random); };
    std::vector<TorqueTool> tools;
    for (auto count = upTo(6); count > 0; --count) {
        const std::int64_t least = 1 + upTo(60);
        TorqueTool tool = wrench(std::to_string(least), std::to_string(least * (2 + upTo(8))));
        tool.calibrationDue = today + days(upTo(4) - 2);
        if (upTo(1) == 1)
            tool.lever = micrometres(150'000 + upTo(600'000));
        if (upTo(1) == 1)
            tool.deviationPercent = Rational(1 + upTo(8), 2);
        tools.push_back(tool);
    }
    return tools;
}

// Of any rack: each tool stands once, reaching is what it says, ways out come only where nothing reaches, and what an adapter promises
// holds.
TEST(Choice, OfAnyRack)
{
    std::mt19937_64 random(3);
    const std::vector adapters{length("35 mm"), length("120 mm"), length("300 mm")};
    int adapted = 0;
    for (int round = 0; round < 2000; ++round) {
        const std::vector<TorqueTool> tools = anyRack(random);
        const Torque wanted = Torque::ofSmallest(std::uniform_int_distribution<std::int64_t>(1, 700'000'000'000)(random));
        const ToolAdvice advice = chooseTool(wanted, tools, adapters, today);
        Indices all = toolsOf(advice.reaching);
        for (const std::size_t miss : toolsOf(advice.misses))
            all.push_back(miss);
        std::ranges::sort(all);
        for (std::size_t index = 0; index < tools.size(); ++index)
            ASSERT_EQ(all.at(index), index);
        ASSERT_EQ(all.size(), tools.size());
        for (const ToolReach &reach : advice.reaching)
            EXPECT_TRUE(reach.setting >= tools[reach.tool].least.value && reach.setting <= tools[reach.tool].most.value);
        for (const ToolReach &miss : advice.misses)
            EXPECT_TRUE(miss.setting < tools[miss.tool].least.value || miss.setting > tools[miss.tool].most.value);
        EXPECT_EQ(advice.waysOut.empty(), !advice.reaching.empty());
        EXPECT_TRUE(std::ranges::is_sorted(advice.reaching, {}, &ToolReach::calibrationOverdue));
        if (advice.waysOut.empty() || advice.waysOut[0].kind != WayOut::Kind::WithAdapter)
            continue;
        ++adapted;
        const ToolReach &reach = *advice.waysOut[0].reach;
        const TorqueTool &tool = tools[reach.tool];
        EXPECT_TRUE(reach.setting >= tool.least.value && reach.setting <= tool.most.value);
        const AdapterFit fit{adapters.at(*reach.adapter), *advice.waysOut[0].angle};
        const Torque reached = torqueAtFastener(reach.setting, *tool.lever, fit).value();
        EXPECT_LE(std::abs((reached - wanted).smallest()) * 200, wanted.smallest() + 400) << "half a step is at most half a percent";
    }
    EXPECT_GT(adapted, 50) << "the racks tried must include such as an adapter helps";
}

} // namespace choice_tests
} // namespace asleft
