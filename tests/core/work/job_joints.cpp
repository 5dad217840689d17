// Fasteners loosened, ticked and accepted at the Bench.
#include "joint_support.h"

namespace asleft {
namespace job_joints_tests {

class JobJoints : public JointTest {};

TickEntry throughAdapter(TickEntry entry, std::string_view e, std::int64_t angle)
{
    entry.fit = FitUsed{{}, {length(e).value, degrees(angle)}};
    return entry;
}

TEST_F(JobJoints, ACoverIsTightenedPassByPassWithWhatIsSetLogged)
{
    EXPECT_EQ(restOf(cover).size(), 12U);
    wholePass(cover, large);
    EXPECT_EQ(lastTicks().setting->value, torque("16"));
    EXPECT_TRUE(lastTicks().outOfRange) << "it begins at 20";
    EXPECT_EQ(lastTicks().tool, large);
    EXPECT_EQ(lastTicks().revision, 1);
    need(book->undo());
    wholePass(cover, small);
    EXPECT_EQ(lastTicks().setting->value, torque("16"));
    EXPECT_EQ(lastTicks().setting->unit, TorqueUnit::NewtonMetre);
    EXPECT_FALSE(lastTicks().outOfRange);
    EXPECT_FALSE(fastener(cover, 1).verdict()) << "half of it is not judged";

    EXPECT_EQ(next(cover).pass, 1);
    wholePass(cover, large);
    EXPECT_EQ(lastTicks().setting->value, torque("32"));
    EXPECT_FALSE(lastTicks().outOfRange);
    EXPECT_EQ(fastener(cover, 7).verdict(), Verdict::Inside);
    EXPECT_EQ(fastener(cover, 7).stage, FastenerStage::Partway);

    TickEntry moved = with(cover, {next(cover)}, large);
    moved.moved = true;
    need(book->tick(moved));
    EXPECT_TRUE(lastTicks().ticks.front().moved);
    wholePass(cover, large);
    EXPECT_EQ(next(cover).round, 2) << "one moved";
    wholePass(cover, large);
    EXPECT_TRUE(joint(cover).progress.finished());
    EXPECT_TRUE(joint(cover).settled(jointInHand(book->state(), cover)));
    EXPECT_TRUE(sameJoints(bookOf(*garage)->state().joints, book->state().joints));
}

TEST_F(JobJoints, OneActIsToldOnce)
{
    int bookTold = 0;
    int garageTold = 0;
    QObject::connect(book.get(), &JobBook::changed, [&] { ++bookTold; });
    QObject::connect(garage.get(), &Garage::changed, [&] { ++garageTold; });
    wholePass(cover, small);
    EXPECT_EQ(bookTold, 1);
    EXPECT_EQ(garageTold, 1);
}

/// T·L/(L + E·cos a): 32·400/440 = 29.09 (FAA AC 43.13-1B ch. 7).
TEST_F(JobJoints, AnAdapterChangesWhatIsSetUnlessItIsAcross)
{
    need(book->tick(throughAdapter(with(bracket, {next(bracket)}, large), "40 mm", 0)));
    EXPECT_EQ(lastTicks().setting->value, torque("29.1"));
    ASSERT_TRUE(lastTicks().fit);
    EXPECT_EQ(lastTicks().fit->fit.length, length("40 mm").value);
    EXPECT_EQ(lastTicks().lever, length("400 mm").value);
    EXPECT_EQ(fastener(bracket, 1).verdict(), Verdict::Inside) << "the fastener got 32";
    need(book->tick(throughAdapter(with(bracket, {next(bracket)}, large), "40 mm", 90)));
    EXPECT_EQ(lastTicks().setting->value, torque("32"));
    ASSERT_TRUE(lastTicks().fit) << "it sat there all the same";
    EXPECT_EQ(lastTicks().fit->fit.angle, degrees(90));
    EXPECT_EQ(fastener(bracket, lastTicks().ticks.empty() ? 1 : lastTicks().ticks.front().place.fastener).verdict(), Verdict::Inside);
}

TEST_F(JobJoints, AnAdapterThatCannotBeReckonedIsRefused)
{
    const TickEntry noLever = throughAdapter(with(bracket, {next(bracket)}, small), "40 mm", 0);
    EXPECT_EQ(book->tick(noLever).error(), (Error{ErrorKind::LeverMissing, {"Small"}}));
    EXPECT_EQ(refusal(book->tick(throughAdapter(with(bracket, {next(bracket)}, large), "390 mm", 180))), ErrorKind::AdapterReversed);
    EXPECT_EQ(refusal(book->tick(throughAdapter(with(bracket, {next(bracket)}, large), "2001 mm", 0))), ErrorKind::AdapterOutOfRange);
    TickEntry unknown = throughAdapter(with(bracket, {next(bracket)}, large), "40 mm", 0);
    unknown.fit->adapter = ToolId(99);
    EXPECT_EQ(refusal(book->tick(unknown)), ErrorKind::NotFound);
    unknown.fit->adapter = large;
    EXPECT_EQ(book->tick(unknown).error(), (Error{ErrorKind::ToolNotThat, {"Large"}}));
    unknown.fit->adapter = need(addFitting(*garage, {ToolKind::Adapter, "Crow-foot", "", "41 mm"}));
    EXPECT_EQ(book->tick(unknown).error(), (Error{ErrorKind::ToolNotThat, {"Crow-foot"}})) << "of another length";
    EXPECT_TRUE(book->state().acts.empty());
    need(book->tick(throughAdapter(with(bracket, {next(bracket)}, small), "40 mm", 90)));
    EXPECT_EQ(lastTicks().setting->value, torque("32")) << "across it takes no lever";
    EXPECT_TRUE(lastTicks().outOfRange);
}

TEST_F(JobJoints, CalibrationIsOverdueTheDayAfter)
{
    need(book->tick(with(bracket, {next(bracket)}, large)));
    EXPECT_FALSE(lastTicks().calibrationOverdue) << "that day it is still good";
    clock->set({std::chrono::milliseconds(std::chrono::days(1)).count()});
    need(book->tick(with(bracket, {next(bracket)}, large)));
    EXPECT_TRUE(lastTicks().calibrationOverdue);
    need(book->untick(bracket, 2));
    need(book->tick(read(bracket, {next(bracket)}, dial, "32")));
    EXPECT_FALSE(lastTicks().calibrationOverdue) << "nobody said when it is due";
}

/// U = 2·0.04·T/√3 (JCGM 100:2008, 4.3.7): 1.616 6 at 35, 1.339 5 at 29; through the adapter times 440/400.
TEST_F(JobJoints, AReadWrenchKeepsItsUncertaintyWhereTheShopDecidesWithIt)
{
    need(book->tick(read(bracket, {next(bracket)}, dial, "35")));
    EXPECT_EQ(lastTicks().reading, typedTorque("35"));
    EXPECT_FALSE(lastTicks().setting);
    EXPECT_FALSE(lastTicks().uncertainty);
    EXPECT_EQ(fastener(bracket, 1).verdict(), Verdict::Inside);
    need(setDecisionRule(*garage, DecisionRule::WithUncertainty));
    need(book->untick(bracket, 1));
    need(book->tick(read(bracket, {next(bracket)}, dial, "35")));
    ASSERT_TRUE(lastTicks().uncertainty);
    EXPECT_NEAR(toNewtonMetres(*lastTicks().uncertainty), 1.61658, 1e-5);
    EXPECT_EQ(fastener(bracket, 1).verdict(), Verdict::TooClose);
    need(book->tick(throughAdapter(read(bracket, {next(bracket)}, dial, "29"), "40 mm", 0)));
    EXPECT_NEAR(toNewtonMetres(*lastTicks().uncertainty), 1.33945 * 1.1, 1e-5);
    EXPECT_EQ(lastTicks().lever, length("400 mm").value);
    EXPECT_EQ(fastener(bracket, 2).verdict(), Verdict::Inside) << "31.9 at the fastener";
    need(book->beginJoint(bracket));
    need(book->tick(with(bracket, {next(bracket)}, large)));
    EXPECT_FALSE(lastTicks().uncertainty) << "what is set shows nothing";
}

TEST_F(JobJoints, AReadingOutsideTheMarkedRangeIsFlagged)
{
    need(book->tick(read(bracket, {next(bracket)}, dial, "9.9")));
    EXPECT_TRUE(lastTicks().outOfRange);
    EXPECT_EQ(fastener(bracket, 1).verdict(), Verdict::TooClose);
    need(book->tick(read(bracket, {next(bracket)}, dial, "10")));
    EXPECT_FALSE(lastTicks().outOfRange) << "its ends are inside";
    need(book->beginJoint(bracket));
    need(book->tick(read(bracket, {next(bracket)}, dial, "100")));
    EXPECT_FALSE(lastTicks().outOfRange);
    need(book->tick(read(bracket, {next(bracket)}, dial, "100.1")));
    EXPECT_TRUE(lastTicks().outOfRange);
}

TEST_F(JobJoints, ATickThatSaysTooLittleIsRefused)
{
    EXPECT_EQ(refusal(book->tick(with(bracket, {}, large))), ErrorKind::NothingToLog);
    EXPECT_EQ(book->tick(with(bracket, {{3, 0, 1}}, large)).error(), (Error{ErrorKind::FastenerUnknown, {"3"}}));
    TickEntry nothing = with(bracket, {next(bracket)}, large);
    nothing.tool.reset();
    EXPECT_EQ(refusal(book->tick(nothing)), ErrorKind::NotFound);
    EXPECT_EQ(refusal(book->tick(with(bracket, {next(bracket)}, ToolId(99)))), ErrorKind::NotFound);
    const ToolId leaves = need(addFeelerSet(*garage, "Leaves", "0.05", LengthUnit::Millimetre));
    EXPECT_EQ(book->tick(with(bracket, {next(bracket)}, leaves)).error(), (Error{ErrorKind::ToolNotForTorque, {"Leaves"}}));
    EXPECT_EQ(refusal(book->tick(read(bracket, {next(bracket)}, leaves, "32"))), ErrorKind::ToolNotForTorque);
    TickEntry unread = read(bracket, {next(bracket)}, dial, "32");
    unread.reading.reset();
    EXPECT_EQ(refusal(book->tick(unread)), ErrorKind::EmptyText);
    EXPECT_EQ(refusal(book->tick(byFeel(bracket, {next(bracket)}, "  "))), ErrorKind::ReasonMissing);
    EXPECT_EQ(refusal(book->tick(byFeel(bracket, {next(bracket)}, std::string(1001, 'x')))), ErrorKind::TextTooLong);
    EXPECT_EQ(refusal(book->tick(with(JointId(99), {{1, 0, 1}}, large))), ErrorKind::WrongJob);
    EXPECT_TRUE(book->state().acts.empty());
}

TEST_F(JobJoints, ATickOutOfTurnIsRefused)
{
    const auto outOfTurn = [&](const TickSlot &place) { return book->tick(with(cover, {place}, small)).error(); };
    EXPECT_EQ(outOfTurn({5, 1, 1}), (Error{ErrorKind::TickOutOfTurn, {"5"}})) << "a later pass";
    EXPECT_EQ(outOfTurn({5, 0, 2}).kind, ErrorKind::TickOutOfTurn) << "a round there is not";
    EXPECT_EQ(outOfTurn({5, 3, 1}).kind, ErrorKind::TickOutOfTurn) << "a pass there is not";
    EXPECT_EQ(outOfTurn({5, -1, 1}).kind, ErrorKind::TickOutOfTurn);
    EXPECT_EQ(refusal(book->tick(with(cover, {{5, 0, 1}, {5, 0, 1}}, small))), ErrorKind::TickOutOfTurn) << "one twice";
    EXPECT_EQ(refusal(book->tick(with(cover, {{5, 0, 1}, {6, 1, 1}}, small))), ErrorKind::TickOutOfTurn) << "two passes";
    need(book->tick(with(cover, {{5, 0, 1}}, small)));
    EXPECT_EQ(outOfTurn({5, 0, 1}).kind, ErrorKind::TickOutOfTurn) << "already";
    EXPECT_EQ(book->state().acts.size(), 1U);
    wholePass(bracket, large);
    EXPECT_EQ(refusal(book->tick(with(bracket, {{1, 0, 1}}, large))), ErrorKind::TickOutOfTurn) << "all is done";
}

TEST_F(JobJoints, EachPassIsDoneItsOwnWay)
{
    const auto tick = [&](TickHow how) {
        TickEntry entry{.joint = cap, .places = restOf(cap), .how = how, .tool = small, .reading = typedTorque("20"), .reason = "why"};
        return book->tick(entry);
    };
    const auto refused = [&](TickHow how) { return refusal(tick(how)); };
    for (const TickHow how : {TickHow::SetTool, TickHow::ReadTool, TickHow::ByAngle})
        EXPECT_EQ(refused(how), ErrorKind::TickOutOfTurn) << "finger-tight";
    need(tick(TickHow::ByHand));
    EXPECT_FALSE(lastTicks().tool);
    EXPECT_FALSE(lastTicks().setting);
    EXPECT_FALSE(lastTicks().reading);
    EXPECT_EQ(lastTicks().reason, "");
    for (const TickHow how : {TickHow::ByHand, TickHow::ByAngle})
        EXPECT_EQ(refused(how), ErrorKind::TickOutOfTurn) << "a torque";
    need(tick(TickHow::SetTool));
    EXPECT_EQ(lastTicks().setting->value, torque("20"));
    EXPECT_FALSE(lastTicks().reading);
    for (const TickHow how : {TickHow::ByHand, TickHow::SetTool, TickHow::ReadTool})
        EXPECT_EQ(refused(how), ErrorKind::TickOutOfTurn) << "an angle";
    TickEntry angle{.joint = cap, .places = {next(cap)}, .how = TickHow::ByAngle};
    need(book->tick(angle));
    EXPECT_FALSE(lastTicks().tool) << "by a mark";
    angle.places = {next(cap)};
    angle.tool = ToolId(99);
    EXPECT_EQ(refusal(book->tick(angle)), ErrorKind::NotFound);
    angle.tool = large;
    EXPECT_EQ(book->tick(angle).error(), (Error{ErrorKind::ToolNotThat, {"Large"}}));
    angle.tool = need(addFitting(*garage, {ToolKind::AngleGauge, "Angle gauge", "", ""}));
    need(book->tick(angle));
    EXPECT_EQ(lastTicks().tool, angle.tool);
    EXPECT_TRUE(joint(cap).progress.finished());
}

TEST_F(JobJoints, AnyPassMayBeDoneByFeel)
{
    for (int pass = 0; pass < 3; ++pass) {
        TickEntry entry = byFeel(cap, restOf(cap), " nothing reaches ");
        entry.tool = small;
        entry.reading = typedTorque("20");
        need(book->tick(entry));
        EXPECT_EQ(lastTicks().how, TickHow::ByFeel);
        EXPECT_EQ(lastTicks().reason, "nothing reaches");
        EXPECT_FALSE(lastTicks().tool);
        EXPECT_FALSE(lastTicks().reading);
        EXPECT_FALSE(lastTicks().setting);
    }
    EXPECT_EQ(fastener(cap, 1).verdict(), Verdict::ByFeel);
    need(book->acceptJoint(cap, AcceptedWhat::ByFeel, {1, 2}, " small screw "));
    EXPECT_EQ(fastener(cap, 2).feelAccepted, "small screw");
    EXPECT_EQ(refusal(book->acceptJoint(cap, AcceptedWhat::ByFeel, {1}, "again")), ErrorKind::NothingToAccept);
}

TEST_F(JobJoints, OnlyASettlePassMoves)
{
    TickEntry entry = with(bracket, restOf(bracket), large);
    entry.moved = true;
    need(book->tick(entry));
    EXPECT_FALSE(lastTicks().ticks.front().moved);
}

TEST_F(JobJoints, LooseningIsNotedAndTightensAnew)
{
    wholePass(bracket, large);
    need(book->loosen({.joint = bracket,
                       .fasteners = {2, 2},
                       .how = FoundHow::Measured,
                       .torque = typedTorque("25 N·m"),
                       .tool = dial,
                       .note = " creaked "}));
    const auto &fact = std::get<LoosenedFact>(book->state().acts.back().what.fact);
    EXPECT_EQ(fact.fasteners, std::vector{2});
    EXPECT_EQ(fact.revision, 1);
    EXPECT_EQ(fact.tool, dial);
    EXPECT_EQ(fastener(bracket, 2).found->torque, typedTorque("25 N·m"));
    EXPECT_EQ(fastener(bracket, 2).found->note, "creaked");
    EXPECT_EQ(fastener(bracket, 2).stage, FastenerStage::Loose);
    EXPECT_EQ(fastener(bracket, 1).stage, FastenerStage::Tight);
    EXPECT_EQ(next(bracket).fastener, 2);

    need(book->loosen({.joint = cover, .fasteners = {1, 2}, .how = FoundHow::LooseByFeel, .torque = typedTorque("3"), .tool = dial}));
    EXPECT_FALSE(fastener(cover, 1).found->torque) << "by feel there is none";
    EXPECT_EQ(foundLoose(joint(cover)), (std::vector{1, 2}));
}

TEST_F(JobJoints, LooseningThatSaysTooLittleIsRefused)
{
    EXPECT_EQ(refusal(book->loosen({.joint = bracket, .fasteners = {}})), ErrorKind::NothingToLog);
    EXPECT_EQ(book->loosen({.joint = bracket, .fasteners = {1, 9}}).error(), (Error{ErrorKind::FastenerUnknown, {"9"}}));
    EXPECT_EQ(refusal(book->loosen({.joint = bracket, .fasteners = {1}, .how = FoundHow::Measured})), ErrorKind::EmptyText);
    EXPECT_EQ(refusal(book->loosen({.joint = JointId(99), .fasteners = {1}})), ErrorKind::WrongJob);
    const LoosenEntry unknown{
        .joint = bracket, .fasteners = {1}, .how = FoundHow::Measured, .torque = typedTorque("25"), .tool = ToolId(99)};
    EXPECT_EQ(refusal(book->loosen(unknown)), ErrorKind::NotFound);
    LoosenEntry leaves = unknown;
    leaves.tool = need(addFeelerSet(*garage, "Leaves", "0.05", LengthUnit::Millimetre));
    EXPECT_EQ(book->loosen(leaves).error(), (Error{ErrorKind::ToolNotThat, {"Leaves"}}));
    leaves.note = std::string(1001, 'x');
    EXPECT_EQ(refusal(book->loosen(leaves)), ErrorKind::TextTooLong);
    EXPECT_TRUE(book->state().acts.empty());
}

TEST_F(JobJoints, AnotherEnginesJointIsNotWorkedOn)
{
    const NewVehicle other = need(addVehicle(*garage, tractorText()));
    const JointId theirs = need(addJoint(*garage, other.engine, rowText(2)));
    EXPECT_EQ(book->beginJoint(theirs).error(), (Error{ErrorKind::WrongJob, {}, Noun::Joint}));
    EXPECT_EQ(refusal(book->untick(theirs, 1)), ErrorKind::WrongJob);
    EXPECT_EQ(refusal(book->sayFitted(theirs, {1}, Fitted::New)), ErrorKind::WrongJob);
    EXPECT_EQ(refusal(book->acceptJoint(theirs, AcceptedWhat::ByFeel, {1}, "why")), ErrorKind::WrongJob);
    EXPECT_EQ(refusal(book->noteFinding(FastenerSubject{theirs, {}}, "rust")), ErrorKind::WrongJob);
}

TEST_F(JobJoints, NobodyWorksOnThemUnnamed)
{
    const auto unnamed = bookOf(*garage);
    EXPECT_EQ(refusal(unnamed->tick(with(bracket, {{1, 0, 1}}, large))), ErrorKind::PersonMissing);
    EXPECT_EQ(refusal(unnamed->loosen({.joint = bracket, .fasteners = {1}})), ErrorKind::PersonMissing);
    EXPECT_EQ(refusal(unnamed->untick(bracket, 1)), ErrorKind::PersonMissing);
    EXPECT_EQ(refusal(unnamed->noteFinding(FastenerSubject{bracket, {}}, "rust")), ErrorKind::PersonMissing);
}

TEST_F(JobJoints, TheLastTickOfAFastenerIsTakenBack)
{
    EXPECT_EQ(book->untick(cover, 3).error(), (Error{ErrorKind::NotTicked, {"3"}}));
    EXPECT_EQ(refusal(book->untick(cover, 13)), ErrorKind::FastenerUnknown);
    wholePass(cover, small);
    wholePass(cover, large);
    need(book->untick(cover, 3));
    EXPECT_EQ(next(cover), (TickSlot{3, 1, 1}));
    need(book->untick(cover, 3));
    EXPECT_EQ(next(cover), (TickSlot{3, 0, 1}));
    EXPECT_EQ(refusal(book->untick(cover, 3)), ErrorKind::NotTicked);
    EXPECT_EQ(fastener(cover, 4).ticks.size(), 2U);
}

TEST_F(JobJoints, SingleUseFastenersAreSaidToBeNewOrNot)
{
    EXPECT_EQ(refusal(book->sayFitted(cap, {}, Fitted::New)), ErrorKind::NothingToLog);
    EXPECT_EQ(refusal(book->sayFitted(cap, {3}, Fitted::New)), ErrorKind::FastenerUnknown);
    const ActSeq said = need(book->sayFitted(cap, {1, 2}, Fitted::New));
    EXPECT_EQ(need(book->sayFitted(cap, {1, 2}, Fitted::New)), said) << "said already";
    EXPECT_EQ(book->state().acts.size(), 1U);
    EXPECT_EQ(refusal(book->acceptJoint(cap, AcceptedWhat::Reused, {1, 2}, "why")), ErrorKind::NothingToAccept);
    need(book->sayFitted(cap, {2}, Fitted::Reused));
    EXPECT_EQ(refusal(book->acceptJoint(cap, AcceptedWhat::Reused, {2}, " ")), ErrorKind::ReasonMissing);
    EXPECT_EQ(refusal(book->acceptJoint(cap, AcceptedWhat::Reused, {2}, std::string(1001, 'x'))), ErrorKind::TextTooLong);
    need(book->acceptJoint(cap, AcceptedWhat::Reused, {1, 2}, "once more"));
    const auto &fact = std::get<AcceptedFact>(book->state().acts.back().what.fact);
    EXPECT_EQ(fact.fasteners, std::vector{2}) << "only what was used before";
    EXPECT_EQ(fastener(cap, 2).reuseAccepted, "once more");
    EXPECT_EQ(refusal(book->acceptJoint(cap, AcceptedWhat::Reused, {2}, "why")), ErrorKind::NothingToAccept);
}

TEST_F(JobJoints, ATorqueOutsideIsAcceptedWithAReason)
{
    need(book->tick(read(bracket, {{1, 0, 1}}, dial, "27.9")));
    need(book->tick(read(bracket, {{2, 0, 1}}, dial, "28")));
    EXPECT_EQ(fastener(bracket, 1).verdict(), Verdict::Low);
    EXPECT_EQ(refusal(book->acceptJoint(bracket, AcceptedWhat::Torque, {2}, "why")), ErrorKind::NothingToAccept);
    EXPECT_EQ(refusal(book->acceptJoint(bracket, AcceptedWhat::ByFeel, {1}, "why")), ErrorKind::NothingToAccept);
    EXPECT_EQ(refusal(book->acceptJoint(bracket, AcceptedWhat::Torque, {}, "why")), ErrorKind::NothingToLog);
    EXPECT_EQ(refusal(book->acceptJoint(bracket, AcceptedWhat::Torque, {5}, "why")), ErrorKind::FastenerUnknown);
    EXPECT_FALSE(joint(bracket).settled(jointInHand(book->state(), bracket)));
    need(book->acceptJoint(bracket, AcceptedWhat::Torque, {1, 2}, "soft thread"));
    EXPECT_EQ(fastener(bracket, 1).torqueAccepted, "soft thread");
    EXPECT_TRUE(joint(bracket).settled(jointInHand(book->state(), bracket)));
}

TEST_F(JobJoints, AnUnsettledJointIsAcceptedAsAWhole)
{
    EXPECT_EQ(refusal(book->acceptJoint(cover, AcceptedWhat::Unsettled, {}, "why")), ErrorKind::NothingToAccept);
    wholePass(cover, small);
    wholePass(cover, large);
    for (int round = 0; round < 3; ++round) {
        TickEntry moved = with(cover, restOf(cover), large);
        moved.moved = true;
        need(book->tick(moved));
    }
    EXPECT_TRUE(joint(cover).progress.unsettled);
    need(book->acceptJoint(cover, AcceptedWhat::Unsettled, {1}, "new gasket"));
    EXPECT_TRUE(std::get<AcceptedFact>(book->state().acts.back().what.fact).fasteners.empty());
    EXPECT_EQ(joint(cover).unsettledAccepted, "new gasket");
    EXPECT_EQ(refusal(book->acceptJoint(cover, AcceptedWhat::Unsettled, {}, "why")), ErrorKind::NothingToAccept);
}

TEST_F(JobJoints, BegunAnewTheyGoByTheNewestRevision)
{
    wholePass(bracket, large);
    JointText changed = rowText(2);
    changed.target = "25 ± 2 N·m";
    need(reviseJoint(*garage, bracket, tractor.engine, changed));
    EXPECT_EQ(joint(bracket).revision, 1) << "it was tightened by that";
    need(book->untick(bracket, 1));
    need(book->tick(with(bracket, {next(bracket)}, large)));
    EXPECT_EQ(lastTicks().setting->value, torque("32"));
    const ActSeq begun = need(book->beginJoint(bracket));
    EXPECT_EQ(need(book->beginJoint(bracket)), begun) << "begun already";
    EXPECT_EQ(joint(bracket).revision, 2);
    EXPECT_TRUE(fastener(bracket, 1).ticks.empty());
    need(book->tick(with(bracket, {next(bracket)}, large)));
    EXPECT_EQ(lastTicks().setting->value, torque("25"));
    EXPECT_EQ(lastTicks().revision, 2);
    EXPECT_NE(need(book->beginJoint(bracket)), begun) << "it was worked on since";
}

TEST_F(JobJoints, FindingsAreNoted)
{
    EXPECT_EQ(refusal(book->noteFinding(FastenerSubject{bracket, {}}, " ")), ErrorKind::EmptyText);
    EXPECT_EQ(refusal(book->noteFinding(FastenerSubject{bracket, {}}, std::string(1001, 'x'))), ErrorKind::TextTooLong);
    EXPECT_EQ(refusal(book->noteFinding(FastenerSubject{bracket, {3}}, "rust")), ErrorKind::FastenerUnknown);
    need(book->noteFinding(FastenerSubject{bracket, {2, 1}}, " several were loose "));
    need(book->noteFinding(FastenerSubject{bracket, {}}, "cracked"));
    ASSERT_EQ(book->state().findings.size(), 2U);
    EXPECT_EQ(book->state().findings[0].what.text, "several were loose");
    EXPECT_EQ(book->state().findings[0].what.subject, Subject(FastenerSubject{bracket, {2, 1}}));
    EXPECT_EQ(book->state().findings[1].what.subject, Subject(FastenerSubject{bracket}));
}

TEST_F(JobJoints, FindingsMayBeAboutAnythingOfTheJob)
{
    const JobFrame &frame = *book->state().frame;
    const Subject subjects[] = {frame.engine.points.at(3).id, frame.job.steps.front().id, frame.engine.id, frame.vehicle.id};
    for (const Subject &subject : subjects) {
        const ActSeq noted = need(book->noteFinding(subject, " worn "));
        ASSERT_EQ(book->state().findings.size(), 1U);
        EXPECT_EQ(book->state().findings[0].seq, noted);
        EXPECT_EQ(book->state().findings[0].what, (FindingFact{subject, "worn"}));
        need(book->undo());
        EXPECT_TRUE(book->state().findings.empty());
    }
    for (const Subject &subject : std::initializer_list<Subject>{PointId(999), StepId(999), EngineId(999), VehicleId(999)})
        EXPECT_EQ(refusal(book->noteFinding(subject, "worn")), ErrorKind::WrongJob) << subject.index();
}

} // namespace job_joints_tests
} // namespace asleft
