#include "joint_legs.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace asleft {

namespace {

constexpr double lane = 7;          // between two legs that are bent the same way
constexpr qsizetype fewEnough = 60; // legs that are bent finely and kept in lanes; more are a thicket anyway
constexpr int finePieces = 40;
constexpr int coarsePieces = 10;
constexpr int mostBends = 28;

double length(QPointF vector)
{
    return std::hypot(vector.x(), vector.y());
}

double distance(QPointF point, QPointF from, QPointF to)
{
    const QPointF along = to - from;
    const double squared = QPointF::dotProduct(along, along);
    const double share = squared > 0 ? std::clamp(QPointF::dotProduct(point - from, along) / squared, 0.0, 1.0) : 0;
    return length(point - from - along * share);
}

/// A way from one place to another, pulled aside where it leaves and where it comes in.
QPolygonF bentWay(QPointF from, QPointF to, QPointF leaving, QPointF coming, int pieces)
{
    QPolygonF way;
    const QPointF first = from + leaving + (to - from) * 0.12;
    const QPointF second = to + coming + (from - to) * 0.12;
    for (int piece = 0; piece <= pieces; ++piece) {
        const double t = static_cast<double>(piece) / pieces;
        const double u = 1 - t;
        way.append(from * (u * u * u) + first * (3 * u * u * t) + second * (3 * u * t * t) + to * (t * t * t));
    }
    return way;
}

/// Where a piece of a way comes out of the circle of its first end.
QPointF crossing(QPointF inner, QPointF outer, QPointF middle, double radius)
{
    double low = 0;
    double high = 1;
    for (int step = 0; step < 24; ++step) {
        const double share = (low + high) / 2;
        (length(inner + (outer - inner) * share - middle) < radius ? low : high) = share;
    }
    return inner + (outer - inner) * high;
}

/// Cuts off what lies within the circle around the first place.
QPolygonF fromRim(const QPolygonF &way, double radius)
{
    const QPointF middle = way.first();
    qsizetype out = 1;
    while (out < way.size() && length(way[out] - middle) < radius)
        ++out;
    if (out == way.size())
        return {};
    QPolygonF cut{crossing(way[out - 1], way[out], middle, radius)};
    for (; out < way.size(); ++out)
        cut.append(way[out]);
    return cut;
}

QPolygonF reversed(QPolygonF way)
{
    std::reverse(way.begin(), way.end());
    return way;
}

class LegRouter {
public:
    LegRouter(const QList<QPointF> &path, const LegRules &rules) : m_path(path), m_rules(rules) {}

    QList<JointLeg> route()
    {
        QList<JointLeg> legs;
        for (qsizetype index = 0; index + 1 < m_path.size(); ++index)
            legs.append(trimmed(wayOf(index)));
        return legs;
    }

private:
    /// From rim to rim; of two that touch, what is left of the straight line.
    [[nodiscard]] JointLeg trimmed(const QPolygonF &way) const
    {
        const QPolygonF tail = fromRim(way, m_rules.radius);
        if (tail.size() < 2 || length(tail.first() - way.last()) <= m_rules.radius) {
            const QPointF middle = (way.first() + way.last()) / 2;
            const QPointF along = (way.last() - way.first()) * 0.02;
            return {middle - along, middle + along};
        }
        return reversed(fromRim(reversed(tail), m_rules.radius));
    }

    /// How many fasteners a way would run under; counted up to `most`.
    [[nodiscard]] int hiddenBy(const QPolygonF &way, qsizetype leg, int most) const
    {
        const double near = m_rules.radius + m_rules.clear;
        const QRectF around = way.boundingRect().adjusted(-near, -near, near, near);
        int count = 0;
        for (qsizetype other = 0; other < m_path.size() && count < most; ++other) {
            if (other != leg && other != leg + 1 && around.contains(m_path[other]) && runsUnder(way, m_path[other]))
                ++count;
        }
        return count;
    }

    [[nodiscard]] bool runsUnder(const QPolygonF &way, QPointF fastener) const
    {
        for (qsizetype piece = 1; piece < way.size(); ++piece) {
            if (distance(fastener, way[piece - 1], way[piece]) < m_rules.radius + m_rules.clear)
                return true;
        }
        return false;
    }

    [[nodiscard]] static bool isWithin(const QRectF &room, const QPolygonF &way)
    {
        return std::all_of(way.begin(), way.end(), [&room](QPointF at) { return room.contains(at); });
    }

    /// Whether the middle of a bent way keeps off those bent before.
    [[nodiscard]] bool hasLane(const QPolygonF &way) const
    {
        if (m_path.size() > fewEnough)
            return true;
        const QPointF middle = way[way.size() / 2];
        for (const QPolygonF &other : m_bent) {
            for (qsizetype piece = 1; piece < other.size(); ++piece) {
                if (distance(middle, other[piece - 1], other[piece]) < lane)
                    return false;
            }
        }
        return true;
    }

    /// Towards the middle of the part; along a line through it to the left of the way, so that ways to and fro part.
    [[nodiscard]] QPointF asideOf(QPointF from, QPointF to) const
    {
        const QPointF along = (to - from) / std::max(1e-9, length(to - from));
        const QPointF left(along.y(), -along.x());
        const double inward = QPointF::dotProduct(m_rules.centre - (from + to) / 2, left);
        return inward < -1 ? -left : left;
    }

    /// Straight if it can be; else bent as little as keeps it clear, among the fasteners rather than around them.
    QPolygonF wayOf(qsizetype leg)
    {
        Choice best{{m_path[leg], m_path[leg + 1]}, 0};
        best.hidden = hiddenBy(best.way, leg, static_cast<int>(m_path.size()));
        if (best.hidden == 0)
            return best.way;
        bendWithin(m_rules.inner, best, leg);
        if (best.hidden > 0)
            bendWithin(m_rules.room, best, leg);
        m_bent.append(best.way);
        return best.way;
    }

    struct Choice {
        QPolygonF way;
        int hidden = 0;
        bool final = false; ///< clear of everything, other bent ways too
    };

    /// To one side or the other, or from one to the other.
    void bendWithin(const QRectF &room, Choice &best, qsizetype leg) const
    {
        const QPointF from = m_path[leg];
        const QPointF to = m_path[leg + 1];
        const QPointF aside = asideOf(from, to) * m_rules.radius * 0.25;
        const bool few = m_path.size() <= fewEnough;
        constexpr std::pair<int, int> sides[] = {{1, 1}, {-1, -1}, {1, -1}, {-1, 1}};
        for (int bend = few ? 1 : 7; bend <= mostBends && !best.final; bend += few ? 1 : 7) {
            for (const auto &[leaving, coming] : sides) {
                const QPolygonF way = bentWay(from, to, aside * bend * leaving, aside * bend * coming, few ? finePieces : coarsePieces);
                if (!best.final && isWithin(room, way))
                    consider(best, way, leg);
            }
        }
    }

    void consider(Choice &best, const QPolygonF &way, qsizetype leg) const
    {
        const int hidden = hiddenBy(way, leg, std::max(1, best.hidden));
        const bool final = hidden == 0 && hasLane(way);
        if (final || hidden < best.hidden)
            best = {way, hidden, final};
    }

    const QList<QPointF> &m_path;
    LegRules m_rules;
    QList<QPolygonF> m_bent;
};

} // namespace

QList<JointLeg> legsOf(const QList<QPointF> &path, const LegRules &rules)
{
    return LegRouter(path, rules).route();
}

} // namespace asleft
