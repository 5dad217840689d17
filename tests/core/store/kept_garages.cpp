#include "sample.h"
#include "support.h"

#include "garage.h"

#include <shop/state.h>
#include <store/journal.h>

#include <sqlite3.h>

#include <algorithm>
#include <functional>

namespace asleft {
namespace kept_garages_tests {

/// What a job of a kept garage comes to. The numbers are what the program that made the garage said of it.
struct Told {
    const char *title;
    std::size_t acts;
    std::array<int, 5> stages; ///< points untouched, found, nut open, left, to check again
    std::size_t stepsDone, withdrawn, planPositions;
    std::optional<Angle> crank;
};

struct Kept {
    int version;
    int acts;
    std::vector<Told> newestFirst;
};

Kept first()
{
    return {1,
            68,
            {{"Valves", 17, {2, 5, 1, 0, 0}, 1, 1, 4, {}},
             {"Set the valves", 13, {4, 1, 1, 2, 0}, 2, 0, 2, degrees(0)},
             {"Set the valves", 0, {16, 0, 0, 0, 0}, 0, 0, 0, {}},
             {"Set the valves", 38, {0, 0, 0, 8, 0}, 8, 0, 4, degrees(540)}}};
}

Kept second()
{
    return {2,
            172,
            {{"Valves", 26, {1, 6, 1, 0, 0}, 1, 1, 6, {}},
             {"Set the valves", 13, {4, 1, 1, 2, 0}, 2, 0, 2, {}},
             {"Set the valves", 0, {16, 0, 0, 0, 0}, 0, 0, 0, {}},
             {"Set the valves", 13, {11, 2, 0, 2, 0}, 2, 0, 2, degrees(0)},
             {"Set the valves", 11, {2, 0, 0, 2, 0}, 2, 0, 2, degrees(0)},
             {"Set the valves", 38, {0, 0, 0, 8, 0}, 8, 0, 4, degrees(540)},
             {"Set the valves", 7, {0, 3, 0, 0, 0}, 1, 0, 1, degrees(0)},
             {"Set the valves", 26, {4, 2, 0, 6, 0}, 2, 0, 2, degrees(360)},
             {"Set the valves", 38, {0, 0, 0, 8, 0}, 8, 0, 4, degrees(540)}}};
}

Kept third()
{
    return {3,
            221,
            {{"Valves", 49, {1, 6, 1, 0, 0}, 1, 1, 6, {}},
             {"Set the valves", 39, {4, 1, 1, 2, 0}, 2, 0, 2, degrees(0)},
             {"Set the valves", 0, {16, 0, 0, 0, 0}, 0, 0, 0, {}},
             {"Set the valves", 13, {11, 2, 0, 2, 0}, 2, 0, 2, degrees(0)},
             {"Set the valves", 11, {2, 0, 0, 2, 0}, 2, 0, 2, degrees(0)},
             {"Set the valves", 38, {0, 0, 0, 8, 0}, 8, 0, 4, degrees(540)},
             {"Set the valves", 7, {0, 3, 0, 0, 0}, 1, 0, 1, degrees(0)},
             {"Set the valves", 26, {4, 2, 0, 6, 0}, 2, 0, 2, degrees(360)},
             {"Set the valves", 38, {0, 0, 0, 8, 0}, 8, 0, 4, degrees(540)}}};
}

Kept fourth()
{
    Kept kept = third();
    kept.version = 4;
    kept.acts = 273;
    kept.newestFirst.front() = {"Valves", 101, {1, 6, 1, 0, 0}, 1, 1, 6, {}};
    return kept;
}

class KeptGarage : public FolderTest, public ::testing::WithParamInterface<Kept> {
protected:
    void SetUp() override
    {
        writeBytes(path, keptGarage(GetParam().version));
        auto opened = Database::open(path);
        ASSERT_TRUE(opened) << opened.error().arguments.back();
        garage = *std::move(opened);
    }

    [[nodiscard]] std::vector<JobRow> newestFirst() const
    {
        auto rows = jobs(*garage, 100).value();
        std::ranges::sort(rows, std::greater(), &JobRow::id);
        return rows;
    }

    [[nodiscard]] JobState folded(const JobRow &row) const
    {
        const Job worked = job(*garage, row.id).value();
        const Vehicle owner = vehicle(*garage, row.vehicle).value();
        auto frame = std::make_shared<JobFrame>(JobFrame{
            worked, owner, engine(*garage, row.engine).value(), latestMeter(*garage, owner.id).value(), specs(*garage, row.engine).value(),
            table(*garage, row.engine).value(), people(*garage).value(), tools(*garage).value()});
        return fold(std::move(frame), jobActs(*garage, row.id, row.engine).value());
    }

    /// The things its job "Valves" speaks of, with a joint.
    [[nodiscard]] Sample sampleInIt() const
    {
        const JobRow row = newestFirst().front();
        const ToolId feelers = tools(*garage).value().front().id;
        const SampleJoint cover =
            committed(*garage, [&](Transaction &transaction) -> Result<SampleJoint> { return storeSampleJoint(transaction, row.engine); });
        Sample sample{
            row.vehicle, row.engine, people(*garage).value().back().id, feelers, specs(*garage, row.engine).value().front().id, row.id, {},
            {},          cover};
        const Engine worked = engine(*garage, row.engine).value();
        for (const SettingPoint &point : worked.points)
            sample.points.push_back(point.id);
        const Job itself = job(*garage, row.id).value();
        for (const Step &step : itself.steps)
            sample.steps.push_back(step.id);
        return sample;
    }

    std::string path = inFolder("shop.asleft");
    std::string copy = path + ".before-" + std::to_string(store::builtInSteps().size());
    std::unique_ptr<Database> garage;
};

TEST_P(KeptGarage, IsBroughtUpWithACopyBesideIt)
{
    EXPECT_FALSE(garage->readOnly());
    EXPECT_EQ(garage->version().value(), static_cast<std::int64_t>(store::builtInSteps().size()));
    EXPECT_TRUE(garage->check());
    EXPECT_EQ(Raw(path).text("PRAGMA integrity_check"), "ok");
    EXPECT_EQ(Raw(copy).text("PRAGMA user_version"), std::to_string(GetParam().version));
    EXPECT_EQ(Raw(copy).text("SELECT count(*) FROM act"), std::to_string(GetParam().acts));
}

TEST_P(KeptGarage, SaysWhatItSaid)
{
    const auto rows = newestFirst();
    ASSERT_EQ(rows.size(), GetParam().newestFirst.size());
    for (std::size_t place = 0; place < rows.size(); ++place) {
        const Told &told = GetParam().newestFirst[place];
        SCOPED_TRACE(rows[place].title + " " + std::to_string(rows[place].id.key()));
        const JobState state = folded(rows[place]);
        std::array<int, 5> stages = {};
        for (const auto &[id, point] : state.points)
            ++stages.at(static_cast<std::size_t>(point.stage));
        EXPECT_EQ(rows[place].title, told.title);
        EXPECT_EQ(countActs(*garage, rows[place].id).value(), static_cast<std::int64_t>(told.acts));
        EXPECT_EQ(stages, told.stages);
        EXPECT_EQ(state.stepsDone.size(), told.stepsDone);
        EXPECT_EQ(state.withdrawn.size(), told.withdrawn);
        EXPECT_EQ(state.plan ? state.plan->positions.size() : 0, told.planPositions);
        EXPECT_EQ(state.crank ? state.crank->crank : std::nullopt, told.crank);
    }
}

/// The names of a table's columns, as many as the older table has.
std::string columnsOf(Raw &raw, const std::string &schema, const std::string &table, const std::string &most)
{
    return raw.text("SELECT group_concat('\"' || name || '\"') FROM (SELECT name FROM pragma_table_info('" + table + "', '" + schema +
                    "') ORDER BY cid LIMIT " + most + ")");
}

TEST_P(KeptGarage, HasNoRowThatReadsOtherwise)
{
    garage.reset();
    Raw raw(path);
    ASSERT_EQ(raw.run("ATTACH '" + copy + "' AS old"), SQLITE_OK);
    int rows = 0;
    for (int place = 0;; ++place) {
        const std::string older =
            raw.text("SELECT name FROM old.sqlite_schema WHERE type = 'table' ORDER BY name LIMIT 1 OFFSET " + std::to_string(place));
        if (older.empty())
            break;
        const std::string newer = older == "feeler_set" ? "tool" : older; // renamed by the second step
        const std::string before = "SELECT " + columnsOf(raw, "old", older, "99") + " FROM old." + older;
        const std::string count = raw.text("SELECT count(*) FROM pragma_table_info('" + older + "', 'old')");
        const std::string now = "SELECT " + columnsOf(raw, "main", newer, count) + " FROM main." + newer;
        EXPECT_EQ(raw.text("SELECT count(*) FROM (" + before + " EXCEPT " + now + ")"), "0") << older;
        EXPECT_EQ(raw.text("SELECT count(*) FROM (" + now + " EXCEPT " + before + ")"), "0") << older;
        const std::string root = "SELECT rootpage FROM ";
        EXPECT_EQ(raw.text(root + "old.sqlite_schema WHERE name = '" + older + "'"),
                  raw.text(root + "main.sqlite_schema WHERE name = '" + newer + "'"))
            << older << " was rebuilt: in a large garage that takes minutes";
        rows += std::stoi(raw.text("SELECT count(*) FROM main." + newer));
    }
    EXPECT_GT(rows, 300);
}

TEST_P(KeptGarage, HasTheSchemaOfANewOne)
{
    const std::string fresh = inFolder("new.asleft");
    ASSERT_TRUE(Database::create(fresh));
    const std::string all = "SELECT group_concat(sql, char(10)) FROM (SELECT sql FROM sqlite_schema ORDER BY type, name)";
    EXPECT_EQ(Raw(path).text(all), Raw(fresh).text(all));
}

TEST_P(KeptGarage, TakesEveryKindOfActAfterwards)
{
    const Sample sample = sampleInIt();
    const auto before = jobActs(*garage, sample.job, sample.engine).value();
    const ActSeq reading =
        committed(*garage, [&](Transaction &transaction) { return append(transaction, actOf(sample, "after", readingOf(sample, 0, 18))); });
    std::vector<NewAct> written;
    for (const Fact &fact : everyKindOfFact(sample, reading)) {
        written.push_back(actOf(sample, "after " + std::to_string(written.size()), fact));
        committed(*garage, [&](Transaction &transaction) { return append(transaction, written.back()); });
    }
    auto after = jobActs(*garage, sample.job, sample.engine).value();
    ASSERT_EQ(after.size(), before.size() + 1 + written.size());
    EXPECT_TRUE(std::equal(before.begin(), before.end(), after.begin()));
    EXPECT_TRUE(std::equal(written.begin(), written.end(), after.end() - static_cast<std::ptrdiff_t>(written.size()), after.end(),
                           [](const NewAct &one, const Act &other) { return one == other.what; }));
    EXPECT_TRUE(garage->check());
}

TEST_P(KeptGarage, KnowsEveryKindByItsLookUpTable)
{
    const Sample sample = sampleInIt();
    garage.reset();
    Raw raw(path);
    raw.run("PRAGMA foreign_keys = ON");
    for (const std::string &refused : {
             std::string("UPDATE tool SET kind = 'x' WHERE kind = 'feeler_set'"),
             std::string("UPDATE job_step SET kind = 'x' WHERE kind = 'valve_set'"),
             "INSERT INTO act (uid, job, who, seat, at_ms, kind, checksum) VALUES ('x', " + std::to_string(sample.job.key()) +
                 ", 1, '', 0, 'x', 0)",
             std::string("INSERT INTO job_step_caution (job_step, place, caution) VALUES (1, 99, 'x')"),
             std::string("INSERT INTO fact_caution (act, place, caution) VALUES (1, 99, 'x')"),
             std::string("INSERT INTO fact_check_again (act, why, cause) VALUES (1, '', 'x')"),
             std::string("INSERT INTO spec (engine, subject, revision, condition, manual, page, certainty) "
                         "VALUES (1, 'x', 1, 'cold', '', '', 'assumed')"),
         })
        EXPECT_EQ(raw.run(refused), SQLITE_CONSTRAINT_FOREIGNKEY) << refused;
    for (const char *table : {"act_kind", "step_kind", "tool_kind", "caution_kind", "disturbance_kind", "spec_subject"})
        EXPECT_EQ(raw.run("DELETE FROM " + std::string(table)), SQLITE_CONSTRAINT_TRIGGER) << table;
}

TEST_P(KeptGarage, KeepsItsRules)
{
    const Sample sample = sampleInIt();
    garage.reset();
    const std::string reading = "INSERT INTO fact_reading (act, place, point, phase, form, condition, spec_leaf, out_of_place, ";
    for (const std::string &refused : {
             std::string("UPDATE engine SET layout = 'x'"),
             std::string("UPDATE engine SET cycle = 'x'"),
             std::string("UPDATE engine SET bridged = 2"),
             std::string("UPDATE engine SET injector_starts = 1"),
             std::string("UPDATE engine SET exhaust_again_ends = 1"),
             std::string("UPDATE engine SET adjuster_kind = 'x'"),
             std::string("UPDATE vehicle SET stand = 2"),
             std::string("UPDATE tool SET error_nm = 1"),
             std::string("UPDATE tool SET calibration_due = '2024-01-01'"),
             std::string("UPDATE tool SET least = 1, least_unit = 'Nm', least_text = ''"),
             std::string("UPDATE job_step SET joint = 1 WHERE kind = 'note'"),
             std::string("INSERT INTO fact_finding (act, text) VALUES (999, 'x')"),
             std::string("INSERT INTO fact_finding (act, joint, point, text) VALUES (999, 1, 1, 'x')"),
             std::string("INSERT INTO setting_point (engine, cylinder, adjuster) VALUES (1, 0, 'x')"),
             std::string(
                 "INSERT INTO spec_band (spec, place, form, low, unit, text, tolerance_assumed) VALUES (2, 1, 'range', 1, 'x', '', 0)"),
             std::string("INSERT INTO turning_table_line (turning_table, place, cylinder, stroke, points) VALUES (1, 99, '1', 'x', '')"),
             std::string("INSERT INTO fact_plan (act, engine, generated, way, source) VALUES (1, 1, 1, 'x', '')"),
             std::string("INSERT INTO plan_position (act, place, cylinder, stroke, crank) VALUES (1, 99, 0, 'x', 0)"),
             std::string("INSERT INTO plan_point (act, position, place, cylinder, adjuster, margin) VALUES (1, 0, 99, 0, 'x', 0)"),
             std::string("INSERT INTO plan_unreached (act, place, cylinder, adjuster) VALUES (1, 99, 0, 'x')"),
             std::string("INSERT INTO meter_reading (vehicle, unit, thousandths, text, at_ms, replaced) VALUES (1, 'mile', 1, '', 1, 2)"),
             reading + "turned) VALUES (1, 9, 1, 'as_left', 'turned', 'cold', 0, 0, NULL)",
             reading + "turned, turned_unit) VALUES (1, 9, 1, 'as_left', 'turned', 'cold', 0, 0, 1, 'turn')",
             reading + "turned, turned_unit, turned_text) VALUES (1, 9, 1, 'as_left', 'turned', 'cold', 0, 0, 1, 'mm', '')",
             reading + "turned, turned_unit, turned_text) VALUES (1, 9, 1, 'as_left', 'turned', 'cold', 0, 0, -1, 'deg', '')",
             reading + "turned, turned_unit, turned_text) VALUES (1, 9, 1, 'as_left', 'by_feel', 'cold', 0, 0, 1, 'deg', '')",
             reading + "uncertainty_nm) VALUES (1, 9, 1, 'as_left', 'by_feel', 'cold', 0, 0, -1)",
             reading + "temperature) VALUES (1, 9, 1, 'as_left', 'by_feel', 'cold', 0, 0, 1)",
             reading + "temperature, temperature_unit, temperature_text) VALUES (1, 9, 1, 'as_left', 'by_feel', 'cold', 0, 0, 1, 'K', '')",
             reading + "minutes_since_run) VALUES (1, 9, 1, 'as_left', 'by_feel', 'cold', 0, 0, -1)",
             reading + "value_nm, value_unit, value_text, turned, turned_unit, turned_text) "
                       "VALUES (1, 9, 1, 'as_left', 'turned', 'cold', 0, 0, 1, 'mm', '', 1, 'deg', '')",
         }) {
        // CHECK rules alone: what it refers to need not be there.
        Raw raw(path);
        raw.run("PRAGMA foreign_keys = OFF");
        EXPECT_EQ(raw.run(refused), SQLITE_CONSTRAINT_CHECK) << refused;
    }
    Raw raw(path);
    raw.run("PRAGMA foreign_keys = OFF; BEGIN");
    EXPECT_EQ(raw.run(reading +
                      "turned, turned_unit, turned_text, uncertainty_nm, temperature, temperature_unit, temperature_text, "
                      "minutes_since_run) VALUES (999, 9, 1, 'as_left', 'turned', 'cold', 0, 0, 1, 'deg', '', 0, -5, 'C', '-5', 0)"),
              SQLITE_OK)
        << "what the others above are near to";
    raw.run("ROLLBACK");
}

INSTANTIATE_TEST_SUITE_P(OfThePrograms, KeptGarage, ::testing::Values(first(), second(), third(), fourth()),
                         [](const auto &tested) { return "Version" + std::to_string(tested.param.version); });

} // namespace kept_garages_tests
} // namespace asleft
