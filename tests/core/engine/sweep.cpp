// Random engines turned degree by degree, against a lift diagram of their own: plain whole degrees, no formula shared with the engine room.
#include "engines.h"

#include <engine/plan.h>

#include <algorithm>
#include <array>
#include <random>

namespace asleft {
namespace {

constexpr int cycle = 720;

struct WholeDegreeEngine {
    EngineDesign design;
    std::vector<int> fires; ///< by position in the firing order
    int opensEarly[2], closesLate[2], ramp;
};

int draw(std::mt19937 &random, int low, int high)
{
    return std::uniform_int_distribution(low, high)(random);
}

std::vector<int> drawGaps(std::mt19937 &random, int cylinders)
{
    std::vector<int> cuts{0, cycle};
    while (static_cast<int>(cuts.size()) < cylinders + 1)
        if (const int cut = draw(random, 1, cycle - 1); std::find(cuts.begin(), cuts.end(), cut) == cuts.end())
            cuts.push_back(cut);
    std::sort(cuts.begin(), cuts.end());
    std::vector<int> gaps;
    for (std::size_t i = 1; i < cuts.size(); ++i)
        gaps.push_back(cuts[i] - cuts[i - 1]);
    return gaps;
}

WholeDegreeEngine drawEngine(std::mt19937 &random)
{
    WholeDegreeEngine engine;
    const int cylinders = draw(random, 1, 12);
    std::vector<std::string> labels;
    for (int i = 1; i <= cylinders; ++i)
        labels.push_back(std::to_string(i));
    std::shuffle(labels.begin(), labels.end(), random);

    EngineText text = typed(Layout::InLine, cylinders, "");
    for (const std::string &label : labels)
        text.firingOrder += label + ' ';
    const bool even = cycle % cylinders == 0 && draw(random, 0, 1) == 0;
    const auto gaps = even ? std::vector<int>(static_cast<std::size_t>(cylinders), cycle / cylinders) : drawGaps(random, cylinders);
    int at = 0;
    for (const int gap : gaps) {
        text.gaps += std::to_string(gap) + ' ';
        engine.fires.push_back(at);
        at += gap;
    }
    for (int side = 0; side < 2; ++side) {
        engine.opensEarly[side] = draw(random, -60, 120);
        engine.closesLate[side] = draw(random, -60, 120);
    }
    engine.ramp = draw(random, 0, 60);
    text.cam = {degrees(engine.opensEarly[0]),
                degrees(engine.closesLate[0]),
                degrees(engine.opensEarly[1]),
                degrees(engine.closesLate[1]),
                degrees(engine.ramp),
                "",
                false};
    engine.design = made(text);
    return engine;
}

/// For each degree of the crank: is the valve off its seat, its ends included?
std::array<bool, cycle> liftDiagram(const WholeDegreeEngine &engine, AdjusterRef valve)
{
    const auto &order = engine.design.firingOrder;
    const int fires = engine.fires.at(static_cast<std::size_t>(std::find(order.begin(), order.end(), valve.cylinder) - order.begin()));
    const bool in = valve.side == Side::Intake;
    const std::size_t side = in ? 0 : 1;
    const int opens = fires + (in ? 360 : 180) - engine.opensEarly[side];
    const int closes = fires + (in ? 540 : 360) + engine.closesLate[side];
    std::array<bool, cycle> off{};
    for (int crank = opens; crank <= closes; ++crank)
        off.at(static_cast<std::size_t>((crank + cycle) % cycle)) = true;
    return off;
}

/// Steps both ways until the diagram changes: how many degrees to the valve's arc, or, negative, into it.
int walkedMargin(const std::array<bool, cycle> &off, int crank, int ramp)
{
    const auto isOff = [&](int at) { return off.at(static_cast<std::size_t>((at + 2 * cycle) % cycle)); };
    const bool inside = isOff(crank);
    int steps = 0;
    while (isOff(crank - steps) == inside && isOff(crank + steps) == inside)
        ++steps;
    return (inside ? -(steps - 1) : steps) - ramp; // the last degree inside is the end itself
}

TEST(Sweep, MarginsAgreeWithALiftDiagram)
{
    std::mt19937 random(20240611);
    for (int round = 0; round < 60; ++round) {
        const WholeDegreeEngine engine = drawEngine(random);
        for (const AdjusterRef valve : engine.design.adjusters()) {
            const auto off = liftDiagram(engine, valve);
            for (int crank = 0; crank < cycle; ++crank) {
                const int expected = walkedMargin(off, crank, engine.ramp);
                ASSERT_EQ(margin(engine.design, valve, degrees(crank)), degrees(expected))
                    << "round " << round << ' ' << shortName(engine.design, valve) << " at " << crank;
                ASSERT_EQ(maySet(engine.design, valve, degrees(crank)), expected > 0);
            }
        }
    }
}

TEST(Sweep, EveryValveIsSetWhereItsMarginIsGreatestOrOnItsOwnCompression)
{
    std::mt19937 random(20240612);
    for (int round = 0; round < 200; ++round) {
        const WholeDegreeEngine engine = drawEngine(random);
        for (const PlanWay way : {PlanWay::TwoPositions, PlanWay::EachOnCompression}) {
            const std::vector<int> cranks = way == PlanWay::TwoPositions ? std::vector{0, 360} : engine.fires;
            std::vector<std::vector<AdjusterRef>> expected(cranks.size());
            std::vector<AdjusterRef> unreached;
            for (const AdjusterRef valve : engine.design.adjusters()) {
                const auto off = liftDiagram(engine, valve);
                int most = 0;
                std::optional<std::size_t> best;
                for (std::size_t i = 0; i < cranks.size(); ++i) {
                    if (way == PlanWay::EachOnCompression && engine.design.firingOrder[i] != valve.cylinder)
                        continue;
                    if (const int here = walkedMargin(off, cranks[i], engine.ramp); here > most) {
                        most = here;
                        best = i;
                    }
                }
                (best ? expected[*best] : unreached).push_back(valve);
            }

            const CrankPlan plan = generatePlan(engine.design, way);
            EXPECT_EQ(plan.unreached, unreached) << round;
            std::size_t next = 0;
            for (std::size_t i = 0; i < cranks.size(); ++i) {
                if (expected[i].empty())
                    continue;
                ASSERT_LT(next, plan.positions.size()) << round;
                const PlanPosition &position = plan.positions[next++];
                EXPECT_EQ(position.crank, degrees(cranks[i])) << round;
                std::vector<AdjusterRef> valves;
                for (const PlanPoint &point : position.points)
                    valves.push_back(point.adjuster);
                EXPECT_EQ(valves, expected[i]) << round;
            }
            EXPECT_EQ(next, plan.positions.size()) << round;
        }
    }
}

TEST(Sweep, WhatIsDescribedIsReadBack)
{
    std::mt19937 random(20240613);
    for (int round = 0; round < 200; ++round) {
        const EngineDesign design = drawEngine(random).design;
        EXPECT_EQ(made(describeDesign(design)), design) << round;

        const CrankPlan plan = generatePlan(design, PlanWay::EachOnCompression);
        if (plan.positions.empty())
            continue;
        std::vector<TableLine> lines;
        for (const PlanPosition &position : plan.positions)
            lines.push_back({design.label(position.place.cylinder), position.place.event, describePoints(design, position)});
        const auto again = planFromTable(design, lines, "");
        ASSERT_TRUE(again.has_value()) << round;
        EXPECT_EQ(again->positions, plan.positions) << round;
        EXPECT_EQ(again->unreached, plan.unreached) << round;
    }
}

} // namespace
} // namespace asleft
