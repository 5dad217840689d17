#pragma once

#include <optional>

namespace asleft {

/// Two ends of something on a scale, in the smallest unit of its quantity; an empty one is open.
struct ScaleEnds {
    std::optional<double> low;
    std::optional<double> high;

    [[nodiscard]] bool isPoint() const { return low && low == high; }
};

/// The stretch that a scale shows, in the smallest unit of its quantity.
struct ScaleRange {
    double from = 0;
    double to = 1;

    /// Where a value lies, 0 at the left end and 1 at the right; values beyond stand at the end.
    [[nodiscard]] double share(double value) const;
    [[nodiscard]] bool holds(double value) const { return beyond(value) == 0; }
    /// -1 left of the scale, 1 right of it, 0 on it.
    [[nodiscard]] int beyond(double value) const;
};

/// A stretch that shows the band with room on both sides, and the value where that leaves the band at least a fifth of the width. `step`
/// is one reading step of the unit.
ScaleRange scaleRange(const ScaleEnds &band, const ScaleEnds &value, double step);

} // namespace asleft
