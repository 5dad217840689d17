#include <measure/rational.h>

#include <gtest/gtest.h>

#include <limits>

namespace asleft {
namespace rational_tests {

constexpr std::int64_t int64Max = std::numeric_limits<std::int64_t>::max();
constexpr std::int64_t int64Min = std::numeric_limits<std::int64_t>::min();
const Int128 int128Max = (((Int128{1} << 126) - 1) * 2) + 1;
const Int128 int128Min = -int128Max - 1;

TEST(Rational, IsKeptInLowestTermsWithPositiveDenominator)
{
    const Rational value(6, -8);
    EXPECT_TRUE(value.numerator() == -3);
    EXPECT_TRUE(value.denominator() == 4);
    EXPECT_TRUE(value.isNegative());
    EXPECT_EQ(Rational(0, -5), Rational());
    EXPECT_EQ(Rational(-6, -8), Rational(3, 4));
    EXPECT_FALSE(Rational(-6, -8).isNegative());
    EXPECT_DOUBLE_EQ(value.toDouble(), -0.75);
}

TEST(Rational, AddsSubtractsAndMultipliesExactly)
{
    EXPECT_EQ(Rational(1, 6).plus(Rational(1, 10)), Rational(4, 15));
    EXPECT_EQ(Rational(1, 6).minus(Rational(1, 10)), Rational(1, 15));
    EXPECT_EQ(Rational(1, 10).minus(Rational(1, 6)), Rational(-1, 15));
    EXPECT_EQ(Rational(4, 9).times(Rational(-3, 8)), Rational(-1, 6));
    EXPECT_EQ(Rational(5).times(Rational()), Rational());
}

TEST(Rational, RoundsHalfToTheEvenNeighbour)
{
    struct Row {
        Rational value;
        std::int64_t rounded;
        std::int64_t floored;
    };
    const Row rows[] = {
        {Rational(1, 2), 0, 0},    {Rational(3, 2), 2, 1}, {Rational(5, 2), 2, 2}, {Rational(-1, 2), 0, -1},  {Rational(-3, 2), -2, -2},
        {Rational(-5, 2), -2, -3}, {Rational(7, 3), 2, 2}, {Rational(8, 3), 3, 2}, {Rational(-7, 3), -2, -3}, {Rational(-8, 3), -3, -3},
        {Rational(4), 4, 4},       {Rational(-4), -4, -4}, {Rational(), 0, 0},
    };
    for (const Row &row : rows) {
        EXPECT_EQ(row.value.rounded(), row.rounded) << row.value.toDouble();
        EXPECT_EQ(row.value.floored(), row.floored) << row.value.toDouble();
    }
}

TEST(Rational, RoundsOnlyIntoInt64)
{
    EXPECT_EQ(Rational(int64Max).rounded(), int64Max);
    EXPECT_EQ(Rational(int64Min).rounded(), int64Min);
    EXPECT_EQ(Rational(Int128{int64Max} + 1).rounded(), std::nullopt);
    EXPECT_EQ(Rational(Int128{int64Min} - 1).rounded(), std::nullopt);
    EXPECT_EQ(Rational(Int128{int64Max} * 2 + 1, 2).rounded(), std::nullopt); // half way, and the even neighbour is outside
    EXPECT_EQ(Rational(Int128{int64Max} * 2 + 1, 2).floored(), int64Max);
    EXPECT_EQ(Rational(Int128{int64Min} * 2 - 1, 2).floored(), std::nullopt);
    EXPECT_EQ(Rational(int128Max, 3).floored(), std::nullopt);
}

TEST(Rational, GivesNothingWhereTheResultDoesNotFit)
{
    const Rational greatest(int128Max);
    const Rational least(int128Min);
    EXPECT_EQ(greatest.plus(Rational(1)), std::nullopt);
    EXPECT_EQ(least.minus(Rational(1)), std::nullopt);
    EXPECT_EQ(least.plus(least), std::nullopt);
    EXPECT_EQ(greatest.times(Rational(2)), std::nullopt);
    EXPECT_EQ(least.times(Rational(-1)), std::nullopt);
    EXPECT_EQ(Rational(1, int128Max).times(Rational(1, 2)), std::nullopt);
    EXPECT_EQ(Rational(1, int128Max).plus(Rational(1, int128Max - 1)), std::nullopt);
    EXPECT_EQ(Rational(int128Max, 3).plus(Rational(1, 7)), std::nullopt);
}

TEST(Rational, CancelsBeforeItGivesUp)
{
    EXPECT_EQ(Rational(int128Max).times(Rational(1, int128Max)), Rational(1));
    EXPECT_EQ(Rational(int128Max, 2).times(Rational(2, 3)), Rational(int128Max, 3));
    EXPECT_EQ(Rational(1, int128Max).plus(Rational(2, int128Max)), Rational(3, int128Max));
    EXPECT_EQ(Rational(int128Min).plus(Rational(1)), Rational(-int128Max));
    EXPECT_EQ(Rational(int128Min, 2), Rational(int128Min / 2));
}

} // namespace rational_tests
} // namespace asleft
