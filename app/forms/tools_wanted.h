#pragma once

#include <parts/notes.h>

#include <shop/joint.h>

#include <chrono>
#include <vector>

namespace asleft {

/// What these joints ask of the rack, a paragraph each: what takes hold of the fasteners, and a wrench for every torque. What no tool
/// reaches has a paragraph of its own, under a head that says so.
QList<Notes::Note> toolsWantedNotes(const std::vector<Joint> &joints, const std::vector<Tool> &tools, std::chrono::sys_days today);

} // namespace asleft
