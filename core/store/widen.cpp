#include "widen.h"

#include "connection.h"

#include <sqlite3.h>

#include <algorithm>

namespace asleft::store {
namespace {

/// While it lives, the schema's own table may be written to. Neither switch belongs to the transaction.
class SchemaUnlocked {
public:
    explicit SchemaUnlocked(sqlite3 *handle) : m_handle(handle) { set(1); }
    ~SchemaUnlocked() { set(0); }
    SchemaUnlocked(const SchemaUnlocked &) = delete;
    SchemaUnlocked &operator=(const SchemaUnlocked &) = delete;

private:
    void set(int unlocked) const
    {
        sqlite3_db_config(m_handle, SQLITE_DBCONFIG_DEFENSIVE, 1 - unlocked, nullptr);
        sqlite3_db_config(m_handle, SQLITE_DBCONFIG_WRITABLE_SCHEMA, unlocked, nullptr);
    }

    sqlite3 *m_handle;
};

struct TableColumn {
    std::string text; ///< its name, type and place in the key
    bool needed;      ///< never NULL
};

/// What a table is made of, and how that is stored.
struct TableText {
    std::string sql;
    std::vector<TableColumn> columns;
};

Result<TableText> textOf(Connection &connection, const std::string &table)
{
    auto sql = oneRow(connection, "SELECT sql FROM sqlite_schema WHERE type = 'table' AND name = ?", values(table),
                      [](Row &row) { return row.text(); });
    if (!sql)
        return tl::unexpected(sql.error());
    auto columns = allRows(connection, R"(SELECT name || ' ' || type || ' ' || pk, "notnull" FROM pragma_table_xinfo(?))", values(table),
                           [](Row &row) {
                               return TableColumn{row.text(), row.flag()};
                           });
    if (!columns)
        return tl::unexpected(columns.error());
    return TableText{sql->value_or(""), *std::move(columns)};
}

/// Whether the rows of the one can stand in the other as they are: a column may become one that may be NULL, not the other way round.
bool holdsTheSame(const std::vector<TableColumn> &before, const std::vector<TableColumn> &after)
{
    return std::ranges::equal(
        before, after, [](const TableColumn &old, const TableColumn &now) { return old.text == now.text && (old.needed || !now.needed); });
}

/// Nothing where the rule does not stand there exactly once.
std::optional<std::string> replaced(const std::string &sql, const Widening &widening)
{
    const std::size_t place = sql.find(widening.rule);
    if (widening.rule.empty() || place == sql.npos || sql.find(widening.rule, place + 1) != sql.npos)
        return std::nullopt;
    return std::string(sql).replace(place, widening.rule.size(), widening.wider);
}

Done store(Connection &connection, const std::string &table, const std::string &sql)
{
    const auto version = connection.pragmaNumber("schema_version");
    if (!version)
        return tl::unexpected(version.error());
    const SchemaUnlocked unlocked(connection.handle());
    return connection.run("UPDATE sqlite_schema SET sql = ? WHERE type = 'table' AND name = ?", values(sql, table))
        .and_then([&] { return connection.runOnce("PRAGMA schema_version = " + std::to_string(*version + 1)); })
        // This connection too reads the schema again; it would refuse here what it cannot read.
        .and_then([&] { return connection.runOnce("PRAGMA writable_schema = RESET"); });
}

/// Of a rule that cannot be read SQLite says that the schema is malformed, as it would of a damaged file. This one is our own.
tl::unexpected<Error> notToBeRead(const Error &error)
{
    return error.kind == ErrorKind::Damaged ? fail(ErrorKind::Database, error.arguments.back()) : tl::unexpected(error);
}

} // namespace

Done widen(Connection &connection, const Widening &widening)
{
    const auto before = textOf(connection, widening.table);
    if (!before)
        return tl::unexpected(before.error());
    const auto sql = replaced(before->sql, widening);
    if (!sql)
        return connection.refuse({ErrorKind::Database, {"table " + widening.table + " has not once: " + widening.rule}});
    if (const auto stored = store(connection, widening.table, *sql); !stored)
        return notToBeRead(stored.error());
    const auto after = textOf(connection, widening.table);
    if (!after)
        return notToBeRead(after.error());
    if (after->sql != *sql || !holdsTheSame(before->columns, after->columns))
        return connection.refuse({ErrorKind::Database, {"table " + widening.table + " is another with: " + widening.wider}});
    return {};
}

} // namespace asleft::store
