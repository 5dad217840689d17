#pragma once

#include <base/result.h>
#include <measure/unit.h>

#include <string>
#include <string_view>

namespace asleft {

/// Which character a person's language writes between whole and fraction. Both are always understood; the mark only decides
/// what is ambiguous: `1,250` asks everywhere, `1.250` only where the decimal mark is a comma.
enum class DecimalMark { Point, Comma };

/// The longest text any field hands to the parser, in bytes; longer is refused unread.
constexpr std::size_t longestTypedText = 200;
/// The most digits a typed number may have.
constexpr int mostDigits = 12;

/// A value with the text it was typed as, so that 40 lbf·ft is never shown again as 39.99.
template <class Q>
struct Typed {
    Q value;
    Unit<Q> unit;
    std::string text; ///< trimmed, as typed, without a unit if none was typed

    bool operator==(const Typed &) const = default;
};

/// Reads a whole string as one value: `0.012 in`, `.012"`, `12 thou`, `0,25 mm`, `5/8 in`, `1 5/8 in`, `20 ft-lb`, `24 N·m`;
/// a bare number counts in `fieldUnit`. The number is exact until it is rounded once, half to even.
/// Refuses, each with its own kind: empty text, what is not a number, an ambiguous mark, a minus sign, more than twelve
/// digits, a unit of something else, text left over, a value past `largest`, overlong text.
template <class Q>
Result<Typed<Q>> parse(std::string_view text, Unit<Q> fieldUnit, DecimalMark mark = DecimalMark::Point);
template <>
Result<Typed<Length>> parse<Length>(std::string_view, LengthUnit, DecimalMark);
template <>
Result<Typed<Torque>> parse<Torque>(std::string_view, TorqueUnit, DecimalMark);
/// Degrees and turns of a screw: `270°`, `3/4 turn`, `1.5 turns`.
template <>
Result<Typed<Angle>> parse<Angle>(std::string_view, AngleUnit, DecimalMark);

/// As parse<Angle>, in degrees, but a minus sign is allowed: cam events may lie on the other side of a dead centre.
Result<Angle> parseSignedAngle(std::string_view text, DecimalMark mark = DecimalMark::Point);

/// Reads the reading bar: digits alone count in `step` (`18` with a step of 0.01 mm is 0.18 mm; `12` with 0.001 in is 12 thou,
/// written as 0.012 in); anything with a mark or a unit is taken literally by parse().
/// The text of the result is written out in full in `fieldUnit`.
Result<Typed<Length>> parseInSteps(std::string_view text, LengthUnit fieldUnit, DecimalMark mark = DecimalMark::Point);

/// Reads a plain decimal or fraction ("0,8", "1.25", "5/8") with no unit, not negative; for ratios and percentages.
Result<Rational> parseNumber(std::string_view text, DecimalMark mark = DecimalMark::Point);

} // namespace asleft
