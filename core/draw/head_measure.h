#pragma once

#include "head_grid.h"

#include <draw/fonts.h>

#include <QSizeF>

namespace asleft {

constexpr double headGutter = 60;    // left of each bank, for "front", "exhaust", "intake"
constexpr double bridgedGutter = 68; // the same where the stem of a bridge reaches out of the first column
constexpr double headRightMargin = 6;
constexpr double wantedPoint = 44;
constexpr double largestPoint = 84;

/// Sizes shared by all banks of one plan.
struct HeadMeasure {
    Arrangement arrangement;
    std::vector<BankGrid> grids; ///< by bank
    int across = 1;              ///< columns of banks
    double gap = 0;              ///< between two banks, one above the other
    double pitch = 0;            ///< from column to column
    double diameter = 0;         ///< of a point's square
    double gutter = headGutter;
    double margin = 0;       ///< above and below what stands on a casting
    double nameHeight = 0;   ///< of the line of names over or under a row
    double numberHeight = 0; ///< of the numbers' own line, 0 where they stand in a row
    double rowGap = 0;       ///< between two rows
    double bankHeight = 0;
    double bankWidth = 0;
    TextSize nameSize = TextSize::Small;
    bool namesFit = true;
    bool fits = true; ///< false: not even the smallest points have room in the height

    [[nodiscard]] int banks() const { return static_cast<int>(grids.size()); }
    [[nodiscard]] int down() const { return (banks() + across - 1) / across; }
};

/// The best of all arrangements for a panel of this size.
HeadMeasure measureHead(const EngineDesign &design, QSizeF size);

/// Whether a bank's exhausts stand above its intakes, its outside being above.
bool exhaustAbove(const EngineDesign &design, int bank);

/// The widest name of a point, in pixels, in the strong type of this size.
double widestPointName(const EngineDesign &design, TextSize size);
/// The height of a line of names of this size.
double nameHeightOf(TextSize size);

/// Whether the banks of a layout lie in pairs on both sides of a crankcase.
bool liesInPairs(Layout layout);

} // namespace asleft
