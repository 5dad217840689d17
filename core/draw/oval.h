#pragma once

#include <QPainterPath>
#include <QPointF>

#include <vector>

namespace asleft {

/// A circle, or one drawn out in width, that is walked along by equal lengths: clockwise from the top.
class Oval {
public:
    Oval(QPointF centre, double halfWidth, double halfHeight);

    /// A place on it.
    struct Place {
        QPointF at;
        QPointF outward; ///< of length 1
        QPointF along;   ///< the same, the way it is walked

        [[nodiscard]] QPointF moved(double aside, double out) const { return at + along * aside + outward * out; }
    };
    /// 0 is the top, 0.25 the right, 1 the top again; less and more go round as well.
    [[nodiscard]] Place at(double share) const;
    [[nodiscard]] QPointF centre() const { return m_centre; }
    [[nodiscard]] double length() const { return m_lengths.back(); }

    /// The outline of a piece of the band between two distances from the oval, both counted outward.
    [[nodiscard]] QPainterPath sector(double fromShare, double toShare, double inner, double outer) const;

private:
    [[nodiscard]] QPointF pointAt(double turn) const;

    QPointF m_centre;
    double m_halfWidth;
    double m_halfHeight;
    std::vector<double> m_lengths; ///< along the outline, up to each step
};

} // namespace asleft
