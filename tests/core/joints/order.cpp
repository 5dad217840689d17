#include "patterns.h"

#include <joints/order.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace asleft {
namespace order_tests {

std::string generated(const Result<Pattern> &pattern)
{
    return writeOrder(generateOrder(pattern.value()));
}

std::string loosening(const Result<Pattern> &pattern)
{
    return writeOrder(looseningOrder(generateOrder(pattern.value())));
}

Error refusal(std::string_view text, const Result<Pattern> &pattern)
{
    const auto order = parseOrder(text, pattern.value());
    return order ? Error{} : order.error();
}

/// The pattern drawn elsewhere: turned, sized and moved.
Pattern redrawn(Pattern pattern, double radians, double size, double x, double y)
{
    for (FastenerPosition &place : pattern.places) {
        const double oldX = place.x;
        place.x = size * (oldX * std::cos(radians) - place.y * std::sin(radians)) + x;
        place.y = size * (oldX * std::sin(radians) + place.y * std::cos(radians)) + y;
    }
    return pattern;
}

TEST(Order, StarOfACircle)
{
    // ASME PCC-1, from memory.
    EXPECT_EQ(generated(circlePattern(4)), "1-3-2-4");
    EXPECT_EQ(generated(circlePattern(8)), "1-5-3-7-2-6-4-8");
    EXPECT_EQ(generated(circlePattern(12)), "1-7-4-10-2-8-5-11-3-9-6-12");
    EXPECT_EQ(generated(circlePattern(16)), "1-9-5-13-3-11-7-15-2-10-6-14-4-12-8-16");
    EXPECT_EQ(generated(circlePattern(20)), "1-11-6-16-3-13-8-18-5-15-10-20-2-12-7-17-4-14-9-19");
    EXPECT_EQ(generated(circlePattern(24)), "1-13-7-19-4-16-10-22-2-14-8-20-5-17-11-23-3-15-9-21-6-18-12-24");
    // The same rule where the number of pairs is odd.
    EXPECT_EQ(generated(circlePattern(2)), "1-2");
    EXPECT_EQ(generated(circlePattern(6)), "1-4-2-5-3-6");
    EXPECT_EQ(generated(circlePattern(10)), "1-6-3-8-5-10-2-7-4-9");
}

TEST(Order, StarOfAnOddCircle)
{
    EXPECT_EQ(generated(circlePattern(3)), "1-2-3");
    EXPECT_EQ(generated(circlePattern(5)), "1-3-5-2-4");
    EXPECT_EQ(generated(circlePattern(7)), "1-4-7-3-6-2-5");
}

TEST(Order, RowFromItsCentre)
{
    // Published for a row of four head screws, with its loosening order.
    EXPECT_EQ(generated(rowPattern(4)), "2-3-1-4");
    EXPECT_EQ(loosening(rowPattern(4)), "4-1-3-2");
    EXPECT_EQ(generated(rowPattern(1)), "1");
    EXPECT_EQ(generated(rowPattern(2)), "1-2");
    EXPECT_EQ(generated(rowPattern(5)), "3-2-4-1-5");
    EXPECT_EQ(generated(rowPattern(6)), "3-4-2-5-1-6");
}

TEST(Order, RowsAndOutlinesFromTheirCentre)
{
    EXPECT_EQ(generated(rowsPattern(2, 2)), "1-4-2-3");
    // Of the four beside the middle pair 2 has the lowest number and 9 lies farthest from it; the ends go the same way.
    EXPECT_EQ(generated(rowsPattern(2, 5)), "3-8-2-9-7-4-1-10-6-5");
    EXPECT_EQ(generated(rectanglePattern(2, 2)), "1-3-2-4");
    // 1 2 3 on top, 4 at the right, 5 6 7 below, 8 at the left: the middles of the sides come before the corners.
    EXPECT_EQ(generated(rectanglePattern(3, 3)), "2-6-4-8-1-5-3-7");
}

TEST(Order, GoesByTheNumbersOfARow)
{
    const int fromTheRight[] = {4, 3, 2, 1};
    EXPECT_EQ(generated(renumbered(rowPattern(4).value(), fromTheRight)), "2-3-1-4");
    const int asAManualHasIt[] = {11, 12, 21, 22};
    EXPECT_EQ(generated(renumbered(rowPattern(4).value(), asAManualHasIt)), "12-21-11-22");
}

TEST(Order, StarGoesByThePlaceAndWritesTheNumber)
{
    const int anticlockwise[] = {1, 8, 7, 6, 5, 4, 3, 2};
    EXPECT_EQ(generated(renumbered(circlePattern(8).value(), anticlockwise)), "1-5-7-3-8-4-6-2");
    const int crosswise[] = {1, 3, 2, 4}; // numbered in the order of tightening, as some manuals do
    EXPECT_EQ(generated(renumbered(circlePattern(4).value(), crosswise)), "1-2-3-4");
}

TEST(Order, EveryEvenCircleGoesByOppositePairs)
{
    for (int count = 2; count <= mostFasteners; count += 2) {
        const Pattern circle = circlePattern(count).value();
        const TighteningOrder order = generateOrder(circle);
        ASSERT_EQ(order.size(), static_cast<std::size_t>(count));
        for (std::size_t i = 0; i < order.size(); i += 2) {
            const FastenerPosition &one = *circle.place(order[i]);
            const FastenerPosition &other = *circle.place(order[i + 1]);
            EXPECT_NEAR(one.x + other.x, 0, 1e-9) << count << ": " << one.number << ", " << other.number;
            EXPECT_NEAR(one.y + other.y, 0, 1e-9) << count << ": " << one.number << ", " << other.number;
        }
    }
}

/// How far these places lie apart round a circle of so many.
int apart(int one, int other, int count)
{
    const int there = std::abs(one - other) % count;
    return std::min(there, count - there);
}

TEST(Order, EveryFourOfAnEvenCircleIsBalanced)
{
    for (int count = 4; count <= mostFasteners; count += 4) {
        const Pattern circle = circlePattern(count).value();
        const TighteningOrder order = generateOrder(circle);
        for (std::size_t four = 0; four < order.size(); four += 4) {
            TighteningOrder numbers(order.begin() + static_cast<std::ptrdiff_t>(four),
                                    order.begin() + static_cast<std::ptrdiff_t>(four) + 4);
            std::sort(numbers.begin(), numbers.end());
            for (std::size_t i = 1; i < numbers.size(); ++i)
                EXPECT_EQ(numbers[i] - numbers[i - 1], count / 4) << count << " at " << four;
        }
    }
}

constexpr int leastInCircle = 2;

TEST(Order, EveryNextGroupOfACircleIsTheFarthestLeft)
{
    for (int count = leastInCircle; count <= mostFasteners; ++count) {
        const int together = std::gcd(count, 4);
        const int groups = count / together;
        const TighteningOrder order = generateOrder(circlePattern(count).value());
        std::vector<int> left(static_cast<std::size_t>(groups));
        std::iota(left.begin(), left.end(), 0);
        std::erase(left, 0);
        for (std::size_t turn = static_cast<std::size_t>(together); turn < order.size(); turn += static_cast<std::size_t>(together)) {
            const int last = (order[turn - static_cast<std::size_t>(together)] - 1) % groups;
            const int now = (order[turn] - 1) % groups;
            for (const int other : left)
                EXPECT_GE(apart(now, last, groups), apart(other, last, groups)) << count << ": " << now << " after " << last;
            EXPECT_EQ(std::erase(left, now), 1U) << count << ": " << now;
        }
    }
}

TEST(Order, IsAPermutationAndLooseningItsReverse)
{
    for (int count = 1; count <= mostFasteners; ++count)
        for (const Pattern &pattern : everyPattern(count)) {
            const TighteningOrder order = generateOrder(pattern);
            TighteningOrder sorted = order;
            std::sort(sorted.begin(), sorted.end());
            TighteningOrder numbers(static_cast<std::size_t>(count));
            std::iota(numbers.begin(), numbers.end(), 1);
            ASSERT_EQ(sorted, numbers) << writePattern(pattern);

            ASSERT_EQ(looseningOrder(order), TighteningOrder(order.rbegin(), order.rend())) << writePattern(pattern);
            ASSERT_EQ(parseOrder(writeOrder(order), pattern), order) << writePattern(pattern);
        }
}

TEST(Order, GoesOutwardForAllButCircles)
{
    for (int count = 1; count <= mostFasteners; ++count)
        for (const Pattern &pattern : everyPattern(count)) {
            if (pattern.kind == PatternKind::Circle)
                continue;
            double middleX = 0;
            double middleY = 0;
            for (const FastenerPosition &place : pattern.places) {
                middleX += place.x / count;
                middleY += place.y / count;
            }
            double last = 0;
            for (const int number : generateOrder(pattern)) {
                const FastenerPosition &place = *pattern.place(number);
                const double distance = std::hypot(place.x - middleX, place.y - middleY);
                ASSERT_GE(distance, last - 0.001) << writePattern(pattern) << " at " << number;
                last = distance;
            }
        }
}

TEST(Order, FloatingNoiseDecidesNothing)
{
    for (int count = 1; count <= 60; ++count)
        for (const Pattern &pattern : everyPattern(count)) {
            const TighteningOrder order = generateOrder(pattern);
            EXPECT_EQ(generateOrder(pattern), order);
            EXPECT_EQ(generateOrder(redrawn(pattern, 0.7, 1, 0, 0)), order) << writePattern(pattern);
            EXPECT_EQ(generateOrder(redrawn(pattern, 2.9, 37.3, 0.1, -0.7)), order) << writePattern(pattern);
            EXPECT_EQ(generateOrder(redrawn(pattern, 1.1, 1.0 / 3, 987654.3, -999999.1)), order) << writePattern(pattern);
        }
}

TEST(Order, ReadsWhatAManualPrints)
{
    const Pattern row = rowPattern(4).value();
    const TighteningOrder wanted{2, 3, 1, 4};
    for (const char *text : {"2-3-1-4", "2 3 1 4", "2, 3, 1, 4", "2,3,1,4", "2 - 3 - 1 - 4", "2–3–1–4", "2 — 3 — 1 — 4", "2→3→1→4",
                             "2 -> 3->1 -> 4", "  2-3\n1-4\n", "2,3,\r\n1,4", "02\t3\t1\t4", "2\u00a03\u00a01\u00a04", "2‑3−1‐4"})
        EXPECT_EQ(parseOrder(text, row), wanted) << text;
    EXPECT_EQ(writeOrder(wanted), "2-3-1-4");
    EXPECT_EQ(writeOrder({}), "");
}

TEST(Order, RefusesWhatIsNone)
{
    const auto row = rowPattern(4);
    EXPECT_EQ(refusal("2-x-1-4", row), (Error{ErrorKind::OrderUnread, {"x"}}));
    EXPECT_EQ(refusal("2-3a-1-4", row), (Error{ErrorKind::OrderUnread, {"3a"}}));
    EXPECT_EQ(refusal("2.3.1.4", row), (Error{ErrorKind::OrderUnread, {"2.3.1.4"}}));
    EXPECT_EQ(refusal("2 > 3", row), (Error{ErrorKind::OrderUnread, {">"}}));
    EXPECT_EQ(refusal("2-\xff-1-4", row), (Error{ErrorKind::OrderUnread, {"\xff"}}));
    EXPECT_EQ(refusal("2-5-1-4", row), (Error{ErrorKind::OrderUnknown, {"5"}}));
    EXPECT_EQ(refusal("0-1-2-3-4", row), (Error{ErrorKind::OrderUnknown, {"0"}}));
    EXPECT_EQ(refusal("2-99999999999999999999-1-4", row), (Error{ErrorKind::OrderUnknown, {"99999999999999999999"}}));
    EXPECT_EQ(refusal("2-3-2-4", row), (Error{ErrorKind::OrderTwice, {"2"}}));
    EXPECT_EQ(refusal("2-3-1-4-1", row), (Error{ErrorKind::OrderTwice, {"1"}}));
    EXPECT_EQ(refusal("4-1", row), (Error{ErrorKind::OrderMissing, {"2"}}));
    EXPECT_EQ(refusal("", row), (Error{ErrorKind::OrderMissing, {"1"}}));
    EXPECT_EQ(refusal(" - ,\n→", row), (Error{ErrorKind::OrderMissing, {"1"}}));
    EXPECT_EQ(refusal(std::string(4001, ' '), row), (Error{ErrorKind::TextTooLong, {"4001", "4000"}}));
    const int fromTheRight[] = {4, 3, 2, 1};
    EXPECT_EQ(refusal("1-4", renumbered(row.value(), fromTheRight)), (Error{ErrorKind::OrderMissing, {"2"}}));
}

TEST(Order, TheLongestOrderIsReadHoweverItIsParted)
{
    std::vector<int> numbers(mostFasteners);
    std::iota(numbers.begin(), numbers.end(), 800);
    const Pattern pattern = renumbered(rowPattern(mostFasteners).value(), numbers).value();
    std::string text;
    for (const int number : numbers)
        text += (text.empty() ? "" : "  →  \r\n") + std::to_string(number);
    EXPECT_EQ(parseOrder(text, pattern), numbers);
}

} // namespace order_tests
} // namespace asleft
