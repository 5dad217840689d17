#pragma once

#include "connection.h"

#include <shop/acts.h>

namespace asleft::store {

/// Stores what an act says beside the act's own row.
Done writeFact(Connection &connection, ActSeq act, const Fact &fact);

/// Reads what an act of a kind says. Damaged where the rows are not there or say nothing readable.
Result<Fact> readFact(Connection &connection, ActSeq act, std::string_view kind);

/// What is wrong with an act that cannot be read as it was stored.
Error damagedAct(const Connection &connection, ActSeq act);

/// The one row of a fact that stands in one row.
template <class Make>
Result<Fact> onlyRow(Connection &connection, ActSeq act, std::string_view sql, Make make)
{
    auto row = oneRow(connection, sql, values(act), make);
    if (!row)
        return tl::unexpected(row.error());
    if (!*row)
        return tl::unexpected(damagedAct(connection, act));
    return Fact(**std::move(row));
}

} // namespace asleft::store
