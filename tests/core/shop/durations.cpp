// Times and turns as they are typed.
#include "story.h"

#include <shop/entry.h>

namespace asleft {
namespace durations_tests {

struct Minutes {
    const char *text;
    std::int64_t minutes;
};

class SinceRun : public testing::TestWithParam<Minutes> {};

TEST_P(SinceRun, Read)
{
    const auto read = parseSinceRun(GetParam().text);
    ASSERT_TRUE(read.has_value()) << GetParam().text;
    EXPECT_EQ(*read, GetParam().minutes) << GetParam().text;
}

INSTANTIATE_TEST_SUITE_P(All, SinceRun,
                         testing::Values(Minutes{"3 h", 180}, Minutes{"2 h 30", 150}, Minutes{"2 h 30 min", 150}, Minutes{"2h30", 150},
                                         Minutes{"2h30min", 150}, Minutes{"45 min", 45}, Minutes{"1.5 h", 90}, Minutes{"1,5 h", 90},
                                         Minutes{"1/2 h", 30}, Minutes{"3", 180}, Minutes{"1.5", 90}, Minutes{" 3 ", 180},
                                         Minutes{"3\u00A0h", 180}, Minutes{"14 hours", 840}, Minutes{"1 Hour", 60}, Minutes{"2 HRS", 120},
                                         Minutes{"20 minutes", 20}, Minutes{"1 hr 5 mins", 65}, Minutes{"0", 0}, Minutes{"0 min", 0},
                                         Minutes{"1 h 90", 150}, Minutes{"1/3 h", 20}, Minutes{"0.5 min", 0}, Minutes{"1.5 min", 2},
                                         Minutes{"8760 h", 525'600}, Minutes{"525600 min", 525'600}, Minutes{"8760", 525'600}));

struct Refused {
    const char *text;
    Error error;
};

class SinceRunRefused : public testing::TestWithParam<Refused> {};

TEST_P(SinceRunRefused, WithItsReason)
{
    const auto read = parseSinceRun(GetParam().text);
    ASSERT_FALSE(read.has_value()) << GetParam().text;
    EXPECT_EQ(read.error().kind, GetParam().error.kind) << GetParam().text;
    EXPECT_EQ(read.error().arguments, GetParam().error.arguments) << GetParam().text;
}

INSTANTIATE_TEST_SUITE_P(
    All, SinceRunRefused,
    testing::Values(Refused{"", {ErrorKind::EmptyText, {}}}, Refused{" \t", {ErrorKind::EmptyText, {}}},
                    Refused{"h", {ErrorKind::NotANumber, {"h"}}}, Refused{"yesterday", {ErrorKind::NotANumber, {"yesterday"}}},
                    Refused{"-1 h", {ErrorKind::NegativeValue, {"-1"}}}, Refused{"3 d", {ErrorKind::UnknownUnit, {"d", "h, min"}}},
                    Refused{"3 m", {ErrorKind::UnknownUnit, {"m", "h, min"}}}, // metres?
                    Refused{"2:30", {ErrorKind::TextLeftOver, {":30"}}}, Refused{"2 30", {ErrorKind::TextLeftOver, {"30"}}},
                    Refused{"30 min 2 h", {ErrorKind::TextLeftOver, {"2 h"}}}, Refused{"2 h 3 h", {ErrorKind::TextLeftOver, {"3 h"}}},
                    Refused{"2 h 30 min 5", {ErrorKind::TextLeftOver, {"5"}}}, Refused{"2 h x", {ErrorKind::NotANumber, {"x"}}},
                    Refused{"2 h ago", {ErrorKind::NotANumber, {"ago"}}}, Refused{"1,250 h", {ErrorKind::AmbiguousNumber, {"1,250"}}},
                    Refused{"1/0", {ErrorKind::DivisionByZero, {"1/0"}}},
                    Refused{"1234567890123", {ErrorKind::TooManyDigits, {"1234567890123"}}},
                    Refused{"8761", {ErrorKind::ValueTooLarge, {"8761", "8760 h"}}},
                    Refused{"8760 h 1", {ErrorKind::ValueTooLarge, {"8760 h 1", "8760 h"}}},
                    Refused{"999999999999 h", {ErrorKind::ValueTooLarge, {"999999999999 h", "8760 h"}}}));

TEST(SinceRunText, Overlong)
{
    EXPECT_EQ(parseSinceRun(std::string(201, '1')).error(), (Error{ErrorKind::TextTooLong, {"201", "200"}}));
    EXPECT_EQ(parseSinceRun("1.250 h", DecimalMark::Comma).error().kind, ErrorKind::AmbiguousNumber);
}

ScrewText waits(std::string bleedDown, AdjusterKind kind = AdjusterKind::Hydraulic)
{
    return {"", "", kind, std::move(bleedDown)};
}

class BleedDown : public testing::TestWithParam<Minutes> {};

TEST_P(BleedDown, Read)
{
    const auto read = readBleedDown(waits(GetParam().text));
    ASSERT_TRUE(read.has_value()) << GetParam().text;
    ASSERT_TRUE(*read) << GetParam().text;
    EXPECT_EQ(**read, std::chrono::minutes(GetParam().minutes)) << GetParam().text;
}

INSTANTIATE_TEST_SUITE_P(All, BleedDown,
                         testing::Values(Minutes{"15", 15}, Minutes{"15 min", 15}, Minutes{"1 h", 60}, Minutes{"1 h 30", 90},
                                         Minutes{"0.5 h", 30}, Minutes{"1440", 1440}, Minutes{"24 h", 1440}, Minutes{"0", 0}));

TEST(BleedDownText, NoneIsNoWait)
{
    for (const char *text : {"", "  "}) {
        const auto read = readBleedDown(waits(text));
        ASSERT_TRUE(read.has_value());
        EXPECT_FALSE(*read);
    }
    const auto screws = readBleedDown(waits("fifteen", AdjusterKind::Screw));
    ASSERT_TRUE(screws.has_value()) << "screws have none, whatever stands there";
    EXPECT_FALSE(*screws);
}

TEST(BleedDownText, Refused)
{
    for (const char *text : {"fifteen", "1441", "24 h 1", "-5", "15 s", "1,250", "15 min x", "1e2"})
        EXPECT_EQ(readBleedDown(waits(text)).error(), (Error{ErrorKind::BleedDownUnread, {text}}));
    EXPECT_EQ(readBleedDown(waits(std::string(201, '1'))).error().kind, ErrorKind::BleedDownUnread);
}

TEST(Turns, Read)
{
    const std::pair<const char *, Angle> rows[] = {
        {"3/4", degrees(270)}, {"3/4 turn", degrees(270)}, {"270°", degrees(270)},   {"1", degrees(360)}, {"1 1/2", degrees(540)},
        {"0,5", degrees(180)}, {"10", degrees(3600)},      {"3600°", degrees(3600)}, {"0", Angle()},      {"2 turns", degrees(720)}};
    for (const auto &[text, angle] : rows) {
        const auto read = parseTurns(text);
        ASSERT_TRUE(read.has_value()) << text;
        EXPECT_EQ(read->value, angle) << text;
        EXPECT_EQ(read->text, text);
    }
}

TEST(Turns, Refused)
{
    EXPECT_EQ(parseTurns("10.01").error(), (Error{ErrorKind::ValueTooLarge, {"10.01", "10.00 turn"}}));
    EXPECT_EQ(parseTurns("3601°").error(), (Error{ErrorKind::ValueTooLarge, {"3601°", "3600°"}}));
    EXPECT_EQ(parseTurns("270").error(), (Error{ErrorKind::ValueTooLarge, {"270", "10.00 turn"}})) << "degrees without their sign";
    EXPECT_EQ(parseTurns("").error().kind, ErrorKind::EmptyText);
    EXPECT_EQ(parseTurns("-1").error().kind, ErrorKind::NegativeValue);
    EXPECT_EQ(parseTurns("0.3 mm").error(), (Error{ErrorKind::UnknownUnit, {"mm", "°, turn"}}));
    EXPECT_EQ(parseTurns("1,250", DecimalMark::Comma).error().kind, ErrorKind::AmbiguousNumber);
    EXPECT_EQ(parseTurns("some").error().kind, ErrorKind::NotANumber);
}

} // namespace durations_tests
} // namespace asleft
