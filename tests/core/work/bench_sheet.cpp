// A bench sheet filled in with a pencil, typed in afterwards.
#include "support.h"

#include <algorithm>

namespace asleft {
namespace bench_sheet_tests {

class BenchSheet : public BookTest {
protected:
    /// Empty texts are columns nobody wrote in.
    SheetEntry line(std::string_view name, std::string_view found, std::string_view left) const
    {
        SheetEntry entry{.point = at(name)};
        if (!found.empty())
            entry.found = value(found);
        if (!left.empty())
            entry.left = value(left);
        return entry;
    }
    ReadingEntry value(std::string_view text) const { return {.point = PointId(9999), .value = length(text)}; }

    /// What the acts of the book say, from the `from`th on: "at 0", "to 360", "I1 found 0.20 mm", "plan".
    std::vector<std::string> said(std::size_t from = 0) const
    {
        std::vector<std::string> all;
        for (std::size_t i = from; i < book->state().acts.size(); ++i)
            all.push_back(saidBy(book->state().acts[i].what.fact));
        return all;
    }

private:
    std::string saidBy(const Fact &fact) const
    {
        if (const auto *crank = std::get_if<CrankFact>(&fact))
            return (crank->how == CrankHow::Turned ? "to " : "at ") + std::to_string(static_cast<int>(toDegrees(*crank->crank)));
        if (const auto *reading = std::get_if<ReadingFact>(&fact)) {
            const SettingPoint *point = book->state().frame->point(reading->point);
            return shortName(book->state().frame->engine.design, point->adjuster) +
                   (reading->phase == Phase::AsFound ? " found " : " left ") + (reading->value ? reading->value->text : "by feel");
        }
        return std::holds_alternative<PlanFact>(fact) ? "plan" : "?";
    }
};

using Said = std::vector<std::string>;

TEST_F(BenchSheet, IsLoggedInThePlansOrder)
{
    need(book->choosePlan(book->proposedPlan()));
    int told = 0;
    QObject::connect(book.get(), &JobBook::changed, [&] { ++told; });
    int garageTold = 0;
    QObject::connect(garage.get(), &Garage::changed, [&](const Change &change) {
        EXPECT_EQ(change.what, Change::What::Acts);
        ++garageTold;
    });
    const ActSeq last = need(book->logSheet({line("E4", "0.45 mm", "0.40 mm"), line("I4", "", "0.31 mm"), line("I3", "", ""),
                                             line("E1", "0.35 mm", ""), line("I1", "0.20 mm", "0.30 mm")}));
    EXPECT_EQ(said(1), (Said{"at 0", "I1 found 0.20 mm", "E1 found 0.35 mm", "I1 left 0.30 mm", "to 360", "E4 found 0.45 mm",
                             "I4 left 0.31 mm", "E4 left 0.40 mm"}));
    EXPECT_EQ(last, book->state().acts.back().seq);
    EXPECT_EQ(told, 1) << "one change";
    EXPECT_EQ(garageTold, 1);
    EXPECT_TRUE(point("I1").settled());
    EXPECT_EQ(point("E1").stage, PointStage::Found);
    EXPECT_EQ(point("I3").stage, PointStage::Untouched);
    EXPECT_FALSE(point("I4").left->reading.outOfPosition) << "it was set at its place";
    EXPECT_EQ(point("I1").found->verdict, Verdict::Low);
    EXPECT_EQ(bookOf(*garage)->state().acts, book->state().acts);
}

TEST_F(BenchSheet, PositionsWithoutAFilledInPointArePassedOver)
{
    need(book->choosePlan(book->proposedPlan()));
    need(book->logSheet({line("I4", "", "0.30 mm"), line("I1", "", "")}));
    EXPECT_EQ(said(1), (Said{"at 360", "I4 left 0.30 mm"}));
}

TEST_F(BenchSheet, ComesAfterTheProposedPlanWhereNoneWasChosen)
{
    need(book->logSheet({line("I1", "", "0.30 mm")}));
    EXPECT_EQ(said(), (Said{"plan", "at 0", "I1 left 0.30 mm"}));
    EXPECT_EQ(book->state().plan, book->proposedPlan());
}

TEST_F(BenchSheet, TheCrankIsTurnedFromWhereItStood)
{
    beginValveSet();
    need(book->turnCrank(degrees(360)));
    const std::size_t before = book->state().acts.size();
    need(book->logSheet({line("I1", "", "0.30 mm")}));
    EXPECT_EQ(said(before), (Said{"to 0", "I1 left 0.30 mm"}));
    need(book->logSheet({line("I2", "", "0.30 mm")}));
    EXPECT_EQ(said(before + 2), (Said{"at 0", "I2 left 0.30 mm"})) << "it stood there: the sheet confirms it";
}

TEST_F(BenchSheet, TheCrankIsKnownAndAskedForAllTheSame)
{
    beginValveSet();
    EXPECT_TRUE(book->session().crankConfirmed);
    need(book->logSheet({line("I4", "", "0.30 mm")}));
    EXPECT_EQ(book->state().crank->crank, degrees(360));
    EXPECT_FALSE(book->session().crankConfirmed);
    EXPECT_EQ(refusal(book->turnCrank(degrees(0))), ErrorKind::CrankNotConfirmed);
    EXPECT_TRUE(book->session().turningCautionsRead);
}

TEST_F(BenchSheet, NeedsNoCautionsAndNoConfirmedCrank)
{
    EXPECT_TRUE(book->logSheet({line("I1", "", "0.30 mm"), line("I4", "", "0.30 mm")}).has_value());
    EXPECT_FALSE(book->session().turningCautionsRead);
}

TEST_F(BenchSheet, OfPointsNoPositionSetsComesLast)
{
    need(reviseTable(*garage, tractor.engine, {{"1", CrankEvent::Compression, "IN 1"}, {"1", CrankEvent::Overlap, "IN 4"}},
                     {"Manual", "1"}));
    need(book->choosePlan(book->proposedPlan()));
    need(book->logSheet({line("E3", "", "0.40 mm"), line("I4", "", "0.30 mm"), line("I1", "", "0.30 mm")}));
    EXPECT_EQ(said(1), (Said{"at 0", "I1 left 0.30 mm", "to 360", "I4 left 0.30 mm", "E3 left 0.40 mm"}));
    EXPECT_TRUE(point("E3").left->reading.outOfPosition);
}

TEST_F(BenchSheet, OfPointsNoPositionSetsMovesNoCrank)
{
    need(reviseTable(*garage, tractor.engine, {{"1", CrankEvent::Compression, "IN 1"}}, {"Manual", "1"}));
    beginValveSet();
    const std::size_t before = book->state().acts.size();
    need(book->logSheet({line("E3", "", "0.40 mm")}));
    EXPECT_EQ(said(before), Said{"E3 left 0.40 mm"});
    EXPECT_TRUE(book->session().crankConfirmed) << "nobody moved it";
}

/// Each bridge with a screw of its own.
class BridgedSheet : public BookTest {
protected:
    BridgedSheet() : BookTest(bridgedText()) {}

private:
    static VehicleText bridgedText()
    {
        VehicleText text = tractorText();
        text.engine.valves = "2+2";
        text.engine.bridged = true;
        text.engine.bridgeScrews = true;
        return text;
    }
};

/// A sheet does not say in which order its lines were worked, and nobody sets a lash before its bridge.
TEST_F(BridgedSheet, ScrewsComeBeforeTheirLashInWhateverOrderTheyAreTyped)
{
    need(reviseTable(*garage, tractor.engine, {{"1", CrankEvent::Compression, "IN 1"}}, {"Manual", "1"}));
    need(book->choosePlan(book->proposedPlan()));
    need(book->logSheet({{.point = at("E3"), .left = reading("E3", Phase::AsLeft, "0.40 mm")},
                         {.point = at("BE3"), .left = ReadingEntry{.point = at("BE3"), .form = ReadingForm::ByFeel}}}));
    EXPECT_EQ(point("BE3").stage, PointStage::Left);
    EXPECT_EQ(point("E3").stage, PointStage::Left) << "not disturbed by a bridge set before it";
}

TEST_F(BenchSheet, OnePlaceInTwoLinesOfATableIsOnePlace)
{
    need(reviseTable(*garage, tractor.engine, {{"1", CrankEvent::Compression, "IN 1"}, {"1", CrankEvent::Compression, "EX 1"}},
                     {"Manual", "1"}));
    need(book->choosePlan(book->proposedPlan()));
    need(book->logSheet({line("E1", "", "0.40 mm"), line("I1", "", "0.30 mm")}));
    EXPECT_EQ(said(1), (Said{"at 0", "I1 left 0.30 mm", "E1 left 0.40 mm"}));
}

TEST_F(BenchSheet, KeepsWhatTheSittingKnowsAndWhenItWasDone)
{
    const ToolId leaves = need(addFeelerSet(*garage, "Set", "0.05-1.00 by 0.05 mm", LengthUnit::Millimetre));
    book->setTool(leaves);
    book->setCondition(EngineCondition::Hot, parseTemperature("82 °C", TemperatureUnit::Celsius).value(), 5);
    book->setWho(tom);
    clock->set({5'000'000});
    need(book->logSheet({line("I1", "0.30 mm", "0.30 mm")}, Moment{4'000'000}));
    for (const Act &act : book->state().acts) {
        EXPECT_EQ(act.what.at, Moment{4'000'000});
        EXPECT_EQ(act.what.who, tom);
    }
    const ReadingFact &fact = point("I1").left->reading;
    EXPECT_EQ(fact.tool, leaves);
    EXPECT_EQ(fact.condition, EngineCondition::Hot);
    EXPECT_EQ(fact.minutesSinceRun, 5);
    EXPECT_TRUE(fact.temperature);
    need(book->logSheet({line("I2", "", "0.30 mm")}));
    EXPECT_EQ(book->state().acts.back().what.at, Moment{5'000'000}) << "where nobody says when, it is now";
}

TEST_F(BenchSheet, MaySayAllThatTheBenchMay)
{
    SheetEntry loose{.point = at("I1"), .found = ReadingEntry{.point = at("I1"), .form = ReadingForm::Loose}};
    loose.left = ReadingEntry{.point = at("I1"), .phase = Phase::AsFound, .specLeaf = true};
    const SheetEntry felt{.point = at("E1"), .left = ReadingEntry{.point = at("E1"), .form = ReadingForm::ByFeel}};
    need(book->logSheet({loose, felt}));
    EXPECT_EQ(point("I1").found->reading.form, ReadingForm::Loose);
    EXPECT_EQ(point("I1").left->reading.value, length("0.30 mm")) << "as left, whatever its entry says of its phase";
    EXPECT_TRUE(point("I1").left->reading.specLeaf);
    EXPECT_EQ(point("E1").left->verdict, Verdict::ByFeel);
}

TEST_F(BenchSheet, CorrectsWhatWasFoundBefore)
{
    const ActSeq before = found("I1", "0.20 mm");
    need(book->openNut(at("I1")));
    need(book->logSheet({line("I1", "0.25 mm", "0.30 mm")}));
    EXPECT_EQ(point("I1").found->reading.corrects, before);
    EXPECT_EQ(point("I1").stage, PointStage::Left);
}

TEST_F(BenchSheet, IsTakenBackActByActFromTheLast)
{
    need(book->choosePlan(book->proposedPlan()));
    const JobState before = book->state();
    need(book->logSheet({line("I1", "0.20 mm", "0.30 mm"), line("I4", "", "0.31 mm")}));
    ASSERT_EQ(said(1), (Said{"at 0", "I1 found 0.20 mm", "I1 left 0.30 mm", "to 360", "I4 left 0.31 mm"}));
    need(book->undo());
    EXPECT_EQ(point("I4").stage, PointStage::Untouched);
    EXPECT_EQ(book->state().crank->crank, degrees(360));
    need(book->undo());
    EXPECT_EQ(book->state().crank->crank, degrees(0));
    need(book->undo());
    EXPECT_EQ(point("I1").stage, PointStage::Found);
    need(book->undo());
    need(book->undo());
    EXPECT_EQ(book->state().points, before.points);
    EXPECT_FALSE(book->state().crank);
    EXPECT_EQ(book->state().plan, before.plan);
}

TEST_F(BenchSheet, WithNothingOnItIsRefused)
{
    EXPECT_EQ(refusal(book->logSheet({})), ErrorKind::NothingToLog);
    EXPECT_EQ(refusal(book->logSheet({line("I1", "", ""), line("I2", "", "")})), ErrorKind::NothingToLog);
    EXPECT_EQ(actsInFile(), 0U);
}

TEST_F(BenchSheet, ThatIsRefusedInOnePlaceStoresNothing)
{
    SheetEntry strange = line("I1", "", "0.30 mm");
    strange.point = PointId(9999);
    EXPECT_EQ(refusal(book->logSheet({line("I2", "", "0.30 mm"), strange})), ErrorKind::WrongJob);

    const auto twice = book->logSheet({line("I2", "", "0.30 mm"), line("I2", "0.20 mm", "")});
    ASSERT_FALSE(twice.has_value());
    EXPECT_EQ(twice.error(), (Error{ErrorKind::TablePointTwice, {"I2"}}));

    SheetEntry empty = line("I4", "", "0.30 mm");
    empty.left->value.reset();
    EXPECT_EQ(refusal(book->logSheet({line("I2", "", "0.30 mm"), empty})), ErrorKind::EmptyText);

    SheetEntry falling = line("I4", "", "0.30 mm");
    falling.left->form = ReadingForm::Bracket;
    falling.left->next = length("0.25 mm");
    EXPECT_EQ(refusal(book->logSheet({line("I2", "", "0.30 mm"), falling})), ErrorKind::BandUpsideDown);
    EXPECT_EQ(actsInFile(), 0U);
    EXPECT_EQ(point("I2").stage, PointStage::Untouched);
}

TEST_F(BenchSheet, SeesWhatAnotherSeatDidBefore)
{
    const auto office = openedBy("office");
    const auto theirs = bookOf(*office);
    theirs->setWho(tom);
    need(theirs->choosePlan(theirs->proposedPlan()));
    need(theirs->confirmCrank(degrees(0)));
    need(book->logSheet({line("I4", "", "0.30 mm")}));
    EXPECT_EQ(said(), (Said{"plan", "at 0", "to 360", "I4 left 0.30 mm"}));
}

} // namespace bench_sheet_tests
} // namespace asleft
