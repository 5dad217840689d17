#include "head_leaders.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>
#include <limits>

namespace asleft {

namespace {

constexpr double bodyShare = 0.32;    // of a point's square: what a line must not touch
constexpr double clearance = 3;       // besides
constexpr double textCost = 60;       // of running through a name, in pixels aside
constexpr double farthestShare = 3.2; // how far aside a line may go, in points
constexpr double beside = 4;          // between a line and a text
constexpr double ownBank = 100;       // what running over a point of its own bank costs more than over another's
constexpr double edge = 2;

double distance(QPointF a, QPointF b)
{
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

double distanceToSegment(QPointF point, QPointF from, QPointF to)
{
    const QPointF along = to - from;
    const double length = QPointF::dotProduct(along, along);
    const double share = length > 0 ? std::clamp(QPointF::dotProduct(point - from, along) / length, 0.0, 1.0) : 0;
    return distance(point, from + along * share);
}

/// The bends of one leader line.
struct Way {
    QPointF from;
    QPointF bend;
    QPointF foot;
};

Way wayOf(const HeadPlan &plan, qsizetype point, double x)
{
    const QPainterPath path = leaderLine(plan.points[point], ringRadius(plan.pointDiameter), {x, plan.size.height()});
    const QPointF from = path.elementAt(0);
    return {from, path.elementCount() > 2 ? QPointF(path.elementAt(1)) : from, path.currentPosition()};
}

bool onOneCasting(const HeadPlan &plan, QPointF first, QPointF second)
{
    return std::any_of(plan.castings.begin(), plan.castings.end(),
                       [&](const QRectF &casting) { return casting.contains(first) && casting.contains(second); });
}

/// How much the way lacks to be clear of other points, all of them added up; those of its own bank are kept clear of first.
double runsOver(const HeadPlan &plan, qsizetype point, const Way &way)
{
    const double needed = plan.pointDiameter * bodyShare + clearance;
    double missing = 0;
    for (qsizetype other = 0; other < plan.points.size(); ++other) {
        if (other == point)
            continue;
        const QPointF middle = plan.points[other];
        const double near = std::min(distanceToSegment(middle, way.from, way.bend), distanceToSegment(middle, way.bend, way.foot));
        if (near < needed)
            missing += needed - near + (onOneCasting(plan, middle, plan.points[point]) ? ownBank : 0);
    }
    return missing;
}

QRectF inkBox(const PlacedText &text)
{
    const QFontMetricsF metrics(textFont(text.size == TextSize::Small ? TextSize::SmallStrong : text.size));
    const double width = metrics.horizontalAdvance(text.text);
    const double left = text.alignment & Qt::AlignLeft ? text.box.left() : text.box.center().x() - width / 2;
    return {left, text.box.center().y() - metrics.capHeight() / 2, width, metrics.capHeight()};
}

bool runsThrough(const QRectF &box, const Way &way)
{
    const bool below = way.bend.x() > box.left() - beside && way.bend.x() < box.right() + beside && way.bend.y() < box.bottom();
    const QPointF middle = (way.from + way.bend) / 2;
    return below || box.contains(way.bend) || box.contains(middle);
}

class Search {
public:
    explicit Search(const HeadPlan &plan) : m_plan(plan)
    {
        for (const auto *list : {&plan.pointLabels, &plan.numbers, &plan.labels}) {
            for (const PlacedText &text : *list) {
                if (!text.text.isEmpty())
                    m_texts.append(inkBox(text));
            }
        }
    }

    [[nodiscard]] double footOf(qsizetype point) const
    {
        const double start = m_plan.points[point].x();
        const double step = std::max(1.0, m_plan.pointDiameter / 16);
        const double farthest = std::max(farthestShare * m_plan.pointDiameter, 3 * step);
        Best best;
        for (double aside = 0; aside <= farthest; aside += step) {
            tryFoot(best, point, start + aside);
            tryFoot(best, point, start - aside);
        }
        return best.x;
    }

private:
    struct Best {
        double x = 0;
        double cost = std::numeric_limits<double>::max();
    };

    void tryFoot(Best &best, qsizetype point, double x) const
    {
        if (x < edge || x > m_plan.size.width() - edge)
            return;
        const Way way = wayOf(m_plan, point, x);
        if (way.bend.y() > m_plan.size.height())
            return;
        const double aside = std::abs(x - m_plan.points[point].x());
        if (aside >= best.cost)
            return;
        const double missing = runsOver(m_plan, point, way);
        // Running over a point is worse than anything else, by how much it does.
        double cost = aside + (missing > 0 ? 1e4 + 1e3 * missing : 0);
        if (cost >= best.cost)
            return;
        for (const QRectF &text : m_texts)
            cost += runsThrough(text, way) ? textCost : 0;
        if (cost < best.cost)
            best = {x, cost};
    }

    const HeadPlan &m_plan;
    QList<QRectF> m_texts;
};

} // namespace

void findLeaders(HeadPlan &plan)
{
    const Search search(plan);
    plan.leaderX.clear();
    for (qsizetype point = 0; point < plan.points.size(); ++point)
        plan.leaderX.append(std::clamp(search.footOf(point), edge, plan.size.width() - edge));
}

} // namespace asleft
