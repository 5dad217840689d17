#include <draw/head.h>

#include "head_leaders.h"
#include "head_measure.h"
#include "head_names.h"
#include "head_radial.h"

#include <words/points.h>

#include <algorithm>
#include <map>

namespace asleft {

namespace {

constexpr double betweenColumnsOfBanks = 12;

/// Where one bank is drawn, and the heights of what stands on it.
struct BankPlace {
    QRectF casting;
    std::vector<double> rowY;  ///< middles of the points
    std::vector<double> nameY; ///< middles of their names
    double numberY = 0;
};

BankPlace placeBank(const HeadMeasure &measure, const BankGrid &grid, QPointF topLeft)
{
    BankPlace place{QRectF(topLeft, QSizeF(measure.bankWidth, measure.bankHeight)), {}, {}, 0};
    double y = topLeft.y() + measure.margin;
    const auto takeNumbers = [&](int row) {
        if (grid.numberIn || row != grid.numberBefore)
            return;
        place.numberY = y + measure.numberHeight / 2;
        y += measure.numberHeight;
    };
    for (int row = 0; row < grid.rows(); ++row) {
        takeNumbers(row);
        const bool above = grid.namesAbove[static_cast<std::size_t>(row)];
        const double names = above ? y : y + measure.diameter;
        const double points = above ? y + measure.nameHeight : y;
        place.nameY.push_back(names + measure.nameHeight / 2);
        place.rowY.push_back(points + measure.diameter / 2);
        y += measure.nameHeight + measure.diameter + measure.rowGap;
    }
    takeNumbers(grid.rows());
    if (grid.numberIn)
        place.numberY = place.rowY[static_cast<std::size_t>(*grid.numberIn)];
    return place;
}

PlacedText placed(const QString &text, QPointF middle, double width, double height, TextSize size)
{
    return {text, QRectF(middle.x() - width / 2, middle.y() - height / 2, width, height), size, Qt::AlignCenter};
}

double columnX(const HeadMeasure &measure, const BankPlace &place, double column)
{
    return place.casting.left() + measure.gutter + column * measure.pitch;
}

/// Points of all banks by their adjuster, until they are put in order.
using Spots = std::map<AdjusterRef, std::pair<QPointF, double>>; ///< middle of the point, middle height of its name

void spotsOfBank(Spots &spots, const HeadMeasure &measure, const BankGrid &grid, const BankPlace &place)
{
    for (const GridPoint &point : grid.points) {
        const auto row = static_cast<std::size_t>(point.row);
        spots[point.adjuster] = {QPointF(columnX(measure, place, point.column), place.rowY[row]), place.nameY[row]};
    }
}

void addPoints(HeadPlan &plan, const EngineDesign &design, const HeadMeasure &measure, const Spots &spots)
{
    for (const AdjusterRef adjuster : design.adjusters()) {
        const auto &[middle, nameY] = spots.at(adjuster);
        plan.points.append(middle);
        const QString name = measure.namesFit ? pointShort(design, adjuster) : QString();
        plan.pointLabels.append(placed(name, {middle.x(), nameY}, measure.pitch, measure.nameHeight, measure.nameSize));
    }
}

void addNumbers(HeadPlan &plan, const EngineDesign &design, const HeadMeasure &measure, int bank, const BankPlace &place)
{
    const auto at = static_cast<std::size_t>(bank);
    const BankGrid &grid = measure.grids[at];
    const double height = grid.numberIn ? measure.diameter : measure.numberHeight;
    for (std::size_t index = 0; index < grid.numbers.size(); ++index) {
        const GridNumber &number = grid.numbers[index];
        const Cylinder cylinder = design.banks[at][index];
        plan.numbers[cylinder.index] =
            placed(QString::fromStdString(design.label(cylinder)), {columnX(measure, place, number.column), place.numberY},
                   number.width * measure.pitch, height, TextSize::Number);
    }
}

/// What is said in the gutter left of a bank, the most needed first; what would lie on another is left out.
void addGutter(HeadPlan &plan, const EngineDesign &design, const HeadMeasure &measure, int bank, const BankPlace &place)
{
    const BankGrid &grid = measure.grids[static_cast<std::size_t>(bank)];
    GutterColumn gutter(plan, place.casting.left() + 6, headGutter - 6);
    gutter.add(place.numberY, frontWord());
    const bool above = grid.namesAbove.front();
    gutter.add(above ? place.nameY.front() : place.nameY.back(), bankName(design, bank));
    for (int row = 0; row < grid.rows(); ++row) {
        if (const auto side = grid.sides[static_cast<std::size_t>(row)])
            gutter.add(place.rowY[static_cast<std::size_t>(row)], sideName(*side));
    }
}

/// A bar from valve to valve under the lash of each pair. The valves stand where two columns meet, beside the point and clear of the next.
void addBridges(HeadPlan &plan, const EngineDesign &design, const HeadMeasure &measure)
{
    const std::vector<AdjusterRef> adjusters = design.adjusters();
    const double reach = std::min(measure.pitch * 0.5, measure.diameter * 0.56);
    for (std::size_t index = 0; index < adjusters.size(); ++index) {
        if (adjusters[index].kind != PointKind::Lash || !design.train.isBridged(adjusters[index].side))
            continue;
        const QPointF middle = plan.points[static_cast<qsizetype>(index)];
        plan.bridges.append(QLineF(middle - QPointF(reach, 0), middle + QPointF(reach, 0)));
    }
}

QPainterPath chamfered(const QRectF &box, double corner)
{
    QPainterPath path(QPointF(box.left() + corner, box.top()));
    path.lineTo(box.right() - corner, box.top());
    path.lineTo(box.right(), box.top() + corner);
    path.lineTo(box.right(), box.bottom() - corner);
    path.lineTo(box.right() - corner, box.bottom());
    path.lineTo(box.left() + corner, box.bottom());
    path.lineTo(box.left(), box.bottom() - corner);
    path.lineTo(box.left(), box.top() + corner);
    path.closeSubpath();
    return path;
}

/// Crankcase and barrels between two heads that face away from each other.
void addCrankcase(HeadPlan &plan, const HeadMeasure &measure, int firstBank, const std::vector<BankPlace> &places)
{
    const BankPlace &above = places[static_cast<std::size_t>(firstBank)];
    const BankPlace &below = places[static_cast<std::size_t>(firstBank) + 1];
    const double height = measure.gap * 0.4;
    const double middle = above.casting.bottom() + measure.gap / 2;
    const double width = std::min(measure.diameter * 0.9, measure.pitch * 0.7);
    for (const int bank : {firstBank, firstBank + 1}) {
        for (const GridNumber &number : measure.grids[static_cast<std::size_t>(bank)].numbers) {
            const double from = bank == firstBank ? above.casting.bottom() : middle;
            const double to = bank == firstBank ? middle : below.casting.top();
            QPainterPath barrel;
            barrel.addRect(columnX(measure, above, number.column) - width / 2, from, width, to - from);
            plan.barrels.append(barrel);
        }
    }
    const QRectF box(above.casting.left() + measure.gutter / 2, middle - height / 2,
                     above.casting.width() - measure.gutter / 2 - headRightMargin, height);
    plan.crankcases.append(chamfered(box, height / 4));
}

std::vector<BankPlace> placeBanks(const HeadMeasure &measure, QSizeF size)
{
    const int down = measure.down();
    const double width = measure.across * measure.bankWidth + (measure.across - 1) * betweenColumnsOfBanks;
    const double height = down * measure.bankHeight + (down - 1) * measure.gap;
    const QPointF topLeft((size.width() - width) / 2, (size.height() - height) / 2);
    std::vector<BankPlace> places;
    for (int bank = 0; bank < measure.banks(); ++bank) {
        const QPointF at(bank / down * (measure.bankWidth + betweenColumnsOfBanks), bank % down * (measure.bankHeight + measure.gap));
        places.push_back(placeBank(measure, measure.grids[static_cast<std::size_t>(bank)], topLeft + at));
    }
    return places;
}

void addBank(HeadPlan &plan, const EngineDesign &design, const HeadMeasure &measure, int bank, const BankPlace &place)
{
    plan.castings.append(place.casting);
    plan.heads.append(chamfered(place.casting, std::min(14.0, place.casting.height() / 6)));
    addNumbers(plan, design, measure, bank, place);
    addGutter(plan, design, measure, bank, place);
}

HeadPlan planRows(const EngineDesign &design, QSizeF size)
{
    const HeadMeasure measure = measureHead(design, size);
    HeadPlan plan;
    plan.size = size;
    plan.pointDiameter = measure.diameter;
    plan.numbers.resize(design.cylinders());
    const std::vector<BankPlace> places = placeBanks(measure, size);
    Spots spots;
    for (int bank = 0; bank < measure.banks(); ++bank) {
        const auto at = static_cast<std::size_t>(bank);
        spotsOfBank(spots, measure, measure.grids[at], places[at]);
        addBank(plan, design, measure, bank, places[at]);
        if (liesInPairs(design.layout) && bank % 2 == 0 && bank + 1 < measure.banks())
            addCrankcase(plan, measure, bank, places);
    }
    addPoints(plan, design, measure, spots);
    addBridges(plan, design, measure);
    fitNumbers(plan);
    return plan;
}

} // namespace

QRectF HeadPlan::pointRect(qsizetype index) const
{
    const QPointF half(pointDiameter / 2, pointDiameter / 2);
    return {points.at(index) - half, points.at(index) + half};
}

HeadPlan planHead(const EngineDesign &design, QSizeF size)
{
    const QSizeF room = size.expandedTo(smallestHead);
    HeadPlan plan = design.layout == Layout::Radial ? planRound(design, room) : planRows(design, room);
    findLeaders(plan);
    return plan;
}

} // namespace asleft
