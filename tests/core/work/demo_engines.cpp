// The invented garage's engines: each can be set whole, to its own specs, by its own plan; and what is left open on them.
#include "demo.h"

#include <shop/vehicle_number.h>

#include <set>

namespace asleft {
namespace demo_engines_tests {

class DemoEngines : public DemoTest {
protected:
    /// A job of one's own on every engine.
    std::vector<std::unique_ptr<JobBook>> newJobs()
    {
        std::vector<std::unique_ptr<JobBook>> books;
        for (const VehicleRow &row : need(vehicles(*demo))) {
            if (!row.engine)
                continue;
            const JobId job = need(openJob(*demo, row.vehicle.id, row.engine->id, builtInSheets().front(), "Once more"));
            books.push_back(need(JobBook::open(*demo, job)));
            books.back()->setWho(need(people(*demo)).front().id);
        }
        return books;
    }
};

std::string nameOf(const JobBook &book)
{
    return book.state().frame->engine.name;
}

TEST_F(DemoEngines, HaveASpecWithItsPageForAllThatIsSet)
{
    for (const auto &book : newJobs()) {
        const JobFrame &frame = *book->state().frame;
        for (const SettingPoint &point : frame.engine.points) {
            const Spec *spec = frame.specNow(point.adjuster);
            ASSERT_TRUE(spec) << nameOf(*book) << shortName(frame.engine.design, point.adjuster);
            EXPECT_NE(spec->source.manual, "");
            EXPECT_NE(spec->source.page, "");
        }
        ASSERT_TRUE(frame.specNow(SpecSubject::LockNut)) << nameOf(*book);
        EXPECT_TRUE(frame.engine.adjuster) << nameOf(*book) << ": its screw's pitch";
    }
}

TEST_F(DemoEngines, HavePlansThatReachEveryPoint)
{
    for (const auto &book : newJobs()) {
        const EngineDesign &design = book->state().frame->engine.design;
        EXPECT_TRUE(book->proposedPlan().unreached.empty()) << nameOf(*book);
        const CrankPlan two = generatePlan(design, PlanWay::TwoPositions);
        EXPECT_TRUE(two.unreached.empty()) << nameOf(*book);
        for (const PlanPosition &position : two.positions)
            EXPECT_TRUE(std::ranges::none_of(position.points, &PlanPoint::doubtful)) << nameOf(*book);
    }
}

TEST_F(DemoEngines, AreSetWholeByTheirPlan)
{
    for (const auto &book : newJobs()) {
        const CrankPlan plan = book->proposedPlan();
        need(book->choosePlan(plan));
        need(book->readTurningCautions());
        need(book->confirmCrank(plan.positions.front().crank));
        for (const PlanPosition &position : plan.positions) {
            if (book->state().crank->crank != position.crank)
                need(book->turnCrank(position.crank, true));
            need(book->leaveAllHere());
        }
        for (const SettingPoint &point : book->state().frame->engine.points) {
            const PointState &now = book->state().point(point.id);
            EXPECT_EQ(now.left->verdict, Verdict::Inside) << nameOf(*book);
            EXPECT_TRUE(now.settled()) << nameOf(*book);
            EXPECT_FALSE(now.left->reading.outOfPosition) << nameOf(*book);
        }
        EXPECT_EQ(nextValveAct(book->state()), NextAct{}) << nameOf(*book);
    }
}

TEST_F(DemoEngines, AreOfManyKinds)
{
    std::set<Layout> layouts;
    std::set<std::size_t> points;
    int hydraulic = 0;
    for (const auto &book : newJobs()) {
        layouts.insert(book->state().frame->engine.design.layout);
        points.insert(book->state().frame->engine.points.size());
        hydraulic += book->state().frame->engine.screw.kind == AdjusterKind::Hydraulic ? 1 : 0;
    }
    EXPECT_EQ(layouts, (std::set{Layout::InLine, Layout::Vee, Layout::Flat, Layout::Single}));
    EXPECT_EQ(points, (std::set<std::size_t>{3, 4, 8, 12, 15, 16}));
    EXPECT_EQ(hydraulic, 1);
}

TEST_F(DemoEngines, VehicleNumbersAreOldAndNew)
{
    EXPECT_EQ(checkVehicleNumber(rowOf("Aldermoor 50 coupe").vehicle.number).check, NumberCheck::Agrees);
    EXPECT_EQ(checkVehicleNumber(rowOf("Hollin 40 tractor").vehicle.number).check, NumberCheck::NoCheckDigit);
    EXPECT_EQ(checkVehicleNumber(rowOf("Dunnock 75 motorcycle").vehicle.number).check, NumberCheck::None);
}

/// TM 9-2815-256-24: the published table of an in-line six that fires 1-5-3-6-2-4.
TEST_F(DemoEngines, TheLoaderIsHalfSetByThePublishedTableAndHasASecondMeter)
{
    const auto book = bookFor("Corrow 90 wheel loader");
    const JobState &state = book->state();
    ASSERT_EQ(state.plan->positions.size(), 2U);
    EXPECT_EQ(describePoints(state.frame->engine.design, state.plan->positions[0]), "IN 1 2 4 EX 1 3 5");
    EXPECT_EQ(describePoints(state.frame->engine.design, state.plan->positions[1]), "IN 3 5 6 EX 2 4 6");
    for (const std::string_view name : {"I1", "I2", "I4", "E1", "E3", "E5"}) {
        const PointState &point = state.point(pointOf(*book, name));
        EXPECT_TRUE(point.settled()) << name;
        EXPECT_EQ(state.frame->tool(*point.left->reading.tool)->kind, ToolKind::DialGauge);
        EXPECT_TRUE(point.left->reading.temperature);
        EXPECT_EQ(point.left->reading.minutesSinceRun, 15 * 60);
    }
    EXPECT_EQ(planPositionHere(state), 1U);
    EXPECT_EQ(state.point(pointOf(*book, "I3")).stage, PointStage::Found);
    EXPECT_EQ(state.point(pointOf(*book, "I6")).stage, PointStage::Untouched);

    const auto readings = need(meterReadings(*demo, state.frame->vehicle.id));
    ASSERT_EQ(readings.size(), 4U);
    EXPECT_TRUE(readings[2].replaced);
    // 8990 h on the old meter; on the new one, 214 h less the 3 h it came with.
    EXPECT_EQ(meterTotal(readings), 8'990'000 + 211'000);
}

TEST_F(DemoEngines, TheMotorcyclesFirstCylinderIsSetByTurnsAndBleedsDown)
{
    const auto book = bookFor("Dunnock 75 motorcycle");
    const JobState &state = book->state();
    EXPECT_EQ(state.frame->engine.design.gaps, (std::vector{degrees(270), degrees(450)}));
    EXPECT_EQ(state.point(pointOf(*book, "I1")).left->reading.form, ReadingForm::Turned);
    EXPECT_TRUE(state.point(pointOf(*book, "I1")).settled());
    EXPECT_TRUE(state.point(pointOf(*book, "E1")).settled());
    EXPECT_EQ(state.point(pointOf(*book, "I2")).stage, PointStage::Untouched);
    const Moment last = state.acts.back().what.at;
    EXPECT_EQ(bleedDownUntil(state), Moment{last.utcMilliseconds + 20 * 60'000});
}

TEST_F(DemoEngines, TheGeneratorsBridgesGoFirst)
{
    const auto book = bookFor("Brindle 20 generator");
    const JobState &state = book->state();
    EXPECT_TRUE(state.point(pointOf(*book, "BI1")).settled());
    EXPECT_TRUE(state.point(pointOf(*book, "BE1")).settled());
    EXPECT_EQ(state.point(pointOf(*book, "I1")).stage, PointStage::Found);
    EXPECT_EQ(state.point(pointOf(*book, "J1")).stage, PointStage::Untouched);
    EXPECT_EQ(state.point(pointOf(*book, "I1")).found->verdict, Verdict::High);
}

TEST_F(DemoEngines, OneIsOnTheStandAndItsBarrowIsEmpty)
{
    EXPECT_FALSE(rowOf("Pintail motor barrow").engine);
    const VehicleRow row = rowOf("Engine stand");
    ASSERT_TRUE(row.engine);
    EXPECT_TRUE(row.vehicle.stand);
    const auto stays = need(engineStays(*demo, row.engine->id));
    ASSERT_EQ(stays.size(), 2U);
    EXPECT_EQ(stays[0].vehicleName, "Pintail motor barrow");
    EXPECT_TRUE(stays[1].stand);
    const auto book = bookFor("Engine stand");
    EXPECT_EQ(book->state().point(pointOf(*book, "D1")).stage, PointStage::Found);
    EXPECT_EQ(book->state().point(pointOf(*book, "E1")).found->verdict, Verdict::High);
}

} // namespace demo_engines_tests
} // namespace asleft
