#pragma once

#include <engine/design.h>

#include <vector>

namespace asleft {

/// One point of a head: which ring it stands on, 0 the outermost, and how far aside of the head's middle, in points.
struct Seat {
    AdjusterRef adjuster;
    int ring = 0;
    double aside = 0;
};

/// The points of a cylinder of a radial engine in rings: all in one where so many columns have room for them beside each other, else the
/// exhausts outward and the intakes inward.
std::vector<Seat> seatsOf(const EngineDesign &design, Cylinder cylinder, int columns);

} // namespace asleft
