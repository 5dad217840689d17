#include "udunits.h"

#include <measure/temperature.h>

#include <gtest/gtest.h>

#include <cmath>

namespace asleft {
namespace temperature_tests {

constexpr auto degreesC = TemperatureUnit::Celsius;
constexpr auto degreesF = TemperatureUnit::Fahrenheit;

Temperature read(std::string_view text, TemperatureUnit field = degreesC)
{
    return parseTemperature(text, field).value().value;
}

TEST(Temperatures, SteamIsAHundred)
{
    // GNU units 2.22: 212 °F is 100 °C.
    EXPECT_EQ(read("212 °F"), read("100 °C"));
    EXPECT_EQ(read("32 F"), read("0 C"));
    EXPECT_EQ(read("-40 F"), read("-40 C"));
    EXPECT_EQ(read("212", degreesF), celsius(100));
    EXPECT_EQ(toCelsius(read("212 °F")), 100.0);
}

TEST(Temperatures, DifferencesHaveNoOffset)
{
    EXPECT_EQ((read("212 °F") - read("32 °F")).smallest(), celsius(100).smallest());
    EXPECT_EQ((read("69 °F") - read("68 °F")).smallest(), 5000) << "five ninths of a kelvin";
    EXPECT_EQ((read("21 °C") - read("20 °C")).smallest(), 9000);
}

TEST(Temperatures, AgreeWithUdunits)
{
    const Udunits theirUnits;
    ASSERT_TRUE(theirUnits.isThere()) << "the unit database of libudunits2 is missing";
    for (int tenths = -760; tenths <= 7520; tenths += 7) {
        const double fahrenheit = tenths / 10.0;
        const std::string text = std::string(tenths < 0 ? "-" : "") + std::to_string(std::abs(tenths) / 10) + "." +
                                 std::to_string(std::abs(tenths) % 10) + " °F";
        EXPECT_NEAR(toCelsius(read(text)), theirUnits.convert(fahrenheit, "degF", "degC"), 1e-9) << text;
    }
}

TEST(Temperatures, AreReadInEverySpelling)
{
    struct Row {
        const char *text;
        Temperature value;
        TemperatureUnit unit;
    };
    const Row rows[] = {
        {"20 °C", celsius(20), degreesC},
        {"20°C", celsius(20), degreesC},
        {"20 ºC", celsius(20), degreesC},
        {"20C", celsius(20), degreesC},
        {"20 c", celsius(20), degreesC},
        {"20 deg C", celsius(20), degreesC},
        {"20 deg. C", celsius(20), degreesC},
        {"20 degC", celsius(20), degreesC},
        {"20 Celsius", celsius(20), degreesC},
        {"20 degrees C", celsius(20), degreesC},
        {"68 F", celsius(20), degreesF},
        {"68 fahrenheit", celsius(20), degreesF},
        {"68\u00A0°F", celsius(20), degreesF},
        {"-5", celsius(-5), degreesC},
        {"−5", celsius(-5), degreesC},
        {"- 5 °C", celsius(-5), degreesC},
        {"82,5 °C", Temperature::ofSmallest(742'500), degreesC},
        {" 82.5 ", Temperature::ofSmallest(742'500), degreesC},
        {"1/2", Temperature::ofSmallest(4500), degreesC},
        {"0.001 F", Temperature::ofSmallest(5 - 160'000), degreesF},
        {"-0", Temperature(), degreesC},
        {"-60", celsius(-60), degreesC},
        {"-76 F", celsius(-60), degreesF},
        {"400", celsius(400), degreesC},
        {"752 °F", celsius(400), degreesF},
    };
    for (const Row &row : rows) {
        const auto typed = parseTemperature(row.text, degreesC);
        ASSERT_TRUE(typed) << row.text;
        EXPECT_EQ(typed->value, row.value) << row.text;
        EXPECT_EQ(typed->unit, row.unit) << row.text;
    }
}

TEST(Temperatures, AreRefusedWithTheirReason)
{
    const std::string units = "°C, °F";
    const std::pair<const char *, Error> rows[] = {
        {"", {ErrorKind::EmptyText, {}}},
        {" ", {ErrorKind::EmptyText, {}}},
        {"warm", {ErrorKind::NotANumber, {"warm"}}},
        {"°C", {ErrorKind::NotANumber, {"°C"}}},
        {"--5", {ErrorKind::NotANumber, {"--5"}}},
        {"-", {ErrorKind::NotANumber, {"-"}}},
        {"+5", {ErrorKind::NotANumber, {"+5"}}},
        {"1e2", {ErrorKind::NotANumber, {"1e2"}}},
        {"20 K", {ErrorKind::UnknownUnit, {"K", units}}},
        {"20 mm", {ErrorKind::UnknownUnit, {"mm", units}}},
        {"20°", {ErrorKind::UnknownUnit, {"°", units}}},
        {"20 cold", {ErrorKind::UnknownUnit, {"cold", units}}},
        {"20 C2", {ErrorKind::UnknownUnit, {"C2", units}}},
        {"20 %", {ErrorKind::UnknownUnit, {"%", units}}},
        {"20 20", {ErrorKind::TextLeftOver, {"20"}}},
        {"20 °C C", {ErrorKind::TextLeftOver, {"C"}}},
        {"20-25 °C", {ErrorKind::TextLeftOver, {"-25 °C"}}},
        {"1,250", {ErrorKind::AmbiguousNumber, {"1,250"}}},
        {"1234567890123", {ErrorKind::TooManyDigits, {"1234567890123"}}},
        {"-60.001 °C", {ErrorKind::ValueTooSmall, {"-60.001 °C", "-60 °C"}}},
        {"-77 F", {ErrorKind::ValueTooSmall, {"-77 F", "-76 °F"}}},
        {"-999999999999", {ErrorKind::ValueTooSmall, {"-999999999999", "-60 °C"}}},
        {"400.001", {ErrorKind::ValueTooLarge, {"400.001", "400 °C"}}},
        {"753 F", {ErrorKind::ValueTooLarge, {"753 F", "752 °F"}}},
        {"999999999999 F", {ErrorKind::ValueTooLarge, {"999999999999 F", "752 °F"}}},
    };
    for (const auto &[text, error] : rows) {
        const auto typed = parseTemperature(text, degreesC);
        ASSERT_FALSE(typed) << text;
        EXPECT_EQ(typed.error().kind, error.kind) << text;
        EXPECT_EQ(typed.error().arguments, error.arguments) << text;
    }
    EXPECT_EQ(parseTemperature(std::string(201, '1'), degreesC).error(), (Error{ErrorKind::TextTooLong, {"201", "200"}}));
    EXPECT_EQ(parseTemperature("1.250", degreesC, DecimalMark::Comma).error().kind, ErrorKind::AmbiguousNumber);
}

TEST(Temperatures, AreWrittenWithAtMostOneDecimal)
{
    EXPECT_EQ(formatTemperature(celsius(20), degreesC), "20 °C");
    EXPECT_EQ(formatTemperature(celsius(20), degreesF), "68 °F");
    EXPECT_EQ(formatTemperature(read("82.5"), degreesC), "82.5 °C");
    EXPECT_EQ(formatTemperature(read("82.5"), degreesC, DecimalMark::Comma), "82,5 °C");
    EXPECT_EQ(formatTemperature(read("82.25"), degreesC), "82.2 °C");
    EXPECT_EQ(formatTemperature(read("82.75"), degreesC), "82.8 °C");
    EXPECT_EQ(formatTemperature(Temperature(), degreesC), "0 °C");
    EXPECT_EQ(formatTemperature(Temperature(), degreesF), "32 °F");
    EXPECT_EQ(formatTemperature(celsius(-5), degreesC), "-5 °C");
    EXPECT_EQ(formatTemperature(read("-0.5"), degreesC), "-0.5 °C");
    EXPECT_EQ(formatTemperature(read("-0.04"), degreesC), "0 °C");
    EXPECT_EQ(formatTemperature(celsius(-60), degreesF), "-76 °F");
    EXPECT_EQ(formatTemperature(read("0 F"), degreesC), "-17.8 °C");
}

TEST(Temperatures, KeepTheirWords)
{
    EXPECT_EQ(formatTyped(*parseTemperature(" 20 ", degreesC)), "20 °C");
    EXPECT_EQ(formatTyped(*parseTemperature("68", degreesF)), "68 °F");
    EXPECT_EQ(formatTyped(*parseTemperature("82,5 C", degreesC)), "82,5 C");
    EXPECT_EQ(parseTemperature(" -5 ", degreesC)->text, "-5");
}

TEST(Temperatures, KeepTheirStoredNames)
{
    // Written in garage files: these may never change.
    EXPECT_EQ(storedName(degreesC), "C");
    EXPECT_EQ(storedName(degreesF), "F");
    EXPECT_EQ(temperatureUnitStored("C"), degreesC);
    EXPECT_EQ(temperatureUnitStored("F"), degreesF);
    for (const char *name : {"", "c", "°C", "K"})
        EXPECT_EQ(temperatureUnitStored(name), std::nullopt) << name;
}

} // namespace temperature_tests
} // namespace asleft
