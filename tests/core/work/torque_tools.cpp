// Torque wrenches and what goes with them, as they are typed.
#include "joint_support.h"

namespace asleft {
namespace torque_tools_tests {

class TorqueTools : public WorkTest {
protected:
    Tool only() { return need(tools(*garage)).at(0); }
    template <class Change>
    ErrorKind refused(Change change)
    {
        TorqueWrenchText text = wrenchText("Large", "20", "200");
        change(text);
        return refusal(addTorqueWrench(*garage, text));
    }
};

constexpr std::chrono::sys_days lastOfMarch = std::chrono::year(2027) / 3 / 31;

TEST_F(TorqueTools, AreReadBackAsTyped)
{
    int told = 0;
    QObject::connect(garage.get(), &Garage::changed, [&](const Change &change) { told += change.what == Change::What::Tools ? 1 : 0; });
    TorqueWrenchText text = wrenchText(" Large ", "20", "200 N·m");
    text.deviation = "2.5 %";
    text.calibrationDue = " 2027-03-31 ";
    text.lever = "400 mm";
    const ToolId id = need(addTorqueWrench(*garage, text));
    const Tool tool = only();
    EXPECT_EQ(told, 1);
    EXPECT_EQ(tool.id, id);
    EXPECT_EQ(tool.name, "Large");
    EXPECT_EQ(tool.kind, ToolKind::TorqueSet);
    ASSERT_TRUE(tool.torque);
    EXPECT_FALSE(tool.torque->read);
    EXPECT_EQ(tool.torque->least, typedTorque("20"));
    EXPECT_EQ(tool.torque->most, typedTorque("200 N·m"));
    EXPECT_EQ(tool.torque->deviationPercent, Rational(5, 2));
    EXPECT_EQ(tool.deviationText, "2.5");
    EXPECT_EQ(tool.torque->calibrationDue, lastOfMarch);
    EXPECT_EQ(tool.lever, length("400 mm"));
    EXPECT_EQ(tool.torque->lever, length("400 mm").value);
}

TEST_F(TorqueTools, MayLeaveOpenWhatNobodyKnows)
{
    TorqueWrenchText text = wrenchText("Dial", "10", "100");
    text.kind = ToolKind::TorqueRead;
    text.unit = TorqueUnit::PoundFoot;
    need(addTorqueWrench(*garage, text));
    const Tool tool = only();
    EXPECT_TRUE(tool.torque->read);
    EXPECT_EQ(tool.torque->most.unit, TorqueUnit::PoundFoot);
    EXPECT_EQ(tool.torque->most.value, torque("100 ft-lb"));
    EXPECT_FALSE(tool.torque->deviationPercent);
    EXPECT_EQ(deviationOf(*tool.torque), Rational(4)) << "by ISO 6789";
    EXPECT_FALSE(tool.torque->calibrationDue);
    EXPECT_FALSE(tool.torque->lever);
    EXPECT_FALSE(tool.lever);
}

TEST_F(TorqueTools, AreRefusedWithWhatCannotBe)
{
    EXPECT_EQ(refused([](TorqueWrenchText &text) { text.name = " "; }), ErrorKind::NameMissing);
    EXPECT_EQ(refused([](TorqueWrenchText &text) { text.least = ""; }), ErrorKind::EmptyText);
    EXPECT_EQ(refused([](TorqueWrenchText &text) { text.most = "much"; }), ErrorKind::NotANumber);
    EXPECT_EQ(refused([](TorqueWrenchText &text) { text.most = "200 mm"; }), ErrorKind::UnknownUnit);
    EXPECT_EQ(refused([](TorqueWrenchText &text) { text.least = "210"; }), ErrorKind::TorqueRange);
    EXPECT_EQ(refused([](TorqueWrenchText &text) { text.least = text.most = "0"; }), ErrorKind::TorqueRange);
    EXPECT_EQ(refused([](TorqueWrenchText &text) { text.deviation = "0"; }), ErrorKind::DeviationOutOfRange);
    EXPECT_EQ(refused([](TorqueWrenchText &text) { text.deviation = "51 %"; }), ErrorKind::DeviationOutOfRange);
    EXPECT_EQ(refused([](TorqueWrenchText &text) { text.deviation = "little"; }), ErrorKind::NotANumber);
    EXPECT_EQ(refused([](TorqueWrenchText &text) { text.calibrationDue = "next year"; }), ErrorKind::DateUnread);
    EXPECT_EQ(refused([](TorqueWrenchText &text) { text.lever = "0 mm"; }), ErrorKind::LeverOutOfRange);
    EXPECT_EQ(refused([](TorqueWrenchText &text) { text.lever = "4 m"; }), ErrorKind::UnknownUnit);
    EXPECT_EQ(refused([](TorqueWrenchText &text) { text.lever = "3001 mm"; }), ErrorKind::LeverOutOfRange);
    EXPECT_TRUE(need(tools(*garage)).empty());
}

TEST_F(TorqueTools, ADecimalCommaIsUnderstood)
{
    TorqueWrenchText text = wrenchText("Small", "2,5", "12,5");
    text.deviation = "3,5";
    need(addTorqueWrench(*garage, text, DecimalMark::Comma));
    EXPECT_EQ(only().torque->least.value, torque("2.5"));
    EXPECT_EQ(only().torque->deviationPercent, Rational(7, 2));
    EXPECT_EQ(only().deviationText, "3,5");
}

TEST_F(TorqueTools, FittingsAreReadBackAsTyped)
{
    need(addFitting(*garage, {ToolKind::AngleGauge, " Angle gauge ", "10 mm", "40 mm"}));
    need(addFitting(*garage, {ToolKind::Adapter, "Crow-foot", " 13 mm ", "40"}));
    need(addFitting(*garage, {ToolKind::Adapter, "Extension", "", "0"}));
    need(addFitting(*garage, {ToolKind::Socket, "Deep", "10 mm", "40 mm"}));
    const auto known = need(tools(*garage));
    ASSERT_EQ(known.size(), 4U);
    EXPECT_EQ(known[0].name, "Angle gauge");
    EXPECT_EQ(known[0].kind, ToolKind::AngleGauge);
    EXPECT_EQ(known[0].size, "") << "it fits nothing";
    EXPECT_FALSE(known[0].length);
    EXPECT_EQ(known[1].kind, ToolKind::Adapter);
    EXPECT_EQ(known[1].size, "13 mm");
    EXPECT_EQ(known[1].length, length("40"));
    EXPECT_EQ(known[2].length, length("0"));
    EXPECT_EQ(known[3].kind, ToolKind::Socket);
    EXPECT_EQ(known[3].size, "10 mm");
    EXPECT_FALSE(known[3].length);
    EXPECT_FALSE(known[1].torque);
}

TEST_F(TorqueTools, FittingsAreRefusedWithWhatCannotBe)
{
    const auto refusedFitting = [&](const FittingText &text) { return refusal(addFitting(*garage, text)); };
    EXPECT_EQ(refusedFitting({ToolKind::Socket, "", "10 mm", ""}), ErrorKind::NameMissing);
    EXPECT_EQ(refusedFitting({ToolKind::Adapter, "Crow-foot", "13 mm", " "}), ErrorKind::NameMissing);
    EXPECT_EQ(refusedFitting({ToolKind::Adapter, "Crow-foot", "13 mm", "long"}), ErrorKind::NotANumber);
    EXPECT_EQ(refusedFitting({ToolKind::Adapter, "Crow-foot", "13 mm", "2001 mm"}), ErrorKind::AdapterOutOfRange);
    EXPECT_EQ(refusedFitting({ToolKind::Socket, "Deep", std::string(201, '1'), ""}), ErrorKind::TextTooLong);
    EXPECT_TRUE(need(tools(*garage)).empty());
}

TEST_F(TorqueTools, ComeBackFromCalibration)
{
    const ToolId wrench = need(addTorqueWrench(*garage, wrenchText("Large", "20", "200")));
    std::vector<Change::What> told;
    QObject::connect(garage.get(), &Garage::changed, [&](const Change &change) { told.push_back(change.what); });
    need(setCalibrationDue(*garage, wrench, " "));
    EXPECT_TRUE(told.empty()) << "it was not known";
    need(setCalibrationDue(*garage, wrench, " 2027-03-31 "));
    EXPECT_EQ(only().torque->calibrationDue, lastOfMarch);
    EXPECT_EQ(told, std::vector{Change::What::Tools});
    need(setCalibrationDue(*garage, wrench, "2027-03-31"));
    EXPECT_EQ(told.size(), 1U) << "the same day";
    need(setCalibrationDue(*garage, wrench, "2026-03-31"));
    need(setCalibrationDue(*garage, wrench, ""));
    EXPECT_FALSE(only().torque->calibrationDue);
    EXPECT_EQ(told.size(), 3U);
    garage.reset();
    garage = openedBy("bench");
    EXPECT_FALSE(only().torque->calibrationDue);
}

TEST_F(TorqueTools, AreNotCalibratedWithWhatCannotBe)
{
    TorqueWrenchText text = wrenchText("Large", "20", "200");
    text.calibrationDue = "2027-03-31";
    const ToolId wrench = need(addTorqueWrench(*garage, text));
    const ToolId gauge = need(addFitting(*garage, {ToolKind::AngleGauge, "Angle gauge", "", ""}));
    int told = 0;
    QObject::connect(garage.get(), &Garage::changed, [&] { ++told; });
    EXPECT_EQ(refusal(setCalibrationDue(*garage, wrench, "next year")), ErrorKind::DateUnread);
    EXPECT_EQ(setCalibrationDue(*garage, gauge, "2027-03-31").error(), (Error{ErrorKind::ToolNotForTorque, {"Angle gauge"}}));
    EXPECT_EQ(refusal(setCalibrationDue(*garage, ToolId(99), "2027-03-31")), ErrorKind::NotFound);
    EXPECT_EQ(only().torque->calibrationDue, lastOfMarch);
    EXPECT_EQ(told, 0);
}

TEST_F(TorqueTools, TheDayIsThatOfTheShop)
{
    const std::chrono::milliseconds midnight = (lastOfMarch + std::chrono::days(1)).time_since_epoch();
    const Moment beforeMidnight{midnight.count() - 1};
    EXPECT_EQ(localDay(beforeMidnight), lastOfMarch);
    EXPECT_EQ(localDay({beforeMidnight.utcMilliseconds + 1}), lastOfMarch + std::chrono::days(1));
    EXPECT_EQ(localDay({-1}), std::chrono::sys_days(std::chrono::year(1969) / 12 / 31));
    liveIn("EAST-12");
    EXPECT_EQ(localDay(beforeMidnight), lastOfMarch + std::chrono::days(1));
    liveIn("WEST8");
    EXPECT_EQ(localDay({beforeMidnight.utcMilliseconds + 1}), lastOfMarch);
}

TEST_F(TorqueTools, DaysAreReadOneWayOnly)
{
    EXPECT_EQ(parseDay("2027-03-31").value(), lastOfMarch);
    EXPECT_EQ(parseDay(" 2028-02-29 ").value(), std::chrono::sys_days(std::chrono::year(2028) / 2 / 29));
    for (const char *text : {"", "2027-02-29", "2027-13-01", "2027-00-10", "2027-01-00", "31.03.2027", "03/31/2027", "2027-3-31",
                             "27-03-31", "2027-03-31 10:00", "20270331", "-027-03-31", "2027--1-01", "0000-01-01", "2027-03-3x"})
        EXPECT_EQ(parseDay(text).error().kind, ErrorKind::DateUnread) << text;
}

} // namespace torque_tools_tests
} // namespace asleft
