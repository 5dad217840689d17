// Random engines of every layout, turned degree by degree against a diagram of their own.
#include "random_engine.h"

#include <engine/plan.h>

namespace asleft {
namespace sweep_tests {

TEST(Sweep, MarginsAgreeWithADiagram)
{
    EngineDraw draw(20240611);
    std::set<Layout> layouts;
    int twoStrokes = 0, secondArcs = 0, injectors = 0;
    for (int round = 0; round < 80; ++round) {
        const WholeDegreeEngine engine = draw.next();
        layouts.insert(engine.design.layout);
        twoStrokes += engine.cycle == 360;
        secondArcs += engine.exhaust.size() == 2;
        injectors += engine.design.train.injectors;
        for (const AdjusterRef adjuster : engine.design.adjusters()) {
            if (adjuster.number > 0) // presses like the first of its kind, and the walk is long
                continue;
            const auto expected = walkedMargins(engine, adjuster);
            for (int crank = 0; crank < engine.cycle; ++crank) {
                const int here = expected[static_cast<std::size_t>(crank)];
                ASSERT_EQ(margin(engine.design, adjuster, degrees(crank)), degrees(here))
                    << "round " << round << ' ' << shortName(engine.design, adjuster) << " at " << crank;
                ASSERT_EQ(maySet(engine.design, adjuster, degrees(crank)), here > 0);
            }
        }
    }
    EXPECT_EQ(layouts.size(), 7U);
    EXPECT_GT(twoStrokes, 10);
    EXPECT_GT(secondArcs, 10);
    EXPECT_GT(injectors, 20);
}

/// The whole-degree positions of a way; each point is set at its own, or where its margin is greatest.
struct SlowPlan {
    std::vector<int> cranks;
    std::vector<std::vector<AdjusterRef>> points;
    std::vector<AdjusterRef> unreached;
};

SlowPlan slowPlan(const WholeDegreeEngine &engine, PlanWay way)
{
    SlowPlan plan;
    plan.cranks = way == PlanWay::TwoPositions ? std::vector{0, engine.cycle / 2} : engine.fires;
    plan.points.resize(plan.cranks.size());
    for (const AdjusterRef adjuster : engine.design.adjusters()) {
        const auto margins = walkedMargins(engine, adjuster);
        const bool goesAlong = way == PlanWay::EachOnCompression && adjuster.kind != PointKind::Injector;
        int most = 0;
        std::optional<std::size_t> best;
        for (std::size_t i = 0; i < plan.cranks.size(); ++i) {
            if (goesAlong && engine.design.firingOrder[i] != adjuster.cylinder)
                continue;
            if (const int here = margins[static_cast<std::size_t>(plan.cranks[i])]; here > most) {
                most = here;
                best = i;
            }
        }
        (best ? plan.points[*best] : plan.unreached).push_back(adjuster);
    }
    return plan;
}

std::vector<AdjusterRef> adjustersOf(const PlanPosition &position)
{
    std::vector<AdjusterRef> adjusters;
    for (const PlanPoint &point : position.points)
        adjusters.push_back(point.adjuster);
    return adjusters;
}

TEST(Sweep, EveryPointIsSetWhereItsMarginIsGreatestOrOnItsOwnCompression)
{
    EngineDraw draw(20240612);
    for (int round = 0; round < 60; ++round) {
        const WholeDegreeEngine engine = draw.next();
        for (const PlanWay way : {PlanWay::TwoPositions, PlanWay::EachOnCompression}) {
            const SlowPlan expected = slowPlan(engine, way);
            const CrankPlan plan = generatePlan(engine.design, way);
            EXPECT_EQ(plan.unreached, expected.unreached) << round;
            std::size_t next = 0;
            for (std::size_t i = 0; i < expected.cranks.size(); ++i) {
                if (expected.points[i].empty())
                    continue;
                ASSERT_LT(next, plan.positions.size()) << round;
                const PlanPosition &position = plan.positions[next++];
                EXPECT_EQ(position.crank, degrees(expected.cranks[i])) << round;
                EXPECT_EQ(adjustersOf(position), expected.points[i]) << round;
            }
            EXPECT_EQ(next, plan.positions.size()) << round;
        }
    }
}

TEST(Sweep, TwoPositionsBeginHereOnlyIfNothingIsLost)
{
    EngineDraw draw(20240614);
    int here = 0, away = 0;
    for (int round = 0; round < 150; ++round) {
        const WholeDegreeEngine engine = draw.next();
        const int from = engine.fires[static_cast<std::size_t>(draw.draw(0, engine.design.cylinders() - 1))];
        const int half = engine.cycle / 2;
        std::size_t lostHere = 0;
        for (const AdjusterRef adjuster : engine.design.adjusters()) {
            const auto margins = walkedMargins(engine, adjuster);
            const auto at = [&](int crank) { return margins[static_cast<std::size_t>(crank % engine.cycle)]; };
            lostHere += at(from) <= 0 && at(from + half) <= 0;
        }
        const auto plan = planFor(engine.design, {.from = degrees(from)});
        ASSERT_TRUE(plan.has_value());
        const std::size_t lostAtFirst = slowPlan(engine, PlanWay::TwoPositions).unreached.size();
        EXPECT_EQ(plan->unreached.size(), std::min(lostHere, lostAtFirst)) << round;
        const int first = lostHere <= lostAtFirst ? from : 0;
        for (const PlanPosition &position : plan->positions)
            EXPECT_TRUE(position.crank == degrees(first) || position.crank == degrees((first + half) % engine.cycle)) << round;
        (lostHere <= lostAtFirst ? here : away) += 1;
    }
    EXPECT_GT(here, 20);
    EXPECT_GT(away, 5);
}

TEST(Sweep, WhatIsDescribedIsReadBack)
{
    EngineDraw draw(20240613);
    std::set<Layout> layouts;
    for (int round = 0; round < 400; ++round) {
        const WholeDegreeEngine engine = draw.next();
        layouts.insert(engine.design.layout);
        const EngineText described = describeDesign(engine.design);
        ASSERT_EQ(made(described), engine.design) << round;
        ASSERT_EQ(designEngine(described, DecimalMark::Comma), engine.design) << round;

        const CrankPlan plan = generatePlan(engine.design, draw.oneIn(2) ? PlanWay::EachOnCompression : PlanWay::TwoPositions);
        if (plan.positions.empty())
            continue;
        std::vector<TableLine> lines;
        for (const PlanPosition &position : plan.positions)
            lines.push_back({engine.design.label(position.place.cylinder), position.place.event, describePoints(engine.design, position)});
        const auto again = planFromTable(engine.design, lines, "");
        ASSERT_TRUE(again.has_value()) << round << ' ' << lines[0].points;
        ASSERT_EQ(again->positions, plan.positions) << round;
        ASSERT_EQ(again->unreached, plan.unreached) << round;
    }
    EXPECT_EQ(layouts.size(), 7U);
}

TEST(Sweep, AnyChoiceOfPointsIsReadBack)
{
    EngineDraw draw(20240615);
    for (int round = 0; round < 400; ++round) {
        const EngineDesign design = draw.next().design;
        PlanPosition position{{design.firingOrder[0], CrankEvent::Compression}, {}, {}};
        const int among = draw.draw(1, 4);
        for (const AdjusterRef adjuster : design.adjusters())
            if (draw.draw(1, 4) <= among)
                position.points.push_back({adjuster, margin(design, adjuster, {})});
        if (position.points.empty())
            continue;
        const std::string points = describePoints(design, position);
        const auto again = planFromTable(design, {{design.label(position.place.cylinder), CrankEvent::Compression, points}}, "");
        ASSERT_TRUE(again.has_value()) << points;
        ASSERT_EQ(again->positions.at(0).points, position.points) << points;
    }
}

} // namespace sweep_tests
} // namespace asleft
