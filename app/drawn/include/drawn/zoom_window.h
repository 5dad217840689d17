#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>

namespace asleft {

/// How a drawing is looked at that may be larger than its window: how many times larger, and which part of it is in sight. Plain
/// geometry. The drawing is never smaller than the window, nor than the least there is a plan for, and never leaves a gap at its edges.
class ZoomWindow {
public:
    static constexpr double most = 6;
    static constexpr double step = 1.25;

    /// Keeps what is in the middle there. `least` is how small the drawing may be.
    void setSize(QSizeF size, QSizeF least = {1, 1});
    [[nodiscard]] QSizeF size() const { return m_size; }
    [[nodiscard]] double factor() const { return m_factor; }
    /// How many times as large it may become; `most` unless told otherwise.
    void setLimit(double limit);
    [[nodiscard]] double limit() const { return m_limit; }
    [[nodiscard]] QSizeF drawing() const { return m_size.expandedTo(m_least) * m_factor; }
    /// Whether some of the drawing is out of sight.
    [[nodiscard]] bool isLarger() const { return drawing().width() > m_size.width() || drawing().height() > m_size.height(); }
    /// The window's upper left corner in the drawing.
    [[nodiscard]] QPointF corner() const { return m_corner; }

    /// Makes the drawing so many times as large as it is at least, 1 to the limit; what lies under `keep`, a place of the window, stays
    /// there.
    void zoomTo(double factor, QPointF keep);
    void moveBy(QPointF step);
    /// Moves no further than it takes to have this part of the drawing in sight.
    void bringIntoSight(const QRectF &part);

private:
    void stayInside();

    QSizeF m_size{1, 1};
    QSizeF m_least{1, 1};
    double m_factor = 1;
    double m_limit = most;
    QPointF m_corner;
};

} // namespace asleft
