#include <measure/format.h>
#include <measure/judge.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace asleft {
namespace roundtrip_tests {

constexpr TorqueUnit torqueUnits[] = {TorqueUnit::NewtonMetre, TorqueUnit::PoundFoot, TorqueUnit::PoundInch, TorqueUnit::KilogramForceMetre,
                                      TorqueUnit::KilogramForceCentimetre};
constexpr DecimalMark marks[] = {DecimalMark::Point, DecimalMark::Comma};
constexpr int rounds = 1000;
constexpr std::int64_t largestLength = 10'000'000'000;
constexpr std::int64_t largestTorque = 100'000'000'000'000;

auto digitCount(const std::string &text)
{
    return std::count_if(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

/// As many small values as large ones.
std::int64_t anyUpTo(std::int64_t largest, std::mt19937 &random)
{
    const std::int64_t scale = std::uniform_int_distribution<std::int64_t>(1, 14)(random);
    std::int64_t limit = 1;
    for (std::int64_t i = 0; i < scale; ++i)
        limit *= 10;
    return std::uniform_int_distribution<std::int64_t>(0, std::min(limit, largest))(random);
}

/// Whether formatExact's text was short enough to be typed; if so it must read back.
template <class Q>
bool readsBack(Q value, Unit<Q> unit, Unit<Q> otherField, DecimalMark mark)
{
    const std::string text = formatExact(value, unit, mark);
    if (digitCount(text) > mostDigits)
        return false;
    const auto typed = parse<Q>(text, otherField, mark);
    EXPECT_TRUE(typed) << text;
    EXPECT_EQ(typed ? typed->value : -Q::ofSmallest(1), value) << text;
    EXPECT_EQ(typed ? typed->unit : otherField, unit) << text;
    return true;
}

TEST(RoundTrip, EveryLengthInEveryUnit)
{
    std::mt19937 random(20240229);
    for (int i = 0; i < rounds; ++i) {
        const Length value = nanometres(anyUpTo(largestLength, random));
        for (const LengthUnit unit : lengthUnits) {
            for (const DecimalMark mark : marks)
                EXPECT_TRUE(readsBack(value, unit, LengthUnit::Thou, mark)) << value.smallest();
        }
    }
    EXPECT_TRUE(readsBack(nanometres(largestLength), LengthUnit::Inch, LengthUnit::Thou, DecimalMark::Point));
}

TEST(RoundTrip, EveryTorqueOfTwelveDigits)
{
    std::mt19937 random(20240301);
    int tried = 0;
    for (int i = 0; i < rounds; ++i) {
        const Torque value = Torque::ofSmallest(anyUpTo(largestTorque, random));
        for (const TorqueUnit unit : torqueUnits) {
            for (const DecimalMark mark : marks)
                tried += readsBack(value, unit, TorqueUnit::KilogramForceCentimetre, mark) ? 1 : 0;
        }
    }
    EXPECT_GT(tried, 5 * rounds); // most are short enough
}

TEST(RoundTrip, EveryTypedTorqueInItsOwnUnit)
{
    std::mt19937 random(7);
    for (int i = 0; i < rounds; ++i) {
        for (const TorqueUnit unit : torqueUnits) {
            const auto tenths = std::uniform_int_distribution<int>(0, 9999)(random);
            const std::string number = std::to_string(tenths / 10) + "." + std::to_string(tenths % 10);
            const auto typed = parse<Torque>(number, unit);
            ASSERT_TRUE(typed) << number;
            EXPECT_TRUE(readsBack(typed->value, unit, TorqueUnit::PoundFoot, DecimalMark::Comma)) << number;
        }
    }
}

TEST(RoundTrip, EveryAngleThousandth)
{
    std::mt19937 random(11);
    for (int i = 0; i < rounds; ++i) {
        const Angle value = millidegrees(std::uniform_int_distribution<std::int64_t>(-720'000, 720'000)(random));
        for (const DecimalMark mark : marks)
            EXPECT_EQ(parseSignedAngle(formatExact(value, AngleUnit::Degree, mark), mark), value);
    }
}

TEST(RoundTrip, EveryAngleOfTwelveDigitsInTurns)
{
    std::mt19937 random(12);
    int tried = 0;
    for (int i = 0; i < rounds; ++i) {
        // Thousandths of a degree in turns are endless fractions; of those below a tenth of a turn twelve digits are enough for many.
        const Angle value = millidegrees(std::uniform_int_distribution<std::int64_t>(0, 720'000)(random));
        const Angle sixteenths = millidegrees(22'500) * std::uniform_int_distribution<std::int64_t>(0, 160)(random);
        for (const DecimalMark mark : marks) {
            tried += readsBack(value, AngleUnit::Turn, AngleUnit::Degree, mark) ? 1 : 0;
            EXPECT_TRUE(readsBack(sixteenths, AngleUnit::Turn, AngleUnit::Degree, mark)) << sixteenths.smallest();
        }
    }
    EXPECT_GT(tried, 100);
}

TEST(RoundTrip, ALimitTypedInAnyUnitIsInside)
{
    // Whole ten-thousandths of an inch are whole nanometres, so every unit can write them exactly.
    std::mt19937 random(3);
    std::uniform_int_distribution<std::int64_t> tenthsOfThou(0, 20'000);
    for (int i = 0; i < rounds / 4; ++i) {
        const Length low = nanometres(2'540 * tenthsOfThou(random));
        const Length high = low + nanometres(2'540 * tenthsOfThou(random));
        for (const LengthUnit printed : lengthUnits) {
            const auto band = parseBand<Length>(formatExact(low, printed) + " to " + formatExact(high, printed), LengthUnit::Thou);
            ASSERT_TRUE(band);
            for (const LengthUnit typed : lengthUnits) {
                for (const Length limit : {low, high}) {
                    const Length reading = parse<Length>(formatExact(limit, typed), typed)->value;
                    EXPECT_EQ(judge(Interval<Length>::point(reading), *band), Verdict::Inside) << band->text;
                }
            }
        }
    }
}

} // namespace roundtrip_tests
} // namespace asleft
