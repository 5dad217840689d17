// Work on joints that was taken back, done again after a failure, or done at two computers.
#include "joint_support.h"

namespace asleft {
namespace job_joints_again_tests {

class JointUndo : public JointTest {};

TEST_F(JointUndo, TakesBackActByActAndBringsThemBack)
{
    need(book->loosen({.joint = bracket, .fasteners = {1, 2}, .how = FoundHow::LooseByFeel}));
    const auto loosened = book->state().joints;
    need(book->tick(with(bracket, {next(bracket)}, large)));
    need(book->tick(byFeel(bracket, {next(bracket)})));
    const auto ticked = book->state().joints;
    need(book->acceptJoint(bracket, AcceptedWhat::ByFeel, {1, 2}, "why"));
    need(book->untick(bracket, 1));
    need(book->noteFinding(FastenerSubject{bracket, {}}, "rust"));
    const auto all = book->state().joints;
    need(book->undo());
    EXPECT_TRUE(book->state().findings.empty());
    need(book->undo());
    need(book->undo());
    EXPECT_TRUE(sameJoints(book->state().joints, ticked));
    need(book->undo());
    need(book->undo());
    EXPECT_TRUE(sameJoints(book->state().joints, loosened));
    need(book->undo());
    EXPECT_FALSE(joint(bracket).begun);
    EXPECT_EQ(refusal(book->undo()), ErrorKind::NothingToUndo);
    for (int i = 0; i < 6; ++i)
        need(book->redo());
    EXPECT_TRUE(sameJoints(book->state().joints, all));
    EXPECT_EQ(book->state().findings.size(), 1U);
    EXPECT_TRUE(sameJoints(bookOf(*garage)->state().joints, all));
}

TEST_F(JointUndo, OfAWholePassIsOneStep)
{
    wholePass(cover, small);
    need(book->undo());
    EXPECT_EQ(restOf(cover).size(), 12U);
}

TEST_F(JointUndo, OfABeginningBringsTheTicksBack)
{
    wholePass(bracket, large);
    need(book->beginJoint(bracket));
    need(book->undo());
    EXPECT_TRUE(joint(bracket).progress.finished());
}

class JointStations : public JointTest {
protected:
    std::unique_ptr<Garage> office = openedBy("office");
    std::unique_ptr<JobBook> theirs = bookOf(*office);
    JointStations() { theirs->setWho(tom); }
};

TEST_F(JointStations, TwoWorkOnOneJointWithoutDoingAFastenerTwice)
{
    const TickSlot first = next(cover);
    need(theirs->tick(with(cover, {first}, small)));
    EXPECT_EQ(next(cover), first) << "not seen yet";
    EXPECT_EQ(refusal(book->tick(with(cover, {first}, small))), ErrorKind::TickOutOfTurn);
    EXPECT_NE(next(cover), first) << "seen now";
    EXPECT_EQ(actsInFile(), 1U);
    wholePass(cover, small);
    need(theirs->tick(with(cover, {next(cover)}, large)));
    need(theirs->untick(cover, first.fastener));
    need(book->catchUp());
    EXPECT_TRUE(sameJoints(book->state().joints, theirs->state().joints));
}

TEST_F(JointStations, ATickOfTheOtherIsTakenBackByAnybody)
{
    need(theirs->tick(with(bracket, {{1, 0, 1}}, large)));
    need(book->untick(bracket, 1));
    EXPECT_TRUE(fastener(bracket, 1).ticks.empty());
    EXPECT_EQ(refusal(theirs->untick(bracket, 1)), ErrorKind::NotTicked);
}

TEST_F(JointStations, WhatRestsOnATickIsNamed)
{
    need(book->tick(byFeel(bracket, {{1, 0, 1}})));
    need(theirs->acceptJoint(bracket, AcceptedWhat::ByFeel, {1}, "it is tight"));
    need(book->catchUp());
    EXPECT_EQ(book->undo().error(), (Error{ErrorKind::RestedOn, {"Thermostat housing 1"}}));
    need(theirs->beginJoint(bracket));
    EXPECT_EQ(book->undo().error().kind, ErrorKind::RestedOn);
    EXPECT_EQ(fastener(bracket, 1).ticks.size(), 0U);
}

TEST_F(JointStations, ARevisionOfTheOtherIsKnownWithItsTicks)
{
    JointText changed = rowText(2);
    changed.target = "25 ± 2 N·m";
    need(reviseJoint(*office, bracket, tractor.engine, changed));
    need(theirs->tick(with(bracket, {{1, 0, 1}}, large)));
    need(book->tick(with(bracket, {{2, 0, 1}}, large)));
    EXPECT_EQ(lastTicks().revision, 2);
    EXPECT_EQ(lastTicks().setting->value, torque("25"));
    EXPECT_TRUE(joint(bracket).progress.finished());
}

/// A commit that reported a failure may be on disk all the same. Another program at the same computer, with the same uids, stands for that.
class JointAgain : public JointTest {
protected:
    void renameAway() { std::filesystem::rename(path, inFolder("elsewhere.asleft")); }
    void renameBack() { std::filesystem::rename(inFolder("elsewhere.asleft"), path); }
    template <class Doing>
    void failHere(Doing doing)
    {
        renameAway();
        EXPECT_EQ(refusal(doing(*book)), ErrorKind::GarageMoved);
        renameBack();
    }
    /// Fails here, and is stored there; then both are the same act.
    template <class Doing>
    void failHereStoreThere(Doing doing)
    {
        failHere(doing);
        const auto uids = std::make_shared<ScriptedUids>("bench");
        for (std::size_t made = book->state().acts.size(); made > 0; --made)
            uids->next();
        const auto twin = need(Garage::open(path, {clock, uids, "bench"}));
        const auto other = bookOf(*twin);
        other->setWho(marta);
        need(doing(*other));
    }
    /// Done again it is there once, whether or not it was read in between.
    template <class Doing>
    void expectStoredOnce(Doing doing, bool readBetween)
    {
        const std::size_t before = actsInFile();
        failHereStoreThere(doing);
        if (readBetween)
            need(book->catchUp());
        clock->set({2'000'000});
        const ActSeq seq = need(doing(*book));
        EXPECT_EQ(actsInFile(), before + 1);
        EXPECT_EQ(book->state().acts.back().seq, seq);
    }
};

TEST_F(JointAgain, AFailedTickChangesNothingAndKeepsItsUid)
{
    const auto tick = [&](JobBook &at) { return at.tick(with(bracket, {{1, 0, 1}}, large)); };
    int told = 0;
    QObject::connect(book.get(), &JobBook::changed, [&] { ++told; });
    failHere(tick);
    EXPECT_EQ(told, 0);
    EXPECT_TRUE(fastener(bracket, 1).ticks.empty());
    EXPECT_EQ(actsInFile(), 0U);
    need(tick(*book));
    EXPECT_EQ(told, 1);
    EXPECT_EQ(book->state().acts.back().what.uid, "bench-1") << "the uid it had the first time";
}

TEST_F(JointAgain, AnotherTickHasItsOwnUid)
{
    failHere([&](JobBook &at) { return at.tick(with(bracket, {{1, 0, 1}}, large)); });
    need(book->tick(with(bracket, {{2, 0, 1}}, large)));
    EXPECT_EQ(book->state().acts.back().what.uid, "bench-2");
}

class JointOnDisk : public JointAgain, public testing::WithParamInterface<bool> {};
INSTANTIATE_TEST_SUITE_P(ReadInBetweenOrNot, JointOnDisk, testing::Bool());

TEST_P(JointOnDisk, ATickIsStoredOnce)
{
    expectStoredOnce([&](JobBook &at) { return at.tick(with(cover, {{1, 0, 1}, {2, 0, 1}}, small)); }, GetParam());
    EXPECT_EQ(fastener(cover, 2).ticks.size(), 1U);
}

TEST_P(JointOnDisk, TheLastTickOfAPassIsStoredOnce)
{
    need(book->tick(with(cover, restOf(cover), small)));
    need(book->tick(with(cover, restOf(cover), large)));
    const auto rest = restOf(cover);
    expectStoredOnce([&](JobBook &at) { return at.tick(with(cover, rest, large)); }, GetParam());
    EXPECT_TRUE(joint(cover).progress.finished());
}

TEST_P(JointOnDisk, LooseningIsStoredOnce)
{
    expectStoredOnce([&](JobBook &at) { return at.loosen({.joint = cover, .fasteners = {1}}); }, GetParam());
}

TEST_P(JointOnDisk, AnAcceptanceIsStoredOnce)
{
    need(book->tick(byFeel(bracket, restOf(bracket))));
    expectStoredOnce([&](JobBook &at) { return at.acceptJoint(bracket, AcceptedWhat::ByFeel, {1, 2}, "why"); }, GetParam());
}

TEST_P(JointOnDisk, WhatWasFittedIsStoredOnce)
{
    expectStoredOnce([&](JobBook &at) { return at.sayFitted(cap, {1, 2}, Fitted::New); }, GetParam());
}

TEST_P(JointOnDisk, ABeginningIsStoredOnce)
{
    need(book->tick(with(bracket, restOf(bracket), large)));
    expectStoredOnce([&](JobBook &at) { return at.beginJoint(bracket); }, GetParam());
}

TEST_P(JointOnDisk, AFindingIsStoredOnce)
{
    expectStoredOnce([&](JobBook &at) { return at.noteFinding(FastenerSubject{bracket, {1}}, "rust"); }, GetParam());
    EXPECT_EQ(book->state().findings.size(), 1U);
}

TEST_F(JointAgain, TakingATickBackTakesOneBack)
{
    need(book->tick(with(cover, restOf(cover), small)));
    need(book->tick(with(cover, restOf(cover), large)));
    expectStoredOnce([&](JobBook &at) { return at.untick(cover, 3); }, false);
    EXPECT_EQ(next(cover), (TickSlot{3, 1, 1}));
    need(book->untick(cover, 3));
    EXPECT_EQ(next(cover), (TickSlot{3, 0, 1})) << "said once more it is the one before";
}

TEST_F(JointAgain, TakingTheTargetBackIsStoredOnce)
{
    need(book->tick(with(cover, restOf(cover), small)));
    need(book->tick(with(cover, restOf(cover), large)));
    need(book->tick(with(cover, restOf(cover), large)));
    expectStoredOnce([&](JobBook &at) { return at.untickTarget(cover, 3); }, false);
    EXPECT_EQ(next(cover), (TickSlot{3, 2, 1}));
}

TEST_F(JointAgain, TakingATickOfAnotherBackIsAnotherAct)
{
    need(book->tick(with(cover, restOf(cover), small)));
    failHereStoreThere([&](JobBook &at) { return at.untick(cover, 3); });
    need(book->untick(cover, 4));
    EXPECT_TRUE(fastener(cover, 3).ticks.empty());
    EXPECT_TRUE(fastener(cover, 4).ticks.empty());
    EXPECT_EQ(actsInFile(), 3U);
}

TEST_F(JointAgain, OfAThingStoresAndTellsNothing)
{
    int told = 0;
    QObject::connect(garage.get(), &Garage::changed, [&] { ++told; });
    JointText other = rowText(2);
    other.name = "Other";
    const Joint stored = need(joints(*garage, tractor.engine)).front();
    renameAway();
    EXPECT_EQ(refusal(addJoint(*garage, tractor.engine, other)), ErrorKind::GarageMoved);
    EXPECT_EQ(refusal(reviseJoint(*garage, bracket, tractor.engine, other)), ErrorKind::GarageMoved);
    EXPECT_EQ(refusal(addJointToJob(*garage, job, stored)), ErrorKind::GarageMoved);
    EXPECT_EQ(refusal(addTorqueWrench(*garage, wrenchText("W", "5", "25"))), ErrorKind::GarageMoved);
    EXPECT_EQ(told, 0);
    renameBack();
    EXPECT_EQ(need(joints(*garage, tractor.engine)).size(), 3U);
    EXPECT_EQ(need(tools(*garage)).size(), 3U);
}

} // namespace job_joints_again_tests
} // namespace asleft
