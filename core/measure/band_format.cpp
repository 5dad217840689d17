#include <measure/band.h>

#include "shown.h"

namespace asleft {

namespace {

// Where even this many decimals leave nothing, the band is a point that the unit cannot express.
constexpr int mostShownDecimals = 9;

template <class Q>
ShownLimits exactLimits(const Band<Q> &band, Unit<Q> unit, DecimalMark mark)
{
    return {band.low ? exactNumber(*band.low, unit, mark) : "", band.high ? exactNumber(*band.high, unit, mark) : ""};
}

/// Whether, rounded inward to so many decimals, the low end is still not above the high end. A high end shown as a bare zero would
/// ask for no clearance at all, so that counts as nothing too.
template <class Q>
bool leavesSomething(const Band<Q> &band, Unit<Q> unit, int decimals)
{
    if (!band.high || *band.high == Q())
        return true;
    const Int128 high = countOfLastDecimal(*band.high, unit, decimals, Rounding::Down);
    return high > 0 && (!band.low || countOfLastDecimal(*band.low, unit, decimals, Rounding::Up) <= high);
}

template <class Q>
ShownLimits inwardLimits(const Band<Q> &band, Unit<Q> unit, DecimalMark mark)
{
    int decimals = stepDecimals(unit);
    while (decimals <= mostShownDecimals && !leavesSomething(band, unit, decimals))
        ++decimals;
    if (decimals > mostShownDecimals)
        return exactLimits(band, unit, mark);
    return {band.low ? formatNumber(*band.low, unit, decimals, mark, Rounding::Up) : "",
            band.high ? formatNumber(*band.high, unit, decimals, mark, Rounding::Down) : ""};
}

} // namespace

template <class Q>
ShownLimits shownLimits(const Band<Q> &band, Unit<Q> unit, DecimalMark mark)
{
    return unit == band.unit ? exactLimits(band, unit, mark) : inwardLimits(band, unit, mark);
}

template <class Q>
std::string formatBand(const Band<Q> &band, Unit<Q> unit, DecimalMark mark)
{
    const ShownLimits limits = shownLimits(band, unit, mark);
    if (!band.high)
        return "at least " + withSymbol<Q>(limits.low, unit);
    if (!band.low)
        return "at most " + withSymbol<Q>(limits.high, unit);
    return limits.low + " to " + withSymbol<Q>(limits.high, unit);
}

template ShownLimits shownLimits(const Band<Length> &, LengthUnit, DecimalMark);
template ShownLimits shownLimits(const Band<Torque> &, TorqueUnit, DecimalMark);
template ShownLimits shownLimits(const Band<Angle> &, AngleUnit, DecimalMark);
template std::string formatBand(const Band<Length> &, LengthUnit, DecimalMark);
template std::string formatBand(const Band<Torque> &, TorqueUnit, DecimalMark);
template std::string formatBand(const Band<Angle> &, AngleUnit, DecimalMark);

} // namespace asleft
