#pragma once

#include <engine/design.h>

#include <optional>
#include <vector>

namespace asleft {

/// How the points of a cylinder are laid out on its head.
struct Arrangement {
    enum class Kind {
        Sides,    ///< exhausts on one side, intakes on the other, the number between them
        Line,     ///< all beside each other, the number before them
        Maker,    ///< lashes in the maker's order along the head, the rest under them
        Staggered ///< the same, every other lash a level lower
    };
    Kind kind = Kind::Sides;
    int columns = 1;              ///< of Sides: how many points of a side stand beside each other before the next row begins
    bool injectorBetween = false; ///< of Sides: in a row of its own beside the number; else at the end of the intakes
    double gap = 0;               ///< between two cylinders, in columns
};

/// Where one point stands on the head of its bank: in columns, whole or half, and in rows from the top.
struct GridPoint {
    AdjusterRef adjuster;
    double column = 0; ///< of its middle
    int row = 0;
};

/// Where the number of a cylinder stands.
struct GridNumber {
    double column = 0; ///< of its middle
    double width = 1;  ///< in columns
};

/// How the points of one bank stand to each other, before anything has a size.
struct BankGrid {
    std::vector<GridPoint> points;
    std::vector<GridNumber> numbers; ///< by place in the bank
    double columns = 0;
    std::vector<bool> namesAbove;           ///< for each row, whether the names of its points stand above them
    std::vector<std::optional<Side>> sides; ///< for each row, whose side it begins; empty where it only goes on with it
    int numberBefore = 0;                   ///< the row before which the numbers have a line of their own
    std::optional<int> numberIn;            ///< the row in which they stand instead

    [[nodiscard]] int rows() const { return static_cast<int>(namesAbove.size()); }
};

/// The grid of one bank; `exhaustAbove` also says that the inside of the engine is below the bank.
BankGrid gridOf(const EngineDesign &design, std::size_t bank, const Arrangement &arrangement, bool exhaustAbove);

/// Every arrangement worth trying, the ones that show the head best first.
std::vector<Arrangement> arrangementsFor(const EngineDesign &design);

/// The points of one side of a cylinder that stay together: a lash with its bridge screw, a decompressor.
using PointGroup = std::vector<AdjusterRef>;
std::vector<PointGroup> groupsOf(const EngineDesign &design, Cylinder cylinder, Side side);

} // namespace asleft
