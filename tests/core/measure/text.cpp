// Typed text, whatever kinds of blanks and dashes stand in it.
#include "blanks.h"

#include <measure/band.h>
#include <measure/parse.h>
#include <measure/temperature.h>
#include <measure/text.h>

namespace asleft {
namespace text_tests {

using typing::blanks;
using typing::with;

TEST(Text, EveryBlankIsOne)
{
    for (const std::string_view blank : blanks) {
        EXPECT_TRUE(isBlank(with(blank, "__"))) << blank;
        EXPECT_EQ(trimmed(with(blank, "_a_")), "a") << blank;
        EXPECT_EQ(inOneLine(with(blank, "__a__b_")), "a b") << blank;
        EXPECT_EQ(plainText(with(blank, "__a__b_")), "a b") << blank;
    }
}

TEST(Text, LookAlikesMeanTheSame)
{
    EXPECT_EQ(plainText("1–3−4 5″ 5⁄8 N⋅m 90º"), "1-3-4 5\" 5/8 N·m 90°");
    EXPECT_EQ(plainWords("M10 × 1,25"), "m10 x 1.25");
    EXPECT_EQ(inOneLine("1–3"), "1–3") << "kept as typed";
}

TEST(Text, WhatIsNoTextStaysAsItIs)
{
    EXPECT_EQ(plainText("a\xFF\xC2"), "a\xFF\xC2");
    EXPECT_EQ(inOneLine("\xE2\x80"), "\xE2\x80");
}

TEST(Text, IsTakenApart)
{
    EXPECT_EQ(wordsOf("1, 2,,3", " ,"), (std::vector<std::string_view>{"1", "2", "3"}));
    EXPECT_EQ(piecesOf("1 2 / 3 /", '/'), (std::vector<std::string_view>{"1 2", "3", ""}));
    EXPECT_TRUE(sameWord("Ex", "eX"));
    EXPECT_FALSE(sameWord("EX", "E"));
}

/// Around a value and between its number and its unit.
TEST(Text, ValuesTakeEveryBlank)
{
    for (const std::string_view blank : blanks) {
        const auto lash = parse<Length>(with(blank, "_0.25_mm_"), LengthUnit::Inch);
        ASSERT_TRUE(lash) << blank;
        EXPECT_EQ(lash->value, micrometres(250));
        EXPECT_TRUE(parseBand<Torque>(with(blank, "_40_N·m_±_5_%_"), TorqueUnit::PoundFoot)) << blank;
        EXPECT_TRUE(parseBand<Length>(with(blank, "0.20_to_0.30_mm"), LengthUnit::Inch)) << blank;
        EXPECT_TRUE(parse<Length>(with(blank, "1_5/8_in"), LengthUnit::Millimetre)) << blank;
        EXPECT_TRUE(parseTemperature(with(blank, "_20_°C_"), TemperatureUnit::Fahrenheit)) << blank;
    }
}

} // namespace text_tests
} // namespace asleft
