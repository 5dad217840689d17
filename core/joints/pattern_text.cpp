#include <joints/pattern.h>

#include <measure/text.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace asleft {

namespace {

constexpr std::size_t longestPatternText = 200;

/// A text with its blanks left out, in small letters, and `#` for each number.
struct Shape {
    std::string words;
    std::vector<std::string_view> numbers;
};

struct Form {
    std::string_view words;
    PatternKind kind;
};

// "rows of 4" is left out on purpose: nobody knows how many rows.
constexpr Form forms[] = {
    {"#", PatternKind::Row},
    {"#inarow", PatternKind::Row},
    {"rowof#", PatternKind::Row},
    {"arowof#", PatternKind::Row},
    {"#rowsof#", PatternKind::Rows},
    {"#rowof#", PatternKind::Rows},
    {"#aroundacircle", PatternKind::Circle},
    {"#aroundcircle", PatternKind::Circle},
    {"#roundacircle", PatternKind::Circle},
    {"#inacircle", PatternKind::Circle},
    {"#incircle", PatternKind::Circle},
    {"circleof#", PatternKind::Circle},
    {"acircleof#", PatternKind::Circle},
    {"#by#rectangle", PatternKind::Rectangle},
    {"a#by#rectangle", PatternKind::Rectangle},
    {"rectangleof#by#", PatternKind::Rectangle},
    {"arectangleof#by#", PatternKind::Rectangle},
    {"#aroundacover", PatternKind::Cover},
    {"#aroundcover", PatternKind::Cover},
    {"#aroundthecover", PatternKind::Cover},
    {"#roundacover", PatternKind::Cover},
    {"coverof#", PatternKind::Cover},
    {"acoverof#", PatternKind::Cover},
};

/// Moves the number `text` begins with into the shape.
void takeNumber(std::string_view &text, Shape &shape)
{
    const auto end = std::find_if_not(text.begin(), text.end(), isAsciiDigit);
    const auto length = static_cast<std::size_t>(end - text.begin());
    shape.numbers.push_back(text.substr(0, length));
    shape.words += '#';
    text.remove_prefix(length);
}

void takeCharacter(std::string_view &text, Shape &shape)
{
    switch (text.front()) {
    case ' ': break;
    case 'x': shape.words += "by"; break; // no word of the forms has one
    case '#': shape.words += '?'; break;  // stands for a number in a Shape
    default: shape.words += text.front(); break;
    }
    text.remove_prefix(1);
}

/// "circles" is as good as "circle".
void dropPlurals(std::string &words)
{
    for (const std::string_view plural : {"circles", "rectangles", "covers"})
        if (const std::size_t at = words.find(plural); at != std::string::npos)
            words.erase(at + plural.size() - 1, 1);
}

/// \pre the text is plainWords(), and outlives the shape
Shape shapeOf(std::string_view text)
{
    Shape shape;
    while (!text.empty())
        isAsciiDigit(text.front()) ? takeNumber(text, shape) : takeCharacter(text, shape);
    dropPlurals(shape.words);
    return shape;
}

Result<int> readCount(std::string_view digits)
{
    int count = 0;
    if (std::from_chars(digits.data(), digits.data() + digits.size(), count).ec != std::errc{})
        return fail(ErrorKind::PatternCount, digits, "1", std::to_string(mostFasteners));
    return count;
}

/// One row of 7 is a row, in whatever words.
Result<Pattern> oneOrMoreRows(int rows, int each)
{
    return rows == 1 ? rowPattern(each) : rowsPattern(rows, each);
}

/// \pre counts has as many numbers as a pattern of this kind is said with
Result<Pattern> make(PatternKind kind, const std::array<int, 2> &counts)
{
    switch (kind) {
    case PatternKind::Row: return rowPattern(counts[0]);
    case PatternKind::Rows: return oneOrMoreRows(counts[0], counts[1]);
    case PatternKind::Circle: return circlePattern(counts[0]);
    case PatternKind::Rectangle: return rectanglePattern(counts[0], counts[1]);
    case PatternKind::Cover: return coverPattern(counts[0]);
    case PatternKind::Free: break;
    }
    return fail(ErrorKind::PatternUnread, std::string());
}

/// How many places stand in line with the first before the pattern turns down.
int firstRun(const Pattern &pattern)
{
    const auto end = std::find_if(pattern.places.begin(), pattern.places.end(),
                                  [&](const FastenerPosition &place) { return std::abs(place.y - pattern.places.front().y) > 0.5; });
    return static_cast<int>(end - pattern.places.begin());
}

PatternCounts rowsOf(int count, int each)
{
    if (each == 0 || each == count || count % each != 0)
        return {PatternKind::Free, count};
    return {PatternKind::Rows, count / each, each};
}

PatternCounts rectangleOf(int count, int across)
{
    if (across < 2 || count % 2 != 0 || count < 2 * across)
        return {PatternKind::Free, count};
    return {PatternKind::Rectangle, across, (count + 4) / 2 - across};
}

} // namespace

Result<Pattern> parsePattern(std::string_view text)
{
    if (text.size() > longestPatternText)
        return fail(ErrorKind::TextTooLong, std::to_string(text.size()), std::to_string(longestPatternText));
    const std::string plain = plainWords(text);
    const Shape shape = shapeOf(plain);
    const auto *form = std::find_if(std::begin(forms), std::end(forms), [&](const Form &known) { return known.words == shape.words; });
    if (form == std::end(forms))
        return fail(ErrorKind::PatternUnread, text);

    std::array<int, 2> counts{};
    for (std::size_t i = 0; i < shape.numbers.size(); ++i) {
        const Result<int> count = readCount(shape.numbers[i]);
        if (!count)
            return tl::unexpected(count.error());
        counts[i] = *count;
    }
    return make(form->kind, counts);
}

PatternCounts countsOf(const Pattern &pattern)
{
    const auto count = static_cast<int>(pattern.places.size());
    switch (pattern.kind) {
    case PatternKind::Rows: return rowsOf(count, firstRun(pattern));
    case PatternKind::Rectangle: return rectangleOf(count, firstRun(pattern));
    case PatternKind::Row:
    case PatternKind::Circle:
    case PatternKind::Cover:
    case PatternKind::Free: break;
    }
    return {pattern.kind, count};
}

std::string writePattern(const Pattern &pattern)
{
    const PatternCounts counts = countsOf(pattern);
    const std::string count = std::to_string(counts.count);
    switch (counts.kind) {
    case PatternKind::Row: return "row of " + count;
    case PatternKind::Rows: return count + " rows of " + std::to_string(counts.each);
    case PatternKind::Circle: return count + " around a circle";
    case PatternKind::Rectangle: return count + " by " + std::to_string(counts.each) + " rectangle";
    case PatternKind::Cover: return count + " around a cover";
    case PatternKind::Free: break;
    }
    return count + " placed by hand";
}

} // namespace asleft
