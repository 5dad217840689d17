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

/// Why what follows a value that was read cannot be understood. \pre the scanner stands on it
template <class Q>
tl::unexpected<Error> refuseRest(const Scanner &in, const ReadValue<Q> &last);

/// The one rounding of an exact value in Q's smallest unit; nothing in it means it did not fit 128 bits.
template <class Q>
Result<Q> roundOnce(const std::optional<Rational> &exact, Unit<Q> unit, std::string_view text);

} // namespace asleft
