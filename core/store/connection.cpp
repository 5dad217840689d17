#include "connection.h"

#include "errors.h"

#include <QSqlDriver>
#include <QSqlError>
#include <QSqlResult>
#include <QUuid>

#include <sqlite3.h>

#include <cassert>

namespace asleft::store {
namespace {

/// How long to wait for another computer's write, in milliseconds. Writes are short; whoever waits longer is told.
constexpr int patience = 3000;

/// A row of a statement that Qt has prepared and run. It is read where it lies: Qt would make a QVariant of every column of every row,
/// which takes several times as long as all the rest of opening a job.
class StatementRow final : public Row {
public:
    explicit StatementRow(const QSqlQuery &query) : m_statement(statementOf(query)) {}

    [[nodiscard]] bool isThere() const { return sqlite3_data_count(m_statement) > 0; }
    /// Steps on; says what went wrong, if anything did.
    int step()
    {
        startAgain();
        const int code = sqlite3_step(m_statement);
        return code == SQLITE_ROW || code == SQLITE_DONE ? SQLITE_OK : code;
    }

private:
    static sqlite3_stmt *statementOf(const QSqlQuery &query)
    {
        const QVariant handle = query.result()->handle();
        return *static_cast<sqlite3_stmt *const *>(handle.constData());
    }

    [[nodiscard]] Holds holds(int column) const override
    {
        switch (sqlite3_column_type(m_statement, column)) {
        case SQLITE_NULL: return Holds::Nothing;
        case SQLITE_INTEGER: return Holds::Number;
        case SQLITE_FLOAT: return Holds::Real;
        case SQLITE_TEXT: return Holds::Text;
        default: return Holds::Other;
        }
    }
    [[nodiscard]] std::int64_t numberIn(int column) const override { return sqlite3_column_int64(m_statement, column); }
    [[nodiscard]] double realIn(int column) const override { return sqlite3_column_double(m_statement, column); }
    [[nodiscard]] std::string textIn(int column) const override
    {
        const auto *bytes = reinterpret_cast<const char *>(sqlite3_column_text(m_statement, column));
        std::string text(bytes, static_cast<std::size_t>(sqlite3_column_bytes(m_statement, column)));
        return isPlain(text) ? text : QString::fromStdString(text).toStdString();
    }

    sqlite3_stmt *m_statement;
};

/// Keeps a statement from holding its read lock after its rows were taken.
class Finishing {
public:
    explicit Finishing(QSqlQuery &query) : m_query(query) {}
    ~Finishing() { m_query.finish(); }
    Finishing(const Finishing &) = delete;
    Finishing &operator=(const Finishing &) = delete;

private:
    QSqlQuery &m_query;
};

QString sqlText(std::string_view sql)
{
    return QString::fromUtf8(sql.data(), static_cast<qsizetype>(sql.size()));
}

/// SQLite would otherwise make a missing file, and call an unwritable one open.
constexpr const char *writing = "mode=rw";

QString uriOf(const std::string &path, const char *parameters)
{
    const QByteArray encoded = QByteArray::fromStdString(path).toPercentEncoding("/");
    return QStringLiteral("file://%1?%2").arg(QString::fromLatin1(encoded), QString::fromLatin1(parameters));
}

/// How often a garage that changes while it is being opened for reading is looked at again.
constexpr int attempts = 5;

} // namespace

struct Connection::Statement {
    explicit Statement(const QSqlDatabase &database) : query(database) {}
    QSqlQuery query;
};

Connection::Connection(std::string path)
    : m_path(std::move(path)), m_name(QUuid::createUuid().toString()),
      m_database(QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_name))
{
}

Connection::~Connection()
{
    if (m_inTransaction)
        rollback();
    disconnect();
    m_database = {};
    QSqlDatabase::removeDatabase(m_name);
}

void Connection::disconnect()
{
    // Qt complains about, and leaks, a connection of which a statement or a copy is left.
    m_statements.clear();
    m_database.close();
    m_handle = nullptr;
}

Result<std::unique_ptr<Connection>> Connection::open(const std::string &path)
{
    std::unique_ptr<Connection> connection(new Connection(path));
    if (auto connected = connection->connect(); !connected)
        return tl::unexpected(connected.error());
    return connection;
}

Result<std::unique_ptr<Connection>> Connection::openForReading(const std::string &path)
{
    std::unique_ptr<Connection> connection(new Connection(path));
    if (auto connected = connection->connectForReading(); !connected)
        return tl::unexpected(connected.error());
    return connection;
}

Done Connection::connectForReading()
{
    for (int attempt = 0; attempt < attempts; ++attempt) {
        auto door = ReadingDoor::to(m_path);
        if (!door)
            return tl::unexpected(door.error());
        disconnect();
        m_door = *std::move(door);
        ++m_timesConnected;
        // Only reading shows whether the log and its index can be had.
        const Done connected = connect().and_then([this] { return pragmaNumber("schema_version"); }).map([](std::int64_t) {});
        if (!m_door->isStale())
            return connected;
    }
    disconnect();
    return fail(ErrorKind::GarageBusy, m_path);
}

Done Connection::connect()
{
    m_database.setDatabaseName(m_door ? uriOf(m_door->opens(), m_door->parameters()) : uriOf(m_path, writing));
    m_database.setConnectOptions(QStringLiteral("QSQLITE_OPEN_URI;QSQLITE_BUSY_TIMEOUT=%1").arg(patience));
    if (!m_database.open())
        return failed(m_database.lastError());

    const QVariant handle = m_database.driver()->handle();
    assert(qstrcmp(handle.typeName(), "sqlite3*") == 0);
    m_handle = *static_cast<sqlite3 *const *>(handle.constData());
    return setUp();
}

Done Connection::setUp()
{
    if (!readOnly() && sqlite3_db_readonly(m_handle, "main") != 0)
        return fail(ErrorKind::GarageReadOnly, m_path);
    // A misspelt column in double quotes would otherwise be taken for a text.
    sqlite3_db_config(m_handle, SQLITE_DBCONFIG_DQS_DML, 0, nullptr);
    sqlite3_db_config(m_handle, SQLITE_DBCONFIG_DQS_DDL, 0, nullptr);
    sqlite3_db_config(m_handle, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);

    const struct {
        const char *pragma, *value, *reads;
    } demanded[] = {
        {"foreign_keys", "ON", "1"},
        {"trusted_schema", "OFF", "0"},
        {"cell_size_check", "ON", "1"},
        {"synchronous", "FULL", "2"},
        {"query_only", readOnly() ? "ON" : "OFF", readOnly() ? "1" : "0"},
    };
    for (const auto &[pragma, value, reads] : demanded)
        if (auto done = demand(pragma, value, reads); !done)
            return done;
    return {};
}

Done Connection::demand(const std::string &pragma, const std::string &value, const std::string &reads)
{
    if (auto done = runOnce("PRAGMA " + pragma + " = " + value); !done)
        return done;
    const auto read = pragmaText(pragma);
    if (!read)
        return tl::unexpected(read.error());
    // SQLite takes a pragma or a value it does not know without a word.
    if (*read != reads)
        return fail(ErrorKind::Database, pragma + " = " + *read);
    return {};
}

Done Connection::writeAhead()
{
    return demand("journal_mode", "WAL", "wal");
}

Result<Connection::Statement *> Connection::statement(std::string_view sql, const QVariantList &values)
{
    auto &kept = m_statements[std::string(sql)];
    if (!kept) {
        auto made = std::make_unique<Statement>(m_database);
        made->query.setForwardOnly(true);
        if (!made->query.prepare(sqlText(sql)))
            return failed(made->query.lastError());
        kept = std::move(made);
    }
    assert(!kept->query.isActive() && "a statement was run inside itself");
    for (int place = 0; place < values.size(); ++place)
        kept->query.bindValue(place, values.at(place));
    if (!kept->query.exec())
        return failed(kept->query.lastError());
    return kept.get();
}

tl::unexpected<Error> Connection::failed(const QSqlError &error)
{
    return refuse(errorFrom(error, m_path));
}

tl::unexpected<Error> Connection::refuse(Error what)
{
    if (m_inTransaction && !m_failure)
        m_failure = what;
    return tl::unexpected(std::move(what));
}

Done Connection::run(std::string_view sql, const QVariantList &values)
{
    return read(sql, values, [](Row &) {});
}

Result<std::optional<std::int64_t>> Connection::insert(std::string_view sql, const QVariantList &values)
{
    std::optional<std::int64_t> key;
    const Done done = read(sql, values, [&](Row &row) { key = row.number(); });
    if (!done)
        return tl::unexpected(done.error());
    return key;
}

Result<std::optional<std::int64_t>> Connection::add(std::string_view sql, const QVariantList &values)
{
    if (m_failure)
        return tl::unexpected(*m_failure);
    const auto ready = statement(sql, values);
    if (!ready)
        return tl::unexpected(ready.error());
    QSqlQuery &query = (*ready)->query;
    const Finishing finishing(query);
    return query.numRowsAffected() > 0 ? std::optional<std::int64_t>(query.lastInsertId().toLongLong()) : std::nullopt;
}

Done Connection::read(std::string_view sql, const QVariantList &values, const std::function<void(Row &)> &take)
{
    // SQLite may have rolled back by itself: what came after would be committed piece by piece.
    if (m_failure)
        return tl::unexpected(*m_failure);
    const auto ready = statement(sql, values);
    if (!ready)
        return tl::unexpected(ready.error());
    QSqlQuery &query = (*ready)->query;
    const Finishing finishing(query);
    StatementRow row(query);
    while (row.isThere()) {
        take(row);
        if (row.step() != SQLITE_OK)
            return refuse(errorFrom(sqlite3_extended_errcode(m_handle), m_path, sqlite3_errmsg(m_handle)));
    }
    return {};
}

Done Connection::runOnce(const std::string &sql)
{
    if (m_failure)
        return tl::unexpected(*m_failure);
    QSqlQuery query(m_database);
    if (!query.exec(sqlText(sql)))
        return failed(query.lastError());
    // Some pragmas give a row first and write afterwards: who leaves after the row never hears that the write failed.
    while (query.next()) {
    }
    if (query.lastError().isValid())
        return failed(query.lastError());
    return {};
}

Result<std::string> Connection::pragmaText(const std::string &name)
{
    QSqlQuery query(m_database);
    if (!query.exec(sqlText("PRAGMA " + name)))
        return failed(query.lastError());
    std::optional<std::string> first;
    while (query.next())
        if (!first)
            first = query.value(0).toString().toStdString();
    if (query.lastError().isValid())
        return failed(query.lastError());
    if (!first)
        return fail(ErrorKind::Database, name);
    return *first;
}

Result<std::int64_t> Connection::pragmaNumber(const std::string &name)
{
    return pragmaText(name).map([](const std::string &text) { return static_cast<std::int64_t>(std::stoll(text)); });
}

Result<std::int64_t> Connection::dataVersion()
{
    if (m_door && !m_inTransaction && (m_door->isStale() || !m_database.isOpen()))
        if (auto again = connectForReading(); !again)
            return tl::unexpected(again.error());
    // Each connection counts from its own beginning.
    constexpr std::int64_t countsOfOne = 1'000'000'000;
    return pragmaNumber("data_version").map([this](std::int64_t count) { return m_timesConnected * countsOfOne + count; });
}

Done Connection::rememberFiles()
{
    // Reading makes the log file, if it is not there yet.
    if (auto read = pragmaNumber("schema_version"); !read)
        return tl::unexpected(read.error());
    m_file = identityOf(m_path);
    m_log = identityOf(logOf(m_path));
    if (!m_file || !m_log)
        return fail(ErrorKind::GarageMoved, m_path);
    return {};
}

Done Connection::unmoved() const
{
    if (identityOf(m_path) == m_file && identityOf(logOf(m_path)) == m_log)
        return {};
    return fail(ErrorKind::GarageMoved, m_path);
}

Done Connection::begin()
{
    assert(!m_inTransaction && "one transaction at a time");
    if (readOnly())
        return fail(ErrorKind::GarageReadOnly, m_path);
    // A deferred BEGIN that reads before it writes fails at once when another computer has written in between.
    if (auto begun = run("BEGIN IMMEDIATE"); !begun)
        return begun;
    m_inTransaction = true;
    return {};
}

Done Connection::commit()
{
    assert(m_inTransaction);
    // After a failure run() refuses, with what failed.
    Done done = unmoved().and_then([this] { return run("COMMIT"); });
    if (!done) {
        rollback();
        return done;
    }
    m_inTransaction = false;
    // Moved in the meantime: it is stored, but not where anyone will look for it.
    return unmoved();
}

void Connection::rollback()
{
    m_failure.reset();
    // After some failures SQLite has rolled back already and says so; that is no failure of ours.
    (void)run("ROLLBACK");
    m_failure.reset();
    m_inTransaction = false;
}

Done Connection::beginSnapshot()
{
    assert(!m_inTransaction && "a transaction is of one moment already");
    if (auto begun = run("BEGIN"); !begun)
        return begun;
    m_inTransaction = true;
    return {};
}

} // namespace asleft::store
