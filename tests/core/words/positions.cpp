#include "gui.h"
#include "samples.h"

#include <words/crank.h>
#include <words/points.h>

namespace asleft {

namespace positions_tests {

std::string text(const QString &words)
{
    return words.toStdString();
}

EngineDesign line4(const Train &train = allTrains[0])
{
    return *designEngine(withTrain(fourText(), train));
}

constexpr Train everything{"", "2+2", true, true, true, true};
constexpr Train twoStroke{"", "0+2", false, false, false, false, Cycle::TwoStroke};

TEST(PointNames, SayKindSideAndNumber)
{
    const EngineDesign four = line4({"", "2+2"});
    EXPECT_EQ(text(pointName(line4(), {Cylinder{1}, Side::Intake})), "Intake 2");
    EXPECT_EQ(text(pointName(four, {Cylinder{1}, Side::Intake})), "Intake 2a");
    EXPECT_EQ(text(pointInText(four, {Cylinder{2}, Side::Exhaust, PointKind::Lash, 1})), "exhaust 3b");
    const EngineDesign all = line4(everything);
    EXPECT_EQ(text(pointName(all, {Cylinder{2}, Side::Intake, PointKind::BridgeScrew})), "Intake bridge 3");
    EXPECT_EQ(text(pointInText(all, {Cylinder{2}, Side::Exhaust, PointKind::BridgeScrew})), "exhaust bridge 3");
    EXPECT_EQ(text(pointName(all, {Cylinder{2}, Side::Intake, PointKind::Injector})), "Injector 3");
    EXPECT_EQ(text(pointInText(all, {Cylinder{0}, Side::Exhaust, PointKind::Decompressor})), "decompressor 1");
}

TEST(PointNames, NoTwoPointsShareOne)
{
    for (const Train &train : allTrains) {
        const EngineDesign design = line4(train);
        QStringList names;
        for (const AdjusterRef adjuster : design.adjusters())
            names << pointName(design, adjuster) << pointInText(design, adjuster);
        EXPECT_EQ(names.removeDuplicates(), 0) << train.name;
    }
}

/// A position where the cylinder is at an event, or so many degrees after it.
PlanPosition position(const EngineDesign &design, int cylinder, CrankEvent event, int after = 0)
{
    const CrankPosition place{Cylinder{cylinder}, event};
    return {place, inCycle(design, crankAt(design, place) + degrees(after)), {}};
}

TEST(Positions, AreSaidByWhatTheCylinderIsAt)
{
    const EngineDesign design = line4();
    EXPECT_EQ(text(positionName(design, position(design, 2, CrankEvent::Compression))), "No. 3 on compression");
    EXPECT_EQ(text(positionName(design, position(design, 2, CrankEvent::ExhaustOpens))), "No. 3, exhaust just opening");
    EXPECT_EQ(text(positionInText(design, position(design, 0, CrankEvent::IntakeCloses))), "no. 1 with its intake just closed");
    EXPECT_EQ(text(positionName(design, position(design, 0, CrankEvent::IntakeFullyOpen))), "No. 1, intake fully open");
    EXPECT_EQ(text(positionName(design, position(design, 2, CrankEvent::Compression, 37))), "37° after no. 3 on compression");
}

TEST(Positions, ThoseThatAreNoDeadCentreSayHowTheyAreFound)
{
    const EngineDesign design = line4();
    EXPECT_EQ(text(findingSentence(design, position(design, 2, CrankEvent::Compression))), "");
    EXPECT_EQ(text(findingSentence(design, position(design, 2, CrankEvent::Overlap))), "");
    EXPECT_EQ(text(findingSentence(design, position(design, 2, CrankEvent::ExhaustOpens))),
              "Turn until you see exhaust 3 just begin to open.");
    EXPECT_EQ(text(findingSentence(design, position(design, 0, CrankEvent::IntakeCloses))),
              "Turn until you see intake 1 come to rest, just closed.");
    EXPECT_EQ(text(findingSentence(design, position(design, 0, CrankEvent::ExhaustFullyOpen))),
              "Turn until you see exhaust 1 pressed all the way down.");
    EXPECT_EQ(text(findingSentence(design, position(design, 2, CrankEvent::Compression, 37))),
              "Zero the degree wheel with no. 3 on compression, then turn 37° on.");
    const EngineDesign four = line4({"", "2+2"});
    EXPECT_EQ(text(findingSentence(four, position(four, 2, CrankEvent::ExhaustOpens))),
              "Turn until you see the exhausts of no. 3 just begin to open.");
}

TEST(TwoStroke, HasItsOwnWords)
{
    const EngineDesign design = line4(twoStroke);
    EXPECT_EQ(text(crankPositionName(design, {Cylinder{0}, CrankEvent::Compression})), "No. 1 at top dead centre");
    EXPECT_EQ(text(crankPositionInText(design, {Cylinder{0}, CrankEvent::Overlap})), "no. 1 at bottom dead centre");
    EXPECT_EQ(text(strokeCheckSentence(design, strokeCheck(design, Cylinder{0}))),
              "A two-stroke fires at every top dead centre: the mark alone tells.");
    EXPECT_EQ(text(cycleName(design.cycle)), "two-stroke");
}

TEST(Pinion, TurnsAgainstTheCrankAndFaster)
{
    EngineText typed = fourText();
    EXPECT_EQ(text(pinionSentence(*designEngine(typed), degrees(0), degrees(360))), "");
    typed.barring = "132/11";
    const EngineDesign design = *designEngine(typed);
    EXPECT_EQ(text(pinionSentence(design, degrees(0), degrees(360))),
              "The pinion turns against the crank: 12 turns of it, anticlockwise seen from the front.");
    EXPECT_EQ(text(pinionSentence(design, degrees(0), degrees(30))),
              "The pinion turns against the crank: 1 turn of it, anticlockwise seen from the front.");
    EXPECT_EQ(text(pinionSentence(design, degrees(0), degrees(100))),
              "The pinion turns against the crank: about 3.3 turns of it, anticlockwise seen from the front.");
    EXPECT_EQ(text(pinionSentence(design, degrees(90), degrees(90))), "");
    typed.rotation = Rotation::Anticlockwise;
    EXPECT_TRUE(pinionSentence(*designEngine(typed), degrees(0), degrees(360)).contains(QStringLiteral(" clockwise")));
}

TEST(Layouts, EachHasAName)
{
    QStringList names;
    for (const Layout layout : {Layout::InLine, Layout::Vee, Layout::Flat, Layout::Single, Layout::W, Layout::Radial, Layout::Opposed})
        names.append(layoutName(layout));
    EXPECT_FALSE(names.contains(QString()));
    EXPECT_EQ(names.removeDuplicates(), 0);
}

TEST(Plans, EachWayHasANameAndANote)
{
    QStringList names;
    for (const PlanWay way : {PlanWay::TwoPositions, PlanWay::EachOnCompression, PlanWay::CompanionAtOverlap, PlanWay::OpeningAndClosing,
                              PlanWay::Fewest, PlanWay::RuleOfNine}) {
        names.append(planWayName(way));
        EXPECT_TRUE(planWayNote(way).endsWith(u'.'));
        EXPECT_LT(planWayNote(way).size(), 120) << text(planWayNote(way));
    }
    for (const CrankMarks marks : {CrankMarks::EveryTdc, CrankMarks::FirstOnly, CrankMarks::AnyAngle})
        names.append(crankMarksName(marks));
    EXPECT_FALSE(names.contains(QString()));
    EXPECT_EQ(names.removeDuplicates(), 0);
}

TEST(Plans, AGoodOneHasNothingToWarnOf)
{
    const EngineDesign design = line4();
    EXPECT_EQ(text(planWarning(design, generatePlan(design, PlanWay::TwoPositions))), "");
}

TEST(Plans, WhatGeometryIsAgainstIsNamed)
{
    // The order 1-2-4-3 with valves E I E I E I E I: the rule of nine does not fit it.
    const EngineDesign design = engineOf(Layout::InLine, 4, "1-2-4-3", "E I E I E I E I");
    CrankPlan plan;
    plan.generated = true;
    plan.way = PlanWay::RuleOfNine;
    plan.positions.push_back(position(design, 0, CrankEvent::ExhaustFullyOpen));
    plan.positions.front().points = {{{Cylinder{3}, Side::Intake}, degrees(-5)}};
    EXPECT_TRUE(planWarning(design, plan).startsWith(QStringLiteral("The rule of nine does not fit this head")))
        << text(planWarning(design, plan));
    EXPECT_TRUE(planWarning(design, plan).contains(QStringLiteral("I4")));
    plan.generated = false;
    plan.unreached = {{Cylinder{0}, Side::Exhaust}, {Cylinder{1}, Side::Exhaust}};
    EXPECT_EQ(text(planWarning(design, plan)),
              "By the cam I4 may be pressed where the table sets them. The table was kept; compare it with the manual. No position of this "
              "plan sets E1, E2. Turn the crank on until their rockers are loose, or choose another way.");
}

TEST(Plans, OfManyPointsOnlySomeAreNamed)
{
    const EngineDesign design = engineOf(Layout::Vee, 12, plainOrder(12));
    CrankPlan plan;
    plan.unreached = design.adjusters();
    EXPECT_TRUE(planWarning(design, plan).contains(QStringLiteral("I5 and 19 more."))) << text(planWarning(design, plan));
}

} // namespace positions_tests

} // namespace asleft
