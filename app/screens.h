#pragma once

#include "places_bar.h"

#include <functional>
#include <vector>

namespace asleft {

class Window;

/// One screen of the window that can be drawn into a picture: its name, its place, and how it is brought there. Some of it is logged
/// on the way, so a screen is prepared on a copy of the garage.
struct Screen {
    const char *name;
    Place place;
    std::function<void(Window &)> prepare; ///< empty: as the place opens
};

const std::vector<Screen> &screens();

} // namespace asleft
