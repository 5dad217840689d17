#include "rows.h"

#include "dialect.h"

#include <algorithm>

namespace asleft::store {

std::string placeholdersFor(std::string_view names)
{
    std::string placeholders = "?";
    for (auto more = std::ranges::count(names, ','); more > 0; --more)
        placeholders += ", ?";
    return placeholders;
}

std::string assignmentsOf(std::string_view names)
{
    std::string assignments;
    for (const char letter : names) {
        if (letter == ',')
            assignments += " = ?";
        assignments += letter;
    }
    return assignments + " = ?";
}

std::string insertInto(std::string_view table, std::string_view names)
{
    return "INSERT INTO " + std::string(table) + " (" + std::string(names) + ") VALUES (" + placeholdersFor(names) + ")";
}

Owners::Owners(std::string key, const std::vector<std::int64_t> &ids) : m_key(std::move(key)), m_ids{listed(ids)} {}

Done Owners::read(Connection &connection, std::string_view table, const std::string &columns, const std::string &by,
                  const std::function<void(Row &)> &take) const
{
    return connection.read("SELECT " + columns + " FROM " + rowsOfListed(table, m_key) + " ORDER BY " + by, m_ids, take);
}

} // namespace asleft::store
