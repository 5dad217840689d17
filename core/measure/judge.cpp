#include <measure/judge.h>

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
template Length outsideBy(Length, const Band<Length> &);
template Torque outsideBy(Torque, const Band<Torque> &);

} // namespace asleft
