#include "patterns.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace asleft {
namespace pattern_tests {

Error refusal(const Result<Pattern> &pattern)
{
    return pattern ? Error{} : pattern.error();
}

Error countRefusal(const std::string &count, const std::string &fewest, const std::string &most)
{
    return {ErrorKind::PatternCount, {count, fewest, most}};
}

double distance(const FastenerPosition &a, const FastenerPosition &b)
{
    return std::hypot(a.x - b.x, a.y - b.y);
}

/// From place to place round an outline, the last to the first too.
std::vector<double> stepsRound(const Pattern &pattern)
{
    std::vector<double> steps;
    for (std::size_t i = 0; i < pattern.places.size(); ++i)
        steps.push_back(distance(pattern.places[i], pattern.places[(i + 1) % pattern.places.size()]));
    return steps;
}

/// Twice the area the places enclose; positive where they go clockwise, y pointing down.
double turning(const Pattern &pattern)
{
    double sum = 0;
    for (std::size_t i = 0; i < pattern.places.size(); ++i) {
        const FastenerPosition &a = pattern.places[i];
        const FastenerPosition &b = pattern.places[(i + 1) % pattern.places.size()];
        sum += a.x * b.y - b.x * a.y;
    }
    return sum;
}

/// Whether each place, its signs changed, is a place as well.
bool mirrors(const Pattern &pattern, double signX, double signY)
{
    return std::all_of(pattern.places.begin(), pattern.places.end(), [&](const FastenerPosition &place) {
        const FastenerPosition wanted{1, signX * place.x, signY * place.y};
        return std::any_of(pattern.places.begin(), pattern.places.end(),
                           [&](const FastenerPosition &other) { return distance(wanted, other) < 1e-9; });
    });
}

std::vector<std::pair<double, double>> placesOf(const Result<Pattern> &pattern)
{
    std::vector<std::pair<double, double>> places;
    for (const FastenerPosition &place : pattern.value().places)
        places.emplace_back(place.x, place.y);
    return places;
}

Pattern twoAt(double x, double y)
{
    return {PatternKind::Free, {{1, 0, 0}, {2, x, y}}};
}

TEST(Pattern, PlacesOfRowsAndRectangles)
{
    using Places = std::vector<std::pair<double, double>>;
    EXPECT_EQ(placesOf(rowPattern(3)), (Places{{0, 0}, {1, 0}, {2, 0}}));
    EXPECT_EQ(placesOf(rowsPattern(2, 2)), (Places{{0, 0}, {1, 0}, {0, 1}, {1, 1}}));
    EXPECT_EQ(placesOf(rectanglePattern(3, 2)), (Places{{0, 0}, {1, 0}, {2, 0}, {2, 1}, {1, 1}, {0, 1}}));
}

TEST(Pattern, ACircleStartsAtItsTopAndGoesClockwise)
{
    for (int count = 2; count <= mostFasteners; ++count) {
        const Pattern circle = circlePattern(count).value();
        EXPECT_NEAR(circle.places[0].x, 0, 1e-9);
        EXPECT_LT(circle.places[0].y, 0);
        for (const double step : stepsRound(circle))
            EXPECT_NEAR(step, 1, 1e-9) << count;
        if (count > 2) {
            EXPECT_GT(turning(circle), 0) << count;
        }
    }
}

TEST(Pattern, ACoverIsEvenSymmetricAndOblong)
{
    for (int count = 3; count <= mostFasteners; ++count) {
        const Pattern cover = coverPattern(count).value();
        ASSERT_EQ(cover.places.size(), static_cast<std::size_t>(count));
        const std::vector<double> steps = stepsRound(cover);
        EXPECT_NEAR(*std::min_element(steps.begin(), steps.end()), 1, 1e-9) << count;
        EXPECT_LT(*std::max_element(steps.begin(), steps.end()), 1.55) << count;
        EXPECT_GT(turning(cover), 0) << count;
        EXPECT_TRUE(mirrors(cover, -1, 1)) << count;
        EXPECT_EQ(mirrors(cover, 1, -1), count % 2 == 0) << count;
        EXPECT_LT(cover.places[0].x, 0) << count;
        EXPECT_LT(cover.places[0].y, 0) << count;
        EXPECT_TRUE(checkedPattern(cover)) << count;
    }
}

TEST(Pattern, ACoverIsTwiceAsWideAsHigh)
{
    const Pattern cover = coverPattern(200).value();
    const auto [left, right] = std::minmax_element(cover.places.begin(), cover.places.end(), [](auto &a, auto &b) { return a.x < b.x; });
    const auto [top, bottom] = std::minmax_element(cover.places.begin(), cover.places.end(), [](auto &a, auto &b) { return a.y < b.y; });
    EXPECT_NEAR((right->x - left->x) / (bottom->y - top->y), 2, 0.02);
}

TEST(Pattern, EveryOneIsNumberedFromOneAndPasses)
{
    for (int count = 1; count <= mostFasteners; ++count)
        for (const Pattern &pattern : everyPattern(count)) {
            ASSERT_EQ(pattern.places.size(), static_cast<std::size_t>(count));
            for (int i = 0; i < count; ++i)
                ASSERT_EQ(pattern.places[static_cast<std::size_t>(i)].number, i + 1);
            ASSERT_EQ(checkedPattern(pattern), pattern) << writePattern(pattern);
        }
}

TEST(Pattern, FindsAPlaceByItsNumber)
{
    const int numbers[] = {7, 5, 3};
    const Pattern pattern = renumbered(rowPattern(3).value(), numbers).value();
    ASSERT_NE(pattern.place(3), nullptr);
    EXPECT_EQ(pattern.place(3)->x, 2);
    EXPECT_EQ(pattern.place(1), nullptr);
}

TEST(Pattern, MakersRefuseCounts)
{
    constexpr int huge = std::numeric_limits<int>::max();
    EXPECT_EQ(refusal(rowPattern(0)), countRefusal("0", "1", "200"));
    EXPECT_EQ(refusal(rowPattern(201)), countRefusal("201", "1", "200"));
    EXPECT_EQ(refusal(rowPattern(-3)), countRefusal("-3", "1", "200"));
    EXPECT_EQ(refusal(rowsPattern(1, 4)), countRefusal("1", "2", "10"));
    EXPECT_EQ(refusal(rowsPattern(11, 4)), countRefusal("11", "2", "10"));
    EXPECT_EQ(refusal(rowsPattern(2, 101)), countRefusal("202", "2", "200"));
    EXPECT_EQ(refusal(rowsPattern(3, 0)), countRefusal("0", "3", "200"));
    EXPECT_EQ(refusal(rowsPattern(10, huge)), countRefusal("21474836470", "10", "200"));
    EXPECT_EQ(refusal(circlePattern(1)), countRefusal("1", "2", "200"));
    EXPECT_EQ(refusal(circlePattern(10'000)), countRefusal("10000", "2", "200"));
    EXPECT_EQ(refusal(rectanglePattern(1, 4)), countRefusal("1", "2", "100"));
    EXPECT_EQ(refusal(rectanglePattern(4, -1)), countRefusal("-1", "2", "100"));
    EXPECT_EQ(refusal(rectanglePattern(2, 101)), countRefusal("202", "4", "200"));
    EXPECT_EQ(refusal(rectanglePattern(huge, huge)), countRefusal("8589934584", "4", "200"));
    EXPECT_EQ(refusal(coverPattern(2)), countRefusal("2", "3", "200"));
    EXPECT_EQ(refusal(coverPattern(201)), countRefusal("201", "3", "200"));
}

TEST(Pattern, ReadsWhatIsSaid)
{
    const std::pair<const char *, Result<Pattern>> rows[] = {
        {"1", rowPattern(1)},
        {" 12 ", rowPattern(12)},
        {"012", rowPattern(12)},
        {"row of 4", rowPattern(4)},
        {"A row of 4", rowPattern(4)},
        {"4 in a row", rowPattern(4)},
        {"1 row of 7", rowPattern(7)},
        {"2 rows of 7", rowsPattern(2, 7)},
        {"2 row of 7", rowsPattern(2, 7)},
        {"2ROWSOF7", rowsPattern(2, 7)},
        {"12 around a circle", circlePattern(12)},
        {"12 round a circle", circlePattern(12)},
        {"8 in a circle", circlePattern(8)},
        {"8\u00a0in a\tcircle\n", circlePattern(8)},
        {"circle of 8", circlePattern(8)},
        {"Circles of 8", circlePattern(8)},
        {"4 by 6 rectangle", rectanglePattern(4, 6)},
        {"4 × 6 Rectangle", rectanglePattern(4, 6)},
        {"4x6 rectangles", rectanglePattern(4, 6)},
        {"rectangle of 4 by 6", rectanglePattern(4, 6)},
        {"rectangle of 6×4", rectanglePattern(6, 4)},
        {"12 around a cover", coverPattern(12)},
        {"12 around the cover", coverPattern(12)},
        {"COVER OF 12", coverPattern(12)},
    };
    for (const auto &[text, wanted] : rows)
        EXPECT_EQ(parsePattern(text), wanted) << text;
}

TEST(Pattern, RefusesWhatIsNone)
{
    for (const char *text : {"",
                             "   ",
                             "circle",
                             "twelve",
                             "12 around",
                             "rows of 4",
                             "2 rows",
                             "-4",
                             "4.5",
                             "4,5",
                             "10 000",
                             "1 2 around a circle",
                             "12 around a square",
                             "4 by 6",
                             "4 by rectangle",
                             "2 rows of 7 rows",
                             "12 placed by hand",
                             "#",
                             "# around a circle",
                             "#by#rectangle",
                             "12 around a circle!",
                             "\xff\xfe",
                             "12 around a circ\xc3"})
        EXPECT_EQ(refusal(parsePattern(text)), (Error{ErrorKind::PatternUnread, {text}})) << text;
}

TEST(Pattern, RefusesCountsAndLengths)
{
    EXPECT_EQ(refusal(parsePattern("0")), countRefusal("0", "1", "200"));
    EXPECT_EQ(refusal(parsePattern("10000")), countRefusal("10000", "1", "200"));
    EXPECT_EQ(refusal(parsePattern("0 around a circle")), countRefusal("0", "2", "200"));
    EXPECT_EQ(refusal(parsePattern("10000 around a circle")), countRefusal("10000", "2", "200"));
    EXPECT_EQ(refusal(parsePattern("0 rows of 7")), countRefusal("0", "2", "10"));
    EXPECT_EQ(refusal(parsePattern("2 rows of 0")), countRefusal("0", "2", "200"));
    EXPECT_EQ(refusal(parsePattern("1 by 6 rectangle")), countRefusal("1", "2", "100"));
    EXPECT_EQ(refusal(parsePattern("cover of 2")), countRefusal("2", "3", "200"));
    EXPECT_EQ(refusal(parsePattern("99999999999 in a row")), countRefusal("99999999999", "1", "200"));
    EXPECT_EQ(refusal(parsePattern(std::string(201, '1'))), (Error{ErrorKind::TextTooLong, {"201", "200"}}));
    EXPECT_TRUE(parsePattern("12" + std::string(198, ' ')));
}

TEST(Pattern, EveryOneIsReadAgainAsWritten)
{
    for (int count = 1; count <= mostFasteners; ++count)
        for (const Pattern &pattern : everyPattern(count)) {
            const std::string text = writePattern(pattern);
            if (pattern.kind == PatternKind::Free) {
                EXPECT_EQ(text, std::to_string(count) + " placed by hand");
            } else {
                ASSERT_EQ(parsePattern(text), pattern) << text;
            }
        }
}

TEST(Pattern, IsWrittenInPlainWords)
{
    EXPECT_EQ(writePattern(rowPattern(4).value()), "row of 4");
    EXPECT_EQ(writePattern(rowsPattern(2, 7).value()), "2 rows of 7");
    EXPECT_EQ(writePattern(circlePattern(12).value()), "12 around a circle");
    EXPECT_EQ(writePattern(rectanglePattern(4, 6).value()), "4 by 6 rectangle");
    EXPECT_EQ(writePattern(coverPattern(12).value()), "12 around a cover");
}

TEST(Pattern, RowsThatLostTheirShapeAreWrittenAsPlaced)
{
    Pattern rows = rowsPattern(2, 3).value();
    rows.places.pop_back();
    EXPECT_EQ(writePattern(rows), "5 placed by hand");
    rows.places.resize(3);
    EXPECT_EQ(writePattern(rows), "3 placed by hand");
    Pattern rectangle = rectanglePattern(4, 6).value();
    rectangle.places.pop_back();
    EXPECT_EQ(writePattern(rectangle), "15 placed by hand");
    EXPECT_EQ(writePattern({PatternKind::Rows, {}}), "0 placed by hand");
    EXPECT_EQ(writePattern({PatternKind::Rectangle, {}}), "0 placed by hand");
}

TEST(Pattern, ChecksWhatWasPlacedByHand)
{
    EXPECT_TRUE(checkedPattern(twoAt(0.1, 0)));
    EXPECT_TRUE(checkedPattern({PatternKind::Free, {{1, 0.2, 0}, {2, 0.3, 0}}})); // 0.3 - 0.2 is a little under a tenth as doubles go
    EXPECT_EQ(refusal(checkedPattern(twoAt(0.07, 0.07))), (Error{ErrorKind::PlacesTooClose, {"1", "2"}}));
    EXPECT_EQ(refusal(checkedPattern(twoAt(0, 0))), (Error{ErrorKind::PlacesTooClose, {"1", "2"}}));

    EXPECT_TRUE(checkedPattern(twoAt(1e6, -1e6)));
    EXPECT_EQ(refusal(checkedPattern(twoAt(1000001, 0))), (Error{ErrorKind::PatternUnread, {"1000001"}}));
    EXPECT_EQ(refusal(checkedPattern(twoAt(0, -1e300))), (Error{ErrorKind::PatternUnread, {"-1e+300"}}));
    EXPECT_EQ(refusal(checkedPattern(twoAt(std::numeric_limits<double>::quiet_NaN(), 0))).kind, ErrorKind::PatternUnread);
    EXPECT_EQ(refusal(checkedPattern(twoAt(0, std::numeric_limits<double>::infinity()))), (Error{ErrorKind::PatternUnread, {"inf"}}));

    EXPECT_EQ(refusal(checkedPattern({PatternKind::Free, {}})), countRefusal("0", "1", "200"));
    Pattern many = rowPattern(200).value();
    many.places.push_back({201, 300, 0});
    EXPECT_EQ(refusal(checkedPattern(many)), countRefusal("201", "1", "200"));
}

TEST(Pattern, ChecksNumbers)
{
    EXPECT_TRUE(checkedPattern({PatternKind::Free, {{999, 0, 0}, {1, 1, 0}}}));
    for (const int wrong : {0, -1, 1000, std::numeric_limits<int>::min()})
        EXPECT_EQ(refusal(checkedPattern({PatternKind::Free, {{wrong, 0, 0}}})),
                  (Error{ErrorKind::PatternNumber, {std::to_string(wrong)}}));
    EXPECT_EQ(refusal(checkedPattern({PatternKind::Free, {{4, 0, 0}, {5, 1, 0}, {4, 2, 0}}})), (Error{ErrorKind::PatternNumber, {"4"}}));
}

TEST(Pattern, RenumberingKeepsAllElse)
{
    Pattern row = rowPattern(3).value();
    row.places[1].thread = "M8";
    row.places[2].length = "60 mm";
    const int numbers[] = {30, 20, 10};
    Pattern wanted = row;
    for (std::size_t i = 0; i < 3; ++i)
        wanted.places[i].number = numbers[i];
    EXPECT_EQ(renumbered(row, numbers), wanted);
}

TEST(Pattern, RenumberingRefuses)
{
    const Pattern row = rowPattern(3).value();
    const auto refused = [&](const std::vector<int> &numbers) { return refusal(renumbered(row, numbers)); };
    EXPECT_EQ(refused({1, 2}), countRefusal("2", "3", "3"));
    EXPECT_EQ(refused({1, 2, 3, 4}), countRefusal("4", "3", "3"));
    EXPECT_EQ(refused({}), countRefusal("0", "3", "3"));
    EXPECT_EQ(refused({1, 2, 1}), (Error{ErrorKind::PatternNumber, {"1"}}));
    EXPECT_EQ(refused({1, 0, 3}), (Error{ErrorKind::PatternNumber, {"0"}}));
    EXPECT_EQ(refused({1000, 2, 3}), (Error{ErrorKind::PatternNumber, {"1000"}}));
}

} // namespace pattern_tests
} // namespace asleft
