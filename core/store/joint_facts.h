#pragma once

#include "connection.h"

#include <shop/acts.h>

namespace asleft::store {

// What acts on joints say: each a row of its own, with a list of fasteners, ticks or places beside it.

Done writeLoosened(Connection &connection, ActSeq act, const LoosenedFact &fact);
Done writeTicks(Connection &connection, ActSeq act, const TicksFact &fact);
Done writeUnticked(Connection &connection, ActSeq act, const UntickedFact &fact);
Done writeJointBegun(Connection &connection, ActSeq act, const JointBegunFact &fact);
Done writeFitted(Connection &connection, ActSeq act, const FittedFact &fact);
Done writeAccepted(Connection &connection, ActSeq act, const AcceptedFact &fact);
Done writeFinding(Connection &connection, ActSeq act, const FindingFact &fact);

Result<Fact> readLoosened(Connection &connection, ActSeq act);
Result<Fact> readTicks(Connection &connection, ActSeq act);
Result<Fact> readUnticked(Connection &connection, ActSeq act);
Result<Fact> readJointBegun(Connection &connection, ActSeq act);
Result<Fact> readFitted(Connection &connection, ActSeq act);
Result<Fact> readAccepted(Connection &connection, ActSeq act);
Result<Fact> readFinding(Connection &connection, ActSeq act);

} // namespace asleft::store
