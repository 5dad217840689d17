#pragma once

#include "sample.h"
#include "support.h"

#include <store/journal.h>

#include <sqlite3.h>

namespace asleft {

class Journal : public GarageTest {
protected:
    void SetUp() override
    {
        GarageTest::SetUp();
        sample = storeSample(*garage);
    }

    ActSeq stored(const NewAct &act)
    {
        return committed(*garage, [&](Transaction &transaction) { return append(transaction, act); });
    }

    std::vector<Act> acts() { return jobActs(*garage, sample->job, sample->engine).value(); }

    std::optional<Sample> sample;
};

class TamperedJournal : public Journal {
protected:
    void SetUp() override
    {
        Journal::SetUp();
        const ActSeq first = stored(actOf(*sample, "first", readingOf(*sample, 0, 18)));
        int count = 0;
        for (const Fact &fact : everyKindOfFact(*sample, first))
            stored(actOf(*sample, "u" + std::to_string(count++), fact));
    }

    /// Nobody changes a row of this table or takes it out.
    void expectUnchangeable(const std::string &table) const
    {
        Raw raw(path);
        raw.run("PRAGMA foreign_keys = OFF");
        ASSERT_NE(raw.text("SELECT 1 FROM " + table), "") << table << " is empty: nothing would be refused";
        EXPECT_EQ(raw.run("DELETE FROM " + table), SQLITE_CONSTRAINT_TRIGGER) << table;
        EXPECT_EQ(raw.run("UPDATE " + table + " SET rowid = rowid"), SQLITE_CONSTRAINT_TRIGGER) << table;
    }

    /// A change made behind the program's back, by someone whom triggers do not stop either, is noticed when the job is read.
    void expectDamagedBy(const std::string &change)
    {
        garage.reset();
        const std::string tampered = inFolder("tampered.asleft");
        writeBytes(tampered, bytesOf(path));
        {
            Raw raw(tampered);
            raw.run("PRAGMA ignore_check_constraints = ON");
            ASSERT_EQ(raw.run("DROP TRIGGER " + change.substr(0, change.find(' ')) + "_unchanged"), SQLITE_OK) << change;
            ASSERT_EQ(raw.run("UPDATE " + change), SQLITE_OK) << change;
            ASSERT_NE(raw.text("SELECT changes()"), "0") << change;
        }
        const auto opened = Database::open(tampered);
        ASSERT_TRUE(opened);
        const auto read = jobActs(**opened, sample->job, sample->engine);
        ASSERT_FALSE(read) << change;
        EXPECT_EQ(read.error().kind, ErrorKind::Damaged) << change;
        EXPECT_EQ(read.error().noun, Noun::Act) << change;
    }
};

} // namespace asleft
