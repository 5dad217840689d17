#include <show/engine_drawing.h>

#include <show/fonts.h>

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QHash>
#include <QPainter>
#include <QPainterPath>
#include <QtMath>

#include <algorithm>

namespace asleft {

namespace {

class EngineWords {
    Q_DECLARE_TR_FUNCTIONS(EngineWords)
};

constexpr double endRoom = 64; // left of the first cylinder, for the front and the way of turning
constexpr double stepHeight = 16;

/// Where the cylinders stand.
struct Places {
    QHash<QString, QPointF> middles;
    QHash<QString, bool> above; ///< in the upper bank
    double diameter = 0;
    double crankY = 0;
    double left = 0;
    double right = 0;
};

qsizetype longestBank(const EngineSketch &sketch)
{
    qsizetype longest = 1;
    for (const auto &bank : sketch.banks)
        longest = std::max(longest, bank.size());
    return longest;
}

/// How far the middle of a bank lies from the crank line, in diameters of a cylinder: enough for the firing order to run between.
double awayFromCrank(Layout layout)
{
    switch (layout) {
    case Layout::InLine: return 0;
    case Layout::Vee: return 1.1;
    case Layout::Flat: return 1.35;
    }
    return 0;
}

double largestDiameter(const EngineSketch &sketch, const QRectF &area, double pitch)
{
    const bool inLine = sketch.layout == Layout::InLine;
    const double rows = inLine ? 1 : 2 * (awayFromCrank(sketch.layout) + 0.5);
    const double fixed = inLine ? stepHeight + area.height() * 0.4 : 2 * stepHeight;
    return std::max(8.0, std::min({56.0, pitch * 0.78, (area.height() - fixed) / rows}));
}

Places placesOf(const EngineSketch &sketch, const QRectF &area)
{
    Places places;
    const double columns = static_cast<double>(longestBank(sketch)) + (sketch.banks.size() > 1 ? 0.3 : 0);
    const double available = (area.width() - endRoom) / columns;
    places.diameter = largestDiameter(sketch, area, available);
    const double pitch = std::min(available, places.diameter * 1.7);
    places.left = area.left() + endRoom + (area.width() - endRoom - columns * pitch) / 2;
    places.right = places.left + columns * pitch;
    const bool arcsAbove = sketch.layout == Layout::InLine && longestBank(sketch) > 1;
    places.crankY = arcsAbove ? area.bottom() - stepHeight - places.diameter / 2 - 4 : area.center().y();
    const double away = places.diameter * awayFromCrank(sketch.layout);
    for (qsizetype bank = 0; bank < sketch.banks.size(); ++bank) {
        const double y = places.crankY + (bank == 0 ? -away : away);
        for (qsizetype place = 0; place < sketch.banks[bank].size(); ++place) {
            // The second bank's rods sit beside the first's on the same pins.
            const double x = places.left + (static_cast<double>(place) + 0.5 + (bank == 0 ? 0 : 0.3)) * pitch;
            places.middles.insert(sketch.banks[bank][place], {x, y});
            places.above.insert(sketch.banks[bank][place], bank == 0 && sketch.layout != Layout::InLine);
        }
    }
    return places;
}

void paintCrankLine(QPainter &painter, const Places &places, const Ink &ink)
{
    QPen pen(ink.edge, 1.2);
    pen.setDashPattern({10, 3, 2, 3});
    painter.setPen(pen);
    painter.drawLine(QPointF(places.left - 26, places.crankY), QPointF(places.right + 6, places.crankY));
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
void paintTurning(QPainter &painter, const Places &places, Rotation rotation, const Ink &ink)
{
    const double radius = 12;
    const QPointF middle(places.left - 40, places.crankY);
    const QRectF box(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius);
    const bool clockwise = rotation == Rotation::Clockwise;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.shape, 1.6, Qt::SolidLine, Qt::FlatCap));
    painter.drawArc(box, (clockwise ? 30 : -120) * 16, 270 * 16);
    const double end = qDegreesToRadians(clockwise ? 30.0 : 150.0);
    const QPointF arcEnd = middle + QPointF(radius * std::cos(end), -radius * std::sin(end));
    const QPointF onward = QPointF(std::sin(end), std::abs(std::cos(end))) * 6;
    paintArrowHead(painter, arcEnd + (clockwise ? onward : QPointF(-onward.x(), onward.y())), clockwise ? 60 : 120, 8, ink.shape);
    painter.setFont(textFont(TextSize::Small));
    painter.setPen(ink.quietText);
    painter.drawText(QRectF(middle.x() - 30, middle.y() + radius + 3, 60, stepHeight), Qt::AlignCenter | Qt::TextDontClip,
                     EngineWords::tr("front"));
}

/// Over the row, leaving and arriving at the top of a cylinder.
QPainterPath pathInLine(const Places &places, QPointF from, QPointF to, double top)
{
    const double side = to.x() > from.x() ? 1 : -1;
    const QPointF start = from + QPointF(side * places.diameter * 0.22, -places.diameter * 0.48);
    const QPointF end = to + QPointF(-side * places.diameter * 0.22, -places.diameter * 0.48);
    const double lift = std::min((start.y() - top) * 1.3, places.diameter * 0.3 + std::abs(end.x() - start.x()) * 0.5);
    QPainterPath path(start);
    path.cubicTo(start + QPointF(0, -lift), end + QPointF(0, -lift), end);
    return path;
}

/// Through the room between the banks; the way in and the way out stand side by side.
QPainterPath pathBetweenBanks(const Places &places, QPointF from, QPointF to)
{
    const double inwardFrom = from.y() < places.crankY ? 1 : -1;
    const double inwardTo = to.y() < places.crankY ? 1 : -1;
    const QPointF start = from + QPointF(places.diameter * 0.16, inwardFrom * places.diameter * 0.5);
    const QPointF end = to + QPointF(-places.diameter * 0.16, inwardTo * places.diameter * 0.5);
    const double reach = std::abs(start.y() - places.crankY) * 1.25;
    QPainterPath path(start);
    path.cubicTo(start + QPointF(0, inwardFrom * reach), end + QPointF(0, inwardTo * reach), end);
    return path;
}

void paintFiringOrder(QPainter &painter, const EngineSketch &sketch, const Places &places, double top, const Ink &ink)
{
    for (qsizetype step = 1; step < sketch.firingOrder.size(); ++step) {
        const QPointF from = places.middles.value(sketch.firingOrder[step - 1]);
        const QPointF to = places.middles.value(sketch.firingOrder[step]);
        const bool inLine = sketch.layout == Layout::InLine;
        const QPainterPath path = inLine ? pathInLine(places, from, to, top) : pathBetweenBanks(places, from, to);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(ink.accent, 1.5));
        painter.drawPath(path);
        paintArrowHead(painter, path.pointAtPercent(1), -path.angleAtPercent(0.98), std::min(7.0, places.diameter * 0.25), ink.accent);
    }
}

void paintCylinder(QPainter &painter, const QString &label, const Places &places, qsizetype step, const Ink &ink)
{
    const QPointF middle = places.middles.value(label);
    const QRectF circle(middle.x() - places.diameter / 2, middle.y() - places.diameter / 2, places.diameter, places.diameter);
    QPen pen(step < 0 ? ink.edge : ink.shape, step == 0 ? 3 : 2);
    if (step < 0)
        pen.setDashPattern({3, 2});
    painter.setPen(pen);
    painter.setBrush(ink.paper);
    painter.drawEllipse(circle.adjusted(1, 1, -1, -1));

    QFont font = textFont(TextSize::BodyStrong);
    font.setPixelSize(std::clamp(qRound(places.diameter * (label.size() > 2 ? 0.3 : 0.38)), 9, 18));
    painter.setFont(font);
    painter.setPen(step < 0 ? ink.quietText : ink.text);
    painter.drawText(circle, Qt::AlignCenter | Qt::TextDontClip, label);
    if (step < 0)
        return;
    const double stepY = places.above.value(label) ? circle.top() - stepHeight - 1 : circle.bottom() + 1;
    painter.setFont(textFont(step == 0 ? TextSize::SmallStrong : TextSize::Small));
    painter.setPen(ink.accentText);
    painter.drawText(QRectF(middle.x() - 30, stepY, 60, stepHeight), Qt::AlignCenter,
                     EngineWords::tr("%1.", "place in the firing order").arg(step + 1));
}

/// Barrels lie flat on both sides of the crank.
void paintBarrels(QPainter &painter, const Places &places, const Ink &ink)
{
    painter.setPen(QPen(ink.line, 1.2));
    painter.setBrush(Qt::NoBrush);
    for (const QPointF &middle : places.middles) {
        const double half = places.diameter * 0.36;
        painter.drawLine(QPointF(middle.x() - half, middle.y()), QPointF(middle.x() - half, places.crankY));
        painter.drawLine(QPointF(middle.x() + half, middle.y()), QPointF(middle.x() + half, places.crankY));
    }
}

} // namespace

void paintEngine(QPainter &painter, const QRectF &area, const EngineSketch &sketch, const Ink &ink)
{
    if (sketch.banks.isEmpty())
        return;
    const Places places = placesOf(sketch, area);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintCrankLine(painter, places, ink);
    if (sketch.layout == Layout::Flat)
        paintBarrels(painter, places, ink);
    paintTurning(painter, places, sketch.rotation, ink);
    paintFiringOrder(painter, sketch, places, area.top(), ink);
    for (const auto &bank : sketch.banks) {
        for (const QString &label : bank)
            paintCylinder(painter, label, places, sketch.firingOrder.indexOf(label), ink);
    }
    painter.restore();
}

} // namespace asleft
