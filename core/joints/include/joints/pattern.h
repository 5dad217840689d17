#pragma once

#include <base/result.h>

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace asleft {

enum class PatternKind { Row, Rows, Circle, Rectangle, Cover, Free };

/// Where one fastener sits. x to the right, y down, in the pattern's own unit: neighbours of a made pattern are about 1 apart.
struct FastenerPosition {
    int number = 1; ///< as the manual numbers it, 1 to 999; each once in a pattern
    double x = 0;
    double y = 0;
    std::string thread = {}; ///< as typed, where it differs from the joint's; else empty
    std::string length = {}; ///< as typed, where fasteners differ in length; else empty
    bool operator==(const FastenerPosition &) const = default;
};

/// The places of a joint's fasteners.
struct Pattern {
    PatternKind kind = PatternKind::Row;
    std::vector<FastenerPosition> places; ///< in the order of the pattern: along a row, clockwise round a circle or an outline
    bool operator==(const Pattern &) const = default;

    [[nodiscard]] const FastenerPosition *place(int number) const;
};

inline constexpr int mostFasteners = 200;

// Made patterns, numbered from 1: a row from the left, rows each from the left, the rest clockwise, a circle from its top, an outline from
// its upper left corner. Each refuses with PatternCount (the count, fewest, most).
Result<Pattern> rowPattern(int count);                   ///< 1 to 200
Result<Pattern> rowsPattern(int rows, int each);         ///< rows 2 to 10
Result<Pattern> circlePattern(int count);                ///< 2 to 200
Result<Pattern> rectanglePattern(int across, int along); ///< on the outline of across × along places, 2 by 2 and more
Result<Pattern> coverPattern(int count);                 ///< 3 to 200, evenly on the outline of an oblong cover

/// Reads `12 around a circle`, `8 in a circle`, `circle of 8`, `2 rows of 7`, `row of 4`, `4 in a row`, `4 by 6 rectangle`, `rectangle of 4
/// by 6`, `12 around a cover`, `cover of 12`, `1`; a bare number is a row. Words in any case, blanks count only between two digits, "×"
/// as well as "by". Refuses with PatternUnread, more than 200 bytes (TextTooLong), and what the makers refuse.
Result<Pattern> parsePattern(std::string_view text);
/// What a pattern is told by: so many rows of so many, so many across by so many along, else how many there are. Rows or a rectangle that
/// have lost their shape are Free.
struct PatternCounts {
    PatternKind kind;
    int count;
    int each = 0; ///< of Rows in a row, of a Rectangle along
};
PatternCounts countsOf(const Pattern &pattern);

/// What parsePattern() reads as this kind and count again; of Free, and of rows or a rectangle that have lost their shape, "12 placed by
/// hand".
std::string writePattern(const Pattern &pattern);

/// A pattern with its places as they were clicked or dragged. Refuses with PatternCount, a number twice or out of 1 to 999
/// (PatternNumber), places less than a tenth apart (PlacesTooClose, both numbers), and coordinates that are no numbers or past a million
/// (PatternUnread).
Result<Pattern> checkedPattern(Pattern pattern);

/// The same places with these numbers, in the order of Pattern::places. Refuses with PatternCount where there are not as many, and with
/// PatternNumber.
Result<Pattern> renumbered(Pattern pattern, std::span<const int> numbers);

} // namespace asleft
