#include <draw/engine_drawing.h>

#include "engine_places.h"

#include <draw/fonts.h>

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <QtMath>

#include <algorithm>

namespace asleft {

namespace {

class EngineWords {
    Q_DECLARE_TR_FUNCTIONS(EngineWords)
};

void paintCrankLines(QPainter &painter, const EnginePlaces &places, const Ink &ink)
{
    QPen pen(ink.edge, 1.2);
    pen.setDashPattern({10, 3, 2, 3});
    painter.setPen(pen);
    for (const QLineF &line : places.crankLines)
        painter.drawLine(line);
}

void paintArrowHead(QPainter &painter, QPointF tip, double angle, double size, const QColor &colour)
{
    painter.save();
    painter.translate(tip);
    painter.rotate(angle);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPolygon(QPolygonF{{QPointF(0, 0), QPointF(-size, -size * 0.55), QPointF(-size, size * 0.55)}});
    painter.restore();
}

/// Which way the crank turns, as it is seen standing at the front.
void paintTurning(QPainter &painter, QPointF middle, Rotation rotation, bool named, const Ink &ink)
{
    const double radius = 12;
    // In the middle of a radial engine the path of the firing order runs behind it.
    if (!named) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(ink.paper);
        painter.drawEllipse(middle, radius + 6, radius + 6);
    }
    const QRectF box(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius);
    const bool clockwise = rotation == Rotation::Clockwise;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.shape, 1.6, Qt::SolidLine, Qt::FlatCap));
    painter.drawArc(box, (clockwise ? 30 : -120) * 16, 270 * 16);
    const double end = qDegreesToRadians(clockwise ? 30.0 : 150.0);
    const QPointF arcEnd = middle + QPointF(radius * std::cos(end), -radius * std::sin(end));
    const QPointF onward = QPointF(std::sin(end), std::abs(std::cos(end))) * 6;
    paintArrowHead(painter, arcEnd + (clockwise ? onward : QPointF(-onward.x(), onward.y())), clockwise ? 60 : 120, 8, ink.shape);
    if (!named)
        return;
    painter.setFont(textFont(TextSize::Small));
    painter.setPen(ink.quietText);
    painter.drawText(QRectF(middle.x() - 30, middle.y() + radius + 3, 60, engineStepHeight), Qt::AlignCenter | Qt::TextDontClip,
                     EngineWords::tr("front"));
}

/// Over the row, leaving and arriving at the top of a cylinder.
QPainterPath pathOver(double diameter, QPointF from, QPointF to, double top)
{
    const double side = to.x() > from.x() ? 1 : -1;
    const QPointF start = from + QPointF(side * diameter * 0.22, -diameter * 0.48);
    const QPointF end = to + QPointF(-side * diameter * 0.22, -diameter * 0.48);
    const double lift = std::min((start.y() - top) * 1.3, diameter * 0.3 + std::abs(end.x() - start.x()) * 0.5);
    QPainterPath path(start);
    path.cubicTo(start + QPointF(0, -lift), end + QPointF(0, -lift), end);
    return path;
}

/// Through the room between the banks; the way in and the way out stand side by side.
QPainterPath pathBetween(double diameter, const EnginePlace &from, const EnginePlace &to)
{
    const double crankY = from.foot.y();
    const double inwardFrom = from.middle.y() < crankY ? 1 : -1;
    const double inwardTo = to.middle.y() < crankY ? 1 : -1;
    const QPointF start = from.middle + QPointF(diameter * 0.16, inwardFrom * diameter * 0.5);
    const QPointF end = to.middle + QPointF(-diameter * 0.16, inwardTo * diameter * 0.5);
    const double reach = std::abs(start.y() - crankY) * 1.25;
    QPainterPath path(start);
    path.cubicTo(start + QPointF(0, inwardFrom * reach), end + QPointF(0, inwardTo * reach), end);
    return path;
}

/// What a path bends towards. In rows a little to the left of the way, so that there and back are two lines; around a crankcase inward, so
/// that the cylinders passed by do not hide it.
QPointF bendOf(const EnginePlaces &places, QPointF from, QPointF to)
{
    const QPointF middle = (from + to) / 2;
    const QPointF way = to - from;
    const double length = std::hypot(way.x(), way.y());
    const QPointF out = middle - places.turning;
    const double away = std::hypot(out.x(), out.y());
    const double inward = 0.5 * std::hypot(from.x() - places.turning.x(), from.y() - places.turning.y());
    if (places.crankcase > 0 && away > inward)
        return places.turning + out * (2 * inward / away - 1);
    return middle + QPointF(way.y(), -way.x()) / length * std::min(12.0, length * 0.06);
}

/// From rim to rim.
QPainterPath pathBehind(const EnginePlaces &places, QPointF from, QPointF to)
{
    const double diameter = places.diameter;
    if (std::hypot(to.x() - from.x(), to.y() - from.y()) <= diameter)
        return QPainterPath(to);
    const QPointF bend = bendOf(places, from, to);
    const auto toBend = [bend](QPointF point) { return (bend - point) / std::hypot(bend.x() - point.x(), bend.y() - point.y()); };
    const QPointF start = from + toBend(from) * (diameter / 2);
    const QPointF end = to + toBend(to) * (diameter / 2 + 1);
    QPainterPath path(start);
    path.quadTo(bend, end);
    return path;
}

QPainterPath pathOf(const EnginePlaces &places, const EnginePlace &from, const EnginePlace &to, double top)
{
    switch (places.paths) {
    case EnginePaths::Over: return pathOver(places.diameter, from.middle, to.middle, top);
    case EnginePaths::Between: return pathBetween(places.diameter, from, to);
    case EnginePaths::Behind: return pathBehind(places, from.middle, to.middle);
    }
    return {};
}

void paintFiringOrder(QPainter &painter, const EngineSketch &sketch, const EnginePlaces &places, double top, const Ink &ink)
{
    QList<QPainterPath> paths;
    for (qsizetype step = 1; step < sketch.firingOrder.size(); ++step) {
        const EnginePlace from = places.cylinders.value(sketch.firingOrder[step - 1]);
        const EnginePlace to = places.cylinders.value(sketch.firingOrder[step]);
        paths.append(pathOf(places, from, to, top));
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.accent, 1.5));
    for (const QPainterPath &path : paths)
        painter.drawPath(path);
    const double head = std::min(7.0, places.diameter * 0.3);
    for (const QPainterPath &path : paths) {
        if (path.length() > 0)
            paintArrowHead(painter, path.pointAtPercent(1), -path.angleAtPercent(0.98), head, ink.accent);
    }
}

/// Where paths run behind the figure it stands on paper of its own.
void paintStepFigure(QPainter &painter, const EnginePlaces &places, QPointF middle, qsizetype step, const Ink &ink)
{
    const QFont font = textFont(step == 0 ? TextSize::SmallStrong : TextSize::Small);
    const QString figure = EngineWords::tr("%1.", "place in the firing order").arg(step + 1);
    const double width = QFontMetricsF(font).horizontalAdvance(figure);
    if (places.paths == EnginePaths::Behind)
        painter.fillRect(QRectF(middle.x() - width / 2 - 1, middle.y() - 6, width + 2, 12), ink.paper);
    painter.setFont(font);
    painter.setPen(ink.accentText);
    painter.drawText(QRectF(middle.x() - 30, middle.y() - engineStepHeight / 2, 60, engineStepHeight), Qt::AlignCenter | Qt::TextDontClip,
                     figure);
}

void paintCylinder(QPainter &painter, const QString &label, const EnginePlaces &places, qsizetype step, const Ink &ink)
{
    const EnginePlace place = places.cylinders.value(label);
    const double half = places.diameter / 2;
    const QRectF circle(place.middle.x() - half, place.middle.y() - half, places.diameter, places.diameter);
    QPen pen(step < 0 ? ink.edge : ink.shape, step == 0 ? 3 : 2);
    if (step < 0)
        pen.setDashPattern({3, 2});
    painter.setPen(pen);
    painter.setBrush(ink.paper);
    painter.drawEllipse(circle.adjusted(1, 1, -1, -1));

    QFont font = textFont(TextSize::BodyStrong);
    font.setPixelSize(std::clamp(qRound(places.diameter * (label.size() > 2 ? 0.3 : 0.4)), 9, 18));
    painter.setFont(font);
    painter.setPen(step < 0 ? ink.quietText : ink.text);
    painter.drawText(circle, Qt::AlignCenter | Qt::TextDontClip, label);
    if (step >= 0)
        paintStepFigure(painter, places, place.step, step, ink);
}

/// From the crank out to each cylinder.
void paintBarrels(QPainter &painter, const EnginePlaces &places, const Ink &ink)
{
    painter.setPen(QPen(ink.line, 1.2));
    painter.setBrush(Qt::NoBrush);
    for (const EnginePlace &place : places.cylinders) {
        const QPointF way = place.foot - place.middle;
        const double length = std::hypot(way.x(), way.y());
        if (length <= 0)
            continue;
        const QPointF aside = QPointF(way.y(), -way.x()) / length * (places.diameter * (places.crankcase > 0 ? 0.22 : 0.36));
        painter.drawLine(place.middle + aside, place.foot + aside);
        painter.drawLine(place.middle - aside, place.foot - aside);
    }
}

void paintCrankcase(QPainter &painter, const EnginePlaces &places, const Ink &ink)
{
    if (places.crankcase <= 0)
        return;
    painter.setPen(QPen(ink.edge, 1.2));
    painter.setBrush(ink.paper);
    painter.drawEllipse(places.turning, places.crankcase, places.crankcase);
}

} // namespace

void paintEngine(QPainter &painter, const QRectF &area, const EngineSketch &sketch, const Ink &ink)
{
    if (sketch.banks.isEmpty())
        return;
    const EnginePlaces places = enginePlaces(sketch, area);
    const bool round = places.crankcase > 0;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintCrankLines(painter, places, ink);
    if (places.barrels)
        paintBarrels(painter, places, ink);
    paintCrankcase(painter, places, ink);
    paintFiringOrder(painter, sketch, places, area.top(), ink);
    for (const auto &bank : sketch.banks) {
        for (const QString &label : bank)
            paintCylinder(painter, label, places, sketch.firingOrder.indexOf(label), ink);
    }
    paintTurning(painter, places.turning, sketch.rotation, !round, ink);
    painter.restore();
}

} // namespace asleft
