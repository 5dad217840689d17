#include "joint_legs.h"
#include "placed_text.h"

#include <draw/joint_drawing.h>

#include <QPainter>
#include <QPen>

#include <algorithm>
#include <cmath>

namespace asleft {

namespace {

constexpr double legOverlap = 0.5; // of the pieces of a leg

/// The head at the end of a leg, as long as the fasteners allow.
QPolygonF headOf(const QPolygonF &leg, double headLength)
{
    const QPointF tip = leg.last();
    qsizetype back = leg.size() - 2;
    while (back > 0 && std::hypot(leg[back].x() - tip.x(), leg[back].y() - tip.y()) < headLength)
        --back;
    const QPointF along = tip - leg[back];
    const double length = std::max(1e-9, std::hypot(along.x(), along.y()));
    const QPointF unit = along / length;
    const QPointF foot = tip - unit * headLength;
    const QPointF aside = QPointF(-unit.y(), unit.x()) * headLength * 0.45;
    return {tip, foot + aside, foot - aside};
}

double lengthOf(const QPolygonF &leg)
{
    double length = 0;
    for (qsizetype index = 1; index < leg.size(); ++index)
        length += std::hypot(leg[index].x() - leg[index - 1].x(), leg[index].y() - leg[index - 1].y());
    return length;
}

/// A line at a time, which is painted many times as fast as a whole polyline that is wider than a pixel.
void paintInPieces(QPainter &painter, const QPolygonF &leg)
{
    for (qsizetype piece = 1; piece < leg.size(); ++piece) {
        const QLineF line(leg[piece - 1], leg[piece]);
        // They legOverlap, so that no gap is seen between them.
        const double back = piece > 1 && line.length() > 0 ? -legOverlap / line.length() : 0;
        painter.drawLine(line.pointAt(back), line.p2());
    }
}

void paintLeg(QPainter &painter, const QPolygonF &leg, double diameter, const QColor &colour, bool strong, bool inPieces)
{
    const double thin = std::clamp(diameter * 0.03, 0.7, 1.4);
    const double width = strong ? 2 * thin : thin;
    painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    if (inPieces && width > 1)
        paintInPieces(painter, leg);
    else
        painter.drawPolyline(leg);
    const double head = std::min(std::clamp(diameter * 0.2, 2.5, 9.0) * (strong ? 1.2 : 1), lengthOf(leg));
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPolygon(headOf(leg, head));
}

void paintPath(QPainter &painter, const JointPlan &plan, const Ink &ink, qsizetype done)
{
    const qsizetype strong = std::clamp<qsizetype>(done, 0, plan.legs.size());
    const bool inPieces = isThicket(plan.fasteners.size());
    for (qsizetype leg = strong; leg < plan.legs.size(); ++leg)
        paintLeg(painter, plan.legs[leg], plan.diameter, ink.edge, false, inPieces);
    for (qsizetype leg = 0; leg < strong; ++leg)
        paintLeg(painter, plan.legs[leg], plan.diameter, ink.strongLine, true, inPieces);
}

/// On a ground of its own, so that a leg behind it does not run through its digits.
void paintTexts(QPainter &painter, const JointPlan &plan, const QList<PlacedText> &texts, const Ink &ink, const QColor &colour)
{
    for (const PlacedText &text : texts) {
        if (text.text.isEmpty())
            continue;
        painter.fillRect(text.box, plan.outline.contains(text.box.center()) ? ink.casting : ink.paper);
        paintText(painter, text, colour);
    }
}

} // namespace

void paintJoint(QPainter &painter, const JointPlan &plan, const Ink &ink, bool showPath, qsizetype done)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(ink.casting);
    painter.setPen(QPen(ink.edge, 1.4));
    painter.drawPath(plan.outline);
    if (showPath)
        paintPath(painter, plan, ink, done);
    paintTexts(painter, plan, plan.numbers, ink, ink.text);
    paintTexts(painter, plan, plan.differences, ink, ink.quietText);
    painter.restore();
}

} // namespace asleft
