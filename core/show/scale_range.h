#pragma once

#include <measure/format.h>
#include <measure/judge.h>

namespace asleft {

/// The stretch of lengths that a scale shows, in nanometres.
struct ScaleRange {
    double from = 0;
    double to = 1;

    /// Where a value lies, 0 at the left end and 1 at the right; values beyond stand at the end.
    [[nodiscard]] double share(Length value) const;
    [[nodiscard]] bool holds(Length value) const { return beyond(value) == 0; }
    /// -1 left of the scale, 1 right of it, 0 on it.
    [[nodiscard]] int beyond(Length value) const;
};

/// A stretch that shows the band with room on both sides, and the value where that leaves the band at least a fifth of the width.
ScaleRange scaleRange(const Band<Length> *band, const Interval<Length> *value, LengthUnit unit);

} // namespace asleft
