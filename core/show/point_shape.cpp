#include <show/point_shape.h>

#include <QPainter>
#include <QPainterPath>
#include <QtMath>

#include <algorithm>
#include <array>
#include <utility>

namespace asleft {

namespace {

// Shares of the side of a point's square.
constexpr double bodyShare = 0.315;
constexpr double ringShare = 0.475;
constexpr double padShare = 0.46;
constexpr double aroundShare = 0.386; // dotted and half rings
constexpr double strokeEndShare = 0.485;
constexpr double strokeAngle = 40;

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

/// An arc in degrees, anticlockwise from the right.
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

void outline(const Square &square, const QColor &colour)
{
    ring(square, square.body(), square.outline(), colour);
}

void secondOutline(const Square &square, const QColor &colour)
{
    ring(square, square.body() * 0.66, square.outline() * 0.9, colour);
}

void lowerHalf(const Square &square, double radius)
{
    square.painter.setPen(Qt::NoPen);
    square.painter.setBrush(square.ink.fill);
    square.painter.drawPie(square.circle(radius), 180 * 16, 180 * 16);
}

/// The lower half ruled off but empty: felt, but nothing was measured.
void lowerHalfRuledOff(const Square &square)
{
    const double reach = square.body() - square.outline() / 2;
    square.painter.setPen(flatPen(square.ink.shape, square.outline()));
    square.painter.drawLine(square.middle - QPointF(reach, 0), square.middle + QPointF(reach, 0));
}

/// One piece of the stroke of paint, between two distances from the middle.
void strokePiece(const Square &square, double from, double to)
{
    const double half = square.side * 0.047;
    square.painter.save();
    square.painter.translate(square.middle);
    square.painter.rotate(-strokeAngle);
    square.painter.setPen(QPen(square.ink.paintEdge, std::max(1.0, square.side * 0.024), Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    square.painter.setBrush(square.ink.paint);
    square.painter.drawRect(QRectF(from, -half, to - from, 2 * half));
    square.painter.restore();
}

void stroke(const Square &square)
{
    strokePiece(square, square.side * 0.02, square.side * strokeEndShare);
}

void brokenStroke(const Square &square)
{
    constexpr std::array<std::pair<double, double>, 3> pieces{{{0.02, 0.11}, {0.205, 0.295}, {0.395, strokeEndShare}}};
    for (const auto &[from, to] : pieces)
        strokePiece(square, square.side * from, square.side * to);
}

/// A triangle off the rim, above the circle for high and below it for low.
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

void dottedRing(const Square &square)
{
    constexpr int dots = 14;
    const double radius = square.side * aroundShare;
    for (int dot = 0; dot < dots; ++dot) {
        const double angle = 2 * M_PI * (dot + 0.5) / dots;
        const Square small{square.painter, square.middle + QPointF(radius * std::cos(angle), radius * std::sin(angle)), square.side,
                           square.ink};
        disc(small, std::max(1.1, square.side * 0.026), square.ink.shape);
    }
}

void halfRings(const Square &square)
{
    const double width = std::max(1.5, square.side * 0.036);
    const double radius = square.side * aroundShare + width / 2;
    arc(square, radius, width, square.ink.shape, -62, 124);
    arc(square, radius, width, square.ink.shape, 118, 124);
}

void keptBar(const Square &square)
{
    const double reach = square.body() * 0.44;
    square.painter.setPen(flatPen(square.ink.shape, square.outline() * 1.5));
    square.painter.drawLine(square.middle - QPointF(reach, 0), square.middle + QPointF(reach, 0));
}

bool isOutside(std::optional<Verdict> verdict)
{
    return verdict == Verdict::Low || verdict == Verdict::High;
}

/// What stands around a circle because nothing could be judged.
void notJudgedRing(const Square &square, std::optional<Verdict> verdict)
{
    if (verdict == Verdict::NoSpec)
        dottedRing(square);
    if (verdict == Verdict::NotComparable)
        halfRings(square);
}

void paintFound(const Square &square, std::optional<Verdict> verdict)
{
    outline(square, square.ink.shape);
    if (verdict == Verdict::ByFeel) {
        lowerHalfRuledOff(square);
    } else if (verdict == Verdict::TooClose) {
        secondOutline(square, square.ink.shape);
        lowerHalf(square, square.body() * 0.66);
    } else {
        lowerHalf(square, square.body() - 1.6 * square.outline());
    }
    if (isOutside(verdict))
        wedge(square, verdict == Verdict::High, 0.85);
    notJudgedRing(square, verdict);
}

void paintNutOpen(const Square &square, std::optional<Verdict> verdict)
{
    if (verdict == Verdict::ByFeel)
        lowerHalfRuledOff(square);
    else if (verdict)
        lowerHalf(square, square.body() - 1.6 * square.outline());
    arc(square, square.body(), square.outline(), square.ink.shape, 90 + 38, 360 - 76);
}

void paintLeft(const Square &square, std::optional<Verdict> verdict)
{
    if (isOutside(verdict)) {
        outline(square, square.ink.wedge);
        wedge(square, verdict == Verdict::High, 1);
    } else if (verdict == Verdict::Inside) {
        disc(square, square.body(), square.ink.accent);
        stroke(square);
    } else if (verdict == Verdict::TooClose) {
        outline(square, square.ink.shape);
        secondOutline(square, square.ink.shape);
    } else {
        outline(square, square.ink.shape);
        notJudgedRing(square, verdict);
        stroke(square);
    }
}

void paintState(const Square &square, const PointLook &look)
{
    switch (look.stage) {
    case PointStage::Untouched: outline(square, square.ink.shape); break;
    case PointStage::Found: paintFound(square, look.verdict); break;
    case PointStage::NutOpen: paintNutOpen(square, look.verdict); break;
    case PointStage::Left: paintLeft(square, look.verdict); break;
    case PointStage::CheckAgain:
        disc(square, square.body(), square.ink.accent);
        brokenStroke(square);
        break;
    }
    if (look.kept)
        keptBar(square);
}

void paintHere(const Square &square, Here here)
{
    const double width = std::max(1.0, square.side * 0.018);
    if (here == Here::InPlan) {
        disc(square, square.side * padShare, square.ink.pad);
        ring(square, square.side * padShare, width, square.ink.edge);
    }
    if (here == Here::Possible) {
        for (const double from : {22.0, 112.0, 202.0, 292.0})
            arc(square, square.side * padShare, width * 1.3, square.ink.edge, from, 46);
    }
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

} // namespace

double ringRadius(double side)
{
    return side * ringShare;
}

void paintPoint(QPainter &painter, const QRectF &area, const PointLook &look, const Ink &ink)
{
    const Ink used = look.enabled ? ink : faded(ink);
    const QRectF box = largestSquare(area);
    const Square square{painter, box.center(), box.width(), used};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintHere(square, look.here);
    if (look.inHand)
        ring(square, ringRadius(square.side), std::max(2.0, square.side * 0.042), used.strongLine);
    paintState(square, look);
    painter.restore();
}

void paintStep(QPainter &painter, const QRectF &area, StepLook look, const Ink &ink)
{
    const QRectF box = largestSquare(area);
    const Square square{painter, box.center(), box.width(), ink};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (look == StepLook::Done) {
        disc(square, square.body(), ink.accent);
        stroke(square);
    } else {
        outline(square, ink.shape);
    }
    if (look == StepLook::InHand)
        disc(square, square.body() * 0.42, ink.shape);
    if (look == StepLook::Begun)
        lowerHalf(square, square.body() - 1.6 * square.outline());
    painter.restore();
}

} // namespace asleft
