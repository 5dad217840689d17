#pragma once

#include <engine/design.h>

#include <optional>

namespace asleft {

/// Crank degrees from one firing of a cylinder to its next: 720°, of a two-stroke 360°.
Angle cycleOf(const EngineDesign &design);

/// The angle brought into 0 ≤ a < cycle.
Angle inCycle(const EngineDesign &design, Angle angle);

/// Where in the crank cycle a cylinder fires: 0 for the first of the firing order.
Angle firingAngle(const EngineDesign &design, Cylinder cylinder);

/// Crank degrees after the cylinder's own firing dead centre, 0 ≤ φ < cycle, with the crank at `crank`
/// (0 where the first of the firing order is at its firing dead centre).
Angle phase(const EngineDesign &design, Cylinder cylinder, Angle crank);

/// How far the crank is from loading what this adjuster sets, less the ramp allowance: the distance from φ to the nearest end of its arcs
/// where it is free; negative inside arc and ramp. An intake is off its seat from 360°−IVO to 540°+IVC, an exhaust from 180°−EVO to
/// 360°+EVC (two-stroke: 180°+EVC), and in the second exhaust arc where there is one; bridge screws and decompressors go with their
/// valves, an injector by its own arc.
Angle margin(const EngineDesign &design, AdjusterRef adjuster, Angle crank);

/// A point may be set where its margin is above zero.
bool maySet(const EngineDesign &design, AdjusterRef adjuster, Angle crank);

/// What a cylinder is just at.
enum class CrankEvent {
    Compression,      ///< firing dead centre, φ = 0
    Overlap,          ///< half a cycle on, φ = 360°; of a two-stroke bottom dead centre, φ = 180°
    ExhaustOpens,     ///< its exhaust valve begins to move, φ = 180° − EVO
    IntakeCloses,     ///< its intake valve has just come to rest, φ = 540° + IVC
    IntakeFullyOpen,  ///< middle of the intake arc
    ExhaustFullyOpen, ///< middle of the exhaust arc
};

/// Where the crank stands, told by one cylinder.
struct CrankPosition {
    Cylinder cylinder;
    CrankEvent event = CrankEvent::Compression;
    bool operator==(const CrankPosition &) const = default;
};

/// The crank angle of a place. The intake events of a two-stroke, which has no intakes, are at its bottom dead centre.
Angle crankAt(const EngineDesign &design, CrankPosition place);

/// How a crank angle is said: the cylinder at a dead centre there (on compression before at overlap, then the first of the firing order),
/// or, between dead centres, the last one passed and how many degrees after it.
struct CrankReading {
    CrankPosition place;
    Angle after; ///< 0 at the dead centre itself
    bool operator==(const CrankReading &) const = default;
};
CrankReading readCrank(const EngineDesign &design, Angle crank);

/// The cylinder that is at overlap when `cylinder` is on compression; nothing if none is.
std::optional<Cylinder> companion(const EngineDesign &design, Cylinder cylinder);

/// How to tell on which stroke a cylinder at its dead-centre mark is, derived from the cam events.
struct StrokeCheck {
    Cylinder cylinder;
    std::optional<Cylinder> companion; ///< at overlap when `cylinder` is on compression
    /// Both rockers of the cylinder are loose on compression and at least one is held at overlap: looseness tells the stroke.
    bool loosenessTells = false;
    bool everyTdcFires = false; ///< a two-stroke: the mark alone tells
    /// Rocking the crank at overlap, exhaust closing and intake opening change over: the companion's valves show it.
    bool changeOverShows = false;
};
StrokeCheck strokeCheck(const EngineDesign &design, Cylinder cylinder);

/// How far to turn in the normal direction from one crank angle to another, 0 ≤ t < cycle.
Angle travel(const EngineDesign &design, Angle from, Angle to);

} // namespace asleft
