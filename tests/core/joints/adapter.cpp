// What a wrench is set to when an adapter stands on its drive.
#include <joints/adapter.h>
#include <measure/format.h>
#include <measure/rational.h>

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

namespace asleft {
namespace adapter_tests {

Torque torque(std::string_view text)
{
    return parse<Torque>(text, TorqueUnit::NewtonMetre).value().value;
}
Length length(std::string_view text)
{
    return parse<Length>(text, LengthUnit::Millimetre).value().value;
}
AdapterFit fit(std::string_view text, std::int64_t angle)
{
    return {length(text), degrees(angle)};
}
std::string poundInches(const Result<Torque> &torque)
{
    return formatNumber(torque.value(), TorqueUnit::PoundInch, 0);
}
/// How far a value is from the printed one, in the smallest unit.
std::int64_t off(const Result<Torque> &found, Torque wanted)
{
    return std::abs((found.value() - wanted).smallest());
}

// TM 9-254 fig. 45: a lever of 12 in and an adapter of 2 in make 70 lbf·in at the fastener of 60 on the wrench.
TEST(Adapter, StraightOutGivesTheFastenerMore)
{
    EXPECT_LE(off(torqueAtFastener(torque("60 in-lb"), length("12 in"), fit("2 in", 0)), torque("70 in-lb")), 1);
    EXPECT_LE(off(wrenchSetting(torque("70 in-lb"), length("12 in"), fit("2 in", 0)), torque("60 in-lb")), 1);
}

// FAA AC 43.13-1B fig. 7-2: 135 lbf·in wanted, a lever of 10 in, an adapter of 1.5 in: 117 straight out, 159 turned back.
TEST(Adapter, SettingsAsPrintedForAircraft)
{
    const Torque wanted = torque("135 in-lb");
    EXPECT_EQ(poundInches(wrenchSetting(wanted, length("10 in"), fit("1.5 in", 0))), "117");
    EXPECT_EQ(poundInches(wrenchSetting(wanted, length("10 in"), fit("1.5 in", 180))), "159");
    EXPECT_EQ(wrenchSetting(wanted, length("10 in"), fit("1.5 in", 90)), wanted);
}

TEST(Adapter, AcrossOrWithoutLengthChangesNothingAtAll)
{
    for (const std::int64_t nano : {1LL, 3LL, 12'345'678'901LL, 31'999'999'999LL, 99'999'999'999'999LL})
        for (const std::int64_t lever : {1LL, 254'000'001LL, 3'000'000'000LL}) {
            const Torque wanted = Torque::ofSmallest(nano);
            for (const std::int64_t across : {90, 270, -90, 450, -270, 9990})
                EXPECT_EQ(wrenchSetting(wanted, nanometres(lever), fit("2000 mm", across)), wanted) << across;
            for (const std::int64_t any : {0, 37, 180})
                EXPECT_EQ(torqueAtFastener(wanted, nanometres(lever), fit("0 mm", any)), wanted) << any;
        }
    EXPECT_TRUE(changesNothing(fit("0 mm", 20)));
    EXPECT_TRUE(changesNothing(fit("40 mm", -90)));
    EXPECT_TRUE(changesNothing(fit("40 mm", 270)));
    EXPECT_FALSE(changesNothing(fit("40 mm", 0)));
    EXPECT_FALSE(changesNothing(fit("40 mm", 180)));
    EXPECT_FALSE(changesNothing({length("40 mm"), millidegrees(89'999)}));
}

TEST(Adapter, NearlyAcrossChangesALittle)
{
    const AdapterFit nearly{length("100 mm"), millidegrees(89'999)};
    const auto setting = wrenchSetting(torque("100"), length("400 mm"), nearly).value();
    // E·cos 89.999° = 1.745 329 µm, which is 4.363 3 millionths of 400 mm.
    EXPECT_NEAR(100 - toNewtonMetres(setting), 100 * 4.363304e-6, 1e-8);
}

TEST(Adapter, TheSideItPointsToIsAllTheSame)
{
    const Torque wanted = torque("47.3");
    for (std::int64_t angle = 0; angle <= 180; angle += 15) {
        const auto setting = wrenchSetting(wanted, length("300 mm"), fit("45 mm", angle));
        for (const std::int64_t same : {-angle, 360 - angle, 360 + angle, 720 + angle})
            EXPECT_EQ(wrenchSetting(wanted, length("300 mm"), fit("45 mm", same)), setting) << same;
    }
}

/// The whole number nearest to torque·over/under is `found`.
bool isNearest(Torque found, Torque torque, Int128 over, Int128 under)
{
    const Int128 missing = Int128{found.smallest()} * under - Int128{torque.smallest()} * over;
    return 2 * (missing < 0 ? -missing : missing) <= under;
}

// Where the cosine is a fraction (1, 1/2, -1/2, -1) the setting can be told in whole numbers.
TEST(Adapter, IsRoundedOnceWhereTheCosineIsAFraction)
{
    constexpr std::array halves{std::pair{0, 2}, std::pair{60, 1}, std::pair{120, -1}, std::pair{180, -2}};
    std::mt19937_64 random(7);
    for (int round = 0; round < 2000; ++round) {
        const Torque wanted = Torque::ofSmallest(std::uniform_int_distribution<std::int64_t>(1, 100'000'000'000'000)(random));
        const std::int64_t lever = std::uniform_int_distribution<std::int64_t>(100'000'000, 3'000'000'000)(random);
        const std::int64_t adapter = std::uniform_int_distribution<std::int64_t>(0, lever / 2)(random);
        for (const auto &[angle, half] : halves) {
            const AdapterFit fit{nanometres(adapter), degrees(angle)};
            const Int128 toHand = 2 * Int128{lever} + half * Int128{adapter};
            EXPECT_TRUE(isNearest(wrenchSetting(wanted, nanometres(lever), fit).value(), wanted, 2 * Int128{lever}, toHand));
            EXPECT_TRUE(isNearest(torqueAtFastener(wanted, nanometres(lever), fit).value(), wanted, toHand, 2 * Int128{lever}));
        }
    }
}

// Wherever the adapter points: the rule in floating point, and there and back again.
TEST(Adapter, ThereAndBackAgain)
{
    std::mt19937_64 random(11);
    for (int round = 0; round < 5000; ++round) {
        const Torque wanted = Torque::ofSmallest(std::uniform_int_distribution<std::int64_t>(1, 1'000'000'000'000)(random));
        const Length lever = nanometres(std::uniform_int_distribution<std::int64_t>(50'000'000, 3'000'000'000)(random));
        const AdapterFit fit{nanometres(std::uniform_int_distribution<std::int64_t>(0, 2'000'000'000)(random)),
                             millidegrees(std::uniform_int_distribution<std::int64_t>(-360'000, 360'000)(random))};
        const double cosine = std::cos(toDegrees(fit.angle) * std::numbers::pi / 180);
        const double ratio = 1 + static_cast<double>(fit.length.smallest()) * cosine / static_cast<double>(lever.smallest());
        const auto setting = wrenchSetting(wanted, lever, fit);
        if (std::abs(ratio - 0.1) < 1e-6)
            continue;
        ASSERT_EQ(setting.has_value(), ratio > 0.1);
        if (!setting) {
            EXPECT_EQ(setting.error(), (Error{ErrorKind::AdapterReversed, {}}));
            EXPECT_EQ(torqueAtFastener(wanted, lever, fit), setting);
            continue;
        }
        const double exact = static_cast<double>(wanted.smallest()) / ratio;
        EXPECT_NEAR(static_cast<double>(setting->smallest()), exact, 1 + exact * 1e-13);
        const auto back = torqueAtFastener(*setting, lever, fit);
        EXPECT_LE(static_cast<double>(off(back, wanted)), 0.5 + 0.5 * ratio + 1e-6) << wanted.smallest();
        EXPECT_TRUE(cosine > 0 ? *setting <= wanted : *setting >= wanted) << "what points away from the hand lowers the setting";
    }
}

TEST(Adapter, MoreTurnedBackIsMoreOnTheWrench)
{
    Torque last;
    for (std::int64_t angle = 0; angle <= 180; ++angle) {
        const Torque setting = wrenchSetting(torque("80"), length("400 mm"), fit("50 mm", angle)).value();
        EXPECT_GT(setting, last) << angle;
        last = setting;
    }
}

ErrorKind refusal(const Result<Torque> &result)
{
    EXPECT_FALSE(result.has_value());
    return result.has_value() ? ErrorKind::NotFound : result.error().kind;
}

TEST(Adapter, RefusesWhatCannotBe)
{
    const Torque wanted = torque("10");
    const Length hair = nanometres(1);
    const auto kind = [&](Length lever, Length adapter, std::int64_t angle) {
        const AdapterFit fit{adapter, degrees(angle)};
        EXPECT_EQ(wrenchSetting(wanted, lever, fit).has_value(), torqueAtFastener(wanted, lever, fit).has_value());
        return refusal(wrenchSetting(wanted, lever, fit));
    };
    EXPECT_EQ(kind(Length(), length("50 mm"), 0), ErrorKind::AdapterOutOfRange);
    EXPECT_EQ(kind(Length(), Length(), 0), ErrorKind::AdapterOutOfRange);
    EXPECT_EQ(kind(-hair, length("50 mm"), 90), ErrorKind::AdapterOutOfRange);
    EXPECT_EQ(kind(longestLever + hair, length("50 mm"), 0), ErrorKind::AdapterOutOfRange);
    EXPECT_EQ(kind(length("400 mm"), length("2000 mm") + hair, 0), ErrorKind::AdapterOutOfRange);
    EXPECT_EQ(kind(length("400 mm"), -hair, 0), ErrorKind::AdapterOutOfRange);
    EXPECT_EQ(kind(length("400 mm"), length("360 mm"), 180), ErrorKind::AdapterReversed) << "a tenth of the lever is left";
    EXPECT_EQ(kind(length("400 mm"), length("400 mm"), 180), ErrorKind::AdapterReversed);
    EXPECT_EQ(kind(length("400 mm"), length("2000 mm"), 180), ErrorKind::AdapterReversed);
    EXPECT_EQ(kind(length("400 mm"), length("720 mm"), 120), ErrorKind::AdapterReversed);

    EXPECT_TRUE(wrenchSetting(wanted, length("400 mm"), {length("360 mm") - hair, degrees(180)}));
    EXPECT_TRUE(wrenchSetting(wanted, longestLever, fit("2000 mm", 0)));
    EXPECT_TRUE(wrenchSetting(wanted, hair, fit("2000 mm", 0))) << "a lever of nothing much is still a lever";
    EXPECT_EQ(refusal(torqueAtFastener(torque("10"), hair, fit("2000 mm", 0))), ErrorKind::AdapterOutOfRange) << "2·10^10 N·m";
    EXPECT_EQ(wrenchSetting(Torque(), length("400 mm"), fit("50 mm", 0)), Torque());
}

TEST(Adapter, HoldsTheLargestAFieldTakes)
{
    const Torque largest = torque("100000");
    const auto raised = wrenchSetting(largest, longestLever, {length("2000 mm"), degrees(180)});
    EXPECT_EQ(raised, torque("100000") * 3);
    EXPECT_EQ(torqueAtFastener(*raised, longestLever, {length("2000 mm"), degrees(180)}), largest);
}

} // namespace adapter_tests
} // namespace asleft
