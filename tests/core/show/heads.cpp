#include "gui.h"
#include "samples.h"

#include <show/head.h>

#include <QFontMetricsF>

#include <cmath>

namespace asleft {

namespace {

struct Case {
    EngineDesign design;
    std::string name;
};

/// Every layout with every number of cylinders up to sixteen that it has, in two rows and in one.
std::vector<Case> everyEngine()
{
    std::vector<Case> cases;
    for (const Layout layout : {Layout::InLine, Layout::Vee, Layout::Flat}) {
        const CylinderRange range = cylinderRange(layout);
        const int banks = layout == Layout::InLine ? 1 : 2;
        for (int cylinders = range.fewest; cylinders <= std::min(16, range.most); ++cylinders) {
            if (cylinders % banks != 0)
                continue;
            const std::string name = std::to_string(static_cast<int>(layout)) + "/" + std::to_string(cylinders);
            cases.push_back({engineOf(layout, cylinders, plainOrder(cylinders)), name + " two rows"});
            cases.push_back({engineOf(layout, cylinders, plainOrder(cylinders), valvesInOneLine(cylinders / banks)), name + " one row"});
        }
    }
    return cases;
}

const QList<QSizeF> sizes{{600, 330}, {648, 380}, {700, 400}, {900, 420}, {1000, 700}, {1400, 800}};

QRectF inkBox(const PlacedText &text)
{
    const QFontMetricsF metrics(textFont(text.size));
    const double width = metrics.horizontalAdvance(text.text);
    const double height = metrics.capHeight();
    const double left = text.alignment & Qt::AlignLeft ? text.box.left() : text.box.center().x() - width / 2;
    return {left, text.box.center().y() - height / 2, width, height};
}

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

TEST_P(EachHead, PointsNeverOverlap)
{
    forEveryEngine([](const EngineDesign &, const HeadPlan &plan) {
        for (qsizetype first = 0; first < plan.points.size(); ++first) {
            for (qsizetype second = first + 1; second < plan.points.size(); ++second) {
                const QPointF apart = plan.points[first] - plan.points[second];
                EXPECT_GE(std::max(std::abs(apart.x()), std::abs(apart.y())), plan.pointDiameter - 1e-6) << first << " and " << second;
            }
        }
    });
}

TEST_P(EachHead, EverythingLiesInsideItsCastingAndThePanel)
{
    forEveryEngine([](const EngineDesign &design, const HeadPlan &plan) {
        const QRectF panel(QPointF(), plan.size);
        EXPECT_EQ(static_cast<std::size_t>(plan.castings.size()), design.banks.size());
        for (const QRectF &casting : plan.castings)
            EXPECT_TRUE(panel.contains(casting));
        const auto onACasting = [&plan](const QRectF &box) {
            return std::any_of(plan.castings.begin(), plan.castings.end(), [&box](const QRectF &casting) { return casting.contains(box); });
        };
        for (qsizetype index = 0; index < plan.points.size(); ++index) {
            EXPECT_TRUE(onACasting(plan.pointRect(index))) << index;
            EXPECT_TRUE(onACasting(inkBox(plan.pointLabels[index]))) << index;
        }
        for (const PlacedText &number : plan.numbers)
            EXPECT_TRUE(onACasting(inkBox(number)));
        for (const PlacedText &label : plan.labels)
            EXPECT_TRUE(onACasting(inkBox(label)));
    });
}

TEST_P(EachHead, NoTextLiesOnAPointOrOnAnotherText)
{
    forEveryEngine([](const EngineDesign &, const HeadPlan &plan) {
        QList<QRectF> texts;
        for (const auto &list : {plan.pointLabels, plan.numbers, plan.labels}) {
            for (const PlacedText &text : list)
                texts.append(inkBox(text));
        }
        for (qsizetype first = 0; first < texts.size(); ++first) {
            for (qsizetype second = first + 1; second < texts.size(); ++second)
                EXPECT_FALSE(texts[first].intersects(texts[second])) << first << " and " << second;
            for (qsizetype point = 0; point < plan.points.size(); ++point)
                EXPECT_FALSE(texts[first].intersects(plan.pointRect(point))) << first << " on point " << point;
        }
    });
}

TEST_P(EachHead, PointsAreLargeEnoughForAFinger)
{
    forEveryEngine([](const EngineDesign &design, const HeadPlan &plan) {
        const bool oneRow = design.valveRows == ValveRows::One;
        const std::size_t valvesInBank = 2 * design.banks.front().size();
        const bool roomForAFinger = !oneRow || valvesInBank <= 16;
        EXPECT_GE(plan.pointDiameter, roomForAFinger ? 44 : 36);
    });
}

TEST_P(EachHead, OnePlaceForEachValveInOrder)
{
    forEveryEngine([](const EngineDesign &design, const HeadPlan &plan) {
        const auto valves = design.adjusters();
        ASSERT_EQ(static_cast<std::size_t>(plan.points.size()), valves.size());
        ASSERT_EQ(plan.pointLabels.size(), plan.points.size());
        ASSERT_EQ(plan.leaderX.size(), plan.points.size());
        ASSERT_EQ(plan.numbers.size(), design.cylinders());
        for (std::size_t index = 0; index < valves.size(); ++index)
            EXPECT_EQ(plan.pointLabels[static_cast<qsizetype>(index)].text.toStdString(), shortName(design, valves[index]));
    });
}

/// Behind the other bank's points a line may have to run where both stand on two crowded levels.
bool mustBeClear(const EngineDesign &design, const HeadPlan &plan, qsizetype point, qsizetype other)
{
    const auto onFirst = [&plan](qsizetype index) { return plan.castings.first().contains(plan.points[index]); };
    const bool crowded = design.valveRows == ValveRows::One && design.banks.front().size() > 6;
    return !crowded || onFirst(point) == onFirst(other);
}

TEST_P(EachHead, LeaderLinesReachTheBarClearOfOtherPoints)
{
    forEveryEngine([](const EngineDesign &design, const HeadPlan &plan) {
        for (qsizetype point = 0; point < plan.points.size(); ++point) {
            const QPainterPath line = leaderLine(plan, point, plan.size.height());
            EXPECT_EQ(line.currentPosition().y(), plan.size.height());
            EXPECT_TRUE(QRectF(QPointF(), plan.size).contains(line.boundingRect().adjusted(-1, -1, 1, 0)));
            for (qsizetype other = 0; other < plan.points.size(); ++other) {
                if (other == point || !mustBeClear(design, plan, point, other))
                    continue;
                const double body = plan.pointDiameter * 0.32;
                QPainterPath circle;
                circle.addEllipse(plan.points[other], body, body);
                EXPECT_FALSE(circle.intersects(line)) << point << " runs over " << other;
            }
        }
    });
}

INSTANTIATE_TEST_SUITE_P(Sizes, EachHead, ::testing::ValuesIn(sizes.begin(), sizes.end()));

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

} // namespace

} // namespace asleft
