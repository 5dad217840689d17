#include <measure/temperature.h>

#include "shown.h"
#include "value.h"
#include "wholes.h"

#include <array>

namespace asleft {

namespace {

struct ScaleFacts {
    std::int64_t perDegree; ///< smallest units in one degree of the scale
    std::int64_t zero;      ///< degrees the scale shows at 0 °C
    std::string_view symbol;
    std::string_view storedName;
};

// 180 degrees Fahrenheit from ice to steam are 100 kelvins: five ninths of one each.
constexpr std::array<ScaleFacts, 2> scales{{{9000, 0, "°C", "C"}, {5000, 32, "°F", "F"}}};

constexpr Temperature coldest = celsius(-60);
constexpr Temperature hottest = celsius(400);

const ScaleFacts &scaleFacts(TemperatureUnit unit)
{
    return scales.at(static_cast<std::size_t>(unit));
}

bool takeAnyWord(Scanner &in, std::initializer_list<std::string_view> words)
{
    for (const std::string_view word : words)
        if (in.takeWord(word))
            return true;
    return false;
}

/// `°C`, `C`, `deg C`, `degC`, `Celsius`, and the same of the other scale.
std::optional<TemperatureUnit> takeUnit(Scanner &in)
{
    Scanner ahead = in;
    if (ahead.take(U'°') || takeAnyWord(ahead, {"deg", "degree", "degrees"})) {
        ahead.take(U'.');
        ahead.skipSpaces();
    }
    std::optional<TemperatureUnit> unit;
    if (takeAnyWord(ahead, {"c", "degc", "celsius"}))
        unit = TemperatureUnit::Celsius;
    else if (takeAnyWord(ahead, {"f", "degf", "fahrenheit"}))
        unit = TemperatureUnit::Fahrenheit;
    if (!unit || isDigit(ahead.peek()))
        return std::nullopt;
    in = ahead;
    return unit;
}

struct ReadTemperature {
    Rational number;
    std::optional<TemperatureUnit> unit;
};

/// A number, below zero too, and its unit, up to the end of the text.
Result<ReadTemperature> readTemperature(Scanner &in, DecimalMark mark)
{
    const bool below = in.take(U'-');
    in.skipSpaces();
    if (below && (in.peek() == U'-' || in.atEnd()))
        return fail(ErrorKind::NotANumber, in.text());
    NumberPlace place{in.position()};
    const auto number = readNumber(in, mark);
    if (!number)
        return tl::unexpected(number.error());
    place.end = in.position();
    in.skipSpaces();
    const auto unit = takeUnit(in);
    place.hasUnit = unit.has_value();
    in.skipSpaces();
    if (!in.atEnd())
        return refuseRest(in, place, "°C, °F");
    return ReadTemperature{below ? Rational(-number->numerator(), number->denominator()) : *number, unit};
}

std::optional<std::int64_t> smallestOf(const Rational &number, TemperatureUnit unit)
{
    const auto aboveZero = number.minus(Rational(scaleFacts(unit).zero));
    const auto exact = aboveZero ? aboveZero->times(Rational(scaleFacts(unit).perDegree)) : std::nullopt;
    return exact ? exact->rounded() : std::nullopt;
}

} // namespace

Result<TypedTemperature> parseTemperature(std::string_view text, TemperatureUnit fieldUnit, DecimalMark mark)
{
    const auto accepted = acceptText(text);
    if (!accepted)
        return tl::unexpected(accepted.error());
    Scanner in(*accepted);
    const auto read = readTemperature(in, mark);
    if (!read)
        return tl::unexpected(read.error());
    const TemperatureUnit unit = read->unit.value_or(fieldUnit);
    const auto smallest = smallestOf(read->number, unit);
    // Twelve digits always fit; what did not would be far off the scale.
    const bool tooSmall = smallest ? *smallest < coldest.smallest() : read->number.isNegative();
    if (tooSmall)
        return fail(ErrorKind::ValueTooSmall, *accepted, formatTemperature(coldest, unit));
    if (!smallest || *smallest > hottest.smallest())
        return fail(ErrorKind::ValueTooLarge, *accepted, formatTemperature(hottest, unit));
    return TypedTemperature{Temperature::ofSmallest(*smallest), unit, std::string(*accepted)};
}

std::string formatTemperature(Temperature temperature, TemperatureUnit unit, DecimalMark mark)
{
    const Int128 tenths = wholeNearest(Rational(temperature.smallest(), scaleFacts(unit).perDegree / 10)) + scaleFacts(unit).zero * 10;
    std::string number = tenths % 10 == 0 ? decimalText(tenths / 10, 0, mark) : decimalText(tenths, 1, mark);
    return number.append(" ").append(symbol(unit));
}

std::string formatTyped(const TypedTemperature &typed)
{
    const bool bare = !typed.text.empty() && isAsciiDigit(typed.text.back());
    return bare ? std::string(typed.text).append(" ").append(symbol(typed.unit)) : typed.text;
}

std::string_view symbol(TemperatureUnit unit)
{
    return scaleFacts(unit).symbol;
}

std::string_view storedName(TemperatureUnit unit)
{
    return scaleFacts(unit).storedName;
}

std::optional<TemperatureUnit> temperatureUnitStored(std::string_view name)
{
    for (const TemperatureUnit unit : {TemperatureUnit::Celsius, TemperatureUnit::Fahrenheit})
        if (storedName(unit) == name)
            return unit;
    return std::nullopt;
}

} // namespace asleft
