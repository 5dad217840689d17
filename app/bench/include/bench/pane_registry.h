#pragma once

#include <bench/pane.h>

#include <shop/things.h>

namespace asleft {

/// The pane that works a kind of step: the one place where a new kind is told to the Bench.
PaneMaker paneFor(StepKind kind);

} // namespace asleft
