// What is logged at a setting point, and what is refused there.
#include "support.h"

namespace asleft {
namespace readings_tests {

class Readings : public BookTest {};

TEST_F(Readings, EveryActAsksWho)
{
    const auto nobody = bookOf(*garage);
    const PointId i1 = at("I1");
    const StepId step = book->state().frame->job.steps[0].id;
    left("I1", "0.60 mm");
    need(nobody->catchUp());
    EXPECT_EQ(refusal(nobody->logReading(reading("I1", Phase::AsFound, "0.30 mm"))), ErrorKind::PersonMissing);
    EXPECT_EQ(refusal(nobody->openNut(i1)), ErrorKind::PersonMissing);
    EXPECT_EQ(refusal(nobody->keepAsLeft(i1, "")), ErrorKind::PersonMissing);
    EXPECT_EQ(refusal(nobody->sendToCheckAgain({i1}, Disturbance::Other, "")), ErrorKind::PersonMissing);
    EXPECT_EQ(refusal(nobody->confirmCrank(degrees(0))), ErrorKind::PersonMissing);
    EXPECT_EQ(refusal(nobody->readTurningCautions()), ErrorKind::PersonMissing);
    EXPECT_EQ(refusal(nobody->choosePlan(nobody->proposedPlan())), ErrorKind::PersonMissing);
    EXPECT_EQ(refusal(nobody->markStepDone(step)), ErrorKind::PersonMissing);
    EXPECT_EQ(refusal(nobody->leaveAllHere()), ErrorKind::PersonMissing);
    EXPECT_EQ(refusal(nobody->turnCrank(degrees(0))), ErrorKind::PersonMissing);
    EXPECT_EQ(refusal(nobody->logSheet({{.point = i1, .found = reading("I1", Phase::AsFound, "0.30 mm")}})), ErrorKind::PersonMissing);
    EXPECT_EQ(refusal(nobody->undo()), ErrorKind::PersonMissing);
    EXPECT_EQ(refusal(nobody->redo()), ErrorKind::PersonMissing);
    EXPECT_FALSE(nobody->session().crankConfirmed);
    EXPECT_FALSE(nobody->session().turningCautionsRead);
    EXPECT_EQ(actsInFile(), 1U);
}

TEST_F(Readings, APointOrStepOfAnotherJobIsRefused)
{
    const PointId strange(9999);
    EXPECT_EQ(refusal(book->logReading({.point = strange, .value = length("0.3 mm")})), ErrorKind::WrongJob);
    EXPECT_EQ(refusal(book->openNut(strange)), ErrorKind::WrongJob);
    EXPECT_EQ(refusal(book->keepAsLeft(strange, "")), ErrorKind::WrongJob);
    EXPECT_EQ(refusal(book->sendToCheckAgain({at("I1"), strange}, Disturbance::Other, "")), ErrorKind::WrongJob);
    EXPECT_EQ(refusal(book->sendToCheckAgain({}, Disturbance::Other, "")), ErrorKind::WrongJob);
    EXPECT_EQ(refusal(book->markStepDone(StepId(9999))), ErrorKind::WrongJob);
    EXPECT_EQ(actsInFile(), 0U);
}

TEST_F(Readings, AreJudgedByTheSpecInForceAndSayHowTheyWereTaken)
{
    const ToolId leaves = need(addFeelerSet(*garage, "Set", "0.05-1.00 by 0.05 mm", LengthUnit::Millimetre));
    book->setTool(leaves);
    EXPECT_EQ(book->tool()->name, "Set");
    need(book->confirmCrank(degrees(0)));
    found("I1", "0.20 mm");
    const ReadingFact &fact = point("I1").found->reading;
    EXPECT_EQ(point("I1").found->verdict, Verdict::Low);
    EXPECT_EQ(point("I1").found->who, marta);
    EXPECT_EQ(fact.judgedBy, book->state().frame->specNow(SpecSubject::IntakeLash)->id);
    EXPECT_EQ(fact.tool, leaves);
    EXPECT_FALSE(fact.outOfPosition);

    need(book->logReading({.point = at("E1"), .phase = Phase::AsLeft, .form = ReadingForm::ByFeel, .value = length("0.40 mm")}));
    EXPECT_EQ(point("E1").left->verdict, Verdict::ByFeel);
    EXPECT_FALSE(point("E1").left->reading.tool) << "no tool could measure it";
    EXPECT_FALSE(point("E1").left->reading.value);

    left("I4", "0.30 mm");
    EXPECT_TRUE(point("I4").left->reading.outOfPosition);
    book->setCondition(EngineCondition::Hot);
    left("I2", "0.30 mm");
    EXPECT_EQ(point("I2").left->verdict, Verdict::NotComparable);
}

TEST_F(Readings, BeforeTheCrankIsKnownAreOutOfPlace)
{
    left("I1", "0.30 mm");
    EXPECT_TRUE(point("I1").left->reading.outOfPosition);
}

TEST_F(Readings, ASecondFoundCorrectsTheFirst)
{
    const ActSeq wrong = found("I1", "0.20 mm");
    found("I1", "0.30 mm");
    EXPECT_EQ(point("I1").found->reading.corrects, wrong);
    left("I1", "0.30 mm");
    left("I1", "0.31 mm");
    EXPECT_FALSE(point("I1").left->reading.corrects) << "set anew";
}

TEST_F(Readings, LooseTightAndSpecLeafTakeTheSpecsLeaf)
{
    for (const ReadingForm form : {ReadingForm::Loose, ReadingForm::Tight}) {
        need(book->logReading({.point = at("E1"), .form = form}));
        EXPECT_EQ(point("E1").found->reading.value, length("0.40 mm"));
        EXPECT_EQ(point("E1").found->verdict, Verdict::TooClose);
    }
    need(book->logReading({.point = at("E1"), .phase = Phase::AsLeft, .specLeaf = true}));
    EXPECT_TRUE(point("E1").left->reading.specLeaf);
    EXPECT_EQ(point("E1").left->reading.value, length("0.40 mm"));
    EXPECT_TRUE(point("E1").settled());
}

TEST_F(Readings, TheSpecsLeafIsOfTheLeavesInHand)
{
    SpecText both = lashText("0.30 ± 0.05 mm");
    both.otherBand = ".012 ± .002 in";
    need(reviseSpec(*garage, tractor.engine, SpecSubject::IntakeLash, both));
    book->setTool(need(addFeelerSet(*garage, "Inch", ".010 .012 in", LengthUnit::Inch)));
    need(book->logReading({.point = at("I1"), .phase = Phase::AsLeft, .specLeaf = true}));
    EXPECT_EQ(point("I1").left->reading.value, length("0.012 in"));
    EXPECT_EQ(point("I1").left->verdict, Verdict::Inside);
}

TEST_F(Readings, WithoutASpec)
{
    const NewVehicle bare = need(addVehicle(*garage, tractorText()));
    job = need(openJob(*garage, bare.vehicle, bare.engine, builtInSheets().front(), "Valves"));
    book = bookOf(*garage);
    book->setWho(marta);
    EXPECT_EQ(refusal(book->logReading({.point = at("I1"), .phase = Phase::AsLeft, .specLeaf = true})), ErrorKind::NotFound);
    need(book->logReading({.point = at("I1"), .form = ReadingForm::Loose}));
    EXPECT_FALSE(point("I1").found->reading.value);
    EXPECT_EQ(point("I1").found->verdict, Verdict::NoSpec);
}

TEST_F(Readings, SayTheirValues)
{
    EXPECT_EQ(refusal(book->logReading({.point = at("I1")})), ErrorKind::EmptyText);
    EXPECT_EQ(refusal(book->logReading({.point = at("I1"), .form = ReadingForm::Bracket, .value = length("0.3 mm")})),
              ErrorKind::EmptyText);
    const ReadingEntry falling{.point = at("I1"), .form = ReadingForm::Bracket, .value = length("0.30 mm"), .next = length("0.30 mm")};
    EXPECT_EQ(refusal(book->logReading(falling)), ErrorKind::BandUpsideDown);
    EXPECT_EQ(actsInFile(), 0U);
    need(book->logReading({.point = at("I1"), .form = ReadingForm::Bracket, .value = length("0.25 mm"), .next = length("0.30 mm")}));
    EXPECT_EQ(point("I1").found->verdict, Verdict::Inside);
}

TEST_F(Readings, KeepingWantsAReadingOutsideItsBand)
{
    EXPECT_EQ(refusal(book->keepAsLeft(at("I1"), "worn")), ErrorKind::NothingToKeep);
    found("I1", "0.60 mm");
    EXPECT_EQ(refusal(book->keepAsLeft(at("I1"), "worn")), ErrorKind::NothingToKeep);
    left("I1", "0.30 mm");
    const auto inside = book->keepAsLeft(at("I1"), "worn");
    ASSERT_FALSE(inside.has_value());
    EXPECT_EQ(inside.error(), (Error{ErrorKind::NothingToKeep, {"I1"}}));

    left("I1", "0.60 mm");
    need(book->keepAsLeft(at("I1"), " worn "));
    EXPECT_EQ(point("I1").kept, "worn");
    EXPECT_EQ(refusal(book->keepAsLeft(at("I1"), "again")), ErrorKind::NothingToKeep);
    left("I1", "0.61 mm");
    EXPECT_FALSE(point("I1").kept);
    need(book->openNut(at("I1")));
    EXPECT_EQ(refusal(book->keepAsLeft(at("I1"), "")), ErrorKind::NothingToKeep);
}

TEST_F(Readings, AllHereAreLeftByOneAct)
{
    EXPECT_EQ(refusal(book->leaveAllHere()), ErrorKind::NotFound) << "nobody knows where the crank stands";
    beginValveSet();
    left("I2", "0.32 mm");
    need(book->openNut(at("E1")));
    const ActSeq all = need(book->leaveAllHere());
    for (const std::string_view name : {"I1", "E1", "E3"}) {
        EXPECT_EQ(point(name).left->seq, all) << name;
        EXPECT_EQ(point(name).left->verdict, Verdict::Inside) << name;
        EXPECT_TRUE(point(name).left->reading.specLeaf) << name;
    }
    EXPECT_EQ(point("I2").left->reading.value, length("0.32 mm")) << "it was settled";
    EXPECT_EQ(point("I3").stage, PointStage::Untouched);
    EXPECT_EQ(refusal(book->leaveAllHere()), ErrorKind::NotFound);
    need(book->undo());
    EXPECT_EQ(point("E1").stage, PointStage::NutOpen);
    EXPECT_EQ(point("E3").stage, PointStage::Untouched);
}

TEST_F(Readings, CheckAgainAndStepsDone)
{
    left("I1", "0.30 mm");
    need(book->sendToCheckAgain({at("I1"), at("I2")}, Disturbance::HeadTightened, " after 50 h "));
    EXPECT_EQ(point("I1").stage, PointStage::CheckAgain);
    EXPECT_EQ(point("I1").checkAgainWhy, "after 50 h");
    EXPECT_EQ(point("I1").disturbance, Disturbance::HeadTightened);
    EXPECT_EQ(point("I2").stage, PointStage::Untouched);
    const Step &first = book->state().frame->job.steps.front();
    need(book->markStepDone(first.id));
    EXPECT_TRUE(stepDone(book->state(), first));
}

TEST_F(Readings, ReopenedTheStateIsTheSame)
{
    beginValveSet();
    found("I1", "0.20 mm");
    need(book->openNut(at("I1")));
    left("E1", "0.60 mm");
    need(book->keepAsLeft(at("E1"), "worn"));
    need(book->leaveAllHere());
    need(book->turnCrank(degrees(360)));
    need(book->logReading({.point = at("E4"), .form = ReadingForm::Bracket, .value = length("0.35 mm"), .next = length("0.40 mm")}));
    need(book->sendToCheckAgain({at("I1")}, Disturbance::TimingMoved, "why"));
    need(book->markStepDone(book->state().frame->job.steps[1].id));
    need(book->undo());
    const JobState before = book->state();

    book.reset();
    garage.reset();
    garage = openedBy("bench");
    book = bookOf(*garage);
    const JobState &after = book->state();
    EXPECT_EQ(after.acts, before.acts);
    EXPECT_EQ(after.withdrawn, before.withdrawn);
    EXPECT_EQ(after.points, before.points);
    EXPECT_EQ(after.crank, before.crank);
    EXPECT_EQ(after.plan, before.plan);
    EXPECT_EQ(after.stepsDone, before.stepsDone);
    EXPECT_EQ(stillOpen(after, clock->now()), stillOpen(before, clock->now()));
    EXPECT_EQ(nextAct(after), nextAct(before));
    EXPECT_FALSE(book->session().who) << "a new sitting asks again";
    EXPECT_FALSE(book->session().crankConfirmed);
}

TEST_F(Readings, EachActIsToldOnceAfterItIsStored)
{
    const auto other = openedBy("other");
    int bookTold = 0;
    int garageTold = 0;
    std::size_t seenByOther = 0;
    QObject::connect(book.get(), &JobBook::changed, [&] {
        ++bookTold;
        seenByOther = bookOf(*other)->state().acts.size();
        EXPECT_EQ(book->state().acts.size(), seenByOther) << "the state is whole when it is told";
    });
    QObject::connect(garage.get(), &Garage::changed, [&](const Change &change) {
        EXPECT_EQ(change.what, Change::What::Acts);
        EXPECT_EQ(change.job, job);
        ++garageTold;
    });
    int acts = 0;
    const auto expectOne = [&](const Result<ActSeq> &act) {
        need(act);
        ++acts;
        EXPECT_EQ(bookTold, acts);
        EXPECT_EQ(garageTold, acts);
        EXPECT_EQ(seenByOther, static_cast<std::size_t>(acts));
    };
    expectOne(book->choosePlan(book->proposedPlan()));
    expectOne(book->readTurningCautions());
    expectOne(book->confirmCrank(degrees(0)));
    expectOne(book->logReading(reading("I1", Phase::AsLeft, "0.60 mm")));
    expectOne(book->keepAsLeft(at("I1"), ""));
    expectOne(book->leaveAllHere());
    expectOne(book->turnCrank(degrees(360)));
    expectOne(book->undo());
    expectOne(book->redo());
    expectOne(book->openNut(at("E2")));
    expectOne(book->sendToCheckAgain({at("I1")}, Disturbance::Other, ""));
    expectOne(book->markStepDone(book->state().frame->job.steps[0].id));

    EXPECT_FALSE(book->openNut(PointId(9999)).has_value());
    EXPECT_FALSE(book->turnCrank(degrees(0)).has_value());
    EXPECT_EQ(bookTold, acts) << "what is refused is not told";
    need(book->catchUp());
    EXPECT_EQ(bookTold, acts) << "nothing new";
}

TEST_F(Readings, ASpecRevisedWhileTheJobIsOpen)
{
    left("I1", "0.34 mm");
    found("I2", "0.34 mm");
    int told = 0;
    QObject::connect(book.get(), &JobBook::changed, [&] { ++told; });
    const SpecId second = need(reviseSpec(*garage, tractor.engine, SpecSubject::IntakeLash, lashText("0.25 ± 0.05 mm")));
    EXPECT_EQ(told, 1);
    EXPECT_EQ(point("I1").left->verdict, Verdict::Inside) << "an old verdict stands";
    const auto open = stillOpen(book->state(), clock->now()).firstStart;
    EXPECT_EQ(std::ranges::count(open, OpenItem(open::SpecRevised{std::vector{at("I1"), at("I2")}})), 1);
    left("I3", "0.34 mm");
    EXPECT_EQ(point("I3").left->reading.judgedBy, second);
    EXPECT_EQ(point("I3").left->verdict, Verdict::High);

    const NewVehicle other = need(addVehicle(*garage, tractorText()));
    told = 0;
    need(reviseSpec(*garage, other.engine, SpecSubject::IntakeLash, lashText("0.25 ± 0.05 mm")));
    EXPECT_EQ(told, 0) << "another engine's";
}

TEST_F(Readings, WhatStandsAlreadyIsNotLoggedAgain)
{
    const ActSeq opened = need(book->openNut(at("I1")));
    const ActSeq done = need(book->markStepDone(book->state().frame->job.steps.front().id));
    const std::size_t acts = actsInFile();
    EXPECT_EQ(need(book->openNut(at("I1"))), opened);
    EXPECT_EQ(need(book->markStepDone(book->state().frame->job.steps.front().id)), done);
    EXPECT_EQ(refusal(book->sendToCheckAgain({at("I2")}, Disturbance::Other, "")), ErrorKind::NotFound);
    EXPECT_EQ(actsInFile(), acts);
}

} // namespace readings_tests
} // namespace asleft
