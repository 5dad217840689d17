#pragma once

#include <base/result.h>

#include <string>

namespace asleft {

/// Makes a new garage with seven invented vehicles in it, of all kinds of engines, and an engine on the stand: a van whose valves were set
/// twice, years apart; jobs begun, half done and waiting; a coupe whose job is not begun; and, worked on last, a tractor whose valve set
/// was broken off in the middle. The same acts with the same uids and dates every time.
/// Refuses as Garage::create() does. Needs a QCoreApplication to be alive.
Done makeDemoGarage(const std::string &path);

} // namespace asleft
