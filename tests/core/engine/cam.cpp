// Cam events: which can be, and what they say about the valves.
#include "engines.h"

#include <engine/phase.h>

namespace asleft {
namespace cam_tests {

EngineDesign fourWithCam(const CamEvents &cam)
{
    EngineText text = fourText();
    text.cam = cam;
    return made(text);
}

/// What a cam card prints, from where the places of no. 1 lie.
struct CamCard {
    Angle intakeDuration, exhaustDuration, overlap, intakeCentreAfterTdc, exhaustCentreBeforeTdc;
    bool operator==(const CamCard &) const = default;
};

CamCard cardOf(const EngineDesign &design)
{
    const auto at = [&](CrankEvent event) { return crankAt(design, {design.firingOrder[0], event}); };
    const Angle intakeCentre = at(CrankEvent::IntakeFullyOpen);
    const Angle exhaustCentre = at(CrankEvent::ExhaustFullyOpen);
    const Angle halfIntake = at(CrankEvent::IntakeCloses) - intakeCentre;
    const Angle halfExhaust = exhaustCentre - at(CrankEvent::ExhaustOpens);
    const Angle overlap = (exhaustCentre + halfExhaust) - (intakeCentre - halfIntake);
    return {halfIntake * 2, halfExhaust * 2, overlap, intakeCentre - degrees(360), degrees(360) - exhaustCentre};
}

CamCard wholeCard(int intake, int exhaust, int overlap, int intakeCentre, int exhaustCentre)
{
    return {degrees(intake), degrees(exhaust), degrees(overlap), degrees(intakeCentre), degrees(exhaustCentre)};
}

TEST(Cam, DurationsOverlapAndCentrelines) // CHECKVALUES section 2, published
{
    EXPECT_EQ(cardOf(fourWithCam(wholeDegrees(20, 60, 60, 20, 20))), wholeCard(260, 260, 40, 110, 110));
    // The same cam advanced 5°.
    EXPECT_EQ(cardOf(fourWithCam(wholeDegrees(25, 55, 65, 15, 20))), wholeCard(260, 260, 40, 105, 115));
    EXPECT_EQ(cardOf(inLine4()), wholeCard(260, 260, 40, 110, 110)); // the assumed cam is that one
}

TEST(Cam, EventsOnTheOtherSideOfADeadCentre)
{
    // Published events, CHECKVALUES section 2: the intake opens 11.5° after TDC and closes 13.5° after BDC, the exhaust opens 21° before
    // BDC and closes 19° before TDC. Durations, gap and centrelines by hand from these.
    const EngineDesign four = fourWithCam(events(millidegrees(-11'500), millidegrees(13'500), degrees(21), degrees(-19), degrees(5)));
    EXPECT_EQ(cardOf(four), (CamCard{degrees(182), degrees(182), millidegrees(-30'500), millidegrees(102'500), degrees(110)}));
    // At the dead centre between them the exhaust has closed 19° ago and the intake opens in 11.5°.
    EXPECT_EQ(margin(four, exhaust(four, "1"), degrees(360)), degrees(19 - 5));
    EXPECT_EQ(margin(four, intake(four, "1"), degrees(360)), millidegrees(11'500 - 5'000));
}

TEST(Cam, ASecondExhaustArc)
{
    CamEvents cam = wholeDegrees(20, 60, 60, 20, 20);
    cam.exhaustAgain = CrankArc{degrees(-40), degrees(10)};
    const EngineDesign four = fourWithCam(cam);
    const AdjusterRef ex = exhaust(four, "1");
    // Off its seat from 120 to 380 and from 680 over the firing dead centre to 10.
    const std::pair<int, int> rows[] = {{0, -10},   {10, 0},  {20, 10},  {65, 55},   {75, 45}, {120, 0},
                                        {130, -10}, {380, 0}, {400, 20}, {530, 150}, {680, 0}, {700, -20}};
    for (const auto &[crank, clear] : rows)
        EXPECT_EQ(margin(four, ex, degrees(crank)), degrees(clear - 20)) << crank;
    EXPECT_EQ(margin(four, intake(four, "1"), degrees(0)), degrees(100));
    EXPECT_FALSE(strokeCheck(four, Cylinder{0}).loosenessTells); // the exhaust is held on compression too
}

TEST(Cam, TheInjectorsOwnArc)
{
    EngineText text = fourText();
    text.injectors = text.decompressors = true;
    text.valves = "4";
    text.bridged = text.bridgeScrews = true;
    text.cam = wholeDegrees(20, 60, 60, 20, 20);
    const EngineDesign assumed = made(text);
    const AdjusterRef first = injector(assumed, "1");
    EXPECT_EQ(margin(assumed, first, degrees(0)), degrees(-70 - 20)); // from 70 before to 70 after the firing dead centre
    EXPECT_EQ(margin(assumed, first, degrees(70)), degrees(-20));
    EXPECT_EQ(margin(assumed, first, degrees(360)), degrees(290 - 20));
    EXPECT_EQ(margin(assumed, first, degrees(-100)), degrees(30 - 20));

    text.cam.injector = CrankArc{degrees(300), degrees(730)};
    const EngineDesign given = made(text);
    EXPECT_EQ(margin(given, first, degrees(0)), degrees(-10 - 20));
    EXPECT_EQ(margin(given, first, degrees(155)), degrees(145 - 20));

    // Bridge screws and decompressors go with their valves.
    for (int crank = 0; crank < 720; crank += 7) {
        EXPECT_EQ(margin(given, bridgeScrew(given, "3", Side::Intake), degrees(crank)), margin(given, intake(given, "3"), degrees(crank)));
        EXPECT_EQ(margin(given, bridgeScrew(given, "3", Side::Exhaust), degrees(crank)),
                  margin(given, exhaust(given, "3"), degrees(crank)));
        EXPECT_EQ(margin(given, decompressor(given, "3"), degrees(crank)), margin(given, exhaust(given, "3"), degrees(crank)));
    }
}

TEST(Cam, RefusesEventsThatCannotBe)
{
    EngineText text = fourText();
    text.cam.intakeClosesAfterBdc = degrees(520);
    EXPECT_EQ(refusalOf(text), (Error{ErrorKind::CamArcTooLong, {"720"}, Noun::IntakeArc}));
    text.cam.intakeClosesAfterBdc = millidegrees(519'999);
    EXPECT_TRUE(designEngine(text).has_value());
    text.cam.intakeClosesAfterBdc = degrees(-200);
    EXPECT_EQ(refusalOf(text), (Error{ErrorKind::CamArcTooLong, {"0"}, Noun::IntakeArc}));
    text.cam = {};
    text.cam.exhaustOpensBeforeBdc = degrees(-210);
    EXPECT_EQ(refusalOf(text), (Error{ErrorKind::CamArcTooLong, {"-10"}, Noun::ExhaustArc}));
    text.cam.exhaustOpensBeforeBdc = Angle::ofSmallest(INT64_MAX);
    text.cam.exhaustClosesAfterTdc = Angle::ofSmallest(INT64_MIN);
    EXPECT_EQ(refusalOf(text).kind, ErrorKind::CamArcTooLong);
    text.cam = {};
    text.cam.intakeOpensBeforeTdc = degrees(1000); // a cycle and more, made good by the other event
    text.cam.intakeClosesAfterBdc = degrees(-900);
    EXPECT_EQ(refusalOf(text).kind, ErrorKind::CamArcTooLong);
    text.cam = {};
    text.cam.rampAllowance = degrees(-1);
    EXPECT_EQ(refusalOf(text), (Error{ErrorKind::NegativeValue, {"-1"}}));
    text.cam.rampAllowance = degrees(361);
    EXPECT_EQ(refusalOf(text), (Error{ErrorKind::ValueTooLarge, {"361", "360"}}));
}

TEST(Cam, RefusesArcsThatCannotBe)
{
    const std::pair<int, int> rows[] = {{10, 10}, {10, -10}, {0, 720}, {-300, 500}, {-1000, -900}, {1500, 1600}};
    for (const auto &[starts, ends] : rows) {
        EngineText text = fourText();
        text.cam.exhaustAgain = CrankArc{degrees(starts), degrees(ends)};
        EXPECT_EQ(refusalOf(text).kind, ErrorKind::CamArcTooLong) << starts;
        EXPECT_EQ(refusalOf(text).noun, Noun::SecondExhaustArc) << starts;
        text.cam.injector = std::exchange(text.cam.exhaustAgain, std::nullopt);
        EXPECT_EQ(refusalOf(text).kind, ErrorKind::CamArcTooLong) << starts;
        EXPECT_EQ(refusalOf(text).noun, Noun::InjectorArc) << starts;
    }
    EngineText text = fourText();
    text.cam.injector = CrankArc{Angle::ofSmallest(INT64_MIN), Angle::ofSmallest(INT64_MAX)};
    EXPECT_EQ(refusalOf(text).kind, ErrorKind::CamArcTooLong);
    text.cam.injector = CrankArc{degrees(0), degrees(720)};
    EXPECT_EQ(refusalOf(text), (Error{ErrorKind::CamArcTooLong, {"720"}, Noun::InjectorArc}));
    text.cam.injector = CrankArc{degrees(-719), degrees(0)};
    EXPECT_TRUE(designEngine(text).has_value());
    text.cycle = Cycle::TwoStroke;
    EXPECT_EQ(refusalOf(text), (Error{ErrorKind::CamArcTooLong, {"360"}, Noun::InjectorArc})); // -719 is more than a cycle before
    text.cam.injector = CrankArc{degrees(-180), degrees(179)};
    EXPECT_TRUE(designEngine(text).has_value());
}

} // namespace cam_tests
} // namespace asleft
