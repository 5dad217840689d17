#pragma once

#include <shop/acts.h>
#include <store/database.h>

#include <cstdint>
#include <optional>
#include <vector>

/// The append-only journal of acts. No function changes or removes one, and the file itself refuses to.
/// Every act carries a checksum of all it says; reading one that says something else gives Damaged and its seq.
namespace asleft {

/// Appends one act with its facts. An act whose uid is there already is not stored again: its seq is returned, so that a retry is
/// harmless. The same uid on an act that says something else is refused.
/// \pre the withdrawal is named exactly where the fact is a WithdrawFact
Result<ActSeq> append(Transaction &transaction, const NewAct &act);

/// All acts of a job and, of other jobs, what tells where they left this engine's crank: the newest such act in force, those after it that
/// are not, and what withdraws any of them; by seq.
Result<std::vector<Act>> jobActs(Database &database, JobId job, EngineId engine);

/// The job's acts after `last` and, of other jobs, those since then that moved this engine's crank or withdrew such an act.
Result<std::vector<Act>> actsAfter(Database &database, ActSeq last, JobId job, EngineId engine);

/// What jobs other than `except` left at these setting points: for each the newest act in force that left it and the newest that opened its
/// nut, readings since then, those after them that are not in force, and what withdraws any of them; by seq.
Result<std::vector<Act>> newestAtPoints(Database &database, const std::vector<PointId> &points, JobId except);

/// The seq of the act with this uid, if it is stored.
Result<std::optional<ActSeq>> seqOf(Database &database, const Uid &uid);

/// The seq of the newest act of the whole garage.
Result<std::optional<ActSeq>> newestSeq(Database &database);

/// How many acts a job has.
Result<std::int64_t> countActs(Database &database, JobId job);

} // namespace asleft
