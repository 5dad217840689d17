#include "gui.h"
#include "tractor.h"

#include <words/errors.h>
#include <words/job.h>
#include <words/readings.h>
#include <words/specs.h>

namespace asleft {

namespace setting_tests {

std::string text(const QString &words)
{
    return words.toStdString();
}

JobFrame withTrainFrame(const Train &train)
{
    JobFrame frame = tractorFrame();
    fit(frame, *designEngine(withTrain(fourText(), train)));
    return frame;
}

/// A story about points that are no plain lashes.
class OtherPoints : public ::testing::Test {
protected:
    static constexpr Train everything{"", "2+2", true, true, true, true};

    void tell(JobFrame frame) { story = std::make_unique<TractorStory>(std::move(frame)); }

    [[nodiscard]] PointId at(AdjusterRef adjuster) const { return story->frame.pointAt(adjuster)->id; }
    template <class Act>
    [[nodiscard]] std::string said(AdjusterRef adjuster) const
    {
        return text(nextActSentence(Act{at(adjuster)}, story->state()));
    }

    const AdjusterRef bridge{Cylinder{2}, Side::Exhaust, PointKind::BridgeScrew};
    const AdjusterRef injector{Cylinder{2}, Side::Intake, PointKind::Injector};
    const AdjusterRef decompressor{Cylinder{2}, Side::Exhaust, PointKind::Decompressor};
    const AdjusterRef intake{Cylinder{0}, Side::Intake};
    std::unique_ptr<TractorStory> story;
};

TEST_F(OtherPoints, ABridgeWithoutASpecIsSeatedEvenly)
{
    tell(withTrainFrame(everything));
    EXPECT_EQ(said<next::FeelPoint>(bridge), "Exhaust bridge 3: Seat the bridge evenly on both valves, lock");
    EXPECT_EQ(said<next::SetPoint>(bridge), "Exhaust bridge 3: Seat the bridge evenly on both valves, lock");
}

TEST_F(OtherPoints, AnInjectorIsMeasured)
{
    JobFrame frame = withTrainFrame(everything);
    frame.specs.push_back(specOf(SpecId(9), SpecSubject::Injector, bands("36.0 ± 0.2 mm")));
    tell(std::move(frame));
    EXPECT_EQ(said<next::FeelPoint>(injector), "Measure injector 3");
    EXPECT_EQ(said<next::SetPoint>(injector), "Injector 3: Set 36.00, lock, measure again");
    story->log(story->reading(at(injector), Phase::AsLeft, "37 mm"));
    EXPECT_EQ(said<next::SetOrKeep>(injector), "Injector 3: above its band. Turn the screw, lock, measure 36.00 again");
}

TEST_F(OtherPoints, ADecompressorIsFeltLikeALash)
{
    tell(withTrainFrame(everything));
    EXPECT_EQ(said<next::FeelPoint>(decompressor), "Feel decompressor 3");
    EXPECT_EQ(said<next::SetPoint>(decompressor), "Decompressor 3: Set, lock, feel again");
}

TEST_F(OtherPoints, AHydraulicTappetIsTurnedOnFromZeroLash)
{
    JobFrame frame = tractorFrame();
    frame.specs = {specOf(intakeSpec, SpecSubject::IntakeLash, turnBands("3/4 turn"))};
    tell(std::move(frame));
    EXPECT_EQ(said<next::FeelPoint>(intake), "Intake 1: Find zero lash, turn in 3/4 turn, lock");
    ReadingFact turned = story->reading(at(intake), Phase::AsLeft, "", ReadingForm::Turned);
    turned.turned = turns("1");
    EXPECT_EQ(text(readingText(turned)), "1 turn from zero lash");
    const Spec *spec = story->frame.specNow(SpecSubject::IntakeLash);
    EXPECT_EQ(text(verdictText(turned, verdictOf(turned, spec), spec)), "above its band by 0.18 turn");
    story->log(turned);
    EXPECT_EQ(text(actText(story->acts.back(), story->state())), "left intake 1 at 1 turn from zero lash, above its band");
    EXPECT_EQ(said<next::SetOrKeep>(intake), "Intake 1: above its band. Find zero lash, turn in 3/4 turn, lock");
    EXPECT_EQ(text(specLine(*spec)), "3/4 turn (0.68 to 0.82), tolerance assumed cold · Hollin workshop manual p. 41");
}

TEST_F(OtherPoints, TurnsAgainstAClearanceAreNotComparable)
{
    tell(tractorFrame());
    ReadingFact turned = story->reading(at(intake), Phase::AsLeft, "", ReadingForm::Turned);
    turned.turned = turns("1");
    const Spec *spec = story->frame.specNow(SpecSubject::IntakeLash);
    EXPECT_EQ(text(verdictText(turned, Verdict::NotComparable, spec)), "not comparable: turned on, the spec is a clearance");
}

TEST_F(OtherPoints, WhatItsUncertaintyLeavesOpenIsNotFeltAgain)
{
    tell(tractorFrame());
    ReadingFact reading = story->reading(at(intake), Phase::AsLeft, "0.34");
    reading.uncertainty = micrometres(29);
    story->log(reading);
    EXPECT_EQ(said<next::SetOrKeep>(intake), "Intake 1: too close to call. Set it nearer the middle of its band, or keep it");
}

TEST(Positions, TheCrankIsTurnedToWhereAValveMoves)
{
    TractorStory story;
    const EngineDesign &design = story.frame.engine.design;
    CrankPlan plan;
    plan.positions.push_back({{Cylinder{2}, CrankEvent::ExhaustOpens}, crankAt(design, {Cylinder{2}, CrankEvent::ExhaustOpens}), {}});
    story.log(PlanFact{ourEngine, plan});
    EXPECT_EQ(text(nextActSentence(next::TurnCrank{0}, story.state())), "Turn the crank to no. 3 with its exhaust just opening");
}

TEST(OpenItems, TwoSeatsAndTheirReadingsAreNamed)
{
    JobFrame frame = tractorFrame();
    frame.people.push_back({PersonId(2), "T.B.", ""});
    TractorStory story(std::move(frame));
    JobState state = story.state();
    PointState &point = state.points.at(story.at("I2"));
    const auto judged = [&](PersonId who, const char *value) {
        return Judged{ActSeq(1), atMinute(0), who, "seat", story.reading("I2", Phase::AsLeft, value), Verdict::Inside};
    };
    point.leftByTwo = judged(PersonId(2), "0.30");
    point.left = judged(PersonId(1), "0.32");
    const OpenWords words = openWords(open::SetByTwo{story.at("I2")}, state, atMinute(1));
    EXPECT_EQ(text(words.title), "Intake 2 left by two seats");
    EXPECT_EQ(text(words.note), "0.30 mm T.B., then 0.32 mm M.K.: feel it again");
}

TEST(OpenItems, AWaitSaysUntilWhen)
{
    const TractorStory story;
    EXPECT_EQ(text(openWords(open::BleedingDown{atMinute(13)}, story.state(), atMinute(0)).note), "not to be turned until 16:25");
}

TEST(OtherStation, SaysWhoDidWhat)
{
    TractorStory story;
    story.log(story.reading("I1", Phase::AsLeft, "0.30"));
    EXPECT_EQ(text(otherStationText(story.acts.back(), story.state())), "Meanwhile M.K. left intake 1 at 0.30 mm at another seat.");
    story.log(NutOpenFact{story.at("I2")});
    EXPECT_EQ(text(otherStationText(story.acts.back(), story.state())), "Meanwhile at another seat, M.K.: opened the nut of intake 2.");
}

TEST(ReadOnly, SaysWhatIsKeptAndWhatToDo)
{
    EXPECT_TRUE(readOnlySentence().contains(QStringLiteral("kept")));
    EXPECT_TRUE(readOnlySentence().endsWith(u'.'));
}

} // namespace setting_tests

} // namespace asleft
