// Feeler sets, meters, screws and readings as they are typed.
#include "story.h"

#include <shop/entry.h>

namespace asleft {
namespace entry_tests {

std::string joined(const std::vector<Typed<Length>> &leaves)
{
    std::string text;
    for (const auto &leaf : leaves)
        text += (text.empty() ? "" : " | ") + leaf.text + " " + std::string(symbol(leaf.unit));
    return text;
}

struct LeavesCase {
    const char *text;
    LengthUnit unit;
    const char *leaves;
};

class Leaves : public testing::TestWithParam<LeavesCase> {};

TEST_P(Leaves, Read)
{
    const auto &[text, unit, leaves] = GetParam();
    const auto read = parseLeaves(text, unit);
    ASSERT_TRUE(read.has_value()) << text;
    EXPECT_EQ(joined(*read), leaves);
    for (const auto &leaf : *read)
        EXPECT_EQ(leaf.value, parse<Length>(leaf.text, leaf.unit)->value);
}

constexpr auto mm = LengthUnit::Millimetre;
constexpr auto inch = LengthUnit::Inch;
constexpr auto thousandth = LengthUnit::Thou;

INSTANTIATE_TEST_SUITE_P(All, Leaves,
                         testing::Values(LeavesCase{"0.05 0.10 0.15 mm", mm, "0.05 mm | 0.10 mm | 0.15 mm"},
                                         LeavesCase{".010 .012 .015 in", mm, "0.010 in | 0.012 in | 0.015 in"},
                                         LeavesCase{"10 12", thousandth, "10 thou | 12 thou"},
                                         LeavesCase{"0.15;0.05\t0.10\n", mm, "0.05 mm | 0.10 mm | 0.15 mm"},
                                         LeavesCase{"0.05 0.05 mm", mm, "0.05 mm"}, LeavesCase{"0.05 0.10mm", inch, "0.05 mm | 0.10 mm"},
                                         LeavesCase{"0.254mm .010in", mm, "0.010 in"},
                                         LeavesCase{"0.05-0.20 by 0.05 mm", mm, "0.05 mm | 0.10 mm | 0.15 mm | 0.20 mm"},
                                         LeavesCase{"0.05-0.18 by 0.05 mm", mm, "0.05 mm | 0.10 mm | 0.15 mm"},
                                         LeavesCase{"0.05-0.10mm by 0.05mm", inch, "0.05 mm | 0.10 mm"},
                                         LeavesCase{"0.04 0.05-0.10 by 0.05 0.5 mm", mm, "0.04 mm | 0.05 mm | 0.10 mm | 0.50 mm"},
                                         LeavesCase{"0.3-0.3 by 0.1", mm, "0.30 mm"}, LeavesCase{"0,05 0,10", mm, "0.05 mm | 0.10 mm"}));

struct Refused {
    const char *text;
    const char *part;
};

class LeavesRefused : public testing::TestWithParam<Refused> {};

TEST_P(LeavesRefused, WithTheirPart)
{
    const auto read = parseLeaves(GetParam().text, mm);
    ASSERT_FALSE(read.has_value());
    EXPECT_EQ(read.error(), (Error{ErrorKind::LeavesUnread, {GetParam().part}}));
}

INSTANTIATE_TEST_SUITE_P(All, LeavesRefused,
                         testing::Values(Refused{"", ""}, Refused{"  ", ""}, Refused{"mm", ""}, Refused{"0.05 x 0.10", "x"},
                                         Refused{"0.05 0 mm", "0"}, Refused{"-0.05", "-0.05"}, Refused{"0.05-1.00", "0.05-1.00"},
                                         Refused{"0.05-1.00 by", "0.05-1.00"}, Refused{"0.10-0.05 by 0.01", "0.10-0.05"},
                                         Refused{"0.05-0.10 by 0", "0.05-0.10"}, Refused{"0.01-1.01 by 0.01", "0.01"},
                                         Refused{"0.05 mm 0.10 mm", "mm"}, Refused{"0.05 N·m", "N·m"}, Refused{"by 0.05", "by"}));

TEST(LeavesCount, AHundredAndNoMore)
{
    EXPECT_EQ(parseLeaves("0.01-1.00 by 0.01 mm", mm)->size(), 100U);
    EXPECT_FALSE(parseLeaves("0.01-1.00 by 0.01 2 mm", mm));
    EXPECT_EQ(parseLeaves(std::string(2001, '1'), mm).error().kind, ErrorKind::TextTooLong);
}

TEST(LeavesMark, DecidesWhatIsAmbiguous)
{
    EXPECT_TRUE(parseLeaves("1.250", mm, DecimalMark::Point));
    EXPECT_FALSE(parseLeaves("1.250", mm, DecimalMark::Comma));
}

struct MeterCase {
    const char *text;
    MeterUnit unit;
    std::int64_t thousandths;
};

class Meter : public testing::TestWithParam<MeterCase> {};

TEST_P(Meter, Read)
{
    const auto &[text, unit, thousandths] = GetParam();
    const auto read = parseMeter(text, MeterUnit::Kilometre);
    ASSERT_TRUE(read.has_value()) << text;
    EXPECT_EQ(read->unit, unit);
    EXPECT_EQ(read->thousandths, thousandths);
}

constexpr auto km = MeterUnit::Kilometre;
constexpr auto mile = MeterUnit::Mile;
constexpr auto hour = MeterUnit::Hour;

INSTANTIATE_TEST_SUITE_P(All, Meter,
                         testing::Values(MeterCase{"3812 h", hour, 3'812'000}, MeterCase{"48 210 km", km, 48'210'000},
                                         MeterCase{"61,200 mi", mile, 61'200'000}, MeterCase{"61200miles", mile, 61'200'000},
                                         MeterCase{"  7 ", km, 7'000}, MeterCase{"0", km, 0}, MeterCase{"12.5 hrs", hour, 12'500},
                                         MeterCase{"1,234,567.8 km", km, 1'234'567'800}, MeterCase{"999999999", km, 999'999'999'000}));

class MeterRefused : public testing::TestWithParam<Refused> {};

TEST_P(MeterRefused, WithTheirPart)
{
    const auto read = parseMeter(GetParam().text, MeterUnit::Hour);
    ASSERT_FALSE(read.has_value());
    EXPECT_EQ(read.error(), (Error{ErrorKind::MeterUnread, {GetParam().part}}));
}

INSTANTIATE_TEST_SUITE_P(All, MeterRefused,
                         testing::Values(Refused{"", ""}, Refused{"km", "km"}, Refused{"12 parsecs", "parsecs"}, Refused{"-5 km", "-5 km"},
                                         Refused{"1,5 km", "1,5 km"}, Refused{"1,2345", "1,2345"}, Refused{"1234,567", "1234,567"},
                                         Refused{"12.34 h", "12.34 h"}, Refused{"12. h", "12. h"}, Refused{".5", ".5"},
                                         Refused{"1 2", "1 2"}, Refused{"1000000000", "1000000000"}, Refused{"1,234,56", "1,234,56"},
                                         Refused{"5 km 3", "km 3"}, Refused{"1,,234", "1,,234"}));

TEST(MeterText, KeepsWhatWasTyped)
{
    EXPECT_EQ(parseMeter(" 3 812 h ", km)->text, "3 812 h");
    EXPECT_EQ(parseMeter("3812", hour)->unit, hour);
    EXPECT_EQ(parseMeter(std::string(201, '1'), hour).error().kind, ErrorKind::TextTooLong);
}

TEST(Screw, Read)
{
    const auto unknown = readScrew({"  ", "1.5"});
    ASSERT_TRUE(unknown.has_value());
    EXPECT_FALSE(*unknown);
    const auto plain = readScrew({"1", ""}).value();
    ASSERT_TRUE(plain);
    EXPECT_EQ(plain->pitch, micrometres(1000));
    EXPECT_EQ(plain->ratio, 1.0);
    EXPECT_EQ(readScrew({"1/24 in", "3/2"}).value()->ratio, 1.5);
    EXPECT_EQ(readScrew({"0,75", "1,4"}, DecimalMark::Comma).value()->ratio, 1.4);
    for (const ScrewText &edge : {ScrewText{"0.2 mm", "0.2"}, ScrewText{"5 mm", "5"}})
        EXPECT_TRUE(readScrew(edge).has_value());
}

TEST(Screw, Refused)
{
    const auto kind = [](const ScrewText &text) { return readScrew(text).error(); };
    EXPECT_EQ(kind({"0.19 mm", ""}), (Error{ErrorKind::PitchOutOfRange, {"0.19 mm"}}));
    EXPECT_EQ(kind({"5.01", ""}), (Error{ErrorKind::PitchOutOfRange, {"5.01"}}));
    EXPECT_EQ(kind({"1", "0"}), (Error{ErrorKind::PitchOutOfRange, {"0"}}));
    EXPECT_EQ(kind({"1", "5.1"}), (Error{ErrorKind::PitchOutOfRange, {"5.1"}}));
    EXPECT_EQ(kind({"fine", ""}).kind, ErrorKind::NotANumber);
    EXPECT_EQ(kind({"-1", ""}).kind, ErrorKind::NegativeValue);
    EXPECT_FALSE(readScrew({"1", "one"}).has_value());
    EXPECT_FALSE(readScrew({"1 N·m", ""}).has_value());
}

struct ReadingCase {
    const char *text;
    LengthUnit unit;
    ReadingForm form;
    const char *value;
    const char *next;
};

class ReadingTyped : public testing::TestWithParam<ReadingCase> {};

TEST_P(ReadingTyped, Read)
{
    const auto &[text, unit, form, value, next] = GetParam();
    const auto read = parseReading(text, unit);
    ASSERT_TRUE(read.has_value()) << text;
    EXPECT_EQ(read->form, form);
    EXPECT_EQ(read->value.value, length(value).value);
    EXPECT_EQ(read->value.unit, length(value).unit);
    ASSERT_EQ(read->next.has_value(), form == ReadingForm::Bracket);
    if (read->next) {
        EXPECT_EQ(read->next->value, length(next).value);
    }
}

INSTANTIATE_TEST_SUITE_P(All, ReadingTyped,
                         testing::Values(ReadingCase{"18", mm, ReadingForm::Exact, "0.18 mm", ""},
                                         ReadingCase{" 18 ", mm, ReadingForm::Exact, "0.18 mm", ""},
                                         ReadingCase{".012", inch, ReadingForm::Exact, "0.012 in", ""},
                                         ReadingCase{"12-14", inch, ReadingForm::Bracket, "0.012 in", "0.014 in"},
                                         ReadingCase{"  12-14", inch, ReadingForm::Bracket, "0.012 in", "0.014 in"},
                                         ReadingCase{"25 - 30", mm, ReadingForm::Bracket, "0.25 mm", "0.30 mm"},
                                         ReadingCase{"0.25-0.30 mm", inch, ReadingForm::Bracket, "0.25 mm", "0.30 mm"},
                                         ReadingCase{"0.25 to 0.30", mm, ReadingForm::Bracket, "0.25 mm", "0.30 mm"},
                                         ReadingCase{"0.25\u20130.30", mm, ReadingForm::Bracket, "0.25 mm", "0.30 mm"},
                                         ReadingCase{"0.25 mm - .012 in", mm, ReadingForm::Bracket, "0.25 mm", "0.012 in"},
                                         ReadingCase{"12-14 thou", mm, ReadingForm::Bracket, "12 thou", "14 thou"},
                                         ReadingCase{".25-.30", mm, ReadingForm::Bracket, "0.25 mm", "0.30 mm"}));

class ReadingRefused : public testing::TestWithParam<std::pair<const char *, ErrorKind>> {};

TEST_P(ReadingRefused, WithItsKind)
{
    const auto &[text, kind] = GetParam();
    const auto read = parseReading(text, mm);
    ASSERT_FALSE(read.has_value()) << text;
    EXPECT_EQ(read.error().kind, kind);
}

INSTANTIATE_TEST_SUITE_P(All, ReadingRefused,
                         testing::Values(std::pair{"", ErrorKind::EmptyText}, std::pair{"  ", ErrorKind::EmptyText},
                                         std::pair{"-5", ErrorKind::NegativeValue}, std::pair{"30-25", ErrorKind::BandUpsideDown},
                                         std::pair{"25-25", ErrorKind::BandUpsideDown}, std::pair{"x-25", ErrorKind::NotANumber}));

TEST(FarOff, BelowHalfOrAboveTwice)
{
    const Band<Length> usual = band("0.20-0.30 mm");
    const auto far = [&](std::string_view text) { return farOff(parseReading(text, mm).value(), usual); };
    EXPECT_TRUE(far("0.09"));
    EXPECT_FALSE(far("0.10"));
    EXPECT_FALSE(far("0.60"));
    EXPECT_TRUE(far("0.61"));
    EXPECT_TRUE(far("0.05-0.09"));
    EXPECT_FALSE(far("0.05-0.10"));
    EXPECT_TRUE(far("0.61-0.70"));
    EXPECT_FALSE(farOff(parseReading("9", mm).value(), band("at most 0.30 mm")));
    EXPECT_FALSE(farOff(parseReading("9.0 mm", mm).value(), band("at least 0.30 mm")));
}

} // namespace entry_tests
} // namespace asleft
