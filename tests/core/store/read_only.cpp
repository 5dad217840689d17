#include "other_station.h"
#include "sample.h"
#include "support.h"

#include "garage.h"
#include "reading_only.h"

#include <store/journal.h>

#include <sys/stat.h>
#include <unistd.h>

#include <map>

namespace asleft {
namespace read_only_tests {

namespace fs = std::filesystem;

using store::ReadingWay;
using Names = std::vector<std::string>;

/// A garage in a folder whose rights are taken away, and a folder for what is temporary.
class ReadOnly : public FolderTest {
protected:
    void SetUp() override
    {
        for (const std::string &made : {folder, temporary})
            fs::create_directory(made);
        fs::permissions(inFolder(""), fs::perms(0755));
        fs::permissions(temporary, fs::perms(0777));
        ASSERT_EQ(::setenv("TMPDIR", temporary.c_str(), 1), 0);
        const auto made = Database::create(path);
        ASSERT_TRUE(made);
        sample = storeSample(**made);
        committed(**made,
                  [&](Transaction &transaction) { return append(transaction, actOf(*sample, "first", readingOf(*sample, 0, 18))); });
    }

    void TearDown() override
    {
        giveRightsBack();
        ::unsetenv("TMPDIR");
    }

    void setRights(unsigned ofFolder, unsigned ofFiles)
    {
        for (const auto &entry : fs::directory_iterator(folder))
            fs::permissions(entry.path(), fs::perms(ofFiles));
        fs::permissions(folder, fs::perms(ofFolder));
    }

    /// From here on neither the folder nor anything in it may be written by this process.
    void takeRights(unsigned ofFolder = 0555, unsigned ofFiles = 0444)
    {
        setRights(ofFolder, ofFiles);
        m_nobody.emplace();
    }

    void giveRightsBack()
    {
        m_nobody.reset();
        setRights(0755, 0644);
    }

    [[nodiscard]] std::map<std::string, std::string> everyFile() const
    {
        std::map<std::string, std::string> files;
        for (const auto &entry : fs::directory_iterator(folder))
            files[entry.path().filename().string()] = bytesOf(entry.path().string());
        return files;
    }

    [[nodiscard]] static Names namesOf(Database &database)
    {
        Names names;
        const auto read = vehicles(database);
        EXPECT_TRUE(read);
        for (const Vehicle &vehicle : read.value_or(std::vector<Vehicle>()))
            names.push_back(vehicle.name);
        return names;
    }

    /// Opens for reading, finds the vehicles and everything else in order, and writing refused; leaves the folder as it was.
    void expectReads(const Names &names)
    {
        const auto before = everyFile();
        {
            const auto opened = Database::open(path);
            ASSERT_TRUE(opened) << opened.error().arguments.back();
            EXPECT_TRUE((*opened)->readOnly());
            EXPECT_EQ((*opened)->path(), path);
            EXPECT_EQ(namesOf(**opened), names);
            EXPECT_EQ(jobActs(**opened, sample->job, sample->engine).value().size(), 1U);
            EXPECT_TRUE((*opened)->check());
            EXPECT_TRUE(Snapshot::begin(**opened));
            const auto transaction = Transaction::begin(**opened);
            ASSERT_FALSE(transaction);
            EXPECT_EQ(transaction.error(), (Error{ErrorKind::GarageReadOnly, {path}}));
            EXPECT_EQ(everyFile(), before) << "while it is open";
        }
        EXPECT_EQ(everyFile(), before);
        EXPECT_TRUE(fs::is_empty(temporary));
    }

    [[nodiscard]] Error refusal() const
    {
        const auto opened = Database::open(path);
        EXPECT_FALSE(opened);
        return opened ? Error{ErrorKind::Database, {"opened"}} : opened.error();
    }

    std::string folder = inFolder("garage");
    std::string temporary = inFolder("temporary");
    std::string path = folder + "/shop.asleft";
    std::optional<Sample> sample;

private:
    std::optional<Nobody> m_nobody;
};

TEST_F(ReadOnly, ReadsAGarageNobodyHasOpen)
{
    takeRights();
    expectReads({"Lorry"});
    EXPECT_EQ(everyFile().size(), 1U);
}

TEST_F(ReadOnly, ReadsAReadOnlyFileInAFolderThatMayBeWritten)
{
    if (Nobody::isNeeded()) {
        ASSERT_EQ(::chown(folder.c_str(), Nobody::id, static_cast<gid_t>(-1)), 0);
    }
    takeRights(0755);
    expectReads({"Lorry"});
}

TEST_F(ReadOnly, ReadsAFileThatMayBeWrittenInAReadOnlyFolder)
{
    takeRights(0555, 0666);
    expectReads({"Lorry"});
}

TEST_F(ReadOnly, WritesOnceItMay)
{
    takeRights();
    EXPECT_TRUE(Database::open(path).value()->readOnly());
    giveRightsBack();
    const auto opened = Database::open(path);
    ASSERT_TRUE(opened);
    EXPECT_FALSE((*opened)->readOnly());
    EXPECT_TRUE(Transaction::begin(**opened));
}

TEST_F(ReadOnly, ReadsWhatAnotherSeatIsWriting)
{
    OtherStation other(path);
    other.addVehicle("Tractor");
    takeRights();
    const auto opened = Database::open(path);
    ASSERT_TRUE(opened);
    EXPECT_TRUE((*opened)->readOnly());
    EXPECT_EQ(namesOf(**opened), (Names{"Lorry", "Tractor"}));
    const auto version = (*opened)->dataVersion().value();
    EXPECT_EQ((*opened)->dataVersion().value(), version);
    {
        const auto moment = Snapshot::begin(**opened);
        EXPECT_EQ(namesOf(**opened).size(), 2U);
        other.addVehicle("Digger");
        EXPECT_EQ(namesOf(**opened).size(), 2U) << "of one moment";
    }
    EXPECT_NE((*opened)->dataVersion().value(), version);
    EXPECT_EQ(namesOf(**opened), (Names{"Lorry", "Tractor", "Digger"}));
    EXPECT_EQ(everyFile().size(), 3U) << "the file, its log and the index";
}

TEST_F(ReadOnly, KeepsReadingWhenTheOtherSeatLeaves)
{
    OtherStation other(path);
    other.addVehicle("Tractor");
    takeRights();
    const auto opened = Database::open(path);
    ASSERT_TRUE(opened);
    EXPECT_EQ(namesOf(**opened).size(), 2U);
    other.leave();
    EXPECT_TRUE((*opened)->dataVersion());
    EXPECT_EQ(namesOf(**opened), (Names{"Lorry", "Tractor"}));
    expectReads({"Lorry", "Tractor"});
}

TEST_F(ReadOnly, ReadsWhatAKilledSeatHadCommitted)
{
    OtherStation other(path);
    other.addVehicle("Tractor");
    other.kill();
    takeRights();
    ASSERT_EQ(everyFile().size(), 3U);
    expectReads({"Lorry", "Tractor"});
}

TEST_F(ReadOnly, LeavesALogAndItsIndexAloneEvenWhereItCouldWriteThem)
{
    OtherStation other(path);
    other.addVehicle("Tractor");
    other.kill();
    setRights(0777, 0666);
    fs::permissions(path, fs::perms(0444));
    const Nobody nobody;
    expectReads({"Lorry", "Tractor"});
}

TEST_F(ReadOnly, LeavesAJournalAlone)
{
    writeBytes(path + "-journal", "what is left of a write that was cut off");
    takeRights();
    expectReads({"Lorry"});
}

TEST_F(ReadOnly, SaysWhereItCouldNotCopy)
{
    writeBytes(path + "-journal", "what is left of a write that was cut off");
    const std::string missing = temporary + "/none";
    ASSERT_EQ(::setenv("TMPDIR", missing.c_str(), 1), 0);
    takeRights();
    EXPECT_EQ(refusal(), (Error{ErrorKind::DiskFault, {missing, "No such file or directory"}}));
}

TEST_F(ReadOnly, ReadsALogThatCameWithoutItsIndex)
{
    OtherStation other(path);
    other.addVehicle("Tractor");
    other.kill();
    fs::remove(path + "-shm");
    takeRights();
    expectReads({"Lorry", "Tractor"});

    const auto opened = Database::open(path);
    ASSERT_TRUE(opened);
    EXPECT_FALSE(fs::is_empty(temporary)) << "a copy, for as long as it is read";
    const auto version = (*opened)->dataVersion().value();
    EXPECT_EQ((*opened)->dataVersion().value(), version);
}

TEST_F(ReadOnly, NeverReadsAroundALog)
{
    OtherStation other(path);
    other.addVehicle("Tractor");
    other.kill();
    setRights(0555, 0444);
    // Without the log the tractor would be missing without a word.
    fs::permissions(path + "-wal", fs::perms::none);
    const Nobody nobody;
    EXPECT_EQ(refusal(), (Error{ErrorKind::DiskFault, {path + "-wal", "Permission denied"}}));
}

TEST_F(ReadOnly, FollowsASeatThatComesLater)
{
    takeRights();
    const auto opened = Database::open(path);
    ASSERT_TRUE(opened);
    const auto version = (*opened)->dataVersion().value();
    EXPECT_EQ(namesOf(**opened), Names{"Lorry"});

    giveRightsBack();
    OtherStation other(path);
    other.addVehicle("Tractor");
    EXPECT_NE((*opened)->dataVersion().value(), version);
    EXPECT_EQ(namesOf(**opened), (Names{"Lorry", "Tractor"}));
    EXPECT_TRUE((*opened)->readOnly()) << "once for reading, it stays so";
    EXPECT_FALSE(Transaction::begin(**opened));
}

TEST_F(ReadOnly, NoticesASeatThatCameAndWent)
{
    takeRights();
    const auto opened = Database::open(path);
    ASSERT_TRUE(opened);
    const auto version = (*opened)->dataVersion().value();
    EXPECT_EQ(namesOf(**opened), Names{"Lorry"});
    giveRightsBack();
    OtherStation other(path);
    other.addVehicle("Tractor");
    other.leave();
    EXPECT_NE((*opened)->dataVersion().value(), version);
    EXPECT_EQ(namesOf(**opened), (Names{"Lorry", "Tractor"}));
}

TEST_F(ReadOnly, RefusesAnOlderGarage)
{
    writeBytes(path, keptGarage(1));
    takeRights();
    const auto before = everyFile();
    EXPECT_EQ(refusal(), (Error{ErrorKind::GarageReadOnly, {path}}));
    EXPECT_EQ(everyFile(), before) << "and makes no copy";
}

TEST_F(ReadOnly, RefusesWhatItRefusesElsewhere)
{
    const std::string sound = bytesOf(path);
    const std::string known = std::to_string(store::builtInSteps().size());
    Raw(path).run("PRAGMA user_version = 4000");
    const std::string newer = bytesOf(path);
    const std::pair<std::string, Error> refused[] = {
        {newer, {ErrorKind::GarageNewer, {path, "4000", known}}},
        {"Dear diary, ", {ErrorKind::NotAGarage, {path}}},
        {"", {ErrorKind::NotAGarage, {path}}},
        {std::string(8192, '\0'), {ErrorKind::NotAGarage, {path}}},
    };
    for (const auto &[bytes, error] : refused) {
        giveRightsBack();
        writeBytes(path, bytes);
        takeRights();
        EXPECT_EQ(refusal(), error) << bytes.size() << " bytes";
    }
    giveRightsBack();
    writeBytes(path, sound.substr(0, sound.size() / 2));
    takeRights();
    EXPECT_EQ(refusal().kind, ErrorKind::Damaged);
}

/// The decision alone, and the way in that follows from it, whatever rights the files have.
TEST_F(ReadOnly, ReadsForReadingWhatMightBeWritten)
{
    const auto before = everyFile();
    {
        const auto opened = store::openGarageForReading(path, store::builtInSteps());
        ASSERT_TRUE(opened);
        EXPECT_TRUE((*opened)->readOnly());
        EXPECT_FALSE((*opened)->run("INSERT INTO vehicle (name, mark) VALUES ('x', '')"));
        EXPECT_EQ(everyFile(), before);
    }
    EXPECT_EQ(everyFile(), before);
    EXPECT_EQ(store::openGarageForReading(path + "x", store::builtInSteps()).error().kind, ErrorKind::FileMissing);
}

TEST_F(ReadOnly, MayBeWrittenOnlyWithEverythingBesideIt)
{
    EXPECT_TRUE(store::mayBeWritten(path));
    for (const char *ending : {"", "-wal", "-shm", "-journal"}) {
        const std::string beside = path + ending;
        if (*ending != '\0')
            writeBytes(beside, "");
        for (const unsigned rights : {0444, 0666}) {
            fs::permissions(beside, fs::perms(rights));
            fs::permissions(folder, fs::perms(0777));
            const Nobody nobody;
            EXPECT_EQ(store::mayBeWritten(path), rights == 0666) << beside;
        }
    }
    fs::permissions(folder, fs::perms(0555));
    const Nobody nobody;
    EXPECT_FALSE(store::mayBeWritten(path));
}

TEST(WayToRead, GoesByWhatStandsBeside)
{
    const auto way = [](bool hasLog, bool logIsEmpty, bool indexCanBeRead, bool hasJournal) {
        return store::wayToRead({hasLog, logIsEmpty, indexCanBeRead, hasJournal});
    };
    EXPECT_EQ(way(false, true, false, false), ReadingWay::AsItLies);
    EXPECT_EQ(way(false, true, true, false), ReadingWay::AsItLies) << "an index of nothing";
    EXPECT_EQ(way(true, true, false, false), ReadingWay::AsItLies) << "there is nothing in the log";
    EXPECT_EQ(way(true, true, true, false), ReadingWay::WithOthers) << "somebody may write to it any time";
    EXPECT_EQ(way(true, false, true, false), ReadingWay::WithOthers);
    EXPECT_EQ(way(true, false, false, false), ReadingWay::FromACopy);
    EXPECT_EQ(way(false, true, false, true), ReadingWay::FromACopy);
    EXPECT_EQ(way(true, false, true, true), ReadingWay::FromACopy);
}

} // namespace read_only_tests
} // namespace asleft

int main(int count, char **arguments)
{
    if (count == 3 && std::string_view(arguments[1]) == "other-seat")
        return asleft::runOtherStation(count, arguments);
    ::testing::InitGoogleTest(&count, arguments);
    return RUN_ALL_TESTS();
}
