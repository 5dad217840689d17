#include "scale_range.h"

#include <algorithm>

namespace asleft {

namespace {

constexpr double room = 0.5;        // beside the band, in widths of the band
constexpr double valueRoom = 0.08;  // beyond the value, in widths of the scale
constexpr double mostStretch = 2.4; // how far a value may stretch the scale, times its width without the value

/// \pre the band has a limit
ScaleRange aroundBand(const ScaleEnds &band, double step)
{
    const double low = band.low.value_or(band.high.value_or(0));
    const double high = band.high.value_or(band.low.value_or(0));
    const bool twoLimits = band.low && band.high && high > low;
    const double width = twoLimits ? high - low : std::max(high * 0.25, 10 * step);
    return {low - room * width, high + room * width};
}

void takeIn(ScaleRange &range, double value, double furthest)
{
    const double margin = valueRoom * (range.to - range.from);
    if (value > range.to - margin)
        range.to = std::min(value + margin, range.from + furthest);
    if (value < range.from + margin)
        range.from = std::max(value - margin, range.to - furthest);
}

} // namespace

double ScaleRange::share(double value) const
{
    return std::clamp((value - from) / (to - from), 0.0, 1.0);
}

int ScaleRange::beyond(double value) const
{
    if (value < from)
        return -1;
    return value > to ? 1 : 0;
}

ScaleRange scaleRange(const ScaleEnds &band, const ScaleEnds &value, double step)
{
    ScaleRange range{0, 100 * step};
    if (band.low || band.high)
        range = aroundBand(band, step);
    const double furthest = mostStretch * (range.to - range.from);
    if (value.low)
        takeIn(range, *value.low, furthest);
    if (value.high)
        takeIn(range, *value.high, furthest);
    range.from = std::max(range.from, 0.0);
    return range;
}

} // namespace asleft
