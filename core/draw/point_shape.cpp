#include <draw/point_shape.h>

#include "shape_parts.h"

#include <QPainterPath>
#include <QtMath>

#include <algorithm>
#include <array>
#include <utility>

namespace asleft {

namespace {

using namespace parts;

/// A share of the side of a point's square.
constexpr double aroundShare = 0.386; // dotted and half rings

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

void brokenStroke(const Square &square)
{
    constexpr std::array<std::pair<double, double>, 3> pieces{{{0.02, 0.11}, {0.205, 0.295}, {0.395, strokeEndShare}}};
    for (const auto &[from, to] : pieces)
        strokePiece(square, square.side * from, square.side * to);
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
    if (here == Here::InPlan)
        pad(square);
    if (here == Here::Possible) {
        for (const double from : {22.0, 112.0, 202.0, 292.0})
            arc(square, square.side * padShare, std::max(1.0, square.side * 0.018) * 1.3, square.ink.edge, from, 46);
    }
}

} // namespace

double ringRadius(double side)
{
    return side * ringShare;
}

void paintPoint(QPainter &painter, const QRectF &area, const PointLook &look, const Ink &ink)
{
    paintSquare(painter, area, look.enabled ? ink : faded(ink), [&look](const Square &square) {
        paintHere(square, look.here);
        if (look.inHand)
            handRing(square);
        paintState(square, look);
    });
}

void paintStep(QPainter &painter, const QRectF &area, StepLook look, const Ink &ink)
{
    paintSquare(painter, area, ink, [look](const Square &square) {
        if (look == StepLook::Done) {
            disc(square, square.body(), square.ink.accent);
            stroke(square);
        } else {
            outline(square, square.ink.shape);
        }
        if (look == StepLook::InHand)
            disc(square, square.body() * 0.42, square.ink.shape);
        if (look == StepLook::Begun)
            lowerHalf(square, square.body() - 1.6 * square.outline());
    });
}

} // namespace asleft
