#pragma once

#include "reading_only.h"
#include "values.h"

#include <base/result.h>
#include <store/database.h>

#include <QSqlDatabase>
#include <QSqlQuery>

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <unordered_map>
#include <vector>

struct sqlite3;

namespace asleft::store {

/// One connection of one thread to one garage file, with its statements prepared once each. The only place that talks to Qt Sql.
class Connection {
public:
    /// Opens a file that exists, with every pragma set and read back; refuses one it may only read. Writes nothing, nor looks what it is.
    static Result<std::unique_ptr<Connection>> open(const std::string &path);
    /// Opens a file that exists, with everything committed to it, for reading only; writes nothing, neither to the file nor beside it.
    static Result<std::unique_ptr<Connection>> openForReading(const std::string &path);

    ~Connection();
    Connection(const Connection &) = delete;
    Connection &operator=(const Connection &) = delete;

    [[nodiscard]] const std::string &path() const { return m_path; }
    [[nodiscard]] bool readOnly() const { return m_door.has_value(); }
    [[nodiscard]] sqlite3 *handle() const { return m_handle; }

    /// Runs a statement that gives no rows.
    Done run(std::string_view sql, const QVariantList &values = {});
    /// Runs an INSERT … RETURNING that gives at most one number. The row is stored only once the transaction is committed.
    Result<std::optional<std::int64_t>> insert(std::string_view sql, const QVariantList &values);
    /// Runs an INSERT of one row and gives its key; nothing where it was there already and was let be. Unlike RETURNING, it makes no table
    /// for the one number.
    Result<std::optional<std::int64_t>> add(std::string_view sql, const QVariantList &values);
    /// Hands every row to `take`, which must not run the same statement.
    Done read(std::string_view sql, const QVariantList &values, const std::function<void(Row &)> &take);
    /// Runs a statement once, without keeping it: schema steps and pragmas.
    Done runOnce(const std::string &sql);
    /// A pragma's value.
    Result<std::int64_t> pragmaNumber(const std::string &name);
    Result<std::string> pragmaText(const std::string &name);
    /// Changes whenever another connection has committed something. Of one that only reads and cannot see that happen, it looks whether
    /// the files have changed, and then opens them anew.
    Result<std::int64_t> dataVersion();

    /// Puts the file into write-ahead mode: nothing that was committed is lost when the power goes. Writes to a file that is not.
    Done writeAhead();
    /// From here on a file in another place than where it was opened is noticed.
    Done rememberFiles();

    /// Takes the write lock at once; GarageReadOnly where nothing may be written.
    Done begin();
    /// A transaction in which a write failed cannot be committed any more, and says why it failed.
    Done commit();
    void rollback();
    /// A write that the caller found to have failed spoils the transaction as well.
    tl::unexpected<Error> refuse(Error what);

    /// For readers only.
    Done beginSnapshot();
    void endSnapshot() { rollback(); }

private:
    struct Statement;

    explicit Connection(std::string path);
    Done connect();
    Done connectForReading();
    void disconnect();
    Done setUp();
    Done demand(const std::string &pragma, const std::string &value, const std::string &reads);
    Result<Statement *> statement(std::string_view sql, const QVariantList &values);
    [[nodiscard]] Done unmoved() const;
    tl::unexpected<Error> failed(const QSqlError &error);

    std::string m_path;
    std::optional<ReadingDoor> m_door; ///< of one that may only be read
    std::int64_t m_timesConnected = 0; ///< for reading
    QString m_name;                    ///< of the connection within Qt
    QSqlDatabase m_database;
    sqlite3 *m_handle = nullptr;
    std::unordered_map<std::string, std::unique_ptr<Statement>> m_statements;
    std::optional<FileIdentity> m_file;
    std::optional<FileIdentity> m_log;
    bool m_inTransaction = false;
    std::optional<Error> m_failure; ///< what spoilt the transaction in hand
};

/// How the sources of this room reach the connection behind the public classes.
class Internals {
public:
    static Connection &of(Database &database) { return *database.m_connection; }
    static Connection &of(Transaction &transaction) { return of(transaction.database()); }
    static std::unique_ptr<Database> wrap(std::unique_ptr<Connection> connection)
    {
        return std::unique_ptr<Database>(new Database(std::move(connection)));
    }
};

/// All rows, each made by `make`. A row whose columns hold something else than they should is Damaged.
template <class Make>
auto allRows(Connection &connection, std::string_view sql, const QVariantList &values, Make make)
    -> Result<std::vector<std::invoke_result_t<Make, Row &>>>
{
    std::vector<std::invoke_result_t<Make, Row &>> made;
    bool unread = false;
    const Done done = connection.read(sql, values, [&](Row &row) {
        made.push_back(make(row));
        unread |= row.unread();
    });
    if (!done)
        return tl::unexpected(done.error());
    if (unread)
        return fail(ErrorKind::Damaged, connection.path(), std::string(sql));
    return made;
}

/// The one row, if there is one.
template <class Make>
auto oneRow(Connection &connection, std::string_view sql, const QVariantList &values, Make make)
    -> Result<std::optional<std::invoke_result_t<Make, Row &>>>
{
    auto rows = allRows(connection, sql, values, make);
    if (!rows)
        return tl::unexpected(rows.error());
    std::optional<std::invoke_result_t<Make, Row &>> first;
    if (!rows->empty())
        first.emplace(std::move(rows->front()));
    return first;
}

/// Inserts a row and gives its key.
template <class Id>
Result<Id> insertRow(Connection &connection, std::string_view sql, const QVariantList &values)
{
    const auto key = connection.insert(sql, values);
    if (!key)
        return tl::unexpected(key.error());
    if (!*key)
        return connection.refuse({ErrorKind::Database, {std::string(sql)}});
    return Id(**key);
}

} // namespace asleft::store
