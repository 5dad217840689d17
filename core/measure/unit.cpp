#include <measure/unit.h>

#include "wholes.h"

#include <array>

namespace asleft {

namespace {

struct UnitFacts {
    std::int64_t numerator; ///< of the factor to the smallest unit
    int decimals;           ///< how many digits of the numerator stand behind its decimal point
    UnitSystem system;
    std::string_view symbol;
    std::string_view storedName;
};

constexpr std::array<UnitFacts, 3> lengthFacts{{
    {1'000'000, 0, UnitSystem::Metric, "mm", "mm"},
    {25'400'000, 0, UnitSystem::Inch, "in", "in"},
    {25'400, 0, UnitSystem::Inch, "thou", "thou"},
}};

// A pound-foot is 4.448 221 615 260 5 N times 0.3048 m; a pound-inch times 0.0254 m.
constexpr std::array<UnitFacts, 5> torqueFacts{{
    {1'000'000'000, 0, UnitSystem::Metric, "N·m", "Nm"},
    {13'558'179'483'314'004, 7, UnitSystem::Inch, "lbf·ft", "lbf.ft"},
    {1'129'848'290'276'167, 7, UnitSystem::Inch, "lbf·in", "lbf.in"},
    {9'806'650'000, 0, UnitSystem::Metric, "kgf·m", "kgf.m"},
    {98'066'500, 0, UnitSystem::Metric, "kgf·cm", "kgf.cm"},
}};

// An angle is read the same everywhere; it has to be given some system.
constexpr std::array<UnitFacts, 2> angleFacts{{
    {anglePerDegree, 0, UnitSystem::Metric, "°", "deg"},
    {360 * anglePerDegree, 0, UnitSystem::Metric, "turn", "turn"},
}};

const UnitFacts &facts(LengthUnit unit)
{
    return lengthFacts.at(static_cast<std::size_t>(unit));
}
const UnitFacts &facts(TorqueUnit unit)
{
    return torqueFacts.at(static_cast<std::size_t>(unit));
}
const UnitFacts &facts(AngleUnit unit)
{
    return angleFacts.at(static_cast<std::size_t>(unit));
}

Rational factorOf(const UnitFacts &unit)
{
    return {unit.numerator, powerOfTen(unit.decimals)};
}

template <class U, std::size_t Count>
std::optional<U> stored(const std::array<UnitFacts, Count> &units, std::string_view name)
{
    for (std::size_t i = 0; i < Count; ++i) {
        if (units.at(i).storedName == name)
            return static_cast<U>(i);
    }
    return std::nullopt;
}

template <std::size_t Count>
std::string symbolList(const std::array<UnitFacts, Count> &units)
{
    std::string list;
    for (const UnitFacts &unit : units)
        list.append(list.empty() ? "" : ", ").append(unit.symbol);
    return list;
}

} // namespace

UnitSystem systemOf(LengthUnit unit)
{
    return facts(unit).system;
}
UnitSystem systemOf(TorqueUnit unit)
{
    return facts(unit).system;
}
UnitSystem systemOf(AngleUnit unit)
{
    return facts(unit).system;
}

Rational factor(LengthUnit unit)
{
    return factorOf(facts(unit));
}
Rational factor(TorqueUnit unit)
{
    return factorOf(facts(unit));
}
Rational factor(AngleUnit unit)
{
    return factorOf(facts(unit));
}

std::string_view symbol(LengthUnit unit)
{
    return facts(unit).symbol;
}
std::string_view symbol(TorqueUnit unit)
{
    return facts(unit).symbol;
}
std::string_view symbol(AngleUnit unit)
{
    return facts(unit).symbol;
}

std::string_view storedName(LengthUnit unit)
{
    return facts(unit).storedName;
}
std::string_view storedName(TorqueUnit unit)
{
    return facts(unit).storedName;
}
std::string_view storedName(AngleUnit unit)
{
    return facts(unit).storedName;
}

std::optional<LengthUnit> lengthUnitStored(std::string_view name)
{
    return stored<LengthUnit>(lengthFacts, name);
}
std::optional<TorqueUnit> torqueUnitStored(std::string_view name)
{
    return stored<TorqueUnit>(torqueFacts, name);
}
std::optional<AngleUnit> angleUnitStored(std::string_view name)
{
    return stored<AngleUnit>(angleFacts, name);
}

template <>
std::string acceptedUnits<Length>()
{
    return symbolList(lengthFacts);
}

template <>
std::string acceptedUnits<Torque>()
{
    return symbolList(torqueFacts);
}

template <>
std::string acceptedUnits<Angle>()
{
    return symbolList(angleFacts);
}

} // namespace asleft
