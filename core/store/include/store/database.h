#pragma once

#include <base/result.h>

#include <cstdint>
#include <memory>
#include <string>

namespace asleft {

namespace store {
class Connection;
class Internals;
} // namespace store

/// One open garage file. Belongs to the thread that opened it. Needs a QCoreApplication to be alive.
class Database {
public:
    /// Makes a new, empty garage. Refuses a path where anything is; a create that fails leaves no file behind.
    static Result<std::unique_ptr<Database>> create(const std::string &path);

    /// Opens a garage and never makes one. An older one is upgraded, after a copy was made beside it; a newer one is refused.
    /// One that may not be written is opened for reading: see readOnly(). What is in its log is then read too; nothing is written, neither
    /// the file nor beside it. An older one that may not be written is refused with GarageReadOnly.
    static Result<std::unique_ptr<Database>> open(const std::string &path);

    ~Database();
    Database(const Database &) = delete;
    Database &operator=(const Database &) = delete;

    /// Absolute, symbolic links resolved.
    [[nodiscard]] const std::string &path() const;
    /// It may only be read: every Transaction is refused with GarageReadOnly.
    [[nodiscard]] bool readOnly() const;
    /// How many schema steps the file has taken.
    [[nodiscard]] Result<std::int64_t> version();

    /// A number that changes whenever another connection, here or in another process, has committed something.
    /// This connection's own commits do not change it. A garage open for reading is looked at anew here when it was written meanwhile.
    [[nodiscard]] Result<std::int64_t> dataVersion();

    /// Whether the file hangs together: its pages, its rows' rules and the links between them. Slow on a large file.
    /// It does not see a changed byte inside a plain column; reading an act does.
    [[nodiscard]] Done check();

private:
    friend class store::Internals; ///< how the sources of this room reach the connection
    explicit Database(std::unique_ptr<store::Connection> connection);

    std::unique_ptr<store::Connection> m_connection;
};

/// Everything that writes takes one of these, so that nothing can be written outside a transaction. What was written is not to be
/// acknowledged to anyone before commit() has succeeded. Left uncommitted, it is rolled back.
/// One at a time for each Database. \pre the Database outlives it
class Transaction {
public:
    /// Takes the write lock at once and waits a few seconds for it: GarageBusy after that.
    static Result<Transaction> begin(Database &database);

    Transaction(Transaction &&other) noexcept;
    Transaction &operator=(Transaction &&) = delete;
    Transaction(const Transaction &) = delete;
    Transaction &operator=(const Transaction &) = delete;
    ~Transaction();

    /// After anything in it has failed, refuses with that failure and rolls back: no half of anything is kept. Until then everything
    /// else in the transaction fails the same way.
    /// Refuses with GarageMoved when the file or its log were renamed or replaced while open. A commit that fails may still be on
    /// disk when the file is opened again; acts are therefore appended again under their uid, which is harmless.
    /// \pre not committed yet
    [[nodiscard]] Done commit();

    /// For reading what this transaction has written. \pre not committed yet
    [[nodiscard]] Database &database() const { return *m_database; }

private:
    explicit Transaction(Database &database) : m_database(&database) {}

    Database *m_database; ///< nullptr once committed, rolled back or moved from
};

/// While it lives, everything read from the Database is of one moment, whatever others commit meanwhile; it keeps nobody from writing.
/// Not inside a Transaction, which is of one moment already. Keep it short: the log cannot shrink meanwhile.
class Snapshot {
public:
    static Result<Snapshot> begin(Database &database);

    Snapshot(Snapshot &&other) noexcept;
    Snapshot &operator=(Snapshot &&) = delete;
    Snapshot(const Snapshot &) = delete;
    Snapshot &operator=(const Snapshot &) = delete;
    ~Snapshot();

private:
    explicit Snapshot(Database &database) : m_database(&database) {}

    Database *m_database;
};

} // namespace asleft
