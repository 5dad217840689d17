#pragma once

#include "connection.h"

#include <shop/acts.h>

namespace asleft::store {

/// A chosen plan, whole, with its positions and points in their order.
Done writePlan(Connection &connection, ActSeq act, const PlanFact &fact);
Result<Fact> readPlan(Connection &connection, ActSeq act);

} // namespace asleft::store
