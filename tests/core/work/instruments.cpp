// Readings with what is known of the tool, the engine and the turns.
#include "support.h"

#include <measure/format.h>

namespace asleft {
namespace instruments_tests {

class Instruments : public BookTest {
protected:
    ToolId dial = need(addGauge(*garage, {ToolKind::DialGauge, "Dial", "0.015 mm", "0.01 mm"}));
    ToolId leaves = need(addFeelerSet(*garage, "Set", "0.05-1.00 by 0.05 mm", LengthUnit::Millimetre));
    const ReadingFact &leftFact(std::string_view name) { return point(name).left->reading; }
};

TEST_F(Instruments, SayNothingOfUncertaintyWhereTheShopDecidesSimply)
{
    book->setTool(dial);
    left("I1", "0.34 mm");
    EXPECT_FALSE(leftFact("I1").uncertainty);
    EXPECT_EQ(leftFact("I1").tool, dial);
    EXPECT_EQ(point("I1").left->verdict, Verdict::Inside);
}

/// U = 2·√((0.015² + 0.005²)/3) = 0.018 257 4 mm (JCGM 100:2008, 4.3.7), so 0.34 mm is too close to 0.35 mm and 0.33 mm is not.
TEST_F(Instruments, KeepTheUncertaintyOfWhatTheyReadAndAreJudgedWithIt)
{
    need(setDecisionRule(*garage, DecisionRule::WithUncertainty));
    EXPECT_EQ(book->state().frame->rule, DecisionRule::WithUncertainty) << "an open book hears of it";
    book->setTool(dial);
    left("I1", "0.34 mm");
    ASSERT_TRUE(leftFact("I1").uncertainty);
    EXPECT_NEAR(toMillimetres(*leftFact("I1").uncertainty), 0.0182574, 1e-6);
    EXPECT_EQ(point("I1").left->verdict, Verdict::TooClose);
    EXPECT_FALSE(point("I1").settled());
    left("I2", "0.33 mm");
    EXPECT_EQ(point("I2").left->verdict, Verdict::Inside);
    left("I3", "0.37 mm");
    EXPECT_EQ(point("I3").left->verdict, Verdict::High);

    need(setDecisionRule(*garage, DecisionRule::Simple));
    EXPECT_EQ(point("I1").left->verdict, Verdict::TooClose) << "an old verdict stands";
    left("I4", "0.34 mm");
    EXPECT_EQ(point("I4").left->verdict, Verdict::Inside);
}

TEST_F(Instruments, KeepNoneWhereItIsNotKnown)
{
    need(setDecisionRule(*garage, DecisionRule::WithUncertainty));
    left("I1", "0.34 mm");
    EXPECT_FALSE(leftFact("I1").uncertainty) << "nobody said with what";
    book->setTool(need(addGauge(*garage, {ToolKind::Micrometer, "No card", "", ""})));
    left("I2", "0.34 mm");
    EXPECT_FALSE(leftFact("I2").uncertainty);
    book->setTool(leaves);
    need(book->logReading({.point = at("I3"), .phase = Phase::AsLeft, .form = ReadingForm::Loose}));
    EXPECT_FALSE(leftFact("I3").uncertainty) << "loose is an interval already";
    const ReadingEntry bracket{
        .point = at("I4"), .phase = Phase::AsLeft, .form = ReadingForm::Bracket, .value = length("0.25 mm"), .next = length("0.30 mm")};
    need(book->logReading(bracket));
    EXPECT_FALSE(leftFact("I4").uncertainty);
    need(book->logReading({.point = at("E1"), .phase = Phase::AsLeft, .form = ReadingForm::ByFeel}));
    EXPECT_FALSE(leftFact("E1").uncertainty);
}

TEST_F(Instruments, TheSpecsLeafIsWorthAStepOfItsSet)
{
    need(setDecisionRule(*garage, DecisionRule::WithUncertainty));
    book->setTool(leaves);
    beginValveSet();
    need(book->leaveAllHere());
    // U = 2·(0.05/2)/√3 = 0.028 867 5 mm (JCGM 100:2008, 4.3.7).
    ASSERT_TRUE(leftFact("I1").uncertainty);
    EXPECT_NEAR(toMillimetres(*leftFact("I1").uncertainty), 0.0288675, 1e-6);
    EXPECT_EQ(point("I1").left->verdict, Verdict::Inside);
}

TEST_F(Instruments, TheSittingsTemperatureAndRestAreKept)
{
    const TypedTemperature warm = parseTemperature("17.5 °C", TemperatureUnit::Celsius).value();
    book->setCondition(EngineCondition::Cold, warm, 14 * 60);
    EXPECT_EQ(book->session().temperature, warm);
    left("I1", "0.30 mm");
    EXPECT_EQ(leftFact("I1").temperature, warm);
    EXPECT_EQ(leftFact("I1").minutesSinceRun, 14 * 60);
    book->setCondition(EngineCondition::Cold);
    left("I2", "0.30 mm");
    EXPECT_FALSE(leftFact("I2").temperature) << "said anew, it is no longer known";
    EXPECT_FALSE(leftFact("I2").minutesSinceRun);
    EXPECT_EQ(bookOf(*garage)->state().points, book->state().points);
}

class Turned : public BookTest {
protected:
    Turned() : BookTest(hydraulicText()) { ask("1 ± 1/4 turn"); }
    void ask(std::string band) { need(reviseSpec(*garage, tractor.engine, SpecSubject::IntakeLash, lashText(std::move(band)))); }
    ReadingEntry asTheSpecAsks() { return {.point = at("I1"), .phase = Phase::AsLeft, .specLeaf = true}; }
    const Judged &leftIntake() { return *point("I1").left; }
};

TEST_F(Turned, ReadingsAreJudgedByTheirTurns)
{
    book->setTool(need(addFeelerSet(*garage, "Set", "0.05", LengthUnit::Millimetre)));
    const auto turnedBy = [&](std::string_view text) {
        return ReadingEntry{.point = at("I1"), .phase = Phase::AsLeft, .form = ReadingForm::Turned, .turned = turns(text)};
    };
    need(book->logReading(turnedBy("3/4 turn")));
    EXPECT_EQ(leftIntake().verdict, Verdict::Inside) << "it stands on the limit";
    EXPECT_EQ(leftIntake().reading.turned, turns("3/4 turn"));
    EXPECT_FALSE(leftIntake().reading.value);
    EXPECT_FALSE(leftIntake().reading.tool) << "turns are counted, not measured";
    EXPECT_EQ(leftIntake().reading.judgedBy, book->state().frame->specNow(SpecSubject::IntakeLash)->id);
    need(book->logReading(turnedBy("1.3 turns")));
    EXPECT_EQ(leftIntake().verdict, Verdict::High);
    EXPECT_EQ(bookOf(*garage)->state().points, book->state().points);
}

TEST_F(Turned, ReadingsSayHowFar)
{
    EXPECT_EQ(refusal(book->logReading({.point = at("E1"), .form = ReadingForm::Turned})), ErrorKind::EmptyText);
    EXPECT_EQ(refusal(book->logReading({.point = at("I1"), .form = ReadingForm::Turned})), ErrorKind::EmptyText)
        << "not even where the spec says how far it should be";
    EXPECT_EQ(refusal(book->logReading({.point = at("I1"), .form = ReadingForm::Turned, .value = length("0.3 mm")})), ErrorKind::EmptyText);
    EXPECT_EQ(actsInFile(), 0U);
}

TEST_F(Turned, AgainstALengthAreNotComparable)
{
    need(book->logReading({.point = at("E1"), .phase = Phase::AsLeft, .form = ReadingForm::Turned, .turned = turns("1 turn")}));
    EXPECT_EQ(point("E1").left->verdict, Verdict::NotComparable);
    need(book->logReading({.point = at("I1"), .phase = Phase::AsLeft, .value = length("0.3 mm")}));
    EXPECT_EQ(leftIntake().verdict, Verdict::NotComparable);
    EXPECT_FALSE(leftIntake().reading.turned);
}

TEST_F(Turned, AsTheSpecAsksIsItsNominal)
{
    need(book->logReading(asTheSpecAsks()));
    EXPECT_EQ(leftIntake().reading.form, ReadingForm::Turned);
    EXPECT_EQ(leftIntake().reading.turned->value, degrees(360));
    EXPECT_TRUE(leftIntake().reading.specLeaf);
    EXPECT_EQ(leftIntake().verdict, Verdict::Inside);
    EXPECT_TRUE(point("I1").settled());
}

struct Asked {
    const char *band;
    std::int64_t millidegrees;
    const char *text;
};

class AskedTurns : public Turned, public testing::WithParamInterface<Asked> {};

TEST_P(AskedTurns, AreThoseOfTheBand)
{
    ask(GetParam().band);
    need(book->logReading(asTheSpecAsks()));
    EXPECT_EQ(leftIntake().reading.turned->value, millidegrees(GetParam().millidegrees));
    EXPECT_EQ(formatTyped(*leftIntake().reading.turned), GetParam().text);
    EXPECT_EQ(leftIntake().verdict, Verdict::Inside);
}

INSTANTIATE_TEST_SUITE_P(All, AskedTurns,
                         testing::Values(Asked{"3/4 turn", 270'000, "3/4 turn"}, Asked{"270°", 270'000, "270°"},
                                         Asked{"1 ± 1/4 turn", 360'000, "1.00 turn"}, Asked{"0.5-1 turn", 270'000, "0.75 turn"},
                                         Asked{"1/3 to 2/3 turn", 180'000, "0.50 turn"}, Asked{"1/3 ± 1/12 turn", 120'000, "120°"},
                                         Asked{"at least 1/2 turn", 180'000, "0.50 turn"}, Asked{"at most 90°", 90'000, "90°"}));

TEST_F(Turned, AllHereAreLeftByTheirTurnsOrTheirLeaf)
{
    beginValveSet();
    need(book->leaveAllHere());
    EXPECT_EQ(leftIntake().reading.turned->value, degrees(360));
    EXPECT_EQ(point("E1").left->reading.value, length("0.40 mm"));
    EXPECT_TRUE(point("I1").settled());
    EXPECT_TRUE(point("E1").settled());
}

/// A three with bridged pairs, bridge screws and injectors.
class OtherPoints : public BookTest {
protected:
    static VehicleText bridged()
    {
        VehicleText text = tractorText();
        text.engine.cylinders = 3;
        text.engine.firingOrder = "1-2-3";
        text.engine.valves = "4";
        text.engine.bridged = true;
        text.engine.bridgeScrews = true;
        text.engine.injectors = true;
        return text;
    }
    OtherPoints() : BookTest(bridged())
    {
        need(reviseSpec(*garage, tractor.engine, SpecSubject::BridgeScrew, lashText("45° ± 15°")));
        need(reviseSpec(*garage, tractor.engine, SpecSubject::Injector, lashText("0.50 ± 0.05 mm")));
    }
};

TEST_F(OtherPoints, AreSetToTheirOwnSpecs)
{
    beginValveSet();
    need(book->leaveAllHere());
    const auto judgedBy = [&](std::string_view name) { return point(name).left->reading.judgedBy; };
    const auto spec = [&](SpecSubject subject) { return book->state().frame->specNow(subject)->id; };
    EXPECT_EQ(judgedBy("BI1"), spec(SpecSubject::BridgeScrew));
    EXPECT_EQ(point("BI1").left->reading.turned->value, degrees(45));
    EXPECT_EQ(judgedBy("I1"), spec(SpecSubject::IntakeLash));
    EXPECT_EQ(point("I1").left->reading.value, length("0.30 mm"));
    EXPECT_EQ(judgedBy("BE1"), spec(SpecSubject::BridgeScrew));
    EXPECT_EQ(judgedBy("J2"), spec(SpecSubject::Injector));
    EXPECT_EQ(point("J2").left->reading.value->value, length("0.50 mm").value);
    EXPECT_TRUE(point("I1").settled()) << "its bridge was set before it";
}

TEST_F(OtherPoints, ABridgeSetAfterItsLashSendsItToCheckAgain)
{
    beginValveSet();
    left("I1", "0.30 mm");
    need(book->logReading({.point = at("BI1"), .phase = Phase::AsLeft, .specLeaf = true}));
    EXPECT_EQ(point("I1").stage, PointStage::CheckAgain);
    EXPECT_EQ(point("I1").disturbance, Disturbance::BridgeSet);
}

} // namespace instruments_tests
} // namespace asleft
