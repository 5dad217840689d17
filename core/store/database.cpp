#include <store/database.h>
#include <store/things.h>

#include "connection.h"
#include "garage.h"

#include <cassert>

namespace asleft {
namespace {

using store::Internals;

Result<std::unique_ptr<Database>> wrapped(Result<std::unique_ptr<store::Connection>> connection)
{
    if (!connection)
        return tl::unexpected(connection.error());
    return Internals::wrap(*std::move(connection));
}

/// What only finds things faster is made anew where it differs from the journal: nothing else rests on it.
Done mendLastWorked(Database &database)
{
    const auto same = lastWorkedAsActsSay(database);
    if (!same)
        return tl::unexpected(same.error());
    if (*same || database.readOnly())
        return {};
    auto transaction = Transaction::begin(database);
    if (!transaction)
        return tl::unexpected(transaction.error());
    return tellLastWorkedAnew(*transaction).and_then([&] { return transaction->commit(); });
}

} // namespace

Database::Database(std::unique_ptr<store::Connection> connection) : m_connection(std::move(connection)) {}

Database::~Database() = default;

Result<std::unique_ptr<Database>> Database::create(const std::string &path)
{
    return wrapped(store::createGarage(path, store::builtInSteps()));
}

Result<std::unique_ptr<Database>> Database::open(const std::string &path)
{
    return wrapped(store::openGarage(path, store::builtInSteps()));
}

const std::string &Database::path() const
{
    return m_connection->path();
}

bool Database::readOnly() const
{
    return m_connection->readOnly();
}

Result<std::int64_t> Database::version()
{
    return m_connection->pragmaNumber("user_version");
}

Result<std::int64_t> Database::dataVersion()
{
    return m_connection->dataVersion();
}

Done Database::check()
{
    const auto pages = m_connection->pragmaText("quick_check");
    if (!pages)
        return tl::unexpected(pages.error());
    if (*pages != "ok")
        return fail(ErrorKind::Damaged, path(), *pages);
    const auto strays =
        store::allRows(*m_connection, R"(SELECT "table" FROM pragma_foreign_key_check)", {}, [](store::Row &row) { return row.text(); });
    if (!strays)
        return tl::unexpected(strays.error());
    if (!strays->empty())
        return fail(ErrorKind::Damaged, path(), strays->front());
    return mendLastWorked(*this);
}

Result<Transaction> Transaction::begin(Database &database)
{
    if (auto begun = Internals::of(database).begin(); !begun)
        return tl::unexpected(begun.error());
    return Transaction(database);
}

Transaction::Transaction(Transaction &&other) noexcept : m_database(std::exchange(other.m_database, nullptr)) {}

Transaction::~Transaction()
{
    if (m_database != nullptr)
        Internals::of(*m_database).rollback();
}

Done Transaction::commit()
{
    assert(m_database != nullptr && "committed already");
    return Internals::of(*std::exchange(m_database, nullptr)).commit();
}

Result<Snapshot> Snapshot::begin(Database &database)
{
    if (auto begun = Internals::of(database).beginSnapshot(); !begun)
        return tl::unexpected(begun.error());
    return Snapshot(database);
}

Snapshot::Snapshot(Snapshot &&other) noexcept : m_database(std::exchange(other.m_database, nullptr)) {}

Snapshot::~Snapshot()
{
    if (m_database != nullptr)
        Internals::of(*m_database).endSnapshot();
}

} // namespace asleft
