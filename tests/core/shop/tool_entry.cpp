// Tools as their fields are typed: what of them is read, and what is refused where.
#include <shop/tool_entry.h>

#include <gtest/gtest.h>

namespace asleft {
namespace tool_entry_tests {

const std::string tooLong(longestName + 1, 'x');

template <class Reading>
auto kindsIn(const Reading &reading)
{
    std::map<typename decltype(reading.refusals)::key_type, ErrorKind> kinds;
    for (const auto &[field, error] : reading.refusals)
        kinds.emplace(field, error.kind);
    return kinds;
}

Typed<Length> length(std::string_view text)
{
    return parse<Length>(text, LengthUnit::Millimetre).value();
}

using WrenchRefusals = std::map<TorqueWrenchField, ErrorKind>;

TorqueWrenchText wrench()
{
    TorqueWrenchText text;
    text.kind = ToolKind::TorqueRead;
    text.name = " Large ";
    text.least = "20";
    text.most = "200 N·m";
    text.deviation = " 4 % ";
    text.calibrationDue = "2027-03-31";
    text.lever = "450";
    return text;
}

TEST(TorqueWrenchEntry, IsReadWhole)
{
    const TorqueWrenchReading reading = readTorqueWrench(wrench());
    EXPECT_EQ(kindsIn(reading), WrenchRefusals{});
    const Tool &tool = reading.tool;
    EXPECT_EQ(tool.name, "Large");
    EXPECT_EQ(tool.kind, ToolKind::TorqueRead);
    EXPECT_EQ(tool.deviationText, "4");
    EXPECT_EQ(tool.lever, length("450"));
    ASSERT_TRUE(tool.torque);
    EXPECT_TRUE(tool.torque->read);
    EXPECT_EQ(tool.torque->least.text, "20");
    EXPECT_EQ(tool.torque->most.text, "200 N·m");
    EXPECT_EQ(tool.torque->deviationPercent, Rational(4));
    EXPECT_EQ(tool.torque->calibrationDue, parseDay("2027-03-31").value());
    EXPECT_EQ(tool.torque->lever, length("450").value);
    EXPECT_TRUE(checkTorqueTool(*tool.torque));
}

TEST(TorqueWrenchEntry, MayLeaveEmptyWhatItsCardDoesNotSay)
{
    TorqueWrenchText text = wrench();
    text.deviation = " % ";
    text.calibrationDue = text.lever = " ";
    const TorqueWrenchReading reading = readTorqueWrench(text);
    EXPECT_EQ(kindsIn(reading), WrenchRefusals{});
    EXPECT_FALSE(reading.tool.torque->deviationPercent);
    EXPECT_FALSE(reading.tool.torque->calibrationDue);
    EXPECT_FALSE(reading.tool.lever);
}

TEST(TorqueWrenchEntry, OfNothingTypedIsRefusedWhatItNeeds)
{
    EXPECT_EQ(kindsIn(readTorqueWrench({})), (WrenchRefusals{{TorqueWrenchField::Name, ErrorKind::NameMissing},
                                                             {TorqueWrenchField::Least, ErrorKind::EmptyText},
                                                             {TorqueWrenchField::Most, ErrorKind::EmptyText}}));
}

struct WrenchSlip {
    std::string TorqueWrenchText::*text;
    std::string typed;
    TorqueWrenchField field;
    ErrorKind kind;
};
void PrintTo(const WrenchSlip &slip, std::ostream *out)
{
    *out << slip.typed.substr(0, 40);
}

class SlipOnAWrench : public testing::TestWithParam<WrenchSlip> {};

TEST_P(SlipOnAWrench, IsRefusedAtItsFieldAndHidesNoOther)
{
    const WrenchSlip &slip = GetParam();
    TorqueWrenchText text = wrench();
    text.*slip.text = slip.typed;
    EXPECT_EQ(kindsIn(readTorqueWrench(text)), (WrenchRefusals{{slip.field, slip.kind}}));
    const bool ofTheDate = slip.field == TorqueWrenchField::CalibrationDue;
    (ofTheDate ? text.lever : text.calibrationDue) = "soon";
    WrenchRefusals both{{slip.field, slip.kind}};
    both.emplace(ofTheDate ? TorqueWrenchField::Lever : TorqueWrenchField::CalibrationDue,
                 ofTheDate ? ErrorKind::NotANumber : ErrorKind::DateUnread);
    EXPECT_EQ(kindsIn(readTorqueWrench(text)), both);
}

INSTANTIATE_TEST_SUITE_P(
    All, SlipOnAWrench,
    testing::Values(WrenchSlip{&TorqueWrenchText::name, tooLong, TorqueWrenchField::Name, ErrorKind::TextTooLong},
                    WrenchSlip{&TorqueWrenchText::least, "much", TorqueWrenchField::Least, ErrorKind::NotANumber},
                    WrenchSlip{&TorqueWrenchText::least, "210", TorqueWrenchField::Most, ErrorKind::TorqueRange},
                    WrenchSlip{&TorqueWrenchText::most, "200 mm", TorqueWrenchField::Most, ErrorKind::UnknownUnit},
                    WrenchSlip{&TorqueWrenchText::most, "0", TorqueWrenchField::Most, ErrorKind::TorqueRange},
                    WrenchSlip{&TorqueWrenchText::deviation, "0", TorqueWrenchField::Deviation, ErrorKind::DeviationOutOfRange},
                    WrenchSlip{&TorqueWrenchText::deviation, "51 %", TorqueWrenchField::Deviation, ErrorKind::DeviationOutOfRange},
                    WrenchSlip{&TorqueWrenchText::deviation, "little", TorqueWrenchField::Deviation, ErrorKind::NotANumber},
                    WrenchSlip{&TorqueWrenchText::calibrationDue, "31 March", TorqueWrenchField::CalibrationDue, ErrorKind::DateUnread},
                    WrenchSlip{&TorqueWrenchText::lever, "0 mm", TorqueWrenchField::Lever, ErrorKind::LeverOutOfRange},
                    WrenchSlip{&TorqueWrenchText::lever, "3001", TorqueWrenchField::Lever, ErrorKind::LeverOutOfRange}));

TEST(TorqueWrenchEntry, OfABadOneTheRestIsRead)
{
    TorqueWrenchText text = wrench();
    text.name.clear();
    text.most = "much";
    const TorqueWrenchReading reading = readTorqueWrench(text);
    EXPECT_EQ(reading.tool.torque->least.text, "20");
    EXPECT_EQ(reading.tool.torque->deviationPercent, Rational(4));
    EXPECT_EQ(reading.tool.lever, length("450"));
}

using FittingRefusals = std::map<FittingField, ErrorKind>;

TEST(FittingEntry, IsReadWhole)
{
    const FittingReading reading = readFitting({ToolKind::Adapter, " Crow-foot  13 ", " 13 mm ", "40"});
    EXPECT_EQ(kindsIn(reading), FittingRefusals{});
    EXPECT_EQ(reading.tool.kind, ToolKind::Adapter);
    EXPECT_EQ(reading.tool.name, "Crow-foot 13");
    EXPECT_EQ(reading.tool.size, "13 mm");
    EXPECT_EQ(reading.tool.length, length("40"));
}

TEST(FittingEntry, IsAskedForWhatItHas)
{
    const FittingReading gauge = readFitting({ToolKind::AngleGauge, "Dial", tooLong, "far"});
    EXPECT_EQ(kindsIn(gauge), FittingRefusals{});
    EXPECT_EQ(gauge.tool.size, "");
    EXPECT_FALSE(gauge.tool.length);
    EXPECT_EQ(kindsIn(readFitting({ToolKind::Socket, "Deep", "13 mm", "far"})), FittingRefusals{});
}

TEST(FittingEntry, RefusesEachFieldByItself)
{
    EXPECT_EQ(kindsIn(readFitting({ToolKind::Adapter, " ", tooLong, "far"})),
              (FittingRefusals{{FittingField::Name, ErrorKind::NameMissing},
                               {FittingField::Size, ErrorKind::TextTooLong},
                               {FittingField::Length, ErrorKind::NotANumber}}));
    EXPECT_EQ(kindsIn(readFitting({ToolKind::Adapter, "Foot", "", " "})),
              (FittingRefusals{{FittingField::Length, ErrorKind::NameMissing}}));
    EXPECT_EQ(kindsIn(readFitting({ToolKind::Adapter, "Foot", "", "2001"})),
              (FittingRefusals{{FittingField::Length, ErrorKind::AdapterOutOfRange}}));
    EXPECT_EQ(readFitting({ToolKind::Socket, "", "", ""}).refusals.at(FittingField::Name).noun, Noun::Socket);
}

using GaugeRefusals = std::map<GaugeField, ErrorKind>;

TEST(GaugeEntry, IsReadWhole)
{
    const GaugeReading reading = readGauge({ToolKind::Micrometer, "0 to 25", "0.004", ""});
    EXPECT_EQ(kindsIn(reading), GaugeRefusals{});
    EXPECT_EQ(reading.tool.kind, ToolKind::Micrometer);
    EXPECT_EQ(reading.tool.permissibleError, length("0.004"));
    EXPECT_FALSE(reading.tool.resolution);
}

TEST(GaugeEntry, RefusesEachFieldByItself)
{
    const GaugeReading reading = readGauge({ToolKind::DialGauge, "", "little", "0.01 kg"});
    EXPECT_EQ(kindsIn(reading), (GaugeRefusals{{GaugeField::Name, ErrorKind::NameMissing},
                                               {GaugeField::PermissibleError, ErrorKind::NotANumber},
                                               {GaugeField::Resolution, ErrorKind::UnknownUnit}}));
    const GaugeReading half = readGauge({ToolKind::DialGauge, tooLong, "0.02", "fine"});
    EXPECT_EQ(kindsIn(half), (GaugeRefusals{{GaugeField::Name, ErrorKind::TextTooLong}, {GaugeField::Resolution, ErrorKind::NotANumber}}));
    EXPECT_EQ(half.tool.permissibleError, length("0.02")) << "what can be read is read";
}

using FeelerRefusals = std::map<FeelerField, ErrorKind>;

TEST(FeelerEntry, IsReadWhole)
{
    const FeelerReading reading = readFeelerSet({"Set", " 0.10  0.05 mm ", LengthUnit::Inch});
    EXPECT_EQ(kindsIn(reading), FeelerRefusals{});
    EXPECT_EQ(reading.tool.leavesText, "0.10 0.05 mm");
    ASSERT_EQ(reading.tool.leaves.size(), 2U);
    EXPECT_EQ(reading.tool.leaves[0].value, length("0.05").value);
}

TEST(FeelerEntry, RefusesEachFieldByItself)
{
    EXPECT_EQ(kindsIn(readFeelerSet({" ", "0.10 x"})),
              (FeelerRefusals{{FeelerField::Name, ErrorKind::NameMissing}, {FeelerField::Leaves, ErrorKind::LeavesUnread}}));
    EXPECT_EQ(readFeelerSet({"", "0.10"}).tool.leaves.size(), 1U);
}

TEST(CalibrationDue, MayBeLeftOpen)
{
    EXPECT_EQ(readCalibrationDue(" ").value(), std::nullopt);
    EXPECT_EQ(readCalibrationDue("2027-03-31").value(), parseDay("2027-03-31").value());
    EXPECT_EQ(readCalibrationDue("soon").error().kind, ErrorKind::DateUnread);
}

} // namespace tool_entry_tests
} // namespace asleft
