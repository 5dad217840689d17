#pragma once

#include <base/result.h>

#include <string>

namespace asleft {

/// Makes a new garage with three invented vehicles in it: a tractor whose valve set was broken off in the middle, a van whose valves
/// were set some months ago, and a coupe whose job is not begun. The same acts with the same uids and dates every time.
/// Refuses as Garage::create() does. Needs a QCoreApplication to be alive.
Done makeDemoGarage(const std::string &path);

} // namespace asleft
