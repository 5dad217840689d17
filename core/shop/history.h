#pragma once

#include <shop/state.h>

#include <string_view>
#include <vector>

namespace asleft {

/// The acts a reading in force goes back to, newest first: its own, the one that corrects, and so on to that by which the point was
/// felt or set.
std::vector<const Act *> historyOf(const JobState &state, const Judged &judged);

/// When the point was felt or set; a correction mends only what was written about it.
Moment takenAt(const JobState &state, const Judged &judged);

/// Whether a computer took a reading or corrected it: then it knows of it.
bool knownAt(const JobState &state, const Judged &judged, std::string_view station);

} // namespace asleft
