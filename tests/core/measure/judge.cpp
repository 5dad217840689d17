#include <measure/judge.h>

#include <gtest/gtest.h>

namespace asleft {
namespace judge_tests {

constexpr auto mm = LengthUnit::Millimetre;

Length hundredths(std::int64_t count)
{
    return micrometres(10 * count);
}
Band<Length> band(std::string_view text)
{
    return parseBand<Length>(text, mm).value();
}

using Seen = Interval<Length>;

struct Row {
    Seen seen;
    Verdict verdict;
};

TEST(Judge, AgainstTwoLimits)
{
    // The band of the worked example of ISO 14253-1's rule (0.20 to 0.30 mm), judged by simple acceptance.
    const Band<Length> spec = band("0.20-0.30 mm");
    const Row rows[] = {
        {Seen::point(hundredths(19)), Verdict::Low},
        {Seen::point(hundredths(20) - nanometres(1)), Verdict::Low},
        {Seen::point(hundredths(20)), Verdict::Inside},
        {Seen::point(hundredths(25)), Verdict::Inside},
        {Seen::point(hundredths(30)), Verdict::Inside},
        {Seen::point(hundredths(30) + nanometres(1)), Verdict::High},
        {Seen::point(hundredths(31)), Verdict::High},

        {Seen::bracket(hundredths(20), hundredths(30)), Verdict::Inside},
        {Seen::bracket(hundredths(22), hundredths(23)), Verdict::Inside},
        {Seen::bracket(hundredths(18), hundredths(20)), Verdict::Low}, // less than 0.20
        {Seen::bracket(hundredths(18), hundredths(21)), Verdict::TooClose},
        {Seen::bracket(hundredths(29), hundredths(31)), Verdict::TooClose},
        {Seen::bracket(hundredths(30), hundredths(31)), Verdict::TooClose}, // 0.30 itself is possible, and inside
        {Seen::bracket(hundredths(31), hundredths(32)), Verdict::High},
        {Seen::bracket(hundredths(10), hundredths(40)), Verdict::TooClose},

        {Seen::looserThan(hundredths(30)), Verdict::High},
        {Seen::looserThan(hundredths(31)), Verdict::High},
        {Seen::looserThan(hundredths(29)), Verdict::TooClose},
        {Seen::looserThan(hundredths(10)), Verdict::TooClose},
        {Seen::tighterThan(hundredths(20)), Verdict::Low},
        {Seen::tighterThan(hundredths(19)), Verdict::Low},
        {Seen::tighterThan(hundredths(21)), Verdict::TooClose},
        {Seen::tighterThan(hundredths(40)), Verdict::TooClose},

        {Seen{hundredths(18), hundredths(20), false, false}, Verdict::TooClose}, // a closed end touches the limit
        {Seen{hundredths(30), hundredths(32), false, false}, Verdict::TooClose},
        {Seen{hundredths(30), hundredths(32), true, false}, Verdict::High},
        {Seen{}, Verdict::TooClose},
    };
    int row = 0;
    for (const Row &expected : rows)
        EXPECT_EQ(judge(expected.seen, spec), expected.verdict) << "row " << row++;
}

TEST(Judge, AgainstOneLimit)
{
    const Band<Length> atLeast = band("at least 0.20 mm");
    EXPECT_EQ(judge(Seen::point(hundredths(20)), atLeast), Verdict::Inside);
    EXPECT_EQ(judge(Seen::point(hundredths(19)), atLeast), Verdict::Low);
    EXPECT_EQ(judge(Seen::looserThan(hundredths(20)), atLeast), Verdict::Inside);
    EXPECT_EQ(judge(Seen::looserThan(hundredths(19)), atLeast), Verdict::TooClose);
    EXPECT_EQ(judge(Seen::tighterThan(hundredths(20)), atLeast), Verdict::Low);
    EXPECT_EQ(judge(Seen::tighterThan(hundredths(21)), atLeast), Verdict::TooClose);

    const Band<Length> atMost = band("at most 0.30 mm");
    EXPECT_EQ(judge(Seen::point(hundredths(30)), atMost), Verdict::Inside);
    EXPECT_EQ(judge(Seen::point(hundredths(31)), atMost), Verdict::High);
    EXPECT_EQ(judge(Seen::tighterThan(hundredths(30)), atMost), Verdict::Inside);
    EXPECT_EQ(judge(Seen::tighterThan(hundredths(31)), atMost), Verdict::TooClose);
    EXPECT_EQ(judge(Seen::looserThan(hundredths(30)), atMost), Verdict::High);
    EXPECT_EQ(judge(Seen::looserThan(hundredths(29)), atMost), Verdict::TooClose);
}

TEST(Judge, TorquesToo)
{
    const auto spec = parseBand<Torque>("20-30 ft-lb", TorqueUnit::NewtonMetre).value();
    const auto torque = [](const char *text) { return parse<Torque>(text, TorqueUnit::NewtonMetre)->value; };
    EXPECT_EQ(judge(Interval<Torque>::point(torque("240 in-lb")), spec), Verdict::Inside); // 20 ft-lb exactly
    EXPECT_EQ(judge(Interval<Torque>::point(torque("239 in-lb")), spec), Verdict::Low);
    EXPECT_EQ(judge(Interval<Torque>::point(torque("41 N·m")), spec), Verdict::High);
    EXPECT_EQ(outsideBy(torque("41 N·m"), spec), torque("41 N·m") - torque("30 ft-lb"));
}

TEST(Judge, ALimitIsInsideInEveryUnitItCanBeTypedIn)
{
    struct Limit {
        const char *band;
        const char *typed;
    };
    const Limit limits[] = {
        {"0.012-0.018 in", "0.3048 mm"},   {"0.012-0.018 in", "12 thou"},    {"0.012-0.018 in", "0.4572 mm"},
        {"0.012-0.018 in", "18 thou"},     {"0.254-0.508 mm", "10 thou"},    {"0.254-0.508 mm", ".020\""},
        {"12-18 thou", "0.3048 mm"},       {"12-18 thou", "0.018 in"},       {"1/64 - 1/32 in", "0.015625 in"},
        {"1/64 - 1/32 in", "0.396875 mm"}, {"1/64 - 1/32 in", "31.25 thou"}, {".015 ± .003 in", "0.3048"},
        {"10 mm ± .002 in", "10.0508 mm"}, {"10 mm ± 2 thou", "9.9492 mm"},
    };
    for (const Limit &limit : limits) {
        const Length value = parse<Length>(limit.typed, mm)->value;
        EXPECT_EQ(judge(Seen::point(value), band(limit.band)), Verdict::Inside) << limit.band << ", " << limit.typed;
        EXPECT_TRUE(value == band(limit.band).low || value == band(limit.band).high) << limit.band << ", " << limit.typed;
    }
}

TEST(OutsideBy, IsSignedAndZeroInside)
{
    const Band<Length> spec = band("0.20-0.30 mm");
    EXPECT_EQ(outsideBy(hundredths(18), spec), -hundredths(2));
    EXPECT_EQ(outsideBy(hundredths(20), spec), Length());
    EXPECT_EQ(outsideBy(hundredths(30), spec), Length());
    EXPECT_EQ(outsideBy(hundredths(33), spec), hundredths(3));
    EXPECT_EQ(outsideBy(hundredths(1), band("at most 0.30")), Length());
    EXPECT_EQ(outsideBy(hundredths(99), band("at least 0.20")), Length());
}

} // namespace judge_tests
} // namespace asleft
