#include "support.h"

#include "dialect.h"
#include "garage.h"
#include "steps.h"

#include <algorithm>
#include <fstream>

namespace asleft {
namespace {

using store::SchemaStep;

constexpr SchemaStep first{"001_first", "CREATE TABLE part (id {key}, name TEXT NOT NULL) {strict}\n"
                                        "--;;\n"
                                        "{append_only part}\n"};
constexpr SchemaStep second{"002_second", "ALTER TABLE part ADD COLUMN bin TEXT NOT NULL DEFAULT 'none'\n"
                                          "--;;\n"
                                          "INSERT INTO part (name, bin) VALUES ('semi;colon', 'a--;;b')\n"};
constexpr SchemaStep third{"003_third", "CREATE TABLE bin (id {key}) {strict}"};
constexpr SchemaStep broken{"003_broken", "CREATE TABLE bin (id {key}) {strict}\n--;;\nINSERT INTO nowhere VALUES (1)"};

class Upgrade : public FolderTest {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(store::createGarage(path, std::span(&first, 1)));
        Raw(path).run("INSERT INTO part (name) VALUES ('old')");
    }

    [[nodiscard]] std::string query(const std::string &sql) const { return Raw(path).text(sql); }

    std::string path = inFolder("shop.asleft");
    std::string copy = path + ".before-";
};

TEST_F(Upgrade, TakesEveryNewStepAfterACopy)
{
    const SchemaStep steps[] = {first, second, third};
    {
        const auto opened = store::openGarage(path, steps);
        ASSERT_TRUE(opened);
        EXPECT_EQ((*opened)->pragmaNumber("user_version").value(), 3);
        EXPECT_TRUE((*opened)->begin() && (*opened)->run("INSERT INTO bin (id) VALUES (1)") && (*opened)->commit());
    }
    EXPECT_EQ(query("SELECT group_concat(name || ' ' || bin) FROM part"), "old none,semi;colon a--;;b");
    EXPECT_EQ(filesInFolder(), (std::vector<std::string>{"shop.asleft", "shop.asleft.before-3"}));
    EXPECT_EQ(Raw(copy + "3").text("PRAGMA user_version"), "1");
    EXPECT_EQ(Raw(copy + "3").text("PRAGMA quick_check"), "ok");
    EXPECT_EQ(Raw(copy + "3").text("SELECT group_concat(name) FROM part"), "old");
    EXPECT_TRUE(store::openGarage(copy + "3", std::span(steps).first(1))) << "the older program opens the copy";
}

TEST_F(Upgrade, CopiesNothingWhenThereIsNothingToDo)
{
    ASSERT_TRUE(store::openGarage(path, std::span(&first, 1)));
    EXPECT_EQ(filesInFolder(), std::vector<std::string>{"shop.asleft"});
}

TEST_F(Upgrade, CopiesWhatStandsInTheLogOfAnotherSeatToo)
{
    const auto held = store::openGarage(path, std::span(&first, 1));
    ASSERT_TRUE(held);
    Raw(path).run("INSERT INTO part (name) VALUES ('late')");
    const SchemaStep steps[] = {first, second};
    ASSERT_TRUE(store::openGarage(path, steps));
    EXPECT_EQ(Raw(copy + "2").text("SELECT group_concat(name) FROM part"), "old,late");
}

TEST_F(Upgrade, NeverWritesOverAnOlderCopy)
{
    writeBytes(copy + "2", "kept");
    const SchemaStep steps[] = {first, second};
    ASSERT_TRUE(store::openGarage(path, steps));
    EXPECT_EQ(bytesOf(copy + "2"), "kept");
    EXPECT_EQ(Raw(copy + "2-2").text("PRAGMA user_version"), "1");
}

TEST_F(Upgrade, LeavesTheFileAsItWasWhenAStepFails)
{
    const SchemaStep steps[] = {first, broken};
    const auto opened = store::openGarage(path, steps);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().kind, ErrorKind::UpgradeFailed);
    EXPECT_EQ(opened.error().arguments.at(0), path);
    EXPECT_EQ(opened.error().arguments.at(1), "003_broken");
    EXPECT_NE(opened.error().arguments.at(2).find("nowhere"), std::string::npos);
    EXPECT_EQ(filesInFolder(), std::vector<std::string>{"shop.asleft"});
    EXPECT_EQ(query("PRAGMA user_version"), "1");
    EXPECT_EQ(query("SELECT count(*) FROM sqlite_schema WHERE name = 'bin'"), "0");
    EXPECT_TRUE(store::openGarage(path, std::span(&first, 1)));
}

TEST_F(Upgrade, KeepsTheStepsBeforeTheOneThatFails)
{
    const SchemaStep steps[] = {first, second, broken};
    ASSERT_FALSE(store::openGarage(path, steps));
    EXPECT_EQ(query("PRAGMA user_version"), "2");
    EXPECT_EQ(query("SELECT count(*) FROM part"), "2");
    EXPECT_EQ(Raw(copy + "3").text("PRAGMA user_version"), "1") << "the copy is kept: the file has changed";
    const SchemaStep mended[] = {first, second, third};
    EXPECT_TRUE(store::openGarage(path, mended));
}

TEST_F(Upgrade, RefusesAFileThatHasTakenMoreSteps)
{
    const SchemaStep steps[] = {first, second};
    ASSERT_TRUE(store::openGarage(path, steps));
    const auto older = store::openGarage(path, std::span(&first, 1));
    ASSERT_FALSE(older);
    EXPECT_EQ(older.error(), (Error{ErrorKind::GarageNewer, {path, "2", "1"}}));
}

TEST(Steps, ArePartedOnlyByALineOfTheirOwn)
{
    EXPECT_EQ(store::statementsOf("a;\n--;;\nb --;;\n --;;\nc"), (std::vector<std::string>{"a;\n", "b --;;\n --;;\nc\n"}));
    EXPECT_EQ(store::statementsOf("a"), std::vector<std::string>{"a\n"});
}

TEST(Steps, AreWrittenOutForTheDatabase)
{
    EXPECT_EQ(store::writtenOut("{key} {int}{strict} {what} {"), "INTEGER PRIMARY KEY INTEGERSTRICT {what} {");
    EXPECT_EQ(store::statementsOf("{append_only a}").size(), 2U);
}

TEST(Steps, OfTheProgramAreTheFilesInOrder)
{
    const auto steps = store::builtInSteps();
    ASSERT_FALSE(steps.empty());
    for (std::size_t index = 0; index < steps.size(); ++index) {
        const std::string number = std::to_string(index + 1);
        EXPECT_TRUE(steps[index].name.starts_with(std::string(3 - number.size(), '0') + number + "_")) << steps[index].name;
        EXPECT_EQ(store::writtenOut(steps[index].text).find('{'), std::string::npos) << "a word in braces nobody knows";
    }
}

} // namespace
} // namespace asleft
