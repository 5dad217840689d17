// The leaf to set a point with.
#include "story.h"

#include <shop/entry.h>

namespace asleft {
namespace {

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

TEST(SpecLeafOfBoth, NothingOfABandThatSaysNothing)
{
    EXPECT_FALSE(specLeaf(Band<Length>{}, nullptr));
}

} // namespace
} // namespace asleft
