#include <joints/order.h>

#include <measure/text.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <numeric>

namespace asleft {

namespace {

/// Twice what 200 numbers of three digits take with an arrow between each two.
constexpr std::size_t longestOrderText = 4000;

/// With what parts two numbers an ASCII character: an arrow, of one character or two, is a blank and perhaps a dash.
std::string withoutArrows(std::string_view text)
{
    constexpr std::string_view arrow = "→";
    std::string plain = plainText(text);
    for (std::size_t at = plain.find(arrow); at != std::string::npos; at = plain.find(arrow, at))
        plain.replace(at, arrow.size(), " ");
    for (std::size_t at = plain.find("->"); at != std::string::npos; at = plain.find("->", at))
        plain.replace(at, 2, " ");
    return plain;
}

Result<int> readNumber(std::string_view word, const Pattern &pattern)
{
    int number = 0;
    const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), number);
    if (error == std::errc::invalid_argument || end != word.data() + word.size())
        return fail(ErrorKind::OrderUnread, word);
    if (error != std::errc{} || !pattern.place(number))
        return fail(ErrorKind::OrderUnknown, word);
    return number;
}

bool contains(const TighteningOrder &order, int number)
{
    return std::find(order.begin(), order.end(), number) != order.end();
}

/// Refuses an order that leaves a fastener out; of several, with the lowest number.
Done checkComplete(const TighteningOrder &order, const Pattern &pattern)
{
    const FastenerPosition *missing = nullptr;
    for (const FastenerPosition &place : pattern.places)
        if (!contains(order, place.number) && (!missing || place.number < missing->number))
            missing = &place;
    if (missing)
        return fail(ErrorKind::OrderMissing, std::to_string(missing->number));
    return {};
}

/// The place that has the `turn`th turn of `count` places round a circle, both counted from 0: always the farthest from the last that had
/// none yet, of two the lower.
std::size_t spread(std::size_t turn, std::size_t count)
{
    const bool opposite = count % 2 == 0;
    return opposite ? turn / 2 + turn % 2 * (count / 2) : turn * ((count - 1) / 2) % count;
}

/// Four crosswise where the number divides by four, else opposite pairs, else one at a time; within these and from these to the next it
/// goes as far round as it can.
TighteningOrder starOrder(const Pattern &pattern)
{
    const std::size_t count = pattern.places.size();
    const std::size_t together = std::gcd(count, std::size_t{4});
    const std::size_t apart = count / together;
    TighteningOrder order;
    for (std::size_t turn = 0; turn < count; ++turn)
        order.push_back(pattern.places[spread(turn / together, apart) + spread(turn % together, together) * apart].number);
    return order;
}

struct Spot {
    int number;
    double x; ///< from the centre
    double y;
    [[nodiscard]] double fromCentre() const { return std::hypot(x, y); }
    [[nodiscard]] double from(const Spot &other) const { return std::hypot(x - other.x, y - other.y); }
};

/// The places seen from their centre of gravity, nearest first. Reckoned from the first place, since a small pattern far from the
/// origin would lose digits.
std::vector<Spot> spotsOf(const Pattern &pattern)
{
    std::vector<Spot> spots;
    double x = 0;
    double y = 0;
    for (const FastenerPosition &place : pattern.places) {
        const Spot &spot = spots.emplace_back(Spot{place.number, place.x - pattern.places[0].x, place.y - pattern.places[0].y});
        x += spot.x;
        y += spot.y;
    }
    for (Spot &spot : spots) {
        spot.x -= x / static_cast<double>(spots.size());
        spot.y -= y / static_cast<double>(spots.size());
    }
    std::sort(spots.begin(), spots.end(), [](const Spot &a, const Spot &b) { return a.fromCentre() < b.fromCentre(); });
    return spots;
}

/// Moves the spots of one distance into the order: the lowest number, then always the farthest from the last.
void placeEquallyFar(std::vector<Spot> spots, double tolerance, TighteningOrder &order)
{
    std::sort(spots.begin(), spots.end(), [](const Spot &a, const Spot &b) { return a.number < b.number; });
    for (auto next = spots.begin(); next != spots.end();) {
        const Spot last = *next;
        order.push_back(last.number);
        spots.erase(next);
        next = spots.begin();
        for (auto spot = spots.begin(); spot != spots.end(); ++spot)
            if (spot->from(last) > next->from(last) + tolerance)
                next = spot;
    }
}

TighteningOrder outwardOrder(const Pattern &pattern)
{
    const std::vector<Spot> spots = spotsOf(pattern);
    // Equal distances differ by the noise of computing them, about 1e-16 of the coordinates; a hand places no finer than this.
    const double tolerance = spots.empty() ? 0 : spots.back().fromCentre() * 1e-6;
    TighteningOrder order;
    for (auto begin = spots.begin(); begin != spots.end();) {
        const double far = begin->fromCentre() + tolerance;
        const auto end = std::find_if(begin, spots.end(), [far](const Spot &spot) { return spot.fromCentre() > far; });
        placeEquallyFar({begin, end}, tolerance, order);
        begin = end;
    }
    return order;
}

} // namespace

Result<TighteningOrder> parseOrder(std::string_view text, const Pattern &pattern)
{
    if (text.size() > longestOrderText)
        return fail(ErrorKind::TextTooLong, std::to_string(text.size()), std::to_string(longestOrderText));
    TighteningOrder order;
    const std::string plain = withoutArrows(text);
    for (const std::string_view word : wordsOf(plain, " ,-")) {
        const Result<int> number = readNumber(word, pattern);
        if (!number)
            return tl::unexpected(number.error());
        if (contains(order, *number))
            return fail(ErrorKind::OrderTwice, std::to_string(*number));
        order.push_back(*number);
    }
    if (Done complete = checkComplete(order, pattern); !complete)
        return tl::unexpected(complete.error());
    return order;
}

std::string writeOrder(const TighteningOrder &order)
{
    std::string text;
    for (const int number : order)
        text += (text.empty() ? "" : "-") + std::to_string(number);
    return text;
}

TighteningOrder generateOrder(const Pattern &pattern)
{
    return pattern.kind == PatternKind::Circle ? starOrder(pattern) : outwardOrder(pattern);
}

TighteningOrder looseningOrder(TighteningOrder order)
{
    std::reverse(order.begin(), order.end());
    return order;
}

} // namespace asleft
