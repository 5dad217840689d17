#pragma once

#include <measure/quantity.h>
#include <measure/rational.h>

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace asleft {

enum class LengthUnit { Millimetre, Inch, Thou };
/// All of them, in the order they are offered.
inline constexpr std::array lengthUnits{LengthUnit::Millimetre, LengthUnit::Inch, LengthUnit::Thou};
enum class TorqueUnit { NewtonMetre, PoundFoot, PoundInch, KilogramForceMetre, KilogramForceCentimetre };
enum class AngleUnit { Degree, Turn };

/// Which of the two systems manuals are printed in a unit belongs to.
enum class UnitSystem { Metric, Inch };

/// The unit type that goes with a quantity.
template <class Q>
struct UnitOf;
template <>
struct UnitOf<Length> {
    using Type = LengthUnit;
};
template <>
struct UnitOf<Torque> {
    using Type = TorqueUnit;
};
template <>
struct UnitOf<Angle> {
    using Type = AngleUnit;
};
template <class Q>
using Unit = typename UnitOf<Q>::Type;

UnitSystem systemOf(LengthUnit unit);
UnitSystem systemOf(TorqueUnit unit);
UnitSystem systemOf(AngleUnit unit);

/// How many of the quantity's smallest unit make one of `unit`, exactly.
/// From 1 in = 25.4 mm, 1 lbf = 4.448 221 615 260 5 N, 1 kgf = 9.806 65 N (NIST SP 811 app. B).
Rational factor(LengthUnit unit);
Rational factor(TorqueUnit unit);
Rational factor(AngleUnit unit);

/// The symbol shown to people: "mm", "in", "thou", "N·m", "lbf·ft", "lbf·in", "kgf·m", "kgf·cm", "°", "turn".
std::string_view symbol(LengthUnit unit);
std::string_view symbol(TorqueUnit unit);
std::string_view symbol(AngleUnit unit);

/// The name kept in files, never shown: "mm", "in", "thou", "Nm", "lbf.ft", "lbf.in", "kgf.m", "kgf.cm", "deg", "turn". It never changes.
std::string_view storedName(LengthUnit unit);
std::string_view storedName(TorqueUnit unit);
std::string_view storedName(AngleUnit unit);
std::optional<LengthUnit> lengthUnitStored(std::string_view name);
std::optional<TorqueUnit> torqueUnitStored(std::string_view name);
std::optional<AngleUnit> angleUnitStored(std::string_view name);

/// The unit a spelling means ("\"", "in", "thou", "N·m", "Nm", "ft-lb", "lbf·ft", "in-lb", …), letters in any case where that is
/// unambiguous; nothing if it means none.
template <class Q>
std::optional<Unit<Q>> unitSpelled(std::string_view spelling);
template <>
std::optional<LengthUnit> unitSpelled<Length>(std::string_view spelling);
template <>
std::optional<TorqueUnit> unitSpelled<Torque>(std::string_view spelling);
template <>
std::optional<AngleUnit> unitSpelled<Angle>(std::string_view spelling);

/// The symbols accepted for a quantity, comma separated, for the sentence that refuses another.
template <class Q>
std::string acceptedUnits();

} // namespace asleft
