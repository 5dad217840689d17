#pragma once

#include <measure/quantity.h>

#include <optional>

namespace asleft {

/// A screw and lock nut at one end of a rocker.
struct ScrewAdjuster {
    Length pitch;       ///< of the screw's thread, above zero
    double ratio = 1.0; ///< leaf travel over screw travel: 1 where screw and leaf sit on the same arm
};

/// How far to turn an adjusting screw, in turns: lash error / (pitch × ratio). Positive: turn in (lash too large).
double screwTurns(Length lashError, const ScrewAdjuster &adjuster);

struct SimpleFraction {
    int numerator;
    int denominator;
    bool operator==(const SimpleFraction &) const = default;
};

/// The fraction of the smallest denominator (at most 16) within a twentieth of `value`, as it is said on the shop floor:
/// 0.07 is 1/14, 0.4 is 2/5. Nothing for values below 1/32 of a turn or above 3.
std::optional<SimpleFraction> nearestSimpleFraction(double value);

} // namespace asleft
