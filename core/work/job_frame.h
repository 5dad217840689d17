#pragma once

#include <shop/state.h>
#include <work/garage.h>

namespace asleft {

/// Reads the things a job's acts speak of.
Result<std::shared_ptr<const JobFrame>> loadFrame(Garage &garage, JobId job);

/// Whether a change may be one of those things.
bool touchesFrame(const Change &change, const JobFrame &frame);

} // namespace asleft
