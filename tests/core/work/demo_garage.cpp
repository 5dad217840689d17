// The invented garage: what stands in it, and that it is the same every time.
#include "demo.h"
#include "kinds.h"

namespace asleft {
namespace demo_garage_tests {

class DemoGarage : public DemoTest {};

TEST_F(DemoGarage, IsAWholeShopAndTheTractorIsWorkedOnLast)
{
    const auto lines = need(jobs(*demo));
    ASSERT_EQ(lines.size(), 8U);
    EXPECT_EQ(lines.front().vehicleName, "Hollin 40 tractor");
    EXPECT_EQ(lines.front().title, "Set the valves");
    EXPECT_EQ(need(people(*demo)).size(), 3U);
    EXPECT_EQ(need(tools(*demo)).size(), 8U);
    EXPECT_EQ(need(decisionRule(*demo)), DecisionRule::Simple);
    EXPECT_EQ(need(vehicles(*demo)).size(), 8U) << "seven vehicles, and the stand with one engine";
    for (const VehicleRow &row : need(vehicles(*demo)))
        EXPECT_NE(row.meter.has_value(), row.vehicle.stand) << row.vehicle.name;
}

TEST_F(DemoGarage, TheTractorHasOneNutOpenAndAKnownRest)
{
    const auto book = bookFor("Hollin 40 tractor");
    const JobState &state = book->state();
    EXPECT_EQ(openNuts(state), std::vector{pointOf(*book, "I2")});
    EXPECT_EQ(nextAct(state), NextAct(next::LockNut{pointOf(*book, "I2")}));
    EXPECT_EQ(state.crank->crank, degrees(0));
    EXPECT_EQ(state.crank->how, CrankHow::Confirmed);

    const StillOpen open = stillOpen(state, need(jobs(*demo)).front().lastAct.value());
    EXPECT_TRUE(areOf<open::NutOpen>(open.turning));
    ASSERT_TRUE((areOf<open::PointsNotLeft, open::FastenersLoose, open::FastenersLoose, open::FastenersLoose, open::StepUndone,
                       open::StepUndone, open::StepUndone, open::StepUndone>(open.firstStart)));
    EXPECT_EQ(ofKind<open::PointsNotLeft>(open.firstStart).front().count(), 6);
    std::vector<int> loose;
    for (const auto &item : ofKind<open::FastenersLoose>(open.firstStart))
        loose.push_back(item.count);
    EXPECT_EQ(loose, (std::vector{12, 5, 1}));
    EXPECT_TRUE((areOf<open::StepUndone, open::StepUndone>(open.handOver)));

    EXPECT_EQ(state.point(pointOf(*book, "I2")).found->verdict, Verdict::Low);
    EXPECT_EQ(state.point(pointOf(*book, "E3")).found->verdict, Verdict::High);
    EXPECT_EQ(state.point(pointOf(*book, "E3")).stage, PointStage::Found);
    EXPECT_TRUE(state.point(pointOf(*book, "I1")).settled());
    EXPECT_TRUE(state.point(pointOf(*book, "E1")).settled());
}

TEST_F(DemoGarage, TheTractorsOutletIsHalfTightenedAndItsCoverWasLoose)
{
    const auto book = bookFor("Hollin 40 tractor");
    const JobState &state = book->state();
    const auto joints = newestOf(state.frame->joints);
    ASSERT_EQ(joints.size(), 3U);
    const Joint &cover = joints[0];
    EXPECT_EQ(cover.passes.size(), 3U);
    EXPECT_TRUE(std::holds_alternative<Settle>(cover.passes.back()));
    EXPECT_EQ(foundLoose(state.joints.at(cover.id)), (std::vector{3, 5, 12}));
    ASSERT_EQ(state.findings.size(), 1U);
    EXPECT_EQ(std::get<FastenerSubject>(state.findings.front().what.subject).fasteners, (std::vector{3, 5, 12}));

    const JointState &outlet = state.joints.at(joints[1].id);
    EXPECT_EQ(joints[1].passes.size(), 3U);
    EXPECT_EQ(outlet.progress.next, (TickSlot{.fastener = 7, .pass = 2, .round = 1})) << "1-5-3 are at the target";
    EXPECT_EQ(outlet.fasteners.at(5).verdict(), Verdict::Inside);

    const auto wanted = toolsWanted(joints[2], rackOf(state.frame->tools), std::chrono::sys_days(std::chrono::year(2026) / 5 / 15));
    ASSERT_EQ(wanted.size(), 1U);
    EXPECT_TRUE(wanted.front().advice.reaching.empty()) << "no wrench on the rack reaches 3 N·m";
}

/// TM 5-3895-383-24, page 6-60: the published table of an in-line four that fires 1-3-4-2.
TEST_F(DemoGarage, TheTractorsPlanIsThePublishedTable)
{
    const auto book = bookFor("Hollin 40 tractor");
    const EngineDesign &design = book->state().frame->engine.design;
    ASSERT_TRUE(book->state().plan);
    const auto &positions = book->state().plan->positions;
    ASSERT_EQ(positions.size(), 2U);
    EXPECT_EQ(describePoints(design, positions[0]), "IN 1 2 EX 1 3");
    EXPECT_EQ(describePoints(design, positions[1]), "IN 3 4 EX 2 4");
    EXPECT_TRUE(book->state().plan->unreached.empty());
}

TEST_F(DemoGarage, TheCoupesJobIsNotBegun)
{
    const auto book = bookFor("Aldermoor 50 coupe");
    EXPECT_TRUE(book->state().acts.empty());
    EXPECT_EQ(book->state().points.size(), 16U);
    EXPECT_EQ(nextAct(book->state()), NextAct(next::DoStep{book->state().frame->job.steps.front().id}));
    const auto &asked = std::get<SpecBand<Length>>(book->state().frame->specNow(SpecSubject::IntakeLash)->asked);
    EXPECT_EQ(asked.first.unit, LengthUnit::Inch);
    EXPECT_EQ(asked.first.form, BandForm::PlusMinus);
}

TEST_F(DemoGarage, TheVansJobIsDoneByItsManualsTable)
{
    const auto book = bookFor("Sorrel 8 van");
    const JobState &state = book->state();
    EXPECT_EQ(stillOpen(state, need(jobs(*demo)).front().lastAct.value()), StillOpen{});
    EXPECT_EQ(nextAct(state), NextAct{});
    for (const auto &[id, point] : state.points) {
        EXPECT_TRUE(point.settled());
        EXPECT_EQ(point.left->verdict, Verdict::Inside);
        EXPECT_FALSE(point.left->reading.outOfPosition);
    }
    ASSERT_TRUE(state.plan);
    EXPECT_FALSE(state.plan->generated);
    EXPECT_EQ(state.plan->source, "Sorrel 8 repair guide");
    EXPECT_EQ(state.plan->page, "1-23");
    EXPECT_EQ(state.plan->positions.size(), 4U);
    for (const PlanPosition &position : state.plan->positions)
        EXPECT_TRUE(std::ranges::none_of(position.points, &PlanPoint::doubtful));
}

TEST_F(DemoGarage, TheVansValvesWereSetTwiceYearsApart)
{
    const auto books = booksFor("Sorrel 8 van");
    ASSERT_EQ(books.size(), 2U);
    const JobState &now = books[0]->state();
    const JobState &before = books[1]->state();
    EXPECT_EQ(now.frame->engine.id, before.frame->engine.id);
    const std::int64_t apart = now.frame->job.opened.utcMilliseconds - before.frame->job.opened.utcMilliseconds;
    EXPECT_GT(std::chrono::milliseconds(apart), std::chrono::years(2));
    EXPECT_EQ(stillOpen(before, now.frame->job.opened), StillOpen{});
    int drifted = 0;
    for (const auto &[id, point] : before.points) {
        EXPECT_EQ(point.left->verdict, Verdict::Inside);
        EXPECT_NE(point.found->reading.value, now.point(id).found->reading.value);
        drifted += now.point(id).found->reading.value->value != point.left->reading.value->value ? 1 : 0;
    }
    EXPECT_GE(drifted, 4);
    EXPECT_EQ(need(meterReadings(*demo, now.frame->vehicle.id)).size(), 3U);
}

TEST_F(DemoGarage, TimeOnlyGoesForward)
{
    for (const JobLine &line : need(jobs(*demo))) {
        const auto book = need(JobBook::open(*demo, line.id));
        Moment last = line.opened;
        for (const Act &act : book->state().acts) {
            if (act.what.job != line.id)
                continue; // the crank's moves in the engine's other job
            EXPECT_LT(last, act.what.at) << line.vehicleName;
            last = act.what.at;
        }
    }
}

TEST_F(DemoGarage, IsTheSameEveryTime)
{
    const auto again = made("again.asleft");
    const auto lines = need(jobs(*demo));
    const auto linesAgain = need(jobs(*again));
    ASSERT_EQ(lines.size(), linesAgain.size());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto acts = need(JobBook::open(*demo, lines[i].id))->state().acts;
        EXPECT_EQ(acts, need(JobBook::open(*again, linesAgain[i].id))->state().acts);
    }
}

TEST_F(DemoGarage, IsNotMadeOverAnotherFile)
{
    EXPECT_EQ(refusal(makeDemoGarage(inFolder("demo.asleft"))), ErrorKind::FileExists);
}

} // namespace demo_garage_tests
} // namespace asleft
