// What rests on what, and which act a computer may take back or bring back.
#include "story.h"

namespace asleft {
namespace taking_back_tests {

TEST(RestsOn, TheSamePoint)
{
    Story story;
    story.found("I1", "0.20 mm");
    story.left("I1", "0.30 mm");
    story.left("I2", "0.30 mm");
    EXPECT_TRUE(restsOn(story.acts[1], story.acts[0]));
    EXPECT_FALSE(restsOn(story.acts[0], story.acts[1])) << "nothing rests on what came later";
    EXPECT_FALSE(restsOn(story.acts[2], story.acts[1])) << "another point";
    EXPECT_FALSE(restsOn(story.acts[0], story.acts[0]));
}

TEST(RestsOn, EveryActThatSpeaksOfThePoint)
{
    Story story;
    const ActSeq left = story.left("I1", "0.20 mm");
    story.keep(left, "I1");
    story.nutOpen("I1");
    story.checkAgain({story.at("E4"), story.at("I1")});
    story.log(AllLeftFact{{story.reading("E4", Phase::AsLeft, "0.40 mm"), story.reading("I1", Phase::AsLeft, "0.30 mm")}});
    for (std::size_t i = 1; i < story.acts.size(); ++i)
        EXPECT_TRUE(restsOn(story.acts[i], story.acts[0])) << i;
}

TEST(RestsOn, WorkAndMovesRestOnWhereTheCrankStands)
{
    Story story;
    story.crank(0);
    story.left("I1", "0.30 mm");
    story.crank(360, CrankHow::Turned);
    story.done(2);
    story.job = otherJob;
    story.left("I2", "0.30 mm");
    story.crank(0);
    story.log(CrankFact{EngineId(9), degrees(0), CrankHow::Confirmed});
    const Act &stood = story.acts[0];
    EXPECT_TRUE(restsOn(story.acts[1], stood));
    EXPECT_TRUE(restsOn(story.acts[2], stood));
    EXPECT_FALSE(restsOn(story.acts[3], stood)) << "a step is done anywhere";
    EXPECT_FALSE(restsOn(story.acts[4], stood)) << "work of another job";
    EXPECT_TRUE(restsOn(story.acts[5], stood)) << "the same crank moved on in another job";
    EXPECT_FALSE(restsOn(story.acts[6], stood)) << "another engine";
}

TEST(RestsOn, TurnsAndNewerPlansRestOnThePlan)
{
    Story story;
    story.twoPositions();
    story.crank(0);
    story.crank(360, CrankHow::Turned);
    story.twoPositions();
    story.left("I1", "0.30 mm");
    EXPECT_FALSE(restsOn(story.acts[1], story.acts[0])) << "where it stands was looked at";
    EXPECT_TRUE(restsOn(story.acts[2], story.acts[0]));
    EXPECT_TRUE(restsOn(story.acts[3], story.acts[0]));
    EXPECT_FALSE(restsOn(story.acts[4], story.acts[0]));
    story.acts[2].what.job = otherJob;
    EXPECT_FALSE(restsOn(story.acts[2], story.acts[0]));
}

TEST(RestsOn, AGeneratedPlanRestsOnWhereTheCrankStood)
{
    Story story;
    story.crank(90);
    story.twoPositions();
    CrankPlan typed = generatePlan(story.frame.engine.design, PlanWay::TwoPositions);
    typed.generated = false;
    story.log(PlanFact{ourEngine, typed});
    EXPECT_TRUE(restsOn(story.acts[1], story.acts[0])) << "listed from there";
    EXPECT_FALSE(restsOn(story.acts[2], story.acts[0])) << "the manual's own begins where the manual says";
    EXPECT_FALSE(restsOn(story.acts[0], story.acts[1]));
    story.acts[1].what.job = otherJob;
    EXPECT_FALSE(restsOn(story.acts[1], story.acts[0]));
}

TEST(RestingOn, TheFirstPlanKeepsNothingInForce)
{
    Story story;
    const ActSeq stood = story.crank(90);
    story.twoPositions();
    EXPECT_FALSE(restingOn(story.state(), stood)) << "the program's own plan cannot be taken back, so it must not bind";
    const ActSeq chosen = story.twoPositions();
    ASSERT_TRUE(restingOn(story.state(), stood));
    EXPECT_EQ(restingOn(story.state(), stood)->seq, chosen);
    story.withdraw(chosen);
    EXPECT_FALSE(restingOn(story.state(), stood));
}

TEST(RestingOn, ATurnDespiteTheWaitRestsOnThePlanAsAnyTurnDoes)
{
    Story story(hydraulicFrame());
    story.twoPositions();
    const ActSeq plan = story.twoPositions();
    story.crank(0);
    const ActSeq set = story.log(story.turned("I1", Phase::AsLeft, "3/4"));
    const ActSeq turned = story.crank(360, CrankHow::Turned);
    EXPECT_EQ(restingOn(story.state(), plan)->seq, turned);
    EXPECT_FALSE(restingOn(story.state(), set)) << "the crank moved on whatever was read";
}

TEST(RestsOn, NothingRestsOnStepsOrCautions)
{
    Story story;
    story.done(1);
    story.log(CautionsFact{{Caution::Neutral}});
    story.crank(0);
    story.left("I1", "0.30 mm");
    for (std::size_t i = 2; i < story.acts.size(); ++i) {
        EXPECT_FALSE(restsOn(story.acts[i], story.acts[0]));
        EXPECT_FALSE(restsOn(story.acts[i], story.acts[1]));
    }
}

TEST(RestingOn, OnlyActsInForce)
{
    Story story;
    const ActSeq found = story.found("I1", "0.20 mm");
    const ActSeq left = story.left("I1", "0.30 mm");
    const JobState state = story.state();
    ASSERT_TRUE(restingOn(state, found));
    EXPECT_EQ(restingOn(state, found)->seq, left);
    EXPECT_FALSE(restingOn(state, left));
    EXPECT_FALSE(restingOn(state, ActSeq(99)));
    story.withdraw(left);
    EXPECT_FALSE(restingOn(story.state(), found));
}

TEST(Undoable, TheLastActInForceOfThisSeatInThisJob)
{
    Story story;
    EXPECT_FALSE(undoable(story.state(), "bench"));
    const ActSeq mine = story.left("I1", "0.30 mm");
    story.log(CautionsFact{{Caution::Neutral}});
    story.job = otherJob;
    story.crank(0);
    story.job = ourJob;
    story.station = "office";
    const ActSeq theirs = story.left("I2", "0.30 mm");
    EXPECT_EQ(undoable(story.state(), "bench"), mine);
    EXPECT_EQ(undoable(story.state(), "office"), theirs);
    EXPECT_FALSE(undoable(story.state(), "shed"));
}

TEST(Undoable, GoesBackActByAct)
{
    Story story;
    const ActSeq first = story.left("I1", "0.30 mm");
    const ActSeq second = story.left("I2", "0.30 mm");
    EXPECT_EQ(undoable(story.state(), "bench"), second);
    story.withdraw(second);
    EXPECT_EQ(undoable(story.state(), "bench"), first);
    story.withdraw(first);
    EXPECT_FALSE(undoable(story.state(), "bench"));
}

TEST(Redoable, BringsBackInTheOppositeOrder)
{
    Story story;
    const ActSeq first = story.left("I1", "0.30 mm");
    const ActSeq second = story.left("I2", "0.30 mm");
    EXPECT_FALSE(redoable(story.state(), "bench"));
    const ActSeq secondBack = story.withdraw(second);
    const ActSeq firstBack = story.withdraw(first);

    EXPECT_EQ(redoable(story.state(), "bench"), firstBack);
    story.withdraw(firstBack);
    EXPECT_EQ(undoable(story.state(), "bench"), first);
    EXPECT_EQ(redoable(story.state(), "bench"), secondBack);
    story.withdraw(secondBack);
    EXPECT_FALSE(redoable(story.state(), "bench"));
    EXPECT_EQ(undoable(story.state(), "bench"), second);
    EXPECT_EQ(story.point("I1").stage, PointStage::Left);
    EXPECT_EQ(story.point("I2").stage, PointStage::Left);
}

TEST(Redoable, NotOnceSomethingElseWasDone)
{
    Story story;
    const ActSeq undone = story.withdraw(story.left("I1", "0.30 mm"));
    story.log(CautionsFact{{Caution::Neutral}});
    EXPECT_EQ(redoable(story.state(), "bench"), undone) << "reading cautions is not doing something else";
    story.station = "office";
    story.left("I2", "0.30 mm");
    EXPECT_EQ(redoable(story.state(), "bench"), undone) << "nor is what another seat does";
    EXPECT_FALSE(redoable(story.state(), "office"));
    story.station = "bench";
    story.left("I3", "0.30 mm");
    EXPECT_FALSE(redoable(story.state(), "bench"));
}

TEST(Redoable, UndoneAgainAfterARedo)
{
    Story story;
    const ActSeq act = story.left("I1", "0.30 mm");
    story.withdraw(story.withdraw(act));
    EXPECT_FALSE(redoable(story.state(), "bench"));
    const ActSeq undoneAgain = story.withdraw(act);
    EXPECT_EQ(redoable(story.state(), "bench"), undoneAgain);
}

TEST(LastAct, OfThisJobWithoutWithdrawalsAndCautions)
{
    Story story;
    EXPECT_FALSE(lastAct(story.state()));
    const ActSeq left = story.left("I1", "0.30 mm");
    const ActSeq done = story.done(2);
    story.log(CautionsFact{{Caution::Neutral}});
    story.job = otherJob;
    story.crank(0);
    story.job = ourJob;
    JobState state = story.state();
    ASSERT_TRUE(lastAct(state));
    EXPECT_EQ(lastAct(state)->seq, done);
    story.withdraw(done);
    state = story.state();
    EXPECT_EQ(lastAct(state)->seq, left);
}

} // namespace taking_back_tests
} // namespace asleft
