#include "sample.h"
#include "support.h"

#include "connection.h"

#include <store/journal.h>

#include <sqlite3.h>

#include <chrono>
#include <future>

namespace asleft {
namespace connection_tests {

using store::Internals;

class Connected : public GarageTest {
protected:
    store::Connection &connection() { return Internals::of(*garage); }

    static Done insertPart(Transaction &transaction, const std::string &name)
    {
        return insertVehicle(transaction, newVehicle(name)).map([](VehicleId) {});
    }
};

TEST_F(Connected, HasEveryPragmaItAskedFor)
{
    for (const bool opened : {false, true}) {
        if (opened)
            reopen();
        EXPECT_EQ(connection().pragmaText("journal_mode").value(), "wal");
        EXPECT_EQ(connection().pragmaNumber("synchronous").value(), 2);
        EXPECT_EQ(connection().pragmaNumber("foreign_keys").value(), 1);
        EXPECT_EQ(connection().pragmaNumber("trusted_schema").value(), 0);
        EXPECT_EQ(connection().pragmaNumber("cell_size_check").value(), 1);
        EXPECT_EQ(connection().pragmaNumber("busy_timeout").value(), 3000);
        EXPECT_EQ(connection().pragmaNumber("application_id").value(), 0x41736c66);
    }
    EXPECT_FALSE(connection().pragmaText("no_such_pragma")) << "a pragma nobody knows is not taken for one";
}

TEST_F(Connected, TakesATypoInDoubleQuotesForATypo)
{
    const Done done = connection().run("SELECT \"nmae\" FROM vehicle");
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().kind, ErrorKind::Database);
}

/// Reads, then writes, in one transaction, over and over; gives how often that went well.
int readAndWrite(const std::string &path, int times)
{
    const auto station = Database::open(path).value();
    int good = 0;
    for (int count = 0; count < times; ++count) {
        auto transaction = Transaction::begin(*station);
        if (transaction && vehicles(*station) && insertVehicle(*transaction, newVehicle("a")) && transaction->commit())
            ++good;
    }
    return good;
}

TEST_F(Connected, LetsTwoSeatsReadAndThenWriteAtTheSameTime)
{
    constexpr int times = 150;
    auto theirs = std::async(std::launch::async, [&] { return readAndWrite(path, times); });
    EXPECT_EQ(readAndWrite(path, times), times);
    EXPECT_EQ(theirs.get(), times);
    EXPECT_EQ(vehicles(*garage).value().size(), 2U * times);
}

TEST_F(Connected, WaitsForAnotherSeatAndThenSaysSo)
{
    auto other = Database::open(path).value();
    const auto theirs = Transaction::begin(*other);
    ASSERT_TRUE(theirs);
    const auto start = std::chrono::steady_clock::now();
    const auto ours = Transaction::begin(*garage);
    const auto waited = std::chrono::steady_clock::now() - start;
    ASSERT_FALSE(ours);
    EXPECT_EQ(ours.error(), (Error{ErrorKind::GarageBusy, {path}}));
    EXPECT_GT(waited, std::chrono::seconds(2));
    EXPECT_TRUE(vehicles(*garage)) << "reading goes on";
}

TEST_F(Connected, TakesTheWriteLockAgainOnceItIsFree)
{
    auto other = Database::open(path).value();
    {
        const auto theirs = Transaction::begin(*other);
        ASSERT_TRUE(theirs);
    }
    EXPECT_TRUE(Transaction::begin(*garage));
    EXPECT_TRUE(Transaction::begin(*other)) << "the one before was rolled back";
}

TEST_F(Connected, HandsATransactionOnWhenItIsMoved)
{
    auto begun = Transaction::begin(*garage);
    ASSERT_TRUE(begun);
    Transaction moved = *std::move(begun);
    begun = fail(ErrorKind::Database);
    ASSERT_TRUE(insertPart(moved, "a"));
    EXPECT_TRUE(moved.commit());
    EXPECT_EQ(vehicles(*garage).value().size(), 1U);
}

TEST_F(Connected, SeesThatAnotherSeatWrote)
{
    auto other = Database::open(path).value();
    const auto before = garage->dataVersion().value();
    EXPECT_EQ(garage->dataVersion().value(), before);
    done(*garage, [](Transaction &transaction) { return insertPart(transaction, "own"); });
    EXPECT_EQ(garage->dataVersion().value(), before) << "its own writes do not count";
    done(*other, [](Transaction &transaction) { return insertPart(transaction, "theirs"); });
    EXPECT_NE(garage->dataVersion().value(), before);
}

TEST_F(Connected, ShowsOneMomentWhileASnapshotLives)
{
    auto other = Database::open(path).value();
    const auto write = [&] { done(*other, [](Transaction &transaction) { return insertPart(transaction, "theirs"); }); };
    {
        const auto snapshot = Snapshot::begin(*garage);
        ASSERT_TRUE(snapshot);
        EXPECT_EQ(vehicles(*garage).value().size(), 0U);
        write();
        EXPECT_EQ(vehicles(*garage).value().size(), 0U);
    }
    EXPECT_EQ(vehicles(*garage).value().size(), 1U);
    write();
    EXPECT_EQ(vehicles(*garage).value().size(), 2U);
}

TEST_F(Connected, DoesNotAcknowledgeIntoAFileThatWasRenamed)
{
    std::filesystem::rename(path, path + ".old");
    auto transaction = Transaction::begin(*garage);
    ASSERT_TRUE(transaction && insertPart(*transaction, "a"));
    const Done done = transaction->commit();
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error(), (Error{ErrorKind::GarageMoved, {path}}));
    std::filesystem::rename(path + ".old", path);
    EXPECT_EQ(vehicles(*garage).value().size(), 0U);
    EXPECT_TRUE(Transaction::begin(*garage).value().commit()) << "moved back, all is well again";
}

TEST_F(Connected, DoesNotAcknowledgeIntoAFileThatWasReplaced)
{
    std::filesystem::copy_file(path, path + ".new");
    std::filesystem::rename(path + ".new", path);
    auto transaction = Transaction::begin(*garage);
    ASSERT_TRUE(transaction && insertPart(*transaction, "a"));
    EXPECT_EQ(transaction->commit().error().kind, ErrorKind::GarageMoved);
}

TEST_F(Connected, DoesNotAcknowledgeIntoALogThatWasRemoved)
{
    std::filesystem::remove(path + "-wal");
    auto transaction = Transaction::begin(*garage);
    ASSERT_TRUE(transaction && insertPart(*transaction, "a"));
    EXPECT_EQ(transaction->commit().error().kind, ErrorKind::GarageMoved);
}

TEST_F(Connected, ReportsAnErrorInTheMiddleOfAScan)
{
    done(*garage, [](Transaction &transaction) {
        Done all;
        for (int count = 0; all && count < 3; ++count)
            all = insertPart(transaction, "a");
        return all;
    });
    int rows = 0;
    // The third row is the first that cannot be computed.
    const Done done = connection().read("SELECT abs(CASE id WHEN 3 THEN -9223372036854775808 ELSE id END) FROM vehicle ORDER BY id", {},
                                        [&](store::Row &) { ++rows; });
    EXPECT_EQ(rows, 2);
    EXPECT_FALSE(done);
}

TEST_F(Connected, CallsARowUnreadThatHoldsSomethingElse)
{
    const auto read = [&](const std::string &sql) {
        return store::allRows(connection(), sql, {}, [](store::Row &row) { return row.number(); });
    };
    EXPECT_EQ(read("SELECT 7 UNION ALL SELECT 8").value(), (std::vector<std::int64_t>{7, 8}));
    EXPECT_EQ(read("SELECT NULL").error().kind, ErrorKind::Damaged);
    EXPECT_EQ(read("SELECT '7'").error().kind, ErrorKind::Damaged);
    EXPECT_EQ(read("SELECT NULL UNION ALL SELECT 7").error().kind, ErrorKind::Damaged) << "a good row after it changes nothing";
    const auto sideways = store::allRows(connection(), "SELECT 'sideways'", {}, [](store::Row &row) { return row.word<Phase>(); });
    EXPECT_EQ(sideways.error().kind, ErrorKind::Damaged);
    const auto adjuster = [&](const std::string &sql) {
        return store::allRows(connection(), sql, {}, [](store::Row &row) { return row.adjuster(); });
    };
    EXPECT_EQ(adjuster("SELECT 3, 'exhaust_bridge_2'").value().front(),
              (AdjusterRef{Cylinder{3}, Side::Exhaust, PointKind::BridgeScrew, 1}));
    EXPECT_EQ(adjuster("SELECT 3, 'exhaust_bridge_3'").error().kind, ErrorKind::Damaged);
    EXPECT_EQ(adjuster("SELECT NULL, 'exhaust'").error().kind, ErrorKind::Damaged);
}

TEST_F(Connected, SaysWhichKindOfDamageItFound)
{
    done(*garage, [](Transaction &transaction) {
        Done all;
        for (int count = 0; all && count < 2000; ++count)
            all = insertPart(transaction, "a name that fills the page");
        return all;
    });
    garage.reset();
    const std::string root = Raw(path).text("SELECT rootpage FROM sqlite_schema WHERE name = 'vehicle'");
    std::string bytes = bytesOf(path);
    bytes.replace((std::stoul(root) - 1) * 4096, 4096, 4096, '\xa5');
    writeBytes(path, bytes);
    reopen();
    EXPECT_EQ(vehicles(*garage).error().kind, ErrorKind::Damaged);
    EXPECT_EQ(garage->check().error().kind, ErrorKind::Damaged);
}

TEST_F(Connected, FindsLinksThatPointNowhere)
{
    storeSample(*garage);
    EXPECT_TRUE(garage->check());
    EXPECT_EQ(Raw(path).run("PRAGMA foreign_keys = OFF; DELETE FROM vehicle"), SQLITE_OK);
    EXPECT_EQ(garage->check().error().kind, ErrorKind::Damaged);
}

} // namespace connection_tests
} // namespace asleft
