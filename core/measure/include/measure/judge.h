#pragma once

#include <measure/band.h>

#include <optional>

namespace asleft {

enum class Verdict { Inside, Low, High, TooClose, ByFeel, NotComparable, NoSpec };

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
    /// This leaf goes, the next one does not: goes ≤ value < next. \pre goes < next
    [[nodiscard]] static Interval bracket(Q goes, Q next) { return {goes, next, false, true}; }
    /// The leaf goes with room to spare: value > leaf.
    [[nodiscard]] static Interval looserThan(Q leaf) { return {leaf, std::nullopt, true, false}; }
    /// The leaf does not go: value < leaf.
    [[nodiscard]] static Interval tighterThan(Q leaf) { return {std::nullopt, leaf, false, true}; }
};

/// Simple acceptance: inside if the whole interval lies in the band (limits included), low or high if the whole of it lies beyond
/// that limit, else too close to call. Never gives ByFeel, NotComparable or NoSpec: those follow from how a reading was taken.
template <class Q>
Verdict judge(const Interval<Q> &interval, const Band<Q> &band);

/// How far a point stands outside the band: positive above, negative below, zero inside.
template <class Q>
Q outsideBy(Q value, const Band<Q> &band);

} // namespace asleft
