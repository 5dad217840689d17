#include "sample.h"
#include "support.h"

#include <measure/parse.h>

#include <sqlite3.h>

namespace asleft {
namespace tools_tests {

using namespace std::chrono_literals;

class Tools : public GarageTest {
protected:
    Tool stored(Tool tool)
    {
        tool.id = committed(*garage, [&](Transaction &transaction) { return insertTool(transaction, tool); });
        return tool;
    }

    /// A wrench with everything that can be known of one.
    Tool storedWrench()
    {
        Tool wrench = newWrench("Dial", 0, 0);
        wrench.kind = ToolKind::TorqueRead;
        wrench.lever = Typed<Length>{thou(16'500), LengthUnit::Inch, "16 1/2"};
        wrench.deviationText = "2,5";
        wrench.torque = TorqueTool{true,
                                   parse<Torque>("12,5", TorqueUnit::PoundFoot, DecimalMark::Comma).value(),
                                   parse<Torque>("80", TorqueUnit::PoundFoot).value(),
                                   Rational(5, 2),
                                   2024y / std::chrono::February / 29,
                                   wrench.lever->value};
        return stored(wrench);
    }
};

TEST_F(Tools, KeepWhatTheyTightenWith)
{
    Tool third = newWrench("Preset", 9, 9);
    third.torque->deviationPercent = Rational(10, 3);
    Tool lever = newWrench("Long", 20, 200);
    lever.lever = Typed<Length>{micrometres(400'000), LengthUnit::Millimetre, "400"};
    lever.torque->lever = lever.lever->value;
    Tool adapter{ToolId(0), "Crow-foot", "", {}, ToolKind::Adapter};
    adapter.length = Typed<Length>{Length{}, LengthUnit::Thou, "0"};
    adapter.size = "9/16 in";
    Tool socket{ToolId(0), "Socket", "", {}, ToolKind::Socket};
    socket.size = "13 mm";
    const std::vector<Tool> expected = {
        storedWrench(),
        stored(newWrench("Click", 6, 30)),
        stored(third),
        stored(lever),
        stored({ToolId(0), "No range known", "", {}, ToolKind::TorqueSet}),
        stored({ToolId(0), "Protractor", "", {}, ToolKind::AngleGauge}),
        stored(adapter),
        stored(socket),
        stored(newFeelerSet("Leaves", "0.20", {hundredths(20)})),
    };
    reopen();
    EXPECT_EQ(tools(*garage).value(), expected);
    EXPECT_EQ(Raw(path).text("SELECT calibration_due FROM tool WHERE id = 1"), "2024-02-29");
}

TEST_F(Tools, KeepDaysOfAnyYear)
{
    std::vector<Tool> expected;
    for (const std::chrono::sys_days due : {std::chrono::sys_days(1970y / 1 / 1), std::chrono::sys_days(1969y / 12 / 31),
                                            std::chrono::sys_days(987y / 6 / 5), std::chrono::sys_days(9999y / 12 / 31)}) {
        Tool wrench = newWrench("Wrench", 6, 30);
        wrench.torque->calibrationDue = due;
        expected.push_back(stored(wrench));
    }
    EXPECT_EQ(tools(*garage).value(), expected);
    Tool wrench = newWrench("Wrench", 6, 30);
    wrench.torque->calibrationDue = 10'000y / 1 / 1;
    auto transaction = Transaction::begin(*garage);
    EXPECT_FALSE(insertTool(*transaction, wrench));
}

TEST_F(Tools, AreDueWhenItWasSaidLast)
{
    Tool dial = storedWrench();
    Tool click = stored(newWrench("Click", 6, 30));
    const auto say = [&](const Tool &tool, std::optional<std::chrono::sys_days> due) {
        auto transaction = Transaction::begin(*garage);
        EXPECT_TRUE(insertCalibration(*transaction, tool.id, due, {1'000}) && transaction->commit());
    };
    say(click, 2026y / 1 / 31);
    say(dial, 2025y / 2 / 28);
    say(click, 2025y / 12 / 31);
    dial.torque->calibrationDue = 2025y / 2 / 28;
    click.torque->calibrationDue = 2025y / 12 / 31;
    reopen();
    EXPECT_EQ(tools(*garage).value(), (std::vector{dial, click})) << "not the latest day, but the last word";
    say(dial, std::nullopt);
    dial.torque->calibrationDue.reset();
    EXPECT_EQ(tools(*garage).value(), (std::vector{dial, click})) << "not known is said too";
    EXPECT_EQ(Raw(path).text("SELECT calibration_due FROM tool WHERE id = 1"), "2024-02-29") << "nothing is written over";
}

TEST_F(Tools, RefuseACalibrationThatCannotBe)
{
    const Tool wrench = storedWrench();
    for (const auto &[tool, due] :
         {std::pair(ToolId(99), std::chrono::sys_days(2026y / 1 / 1)), std::pair(wrench.id, std::chrono::sys_days(10'000y / 1 / 1))}) {
        auto transaction = Transaction::begin(*garage);
        EXPECT_FALSE(insertCalibration(*transaction, tool, due, {1'000}));
        EXPECT_FALSE(transaction->commit());
    }
}

TEST_F(Tools, AreDamagedWhereTheirCalibrationIs)
{
    storedWrench();
    stored(newFeelerSet("Leaves", "0.20", {hundredths(20)}));
    garage.reset();
    const std::string sound = bytesOf(path);
    for (const char *row : {"(1, '2023-02-29', 0)", "(2, '2023-02-28', 0)", "(2, NULL, 0)", "(3, NULL, 0)"}) {
        Raw(path).run("PRAGMA foreign_keys = OFF; INSERT INTO tool_calibration (tool, due, at_ms) VALUES " + std::string(row));
        reopen();
        const auto read = tools(*garage);
        ASSERT_FALSE(read) << row;
        EXPECT_EQ(read.error().kind, ErrorKind::Damaged) << row;
        garage.reset();
        writeBytes(path, sound);
    }
}

TEST_F(Tools, RefuseWhatNoColumnHolds)
{
    Tool wrench = newWrench("Wrench", 6, 30);
    wrench.deviationText = "odd";
    wrench.torque->deviationPercent = Rational(1, Int128{1} << 70);
    auto transaction = Transaction::begin(*garage);
    EXPECT_EQ(insertTool(*transaction, wrench).error(), (Error{ErrorKind::DeviationOutOfRange, {"odd"}}));
    EXPECT_FALSE(transaction->commit());
}

TEST_F(Tools, KeepTheRulesOfTheirTable)
{
    storedWrench();
    stored(newFeelerSet("Leaves", "0.20", {hundredths(20)}));
    for (const char *refused : {
             "least = NULL",
             "least = most + 1",
             "least = -1",
             "least_unit = 'x'",
             "least_text = NULL",
             "most = NULL",
             "most_unit = 'mm'",
             "most_text = NULL",
             "most = NULL, most_unit = NULL, most_text = NULL",
             "kind = 'adapter'",
             "kind = 'x'",
             "deviation_numerator = NULL",
             "deviation_numerator = 0",
             "deviation_denominator = 0",
             "deviation_text = NULL",
             "calibration_due = 'soon'",
             "lever_nm = 0",
             "lever_unit = 'Nm'",
             "lever_text = NULL",
             "length_nm = 1",
             "length_nm = 0, length_unit = 'mm', length_text = '0'",
             "size = NULL",
         })
        EXPECT_EQ(Raw(path).run("UPDATE tool SET " + std::string(refused) + " WHERE id = 1") & 0xff, SQLITE_CONSTRAINT) << refused;
    EXPECT_EQ(Raw(path).run("UPDATE tool SET calibration_due = '2024-01-01' WHERE id = 2"), SQLITE_CONSTRAINT_CHECK);
    EXPECT_EQ(Raw(path).run("UPDATE tool SET lever_nm = 1, lever_unit = 'mm', lever_text = '' WHERE id = 1"), SQLITE_OK)
        << "what others above are near to";
    stored({ToolId(0), "Crow-foot", "", {}, ToolKind::Adapter});
    EXPECT_EQ(Raw(path).run("UPDATE tool SET lever_nm = 1, lever_unit = 'mm', lever_text = '' WHERE id = 3"), SQLITE_CONSTRAINT_CHECK);
    EXPECT_EQ(Raw(path).run("UPDATE tool SET length_nm = -1, length_unit = 'mm', length_text = '' WHERE id = 3"), SQLITE_CONSTRAINT_CHECK);
    EXPECT_EQ(Raw(path).run("UPDATE tool SET length_nm = 0, length_unit = 'mm', length_text = '0' WHERE id = 3"), SQLITE_OK);
}

TEST_F(Tools, AreDamagedWhereNobodyCanReadThem)
{
    storedWrench();
    garage.reset();
    const std::string sound = bytesOf(path);
    for (const char *change :
         {"kind = 'x'", "least_unit = 'x'", "most_unit = 'mm'", "most = NULL", "least = NULL", "deviation_numerator = NULL",
          "deviation_denominator = NULL", "deviation_denominator = 0", "calibration_due = 'tomorrow'", "calibration_due = '2023-02-29'",
          "least = NULL, most = NULL", "lever_unit = 'x'", "length_nm = 1"}) {
        Raw(path).run("PRAGMA ignore_check_constraints = ON; UPDATE tool SET " + std::string(change));
        reopen();
        const auto read = tools(*garage);
        ASSERT_FALSE(read) << change;
        EXPECT_EQ(read.error().kind, ErrorKind::Damaged) << change;
        garage.reset();
        writeBytes(path, sound);
        reopen();
        EXPECT_TRUE(tools(*garage)) << "before: " << change;
        garage.reset();
    }
}

} // namespace tools_tests
} // namespace asleft
