#pragma once

#include <shop/state.h>

namespace asleft {

/// The lash of the pair whose bridge this screw seats; nothing for any other point.
const SettingPoint *lashOfBridge(const JobFrame &frame, const SettingPoint &bridge);

} // namespace asleft
