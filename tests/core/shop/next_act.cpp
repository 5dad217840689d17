// What to do now. The plan of the in-line four: IN 1 2 EX 1 3 at 0°, IN 3 4 EX 2 4 at 360°.
#include "kinds.h"
#include "story.h"

namespace asleft {
namespace next_act_tests {

Story atFirstPosition()
{
    Story story;
    story.twoPositions();
    story.crank(0);
    return story;
}

NextAct turnTo(std::size_t position)
{
    return next::TurnCrank{position};
}

NextAct valveAct(const Story &story)
{
    return nextValveAct(story.state());
}

TEST(NextValveAct, AsksWhereTheCrankStandsFirst)
{
    Story story;
    story.twoPositions();
    EXPECT_EQ(valveAct(story), NextAct(next::ConfirmCrank{}));
    story.crank(std::nullopt);
    EXPECT_EQ(valveAct(story), NextAct(next::ConfirmCrank{}));
}

TEST(NextValveAct, AnOpenNutComesBeforeAnything)
{
    Story story;
    story.nutOpen("E4");
    EXPECT_EQ(valveAct(story), NextAct(next::LockNut{story.at("E4")})) << "even before the crank is known";
    story.crank(0);
    story.left("I1", "0.50 mm");
    story.nutOpen("I3");
    EXPECT_EQ(valveAct(story), NextAct(next::LockNut{story.at("I3")})) << "the first along the engine";
    EXPECT_EQ(openNuts(story.state()), (std::vector{story.at("I3"), story.at("E4")}));
}

TEST(NextValveAct, FeelsAllOfThisPositionThenSetsThem)
{
    Story story = atFirstPosition();
    for (const std::string_view point : {"I1", "E1", "I2", "E3"}) {
        EXPECT_EQ(valveAct(story), NextAct(next::FeelPoint{story.at(point)}));
        story.found(point, "0.25 mm");
    }
    for (const std::string_view point : {"I1", "E1", "I2", "E3"}) {
        EXPECT_EQ(valveAct(story), NextAct(next::SetPoint{story.at(point)}));
        story.leaveInside({point});
    }
    EXPECT_EQ(valveAct(story), turnTo(1));
    story.crank(360, CrankHow::Turned);
    EXPECT_EQ(valveAct(story), NextAct(next::FeelPoint{story.at("E2")}));
    story.leaveInside({"E2", "I3", "I4", "E4"});
    EXPECT_EQ(valveAct(story), NextAct{});
}

TEST(NextValveAct, APointLeftOutsideItsBandIsNextUntilKept)
{
    Story story = atFirstPosition();
    story.found("I1", "0.30 mm");
    const ActSeq outside = story.left("E3", "0.60 mm");
    EXPECT_EQ(valveAct(story), NextAct(next::SetOrKeep{story.at("E3")}));
    story.keep(outside, "E3");
    EXPECT_EQ(valveAct(story), NextAct(next::FeelPoint{story.at("E1")}));
}

TEST(NextValveAct, APointToCheckAgainIsSetAgain)
{
    Story story = atFirstPosition();
    story.leaveInside({"I1", "E1", "I2", "E3"});
    story.checkAgain({story.at("I2")});
    EXPECT_EQ(valveAct(story), NextAct(next::SetPoint{story.at("I2")}));
}

TEST(NextValveAct, TurnsToTheNearestPositionAheadThatHasWork)
{
    Story story;
    const std::vector<TableLine> lines{{"1", CrankEvent::Compression, "I1 E1"},
                                       {"3", CrankEvent::Compression, "I3 E3"},
                                       {"4", CrankEvent::Compression, "I4 E4"},
                                       {"2", CrankEvent::Compression, "I2 E2"}};
    story.log(PlanFact{ourEngine, planFromTable(story.frame.engine.design, lines, "Manual").value()});
    // At 0°, 180°, 360° and 540°.
    story.crank(180);
    story.leaveInside({"I3", "E3"});
    EXPECT_EQ(valveAct(story), turnTo(2));
    story.leaveInside({"I4", "E4"});
    EXPECT_EQ(valveAct(story), turnTo(3));
    story.leaveInside({"I2", "E2"});
    EXPECT_EQ(valveAct(story), turnTo(0)) << "round past 720°";
    story.crank(90);
    story.checkAgain({story.at("I3")});
    story.leaveInside({"I1", "E1"});
    EXPECT_EQ(valveAct(story), NextAct(next::SetPoint{story.at("I3")})) << "between positions the margin decides";
}

TEST(NextValveAct, APointNoPositionSetsComesLast)
{
    Story story;
    CrankPlan plan = generatePlan(story.frame.engine.design, PlanWay::TwoPositions);
    std::erase_if(plan.positions[1].points,
                  [&](const PlanPoint &point) { return point.adjuster == story.frame.point(story.at("E4"))->adjuster; });
    story.log(PlanFact{ourEngine, plan});
    story.crank(0);
    story.leaveInside({"I1", "E1", "I2", "E3"});
    EXPECT_EQ(valveAct(story), turnTo(1));
    story.leaveInside({"E2", "I3", "I4"});
    EXPECT_EQ(valveAct(story), NextAct(next::FeelPoint{story.at("E4")}));
}

/// The rule of nine keeps points it cannot set, and an engine's cam may be mended after its plan was made.
TEST(NextValveAct, NoTurnLeadsToAPositionForAPointThatMayNotBeSetThere)
{
    Story story;
    EngineText text = fourText();
    text.valveOrder = "E I E I E I E I";
    fit(story.frame, designEngine(text).value());
    const CrankPlan plan = generatePlan(story.frame.engine.design, PlanWay::RuleOfNine);
    story.log(PlanFact{ourEngine, plan});
    for (const PlanPosition &position : plan.positions) {
        story.log(CrankFact{ourEngine, position.crank, CrankHow::Turned});
        for (const PlanPoint &point : position.points)
            if (!point.doubtful())
                story.leaveInside({shortName(story.frame.engine.design, point.adjuster)});
    }
    const NextAct act = valveAct(story);
    ASSERT_FALSE(is<next::NothingOpen>(act)) << "the rule does not hold for this head";
    EXPECT_FALSE(is<next::TurnCrank>(act)) << "wherever it is turned, nothing could be set there by this plan";
}

TEST(NextValveAct, WithoutAPlanTheMarginDecides)
{
    Story story;
    story.crank(0);
    story.leaveInside({"I1", "E1", "I2"});
    EXPECT_EQ(valveAct(story), NextAct(next::FeelPoint{story.at("E3")}));
    story.leaveInside({"E3"});
    EXPECT_EQ(valveAct(story), NextAct(next::FeelPoint{story.at("E2")})) << "no position to turn to is known";
}

/// A manual's table may print one place in two lines.
TEST(NextValveAct, APlaceNamedTwiceIsOnePlace)
{
    Story story;
    const std::vector<TableLine> lines{{"1", CrankEvent::Compression, "IN 1 2"}, {"1", CrankEvent::Compression, "EX 1 3"}};
    story.log(PlanFact{ourEngine, planFromTable(story.frame.engine.design, lines, "Manual").value()});
    story.crank(0);
    story.leaveInside({"I1", "I2"});
    EXPECT_EQ(valveAct(story), NextAct(next::FeelPoint{story.at("E1")})) << "no turn of nothing at all";
}

TEST(PlanPositionHere, OnlyAtAPositionOfThePlan)
{
    Story story;
    story.crank(360);
    EXPECT_FALSE(planPositionHere(story.state())) << "no plan";
    story.twoPositions();
    EXPECT_EQ(planPositionHere(story.state()), 1U);
    story.crank(10);
    EXPECT_FALSE(planPositionHere(story.state()));
    story.crank(std::nullopt);
    EXPECT_FALSE(planPositionHere(story.state()));
}

/// A plan by valves just opening and closing stands between the dead centres.
TEST(NextValveAct, PositionsAtAnyEvent)
{
    Story story;
    const EngineDesign &design = story.frame.engine.design;
    CrankPlan plan;
    const AdjusterRef intake = story.frame.point(story.at("I3"))->adjuster;
    const AdjusterRef exhaust = story.frame.point(story.at("E3"))->adjuster;
    for (const auto &[event, point] : {std::pair{CrankEvent::ExhaustOpens, intake}, std::pair{CrankEvent::IntakeCloses, exhaust}}) {
        const CrankPosition place{intake.cylinder, event};
        const Angle crank = crankAt(design, place);
        plan.positions.push_back({place, crank, {{point, margin(design, point, crank)}}});
    }
    plan.generated = true;
    plan.way = PlanWay::OpeningAndClosing;
    story.log(PlanFact{ourEngine, plan});
    // No. 3 fires at 180°: its exhaust opens 60° before BDC at 180 + 120, its intake has closed 60° after BDC at 180 + 600.
    ASSERT_EQ(plan.positions[0].crank, degrees(300));
    ASSERT_EQ(plan.positions[1].crank, degrees(60));
    story.crank(300);
    EXPECT_EQ(planPositionHere(story.state()), 0U);
    EXPECT_EQ(here(story.state(), story.at("I3")), Here::InPlan);
    story.leaveInside({"I1", "E1", "I2", "E2", "I3", "I4", "E4"});
    EXPECT_EQ(valveAct(story), turnTo(1));
    story.crank(60, CrankHow::Turned);
    EXPECT_EQ(planPositionHere(story.state()), 1U);
    EXPECT_EQ(valveAct(story), NextAct(next::FeelPoint{story.at("E3")}));
}

TEST(PlanPositionHere, AFullCycleOnIsTheSamePlace)
{
    Story story;
    story.twoPositions();
    story.crank(720);
    EXPECT_EQ(planPositionHere(story.state()), 0U);
    EXPECT_EQ(here(story.state(), story.at("I1")), Here::InPlan);
}

TEST(NextValveAct, APointLeftByTwoIsNextUntilKept)
{
    Story story = atFirstPosition();
    story.leaveInside({"I1"});
    story.station = "office";
    const ActSeq second = story.left("I1", "0.30 mm");
    EXPECT_EQ(valveAct(story), NextAct(next::SetOrKeep{story.at("I1")}));
    EXPECT_FALSE(stepDone(story.state(), story.frame.job.steps[2]));
    story.keep(second, "I1");
    EXPECT_EQ(valveAct(story), NextAct(next::FeelPoint{story.at("E1")}));
}

/// Every other turn of a two-stroke's crank is the same turn.
TEST(NextValveAct, OnATwoStroke)
{
    EngineText text;
    text.cylinders = 3;
    text.firingOrder = "1-2-3";
    text.cycle = Cycle::TwoStroke;
    text.valves = "0+2";
    text.cam = twoStrokeCam();
    Story story;
    fit(story.frame, designEngine(text).value());
    story.log(PlanFact{ourEngine, generatePlan(story.frame.engine.design, PlanWay::EachOnCompression)});
    story.crank(360);
    EXPECT_EQ(planPositionHere(story.state()), 0U);
    const NextAct first = valveAct(story);
    ASSERT_TRUE(is<next::FeelPoint>(first));
    EXPECT_EQ(story.frame.point(*pointOf(first))->adjuster.cylinder, Cylinder{0});
    for (const SettingPoint &point : story.frame.engine.points)
        if (point.adjuster.cylinder == Cylinder{0})
            story.left(shortName(story.frame.engine.design, point.adjuster), "0.40 mm");
    EXPECT_EQ(valveAct(story), turnTo(1)) << "120° on";
}

TEST(HereTest, ShowsHowAPointStandsToThePlaceOfTheCrank)
{
    Story story;
    EXPECT_EQ(here(story.state(), story.at("I1")), Here::Unknown);
    story.crank(std::nullopt);
    EXPECT_EQ(here(story.state(), story.at("I1")), Here::Unknown);
    story.crank(0);
    EXPECT_EQ(here(story.state(), story.at("I1")), Here::InPlan) << "no plan: the margin";
    EXPECT_EQ(here(story.state(), story.at("I4")), Here::NotHere);

    CrankPlan plan = generatePlan(story.frame.engine.design, PlanWay::TwoPositions);
    std::erase_if(plan.positions[0].points,
                  [&](const PlanPoint &point) { return point.adjuster == story.frame.point(story.at("I2"))->adjuster; });
    plan.positions[0].points.push_back({story.frame.point(story.at("I4"))->adjuster, degrees(-5)});
    story.log(PlanFact{ourEngine, plan});
    EXPECT_EQ(here(story.state(), story.at("I4")), Here::NotHere) << "a generated plan is worth no more than geometry";
    plan.generated = false;
    story.log(PlanFact{ourEngine, plan});
    EXPECT_EQ(here(story.state(), story.at("I1")), Here::InPlan);
    EXPECT_EQ(here(story.state(), story.at("I2")), Here::Possible) << "the plan sets it elsewhere";
    EXPECT_EQ(here(story.state(), story.at("I4")), Here::InPlan) << "the manual says so, whatever geometry says";
    EXPECT_EQ(here(story.state(), story.at("E4")), Here::NotHere);
    EXPECT_EQ(here(story.state(), PointId(999)), Here::Unknown);
    story.crank(10);
    EXPECT_EQ(here(story.state(), story.at("I2")), Here::InPlan) << "between positions";
}

TEST(NextActTest, GoesDownTheLinesAndIntoTheValveSet)
{
    Story story;
    EXPECT_EQ(nextAct(story.state()), NextAct(next::DoStep{StepId(1)}));
    story.done(1);
    EXPECT_EQ(nextAct(story.state()), NextAct(next::DoStep{StepId(2)}));
    story.done(2);
    EXPECT_EQ(nextAct(story.state()), NextAct(next::ConfirmCrank{}));
    EXPECT_EQ(firstUndone(story.state())->id, StepId(3));
    story.twoPositions();
    story.crank(0);
    EXPECT_EQ(nextAct(story.state()), NextAct(next::FeelPoint{story.at("I1")}));
    EXPECT_EQ(firstUndone(story.state())->id, StepId(3));
    story.leaveInside({"I1", "E1", "I2", "E2", "I3", "E3", "I4", "E4"});
    EXPECT_EQ(nextAct(story.state()), NextAct(next::DoStep{StepId(4)}));
    story.done(4);
    story.done(5);
    EXPECT_EQ(nextAct(story.state()), NextAct{});
    EXPECT_FALSE(firstUndone(story.state()));
}

TEST(NextActTest, AnOpenNutComesBeforeEveryLine)
{
    Story story;
    story.nutOpen("I1");
    EXPECT_EQ(nextAct(story.state()), NextAct(next::LockNut{story.at("I1")}));
}

TEST(StepDone, TheValveSetIsDoneWhenEveryPointIsSettled)
{
    Story story;
    const Step &note = story.frame.job.steps[0];
    const Step &valveSet = story.frame.job.steps[2];
    story.done(3);
    EXPECT_FALSE(stepDone(story.state(), valveSet)) << "saying so does not make it so";
    story.leaveInside({"I1", "E1", "I2", "E2", "I3", "E3", "I4"});
    EXPECT_FALSE(stepDone(story.state(), valveSet));
    const ActSeq outside = story.left("E4", "0.60 mm");
    EXPECT_FALSE(stepDone(story.state(), valveSet));
    story.keep(outside, "E4");
    EXPECT_TRUE(stepDone(story.state(), valveSet));
    EXPECT_FALSE(stepDone(story.state(), note));
    story.done(1);
    EXPECT_TRUE(stepDone(story.state(), note));
}

TEST(PhaseNow, FoundUntilItWasFeltThenLeft)
{
    Story story;
    EXPECT_EQ(phaseNow(story.point("I1")), Phase::AsFound);
    story.found("I1", "0.30 mm");
    EXPECT_EQ(phaseNow(story.point("I1")), Phase::AsLeft);
    story.nutOpen("I1");
    EXPECT_EQ(phaseNow(story.point("I1")), Phase::AsLeft);
    story.left("I1", "0.30 mm");
    EXPECT_EQ(phaseNow(story.point("I1")), Phase::AsLeft);
    story.checkAgain({story.at("I1")});
    EXPECT_EQ(phaseNow(story.point("I1")), Phase::AsLeft);
}

} // namespace next_act_tests
} // namespace asleft
