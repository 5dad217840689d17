#pragma once

#include <work/job_book.h>

namespace asleft {

/// Stores the proposed plan with a job that sets valves, from its first session on: so a newer program does not reshuffle half a job. If it
/// cannot be stored now, it is tried again the next time valves are shown, and the next act says what is wrong.
void keepPlan(JobBook &book);

} // namespace asleft
