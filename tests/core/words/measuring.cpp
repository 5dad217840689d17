#include "gui.h"
#include "tractor.h"

#include <words/errors.h>
#include <words/job.h>
#include <words/numbers.h>
#include <words/readings.h>
#include <words/specs.h>
#include <words/times.h>
#include <words/tools.h>
#include <words/vehicles.h>

namespace asleft {

namespace measuring_tests {

std::string text(const QString &words)
{
    return words.toStdString();
}

TEST(Turns, AreSaidAsTheyAreOnTheShopFloor)
{
    EXPECT_EQ(text(turnedText(degrees(270), AngleUnit::Turn)), "3/4 turn");
    EXPECT_EQ(text(turnedText(degrees(540), AngleUnit::Turn)), "1 1/2 turns");
    EXPECT_EQ(text(turnedText(degrees(360), AngleUnit::Turn)), "1 turn");
    EXPECT_EQ(text(turnedText(degrees(720), AngleUnit::Turn)), "2 turns");
    EXPECT_EQ(text(turnedText(degrees(270), AngleUnit::Degree)), "270°");
    EXPECT_EQ(text(turnedText(degrees(100), AngleUnit::Turn)), "0.28 turn");
    EXPECT_EQ(text(turnedText(degrees(1), AngleUnit::Turn)), "0.01 turn");
}

TEST(Turns, TypedOnesKeepTheirWords)
{
    EXPECT_EQ(text(typedText(turns("3/4"))), "3/4 turn");
    EXPECT_EQ(text(typedText(turns("1.5"))), "1.5 turns");
    EXPECT_EQ(text(typedText(turns("270°"))), "270°");
}

TEST(Turns, BandsNameWhatIsAskedFirst)
{
    EXPECT_EQ(text(bandText(*parseBand<Angle>("3/4 ± 1/8 turn", AngleUnit::Turn))), "3/4 turn (0.63 to 0.87)");
    EXPECT_EQ(text(bandText(*parseBand<Angle>("80 to 100 °", AngleUnit::Degree))), "80 to 100°");
    EXPECT_EQ(text(bandText(*parseBand<Angle>("at most 2 turn", AngleUnit::Turn))), "at most 2 turns");
}

TEST(Uncertainty, IsRoundedUpButByATenthAtMost)
{
    // U of a feeler leaf worth 0.05 mm: 2 · 0.025/√3 = 0.0289 mm (JCGM 100:2008, 4.3.7).
    EXPECT_EQ(text(uncertaintyText(nanometres(28'868), LengthUnit::Millimetre)), "± 0.03 mm");
    EXPECT_EQ(text(uncertaintyText(nanometres(30'100), LengthUnit::Millimetre)), "± 0.031 mm");
    EXPECT_EQ(text(uncertaintyText(nanometres(20), LengthUnit::Millimetre)), "± 0.00002 mm");
    EXPECT_EQ(text(uncertaintyText(nanometres(28'868), LengthUnit::Thou)), "± 1.2 thou");
}

TEST(Uncertainty, NothingIsEverCertain)
{
    EXPECT_EQ(text(likelihoodText(0.9192)), "92 % likely inside");
    EXPECT_EQ(text(likelihoodText(0.9999)), "more than 99 % likely inside");
    EXPECT_EQ(text(likelihoodText(1)), "more than 99 % likely inside");
    EXPECT_EQ(text(likelihoodText(0)), "less than 1 % likely inside");
}

TEST(Uncertainty, TooCloseSaysHowLikely)
{
    const SpecBand<Length> bands{*parseBand<Length>("0.20 to 0.30 mm", LengthUnit::Millimetre), std::nullopt};
    const auto said = [&bands](std::int64_t microns) {
        const auto interval = Interval<Length>::within(micrometres(microns), micrometres(20));
        return text(verdictText(interval, judge(interval, bands.first), bands, LengthUnit::Millimetre));
    };
    // Band 0.20 to 0.30 mm, U = 0.02 mm: proved inside from 0.22 to 0.28, outside from 0.32 (the rule of ISO 14253-1).
    EXPECT_EQ(said(280), "inside");
    EXPECT_EQ(said(300), "too close to call, 50 % likely inside");
    EXPECT_EQ(said(290), "too close to call, 84 % likely inside"); // one standard uncertainty inside: Φ(1) = 0.841
    EXPECT_EQ(said(320), "above its band by 0.02 mm");
}

TEST(Engine, ItsConditionIsSaidWithWhatIsKnown)
{
    const TractorStory story;
    ReadingFact reading = story.reading("I1", Phase::AsFound, "0.30");
    EXPECT_EQ(text(conditionText(reading)), "cold");
    reading.temperature = *parseTemperature("20", TemperatureUnit::Celsius);
    reading.minutesSinceRun = 14 * 60;
    EXPECT_EQ(text(conditionText(reading)), "cold, 20 °C, 14 h after it ran");
    EXPECT_EQ(text(sinceRunText(0)), "just after it ran");
    EXPECT_EQ(text(sinceRunText(45)), "45 min after it ran");
    EXPECT_EQ(text(sinceRunText(150)), "2 h 30 min after it ran");
    EXPECT_EQ(text(sinceRunText(100 * 60)), "4 days after it ran");
}

TEST(Units, TheWrongOneIsAskedFor)
{
    SpecBand<Length> bands{*parseBand<Length>("0.40 ± 0.05 mm", LengthUnit::Millimetre), std::nullopt};
    bands.second = *parseBand<Length>(".016 ± .002 in", LengthUnit::Inch);
    const ReadingText reading{ReadingForm::Exact, *parse<Length>("0.016 mm", LengthUnit::Millimetre), std::nullopt};
    EXPECT_EQ(text(wrongUnitQuestion(reading, LengthUnit::Inch, bands)),
              "0.016 mm is far from what the manual asks; 0.016 in would be inside. Nothing is logged yet: say which it is.");
    const ReadingText bracket{ReadingForm::Bracket, *parse<Length>("0.020 mm", LengthUnit::Millimetre),
                              *parse<Length>("0.022 mm", LengthUnit::Millimetre)};
    EXPECT_EQ(text(wrongUnitQuestion(bracket, LengthUnit::Inch, bands)),
              "0.020 mm to 0.022 mm is far from what the manual asks; 0.020 to 0.022 in would be near it. Nothing is logged yet: say which "
              "it is.");
    EXPECT_EQ(text(wrongUnitQuestion(*parseBand<Length>("0.30 in", LengthUnit::Millimetre), LengthUnit::Millimetre)),
              "0.300 in is more than any lash; 0.30 mm? Nothing is saved yet: mend it, or Enter again keeps it.");
    EXPECT_EQ(text(wrongUnitQuestion(*parseBand<Length>("0.012 mm", LengthUnit::Millimetre), LengthUnit::Inch)),
              "0.012 mm is less than any lash; 0.012 in? Nothing is saved yet: mend it, or Enter again keeps it.");
}

MeterReading meter(std::int64_t whole, bool replaced, MeterUnit unit = MeterUnit::Mile)
{
    return {MeterReadingId(1), VehicleId(1), unit, whole * 1000, std::to_string(whole), {}, replaced};
}

TEST(Meters, AReplacedOneCountsOn)
{
    EXPECT_EQ(text(meterTotalText({meter(100, false), meter(61'000, false)})), "");
    // 60 000 on the first meter, 1 204 on the second.
    EXPECT_EQ(text(meterTotalText({meter(0, false), meter(60'000, false), meter(0, true), meter(1'204, false)})),
              "61\u202f204 mi over two meters");
    EXPECT_EQ(text(meterText(meter(3812, false, MeterUnit::Hour))), "3812 h");
}

TEST(VehicleNumbers, AreNeverRefused)
{
    EXPECT_EQ(text(vehicleNumberText({NumberCheck::None, std::nullopt})), "");
    EXPECT_EQ(text(vehicleNumberText({NumberCheck::NoCheckDigit, std::nullopt})), "No check digit to compare. Kept as typed.");
    EXPECT_EQ(text(vehicleNumberText({NumberCheck::Differs, 'X'})),
              "The check digit, the ninth, would be X. Kept as typed; compare it with the number on the vehicle.");
    EXPECT_EQ(text(vehicleNumberText({NumberCheck::Agrees, '4'})), "The check digit agrees.");
}

TEST(Names, EveryKindHasOne)
{
    QStringList names;
    for (const Disturbance cause : {Disturbance::Other, Disturbance::HeadTightened, Disturbance::RockersTightened, Disturbance::TimingMoved,
                                    Disturbance::ValveOrSeatCut, Disturbance::BridgeSet})
        names.append(disturbanceName(cause));
    for (const ToolKind kind : {ToolKind::FeelerSet, ToolKind::DialGauge, ToolKind::Micrometer})
        names.append(toolKindName(kind));
    for (const AdjusterKind kind : {AdjusterKind::Screw, AdjusterKind::Hydraulic})
        names.append(adjusterKindName(kind));
    for (const DecisionRule rule : {DecisionRule::Simple, DecisionRule::WithUncertainty})
        names.append(decisionRuleName(rule));
    for (const SpecSubject subject : {SpecSubject::IntakeLash, SpecSubject::ExhaustLash, SpecSubject::LockNut, SpecSubject::BridgeScrew,
                                      SpecSubject::Decompressor, SpecSubject::Injector})
        names.append(subjectName(subject));
    EXPECT_FALSE(names.contains(QString()));
    EXPECT_EQ(names.removeDuplicates(), 0);
}

TEST(BleedDown, TheCrankStandsUntilThen)
{
    EXPECT_EQ(text(bleedDownText(atMinute(13), atMinute(0))), "The crank stands until 16:25: hydraulic tappets are bleeding down.");
    const Error error{ErrorKind::StillBleedingDown, {std::to_string(atMinute(13).utcMilliseconds)}};
    EXPECT_TRUE(sentence(error).contains(momentText(atMinute(13)))) << text(sentence(error));
}

} // namespace measuring_tests

} // namespace asleft
