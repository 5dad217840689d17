#include "scale_range.h"

#include <algorithm>

namespace asleft {

namespace {

constexpr double room = 0.5;        // beside the band, in widths of the band
constexpr double valueRoom = 0.08;  // beyond the value, in widths of the scale
constexpr double mostStretch = 2.4; // how far a value may stretch the scale, times its width without the value

double nm(Length length)
{
    return static_cast<double>(length.smallest());
}

/// \pre the band has a limit
ScaleRange aroundBand(const Band<Length> &band, double step)
{
    const double low = nm(band.low.value_or(band.high.value_or(Length())));
    const double high = nm(band.high.value_or(band.low.value_or(Length())));
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

double ScaleRange::share(Length value) const
{
    return std::clamp((nm(value) - from) / (to - from), 0.0, 1.0);
}

int ScaleRange::beyond(Length value) const
{
    if (nm(value) < from)
        return -1;
    return nm(value) > to ? 1 : 0;
}

ScaleRange scaleRange(const Band<Length> *band, const Interval<Length> *value, LengthUnit unit)
{
    const double step = nm(stepOf(unit));
    ScaleRange range{0, 100 * step};
    if (band && (band->low || band->high))
        range = aroundBand(*band, step);
    const double furthest = mostStretch * (range.to - range.from);
    if (value && value->low)
        takeIn(range, nm(*value->low), furthest);
    if (value && value->high)
        takeIn(range, nm(*value->high), furthest);
    range.from = std::max(range.from, 0.0);
    return range;
}

} // namespace asleft
