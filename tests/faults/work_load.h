#pragma once

#include "sample.h"
#include "steps.h"
#include "support.h"

#include <store/journal.h>
#include <store/things.h>

#include <cstdlib>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace asleft::faults {

/// Whether there is time for the long form.
bool isLong();

/// What was promised to whoever did it: the uid and the place in the journal.
struct Acknowledged {
    Uid uid;
    ActSeq seq;
};

/// Acts of every kind, each with its own uid, in transactions of one to three.
std::vector<std::vector<NewAct>> transactionsOf(const Sample &sample, ActSeq reading);

/// Appends the acts of one transaction; gives what may be acknowledged, which is nothing after any failure.
std::vector<Acknowledged> appendAll(Database &database, const std::vector<NewAct> &acts);

/// Opens the garage and appends everything, going on after failures as a person would.
std::vector<Acknowledged> workOn(const std::string &path, const std::vector<std::vector<NewAct>> &transactions);

/// The file is sound, all that was acknowledged is there, no act is there in part, and doing all of it again is harmless.
void expectSound(const std::string &path, const Sample &sample, const std::vector<std::vector<NewAct>> &transactions,
                 const std::vector<Acknowledged> &acknowledged);

/// Every act of the job is read, and no other one is taken for its own.
bool holdsOwnActs(Database &database, const JobRow &row);

/// The program's own schema steps with one more, which rebuilds a table and fills it.
std::vector<store::SchemaStep> stepsWithOneMore();

} // namespace asleft::faults
