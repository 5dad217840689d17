#include <engine/adjuster.h>

#include <cassert>
#include <cmath>

namespace asleft {

double screwTurns(Length lashError, const ScrewAdjuster &adjuster)
{
    assert(adjuster.pitch > Length{} && adjuster.ratio > 0);
    return toMillimetres(lashError) / (toMillimetres(adjuster.pitch) * adjuster.ratio);
}

std::optional<SimpleFraction> nearestSimpleFraction(double value)
{
    constexpr int largestDenominator = 16;
    const bool sayable = value >= 1.0 / 32 && value <= 3.0; // false for what is no number
    if (!sayable)
        return std::nullopt;
    for (int denominator = 1; denominator <= largestDenominator; ++denominator) {
        const double numerator = std::round(value * denominator);
        // 19/20 and 21/20 of a value are as rough as their doubles; the hair keeps a fraction that stands on the limit.
        if (std::abs(numerator / denominator - value) <= value / 20 * (1 + 1e-12))
            return SimpleFraction{static_cast<int>(numerator), denominator};
    }
    return std::nullopt;
}

} // namespace asleft
