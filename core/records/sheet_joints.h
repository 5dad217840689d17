#pragma once

#include "sheet_pages.h"

#include <shop/state.h>

namespace asleft {

/// The lines of a job that loosen or tighten a joint, each with a box to be ticked and what the manual asks by the revision in hand, and
/// whether there is a newer one; nothing where there is none.
void addJoints(SheetPages &pages, const JobState &state);

} // namespace asleft
