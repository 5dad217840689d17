#include "support.h"

#include "garage.h"

#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <optional>

namespace asleft {
namespace opening_tests {

/// Every way a path can be something else than a garage, each beside what is said about it.
class Opening : public FolderTest {
protected:
    std::string path = inFolder("shop.asleft");

    [[nodiscard]] Error refusal() const
    {
        const auto opened = Database::open(path);
        EXPECT_FALSE(opened);
        return opened ? Error{ErrorKind::Database, {"opened"}} : opened.error();
    }

    void makeGarage() const { ASSERT_TRUE(Database::create(path)); }
};

TEST_F(Opening, OpensWhatItMade)
{
    {
        const auto made = Database::create(path);
        ASSERT_TRUE(made);
        EXPECT_EQ((*made)->path(), path);
        EXPECT_EQ((*made)->version().value(), static_cast<std::int64_t>(store::builtInSteps().size()));
    }
    EXPECT_EQ(filesInFolder(), std::vector<std::string>{"shop.asleft"});
    const auto opened = Database::open(path);
    ASSERT_TRUE(opened);
    EXPECT_TRUE((*opened)->check());
    EXPECT_EQ(Raw(path).text("PRAGMA application_id"), "1098083430") << "Aslf";
}

TEST_F(Opening, TakesPathsWithAnyCharacters)
{
    for (const char *name : {"a b?mode=memory#x%20.asleft", "Köhler's garage & \"sons\".asleft", "\xff\xfe.asleft"}) {
        path = inFolder(name);
        makeGarage();
        EXPECT_TRUE(std::filesystem::exists(path)) << name;
        EXPECT_TRUE(Database::open(path)) << name;
    }
}

TEST_F(Opening, FollowsALinkToTheFileItself)
{
    makeGarage();
    std::filesystem::create_symlink(path, inFolder("link"));
    const auto opened = Database::open(inFolder("link"));
    ASSERT_TRUE(opened);
    EXPECT_EQ((*opened)->path(), path);
}

TEST_F(Opening, NeverMakesAMissingFile)
{
    EXPECT_EQ(refusal(), (Error{ErrorKind::FileMissing, {path}}));
    EXPECT_TRUE(filesInFolder().empty());
    path = inFolder("no folder/shop.asleft");
    EXPECT_EQ(refusal(), (Error{ErrorKind::FileMissing, {path}}));
}

TEST_F(Opening, RefusesWhatIsNoGarage)
{
    const std::string before = "Dear diary, ";
    std::string text;
    for (int line = 0; line < 500; ++line)
        text += before;
    for (const std::string &bytes : {std::string(), std::string("x"), text, std::string(8192, '\0')}) {
        writeBytes(path, bytes);
        EXPECT_EQ(refusal(), (Error{ErrorKind::NotAGarage, {path}})) << bytes.size() << " bytes";
        EXPECT_EQ(bytesOf(path), bytes) << "left as it was";
    }
    EXPECT_EQ(filesInFolder(), std::vector<std::string>{"shop.asleft"});
}

TEST_F(Opening, RefusesAnotherProgramsDatabase)
{
    Raw(path).run("CREATE TABLE vehicle (id INTEGER PRIMARY KEY)");
    const std::string bytes = bytesOf(path);
    EXPECT_EQ(refusal(), (Error{ErrorKind::NotAGarage, {path}}));
    Raw(path).run("PRAGMA application_id = 42; PRAGMA user_version = 1");
    EXPECT_EQ(refusal(), (Error{ErrorKind::NotAGarage, {path}}));
    Raw(path).run("PRAGMA application_id = 0x41736c66; PRAGMA user_version = 0");
    EXPECT_EQ(refusal(), (Error{ErrorKind::NotAGarage, {path}}));
}

TEST_F(Opening, RefusesANewerGarage)
{
    makeGarage();
    Raw(path).run("PRAGMA user_version = 4000");
    const std::string bytes = bytesOf(path);
    EXPECT_EQ(refusal(), (Error{ErrorKind::GarageNewer, {path, "4000", std::to_string(store::builtInSteps().size())}}));
    EXPECT_EQ(bytesOf(path), bytes) << "left as it was";
}

TEST_F(Opening, RefusesATruncatedGarage)
{
    makeGarage();
    const std::string bytes = bytesOf(path);
    for (const std::size_t size :
         {bytes.size() / 2, bytes.size() - 1, bytes.size() - 4096, std::size_t{4096}, std::size_t{1000}, std::size_t{50}}) {
        writeBytes(path, bytes.substr(0, size));
        EXPECT_EQ(refusal().kind, ErrorKind::Damaged) << size << " of " << bytes.size() << " bytes";
    }
}

TEST_F(Opening, RefusesAFolder)
{
    std::filesystem::create_directory(path);
    EXPECT_EQ(refusal(), (Error{ErrorKind::NotAGarage, {path}}));
    EXPECT_EQ(Database::create(path).error(), (Error{ErrorKind::FileExists, {path}}));
}

TEST_F(Opening, RefusesToMakeOneWhereSomethingIs)
{
    writeBytes(path, "mine");
    EXPECT_EQ(Database::create(path).error(), (Error{ErrorKind::FileExists, {path}}));
    EXPECT_EQ(bytesOf(path), "mine");
    path = inFolder("no folder/shop.asleft");
    EXPECT_EQ(Database::create(path).error(), (Error{ErrorKind::FileMissing, {path}}));
}

TEST_F(Opening, LeavesNothingBehindWhenMakingFails)
{
    const store::SchemaStep steps[] = {{"001_good", "CREATE TABLE a (b)"}, {"002_bad", "CREATE TABLE a (b)"}};
    const auto made = store::createGarage(path, steps);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().kind, ErrorKind::Database);
    EXPECT_TRUE(filesInFolder().empty());
}

TEST_F(Opening, IsNotMisledByAnOldLogBesideANewFile)
{
    makeGarage();
    Raw(path).run("INSERT INTO vehicle (name, mark) VALUES ('Old', '')");
    {
        const auto held = Database::open(path);
        ASSERT_TRUE(held);
        Raw(path).run("INSERT INTO vehicle (name, mark) VALUES ('Old', '')");
        std::filesystem::copy_file(path + "-wal", inFolder("kept"));
    }
    std::filesystem::remove(path);
    std::filesystem::rename(inFolder("kept"), path + "-wal");
    const auto made = Database::create(path);
    ASSERT_TRUE(made);
    EXPECT_EQ(Raw(path).text("SELECT count(*) FROM vehicle"), "0");
    EXPECT_TRUE((*made)->check());
}

class OpeningWithoutRights : public Opening {
protected:
    void SetUp() override
    {
        if (Nobody::isNeeded()) {
            ASSERT_EQ(::chown(inFolder("").c_str(), Nobody::id, static_cast<gid_t>(-1)), 0);
        }
        m_nobody.emplace();
    }

    void TearDown() override { ::chmod(inFolder("").c_str(), 0755); }

private:
    std::optional<Nobody> m_nobody;
};

TEST_F(OpeningWithoutRights, RefusesWhatMayNotBeRead)
{
    makeGarage();
    ::chmod(path.c_str(), 0);
    EXPECT_EQ(refusal(), (Error{ErrorKind::DiskFault, {path, "Permission denied"}}));
}

TEST_F(OpeningWithoutRights, MakesNoGarageInAReadOnlyFolder)
{
    ::chmod(inFolder("").c_str(), 0555);
    EXPECT_EQ(Database::create(path).error(), (Error{ErrorKind::GarageReadOnly, {path}}));
    EXPECT_TRUE(filesInFolder().empty());
}

} // namespace opening_tests
} // namespace asleft
