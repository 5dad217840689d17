// Names, dates and titles take every kind of blank, and are kept in one line.
#include "blanks.h"
#include "engine_texts.h"

#include "support.h"

namespace asleft {
namespace work_blanks_tests {

class BlanksKept : public WorkTest {};

TEST_F(BlanksKept, InOneLine)
{
    for (const std::string_view blank : typing::blanks) {
        const auto typed = [blank](std::string_view text) { return typing::with(blank, text); };
        VehicleText text;
        text.name = typed("_Hollin_40_");
        text.mark = typed("_KD_1_");
        text.meter = typed("_");
        text.engineName = typed("_Old_four_");
        text.engine = fourText();
        const auto added = addVehicle(*garage, text);
        ASSERT_TRUE(added) << blank;
        const VehicleRow row = need(vehicles(*garage)).back();
        EXPECT_EQ(row.vehicle.name, "Hollin 40");
        EXPECT_EQ(row.vehicle.mark, "KD 1");
        EXPECT_EQ(row.engine->name, "Old four");
        EXPECT_EQ(refusal(addPerson(*garage, typed("__"), "")), ErrorKind::NameMissing) << blank;
        EXPECT_TRUE(parseDay(typed("_2027-03-31_"))) << blank;
        need(openJob(*garage, added->vehicle, added->engine, builtInSheets().front(), typed("_Set_the_valves_")));
        EXPECT_EQ(need(jobs(*garage)).front().title, "Set the valves");
        TorqueWrenchText card;
        card.name = typed("_Big_one_");
        card.least = typed("_20_N·m_");
        card.most = typed("_100_");
        card.deviation = typed("_4_%_");
        const ToolId wrench = need(addTorqueWrench(*garage, card));
        const auto rack = need(tools(*garage));
        const auto stored = std::ranges::find(rack, wrench, &Tool::id);
        EXPECT_EQ(stored->name, "Big one");
        EXPECT_EQ(stored->deviationText, "4");
    }
}

} // namespace work_blanks_tests
} // namespace asleft
