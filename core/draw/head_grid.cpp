#include "head_grid.h"

#include <algorithm>
#include <set>
#include <utility>

namespace asleft {

namespace {

using Row = std::vector<AdjusterRef>;

/// Fills rows of so many columns; what belongs together stays in one row where it fits into one.
std::vector<Row> inRows(const std::vector<PointGroup> &groups, int columns)
{
    std::vector<Row> rows;
    for (const PointGroup &group : groups) {
        const int size = static_cast<int>(group.size());
        const int free = rows.empty() ? 0 : columns - static_cast<int>(rows.back().size());
        if (rows.empty() || free < std::min(size, columns))
            rows.emplace_back();
        for (const AdjusterRef point : group) {
            if (static_cast<int>(rows.back().size()) == columns)
                rows.emplace_back();
            rows.back().push_back(point);
        }
    }
    return rows;
}

/// Where the points of a row stand in a cell of so many columns: in the middle, unless that would close the ways between the columns that
/// leader lines go down by; then two stand at both ends, and others begin at the left.
double columnIn(const Row &row, int place, int columns)
{
    const int count = static_cast<int>(row.size());
    const bool middle = columns <= 2 || (columns - count) % 2 == 0;
    if (middle)
        return place + 0.5 + (columns - count) / 2.0;
    const bool pair = std::any_of(row.begin(), row.end(), [](AdjusterRef point) { return point.kind == PointKind::BridgeScrew; });
    if (count == 2 && !pair)
        return place == 0 ? 0.5 : columns - 0.5;
    return place + 0.5 + (columns - count) / 2;
}

/// One row of a bank: the points of all its cylinders.
struct BankRow {
    std::vector<Row> cells; ///< by place in the bank
    bool namesAbove = true;
    std::optional<Side> side;
    bool holdsNumber = false;
};

void addSideRows(std::vector<BankRow> &rows, const std::vector<std::vector<Row>> &cells, Side side, bool namesAbove)
{
    const std::size_t count = cells.front().size();
    for (std::size_t at = 0; at < count; ++at) {
        // The first row of a side is the outermost, whichever way the side faces.
        const std::size_t from = namesAbove ? at : count - 1 - at;
        BankRow row{{}, namesAbove, from == 0 ? std::optional(side) : std::nullopt, false};
        for (const auto &cell : cells)
            row.cells.push_back(cell[from]);
        rows.push_back(std::move(row));
    }
}

std::vector<std::vector<Row>> rowsOfSide(const EngineDesign &design, const std::vector<Cylinder> &bank, Side side,
                                         const Arrangement &arrangement)
{
    std::vector<std::vector<Row>> cells;
    for (const Cylinder cylinder : bank) {
        std::vector<PointGroup> groups = groupsOf(design, cylinder, side);
        if (side == Side::Intake && design.train.injectors && !arrangement.injectorBetween)
            groups.push_back({{cylinder, Side::Intake, PointKind::Injector}});
        cells.push_back(inRows(groups, arrangement.columns));
    }
    return cells;
}

BankRow injectorRow(const std::vector<Cylinder> &bank, bool namesAbove)
{
    BankRow row{{}, namesAbove, std::nullopt, true};
    for (const Cylinder cylinder : bank)
        row.cells.push_back({{cylinder, Side::Intake, PointKind::Injector}});
    return row;
}

/// Puts the rows of a bank into its grid, one cell a cylinder.
void fillGrid(BankGrid &grid, const std::vector<BankRow> &rows, const Arrangement &arrangement)
{
    const double cell = arrangement.columns + arrangement.gap;
    for (std::size_t row = 0; row < rows.size(); ++row) {
        for (std::size_t place = 0; place < rows[row].cells.size(); ++place) {
            const Row &points = rows[row].cells[place];
            const double left = static_cast<double>(place) * cell + arrangement.gap / 2;
            for (std::size_t at = 0; at < points.size(); ++at) {
                // Beside the number the point stands in the last column of the cell.
                const double within =
                    rows[row].holdsNumber ? arrangement.columns - 0.5 : columnIn(points, static_cast<int>(at), arrangement.columns);
                grid.points.push_back({points[at], left + within, static_cast<int>(row)});
            }
        }
        grid.namesAbove.push_back(rows[row].namesAbove);
        grid.sides.push_back(rows[row].side);
        if (rows[row].holdsNumber)
            grid.numberIn = static_cast<int>(row);
    }
}

BankGrid sidesGrid(const EngineDesign &design, const std::vector<Cylinder> &bank, const Arrangement &arrangement, bool exhaustAbove)
{
    const auto exhausts = rowsOfSide(design, bank, Side::Exhaust, arrangement);
    const auto intakes = rowsOfSide(design, bank, Side::Intake, arrangement);
    std::vector<BankRow> rows;
    addSideRows(rows, exhaustAbove ? exhausts : intakes, exhaustAbove ? Side::Exhaust : Side::Intake, true);
    BankGrid grid;
    grid.numberBefore = static_cast<int>(rows.size());
    if (design.train.injectors && arrangement.injectorBetween)
        rows.push_back(injectorRow(bank, true));
    addSideRows(rows, exhaustAbove ? intakes : exhausts, exhaustAbove ? Side::Intake : Side::Exhaust, false);
    fillGrid(grid, rows, arrangement);
    const double cell = arrangement.columns + arrangement.gap;
    const double room = grid.numberIn ? arrangement.columns - 1 : arrangement.columns;
    for (std::size_t place = 0; place < bank.size(); ++place)
        grid.numbers.push_back(
            {static_cast<double>(place) * cell + arrangement.gap / 2 + room / 2, room + (grid.numberIn ? 0 : arrangement.gap)});
    grid.columns = static_cast<double>(bank.size()) * cell;
    return grid;
}

constexpr double numberRoom = 0.7; // of Line: before the points of a cylinder, in columns

BankGrid lineGrid(const EngineDesign &design, const std::vector<Cylinder> &bank, const Arrangement &arrangement, bool exhaustAbove)
{
    BankGrid grid;
    grid.namesAbove = {exhaustAbove};
    grid.sides = {std::nullopt};
    grid.numberIn = 0;
    double column = arrangement.gap / 2;
    for (const Cylinder cylinder : bank) {
        grid.numbers.push_back({column + numberRoom / 2, numberRoom});
        column += numberRoom;
        std::vector<PointGroup> groups = groupsOf(design, cylinder, Side::Exhaust);
        if (design.train.injectors)
            groups.push_back({{cylinder, Side::Intake, PointKind::Injector}});
        for (PointGroup &group : groupsOf(design, cylinder, Side::Intake))
            groups.push_back(std::move(group));
        for (const PointGroup &group : groups) {
            for (const AdjusterRef point : group) {
                grid.points.push_back({point, column + 0.5, 0});
                column += 1;
            }
        }
        column += arrangement.gap;
    }
    grid.columns = column - arrangement.gap / 2;
    return grid;
}

/// The lashes of a bank in the order of its letters: the first letters of a side are the first cylinder's.
std::vector<AdjusterRef> lashesInOrder(const EngineDesign &design, const std::vector<Cylinder> &bank, const std::vector<Side> &letters)
{
    std::vector<AdjusterRef> lashes;
    int seen[2] = {0, 0};
    for (const Side side : letters) {
        const int index = seen[static_cast<int>(side)]++;
        const int each = std::max(1, design.train.lashes(side));
        const std::size_t place = static_cast<std::size_t>(index / each);
        if (place < bank.size())
            lashes.push_back({bank[place], side, PointKind::Lash, index % each});
    }
    return lashes;
}

/// The columns a point that is no lash would stand under best: a bridge screw under its lash, a decompressor under an exhaust.
std::vector<std::size_t> columnsUnder(const std::vector<AdjusterRef> &lashes, AdjusterRef point)
{
    std::vector<std::size_t> best;
    std::vector<std::size_t> others;
    for (std::size_t column = 0; column < lashes.size(); ++column) {
        const AdjusterRef lash = lashes[column];
        if (lash.cylinder != point.cylinder)
            continue;
        const bool own = lash.side == point.side && (point.kind != PointKind::BridgeScrew || lash.number == point.number);
        (own ? best : others).push_back(column);
    }
    best.insert(best.end(), others.begin(), others.end());
    return best;
}

/// Puts every point that is no lash under its cylinder's lashes, a row lower where all places are taken. The number of rows it took.
int addUnderLashes(BankGrid &grid, const EngineDesign &design, const std::vector<Cylinder> &bank, const std::vector<AdjusterRef> &lashes)
{
    std::set<std::pair<int, std::size_t>> taken;
    int rows = 0;
    for (const AdjusterRef point : design.adjusters()) {
        if (point.kind == PointKind::Lash || std::find(bank.begin(), bank.end(), point.cylinder) == bank.end())
            continue;
        const std::vector<std::size_t> columns = columnsUnder(lashes, point);
        for (int row = 1; !columns.empty(); ++row) {
            const auto free = std::find_if(columns.begin(), columns.end(), [&](std::size_t column) {
                return !taken.contains({row, column});
            });
            if (free == columns.end())
                continue;
            taken.insert({row, *free});
            grid.points.push_back({point, static_cast<double>(*free) + 0.5, row});
            rows = std::max(rows, row);
            break;
        }
    }
    return rows;
}

void addMakerNumbers(BankGrid &grid, const std::vector<Cylinder> &bank)
{
    for (const Cylinder cylinder : bank) {
        double first = grid.columns;
        double last = 0;
        for (const GridPoint &point : grid.points) {
            if (point.adjuster.cylinder == cylinder) {
                first = std::min(first, point.column);
                last = std::max(last, point.column);
            }
        }
        grid.numbers.push_back({(first + last) / 2, grid.columns / static_cast<double>(bank.size())});
    }
}

/// Names outward, numbers inward; the rows further in follow on the inside.
void turnOutward(BankGrid &grid, int rows, bool insideBelow)
{
    if (!insideBelow) {
        for (GridPoint &point : grid.points)
            point.row = rows - 1 - point.row;
    }
    grid.namesAbove.assign(static_cast<std::size_t>(rows), insideBelow);
    grid.sides.assign(static_cast<std::size_t>(rows), std::nullopt);
    grid.numberBefore = insideBelow ? rows : 0;
}

BankGrid makerGrid(const EngineDesign &design, std::size_t bankIndex, bool staggered, bool insideBelow)
{
    const auto &bank = design.banks[bankIndex];
    const auto &letters = design.valveOrder[std::min(bankIndex, design.valveOrder.size() - 1)];
    const std::vector<AdjusterRef> lashes = lashesInOrder(design, bank, letters);
    BankGrid grid;
    const double step = staggered ? 0.5 : 1;
    for (std::size_t column = 0; column < lashes.size(); ++column) {
        const int row = staggered ? static_cast<int>(column % 2) : 0;
        grid.points.push_back({lashes[column], static_cast<double>(column) * step + 0.5, row});
    }
    grid.columns = static_cast<double>(lashes.size() - 1) * step + 1;
    const int rows = staggered ? 2 : 1 + addUnderLashes(grid, design, bank, lashes);
    addMakerNumbers(grid, bank);
    turnOutward(grid, rows, insideBelow);
    // On two levels the lower names would stand on the upper points' way down.
    if (staggered)
        grid.namesAbove = {true, false};
    return grid;
}

bool hasMakersOrder(const EngineDesign &design)
{
    return design.valveRows == ValveRows::One && !design.valveOrder.empty() && !design.valveOrder.front().empty();
}

int sizeOf(const std::vector<PointGroup> &groups)
{
    std::size_t size = 0;
    for (const PointGroup &group : groups)
        size += group.size();
    return static_cast<int>(size);
}

/// Cylinders well apart, then closer, then none apart from the next more than their points are.
void addWithGaps(std::vector<Arrangement> &all, Arrangement arrangement, double gap)
{
    for (const double share : {1.0, 0.5, 0.25, 0.0}) {
        arrangement.gap = gap * share;
        all.push_back(arrangement);
        if (gap == 0)
            return;
    }
}

} // namespace

std::vector<PointGroup> groupsOf(const EngineDesign &design, Cylinder cylinder, Side side)
{
    std::vector<PointGroup> groups;
    const bool screws = design.train.bridgeScrews && design.train.isBridged(side);
    for (int lash = 0; lash < design.train.lashes(side); ++lash) {
        groups.push_back({{cylinder, side, PointKind::Lash, lash}});
        if (screws)
            groups.back().push_back({cylinder, side, PointKind::BridgeScrew, lash});
    }
    if (side == Side::Exhaust && design.train.decompressors)
        groups.push_back({{cylinder, side, PointKind::Decompressor}});
    return groups;
}

BankGrid gridOf(const EngineDesign &design, std::size_t bank, const Arrangement &arrangement, bool exhaustAbove)
{
    switch (arrangement.kind) {
    case Arrangement::Kind::Sides: return sidesGrid(design, design.banks[bank], arrangement, exhaustAbove);
    case Arrangement::Kind::Line: return lineGrid(design, design.banks[bank], arrangement, exhaustAbove);
    case Arrangement::Kind::Maker: return makerGrid(design, bank, false, exhaustAbove);
    case Arrangement::Kind::Staggered: return makerGrid(design, bank, true, exhaustAbove);
    }
    return {};
}

std::vector<Arrangement> arrangementsFor(const EngineDesign &design)
{
    const ValveTrain &train = design.train;
    if (hasMakersOrder(design)) {
        const bool onlyLashes = !train.bridgeScrews && !train.injectors && !train.decompressors;
        std::vector<Arrangement> all{{Arrangement::Kind::Maker}};
        if (onlyLashes)
            all.push_back({Arrangement::Kind::Staggered});
        return all;
    }
    std::vector<Arrangement> all;
    const Cylinder any{0};
    const int widest = std::max(sizeOf(groupsOf(design, any, Side::Exhaust)), sizeOf(groupsOf(design, any, Side::Intake)));
    const double gap = train.bridged ? 0.4 : 0.3;
    if (train.injectors) {
        for (int columns = std::max(2, widest); columns >= 2; --columns)
            addWithGaps(all, {Arrangement::Kind::Sides, columns, true}, gap);
    }
    for (int columns = widest + (train.injectors ? 1 : 0); columns >= 1; --columns)
        addWithGaps(all, {Arrangement::Kind::Sides, columns, false}, columns == 1 && !train.bridged ? 0 : gap);
    addWithGaps(all, {Arrangement::Kind::Line}, gap);
    return all;
}

} // namespace asleft
