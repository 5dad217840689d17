#include "joint_numbers.h"

#include <QtMath>

#include <algorithm>
#include <cmath>

namespace asleft {

namespace {

constexpr double around = 1.5;      // between a text and anything else
constexpr double offOutline = 3;    // between a text and the outline of the part
constexpr double offFastener = 1.5; // between a text and the ring of its own fastener
constexpr int directions = 16;
/// Among fasteners smaller than this a text stands off a little, where it does not fit close by.
constexpr double smallFastener = 12;

/// Whether a line passes through a box or ends in it.
bool crosses(const QRectF &box, QPointF from, QPointF to)
{
    double enter = 0;
    double leave = 1;
    const auto narrow = [&](double start, double step, double low, double high) {
        if (step == 0)
            return start >= low && start <= high;
        const double a = (low - start) / step;
        const double b = (high - start) / step;
        enter = std::max(enter, std::min(a, b));
        leave = std::min(leave, std::max(a, b));
        return enter <= leave;
    };
    return narrow(from.x(), to.x() - from.x(), box.left(), box.right()) && narrow(from.y(), to.y() - from.y(), box.top(), box.bottom());
}

QPointF direction(double turn)
{
    return {std::cos(2 * M_PI * turn), std::sin(2 * M_PI * turn)};
}

QRectF squareAt(QPointF middle, double side)
{
    return {middle.x() - side / 2, middle.y() - side / 2, side, side};
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
        (std::hypot(x, y) < radius ? low : high) = middle;
    }
    return high;
}

} // namespace

JointTexts::JointTexts(const JointPart &part, const QList<QPointF> &places, double diameter, double rim, TextSize size)
    : m_part(part), m_places(places), m_diameter(diameter), m_rim(rim), m_size(size), m_metrics(textFont(size))
{
}

QRectF JointTexts::boxAt(qsizetype index, const QString &text, QPointF direction, double off) const
{
    const QSizeF size(m_metrics.horizontalAdvance(text) + 2 * around, m_metrics.capHeight() + 2 * around);
    const QPointF middle = m_places[index] + direction * clearOf(m_diameter / 2 + offFastener - around + off, size, direction);
    return {middle.x() - size.width() / 2, middle.y() - size.height() / 2, size.width(), size.height()};
}

bool JointTexts::isFree(qsizetype index, const QRectF &box) const
{
    for (const QPointF &corner : {box.topLeft(), box.topRight(), box.bottomLeft(), box.bottomRight()}) {
        if (m_part.outside(corner) > m_rim - offOutline)
            return false;
    }
    for (qsizetype other = 0; other < m_places.size(); ++other) {
        if (other != index && squareAt(m_places[other], m_diameter).intersects(box))
            return false;
    }
    return std::none_of(m_taken.begin(), m_taken.end(), [&box](const QRectF &taken) { return taken.intersects(box); });
}

bool JointTexts::isOnLeg(const QRectF &box) const
{
    for (const JointLeg &leg : m_legs) {
        for (qsizetype piece = 1; piece < leg.size(); ++piece) {
            if (crosses(box, leg[piece - 1], leg[piece]))
                return true;
        }
    }
    return false;
}

std::optional<QRectF> JointTexts::boxFor(qsizetype index, const QString &text) const
{
    std::optional<QRectF> box = boxFor(index, text, 0);
    for (double off = 3; !box && off < smallFastener && m_diameter < smallFastener; off += 3)
        box = boxFor(index, text, off);
    return box;
}

std::optional<QRectF> JointTexts::boxFor(qsizetype index, const QString &text, double off) const
{
    const QPointF outward = m_part.outward(m_places[index]);
    const double first = std::atan2(outward.y(), outward.x()) / (2 * M_PI);
    std::optional<QRectF> onLeg;
    for (int step = 0; step < directions; ++step) {
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

std::optional<QList<PlacedText>> JointTexts::place(const QStringList &texts)
{
    const QList<QRectF> before = m_taken;
    QList<PlacedText> placedTexts;
    for (qsizetype index = 0; index < texts.size(); ++index) {
        const auto box = texts[index].isEmpty() ? QRectF() : boxFor(index, texts[index]);
        if (!box) {
            m_taken = before;
            return std::nullopt;
        }
        if (!texts[index].isEmpty())
            m_taken.append(*box);
        placedTexts.append(placed(texts[index], *box));
    }
    return placedTexts;
}

} // namespace asleft
