#include "engines.h"

#include <engine/phase.h>

namespace asleft {
namespace phase_tests {

EngineDesign fourWithCam(const CamEvents &cam)
{
    EngineText text = fourText();
    text.cam = cam;
    return made(text);
}

EngineDesign unevenTwin()
{
    return made(engineText(Layout::InLine, 2, "1-2", "180-540"));
}

TEST(Phase, BringsAnglesIntoTheCycle)
{
    const EngineDesign four = inLine4();
    EXPECT_EQ(cycleOf(four), degrees(720));
    EXPECT_EQ(inCycle(four, degrees(720)), degrees(0));
    EXPECT_EQ(inCycle(four, degrees(-1)), degrees(719));
    EXPECT_EQ(inCycle(four, degrees(-720)), degrees(0));
    EXPECT_EQ(inCycle(four, degrees(1450)), degrees(10));
    EXPECT_EQ(travel(four, degrees(700), degrees(20)), degrees(40));
    EXPECT_EQ(travel(four, degrees(20), degrees(700)), degrees(680));
    EXPECT_EQ(travel(four, degrees(20), degrees(20)), degrees(0));
    EXPECT_LT(travel(four, Angle::ofSmallest(INT64_MIN), Angle::ofSmallest(INT64_MAX)), degrees(720));
}

TEST(Phase, CountsFromEachCylindersOwnFiring)
{
    const EngineDesign four = inLine4();
    EXPECT_EQ(firingAngle(four, cylinder(four, "1")), degrees(0));
    EXPECT_EQ(firingAngle(four, cylinder(four, "2")), degrees(540));
    EXPECT_EQ(phase(four, cylinder(four, "2"), degrees(0)), degrees(180));
    EXPECT_EQ(phase(four, cylinder(four, "3"), degrees(180)), degrees(0));
    EXPECT_EQ(firingAngle(unevenTwin(), Cylinder{1}), degrees(180));
}

TEST(Phase, IsExactWhereDegreesAreNot)
{
    const EngineDesign seven = made(engineText(Layout::InLine, 7, "1 3 5 7 2 4 6"));
    for (const Cylinder c : seven.firingOrder)
        EXPECT_EQ(phase(seven, c, firingAngle(seven, c) + degrees(7200)), Angle{});
    EXPECT_EQ(firingAngle(seven, cylinder(seven, "6")) + seven.gaps.back(), degrees(720));
}

TEST(Margin, OfTheAssumedCam)
{
    // Events 20/60/60/20, ramp 20: the intake is off its seat from 340 to 600, the exhaust from 120 to 380.
    const EngineDesign four = inLine4();
    const AdjusterRef in = intake(four, "1");
    const AdjusterRef ex = exhaust(four, "1");
    EXPECT_EQ(margin(four, in, degrees(0)), degrees(120 - 20));
    EXPECT_EQ(margin(four, ex, degrees(0)), degrees(120 - 20));
    EXPECT_EQ(margin(four, in, degrees(340)), degrees(-20));
    EXPECT_EQ(margin(four, in, degrees(600)), degrees(-20));
    EXPECT_EQ(margin(four, in, degrees(320)), degrees(0));
    EXPECT_FALSE(maySet(four, in, degrees(320)));
    EXPECT_TRUE(maySet(four, in, degrees(320) - Angle::ofSmallest(1)));
    EXPECT_EQ(margin(four, in, degrees(350)), degrees(-10 - 20));
    EXPECT_EQ(margin(four, ex, degrees(370)), degrees(-10 - 20));
    EXPECT_EQ(margin(four, ex, degrees(610)), degrees(230 - 20));
    EXPECT_EQ(margin(four, in, degrees(720 + 350)), degrees(-30));
}

TEST(Margin, IsDeepestAtTheCentrelines)
{
    // Durations and centrelines of 20/60/60/20 (260, 110 after and 110 before dead centre) and of the same cam advanced 5°
    // (25/55/65/15: 260, 105 and 115): CHECKVALUES section 2, published.
    const CamEvents usual = wholeDegrees(20, 60, 60, 20, 0);
    const CamEvents advanced = wholeDegrees(25, 55, 65, 15, 0);
    const struct {
        CamEvents cam;
        int intakeCentre, exhaustCentre;
    } rows[] = {{usual, 360 + 110, 360 - 110}, {advanced, 360 + 105, 360 - 115}};
    for (const auto &row : rows) {
        const EngineDesign four = fourWithCam(row.cam);
        for (const auto &[valve, centre] : {std::pair{intake(four, "1"), row.intakeCentre}, {exhaust(four, "1"), row.exhaustCentre}}) {
            EXPECT_EQ(margin(four, valve, degrees(centre)), degrees(-130)) << centre;
            for (int aside = 0; aside <= 360; ++aside)
                EXPECT_EQ(margin(four, valve, degrees(centre - aside)), margin(four, valve, degrees(centre + aside))) << centre << aside;
        }
    }
}

TEST(Places, AtDeadCentres)
{
    const EngineDesign four = inLine4();
    EXPECT_EQ(crankAt(four, {cylinder(four, "4"), CrankEvent::Compression}), degrees(360));
    EXPECT_EQ(crankAt(four, {cylinder(four, "4"), CrankEvent::Overlap}), degrees(0));
    EXPECT_EQ(crankAt(four, {cylinder(four, "2"), CrankEvent::Overlap}), degrees(180));
    EXPECT_EQ(readCrank(four, degrees(0)), (CrankReading{{cylinder(four, "1"), CrankEvent::Compression}, {}}));
    EXPECT_EQ(readCrank(four, degrees(360)), (CrankReading{{cylinder(four, "4"), CrankEvent::Compression}, {}}));
    EXPECT_EQ(readCrank(four, degrees(-1)), (CrankReading{{cylinder(four, "2"), CrankEvent::Compression}, degrees(179)}));

    const EngineDesign three = inLine3();
    EXPECT_EQ(readCrank(three, degrees(360)), (CrankReading{{cylinder(three, "1"), CrankEvent::Overlap}, {}}));
    EXPECT_EQ(readCrank(three, degrees(130)), (CrankReading{{cylinder(three, "3"), CrankEvent::Overlap}, degrees(10)}));
    EXPECT_EQ(readCrank(three, degrees(490)), (CrankReading{{cylinder(three, "3"), CrankEvent::Compression}, degrees(10)}));
}

TEST(Places, EveryDeadCentreIsSaidExactly)
{
    for (const EngineDesign &design : {inLine3(), inLine4(), inLine6(), vee8(), unevenTwin()})
        for (const Cylinder c : design.firingOrder)
            for (const CrankEvent stroke : {CrankEvent::Compression, CrankEvent::Overlap}) {
                const Angle crank = crankAt(design, {c, stroke});
                const CrankReading saying = readCrank(design, crank);
                EXPECT_EQ(saying.after, Angle{});
                EXPECT_EQ(crankAt(design, saying.place), crank);
                if (stroke == CrankEvent::Compression) {
                    EXPECT_EQ(saying.place, (CrankPosition{c, stroke}));
                }
            }
}

TEST(Companions, AsPublished)
{
    const auto pairs = [](const EngineDesign &design, std::string_view a, std::string_view b) {
        EXPECT_EQ(companion(design, cylinder(design, a)), cylinder(design, b)) << a << b;
        EXPECT_EQ(companion(design, cylinder(design, b)), cylinder(design, a)) << a << b;
    };
    pairs(inLine4(), "1", "4"); // TM 10-3930-671-24
    pairs(inLine4(), "2", "3");
    pairs(inLine6(), "1", "6"); // an engine service manual, published
    pairs(inLine6(), "5", "2");
    pairs(inLine6(), "3", "4");
    pairs(vee8(), "1", "6"); // the one half the order further on: common practice, no source
    pairs(vee8(), "8", "5");
}

TEST(Companions, NoneWhereNoneStandsAtOverlap)
{
    for (const EngineDesign &design : {inLine3(), unevenTwin(), made(engineText(Layout::InLine, 1, ""))})
        for (const Cylinder c : design.firingOrder) {
            EXPECT_EQ(companion(design, c), std::nullopt);
            EXPECT_FALSE(strokeCheck(design, c).changeOverShows);
            EXPECT_TRUE(strokeCheck(design, c).loosenessTells);
        }
}

TEST(StrokeCheck, UsualEvents)
{
    const EngineDesign four = inLine4();
    const StrokeCheck check = strokeCheck(four, cylinder(four, "3"));
    EXPECT_EQ(check.cylinder, cylinder(four, "3"));
    EXPECT_EQ(check.companion, cylinder(four, "2"));
    EXPECT_TRUE(check.loosenessTells);
    EXPECT_TRUE(check.changeOverShows);
}

TEST(StrokeCheck, BothValvesShutAtBothDeadCentresProveNothing)
{
    // Events of CHECKVALUES section 2, published: the intake opens 11.5° after TDC and closes 13.5° after BDC, the exhaust opens
    // 21° before BDC and closes 19° before TDC.
    const EngineDesign four = fourWithCam(events(millidegrees(-11'500), millidegrees(13'500), degrees(21), degrees(-19), degrees(5)));
    const StrokeCheck check = strokeCheck(four, cylinder(four, "1"));
    EXPECT_EQ(check.companion, cylinder(four, "4"));
    EXPECT_FALSE(check.loosenessTells);
    EXPECT_FALSE(check.changeOverShows);
    EXPECT_TRUE(maySet(four, intake(four, "1"), degrees(360)));
}

TEST(StrokeCheck, TheRampIsNoProof)
{
    // Within the ramp at overlap neither valve may be set, yet neither is surely held.
    const EngineDesign within = fourWithCam(wholeDegrees(-10, 20, 20, -10, 20));
    EXPECT_FALSE(maySet(within, intake(within, "1"), degrees(360)));
    EXPECT_FALSE(strokeCheck(within, Cylinder{0}).loosenessTells);
    // Nor at the very end of an arc.
    EXPECT_FALSE(strokeCheck(fourWithCam(wholeDegrees(0, 40, 40, 0, 20)), Cylinder{0}).loosenessTells);
    // One valve off its seat holds a rocker, but does not show a change-over.
    const EngineDesign one = fourWithCam(wholeDegrees(1, 40, 40, 0, 20));
    EXPECT_TRUE(strokeCheck(one, Cylinder{0}).loosenessTells);
    EXPECT_FALSE(strokeCheck(one, Cylinder{0}).changeOverShows);
    const EngineDesign other = fourWithCam(wholeDegrees(0, 40, 40, 1, 20));
    EXPECT_TRUE(strokeCheck(other, Cylinder{0}).loosenessTells);
    EXPECT_FALSE(strokeCheck(other, Cylinder{0}).changeOverShows);
    // A valve that is not loose on compression takes the proof away.
    const EngineDesign late = fourWithCam(wholeDegrees(20, 165, 60, 20, 20));
    EXPECT_FALSE(strokeCheck(late, Cylinder{0}).loosenessTells);
    EXPECT_TRUE(strokeCheck(late, Cylinder{0}).changeOverShows);
}

} // namespace phase_tests
} // namespace asleft
