// What each act makes of a state, one rule at a time.
#include "story.h"

namespace asleft {
namespace folding_tests {

TEST(Folding, WithoutActsEverythingIsUntouchedAndUnknown)
{
    const JobState state = Story().state();
    ASSERT_EQ(state.points.size(), 8U);
    for (const auto &[id, point] : state.points)
        EXPECT_EQ(point, PointState{});
    EXPECT_FALSE(state.crank);
    EXPECT_FALSE(state.plan);
    EXPECT_TRUE(state.stepsDone.empty());
}

TEST(Folding, AFoundReadingIsJudgedAndMarksThePointFound)
{
    Story story;
    const ActSeq seq = story.found("I2", "0.20 mm");
    const PointState point = story.point("I2");
    EXPECT_EQ(point.stage, PointStage::Found);
    ASSERT_TRUE(point.found);
    EXPECT_EQ(point.found->seq, seq);
    EXPECT_EQ(point.found->at, Moment{1000});
    EXPECT_EQ(point.found->who, PersonId(1));
    EXPECT_EQ(point.found->station, "bench");
    EXPECT_EQ(point.found->verdict, Verdict::Low);
    EXPECT_FALSE(point.left);
    EXPECT_EQ(story.point("I1"), PointState{});
}

TEST(Folding, ALeftReadingLeavesThePointAndKeepsWhatWasFound)
{
    Story story;
    const ActSeq found = story.found("E1", "0.50 mm");
    const ActSeq left = story.left("E1", "0.40 mm");
    const PointState point = story.point("E1");
    EXPECT_EQ(point.stage, PointStage::Left);
    EXPECT_EQ(point.found->seq, found);
    EXPECT_EQ(point.left->seq, left);
    EXPECT_EQ(point.left->verdict, Verdict::Inside);
    EXPECT_TRUE(point.settled());
}

TEST(Folding, AFoundReadingBehindALeftOneDoesNotUnsetThePoint)
{
    Story story;
    story.left("E1", "0.40 mm");
    story.found("E1", "0.50 mm");
    EXPECT_EQ(story.point("E1").stage, PointStage::Left);
    EXPECT_TRUE(story.point("E1").found);
}

TEST(Folding, OpeningTheNutDropsWhatWasLeftAndKept)
{
    Story story;
    story.found("I1", "0.20 mm");
    const ActSeq left = story.left("I1", "0.50 mm");
    story.keep(left, "I1");
    story.nutOpen("I1");
    const PointState point = story.point("I1");
    EXPECT_EQ(point.stage, PointStage::NutOpen);
    EXPECT_EQ(point.nutOpenSince, Moment{1003});
    EXPECT_TRUE(point.found);
    EXPECT_FALSE(point.left);
    EXPECT_FALSE(point.kept);
    EXPECT_FALSE(point.settled());
}

TEST(Folding, ANutOpenedTwiceIsOpenSinceTheFirstTime)
{
    Story story;
    story.nutOpen("I1");
    story.nutOpen("I1");
    EXPECT_EQ(story.point("I1").nutOpenSince, Moment{1000});
}

TEST(Folding, LeavingThePointLocksItsNut)
{
    Story story;
    story.nutOpen("I1");
    story.left("I1", "0.30 mm");
    EXPECT_EQ(story.point("I1").stage, PointStage::Left);
    EXPECT_FALSE(story.point("I1").nutOpenSince);
}

TEST(Folding, ACorrectionOfFoundTakesItsPlace)
{
    Story story;
    const ActSeq wrong = story.found("I1", "0.20 mm");
    const ActSeq right = story.correct(wrong, "I1", Phase::AsFound, "0.30 mm");
    EXPECT_EQ(story.point("I1").found->seq, right);
    EXPECT_EQ(story.point("I1").found->verdict, Verdict::Inside);
    EXPECT_EQ(story.point("I1").stage, PointStage::Found);
}

TEST(Folding, ACorrectionOfLeftTakesItsPlaceAndVoidsTheKeep)
{
    Story story;
    const ActSeq wrong = story.left("I1", "0.50 mm");
    story.keep(wrong, "I1");
    const ActSeq right = story.correct(wrong, "I1", Phase::AsLeft, "0.45 mm");
    const PointState point = story.point("I1");
    EXPECT_EQ(point.left->seq, right);
    EXPECT_EQ(point.stage, PointStage::Left);
    EXPECT_FALSE(point.kept);
}

TEST(Folding, ACorrectionOfALeftWhoseNutWasOpenedSinceDoesNotLockIt)
{
    Story story;
    const ActSeq wrong = story.left("I1", "0.50 mm");
    story.nutOpen("I1");
    story.correct(wrong, "I1", Phase::AsLeft, "0.30 mm");
    EXPECT_EQ(story.point("I1").stage, PointStage::NutOpen);
    EXPECT_FALSE(story.point("I1").left);
}

TEST(Folding, ACorrectionOfALeftThatWasSetAnewChangesNothing)
{
    Story story;
    const ActSeq wrong = story.left("I1", "0.50 mm");
    const ActSeq anew = story.left("I1", "0.30 mm");
    story.correct(wrong, "I1", Phase::AsLeft, "0.60 mm");
    EXPECT_EQ(story.point("I1").left->seq, anew);
}

TEST(Folding, ACorrectionOfALeftToCheckAgainIsStillToCheckAgain)
{
    Story story;
    const ActSeq wrong = story.left("I1", "0.35 mm");
    story.checkAgain({story.at("I1")});
    story.correct(wrong, "I1", Phase::AsLeft, "0.30 mm");
    EXPECT_EQ(story.point("I1").stage, PointStage::CheckAgain);
    EXPECT_EQ(story.point("I1").left->reading.value, length("0.30 mm"));
}

TEST(Folding, AKeepHoldsForThatVeryReadingOnly)
{
    Story story;
    const ActSeq low = story.left("I1", "0.20 mm");
    story.keep(low, "I1");
    EXPECT_EQ(story.point("I1").kept, "worn seat");
    EXPECT_TRUE(story.point("I1").settled());

    const ActSeq stillLow = story.left("I1", "0.22 mm");
    EXPECT_FALSE(story.point("I1").kept) << "a new reading voids it";
    EXPECT_FALSE(story.point("I1").settled());

    story.keep(low, "I1");
    EXPECT_FALSE(story.point("I1").kept) << "of a reading that is past";
    story.keep(stillLow, "I1");
    EXPECT_TRUE(story.point("I1").kept);
}

TEST(Folding, AKeepOfOneOfAllLeftIsForItsOwnPoint)
{
    Story story;
    const ActSeq all =
        story.log(AllLeftFact{{story.reading("I1", Phase::AsLeft, "0.20 mm"), story.reading("I2", Phase::AsLeft, "0.20 mm")}});
    story.keep(all, "I2");
    EXPECT_FALSE(story.point("I1").kept);
    EXPECT_TRUE(story.point("I2").kept);
}

TEST(Folding, OnlyLeftPointsAreSentToCheckAgain)
{
    Story story;
    story.found("I1", "0.30 mm");
    story.left("I2", "0.30 mm");
    story.nutOpen("I3");
    story.checkAgain({story.at("I1"), story.at("I2"), story.at("I3"), story.at("I4")});
    EXPECT_EQ(story.point("I1").stage, PointStage::Found);
    EXPECT_EQ(story.point("I2").stage, PointStage::CheckAgain);
    EXPECT_EQ(story.point("I2").checkAgainWhy, "head re-torqued");
    EXPECT_EQ(story.point("I2").disturbance, Disturbance::HeadTightened);
    EXPECT_FALSE(story.point("I2").settled());
    EXPECT_EQ(story.point("I3").stage, PointStage::NutOpen);
    EXPECT_EQ(story.point("I4").stage, PointStage::Untouched);
    EXPECT_TRUE(story.point("I1").checkAgainWhy.empty());
    EXPECT_FALSE(story.point("I1").disturbance);

    story.left("I2", "0.30 mm");
    EXPECT_EQ(story.point("I2").stage, PointStage::Left);
    EXPECT_TRUE(story.point("I2").checkAgainWhy.empty());
    EXPECT_FALSE(story.point("I2").disturbance);
}

TEST(Folding, AllLeftLeavesEveryOneOfItsPoints)
{
    Story story;
    story.nutOpen("I2");
    const ActSeq all =
        story.log(AllLeftFact{{story.reading("I1", Phase::AsLeft, "0.30 mm"), story.reading("I2", Phase::AsLeft, "0.50 mm")}});
    EXPECT_EQ(story.point("I1").left->seq, all);
    EXPECT_EQ(story.point("I2").stage, PointStage::Left);
    EXPECT_EQ(story.point("I2").left->verdict, Verdict::High);
    EXPECT_EQ(story.point("E1").stage, PointStage::Untouched);

    story.withdraw(all);
    EXPECT_EQ(story.point("I1").stage, PointStage::Untouched);
    EXPECT_EQ(story.point("I2").stage, PointStage::NutOpen);
}

TEST(Folding, CrankPlanAndStepsAreTheLastSaid)
{
    Story story;
    story.crank(0);
    const ActSeq turned = story.crank(360, CrankHow::Turned);
    story.twoPositions();
    story.done(2);
    const JobState state = story.state();
    EXPECT_EQ(state.crank, (CrankState{degrees(360), CrankHow::Turned, Moment{1001}, turned}));
    EXPECT_EQ(state.plan, generatePlan(story.frame.engine.design, PlanWay::TwoPositions));
    EXPECT_EQ(state.stepsDone, std::set{StepId(2)});

    story.crank(std::nullopt);
    ASSERT_TRUE(story.state().crank) << "unknown is an answer";
    EXPECT_FALSE(story.state().crank->crank);
}

TEST(Folding, AWithdrawalRestoresWhatWasBefore)
{
    Story story;
    story.found("I1", "0.20 mm");
    const ActSeq left = story.left("I1", "0.50 mm");
    story.keep(left, "I1");
    const PointState before = story.point("I1");
    const ActSeq opened = story.nutOpen("I1");
    story.withdraw(opened);
    EXPECT_EQ(story.point("I1"), before);
    EXPECT_FALSE(story.state().inForce(story.acts[3]));
}

TEST(Folding, AWithdrawnCorrectionRestoresWhatItCorrected)
{
    Story story;
    const ActSeq found = story.found("I1", "0.20 mm");
    const ActSeq left = story.left("I1", "0.30 mm");
    story.withdraw(story.correct(found, "I1", Phase::AsFound, "0.22 mm"));
    story.withdraw(story.correct(left, "I1", Phase::AsLeft, "0.33 mm"));
    EXPECT_EQ(story.point("I1").found->seq, found);
    EXPECT_EQ(story.point("I1").left->seq, left);
}

TEST(Folding, AWithdrawnWithdrawalPutsTheActBackInForce)
{
    Story story;
    const ActSeq left = story.left("I1", "0.30 mm");
    const ActSeq undone = story.withdraw(left);
    EXPECT_EQ(story.point("I1").stage, PointStage::Untouched);
    const ActSeq redone = story.withdraw(undone);
    EXPECT_EQ(story.point("I1").left->seq, left);
    story.withdraw(redone);
    EXPECT_EQ(story.point("I1").stage, PointStage::Untouched);
}

TEST(Folding, OfOtherJobsOnlyTheCrankCounts)
{
    Story story;
    story.job = otherJob;
    story.left("I1", "0.30 mm");
    story.nutOpen("I2");
    story.twoPositions();
    story.done(2);
    const ActSeq moved = story.crank(360);
    const JobState state = story.state();
    EXPECT_EQ(state.point(story.at("I1")), PointState{});
    EXPECT_EQ(state.point(story.at("I2")), PointState{});
    EXPECT_FALSE(state.plan);
    EXPECT_TRUE(state.stepsDone.empty());
    ASSERT_TRUE(state.crank);
    EXPECT_EQ(state.crank->seq, moved);

    story.withdraw(moved);
    EXPECT_FALSE(story.state().crank);
}

TEST(Folding, AnotherEnginesCrankDoesNotCount)
{
    Story story;
    story.log(CrankFact{EngineId(7), degrees(90), CrankHow::Confirmed});
    EXPECT_FALSE(story.state().crank);
}

TEST(Folding, AnActFoldedAlreadyChangesNothing)
{
    Story story;
    story.left("I1", "0.30 mm");
    story.nutOpen("I1");
    JobState state = story.state();
    foldOne(state, story.acts.front());
    EXPECT_EQ(state.acts.size(), 2U);
    EXPECT_EQ(state.point(story.at("I1")).stage, PointStage::NutOpen);
}

TEST(Folding, ANewRevisionKeepsTheOldVerdict)
{
    Story story;
    story.left("I1", "0.30 mm");
    story.frame.specs.push_back(specOf(SpecId(3), SpecSubject::IntakeLash, bands("0.20 ± 0.05 mm")));
    story.frame.specs.back().revision = 2;
    EXPECT_EQ(story.point("I1").left->verdict, Verdict::Inside);
    story.left("I2", "0.30 mm");
    EXPECT_EQ(story.point("I2").left->verdict, Verdict::High);
}

struct SettledCase {
    Verdict verdict;
    bool settled;
};

class Settled : public testing::TestWithParam<SettledCase> {};

TEST_P(Settled, ByVerdictAndKeep)
{
    const Judged judged{ActSeq(1), {}, PersonId(1), "bench", Story().reading("I1", Phase::AsLeft, "0.30 mm"), GetParam().verdict};
    PointState point{.stage = PointStage::Left, .found = {}, .left = judged, .nutOpenSince = {}, .kept = {}, .checkAgainWhy = {}};
    EXPECT_EQ(point.settled(), GetParam().settled);
    point.kept = "";
    EXPECT_TRUE(point.settled()) << "kept, if without a reason";
    point.stage = PointStage::CheckAgain;
    EXPECT_FALSE(point.settled());
}

INSTANTIATE_TEST_SUITE_P(All, Settled,
                         testing::Values(SettledCase{Verdict::Inside, true}, SettledCase{Verdict::Low, false},
                                         SettledCase{Verdict::High, false}, SettledCase{Verdict::TooClose, false},
                                         SettledCase{Verdict::ByFeel, true}, SettledCase{Verdict::NotComparable, true},
                                         SettledCase{Verdict::NoSpec, true}));

} // namespace folding_tests
} // namespace asleft
