// Where the crank stands, and what keeps it from being turned.
#include "support.h"

namespace asleft {
namespace crank_tests {

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
    EXPECT_EQ(plan.source, "Manual");
    EXPECT_EQ(plan.page, "6-60");
    EXPECT_EQ(plan.positions.size(), 1U);
    EXPECT_EQ(plan.unreached.size(), 4U);
}

TEST_F(Crank, TheProposedPlanBeginsWhereTheCrankStands)
{
    need(book->confirmCrank(degrees(360)));
    const CrankPlan plan = book->proposedPlan();
    ASSERT_EQ(plan.positions.size(), 2U);
    EXPECT_EQ(plan.positions[0].crank, degrees(360));
    EXPECT_EQ(plan.positions[1].crank, degrees(0));
    EXPECT_TRUE(plan.unreached.empty());
    need(book->confirmCrank(std::nullopt));
    EXPECT_EQ(book->proposedPlan().positions[0].crank, degrees(0)) << "nobody knows where it stands";
}

TEST_F(Crank, TheChosenPlanStaysWhateverTheTableSaysLater)
{
    beginValveSet();
    const auto chosen = book->state().plan;
    need(reviseTable(*garage, tractor.engine, {{"1", CrankEvent::Compression, "IN 1"}}, {"Manual", "1"}));
    EXPECT_EQ(book->state().plan, chosen);
}

/// Two jobs at one engine.
class TwoJobs : public BookTest {
protected:
    std::unique_ptr<JobBook> other = openedOther();
    std::unique_ptr<JobBook> openedOther()
    {
        clock->forward(std::chrono::hours(1));
        auto opened =
            need(JobBook::open(*garage, need(openJob(*garage, tractor.vehicle, tractor.engine, builtInSheets().front(), "Head off"))));
        opened->setWho(tom);
        return opened;
    }
    TwoJobs() { beginValveSet(); }
};

TEST_F(TwoJobs, ANutOpenInTheOneKeepsTheOtherFromTurning)
{
    need(other->openNut(at("E2")));
    const auto turned = book->turnCrank(degrees(360));
    ASSERT_FALSE(turned.has_value());
    EXPECT_EQ(turned.error(), (Error{ErrorKind::NutStillOpen, {"E2", "Head off"}}));
    need(other->undo());
    need(book->turnCrank(degrees(360)));
}

TEST_F(TwoJobs, OnesOwnNutsAreNamedAlone)
{
    need(other->openNut(at("E2")));
    need(book->openNut(at("I1")));
    EXPECT_EQ(book->turnCrank(degrees(360)).error(), (Error{ErrorKind::NutStillOpen, {"I1"}}));
}

TEST_F(TwoJobs, ANutLockedInEitherIsLocked)
{
    need(other->openNut(at("E2")));
    left("E2", "0.40 mm");
    need(book->turnCrank(degrees(360)));
    EXPECT_EQ(other->state().point(at("E2")).stage, PointStage::NutOpen) << "that job is left as it was";
    need(other->openNut(at("E3")));
    need(other->logReading(reading("E3", Phase::AsLeft, "0.40 mm")));
    need(book->turnCrank(degrees(0)));
}

TEST_F(TwoJobs, ATurnIsNotBroughtBackOverTheOthersNut)
{
    need(book->turnCrank(degrees(360)));
    need(book->undo());
    need(other->openNut(at("E2")));
    EXPECT_EQ(refusal(book->redo()), ErrorKind::NutStillOpen);
    need(other->undo());
    need(book->redo());
    EXPECT_EQ(book->state().crank->crank, degrees(360));
}

TEST_F(TwoJobs, AnotherEnginesNutsDoNotMatter)
{
    const NewVehicle van = need(addVehicle(*garage, tractorText()));
    const auto theirs = need(JobBook::open(*garage, need(openJob(*garage, van.vehicle, van.engine, builtInSheets().front(), "Valves"))));
    theirs->setWho(tom);
    need(theirs->openNut(theirs->state().frame->engine.points.front().id));
    need(book->turnCrank(degrees(360)));
}

/// The stand holds many engines, and their jobs.
TEST_F(TwoJobs, JobsOfOtherEnginesDoNotHideAnOpenNut)
{
    need(other->openNut(at("E2")));
    need(moveEngine(*garage, tractor.engine, std::nullopt));
    const VehicleId stand = need(vehicles(*garage)).back().vehicle.id;
    const auto onStand = need(JobBook::open(*garage, need(openJob(*garage, stand, tractor.engine, builtInSheets().front(), "Rebuilt"))));
    onStand->setWho(tom);
    need(onStand->openNut(at("I3")));
    const EngineId spare = need(addEngine(*garage, std::nullopt, tractorText()));
    for (int count = 0; count < 25; ++count)
        need(openJob(*garage, stand, spare, builtInSheets().front(), "Valves"));
    EXPECT_EQ(book->turnCrank(degrees(360)).error(), (Error{ErrorKind::NutStillOpen, {"E2, I3", "Head off"}}));
}

TEST_F(TwoJobs, TheEngineHasMovedBetweenThem)
{
    need(other->openNut(at("E2")));
    const NewVehicle van = need(addVehicle(*garage, tractorText()));
    need(moveEngine(*garage, tractor.engine, van.vehicle));
    const auto third = need(JobBook::open(*garage, need(openJob(*garage, van.vehicle, tractor.engine, builtInSheets().front(), "Valves"))));
    third->setWho(marta);
    EXPECT_EQ(third->turnCrank(degrees(360)).error(), (Error{ErrorKind::NutStillOpen, {"E2", "Head off"}}));
}

/// A single with hydraulic tappets.
class BleedingDown : public BookTest {
protected:
    BleedingDown() : BookTest(hydraulicText())
    {
        need(reviseSpec(*garage, tractor.engine, SpecSubject::IntakeLash, lashText("1 ± 1/4 turn")));
        beginValveSet();
        need(book->logReading({.point = at("I1"), .phase = Phase::AsLeft, .specLeaf = true}));
    }
    void later(int minutes) { clock->forward(std::chrono::minutes(minutes)); }
};

TEST_F(BleedingDown, KeepsTheCrankWhereItIsUntilTheTimeIsOver)
{
    later(14);
    const auto turned = book->turnCrank(degrees(360));
    ASSERT_FALSE(turned.has_value());
    // 1 000 000 ms, and 15 minutes.
    EXPECT_EQ(turned.error(), (Error{ErrorKind::StillBleedingDown, {"1900000"}}));
    EXPECT_EQ(book->state().crank->crank, degrees(0));
    later(1);
    need(book->turnCrank(degrees(360)));
    EXPECT_EQ(book->state().crank->crank, degrees(360));
}

/// All jobs of an engine have one crank, and its tappets.
TEST_F(BleedingDown, InOneJobKeepsTheCrankOfAnother)
{
    const auto other =
        need(JobBook::open(*garage, need(openJob(*garage, tractor.vehicle, tractor.engine, builtInSheets().front(), "Head off"))));
    other->setWho(tom);
    need(other->confirmCrank(degrees(0)));
    need(other->readTurningCautions());
    EXPECT_EQ(refusal(other->turnCrank(degrees(360))), ErrorKind::StillBleedingDown);
    later(15);
    need(other->turnCrank(degrees(360)));
}

TEST_F(BleedingDown, MayBePassedOver)
{
    need(book->turnCrank(degrees(360), true));
    EXPECT_EQ(book->state().crank->crank, degrees(360));
}

TEST_F(BleedingDown, OnlyTheWaitIsPassedOver)
{
    need(book->openNut(at("E1")));
    EXPECT_EQ(refusal(book->turnCrank(degrees(360), true)), ErrorKind::NutStillOpen);
    need(book->undo());
    const auto again = bookOf(*garage);
    again->setWho(marta);
    EXPECT_EQ(refusal(again->turnCrank(degrees(360), true)), ErrorKind::CrankNotConfirmed);
    need(again->confirmCrank(degrees(0)));
    EXPECT_EQ(refusal(again->turnCrank(degrees(360), true)), ErrorKind::CautionsNotRead);
    need(again->readTurningCautions());
    EXPECT_EQ(refusal(again->turnCrank(degrees(360))), ErrorKind::StillBleedingDown) << "whoever is at the bench";
}

TEST_F(BleedingDown, KeepsATurnFromBeingBroughtBack)
{
    later(20);
    need(book->turnCrank(degrees(360)));
    need(book->undo());
    const auto office = openedBy("office");
    const auto theirs = bookOf(*office);
    theirs->setWho(tom);
    need(theirs->logReading({.point = at("E1"), .phase = Phase::AsLeft, .specLeaf = true}));
    EXPECT_EQ(refusal(book->redo()), ErrorKind::StillBleedingDown);
    later(15);
    need(book->redo());
    EXPECT_EQ(book->state().crank->crank, degrees(360));
}

} // namespace crank_tests
} // namespace asleft
