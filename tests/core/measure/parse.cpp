#include <measure/parse.h>

#include <gtest/gtest.h>

namespace asleft {
namespace parse_tests {

constexpr auto mm = LengthUnit::Millimetre;
constexpr auto inch = LengthUnit::Inch;
constexpr auto thouUnit = LengthUnit::Thou;

TEST(Parse, ReadsLengths)
{
    struct Row {
        const char *text;
        std::int64_t nanometres;
        LengthUnit field;
        LengthUnit unit;
    };
    const Row rows[] = {
        {"0.012 in", 304'800, mm, inch},
        {".012\"", 304'800, mm, inch},
        {".012″", 304'800, mm, inch},
        {"0.012in", 304'800, mm, inch},
        {"0.012 in.", 304'800, mm, inch},
        {"0.012 inches", 304'800, mm, inch},
        {"12 thou", 304'800, mm, thouUnit},
        {"12thou", 304'800, mm, thouUnit},
        {"0.3048 mm", 304'800, inch, mm},
        {"0,25 mm", 250'000, inch, mm},
        {"0.25 mm", 250'000, inch, mm},
        {"0.25\u00A0mm", 250'000, inch, mm},
        {"0.25\u202Fmm", 250'000, inch, mm},
        {",25", 250'000, mm, mm},
        {"0,250", 250'000, mm, mm},
        {"000,250", 250'000, mm, mm},
        {",250", 250'000, mm, mm},
        {"1,25", 1'250'000, mm, mm},
        {"1,2500", 1'250'000, mm, mm},
        {"1.250", 1'250'000, mm, mm},
        {"1234,567", 1'234'567'000, mm, mm},
        {"5/8 in", 15'875'000, mm, inch},
        {"1 5/8 in", 41'275'000, mm, inch},
        {"1  5/8\"", 41'275'000, mm, inch},
        {"1 5⁄8 in", 41'275'000, mm, inch},
        {"9/8 in", 28'575'000, mm, inch},
        {"1/3 mm", 333'333, mm, mm},
        {"2/3 mm", 666'667, mm, mm},
        {"0", 0, mm, mm},
        {"0/7", 0, mm, mm},
        {"\t 0.2 \n", 5'080'000, inch, inch},
        {"\u00A00.2\u00A0", 5'080'000, inch, inch},
        {"3", 76'200, thouUnit, thouUnit},
        {"0.0000005 mm", 0, mm, mm},          // half a nanometre: the even neighbour is 0
        {"0.0000015 mm", 2, mm, mm},          // and here it is 2
        {"0.00000050001 mm", 1, mm, mm},      // above the half
        {"10000 mm", 10'000'000'000, mm, mm}, // the largest
        {"393.700787 in", 9'999'999'990, inch, inch},
        {"00000000010 mm", 10'000'000, mm, mm},
    };
    for (const Row &row : rows) {
        const auto typed = parse<Length>(row.text, row.field);
        ASSERT_TRUE(typed) << row.text;
        EXPECT_EQ(typed->value, nanometres(row.nanometres)) << row.text;
        EXPECT_EQ(typed->unit, row.unit) << row.text;
    }
}

TEST(Parse, ReadsTorques)
{
    struct Row {
        const char *text;
        std::int64_t nanonewtonMetres;
        TorqueUnit unit;
    };
    const Row rows[] = {
        {"24", 24'000'000'000, TorqueUnit::NewtonMetre},
        {"24 N·m", 24'000'000'000, TorqueUnit::NewtonMetre},
        {"24 Nm", 24'000'000'000, TorqueUnit::NewtonMetre},
        {"24 N m", 24'000'000'000, TorqueUnit::NewtonMetre},
        {"24\u00A0N·m", 24'000'000'000, TorqueUnit::NewtonMetre},
        {"24N.m", 24'000'000'000, TorqueUnit::NewtonMetre},
        {"20 ft-lb", 27'116'358'967, TorqueUnit::PoundFoot}, // 27.116 358 966 628 008
        {"20 lbf·ft", 27'116'358'967, TorqueUnit::PoundFoot},
        {"20 lb-ft", 27'116'358'967, TorqueUnit::PoundFoot},
        {"20ft lbs", 27'116'358'967, TorqueUnit::PoundFoot},
        {"9 in-lb", 1'016'863'461, TorqueUnit::PoundInch}, // 1.016 863 461 248 550 3
        {"2.5 kgf·m", 24'516'625'000, TorqueUnit::KilogramForceMetre},
        {"2,5 kgm", 24'516'625'000, TorqueUnit::KilogramForceMetre},
        {"250 kgf·cm", 24'516'625'000, TorqueUnit::KilogramForceCentimetre},
        {"12 1/2 ft-lb", 16'947'724'354, TorqueUnit::PoundFoot}, // 16.947 724 354 142 505
        {"100000 N·m", 100'000'000'000'000, TorqueUnit::NewtonMetre},
    };
    for (const Row &row : rows) {
        const auto typed = parse<Torque>(row.text, TorqueUnit::NewtonMetre);
        ASSERT_TRUE(typed) << row.text;
        EXPECT_EQ(typed->value.smallest(), row.nanonewtonMetres) << row.text;
        EXPECT_EQ(typed->unit, row.unit) << row.text;
    }
}

TEST(Parse, ReadsAngles)
{
    EXPECT_EQ(parse<Angle>("90", AngleUnit::Degree)->value, degrees(90));
    EXPECT_EQ(parse<Angle>("22.5°", AngleUnit::Degree)->value, millidegrees(22'500));
    EXPECT_EQ(parse<Angle>("360/7 deg", AngleUnit::Degree)->value * 7, degrees(360));
    EXPECT_FALSE(parse<Angle>("-5", AngleUnit::Degree));
    EXPECT_FALSE(parse<Angle>("90 mm", AngleUnit::Degree));
}

TEST(Parse, ReadsTurnsOfAScrew)
{
    struct Row {
        const char *text;
        Angle angle;
        AngleUnit unit;
    };
    const Row rows[] = {
        {"3/4 turn", degrees(270), AngleUnit::Turn},
        {"1 turn", degrees(360), AngleUnit::Turn},
        {"1.5 turns", degrees(540), AngleUnit::Turn},
        {"1 1/4 turns", degrees(450), AngleUnit::Turn},
        {"0,5 tr", degrees(180), AngleUnit::Turn},
        {"2 rev.", degrees(720), AngleUnit::Turn},
        {"3/4", degrees(270), AngleUnit::Turn},
        {"270°", degrees(270), AngleUnit::Degree},
        {"1/16 turn", millidegrees(22'500), AngleUnit::Turn},
        {"0 turns", Angle(), AngleUnit::Turn},
    };
    for (const Row &row : rows) {
        const auto typed = parse<Angle>(row.text, AngleUnit::Turn);
        ASSERT_TRUE(typed) << row.text;
        EXPECT_EQ(typed->value, row.angle) << row.text;
        EXPECT_EQ(typed->unit, row.unit) << row.text;
    }
    EXPECT_EQ(parse<Angle>("1/7 turn", AngleUnit::Degree)->value * 7, degrees(360)) << "a seventh of a turn is whole";
    EXPECT_EQ(parse<Angle>("28", AngleUnit::Turn).error(), (Error{ErrorKind::ValueTooLarge, {"28", "27 turn"}}));
    EXPECT_EQ(parse<Angle>("1 thou", AngleUnit::Turn).error(), (Error{ErrorKind::UnknownUnit, {"thou", "°, turn"}}));
    EXPECT_EQ(parse<Angle>("-1 turn", AngleUnit::Turn).error().kind, ErrorKind::NegativeValue);
    EXPECT_EQ(parse<Length>("1 turn", mm).error(), (Error{ErrorKind::UnknownUnit, {"turn", "mm, in, thou"}}));
}

TEST(Parse, KeepsTheTrimmedTextAsTyped)
{
    EXPECT_EQ(parse<Length>("  0,250  mm \t", inch)->text, "0,250  mm");
    EXPECT_EQ(parse<Length>("\u00A0.012\"", mm)->text, ".012\"");
    EXPECT_EQ(parse<Length>(" 12 ", mm)->text, "12");
    EXPECT_EQ(parse<Torque>("40 lbf⋅ft", TorqueUnit::NewtonMetre)->text, "40 lbf⋅ft");
}

TEST(Parse, EqualValuesAgreeInEveryUnit)
{
    const Length twelveThou = thou(12);
    for (const char *text : {"12 thou", "0.012 in", ".012\"", "0.3048 mm", "3/250 in", "0,3048"})
        EXPECT_EQ(parse<Length>(text, mm)->value, twelveThou) << text;
}

TEST(Parse, ReadsSignedAngles)
{
    struct Row {
        const char *text;
        Angle angle;
    };
    const Row rows[] = {{"-5", degrees(-5)},
                        {"−5°", degrees(-5)},
                        {"–5.5", millidegrees(-5'500)},
                        {"- 5", degrees(-5)},
                        {"5", degrees(5)},
                        {"-0", degrees(0)},
                        {"-10000", degrees(-10'000)},
                        {"-1/2", millidegrees(-500)},
                        {"12,5°", millidegrees(12'500)}};
    for (const Row &row : rows)
        EXPECT_EQ(parseSignedAngle(row.text), row.angle) << row.text;
    for (const char *text : {"--5", "-", "+5", "-10001", "-5 mm", "- -5", "5-", "", "-1,250", "-x"})
        EXPECT_FALSE(parseSignedAngle(text)) << text;
    EXPECT_EQ(parseSignedAngle("-1,250").error(), (Error{ErrorKind::AmbiguousNumber, {"-1,250"}}));
    EXPECT_EQ(parseSignedAngle("--5").error(), (Error{ErrorKind::NotANumber, {"--5"}}));
}

TEST(ParseInSteps, CountsDigitsAloneInSteps)
{
    struct Row {
        const char *typed;
        LengthUnit field;
        DecimalMark mark;
        Length value;
        const char *text;
    };
    const Row rows[] = {
        {"18", mm, DecimalMark::Point, micrometres(180), "0.18"},
        {" 18 ", mm, DecimalMark::Point, micrometres(180), "0.18"},
        {"18", mm, DecimalMark::Comma, micrometres(180), "0,18"},
        {"5", mm, DecimalMark::Point, micrometres(50), "0.05"},
        {"020", mm, DecimalMark::Point, micrometres(200), "0.20"},
        {"125", mm, DecimalMark::Point, micrometres(1'250), "1.25"},
        {"0", mm, DecimalMark::Point, Length(), "0.00"},
        {"12", inch, DecimalMark::Point, thou(12), "0.012"},
        {"12", inch, DecimalMark::Comma, thou(12), "0,012"},
        {"1250", inch, DecimalMark::Point, thou(1'250), "1.250"},
        {"1250", inch, DecimalMark::Comma, thou(1'250), "1,2500"}, // "1,250" could not be read back
        {"12", thouUnit, DecimalMark::Point, thou(12), "12"},
        {"0.18", mm, DecimalMark::Point, micrometres(180), "0.18"},
        {"0,18", mm, DecimalMark::Point, micrometres(180), "0,18"},
        {"18 mm", mm, DecimalMark::Point, micrometres(18'000), "18 mm"},
        {"12 thou", mm, DecimalMark::Point, thou(12), "12 thou"},
        {"1/2", mm, DecimalMark::Point, micrometres(500), "1/2"},
        {"1000000", mm, DecimalMark::Point, micrometres(10'000'000), "10000.00"},
    };
    for (const Row &row : rows) {
        const auto typed = parseInSteps(row.typed, row.field, row.mark);
        ASSERT_TRUE(typed) << row.typed;
        EXPECT_EQ(typed->value, row.value) << row.typed;
        EXPECT_EQ(typed->text, row.text) << row.typed;
        const auto again = parse<Length>(typed->text, typed->unit, row.mark);
        ASSERT_TRUE(again) << typed->text;
        EXPECT_EQ(again->value, typed->value) << typed->text;
    }
}

TEST(ParseInSteps, RefusesAsParseDoes)
{
    EXPECT_EQ(parseInSteps("1000001", mm).error(), (Error{ErrorKind::ValueTooLarge, {"1000001", "10000 mm"}}));
    EXPECT_EQ(parseInSteps("1234567890123", mm).error(), (Error{ErrorKind::TooManyDigits, {"1234567890123"}}));
    EXPECT_EQ(parseInSteps("-18", mm).error().kind, ErrorKind::NegativeValue);
    EXPECT_EQ(parseInSteps("", mm).error().kind, ErrorKind::EmptyText);
    EXPECT_EQ(parseInSteps("18 x", mm).error().kind, ErrorKind::UnknownUnit);
    EXPECT_EQ(parseInSteps("1,250", mm).error().kind, ErrorKind::AmbiguousNumber);
    EXPECT_EQ(parseInSteps(std::string(201, '1'), mm).error().kind, ErrorKind::TextTooLong);
}

TEST(ParseNumber, ReadsPlainNumbersOnly)
{
    EXPECT_EQ(parseNumber("0,8"), Rational(4, 5));
    EXPECT_EQ(parseNumber("1.25"), Rational(5, 4));
    EXPECT_EQ(parseNumber(" 5/8 "), Rational(5, 8));
    EXPECT_EQ(parseNumber("1 5/8"), Rational(13, 8));
    EXPECT_EQ(parseNumber("999999999999"), Rational(999'999'999'999));
    EXPECT_EQ(parseNumber("-1").error(), (Error{ErrorKind::NegativeValue, {"-1"}}));
    EXPECT_EQ(parseNumber("1 mm").error(), (Error{ErrorKind::TextLeftOver, {"mm"}}));
    EXPECT_EQ(parseNumber("10%").error(), (Error{ErrorKind::TextLeftOver, {"%"}}));
    EXPECT_EQ(parseNumber("1.250", DecimalMark::Comma).error(), (Error{ErrorKind::AmbiguousNumber, {"1.250"}}));
    EXPECT_EQ(parseNumber("").error().kind, ErrorKind::EmptyText);
    EXPECT_EQ(parseNumber("x").error().kind, ErrorKind::NotANumber);
    EXPECT_EQ(parseNumber("1/0").error(), (Error{ErrorKind::DivisionByZero, {"1/0"}}));
}

} // namespace parse_tests
} // namespace asleft
