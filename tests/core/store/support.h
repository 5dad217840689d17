#pragma once

#include <store/database.h>

#include <gtest/gtest.h>

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

struct sqlite3;

namespace asleft {

/// Owns a folder of its own, and fails on any warning Qt logs meanwhile.
class FolderTest : public ::testing::Test {
public:
    FolderTest();
    ~FolderTest() override;
    FolderTest(const FolderTest &) = delete;
    FolderTest &operator=(const FolderTest &) = delete;

protected:
    [[nodiscard]] std::string inFolder(const std::string &name) const { return (m_folder / name).string(); }
    [[nodiscard]] std::vector<std::string> filesInFolder() const;

private:
    std::filesystem::path m_folder;
};

/// A folder with a new garage in it.
class GarageTest : public FolderTest {
protected:
    void SetUp() override;
    /// Closes the garage and opens it again.
    void reopen();

    std::string path = inFolder("shop.asleft");
    std::unique_ptr<Database> garage;
};

/// A plain SQLite connection, as another program would open it.
class Raw {
public:
    explicit Raw(const std::string &path);
    ~Raw();
    Raw(const Raw &) = delete;
    Raw &operator=(const Raw &) = delete;

    /// SQLite's extended result code.
    int run(const std::string &sql);
    /// The first column of the first row, as text; empty if there is none.
    std::string text(const std::string &sql);

private:
    sqlite3 *m_handle = nullptr;
};

/// Runs `work` in a transaction of its own and commits it, expecting both to succeed.
template <class Work>
auto committed(Database &database, Work work)
{
    auto transaction = Transaction::begin(database);
    if (!transaction)
        throw std::runtime_error("no transaction");
    auto result = work(*transaction);
    if (!result)
        throw std::runtime_error("a write was refused: " + (result.error().arguments.empty() ? "" : result.error().arguments.front()));
    if (!transaction->commit())
        throw std::runtime_error("no commit");
    return *std::move(result);
}

/// The same for work that gives nothing.
template <class Work>
void done(Database &database, Work work)
{
    committed(database, [&](Transaction &transaction) { return work(transaction).map([] { return true; }); });
}

std::string bytesOf(const std::string &path);
void writeBytes(const std::string &path, const std::string &bytes);

/// The bytes of a garage that the program of this many schema steps made: the demo garage of its time, and a job "Valves" with acts of
/// every kind there was.
std::string keptGarage(int version);

/// While it lives, a test that runs as root is nobody in particular: root may write anything.
class Nobody {
public:
    Nobody();
    ~Nobody();
    Nobody(const Nobody &) = delete;
    Nobody &operator=(const Nobody &) = delete;

    static constexpr unsigned id = 65534;
    static bool isNeeded();
};

} // namespace asleft
