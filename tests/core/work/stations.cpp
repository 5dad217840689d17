// Two computers at one file.
#include "support.h"

namespace asleft {
namespace stations_tests {

class Seats : public BookTest {
protected:
    std::unique_ptr<Garage> office = openedBy("office");
    std::unique_ptr<JobBook> theirs = bookOf(*office);
    Seats() { theirs->setWho(tom); }
};

TEST_F(Seats, CatchingUpSeesWhatTheOtherDid)
{
    int told = 0;
    QObject::connect(book.get(), &JobBook::changed, [&] { ++told; });
    need(theirs->logReading(reading("I1", Phase::AsFound, "0.20 mm")));
    need(theirs->confirmCrank(degrees(360)));
    EXPECT_EQ(point("I1").stage, PointStage::Untouched);
    need(book->catchUp());
    EXPECT_EQ(point("I1").stage, PointStage::Found);
    EXPECT_EQ(point("I1").found->who, tom);
    EXPECT_EQ(book->state().crank->crank, degrees(360));
    EXPECT_EQ(told, 1);
    need(book->catchUp());
    EXPECT_EQ(told, 1) << "nothing new";
}

TEST_F(Seats, LoggingSeesWhatTheOtherDidBefore)
{
    need(theirs->openNut(at("I1")));
    left("I2", "0.30 mm");
    EXPECT_EQ(point("I1").stage, PointStage::NutOpen);
    EXPECT_EQ(book->state().acts.size(), 2U);
    EXPECT_EQ(book->state().points, bookOf(*office)->state().points);
}

TEST_F(Seats, UndoTakesOnlyOnesOwn)
{
    left("I1", "0.30 mm");
    need(theirs->logReading(reading("I2", Phase::AsLeft, "0.30 mm")));
    need(book->catchUp());
    need(book->undo());
    EXPECT_EQ(point("I1").stage, PointStage::Untouched);
    EXPECT_EQ(point("I2").stage, PointStage::Left);
    EXPECT_EQ(refusal(book->undo()), ErrorKind::NothingToUndo);
    EXPECT_EQ(refusal(theirs->redo()), ErrorKind::NothingToUndo);
    need(theirs->undo());
    need(book->catchUp());
    EXPECT_EQ(point("I2").stage, PointStage::Untouched);
}

TEST_F(Seats, ASpecRevisedAtTheOtherIsKnownWithItsReadings)
{
    const SpecId second = need(reviseSpec(*office, tractor.engine, SpecSubject::IntakeLash, lashText("0.60 ± 0.05 mm")));
    need(theirs->logReading(reading("I1", Phase::AsLeft, "0.60 mm")));
    need(book->catchUp());
    ASSERT_TRUE(point("I1").left);
    EXPECT_EQ(point("I1").left->reading.judgedBy, second);
    EXPECT_EQ(point("I1").left->verdict, Verdict::Inside);
    left("I2", "0.60 mm");
    EXPECT_EQ(point("I2").left->reading.judgedBy, second);
}

TEST_F(Seats, APersonWhoCameAtTheOtherIsKnown)
{
    const PersonId anouk = need(addPerson(*office, "A.V.", "Anouk"));
    theirs->setWho(anouk);
    need(theirs->openNut(at("I1")));
    need(book->catchUp());
    ASSERT_TRUE(book->state().frame->person(anouk));
    EXPECT_EQ(book->state().frame->person(anouk)->initials, "A.V.");
}

TEST_F(Seats, AnotherJobsActsAreNotTold)
{
    const NewVehicle other = need(addVehicle(*garage, tractorText()));
    const JobId job2 = need(openJob(*garage, other.vehicle, other.engine, builtInSheets().front(), "Other"));
    const auto book2 = need(JobBook::open(*garage, job2));
    book2->setWho(marta);
    int told = 0;
    QObject::connect(book.get(), &JobBook::changed, [&] { ++told; });
    need(book2->confirmCrank(degrees(0)));
    EXPECT_EQ(told, 0);
    EXPECT_FALSE(book->state().crank);
}

TEST_F(Seats, BothLoggingInTurnAgree)
{
    for (const std::string_view name : {"I1", "E1", "I2", "E2"}) {
        left(name, "0.35 mm");
        need(theirs->openNut(at(name)));
        need(book->logReading(reading(name, Phase::AsLeft, "0.36 mm")));
    }
    need(theirs->catchUp());
    EXPECT_EQ(book->state().acts, theirs->state().acts);
    EXPECT_EQ(book->state().points, theirs->state().points);
    EXPECT_EQ(actsInFile(), 12U);
}

TEST_F(Seats, BothLeavingOnePointAreToldOfIt)
{
    need(theirs->logReading(reading("I1", Phase::AsLeft, "0.33 mm")));
    left("I1", "0.30 mm");
    need(theirs->catchUp());
    for (const JobBook *station : {book.get(), theirs.get()}) {
        const PointState &now = station->state().point(at("I1"));
        ASSERT_TRUE(now.leftByTwo);
        EXPECT_EQ(now.leftByTwo->station, "office");
        EXPECT_EQ(now.leftByTwo->reading.value, length("0.33 mm"));
        EXPECT_EQ(now.left->reading.value, length("0.30 mm"));
        EXPECT_FALSE(now.settled());
    }
    need(theirs->keepAsLeft(at("I1"), "we have talked"));
    need(book->catchUp());
    EXPECT_FALSE(point("I1").leftByTwo);
    EXPECT_TRUE(point("I1").settled());
    EXPECT_EQ(refusal(book->keepAsLeft(at("I1"), "")), ErrorKind::NothingToKeep);
}

TEST_F(Seats, ARuleOrAToolOfTheOtherIsKnown)
{
    const ToolId dial = need(addGauge(*office, {ToolKind::DialGauge, "Dial", "0.015 mm", "0.01 mm"}));
    need(setDecisionRule(*office, DecisionRule::WithUncertainty));
    need(book->catchUp());
    book->setTool(dial);
    ASSERT_TRUE(book->tool());
    left("I1", "0.30 mm");
    EXPECT_TRUE(point("I1").left->reading.uncertainty);
}

TEST_F(Seats, AnEngineMovedAtTheOtherTakesItsJobAlong)
{
    left("I1", "0.30 mm");
    need(moveEngine(*office, tractor.engine, std::nullopt));
    need(book->catchUp());
    EXPECT_NE(book->state().frame->engine.vehicle, tractor.vehicle);
    EXPECT_EQ(book->state().frame->vehicle.id, tractor.vehicle);
    left("I2", "0.30 mm");
    EXPECT_EQ(point("I2").stage, PointStage::Left);
}

} // namespace stations_tests
} // namespace asleft
