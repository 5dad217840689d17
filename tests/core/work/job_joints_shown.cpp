// What was shown and is no longer so, and what is taken back down to the target.
#include "joint_support.h"

namespace asleft {
namespace job_joints_shown_tests {

class JointShown : public JointTest {
protected:
    /// What the wrench was shown to be set to.
    [[nodiscard]] static TickEntry setTo(TickEntry entry, std::string_view setting)
    {
        entry.setting = typedTorque(setting);
        return entry;
    }
    /// To a rule of its own, so that 25 N·m are asked where 32 were shown.
    void revise(JointId id, Garage &by)
    {
        JointText changed = rowText(2);
        changed.target = "25 ± 2 N·m";
        need(reviseJoint(by, id, tractor.engine, changed));
    }
    const Error changed{ErrorKind::JointChanged, {"Thermostat housing"}};
};

TEST_F(JointShown, ARevisionMadeElsewhereIsNotTickedUnseen)
{
    const auto office = openedBy("office");
    TickEntry tick = with(bracket, {{1, 0, 1}}, large);
    tick.revision = 1;
    LoosenEntry loosen{.joint = bracket, .fasteners = {1}, .revision = 1};
    revise(bracket, *office);
    EXPECT_EQ(book->tick(tick).error(), changed);
    EXPECT_EQ(book->loosen(loosen).error(), changed);
    EXPECT_EQ(actsInFile(), 0U);
    EXPECT_EQ(jointInHand(book->state(), bracket).revision, 2) << "seen now";
    tick.revision = loosen.revision = 2;
    need(book->loosen(loosen));
    need(book->tick(tick));
    EXPECT_EQ(lastTicks().setting->value, torque("25"));
}

TEST_F(JointShown, ARevisionInHandStaysTheOneThatIsShown)
{
    TickEntry tick = with(bracket, {{1, 0, 1}}, large);
    tick.revision = 1;
    need(book->tick(tick));
    revise(bracket, *garage);
    tick.places = {{2, 0, 1}};
    need(book->tick(setTo(tick, "32")));
    EXPECT_EQ(lastTicks().revision, 1);
}

TEST_F(JointShown, ASettingThatIsNotTheOneReckonedIsRefused)
{
    EXPECT_EQ(book->tick(setTo(with(bracket, {{1, 0, 1}}, large), "25")).error(), changed);
    EXPECT_EQ(book->tick(setTo(with(bracket, {{1, 0, 1}}, large), "32000 kgf·cm")).error(), changed) << "another scale";
    EXPECT_EQ(book->tick(setTo(read(bracket, {{1, 0, 1}}, dial, "31"), "25")).error(), changed) << "what it has to show";
    EXPECT_EQ(actsInFile(), 0U);
    need(book->tick(setTo(with(bracket, {{1, 0, 1}}, large), "32.0")));
    need(book->tick(setTo(read(bracket, {{2, 0, 1}}, dial, "31"), "32")));
}

/// 23 lbf·ft is 31.18 N·m: a manual prints each system rounded for itself.
TEST_F(JointShown, AWrenchIsSetByTheTargetPrintedInItsOwnSystem)
{
    JointText text = rowText(2);
    text.name = "Flange";
    text.otherTarget = "23 ± 3 lbf·ft";
    const JointId flange = need(addJoint(*garage, tractor.engine, text));
    TorqueWrenchText inPounds = wrenchText("Pounds", "10", "80");
    inPounds.unit = TorqueUnit::PoundFoot;
    need(book->tick(with(flange, {next(flange)}, need(addTorqueWrench(*garage, inPounds)))));
    EXPECT_EQ(lastTicks().setting->value, torque("23 lbf·ft"));
    EXPECT_EQ(fastener(flange, 1).verdict(), Verdict::Inside);
    need(book->tick(with(flange, {next(flange)}, large)));
    EXPECT_EQ(lastTicks().setting->value, torque("32"));
}

/// 1 lbf·ft is 1.355 8 N·m.
TEST_F(JointShown, RoundedFiguresStayInTheBand)
{
    JointText text = rowText(2);
    text.name = "Sender";
    text.target = "32.04 - 32.06 N·m";
    const JointId sender = need(addJoint(*garage, tractor.engine, text));
    need(book->tick(with(sender, {next(sender)}, large)));
    EXPECT_GE(lastTicks().setting->value, torque("32.04"));
    EXPECT_LE(lastTicks().setting->value, torque("32.06"));
    EXPECT_EQ(fastener(sender, 1).verdict(), Verdict::Inside);
}

TEST_F(JointShown, ALineDoneByItsFastenersIsNotMarkedDone)
{
    need(addJointToJob(*garage, job, *book->state().frame->jointNow(bracket)));
    const auto &steps = book->state().frame->job.steps;
    const Step loosen = steps[steps.size() - 2];
    const Step tighten = steps.back();
    EXPECT_EQ(book->markStepDone(tighten.id).error(), (Error{ErrorKind::StepByFasteners, {"Thermostat housing"}}));
    EXPECT_EQ(actsInFile(), 0U);
    need(book->markStepDone(loosen.id));
    wholePass(bracket, large);
    EXPECT_TRUE(stepDone(book->state(), tighten));
}

TEST_F(JointShown, CalibratedAgainATickKeepsWhatWasKnownThen)
{
    clock->set({std::chrono::milliseconds(std::chrono::days(1)).count()});
    need(book->tick(with(bracket, {{1, 0, 1}}, large)));
    EXPECT_TRUE(lastTicks().calibrationOverdue);
    need(setCalibrationDue(*garage, large, "1971-01-01"));
    EXPECT_TRUE(fastener(bracket, 1).ticks.front().fact.calibrationOverdue);
    need(book->tick(with(bracket, {{2, 0, 1}}, large)));
    EXPECT_FALSE(lastTicks().calibrationOverdue);
}

TEST_F(JointShown, OverdueGoesByTheDayOfTheShop)
{
    clock->set({std::chrono::milliseconds(std::chrono::hours(20)).count()});
    need(book->tick(with(bracket, {{1, 0, 1}}, large)));
    EXPECT_FALSE(lastTicks().calibrationOverdue);
    liveIn("EAST-12");
    need(book->tick(with(bracket, {{2, 0, 1}}, large)));
    EXPECT_TRUE(lastTicks().calibrationOverdue) << "it is tomorrow there";
}

class JointTarget : public JointShown {
protected:
    /// The places the last act took back.
    [[nodiscard]] const std::vector<TickSlot> &takenBack() const
    {
        return std::get<UntickedFact>(book->state().acts.back().what.fact).places;
    }
    /// The bearing cap, tightened to the end.
    void tightenCap()
    {
        need(book->tick({.joint = onward, .places = restOf(onward), .how = TickHow::ByHand}));
        wholePass(onward, large);
        need(book->tick({.joint = onward, .places = restOf(onward), .how = TickHow::ByAngle}));
        need(book->tick({.joint = onward, .places = restOf(onward), .how = TickHow::ByAngle}));
    }
    static JointText onwardText()
    {
        JointText text = rowText(2);
        text.name = "Head";
        text.passes = "finger, target, +45°, +45°";
        return text;
    }
    JointId onward = need(addJoint(*garage, tractor.engine, onwardText()));
};

TEST_F(JointTarget, IsTakenBackWithAllOnTopOfIt)
{
    EXPECT_EQ(book->untickTarget(onward, 1).error(), (Error{ErrorKind::NotTicked, {"1"}}));
    EXPECT_EQ(refusal(book->untickTarget(onward, 3)), ErrorKind::FastenerUnknown);
    EXPECT_EQ(refusal(book->untickTarget(JointId(99), 1)), ErrorKind::WrongJob);
    tightenCap();
    const std::size_t before = actsInFile();
    need(book->untickTarget(onward, 1));
    EXPECT_EQ(actsInFile(), before + 1) << "one act";
    EXPECT_EQ(takenBack(), (std::vector<TickSlot>{{1, 1, 1}, {1, 2, 1}, {1, 3, 1}}));
    EXPECT_EQ(next(onward), (TickSlot{1, 1, 1}));
    EXPECT_EQ(fastener(onward, 1).ticks.size(), 1U) << "finger-tight it is still";
    EXPECT_EQ(fastener(onward, 2).ticks.size(), 4U);
    EXPECT_EQ(refusal(book->untickTarget(onward, 1)), ErrorKind::NotTicked);
    need(book->undo());
    EXPECT_EQ(fastener(onward, 1).stage, FastenerStage::Tight);
}

TEST_F(JointTarget, OfAReadWrenchIsTheLastRoundAtIt)
{
    wholePass(cover, small);
    wholePass(cover, large);
    need(book->tick(with(cover, {next(cover)}, large)));
    const int first = lastTicks().ticks.front().place.fastener;
    need(book->untickTarget(cover, first));
    EXPECT_EQ(takenBack(), (std::vector<TickSlot>{{first, 2, 1}}));
    need(book->untickTarget(cover, first));
    EXPECT_EQ(takenBack(), (std::vector<TickSlot>{{first, 1, 1}}));
    EXPECT_EQ(refusal(book->untickTarget(cover, first)), ErrorKind::NotTicked) << "half of it decides nothing";
}

TEST_F(JointTarget, DoneByFeelIsNotTakenBackAsOneThatWasMeasured)
{
    need(book->tick(byFeel(bracket, {{1, 0, 1}})));
    EXPECT_EQ(refusal(book->untickTarget(bracket, 1)), ErrorKind::NotTicked);
}

class JointBroughtBack : public JointShown {
protected:
    std::unique_ptr<Garage> office = openedBy("office");
    std::unique_ptr<JobBook> theirs = bookOf(*office);
    JointBroughtBack() { theirs->setWho(tom); }
    void expectKeptOut(const char *what)
    {
        const std::size_t before = actsInFile();
        EXPECT_EQ(book->redo().error(), (Error{ErrorKind::RestedOn, {what}}));
        EXPECT_EQ(actsInFile(), before);
    }
};

TEST_F(JointBroughtBack, ATickIsNotOverWorkDoneSince)
{
    need(book->tick(with(bracket, {{1, 0, 1}}, large)));
    need(book->undo());
    need(theirs->loosen({.joint = bracket, .fasteners = {1}}));
    expectKeptOut("Thermostat housing 1");
    need(theirs->undo());
    need(book->redo());
    EXPECT_EQ(fastener(bracket, 1).ticks.size(), 1U) << "what was taken back hinders nobody";
}

TEST_F(JointBroughtBack, ABeginningIsNotUnderTheTicksMadeSince)
{
    wholePass(bracket, large);
    revise(bracket, *garage);
    need(book->beginJoint(bracket));
    need(book->undo());
    need(theirs->untick(bracket, 1));
    need(theirs->tick(with(bracket, {{1, 0, 1}}, large)));
    expectKeptOut("Thermostat housing 1");
    EXPECT_EQ(joint(bracket).revision, 1);
    EXPECT_TRUE(joint(bracket).progress.finished());
}

TEST_F(JointBroughtBack, ABeginningWithNothingDoneSinceIs)
{
    wholePass(bracket, large);
    revise(bracket, *garage);
    need(book->beginJoint(bracket));
    need(book->undo());
    need(book->redo());
    EXPECT_EQ(joint(bracket).revision, 2);
}

TEST_F(JointBroughtBack, ATickOfARevisionThatIsNoLongerWorkedByIsNot)
{
    need(book->tick(with(bracket, {{1, 0, 1}}, large)));
    need(book->undo());
    revise(bracket, *office);
    expectKeptOut("Thermostat housing 1");
    EXPECT_TRUE(fastener(bracket, 1).ticks.empty());
}

TEST_F(JointBroughtBack, WorkOnAnotherJointDoesNotHinder)
{
    need(book->tick(with(bracket, {{1, 0, 1}}, large)));
    need(book->undo());
    need(theirs->tick(with(cover, {{1, 0, 1}}, small)));
    need(theirs->noteFinding(FastenerSubject{bracket, {1}}, "rust"));
    need(book->redo());
    EXPECT_EQ(fastener(bracket, 1).ticks.size(), 1U);
}

} // namespace job_joints_shown_tests
} // namespace asleft
