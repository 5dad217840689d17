#pragma once

#include <engine/design.h>

#include <optional>

namespace asleft {

constexpr Angle fullCycle = degrees(720);

/// The angle brought into 0 ≤ a < 720°.
Angle inCycle(Angle angle);

/// Where in the crank cycle a cylinder fires: 0 for the first of the firing order.
Angle firingAngle(const EngineDesign &design, Cylinder cylinder);

/// Crank degrees after the cylinder's own firing dead centre, 0 ≤ φ < 720°, with the crank at `crank`
/// (0 where the first of the firing order is at its firing dead centre).
Angle phase(const EngineDesign &design, Cylinder cylinder, Angle crank);

/// How far the crank is from moving this valve off its seat, less the ramp allowance: the distance from φ to the nearest end of the
/// valve's arc where the valve is shut; negative inside arc and ramp. An intake is off its seat from 360°−IVO to 540°+IVC, an exhaust
/// from 180°−EVO to 360°+EVC.
Angle margin(const EngineDesign &design, AdjusterRef valve, Angle crank);

/// The lash of a valve may be set where its margin is above zero.
bool maySet(const EngineDesign &design, AdjusterRef valve, Angle crank);

enum class CrankEvent { Compression, Overlap };

/// One cylinder at a dead centre: on compression (φ = 0) or at overlap (φ = 360°).
struct CrankPlace {
    Cylinder cylinder;
    CrankEvent event = CrankEvent::Compression;
    bool operator==(const CrankPlace &) const = default;
};

/// The crank angle of a place.
Angle crankAt(const EngineDesign &design, CrankPlace place);

/// How a crank angle is said: the cylinder at a dead centre there (on compression before at overlap, then the first of the firing order),
/// or, between dead centres, the last one passed and how many degrees after it.
struct CrankSaying {
    CrankPlace place;
    Angle after; ///< 0 at the dead centre itself
    bool operator==(const CrankSaying &) const = default;
};
CrankSaying sayCrank(const EngineDesign &design, Angle crank);

/// The cylinder that is at overlap when `cylinder` is on compression; nothing if none is.
std::optional<Cylinder> companion(const EngineDesign &design, Cylinder cylinder);

/// How to tell on which stroke a cylinder at its dead-centre mark is, derived from the cam events.
struct StrokeCheck {
    Cylinder cylinder;
    std::optional<Cylinder> companion; ///< at overlap when `cylinder` is on compression
    /// Both rockers of the cylinder are loose on compression and at least one is held at overlap: looseness tells the stroke.
    bool loosenessTells = false;
    /// Rocking the crank at overlap, exhaust closing and intake opening change over: the companion's valves show it.
    bool changeOverShows = false;
};
StrokeCheck strokeCheck(const EngineDesign &design, Cylinder cylinder);

/// How far to turn in the normal direction from one crank angle to another, 0 ≤ t < 720°.
Angle travel(Angle from, Angle to);

} // namespace asleft
