#include <engine/adjuster.h>

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numeric>

namespace asleft {
namespace adjuster_tests {

TEST(Adjuster, TurnsOfAScrew)
{
    // 0.07 mm at 1 mm pitch, ratio 1, is about a fourteenth of a turn: common practice, no source.
    const double turns = screwTurns(micrometres(70), {micrometres(1000), 1.0});
    EXPECT_NEAR(turns, 1.0 / 14, 0.002);
    EXPECT_EQ(nearestSimpleFraction(turns), (SimpleFraction{1, 14}));
}

TEST(Adjuster, PitchAndRatioDivide)
{
    EXPECT_DOUBLE_EQ(screwTurns(micrometres(150), {micrometres(750), 1.0}), 0.2);
    EXPECT_DOUBLE_EQ(screwTurns(micrometres(150), {micrometres(1000), 1.5}), 0.1);
    EXPECT_DOUBLE_EQ(screwTurns(micrometres(-150), {micrometres(1000), 1.5}), -0.1); // too tight: back the screw off
    EXPECT_DOUBLE_EQ(screwTurns(Length{}, {micrometres(1000), 1.5}), 0.0);
}

TEST(Adjuster, FractionsAsSaid)
{
    EXPECT_EQ(nearestSimpleFraction(0.07), (SimpleFraction{1, 14}));
    EXPECT_EQ(nearestSimpleFraction(0.4), (SimpleFraction{2, 5}));
    EXPECT_EQ(nearestSimpleFraction(0.25), (SimpleFraction{1, 4}));
    EXPECT_EQ(nearestSimpleFraction(0.26), (SimpleFraction{1, 4}));
    EXPECT_EQ(nearestSimpleFraction(1.5), (SimpleFraction{3, 2}));
    EXPECT_EQ(nearestSimpleFraction(2.9), (SimpleFraction{3, 1}));
    EXPECT_EQ(nearestSimpleFraction(3.0), (SimpleFraction{3, 1}));
    EXPECT_EQ(nearestSimpleFraction(1.0), (SimpleFraction{1, 1}));
}

TEST(Adjuster, NoFractionWhereNoneIsSaid)
{
    for (const double value : {0.0, -0.25, 0.031, 0.04, 3.01, 1e300, std::numeric_limits<double>::infinity(),
                               -std::numeric_limits<double>::infinity(), std::numeric_limits<double>::quiet_NaN()})
        EXPECT_EQ(nearestSimpleFraction(value), std::nullopt) << value;
}

TEST(Adjuster, EveryFractionIsNearAndTheSimplest)
{
    for (int thousandths = 1; thousandths <= 3100; ++thousandths) {
        const double value = thousandths / 1000.0;
        const auto near = [value](int n, int d) { return std::abs(static_cast<double>(n) / d - value) <= value / 20 + 1e-12; };
        std::optional<int> smallest;
        for (int d = 1; d <= 16 && !smallest; ++d)
            for (int n = 1; n <= 4 * d && !smallest; ++n)
                if (near(n, d))
                    smallest = d;
        if (value < 1.0 / 32 || value > 3)
            smallest.reset();

        const auto said = nearestSimpleFraction(value);
        ASSERT_EQ(said.has_value(), smallest.has_value()) << value;
        if (!said)
            continue;
        EXPECT_TRUE(near(said->numerator, said->denominator)) << value;
        EXPECT_EQ(said->denominator, *smallest) << value;
        EXPECT_EQ(std::gcd(said->numerator, said->denominator), 1) << value;
    }
}

} // namespace adjuster_tests
} // namespace asleft
