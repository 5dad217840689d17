#pragma once

#include "samples.h"

#include <draw/head.h>

#include <QFontMetricsF>

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace asleft {

struct Case {
    EngineDesign design;
    std::string name;
};

constexpr Layout allLayouts[] = {Layout::InLine, Layout::Vee, Layout::Flat, Layout::Single, Layout::W, Layout::Radial, Layout::Opposed};

inline void addEngine(std::vector<Case> &cases, const EngineText &text, const std::string &name)
{
    if (const auto design = designEngine(text))
        cases.push_back({*design, std::to_string(static_cast<int>(text.layout)) + "/" + std::to_string(text.cylinders) + " " + name});
}

/// Names of points are set in strong type where they may be set: they have to fit even then.
inline TextSize widestForm(TextSize size)
{
    return size == TextSize::Small ? TextSize::SmallStrong : size == TextSize::Fine ? TextSize::FineStrong : size;
}

inline QRectF inkBox(const PlacedText &text, bool mayBeStrong = false)
{
    const QFontMetricsF metrics(textFont(mayBeStrong ? widestForm(text.size) : text.size));
    const double width = metrics.horizontalAdvance(text.text);
    const double height = metrics.capHeight();
    const double left = text.alignment & Qt::AlignLeft ? text.box.left() : text.box.center().x() - width / 2;
    return {left, text.box.center().y() - height / 2, width, height};
}

/// Every text of a plan that is not empty, where its ink lies.
inline QList<QRectF> inkOf(const HeadPlan &plan)
{
    QList<QRectF> texts;
    for (const auto *list : {&plan.pointLabels, &plan.numbers, &plan.labels}) {
        for (const PlacedText &text : *list) {
            if (!text.text.isEmpty())
                texts.append(inkBox(text, list == &plan.pointLabels));
        }
    }
    return texts;
}

inline void expectSquaresApart(const HeadPlan &plan)
{
    for (qsizetype first = 0; first < plan.points.size(); ++first) {
        for (qsizetype second = first + 1; second < plan.points.size(); ++second) {
            const QPointF apart = plan.points[first] - plan.points[second];
            EXPECT_GE(std::max(std::abs(apart.x()), std::abs(apart.y())), plan.pointDiameter - 1e-6) << first << " and " << second;
        }
    }
}

inline bool insideAny(const QList<QRectF> &castings, const QRectF &box)
{
    return std::any_of(castings.begin(), castings.end(), [&box](const QRectF &casting) { return casting.contains(box); });
}

/// In rows everything stands on a casting; around a crankcase names may stand beside a head.
inline void expectInside(const EngineDesign &design, const HeadPlan &plan)
{
    const QRectF panel(QPointF(), plan.size);
    EXPECT_EQ(static_cast<std::size_t>(plan.castings.size()), design.banks.size());
    for (const QRectF &casting : plan.castings)
        EXPECT_TRUE(panel.contains(casting));
    for (qsizetype index = 0; index < plan.points.size(); ++index)
        EXPECT_TRUE(insideAny(plan.castings, plan.pointRect(index))) << index;
    for (const QRectF &text : inkOf(plan))
        EXPECT_TRUE(design.layout == Layout::Radial ? panel.contains(text) : insideAny(plan.castings, text)) << text.x() << " " << text.y();
}

inline void expectTextsApart(const HeadPlan &plan)
{
    const QList<QRectF> texts = inkOf(plan);
    for (qsizetype first = 0; first < texts.size(); ++first) {
        for (qsizetype second = first + 1; second < texts.size(); ++second)
            EXPECT_FALSE(texts[first].intersects(texts[second])) << first << " and " << second;
        for (qsizetype point = 0; point < plan.points.size(); ++point)
            EXPECT_FALSE(texts[first].intersects(plan.pointRect(point))) << first << " on point " << point;
    }
}

inline void expectOrder(const EngineDesign &design, const HeadPlan &plan)
{
    const auto adjusters = design.adjusters();
    ASSERT_EQ(static_cast<std::size_t>(plan.points.size()), adjusters.size());
    ASSERT_EQ(plan.pointLabels.size(), plan.points.size());
    ASSERT_EQ(plan.leaderX.size(), plan.points.size());
    ASSERT_EQ(plan.numbers.size(), design.cylinders());
    for (std::size_t index = 0; index < adjusters.size(); ++index) {
        const QString name = plan.pointLabels[static_cast<qsizetype>(index)].text;
        EXPECT_TRUE(name.isEmpty() || name.toStdString() == shortName(design, adjusters[index])) << name.toStdString();
    }
}

inline bool hasNames(const HeadPlan &plan)
{
    return std::none_of(plan.pointLabels.begin(), plan.pointLabels.end(), [](const PlacedText &text) { return text.text.isEmpty(); });
}

/// Behind the other bank's points a line may have to run where both stand crowded.
inline bool mustBeClear(const EngineDesign &design, const HeadPlan &plan, qsizetype point, qsizetype other)
{
    const auto onFirst = [&plan](qsizetype index) { return plan.castings.first().contains(plan.points[index]); };
    const bool crowded = design.valveRows == ValveRows::One && design.banks.front().size() > 6;
    return design.layout != Layout::Radial && design.banks.size() <= 2 && (!crowded || onFirst(point) == onFirst(other));
}

inline void expectLeaders(const EngineDesign &design, const HeadPlan &plan)
{
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
}

} // namespace asleft
