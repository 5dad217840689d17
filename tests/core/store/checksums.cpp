#include "sample.h"

#include "checksum.h"

#include <gtest/gtest.h>

namespace asleft {
namespace checksums_tests {

/// Of the acts a sample has, in their order, as the program said them that first stored each kind. They stand in garages: not one may
/// come out differently, whatever writes them. What is added to the sample is added at the end, here too.
constexpr std::int64_t pinned[] = {
    -5825195451976372179,
    -7660394965403822528,
    -5171785156014955751,
    5405885114972260003,
    6237071876010291918,
    3309255825675487805,
    -8033233915024223519,
    -5020789201594982224,
    -4731292158963533903,
    -3001180350812962862,
    -5064961852470893191,
    6440786904330503423,
    8919824715450265817,
    4646783455983222518,
    -2572325656087883205,
    -2121551595656617303,
    2620358627563337726,
    8114793620093606518,
    -4467284843525086274,
    -1572022126790092647,
    -6504736497235583101,
    -8117207593839252206,
    1142492873760007250,
    3795802229109386679,
    -1741793833968668624,
    4596946614524918864,
    9145370229873300264,
    3617727137545432562,
    -8757016587677938926,
    -8529582556447741370,
    -1696230832589786030,
    9076004932016895879,
    2666989005118281689,
    -3052863760815193733,
    -1518403453755468057,
    -1614643469317348617,
    1923245274033221474,
    -4323604673490584754,
    3551556745337521308,
    7903170273011293376,
    -6054610126410744029,
    1984447862010935712,
    2444164044756685157,
    -1961275344254374117,
    -4415707593096529165,
    6545134088375938213,
    -4530909388438498945,
    // Findings about a point, a step, the engine, the vehicle.
    8290428754424038001,
    1001675211134300747,
    3529193984955826956,
    6863012131718239861,
};

Sample sampleOf()
{
    Sample sample{
        VehicleId(1), EngineId(2), PersonId(3), ToolId(4), SpecId(5), JobId(6), {}, {StepId(7)}, {JointId(8), ToolId(9), ToolId(10)}};
    for (int point = 11; point < 19; ++point)
        sample.points.emplace_back(point);
    return sample;
}

TEST(Checksums, AreThoseOfTheActsInOldGarages)
{
    const Sample sample = sampleOf();
    const std::vector<Fact> facts = everyKindOfFact(sample, ActSeq(20));
    ASSERT_EQ(facts.size(), std::size(pinned));
    for (std::size_t place = 0; place < facts.size(); ++place)
        EXPECT_EQ(store::checksumOf(actOf(sample, "uid", facts[place])), pinned[place]) << "fact " << place;
    NewAct withdrawal = actOf(sample, "uid", WithdrawFact{});
    withdrawal.withdraws = ActSeq(21);
    EXPECT_EQ(store::checksumOf(withdrawal), 4326249702420892839);
}

} // namespace checksums_tests
} // namespace asleft
