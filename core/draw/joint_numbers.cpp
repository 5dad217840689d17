#include "joint_numbers.h"

#include <draw/fonts.h>
#include <draw/line_part.h>

#include <QFontMetricsF>
#include <QPolygonF>
#include <QtMath>

#include <algorithm>
#include <cmath>

namespace asleft {

namespace {

constexpr double around = 1.5;      // between a text and anything else
constexpr double offOutline = 3;    // between a text and the outline of the part
constexpr double offFastener = 1.5; // between a text and the ring of its own fastener
constexpr int directions = 16;
constexpr int outsideDirections = 3; // straight out, and a little to either side
/// Among fasteners smaller than this a text stands off a little, where it does not fit close by.
constexpr double smallFastener = 12;

QPointF direction(double turn)
{
    return {std::cos(2 * M_PI * turn), std::sin(2 * M_PI * turn)};
}

QRectF squareAt(QPointF middle, double side)
{
    return {middle.x() - side / 2, middle.y() - side / 2, side, side};
}

bool overlap(const QRectF &one, const QRectF &other)
{
    return one.left() < other.right() && other.left() < one.right() && one.top() < other.bottom() && other.top() < one.bottom();
}

/// How far the middle of a box of this size has to go from the middle of a circle so that the box just leaves it.
double clearOf(double radius, QSizeF box, QPointF way)
{
    double low = 0;
    double high = radius + box.width() + box.height();
    for (int step = 0; step < 20; ++step) {
        const double middle = (low + high) / 2;
        const double x = std::max(0.0, std::abs(way.x()) * middle - box.width() / 2);
        const double y = std::max(0.0, std::abs(way.y()) * middle - box.height() / 2);
        (x * x + y * y < radius * radius ? low : high) = middle;
    }
    return high;
}

} // namespace

MeasuredTexts::MeasuredTexts(const QStringList &given, TextSize setIn) : texts(given), size(setIn)
{
    const QFontMetricsF metrics(textFont(size));
    height = metrics.capHeight();
    for (const QString &text : texts) {
        widths.append(text.isEmpty() ? 0 : metrics.horizontalAdvance(text));
        widest = std::max(widest, widths.last());
    }
}

JointTexts::JointTexts(const JointPart &part, const QList<QPointF> &places, double diameter, double rim)
    : m_part(part), m_places(places), m_diameter(diameter), m_rim(rim),
      m_area(QPolygonF(places).boundingRect().adjusted(-rim, -rim, rim, rim)), m_placesNear(m_area, places.size()),
      m_takenNear(m_area, places.size()), m_linesNear(m_area, 0)
{
    for (qsizetype index = 0; index < places.size(); ++index)
        m_placesNear.add(index, places[index]);
}

void JointTexts::take(const QRectF &box)
{
    m_takenNear.add(static_cast<qsizetype>(m_taken.size()), box);
    m_taken.push_back(box);
}

void JointTexts::avoid(const QList<JointLeg> &legs)
{
    m_lines.clear();
    for (const JointLeg &leg : legs) {
        for (qsizetype piece = 1; piece < leg.size(); ++piece)
            m_lines.emplace_back(leg[piece - 1], leg[piece]);
    }
    m_linesNear = JointGrid(m_area, std::min(4 * m_places.size(), static_cast<qsizetype>(m_lines.size())));
    for (std::size_t line = 0; line < m_lines.size(); ++line)
        m_linesNear.add(static_cast<qsizetype>(line), m_lines[line].p1(), m_lines[line].p2());
}

QRectF JointTexts::boxAt(qsizetype index, QSizeF text, QPointF direction, double off) const
{
    const QSizeF size(text.width() + 2 * around, text.height() + 2 * around);
    const QPointF middle = m_places[index] + direction * clearOf(m_diameter / 2 + offFastener - around + off, size, direction);
    return {middle.x() - size.width() / 2, middle.y() - size.height() / 2, size.width(), size.height()};
}

bool JointTexts::isOnPart(qsizetype index, const QRectF &box) const
{
    const double reach = m_rim - offOutline;
    const auto isOn = [&](QPointF corner) {
        // So near to its own place no outline is crossed.
        const QPointF off = corner - m_places[index];
        return QPointF::dotProduct(off, off) <= reach * reach || m_part.outside(corner) <= reach;
    };
    return isOn(box.topLeft()) && isOn(box.topRight()) && isOn(box.bottomLeft()) && isOn(box.bottomRight());
}

bool JointTexts::isFree(qsizetype index, const QRectF &box) const
{
    const double half = m_diameter / 2;
    const auto isUnder = [&](qsizetype other) { return other != index && overlap(squareAt(m_places[other], m_diameter), box); };
    const auto isTaken = [&](qsizetype other) { return overlap(m_taken[static_cast<std::size_t>(other)], box); };
    return !m_placesNear.any(box.adjusted(-half, -half, half, half), isUnder) && !m_takenNear.any(box, isTaken) && isOnPart(index, box);
}

bool JointTexts::isOnLeg(const QRectF &box) const
{
    return m_linesNear.any(box, [&](qsizetype line) { return partWithin(m_lines[static_cast<std::size_t>(line)], box).has_value(); });
}

std::optional<QRectF> JointTexts::boxFor(qsizetype index, QSizeF text, TextWay way) const
{
    const int ways = way == TextWay::Outside && m_part.isOnRim(m_places[index]) ? outsideDirections : directions;
    std::optional<QRectF> box = boxAway(index, text, ways, 0);
    for (double off = 3; !box && off < smallFastener && m_diameter < smallFastener; off += 3)
        box = boxAway(index, text, ways, off);
    return box;
}

std::optional<QRectF> JointTexts::boxAway(qsizetype index, QSizeF text, int ways, double off) const
{
    const QPointF outward = m_part.outward(m_places[index]);
    const double first = std::atan2(outward.y(), outward.x()) / (2 * M_PI);
    std::optional<QRectF> onLeg;
    for (int step = 0; step < ways; ++step) {
        const double aside = ((step + 1) / 2) * (step % 2 == 0 ? -1.0 : 1.0) / directions;
        const QRectF box = boxAt(index, text, direction(first + aside), off);
        if (!isFree(index, box))
            continue;
        if (!isOnLeg(box))
            return box;
        if (!onLeg)
            onLeg = box;
    }
    return onLeg;
}

} // namespace asleft
