#pragma once

#include <work/entries.h>

namespace asleft {

/// These numbers, each once, in the order given. Refuses none at all (NothingToLog) and one the joint does not have (FastenerUnknown).
Result<std::vector<int>> fastenersIn(const Joint &joint, const std::vector<int> &fasteners);

/// What a person ticks, as a fact about this revision of the joint, with all the book knows of the wrench. Refuses what JobBook::tick()
/// refuses, but does not ask whether it is the places' turn. \pre the joint is that of the entry
Result<TicksFact> ticksFrom(const TickEntry &entry, const Joint &joint, const JobFrame &frame, std::chrono::sys_days today);
/// The same with what each of them would be worth.
Result<TicksAsLogged> ticksAsLogged(const TickEntry &entry, const Joint &joint, const JobFrame &frame, std::chrono::sys_days today);

/// Refuses with TickOutOfTurn a place that is not still to be ticked in the pass in hand.
Done inTurn(const TicksFact &ticks, const Joint &joint, const TighteningProgress &progress);

/// How a person found fasteners, as a fact. Refuses what JobBook::loosen() refuses. \pre the joint is that of the entry
Result<Fact> loosenedFrom(const LoosenEntry &entry, const Joint &joint, const JobFrame &frame);

/// How a person says single-use fasteners went in. Refuses what fastenersIn() refuses.
Result<Fact> fittedFrom(const Joint &joint, const std::vector<int> &fasteners, Fitted fitted);

/// Whether all of its fasteners are known to have gone in so. \pre the fact is one of fittedFrom()
bool saidFitted(const Fact &fact, const JointState &state);

/// What a person leaves as it is, with a reason. Refuses what JobBook::acceptJoint() refuses.
Result<Fact> acceptedFrom(const Joint &joint, const JointState &state, AcceptedWhat what, const std::vector<int> &fasteners,
                          std::string_view reason);

/// What a person saw, and where. Refuses what JobBook::noteFinding() refuses.
Result<Fact> findingFrom(const Subject &subject, std::string_view text, const JobState &state);

/// Which tick of a fastener is taken back, with all that came on top of it; nullptr for none.
using TickOf = const TickMade *(*)(const FastenerState &);
/// Takes the tick `first` finds back, and all on top of it; nothing where it finds none.
std::optional<UntickedFact> untickedFrom(const JobState &state, JointId joint, int fastener, TickOf first);

/// The last act in force that speaks of a joint; nullptr for none.
const Act *lastOn(const JobState &state, JointId joint);

} // namespace asleft
