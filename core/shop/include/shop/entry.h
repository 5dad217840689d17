#pragma once

#include <base/result.h>
#include <shop/acts.h>

#include <string_view>
#include <vector>

namespace asleft {

/// The longest name, plate or title; longer is a paste by mistake.
constexpr std::size_t longestName = 200;
/// A text in one line, which may be empty; refuses one longer than a name may be (TextTooLong).
Result<std::string> checkedLine(std::string_view text);
/// A name, which may not be empty; `noun` says what is missing (NameMissing).
Result<std::string> checkedName(std::string_view text, Noun noun);

/// The leaves of a feeler set as a person writes them: `0.05 0.10 0.15 mm`, `.010 .012 .015 in`, `0.05-1.00 by 0.05 mm`;
/// a unit at the end counts for those before it. At most 100 leaves, smallest first, each once.
/// Refuses with LeavesUnread and the part that cannot be read.
Result<std::vector<Typed<Length>>> parseLeaves(std::string_view text, LengthUnit fieldUnit, DecimalMark mark = DecimalMark::Point);

/// A reading as it is typed on the bench.
struct ReadingText {
    ReadingForm form; ///< Exact or Bracket
    Typed<Length> value;
    std::optional<Typed<Length>> next; ///< of a bracket
};

/// Reads turns from zero lash: `3/4`, `3/4 turn`, `270°`; digits alone are turns. Refuses what parse() refuses and more than ten turns
/// (ValueTooLarge).
Result<Typed<Angle>> parseTurns(std::string_view text, DecimalMark mark = DecimalMark::Point);

/// Hours and minutes since the engine ran, in minutes: `3 h`, `2 h 30`, `45 min`, `1.5 h`; digits alone are hours. Rounded to whole
/// minutes. At most a year (365 days). Refuses what parseNumber() refuses, a unit that is neither (UnknownUnit), more than a year
/// (ValueTooLarge).
Result<std::int64_t> parseSinceRun(std::string_view text, DecimalMark mark = DecimalMark::Point);

/// Whether what is known of the engine speaks against its being cold or hot: cold under 2 hours after it ran or above 50 °C, hot over 2
/// hours after or below 50 °C. Common practice, no source; asked once, never refused.
bool doubtedCondition(EngineCondition condition, const std::optional<Temperature> &temperature,
                      std::optional<std::int64_t> minutesSinceRun);

/// Reads the reading bar: one value as parseInSteps() takes it, or a bracket, the leaf that goes and the one that does not: `12-14`,
/// `0.25-0.30 mm`, `0.25 to 0.30`. A unit behind the second counts for the first where that has none.
/// Refuses what parse() refuses, and a bracket that does not rise (BandUpsideDown).
Result<ReadingText> parseReading(std::string_view text, LengthUnit fieldUnit, DecimalMark mark = DecimalMark::Point);

/// Whether a reading lies so far from its band (below half its low end or above twice its high end) that it is more likely a slip of the
/// finger: it is asked for once more, never refused.
bool farOff(const ReadingText &reading, const Band<Length> &band);

/// The length the same digits are in another unit; nothing where that is past all measure (a million metres).
std::optional<Length> sameDigits(Length value, LengthUnit typed, LengthUnit other);

/// The unit in which the same digits would not be far off, where they are in the unit typed: 0.016 read as mm against .016 ± .002 in.
/// Each unit is tried by the band printed in its system, those a band is printed in first. Nothing where the reading is not far off, or is
/// so in every unit.
std::optional<LengthUnit> unitMeant(const ReadingText &reading, const SpecBand<Length> &bands);

/// The unit in which a lash band as printed makes sense, where it does not in the unit typed: a lash is 0.02 mm to 2 mm (common practice,
/// no source). Nothing where it makes sense as typed, or in no unit. Asked at entry, never refused.
std::optional<LengthUnit> unitMeant(const Band<Length> &lash);

struct MeterText {
    MeterUnit unit;
    std::int64_t thousandths;
    std::string text;
};

/// A meter as it is read: `3812 h`, `48 210 km`, `61,200 mi` (a comma before three digits parts thousands here: no odometer shows
/// thousandths of a mile); a bare number counts in `fieldUnit`. Refuses with MeterUnread and the part that cannot be read.
Result<MeterText> parseMeter(std::string_view text, MeterUnit fieldUnit);

/// The screw an engine's adjusters have; empty where the pitch is unknown. Pitch 0.2 mm to 5 mm, ratio 0.2 to 5, else PitchOutOfRange.
Result<std::optional<ScrewAdjuster>> readScrew(const ScrewText &text, DecimalMark mark = DecimalMark::Point);

/// The bleed-down wait of hydraulic tappets: `15`, `15 min`, `1 h`; empty where none is typed or the adjusters are screws. At most a day,
/// else BleedDownUnread.
Result<std::optional<std::chrono::minutes>> readBleedDown(const ScrewText &text, DecimalMark mark = DecimalMark::Point);

} // namespace asleft
