#include "head_measure.h"

#include <words/points.h>

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace asleft {

namespace {

constexpr double smallNames = 16; // height of a line of names of points
constexpr double fineNames = 13;
constexpr double numbersLine = 24;
constexpr double leastMargin = 4; // between a casting's edge and what stands on it
constexpr double mostMargin = 20;
constexpr double nameGap = 3; // between two names beside each other
constexpr double border = 2;  // of the panel

double gapBetweenBanks(Layout layout, double height)
{
    if (liesInPairs(layout))
        return std::clamp(height * 0.08 - 8, 16.0, 56.0);
    return std::clamp(height * 0.03, 8.0, 24.0);
}

double widthOfBank(const HeadMeasure &measure, double panelWidth)
{
    const double between = (measure.across - 1) * 12.0;
    return (panelWidth - border - between) / measure.across;
}

double heightOfBank(const HeadMeasure &measure, double panelHeight)
{
    return (panelHeight - border - (measure.down() - 1) * measure.gap) / measure.down();
}

double mostColumns(const HeadMeasure &measure)
{
    double columns = 1;
    for (const BankGrid &grid : measure.grids)
        columns = std::max(columns, grid.columns);
    return columns;
}

double fixedHeight(const HeadMeasure &measure)
{
    return 2 * leastMargin + measure.grids.front().rows() * measure.nameHeight + measure.numberHeight;
}

/// How far columns may stand apart, in diameters of a point, so that the head does not fall apart.
double mostSpread(const HeadMeasure &measure)
{
    switch (measure.arrangement.kind) {
    case Arrangement::Kind::Sides: return measure.arrangement.columns == 1 ? 3 : 1.5;
    case Arrangement::Kind::Line: return 1.5;
    case Arrangement::Kind::Maker: return 1.6;
    case Arrangement::Kind::Staggered: return 2;
    }
    return 1;
}

/// The room that is left over goes first to the numbers and between the rows, then to the edges.
void spreadHeight(HeadMeasure &measure, double available)
{
    const int rows = measure.grids.front().rows();
    double spare = std::max(0.0, available - fixedHeight(measure) - rows * measure.diameter);
    if (measure.numberHeight > 0) {
        const double toNumbers = std::min(spare * 0.6, measure.diameter * 0.9);
        measure.numberHeight += toNumbers;
        spare -= toNumbers;
    } else if (rows > 1) {
        measure.rowGap = std::min(spare * 0.6 / (rows - 1), measure.diameter * 0.4);
        spare -= measure.rowGap * (rows - 1);
    }
    measure.margin = leastMargin + std::min(spare / 2, mostMargin - leastMargin);
    measure.bankHeight = 2 * (measure.margin - leastMargin) + fixedHeight(measure) + rows * measure.diameter + (rows - 1) * measure.rowGap;
}

/// A size names may be set in, with the room the widest of them takes then; none at all where they are left out.
struct Names {
    TextSize size;
    double widest;
    bool shown = true;
};

/// Sizes of one arrangement with names of one size.
HeadMeasure measured(const EngineDesign &design, QSizeF size, const Arrangement &arrangement, int across, const Names &names)
{
    HeadMeasure measure;
    measure.arrangement = arrangement;
    measure.across = across;
    for (std::size_t bank = 0; bank < design.banks.size(); ++bank)
        measure.grids.push_back(gridOf(design, bank, arrangement, exhaustAbove(design, static_cast<int>(bank))));
    measure.gutter = design.train.bridged ? bridgedGutter : headGutter;
    measure.gap = gapBetweenBanks(design.layout, size.height());
    measure.nameSize = names.size;
    measure.nameHeight = names.shown ? nameHeightOf(names.size) : 0;
    measure.numberHeight = measure.grids.front().numberIn ? 0 : numbersLine;
    const double columns = mostColumns(measure);
    const double room = widthOfBank(measure, size.width()) - measure.gutter - headRightMargin;
    const double height = heightOfBank(measure, size.height());
    const double byHeight = (height - fixedHeight(measure)) / measure.grids.front().rows();
    const double available = room / columns;
    measure.diameter = std::max(1.0, std::floor(std::min({largestPoint, available, byHeight})));
    // A point much smaller than its name still carries it, if there is room to stand apart.
    const double forNames = names.shown ? names.widest + nameGap : 0;
    measure.pitch = std::min(available, std::max(measure.diameter * mostSpread(measure), forNames));
    measure.namesFit = names.shown && forNames <= measure.pitch;
    measure.fits = byHeight >= 1;
    measure.bankWidth = measure.gutter + columns * measure.pitch + headRightMargin;
    spreadHeight(measure, height);
    return measure;
}

/// A finger wants large points, an eye names it can read.
double worth(const HeadMeasure &measure)
{
    const double size = std::min(measure.diameter, wantedPoint);
    const double names = !measure.namesFit ? -wantedPoint : measure.nameSize == TextSize::Small ? 0 : -4;
    const double split = measure.across > 1 ? -1 : 0;
    const double height = measure.fits ? 0 : -10 * wantedPoint;
    return size + names + split + height;
}

std::vector<int> columnsOfBanks(const EngineDesign &design)
{
    const std::size_t banks = design.banks.size();
    if (banks < 3)
        return {1};
    return {1, 2};
}

} // namespace

double nameHeightOf(TextSize size)
{
    return size == TextSize::Small ? smallNames : fineNames;
}

bool liesInPairs(Layout layout)
{
    return layout == Layout::Flat || layout == Layout::Opposed;
}

bool exhaustAbove(const EngineDesign &design, int bank)
{
    if (liesInPairs(design.layout))
        return bank % 2 == 0;
    const int banks = static_cast<int>(design.banks.size());
    return bank == 0 || bank < banks / 2;
}

double widestPointName(const EngineDesign &design, TextSize size)
{
    // Set in strong type where the point may be set.
    const QFontMetricsF metrics(textFont(size == TextSize::Small ? TextSize::SmallStrong : TextSize::FineStrong));
    double widest = 0;
    for (const AdjusterRef point : design.adjusters())
        widest = std::max(widest, metrics.horizontalAdvance(pointShort(design, point)));
    return widest;
}

HeadMeasure measureHead(const EngineDesign &design, QSizeF size)
{
    const Names sizes[] = {{TextSize::Small, widestPointName(design, TextSize::Small)},
                           {TextSize::Fine, widestPointName(design, TextSize::Fine)},
                           {TextSize::Fine, 0, false}};
    std::optional<HeadMeasure> best;
    for (const int across : columnsOfBanks(design)) {
        for (const Arrangement &arrangement : arrangementsFor(design)) {
            for (const Names &names : sizes) {
                HeadMeasure measure = measured(design, size, arrangement, across, names);
                if (!best || worth(measure) > worth(*best))
                    best = std::move(measure);
            }
        }
    }
    return *best;
}

} // namespace asleft
