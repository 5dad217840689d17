#pragma once

#include <shop/state.h>

namespace asleft {

/// Folds the acts in force that speak of joints anew, each joint with one pass over its own acts.
void foldJoints(JobState &state);
/// The same of one joint.
void foldJoint(JobState &state, JointId joint);

} // namespace asleft
