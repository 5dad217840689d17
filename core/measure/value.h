#pragma once

#include "number.h"

#include <measure/parse.h>

namespace asleft {

/// The largest value a field takes: far above any engine, far below what overflows.
template <class Q>
constexpr Q largest = Q();
template <>
inline constexpr Length largest<Length> = micrometres(10'000'000);
template <>
inline constexpr Torque largest<Torque> = Torque::ofSmallest(100'000'000'000'000);
template <>
inline constexpr Angle largest<Angle> = degrees(10'000);

/// A number and its unit, still exact.
template <class Q>
struct ReadValue {
    Rational number;
    std::optional<Unit<Q>> unit; ///< empty where none was typed
    std::size_t begin = 0;       ///< where the number begins in the text
    std::size_t numberEnd = 0;
    bool isPercent = false;
};

/// Reads a number, and a unit of Q if one follows it, and stops right behind; refuses a unit of another quantity.
template <class Q>
Result<ReadValue<Q>> readValue(Scanner &in, DecimalMark mark);

/// Where a number stood in the text, and whether it had a unit.
struct NumberPlace {
    std::size_t begin = 0;
    std::size_t end = 0;
    bool hasUnit = false;
};

/// Why what follows a number that was read cannot be understood; `accepted` are the units it could have had. \pre the scanner stands on it
tl::unexpected<Error> refuseRest(const Scanner &in, const NumberPlace &last, const std::string &accepted);
template <class Q>
tl::unexpected<Error> refuseRest(const Scanner &in, const ReadValue<Q> &last)
{
    return refuseRest(in, {last.begin, last.numberEnd, last.unit || last.isPercent}, acceptedUnits<Q>());
}

/// The one rounding of an exact value in Q's smallest unit; nothing in it means it did not fit 128 bits.
template <class Q>
Result<Q> roundOnce(const std::optional<Rational> &exact, Unit<Q> unit, std::string_view text);

} // namespace asleft
