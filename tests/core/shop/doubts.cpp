// What is asked once more: units hardly meant, an engine that can hardly be cold.
#include "story.h"

#include <shop/entry.h>

namespace asleft {
namespace doubts_tests {

constexpr auto mm = LengthUnit::Millimetre;
constexpr auto inch = LengthUnit::Inch;
constexpr auto thouUnit = LengthUnit::Thou;
constexpr std::optional<LengthUnit> nothing;

struct MeantCase {
    const char *first;
    const char *second;
    const char *typed;
    std::optional<LengthUnit> meant;
};

class UnitMeant : public testing::TestWithParam<MeantCase> {};

TEST_P(UnitMeant, OfAReading)
{
    const auto &[first, second, typed, meant] = GetParam();
    EXPECT_EQ(unitMeant(parseReading(typed, mm).value(), bands(first, second)), meant) << typed;
}

INSTANTIATE_TEST_SUITE_P(InchBand, UnitMeant,
                         testing::Values(MeantCase{".016 ± .002 in", "", "0.016 mm", inch},
                                         MeantCase{".016 ± .002 in", "", "16 mm", thouUnit},
                                         MeantCase{".016 ± .002 in", "", "0.016 thou", inch},
                                         MeantCase{".016 ± .002 in", "", "16 in", thouUnit},
                                         MeantCase{".016 ± .002 in", "", "0.40 mm", nothing},  // not far off as typed
                                         MeantCase{".016 ± .002 in", "", "0.016 in", nothing}, // nor is this
                                         MeantCase{".016 ± .002 in", "", "16 thou", nothing},
                                         MeantCase{".016 ± .002 in", "", "3 mm", nothing}, // far off in every unit
                                         MeantCase{".016 ± .002 in", "", "0.4 in", mm}));  // 0.4 mm is 15.7 thou
INSTANTIATE_TEST_SUITE_P(MetricBand, UnitMeant,
                         testing::Values(MeantCase{"0.30 ± 0.05 mm", "", "0.3 in", mm}, MeantCase{"0.30 ± 0.05 mm", "", "0.3 thou", mm},
                                         MeantCase{"0.30 ± 0.05 mm", "", "12 mm", thouUnit},
                                         MeantCase{"0.30 ± 0.05 mm", "", "0.012 mm", inch},
                                         MeantCase{"0.30 ± 0.05 mm", "", "0.012 in", nothing},
                                         MeantCase{"0.30 ± 0.05 mm", "", "0.30 mm", nothing},
                                         MeantCase{"0.30 ± 0.05 mm", "", "0 mm", nothing})); // nothing is nothing in every unit
INSTANTIATE_TEST_SUITE_P(Brackets, UnitMeant,
                         testing::Values(MeantCase{".016 ± .002 in", "", "0.014-0.018 mm", inch},
                                         MeantCase{".016 ± .002 in", "", "0.30-0.40 in", mm},
                                         MeantCase{".016 ± .002 in", "", "0.010 mm - 0.016 in", nothing},
                                         MeantCase{".016 ± .002 in", "", "4.0 mm - 5.0 in", nothing})); // typed in two units
// Printed in both systems, each unit is tried by its own band; where both an inch and a thou would do, the printed one is likelier.
INSTANTIATE_TEST_SUITE_P(BothPrinted, UnitMeant,
                         testing::Values(MeantCase{"0.40 ± 0.05 mm", ".016 ± .002 in", "0.016 mm", inch},
                                         MeantCase{"0.40 ± 0.05 mm", ".016 ± .002 in", "0.4 in", mm},
                                         MeantCase{"0.40 ± 0.05 mm", ".016 ± .002 in", "16 mm", thouUnit},
                                         MeantCase{"at most 10 in", "", "300 in", mm}, MeantCase{"at most 10 in", "", "600 mm", thouUnit},
                                         MeantCase{"at least 1 thou", "", "0.01 thou", inch},
                                         MeantCase{".001-.002 in", "", "10000 mm", nothing})); // as inches it is past all measure

TEST(UnitMeantMostly, PrintedUnitsAreTriedFirst)
{
    // 0.01 thou is too little, 0.01 mm and 0.01 in are both more than the limit asks.
    EXPECT_EQ(unitMeant(parseReading("0.01 thou", mm).value(), bands("at least .004 in", "at least 0.008 mm")), inch);
    EXPECT_EQ(unitMeant(parseReading("0.01 thou", mm).value(), bands("at least 0.008 mm", "at least .004 in")), mm);
}

struct LashCase {
    const char *band;
    std::optional<LengthUnit> meant;
};

class LashUnit : public testing::TestWithParam<LashCase> {};

TEST_P(LashUnit, OfABandAsPrinted)
{
    EXPECT_EQ(unitMeant(band(GetParam().band)), GetParam().meant) << GetParam().band;
}

INSTANTIATE_TEST_SUITE_P(All, LashUnit,
                         testing::Values(LashCase{"0.30 ± 0.05 mm", nothing}, LashCase{".012 in", nothing}, LashCase{"12 thou", nothing},
                                         LashCase{"0.30 ± 0.05 in", mm}, LashCase{"0.20-0.30 in", mm}, LashCase{".016 ± .002 mm", inch},
                                         LashCase{".012 mm", inch}, LashCase{"12-16 mm", thouUnit}, LashCase{"12 in", thouUnit},
                                         LashCase{"0.3 thou", mm}, LashCase{".016 thou", inch}, LashCase{"at least 0.3 in", mm},
                                         LashCase{"at most 0.3 in", mm}, LashCase{"0.20 ± 0.20 mm", nothing}, // from nothing up
                                         LashCase{"0-2 mm", nothing}, LashCase{"at most 0.02 mm", nothing}, // the limits of what is a lash
                                         LashCase{"0-2.01 mm", thouUnit}, LashCase{"at most 0.019 mm", inch}, LashCase{"0.001 mm", inch},
                                         LashCase{"500 mm", nothing}, LashCase{"0 mm", nothing}));

TEST(LashUnitOf, ABandThatSaysNothing)
{
    EXPECT_EQ(unitMeant(Band<Length>{}), std::nullopt);
}

TEST(DoubtedCondition, ByTemperatureAndByHours)
{
    // Common practice, no source.
    constexpr auto cold = EngineCondition::Cold;
    constexpr auto hot = EngineCondition::Hot;
    const auto none = std::optional<Temperature>();
    EXPECT_FALSE(doubtedCondition(cold, none, std::nullopt));
    EXPECT_FALSE(doubtedCondition(hot, none, std::nullopt));

    EXPECT_FALSE(doubtedCondition(cold, celsius(20), std::nullopt));
    EXPECT_FALSE(doubtedCondition(cold, celsius(50), std::nullopt));
    EXPECT_TRUE(doubtedCondition(cold, celsius(50) + Temperature::ofSmallest(1), std::nullopt));
    EXPECT_FALSE(doubtedCondition(hot, celsius(80), std::nullopt));
    EXPECT_FALSE(doubtedCondition(hot, celsius(50), std::nullopt));
    EXPECT_TRUE(doubtedCondition(hot, celsius(50) - Temperature::ofSmallest(1), std::nullopt));

    EXPECT_TRUE(doubtedCondition(cold, none, 119));
    EXPECT_FALSE(doubtedCondition(cold, none, 120));
    EXPECT_FALSE(doubtedCondition(hot, none, 120));
    EXPECT_TRUE(doubtedCondition(hot, none, 121));
    EXPECT_FALSE(doubtedCondition(hot, none, 0));

    EXPECT_TRUE(doubtedCondition(cold, celsius(20), 30)) << "either is enough";
    EXPECT_TRUE(doubtedCondition(hot, celsius(20), 30));
    EXPECT_FALSE(doubtedCondition(cold, celsius(20), 600));
}

} // namespace doubts_tests
} // namespace asleft
