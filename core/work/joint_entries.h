#pragma once

#include <work/job_book.h>

namespace asleft {

/// These numbers, each once, in the order given. Refuses none at all (NothingToLog) and one the joint does not have (FastenerUnknown).
Result<std::vector<int>> fastenersIn(const Joint &joint, const std::vector<int> &fasteners);

/// What a person ticks, as a fact about this revision of the joint, with all the book knows of the wrench. Refuses what JobBook::tick()
/// refuses, but does not ask whether it is the places' turn. \pre the joint is that of the entry
Result<TicksFact> ticksFrom(const TickEntry &entry, const Joint &joint, const JobFrame &frame, std::chrono::sys_days today);

/// Refuses with TickOutOfTurn a place that is not still to be ticked in the pass in hand.
Done inTurn(const TicksFact &ticks, const Joint &joint, const TighteningProgress &progress);

/// How a person found fasteners, as a fact. Refuses what JobBook::loosen() refuses. \pre the joint is that of the entry
Result<LoosenedFact> loosenedFrom(const LoosenEntry &entry, const Joint &joint, const JobFrame &frame);

/// Whether there is something of this kind at a fastener that nobody has accepted. \pre not Unsettled
bool canAccept(AcceptedWhat what, const FastenerState &fastener);

} // namespace asleft
