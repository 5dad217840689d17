#pragma once

#include "connection.h"

#include <shop/acts.h>

namespace asleft::store {

/// Readings of setting points. `place` counts within the act: an act of one reading has only place 0.
Done writeReading(Connection &connection, ActSeq act, std::size_t place, const ReadingFact &fact);
Done writeAllLeft(Connection &connection, ActSeq act, const AllLeftFact &fact);
Result<Fact> readReading(Connection &connection, ActSeq act);
Result<Fact> readAllLeft(Connection &connection, ActSeq act);

} // namespace asleft::store
