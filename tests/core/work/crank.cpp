// Where the crank stands, and what keeps it from being turned.
#include "support.h"

namespace asleft {
namespace {

class Crank : public BookTest {};

TEST_F(Crank, IsTurnedOnlyOnceConfirmedAndTheCautionsRead)
{
    EXPECT_EQ(refusal(book->turnCrank(degrees(360))), ErrorKind::CrankNotConfirmed);
    need(book->confirmCrank(std::nullopt));
    EXPECT_EQ(refusal(book->turnCrank(degrees(360))), ErrorKind::CrankNotConfirmed) << "unknown is no place to turn from";
    need(book->confirmCrank(degrees(0)));
    EXPECT_EQ(refusal(book->turnCrank(degrees(360))), ErrorKind::CautionsNotRead);
    need(book->readTurningCautions());
    need(book->turnCrank(degrees(360)));
    EXPECT_EQ(book->state().crank->crank, degrees(360));
    EXPECT_EQ(book->state().crank->how, CrankHow::Turned);
    need(book->turnCrank(degrees(720)));
    EXPECT_EQ(book->state().crank->crank, degrees(0)) << "once a sitting is enough";
}

TEST_F(Crank, ANewSittingAsksAgain)
{
    beginValveSet();
    book = bookOf(*garage);
    book->setWho(marta);
    EXPECT_EQ(book->state().crank->crank, degrees(0)) << "where it was left is known";
    EXPECT_EQ(refusal(book->turnCrank(degrees(360))), ErrorKind::CrankNotConfirmed);
    need(book->confirmCrank(degrees(0)));
    EXPECT_EQ(refusal(book->turnCrank(degrees(360))), ErrorKind::CautionsNotRead);
}

TEST_F(Crank, IsNotTurnedWhileANutIsOpen)
{
    need(book->openNut(at("I2")));
    need(book->openNut(at("E3")));
    const auto before = book->turnCrank(degrees(360));
    ASSERT_FALSE(before.has_value());
    EXPECT_EQ(before.error(), (Error{ErrorKind::NutStillOpen, {"I2, E3"}}));
    beginValveSet();
    EXPECT_EQ(refusal(book->turnCrank(degrees(360))), ErrorKind::NutStillOpen);
    left("I2", "0.30 mm");
    left("E3", "0.40 mm");
    EXPECT_TRUE(book->turnCrank(degrees(360)).has_value());
}

TEST_F(Crank, AConfirmedPlaceIsWithinTheCycle)
{
    need(book->choosePlan(book->proposedPlan()));
    need(book->confirmCrank(degrees(720)));
    EXPECT_EQ(book->state().crank->crank, degrees(0));
    EXPECT_EQ(planPositionHere(book->state()), 0U);
}

TEST_F(Crank, BelongsToTheEngineNotToTheJob)
{
    const JobId second = need(openJob(*garage, tractor.vehicle, tractor.engine, builtInSheets().front(), "Again"));
    const auto other = need(JobBook::open(*garage, second));
    other->setWho(tom);
    int told = 0;
    QObject::connect(book.get(), &JobBook::changed, [&] { ++told; });
    need(other->confirmCrank(degrees(180)));
    EXPECT_EQ(book->state().crank->crank, degrees(180)) << "an open book hears of it";
    EXPECT_EQ(told, 1);
    need(other->openNut(other->state().frame->engine.points.front().id));
    EXPECT_EQ(point("I1").stage, PointStage::Untouched);
    EXPECT_EQ(told, 1) << "the rest of that job is not ours";
}

TEST_F(Crank, TheProposedPlanIsTheManualsOrTwoPositions)
{
    CrankPlan plan = book->proposedPlan();
    EXPECT_TRUE(plan.generated);
    EXPECT_EQ(plan.positions.size(), 2U);
    need(reviseTable(*garage, tractor.engine, {{"1", CrankEvent::Compression, "IN 1 2 EX 1 3"}}, {"Manual", "6-60"}));
    plan = book->proposedPlan();
    EXPECT_FALSE(plan.generated);
    EXPECT_EQ(plan.source, "Manual p. 6-60");
    EXPECT_EQ(plan.positions.size(), 1U);
    EXPECT_EQ(plan.unreached.size(), 4U);
}

TEST_F(Crank, TheChosenPlanStaysWhateverTheTableSaysLater)
{
    beginValveSet();
    const auto chosen = book->state().plan;
    need(reviseTable(*garage, tractor.engine, {{"1", CrankEvent::Compression, "IN 1"}}, {"Manual", "1"}));
    EXPECT_EQ(book->state().plan, chosen);
}

} // namespace
} // namespace asleft
