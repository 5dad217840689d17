#include <bench/pane_registry.h>

#include <bench/loosen_pane.h>
#include <bench/step_pane.h>
#include <bench/tighten_pane.h>
#include <bench/valve_pane.h>

namespace asleft {

PaneMaker paneFor(StepKind kind)
{
    switch (kind) {
    case StepKind::Note: return makePane<StepPane>;
    case StepKind::ValveSet: return makePane<ValvePane>;
    case StepKind::Loosen: return makePane<LoosenPane>;
    case StepKind::Tighten: return makePane<TightenPane>;
    }
    return makePane<StepPane>;
}

} // namespace asleft
