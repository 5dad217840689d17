#pragma once

#include <measure/parse.h>

#include <optional>
#include <string>
#include <string_view>

namespace asleft {

/// How a band was printed.
enum class BandForm { PlusMinus, Range, AtLeast, AtMost, NominalOnly };

/// What a manual asks of one value, in the one unit it prints. Both limits belong to the band.
template <class Q>
struct Band {
    BandForm form;
    std::optional<Q> low;          ///< empty: no lower limit
    std::optional<Q> high;         ///< empty: no upper limit
    std::optional<Q> nominal;      ///< empty where the manual gives only limits
    Unit<Q> unit;                  ///< the unit it is printed in
    std::string text;              ///< as typed
    bool toleranceAssumed = false; ///< nominal alone: limits from the shop's default tolerance

    bool operator==(const Band &) const = default;
};

/// Tolerance given to a nominal that stands alone: so many percent of it, both ways.
/// ±10 % where none is given: TM 9-2320-362-14&P App. F.
constexpr int assumedTolerancePercent = 10;

/// Reads a band: `.015 ± .003 in`, `0.015 +/- 10 %`, `10 mm ± .002 in`, `0.40 +0.05 -0.02 mm`, `0.20-0.30 mm`, `0.20 – 0.30`,
/// `0.20 to 0.30 mm`, `at least 0.2 mm`, `min 0.2`, `>= 0.2`, `≥ 0.2`, `at most 0.3`, `max 0.3`, `<= 0.3`, `≤ 0.3`, `0.25 mm`.
/// A unit behind the last number counts for those before it that have none; with no unit at all, `fieldUnit`.
/// Nominal and tolerance are added exactly, also in different units or percent, before the one rounding.
/// Refuses: an upside-down range, a tolerance that would take the low end below zero, and all that parse() refuses.
template <class Q>
Result<Band<Q>> parseBand(std::string_view text, Unit<Q> fieldUnit, DecimalMark mark = DecimalMark::Point);

/// A value the manual asks for, as printed in one system or, rounded each for itself, in both.
template <class Q>
struct SpecBand {
    Band<Q> first;
    std::optional<Band<Q>> second; ///< in the other unit system than `first`

    /// The band printed in the system of `unit`, else the first.
    [[nodiscard]] const Band<Q> &printedFor(Unit<Q> unit) const
    {
        return second && systemOf(second->unit) == systemOf(unit) ? *second : first;
    }
    bool operator==(const SpecBand &) const = default;
};

/// Pairs two printed bands; refuses two of the same system, and two that do not overlap.
template <class Q>
Result<SpecBand<Q>> pairBands(Band<Q> first, std::optional<Band<Q>> second);

/// The limits of a band as they are shown in a unit, as formatBand() does; an end the band does not have is empty.
struct ShownLimits {
    std::string low;
    std::string high;
};
template <class Q>
ShownLimits shownLimits(const Band<Q> &band, Unit<Q> unit, DecimalMark mark = DecimalMark::Point);

/// "0.20 to 0.30 mm", "at least 0.20 mm", in any unit: in the band's own unit exactly, in another rounded inward (low end up, high end
/// down) to the unit's step, with more decimals where the step would leave nothing of the band.
template <class Q>
std::string formatBand(const Band<Q> &band, Unit<Q> unit, DecimalMark mark = DecimalMark::Point);

} // namespace asleft
