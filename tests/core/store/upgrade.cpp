#include "support.h"

#include "dialect.h"
#include "garage.h"
#include "steps.h"

#include <QCryptographicHash>

#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <fstream>

namespace asleft {
namespace upgrade_tests {

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

constexpr SchemaStep ruled{"001_ruled", "CREATE TABLE part (id {key}, name TEXT NOT NULL CHECK (name <> 'x'), bin TEXT CHECK (bin <> 'y'), "
                                        "CHECK (bin <> 'y'))"};
constexpr SchemaStep wider{"002_wider", "-- Parts may be called x now.\n{widen part CHECK (name <> 'x') =>\n    CHECK (name <> 'z')}"};

class Widen : public FolderTest {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(store::createGarage(path, std::span(&ruled, 1)));
        ASSERT_EQ(Raw(path).run("INSERT INTO part (name) VALUES ('old')"), SQLITE_OK);
    }

    std::string path = inFolder("shop.asleft");
};

TEST_F(Widen, ReplacesTheRuleAndNothingElse)
{
    Raw held(path);
    EXPECT_EQ(held.run("INSERT INTO part (name) VALUES ('x')"), SQLITE_CONSTRAINT_CHECK);
    const SchemaStep steps[] = {ruled, wider};
    const auto opened = store::openGarage(path, steps);
    ASSERT_TRUE(opened) << opened.error().arguments.back();
    Raw fresh(path);
    for (Raw *raw : {&held, &fresh}) {
        EXPECT_EQ(raw->run("INSERT INTO part (name) VALUES ('x')"), SQLITE_OK);
        EXPECT_EQ(raw->run("INSERT INTO part (name) VALUES ('z')"), SQLITE_CONSTRAINT_CHECK);
        EXPECT_EQ(raw->run("INSERT INTO part (name, bin) VALUES ('a', 'y')"), SQLITE_CONSTRAINT_CHECK);
    }
    EXPECT_EQ(held.text("SELECT group_concat(name) FROM part"), "old,x,x");
    EXPECT_EQ(held.text("PRAGMA integrity_check"), "ok");
    EXPECT_TRUE((*opened)->run("INSERT INTO part (name) VALUES ('x')")) << "this one knows too";
    EXPECT_FALSE((*opened)->run("INSERT INTO part (name) VALUES ('z')"));
}

TEST_F(Widen, LetsAColumnBeNull)
{
    constexpr SchemaStep looser{"002_looser", "{widen part NOT NULL CHECK (name <> 'x') => CHECK (name <> 'x')}"};
    const SchemaStep steps[] = {ruled, looser};
    ASSERT_TRUE(store::openGarage(path, steps));
    Raw raw(path);
    EXPECT_EQ(raw.run("INSERT INTO part (name) VALUES (NULL)"), SQLITE_OK);
    EXPECT_EQ(raw.run("INSERT INTO part (name) VALUES ('x')"), SQLITE_CONSTRAINT_CHECK);
}

constexpr SchemaStep lookUp{"002_look_up", "CREATE TABLE known (word TEXT PRIMARY KEY NOT NULL) {strict}\n"
                                           "--;;\n"
                                           "INSERT INTO known (word) VALUES ('old'), ('new')\n"
                                           "--;;\n"
                                           "{widen part CHECK (name <> 'x') => REFERENCES known (word)}"};

TEST_F(Widen, PutsALookUpTableInTheRulesPlace)
{
    const SchemaStep steps[] = {ruled, lookUp};
    const auto opened = store::openGarage(path, steps);
    ASSERT_TRUE(opened) << opened.error().arguments.back();
    Raw raw(path);
    raw.run("PRAGMA foreign_keys = ON");
    EXPECT_EQ(raw.run("INSERT INTO part (name) VALUES ('new')"), SQLITE_OK);
    EXPECT_EQ(raw.run("INSERT INTO part (name) VALUES ('other')"), SQLITE_CONSTRAINT_FOREIGNKEY);
    EXPECT_EQ(raw.text("SELECT count(*) FROM pragma_foreign_key_check"), "0");
    EXPECT_TRUE((*opened)->run("INSERT INTO part (name) VALUES ('new')"));
    EXPECT_FALSE((*opened)->run("INSERT INTO part (name) VALUES ('other')"));
}

TEST_F(Widen, LocksTheSchemaAgain)
{
    const SchemaStep steps[] = {ruled, wider};
    const auto opened = store::openGarage(path, steps);
    ASSERT_TRUE(opened);
    EXPECT_FALSE((*opened)->run("UPDATE sqlite_schema SET sql = ''"));
    EXPECT_TRUE((*opened)->runOnce("PRAGMA writable_schema = ON"));
    EXPECT_FALSE((*opened)->run("UPDATE sqlite_schema SET sql = ''")) << "nor can it be opened with a pragma";
}

TEST_F(Widen, LeavesTheFileAsItWasWhereItCannot)
{
    const std::string schema = Raw(path).text("SELECT sql FROM sqlite_schema WHERE name = 'part'");
    for (const char *refused : {
             "{widen part CHECK (name <> 'y') => CHECK (name <> 'z')}",                  // no such rule
             "{widen part CHECK (bin <> 'y') => CHECK (bin <> 'z')}",                    // stands there twice
             "{widen parts CHECK (name <> 'x') => CHECK (name <> 'z')}",                 // no such table
             "{widen part CHECK (name <> 'x') => CHECK (name <>}",                       // no SQL
             "{widen part CHECK (name <> 'x') => CHECK (weight <> 'z')}",                // no such column
             "{widen part CHECK (name <> 'x') => CHECK (name <> 'z'), weight TEXT}",     // another table
             "{widen part TEXT CHECK (bin <> 'y') => TEXT NOT NULL CHECK (bin <> 'y')}", // a row may have none
             "{widen part CHECK (name <> 'x')}",
             "{widen part => CHECK (name <> 'z')}",
             "{widen part CHECK (name <> 'x') => CHECK (name <> 'z')} AND MORE",
         }) {
        const SchemaStep steps[] = {ruled, {"002_refused", refused}};
        const auto opened = store::openGarage(path, steps);
        ASSERT_FALSE(opened) << refused;
        EXPECT_EQ(opened.error().kind, ErrorKind::UpgradeFailed) << refused;
        EXPECT_EQ(Raw(path).text("PRAGMA user_version"), "1") << refused;
        EXPECT_EQ(Raw(path).text("SELECT sql FROM sqlite_schema WHERE name = 'part'"), schema) << refused;
        EXPECT_EQ(Raw(path).text("PRAGMA integrity_check"), "ok") << refused;
        EXPECT_EQ(filesInFolder(), std::vector<std::string>{"shop.asleft"}) << refused;
    }
    EXPECT_TRUE(store::openGarage(path, std::span(&ruled, 1)));
}

TEST(Steps, SayWhatTheyWiden)
{
    EXPECT_EQ(store::wideningIn("-- why\n{widen a CHECK (b IN ('{', 'x')) =>\n  CHECK (c),\n  CHECK (d)}\n"),
              (store::Widening{"a", "CHECK (b IN ('{', 'x'))", "CHECK (c),\n  CHECK (d)"}));
    EXPECT_EQ(store::wideningIn("ALTER TABLE a ADD COLUMN b"), std::nullopt);
    EXPECT_EQ(store::wideningIn("-- {widen a CHECK (b) => CHECK (c)}"), std::nullopt);
    EXPECT_EQ(store::wideningIn(""), std::nullopt);
}

TEST(Steps, ArePartedOnlyByALineOfTheirOwn)
{
    EXPECT_EQ(store::statementsOf("a;\n--;;\nb --;;\n --;;\nc"), (std::vector<std::string>{"a;\n", "b --;;\n --;;\nc\n"}));
    EXPECT_EQ(store::statementsOf("a"), std::vector<std::string>{"a\n"});
}

TEST(Steps, AreWrittenOutForTheDatabase)
{
    EXPECT_EQ(store::writtenOut("{key} {int}{strict} {real} {what} {"), "INTEGER PRIMARY KEY INTEGERSTRICT REAL {what} {");
    EXPECT_EQ(store::statementsOf("{append_only a}").size(), 2U);
}

TEST(Steps, OfTheProgramAreTheFilesInOrder)
{
    const auto steps = store::builtInSteps();
    ASSERT_FALSE(steps.empty());
    for (std::size_t index = 0; index < steps.size(); ++index) {
        const std::string number = std::to_string(index + 1);
        EXPECT_TRUE(steps[index].name.starts_with(std::string(3 - number.size(), '0') + number + "_")) << steps[index].name;
        for (const std::string &statement : store::statementsOf(steps[index].text))
            EXPECT_TRUE(statement.find('{') == std::string::npos || store::wideningIn(statement))
                << "words in braces nobody knows: " << statement;
    }
}

/// Garages that have taken a step are in people's hands: it is never changed again, not by a byte.
TEST(Steps, ThatWereGivenToPeopleStayAsTheyAre)
{
    const auto steps = store::builtInSteps();
    constexpr auto given = std::to_array<const char *>({
        "0c3aae5e1766f71c8548e1661b742de4bceb2eaff65088a62a535dde6ec88db9",
        "4628f74ce61358293ab859acb72d126f441b3353c5d9658760473d0417282ae6",
        "e3cff7631d72b72b7ae614fc456280b99d17e602b7341cf31ff10cea8e599069",
        "2f29e79c81137e0113939bb22d77d97a4ace833e5e18df58c861added18c622b",
    });
    ASSERT_GE(steps.size(), given.size());
    for (std::size_t index = 0; index < given.size(); ++index) {
        const QByteArray text(steps[index].text.data(), static_cast<qsizetype>(steps[index].text.size()));
        EXPECT_EQ(QCryptographicHash::hash(text, QCryptographicHash::Sha256).toHex().toStdString(), given.at(index)) << steps[index].name;
    }
}

} // namespace upgrade_tests
} // namespace asleft
