#include <drawn/joint_part.h>

#include <draw/line_part.h>

#include <algorithm>
#include <cmath>

namespace asleft {

namespace {

/// A text may reach a little past its box.
constexpr double around = 4;
/// Where a leg is cut off it gets a head, which is not to be seen.
constexpr double beyond = 40;
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

/// The part of a line in this area, if there is any.
std::optional<QLineF> within(const QLineF &line, const QRectF &area)
{
    const auto part = partWithin(line, area);
    if (!part || part->from >= part->to)
        return std::nullopt;
    // What is not cut stays as it is, to the last digit.
    return QLineF(part->from > 0 ? line.pointAt(part->from) : line.p1(), part->to < 1 ? line.pointAt(part->to) : line.p2());
}

/// A leg from where it comes into this area to where it leaves it for good: lines of thousands of pixels take long to paint, though hardly
/// any of it is seen.
QPolygonF within(const QPolygonF &leg, const QRectF &area)
{
    QPolygonF part;
    qsizetype kept = 0; // of `part`, up to the end of the last line that was in the area
    for (qsizetype i = 0; i + 1 < leg.size(); ++i) {
        const auto line = within(QLineF(leg[i], leg[i + 1]), area);
        if (line && part.isEmpty())
            part.append(line->p1());
        if (part.isEmpty())
            continue;
        part.append(line ? line->p2() : leg[i + 1]);
        if (line)
            kept = part.size();
        // It may come back: the corner is kept until it is known.
        if (line && line->p2() != leg[i + 1])
            part.append(leg[i + 1]);
    }
    part.resize(kept);
    return part;
}

} // namespace

PartOfPlan partOfPlan(const JointPlan &plan, const QRectF &exposed, qsizetype done)
{
    PartOfPlan part{plan};
    part.plan.numbers = within(plan.numbers, exposed);
    part.plan.differences = within(plan.differences, exposed);
    part.plan.legs.clear();
    const QRectF near = exposed.adjusted(-beyond, -beyond, beyond, beyond);
    for (qsizetype i = 0; i < plan.legs.size(); ++i) {
        const QPolygonF leg = within(plan.legs[i], near);
        if (leg.isEmpty())
            continue;
        part.plan.legs.append(leg);
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

} // namespace asleft
