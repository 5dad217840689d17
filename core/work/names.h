#pragma once

#include <shop/state.h>

namespace asleft {

/// "I2, E3": the points' short names, for an Error's arguments.
std::string namesOf(const JobFrame &frame, const std::vector<PointId> &points);

/// What an act can be told by: its points; its joint and fasteners; of a move of the crank those set there, else the angle; of a plan its
/// source, else the points of its first position. Empty where nothing is known.
std::string placeOf(const JobState &state, const Act &act);

} // namespace asleft
