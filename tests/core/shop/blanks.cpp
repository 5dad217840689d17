// Every field of an engine, a joint and a tool takes every kind of blank.
#include "blanks.h"

#include "story.h"

#include <shop/entry.h>
#include <shop/joint.h>
#include <shop/vehicle_entry.h>
#include <shop/vehicle_number.h>

#include <engine/plan.h>
#include <joints/order.h>
#include <joints/passes.h>
#include <joints/pattern.h>
#include <joints/strength.h>
#include <joints/thread.h>

namespace asleft {
namespace blanks_tests {

using typing::with;

class Blanks : public testing::TestWithParam<std::string_view> {
protected:
    [[nodiscard]] static std::string typed(std::string_view text) { return with(GetParam(), text); }
};

TEST_P(Blanks, InAnEngine)
{
    EngineText text;
    text.numbering = typed("_1_2_3_4_");
    text.firingOrder = typed("_1_-_3_-_4_-_2_");
    text.gaps = typed("_180_-_180_");
    text.valves = typed("_1_+_1_");
    text.valveOrder = typed("_E_I_I_E_E_I_I_E_");
    text.barring = typed("_132_/_11_");
    const EngineReading read = readEngine(text);
    EXPECT_TRUE(read.refusals.empty());
    text.numbering.clear();
    text.firingOrder = typed("1_3_4_2");
    EXPECT_EQ(describeDesign(readEngine(text).design).firingOrder, "1-3-4-2");
}

TEST_P(Blanks, InALineOfTheTable)
{
    const auto plan = planFromTable(readEngine(fourText()).design, {{typed("_1_"), CrankEvent::Compression, typed("_IN_1_2_EX_1_3_")}}, {});
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->positions.front().points.size(), 4U);
}

TEST_P(Blanks, InAJoint)
{
    const auto four = circlePattern(4);
    ASSERT_TRUE(four);
    EXPECT_TRUE(parseThread(typed("_M10_x_1.25_")));
    EXPECT_TRUE(parseStrength(typed("_grade_8_")));
    EXPECT_TRUE(parsePattern(typed("_4_around_a_circle_")));
    EXPECT_EQ(parseOrder(typed("_1_3_2_-_4_"), *four), (TighteningOrder{1, 3, 2, 4}));
    EXPECT_EQ(parseOrder(typed("1_→_3_->_2_4"), *four), (TighteningOrder{1, 3, 2, 4}));
    EXPECT_EQ(parsePasses(typed("_20_N·m_,_hand_tight_;_50_%_,_+_90_°_"), TorqueUnit::NewtonMetre),
              parsePasses("20 N·m, hand tight; 50 %, + 90 °", TorqueUnit::NewtonMetre));
    JointText text;
    text.name = typed("_Rocker_cover_");
    text.target = typed("_40_N·m_");
    text.driveSize = typed("_13_mm_");
    text.pattern = *four;
    const auto joint = readJoint(text);
    ASSERT_TRUE(joint);
    EXPECT_EQ(joint->text.name, "Rocker cover");
    EXPECT_EQ(joint->text.target, "40 N·m");
    EXPECT_EQ(joint->text.driveSize, "13 mm");
}

TEST_P(Blanks, InLeavesReadingsMetersAndTimes)
{
    const auto leaves = parseLeaves(typed("_0.05-0.15_by_0.05_0.30_mm_"), LengthUnit::Inch);
    ASSERT_TRUE(leaves);
    EXPECT_EQ(leaves->size(), 4U);
    EXPECT_TRUE(parseReading(typed("_0.25_to_0.30_mm_"), LengthUnit::Inch));
    EXPECT_TRUE(parseReading(typed("_0.25_-_0.30_mm_"), LengthUnit::Inch));
    const auto meter = parseMeter(typed("_48_210_km_"), MeterUnit::Hour);
    ASSERT_TRUE(meter);
    EXPECT_EQ(meter->thousandths, 48'210'000);
    EXPECT_EQ(meter->text, "48 210 km");
    EXPECT_EQ(parseSinceRun(typed("_2_h_30_min_")), 150);
    EXPECT_TRUE(parseTurns(typed("_3/4_turn_")));
    ScrewText screw;
    screw.pitch = typed("_");
    const auto none = readScrew(screw);
    ASSERT_TRUE(none);
    EXPECT_FALSE(none->has_value());
    EXPECT_EQ(checkVehicleNumber(typed("_1G4AH59H4_5G118341_")).check, checkVehicleNumber("1G4AH59H45G118341").check);
}

INSTANTIATE_TEST_SUITE_P(OfEveryKind, Blanks, testing::ValuesIn(typing::blanks));

} // namespace blanks_tests
} // namespace asleft
