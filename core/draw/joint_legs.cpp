#include "joint_legs.h"
#include "joint_grid.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>
#include <vector>

namespace asleft {

namespace {

constexpr double lane = 7; // between two legs that are bent the same way
constexpr int finePieces = 40;
constexpr int coarsePieces = 10;
constexpr int mostBends = 28;

double length(QPointF vector)
{
    return std::hypot(vector.x(), vector.y());
}

bool isNearer(double reach, QPointF point, QPointF from, QPointF to)
{
    const QPointF along = to - from;
    const double squared = QPointF::dotProduct(along, along);
    const double share = squared > 0 ? std::clamp(QPointF::dotProduct(point - from, along) / squared, 0.0, 1.0) : 0;
    const QPointF off = point - from - along * share;
    return QPointF::dotProduct(off, off) < reach * reach;
}

bool isNearer(double reach, QPointF point, const QPolygonF &way)
{
    for (qsizetype piece = 1; piece < way.size(); ++piece) {
        if (isNearer(reach, point, way[piece - 1], way[piece]))
            return true;
    }
    return false;
}

/// How much each of the four points of a curve counts at each of its places.
using CurveShares = std::vector<std::array<double, 4>>;

CurveShares curveShares(int pieces)
{
    CurveShares shares;
    for (int piece = 0; piece <= pieces; ++piece) {
        const double t = static_cast<double>(piece) / pieces;
        const double u = 1 - t;
        shares.push_back({u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t});
    }
    return shares;
}

/// The box around a line, with this much more on each side.
QRectF around(QPointF from, QPointF to, double more)
{
    const double left = std::min(from.x(), to.x()) - more;
    const double top = std::min(from.y(), to.y()) - more;
    return {left, top, std::max(from.x(), to.x()) + more - left, std::max(from.y(), to.y()) + more - top};
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
    LegRouter(const QList<QPointF> &path, const LegRules &rules)
        : m_path(path), m_rules(rules), m_few(!isThicket(path.size())), m_shares(curveShares(m_few ? finePieces : coarsePieces)),
          m_near(QPolygonF(path).boundingRect(), path.size()), m_seen(static_cast<std::size_t>(path.size()), 0)
    {
        for (qsizetype index = 0; index < m_path.size(); ++index)
            m_near.add(index, m_path[index]);
    }

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
    [[nodiscard]] int hiddenBy(const QPolygonF &way, qsizetype leg, int most)
    {
        const double near = m_rules.radius + m_rules.clear;
        int count = 0;
        ++m_turn;
        for (qsizetype piece = 1; piece < way.size(); ++piece) {
            const QPointF from = way[piece - 1];
            const QPointF to = way[piece];
            const bool enough = m_near.any(around(from, to, near), [&](qsizetype other) {
                int &seen = m_seen[static_cast<std::size_t>(other)];
                if (seen == m_turn || other == leg || other == leg + 1 || !isNearer(near, m_path[other], from, to))
                    return false;
                seen = m_turn;
                return ++count >= most;
            });
            if (enough)
                break;
        }
        return count;
    }

    [[nodiscard]] static bool isWithin(const QRectF &room, const QPolygonF &way)
    {
        return std::all_of(way.begin(), way.end(), [&room](QPointF at) { return room.contains(at); });
    }

    /// A way from one place to another, pulled aside where it leaves and where it comes in. Not ended where it comes out of the room.
    bool bend(QPolygonF &way, qsizetype leg, QPointF leaving, QPointF coming, const QRectF &room) const
    {
        const QPointF from = m_path[leg];
        const QPointF to = m_path[leg + 1];
        const QPointF first = from + leaving + (to - from) * 0.12;
        const QPointF second = to + coming + (from - to) * 0.12;
        way.resize(static_cast<qsizetype>(m_shares.size()));
        QPointF *at = way.data();
        for (const auto &[ofFrom, ofFirst, ofSecond, ofTo] : m_shares) {
            *at = from * ofFrom + first * ofFirst + second * ofSecond + to * ofTo;
            if (at->x() < room.left() || at->x() > room.right() || at->y() < room.top() || at->y() > room.bottom())
                return false;
            ++at;
        }
        return true;
    }

    /// Whether the middle of a bent way keeps off those bent before.
    [[nodiscard]] bool hasLane(const QPolygonF &way) const
    {
        if (!m_few)
            return true;
        const QPointF middle = way[way.size() / 2];
        return std::none_of(m_bent.begin(), m_bent.end(),
                            [middle](const Bent &other) { return other.around.contains(middle) && isNearer(lane, middle, other.way); });
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
        bendWithin(m_rules.inner, best, leg, {});
        if (best.hidden > 0 && m_rules.room != m_rules.inner)
            bendWithin(m_rules.room, best, leg, m_rules.inner);
        m_bent.push_back({best.way, best.way.boundingRect().adjusted(-lane, -lane, lane, lane)});
        return best.way;
    }

    struct Choice {
        QPolygonF way;
        int hidden = 0;
        bool final = false; ///< clear of everything, other bent ways too
    };

    struct Bent {
        QPolygonF way;
        QRectF around;
    };

    /// To one side or the other, or from one to the other. What stays in `tried` was considered before.
    void bendWithin(const QRectF &room, Choice &best, qsizetype leg, const QRectF &tried)
    {
        const QPointF aside = asideOf(m_path[leg], m_path[leg + 1]) * m_rules.radius * 0.25;
        struct Side {
            int leaving;
            int coming;
            bool over = false; ///< bent more, it would leave the room all the more
        };
        std::array<Side, 4> sides{{{1, 1}, {-1, -1}, {1, -1}, {-1, 1}}};
        QPolygonF way;
        for (int bends = m_few ? 1 : 7; bends <= mostBends && !best.final; bends += m_few ? 1 : 7) {
            for (Side &side : sides) {
                if (best.final || side.over)
                    continue;
                side.over = !bend(way, leg, aside * bends * side.leaving, aside * bends * side.coming, room);
                if (!side.over && (tried.isNull() || !isWithin(tried, way)))
                    consider(best, way, leg);
            }
        }
    }

    void consider(Choice &best, const QPolygonF &way, qsizetype leg)
    {
        const int hidden = hiddenBy(way, leg, std::max(1, best.hidden));
        const bool final = hidden == 0 && hasLane(way);
        if (final || hidden < best.hidden)
            best = {way, hidden, final};
    }

    const QList<QPointF> &m_path;
    LegRules m_rules;
    bool m_few;
    CurveShares m_shares;
    JointGrid m_near;
    std::vector<int> m_seen; ///< for each place, when a way was last found to run under it
    int m_turn = 0;
    std::vector<Bent> m_bent;
};

} // namespace

bool isThicket(qsizetype fasteners)
{
    return fasteners > 60;
}

QList<JointLeg> legsOf(const QList<QPointF> &path, const LegRules &rules)
{
    return LegRouter(path, rules).route();
}

} // namespace asleft
