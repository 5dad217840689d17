#pragma once

#include <draw/palette.h>

#include <measure/judge.h>

#include <QPainter>
#include <QPen>
#include <QPointF>
#include <QRectF>

#include <algorithm>
#include <optional>

/// What the shapes of points, steps and fasteners are put together from.
namespace asleft::parts {

// Shares of the side of the square of a shape.
inline constexpr double bodyShare = 0.315;
inline constexpr double ringShare = 0.475;
inline constexpr double padShare = 0.46;
inline constexpr double strokeEndShare = 0.485;

/// One square being painted into: sizes that follow from its side.
struct Square {
    QPainter &painter;
    QPointF middle;
    double side;
    const Ink &ink;

    [[nodiscard]] double body() const { return side * bodyShare; }
    [[nodiscard]] double outline() const { return std::max(1.6, side * 0.046); }
    [[nodiscard]] QRectF circle(double radius) const { return {middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius}; }
};

QRectF largestSquare(const QRectF &area);
/// Paints into the largest centred square of `area`, and leaves the painter as it was.
template <class Paint>
void paintSquare(QPainter &painter, const QRectF &area, const Ink &ink, Paint paint)
{
    const QRectF box = largestSquare(area);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paint(Square{painter, box.center(), box.width(), ink});
    painter.restore();
}
/// The same ink for what cannot be used now.
Ink faded(Ink ink);
QPen flatPen(const QColor &colour, double width);

void ring(const Square &square, double outerRadius, double width, const QColor &colour);
/// An arc in degrees, anticlockwise from the right.
void arc(const Square &square, double outerRadius, double width, const QColor &colour, double from, double span);
void disc(const Square &square, double radius, const QColor &colour);
/// The disc with a thin rim behind what is to be done here.
void pad(const Square &square);
/// The strong ring around what is in hand.
void handRing(const Square &square);
/// One piece of the stroke of paint, between two distances from the middle.
void strokePiece(const Square &square, double from, double to);
/// The stroke of paint from the middle across the rim.
void stroke(const Square &square);
/// A triangle off the rim, above the shape for high and below it for low.
void wedge(const Square &square, bool above, double scale);
/// The bar across the middle of what stays as it is.
void keptBar(const Square &square);

} // namespace asleft::parts
