#pragma once

#include <measure/parse.h>

#include <string>

namespace asleft {

/// How the digits after the last one shown are dropped.
enum class Rounding { HalfEven, Down, Up };

/// How many decimals a unit is read to on the bench: mm 2, in 3, thou 0, N·m 1, lbf·ft 0, lbf·in 0, kgf·m 2, kgf·cm 0, ° 0, turn 2.
int stepDecimals(LengthUnit unit);
int stepDecimals(TorqueUnit unit);
int stepDecimals(AngleUnit unit);

/// One reading step of a unit: 0.01 mm, 0.001 in, 1 thou.
Length stepOf(LengthUnit unit);

/// The number in `unit` with exactly `decimals` decimals, without the unit's symbol.
template <class Q>
std::string formatNumber(Q value, Unit<Q> unit, int decimals, DecimalMark mark = DecimalMark::Point,
                         Rounding rounding = Rounding::HalfEven);

/// The shortest number in `unit`, of at least the unit's step decimals, that parse() reads back as exactly `value`, with the
/// symbol: "0.18 mm". parse(formatExact(x)) == x for every x ≥ 0 of at most twelve digits.
template <class Q>
std::string formatExact(Q value, Unit<Q> unit, DecimalMark mark = DecimalMark::Point);

/// A typed value in its own words: its text, with the symbol added if none was typed.
template <class Q>
std::string formatTyped(const Typed<Q> &typed);

} // namespace asleft
