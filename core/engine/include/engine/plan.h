#pragma once

#include <engine/phase.h>

#include <string>
#include <vector>

namespace asleft {

/// Ways to choose the positions of a generated plan.
enum class PlanWay {
    TwoPositions,      ///< the first of the firing order on compression, then one whole turn on
    EachOnCompression, ///< each cylinder on its own compression, in firing order
};

/// One valve to be set at a position, with its margin there by geometry.
struct PlanPoint {
    AdjusterRef adjuster;
    Angle margin;
    /// Geometry says it may not be set here: possible only in a plan typed from a manual.
    [[nodiscard]] bool doubtful() const { return margin <= Angle{}; }
    bool operator==(const PlanPoint &) const = default;
};

struct PlanPosition {
    CrankPlace place;
    Angle crank;
    std::vector<PlanPoint> points; ///< in the order of EngineDesign::adjusters()
    bool operator==(const PlanPosition &) const = default;
};

/// Where to turn the crank and which valves to set there.
struct CrankPlan {
    bool generated = false;              ///< false: typed from a manual
    PlanWay way = PlanWay::TwoPositions; ///< of a generated plan
    std::string source;                  ///< of a typed plan: manual and page, as typed
    std::vector<PlanPosition> positions;
    std::vector<AdjusterRef> unreached; ///< valves no position sets
    bool operator==(const CrankPlan &) const = default;
};

/// Chooses positions by `way`. With each cylinder on its own compression both its valves are set there, as the name says; else every
/// valve goes to the position where its margin is greatest, the earlier on a tie. A valve whose margin there is not above zero is left in
/// `unreached`. Positions without a valve are dropped.
CrankPlan generatePlan(const EngineDesign &design, PlanWay way);

/// One line of a manual's table as typed.
struct TableLine {
    std::string cylinder; ///< its label
    CrankEvent event = CrankEvent::Compression;
    std::string points; ///< `IN 1 2 4 EX 1 3 5`, `I1 I2 E1`, `intake 1, 2; exhaust 3`
};

/// The manual's own table. Refuses what cannot be read, an unknown cylinder and a point named twice; a point that geometry says may not
/// be set there is kept and is doubtful(), to be questioned. `source` is the manual and page.
Result<CrankPlan> planFromTable(const EngineDesign &design, const std::vector<TableLine> &lines, std::string source);

/// "IN 1 2 4 EX 1 3 5": the points of a position as a manual prints them.
std::string describePoints(const EngineDesign &design, const PlanPosition &position);

} // namespace asleft
