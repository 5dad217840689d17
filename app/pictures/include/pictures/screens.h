#pragma once

#include <window/page_tabs.h>

#include <functional>
#include <vector>

namespace asleft {

class Window;

/// One screen of the window that can be drawn into a picture: its name, its page, and how it is brought there. Some of it is logged
/// on the way, so a screen is prepared on a copy of the garage.
struct Screen {
    const char *name;
    Page page;
    std::function<void(Window &)> prepare; ///< empty: as the page opens
};

const std::vector<Screen> &screens();

} // namespace asleft
