#include "gui.h"
#include "tractor.h"

#include <words/cautions.h>
#include <words/crank.h>
#include <words/errors.h>
#include <words/job.h>
#include <words/numbers.h>
#include <words/readings.h>
#include <words/specs.h>
#include <words/times.h>

#include <QRegularExpression>

#include <set>

namespace asleft {

namespace words_tests {

std::string text(const QString &words)
{
    return words.toStdString();
}

constexpr Moment now = {};

bool isClean(const QString &words)
{
    static const QRegularExpression left(QStringLiteral("%[0-9n]|\\s{2}|\\s[.,;:]"));
    return !words.isEmpty() && !words.contains(left);
}

/// How many arguments the comment behind each kind promises, in the order of the enum.
constexpr int lastKind = static_cast<int>(ErrorKind::Database);

TEST(Sentence, EveryKindHasAWholeSentence)
{
    QStringList seen;
    for (int kind = 0; kind <= lastKind; ++kind) {
        const Error error{static_cast<ErrorKind>(kind), {"1,250", "mm, in, thou", "3"}};
        const QString words = sentence(error);
        EXPECT_TRUE(isClean(words)) << kind << ": " << text(words);
        EXPECT_TRUE(words.endsWith(u'.') || words.endsWith(u'3')) << kind << ": " << text(words);
        EXPECT_FALSE(seen.contains(words)) << text(words);
        seen.append(words);
    }
}

TEST(Sentence, AnArgumentThatLooksLikeAPlaceIsTakenAsItIs)
{
    EXPECT_TRUE(sentence({ErrorKind::UnknownUnit, {"%2", "mm"}}).contains(QStringLiteral("“%2”")));
}

TEST(Sentence, ExamplesFitTorquesAndPassesToo)
{
    for (const ErrorKind kind : {ErrorKind::EmptyText, ErrorKind::NotANumber})
        EXPECT_TRUE(sentence({kind, {"much"}}).endsWith(QStringLiteral("such as 0.25 mm or 24 N·m."))) << text(sentence({kind, {"much"}}));
    EXPECT_EQ(mostSettleRounds, 10);
    EXPECT_TRUE(sentence({ErrorKind::PassUnread, {"settle 11"}}).contains(QStringLiteral("1 to 10 rounds")));
    EXPECT_TRUE(
        sentence({ErrorKind::PassesFall, {"50 %"}}).startsWith(QStringLiteral("The pass “50 %” asks for no more than the one before.")));
}

TEST(Sentence, AMissingArgumentIsNotFatal)
{
    EXPECT_TRUE(isClean(sentence({ErrorKind::GarageNewer, {}})));
}

TEST(Sentence, EveryNounHasAWordOfItsOwn)
{
    QStringList seen;
    for (int noun = 0; noun <= static_cast<int>(Noun::FilePage); ++noun) {
        const QString words = sentence({ErrorKind::WrongJob, {}, static_cast<Noun>(noun)});
        EXPECT_FALSE(words.startsWith(u' ')) << noun;
        EXPECT_FALSE(seen.contains(words)) << text(words);
        seen.append(words);
    }
    EXPECT_EQ(text(sentence({ErrorKind::CamArcTooLong, {"720"}, Noun::SecondExhaustArc})),
              "By these events the second exhaust arc lasts 720°. Nothing was changed; check the events with the manual.");
    EXPECT_EQ(text(sentence({ErrorKind::Damaged, {"a.asleft", "3", "2"}, Noun::Joint})),
              "“a.asleft” is damaged: joint 3 revision 2. It was left as it is; open the latest backup.");
    EXPECT_EQ(text(sentence({ErrorKind::Damaged, {"a.asleft", "12"}, Noun::Act})),
              "“a.asleft” is damaged: act 12. It was left as it is; open the latest backup.");
    EXPECT_TRUE(sentence({ErrorKind::Damaged, {"a.asleft", "malformed"}}).contains(QStringLiteral("damaged: malformed. ")));
}

TEST(Sentence, NumbersStandWithTheirPlurals)
{
    EXPECT_TRUE(sentence({ErrorKind::ValveOrderLength, {"1", "4"}})
                    .startsWith(QStringLiteral("The valve order has 1 letter, the bank has 4 valves.")));
    EXPECT_TRUE(sentence({ErrorKind::ValveOrderLength, {"2", "1"}})
                    .startsWith(QStringLiteral("The valve order has 2 letters, the bank has 1 valve.")));
    EXPECT_TRUE(sentence({ErrorKind::GapsCount, {"1", "4"}}).startsWith(QStringLiteral("There is 1 firing gap where 4 are wanted.")));
    EXPECT_TRUE(sentence({ErrorKind::GapsCount, {"2", "1"}}).startsWith(QStringLiteral("There are 2 firing gaps where 1 is wanted.")));
    EXPECT_TRUE(sentence({ErrorKind::RowsUneven, {"11", "2"}}).startsWith(QStringLiteral("11 cylinders do not stand evenly in 2 rows.")));
    EXPECT_TRUE(sentence({ErrorKind::RowsUneven, {"1", "2"}}).startsWith(QStringLiteral("1 cylinder does not stand evenly in 2 rows.")));
}

TEST(Sentence, AThreadWithNoOthersOfItsSizeIsOfferedNone)
{
    EXPECT_EQ(text(sentence({ErrorKind::ThreadUnknown, {"M7.3", ""}})), "There is no thread “M7.3”. Nothing was stored; measure it again.");
    EXPECT_TRUE(sentence({ErrorKind::ThreadUnknown, {"M8x3", "M8, M8x1"}}).endsWith(QStringLiteral("there are: M8, M8x1.")));
}

TEST(Sentence, AnAmbiguousNumberIsOfferedBothWays)
{
    EXPECT_EQ(text(sentence({ErrorKind::AmbiguousNumber, {"1,250"}})),
              "“1,250” can be read two ways. Nothing was stored; type 1.25 or 1250.");
    EXPECT_TRUE(sentence({ErrorKind::AmbiguousNumber, {"2,000 mm"}}).endsWith(QStringLiteral("type 2 or 2000.")));
}

TEST(Sentence, WhatIsOfferedIsNotAmbiguousAgain)
{
    for (const auto &locale : {QLocale(QLocale::English), QLocale(QLocale::German)}) {
        QLocale::setDefault(locale);
        for (const char *typed : {"1,250", "1,234", "9,875", "3,000"}) {
            const auto refused = parse<Length>(typed, LengthUnit::Millimetre, decimalMark());
            ASSERT_FALSE(refused) << typed;
            static const QRegularExpression offers(QStringLiteral("type (\\S+) or (\\S+)\\.$"));
            const auto match = offers.match(sentence(refused.error()));
            ASSERT_TRUE(match.hasMatch());
            for (const int offer : {1, 2})
                EXPECT_TRUE(parse<Length>(text(match.captured(offer)), LengthUnit::Millimetre, decimalMark()))
                    << text(match.captured(offer));
        }
    }
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
}

TEST(Numbers, NeverEqualDigitsBesideALimit)
{
    const Length limit = micrometres(450);
    for (const std::int64_t apart : {1LL, 40LL, 999LL, 4'999LL, 5'001LL, 100'000LL}) {
        for (const LengthUnit unit : {LengthUnit::Millimetre, LengthUnit::Inch, LengthUnit::Thou}) {
            for (const Length value : {limit + nanometres(apart), limit - nanometres(apart)})
                EXPECT_NE(text(numberBeside(value, limit, unit)), text(numberBeside(limit, value, unit))) << apart;
        }
    }
    EXPECT_EQ(text(numberBeside(nanometres(452'120), limit, LengthUnit::Millimetre)), "0.452");
    EXPECT_EQ(text(numberBeside(limit, limit, LengthUnit::Millimetre)), "0.45");
}

TEST(Numbers, AnAmountIsNeverNothing)
{
    EXPECT_EQ(text(amountText(micrometres(50), LengthUnit::Millimetre)), "0.05 mm");
    EXPECT_EQ(text(amountText(nanometres(2'120), LengthUnit::Millimetre)), "0.002 mm");
}

TEST(Numbers, TypedKeepsItsWordsAndConvertedIsRounded)
{
    EXPECT_EQ(text(typedText(*parse<Length>("18 thou", LengthUnit::Millimetre))), "18 thou");
    EXPECT_EQ(text(typedText(*parse<Length>(".30", LengthUnit::Millimetre))), ".30 mm");
    EXPECT_EQ(text(convertedText(micrometres(500), LengthUnit::Thou)), "19.7 thou");
    QLocale::setDefault(QLocale(QLocale::German));
    EXPECT_EQ(text(convertedText(micrometres(500), LengthUnit::Thou)), "19,7 thou");
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
}

TEST(Numbers, BandsSayWhatIsPrinted)
{
    EXPECT_EQ(text(bandText(*parseBand<Length>("0.40 ± 0.05 mm", LengthUnit::Millimetre))), "0.35 to 0.45 mm");
    EXPECT_EQ(text(bandText(*parseBand<Length>("at least 0.2 mm", LengthUnit::Millimetre))), "at least 0.20 mm");
    EXPECT_EQ(text(bandText(*parseBand<Length>("max 12 thou", LengthUnit::Millimetre))), "at most 12 thou");
}

TEST(Times, SayNoMoreThanIsNeeded)
{
    EXPECT_EQ(text(momentText(atMinute(0), atMinute(60))), "16:12");
    EXPECT_EQ(text(momentText(atMinute(0), atMinute(3 * 24 * 60))), "14 Nov");
    EXPECT_EQ(text(momentText(atMinute(0), atMinute(100 * 24 * 60))), "14 Nov 2023");
}

TEST(Crank, IsSaidByCylinderAndStroke)
{
    const EngineDesign design = engineOf(Layout::InLine, 4, "1-3-4-2");
    EXPECT_EQ(text(crankName(design, degrees(0))), "No. 1 on compression");
    EXPECT_EQ(text(crankPositionName(design, {Cylinder{0}, CrankEvent::Overlap})), "No. 1 at overlap");
    EXPECT_EQ(text(crankName(design, degrees(217))), "37° after no. 3 on compression");
    EXPECT_EQ(text(crankInText(design, std::nullopt)), "unknown");
    EXPECT_EQ(text(travelSentence(design, degrees(0), degrees(360))), "Turn 360° in the normal direction, clockwise seen from the front.");
}

TEST(Crank, TheStrokeIsToldAsTheEventsAllow)
{
    const EngineDesign design = engineOf(Layout::InLine, 4, "1-3-4-2");
    StrokeCheck check{Cylinder{0}, Cylinder{2}};
    QStringList sentences;
    for (const bool looseness : {false, true}) {
        for (const bool changeOver : {false, true}) {
            for (const bool hasCompanion : {false, true}) {
                check.loosenessTells = looseness;
                check.changeOverShows = changeOver;
                check.companion = hasCompanion ? std::optional(Cylinder{2}) : std::nullopt;
                const QString words = strokeCheckSentence(design, check);
                EXPECT_TRUE(isClean(words));
                EXPECT_EQ(words.contains(QStringLiteral("proves nothing")), !looseness) << text(words);
                sentences.append(words);
            }
        }
    }
    EXPECT_TRUE(sentences.first().contains(QStringLiteral("distributor")));
}

TEST(Specs, SayBandConditionSourceAndHowSure)
{
    const JobFrame frame = tractorFrame();
    EXPECT_EQ(text(specLine(frame.specs[1])), "0.35 to 0.45 mm cold · Hollin workshop manual p. 41");
    EXPECT_EQ(text(specLine(frame.specs[0])), "0.25 to 0.35 mm cold · from memory");
    const Spec alone = specOf(SpecId(9), SpecSubject::IntakeLash, bands("0.30 mm"), {"Handbook", "7", Certainty::ToldByPerson});
    EXPECT_EQ(text(specLine(alone)), "0.27 to 0.33 mm, tolerance assumed cold · Handbook p. 7, told by a person");
}

TEST(Readings, AreSaidAsTheyWereTaken)
{
    const TractorStory story;
    const PointId point = story.at("E1");
    EXPECT_EQ(text(readingText(story.reading(point, Phase::AsFound, "18 thou"))), "18 thou");
    EXPECT_EQ(text(readingText(story.reading(point, Phase::AsFound, "0.40", ReadingForm::Loose))), "loose on 0.40 mm");
    EXPECT_EQ(text(readingText(story.reading(point, Phase::AsFound, "", ReadingForm::Loose))), "loose");
    EXPECT_EQ(text(readingText(story.reading(point, Phase::AsFound, "", ReadingForm::ByFeel))), "by feel");
    ReadingFact bracket = story.reading(point, Phase::AsFound, "0.25", ReadingForm::Bracket);
    bracket.next = length("0.30");
    EXPECT_EQ(text(readingText(bracket)), "between 0.25 and 0.30 mm");
}

TEST(Readings, VerdictsSayByHowMuch)
{
    const TractorStory story;
    const Spec *spec = story.frame.specNow(SpecSubject::ExhaustLash);
    const auto verdict = [&](const ReadingFact &reading) { return text(verdictText(reading, verdictOf(reading, spec), spec)); };
    const PointId point = story.at("E3");
    EXPECT_EQ(verdict(story.reading(point, Phase::AsLeft, "0.50")), "above its band by 0.05 mm");
    EXPECT_EQ(verdict(story.reading(point, Phase::AsLeft, "17.8 thou")), "above its band by 0.002 mm");
    EXPECT_EQ(verdict(story.reading(point, Phase::AsLeft, "0.30", ReadingForm::Tight)), "below its band by 0.05 mm or more");
    EXPECT_EQ(verdict(story.reading(point, Phase::AsLeft, "0.45", ReadingForm::Loose)), "above its band");
    EXPECT_EQ(verdict(story.reading(point, Phase::AsLeft, "0.40", ReadingForm::Loose)), "too close to call against 0.35 to 0.45 mm");
    EXPECT_EQ(verdict(story.reading(point, Phase::AsLeft, "0.45")), "inside");
    ReadingFact hot = story.reading(point, Phase::AsLeft, "0.40");
    hot.condition = EngineCondition::Hot;
    EXPECT_EQ(verdict(hot), "not comparable: felt hot, the spec is for a cold engine");
}

/// An item of each kind; of those that count, one or several.
std::vector<OpenItem> oneOfEach(const TractorStory &story, bool many)
{
    const PointId point = story.at("E3");
    const std::vector<PointId> points(many ? 3 : 1, point);
    const int count = many ? 3 : 1;
    const JointId joint(9);
    return {open::NutOpen{point, atMinute(0)},
            open::OutOfBand{point, Verdict::High, {}},
            open::TooClose{point, {}},
            open::SetByTwo{point},
            open::LashBeforeBridge{point},
            open::PointsNotLeft{points},
            open::SpecRevised{points},
            open::NoSpecYet{points},
            open::NotComparable{points},
            open::ByFeel{points},
            open::OutOfPosition{points},
            open::SpecUnsure{SpecId(1)},
            open::ToleranceAssumed{SpecId(1)},
            open::StepUndone{StepId(1)},
            open::BleedingDown{atMinute(9)},
            open::FastenersLoose{joint, count},
            open::FittedUnsaid{joint, count},
            open::Reused{joint, count},
            open::FastenerFound{joint, 2},
            open::FastenerByFeel{joint, 2},
            open::TorqueOutside{joint, 2},
            open::TorqueUnproved{joint, 2},
            open::Unsettled{joint},
            open::JointRevised{joint},
            open::JointUnsure{joint},
            open::JointAssumed{joint},
            open::CalibrationOverdue{joint, {}}};
}

TEST(OpenItems, EveryKindHasWords)
{
    const TractorStory story;
    const JobState state = story.state();
    QStringList titles;
    for (const bool many : {false, true}) {
        for (const OpenItem &item : oneOfEach(story, many)) {
            const OpenWords words = openWords(item, state, atMinute(5));
            EXPECT_TRUE(isClean(words.title)) << item.index() << text(words.title);
            EXPECT_TRUE(words.note.isEmpty() || isClean(words.note)) << item.index() << text(words.note);
            if (!many)
                titles.append(words.title);
        }
    }
    titles.removeDuplicates();
    EXPECT_EQ(titles.size(), static_cast<int>(std::variant_size_v<OpenItem>));
}

TEST(OpenItems, ReadAsOnTheSheet)
{
    TractorStory story;
    story.log(NutOpenFact{story.at("I2")});
    const ActSeq high = story.log(story.reading("E3", Phase::AsLeft, "0.50"));
    story.log(KeepFact{high, story.at("E3"), "worn rocker"});
    const JobState state = story.state();
    const StillOpen open = stillOpen(state, atMinute(30));
    const OpenWords nut = openWords(open.turning.at(0), state, atMinute(30));
    EXPECT_EQ(text(nut.title), "Nut open: intake 2");
    EXPECT_EQ(text(nut.note), "since 16:12");
    const OpenWords outside = openWords(open.firstStart.at(0), state, atMinute(30));
    EXPECT_EQ(text(outside.title), "Exhaust 3 above its band");
    EXPECT_EQ(text(outside.note), "as left, kept: worn rocker");
}

TEST(NextActs, EveryKindHasASentence)
{
    const TractorStory story;
    const JobState state = story.state();
    const PointId point = story.at("E1");
    const std::vector<NextAct> each{next::NothingOpen{},
                                    next::ConfirmCrank{},
                                    next::LockNut{point},
                                    next::FeelPoint{point},
                                    next::SetPoint{point},
                                    next::SetOrKeep{point},
                                    next::TurnCrank{0},
                                    next::DoStep{StepId(1)},
                                    next::DoStep{StepId(99)},
                                    next::LoosenJoint{StepId(1), JointId(9)},
                                    next::TightenNext{StepId(1), JointId(9), {1, 0, 1}},
                                    next::SettleJoint{StepId(1), JointId(9)},
                                    next::SettleJoint{StepId(99), JointId(9)}};
    std::set<std::size_t> kinds;
    for (const NextAct &act : each) {
        kinds.insert(act.index());
        EXPECT_TRUE(isClean(nextActSentence(act, state))) << act.index();
    }
    EXPECT_EQ(kinds.size(), std::variant_size_v<NextAct>);
}

TEST(NextActs, SayWhatToDoNow)
{
    TractorStory story;
    const auto say = [&story](const NextAct &act) { return text(nextActSentence(act, story.state())); };
    EXPECT_EQ(say(next::FeelPoint{story.at("E1")}), "Feel exhaust 1");
    story.log(story.reading("I2", Phase::AsFound, "0.20"));
    EXPECT_EQ(say(next::SetPoint{story.at("I2")}), "Intake 2: found below its band. Turn out about 1/10, lock, feel 0.30 again");
    story.log(NutOpenFact{story.at("I2")});
    EXPECT_EQ(say(next::LockNut{story.at("I2")}), "Intake 2: nut open. Set 0.30, lock, feel again");
    story.log(story.reading("E3", Phase::AsLeft, "0.50"));
    EXPECT_EQ(say(next::SetOrKeep{story.at("E3")}), "Exhaust 3: above its band. Turn in about 1/10, lock, feel 0.40 again");
}

TEST(NextActs, TheCrankIsTurnedSoFarToThere)
{
    TractorStory story;
    CrankPlan plan = generatePlan(story.frame.engine.design, PlanWay::TwoPositions);
    plan.positions.at(1).place = {Cylinder{0}, CrankEvent::Overlap};
    story.log(PlanFact{ourEngine, plan});
    story.log(CrankFact{ourEngine, degrees(0)});
    EXPECT_EQ(text(nextActSentence(next::TurnCrank{1}, story.state())), "Turn the crank 360° to no. 1 at overlap");
}

TEST(Acts, SayWhatWasDone)
{
    TractorStory story;
    const auto said = [&story](Fact fact, std::optional<ActSeq> withdraws = std::nullopt) {
        story.log(std::move(fact), withdraws);
        return text(actText(story.acts.back(), story.state()));
    };
    EXPECT_EQ(said(CrankFact{ourEngine, degrees(0)}), "confirmed the crank: no. 1 on compression");
    EXPECT_EQ(said(CrankFact{ourEngine, std::nullopt}), "said that nobody knows where the crank stands");
    EXPECT_EQ(said(CrankFact{ourEngine, degrees(360), CrankHow::Turned}), "turned the crank to no. 4 on compression");
    EXPECT_EQ(said(story.reading("I1", Phase::AsFound, "0.20")), "found intake 1 at 0.20 mm, below its band");
    EXPECT_EQ(said(NutOpenFact{story.at("I1")}), "opened the nut of intake 1");
    EXPECT_EQ(said(story.reading("I1", Phase::AsLeft, "0.30")), "left intake 1 at 0.30 mm, inside");
    EXPECT_EQ(said(story.reading("I2", Phase::AsLeft, "", ReadingForm::ByFeel)), "left intake 2 by feel");
    EXPECT_EQ(said(AllLeftFact{{story.reading("I1", Phase::AsLeft, "0.30"), story.reading("E1", Phase::AsLeft, "0.40")}}),
              "left I1, E1 with the spec's leaf, locked, felt again");
    EXPECT_EQ(said(StepDoneFact{StepId(1)}), "done: Cover off");
    EXPECT_EQ(said(CheckAgainFact{{story.at("I1")}, "head re-torqued"}), "check again: I1, because: head re-torqued");
    EXPECT_EQ(said(CheckAgainFact{{story.at("I1")}, "", Disturbance::HeadTightened}),
              "check again: I1, because: the head was tightened again");
    EXPECT_EQ(said(WithdrawFact{}, ActSeq(9)), "undid: done: Cover off");
    EXPECT_EQ(said(WithdrawFact{}, ActSeq(12)), "brought back: done: Cover off");
    EXPECT_EQ(said(CautionsFact{}), "read the cautions");
}

TEST(Resume, SaysWhereTheJobWasLeft)
{
    TractorStory story;
    EXPECT_EQ(resumeLines(story.state(), now).size(), 4);
    story.log(StepDoneFact{StepId(1)});
    story.log(CrankFact{ourEngine, degrees(0)});
    story.log(NutOpenFact{story.at("I2")});
    const QStringList lines = resumeLines(story.state(), atMinute(30));
    EXPECT_EQ(text(lines.join(u'|')),
              "Last: opened the nut of intake 2, M.K., 16:14|Nut open: intake 2|Crank: no. 1 on compression, confirmed 16:13|"
              "Next: Intake 2: nut open. Set 0.30, lock, feel again");
}

TEST(Cautions, EachHasATitleAndASentence)
{
    for (int caution = 0; caution <= static_cast<int>(Caution::MeansToStop); ++caution) {
        const CautionWords words = cautionWords(static_cast<Caution>(caution));
        EXPECT_TRUE(isClean(words.title)) << caution;
        EXPECT_TRUE(isClean(words.sentence)) << caution;
    }
    EXPECT_TRUE(isClean(standingSentence()));
}

} // namespace words_tests

} // namespace asleft
