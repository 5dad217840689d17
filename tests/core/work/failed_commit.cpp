// An act that could not be committed has changed nothing, and doing it again stores it once.
#include "support.h"

#include <filesystem>

namespace asleft {
namespace {

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
    EXPECT_FALSE(book->sitting().crankConfirmed);
    EXPECT_EQ(refusal(book->readTurningCautions()), ErrorKind::GarageMoved);
    EXPECT_FALSE(book->sitting().turningCautionsRead);
    renameBack();
    need(book->confirmCrank(degrees(0)));
    EXPECT_TRUE(book->sitting().crankConfirmed);
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

} // namespace
} // namespace asleft
