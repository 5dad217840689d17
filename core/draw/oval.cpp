#include "oval.h"

#include <algorithm>
#include <cmath>

namespace asleft {

namespace {

constexpr int steps = 240;

QPointF outwardOfLengthOne(QPointF vector)
{
    const double length = std::hypot(vector.x(), vector.y());
    return length > 0 ? vector / length : QPointF(0, -1);
}

} // namespace

Oval::Oval(QPointF centre, double halfWidth, double halfHeight) : m_centre(centre), m_halfWidth(halfWidth), m_halfHeight(halfHeight)
{
    m_lengths.push_back(0);
    for (int step = 1; step <= steps; ++step) {
        const QPointF piece = pointAt(2 * M_PI * step / steps) - pointAt(2 * M_PI * (step - 1) / steps);
        m_lengths.push_back(m_lengths.back() + std::hypot(piece.x(), piece.y()));
    }
}

QPointF Oval::pointAt(double turn) const
{
    return m_centre + QPointF(m_halfWidth * std::sin(turn), -m_halfHeight * std::cos(turn));
}

Oval::Place Oval::at(double share) const
{
    const double target = (share - std::floor(share)) * length();
    const auto after = std::lower_bound(m_lengths.begin() + 1, m_lengths.end() - 1, target);
    const double before = *(after - 1);
    const double rest = *after > before ? (target - before) / (*after - before) : 0;
    const double turn = 2 * M_PI * (static_cast<double>(after - m_lengths.begin()) - 1 + rest) / steps;
    const QPointF along = outwardOfLengthOne({m_halfWidth * std::cos(turn), m_halfHeight * std::sin(turn)});
    return {pointAt(turn), {along.y(), -along.x()}, along};
}

QPainterPath Oval::sector(double fromShare, double toShare, double inner, double outer) const
{
    constexpr int pieces = 12;
    QPainterPath path(at(fromShare).moved(0, outer));
    for (int piece = 1; piece <= pieces; ++piece)
        path.lineTo(at(fromShare + (toShare - fromShare) * piece / pieces).moved(0, outer));
    for (int piece = pieces; piece >= 0; --piece)
        path.lineTo(at(fromShare + (toShare - fromShare) * piece / pieces).moved(0, inner));
    path.closeSubpath();
    return path;
}

} // namespace asleft
