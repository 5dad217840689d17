#include <draw/head.h>

#include "placed_text.h"

#include <QFontMetricsF>
#include <QPainter>

#include <cmath>

namespace asleft {

namespace {

void paintPaths(QPainter &painter, const QList<QPainterPath> &paths, const QColor &ground, const QPen &edge)
{
    painter.setBrush(ground);
    painter.setPen(edge);
    for (const QPainterPath &path : paths)
        painter.drawPath(path);
}

/// A bar on two valve stems. It goes under the point at its middle, where a line across would be taken for a state.
void paintBridge(QPainter &painter, const QLineF &bridge, double point, const Ink &ink)
{
    const double stem = point * 0.11;
    const double underPoint = point * 0.34 / std::max(1.0, bridge.length());
    painter.setPen(QPen(ink.edge, std::max(2.0, point * 0.09), Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(bridge.p1(), bridge.pointAt(0.5 - underPoint));
    painter.drawLine(bridge.pointAt(0.5 + underPoint), bridge.p2());
    painter.setPen(QPen(ink.edge, 1.2));
    painter.setBrush(ink.paper);
    painter.drawEllipse(bridge.p1(), stem, stem);
    painter.drawEllipse(bridge.p2(), stem, stem);
}

void paintPointLabels(QPainter &painter, const HeadPlan &plan, const Ink &ink, const QList<PointLook> &looks)
{
    for (qsizetype index = 0; index < plan.pointLabels.size(); ++index) {
        const bool strong = index < looks.size() && (looks[index].here == Here::InPlan || looks[index].inHand);
        paintText(painter, plan.pointLabels[index], strong ? ink.text : ink.quietText, strong);
    }
}

} // namespace

void paintHead(QPainter &painter, const HeadPlan &plan, const Ink &ink, const QList<PointLook> &looks)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintPaths(painter, plan.barrels, ink.paper, QPen(ink.edge, 1));
    paintPaths(painter, plan.crankcases, ink.casting, QPen(ink.edge, 1));
    paintPaths(painter, plan.heads, ink.casting, QPen(ink.edge, 1.4));
    for (const QLineF &bridge : plan.bridges)
        paintBridge(painter, bridge, plan.pointDiameter, ink);
    for (const PlacedText &label : plan.labels)
        paintText(painter, label, ink.quietText, false);
    for (const PlacedText &number : plan.numbers)
        paintText(painter, number, ink.quietText, false);
    paintPointLabels(painter, plan, ink, looks);
    painter.restore();
}

QPainterPath leaderLine(QPointF middle, double ring, QPointF foot)
{
    const double aside = foot.x() - middle.x();
    const double diagonal = ring * M_SQRT1_2;
    QPainterPath path;
    if (std::abs(aside) <= diagonal) {
        path.moveTo(foot.x(), middle.y() + std::sqrt(ring * ring - aside * aside));
    } else {
        const double side = aside < 0 ? -1 : 1;
        path.moveTo(middle + QPointF(side * diagonal, diagonal));
        path.lineTo(foot.x(), middle.y() + std::abs(aside));
    }
    path.lineTo(foot);
    return path;
}

QPainterPath leaderLine(const HeadPlan &plan, qsizetype point, double barTop)
{
    return leaderLine(plan.points.at(point), ringRadius(plan.pointDiameter), {plan.leaderX.at(point), barTop});
}

void paintLeaderLine(QPainter &painter, const QPainterPath &line, const Ink &ink)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.strongLine, 2.5, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.drawPath(line);
    painter.restore();
}

} // namespace asleft
