#pragma once

#include <pictures/screens.h>

namespace asleft {

/// The screens of the Bench that can be drawn. Each looks for the engine it shows in the garage; in one without it, it shows the Bench as
/// it opens.
std::vector<Screen> benchScreens();

} // namespace asleft
