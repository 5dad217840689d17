#include "bench/joint_canvas.h"

#include "parts/ink_of.h"

#include <QPaintEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace asleft {

namespace {

/// A text may reach a little past its box, and a leg has a head.
constexpr double around = 8;
/// How much of a fastener's half square the leader line keeps clear of.
constexpr double clearOf = 0.8;

bool isFree(const JointPlan &plan, qsizetype fastener, double x)
{
    const double clear = plan.diameter / 2 * clearOf;
    const QPointF from = plan.fasteners[fastener];
    return std::none_of(plan.fasteners.begin(), plan.fasteners.end(), [&](const QPointF &middle) {
        return middle != from && middle.y() > from.y() - clear && std::abs(middle.x() - x) < clear;
    });
}

QList<PlacedText> within(const QList<PlacedText> &texts, const QRectF &exposed)
{
    QList<PlacedText> part;
    for (const PlacedText &text : texts)
        if (!text.text.isEmpty() && text.box.adjusted(-around, -around, around, around).intersects(exposed))
            part.append(text);
    return part;
}

} // namespace

PartOfPlan partOfPlan(const JointPlan &plan, const QRectF &exposed, qsizetype done)
{
    PartOfPlan part{plan};
    part.plan.numbers = within(plan.numbers, exposed);
    part.plan.differences = within(plan.differences, exposed);
    part.plan.legs.clear();
    for (qsizetype i = 0; i < plan.legs.size(); ++i) {
        // Of a level leg there is no height, and nothing would intersect it.
        if (!plan.legs[i].boundingRect().adjusted(-around, -around, around, around).intersects(exposed))
            continue;
        part.plan.legs.append(plan.legs[i]);
        part.done += i < done ? 1 : 0;
    }
    return part;
}

QPainterPath leaderLine(const JointPlan &plan, qsizetype fastener, double foot)
{
    const QPointF from = plan.fasteners[fastener];
    const double ring = ringRadius(plan.diameter);
    const double step = plan.diameter / 8;
    for (int steps = 0; steps * step < plan.diameter * 2; ++steps)
        for (const double x : {from.x() + steps * step, from.x() - steps * step})
            if (x > 0 && x < plan.size.width() && isFree(plan, fastener, x))
                return leaderLine(from, ring, {x, foot});
    return leaderLine(from, ring, {from.x(), foot});
}

void JointCanvas::setPlan(const JointPlan &plan, QPointF corner)
{
    m_plan = plan;
    m_corner = corner;
    update();
}

void JointCanvas::setState(std::optional<qsizetype> inHand, qsizetype done)
{
    if (m_inHand == inHand && m_done == done)
        return;
    m_inHand = inHand;
    m_done = done;
    update();
}

void JointCanvas::setPathShown(bool shown)
{
    if (m_pathShown == shown)
        return;
    m_pathShown = shown;
    update();
}

void JointCanvas::paintEvent(QPaintEvent *event)
{
    if (m_plan.fasteners.isEmpty())
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(-m_corner);
    const Ink &ink = inkOf(*this);
    const QRectF exposed = QRectF(event->rect()).translated(m_corner);
    const PartOfPlan part = partOfPlan(m_plan, exposed, m_done);
    paintJoint(painter, part.plan, ink, m_pathShown, part.done);
    if (m_inHand && *m_inHand < m_plan.fasteners.size())
        paintLeaderLine(painter, leaderLine(m_plan, *m_inHand, m_corner.y() + height()), ink);
}

} // namespace asleft
