#include <joints/pattern.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace asleft {

namespace {

constexpr int highestNumber = 999;
constexpr double farthestCoordinate = 1e6;
constexpr double closestPlaces = 0.1;
/// Far below what a hand can place, far above what adding up doubles loses.
constexpr double noise = 1e-9;

tl::unexpected<Error> refuseCount(std::int64_t count, std::int64_t fewest, std::int64_t most)
{
    return fail(ErrorKind::PatternCount, std::to_string(count), std::to_string(fewest), std::to_string(most));
}

Done countWithin(std::int64_t count, std::int64_t fewest, std::int64_t most)
{
    if (count < fewest || count > most)
        return refuseCount(count, fewest, most);
    return {};
}

/// Adds a place with the next number.
void addPlace(Pattern &pattern, double x, double y)
{
    pattern.places.push_back({static_cast<int>(pattern.places.size()) + 1, x, y});
}

double distanceBetween(const FastenerPosition &a, const FastenerPosition &b)
{
    return std::hypot(a.x - b.x, a.y - b.y);
}

/// The outline of a cover: twice as wide as high, its corners rounded by a quarter of the height. Positions on it are measured clockwise
/// from the middle of its upper edge.
class CoverOutline {
public:
    explicit CoverOutline(double circumference)
        : m_circumference(circumference), m_height(circumference / (4 + std::numbers::pi / 2)), m_radius(m_height / 4)
    {
    }

    /// The middle of the upper right corner.
    [[nodiscard]] double corner() const { return m_height - m_radius + m_radius * std::numbers::pi / 4; }

    /// Worked out in one quarter and mirrored into the others, so that what is symmetric is so to the last digit.
    [[nodiscard]] FastenerPosition at(double position) const
    {
        const bool left = position > m_circumference / 2;
        const double down = left ? m_circumference - position : position;
        const bool lower = down > m_circumference / 4;
        FastenerPosition place = inUpperRight(lower ? m_circumference / 2 - down : down);
        place.x = left ? -place.x : place.x;
        place.y = lower ? -place.y : place.y;
        return place;
    }

private:
    [[nodiscard]] FastenerPosition inUpperRight(double position) const
    {
        const double straight = m_height - m_radius;
        const double bend = m_radius * std::numbers::pi / 2;
        if (position <= straight)
            return {1, position, -m_height / 2};
        if (position >= straight + bend)
            return {1, m_height, -m_height / 2 + m_radius + (position - straight - bend)};
        const double angle = (position - straight) / m_radius;
        return {1, straight + m_radius * std::sin(angle), -m_height / 2 + m_radius * (1 - std::cos(angle))};
    }

    double m_circumference;
    double m_height;
    double m_radius;
};

/// Where the first place right of the middle stands: on the middle or half a step from it, since only these two are symmetric; the one
/// that brings a place nearer to the corners.
double firstPosition(double corner)
{
    const double pastWhole = std::abs(corner - std::round(corner));
    return pastWhole <= 0.25 ? 0 : 0.5;
}

/// Makes the two neighbours that are nearest to each other 1 apart: across a bend they are nearer than along it.
void spread(Pattern &pattern)
{
    double nearest = 1;
    for (std::size_t i = 0; i < pattern.places.size(); ++i)
        nearest = std::min(nearest, distanceBetween(pattern.places[i], pattern.places[(i + 1) % pattern.places.size()]));
    for (FastenerPosition &place : pattern.places) {
        place.x /= nearest;
        place.y /= nearest;
    }
}

Done checkNumbers(const Pattern &pattern)
{
    std::array<bool, highestNumber + 1> taken{};
    for (const FastenerPosition &place : pattern.places) {
        if (place.number < 1 || place.number > highestNumber || taken[static_cast<std::size_t>(place.number)])
            return fail(ErrorKind::PatternNumber, std::to_string(place.number));
        taken[static_cast<std::size_t>(place.number)] = true;
    }
    return {};
}

Done checkCoordinate(double coordinate)
{
    if (std::abs(coordinate) <= farthestCoordinate) // which no NaN is
        return {};
    std::array<char, 32> text{};
    const auto written = std::to_chars(text.data(), text.data() + text.size(), coordinate);
    return fail(ErrorKind::PatternUnread, std::string_view(text.data(), static_cast<std::size_t>(written.ptr - text.data())));
}

Done checkCoordinates(const Pattern &pattern)
{
    for (const FastenerPosition &place : pattern.places)
        for (const double coordinate : {place.x, place.y})
            if (Done fits = checkCoordinate(coordinate); !fits)
                return fits;
    return {};
}

Done checkDistances(const Pattern &pattern)
{
    for (auto a = pattern.places.begin(); a != pattern.places.end(); ++a)
        for (auto b = a + 1; b != pattern.places.end(); ++b)
            if (distanceBetween(*a, *b) < closestPlaces - noise)
                return fail(ErrorKind::PlacesTooClose, std::to_string(a->number), std::to_string(b->number));
    return {};
}

} // namespace

const FastenerPosition *Pattern::place(int number) const
{
    const auto found =
        std::find_if(places.begin(), places.end(), [number](const FastenerPosition &place) { return place.number == number; });
    return found == places.end() ? nullptr : &*found;
}

Result<Pattern> rowPattern(int count)
{
    if (Done fits = countWithin(count, 1, mostFasteners); !fits)
        return tl::unexpected(fits.error());
    Pattern pattern{PatternKind::Row, {}};
    for (int i = 0; i < count; ++i)
        addPlace(pattern, i, 0);
    return pattern;
}

Result<Pattern> rowsPattern(int rows, int each)
{
    if (Done fits = countWithin(rows, 2, 10); !fits)
        return tl::unexpected(fits.error());
    if (Done fits = countWithin(std::int64_t{rows} * each, rows, mostFasteners); !fits)
        return tl::unexpected(fits.error());
    Pattern pattern{PatternKind::Rows, {}};
    for (int row = 0; row < rows; ++row)
        for (int i = 0; i < each; ++i)
            addPlace(pattern, i, row);
    return pattern;
}

Result<Pattern> circlePattern(int count)
{
    if (Done fits = countWithin(count, 2, mostFasteners); !fits)
        return tl::unexpected(fits.error());
    Pattern pattern{PatternKind::Circle, {}};
    const double radius = 0.5 / std::sin(std::numbers::pi / count);
    for (int i = 0; i < count; ++i) {
        const double angle = 2 * std::numbers::pi * i / count;
        addPlace(pattern, radius * std::sin(angle), -radius * std::cos(angle));
    }
    return pattern;
}

Result<Pattern> rectanglePattern(int across, int along)
{
    for (const int side : {across, along})
        if (side < 2)
            return refuseCount(side, 2, mostFasteners / 2);
    if (Done fits = countWithin(2 * (std::int64_t{across} + along) - 4, 4, mostFasteners); !fits)
        return tl::unexpected(fits.error());

    Pattern pattern{PatternKind::Rectangle, {}};
    const int right = across - 1;
    const int bottom = along - 1;
    for (int x = 0; x < right; ++x)
        addPlace(pattern, x, 0);
    for (int y = 0; y < bottom; ++y)
        addPlace(pattern, right, y);
    for (int x = right; x > 0; --x)
        addPlace(pattern, x, bottom);
    for (int y = bottom; y > 0; --y)
        addPlace(pattern, 0, y);
    return pattern;
}

Result<Pattern> coverPattern(int count)
{
    if (Done fits = countWithin(count, 3, mostFasteners); !fits)
        return tl::unexpected(fits.error());
    Pattern pattern{PatternKind::Cover, {}};
    const CoverOutline outline(count);
    const double first = firstPosition(outline.corner());
    // Number 1 is the place nearest to the upper left corner, which lies before the middle.
    const int steps = static_cast<int>(std::lround(count - outline.corner() - first));
    for (int i = 0; i < count; ++i) {
        const FastenerPosition place = outline.at(first + (steps + i) % count);
        addPlace(pattern, place.x, place.y);
    }
    spread(pattern);
    return pattern;
}

Result<Pattern> checkedPattern(Pattern pattern)
{
    if (Done fits = countWithin(static_cast<std::int64_t>(pattern.places.size()), 1, mostFasteners); !fits)
        return tl::unexpected(fits.error());
    for (const auto check : {checkCoordinates, checkNumbers, checkDistances})
        if (Done fits = check(pattern); !fits)
            return tl::unexpected(fits.error());
    return pattern;
}

Result<Pattern> renumbered(Pattern pattern, std::span<const int> numbers)
{
    const auto count = static_cast<std::int64_t>(pattern.places.size());
    if (Done fits = countWithin(static_cast<std::int64_t>(numbers.size()), count, count); !fits)
        return tl::unexpected(fits.error());
    for (std::size_t i = 0; i < numbers.size(); ++i)
        pattern.places[i].number = numbers[i];
    if (Done fits = checkNumbers(pattern); !fits)
        return tl::unexpected(fits.error());
    return pattern;
}

} // namespace asleft
