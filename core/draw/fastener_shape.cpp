#include <draw/joint_drawing.h>

#include "shape_parts.h"

#include <QPainterPath>
#include <QPolygonF>

#include <algorithm>
#include <array>

namespace asleft {

namespace {

using namespace parts;

/// From the middle to a corner, as a share of the square's side.
constexpr double cornerShare = 0.345;
/// From the middle of a hexagon to a side, as a share of the way to a corner.
constexpr double sideShare = 0.866025403784438646763;

/// A hexagon on two of its sides, the first corner at the right, then anticlockwise as seen.
QPolygonF hexagon(const Square &square, double corner)
{
    const double up = corner * sideShare;
    const std::array<QPointF, 6> corners{QPointF(corner, 0),  QPointF(corner / 2, -up), QPointF(-corner / 2, -up),
                                         QPointF(-corner, 0), QPointF(-corner / 2, up), QPointF(corner / 2, up)};
    QPolygonF polygon;
    for (const QPointF &at : corners)
        polygon.append(square.middle + at);
    return polygon;
}

QPen mitred(const QColor &colour, double width)
{
    return {colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin};
}

/// Drawn inward from its corners.
void hexOutline(const Square &square, double corner, double width, const QColor &colour)
{
    square.painter.setBrush(Qt::NoBrush);
    square.painter.setPen(mitred(colour, width));
    square.painter.drawPolygon(hexagon(square, corner - width / 2 / sideShare));
}

void outline(const Square &square, const QColor &colour)
{
    hexOutline(square, square.side * cornerShare, square.outline(), colour);
}

void filled(const Square &square, const QColor &colour)
{
    square.painter.setPen(Qt::NoPen);
    square.painter.setBrush(colour);
    square.painter.drawPolygon(hexagon(square, square.side * cornerShare));
}

/// All of it but the side at the top.
void brokenOutline(const Square &square)
{
    const double width = square.outline();
    const QPolygonF corners = hexagon(square, square.side * cornerShare - width / 2 / sideShare);
    const QPolygonF line{corners[2], corners[3], corners[4], corners[5], corners[0], corners[1]};
    square.painter.setBrush(Qt::NoBrush);
    square.painter.setPen(mitred(square.ink.shape, width));
    square.painter.drawPolyline(line);
}

void cross(const Square &square)
{
    const double reach = square.side * 0.125;
    square.painter.setPen(flatPen(square.ink.wedge, std::max(2.0, square.side * 0.07)));
    square.painter.drawLine(square.middle + QPointF(-reach, -reach), square.middle + QPointF(reach, reach));
    square.painter.drawLine(square.middle + QPointF(-reach, reach), square.middle + QPointF(reach, -reach));
}

void lowerHalf(const Square &square)
{
    const QPolygonF corners = hexagon(square, square.side * cornerShare - 1.8 * square.outline());
    square.painter.setPen(Qt::NoPen);
    square.painter.setBrush(square.ink.fill);
    square.painter.drawPolygon(QPolygonF{corners[3], corners[4], corners[5], corners[0]});
}

void paintTight(const Square &square, const FastenerLook &look)
{
    if (isOutside(look.verdict)) {
        outline(square, square.ink.wedge);
        wedge(square, look.verdict == Verdict::High, 1);
    } else if (look.verdict == Verdict::TooClose) {
        outline(square, square.ink.shape);
        hexOutline(square, square.side * cornerShare * 0.64, square.outline() * 0.9, square.ink.shape);
    } else if (look.byFeel || look.verdict == Verdict::ByFeel) {
        outline(square, square.ink.shape);
        stroke(square);
    } else {
        filled(square, square.ink.accent);
        stroke(square);
    }
}

void paintState(const Square &square, const FastenerLook &look)
{
    switch (look.stage) {
    case FastenerStage::Untouched: outline(square, square.ink.shape); break;
    case FastenerStage::Loose: brokenOutline(square); break;
    case FastenerStage::Partway:
        outline(square, square.ink.shape);
        lowerHalf(square);
        break;
    case FastenerStage::Tight: paintTight(square, look); break;
    }
    if (look.amiss)
        cross(square);
    if (look.accepted)
        keptBar(square);
}

} // namespace

void paintFastener(QPainter &painter, const QRectF &area, const FastenerLook &look, const Ink &ink)
{
    paintSquare(painter, area, look.enabled ? ink : faded(ink), [&look](const Square &square) {
        if (look.toTick)
            pad(square);
        if (look.inHand)
            handRing(square);
        paintState(square, look);
    });
}

} // namespace asleft
