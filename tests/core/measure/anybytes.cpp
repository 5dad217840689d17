#include <measure/format.h>
#include <measure/judge.h>
#include <measure/temperature.h>

#include <gtest/gtest.h>

#include <random>

namespace asleft {
namespace anybytes_tests {

constexpr int rounds = 20'000;

/// Pieces that make text which nearly is a value, so that accepting paths are reached, with plain bytes between.
const std::string &anyPiece(std::mt19937 &random)
{
    static const std::string pieces[] = {"0",  "1",      "2",   "5",   "25", "250",   ".",    ",",    "/",    " ",    "-",
                                         "–",  "+",      "±",   "+/-", "%",  "mm",    "in",   "thou", "\"",   "″",    "N·m",
                                         "Nm", "ft-lb",  "lbf", "·",   "ft", "kgf·m", "°",    "to",   "min ", "max ", "at least ",
                                         "≥",  "\u00A0", "e9",  "C",   "°F", "deg",   "turn", "tr"};
    return pieces[std::uniform_int_distribution<std::size_t>(0, std::size(pieces) - 1)(random)];
}

std::string anyText(std::mt19937 &random)
{
    std::string text;
    const int length = std::uniform_int_distribution<int>(0, 9)(random);
    for (int i = 0; i < length; ++i) {
        if (std::uniform_int_distribution<int>(0, 19)(random) == 0)
            text += static_cast<char>(std::uniform_int_distribution<int>(0, 255)(random));
        else
            text += anyPiece(random);
    }
    return text;
}

std::string anyBytes(std::mt19937 &random)
{
    std::string bytes(std::uniform_int_distribution<std::size_t>(0, 220)(random), '\0');
    for (char &byte : bytes)
        byte = static_cast<char>(std::uniform_int_distribution<int>(0, 255)(random));
    return bytes;
}

DecimalMark anyMark(std::mt19937 &random)
{
    return random() % 2 == 0 ? DecimalMark::Point : DecimalMark::Comma;
}

/// What was accepted must say the same when written again, in its own words and in ours.
template <class Q>
void expectSteady(const Typed<Q> &typed, DecimalMark mark)
{
    EXPECT_GE(typed.value, Q()) << typed.text;
    const auto ownWords = parse<Q>(formatTyped(typed), typed.unit, mark);
    ASSERT_TRUE(ownWords) << typed.text;
    EXPECT_EQ(ownWords->value, typed.value) << typed.text;
    EXPECT_EQ(ownWords->unit, typed.unit) << typed.text;
    const auto ours = parse<Q>(formatExact(typed.value, typed.unit, mark), typed.unit, mark);
    if (ours) {
        EXPECT_EQ(ours->value, typed.value) << typed.text;
    } else {
        EXPECT_EQ(ours.error().kind, ErrorKind::TooManyDigits) << typed.text;
    }
}

template <class Q>
void expectSound(const Band<Q> &band, Unit<Q> fieldUnit, DecimalMark mark)
{
    EXPECT_TRUE(band.low || band.high) << band.text;
    EXPECT_FALSE(band.low && band.high && *band.high < *band.low) << band.text;
    EXPECT_EQ(parseBand<Q>(band.text, fieldUnit, mark), band);
    for (const auto &limit : {band.low, band.high, band.nominal}) {
        if (limit) {
            EXPECT_EQ(judge(Interval<Q>::point(*limit), band), Verdict::Inside) << band.text;
        }
    }
    EXPECT_FALSE(formatBand(band, fieldUnit, mark).empty());
}

template <class Q>
int tryAll(const std::string &text, Unit<Q> fieldUnit, DecimalMark mark)
{
    const auto typed = parse<Q>(text, fieldUnit, mark);
    if (typed)
        expectSteady<Q>(*typed, mark);
    const auto band = parseBand<Q>(text, fieldUnit, mark);
    if (band)
        expectSound<Q>(*band, fieldUnit, mark);
    return (typed ? 1 : 0) + (band ? 1 : 0);
}

int tryTemperature(const std::string &text, DecimalMark mark)
{
    const auto typed = parseTemperature(text, TemperatureUnit::Fahrenheit, mark);
    if (!typed)
        return 0;
    EXPECT_TRUE(typed->value >= celsius(-60) && typed->value <= celsius(400)) << text;
    const auto ownWords = parseTemperature(formatTyped(*typed), TemperatureUnit::Celsius, mark);
    EXPECT_TRUE(ownWords && ownWords->value == typed->value && ownWords->unit == typed->unit) << text;
    return 1;
}

int tryEveryReader(const std::string &text, DecimalMark mark)
{
    (void)parseSignedAngle(text, mark);
    (void)parseNumber(text, mark);
    (void)parseInSteps(text, LengthUnit::Inch, mark);
    return tryAll<Length>(text, LengthUnit::Inch, mark) + tryAll<Torque>(text, TorqueUnit::PoundFoot, mark) +
           tryAll<Angle>(text, AngleUnit::Turn, mark) + tryTemperature(text, mark);
}

TEST(AnyBytes, NearlyValuesAreReadSteadilyOrRefused)
{
    std::mt19937 random(42);
    int accepted = 0;
    int temperatures = 0;
    for (int i = 0; i < rounds; ++i) {
        const std::string text = anyText(random);
        const DecimalMark mark = anyMark(random);
        accepted += tryEveryReader(text, mark);
        temperatures += tryTemperature(text, mark);
    }
    EXPECT_GT(accepted, 500); // else the texts have missed the accepting paths
    EXPECT_GT(temperatures, 100);
}

TEST(AnyBytes, BytesAreRefused)
{
    std::mt19937 random(43);
    for (int i = 0; i < rounds / 10; ++i)
        tryEveryReader(anyBytes(random), anyMark(random));
}

} // namespace anybytes_tests
} // namespace asleft
