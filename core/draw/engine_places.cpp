#include "engine_places.h"

#include <QtMath>

#include <algorithm>
#include <cmath>

namespace asleft {

namespace {

constexpr double stepHeight = engineStepHeight;
constexpr double endRoom = engineEndRoom;
constexpr double rightRoom = 8; // the crank line reaches out behind the last cylinder

qsizetype longestBank(const EngineSketch &sketch)
{
    qsizetype longest = 1;
    for (const auto &bank : sketch.banks)
        longest = std::max(longest, bank.size());
    return longest;
}

bool oneRow(const EngineSketch &sketch)
{
    return sketch.banks.size() < 2;
}

/// The middles of the banks below or above the middle of all, in diameters of a cylinder, and where the crankshafts lie.
struct Rows {
    QList<double> banks;
    QList<double> cranks{0};
    double height = 1; ///< of all, in diameters
};

/// Enough room between the first two banks for the firing order to run there.
Rows twoBanks(Layout layout)
{
    const double away = layout == Layout::Vee ? 1.1 : 1.35;
    return {{-away, away}, {0}, 2 * away + 1};
}

Rows manyBanks(const EngineSketch &sketch)
{
    constexpr double pitch = 1.5;
    const double count = static_cast<double>(sketch.banks.size());
    Rows rows;
    for (qsizetype bank = 0; bank < sketch.banks.size(); ++bank)
        rows.banks.append((static_cast<double>(bank) - (count - 1) / 2) * pitch);
    if (sketch.layout == Layout::Opposed) {
        rows.cranks.clear();
        for (qsizetype pair = 0; pair + 1 < sketch.banks.size(); pair += 2)
            rows.cranks.append((rows.banks[pair] + rows.banks[pair + 1]) / 2);
    }
    rows.height = (count - 1) * pitch + 1;
    return rows;
}

Rows rowsOf(const EngineSketch &sketch)
{
    if (oneRow(sketch))
        return {{0}, {0}, 1};
    return sketch.banks.size() == 2 ? twoBanks(sketch.layout) : manyBanks(sketch);
}

double largestDiameter(const EngineSketch &sketch, const Rows &rows, const QRectF &area, double pitch)
{
    const double fixed = oneRow(sketch) ? stepHeight + area.height() * (longestBank(sketch) > 1 ? 0.4 : 0.1) : 2 * stepHeight;
    return std::max(8.0, std::min({56.0, pitch * 0.78, (area.height() - fixed) / rows.height}));
}

/// Above the upper banks, below the lower ones; where there are more than two, beside.
QPointF stepOf(const EngineSketch &sketch, qsizetype bank, QPointF middle, double diameter)
{
    const double down = diameter / 2 + stepHeight / 2 + 1;
    if (sketch.banks.size() > 2)
        return middle + QPointF(diameter / 2 + 13, 0);
    const bool above = bank == 0 && !oneRow(sketch);
    return middle + QPointF(0, above ? -down : down);
}

EnginePlaces placesInRows(const EngineSketch &sketch, const QRectF &area)
{
    const Rows rows = rowsOf(sketch);
    EnginePlaces places;
    const bool besides = sketch.banks.size() > 2;
    const double aside = oneRow(sketch) ? 0 : 0.3; // the second bank's rods sit beside the first's on the same pins
    const double columns = static_cast<double>(longestBank(sketch)) + (besides ? 0 : aside);
    const double width = area.width() - endRoom - rightRoom;
    const double available = width / columns;
    places.diameter = largestDiameter(sketch, rows, area, besides ? available * 0.62 : available);
    const double pitch = std::min(available, places.diameter * (besides ? 4.5 : 1.7));
    const double left = area.left() + endRoom + (width - columns * pitch) / 2;
    const bool arcs = oneRow(sketch) && longestBank(sketch) > 1;
    const double middleY = arcs ? area.bottom() - stepHeight - places.diameter / 2 - 4 : area.center().y();
    for (qsizetype bank = 0; bank < sketch.banks.size(); ++bank) {
        for (qsizetype place = 0; place < sketch.banks[bank].size(); ++place) {
            const double shift = bank % 2 == 0 || besides ? 0 : aside;
            const QPointF middle(left + (static_cast<double>(place) + (besides ? 0.4 : 0.5) + shift) * pitch,
                                 middleY + rows.banks[std::min(bank, rows.banks.size() - 1)] * places.diameter);
            const double crank = rows.cranks[std::min(bank / 2, rows.cranks.size() - 1)] * places.diameter;
            places.cylinders.insert(sketch.banks[bank][place],
                                    {middle, stepOf(sketch, bank, middle, places.diameter), {middle.x(), middleY + crank}});
        }
    }
    for (const double crank : rows.cranks) {
        const double y = middleY + crank * places.diameter;
        places.crankLines.append(QLineF(left - 26, y, left + columns * pitch + 6, y));
    }
    places.turning = QPointF(left - 40, places.crankLines.front().y1());
    places.paths = oneRow(sketch) ? EnginePaths::Over : besides ? EnginePaths::Behind : EnginePaths::Between;
    places.barrels = sketch.layout == Layout::Flat || sketch.layout == Layout::Opposed;
    return places;
}

/// Around the crankcase from the top in the direction of rotation; further rows stand in the gaps of the first, a little inward.
EnginePlaces placesAround(const EngineSketch &sketch, const QRectF &area)
{
    EnginePlaces places;
    const double rows = std::max(1.0, static_cast<double>(sketch.banks.size()));
    const double each = static_cast<double>(longestBank(sketch));
    const double half = std::min(area.width(), area.height()) / 2;
    const double around = std::sin(M_PI / std::max(3.0, each * rows));
    // Outward of the cylinders stands their place in the firing order.
    places.diameter = std::max(8.0, std::min(44.0, 0.9 * 2 * around * (half - stepHeight) / (1 + around)));
    const double radius = half - stepHeight - places.diameter / 2;
    for (qsizetype row = 0; row < sketch.banks.size(); ++row) {
        for (qsizetype place = 0; place < sketch.banks[row].size(); ++place) {
            const double share =
                (static_cast<double>(place) + static_cast<double>(row) / rows) / static_cast<double>(sketch.banks[row].size());
            const double turn = 2 * M_PI * (sketch.rotation == Rotation::Clockwise ? share : -share);
            const QPointF outward(std::sin(turn), -std::cos(turn));
            places.cylinders.insert(sketch.banks[row][place],
                                    {area.center() + outward * radius,
                                     area.center() + outward * (radius + places.diameter / 2 + stepHeight / 2 + 1),
                                     area.center() + outward * radius * 0.3});
        }
    }
    places.crankcase = std::max(14.0, radius * 0.3);
    places.turning = area.center();
    places.paths = EnginePaths::Behind;
    places.barrels = true;
    return places;
}

} // namespace

EnginePlaces enginePlaces(const EngineSketch &sketch, const QRectF &area)
{
    return sketch.layout == Layout::Radial ? placesAround(sketch, area) : placesInRows(sketch, area);
}

} // namespace asleft
