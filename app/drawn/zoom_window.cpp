#include <drawn/zoom_window.h>

#include <algorithm>

namespace asleft {

void ZoomWindow::setSize(QSizeF size, QSizeF least)
{
    const QPointF middle(size.width() / 2, size.height() / 2);
    const QPointF share((m_corner.x() + m_size.width() / 2) / drawing().width(), (m_corner.y() + m_size.height() / 2) / drawing().height());
    m_size = size.expandedTo(QSizeF(1, 1));
    m_least = least;
    m_corner = QPointF(share.x() * drawing().width(), share.y() * drawing().height()) - middle;
    stayInside();
}

void ZoomWindow::setLimit(double limit)
{
    m_limit = limit;
    if (m_factor > limit)
        zoomTo(limit, {m_size.width() / 2, m_size.height() / 2});
}

void ZoomWindow::zoomTo(double factor, QPointF keep)
{
    const double before = m_factor;
    m_factor = std::clamp(factor, 1.0, m_limit);
    m_corner = (m_corner + keep) * (m_factor / before) - keep;
    stayInside();
}

void ZoomWindow::moveBy(QPointF step)
{
    m_corner += step;
    stayInside();
}

void ZoomWindow::bringIntoSight(const QRectF &part)
{
    // What does not fit shows its beginning.
    const auto along = [](double corner, double size, double begins, double ends) {
        return std::min(std::max(corner, ends - size), begins);
    };
    m_corner = {along(m_corner.x(), m_size.width(), part.left(), part.right()),
                along(m_corner.y(), m_size.height(), part.top(), part.bottom())};
    stayInside();
}

void ZoomWindow::stayInside()
{
    m_corner = {std::clamp(m_corner.x(), 0.0, drawing().width() - m_size.width()),
                std::clamp(m_corner.y(), 0.0, drawing().height() - m_size.height())};
}

} // namespace asleft
