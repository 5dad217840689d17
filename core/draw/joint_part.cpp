#include "joint_part.h"

#include <QRectF>
#include <QtMath>

#include <algorithm>
#include <cmath>

namespace asleft {

namespace {

double length(QPointF vector)
{
    return std::hypot(vector.x(), vector.y());
}

QPointF ofLengthOne(QPointF vector)
{
    const double size = length(vector);
    return size > 1e-9 ? vector / size : QPointF();
}

/// Above 0 where the turn from a over b to c is clockwise as seen.
double turn(QPointF a, QPointF b, QPointF c)
{
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
}

void addHalf(QList<QPointF> &hull, const QList<QPointF> &sorted)
{
    const qsizetype begin = hull.size();
    for (const QPointF &point : sorted) {
        while (hull.size() >= begin + 2 && turn(hull[hull.size() - 2], hull.last(), point) <= 1e-9)
            hull.removeLast();
        hull.append(point);
    }
    hull.removeLast();
}

/// The corners of the line around all points, clockwise as seen.
QList<QPointF> hullOf(QList<QPointF> points)
{
    std::sort(points.begin(), points.end(), [](QPointF a, QPointF b) { return a.x() < b.x() || (a.x() == b.x() && a.y() < b.y()); });
    points.erase(std::unique(points.begin(), points.end()), points.end());
    if (points.size() < 2)
        return points;
    QList<QPointF> hull;
    addHalf(hull, points);
    std::reverse(points.begin(), points.end());
    addHalf(hull, points);
    return hull;
}

QPointF middleOf(const QList<QPointF> &points)
{
    QPointF sum;
    for (const QPointF &point : points)
        sum += point;
    return points.isEmpty() ? sum : sum / static_cast<double>(points.size());
}

/// The circle around `centre` that all places lie on, if they do.
std::optional<double> radiusOf(const QList<QPointF> &places, QPointF centre)
{
    if (places.size() < 2)
        return std::nullopt;
    double sum = 0;
    for (const QPointF &place : places)
        sum += length(place - centre);
    const double radius = sum / static_cast<double>(places.size());
    const auto isOn = [&](QPointF place) { return std::abs(length(place - centre) - radius) <= radius * 0.02; };
    return std::all_of(places.begin(), places.end(), isOn) ? std::optional(radius) : std::nullopt;
}

/// To the nearest place on a line.
QPointF wayTo(const QLineF &line, QPointF point)
{
    const QPointF along = line.p2() - line.p1();
    const double squared = QPointF::dotProduct(along, along);
    const double share = squared > 0 ? std::clamp(QPointF::dotProduct(point - line.p1(), along) / squared, 0.0, 1.0) : 0;
    return point - line.p1() - along * share;
}

/// What is far off is told by the ends of the line alone.
bool isNear(const QLineF &line, QPointF point, double reach)
{
    if (point.x() < std::min(line.x1(), line.x2()) - reach || point.x() > std::max(line.x1(), line.x2()) + reach ||
        point.y() < std::min(line.y1(), line.y2()) - reach || point.y() > std::max(line.y1(), line.y2()) + reach)
        return false;
    return length(wayTo(line, point)) <= reach;
}

/// Out of a side that is walked clockwise.
QPointF normalOf(const QLineF &side)
{
    return ofLengthOne({side.dy(), -side.dx()});
}

double degreesOf(QPointF direction)
{
    return qRadiansToDegrees(std::atan2(-direction.y(), direction.x()));
}

QRectF circleAt(QPointF middle, double radius)
{
    return {middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius};
}

} // namespace

JointPart::JointPart(const QList<QPointF> &places, bool round) : m_hull(hullOf(places)), m_centre(middleOf(places))
{
    if (round)
        m_radius = radiusOf(places, m_centre);
    for (qsizetype index = 0; index < m_hull.size(); ++index)
        m_sides.append(QLineF(m_hull[index], m_hull[index + 1 < m_hull.size() ? index + 1 : 0]));
}

double JointPart::outside(QPointF point) const
{
    if (m_radius)
        return std::max(0.0, length(point - m_centre) - *m_radius);
    if (m_hull.isEmpty())
        return 0;
    const auto isInside = [point](const QLineF &side) { return turn(side.p1(), side.p2(), point) >= 0; };
    if (m_hull.size() > 2 && std::all_of(m_sides.begin(), m_sides.end(), isInside))
        return 0;
    QPointF nearest = point - m_hull.first();
    for (const QLineF &side : m_sides) {
        const QPointF way = wayTo(side, point);
        if (QPointF::dotProduct(way, way) < QPointF::dotProduct(nearest, nearest))
            nearest = way;
    }
    return length(nearest);
}

QPointF JointPart::outward(QPointF place) const
{
    if (m_hull.size() == 1)
        return {0, -1};
    if (isLine()) {
        const QPointF along = m_hull.last() - m_hull.first();
        const QPointF aside(along.y(), -along.x());
        const bool other = std::abs(aside.y()) >= std::abs(aside.x()) ? aside.y() > 0 : aside.x() < 0;
        return ofLengthOne(other ? -aside : aside);
    }
    QPointF sum;
    if (!m_radius && m_hull.size() > 2) {
        for (const QLineF &side : m_sides) {
            if (!isNear(side, place, 0.5))
                continue;
            const QPointF normal = normalOf(side);
            if (std::abs(normal.y()) > 0.99)
                return normal;
            sum += normal;
        }
    }
    if (sum.isNull())
        sum = ofLengthOne(place - m_centre);
    return sum.isNull() ? QPointF(0, 1) : ofLengthOne(sum);
}

bool JointPart::isOnRim(QPointF place) const
{
    constexpr double near = 0.5;
    if (m_radius || m_hull.size() < 3)
        return true;
    return std::any_of(m_sides.begin(), m_sides.end(), [place](const QLineF &side) { return isNear(side, place, near); });
}

QPainterPath JointPart::flange(double rim, double inner) const
{
    QPainterPath path;
    path.setFillRule(Qt::OddEvenFill);
    path.addEllipse(circleAt(m_centre, *m_radius + rim));
    if (*m_radius - inner > inner / 2)
        path.addEllipse(circleAt(m_centre, *m_radius - inner));
    return path;
}

QPainterPath JointPart::outline(double rim, double inner) const
{
    if (m_radius)
        return flange(rim, inner);
    QPainterPath path;
    if (m_hull.size() == 1)
        path.addEllipse(circleAt(m_hull.first(), rim));
    for (qsizetype index = 0; m_hull.size() > 1 && index < m_hull.size(); ++index) {
        const double from = degreesOf(normalOf(m_sides[index > 0 ? index - 1 : m_sides.size() - 1]));
        const double to = degreesOf(normalOf(m_sides[index]));
        const double sweep = std::fmod(to - from - 720, 360); // clockwise
        const QRectF corner = circleAt(m_hull[index], rim);
        if (index == 0)
            path.arcMoveTo(corner, from);
        path.arcTo(corner, from, sweep);
    }
    path.closeSubpath();
    return path;
}

} // namespace asleft
