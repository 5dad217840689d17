#include "crash.h"
#include "shim.h"
#include "work_load.h"

#include "garage.h"

#include <sqlite3.h>

namespace asleft::faults {
namespace {

namespace fs = std::filesystem;

class PowerCut : public FolderTest {
protected:
    PowerCut() { install(); }
    ~PowerCut() override { answerWith({}); }

    void SetUp() override
    {
        fs::create_directory(before);
        fs::create_directory(now);
        fs::create_directory(after);
        const auto made = Database::create(before + "/shop.asleft").value();
        sample = storeSample(*made);
        const ActSeq reading = committed(
            *made, [&](Transaction &transaction) { return append(transaction, actOf(*sample, "before", readingOf(*sample, 0, 18))); });
        transactions = transactionsOf(*sample, reading);
    }

    /// Runs `work` in the folder `now`, starting from what `from` holds, and cuts the power at one event. Afterwards `after` holds
    /// what is left. False: the work ended before.
    template <class Work>
    bool cutAt(int event, const std::string &from, bool liar, Work work)
    {
        refill(now, from);
        refill(after, {});
        Platter platter(liar);
        platter.startWith(now);
        bool cut = false;
        answerWith([&](int count, const Event &what) {
            if (count == event) {
                cut = true;
                platter.leaveBehind(after, dice);
            }
            if (cut)
                return SQLITE_IOERR;
            platter.note(what);
            return SQLITE_OK;
        });
        work();
        answerWith({});
        return cut;
    }

    static void refill(const std::string &folder, const std::string &from)
    {
        fs::remove_all(folder);
        fs::create_directory(folder);
        if (!from.empty())
            fs::copy(from, folder);
    }

    [[nodiscard]] static int stride() { return isLong() ? 1 : 9; }
    [[nodiscard]] static int rounds() { return isLong() ? 8 : 1; }

    std::string before = inFolder("before");
    std::string now = inFolder("now");
    std::string after = inFolder("after");
    std::optional<Sample> sample;
    std::vector<std::vector<NewAct>> transactions;
    std::mt19937 dice{20'240'229};
};

TEST_F(PowerCut, LosesNoAcknowledgedAct)
{
    int cuts = 0;
    std::size_t acknowledgedInAll = 0;
    for (int round = 0; round < rounds(); ++round)
        for (int event = round % stride();; event += stride()) {
            SCOPED_TRACE("cut at event " + std::to_string(event) + ", round " + std::to_string(round));
            std::vector<Acknowledged> acknowledged;
            if (!cutAt(event, before, false, [&] { acknowledged = workOn(now + "/shop.asleft", transactions); }))
                break;
            expectSound(after + "/shop.asleft", *sample, transactions, acknowledged);
            if (HasFailure())
                return;
            ++cuts;
            acknowledgedInAll += acknowledged.size();
        }
    EXPECT_GT(cuts, 15);
    EXPECT_GT(acknowledgedInAll, 50U);
}

TEST_F(PowerCut, LosesNothingInAnUpgrade)
{
    const auto steps = stepsWithOneMore();
    for (int round = 0; round < rounds(); ++round)
        for (int event = round % stride();; event += stride()) {
            SCOPED_TRACE("cut at event " + std::to_string(event) + ", round " + std::to_string(round));
            bool upgraded = false;
            const std::string path = after + "/shop.asleft";
            if (!cutAt(event, before, false, [&] { upgraded = store::openGarage(now + "/shop.asleft", steps).has_value(); }))
                break;
            EXPECT_EQ(Raw(path).text("PRAGMA quick_check"), "ok");
            EXPECT_EQ(Raw(path).text("SELECT count(*) FROM act"), "1");
            if (upgraded) {
                EXPECT_EQ(Raw(path).text("PRAGMA user_version"), std::to_string(steps.size()));
            }
            // Once the file has changed, the copy made before must be whole.
            if (Raw(path).text("PRAGMA user_version") == std::to_string(steps.size())) {
                const std::string copy = path + ".before-" + std::to_string(steps.size());
                EXPECT_EQ(Raw(copy).text("PRAGMA quick_check"), "ok");
                EXPECT_EQ(Raw(copy).text("SELECT count(*) FROM act"), "1");
            }
            EXPECT_TRUE(store::openGarage(path, steps));
            if (HasFailure())
                return;
        }
}

TEST_F(PowerCut, LosesNothingOfTheFirstGarageWhenItIsBroughtUp)
{
    refill(before, {});
    writeBytes(before + "/shop.asleft", keptGarage(1));
    const std::string path = after + "/shop.asleft";
    const int known = static_cast<int>(store::builtInSteps().size());
    const std::string copy = path + ".before-" + std::to_string(known);
    int cuts = 0;
    for (int event = 0;; event += stride()) {
        SCOPED_TRACE("cut at event " + std::to_string(event));
        bool upgraded = false;
        if (!cutAt(event, before, false, [&] { upgraded = Database::open(now + "/shop.asleft").has_value(); }))
            break;
        ++cuts;
        const int version = std::atoi(Raw(path).text("PRAGMA user_version").c_str());
        EXPECT_TRUE(version == known || (!upgraded && version >= 1 && version < known)) << version;
        EXPECT_EQ(Raw(path).text("PRAGMA integrity_check"), "ok");
        if (version > 1) { // by some of the steps already
            EXPECT_EQ(Raw(copy).text("PRAGMA quick_check"), "ok");
            EXPECT_EQ(Raw(copy).text("SELECT count(*) FROM act"), "68");
        }
        const auto opened = Database::open(path);
        ASSERT_TRUE(opened) << opened.error().arguments.back();
        EXPECT_TRUE((*opened)->check());
        const auto rows = jobs(**opened, 100).value();
        for (const JobRow &row : rows)
            EXPECT_TRUE(holdsOwnActs(**opened, row));
    }
    EXPECT_GT(cuts, 10);
}

TEST_F(PowerCut, LeavesANewGarageThatOpensOrIsRefused)
{
    refill(before, {});
    for (int event = 0;; event += isLong() ? 1 : 7) {
        SCOPED_TRACE("cut at event " + std::to_string(event));
        bool made = false;
        if (!cutAt(event, before, false, [&] { made = Database::create(now + "/shop.asleft").has_value(); }))
            break;
        const auto opened = Database::open(after + "/shop.asleft");
        EXPECT_TRUE(opened || !made) << opened.error().arguments.back();
        if (opened) {
            EXPECT_TRUE((*opened)->check());
        }
    }
}

/// Shows that the cuts bite: were syncs not waited for, acts would be lost.
TEST_F(PowerCut, LosesActsOnADiskThatLiesAboutSyncing)
{
    int lost = 0;
    for (int event = 0;; event += 3) {
        std::vector<Acknowledged> acknowledged;
        if (!cutAt(event, before, true, [&] { acknowledged = workOn(now + "/shop.asleft", transactions); }))
            break;
        Raw raw(after + "/shop.asleft");
        for (const auto &[uid, seq] : acknowledged)
            lost += raw.text("SELECT seq FROM act WHERE uid = '" + uid + "'") == std::to_string(seq.key()) ? 0 : 1;
    }
    EXPECT_GT(lost, 0);
}

} // namespace
} // namespace asleft::faults
