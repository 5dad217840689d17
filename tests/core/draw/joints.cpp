#include "grey.h"
#include "gui.h"
#include "head_checks.h"
#include "joint_samples.h"

#include <QPainter>

#include <cmath>
#include <set>

namespace asleft {

namespace joints_tests {

double distanceOf(QPointF a, QPointF b)
{
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

void expectSquaresApart(const JointPlan &plan)
{
    for (qsizetype first = 0; first < plan.fasteners.size(); ++first) {
        for (qsizetype second = first + 1; second < plan.fasteners.size(); ++second) {
            const QPointF apart = plan.fasteners[first] - plan.fasteners[second];
            EXPECT_GE(std::max(std::abs(apart.x()), std::abs(apart.y())), plan.diameter - 1e-6) << first << " and " << second;
        }
    }
}

void expectInside(const JointPlan &plan)
{
    const QRectF panel(QPointF(), plan.size);
    EXPECT_TRUE(panel.contains(plan.outline.boundingRect()));
    for (qsizetype index = 0; index < plan.fasteners.size(); ++index)
        EXPECT_TRUE(plan.outline.boundingRect().contains(plan.fastenerRect(index))) << index;
    for (const QPolygonF &leg : plan.legs)
        EXPECT_TRUE(std::all_of(leg.begin(), leg.end(), [&panel](QPointF at) { return panel.contains(at); }));
}

QList<QRectF> textsOf(const JointPlan &plan)
{
    QList<QRectF> boxes;
    for (const auto *list : {&plan.numbers, &plan.differences}) {
        for (const PlacedText &text : *list) {
            if (!text.text.isEmpty())
                boxes.append(inkBox(text));
        }
    }
    return boxes;
}

/// How far a box is from a point.
double distanceTo(const QRectF &box, QPointF point)
{
    const double x = std::max({box.left() - point.x(), 0.0, point.x() - box.right()});
    const double y = std::max({box.top() - point.y(), 0.0, point.y() - box.bottom()});
    return std::hypot(x, y);
}

void expectTextsClear(const JointPlan &plan)
{
    const QList<QRectF> texts = textsOf(plan);
    for (qsizetype first = 0; first < texts.size(); ++first) {
        EXPECT_TRUE(plan.outline.boundingRect().contains(texts[first])) << first;
        for (qsizetype second = first + 1; second < texts.size(); ++second)
            EXPECT_FALSE(texts[first].intersects(texts[second])) << first << " and " << second;
        for (const QPointF &fastener : plan.fasteners)
            EXPECT_GE(distanceTo(texts[first], fastener), plan.diameter / 2) << first;
    }
}

double distanceTo(const QPolygonF &leg, QPointF point)
{
    double nearest = distanceOf(leg.first(), point);
    for (qsizetype piece = 1; piece < leg.size(); ++piece) {
        const QLineF line(leg[piece - 1], leg[piece]);
        const QPointF along = line.p2() - line.p1();
        const double squared = std::max(1e-12, QPointF::dotProduct(along, along));
        const double share = std::clamp(QPointF::dotProduct(point - line.p1(), along) / squared, 0.0, 1.0);
        nearest = std::min(nearest, distanceOf(line.p1() + along * share, point));
    }
    return nearest;
}

/// From rim to rim, and under no fastener: clear of its ring, in the smallest panel at least of its hexagon.
void expectLegsSeen(const JointPlan &plan)
{
    ASSERT_EQ(plan.legs.size(), std::max<qsizetype>(0, plan.path.size() - 1));
    for (qsizetype leg = 0; leg < plan.legs.size(); ++leg) {
        EXPECT_NEAR(distanceOf(plan.legs[leg].first(), plan.path[leg]), plan.diameter / 2, plan.diameter * 0.03 + 1.5) << leg;
        EXPECT_NEAR(distanceOf(plan.legs[leg].last(), plan.path[leg + 1]), plan.diameter / 2, plan.diameter * 0.03 + 1.5) << leg;
        const double clear = plan.size == smallestJoint ? 0.345 : 0.475;
        for (const QPointF &fastener : plan.fasteners)
            EXPECT_GE(distanceTo(plan.legs[leg], fastener), plan.diameter * clear) << leg;
    }
}

void expectNumbers(const JointPlan &plan, const Pattern &pattern)
{
    ASSERT_EQ(static_cast<std::size_t>(plan.numbers.size()), pattern.places.size());
    ASSERT_EQ(static_cast<std::size_t>(plan.differences.size()), pattern.places.size());
    for (std::size_t index = 0; index < pattern.places.size(); ++index)
        EXPECT_EQ(plan.numbers[static_cast<qsizetype>(index)].text, QString::number(pattern.places[index].number));
}

JointPlan planOf(const Pattern &pattern, QSizeF size)
{
    return planJoint(pattern, generateOrder(pattern), size);
}

class EachSize : public ::testing::TestWithParam<QSizeF> {};

TEST_P(EachSize, NothingOverlapsOrIsCutOff)
{
    for (const auto &[name, pattern] : jointSamples()) {
        SCOPED_TRACE(name);
        const JointPlan plan = planOf(pattern, GetParam());
        expectSquaresApart(plan);
        expectInside(plan);
        expectTextsClear(plan);
        expectNumbers(plan, pattern);
    }
}

TEST_P(EachSize, ThePathIsSeenFromFastenerToFastener)
{
    for (const auto &[name, pattern] : jointSamples()) {
        SCOPED_TRACE(name);
        expectLegsSeen(planOf(pattern, GetParam()));
    }
}

INSTANTIATE_TEST_SUITE_P(Sizes, EachSize,
                         ::testing::Values(QSizeF(280, 160), QSizeF(600, 330), QSizeF(700, 400), QSizeF(900, 520), QSizeF(1400, 800)));

TEST(Joints, FastenersAreLargeEnoughForAFingerWhereTheSizeAllows)
{
    for (const auto &[name, pattern] : jointSamples()) {
        const double most = planOf(pattern, {1400, 800}).diameter;
        EXPECT_GE(most, 44) << name;
        EXPECT_LE(most, 64) << name;
    }
    for (const Pattern &pattern : {*rowPattern(4), *rowsPattern(2, 7), *coverPattern(12), *circlePattern(8)})
        EXPECT_GE(planOf(pattern, {700, 400}).diameter, 44);
}

TEST(Joints, ThePatternKeepsItsProportions)
{
    for (const auto &[name, pattern] : jointSamples()) {
        const JointPlan plan = planOf(pattern, {700, 400});
        std::set<long> scales;
        for (std::size_t index = 1; index < pattern.places.size(); ++index) {
            const FastenerPosition &a = pattern.places[index - 1];
            const FastenerPosition &b = pattern.places[index];
            const auto at = static_cast<qsizetype>(index);
            scales.insert(std::lround(100 * distanceOf(plan.fasteners[at - 1], plan.fasteners[at]) / std::hypot(a.x - b.x, a.y - b.y)));
        }
        EXPECT_LE(scales.size(), 2U) << name;
        EXPECT_LE(scales.empty() ? 0 : *scales.rbegin() - *scales.begin(), 1) << name;
    }
}

TEST(Joints, ThePathGoesByTheOrder)
{
    const Pattern pattern = *renumbered(*rowPattern(4), std::vector<int>{40, 30, 20, 10});
    const JointPlan plan = planJoint(pattern, {20, 30, 10, 40}, {700, 400});
    EXPECT_EQ(plan.path, (QList<QPointF>{plan.fasteners[2], plan.fasteners[1], plan.fasteners[3], plan.fasteners[0]}));
    EXPECT_EQ(plan.numbers[0].text.toStdString(), "40");
    EXPECT_TRUE(planJoint(pattern, {}, {700, 400}).legs.isEmpty());
    EXPECT_EQ(planJoint(pattern, {10, 77, 40}, {700, 400}).path.size(), 2);
}

TEST(Joints, WhatDiffersIsWrittenBesideIt)
{
    const JointPlan plan = planOf(placedByHand(), {900, 520});
    EXPECT_EQ(plan.differences[4].text.toStdString(), "M10 × 90 mm");
    EXPECT_EQ(plan.differences[8].text.toStdString(), "45 mm");
    EXPECT_TRUE(plan.differences[0].text.isEmpty());
}

TEST_P(EachSize, NumbersInRowsStandOutside)
{
    for (const Pattern &pattern : {*rowPattern(1), *rowPattern(2), *rowPattern(4), *rowPattern(10), *rowsPattern(2, 5), *rowsPattern(2, 7),
                                   *rowsPattern(3, 4), *rectanglePattern(4, 6), *rectanglePattern(6, 4)}) {
        SCOPED_TRACE(writePattern(pattern));
        const JointPlan plan = planOf(pattern, GetParam());
        const QRectF all = QPolygonF(plan.fasteners).boundingRect();
        for (qsizetype index = 0; index < plan.numbers.size(); ++index) {
            const QPointF at = plan.fasteners[index];
            const QRectF number = inkBox(plan.numbers[index]);
            if (at.y() == all.top()) {
                EXPECT_LE(number.bottom(), at.y() - plan.diameter * 0.4) << "above: " << index;
                EXPECT_NEAR(number.center().x(), at.x(), plan.diameter / 2) << index;
            } else if (at.y() == all.bottom()) {
                EXPECT_GE(number.top(), at.y() + plan.diameter * 0.4) << "below: " << index;
                EXPECT_NEAR(number.center().x(), at.x(), plan.diameter / 2) << index;
            } else if (at.x() == all.left()) {
                EXPECT_LE(number.right(), at.x() - plan.diameter * 0.4) << "to the left: " << index;
            } else if (at.x() == all.right()) {
                EXPECT_GE(number.left(), at.x() + plan.diameter * 0.4) << "to the right: " << index;
            }
        }
    }
}

TEST(Joints, AFlangeIsOpenInTheMiddle)
{
    const JointPlan circle = planOf(*circlePattern(12), {900, 520});
    EXPECT_FALSE(circle.outline.contains(QPointF(450, 260)));
    EXPECT_TRUE(planOf(*rectanglePattern(4, 6), {900, 520}).outline.contains(QPointF(450, 260)));
    // Called a circle, but dragged out of round.
    Pattern dragged = *circlePattern(12);
    dragged.places[0].y -= 2;
    EXPECT_TRUE(planOf(dragged, {900, 520}).outline.contains(QPointF(450, 260)));
    for (const QPointF &fastener : circle.fasteners)
        EXPECT_TRUE(circle.outline.contains(fastener));
}

TEST(Joints, TwoHundredStillStandApart)
{
    for (const auto &[name, pattern] : largestJoints()) {
        for (const QSizeF size : {QSizeF(280, 160), QSizeF(900, 520), QSizeF(4000, 3000)}) {
            SCOPED_TRACE(name + " " + std::to_string(size.width()));
            const JointPlan plan = planOf(pattern, size);
            ASSERT_EQ(static_cast<std::size_t>(plan.fasteners.size()), pattern.places.size());
            EXPECT_GT(plan.diameter, 0);
            EXPECT_EQ(plan.legs.size(), plan.path.size() - 1);
            expectSquaresApart(plan);
            expectInside(plan);
            expectTextsClear(plan);
        }
    }
}

TEST(Joints, ALargerPanelShowsEveryNumberOfTwoHundred)
{
    const Pattern pattern = *coverPattern(200);
    const JointPlan plan = planOf(pattern, {6000, 3600});
    EXPECT_GE(plan.diameter, 44);
    expectNumbers(plan, pattern);
}

TEST(Joints, AnythingCanBePlanned)
{
    EXPECT_TRUE(planJoint({}, {}, {700, 400}).fasteners.isEmpty());
    EXPECT_EQ(planOf(*rowPattern(1), {1, 1}).size, smallestJoint);
    Pattern far{PatternKind::Free, {{1, -1e6, -1e6}, {999, 1e6, 1e6}, {3, 1e6, 1e6 - 0.1}}};
    const JointPlan plan = planOf(far, {700, 400});
    EXPECT_TRUE(std::isfinite(plan.diameter));
    for (const QPointF &fastener : plan.fasteners)
        EXPECT_TRUE(QRectF(0, 0, 700, 400).contains(fastener));
    const Pattern twice{PatternKind::Free, {{1, 0, 0}, {2, 0, 0}}};
    EXPECT_EQ(planJoint(twice, {1, 2}, {700, 400}).legs.size(), 1);
}

QImage drawn(const JointPlan &plan, bool showPath, qsizetype done = 0)
{
    QImage image(700, 400, QImage::Format_RGB32);
    image.fill(ink(Look::Light).paper);
    QPainter painter(&image);
    paintJoint(painter, plan, ink(Look::Light), showPath, done);
    return image;
}

TEST(Joints, DoneLegsAreStrongAndAHiddenPathIsNotPainted)
{
    const JointPlan plan = planOf(*circlePattern(8), {700, 400});
    const QImage hidden = drawn(plan, false, 3);
    EXPECT_EQ(hidden, drawn(plan, false, 0));
    EXPECT_NE(hidden, drawn(plan, true));
    EXPECT_NE(drawn(plan, true), drawn(plan, true, 1));
    EXPECT_NE(drawn(plan, true, 6), drawn(plan, true, 7));
    EXPECT_EQ(drawn(plan, true, 7), drawn(plan, true, 100));
    EXPECT_EQ(drawn(plan, true, 0), drawn(plan, true, -1));
}

} // namespace joints_tests

} // namespace asleft
