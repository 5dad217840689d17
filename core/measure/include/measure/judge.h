#pragma once

#include <measure/band.h>

#include <optional>

namespace asleft {

enum class Verdict { Inside, Low, High, TooClose, ByFeel, NotComparable, NoSpec };

/// Low or high: proved to be outside its band.
constexpr bool isOutside(std::optional<Verdict> verdict)
{
    return verdict == Verdict::Low || verdict == Verdict::High;
}

/// What a measurement taught: the value lies between two ends, each of which may be missing (nothing known on that side) or
/// open (the end itself excluded). A point is an interval whose closed ends are equal.
template <class Q>
struct Interval {
    std::optional<Q> low;
    std::optional<Q> high;
    bool lowOpen = false;
    bool highOpen = false;

    bool operator==(const Interval &) const = default;

    [[nodiscard]] static Interval point(Q value) { return {value, value}; }
    /// A measured value with its expanded uncertainty: value − U < true value < value + U, a point where U is zero. With open ends a
    /// value is proved outside from low − U downward and from high + U upward, and inside from low + U to high − U, those included
    /// (ISO 14253-1). \pre uncertainty ≥ 0
    [[nodiscard]] static Interval within(Q value, Q uncertainty)
    {
        if (uncertainty == Q())
            return point(value);
        return {value - uncertainty, value + uncertainty, true, true};
    }
    /// This leaf goes, the next one does not: goes ≤ value < next. \pre goes < next
    [[nodiscard]] static Interval bracket(Q goes, Q next) { return {goes, next, false, true}; }
    /// The leaf goes with room to spare: value > leaf.
    [[nodiscard]] static Interval looserThan(Q leaf) { return {leaf, std::nullopt, true, false}; }
    /// The leaf does not go: value < leaf.
    [[nodiscard]] static Interval tighterThan(Q leaf) { return {std::nullopt, leaf, false, true}; }
};

/// How a shop decides; kept with each reading as the uncertainty it was judged with, so that changing the rule changes no old verdict.
enum class DecisionRule {
    Simple,          ///< the value as read decides
    WithUncertainty, ///< what ±U does not prove is too close to call (ISO 14253-1)
};

/// Inside if the whole interval lies in the band (limits included), low or high if the whole of it lies beyond
/// that limit, else too close to call. Never gives ByFeel, NotComparable or NoSpec: those follow from how a reading was taken.
template <class Q>
Verdict judge(const Interval<Q> &interval, const Band<Q> &band);

/// The probability, 0 to 1, that a value measured as `value` with the expanded uncertainty `uncertainty` = 2u really lies in the band, the
/// error being normal (JCGM 106:2012, 7.3). With no uncertainty, 1 inside and 0 outside.
template <class Q>
double conformanceProbability(Q value, Q uncertainty, const Band<Q> &band);

/// How far a point stands outside the band: positive above, negative below, zero inside.
template <class Q>
Q outsideBy(Q value, const Band<Q> &band);

} // namespace asleft
