#include "colour_maths.h"
#include "gui.h"

#include <draw/palette.h>

#include <QList>

namespace asleft {

namespace colours_tests {

struct Named {
    const char *name;
    QColor colour;
};

QList<Named> grounds(const Ink &ink)
{
    return {{"paper", ink.paper}, {"casting", ink.casting}, {"pad", ink.pad}, {"field", ink.field}, {"key", ink.key}};
}

class ColoursInEachLook : public ::testing::TestWithParam<Look> {
protected:
    const Ink &ink = asleft::ink(GetParam());
};

TEST_P(ColoursInEachLook, TextIsReadableOnEveryGround)
{
    const QList<Named> texts{
        {"text", ink.text}, {"quietText", ink.quietText}, {"accentText", ink.accentText}, {"wedgeText", ink.wedgeText}};
    for (const Named &text : texts) {
        for (const Named &ground : grounds(ink))
            EXPECT_GE(contrast(text.colour, ground.colour), 4.5) << text.name << " on " << ground.name;
    }
    EXPECT_GE(contrast(ink.onChosen, ink.chosen), 4.5);
}

TEST_P(ColoursInEachLook, ShapesStandOutFromEveryGround)
{
    const QList<Named> shapes{{"shape", ink.shape}, {"fill", ink.fill}, {"accent", ink.accent},         {"wedge", ink.wedge},
                              {"faint", ink.faint}, {"edge", ink.edge}, {"strongLine", ink.strongLine}, {"chosen", ink.chosen}};
    for (const Named &shape : shapes) {
        for (const Named &ground : grounds(ink))
            EXPECT_GE(contrast(shape.colour, ground.colour), 3.0) << shape.name << " on " << ground.name;
    }
}

TEST_P(ColoursInEachLook, MarksStandOutFromTheScale)
{
    for (const QColor &mark : {ink.accent, ink.wedge, ink.shape, ink.strongLine}) {
        EXPECT_GE(contrast(mark, ink.band), 3.0) << mark.name().toStdString();
        EXPECT_GE(contrast(mark, ink.track), 3.0) << mark.name().toStdString();
    }
}

TEST_P(ColoursInEachLook, PaintHasADarkEdge)
{
    EXPECT_GE(contrast(ink.paint, ink.paintEdge), 4.5);
    EXPECT_GE(contrast(ink.paintEdge, ink.accent), 3.0);
}

TEST_P(ColoursInEachLook, FourColoursAreToldApartByEverySight)
{
    const QList<Named> four{{"blue", ink.accent}, {"yellow", ink.paint}, {"vermillion", ink.wedge}, {"black", ink.paintEdge}};
    for (const Sight sight : {Sight::Usual, Sight::Protan, Sight::Deutan, Sight::Tritan}) {
        for (qsizetype first = 0; first < four.size(); ++first) {
            for (qsizetype second = first + 1; second < four.size(); ++second) {
                const double difference = deltaE2000(labOf(seenBy(sight, four[first].colour)), labOf(seenBy(sight, four[second].colour)));
                EXPECT_GE(difference, 20) << four[first].name << " beside " << four[second].name << ", sight " << static_cast<int>(sight);
            }
        }
    }
}

TEST_P(ColoursInEachLook, PaletteIsComplete)
{
    const QPalette colours = palette(GetParam());
    for (int role = 0; role < QPalette::NColorRoles; ++role) {
        if (role == QPalette::NoRole)
            continue;
        for (const auto group : {QPalette::Active, QPalette::Inactive, QPalette::Disabled})
            EXPECT_TRUE(colours.isBrushSet(group, static_cast<QPalette::ColorRole>(role))) << "role " << role << ", group " << group;
    }
}

TEST_P(ColoursInEachLook, PaletteTextsAreReadableInEveryGroup)
{
    using P = QPalette;
    const std::pair<P::ColorRole, P::ColorRole> pairs[] = {
        {P::WindowText, P::Window},
        {P::Text, P::Base},
        {P::Text, P::AlternateBase},
        {P::ButtonText, P::Button},
        {P::ToolTipText, P::ToolTipBase},
        {P::PlaceholderText, P::Base},
        {P::Link, P::Window},
        {P::HighlightedText, P::Highlight},
        {P::BrightText, P::Window},
    };
    const QPalette colours = palette(GetParam());
    for (const auto group : {P::Active, P::Inactive, P::Disabled}) {
        for (const auto &[text, ground] : pairs)
            EXPECT_GE(contrast(colours.color(group, text), colours.color(group, ground)), 4.5) << "role " << text << ", group " << group;
    }
}

INSTANTIATE_TEST_SUITE_P(Looks, ColoursInEachLook, ::testing::Values(Look::Light, Look::Dark));

TEST(Contrast, BlackOnWhiteIsTwentyOne)
{
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-9);
    EXPECT_NEAR(contrast(QColor(0x767676), Qt::white), 4.54, 0.01);
}

// Pairs of the test data published with Sharma, Wu and Dalal (2005), written down from memory; four of its thirty-four.
TEST(DeltaE2000, AgreesWithPublishedPairs)
{
    EXPECT_NEAR(deltaE2000({50, 2.6772, -79.7751}, {50, 0, -82.7485}), 2.0425, 1e-4);
    EXPECT_NEAR(deltaE2000({50, 3.1571, -77.2803}, {50, 0, -82.7485}), 2.8615, 1e-4);
    EXPECT_NEAR(deltaE2000({50, 2.5, 0}, {73, 25, -18}), 27.1492, 1e-4);
    EXPECT_NEAR(deltaE2000({50, 0, 0}, {50, -1, 2}), 2.3669, 1e-4);
}

TEST(SeenBy, GreysStayGrey)
{
    for (const Sight sight : {Sight::Protan, Sight::Deutan, Sight::Tritan})
        EXPECT_LT(deltaE2000(labOf(seenBy(sight, QColor(0x808080))), labOf(QColor(0x808080))), 0.5);
}

} // namespace colours_tests

} // namespace asleft
