#pragma once

#include "connection.h"

#include <shop/acts.h>

namespace asleft::store {

/// The word for what an act says: act.kind.
std::string_view kindOf(const Fact &fact);

/// Stores what an act says beside the act's own row.
Done writeFact(Connection &connection, ActSeq act, const Fact &fact);

/// Reads what acts of one kind say, given by their seq, smallest first: one query for each table. Damaged, naming an act, where the rows
/// are not there or say nothing readable.
Result<std::vector<Fact>> readFacts(Connection &connection, std::string_view kind, const std::vector<ActSeq> &acts);

/// What is wrong with an act that cannot be read as it was stored.
Error damagedAct(const Connection &connection, ActSeq act);

} // namespace asleft::store
