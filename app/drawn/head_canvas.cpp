#include "head_canvas.h"

#include <parts/ink_of.h>

#include <QPainter>

namespace asleft {

void HeadCanvas::setPlan(const HeadPlan &plan, QPointF corner)
{
    m_plan = plan;
    m_corner = corner;
    update();
}

void HeadCanvas::setLooks(const QList<PointLook> &looks, std::optional<qsizetype> inHand)
{
    m_looks = looks;
    m_inHand = inHand;
    update();
}

void HeadCanvas::paintEvent(QPaintEvent *)
{
    if (m_plan.points.isEmpty())
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(-m_corner);
    const Ink &ink = inkOf(*this);
    paintHead(painter, m_plan, ink, m_looks);
    if (m_inHand && *m_inHand < m_plan.points.size())
        paintLeaderLine(painter, leaderLine(m_plan, *m_inHand, m_corner.y() + height()), ink);
}

} // namespace asleft
