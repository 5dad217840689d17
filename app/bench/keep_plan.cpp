#include "keep_plan.h"

#include <algorithm>

namespace asleft {

void keepPlan(JobBook &book)
{
    const JobState &state = book.state();
    const bool setsValves = std::ranges::any_of(state.frame->job.steps, [](const Step &step) { return step.kind == StepKind::ValveSet; });
    if (setsValves && !state.plan && book.session().who)
        (void)book.choosePlan(book.proposedPlan());
}

} // namespace asleft
