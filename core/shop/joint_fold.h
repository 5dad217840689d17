#pragma once

#include <shop/state.h>

#include <vector>

namespace asleft {

/// Folds the acts in force that speak of joints anew, each joint with one pass over its own acts.
void foldJoints(JobState &state);
/// The same of one joint.
void foldJoint(JobState &state, JointId joint);

/// Fasteners that were found missing, broken or of the wrong length and had no tick since.
std::vector<int> unfitAsFound(const JobState &state, JointId joint);

} // namespace asleft
