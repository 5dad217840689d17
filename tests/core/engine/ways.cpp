// The ways to turn an engine through its points, and where the list begins.
#include "engines.h"

#include <engine/plan.h>

#include <algorithm>

namespace asleft {
namespace ways_tests {

using Texts = std::vector<std::string>;

CrankPlan planned(const EngineDesign &design, const PlanAsk &ask)
{
    const auto plan = planFor(design, ask);
    EXPECT_TRUE(plan.has_value());
    return plan.value_or(CrankPlan{});
}

Texts described(const EngineDesign &design, const CrankPlan &plan)
{
    Texts texts;
    for (const PlanPosition &position : plan.positions)
        texts.push_back(describePoints(design, position));
    return texts;
}

std::vector<int> cranks(const CrankPlan &plan)
{
    std::vector<int> whole;
    for (const PlanPosition &position : plan.positions)
        whole.push_back(static_cast<int>(position.crank.smallest() / anglePerDegree));
    return whole;
}

using Cranks = std::vector<int>;

TEST(Ways, PlanForGeneratesTheSame)
{
    for (const EngineDesign &design : {inLine3(), inLine4(), inLine6(), vee8()})
        for (const PlanWay way :
             {PlanWay::TwoPositions, PlanWay::EachOnCompression, PlanWay::CompanionAtOverlap, PlanWay::OpeningAndClosing})
            EXPECT_EQ(planned(design, {.way = way}), generatePlan(design, way));
}

TEST(Companion, RockingSetsBothValvesOfTheOther)
{
    // Order 1-2-4-3, valves E I E I E I E I numbered 1 to 8: 7 and 8 rocking, set 1 and 2; 5+6, 3+4; 1+2, 7+8; 3+4, 5+6. Workshop manuals
    // of in-line fours; from memory.
    EngineText text = engineText(Layout::InLine, 4, "1-2-4-3");
    text.valveOrder = "E I E I E I E I";
    const EngineDesign four = made(text);
    const CrankPlan plan = planned(four, {.way = PlanWay::CompanionAtOverlap});
    const char *const rocking[] = {"4", "3", "1", "2"};
    ASSERT_EQ(plan.positions.size(), 4U);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(plan.positions[i].place, (CrankPosition{cylinder(four, rocking[i]), CrankEvent::Overlap}));
        EXPECT_EQ(plan.positions[i].crank, degrees(180) * static_cast<std::int64_t>(i));
        EXPECT_EQ(crankAt(four, plan.positions[i].place), plan.positions[i].crank);
    }
    EXPECT_EQ(described(four, plan), (Texts{"IN 1 EX 1", "IN 2 EX 2", "IN 4 EX 4", "IN 3 EX 3"}));
    EXPECT_EQ(plan.way, PlanWay::CompanionAtOverlap);
}

TEST(Companion, WithoutOneTheCylinderIsNamedItself)
{
    const EngineDesign three = inLine3();
    const CrankPlan plan = planned(three, {.way = PlanWay::CompanionAtOverlap});
    ASSERT_EQ(plan.positions.size(), 3U);
    for (std::size_t i = 0; i < 3; ++i)
        EXPECT_EQ(plan.positions[i].place, (CrankPosition{three.firingOrder[i], CrankEvent::Compression}));
}

TEST(OpeningAndClosing, IntakeAsItsExhaustOpensExhaustAsItsIntakeHasClosed)
{
    const EngineDesign four = inLine4();
    const CrankPlan plan = planned(four, {.way = PlanWay::OpeningAndClosing});
    // By hand, for the assumed cam: an exhaust opens at 120 and an intake has closed at 600 after the firing; 1, 3, 4, 2 fire at 0, 180,
    // 360, 540.
    EXPECT_EQ(cranks(plan), (Cranks{60, 120, 240, 300, 420, 480, 600, 660}));
    EXPECT_EQ(described(four, plan), (Texts{"EX 3", "IN 1", "EX 4", "IN 3", "EX 2", "IN 4", "EX 1", "IN 2"}));
    EXPECT_EQ(plan.positions[1].place, (CrankPosition{cylinder(four, "1"), CrankEvent::ExhaustOpens}));
    EXPECT_EQ(plan.positions[6].place, (CrankPosition{cylinder(four, "1"), CrankEvent::IntakeCloses}));
    // The intake opens at 340, 220 later; the exhaust has closed at 380, 220 before.
    for (const PlanPosition &position : plan.positions)
        for (const PlanPoint &point : position.points)
            EXPECT_EQ(point.margin, degrees(220 - 20));
}

TEST(OpeningAndClosing, TwoAtOneAngleAreOnePosition)
{
    // In a six the firings are 120 apart: as the exhaust of one opens at 120, the intake of the one that fires 240 later has closed at 600.
    const EngineDesign six = inLine6();
    const CrankPlan plan = planned(six, {.way = PlanWay::OpeningAndClosing});
    EXPECT_EQ(cranks(plan), (Cranks{0, 120, 240, 360, 480, 600}));
    EXPECT_EQ(described(six, plan), (Texts{"IN 4 EX 5", "IN 1 EX 3", "IN 5 EX 6", "IN 3 EX 2", "IN 6 EX 4", "IN 2 EX 1"}));
    for (const PlanPosition &position : plan.positions)
        EXPECT_EQ(crankAt(six, position.place), position.crank);
}

EngineDesign sixWithEverything()
{
    EngineText text = engineText(Layout::InLine, 6, "1-5-3-6-2-4");
    text.valves = "4";
    text.bridged = text.bridgeScrews = text.injectors = text.decompressors = true;
    return made(text);
}

TEST(EachOnCompression, TakesAllOfTheCylinderButTheInjector)
{
    const EngineDesign six = sixWithEverything();
    for (const PlanWay way : {PlanWay::EachOnCompression, PlanWay::CompanionAtOverlap}) {
        const CrankPlan plan = planned(six, {.way = way});
        EXPECT_TRUE(plan.unreached.empty());
        // An injector, pressed from 70 before to 70 after its firing, has most room a whole turn after it: with its companion.
        EXPECT_EQ(described(six, plan), (Texts{"IN 1 EX 1 INJ 6 DEC 1", "IN 5 EX 5 INJ 2 DEC 5", "IN 3 EX 3 INJ 4 DEC 3",
                                               "IN 6 EX 6 INJ 1 DEC 6", "IN 2 EX 2 INJ 5 DEC 2", "IN 4 EX 4 INJ 3 DEC 4"}));
        EXPECT_EQ(plan.positions[0].points.size(), 6U);
    }
}

TEST(TwoPositions, TakeEverythingAlongWithItsValves)
{
    const EngineDesign six = sixWithEverything();
    // The published table of the plain engine (TM 9-2815-256-24), with what goes along. Injectors by hand: at 0 the phases of 1, 5, 3, 6,
    // 2, 4 are 0, 600, 480, 360, 240, 120; a turn on they change places with their companions.
    EXPECT_EQ(described(six, planned(six, {})), (Texts{"IN 1 2 4 EX 1 3 5 INJ 2 3 6 DEC 1 3 5", "IN 3 5 6 EX 2 4 6 INJ 1 4 5 DEC 2 4 6"}));
}

TEST(OddGaps, VeeTwinOfNinetyDegrees)
{
    const EngineDesign twin = made(engineText(Layout::Vee, 2, "1-2", "270-450"));
    EXPECT_EQ(firingAngle(twin, cylinder(twin, "2")), degrees(270));
    EXPECT_EQ(companion(twin, cylinder(twin, "1")), std::nullopt);
    EXPECT_EQ(described(twin, planned(twin, {.way = PlanWay::EachOnCompression})), (Texts{"IN 1 EX 1", "IN 2 EX 2"}));
    EXPECT_EQ(cranks(planned(twin, {.way = PlanWay::EachOnCompression})), (Cranks{0, 270}));
    // By hand: at 0 the phases are 0 and 450, at 360 they are 360 and 90. Intake 2 is pressed at 450 and has 210 at 90; exhaust 2 has 70 at
    // 450 and 30 at 90.
    EXPECT_EQ(described(twin, planned(twin, {})), (Texts{"IN 1 EX 1 2", "IN 2"}));
    EXPECT_EQ(margin(twin, exhaust(twin, "2"), degrees(0)), degrees(70 - 20));
    EXPECT_EQ(margin(twin, intake(twin, "2"), degrees(360)), degrees(210 - 20));
}

TEST(OddGaps, VeeSixOfNinetyAndHundredAndFifty)
{
    const EngineDesign six = made(engineText(Layout::Vee, 6, "1-6-5-4-3-2", "90-150"));
    std::vector<int> fires;
    for (const Cylinder c : six.firingOrder)
        fires.push_back(static_cast<int>(firingAngle(six, c).smallest() / anglePerDegree));
    EXPECT_EQ(fires, (Cranks{0, 90, 240, 330, 480, 570}));
    for (const Cylinder c : six.firingOrder)
        EXPECT_EQ(companion(six, c), std::nullopt); // nobody fires a whole turn later
    EXPECT_EQ(cranks(planned(six, {.way = PlanWay::EachOnCompression})), fires);
    // By hand: at 0 the phases of 1, 6, 5, 4, 3, 2 are 0, 630, 480, 390, 240, 150, at 360 they are 360, 270, 120, 30, 600, 510.
    // Intakes press from 320 to 620 and exhausts from 100 to 400, ramps and all; each goes where it has more room.
    EXPECT_EQ(described(six, planned(six, {})), (Texts{"IN 1 2 3 EX 1 5 6", "IN 4 5 6 EX 2 3 4"}));
}

TEST(From, TheListBeginsAhead)
{
    const EngineDesign four = inLine4();
    for (const PlanWay way : {PlanWay::EachOnCompression, PlanWay::CompanionAtOverlap, PlanWay::OpeningAndClosing, PlanWay::RuleOfNine}) {
        const CrankPlan unmoved = planned(four, {.way = way});
        for (int from = -90; from <= 810; from += 45) {
            CrankPlan plan = planned(four, {.way = way, .from = degrees(from)});
            for (std::size_t i = 1; i < plan.positions.size(); ++i)
                EXPECT_LT(travel(four, degrees(from), plan.positions[i - 1].crank), travel(four, degrees(from), plan.positions[i].crank));
            std::ranges::sort(plan.positions, {}, &PlanPosition::crank);
            EXPECT_EQ(plan, unmoved) << from;
        }
    }
    EXPECT_EQ(cranks(planned(four, {.way = PlanWay::EachOnCompression, .from = degrees(180)})), (Cranks{180, 360, 540, 0}));
    EXPECT_EQ(cranks(planned(four, {.way = PlanWay::EachOnCompression, .from = degrees(181)})), (Cranks{360, 540, 0, 180}));
}

TEST(From, TwoPositionsBeginWithTheDeadCentreItStandsAt)
{
    const EngineDesign four = inLine4();
    const CrankPlan at3 = planned(four, {.from = degrees(180)});
    EXPECT_EQ(cranks(at3), (Cranks{180, 540}));
    EXPECT_EQ(at3.positions[0].place, (CrankPosition{cylinder(four, "3"), CrankEvent::Compression}));
    EXPECT_EQ(described(four, at3), (Texts{"IN 1 3 EX 3 4", "IN 2 4 EX 1 2"}));
    EXPECT_EQ(cranks(planned(four, {.from = degrees(540)})), (Cranks{540, 180}));
    EXPECT_EQ(cranks(planned(four, {.from = degrees(360)})), (Cranks{360, 0}));
    EXPECT_EQ(cranks(planned(four, {.from = degrees(-180)})), (Cranks{540, 180}));
    EXPECT_EQ(cranks(planned(four, {.from = degrees(90)})), (Cranks{360, 0})); // no dead centre
    EXPECT_EQ(cranks(planned(four, {.from = degrees(361)})), (Cranks{0, 360}));
}

TEST(From, TwoPositionsDoNotBeginWhereFewerPointsAreReached)
{
    // By hand: no. 2 fires 150 after no. 1. From its dead centre the positions are 150 and 510, and exhaust 1, pressed from 80 to 430 with
    // its ramp of 40, is free at 510; its intake, pressed from 300 to 660, is free at 150. Every point is reached: the list begins there.
    EngineText text = engineText(Layout::InLine, 2, "1-2", "150-570");
    text.cam = wholeDegrees(20, 80, 60, 30, 40);
    EXPECT_EQ(cranks(planned(made(text), {.from = degrees(150)})), (Cranks{150, 510}));
    // An exhaust that closes 130 after TDC, and opens 70 before BDC, is pressed from 70 to 530 with the ramp: at neither. From 0 and 360 it
    // is reached.
    text.cam = wholeDegrees(20, 80, 70, 130, 40);
    const EngineDesign late = made(text);
    EXPECT_EQ(generatePlan(late, PlanWay::TwoPositions).unreached, std::vector<AdjusterRef>{});
    EXPECT_EQ(cranks(planned(late, {.from = degrees(150)})), (Cranks{360, 0}));
}

TEST(From, TheDoubtOfATieDoesNotTurnWithIt)
{
    // A single's exhaust that is 90 from either dead centre goes to the earlier one, wherever the engine stands.
    EngineText text = engineText(Layout::InLine, 1, "");
    text.cam = wholeDegrees(20, 60, 90, -90, 20);
    const EngineDesign single = made(text);
    EXPECT_EQ(planned(single, {.from = degrees(360)}), planned(single, {}));
}

} // namespace ways_tests
} // namespace asleft
