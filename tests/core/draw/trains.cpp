#include "gui.h"
#include "head_checks.h"

#include <QLineF>

namespace asleft {

namespace trains_tests {

/// Every valve train on engines of every layout, up to the most cylinders. Few radial ones: planning them takes longest.
std::vector<Case> everyTrain()
{
    const std::pair<Layout, std::vector<int>> engines[] = {
        {Layout::InLine, {1, 3, 6, 12}}, {Layout::Vee, {2, 8, 12, 24}}, {Layout::Flat, {2, 6, 16}},     {Layout::Single, {1}},
        {Layout::W, {3, 12, 24}},        {Layout::Radial, {3, 9, 14}},  {Layout::Opposed, {4, 16, 24}},
    };
    std::vector<Case> cases;
    for (const auto &[layout, counts] : engines) {
        for (const int cylinders : counts) {
            for (const Train &train : allTrains)
                addEngine(cases, withTrain(engineText(layout, cylinders), train), train.name);
        }
    }
    return cases;
}

TEST(Trains, NothingOverlapsWhateverIsSetAtACylinder)
{
    for (const Case &engine : everyTrain()) {
        SCOPED_TRACE(engine.name);
        const HeadPlan plan = planHead(engine.design, {700, 330});
        expectSquaresApart(plan);
        expectInside(engine.design, plan);
        expectTextsApart(plan);
        expectOrder(engine.design, plan);
    }
}

TEST(Trains, ALargerPanelHasRoomForEveryName)
{
    for (const Case &engine : everyTrain()) {
        if (engine.design.layout == Layout::Radial)
            continue;
        SCOPED_TRACE(engine.name);
        const HeadPlan plan = planHead(engine.design, {1400, 800});
        expectTextsApart(plan);
        EXPECT_TRUE(hasNames(plan));
    }
}

TEST(Trains, ThePanelMayBeTooSmallForAnything)
{
    for (const Case &engine : everyTrain()) {
        SCOPED_TRACE(engine.name);
        const HeadPlan plan = planHead(engine.design, {10, 10});
        EXPECT_EQ(plan.size, smallestHead);
        expectSquaresApart(plan);
        expectOrder(engine.design, plan);
    }
}

TEST(Trains, TwentyFourPointsAreLargeAndNamed)
{
    const Train withScrews{"", "2+2", true, true};
    for (const EngineDesign &design :
         {*designEngine(withTrain(engineText(Layout::InLine, 6, "1-5-3-6-2-4"), withScrews)), engineOf(Layout::Vee, 12, plainOrder(12))}) {
        ASSERT_EQ(design.adjusters().size(), 24U);
        const HeadPlan plan = planHead(design, {700, 330});
        EXPECT_GE(plan.pointDiameter, 44);
        EXPECT_TRUE(hasNames(plan));
        EXPECT_EQ(plan.pointLabels.front().size, TextSize::Small);
        expectLeaders(design, plan);
    }
}

/// A six with everything two sides can have: each place is looked up by the name of its point.
class WholeTrain : public ::testing::Test {
protected:
    WholeTrain()
        : m_design(*designEngine(withTrain(engineText(Layout::InLine, 6, "1-5-3-6-2-4"), {"", "2+2", true, true, true, true}))),
          m_plan(planHead(m_design, {1000, 600}))
    {
    }

    [[nodiscard]] QPointF at(const char *name) const
    {
        for (qsizetype index = 0; index < m_plan.points.size(); ++index) {
            if (m_plan.pointLabels[index].text == QLatin1String(name))
                return m_plan.points[index];
        }
        ADD_FAILURE() << name;
        return {};
    }

    EngineDesign m_design;
    HeadPlan m_plan;
};

TEST_F(WholeTrain, ABridgeHasItsLashInTheMiddleAndItsScrewBeside)
{
    EXPECT_EQ(m_plan.bridges.size(), 12);
    for (const char *lash : {"I1", "E1", "I6", "E6"}) {
        const bool has = std::any_of(m_plan.bridges.begin(), m_plan.bridges.end(), [&](const QLineF &bridge) {
            return std::abs(bridge.center().x() - at(lash).x()) < 1e-6 && std::abs(bridge.center().y() - at(lash).y()) < 1e-6;
        });
        EXPECT_TRUE(has) << lash;
    }
    EXPECT_EQ(at("BE3").y(), at("E3").y());
    EXPECT_GT(at("BE3").x(), at("E3").x());
    EXPECT_LT(at("BE3").x(), at("E4").x());
}

TEST_F(WholeTrain, AnInjectorStandsBetweenTheRowsAndADecompressorByItsExhaust)
{
    EXPECT_GT(at("J2").y(), at("E2").y() + m_plan.pointDiameter - 1e-6);
    EXPECT_LT(at("J2").y(), at("I2").y() - m_plan.pointDiameter + 1e-6);
    EXPECT_LT(std::abs(at("D2").y() - at("E2").y()), std::abs(at("D2").y() - at("I2").y()));
    EXPECT_GT(at("D2").x(), at("D1").x());
}

TEST(Radial, TheFirstStandsAtTheTopAndTheOthersFollowInTheDirectionOfRotation)
{
    for (const Rotation rotation : {Rotation::Clockwise, Rotation::Anticlockwise}) {
        EngineText text = engineText(Layout::Radial, 5, "1-3-5-2-4");
        text.rotation = rotation;
        const EngineDesign design = *designEngine(text);
        const HeadPlan plan = planHead(design, {700, 330});
        EXPECT_EQ(plan.heads.size(), 5);
        const QPointF first = plan.numbers[0].box.center();
        EXPECT_NEAR(first.x(), 350, 1);
        for (int cylinder = 1; cylinder < 5; ++cylinder)
            EXPECT_LT(first.y(), plan.numbers[cylinder].box.center().y());
        const double second = plan.numbers[1].box.center().x();
        EXPECT_EQ(second > 350, rotation == Rotation::Clockwise);
    }
}

TEST(Radial, EachPointIsNearestItsOwnCylinder)
{
    const EngineDesign design = engineOf(Layout::Radial, 9, "1-3-5-7-9-2-4-6-8");
    const HeadPlan plan = planHead(design, {700, 330});
    const auto adjusters = design.adjusters();
    for (std::size_t index = 0; index < adjusters.size(); ++index) {
        const auto away = [&](const PlacedText &number) {
            return QLineF(plan.points[static_cast<qsizetype>(index)], number.box.center()).length();
        };
        const auto nearest = std::min_element(plan.numbers.begin(), plan.numbers.end(),
                                              [&](const PlacedText &a, const PlacedText &b) { return away(a) < away(b); });
        EXPECT_EQ(std::distance(plan.numbers.begin(), nearest), adjusters[index].cylinder.index) << index;
    }
}

TEST(Radial, TwoRowsStandSideBySide)
{
    const HeadPlan plan = planHead(engineOf(Layout::Radial, 14, plainOrder(14)), {700, 330});
    ASSERT_EQ(plan.castings.size(), 2);
    EXPECT_LT(plan.castings[0].right(), plan.castings[1].left());
    EXPECT_EQ(plan.crankcases.size(), 2);
}

} // namespace trains_tests

} // namespace asleft
