#include <measure/parse.h>

#include <gtest/gtest.h>

namespace asleft {
namespace refuse_tests {

using namespace std::string_view_literals;

struct Row {
    std::string_view text;
    Error error;
};

const std::string lengths = "mm, in, thou";
const std::string torques = "N·m, lbf·ft, lbf·in, kgf·m, kgf·cm";

TEST(Refuse, LengthsThatAreNotOne)
{
    const Row rows[] = {
        {"", {ErrorKind::EmptyText, {}}},
        {"  \u00A0\t", {ErrorKind::EmptyText, {}}},
        {"abc", {ErrorKind::NotANumber, {"abc"}}},
        {"mm", {ErrorKind::NotANumber, {"mm"}}},
        {"nan mm", {ErrorKind::NotANumber, {"nan"}}},
        {"inf", {ErrorKind::NotANumber, {"inf"}}},
        {".", {ErrorKind::NotANumber, {"."}}},
        {".mm", {ErrorKind::NotANumber, {".mm"}}},
        {"5.", {ErrorKind::NotANumber, {"5."}}},
        {"5, mm", {ErrorKind::NotANumber, {"5,"}}},
        {"1.2.3", {ErrorKind::NotANumber, {"1.2.3"}}},
        {"1,250.5", {ErrorKind::NotANumber, {"1,250.5"}}},
        {"1.250,5 mm", {ErrorKind::NotANumber, {"1.250,5"}}},
        {"1..5", {ErrorKind::NotANumber, {"1..5"}}},
        {"+5 mm", {ErrorKind::NotANumber, {"+5"}}},
        {"-", {ErrorKind::NotANumber, {"-"}}},
        {"-x", {ErrorKind::NotANumber, {"-x"}}},
        {"--5", {ErrorKind::NotANumber, {"--5"}}},
        {"1e9 mm", {ErrorKind::NotANumber, {"1e9"}}},
        {"1e-3", {ErrorKind::NotANumber, {"1e-3"}}},
        {"0x1F", {ErrorKind::NotANumber, {"0x1F"}}},
        {"0.5/8 in", {ErrorKind::NotANumber, {"0.5/8"}}},
        {"5/8.5 in", {ErrorKind::NotANumber, {"5/8.5"}}},
        {"٣ mm", {ErrorKind::NotANumber, {"٣"}}},
        {"\xFF", {ErrorKind::NotANumber, {"\xFF"}}},
        {"\0005"sv, {ErrorKind::NotANumber, {std::string("\0005", 2)}}},
        {"±5", {ErrorKind::NotANumber, {"±5"}}},

        {"1,250", {ErrorKind::AmbiguousNumber, {"1,250"}}},
        {"12,345 mm", {ErrorKind::AmbiguousNumber, {"12,345 mm"}}},
        {"123,456", {ErrorKind::AmbiguousNumber, {"123,456"}}},

        {"-3", {ErrorKind::NegativeValue, {"-3"}}},
        {" - 3 mm ", {ErrorKind::NegativeValue, {"- 3 mm"}}},
        {"−3", {ErrorKind::NegativeValue, {"−3"}}},
        {"–.3", {ErrorKind::NegativeValue, {"–.3"}}},
        {"-0", {ErrorKind::NegativeValue, {"-0"}}},

        {"1234567890123", {ErrorKind::TooManyDigits, {"1234567890123"}}},
        {"0.123456789012 mm", {ErrorKind::TooManyDigits, {"0.123456789012 mm"}}},
        {"0000000000001", {ErrorKind::TooManyDigits, {"0000000000001"}}},
        {"1234567/8901234", {ErrorKind::TooManyDigits, {"1234567/8901234"}}},
        {"12345 1234/1234 in", {ErrorKind::TooManyDigits, {"12345 1234/1234 in"}}},

        {"5/0 in", {ErrorKind::DivisionByZero, {"5/0 in"}}},
        {"1 1/000", {ErrorKind::DivisionByZero, {"1 1/000"}}},

        {"5 cm", {ErrorKind::UnknownUnit, {"cm", lengths}}},
        {"5mil", {ErrorKind::UnknownUnit, {"mil", lengths}}},
        {"5 mmm", {ErrorKind::UnknownUnit, {"mmm", lengths}}},
        {"5 mm3", {ErrorKind::UnknownUnit, {"mm3", lengths}}},
        {"20 ft-lb", {ErrorKind::UnknownUnit, {"ft-lb", lengths}}},
        {"20 in-lb", {ErrorKind::UnknownUnit, {"in-lb", lengths}}},
        {"20 in lb", {ErrorKind::UnknownUnit, {"in lb", lengths}}},
        {"20 N·m", {ErrorKind::UnknownUnit, {"N·m", lengths}}},
        {"20°", {ErrorKind::UnknownUnit, {"°", lengths}}},
        {"20 %", {ErrorKind::UnknownUnit, {"%", lengths}}},
        {"5'", {ErrorKind::UnknownUnit, {"'", lengths}}},
        {"5 mm\xFF", {ErrorKind::UnknownUnit, {"mm\xFF", lengths}}},
        {"5 \xC0\xAF", {ErrorKind::UnknownUnit, {"\xC0\xAF", lengths}}},

        {"5 5", {ErrorKind::TextLeftOver, {"5"}}},
        {"5 mm x", {ErrorKind::TextLeftOver, {"x"}}},
        {"5 mm mm", {ErrorKind::TextLeftOver, {"mm"}}},
        {"5 mm -", {ErrorKind::TextLeftOver, {"-"}}},
        {"5+", {ErrorKind::TextLeftOver, {"+"}}},
        {"5/", {ErrorKind::TextLeftOver, {"/"}}},
        {"5/8/3", {ErrorKind::TextLeftOver, {"/3"}}},
        {"1-5/8 in", {ErrorKind::TextLeftOver, {"-5/8 in"}}},
        {"1.5 5/8", {ErrorKind::TextLeftOver, {"5/8"}}},
        {".012\"3", {ErrorKind::TextLeftOver, {"3"}}},
        {"0.2 ± 0.1", {ErrorKind::TextLeftOver, {"± 0.1"}}},
        {"0.2-0.3 mm", {ErrorKind::TextLeftOver, {"-0.3 mm"}}},
        {"5\0"sv, {ErrorKind::TextLeftOver, {std::string(1, '\0')}}},
        {"5\0 mm"sv, {ErrorKind::TextLeftOver, {std::string("\0 mm", 4)}}},

        {"1000000000 mm", {ErrorKind::ValueTooLarge, {"1000000000 mm", "10000 mm"}}},
        {"10000.000001 mm", {ErrorKind::ValueTooLarge, {"10000.000001 mm", "10000 mm"}}},
        {"394 in", {ErrorKind::ValueTooLarge, {"394 in", "393 in"}}},
        {"999999999999 in", {ErrorKind::ValueTooLarge, {"999999999999 in", "393 in"}}},
    };
    for (const Row &row : rows) {
        const auto typed = parse<Length>(row.text, LengthUnit::Millimetre);
        ASSERT_FALSE(typed) << row.text;
        EXPECT_EQ(typed.error().kind, row.error.kind) << row.text;
        EXPECT_EQ(typed.error().arguments, row.error.arguments) << row.text;
    }
}

TEST(Refuse, TorquesThatAreNotOne)
{
    const Row rows[] = {
        {"20 ft/lb", {ErrorKind::UnknownUnit, {"ft/lb", torques}}},
        {"20 ft", {ErrorKind::UnknownUnit, {"ft", torques}}},
        {"20 foot tons", {ErrorKind::UnknownUnit, {"foot", torques}}},
        {"20 mm", {ErrorKind::UnknownUnit, {"mm", torques}}},
        {"20\"", {ErrorKind::UnknownUnit, {"\"", torques}}},
        {"20 daN·m", {ErrorKind::UnknownUnit, {"daN·m", torques}}},
        {"-20 Nm", {ErrorKind::NegativeValue, {"-20 Nm"}}},
        {"20 Nm 30", {ErrorKind::TextLeftOver, {"30"}}},
        {"20 ft-lb-in", {ErrorKind::TextLeftOver, {"-in"}}},
        {"1,250 Nm", {ErrorKind::AmbiguousNumber, {"1,250 Nm"}}},
        {"100001", {ErrorKind::ValueTooLarge, {"100001", "100000 N·m"}}},
        {"999999999999 kgf·m", {ErrorKind::ValueTooLarge, {"999999999999 kgf·m", "10197 kgf·m"}}},
    };
    for (const Row &row : rows) {
        const auto typed = parse<Torque>(row.text, TorqueUnit::NewtonMetre);
        ASSERT_FALSE(typed) << row.text;
        EXPECT_EQ(typed.error().kind, row.error.kind) << row.text;
        EXPECT_EQ(typed.error().arguments, row.error.arguments) << row.text;
    }
}

TEST(Refuse, AsksWhatAPointMeansOnlyWhereACommaIsTheDecimalMark)
{
    struct MarkRow {
        const char *text;
        bool withPoint;
        bool withComma;
    };
    const MarkRow rows[] = {
        {"1,250", false, false},  {"999,999", false, false}, {"1.250", true, false}, {"12.345", true, false}, {"123.456", true, false},
        {"1234.567", true, true}, {"0.250", true, true},     {"0,250", true, true},  {".250", true, true},    {"1.25", true, true},
        {"1.2500", true, true},   {"1250", true, true},      {"1,25", true, true},   {"10.5", true, true},    {"012,345", true, true},
    };
    for (const MarkRow &row : rows) {
        EXPECT_EQ(parse<Length>(row.text, LengthUnit::Millimetre, DecimalMark::Point).has_value(), row.withPoint) << row.text;
        EXPECT_EQ(parse<Length>(row.text, LengthUnit::Millimetre, DecimalMark::Comma).has_value(), row.withComma) << row.text;
    }
}

TEST(Refuse, OverlongTextUnread)
{
    std::string longest(longestTypedText - 4, ' ');
    longest += "5 mm";
    EXPECT_TRUE(parse<Length>(longest, LengthUnit::Millimetre));
    EXPECT_EQ(parse<Length>(" " + longest, LengthUnit::Millimetre).error(), (Error{ErrorKind::TextTooLong, {"201", "200"}}));
}

} // namespace refuse_tests
} // namespace asleft
