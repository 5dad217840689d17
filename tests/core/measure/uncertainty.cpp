// How far a reading may be off, and what is proved in spite of it.
#include <measure/instrument.h>
#include <measure/judge.h>

#include <gsl/gsl_cdf.h>
#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace asleft {
namespace uncertainty_tests {

constexpr auto mm = LengthUnit::Millimetre;

Length hundredths(std::int64_t count)
{
    return micrometres(10 * count);
}
Band<Length> band(std::string_view text)
{
    return parseBand<Length>(text, mm).value();
}
Torque newtonMetres(std::int64_t whole)
{
    return Torque::ofSmallest(whole * 1'000'000'000);
}

// The rule of ISO 14253-1 for a band of 0.20 to 0.30 mm and U = 0.02: proved inside 0.22 to 0.28, proved outside at or below 0.18
// and at or above 0.32, between them too close to call.
TEST(Iso14253, ProvesInsideAndOutside)
{
    const Band<Length> spec = band("0.20-0.30 mm");
    const Length u = hundredths(2);
    const Length hair = nanometres(1);
    const auto verdict = [&](Length value) { return judge(Interval<Length>::within(value, u), spec); };
    EXPECT_EQ(verdict(hundredths(22)), Verdict::Inside);
    EXPECT_EQ(verdict(hundredths(28)), Verdict::Inside);
    EXPECT_EQ(verdict(hundredths(25)), Verdict::Inside);
    EXPECT_EQ(verdict(hundredths(18)), Verdict::Low);
    EXPECT_EQ(verdict(hundredths(10)), Verdict::Low);
    EXPECT_EQ(verdict(hundredths(32)), Verdict::High);
    EXPECT_EQ(verdict(hundredths(40)), Verdict::High);
    for (const Length close :
         {hundredths(22) - hair, hundredths(20), hundredths(18) + hair, hundredths(28) + hair, hundredths(30), hundredths(32) - hair})
        EXPECT_EQ(verdict(close), Verdict::TooClose) << close.smallest();
}

TEST(Iso14253, OfOneLimitAndWithoutUncertainty)
{
    const Length u = hundredths(2);
    const auto verdict = [](Length value, Length off, std::string_view spec) {
        return judge(Interval<Length>::within(value, off), band(spec));
    };
    EXPECT_EQ(verdict(hundredths(22), u, "at least 0.20 mm"), Verdict::Inside);
    EXPECT_EQ(verdict(hundredths(21), u, "at least 0.20 mm"), Verdict::TooClose);
    EXPECT_EQ(verdict(hundredths(18), u, "at least 0.20 mm"), Verdict::Low);
    EXPECT_EQ(verdict(hundredths(32), u, "at most 0.30 mm"), Verdict::High);
    EXPECT_EQ(verdict(hundredths(28), u, "at most 0.30 mm"), Verdict::Inside);
    EXPECT_EQ(verdict(hundredths(30), Length(), "0.20-0.30 mm"), Verdict::Inside) << "simple acceptance: the limit is inside";
    EXPECT_EQ(verdict(hundredths(25), hundredths(6), "0.20-0.30 mm"), Verdict::TooClose) << "U wider than the band proves nothing inside";
}

// JCGM 106:2012, 7.3.3: one limit; -5.47 against at most -5.40 with u = 0.05 conforms with 0.92, 509.7 against at least 490 with u = 8.6
// with 0.989 (from memory, checked anew). Numbers count in smallest units here; U = 2u.
TEST(Conformance, ExamplesOfJcgm106)
{
    const auto units = [](std::int64_t count) { return Length::ofSmallest(count); };
    Band<Length> atMost = band("at most 1 mm");
    atMost.high = units(-540);
    EXPECT_NEAR(conformanceProbability(units(-547), units(2 * 5), atMost), 0.92, 0.005);
    Band<Length> atLeast = band("at least 1 mm");
    atLeast.low = units(4900);
    EXPECT_NEAR(conformanceProbability(units(5097), units(2 * 86), atLeast), 0.989, 0.0005);
}

TEST(Conformance, AgreesWithGsl)
{
    std::mt19937 random(106);
    const auto draw = [&](int low, int high) { return std::uniform_int_distribution(low, high)(random); };
    for (int i = 0; i < 2000; ++i) {
        const Length low = micrometres(draw(0, 300));
        const Length high = low + micrometres(draw(1, 300));
        const Length value = micrometres(draw(0, 700));
        const Length u = micrometres(draw(1, 60));
        Band<Length> both = band("0-1 mm");
        both.low = low;
        both.high = high;
        const double sigma = static_cast<double>(u.smallest());
        const double zLow = static_cast<double>((low - value).smallest()) / sigma;
        const double zHigh = static_cast<double>((high - value).smallest()) / sigma;
        // In the tails the two shares above are subtracted, not the two below: those are nearly 1.
        const double between =
            zLow > 0 ? gsl_cdf_ugaussian_Q(zLow) - gsl_cdf_ugaussian_Q(zHigh) : gsl_cdf_ugaussian_P(zHigh) - gsl_cdf_ugaussian_P(zLow);
        const double ours = conformanceProbability(value, u * 2, both);
        EXPECT_NEAR(ours, between, 1e-14 + 1e-9 * between) << i;
        EXPECT_TRUE(ours >= 0 && ours <= 1) << i;
        Band<Length> one = both;
        one.low.reset();
        EXPECT_NEAR(conformanceProbability(value, u * 2, one), gsl_cdf_ugaussian_P(zHigh), 1e-14) << i;
        one = both;
        one.high.reset();
        EXPECT_NEAR(conformanceProbability(value, u * 2, one), gsl_cdf_ugaussian_Q(zLow), 1e-14) << i;
    }
}

TEST(Conformance, KeepsItsDigitsFarOutside)
{
    const Band<Length> spec = band("0.20-0.30 mm");
    const Length u = hundredths(1);
    const double below = conformanceProbability(hundredths(10), u * 2, spec);
    const double above = conformanceProbability(hundredths(40), u * 2, spec);
    EXPECT_GT(below, 0);
    EXPECT_NEAR(below / above, 1.0, 1e-12) << "both stand ten u away";
    EXPECT_NEAR(below / gsl_cdf_ugaussian_Q(10.0), 1.0, 1e-9);
}

TEST(Conformance, WithoutUncertaintyIsCertain)
{
    const Band<Length> spec = band("0.20-0.30 mm");
    EXPECT_EQ(conformanceProbability(hundredths(30), Length(), spec), 1.0);
    EXPECT_EQ(conformanceProbability(hundredths(31), Length(), spec), 0.0);
    const auto turns = parseBand<Angle>("1/2 to 1 turn", AngleUnit::Turn).value();
    EXPECT_EQ(conformanceProbability(degrees(180), Angle(), turns), 1.0);
    EXPECT_NEAR(conformanceProbability(degrees(180), degrees(10), turns), 0.5, 1e-12) << "on the limit it may be either";
    const auto torque = parseBand<Torque>("20 N·m ± 10 %", TorqueUnit::NewtonMetre).value();
    EXPECT_NEAR(conformanceProbability(newtonMetres(22), newtonMetres(1), torque), 0.5, 1e-12);
}

/// The smallest whole number at or above an expanded uncertainty computed in floating point, which here is nowhere near a whole number.
std::int64_t up(double exact)
{
    return static_cast<std::int64_t>(std::ceil(exact));
}

// u of a rectangular distribution of half width a is a/√3: JCGM 100:2008, 4.3.7.
TEST(Instruments, AFeelerLeafIsWorthOneStep)
{
    EXPECT_EQ(feelerUncertainty(micrometres(50)), nanometres(28'868)) << "2 × 25 µm / √3 = 28.867 513…";
    EXPECT_EQ(feelerUncertainty(thou(1)), nanometres(14'665)) << "25.4 µm / √3 = 14.664 697…";
    EXPECT_EQ(feelerUncertainty(Length()), Length());
    EXPECT_EQ(feelerUncertainty(nanometres(1)), nanometres(1)) << "rounded up";
    for (const std::int64_t step : {7, 1000, 25'400, 1'000'000, 999'999'999})
        EXPECT_EQ(feelerUncertainty(nanometres(step)).smallest(), up(static_cast<double>(step) / std::sqrt(3.0))) << step;
}

TEST(Instruments, AGaugeAddsItsErrorAndItsResolutionInQuadrature)
{
    // u² = (8² + 5²)/3 µm² = 89/3; U = 2u = 10.893 423… µm.
    EXPECT_EQ(gaugeUncertainty(micrometres(8), micrometres(10)), nanometres(10'894));
    EXPECT_EQ(gaugeUncertainty(micrometres(3), Length()), nanometres(3'465)) << "2 × 3 µm / √3 = 3.464 101…";
    EXPECT_EQ(gaugeUncertainty(Length(), micrometres(10)), feelerUncertainty(micrometres(10))) << "half a step either way, as a leaf";
    EXPECT_EQ(gaugeUncertainty(Length(), Length()), Length());
}

// ISO 6789: an adjustable click wrench may deviate 4 % above 10 N·m and 6 % up to 10 N·m.
TEST(Instruments, AClickWrenchByItsLargestTorque)
{
    EXPECT_EQ(clickWrenchDeviation(newtonMetres(10)), Rational(6));
    EXPECT_EQ(clickWrenchDeviation(newtonMetres(10) + Torque::ofSmallest(1)), Rational(4));
    EXPECT_EQ(clickWrenchDeviation(newtonMetres(2)), Rational(6));
    EXPECT_EQ(clickWrenchDeviation(newtonMetres(200)), Rational(4));
}

TEST(Instruments, ATorqueToolByItsShareOfTheReading)
{
    // a = 4 % of 100 N·m = 4 N·m; U = 2 × 4/√3 = 4.618 802 153 5… N·m.
    EXPECT_EQ(torqueToolUncertainty(newtonMetres(100), Rational(4)), Torque::ofSmallest(4'618'802'154));
    // a = 6 % of 8 N·m = 0.48 N·m; U = 0.554 256 258 4… N·m.
    EXPECT_EQ(torqueToolUncertainty(newtonMetres(8), Rational(6)), Torque::ofSmallest(554'256'259));
    EXPECT_EQ(torqueToolUncertainty(newtonMetres(100), Rational(5, 2)), Torque::ofSmallest(up(2.5e9 * 2 / std::sqrt(3.0))));
    EXPECT_EQ(torqueToolUncertainty(newtonMetres(100), Rational()), Torque());
    EXPECT_EQ(torqueToolUncertainty(Torque(), Rational(4)), Torque());
    EXPECT_GT(torqueToolUncertainty(newtonMetres(100'000), Rational(100)), newtonMetres(100'000)) << "the largest a field takes";
}

TEST(Judge, TurnsOfAScrew)
{
    const auto spec = parseBand<Angle>("3/4 ± 1/8 turn", AngleUnit::Turn).value();
    const auto verdict = [&](std::string_view text) {
        return judge(Interval<Angle>::point(parse<Angle>(text, AngleUnit::Turn)->value), spec);
    };
    EXPECT_EQ(verdict("3/4 turn"), Verdict::Inside);
    EXPECT_EQ(verdict("5/8"), Verdict::Inside);
    EXPECT_EQ(verdict("225°"), Verdict::Inside);
    EXPECT_EQ(verdict("224.999°"), Verdict::Low);
    EXPECT_EQ(verdict("7/8"), Verdict::Inside);
    EXPECT_EQ(verdict("0.8751"), Verdict::High);
    EXPECT_EQ(outsideBy(degrees(360), spec), degrees(45));
    EXPECT_EQ(outsideBy(degrees(180), spec), degrees(-45));
}

} // namespace uncertainty_tests
} // namespace asleft
