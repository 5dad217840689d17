// Taking back and bringing back.
#include "support.h"

namespace asleft {
namespace undo_tests {

class Undo : public BookTest {};

TEST_F(Undo, TakesBackActByActAndBringsThemBack)
{
    EXPECT_EQ(refusal(book->undo()), ErrorKind::NothingToUndo);
    EXPECT_EQ(refusal(book->redo()), ErrorKind::NothingToUndo);
    found("I1", "0.20 mm");
    need(book->openNut(at("I1")));
    left("I1", "0.30 mm");
    need(book->undo());
    EXPECT_EQ(point("I1").stage, PointStage::NutOpen);
    need(book->undo());
    EXPECT_EQ(point("I1").stage, PointStage::Found);
    need(book->undo());
    EXPECT_EQ(point("I1").stage, PointStage::Untouched);
    EXPECT_EQ(refusal(book->undo()), ErrorKind::NothingToUndo);

    need(book->redo());
    need(book->redo());
    need(book->redo());
    EXPECT_EQ(point("I1").stage, PointStage::Left);
    EXPECT_EQ(refusal(book->redo()), ErrorKind::NothingToUndo);
    need(book->undo());
    EXPECT_EQ(point("I1").stage, PointStage::NutOpen);
    EXPECT_EQ(bookOf(*garage)->state().points, book->state().points);
}

TEST_F(Undo, IsOverOnceSomethingElseIsDone)
{
    left("I1", "0.30 mm");
    need(book->undo());
    left("I2", "0.30 mm");
    EXPECT_EQ(refusal(book->redo()), ErrorKind::NothingToUndo);
}

TEST_F(Undo, DoesNotBringBackATurnOverAnOpenNut)
{
    beginValveSet();
    need(book->turnCrank(degrees(360)));
    need(book->undo());
    const auto other = openedBy("another seat");
    const auto theirs = bookOf(*other);
    theirs->setWho(tom);
    need(theirs->openNut(at("I2")));
    need(book->catchUp());
    EXPECT_EQ(refusal(book->redo()), ErrorKind::NutStillOpen);
    EXPECT_EQ(book->state().crank->crank, degrees(0));
}

TEST_F(Undo, OfACrankConfirmationAsksAgain)
{
    beginValveSet();
    EXPECT_TRUE(book->session().crankConfirmed);
    bool toldConfirmed = true;
    QObject::connect(book.get(), &JobBook::changed, [&] { toldConfirmed = book->session().crankConfirmed; });
    need(book->undo());
    EXPECT_FALSE(book->state().crank);
    EXPECT_FALSE(book->session().crankConfirmed);
    EXPECT_FALSE(toldConfirmed);
    EXPECT_EQ(refusal(book->turnCrank(degrees(360))), ErrorKind::CrankNotConfirmed);
}

TEST_F(Undo, OfAReadingDoesNotAskForTheCrank)
{
    beginValveSet();
    left("I1", "0.30 mm");
    need(book->undo());
    EXPECT_TRUE(book->session().crankConfirmed);
}

TEST_F(Undo, LeavesCautionsRead)
{
    left("I1", "0.30 mm");
    need(book->readTurningCautions());
    need(book->undo());
    EXPECT_EQ(point("I1").stage, PointStage::Untouched);
    EXPECT_TRUE(book->session().turningCautionsRead);
}

TEST_F(Undo, IsRefusedWhileAnotherSeatsActRestsOnIt)
{
    found("I1", "0.20 mm");
    const auto office = openedBy("office");
    const auto theirs = bookOf(*office);
    theirs->setWho(tom);
    need(theirs->logReading(reading("I1", Phase::AsLeft, "0.30 mm")));
    need(book->catchUp());

    const auto refused = book->undo();
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error(), (Error{ErrorKind::RestedOn, {"I1"}}));
    EXPECT_EQ(point("I1").stage, PointStage::Left);
    need(theirs->undo());
    need(book->catchUp());
    EXPECT_EQ(point("I1").stage, PointStage::Found);
    need(book->undo());
    EXPECT_EQ(point("I1").stage, PointStage::Untouched);
}

TEST_F(Undo, IsToldWhatRestsOnAMoveOfTheCrankOrAPlan)
{
    need(book->choosePlan(book->proposedPlan()));
    const auto office = openedBy("office");
    const auto theirs = bookOf(*office);
    theirs->setWho(tom);
    need(theirs->readTurningCautions());
    need(theirs->confirmCrank(degrees(0)));
    need(book->confirmCrank(degrees(0)));
    need(theirs->turnCrank(degrees(360)));
    EXPECT_EQ(book->undo().error(), (Error{ErrorKind::RestedOn, {"IN 3 4 EX 2 4"}})) << "the place of the plan it was turned to";
    need(theirs->undo());
    need(theirs->confirmCrank(degrees(90)));
    EXPECT_EQ(book->undo().error(), (Error{ErrorKind::RestedOn, {"90°"}})) << "a place that is none of the plan's";
}

TEST_F(Undo, IsToldWhosePlanCameAfter)
{
    need(book->choosePlan(book->proposedPlan()));
    need(book->choosePlan(generatePlan(book->state().frame->engine.design, PlanWay::EachOnCompression)));
    const auto office = openedBy("office");
    const auto theirs = bookOf(*office);
    theirs->setWho(tom);
    need(reviseTable(*office, tractor.engine, {{"1", CrankEvent::Compression, "IN 1 2 EX 1 3"}}, {"Manual", "6-60"}));
    need(theirs->catchUp());
    need(theirs->choosePlan(theirs->proposedPlan()));
    EXPECT_EQ(book->undo().error(), (Error{ErrorKind::RestedOn, {"Manual"}}));
}

} // namespace undo_tests
} // namespace asleft
