#pragma once

#include <engine/design.h>

#include <span>

namespace asleft {

/// How many banks an engine of this layout may have, fewest first; where that is a choice, the typed numbering makes it.
std::span<const int> bankChoices(Layout layout);

} // namespace asleft
