// The leaf to set a point with.
#include "story.h"

#include <measure/format.h>
#include <shop/entry.h>

namespace asleft {
namespace spec_leaf_tests {

Tool leaves(std::string_view text)
{
    return {ToolId(1), "set", std::string(text), parseLeaves(text, LengthUnit::Millimetre).value()};
}

struct LeafCase {
    const char *band;
    const char *set; ///< empty: none
    const char *leaf;
};

class SpecLeaf : public testing::TestWithParam<LeafCase> {};

TEST_P(SpecLeaf, OfABand)
{
    const LeafCase &leaf = GetParam();
    const Tool set = leaf.set[0] == '\0' ? Tool{ToolId(1), "", "", {}} : leaves(leaf.set);
    const auto chosen = specLeaf(band(leaf.band), leaf.set[0] == '\0' ? nullptr : &set);
    ASSERT_TRUE(chosen);
    EXPECT_EQ(*chosen, length(leaf.leaf)) << chosen->text;
}

INSTANTIATE_TEST_SUITE_P(TheNominal, SpecLeaf,
                         testing::Values(LeafCase{"0.30 ± 0.05 mm", "", "0.30 mm"}, LeafCase{"0.30 ± 0.05 mm", "0.25 0.35 mm", "0.30 mm"},
                                         LeafCase{"0.40 +0.10 -0.02 mm", "", "0.40 mm"}, LeafCase{".012 in", "", "0.012 in"}));

INSTANTIATE_TEST_SUITE_P(NearestTheMiddle, SpecLeaf,
                         testing::Values(LeafCase{"0.20-0.30 mm", "0.20 0.24 0.28 0.30 mm", "0.24 mm"},
                                         LeafCase{"0.20-0.30 mm", "0.10 0.30 mm", "0.30 mm"},
                                         LeafCase{"0.20-0.30 mm", "0.20 0.30 mm", "0.20 mm"},
                                         LeafCase{"0.20-0.30 mm", "0.10 0.40 mm", "0.25 mm"},
                                         LeafCase{".010-.014 in", ".008 .011 .014 in", "0.011 in"}));

INSTANTIATE_TEST_SUITE_P(WholeStepsOfTheMiddle, SpecLeaf,
                         testing::Values(LeafCase{"0.20-0.30 mm", "", "0.25 mm"}, LeafCase{"0.20-0.25 mm", "", "0.23 mm"},
                                         LeafCase{"0.202-0.208 mm", "", "0.205 mm"}, LeafCase{"10-13 thou", "", "12 thou"}));

INSTANTIATE_TEST_SUITE_P(TheLimitOfAOneSidedBand, SpecLeaf,
                         testing::Values(LeafCase{"at least 0.20 mm", "0.25 mm", "0.20 mm"}, LeafCase{"at most 0.30 mm", "", "0.30 mm"}));

TEST(SpecLeafOfBoth, IsOfTheBandInTheSystemOfTheLeaves)
{
    const Tool metric = leaves("0.25 0.30 mm");
    const Tool inch = leaves(".010 .012 in");
    const auto both = bands("0.30 ± 0.05 mm", ".012 ± .002 in");
    EXPECT_EQ(specLeaf(both, nullptr), length("0.30 mm"));
    EXPECT_EQ(specLeaf(both, &metric), length("0.30 mm"));
    EXPECT_EQ(specLeaf(both, &inch), length("0.012 in"));
    EXPECT_EQ(specLeaf(bands("0.30 ± 0.05 mm"), &inch), length("0.30 mm"));
}

TEST(SpecLeafOfBoth, AGaugeHasNoLeavesButItsOwnSystem)
{
    Tool gauge{ToolId(1), "gauge", "", {}, ToolKind::DialGauge};
    const auto both = bands("0.20-0.30 mm", ".008-.012 in");
    EXPECT_EQ(specLeaf(both, &gauge), length("0.25 mm")) << "nothing is known of it: the first band's middle";
    gauge.resolution = length("0.0005 in");
    EXPECT_EQ(specLeaf(both, &gauge), length("0.010 in"));
    gauge.resolution = length("0.01 mm");
    EXPECT_EQ(specLeaf(bands(".008-.012 in", "0.20-0.30 mm"), &gauge), length("0.25 mm"));
    EXPECT_EQ(specLeaf(bands("0.30 ± 0.05 mm"), &gauge), length("0.30 mm"));
}

struct TurnsCase {
    const char *band;
    const char *turns;
};

class SpecTurns : public testing::TestWithParam<TurnsCase> {};

TEST_P(SpecTurns, OfABand)
{
    const auto chosen = specTurns(turnBands(GetParam().band));
    ASSERT_TRUE(chosen);
    EXPECT_EQ(formatTyped(*chosen), GetParam().turns);
    EXPECT_EQ(parse<Angle>(formatTyped(*chosen), AngleUnit::Degree)->value, chosen->value);
}

INSTANTIATE_TEST_SUITE_P(All, SpecTurns,
                         testing::Values(TurnsCase{"3/4 ± 1/8 turn", "0.75 turn"}, TurnsCase{"1 1/4 ± 1/8 turn", "1.25 turn"},
                                         TurnsCase{"0.75 turn", "0.75 turn"}, TurnsCase{"1 turn", "1 turn"},
                                         TurnsCase{"1/2-1 turn", "0.75 turn"}, TurnsCase{"1/3 ± 1/12 turn", "120°"},
                                         TurnsCase{"at most 1/2 turn", "0.50 turn"}, TurnsCase{"at least 1/16 turn", "0.0625 turn"},
                                         TurnsCase{"0.06 turn", "0.06 turn"}, TurnsCase{"270° ± 20°", "270°"}));

TEST(SpecTurnsOf, ABandThatSaysNothing)
{
    EXPECT_FALSE(specTurns({Band<Angle>{}, std::nullopt}));
}

TEST(SpecLeafOfBoth, NothingOfABandThatSaysNothing)
{
    EXPECT_FALSE(specLeaf(Band<Length>{}, nullptr));
}

} // namespace spec_leaf_tests
} // namespace asleft
