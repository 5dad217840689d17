#pragma once

#include "connection.h"

#include <set>
#include <vector>

/// Which acts of other jobs tell how they left an engine. A subject is followed back from its newest act to the first in force that says
/// how it was left; older ones make no difference, however many there are. The acts themselves are read and judged elsewhere.
namespace asleft::store {

Result<std::set<std::int64_t>> newestCrank(Connection &connection, EngineId engine, JobId except);
/// Crank acts after `last`, and what was withdrawn of any since.
Result<std::set<std::int64_t>> crankSince(Connection &connection, EngineId engine, JobId except, ActSeq last);
Result<std::set<std::int64_t>> newestOfPoints(Connection &connection, const std::vector<PointId> &points, JobId except);

} // namespace asleft::store
