#pragma once

#include "dialect.h"

#include <base/result.h>

namespace asleft::store {

class Connection;

/// Replaces a rule of a table without touching its rows. SQLite has no ALTER TABLE for it; rebuilding the table would take minutes for
/// a journal of a million acts, and every table that refers to it would have to be let go meanwhile. For changes that leave the stored
/// rows as they are, SQLite describes this way instead (sqlite.org/lang_altertable.html, section 7, the second of its procedures): the
/// text of the table is edited where it is stored, and the schema's version raised, so that every connection reads it anew.
/// Refuses, having changed nothing, where the rule does not stand in the table exactly once; and, spoiling the transaction, where
/// what comes out is not the same table with other rules. \pre in a transaction
Done widen(Connection &connection, const Widening &widening);

} // namespace asleft::store
