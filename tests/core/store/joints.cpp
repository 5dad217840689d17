#include "things_test.h"

#include <sqlite3.h>

#include <numbers>
#include <tuple>

namespace asleft {
namespace joints_tests {

auto allOf(const Joint &joint)
{
    return std::tie(joint.id, joint.revision, joint.engine, joint.text, joint.thread, joint.strength, joint.order, joint.orderGenerated,
                    joint.target, joint.passes);
}

class Joints : public ThingsTest {
protected:
    void SetUp() override
    {
        ThingsTest::SetUp();
        four = addEngine(addVehicle("Lorry"), inLineFour());
    }

    Joint stored(Joint joint)
    {
        joint.engine = *four;
        joint.revision = 1;
        joint.id = committed(*garage, [&](Transaction &transaction) { return insertJoint(transaction, joint); });
        return joint;
    }

    Joint storedNext(Joint joint)
    {
        joint.revision = committed(*garage, [&](Transaction &transaction) { return insertJointRevision(transaction, joint); });
        return joint;
    }

    void expectStored(const std::vector<Joint> &expected)
    {
        const auto read = joints(*garage, *four);
        ASSERT_TRUE(read) << read.error().arguments.back();
        ASSERT_EQ(read->size(), expected.size());
        for (std::size_t place = 0; place < expected.size(); ++place)
            EXPECT_TRUE(allOf((*read)[place]) == allOf(expected[place]))
                << "joint " << place << ": " << expected[place].text.name << " revision " << expected[place].revision;
    }

    std::optional<EngineId> four;
};

/// Everything said, as somebody types it whose decimal mark is a comma.
JointText fullText()
{
    JointText text;
    text.name = "Cylinder head";
    text.thread = "M10*1,25";
    text.strength = "10,9";
    text.pattern = rowsPattern(2, 3).value();
    text.pattern.places[1].thread = "m8 × 1,25";
    text.pattern.places[2].length = "62,5 mm";
    text.order = "3 4, 1→6 2–5";
    text.target = "32,5 ± 2,5 Nm";
    text.otherTarget = "24 ± 1,8 ft-lb";
    text.unit = TorqueUnit::KilogramForceCentimetre;
    text.passes = "finger; 127,5; 50 %; target; + 1/4 turn; +22,5°";
    text.condition = ThreadCondition::ThreadLock;
    text.finish = Finish::Cadmium;
    text.drive = DriveKind::SixLobe;
    text.driveSize = "E12";
    text.female = FemaleMaterial::Insert;
    text.engagement = "15,5 mm";
    text.blindHole = true;
    text.singleUse = SingleUse::TorqueToYield;
    text.source = {"Manual", "p. 7", Certainty::FromMemory};
    text.answered = "the manual says so twice";
    return text;
}

JointText leastText(const std::string &name)
{
    JointText text;
    text.name = name;
    text.pattern = rowPattern(1).value();
    text.target = "9";
    return text;
}

TEST_F(Joints, AreReadAsTheyWereStored)
{
    const Joint full = stored(readJoint(fullText(), DecimalMark::Comma).value());
    ASSERT_TRUE(full.target && full.target->second && full.strength && full.thread);
    ASSERT_FALSE(full.orderGenerated);
    ASSERT_EQ(full.text.target, "32,5 ± 2,5 Nm");
    ASSERT_EQ(full.passes.size(), 6U);
    JointText angles = leastText("Snug and turn");
    angles.target.clear();
    angles.passes = "12,5, +90°, +90°";
    const Joint noTarget = stored(readJoint(angles, DecimalMark::Comma).value());
    ASSERT_FALSE(noTarget.target);
    const Joint least = stored(readJoint(leastText("Sensor")).value());
    reopen();
    expectStored({full, noTarget, least});
    EXPECT_TRUE(garage->check());
}

TEST_F(Joints, KeepEveryChoice)
{
    std::vector<Joint> expected;
    const auto keep = [&](const JointText &text) { expected.push_back(stored(readJoint(text).value())); };
    for (const StrengthClass strength : strengthClasses()) {
        JointText text = leastText("Class");
        text.strength = name(strength);
        keep(text);
    }
    for (const char *thread : {"M8", "M8x1", "3/8-24", "#10-32", "1/4-20 UNC"}) {
        JointText text = leastText("Thread");
        text.thread = thread;
        keep(text);
    }
    for (const Pattern &pattern : {rowPattern(7).value(), rowsPattern(2, 7).value(), circlePattern(12).value(),
                                   rectanglePattern(4, 6).value(), coverPattern(11).value(), circlePattern(200).value()}) {
        JointText text = leastText("Pattern");
        text.pattern = pattern;
        keep(text);
    }
    JointText placed = leastText("Placed");
    placed.pattern = {PatternKind::Free, {{999, 0.1 + 0.2, -1.0 / 3}, {1, -1e6, 1e6}, {17, std::numbers::pi, 0}}};
    placed.order = "17-1-999";
    keep(placed);
    for (const char *target : {"32 ± 4", "30-40", "at least 30", "at most 30", "32"}) {
        JointText text = leastText("Band");
        text.target = target;
        keep(text);
    }
    for (const TorqueUnit unit : {TorqueUnit::NewtonMetre, TorqueUnit::PoundFoot, TorqueUnit::PoundInch, TorqueUnit::KilogramForceMetre,
                                  TorqueUnit::KilogramForceCentimetre}) {
        JointText text = leastText("Unit");
        text.unit = unit;
        text.passes = "3, target, settle 2";
        text.settle = unit == TorqueUnit::PoundFoot ? SettleGround::ManualSaysSo : SettleGround::Limiters;
        keep(text);
    }
    for (const ThreadCondition condition :
         {ThreadCondition::Dry, ThreadCondition::Oiled, ThreadCondition::Sealant, ThreadCondition::AntiSeize}) {
        JointText text = leastText("Condition");
        text.condition = condition;
        text.finish = Finish::Black;
        text.singleUse = SingleUse::CrushWasher;
        keep(text);
    }
    for (const FemaleMaterial female : {FemaleMaterial::Iron, FemaleMaterial::Steel, FemaleMaterial::Aluminium}) {
        JointText text = leastText("Female");
        text.female = female;
        keep(text);
    }
    for (const DriveKind drive : {DriveKind::Socket, DriveKind::Spanner, DriveKind::HexKey, DriveKind::Screwdriver}) {
        JointText text = leastText("Drive");
        text.drive = drive;
        keep(text);
    }
    expectStored(expected);
}

TEST_F(Joints, HaveRevisionsInTheOrderTheyWereStored)
{
    const Joint head = stored(readJoint(fullText(), DecimalMark::Comma).value());
    const Joint sensor = stored(readJoint(leastText("Sensor")).value());
    Joint changed = readJoint(leastText("Cylinder head, new gasket")).value();
    changed.id = head.id;
    changed.engine = EngineId(999); // not looked at
    changed = storedNext(changed);
    changed.engine = *four;
    EXPECT_EQ(changed.revision, 2);
    Joint again = head;
    again = storedNext(again);
    EXPECT_EQ(again.revision, 3);
    expectStored({head, sensor, changed, again});
    EXPECT_TRUE(joints(*garage, EngineId(999)).value().empty());
}

TEST_F(Joints, ThatAreNotThereHaveNoNextRevision)
{
    Joint joint = readJoint(leastText("Sensor")).value();
    joint.id = JointId(77);
    auto transaction = Transaction::begin(*garage);
    EXPECT_EQ(insertJointRevision(*transaction, joint).error(), (Error{ErrorKind::NotFound, {}, Noun::Joint}));
    EXPECT_FALSE(transaction->commit());
}

TEST_F(Joints, OfNoEngineAreRefused)
{
    Joint joint = readJoint(leastText("Sensor")).value();
    joint.engine = EngineId(999);
    auto transaction = Transaction::begin(*garage);
    EXPECT_FALSE(insertJoint(*transaction, joint) && transaction->commit());
}

/// A program that generates otherwise, or reads a text otherwise, must not change what half a job was worked by.
TEST_F(Joints, AreNotWorkedOutAnew)
{
    JointText text = leastText("Cover");
    text.pattern = rowPattern(4).value();
    Joint joint = readJoint(text).value();
    ASSERT_TRUE(joint.orderGenerated);
    joint.order = {1, 2, 4, 3};
    ASSERT_NE(joint.order, generateOrder(text.pattern));
    joint.target->first.low = Torque::ofSmallest(1);
    joint.text.passes = "done as ever";
    joint.text.thread = "as before";
    joint.text.strength = "the usual";
    joint = stored(joint);
    expectStored({joint});
}

TEST_F(Joints, AreDamagedWhereNobodyCanReadThem)
{
    stored(readJoint(fullText(), DecimalMark::Comma).value());
    garage.reset();
    const std::string sound = bytesOf(path);
    for (const char *change : {
             "joint_revision SET pattern = 'x'",
             "joint_revision SET thread = 'M8x9'",
             "joint_revision SET strength = '8.9'",
             "joint_revision SET tightening_order = '1-2-3'",
             "joint_revision SET tightening_order = '1-2-3-4-5-9'",
             "joint_revision SET tightening_order = 'x'",
             "joint_revision SET unit = 'mm'",
             "joint_revision SET passes = 'x'",
             "joint_revision SET passes = '+ 90°'",
             "joint_revision SET passes = 'target, settle 2'",
             "joint_revision SET settle = 'x'",
             "joint_revision SET condition = 'x'",
             "joint_revision SET finish = 'x'",
             "joint_revision SET drive = 'x'",
             "joint_revision SET female = 'x'",
             "joint_revision SET single_use = 'x'",
             "joint_revision SET certainty = 'x'",
             "joint_band SET form = 'x'",
             "joint_band SET unit = 'mm'",
             "joint_band SET joint_revision = 99",
             "joint_place SET joint_revision = 99",
             "joint_place SET number = 9 WHERE number = 2",
             "joint_place SET x = 1e300 WHERE number = 2",
             "joint_place SET x = 0, y = 0",
             "joint_place SET thread = 'x' WHERE number = 2",
         }) {
        const std::string table = std::string(change).substr(0, std::string(change).find(' '));
        {
            Raw raw(path);
            raw.run("PRAGMA ignore_check_constraints = ON; PRAGMA foreign_keys = OFF; DROP TRIGGER " + table + "_unchanged");
            ASSERT_EQ(raw.run("UPDATE " + std::string(change)), SQLITE_OK) << change;
            ASSERT_NE(raw.text("SELECT changes()"), "0") << change;
        }
        reopen();
        const auto read = joints(*garage, *four);
        ASSERT_FALSE(read) << change;
        EXPECT_EQ(read.error().kind, ErrorKind::Damaged) << change;
        garage.reset();
        writeBytes(path, sound);
    }
}

TEST_F(Joints, KeepTheRulesOfTheirTables)
{
    stored(readJoint(fullText(), DecimalMark::Comma).value());
    const std::string place = "INSERT INTO joint_place (joint_revision, place, number, x, y, thread, length) VALUES ";
    EXPECT_EQ(Raw(path).run(place + "(1, 90, 1, 0.0, 0.0, '', '')"), SQLITE_CONSTRAINT_UNIQUE);
    EXPECT_EQ(Raw(path).run(place + "(1, 0, 90, 0.0, 0.0, '', '')"), SQLITE_CONSTRAINT_PRIMARYKEY);
    EXPECT_EQ(Raw(path).run(place + "(1, 90, 1000, 0.0, 0.0, '', '')"), SQLITE_CONSTRAINT_CHECK);
    EXPECT_EQ(Raw(path).run(place + "(1, 90, 0, 0.0, 0.0, '', '')"), SQLITE_CONSTRAINT_CHECK);
    EXPECT_EQ(Raw(path).run(place + "(1, 90, 90, 1e7, 0.0, '', '')"), SQLITE_CONSTRAINT_CHECK);
    EXPECT_EQ(Raw(path).run(place + "(1, 90, 90, 'x', 0.0, '', '')") & 0xff, SQLITE_CONSTRAINT);
    const std::string band = "INSERT INTO joint_band (joint_revision, place, form, low, high, unit, text, tolerance_assumed) VALUES ";
    EXPECT_EQ(Raw(path).run(band + "(1, 2, 'range', 1, 2, 'Nm', '', 0)"), SQLITE_CONSTRAINT_CHECK);
    EXPECT_EQ(Raw(path).run(band + "(9, 0, 'range', 2, 1, 'Nm', '', 0)"), SQLITE_CONSTRAINT_CHECK);
    EXPECT_EQ(Raw(path).run(band + "(9, 0, 'range', NULL, NULL, 'Nm', '', 0)"), SQLITE_CONSTRAINT_CHECK);
    EXPECT_EQ(Raw(path).run(band + "(9, 0, 'range', 1, 2, 'mm', '', 0)"), SQLITE_CONSTRAINT_CHECK);
}

TEST_F(Joints, AreNamedByStepsAndStepsAreAppended)
{
    const Joint head = stored(readJoint(leastText("Head")).value());
    const JobId id = committed(*garage, [&](Transaction &transaction) {
        return insertJob(transaction, {vehicles(*garage).value().front().id,
                                       *four,
                                       "Head gasket",
                                       Moment{7},
                                       {{StepKind::Loosen, "Head off", "", Gate::TurningTheCrank, {Caution::HotParts}, head.id},
                                        {StepKind::Note, "Clean", "", {}, {}}}});
    });
    const SheetLine line{
        StepKind::Tighten, "Head on", "In three passes.", Gate::FirstStart, {Caution::HandsClear, Caution::Springs}, head.id};
    const StepId appended = committed(*garage, [&](Transaction &transaction) { return appendStep(transaction, id, line); });
    const StepId last = committed(*garage, [&](Transaction &transaction) {
        return appendStep(transaction, id, {StepKind::Tighten, "Any", "", {}, {}});
    });
    reopen();
    const Job read = job(*garage, id).value();
    ASSERT_EQ(read.steps.size(), 4U);
    EXPECT_EQ(read.steps[0],
              (Step{read.steps[0].id, StepKind::Loosen, "Head off", "", Gate::TurningTheCrank, {Caution::HotParts}, head.id}));
    EXPECT_EQ(read.steps[1].joint, std::nullopt);
    EXPECT_EQ(read.steps[2], (Step{appended, line.kind, line.title, line.detail, line.before, line.cautions, head.id}));
    EXPECT_EQ(read.steps[3], (Step{last, StepKind::Tighten, "Any", "", {}, {}, {}}));

    const JobId empty = committed(*garage, [&](Transaction &transaction) {
        return insertJob(transaction, {vehicles(*garage).value().front().id, *four, "Nothing yet", Moment{8}, {}});
    });
    const StepId first = committed(*garage, [&](Transaction &transaction) { return appendStep(transaction, empty, line); });
    EXPECT_EQ(job(*garage, empty).value().steps.front().id, first);
    for (const auto &[where, what] : {std::pair(JobId(999), line), std::pair(id, SheetLine{StepKind::Note, "x", "", {}, {}, head.id}),
                                      std::pair(id, SheetLine{StepKind::Loosen, "x", "", {}, {}, JointId(999)})}) {
        auto transaction = Transaction::begin(*garage);
        EXPECT_FALSE(appendStep(*transaction, where, what) && transaction->commit());
    }
}

} // namespace joints_tests
} // namespace asleft
