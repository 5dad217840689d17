#pragma once

#include <engine/phase.h>

#include <string>
#include <vector>

namespace asleft {

/// Ways to choose the positions of a generated plan.
enum class PlanWay {
    TwoPositions,       ///< the first of the firing order on compression, then half a cycle on
    EachOnCompression,  ///< each cylinder on its own compression, in firing order
    CompanionAtOverlap, ///< the same places, found by the companion's valves changing over
    OpeningAndClosing,  ///< a cylinder's intake as its exhaust begins to open, its exhaust as its intake has just closed
    Fewest,             ///< the fewest positions that reach every point with a margin; needs a known cam
    RuleOfNine,         ///< in-line four, lashes 1 to 8 from the front: where k is fully open, 9 − k is set
};

/// The marks an engine has to be turned to.
enum class CrankMarks {
    EveryTdc,  ///< a dead centre of every cylinder can be found
    FirstOnly, ///< only that of the first of the firing order
    AnyAngle,  ///< a degree wheel is on
};

/// What plan is asked for.
struct PlanAsk {
    PlanWay way = PlanWay::TwoPositions;
    /// Where the crank stands: the positions are listed from there on in the normal direction. Two positions of an engine that stands at
    /// a dead centre begin with it, if that reaches as many points.
    std::optional<Angle> from = {};
    CrankMarks marks = CrankMarks::EveryTdc; ///< for the fewest
    Angle leastMargin = degrees(10);         ///< for the fewest: every point has at least this
};

/// One valve to be set at a position, with its margin there by geometry.
struct PlanPoint {
    AdjusterRef adjuster;
    Angle margin;
    /// Geometry says it may not be set here: possible only in a plan typed from a manual, and in the rule of nine.
    [[nodiscard]] bool doubtful() const { return margin <= Angle{}; }
    bool operator==(const PlanPoint &) const = default;
};

struct PlanPosition {
    CrankPosition place;
    Angle crank;
    std::vector<PlanPoint> points; ///< in the order of EngineDesign::adjusters()
    bool operator==(const PlanPosition &) const = default;
};

/// Where to turn the crank and which valves to set there.
struct CrankPlan {
    bool generated = false;              ///< false: typed from a manual
    PlanWay way = PlanWay::TwoPositions; ///< of a generated plan
    std::string source;                  ///< of a typed plan: the manual, as typed; of plans of older garages with the page behind it
    std::vector<PlanPosition> positions;
    std::vector<AdjusterRef> unreached; ///< points no position sets
    std::string page = {};              ///< of a typed plan, as typed; may be empty
    bool operator==(const CrankPlan &) const = default;
};

/// The plan asked for. Refuses with PlanNeedsCam (fewest, cam assumed), PlanNotReached (fewest: points no mark reaches with the margin)
/// and PlanNotForEngine (rule of nine on anything but an in-line four with one intake and one exhaust lash a cylinder; companion, opening
/// and closing on a two-stroke).
/// Fewest: no plan from these marks has fewer positions; of those with as few, one whose least margin is greatest, then the earliest.
Result<CrankPlan> planFor(const EngineDesign &design, const PlanAsk &ask);

/// Whether the rule of nine leaves every point free: it does where intakes and exhausts mirror each other along the head, E I I E E I I E,
/// and not for E I E I E I E I. \pre the engine is one the rule is for
bool ruleOfNineHolds(const EngineDesign &design);

/// Chooses positions by `way`, listed from the first of the firing order on compression; two at one crank angle are one, and positions that
/// set nothing are dropped. Lashes go where the way says: with two positions to the one where their margin is greatest, the earlier on a
/// tie. Bridge screws and decompressors go where the lash of their valves goes, an injector to the position where its margin is greatest. A
/// point whose margin there is not above zero is left in `unreached`; the rule of nine keeps its points even so.
/// \pre any way but the fewest; the rule of nine only for an engine planFor() would plan by it
CrankPlan generatePlan(const EngineDesign &design, PlanWay way);

/// One line of a manual's table as typed.
struct TableLine {
    std::string cylinder; ///< its label
    CrankEvent event = CrankEvent::Compression;
    std::string points; ///< `IN 1 2 4 EX 1 3 5`, `I1 I2 E1`, `intake 1, 2; exhaust 3`, `INJ 3 5`, `DEC 1`, `I3a BE2`
};

enum class TableField { Cylinder, Points };

struct TableRefusal {
    TableField field;
    Error error;
};

/// A line read by itself and together with those above it.
struct ReadTableLine {
    bool empty = true;
    std::optional<PlanPosition> position;
    std::optional<TableRefusal> refusal;
};

struct TableReading {
    std::vector<ReadTableLine> lines;
    std::vector<AdjusterRef> unreached; ///< what no line sets
};

/// The manual's own table, line by line: a slip in one does not hide what is wrong with the next. `IN 1` means every intake lash of no. 1
/// with its bridge screws. Refuses what cannot be read, an unknown cylinder and a point named twice; a point that geometry says may not be
/// set there is kept and is doubtful(), to be questioned.
TableReading readTable(const EngineDesign &design, const std::vector<TableLine> &lines);

/// The whole table as a plan, or the first of its refusals. `source` is the manual.
Result<CrankPlan> planFromTable(const EngineDesign &design, const std::vector<TableLine> &lines, std::string source, std::string page = {});

/// "IN 1 2 4 EX 1 3 5 INJ 3 DEC 1": the points of a position as a manual prints them; where only some of a side are set, those by their
/// short names, in front. planFromTable() reads it back.
std::string describePoints(const EngineDesign &design, const PlanPosition &position);

} // namespace asleft
