#include <measure/judge.h>

#include <cmath>
#include <numbers>

namespace asleft {

namespace {

template <class Q>
bool liesInside(const Interval<Q> &interval, const Band<Q> &band)
{
    const bool aboveLow = !band.low || (interval.low && *interval.low >= *band.low);
    const bool belowHigh = !band.high || (interval.high && *interval.high <= *band.high);
    return aboveLow && belowHigh;
}

template <class Q>
bool liesBelow(const Interval<Q> &interval, Q limit)
{
    return interval.high && (*interval.high < limit || (*interval.high == limit && interval.highOpen));
}

template <class Q>
bool liesAbove(const Interval<Q> &interval, Q limit)
{
    return interval.low && (*interval.low > limit || (*interval.low == limit && interval.lowOpen));
}

/// The share of a standard normal distribution above `z`.
double normalAbove(double z)
{
    return std::erfc(z / std::numbers::sqrt2) / 2;
}

double normalBelow(double z)
{
    return normalAbove(-z);
}

} // namespace

template <class Q>
Verdict judge(const Interval<Q> &interval, const Band<Q> &band)
{
    if (liesInside(interval, band))
        return Verdict::Inside;
    if (band.low && liesBelow(interval, *band.low))
        return Verdict::Low;
    if (band.high && liesAbove(interval, *band.high))
        return Verdict::High;
    return Verdict::TooClose;
}

template <class Q>
double conformanceProbability(Q value, Q uncertainty, const Band<Q> &band)
{
    if (uncertainty == Q())
        return outsideBy(value, band) == Q() ? 1.0 : 0.0;
    const double standard = static_cast<double>(uncertainty.smallest()) / 2;
    const auto steps = [&](Q limit) { return static_cast<double>((limit - value).smallest()) / standard; };
    if (!band.low || !band.high)
        return band.low ? normalAbove(steps(*band.low)) : band.high ? normalBelow(steps(*band.high)) : 1.0;
    // Taken from the side the value lies on: the difference of two numbers near 1 would have lost its digits.
    const double low = steps(*band.low);
    const double high = steps(*band.high);
    return low > 0 ? normalAbove(low) - normalAbove(high) : normalBelow(high) - normalBelow(low);
}

template <class Q>
Q outsideBy(Q value, const Band<Q> &band)
{
    if (band.low && value < *band.low)
        return value - *band.low;
    if (band.high && value > *band.high)
        return value - *band.high;
    return Q();
}

template Verdict judge(const Interval<Length> &, const Band<Length> &);
template Verdict judge(const Interval<Torque> &, const Band<Torque> &);
template Verdict judge(const Interval<Angle> &, const Band<Angle> &);
template double conformanceProbability(Length, Length, const Band<Length> &);
template double conformanceProbability(Torque, Torque, const Band<Torque> &);
template double conformanceProbability(Angle, Angle, const Band<Angle> &);
template Length outsideBy(Length, const Band<Length> &);
template Torque outsideBy(Torque, const Band<Torque> &);
template Angle outsideBy(Angle, const Band<Angle> &);

} // namespace asleft
