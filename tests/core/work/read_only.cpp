// A garage that may only be read.
#include "joint_support.h"

#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>

namespace asleft {
namespace read_only_tests {

/// A garage on a medium that cannot be written, with a job half done. Root may write anything, so it becomes nobody in particular.
class ReadOnly : public BookTest {
protected:
    ReadOnly()
    {
        bracket = need(addJoint(*garage, tractor.engine, rowText(2)));
        beginValveSet();
        found("I1", "0.20 mm");
        left("I2", "0.30 mm");
        need(moveEngine(*garage, need(addVehicle(*garage, tractorText())).engine, std::nullopt));
        book.reset();
        garage.reset();
        shut();
        garage = openedBy("bench");
        book = bookOf(*garage);
        book->setWho(marta);
        QObject::connect(garage.get(), &Garage::changed, [this] { ++told; });
    }
    ~ReadOnly() override
    {
        book.reset();
        garage.reset();
        EXPECT_EQ(::seteuid(m_before), 0);
        EXPECT_EQ(::chmod(folder().c_str(), 0755), 0);
    }
    ReadOnly(const ReadOnly &) = delete;
    ReadOnly &operator=(const ReadOnly &) = delete;

    JointId bracket{0};
    int told = 0;

private:
    [[nodiscard]] std::string folder() const { return std::filesystem::path(path).parent_path().string(); }
    void shut() const
    {
        EXPECT_EQ(::chmod(path.c_str(), 0444), 0);
        EXPECT_EQ(::chmod(folder().c_str(), 0555), 0);
        if (m_before == 0) {
            EXPECT_EQ(::seteuid(65534), 0);
        }
    }
    uid_t m_before = ::geteuid();
};

template <class T>
void expectRefused(const Result<T> &result, const std::string &path)
{
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error(), (Error{ErrorKind::GarageReadOnly, {path}}));
}

TEST_F(ReadOnly, IsReadWhole)
{
    EXPECT_TRUE(garage->readOnly());
    EXPECT_EQ(need(vehicles(*garage)).size(), 3U);
    EXPECT_EQ(need(jobs(*garage)).size(), 1U);
    EXPECT_EQ(need(people(*garage)).size(), 2U);
    EXPECT_TRUE(need(tools(*garage)).empty());
    EXPECT_EQ(need(specs(*garage, tractor.engine)).size(), 2U);
    EXPECT_EQ(need(joints(*garage, tractor.engine)).size(), 1U);
    EXPECT_FALSE(need(turningTable(*garage, tractor.engine)));
    EXPECT_EQ(need(meterReadings(*garage, tractor.vehicle)).size(), 1U);
    EXPECT_EQ(need(engineStays(*garage, tractor.engine)).size(), 1U);
    EXPECT_EQ(need(decisionRule(*garage)), DecisionRule::Simple);
    EXPECT_EQ(book->state().acts.size(), 5U);
    EXPECT_EQ(point("I1").stage, PointStage::Found);
    EXPECT_TRUE(point("I2").settled());
    need(book->catchUp());
    EXPECT_EQ(book->proposedPlan().positions.size(), 2U);
    book->setCondition(EngineCondition::Hot);
    EXPECT_EQ(book->session().condition, EngineCondition::Hot);
}

TEST_F(ReadOnly, RefusesEveryEdit)
{
    const VehicleId vehicle = tractor.vehicle;
    const EngineId engine = tractor.engine;
    expectRefused(addVehicle(*garage, tractorText()), path);
    expectRefused(changeVehicle(*garage, vehicle, engine, tractorText()), path);
    expectRefused(readMeter(*garage, vehicle, "9999 h", MeterUnit::Hour), path);
    expectRefused(moveEngine(*garage, engine, std::nullopt), path);
    expectRefused(moveEngine(*garage, engine, vehicle), path);
    expectRefused(addEngine(*garage, std::nullopt, tractorText()), path);
    expectRefused(addPerson(*garage, "A.V.", ""), path);
    expectRefused(addPerson(*garage, "M.K.", ""), path);
    expectRefused(addFeelerSet(*garage, "Set", "0.05", LengthUnit::Millimetre), path);
    expectRefused(addGauge(*garage, {ToolKind::DialGauge, "Dial", "", ""}), path);
    expectRefused(addTorqueWrench(*garage, wrenchText("Large", "20", "200")), path);
    expectRefused(addFitting(*garage, {ToolKind::Socket, "Socket", "10 mm", ""}), path);
    expectRefused(setCalibrationDue(*garage, ToolId(1), "2027-03-31"), path);
    expectRefused(addJoint(*garage, engine, coverText()), path);
    expectRefused(reviseJoint(*garage, bracket, engine, rowText(2)), path);
    expectRefused(addJointToJob(*garage, job, *book->state().frame->jointNow(bracket)), path);
    expectRefused(setDecisionRule(*garage, DecisionRule::WithUncertainty), path);
    expectRefused(setDecisionRule(*garage, DecisionRule::Simple), path);
    expectRefused(reviseSpec(*garage, engine, SpecSubject::IntakeLash, lashText("0.2 mm")), path);
    expectRefused(reviseSpec(*garage, engine, SpecSubject::IntakeLash, lashText("0.30 ± 0.05 mm")), path);
    expectRefused(reviseTable(*garage, engine, {{"1", CrankEvent::Compression, "IN 1"}}, {}), path);
    expectRefused(openJob(*garage, vehicle, engine, builtInSheets().front(), "Valves"), path);
    expectRefused(Garage::create(inFolder("new.asleft"), {clock, std::make_shared<ScriptedUids>("new"), "new"}), inFolder("new.asleft"));
    EXPECT_EQ(told, 0);
    EXPECT_EQ(need(vehicles(*garage)).size(), 3U);
}

TEST_F(ReadOnly, RefusesEveryAct)
{
    const JobState before = book->state();
    const StepId step = before.frame->job.steps.front().id;
    expectRefused(book->logReading(reading("I1", Phase::AsLeft, "0.30 mm")), path);
    expectRefused(book->leaveAllHere(), path);
    expectRefused(book->openNut(at("I1")), path);
    expectRefused(book->keepAsLeft(at("I2"), ""), path);
    expectRefused(book->sendToCheckAgain({at("I2")}, Disturbance::Other, ""), path);
    expectRefused(book->logSheet({{.point = at("I1"), .left = reading("I1", Phase::AsLeft, "0.30 mm")}}), path);
    expectRefused(book->confirmCrank(degrees(0)), path);
    expectRefused(book->turnCrank(degrees(360)), path);
    expectRefused(book->readTurningCautions(), path);
    expectRefused(book->choosePlan(book->proposedPlan()), path);
    expectRefused(book->markStepDone(step), path);
    expectRefused(book->untickTarget(bracket, 1), path);
    expectRefused(book->loosen({.joint = bracket, .fasteners = {1}}), path);
    expectRefused(book->tick({.joint = bracket, .places = {{1, 0, 1}}, .how = TickHow::ByFeel, .reason = "why"}), path);
    expectRefused(book->untick(bracket, 1), path);
    expectRefused(book->sayFitted(bracket, {1}, Fitted::New), path);
    expectRefused(book->acceptJoint(bracket, AcceptedWhat::ByFeel, {1}, "why"), path);
    expectRefused(book->beginJoint(bracket), path);
    expectRefused(book->noteFinding(FastenerSubject{bracket, {}}, "rust"), path);
    expectRefused(book->undo(), path);
    expectRefused(book->redo(), path);
    EXPECT_EQ(book->state().acts, before.acts);
    EXPECT_EQ(book->state().points, before.points);
    EXPECT_FALSE(book->session().crankConfirmed);
    EXPECT_FALSE(book->session().turningCautionsRead);
    EXPECT_EQ(told, 0);
}

TEST_F(ReadOnly, RefusesWithoutAPersonToo)
{
    const auto nobody = bookOf(*garage);
    expectRefused(nobody->openNut(at("I1")), path);
    expectRefused(nobody->confirmCrank(degrees(0)), path);
}

} // namespace read_only_tests
} // namespace asleft
