#pragma once

#include <shop/state.h>
#include <work/garage.h>

namespace asleft {

bool isWithdrawal(const Fact &fact);

/// The act that undoing takes back; refuses what JobBook::undo() refuses.
Result<ActSeq> toUndo(const JobState &state, Garage &garage);
/// The undo that is taken back; refuses what JobBook::redo() refuses.
Result<ActSeq> toRedo(const JobState &state, Garage &garage);

} // namespace asleft
