#pragma once

#include "connection.h"

namespace asleft::store {

/// Changes one row by an `UPDATE … RETURNING` of its key; NotFound where there is no such row.
inline Done changeRow(Connection &connection, std::string_view sql, const QVariantList &values, Noun what)
{
    const auto changed = connection.insert(sql, values);
    if (!changed)
        return tl::unexpected(changed.error());
    if (!*changed)
        return connection.refuse({ErrorKind::NotFound, {}, what});
    return {};
}

/// The one row there must be; NotFound where it is not.
template <class Make>
auto foundRow(Connection &connection, std::string_view sql, const QVariantList &values, Make make, Noun what)
    -> Result<std::invoke_result_t<Make, Row &>>
{
    auto row = oneRow(connection, sql, values, make);
    if (!row)
        return tl::unexpected(row.error());
    if (!*row)
        return fail(ErrorKind::NotFound, what);
    return **std::move(row);
}

} // namespace asleft::store
