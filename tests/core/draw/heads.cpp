#include "gui.h"
#include "head_checks.h"

#include <words/points.h>

namespace asleft {

namespace heads_tests {

/// Every layout with every number of cylinders it has, in two rows and in the maker's order.
std::vector<Case> everyEngine()
{
    std::vector<Case> cases;
    for (const Layout layout : allLayouts) {
        const CylinderRange range = cylinderRange(layout);
        for (int cylinders = range.fewest; cylinders <= range.most; ++cylinders) {
            const EngineText text = engineText(layout, cylinders);
            addEngine(cases, text, "two rows");
            const auto design = designEngine(text);
            if (!design || layout == Layout::Radial)
                continue;
            EngineText one = text;
            one.valveOrder = valvesInOneLine(cylinders / static_cast<int>(design->banks.size()));
            addEngine(cases, one, "one row");
        }
    }
    return cases;
}

const QList<QSizeF> sizes{{600, 330}, {648, 380}, {700, 400}, {900, 420}, {1000, 700}, {1400, 800}};

class EachHead : public ::testing::TestWithParam<QSizeF> {
protected:
    template <class Check>
    void forEveryEngine(Check check)
    {
        for (const Case &engine : everyEngine()) {
            SCOPED_TRACE(engine.name);
            check(engine.design, planHead(engine.design, GetParam()));
        }
    }
};

TEST_P(EachHead, NothingOverlapsOrIsCutOff)
{
    forEveryEngine([](const EngineDesign &design, const HeadPlan &plan) {
        expectSquaresApart(plan);
        expectInside(design, plan);
        expectTextsApart(plan);
        expectOrder(design, plan);
        EXPECT_TRUE(hasNames(plan));
    });
}

/// Around a crankcase, and in four rows, so many points have less room than a finger wants.
double leastPoint(const EngineDesign &design)
{
    if (design.layout == Layout::Radial)
        return design.cylinders() <= 9 ? 40 : 20;
    const bool oneRow = design.valveRows == ValveRows::One;
    const std::size_t inBank = (oneRow ? 2 : 1) * design.banks.front().size();
    if (design.banks.size() > 2)
        return inBank <= 4 ? 36 : 26;
    return inBank <= 16 ? 44 : 34;
}

TEST_P(EachHead, PointsAreLargeEnoughForAFinger)
{
    forEveryEngine([](const EngineDesign &design, const HeadPlan &plan) { EXPECT_GE(plan.pointDiameter, leastPoint(design)); });
}

TEST_P(EachHead, LeaderLinesReachTheBarClearOfOtherPoints)
{
    forEveryEngine(expectLeaders);
}

INSTANTIATE_TEST_SUITE_P(Sizes, EachHead, ::testing::ValuesIn(sizes.begin(), sizes.end()));

QStringList labelsOf(const HeadPlan &plan)
{
    QStringList labels;
    for (const PlacedText &label : plan.labels)
        labels.append(label.text);
    return labels;
}

TEST(Head, BanksAreCalledByTheirLettersOrByTheirCount)
{
    EngineText lettered = engineText(Layout::Vee, 4, "A1-B1-A2-B2");
    lettered.numbering = "A1 A2 / B1 B2";
    EXPECT_TRUE(labelsOf(planHead(*designEngine(lettered), {700, 400})).contains(QStringLiteral("bank A")));
    EXPECT_TRUE(labelsOf(planHead(engineOf(Layout::Vee, 4, "1-3-4-2"), {700, 400})).contains(QStringLiteral("bank 2")));
    EXPECT_FALSE(labelsOf(planHead(engineOf(Layout::InLine, 4, "1-3-4-2"), {700, 400})).contains(QStringLiteral("bank 1")));
    EXPECT_TRUE(labelsOf(planHead(engineOf(Layout::Radial, 14, plainOrder(14)), {900, 420})).contains(QStringLiteral("rear row")));
}

TEST(Head, ATwoStrokeWithExhaustValvesAloneHasNoIntakeSide)
{
    const EngineDesign design =
        *designEngine(withTrain(engineText(Layout::InLine, 3, "1-2-3"), {"", "0+2", false, false, false, false, Cycle::TwoStroke}));
    EXPECT_FALSE(labelsOf(planHead(design, {700, 330})).contains(sideName(Side::Intake)));
    EXPECT_TRUE(labelsOf(planHead(design, {700, 330})).contains(sideName(Side::Exhaust)));
}

TEST(Head, OpposedRowsAreTwoFlatsEachWithItsCrankcase)
{
    const HeadPlan plan = planHead(engineOf(Layout::Opposed, 16, plainOrder(16)), {700, 330});
    EXPECT_EQ(plan.castings.size(), 4);
    EXPECT_EQ(plan.crankcases.size(), 2);
    EXPECT_EQ(plan.barrels.size(), 16);
    EXPECT_EQ(planHead(engineOf(Layout::Flat, 4, "1-4-3-2"), {700, 330}).crankcases.size(), 1);
}

TEST(Head, ExhaustsStandOutwardOnBothBanksOfAVee)
{
    const EngineDesign design = engineOf(Layout::Vee, 8, "1-8-4-3-6-5-7-2");
    const HeadPlan plan = planHead(design, {648, 400});
    const auto valves = design.adjusters();
    for (std::size_t index = 0; index < valves.size(); index += 2) {
        const QPointF intake = plan.points[static_cast<qsizetype>(index)];
        const QPointF exhaust = plan.points[static_cast<qsizetype>(index) + 1];
        EXPECT_GT(std::abs(exhaust.y() - 200), std::abs(intake.y() - 200));
        EXPECT_EQ(exhaust.x(), intake.x());
    }
}

TEST(Head, OneRowFollowsTheMakersOrder)
{
    const EngineDesign design = engineOf(Layout::InLine, 2, "1-2", "E I I E");
    const HeadPlan plan = planHead(design, {648, 400});
    EXPECT_LT(plan.points[1].x(), plan.points[0].x()); // E1 before I1
    EXPECT_LT(plan.points[0].x(), plan.points[2].x()); // I1 before I2
    EXPECT_LT(plan.points[2].x(), plan.points[3].x()); // I2 before E2
}

TEST(Head, TheTwoCastingsOfAVeeDoNotMeet)
{
    const HeadPlan plan = planHead(engineOf(Layout::Vee, 16, plainOrder(16)), {600, 330});
    EXPECT_LT(plan.castings[0].bottom(), plan.castings[1].top());
}

} // namespace heads_tests

} // namespace asleft
