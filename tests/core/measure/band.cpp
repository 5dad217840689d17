#include <measure/format.h>
#include <measure/judge.h>

#include <gtest/gtest.h>

namespace asleft {
namespace band_tests {

constexpr auto mm = LengthUnit::Millimetre;
constexpr auto inch = LengthUnit::Inch;
constexpr auto thouUnit = LengthUnit::Thou;
constexpr std::optional<std::int64_t> none;

std::optional<std::int64_t> count(const std::optional<Length> &length)
{
    return length ? std::optional(length->smallest()) : std::nullopt;
}

Band<Length> band(std::string_view text, LengthUnit field = mm)
{
    return parseBand<Length>(text, field).value();
}

TEST(ParseBand, ReadsEveryFormManualsPrint)
{
    using enum BandForm;
    struct Row {
        const char *text;
        LengthUnit field;
        BandForm form;
        std::optional<std::int64_t> low;
        std::optional<std::int64_t> high;
        std::optional<std::int64_t> nominal;
        LengthUnit unit;
    };
    const Row rows[] = {
        {".015 ± .003 in", mm, PlusMinus, 304'800, 457'200, 381'000, inch},
        {".015±.003\"", mm, PlusMinus, 304'800, 457'200, 381'000, inch},
        {"0.015 +/- .003", inch, PlusMinus, 304'800, 457'200, 381'000, inch},
        {"0.015 +- .003 in", mm, PlusMinus, 304'800, 457'200, 381'000, inch},
        {"0.015 +/− .003 in", mm, PlusMinus, 304'800, 457'200, 381'000, inch},
        {"0.015 in ± .003", mm, PlusMinus, 304'800, 457'200, 381'000, inch},
        {"15 ± 3 thou", mm, PlusMinus, 304'800, 457'200, 381'000, thouUnit},
        {"0.015 +/- 10 %", inch, PlusMinus, 342'900, 419'100, 381'000, inch},
        {"0.015 in ± 10%", mm, PlusMinus, 342'900, 419'100, 381'000, inch},
        {"10 mm ± .002 in", inch, PlusMinus, 9'949'200, 10'050'800, 10'000'000, mm},
        {"0.40 +0.05 -0.02 mm", inch, PlusMinus, 380'000, 450'000, 400'000, mm},
        {"0.40 mm +0.05 −0.02", inch, PlusMinus, 380'000, 450'000, 400'000, mm},
        {"0.40 -0.02 +0.05 mm", inch, PlusMinus, 380'000, 450'000, 400'000, mm},
        {"0.40 + 0.05 - 0", mm, PlusMinus, 400'000, 450'000, 400'000, mm},
        {"0.40 +10 % -5 %", mm, PlusMinus, 380'000, 440'000, 400'000, mm},
        {"0.40 mm +2 thou -0.02", mm, PlusMinus, 400'000 - 508, 450'800, 400'000, mm},
        {"0,40 ± 0,05", mm, PlusMinus, 350'000, 450'000, 400'000, mm},
        {"0.20 ± 0.20", mm, PlusMinus, 0, 400'000, 200'000, mm},
        {"0.20-0.30 mm", inch, Range, 200'000, 300'000, none, mm},
        {"0.20 – 0.30", mm, Range, 200'000, 300'000, none, mm},
        {"0.20—0.30", mm, Range, 200'000, 300'000, none, mm},
        {"0.20 to 0.30 mm", inch, Range, 200'000, 300'000, none, mm},
        {"0.20 TO 0.30 mm", inch, Range, 200'000, 300'000, none, mm},
        {"0,20-0,30 mm", inch, Range, 200'000, 300'000, none, mm},
        {"0.20 mm - 0.30", inch, Range, 200'000, 300'000, none, mm},
        {"0.20 mm-.012 in", inch, Range, 200'000, 304'800, none, mm},
        {"1/4-3/8 in", mm, Range, 6'350'000, 9'525'000, none, inch},
        {"1 1/4 - 1 3/8 in", mm, Range, 31'750'000, 34'925'000, none, inch},
        {"0.3 - 0.3", mm, Range, 300'000, 300'000, none, mm},
        {"at least 0.2 mm", inch, AtLeast, 200'000, none, none, mm},
        {"At  Least 0.2", mm, AtLeast, 200'000, none, none, mm},
        {"min 0.2", mm, AtLeast, 200'000, none, none, mm},
        {">= 0.2", mm, AtLeast, 200'000, none, none, mm},
        {"≥0.2", mm, AtLeast, 200'000, none, none, mm},
        {"at most 0.3 mm", inch, AtMost, none, 300'000, none, mm},
        {"max 0.3", mm, AtMost, none, 300'000, none, mm},
        {"MAX .012\"", mm, AtMost, none, 304'800, none, inch},
        {"<=0.3", mm, AtMost, none, 300'000, none, mm},
        {"≤ 0.3", mm, AtMost, none, 300'000, none, mm},
        {"0.25 mm", inch, NominalOnly, 225'000, 275'000, 250'000, mm},
        {".012", inch, NominalOnly, 274'320, 335'280, 304'800, inch},
    };
    for (const Row &row : rows) {
        const auto read = parseBand<Length>(row.text, row.field);
        ASSERT_TRUE(read) << row.text << ": " << static_cast<int>(read.error().kind);
        EXPECT_EQ(read->form, row.form) << row.text;
        EXPECT_EQ(count(read->low), row.low) << row.text;
        EXPECT_EQ(count(read->high), row.high) << row.text;
        EXPECT_EQ(count(read->nominal), row.nominal) << row.text;
        EXPECT_EQ(read->unit, row.unit) << row.text;
        EXPECT_EQ(read->text, row.text);
        EXPECT_EQ(read->toleranceAssumed, row.form == NominalOnly) << row.text;
    }
}

TEST(ParseBand, TellsARangeFromTheHyphenOfAUnit)
{
    const std::int64_t twenty = 27'116'358'967; // 20 lbf·ft: 27.116 358 966 628 008 N·m
    const std::int64_t thirty = 40'674'538'450; // 30 lbf·ft: 40.674 538 449 942 012 N·m
    for (const char *text : {"20-30 ft-lb", "20 - 30 ft-lb", "20 ft-lb-30 ft-lb", "20 ft-lb - 30 ft-lb", "20 ft-lb to 30", "20–30 lb·ft"}) {
        const auto read = parseBand<Torque>(text, TorqueUnit::NewtonMetre);
        ASSERT_TRUE(read) << text;
        EXPECT_EQ(read->form, BandForm::Range) << text;
        EXPECT_EQ(read->low, Torque::ofSmallest(twenty)) << text;
        EXPECT_EQ(read->high, Torque::ofSmallest(thirty)) << text;
        EXPECT_EQ(read->unit, TorqueUnit::PoundFoot) << text;
    }
    const auto tolerance = parseBand<Torque>("24 N·m ± 2 ft-lb", TorqueUnit::PoundInch);
    EXPECT_EQ(tolerance->low, Torque::ofSmallest(21'288'364'103)); // 24 - 2.711 635 896 662 800 8
    EXPECT_EQ(tolerance->unit, TorqueUnit::NewtonMetre);
}

TEST(ParseBand, AddsExactlyBeforeTheOneRounding)
{
    // A third of a nanometre each: rounded apart they would vanish.
    EXPECT_EQ(count(band("1/3000000 ± 1/3000000 mm").high), 1);
    EXPECT_EQ(count(band("1/3000000 mm").nominal), 0);
    // 0.5 nm + 1 nm: half way, to the even 2; rounded apart, 0 + 1.
    EXPECT_EQ(count(band("0.0000005 +0.000001 -0 mm").high), 2);
    // In different units: 40 lbf·ft is 54.232 717 933 256 016 N·m, and 0.2564 nN·m more just passes the half.
    const auto mixed = parseBand<Torque>("40 ft-lb + 0.0000000003 -0 N·m", TorqueUnit::PoundFoot);
    EXPECT_EQ(mixed->nominal, Torque::ofSmallest(54'232'717'933));
    EXPECT_EQ(mixed->high, Torque::ofSmallest(54'232'717'934));
    // Percent: 10 % of 5 nm is half a nanometre; both ends go to the even neighbour.
    EXPECT_EQ(count(band("0.000005 mm ± 10 %").low), 4);
    EXPECT_EQ(count(band("0.000005 mm ± 10 %").high), 6);
}

TEST(ParseBand, TrimsAndKeepsItsText)
{
    EXPECT_EQ(band("  0.20 –\u00A00.30  mm\t").text, "0.20 –\u00A00.30  mm");
}

TEST(ParseBand, HoldsForTheDecimalMark)
{
    EXPECT_TRUE(parseBand<Length>("1.250 ± 0.005 in", inch, DecimalMark::Point));
    EXPECT_EQ(parseBand<Length>("1.250 ± 0.005 in", inch, DecimalMark::Comma).error().kind, ErrorKind::AmbiguousNumber);
}

TEST(ParseBand, Refuses)
{
    const std::string lengths = "mm, in, thou";
    struct Row {
        const char *text;
        Error error;
    };
    const Row rows[] = {
        {"", {ErrorKind::EmptyText, {}}},
        {"0.30-0.20 mm", {ErrorKind::BandUpsideDown, {"0.30 mm", "0.20 mm"}}},
        {"1-5/8 in", {ErrorKind::BandUpsideDown, {"1.000 in", "0.625 in"}}},
        {"0.20 mm to 0.007 in", {ErrorKind::BandUpsideDown, {"0.20 mm", "0.1778 mm"}}},
        {"0.20 ± 0.21", {ErrorKind::NegativeValue, {"0.20 ± 0.21"}}},
        {"0.20 ± 101 %", {ErrorKind::NegativeValue, {"0.20 ± 101 %"}}},
        {"0.2 mm ± .008 in", {ErrorKind::NegativeValue, {"0.2 mm ± .008 in"}}},
        {"-0.2", {ErrorKind::NegativeValue, {"-0.2"}}},
        {"0.20 - -0.30", {ErrorKind::NegativeValue, {"0.20 - -0.30"}}},
        {"0.20 ± -0.1", {ErrorKind::NegativeValue, {"0.20 ± -0.1"}}},
        {"at least", {ErrorKind::BandWithoutValue, {"at least"}}},
        {"max", {ErrorKind::BandWithoutValue, {"max"}}},
        {"≥ ", {ErrorKind::BandWithoutValue, {"≥"}}},
        {"± 0.03", {ErrorKind::BandWithoutValue, {"± 0.03"}}},
        {"+0.05 -0.02", {ErrorKind::BandWithoutValue, {"+0.05 -0.02"}}},
        {"to 0.30", {ErrorKind::BandWithoutValue, {"to 0.30"}}},
        {"0.20 to", {ErrorKind::BandWithoutValue, {"0.20 to"}}},
        {"0.20 -", {ErrorKind::BandWithoutValue, {"0.20 -"}}},
        {"0.20 ±", {ErrorKind::BandWithoutValue, {"0.20 ±"}}},
        {"0.40 +0.05", {ErrorKind::BandWithoutValue, {"0.40 +0.05"}}},
        {"0.40 +0.05 -", {ErrorKind::BandWithoutValue, {"0.40 +0.05 -"}}},
        {"0.40 +0.05 +0.02", {ErrorKind::TextLeftOver, {"+0.02"}}},
        {"> 0.2", {ErrorKind::NotANumber, {">"}}},
        {"minimum 0.2", {ErrorKind::NotANumber, {"minimum"}}},
        {"at 0.2", {ErrorKind::NotANumber, {"at"}}},
        {"x", {ErrorKind::NotANumber, {"x"}}},
        {"0.20 to x", {ErrorKind::NotANumber, {"x"}}},
        {"0.20.-0.30", {ErrorKind::NotANumber, {"0.20."}}},
        {"0.20-0.30-0.40", {ErrorKind::TextLeftOver, {"-0.40"}}},
        {"0.20 ± 0.1 ± 0.1", {ErrorKind::TextLeftOver, {"± 0.1"}}},
        {"0.20 mm ± 0.1 mm mm", {ErrorKind::TextLeftOver, {"mm"}}},
        {"0.20 ± 10 % mm", {ErrorKind::TextLeftOver, {"mm"}}},
        {"0.20 - 10 %", {ErrorKind::UnknownUnit, {"%", lengths}}},
        {"10 %", {ErrorKind::UnknownUnit, {"%", lengths}}},
        {"at least 10 %", {ErrorKind::UnknownUnit, {"%", lengths}}},
        {"0.20 xx to 0.30 mm", {ErrorKind::UnknownUnit, {"xx", lengths}}},
        {"0.20-0.30 xx", {ErrorKind::UnknownUnit, {"xx", lengths}}},
        {"20-30 in-lb", {ErrorKind::UnknownUnit, {"in-lb", lengths}}},
        {"20 in-lb - 30 mm", {ErrorKind::UnknownUnit, {"in-lb", lengths}}},
        {"1,250 - 1,300", {ErrorKind::AmbiguousNumber, {"1,250 - 1,300"}}},
        {"1/0 - 2", {ErrorKind::DivisionByZero, {"1/0 - 2"}}},
        {"1234567890123 - 2", {ErrorKind::TooManyDigits, {"1234567890123 - 2"}}},
        {"10000 mm", {ErrorKind::ValueTooLarge, {"10000 mm", "10000 mm"}}},
        {"at most 10001 mm", {ErrorKind::ValueTooLarge, {"at most 10001 mm", "10000 mm"}}},
    };
    for (const Row &row : rows) {
        const auto read = parseBand<Length>(row.text, mm);
        ASSERT_FALSE(read) << row.text;
        EXPECT_EQ(read.error().kind, row.error.kind) << row.text;
        EXPECT_EQ(read.error().arguments, row.error.arguments) << row.text;
    }
    EXPECT_EQ(parseBand<Length>(std::string(201, '1'), mm).error().kind, ErrorKind::TextTooLong);
}

TEST(ParseBand, RefusesWhatDoesNotFitRatherThanRoundingIt)
{
    // 24 digits times a factor of 17 passes 128 bits.
    const char *text = "0.99999999999 ± 0.99999999999 % ft-lb";
    EXPECT_FALSE(parseBand<Torque>(text, TorqueUnit::PoundFoot));
    EXPECT_EQ(parseBand<Torque>("0.99999999999 ft-lb ± 0.99999999999 %", TorqueUnit::PoundFoot).error().kind, ErrorKind::TooManyDigits);
    EXPECT_TRUE(parseBand<Torque>("0.99999999999 ft-lb ± 0.00999999999 ft-lb", TorqueUnit::PoundFoot));
}

TEST(PairBands, KeepsBothPrintedSystems)
{
    const auto pair = pairBands(band(".012 in"), std::optional(band("0.30 mm")));
    ASSERT_TRUE(pair);
    EXPECT_EQ(pair->printedFor(mm).text, "0.30 mm");
    EXPECT_EQ(pair->printedFor(inch).text, ".012 in");
    EXPECT_EQ(pair->printedFor(thouUnit).text, ".012 in");
    const auto alone = pairBands<Length>(band(".012 in"), std::nullopt);
    ASSERT_TRUE(alone);
    EXPECT_EQ(alone->printedFor(mm).text, ".012 in");
}

TEST(PairBands, RefusesTheSameSystemAndBandsApart)
{
    EXPECT_EQ(pairBands(band(".012 in"), std::optional(band("12 thou"))).error(), (Error{ErrorKind::BandSameSystem, {"12 thou"}}));
    EXPECT_EQ(pairBands(band(".012 in"), std::optional(band("3.0 mm"))).error(),
              (Error{ErrorKind::BandSystemsDiffer, {".012 in", "3.0 mm"}}));
    EXPECT_EQ(pairBands(band("3.0 mm"), std::optional(band(".012 in"))).error().kind, ErrorKind::BandSystemsDiffer);
    EXPECT_FALSE(pairBands(band("at least 0.31 mm"), std::optional(band("at most .012 in"))));
    EXPECT_TRUE(pairBands(band("at least 0.3048 mm"), std::optional(band("at most .012 in")))); // they touch
    EXPECT_TRUE(pairBands(band("at least 3 mm"), std::optional(band("at least .012 in"))));
}

TEST(FormatBand, InItsOwnUnitExactly)
{
    EXPECT_EQ(formatBand(band("0.20-0.30 mm"), mm), "0.20 to 0.30 mm");
    EXPECT_EQ(formatBand(band("0.2-0.3 mm"), mm, DecimalMark::Comma), "0,20 to 0,30 mm");
    EXPECT_EQ(formatBand(band(".015 ± .003 in"), inch), "0.012 to 0.018 in");
    EXPECT_EQ(formatBand(band("10 mm ± .002 in"), mm), "9.9492 to 10.0508 mm");
    EXPECT_EQ(formatBand(band("at least 0.2 mm"), mm), "at least 0.20 mm");
    EXPECT_EQ(formatBand(band("≤ 0.305 mm"), mm), "at most 0.305 mm");
    EXPECT_EQ(formatBand(*parseBand<Torque>("20-30 ft-lb", TorqueUnit::NewtonMetre), TorqueUnit::PoundFoot), "20 to 30 lbf·ft");
}

TEST(FormatBand, InAnotherUnitRoundedInward)
{
    EXPECT_EQ(formatBand(band("0.20-0.30 mm"), inch), "0.008 to 0.011 in"); // 0.007 87…, 0.011 81…
    EXPECT_EQ(formatBand(band(".015 ± .003 in"), mm), "0.31 to 0.45 mm");   // 0.3048, 0.4572
    EXPECT_EQ(formatBand(band("0.012-0.018 in"), thouUnit), "12 to 18 thou");
    EXPECT_EQ(formatBand(band("at least 0.2 mm"), inch), "at least 0.008 in");
    EXPECT_EQ(formatBand(band("at most 0.3 mm"), inch), "at most 0.011 in");
    EXPECT_EQ(formatBand(band("0.20-0.30 mm"), inch, DecimalMark::Comma), "0,008 to 0,011 in");
    EXPECT_EQ(formatBand(*parseBand<Torque>("20-30 N·m", TorqueUnit::NewtonMetre), TorqueUnit::PoundFoot), "15 to 22 lbf·ft");
}

TEST(FormatBand, WithMoreDecimalsWhereTheStepLeavesNothing)
{
    EXPECT_EQ(formatBand(band("0.28-0.30 mm"), inch), "0.0111 to 0.0118 in"); // 0.011 02…, 0.011 81…: no whole thou lies between
    EXPECT_EQ(formatBand(band("0.012-0.012 in"), mm), "0.3048 to 0.3048 mm");
    EXPECT_EQ(formatBand(band("at most 0.01 mm"), inch), "at most 0.0003 in");
    EXPECT_EQ(formatBand(band("at most 0 mm"), inch), "at most 0.000 in");
    EXPECT_EQ(formatBand(band("0.30-0.30 mm"), inch), "0.01181102 to 0.01181102 in"); // no decimal number of inches lies in it
}

TEST(FormatBand, NothingShownInwardIsOutside)
{
    for (int low = 0; low < 60; ++low) {
        for (int width = 1; width < 8; ++width) {
            const auto shownIn = band(std::to_string(low) + "-" + std::to_string(low + width) + " thou");
            const auto again = parseBand<Length>(formatBand(shownIn, mm), mm);
            ASSERT_TRUE(again);
            EXPECT_GE(*again->low, *shownIn.low);
            EXPECT_LE(*again->high, *shownIn.high);
        }
    }
}

TEST(ParseBand, ReadsTurnsOfAScrew)
{
    const auto turns = [](std::string_view text) { return parseBand<Angle>(text, AngleUnit::Turn).value(); };
    EXPECT_EQ(turns("3/4 ± 1/8 turn").low, millidegrees(225'000));
    EXPECT_EQ(turns("3/4 ± 1/8 turn").high, millidegrees(315'000));
    EXPECT_EQ(turns("3/4 ± 1/8 turn").unit, AngleUnit::Turn);
    EXPECT_EQ(turns("1/2 to 1 turn").low, degrees(180));
    EXPECT_EQ(turns("1/2-1 turn").high, degrees(360));
    EXPECT_EQ(turns("1 1/4 - 1 1/2").low, degrees(450));
    EXPECT_EQ(turns("at most 1 turn").high, degrees(360));
    EXPECT_EQ(turns("3/4 turn ± 30°").low, degrees(240)) << "in different units";
    EXPECT_EQ(turns("270° ± 10 %").high, degrees(297));
    const Band<Angle> alone = turns("3/4 turn");
    EXPECT_TRUE(alone.toleranceAssumed);
    EXPECT_EQ(alone.nominal, degrees(270));
    EXPECT_EQ(alone.low, degrees(243));
    EXPECT_FALSE(parseBand<Angle>("1 - 1/2 turn", AngleUnit::Turn)) << "upside down";
    EXPECT_FALSE(parseBand<Angle>("1/4 ± 1/2 turn", AngleUnit::Turn)) << "below zero";
    EXPECT_FALSE(parseBand<Angle>("0.3 mm", AngleUnit::Turn));
}

TEST(PairBands, AnAngleIsPrintedOnce)
{
    const auto turns = parseBand<Angle>("3/4 ± 1/8 turn", AngleUnit::Turn).value();
    const auto inDegrees = parseBand<Angle>("270° ± 45°", AngleUnit::Turn).value();
    EXPECT_EQ(pairBands<Angle>(turns, std::nullopt)->printedFor(AngleUnit::Degree), turns);
    EXPECT_EQ(pairBands<Angle>(turns, inDegrees).error().kind, ErrorKind::BandSameSystem);
}

TEST(FormatBand, OfTurns)
{
    const auto turns = parseBand<Angle>("1/3 to 2/3 turn", AngleUnit::Turn).value();
    EXPECT_EQ(formatBand(turns, AngleUnit::Degree), "120 to 240°");
    const auto degreesPrinted = parseBand<Angle>("100 to 200°", AngleUnit::Turn).value();
    EXPECT_EQ(formatBand(degreesPrinted, AngleUnit::Degree), "100 to 200°");
    EXPECT_EQ(formatBand(degreesPrinted, AngleUnit::Turn), "0.28 to 0.55 turn"); // 0.277… up, 0.555… down
    EXPECT_EQ(formatBand(parseBand<Angle>("at most 1 turn", AngleUnit::Turn).value(), AngleUnit::Turn), "at most 1.00 turn");
}

} // namespace band_tests
} // namespace asleft
