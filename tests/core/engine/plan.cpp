#include "engines.h"

#include <engine/plan.h>

#include <set>

namespace asleft {
namespace plan_tests {

using Texts = std::vector<std::string>;

Texts described(const EngineDesign &design, const CrankPlan &plan)
{
    Texts texts;
    for (const PlanPosition &position : plan.positions)
        texts.push_back(describePoints(design, position));
    return texts;
}

void expectTwoPositions(const EngineDesign &design, const std::string &first, const std::string &second)
{
    const CrankPlan plan = generatePlan(design, PlanWay::TwoPositions);
    EXPECT_TRUE(plan.generated);
    EXPECT_EQ(plan.way, PlanWay::TwoPositions);
    EXPECT_TRUE(plan.unreached.empty());
    EXPECT_EQ(described(design, plan), (Texts{first, second}));
    ASSERT_EQ(plan.positions.size(), 2U);
    EXPECT_EQ(plan.positions[0].crank, degrees(0));
    EXPECT_EQ(plan.positions[0].place, (CrankPosition{design.firingOrder[0], CrankEvent::Compression}));
    EXPECT_EQ(plan.positions[1].crank, degrees(360));
    EXPECT_EQ(crankAt(design, plan.positions[1].place), degrees(360));
    for (const PlanPosition &position : plan.positions)
        for (const PlanPoint &point : position.points) {
            EXPECT_FALSE(point.doubtful());
            EXPECT_EQ(point.margin, margin(design, point.adjuster, position.crank));
        }
}

TEST(TwoPositions, InLineThree) // TM 9-6115-670-14&P p 5-131
{
    expectTwoPositions(inLine3(), "IN 1 3 EX 1 2", "IN 2 EX 3");
}

TEST(TwoPositions, InLineFour) // TM 5-3895-383-24 p 6-60; TM 5-3805-258-24-1 p 4-28
{
    expectTwoPositions(inLine4(), "IN 1 2 EX 1 3", "IN 3 4 EX 2 4");
}

TEST(TwoPositions, InLineSix) // TM 9-2815-256-24
{
    expectTwoPositions(inLine6(), "IN 1 2 4 EX 1 3 5", "IN 3 5 6 EX 2 4 6");
}

TEST(TwoPositions, VeeEight) // widely printed in workshop manuals; from memory
{
    expectTwoPositions(vee8(), "IN 1 2 5 7 EX 1 3 4 8", "IN 3 4 6 8 EX 2 5 6 7");
}

TEST(TwoPositions, SecondPlaceIsTheCompanionOnCompression)
{
    const EngineDesign six = inLine6();
    EXPECT_EQ(generatePlan(six, PlanWay::TwoPositions).positions[1].place, (CrankPosition{cylinder(six, "6"), CrankEvent::Compression}));
    const EngineDesign three = inLine3();
    EXPECT_EQ(generatePlan(three, PlanWay::TwoPositions).positions[1].place, (CrankPosition{cylinder(three, "1"), CrankEvent::Overlap}));
}

TEST(TwoPositions, PointsStandInTheOrderOfTheValves)
{
    const EngineDesign eight = vee8();
    const auto valves = eight.adjusters();
    for (const PlanPosition &position : generatePlan(eight, PlanWay::TwoPositions).positions) {
        auto from = valves.begin();
        for (const PlanPoint &point : position.points) {
            from = std::find(from, valves.end(), point.adjuster);
            ASSERT_NE(from, valves.end());
        }
    }
}

TEST(EachOnCompression, PositionsFollowTheFiringOrder)
{
    const EngineDesign four = inLine4();
    const CrankPlan plan = generatePlan(four, PlanWay::EachOnCompression);
    ASSERT_EQ(plan.positions.size(), 4U);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(plan.positions[i].crank, degrees(180) * static_cast<std::int64_t>(i));
        EXPECT_EQ(plan.positions[i].place, (CrankPosition{four.firingOrder[i], CrankEvent::Compression}));
    }
    // Both valves of a cylinder on its own compression: workshop manuals of in-line fours; from memory here. Elsewhere a margin may be
    // greater (an intake's half a turn later), but nobody would look for it there.
    EXPECT_EQ(described(four, plan), (Texts{"IN 1 EX 1", "IN 3 EX 3", "IN 4 EX 4", "IN 2 EX 2"}));
}

TEST(Plans, EarlierPositionOnATie)
{
    // A single's two dead centres, with an exhaust arc centred on 180°: 90° from either.
    EngineText text = engineText(Layout::InLine, 1, "");
    text.cam.exhaustOpensBeforeBdc = degrees(90);
    text.cam.exhaustClosesAfterTdc = degrees(-90);
    const EngineDesign single = made(text);
    const CrankPlan plan = generatePlan(single, PlanWay::TwoPositions);
    EXPECT_EQ(margin(single, exhaust(single, "1"), degrees(0)), margin(single, exhaust(single, "1"), degrees(360)));
    EXPECT_EQ(described(single, plan), Texts{"IN 1 EX 1"}); // and the second position, with nothing to set, is dropped
}

TEST(Plans, UnreachedValvesAreNamed)
{
    EngineText text = engineText(Layout::InLine, 1, "");
    text.cam.rampAllowance = degrees(120);
    const EngineDesign single = made(text);
    const CrankPlan plan = generatePlan(single, PlanWay::TwoPositions);
    EXPECT_TRUE(plan.positions.empty());
    EXPECT_EQ(plan.unreached, single.adjusters());
}

/// Every valve a manual sets at `crank` may be set there.
void expectSettable(const EngineDesign &design, int crank, const std::vector<AdjusterRef> &published)
{
    for (const AdjusterRef valve : published)
        EXPECT_TRUE(maySet(design, valve, degrees(crank))) << shortName(design, valve) << " at " << crank;
}

TEST(Published, VeeEightByHalfTurns) // TM 5-3825-226-24 (firing order not printed there)
{
    const EngineDesign eight = made(engineText(Layout::Vee, 8, "1-2-7-3-4-5-6-8"));
    const std::pair<const char *, const char *> positions[] = {{"1", "2"}, {"3", "7"}, {"4", "5"}, {"6", "8"}};
    int crank = 0;
    for (const auto &[a, b] : positions) {
        expectSettable(eight, crank, {intake(eight, a), exhaust(eight, a), intake(eight, b), exhaust(eight, b)});
        crank += 180;
    }
}

TEST(Published, InLineFourByRockingCompanions) // workshop manuals of in-line fours; from memory
{
    // Order 1-2-4-3: with 4, 3, 1, 2 at overlap in turn, set both valves of 1, 2, 4, 3.
    const EngineDesign four = made(engineText(Layout::InLine, 4, "1-2-4-3"));
    const std::pair<const char *, const char *> positions[] = {{"4", "1"}, {"3", "2"}, {"1", "4"}, {"2", "3"}};
    int crank = 0;
    for (const auto &[rocking, set] : positions) {
        EXPECT_EQ(crankAt(four, {cylinder(four, rocking), CrankEvent::Overlap}), degrees(crank));
        EXPECT_EQ(companion(four, cylinder(four, set)), cylinder(four, rocking));
        expectSettable(four, crank, {intake(four, set), exhaust(four, set)});
        crank += 180;
    }
}

TEST(Describe, CountsLabelsAsAManualDoes)
{
    const EngineDesign twelve = made(engineText(Layout::Vee, 12, "1 2 3 4 5 6 7 8 9 10 11 12"));
    PlanPosition position;
    for (const char *label : {"11", "3", "10", "2"})
        position.points.push_back({intake(twelve, label), degrees(1)});
    EXPECT_EQ(describePoints(twelve, position), "IN 2 3 10 11");
    for (PlanPoint &point : position.points)
        point.adjuster.side = Side::Exhaust;
    EXPECT_EQ(describePoints(twelve, position), "EX 2 3 10 11");
    EXPECT_EQ(describePoints(twelve, PlanPosition{}), "");
}

} // namespace plan_tests
} // namespace asleft
