#include "head_radial.h"

#include "head_measure.h"
#include "head_names.h"
#include "oval.h"
#include "radial_seats.h"
#include "text_spots.h"

#include <words/points.h>

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>
#include <map>

namespace asleft {

namespace {

constexpr double betweenRows = 10;      // from the box of one row to the next
constexpr double pointsEdge = 3;        // around points on a head
constexpr double flattest = 2;          // how many times as wide as high a round may be drawn
constexpr double mostPointSpread = 1.5; // how far points of a head may stand apart, in shares of what their squares need
constexpr double headShare = 0.46;      // half of a head's share of the round, in shares of one cylinder

/// How a round is tried.
struct Shape {
    int columns = 1;     ///< points beside each other on a head
    double drawnOut = 0; ///< 0: a circle; 1: as wide as the panel
    TextSize names = TextSize::Small;
    bool named = true; ///< false: points too close together for names
};

/// How far squares that stand upright must be apart along a direction, so that they do not overlap.
double apart(double diameter, QPointF direction)
{
    return diameter / std::max(std::abs(direction.x()), std::abs(direction.y())) + 0.5;
}

/// A radial engine laid out with points of one size; nothing fits for sure until fits() says so.
class Round {
public:
    Round(const EngineDesign &design, QSizeF size, const Shape &shape, double diameter) : m_design(design), m_shape(shape)
    {
        m_plan.size = size;
        m_plan.pointDiameter = diameter;
        m_plan.numbers.resize(design.cylinders());
        const double rows = static_cast<double>(design.banks.size());
        const double width = (size.width() - (rows - 1) * betweenRows) / rows;
        for (std::size_t row = 0; row < design.banks.size(); ++row) {
            m_boxes.append(QRectF(static_cast<double>(row) * (width + betweenRows), 0, width, size.height()));
            m_ovals.push_back(ovalIn(m_boxes.back()));
            seatRow(row);
        }
        for (const AdjusterRef adjuster : design.adjusters())
            m_plan.points.append(m_middles.at(adjuster));
    }

    /// Whether no square lies on another, all lie in the panel, and every name and number finds its place.
    bool fits() { return m_roomInside && squaresFit() && textsFit(); }

    HeadPlan finished()
    {
        m_plan.castings = m_boxes;
        m_plan.pointLabels.resize(m_plan.points.size());
        for (std::size_t row = 0; row < m_design.banks.size(); ++row)
            addBody(row);
        addBridges();
        if (m_spots)
            placeViewWords(*m_spots);
        return m_plan;
    }

private:
    [[nodiscard]] double diameter() const { return m_plan.pointDiameter; }

    /// From the middle of the outermost points to the outer pointsEdge of their head: their names stand there.
    [[nodiscard]] double outward() const { return diameter() / 2 + nameHeightOf(m_shape.names) + pointsEdge; }

    [[nodiscard]] Oval ovalIn(const QRectF &box) const
    {
        const double halfHeight = std::max(1.0, box.height() / 2 - outward());
        const double widest = std::max(1.0, box.width() / 2 - outward());
        const double halfWidth = std::min(widest, flattest * halfHeight);
        const double round = std::min(halfHeight, halfWidth);
        return {box.center(), round + m_shape.drawnOut * (halfWidth - round), round + m_shape.drawnOut * (halfHeight - round)};
    }

    /// Where a cylinder stands on the round: 0 at the top, in the direction of rotation.
    [[nodiscard]] double shareOf(std::size_t row, std::size_t index) const
    {
        const double share = static_cast<double>(index) / static_cast<double>(m_design.banks[row].size());
        return m_design.rotation == Rotation::Clockwise ? share : -share;
    }

    [[nodiscard]] Oval::Place placeOf(std::size_t row, std::size_t index) const { return m_ovals[row].at(shareOf(row, index)); }

    /// Walks from the middle of the head along the round, step by step as far as upright squares need there, further where there is room.
    [[nodiscard]] Oval::Place seatAt(std::size_t row, std::size_t index, const Seat &seat, int points) const
    {
        const Oval &oval = m_ovals[row];
        const Oval::Place middle = placeOf(row, index);
        const double inward = seat.ring * apart(diameter(), middle.outward);
        const double radius = std::hypot(middle.at.x() - oval.centre().x(), middle.at.y() - oval.centre().y());
        // Further in, the same part of the round is shorter.
        const double scale = 1 / std::max(0.1, 1 - inward / radius);
        const double room =
            2 * headShare * oval.length() / static_cast<double>(m_design.banks[row].size()) / std::min(points, m_shape.columns);
        double share = shareOf(row, index);
        for (double walked = 0; walked < std::abs(seat.aside); walked += 0.5) {
            const double needed = apart(diameter(), oval.at(share).along) * scale;
            const double step = std::clamp(room, needed, needed * mostPointSpread);
            share += (seat.aside < 0 ? -0.5 : 0.5) * step / oval.length();
        }
        Oval::Place place = oval.at(share);
        place.at = place.moved(0, -seat.ring * apart(diameter(), place.outward));
        return place;
    }

    void seatRow(std::size_t row)
    {
        for (std::size_t index = 0; index < m_design.banks[row].size(); ++index) {
            const Oval::Place place = placeOf(row, index);
            const std::vector<Seat> seats = seatsOf(m_design, m_design.banks[row][index], m_shape.columns);
            m_rings = seats.back().ring + 1;
            for (const Seat &seat : seats) {
                const Oval::Place own = seatAt(row, index, seat, static_cast<int>(seats.size()));
                m_middles[seat.adjuster] = own.at;
                m_along[seat.adjuster] = own.along;
                m_outward[seat.adjuster] = own.outward;
            }
            // The innermost points keep out of the middle of the round.
            const QPointF middle = m_ovals[row].centre() - place.at;
            const double inside = QPointF::dotProduct(middle, -place.outward) - depth(place);
            m_roomInside = m_roomInside && inside > diameter() * 0.8;
        }
    }

    /// From the middle of the outermost points to the inner pointsEdge of the innermost.
    [[nodiscard]] double depth(const Oval::Place &place) const { return (m_rings - 0.5) * apart(diameter(), place.outward); }

    [[nodiscard]] bool squaresFit() const
    {
        const QRectF panel(QPointF(), m_plan.size);
        for (qsizetype first = 0; first < m_plan.points.size(); ++first) {
            if (!panel.contains(m_plan.pointRect(first)))
                return false;
            for (qsizetype second = first + 1; second < m_plan.points.size(); ++second) {
                const QPointF between = m_plan.points[first] - m_plan.points[second];
                if (std::max(std::abs(between.x()), std::abs(between.y())) < diameter())
                    return false;
            }
        }
        return true;
    }

    [[nodiscard]] TextSize numberSize() const
    {
        if (diameter() >= 40)
            return TextSize::Number;
        return diameter() >= 28 ? TextSize::Now : diameter() >= 20 ? TextSize::BodyStrong : TextSize::SmallStrong;
    }

    bool textsFit()
    {
        TextSpots &spots = m_spots.emplace(QRectF(QPointF(), m_plan.size).adjusted(1, 1, -1, -1));
        for (qsizetype point = 0; point < m_plan.points.size(); ++point)
            spots.take(m_plan.pointRect(point));
        for (std::size_t row = 0; row < m_design.banks.size(); ++row) {
            for (std::size_t index = 0; index < m_design.banks[row].size(); ++index) {
                if (!placeNumber(spots, row, index))
                    return false;
            }
        }
        return placeNames(spots);
    }

    /// Inward of the points, on the cylinder's barrel.
    bool placeNumber(TextSpots &spots, std::size_t row, std::size_t index)
    {
        const Cylinder cylinder = m_design.banks[row][index];
        const Oval::Place place = placeOf(row, index);
        const QString label = QString::fromStdString(m_design.label(cylinder));
        for (double inward = depth(place) + 4; inward < depth(place) + 40; inward += 2) {
            if (const auto text = spots.place(label, numberSize(), place.moved(0, -inward))) {
                m_plan.numbers[cylinder.index] = *text;
                return true;
            }
        }
        return false;
    }

    [[nodiscard]] QRectF squareOf(AdjusterRef adjuster) const
    {
        const QPointF half(diameter() / 2, diameter() / 2);
        return {m_middles.at(adjuster) - half, m_middles.at(adjuster) + half};
    }

    bool placeNames(TextSpots &spots)
    {
        if (!m_shape.named) {
            m_plan.pointLabels.resize(m_plan.points.size());
            return true;
        }
        for (const AdjusterRef adjuster : m_design.adjusters()) {
            const auto text = spots.placeBeside(pointShort(m_design, adjuster), m_shape.names, squareOf(adjuster), m_outward.at(adjuster));
            if (!text)
                return false;
            m_plan.pointLabels.append(*text);
        }
        return true;
    }

    void addBody(std::size_t row)
    {
        const Oval &oval = m_ovals[row];
        const double cylinders = static_cast<double>(m_design.banks[row].size());
        double inside = m_plan.size.width();
        for (std::size_t index = 0; index < m_design.banks[row].size(); ++index) {
            const Oval::Place place = placeOf(row, index);
            const double share = shareOf(row, index);
            m_plan.heads.append(
                oval.sector(share - headShare / cylinders, share + headShare / cylinders, -depth(place) - pointsEdge, outward() - 1));
            const double toMiddle = std::hypot(place.at.x() - oval.centre().x(), place.at.y() - oval.centre().y());
            inside = std::min(inside, toMiddle - depth(place) - pointsEdge);
            addBarrel(oval, place, 0.3 * oval.length() / cylinders);
        }
        QPainterPath crankcase;
        crankcase.addEllipse(oval.centre(), inside * 0.45, inside * 0.45);
        m_plan.crankcases.append(crankcase);
        addMiddleWords(oval.centre(), inside * 0.45, static_cast<int>(row));
    }

    /// From the head inward to the middle, under the crankcase.
    void addBarrel(const Oval &oval, const Oval::Place &place, double width)
    {
        const QPointF from = place.moved(0, -depth(place) - pointsEdge);
        const QPointF way = oval.centre() - from;
        const double half = std::min(width, diameter()) / 2;
        QPainterPath barrel(from + place.along * half);
        barrel.lineTo(from + way * 0.8 + place.along * half * 0.8);
        barrel.lineTo(from + way * 0.8 - place.along * half * 0.8);
        barrel.lineTo(from - place.along * half);
        m_plan.barrels.append(barrel);
    }

    void addMiddleWords(QPointF centre, double radius, int row)
    {
        const QString line = bankName(m_design, row);
        const double width = QFontMetricsF(textFont(TextSize::Small)).horizontalAdvance(line);
        if (!line.isEmpty() && width < 1.7 * radius)
            m_plan.labels.append({line, QRectF(centre.x() - width / 2, centre.y() - 8, width, 16), TextSize::Small, Qt::AlignCenter});
    }

    /// In whichever corner there is room.
    void placeViewWords(TextSpots &spots)
    {
        const QString words = seenFromFrontWords();
        const double aside = QFontMetricsF(textFont(TextSize::SmallStrong)).horizontalAdvance(words) / 2 + 6;
        const QSizeF size = m_plan.size;
        for (const QPointF corner :
             {QPointF(aside, size.height() - 12), QPointF(aside, 12), QPointF(size.width() - aside, size.height() - 12),
              QPointF(size.width() - aside, 12), QPointF(size.width() / 2, size.height() - 12)}) {
            const QRectF box(corner.x() - aside, corner.y() - 8, 2 * aside, 16);
            const bool onHead =
                std::any_of(m_plan.heads.begin(), m_plan.heads.end(), [&box](const QPainterPath &head) { return head.intersects(box); });
            const auto text = onHead ? std::nullopt : spots.place(words, TextSize::Small, corner);
            if (text) {
                m_plan.labels.append(*text);
                return;
            }
        }
    }

    void addBridges()
    {
        for (const AdjusterRef adjuster : m_design.adjusters()) {
            if (adjuster.kind != PointKind::Lash || !m_design.train.isBridged(adjuster.side))
                continue;
            const QPointF reach = m_along.at(adjuster) * diameter() * 0.56;
            m_plan.bridges.append(QLineF(m_middles.at(adjuster) - reach, m_middles.at(adjuster) + reach));
        }
    }

    const EngineDesign &m_design;
    Shape m_shape;
    HeadPlan m_plan;
    QList<QRectF> m_boxes;
    std::vector<Oval> m_ovals;
    std::map<AdjusterRef, QPointF> m_middles;
    std::map<AdjusterRef, QPointF> m_along;
    std::map<AdjusterRef, QPointF> m_outward;
    std::optional<TextSpots> m_spots; ///< as textsFit() left it
    int m_rings = 1;
    bool m_roomInside = true;
};

/// The largest points a shape takes that are larger than `known`, else `known`. Smaller ones do not always fit where larger do, since
/// names do not shrink with them.
int largestFor(const EngineDesign &design, QSizeF size, const Shape &shape, int known)
{
    const double points = static_cast<double>(design.adjusters().size());
    const double most = std::min(largestPoint, std::sqrt(size.width() * size.height() / points));
    for (int diameter = static_cast<int>(most); diameter > known; --diameter) {
        if (Round(design, size, shape, diameter).fits())
            return diameter;
    }
    return known;
}

/// Every shape, the one that shows the engine best first.
std::vector<Shape> shapesFor(const EngineDesign &design)
{
    const int each = static_cast<int>(design.adjusters().size()) / design.cylinders();
    std::vector<Shape> shapes;
    for (const auto &[names, named] :
         {std::pair(TextSize::Small, true), std::pair(TextSize::Fine, true), std::pair(TextSize::Fine, false)}) {
        for (const double drawnOut : {0.0, 0.25, 0.5, 0.75, 1.0}) {
            for (int columns = each; columns >= 1; --columns)
                shapes.push_back({columns, drawnOut, names, named});
        }
    }
    return shapes;
}

} // namespace

HeadPlan planRound(const EngineDesign &design, QSizeF size)
{
    Shape best;
    int largest = 0;
    for (const Shape &shape : shapesFor(design)) {
        // Names are given up only where nothing else fits.
        if (largest >= static_cast<int>(wantedPoint) || (largest > 0 && !shape.named))
            break;
        const int diameter = largestFor(design, size, shape, largest);
        if (diameter > largest) {
            largest = diameter;
            best = shape;
        }
    }
    Round round(design, size, best, std::max(1, largest));
    round.fits();
    return round.finished();
}

} // namespace asleft
