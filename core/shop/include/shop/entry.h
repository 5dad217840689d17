#pragma once

#include <base/result.h>
#include <shop/acts.h>

#include <string_view>
#include <vector>

namespace asleft {

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

/// Reads the reading bar: one value as parseInSteps() takes it, or a bracket, the leaf that goes and the one that does not: `12-14`,
/// `0.25-0.30 mm`, `0.25 to 0.30`. A unit behind the second counts for the first where that has none.
/// Refuses what parse() refuses, and a bracket that does not rise (BandUpsideDown).
Result<ReadingText> parseReading(std::string_view text, LengthUnit fieldUnit, DecimalMark mark = DecimalMark::Point);

/// Whether a reading lies so far from its band (below half its low end or above twice its high end) that it is more likely a slip of the
/// finger: it is asked for once more, never refused.
bool farOff(const ReadingText &reading, const Band<Length> &band);

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

} // namespace asleft
