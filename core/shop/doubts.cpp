// What is asked once more, and never refused: values in a unit that was hardly meant, an engine said to be cold that cannot be.
#include <shop/entry.h>

#include <algorithm>

namespace asleft {

namespace {

std::optional<Typed<Length>> sameDigits(const Typed<Length> &typed, LengthUnit other)
{
    const auto value = sameDigits(typed.value, typed.unit, other);
    return value ? std::optional(Typed<Length>{*value, other, typed.text}) : std::nullopt;
}

std::optional<ReadingText> sameDigits(const ReadingText &reading, LengthUnit other)
{
    const auto value = sameDigits(reading.value, other);
    const auto next = reading.next ? sameDigits(*reading.next, other) : std::nullopt;
    if (!value || reading.next.has_value() != next.has_value())
        return std::nullopt;
    return ReadingText{reading.form, *value, next};
}

bool farOff(const ReadingText &reading, const SpecBand<Length> &bands)
{
    return farOff(reading, bands.printedFor(reading.value.unit));
}

/// Units a manual printed come first: where two would do, one of them is likelier meant.
std::vector<LengthUnit> likeliestFirst(const SpecBand<Length> &bands)
{
    std::vector<LengthUnit> units{bands.first.unit};
    if (bands.second)
        units.push_back(bands.second->unit);
    for (const LengthUnit unit : lengthUnits)
        if (std::ranges::find(units, unit) == units.end())
            units.push_back(unit);
    return units;
}

/// Common practice, no source: no lash is asked that is smaller or larger.
bool isLash(Length value)
{
    return micrometres(20) <= value && value <= micrometres(2000);
}

/// The band's largest number; its low end may be next to nothing where a tolerance is wide.
std::optional<Length> largestOf(const Band<Length> &band)
{
    return band.high ? band.high : band.low;
}

} // namespace

std::optional<Length> sameDigits(Length value, LengthUnit typed, LengthUnit other)
{
    const Rational here = factor(typed);
    const auto number = Rational(value.smallest()).times(Rational(here.denominator(), here.numerator()));
    const auto exact = number ? number->times(factor(other)) : std::nullopt;
    const auto smallest = exact ? exact->rounded() : std::nullopt;
    // farOff() doubles what it is given.
    constexpr std::int64_t most = 1'000'000'000'000'000;
    return smallest && *smallest <= most ? std::optional(Length::ofSmallest(*smallest)) : std::nullopt;
}

bool doubtedCondition(EngineCondition condition, const std::optional<Temperature> &temperature, std::optional<std::int64_t> minutesSinceRun)
{
    constexpr Temperature between = celsius(50);
    constexpr std::int64_t cooledDown = 120;
    if (condition == EngineCondition::Cold)
        return (temperature && *temperature > between) || (minutesSinceRun && *minutesSinceRun < cooledDown);
    return (temperature && *temperature < between) || (minutesSinceRun && *minutesSinceRun > cooledDown);
}

std::optional<LengthUnit> unitMeant(const ReadingText &reading, const SpecBand<Length> &bands)
{
    // Of a bracket whose ends were typed in two units there are no "same digits".
    if ((reading.next && reading.next->unit != reading.value.unit) || !farOff(reading, bands))
        return std::nullopt;
    for (const LengthUnit unit : likeliestFirst(bands)) {
        const auto meant = sameDigits(reading, unit);
        if (unit != reading.value.unit && meant && !farOff(*meant, bands))
            return unit;
    }
    return std::nullopt;
}

std::optional<LengthUnit> unitMeant(const Band<Length> &lash)
{
    const auto largest = largestOf(lash);
    if (!largest || isLash(*largest))
        return std::nullopt;
    for (const LengthUnit unit : lengthUnits) {
        const auto meant = sameDigits(*largest, lash.unit, unit);
        if (unit != lash.unit && meant && isLash(*meant))
            return unit;
    }
    return std::nullopt;
}

} // namespace asleft
