#pragma once

#include <QLineF>
#include <QList>
#include <QPainterPath>
#include <QPointF>

#include <optional>

namespace asleft {

/// What the fasteners of a joint sit on: their places with a rim around them, a flange where they stand round a circle.
class JointPart {
public:
    /// `round`: the places are those of a circle, if they do lie on one.
    JointPart(const QList<QPointF> &places, bool round);

    [[nodiscard]] QPointF centre() const { return m_centre; }
    [[nodiscard]] bool isFlange() const { return m_radius.has_value(); }
    /// All places lie on one straight line.
    [[nodiscard]] bool isLine() const { return !m_radius && m_hull.size() == 2; }
    /// How far a point lies outside the line around the places; 0 within it.
    [[nodiscard]] double outside(QPointF point) const;
    /// Away from the part, of length 1, as seen from a place; from a line, and from a single place, up, from an upright line to the right.
    [[nodiscard]] QPointF outward(QPointF place) const;
    /// Whether a place lies on the line around the places, so that beside it the part ends.
    [[nodiscard]] bool isOnRim(QPointF place) const;
    /// The outline with this much rim beyond the places; a flange is open in the middle where that leaves `inner` around its places.
    [[nodiscard]] QPainterPath outline(double rim, double inner) const;

private:
    [[nodiscard]] QPainterPath flange(double rim, double inner) const;

    QList<QPointF> m_hull; ///< clockwise as seen
    QList<QLineF> m_sides; ///< from each of its corners to the next
    QPointF m_centre;
    std::optional<double> m_radius; ///< of the circle of places
};

} // namespace asleft
