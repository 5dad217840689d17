#pragma once

#include <measure/parse.h>

namespace asleft {

enum class TemperatureUnit { Celsius, Fahrenheit };

struct TypedTemperature {
    Temperature value;
    TemperatureUnit unit = TemperatureUnit::Celsius;
    std::string text; ///< trimmed, as typed, without a unit if none was typed
    bool operator==(const TypedTemperature &) const = default;
};

/// Reads `20 °C`, `68 F`, `-5`, `82,5 °C`; a bare number counts in `fieldUnit`. Refuses what parse() refuses except a minus sign, and what
/// no engine stands at: below −60 °C (ValueTooSmall) or above 400 °C (ValueTooLarge).
Result<TypedTemperature> parseTemperature(std::string_view text, TemperatureUnit fieldUnit, DecimalMark mark = DecimalMark::Point);

/// The number with at most one decimal, and the symbol: "82.5 °C". Zero in one scale is not zero in the other.
std::string formatTemperature(Temperature temperature, TemperatureUnit unit, DecimalMark mark = DecimalMark::Point);
/// As typed, with the symbol added if none was typed.
std::string formatTyped(const TypedTemperature &typed);

std::string_view symbol(TemperatureUnit unit);     ///< "°C", "°F"
std::string_view storedName(TemperatureUnit unit); ///< "C", "F": kept in files, never changed
std::optional<TemperatureUnit> temperatureUnitStored(std::string_view name);

/// 212 °F is 100 °C.
constexpr double toCelsius(Temperature temperature)
{
    return static_cast<double>(temperature.smallest()) / 9000.0;
}
constexpr Temperature celsius(std::int64_t whole)
{
    return Temperature::ofSmallest(whole * 9000);
}

} // namespace asleft
