// An act that could not be committed has changed nothing, and doing it again stores it once.
#include "support.h"

#include <filesystem>

namespace asleft {
namespace failed_commit_tests {

class FailedCommit : public BookTest {
protected:
    void renameAway() { std::filesystem::rename(path, inFolder("elsewhere.asleft")); }
    void renameBack() { std::filesystem::rename(inFolder("elsewhere.asleft"), path); }
};

TEST_F(FailedCommit, ChangesNothingAndIsStoredOnceWhenDoneAgain)
{
    found("I1", "0.20 mm");
    int told = 0;
    QObject::connect(book.get(), &JobBook::changed, [&] { ++told; });
    QObject::connect(garage.get(), &Garage::changed, [&] { ++told; });
    const JobState before = book->state();
    renameAway();
    EXPECT_EQ(refusal(book->openNut(at("I1"))), ErrorKind::GarageMoved);
    EXPECT_EQ(book->state().acts, before.acts);
    EXPECT_EQ(book->state().points, before.points);
    EXPECT_EQ(told, 0);

    renameBack();
    EXPECT_EQ(actsInFile(), 1U);
    clock->set({9'000'000});
    need(book->openNut(at("I1")));
    EXPECT_EQ(point("I1").stage, PointStage::NutOpen);
    EXPECT_EQ(told, 2);
    EXPECT_EQ(actsInFile(), 2U);
    EXPECT_EQ(book->state().acts.back().what.uid, "bench-2") << "the uid it had the first time";
    left("I1", "0.30 mm");
    EXPECT_EQ(book->state().acts.back().what.uid, "bench-3");
}

TEST_F(FailedCommit, SomethingElseDoneInsteadHasItsOwnUid)
{
    renameAway();
    EXPECT_FALSE(book->openNut(at("I1")).has_value());
    renameBack();
    need(book->openNut(at("I2")));
    EXPECT_EQ(book->state().acts.back().what.uid, "bench-2");
    need(book->openNut(at("I1")));
    EXPECT_EQ(book->state().acts.back().what.uid, "bench-3") << "a new act, not the failed one";
    EXPECT_EQ(actsInFile(), 2U);
}

TEST_F(FailedCommit, OfACrankConfirmationOrCautionsSaysNothing)
{
    renameAway();
    EXPECT_EQ(refusal(book->confirmCrank(degrees(0))), ErrorKind::GarageMoved);
    EXPECT_FALSE(book->session().crankConfirmed);
    EXPECT_EQ(refusal(book->readTurningCautions()), ErrorKind::GarageMoved);
    EXPECT_FALSE(book->session().turningCautionsRead);
    renameBack();
    need(book->confirmCrank(degrees(0)));
    EXPECT_TRUE(book->session().crankConfirmed);
}

/// A commit that reported a failure may be on disk all the same. Another program at the same computer, with the same uids, stands for that.
class OnDiskAllTheSame : public FailedCommit {
protected:
    /// Fails here, and is stored there; then both are the same act.
    template <class Doing>
    void failHereStoreThere(Doing doing)
    {
        renameAway();
        EXPECT_EQ(refusal(doing(*book)), ErrorKind::GarageMoved);
        renameBack();
        const auto uids = std::make_shared<ScriptedUids>("bench");
        for (std::size_t made = book->state().acts.size(); made > 0; --made)
            uids->next();
        const auto twin = need(Garage::open(path, {clock, uids, "bench"}));
        const auto theirs = bookOf(*twin);
        theirs->setWho(marta);
        need(doing(*theirs));
    }
};

TEST_F(OnDiskAllTheSame, AReadingDoneAgainIsStoredOnce)
{
    found("I1", "0.20 mm");
    const auto left = [&](JobBook &at) { return at.logReading(reading("I1", Phase::AsLeft, "0.30 mm")); };
    failHereStoreThere(left);
    clock->set({9'000'000});
    need(left(*book));
    EXPECT_EQ(actsInFile(), 2U);
    EXPECT_EQ(book->state().acts.back().what.uid, "bench-2");
}

TEST_F(OnDiskAllTheSame, AlsoWhereItWasReadMeanwhile)
{
    const auto felt = [&](JobBook &at) { return at.logReading(reading("I1", Phase::AsFound, "0.30 mm")); };
    failHereStoreThere(felt);
    need(book->catchUp());
    EXPECT_EQ(point("I1").stage, PointStage::Found);
    need(felt(*book));
    EXPECT_EQ(actsInFile(), 1U);
}

TEST_F(OnDiskAllTheSame, UndoTakesBackOneActOnly)
{
    found("I1", "0.20 mm");
    left("I2", "0.30 mm");
    const auto undone = [](JobBook &at) { return at.undo(); };
    failHereStoreThere(undone);
    need(undone(*book));
    EXPECT_EQ(actsInFile(), 3U);
    EXPECT_EQ(point("I2").stage, PointStage::Untouched);
    EXPECT_EQ(point("I1").stage, PointStage::Found) << "only what was to be taken back";
    need(book->undo());
    EXPECT_EQ(point("I1").stage, PointStage::Untouched);
}

TEST_F(OnDiskAllTheSame, RedoBringsBackOneActOnly)
{
    found("I1", "0.20 mm");
    left("I2", "0.30 mm");
    need(book->undo());
    need(book->undo());
    const auto redone = [](JobBook &at) { return at.redo(); };
    failHereStoreThere(redone);
    need(redone(*book));
    EXPECT_EQ(point("I1").stage, PointStage::Found);
    EXPECT_EQ(point("I2").stage, PointStage::Untouched);
}

TEST_F(OnDiskAllTheSame, ASheetIsStoredOnce)
{
    const std::vector<SheetEntry> sheet{{.point = at("I1"), .left = reading("I1", Phase::AsLeft, "0.30 mm")},
                                        {.point = at("I4"), .left = reading("I4", Phase::AsLeft, "0.31 mm")}};
    const auto typed = [&](JobBook &at) { return at.logSheet(sheet); };
    failHereStoreThere(typed);
    clock->set({9'000'000});
    const ActSeq last = need(typed(*book));
    EXPECT_EQ(actsInFile(), 5U) << "a plan, two places, two readings";
    EXPECT_EQ(book->state().acts.back().seq, last);
}

TEST_F(FailedCommit, OfASheetChangesNothingAndIsStoredOnceWhenDoneAgain)
{
    need(book->choosePlan(book->proposedPlan()));
    const std::vector<SheetEntry> sheet{{.point = at("I1"), .left = reading("I1", Phase::AsLeft, "0.30 mm")},
                                        {.point = at("I4"), .left = reading("I4", Phase::AsLeft, "0.31 mm")}};
    int told = 0;
    QObject::connect(book.get(), &JobBook::changed, [&] { ++told; });
    const JobState before = book->state();
    renameAway();
    EXPECT_EQ(refusal(book->logSheet(sheet)), ErrorKind::GarageMoved);
    EXPECT_EQ(book->state().acts, before.acts);
    EXPECT_EQ(book->state().points, before.points);
    EXPECT_EQ(told, 0);
    renameBack();
    EXPECT_EQ(actsInFile(), 1U) << "not even a part of it";

    clock->set({9'000'000});
    need(book->logSheet(sheet));
    EXPECT_EQ(told, 1);
    const auto &acts = book->state().acts;
    ASSERT_EQ(acts.size(), 5U);
    for (std::size_t i = 1; i < acts.size(); ++i)
        EXPECT_EQ(acts[i].what.uid, "bench-" + std::to_string(i + 1)) << "the uids they had the first time";
}

TEST_F(FailedCommit, AnotherSheetHasItsOwnUids)
{
    need(book->choosePlan(book->proposedPlan()));
    std::vector<SheetEntry> sheet{{.point = at("I1"), .left = reading("I1", Phase::AsLeft, "0.30 mm")}};
    renameAway();
    EXPECT_FALSE(book->logSheet(sheet).has_value());
    renameBack();
    EXPECT_TRUE(book->logSheet(sheet, Moment{5}).has_value()) << "done at another time";
    EXPECT_EQ(book->state().acts.back().what.uid, "bench-5");
    EXPECT_EQ(book->state().acts.back().what.at, Moment{5});
    EXPECT_EQ(actsInFile(), 3U);
}

/// What the session knows goes into every reading of a sheet.
TEST_F(FailedCommit, ASheetOfAnotherConditionIsAnotherSheet)
{
    need(book->choosePlan(book->proposedPlan()));
    const std::vector<SheetEntry> sheet{{.point = at("I1"), .left = reading("I1", Phase::AsLeft, "0.30 mm")}};
    renameAway();
    EXPECT_FALSE(book->logSheet(sheet).has_value());
    renameBack();
    book->setCondition(EngineCondition::Hot);
    need(book->logSheet(sheet));
    EXPECT_EQ(point("I1").left->reading.condition, EngineCondition::Hot);
    EXPECT_EQ(point("I1").left->verdict, Verdict::NotComparable);
}

TEST_F(FailedCommit, ASheetWithoutItsTimeIsAnotherSheet)
{
    need(book->choosePlan(book->proposedPlan()));
    const std::vector<SheetEntry> sheet{{.point = at("I1"), .left = reading("I1", Phase::AsLeft, "0.30 mm")}};
    renameAway();
    EXPECT_FALSE(book->logSheet(sheet, Moment{5}).has_value());
    renameBack();
    need(book->logSheet(sheet));
    EXPECT_EQ(point("I1").left->at, clock->now());
}

TEST_F(FailedCommit, OfAThingStoresAndTellsNothing)
{
    int told = 0;
    QObject::connect(garage.get(), &Garage::changed, [&] { ++told; });
    renameAway();
    EXPECT_EQ(refusal(addPerson(*garage, "A.V.", "")), ErrorKind::GarageMoved);
    EXPECT_EQ(refusal(addVehicle(*garage, tractorText())), ErrorKind::GarageMoved);
    EXPECT_EQ(refusal(reviseSpec(*garage, tractor.engine, SpecSubject::IntakeLash, lashText("0.5 mm"))), ErrorKind::GarageMoved);
    EXPECT_EQ(told, 0);
    renameBack();
    EXPECT_EQ(need(people(*garage)).size(), 2U);
    EXPECT_EQ(need(vehicles(*garage)).size(), 1U);
    EXPECT_EQ(need(specs(*garage, tractor.engine)).size(), 2U);
    need(addPerson(*garage, "A.V.", ""));
    EXPECT_EQ(told, 1);
}

} // namespace failed_commit_tests
} // namespace asleft
