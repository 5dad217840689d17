#include "engines.h"

#include <engine/plan.h>

namespace asleft {
namespace two_stroke_tests {

EngineText twoStrokeText(int cylinders, std::string order)
{
    EngineText text = engineText(Layout::InLine, cylinders, std::move(order));
    text.cycle = Cycle::TwoStroke;
    return text;
}

TEST(TwoStroke, FiresOnceATurn)
{
    const EngineDesign four = twoStroke(4, "1-3-4-2");
    EXPECT_EQ(cycleOf(four), degrees(360));
    EXPECT_EQ(four.gaps, std::vector<Angle>(4, degrees(90)));
    EXPECT_EQ(inCycle(four, degrees(-1)), degrees(359));
    EXPECT_EQ(travel(four, degrees(350), degrees(10)), degrees(20));
    EXPECT_EQ(phase(four, cylinder(four, "3"), degrees(45)), degrees(315));

    EngineText odd = twoStrokeText(2, "1-2");
    odd.gaps = "150-210";
    EXPECT_EQ(firingAngle(made(odd), Cylinder{1}), degrees(150));
    odd.gaps = "270-450";
    EXPECT_EQ(refusalOf(odd), (Error{ErrorKind::GapsSum, {"720"}}));
}

TEST(TwoStroke, EvenGapsAreWholeForEveryCount)
{
    for (int n = 1; n <= 12; ++n) {
        std::string order;
        for (int i = 1; i <= n; ++i)
            order += std::to_string(i) + ' ';
        EXPECT_EQ(twoStroke(n, order).gaps.front() * n, degrees(360)) << n;
    }
    for (int n = 14; n <= 24; n += 2)
        EXPECT_EQ(Angle::ofSmallest(degrees(360).smallest() / n) * n, degrees(360)) << n;
}

TEST(TwoStroke, HasItsOwnUsualEvents)
{
    const EngineDesign four = twoStroke(4, "1-3-4-2");
    EXPECT_EQ(four.cam, twoStrokeCam());
    EXPECT_TRUE(four.cam.assumed);
    EXPECT_EQ(twoStrokeCam().exhaustOpensBeforeBdc, degrees(90)); // from memory, no source
    EXPECT_EQ(twoStrokeCam().exhaustClosesAfterTdc, degrees(60));
    // Off their computers from 90 to 240, with a ramp of 20.
    const std::pair<int, int> rows[] = {{0, 90}, {60, 30}, {90, 0}, {165, -75}, {240, 0}, {345, 105}};
    for (const auto &[crank, clear] : rows)
        EXPECT_EQ(margin(four, exhaust(four, "1"), degrees(crank)), degrees(clear - 20)) << crank;
}

TEST(TwoStroke, GivenEventsStandAndItsIntakesCountForNothing)
{
    EngineText text = twoStrokeText(4, "1-3-4-2");
    text.cam = wholeDegrees(1000, 1000, 80, 50, 10);
    const EngineDesign four = made(text);
    EXPECT_EQ(four.cam.exhaustOpensBeforeBdc, degrees(80));
    EXPECT_EQ(four.cam.intakeOpensBeforeTdc, Angle{});
    EXPECT_EQ(margin(four, exhaust(four, "1"), degrees(0)), degrees(100 - 10));
    EXPECT_EQ(made(describeDesign(four)), four);
    EXPECT_EQ(crankAt(four, {cylinder(four, "1"), CrankEvent::ExhaustOpens}), degrees(100));
    EXPECT_EQ(crankAt(four, {cylinder(four, "1"), CrankEvent::ExhaustFullyOpen}), degrees(165));
    EXPECT_EQ(crankAt(four, {cylinder(four, "1"), CrankEvent::IntakeCloses}), degrees(180));
    EXPECT_EQ(crankAt(four, {cylinder(four, "1"), CrankEvent::IntakeFullyOpen}), degrees(180));

    text.cam = wholeDegrees(20, 60, 180, 180, 10);
    EXPECT_EQ(refusalOf(text), (Error{ErrorKind::CamArcTooLong, {"360"}, Noun::ExhaustArc}));
    text.cam = wholeDegrees(20, 60, -60, 60, 10);
    EXPECT_EQ(refusalOf(text), (Error{ErrorKind::CamArcTooLong, {"0"}, Noun::ExhaustArc}));
}

TEST(TwoStroke, WhatIsAssumedLeavesTheRestAsTyped)
{
    EngineText text = twoStrokeText(1, "");
    text.cam.rampAllowance = degrees(5);
    text.cam.injector = CrankArc{degrees(-30), degrees(20)};
    text.cam.checkLift = "0.1 mm";
    const EngineDesign single = made(text);
    EXPECT_EQ(single.cam.exhaustOpensBeforeBdc, degrees(90));
    EXPECT_EQ(single.cam.rampAllowance, degrees(5));
    EXPECT_EQ(single.cam.injector, text.cam.injector);
    EXPECT_EQ(single.cam.checkLift, "0.1 mm");
}

TEST(TwoStroke, WhatIsAssumedFollowsTheCycle)
{
    EngineText text = describeDesign(twoStroke(4, "1-3-4-2"));
    text.cycle = Cycle::FourStroke;
    text.valves = "";
    EXPECT_EQ(made(text), inLine4());
    text = describeDesign(inLine4());
    text.cycle = Cycle::TwoStroke;
    EXPECT_EQ(made(text), twoStroke(4, "1-3-4-2"));
}

TEST(TwoStroke, DeadCentres)
{
    const EngineDesign three = twoStroke(3, "1-3-2");
    EXPECT_EQ(crankAt(three, {cylinder(three, "1"), CrankEvent::Overlap}), degrees(180)); // bottom dead centre
    EXPECT_EQ(readCrank(three, degrees(120)), (CrankReading{{cylinder(three, "3"), CrankEvent::Compression}, {}}));
    EXPECT_EQ(readCrank(three, degrees(179)), (CrankReading{{cylinder(three, "3"), CrankEvent::Compression}, degrees(59)}));
    EXPECT_EQ(readCrank(three, degrees(181)), (CrankReading{{cylinder(three, "1"), CrankEvent::Overlap}, degrees(1)}));
    EXPECT_EQ(readCrank(three, degrees(-1)), (CrankReading{{cylinder(three, "3"), CrankEvent::Overlap}, degrees(59)}));
    const EngineDesign four = twoStroke(4, "1-3-4-2"); // one's bottom is another's top
    EXPECT_EQ(readCrank(four, degrees(185)), (CrankReading{{cylinder(four, "4"), CrankEvent::Compression}, degrees(5)}));
}

TEST(TwoStroke, TheMarkAloneTells)
{
    const EngineDesign four = twoStroke(4, "1-3-4-2");
    for (const Cylinder c : four.firingOrder) {
        EXPECT_EQ(companion(four, c), std::nullopt);
        const StrokeCheck check = strokeCheck(four, c);
        EXPECT_TRUE(check.everyTdcFires);
        EXPECT_FALSE(check.loosenessTells || check.changeOverShows || check.companion);
    }
    EXPECT_FALSE(strokeCheck(inLine4(), Cylinder{0}).everyTdcFires);
}

TEST(TwoStroke, TwoPositionsAreHalfATurnApart)
{
    const EngineDesign four = twoStroke(4, "1-3-4-2");
    const CrankPlan plan = generatePlan(four, PlanWay::TwoPositions);
    ASSERT_EQ(plan.positions.size(), 2U);
    EXPECT_EQ(plan.positions[0].crank, degrees(0));
    EXPECT_EQ(plan.positions[1].crank, degrees(180));
    EXPECT_EQ(plan.positions[1].place, (CrankPosition{cylinder(four, "4"), CrankEvent::Compression}));
    // By hand: at 0 the phases of 1, 3, 4, 2 are 0, 270, 180, 90, and the exhausts are free from 260 to 70; half a turn on the same of the
    // other two. 3 at 0 has 10 of margin, and so has 2 at 180.
    EXPECT_EQ(describePoints(four, plan.positions[0]), "EX 1 3");
    EXPECT_EQ(describePoints(four, plan.positions[1]), "EX 2 4");
    EXPECT_TRUE(plan.unreached.empty());
}

TEST(TwoStroke, EachOnItsOwnTopDeadCentre)
{
    EngineText text = twoStrokeText(3, "1-3-2");
    text.valves = "4";
    text.bridged = text.bridgeScrews = text.injectors = true;
    const EngineDesign three = made(text);
    const CrankPlan plan = generatePlan(three, PlanWay::EachOnCompression);
    ASSERT_EQ(plan.positions.size(), 3U);
    // An injector, pressed from 70 before to 70 after the firing, has 30 at either of the other two: it goes to the earlier one.
    EXPECT_EQ(describePoints(three, plan.positions[0]), "EX 1 INJ 2 3");
    EXPECT_EQ(describePoints(three, plan.positions[1]), "EX 3 INJ 1");
    EXPECT_EQ(describePoints(three, plan.positions[2]), "EX 2");
    for (const PlanPosition &position : plan.positions)
        for (const PlanPoint &point : position.points)
            if (point.adjuster.kind == PointKind::Injector) {
                EXPECT_EQ(point.margin, degrees(50 - 20));
            }
    EXPECT_EQ(plan.positions[0].points.size(), 4U + 2U);
}

TEST(TwoStroke, RefusesWaysThatTellByIntakes)
{
    const EngineDesign four = twoStroke(4, "1-3-4-2");
    for (const PlanWay way : {PlanWay::CompanionAtOverlap, PlanWay::OpeningAndClosing, PlanWay::RuleOfNine}) {
        const auto plan = planFor(four, {.way = way});
        ASSERT_FALSE(plan.has_value());
        EXPECT_EQ(plan.error(), (Error{ErrorKind::PlanNotForEngine, {}}));
    }
    for (const CrankEvent event : {CrankEvent::IntakeCloses, CrankEvent::IntakeFullyOpen}) {
        const auto table = planFromTable(four, {{"1", event, "EX 1"}}, "");
        ASSERT_FALSE(table.has_value());
        EXPECT_EQ(table.error(), (Error{ErrorKind::TablePositionUnread, {"1"}}));
    }
    EXPECT_TRUE(planFromTable(four, {{"1", CrankEvent::ExhaustFullyOpen, "EX 4"}}, "").has_value());
}

} // namespace two_stroke_tests
} // namespace asleft
