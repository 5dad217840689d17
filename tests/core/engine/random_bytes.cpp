// Whatever bytes are typed, the readers answer: with an engine or a plan that holds together, or with a refusal.
#include "bytes.h"
#include "engines.h"

#include <engine/plan.h>

#include <algorithm>
#include <numeric>

namespace asleft {
namespace random_bytes_tests {

/// What nearly makes sense to the readers of this room.
class TypedEngineBytes : public Bytes {
public:
    explicit TypedEngineBytes(unsigned seed) : Bytes(seed, "1234123412340589  --,,//++EIeiINEXinexABDJ.;:\t", 24) {}
};

void expectSound(const EngineDesign &design)
{
    std::vector<Cylinder> order = design.firingOrder;
    std::sort(order.begin(), order.end());
    ASSERT_EQ(order.size(), design.labels.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        ASSERT_EQ(order[i].index, static_cast<int>(i));
    ASSERT_EQ(design.gaps.size(), order.size());
    ASSERT_EQ(std::accumulate(design.gaps.begin(), design.gaps.end(), Angle{}), cycleOf(design));
    ASSERT_TRUE(std::all_of(design.gaps.begin(), design.gaps.end(), [](Angle gap) { return gap > Angle{}; }));
    ASSERT_EQ(design.valveOrder.size(), design.banks.size());
    ASSERT_EQ(made(describeDesign(design)), design);
}

TEST(RandomBytes, InEveryTextOfAnEngine)
{
    TypedEngineBytes bytes(1);
    for (auto field : {&EngineText::firingOrder, &EngineText::gaps, &EngineText::numbering, &EngineText::valveOrder}) {
        int read = 0;
        int refused = 0;
        for (int round = 0; round < 20'000; ++round) {
            const int cylinders = bytes.draw(1, 2);
            EngineText text = engineText(Layout::InLine, cylinders, cylinders == 1 ? "" : "1-2");
            text.*field = bytes.next();
            if (const auto design = designEngine(text, bytes.draw(0, 1) == 0 ? DecimalMark::Point : DecimalMark::Comma)) {
                ASSERT_NO_FATAL_FAILURE(expectSound(*design));
                ++read;
            } else
                ++refused;
        }
        EXPECT_GT(read, 100);
        EXPECT_GT(refused, 1000);
    }
}

TEST(RandomBytes, InValvesAndBarringTeeth)
{
    const std::pair<std::string EngineText::*, const char *> fields[] = {{&EngineText::valves, "0123454321+++ "},
                                                                         {&EngineText::barring, "0123456789/// "}};
    for (const auto &[field, likely] : fields) {
        Bytes bytes(3, likely, 8);
        int read = 0;
        int refused = 0;
        for (int round = 0; round < 50'000; ++round) {
            EngineText text = engineText(Layout::InLine, 2, "1-2");
            text.cycle = bytes.draw(0, 1) == 0 ? Cycle::FourStroke : Cycle::TwoStroke;
            text.bridged = bytes.draw(0, 3) == 0;
            text.*field = bytes.next();
            if (const auto design = designEngine(text)) {
                ASSERT_NO_FATAL_FAILURE(expectSound(*design));
                ASSERT_GE(design->train.exhausts, 1);
                ASSERT_LE(design->train.intakes + design->train.exhausts, 5);
                ASSERT_TRUE(!design->barring || design->barring->ringTeeth > design->barring->pinionTeeth);
                ++read;
            } else
                ++refused;
        }
        EXPECT_GT(read, 100);
        EXPECT_GT(refused, 1000);
    }
}

TEST(RandomBytes, InATable)
{
    EngineText bridged = fourText();
    bridged.valves = "1+4";
    bridged.bridged = bridged.bridgeScrews = bridged.injectors = bridged.decompressors = true;
    EngineText lettered = engineText(Layout::Vee, 4, "A-B-D-J");
    lettered.numbering = "A B / D J";
    lettered.injectors = lettered.decompressors = true;
    for (const EngineDesign &design : {inLine4(), made(bridged), made(lettered)}) {
        TypedEngineBytes bytes(2);
        int read = 0;
        for (int round = 0; round < 100'000; ++round) {
            const std::string cylinder = bytes.draw(0, 3) == 0 ? bytes.next() : design.labels[0];
            const auto plan = planFromTable(design, {{cylinder, CrankEvent::Compression, bytes.next()}}, bytes.next());
            if (!plan)
                continue;
            ++read;
            ASSERT_EQ(plan->positions.size(), 1U);
            ASSERT_FALSE(plan->positions[0].points.empty());
            ASSERT_EQ(plan->positions[0].points.size() + plan->unreached.size(), design.adjusters().size());
            const std::string described = describePoints(design, plan->positions[0]);
            const auto again = planFromTable(design, {{cylinder, CrankEvent::Compression, described}}, plan->source);
            ASSERT_TRUE(again.has_value()) << described;
            ASSERT_EQ(again->positions[0].points, plan->positions[0].points) << described;
        }
        EXPECT_GT(read, 50);
    }
}

} // namespace random_bytes_tests
} // namespace asleft
