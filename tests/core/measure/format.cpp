#include <measure/format.h>

#include <gtest/gtest.h>

namespace asleft {
namespace format_tests {

constexpr auto mm = LengthUnit::Millimetre;
constexpr auto inch = LengthUnit::Inch;

TEST(Format, RoundsAsAsked)
{
    struct Row {
        std::int64_t nanometres;
        int decimals;
        const char *halfEven;
        const char *down;
        const char *up;
    };
    const Row rows[] = {
        {0, 2, "0.00", "0.00", "0.00"},       {5'000, 2, "0.00", "0.00", "0.01"},
        {15'000, 2, "0.02", "0.01", "0.02"},  {15'001, 2, "0.02", "0.01", "0.02"},
        {304'800, 2, "0.30", "0.30", "0.31"}, {300'000, 2, "0.30", "0.30", "0.30"},
        {999'999, 2, "1.00", "0.99", "1.00"}, {1'500'000, 0, "2", "1", "2"},
        {2'500'000, 0, "2", "2", "3"},        {12'345'678, 6, "12.345678", "12.345678", "12.345678"},
        {-5'000, 2, "0.00", "-0.01", "0.00"}, {-15'000, 2, "-0.02", "-0.02", "-0.01"},
    };
    for (const Row &row : rows) {
        const Length value = nanometres(row.nanometres);
        EXPECT_EQ(formatNumber(value, mm, row.decimals), row.halfEven) << row.nanometres;
        EXPECT_EQ(formatNumber(value, mm, row.decimals, DecimalMark::Point, Rounding::Down), row.down) << row.nanometres;
        EXPECT_EQ(formatNumber(value, mm, row.decimals, DecimalMark::Point, Rounding::Up), row.up) << row.nanometres;
    }
}

TEST(Format, WritesTheMarkAsked)
{
    EXPECT_EQ(formatNumber(micrometres(250), mm, 2, DecimalMark::Comma), "0,25");
    EXPECT_EQ(formatNumber(thou(1'250), inch, 3, DecimalMark::Comma), "1,250"); // exactly as many decimals as asked
    EXPECT_EQ(formatNumber(degrees(90), AngleUnit::Degree, 1), "90.0");
    EXPECT_EQ(formatNumber(millidegrees(-500), AngleUnit::Degree, 1, DecimalMark::Comma), "-0,5");
    EXPECT_EQ(formatNumber(Length::ofSmallest(INT64_MAX), mm, 6), "9223372036854.775807");
    EXPECT_EQ(formatNumber(Length::ofSmallest(INT64_MIN), mm, 6), "-9223372036854.775808");
    EXPECT_EQ(formatNumber(Torque::ofSmallest(INT64_MAX), TorqueUnit::NewtonMetre, 11), "9223372036.85477580700");
}

TEST(Format, TorquePairsOfAPrintedTable)
{
    // TM 10-6640-238-13 Table G-1: ft·lbf (N·m), each the rounded product.
    const std::pair<const char *, const char *> pairs[] = {{"5", "7"},     {"8", "11"},    {"10", "14"},  {"12", "16"},   {"17", "23"},
                                                           {"31", "42"},   {"44", "60"},   {"75", "102"}, {"105", "142"}, {"110", "149"},
                                                           {"150", "203"}, {"210", "285"}, {"240", "325"}};
    for (const auto &[footPounds, newtonMetres] : pairs) {
        const auto typed = parse<Torque>(footPounds, TorqueUnit::PoundFoot);
        ASSERT_TRUE(typed);
        EXPECT_EQ(formatNumber(typed->value, TorqueUnit::NewtonMetre, 0), newtonMetres) << footPounds;
    }
}

TEST(Format, LashPairsOfAPrintedPage)
{
    // TM 5-3895-383-24 p 6-60: .015 ± .003 in = 0.38 ± 0.08 mm, .025 ± .003 in = 0.64 ± 0.08 mm. 0.635 mm stands exactly half way.
    EXPECT_EQ(formatNumber(thou(15), mm, 2), "0.38");
    EXPECT_EQ(formatNumber(thou(25), mm, 2), "0.64");
    EXPECT_EQ(formatNumber(thou(3), mm, 2), "0.08");
}

TEST(Format, StepsOfTheBench)
{
    EXPECT_EQ(stepDecimals(mm), 2);
    EXPECT_EQ(stepDecimals(inch), 3);
    EXPECT_EQ(stepDecimals(LengthUnit::Thou), 0);
    EXPECT_EQ(stepDecimals(TorqueUnit::NewtonMetre), 1);
    EXPECT_EQ(stepDecimals(TorqueUnit::PoundFoot), 0);
    EXPECT_EQ(stepDecimals(TorqueUnit::PoundInch), 0);
    EXPECT_EQ(stepDecimals(TorqueUnit::KilogramForceMetre), 2);
    EXPECT_EQ(stepDecimals(TorqueUnit::KilogramForceCentimetre), 0);
    EXPECT_EQ(stepDecimals(AngleUnit::Degree), 0);
    EXPECT_EQ(stepDecimals(AngleUnit::Turn), 2);
    EXPECT_EQ(stepOf(mm), micrometres(10));
    EXPECT_EQ(stepOf(inch), thou(1));
    EXPECT_EQ(stepOf(LengthUnit::Thou), thou(1));
}

TEST(FormatExact, IsTheShortestThatReadsBack)
{
    EXPECT_EQ(formatExact(micrometres(180), mm), "0.18 mm");
    EXPECT_EQ(formatExact(micrometres(200), mm), "0.20 mm");
    EXPECT_EQ(formatExact(thou(12), mm), "0.3048 mm");
    EXPECT_EQ(formatExact(thou(12), inch), "0.012 in");
    EXPECT_EQ(formatExact(thou(12), LengthUnit::Thou), "12 thou");
    EXPECT_EQ(formatExact(micrometres(300), inch), "0.01181102 in"); // 0.011 811 023 6…; eight decimals come within half a nanometre
    EXPECT_EQ(formatExact(Length(), mm), "0.00 mm");
    EXPECT_EQ(formatExact(nanometres(1), mm), "0.000001 mm");
    EXPECT_EQ(formatExact(parse<Torque>("40 ft-lb", TorqueUnit::NewtonMetre)->value, TorqueUnit::PoundFoot), "40 lbf·ft");
    EXPECT_EQ(formatExact(parse<Torque>("40 ft-lb", TorqueUnit::NewtonMetre)->value, TorqueUnit::NewtonMetre), "54.232717933 N·m");
    EXPECT_EQ(formatExact(millidegrees(22'500), AngleUnit::Degree), "22.5°");
    EXPECT_EQ(formatExact(degrees(-12), AngleUnit::Degree), "-12°");
    EXPECT_EQ(formatExact(degrees(270), AngleUnit::Turn), "0.75 turn");
    EXPECT_EQ(formatExact(degrees(360), AngleUnit::Turn), "1.00 turn");
    EXPECT_EQ(formatExact(degrees(45), AngleUnit::Turn, DecimalMark::Comma), "0,125 turn");
    EXPECT_EQ(formatExact(degrees(120), AngleUnit::Turn), "0.3333333333333 turn"); // thirteen decimals tell its smallest unit
}

TEST(FormatExact, NeverWritesAnAmbiguousNumber)
{
    EXPECT_EQ(formatExact(thou(1'250), inch, DecimalMark::Point), "1.250 in");
    EXPECT_EQ(formatExact(thou(1'250), inch, DecimalMark::Comma), "1,2500 in");
    EXPECT_EQ(formatExact(thou(250), inch, DecimalMark::Comma), "0,250 in");
    EXPECT_EQ(formatExact(micrometres(1'234), mm, DecimalMark::Comma), "1,2340 mm");
    EXPECT_EQ(formatExact(micrometres(1'230), mm, DecimalMark::Comma), "1,23 mm");
    EXPECT_EQ(formatExact(micrometres(1'234'567), mm, DecimalMark::Comma), "1234,567 mm");
    EXPECT_EQ(formatExact(millidegrees(-1'234), AngleUnit::Degree, DecimalMark::Comma), "-1,2340°");
}

TEST(FormatTyped, KeepsTheWordsAndAddsAMissingSymbol)
{
    const std::pair<const char *, const char *> rows[] = {{"12", "12 mm"},         {"0,25", "0,25 mm"},        {"1 5/8", "1 5/8 mm"},
                                                          {".012\"", ".012\""},    {"0.012 in.", "0.012 in."}, {" 12 thou ", "12 thou"},
                                                          {"0.20  mm", "0.20  mm"}};
    for (const auto &[text, shown] : rows)
        EXPECT_EQ(formatTyped(*parse<Length>(text, mm)), shown);
    EXPECT_EQ(formatTyped(*parse<Torque>("40 lb-ft", TorqueUnit::NewtonMetre)), "40 lb-ft");
    EXPECT_EQ(formatTyped(*parse<Torque>("40", TorqueUnit::PoundFoot)), "40 lbf·ft");
    EXPECT_EQ(formatTyped(*parse<Angle>("90", AngleUnit::Degree)), "90°");
    EXPECT_EQ(formatTyped(*parse<Angle>(" 3/4 ", AngleUnit::Turn)), "3/4 turn");
    EXPECT_EQ(formatTyped(*parse<Angle>("1.5 turns", AngleUnit::Turn)), "1.5 turns");
}

} // namespace format_tests
} // namespace asleft
