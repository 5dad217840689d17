#include "engines.h"

namespace asleft {
namespace describe_tests {

TEST(Describe, WritesWhatIsReadBack)
{
    EngineText odd = engineText(Layout::Flat, 4, "A1-B2-A2-B1", "67.125-292.875");
    odd.numbering = "A1 A2 / B1 B2";
    odd.valveOrder = "EIIE/IEEI";
    odd.cam = events(degrees(-10), millidegrees(13'500), degrees(21), degrees(-19), degrees(5));
    odd.cam.checkLift = "1 mm";
    odd.rotation = Rotation::Anticlockwise;
    const EngineText rows[] = {
        odd,
        engineText(Layout::InLine, 1, ""),
        fourText(),
        engineText(Layout::InLine, 7, "1 3 5 7 2 4 6"),
        engineText(Layout::Vee, 16, "1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16"),
        engineText(Layout::InLine, 2, "1-2", "0.12345678903-719.876543211"),
        engineText(Layout::InLine, 3, "1-2-3", "0.333333333-359.666666667-360"),
        engineText(Layout::InLine, 3, "1-2-3", "12.3456789014-12.3456789016-695.308642197"),
        engineText(Layout::Vee, 2, "1-2", "270-450"),
    };
    for (const EngineText &row : rows) {
        const auto design = designEngine(row);
        ASSERT_TRUE(design.has_value()) << row.gaps;
        const EngineText described = describeDesign(*design);
        EXPECT_EQ(made(described), *design) << described.gaps;
        EXPECT_EQ(designEngine(described, DecimalMark::Comma), *design) << described.gaps;
    }
    EXPECT_EQ(describeDesign(made(odd)).firingOrder, "A1-B2-A2-B1");
    EXPECT_EQ(describeDesign(made(odd)).gaps, "67.1250-292.8750-67.1250-292.8750");
    EXPECT_EQ(describeDesign(made(odd)).numbering, "A1 A2 / B1 B2");
    EXPECT_EQ(describeDesign(made(odd)).valveOrder, "E I I E / I E E I");
    EXPECT_EQ(describeDesign(inLine4()).gaps, "");
    // A half that the parser rounded to even is written back as typed.
    EXPECT_EQ(describeDesign(made(engineText(Layout::InLine, 2, "1-2", "0.0005-719.9995"))).gaps, "0.0005-719.9995");
}

} // namespace describe_tests
} // namespace asleft
