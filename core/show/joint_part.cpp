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

double distance(QPointF point, const QLineF &line)
{
    const QPointF along = line.p2() - line.p1();
    const double squared = QPointF::dotProduct(along, along);
    const double share = squared > 0 ? std::clamp(QPointF::dotProduct(point - line.p1(), along) / squared, 0.0, 1.0) : 0;
    return length(point - line.p1() - along * share);
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
}

QLineF JointPart::side(qsizetype index) const
{
    return {m_hull[index], m_hull[(index + 1) % m_hull.size()]};
}

double JointPart::outside(QPointF point) const
{
    if (m_radius)
        return std::max(0.0, length(point - m_centre) - *m_radius);
    if (m_hull.isEmpty())
        return 0;
    bool within = m_hull.size() > 2;
    double nearest = length(point - m_hull.first());
    for (qsizetype index = 0; index < m_hull.size(); ++index) {
        within = within && turn(side(index).p1(), side(index).p2(), point) >= 0;
        nearest = std::min(nearest, distance(point, side(index)));
    }
    return within ? 0 : nearest;
}

QPointF JointPart::outward(QPointF place) const
{
    QPointF sum;
    if (!m_radius && m_hull.size() > 2) {
        for (qsizetype index = 0; index < m_hull.size(); ++index) {
            if (distance(place, side(index)) > 0.5)
                continue;
            const QPointF normal = normalOf(side(index));
            if (std::abs(normal.y()) > 0.99)
                return normal;
            sum += normal;
        }
    }
    if (sum.isNull())
        sum = ofLengthOne(place - m_centre);
    if (isLine() && std::abs(sum.x()) > std::abs(sum.y()))
        sum.setY(std::abs(sum.x()));
    return sum.isNull() ? QPointF(0, 1) : ofLengthOne(sum);
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
        const double from = degreesOf(normalOf(side((index + m_hull.size() - 1) % m_hull.size())));
        const double to = degreesOf(normalOf(side(index)));
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
