// A vehicle and its engine as their fields are typed: what is refused where.
#include <shop/vehicle_entry.h>

#include <gtest/gtest.h>

namespace asleft {
namespace vehicle_entry_tests {

using Field = VehicleField;
using Fields = std::vector<Field>;

VehicleTyped four()
{
    VehicleTyped typed;
    typed.texts = {{Field::Name, "Hollin"}, {Field::Cylinders, "4"}, {Field::FiringOrder, "1-3-4-2"}};
    return typed;
}

VehicleTyped withCam()
{
    VehicleTyped typed = four();
    typed.camKnown = true;
    typed.texts[Field::IntakeOpens] = "-4";
    typed.texts[Field::IntakeCloses] = "45";
    typed.texts[Field::ExhaustOpens] = "45";
    typed.texts[Field::ExhaustCloses] = "10.5";
    return typed;
}

Fields refusedIn(const VehicleTyped &typed)
{
    Fields fields;
    for (const auto &[field, error] : readVehicle(typed, DecimalMark::Point).refusals)
        fields.push_back(field);
    return fields;
}

TEST(VehicleEntry, TakesAPlainFour)
{
    EXPECT_EQ(refusedIn(four()), Fields{});
}

struct Slip {
    const char *what;
    Field field;
    std::string text;
};
void PrintTo(const Slip &slip, std::ostream *out)
{
    *out << slip.what;
}

class SlipOnAVehicle : public testing::TestWithParam<Slip> {};

TEST_P(SlipOnAVehicle, IsRefusedAtItsOwnField)
{
    VehicleTyped typed = four();
    typed.texts[GetParam().field] = GetParam().text;
    EXPECT_EQ(refusedIn(typed), Fields{GetParam().field});
}

INSTANTIATE_TEST_SUITE_P(
    All, SlipOnAVehicle,
    testing::Values(Slip{"no name", Field::Name, "  "}, Slip{"a page as name", Field::Name, std::string(1000, 'x')},
                    Slip{"a page as plate", Field::Mark, std::string(1000, 'x')}, Slip{"meter in letters", Field::Meter, "abc"},
                    Slip{"meter below zero", Field::Meter, "-3"}, Slip{"no cylinders", Field::Cylinders, ""},
                    Slip{"cylinders in letters", Field::Cylinders, "four"}, Slip{"half a cylinder", Field::Cylinders, "4.5"},
                    Slip{"too many cylinders", Field::Cylinders, "400"}, Slip{"no order", Field::FiringOrder, ""},
                    Slip{"a cylinder missing", Field::FiringOrder, "1-3-4"}, Slip{"a cylinder twice", Field::FiringOrder, "1-3-3-2"},
                    Slip{"a cylinder it has not", Field::FiringOrder, "1-3-4-9"},
                    Slip{"a page as order", Field::FiringOrder, std::string(2000, '1')},
                    Slip{"gaps of 710", Field::Gaps, "180-180-180-170"}, Slip{"gaps below zero", Field::Gaps, "-180"},
                    Slip{"gaps in letters", Field::Gaps, "abc"}, Slip{"too few labels", Field::Numbering, "1 2 3"},
                    Slip{"a label twice", Field::Numbering, "1 2 3 3"}, Slip{"two banks in line", Field::Numbering, "1 2 / 3 4"},
                    Slip{"too few valves", Field::ValveOrder, "E I I E"}, Slip{"valves in letters", Field::ValveOrder, "E I I E E I I X"},
                    Slip{"ambiguous pitch", Field::Pitch, "1,250"}, Slip{"pitch in letters", Field::Pitch, "abc"},
                    Slip{"pitch below zero", Field::Pitch, "-3"}, Slip{"endless pitch", Field::Pitch, "1e9 mm"},
                    Slip{"a page as number", Field::Number, std::string(1000, 'x')}, Slip{"six valves a cylinder", Field::Valves, "6"},
                    Slip{"valves in letters a cylinder", Field::Valves, "abc"}, Slip{"an exhaust valve missing", Field::Valves, "2+0"},
                    Slip{"teeth in letters", Field::Barring, "abc"}, Slip{"no pinion", Field::Barring, "132"},
                    Slip{"pinion without teeth", Field::Barring, "132/0"}, Slip{"ratio out of range", Field::Ratio, "80"},
                    Slip{"ratio in letters", Field::Ratio, "abc"}));

TEST(VehicleEntry, EveryLayoutIsTakenWithItsUsualNumbering)
{
    const std::vector<std::pair<Layout, int>> layouts{{Layout::InLine, 5}, {Layout::Vee, 12},   {Layout::Flat, 6},
                                                      {Layout::W, 12},     {Layout::Radial, 9}, {Layout::Opposed, 8}};
    for (const auto &[layout, cylinders] : layouts) {
        VehicleTyped typed = four();
        typed.layout = layout;
        typed.texts[Field::Cylinders] = std::to_string(cylinders);
        std::string &order = typed.texts[Field::FiringOrder];
        order = "1";
        for (int label = 2; label <= cylinders; ++label)
            order.append("-").append(std::to_string(label));
        EXPECT_EQ(refusedIn(typed), Fields{}) << cylinders;
        typed.texts[Field::Cylinders] = "25";
        EXPECT_EQ(refusedIn(typed), Fields{Field::Cylinders}) << cylinders;
    }
}

TEST(VehicleEntry, ABridgeNeedsAPair)
{
    VehicleTyped typed = four();
    typed.texts[Field::Valves] = "1+1";
    typed.bridged = true;
    EXPECT_EQ(refusedIn(typed), Fields{Field::Valves});
    typed.texts[Field::Valves] = "4";
    typed.bridgeScrews = true;
    typed.injectors = true;
    typed.decompressors = true;
    EXPECT_EQ(refusedIn(typed), Fields{});
    const VehicleReading read = readVehicle(typed, DecimalMark::Point);
    const auto design = designEngine(read.text.engine);
    ASSERT_TRUE(design);
    // A four-valve head with bridges has two lashes and two bridge screws a cylinder, one decompressor and one injector.
    EXPECT_EQ(design->adjusters().size(), std::size_t(4 * (2 + 2 + 1 + 1)));
}

TEST(VehicleEntry, ASingleHasNeitherOrderNorNumbers)
{
    VehicleTyped typed = four();
    typed.layout = Layout::Single;
    typed.texts[Field::FiringOrder] = "left from before";
    EXPECT_FALSE(isAskedFor(Field::FiringOrder, typed));
    EXPECT_EQ(refusedIn(typed), Fields{});
    const auto design = designEngine(readVehicle(typed, DecimalMark::Point).text.engine);
    ASSERT_TRUE(design);
    EXPECT_EQ(design->cylinders(), 1);
}

TEST(VehicleEntry, ATwoStrokeHasNoIntakeEvents)
{
    VehicleTyped typed = four();
    typed.cycle = Cycle::TwoStroke;
    EXPECT_EQ(refusedIn(typed), Fields{});
    EXPECT_EQ(readVehicle(typed, DecimalMark::Point).text.engine.cam, twoStrokeCam());
    typed.camKnown = true;
    EXPECT_FALSE(isAskedFor(Field::IntakeOpens, typed));
    EXPECT_EQ(refusedIn(typed), (Fields{Field::ExhaustOpens, Field::ExhaustCloses}));
}

TEST(VehicleEntry, HydraulicTappetsHaveAWaitAndNoPitch)
{
    VehicleTyped typed = four();
    typed.texts[Field::Pitch] = "abc";
    typed.texts[Field::BleedDown] = "15 min";
    typed.adjusters = AdjusterKind::Hydraulic;
    EXPECT_FALSE(isAskedFor(Field::Pitch, typed));
    EXPECT_EQ(refusedIn(typed), Fields{});
    EXPECT_EQ(readVehicle(typed, DecimalMark::Point).text.screw.bleedDown, std::string("15 min"));
    for (const char *bad : {"abc", "-3", "3 days", "1e9"}) {
        typed.texts[Field::BleedDown] = bad;
        EXPECT_EQ(refusedIn(typed), Fields{Field::BleedDown});
    }
}

TEST(VehicleEntry, AnArcWantsBothEnds)
{
    VehicleTyped typed = withCam();
    typed.injectors = true;
    typed.texts[Field::ExhaustAgainFrom] = "-40";
    typed.texts[Field::InjectorTo] = "abc";
    EXPECT_EQ(refusedIn(typed), (Fields{Field::ExhaustAgainTo, Field::InjectorFrom, Field::InjectorTo}));
    typed.texts[Field::ExhaustAgainTo] = "60";
    typed.texts[Field::InjectorFrom] = "-70";
    typed.texts[Field::InjectorTo] = "70";
    EXPECT_EQ(refusedIn(typed), Fields{});
    const CamEvents cam = readVehicle(typed, DecimalMark::Point).text.engine.cam;
    EXPECT_EQ(cam.exhaustAgain, std::optional(CrankArc{degrees(-40), degrees(60)}));
    EXPECT_EQ(cam.injector, std::optional(CrankArc{degrees(-70), degrees(70)}));
    typed.texts[Field::InjectorTo] = "800";
    EXPECT_EQ(refusedIn(typed), Fields{Field::InjectorTo});
    typed.injectors = false;
    EXPECT_EQ(refusedIn(typed), Fields{});
}

TEST(VehicleEntry, AMeterRunsBackOnlyOnTheSameMeter)
{
    const MeterReading last{MeterReadingId(1), VehicleId(1), MeterUnit::Hour, 3'812'000, "3 812 h", {}};
    VehicleTyped typed = four();
    const auto refusalOf = [&](const char *text, MeterUnit unit, bool replaced) -> std::optional<ErrorKind> {
        typed.texts[Field::Meter] = text;
        typed.meterUnit = unit;
        typed.meterReplaced = replaced;
        const auto refusals = readVehicle(typed, DecimalMark::Point, last).refusals;
        return refusals.empty() ? std::nullopt : std::optional(refusals.at(Field::Meter).kind);
    };
    EXPECT_EQ(refusalOf("3811", MeterUnit::Hour, false), std::optional(ErrorKind::MeterRunsBack));
    EXPECT_EQ(refusalOf("3812", MeterUnit::Hour, false), std::optional<ErrorKind>());
    EXPECT_EQ(refusalOf("12", MeterUnit::Hour, true), std::optional<ErrorKind>());
    EXPECT_EQ(refusalOf("12", MeterUnit::Kilometre, false), std::optional<ErrorKind>());
    EXPECT_EQ(refusalOf("abc", MeterUnit::Hour, true), std::optional(ErrorKind::MeterUnread));
}

TEST(VehicleEntry, AnEngineAloneIsAskedForNoName)
{
    VehicleTyped typed = four();
    typed.texts.erase(Field::Name);
    typed.about = VehicleTyped::About::Engine;
    EXPECT_EQ(refusedIn(typed), Fields{});
    typed.about = VehicleTyped::About::Vehicle;
    typed.texts[Field::FiringOrder] = "1-1";
    EXPECT_EQ(refusedIn(typed), Fields{Field::Name});
}

TEST(VehicleEntry, OneSlipHidesNoOther)
{
    VehicleTyped typed = four();
    typed.texts[Field::FiringOrder] = "1-3-4";
    typed.texts[Field::Gaps] = "abc";
    typed.texts[Field::Pitch] = "1,250";
    EXPECT_EQ(refusedIn(typed), (Fields{Field::FiringOrder, Field::Gaps, Field::Pitch}));
}

TEST(VehicleEntry, CamEventsAreAskedForOnlyWhereTheyAreKnown)
{
    VehicleTyped typed = four();
    typed.camKnown = true;
    EXPECT_EQ(refusedIn(typed), (Fields{Field::IntakeOpens, Field::IntakeCloses, Field::ExhaustOpens, Field::ExhaustCloses}));
    typed.texts[Field::IntakeOpens] = "-4";
    typed.texts[Field::IntakeCloses] = "45";
    typed.texts[Field::ExhaustOpens] = "45";
    typed.texts[Field::ExhaustCloses] = "10.5";
    EXPECT_EQ(refusedIn(typed), Fields{});
    const CamEvents cam = readVehicle(typed, DecimalMark::Point).text.engine.cam;
    EXPECT_EQ(cam.intakeOpensBeforeTdc, degrees(-4));
    EXPECT_EQ(cam.exhaustClosesAfterTdc, millidegrees(10'500));
    EXPECT_FALSE(cam.assumed);
    typed.texts[Field::ExhaustOpens] = "700";
    EXPECT_EQ(refusedIn(typed), Fields{Field::ExhaustCloses});
}

} // namespace vehicle_entry_tests
} // namespace asleft
