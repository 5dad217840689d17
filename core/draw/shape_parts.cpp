#include "shape_parts.h"

namespace asleft::parts {

QPen flatPen(const QColor &colour, double width)
{
    QPen pen(colour, width);
    pen.setCapStyle(Qt::FlatCap);
    return pen;
}

void ring(const Square &square, double outerRadius, double width, const QColor &colour)
{
    square.painter.setBrush(Qt::NoBrush);
    square.painter.setPen(QPen(colour, width));
    square.painter.drawEllipse(square.circle(outerRadius - width / 2));
}

void arc(const Square &square, double outerRadius, double width, const QColor &colour, double from, double span)
{
    square.painter.setBrush(Qt::NoBrush);
    square.painter.setPen(flatPen(colour, width));
    square.painter.drawArc(square.circle(outerRadius - width / 2), qRound(from * 16), qRound(span * 16));
}

void disc(const Square &square, double radius, const QColor &colour)
{
    square.painter.setPen(Qt::NoPen);
    square.painter.setBrush(colour);
    square.painter.drawEllipse(square.circle(radius));
}

void pad(const Square &square)
{
    disc(square, square.side * padShare, square.ink.pad);
    ring(square, square.side * padShare, std::max(1.0, square.side * 0.018), square.ink.edge);
}

void handRing(const Square &square)
{
    ring(square, square.side * ringShare, std::max(2.0, square.side * 0.042), square.ink.strongLine);
}

void strokePiece(const Square &square, double from, double to)
{
    constexpr double degreesUp = 40;
    const double half = square.side * 0.047;
    square.painter.save();
    square.painter.translate(square.middle);
    square.painter.rotate(-degreesUp);
    square.painter.setPen(QPen(square.ink.paintEdge, std::max(1.0, square.side * 0.024), Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    square.painter.setBrush(square.ink.paint);
    square.painter.drawRect(QRectF(from, -half, to - from, 2 * half));
    square.painter.restore();
}

void stroke(const Square &square)
{
    strokePiece(square, square.side * 0.02, square.side * strokeEndShare);
}

void wedge(const Square &square, bool above, double scale)
{
    const double sign = above ? -1 : 1;
    const double base = square.side * 0.335;
    const double height = square.side * 0.13 * scale;
    const double halfWidth = square.side * 0.125 * scale;
    QPolygonF triangle;
    triangle << square.middle + QPointF(-halfWidth, sign * base) << square.middle + QPointF(halfWidth, sign * base)
             << square.middle + QPointF(0, sign * (base + height));
    square.painter.setPen(Qt::NoPen);
    square.painter.setBrush(square.ink.wedge);
    square.painter.drawPolygon(triangle);
}

void keptBar(const Square &square)
{
    const double reach = square.body() * 0.44;
    square.painter.setPen(flatPen(square.ink.shape, square.outline() * 1.5));
    square.painter.drawLine(square.middle - QPointF(reach, 0), square.middle + QPointF(reach, 0));
}

Ink faded(Ink ink)
{
    ink.shape = ink.fill = ink.accent = ink.wedge = ink.strongLine = ink.faint;
    return ink;
}

QRectF largestSquare(const QRectF &area)
{
    const double side = std::min(area.width(), area.height());
    return {area.center().x() - side / 2, area.center().y() - side / 2, side, side};
}

} // namespace asleft::parts
