#pragma once

#include <draw/head.h>

namespace asleft {

/// Finds for every point where its leader line goes down: the nearest way that is clear of the other points and, where it can be, of
/// names and numbers; where there is none, the one that comes least near to other points.
void findLeaders(HeadPlan &plan);

} // namespace asleft
