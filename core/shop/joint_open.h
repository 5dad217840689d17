#pragma once

#include <shop/outlook.h>

#include <vector>

namespace asleft {

/// The joint a step loosens or tightens, if it is one the engine has; a step without one is done like a note.
const JointState *jointOfStep(const JobState &state, const Step &step);

/// What is still open of joints: fasteners not tight yet, under the gate they hinder; the rest before first start; and at hand-over.
void addLooseFasteners(const JobState &state, Gate gate, std::vector<OpenItem> &items);
void addJointsBeforeStart(const JobState &state, std::vector<OpenItem> &items);
void addJointsAtHandOver(const JobState &state, std::vector<OpenItem> &items);

} // namespace asleft
