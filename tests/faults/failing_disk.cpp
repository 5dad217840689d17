#include "shim.h"
#include "work_load.h"

#include "garage.h"

#include <sqlite3.h>

#include <map>
#include <ostream>
#include <set>

namespace asleft::faults {
namespace {

/// How a disk fails.
struct Failure {
    const char *name;
    bool full;  ///< no room, else an error
    int start;  ///< the first event to fail at in the short form
    bool lasts; ///< from then on, else once
};

std::ostream &operator<<(std::ostream &stream, const Failure &failure)
{
    return stream << failure.name;
}

int codeOf(Change change, bool full)
{
    switch (change) {
    case Change::Write: return full ? SQLITE_FULL : SQLITE_IOERR_WRITE;
    case Change::Sync: return SQLITE_IOERR_FSYNC;
    case Change::Truncate: return SQLITE_IOERR_TRUNCATE;
    case Change::GrowSharedMemory: return full ? SQLITE_IOERR_SHMSIZE : SQLITE_IOERR_SHMMAP;
    case Change::Delete: return SQLITE_IOERR_DELETE;
    }
    return SQLITE_IOERR;
}

class FailingDisk : public FolderTest, public ::testing::WithParamInterface<Failure> {
protected:
    FailingDisk() { install(); }
    ~FailingDisk() override { answerWith({}); }

    /// From the `from`-th event on things fail, once or for good.
    void failFrom(int from)
    {
        answerWith([failure = GetParam(), from](int count, const Event &event) {
            const bool fails = failure.lasts ? count >= from : count == from;
            return fails ? codeOf(event.change, failure.full) : SQLITE_OK;
        });
    }

    /// Runs `work` with the disk failing at its first event, its second, and so on until it runs to its end untouched. The short form
    /// leaves some out, for every failure others.
    template <class Work, class Look>
    void sweep(Work work, Look look)
    {
        int point = isLong() ? 0 : GetParam().start;
        for (bool reached = true; reached; point += isLong() ? 1 : 23) {
            SCOPED_TRACE("failing from event " + std::to_string(point));
            failFrom(point);
            const auto outcome = work();
            reached = events() > point;
            answerWith({});
            look(outcome, reached);
            if (HasFatalFailure())
                return;
        }
        EXPECT_GT(point, 100) << "the layer saw hardly anything";
    }

    void copyBack(const std::string &from, const std::string &to) const
    {
        for (const char *ending : {"-wal", "-shm", "-journal"})
            std::filesystem::remove(to + ending);
        std::filesystem::copy_file(from, to, std::filesystem::copy_options::overwrite_existing);
    }

    /// A garage with a sample and one act, closed.
    std::pair<Sample, ActSeq> makeSample(const std::string &where) const
    {
        const auto made = Database::create(where).value();
        const Sample sample = storeSample(*made);
        const ActSeq seq = committed(
            *made, [&](Transaction &transaction) { return append(transaction, actOf(sample, "before", readingOf(sample, 0, 18))); });
        return {sample, seq};
    }

    /// Removes what was copied before an upgrade, having looked that it is whole and of one of these versions.
    void removeCopies(const std::set<std::string> &versions) const
    {
        for (const std::string &name : filesInFolder())
            if (name.find(".before-") != std::string::npos) {
                EXPECT_EQ(Raw(inFolder(name)).text("PRAGMA quick_check"), "ok") << name;
                EXPECT_TRUE(versions.contains(Raw(inFolder(name)).text("PRAGMA user_version"))) << name;
                std::filesystem::remove(inFolder(name));
            }
    }

    std::string path = inFolder("shop.asleft");
    std::string kept = inFolder("kept");
};

TEST_P(FailingDisk, MakesAGarageWholeOrNotAtAll)
{
    sweep([&] { return Database::create(path).map([](auto &&) {}); },
          [&](const Done &made, bool reached) {
              EXPECT_TRUE(made || reached) << "refused although nothing failed";
              if (made) {
                  const auto opened = Database::open(path);
                  ASSERT_TRUE(opened);
                  EXPECT_TRUE((*opened)->check());
                  storeSample(**opened);
              } else {
                  const auto kind = made.error().kind;
                  EXPECT_TRUE(kind == ErrorKind::NoRoom || kind == ErrorKind::DiskFault)
                      << "kind " << static_cast<int>(kind) << " " << made.error().arguments.back();
                  EXPECT_TRUE(filesInFolder().empty());
              }
              std::filesystem::remove(path);
          });
}

TEST_P(FailingDisk, KeepsEveryAcknowledgedActAndNoHalfOne)
{
    const auto [sample, reading] = makeSample(kept);
    const auto transactions = transactionsOf(sample, reading);
    std::size_t all = 0;
    for (const auto &acts : transactions)
        all += acts.size();
    sweep(
        [&] {
            copyBack(kept, path);
            return workOn(path, transactions);
        },
        [&, sample = sample](const std::vector<Acknowledged> &acknowledged, bool reached) {
            EXPECT_TRUE(acknowledged.size() == all || reached);
            expectSound(path, sample, transactions, acknowledged);
        });
}

TEST_P(FailingDisk, UpgradesWholeOrNotAtAll)
{
    const auto [sample, reading] = makeSample(kept);
    const auto steps = stepsWithOneMore();
    const auto known = store::builtInSteps().size();
    sweep(
        [&] {
            copyBack(kept, path);
            return store::openGarage(path, steps).map([](auto &&) {});
        },
        [&, sample = sample](const Done &upgraded, bool reached) {
            EXPECT_TRUE(upgraded || reached);
            const std::string version = Raw(path).text("PRAGMA user_version");
            EXPECT_TRUE(version == std::to_string(upgraded ? steps.size() : known) || version == std::to_string(steps.size())) << version;
            EXPECT_EQ(Raw(path).text("PRAGMA quick_check"), "ok");
            EXPECT_EQ(Raw(path).text("SELECT count(*) FROM act"), "1");
            EXPECT_TRUE(store::openGarage(path, steps));
            EXPECT_NE(Raw(path).text("SELECT count(*) FROM tag"), "0");
            removeCopies({std::to_string(known)});
        });
}

/// The first garage has several steps to take, each whole or not at all.
TEST_P(FailingDisk, BringsTheFirstGarageUpByWholeSteps)
{
    writeBytes(kept, keptGarage(1));
    const std::string text = "SELECT group_concat(sql, char(10)) FROM sqlite_schema";
    const auto steps = store::builtInSteps();
    std::map<std::string, std::string> schemas;
    for (std::size_t version = 1; version <= steps.size(); ++version) {
        copyBack(kept, path);
        ASSERT_TRUE(store::openGarage(path, steps.first(version)));
        schemas[std::to_string(version)] = Raw(path).text(text);
    }
    removeCopies({"1"});
    sweep(
        [&] {
            copyBack(kept, path);
            return Database::open(path).map([](auto &&) {});
        },
        [&](const Done &upgraded, bool reached) {
            EXPECT_TRUE(upgraded || reached);
            const std::string version = Raw(path).text("PRAGMA user_version");
            ASSERT_TRUE(schemas.contains(version)) << version;
            EXPECT_TRUE(!upgraded || version == std::to_string(steps.size())) << version;
            EXPECT_EQ(Raw(path).text(text), schemas[version]) << "no half of a step";
            EXPECT_EQ(Raw(path).text("PRAGMA integrity_check"), "ok");
            const auto opened = Database::open(path);
            ASSERT_TRUE(opened) << opened.error().arguments.back();
            EXPECT_TRUE((*opened)->check());
            const auto rows = jobs(**opened, 100).value();
            for (const JobRow &row : rows)
                EXPECT_TRUE(holdsOwnActs(**opened, row));
            removeCopies({"1", version});
        });
}

INSTANTIATE_TEST_SUITE_P(Every, FailingDisk,
                         ::testing::Values(Failure{"ErrorOnce", false, 0, false}, Failure{"ErrorForGood", false, 6, true},
                                           Failure{"FullOnce", true, 12, false}, Failure{"FullForGood", true, 18, true}),
                         [](const auto &info) { return info.param.name; });

} // namespace
} // namespace asleft::faults
