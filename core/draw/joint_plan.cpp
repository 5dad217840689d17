#include "joint_legs.h"
#include "joint_numbers.h"
#include "joint_part.h"
#include "shape_parts.h"

#include <draw/joint_drawing.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace asleft {

namespace {

constexpr double panelEdge = 4; // between the part and the panel
constexpr double legToOutline = 8;
constexpr double legToNumber = 6;         // with what is between a number and its fastener
constexpr double farthestNeighbour = 200; // px, however large the panel
constexpr double largestFastener = 64;
constexpr double fingerFastener = 44;
constexpr double smallestNumbered = 12;
constexpr double leastApart = 1.06; // two squares, in their sides

/// What a plan is tried with.
struct Attempt {
    double diameter;
    double spacing; ///< of neighbours, in diameters: legs are seen between them
    TextSize size;
    int stride = 1; ///< 1: every number is written; else only those it divides, and 1
};

/// The pattern as drawn, without its proportions changed.
struct Spread {
    QRectF bounds;
    double squares = 0; ///< the nearest middles of two squares, along the axis they are farther apart on
    double nearest = 0; ///< the nearest middles, straight across
    QList<QPointF> places;
};

Spread spreadOf(const Pattern &pattern)
{
    Spread spread;
    double left = std::numeric_limits<double>::max();
    double top = left;
    double right = -left;
    double bottom = -left;
    for (const FastenerPosition &place : pattern.places) {
        spread.places.append(QPointF(place.x, place.y));
        left = std::min(left, place.x);
        right = std::max(right, place.x);
        top = std::min(top, place.y);
        bottom = std::max(bottom, place.y);
    }
    spread.bounds = spread.places.isEmpty() ? QRectF() : QRectF(left, top, right - left, bottom - top);
    if (pattern.kind == PatternKind::Circle && JointPart(spread.places, true).isFlange())
        spread.bounds = JointPart(spread.places, true).outline(0, std::numeric_limits<double>::max()).boundingRect();
    spread.squares = std::numeric_limits<double>::max();
    QPointF nearest(spread.squares, 0);
    double least = spread.squares;
    for (qsizetype first = 0; first < spread.places.size(); ++first) {
        for (qsizetype second = first + 1; second < spread.places.size(); ++second) {
            const QPointF apart = spread.places[first] - spread.places[second];
            spread.squares = std::min(spread.squares, std::max(std::abs(apart.x()), std::abs(apart.y())));
            const double squared = QPointF::dotProduct(apart, apart);
            if (squared < least) {
                least = squared;
                nearest = apart;
            }
        }
    }
    spread.nearest = std::hypot(nearest.x(), nearest.y());
    return spread;
}

QString differenceOf(const FastenerPosition &place)
{
    const QString thread = QString::fromStdString(place.thread);
    const QString length = QString::fromStdString(place.length);
    if (thread.isEmpty() || length.isEmpty())
        return thread + length;
    return QStringLiteral("%1 × %2").arg(thread, length);
}

QString numberOf(const FastenerPosition &place)
{
    return QString::number(place.number);
}

QStringList textsOf(const Pattern &pattern, QString (*textOf)(const FastenerPosition &))
{
    QStringList texts;
    for (const FastenerPosition &place : pattern.places)
        texts.append(textOf(place));
    return texts;
}

QList<Attempt> attempts()
{
    QList<Attempt> list;
    for (double diameter = largestFastener; diameter > fingerFastener; diameter -= 4)
        list.append({diameter, 1.6, TextSize::Small});
    list.append({fingerFastener, 1.12, TextSize::Small});
    list.append({fingerFastener, 1.08, TextSize::Fine});
    for (double diameter = fingerFastener - 2; diameter >= smallestNumbered; diameter -= 2)
        list.append({diameter, 1.2, TextSize::Fine});
    return list;
}

class JointPlanner {
public:
    JointPlanner(const Pattern &pattern, const TighteningOrder &order, QSizeF size)
        : m_pattern(pattern), m_order(order), m_size(size.expandedTo(smallestJoint)), m_spread(spreadOf(pattern)),
          m_smallNumbers(textsOf(pattern, numberOf), TextSize::Small), m_fineNumbers(m_smallNumbers.texts, TextSize::Fine),
          m_differences(textsOf(pattern, differenceOf), TextSize::Fine)
    {
    }

    JointPlan plan()
    {
        const bool differ = m_differences.widest > 0;
        if (m_spread.places.isEmpty())
            return {m_size, {}, {}, 0, {}, {}, {}, {}};
        for (const bool withDifferences : {true, false}) {
            if (!withDifferences && !differ)
                break;
            for (const Attempt &attempt : attempts()) {
                if (auto plan = planWith(attempt, withDifferences))
                    return *plan;
            }
        }
        return crowded();
    }

private:
    /// So many that not every number finds room: as large as they go, and the numbers that go.
    JointPlan crowded()
    {
        double diameter = fingerFastener;
        while (diameter > 0.1 && !scaleFor({diameter, 1.08, TextSize::Fine}))
            diameter *= 0.95;
        for (const int stride : {1, 2, 5, 10, 20, 50, 100}) {
            if (auto plan = planWith({diameter, 0, TextSize::Fine, stride}, false))
                return *plan;
        }
        return *planWith({diameter, 0, TextSize::Fine, 1000}, false);
    }

    [[nodiscard]] bool isNumbered(qsizetype index, int stride) const
    {
        const int number = m_pattern.places[static_cast<std::size_t>(index)].number;
        return stride == 1 || number % stride == 0 || (number == 1 && stride < 1000);
    }

    [[nodiscard]] bool isInRows() const
    {
        return m_pattern.kind == PatternKind::Row || m_pattern.kind == PatternKind::Rows || m_pattern.kind == PatternKind::Rectangle;
    }

    [[nodiscard]] const MeasuredTexts &numbersIn(TextSize size) const { return size == TextSize::Small ? m_smallNumbers : m_fineNumbers; }

    /// From the middle of a fastener to the outline, so that its number has room on the part.
    [[nodiscard]] double rimFor(const Attempt &attempt) const
    {
        return attempt.diameter / 2 + numbersIn(attempt.size).widest + (attempt.size == TextSize::Small ? 12 : 8);
    }

    /// Pixels for one of the pattern's units, if the fasteners then stand far enough apart.
    [[nodiscard]] std::optional<double> scaleFor(const Attempt &attempt) const
    {
        const double around = 2 * (rimFor(attempt) + panelEdge);
        const double width = m_size.width() - around;
        const double height = m_size.height() - around;
        if (width < 0 || height < 0)
            return attempt.spacing > 0 ? std::nullopt : std::optional(1e-9);
        double scale = m_spread.places.size() > 1 ? farthestNeighbour / std::max(1e-9, m_spread.nearest) : 1;
        if (m_spread.bounds.width() > 0)
            scale = std::min(scale, width / m_spread.bounds.width());
        if (m_spread.bounds.height() > 0)
            scale = std::min(scale, height / m_spread.bounds.height());
        const bool apart = scale * m_spread.nearest >= attempt.spacing * attempt.diameter &&
                           scale * m_spread.squares >= std::min(attempt.spacing, leastApart) * attempt.diameter;
        return apart || m_spread.places.size() < 2 ? std::optional(scale) : std::nullopt;
    }

    [[nodiscard]] QList<QPointF> placesAt(double scale) const
    {
        const QPointF middle(m_size.width() / 2, m_size.height() / 2);
        QList<QPointF> places;
        for (const QPointF &place : m_spread.places)
            places.append(middle + (place - m_spread.bounds.center()) * scale);
        return places;
    }

    [[nodiscard]] QList<QPointF> pathOver(const QList<QPointF> &places) const
    {
        QList<QPointF> path;
        for (const int number : m_order) {
            for (std::size_t index = 0; index < m_pattern.places.size(); ++index) {
                if (m_pattern.places[index].number == number)
                    path.append(places[static_cast<qsizetype>(index)]);
            }
        }
        return path;
    }

    std::optional<JointPlan> planWith(const Attempt &attempt, bool withDifferences) const
    {
        const auto scale = scaleFor(attempt);
        if (!scale)
            return std::nullopt;
        JointPlan plan;
        plan.size = m_size;
        plan.diameter = attempt.diameter;
        plan.fasteners = placesAt(*scale);
        const double rim = rimFor(attempt);
        const JointPart part(plan.fasteners, m_pattern.kind == PatternKind::Circle);
        if (!setTexts(plan, part, rim, attempt, withDifferences))
            return std::nullopt;
        plan.path = pathOver(plan.fasteners);
        const QRectF room = QRectF(QPointF(), m_size).adjusted(panelEdge + 2, panelEdge + 2, -panelEdge - 2, -panelEdge - 2);
        // In a line the legs swing around the numbers too; in rows they keep between them, since the numbers stand outside.
        const double clear = part.isLine() ? std::min(numbersIn(attempt.size).height + legToNumber, attempt.diameter * 0.35) : 1.5;
        const double reach = attempt.diameter / 2 + (isInRows() ? 0 : legToOutline);
        const QRectF inner = part.isLine() ? room : QPolygonF(plan.fasteners).boundingRect().adjusted(-reach, -reach, reach, reach) & room;
        plan.legs = legsOf(plan.path, {parts::ringShare * plan.diameter + 1, clear, inner, room, part.centre()});
        // Clear of the path they may take other places; where they do not all find one, some lie on it.
        JointPlan other = plan;
        if (!plan.legs.isEmpty() && setTexts(other, part, rim, attempt, withDifferences))
            plan = other;
        plan.outline = outlineOf(plan, part, rim);
        return plan;
    }

    bool setTexts(JointPlan &plan, const JointPart &part, double rim, const Attempt &attempt, bool withDifferences) const
    {
        JointTexts texts(part, plan.fasteners, plan.diameter, rim);
        texts.avoid(plan.legs);
        const auto isWritten = [&](qsizetype index) { return isNumbered(index, attempt.stride); };
        const auto numbers = texts.place(numbersIn(attempt.size), isInRows() ? TextWay::Outside : TextWay::Around, isWritten);
        if (!numbers)
            return false;
        plan.numbers = *numbers;
        const auto differences = texts.place(m_differences, TextWay::Around, [withDifferences](qsizetype) { return withDifferences; });
        if (differences)
            plan.differences = *differences;
        return differences.has_value();
    }

    /// The part, grown where legs swing beyond it.
    [[nodiscard]] QPainterPath outlineOf(const JointPlan &plan, const JointPart &part, double rim) const
    {
        double reach = rim;
        for (const JointLeg &leg : plan.legs) {
            for (const QPointF &at : leg)
                reach = std::max(reach, part.outside(at) + legToOutline);
        }
        const QRectF places = QPolygonF(plan.fasteners).boundingRect();
        if (part.isLine() && places.height() == 0) {
            QPainterPath bar;
            const double tall = std::min(reach, m_size.height() / 2 - panelEdge);
            bar.addRoundedRect(places.adjusted(-rim, -tall, rim, tall), rim, rim);
            return bar;
        }
        const double most = std::min(places.left(), places.top()) - panelEdge;
        return part.outline(std::max(rim, std::min(reach, most)), plan.diameter * 0.72);
    }

    const Pattern &m_pattern;
    const TighteningOrder &m_order;
    QSizeF m_size;
    Spread m_spread;
    MeasuredTexts m_smallNumbers;
    MeasuredTexts m_fineNumbers;
    MeasuredTexts m_differences;
};

} // namespace

QRectF JointPlan::fastenerRect(qsizetype index) const
{
    const QPointF middle = fasteners.at(index);
    return {middle.x() - diameter / 2, middle.y() - diameter / 2, diameter, diameter};
}

JointPlan planJoint(const Pattern &pattern, const TighteningOrder &order, QSizeF size)
{
    return JointPlanner(pattern, order, size).plan();
}

} // namespace asleft
