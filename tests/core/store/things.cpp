#include "things_test.h"

#include <store/journal.h>

#include <sqlite3.h>

#include <functional>

namespace asleft {
namespace things_tests {

using Things = ThingsTest;

TEST_F(Things, KeepsVehicles)
{
    const VehicleId lorry = addVehicle("Lorry");
    const VehicleId tractor = addVehicle("Tractor");
    EXPECT_EQ(vehicles(*garage).value(), (std::vector<Vehicle>{{lorry, "Lorry", "AB 123"}, {tractor, "Tractor", "AB 123"}}));
    const Vehicle renamed{lorry, "Crane lorry", "", "1G4AH59H45G118341"};
    done(*garage, [&](Transaction &transaction) { return updateVehicle(transaction, renamed); });
    reopen();
    EXPECT_EQ(vehicle(*garage, lorry).value(), renamed);
    EXPECT_EQ(vehicle(*garage, tractor).value(), (Vehicle{tractor, "Tractor", "AB 123"}));
}

TEST_F(Things, KeepsOneStandAmongTheVehicles)
{
    const auto add = [](Transaction &transaction) { return insertVehicle(transaction, {VehicleId(0), "Stand", "", "", true}); };
    const VehicleId lorry = addVehicle("Lorry");
    const VehicleId stand = committed(*garage, add);
    EXPECT_EQ(vehicles(*garage).value(), (std::vector<Vehicle>{{lorry, "Lorry", "AB 123"}, {stand, "Stand", "", "", true}}));
    {
        auto transaction = Transaction::begin(*garage);
        EXPECT_FALSE(add(*transaction)) << "there is one already";
    }
    done(*garage, [&](Transaction &transaction) { return updateVehicle(transaction, {stand, "Shelf", "", ""}); });
    EXPECT_EQ(vehicle(*garage, stand).value(), (Vehicle{stand, "Shelf", "", "", true})) << "it stays the stand";
}

TEST_F(Things, SaysWhatIsNotThere)
{
    EXPECT_EQ(vehicle(*garage, VehicleId(9)).error(), (Error{ErrorKind::NotFound, {}, Noun::Vehicle}));
    EXPECT_EQ(engine(*garage, EngineId(9)).error(), (Error{ErrorKind::NotFound, {}, Noun::Engine}));
    EXPECT_EQ(job(*garage, JobId(9)).error(), (Error{ErrorKind::NotFound, {}, Noun::Job}));
    {
        auto transaction = Transaction::begin(*garage);
        EXPECT_EQ(updateVehicle(*transaction, {VehicleId(9), "x", ""}).error(), (Error{ErrorKind::NotFound, {}, Noun::Vehicle}));
        EXPECT_EQ(transaction->commit().error(), (Error{ErrorKind::NotFound, {}, Noun::Vehicle}));
    }
    EXPECT_TRUE(vehicles(*garage).value().empty());
    EXPECT_EQ(latestMeter(*garage, VehicleId(9)).value(), std::nullopt);
    EXPECT_EQ(table(*garage, EngineId(9)).value().has_value(), false);
}

/// Words of a newer program, or none at all, put there behind the program's back.
TEST_F(Things, CallsWordsNobodyKnowsDamaged)
{
    const Sample sample = storeSample(*garage);
    done(*garage, [&](Transaction &transaction) {
        return insertTool(transaction, {ToolId(0), "Gauge", "", {}, ToolKind::DialGauge, hundredths(2), hundredths(1)})
            .and_then([&](ToolId) {
                return insertTable(transaction, sample.engine, {}, {{"1", {}, "I1"}});
            })
            .and_then([&](int) {
                return insertMeterReading(transaction, {sample.vehicle, MeterUnit::Mile, 1, "1", Moment{}});
            })
            .map([](MeterReadingId) {});
    });
    garage.reset();
    const std::string sound = bytesOf(path);
    const auto toolsRead = [&] { return tools(*garage).map([](auto &&) {}); };
    const auto engineRead = [&] { return engine(*garage, sample.engine).map([](auto &&) {}); };
    const auto specsRead = [&] { return specs(*garage, sample.engine).map([](auto &&) {}); };
    const std::pair<const char *, std::function<Done()>> changes[] = {
        {"tool SET kind = 'x'", toolsRead},
        {"tool SET error_unit = 'x'", toolsRead},
        {"tool SET resolution_unit = 'deg'", toolsRead},
        {"shop_rule SET decision = 'x'", [&] { return decisionRule(*garage).map([](auto &&) {}); }},
        {"engine SET layout = 'x'", engineRead},
        {"engine SET cycle = 'x'", engineRead},
        {"engine SET adjuster_kind = 'x'", engineRead},
        {"engine SET valves = 'x'", engineRead},
        {"engine SET barring = 'x'", engineRead},
        {"setting_point SET adjuster = 'intake_4' WHERE id = 1", engineRead},
        {"spec SET subject = 'x'", specsRead},
        {"spec_band SET unit = 'x'", specsRead},
        {"turning_table_line SET stroke = 'x'", [&] { return table(*garage, sample.engine).map([](auto &&) {}); }},
        {"meter_reading SET unit = 'x'", [&] { return meterReadings(*garage, sample.vehicle).map([](auto &&) {}); }},
    };
    for (const auto &[change, read] : changes) {
        writeBytes(path, sound);
        reopen();
        EXPECT_TRUE(read()) << change;
        garage.reset();
        Raw raw(path);
        const std::string trigger = std::string(change).substr(0, std::string(change).find(' ')) + "_unchanged";
        raw.run("PRAGMA ignore_check_constraints = ON; DROP TRIGGER IF EXISTS " + trigger);
        ASSERT_EQ(raw.run("UPDATE " + std::string(change)), SQLITE_OK) << change;
        reopen();
        const Done refused = read();
        ASSERT_FALSE(refused) << change;
        EXPECT_EQ(refused.error().kind, ErrorKind::Damaged) << change;
        garage.reset();
    }
}

TEST_F(Things, RefusesRowsThatPointNowhere)
{
    auto transaction = Transaction::begin(*garage);
    EXPECT_FALSE(insertJob(*transaction, {VehicleId(7), EngineId(7), "Job", {}, {}}));
    EXPECT_FALSE(transaction->commit());
}

TEST_F(Things, RefusesAVehicleWithoutAName)
{
    auto transaction = Transaction::begin(*garage);
    const auto nameless = insertVehicle(*transaction, newVehicle(""));
    ASSERT_FALSE(nameless);
    EXPECT_EQ(nameless.error().kind, ErrorKind::Database);
}

TEST_F(Things, GivesTheLatestMeterReading)
{
    const VehicleId lorry = addVehicle("Lorry");
    const auto read = [&](MeterUnit unit, std::int64_t thousandths, std::int64_t at) {
        return committed(*garage, [&](Transaction &transaction) {
            return insertMeterReading(transaction, {lorry, unit, thousandths, "as typed", Moment{at}});
        });
    };
    read(MeterUnit::Mile, 1, 50);
    const MeterReadingId newest = read(MeterUnit::Hour, 12'345'678'901, 90);
    read(MeterUnit::Kilometre, 2, 60);
    EXPECT_EQ(latestMeter(*garage, lorry).value(), (MeterReading{newest, lorry, MeterUnit::Hour, 12'345'678'901, "as typed", Moment{90}}));
    const MeterReadingId sameDate = read(MeterUnit::Kilometre, 3, 90);
    EXPECT_EQ(latestMeter(*garage, lorry).value()->id, sameDate);
}

TEST_F(Things, GivesEveryMeterReadingOldestFirst)
{
    const VehicleId lorry = addVehicle("Lorry");
    const VehicleId tractor = addVehicle("Tractor");
    std::vector<MeterReading> stored;
    const auto read = [&](VehicleId vehicle, std::int64_t thousandths, std::int64_t at, bool replaced) {
        const NewMeterReading reading{vehicle, MeterUnit::Mile, thousandths, "text", Moment{at}, replaced};
        const MeterReadingId id = committed(*garage, [&](Transaction &transaction) { return insertMeterReading(transaction, reading); });
        if (vehicle == lorry)
            stored.push_back({id, lorry, MeterUnit::Mile, thousandths, "text", Moment{at}, replaced});
    };
    read(lorry, 61'204'000, 90, false);
    read(tractor, 5, 10, false);
    read(lorry, 12'000, 95, true);
    read(lorry, 60'000'000, 20, false);
    read(lorry, 13'000, 95, false);
    reopen();
    EXPECT_EQ(meterReadings(*garage, lorry).value(), (std::vector{stored[2], stored[0], stored[1], stored[3]}));
    EXPECT_EQ(latestMeter(*garage, lorry).value(), stored[3]);
    EXPECT_TRUE(meterReadings(*garage, VehicleId(99)).value().empty());
}

TEST_F(Things, KeepsPeopleAndTools)
{
    const PersonId person = committed(*garage, [](Transaction &transaction) { return insertPerson(transaction, "jk", "Jo Köhler"); });
    const std::vector<Typed<Length>> leaves = {hundredths(5), {thou(8), LengthUnit::Thou, "8"}, {thou(12), LengthUnit::Inch, ".012"}};
    const Typed<Length> resolution{thou(1), LengthUnit::Inch, ".001"};
    std::vector<Tool> expected = {
        newFeelerSet("Bent", "0.05 mm, 8 thou, .012 in", leaves),
        {ToolId(0), "Gauge", "", {}, ToolKind::DialGauge, hundredths(2), resolution},
        {ToolId(0), "Micrometer", "", {}, ToolKind::Micrometer, {}, {}},
        {ToolId(0), "Half known", "", {}, ToolKind::DialGauge, {}, resolution},
    };
    for (Tool &tool : expected)
        tool.id = committed(*garage, [&](Transaction &transaction) { return insertTool(transaction, tool); });
    reopen();
    EXPECT_EQ(people(*garage).value(), (std::vector<Person>{{person, "jk", "Jo Köhler"}}));
    EXPECT_EQ(tools(*garage).value(), expected);
    EXPECT_EQ(Raw(path).run("UPDATE tool SET error_text = NULL WHERE kind = 'dial_gauge'"), SQLITE_CONSTRAINT_CHECK);
    EXPECT_EQ(Raw(path).run("UPDATE tool SET resolution_unit = NULL WHERE kind = 'dial_gauge'"), SQLITE_CONSTRAINT_CHECK);
}

TEST_F(Things, KeepsHowTheShopDecides)
{
    EXPECT_EQ(decisionRule(*garage).value(), DecisionRule::Simple) << "of a new garage";
    for (const DecisionRule rule : {DecisionRule::WithUncertainty, DecisionRule::Simple}) {
        done(*garage, [&](Transaction &transaction) { return updateDecisionRule(transaction, rule); });
        reopen();
        EXPECT_EQ(decisionRule(*garage).value(), rule);
    }
    EXPECT_EQ(Raw(path).run("INSERT INTO shop_rule (one, decision) VALUES (2, 'simple')"), SQLITE_CONSTRAINT_CHECK);
    EXPECT_EQ(Raw(path).run("UPDATE shop_rule SET decision = 'by_coin'"), SQLITE_CONSTRAINT_CHECK);
    EXPECT_EQ(Raw(path).run("DELETE FROM shop_rule"), SQLITE_OK);
    EXPECT_EQ(decisionRule(*garage).error(), (Error{ErrorKind::NotFound, {}, Noun::DecisionRule}));
    auto transaction = Transaction::begin(*garage);
    EXPECT_EQ(updateDecisionRule(*transaction, DecisionRule::Simple).error().kind, ErrorKind::NotFound);
}

TEST_F(Things, CountsRevisionsOfSpecs)
{
    const EngineId four = addEngine(addVehicle("Lorry"), inLineFour());
    const EngineId spare = addEngine(addVehicle("Tractor"), inLineFour());
    const SpecBand<Length> lash{parseBand<Length>("0.20-0.30", LengthUnit::Millimetre).value(),
                                parseBand<Length>("at least .008 in", LengthUnit::Inch).value()};
    const SpecBand<Torque> nut{parseBand<Torque>("20", TorqueUnit::PoundFoot).value(), {}};
    const auto add = [&](const NewSpec &spec) {
        return committed(*garage, [&](Transaction &transaction) { return insertSpec(transaction, spec); });
    };
    const SpecSource source{"Manual", "p. 12", Certainty::ToldByPerson};
    const SpecId first = add({four, SpecSubject::IntakeLash, EngineCondition::Hot, source, lash});
    const SpecId torque = add({four, SpecSubject::LockNut, EngineCondition::Cold, {}, nut});
    const SpecId second = add({four, SpecSubject::IntakeLash, EngineCondition::Cold, {}, SpecBand<Length>{lash.first, {}}});
    add({spare, SpecSubject::IntakeLash, EngineCondition::Cold, {}, lash});
    const std::vector<Spec> expected = {
        {first, four, SpecSubject::IntakeLash, 1, EngineCondition::Hot, source, lash},
        {torque, four, SpecSubject::LockNut, 1, EngineCondition::Cold, {}, nut},
        {second, four, SpecSubject::IntakeLash, 2, EngineCondition::Cold, {}, SpecBand<Length>{lash.first, {}}},
    };
    EXPECT_EQ(specs(*garage, four).value(), expected);
}

TEST_F(Things, KeepsSpecsOfEverySubjectAsLengthsOrTurns)
{
    const EngineId four = addEngine(addVehicle("Lorry"), inLineFour());
    const SpecBand<Length> height{parseBand<Length>("1.460", LengthUnit::Inch).value(), {}};
    const SpecBand<Angle> turns{parseBand<Angle>("3/4 to 1", AngleUnit::Turn).value(), {}};
    const SpecBand<Angle> degrees{parseBand<Angle>("270 ± 10", AngleUnit::Degree).value(), {}};
    std::vector<Spec> expected;
    const auto add = [&](SpecSubject subject, int revision, const auto &asked) {
        const NewSpec spec{four, subject, EngineCondition::Cold, {"M", "1", {}}, asked};
        const SpecId id = committed(*garage, [&](Transaction &transaction) { return insertSpec(transaction, spec); });
        expected.push_back({id, four, subject, revision, EngineCondition::Cold, {"M", "1", {}}, asked});
    };
    add(SpecSubject::BridgeScrew, 1, turns);
    add(SpecSubject::Decompressor, 1, SpecBand<Length>{parseBand<Length>("0.7-0.8", LengthUnit::Millimetre).value(), {}});
    add(SpecSubject::Injector, 1, height);
    add(SpecSubject::ExhaustLash, 1, degrees);
    add(SpecSubject::ExhaustLash, 2, height);
    reopen();
    EXPECT_EQ(specs(*garage, four).value(), expected);
}

TEST_F(Things, CallsABandInTheUnitOfSomethingElseDamaged)
{
    const Sample sample = storeSample(*garage);
    const std::string mixed = "INSERT INTO spec_band (spec, place, form, low, high, unit, text, tolerance_assumed) "
                              "VALUES (1, 1, 'range', 1, 2, 'turn', '1-2', 0)";
    EXPECT_EQ(Raw(path).run(mixed), SQLITE_OK);
    EXPECT_EQ(specs(*garage, sample.engine).error().kind, ErrorKind::Damaged);
}

TEST_F(Things, KeepsEveryFormOfBand)
{
    const EngineId four = addEngine(addVehicle("Lorry"), inLineFour());
    std::vector<SpecBand<Length>> bands;
    for (const char *text : {"0.25 ± 0.05", "0.20 to 0.30", "at least 0.2", "at most 0.3", "0.25"})
        bands.push_back({parseBand<Length>(text, LengthUnit::Millimetre).value(), {}});
    for (const auto &band : bands)
        committed(*garage, [&](Transaction &transaction) {
            return insertSpec(transaction, {four, SpecSubject::ExhaustLash, EngineCondition::Cold, {}, band});
        });
    const auto read = specs(*garage, four).value();
    ASSERT_EQ(read.size(), bands.size());
    for (std::size_t place = 0; place < bands.size(); ++place)
        EXPECT_EQ(std::get<SpecBand<Length>>(read[place].asked), bands[place]) << bands[place].first.text;
}

TEST_F(Things, GivesTheLatestTable)
{
    const EngineId four = addEngine(addVehicle("Lorry"), inLineFour());
    const auto add = [&](const SpecSource &source, const std::vector<TableLine> &lines) {
        return committed(*garage, [&](Transaction &transaction) { return insertTable(transaction, four, source, lines); });
    };
    const std::vector<TableLine> lines = {{"4", CrankEvent::Overlap, "IN 1 2"},     {"1", CrankEvent::Compression, "EX 1"},
                                          {"2", CrankEvent::ExhaustOpens, "I2"},    {"2", CrankEvent::IntakeCloses, "E2"},
                                          {"3", CrankEvent::IntakeFullyOpen, "I3"}, {"3", CrankEvent::ExhaustFullyOpen, "DEC 3"}};
    EXPECT_EQ(add({"Old", "1", {}}, {{"1", {}, "I1"}, {"2", {}, "I2"}, {"3", {}, "I3"}}), 1);
    EXPECT_EQ(add({"New", "2", Certainty::FromMemory}, lines), 2);
    const TurningTable read = table(*garage, four).value().value();
    EXPECT_EQ(read.engine, four);
    EXPECT_EQ(read.revision, 2);
    EXPECT_EQ(read.source, (SpecSource{"New", "2", Certainty::FromMemory}));
    ASSERT_EQ(read.lines.size(), lines.size());
    for (std::size_t place = 0; place < lines.size(); ++place) {
        EXPECT_EQ(read.lines[place].cylinder, lines[place].cylinder);
        EXPECT_EQ(read.lines[place].event, lines[place].event);
        EXPECT_EQ(read.lines[place].points, lines[place].points);
    }
}

TEST_F(Things, KeepsJobsWithTheirSteps)
{
    const VehicleId lorry = addVehicle("Lorry");
    const EngineId four = addEngine(lorry, inLineFour());
    const std::vector<SheetLine> lines = {
        {StepKind::Note, "Chock it", "Both ways.", Gate::TurningTheCrank, {Caution::StandsAndChocks, Caution::BatteryOff}},
        {StepKind::ValveSet, "Set", "", Gate::HandOver, {}},
    };
    const JobId id = committed(*garage, [&](Transaction &transaction) {
        return insertJob(transaction, {lorry, four, "Valves", Moment{77}, lines});
    });
    reopen();
    const Job read = job(*garage, id).value();
    EXPECT_EQ(read.vehicle, lorry);
    EXPECT_EQ(read.engine, four);
    EXPECT_EQ(read.title, "Valves");
    EXPECT_EQ(read.opened, Moment{77});
    ASSERT_EQ(read.steps.size(), 2U);
    for (std::size_t place = 0; place < 2; ++place) {
        const SheetLine &line = lines[place];
        EXPECT_EQ(read.steps[place], (Step{read.steps[place].id, line.kind, line.title, line.detail, line.before, line.cautions}));
    }
    EXPECT_NE(read.steps[0].id, read.steps[1].id);
}

TEST_F(Things, ListsTheJobWorkedOnLastFirst)
{
    const Sample sample = storeSample(*garage);
    NewAct act = actOf(sample, "a", NutOpenFact{sample.points[0]});
    const auto log = [&](JobId job, std::int64_t at) {
        act.uid += "x";
        act.job = job;
        act.at = Moment{at};
        return committed(*garage, [&](Transaction &transaction) { return append(transaction, act); }).key();
    };
    // A clock that runs back changes nothing: the journal's order counts.
    log(sample.job, 900);
    const auto last = log(sample.job, 800);
    const VehicleId tractor = addVehicle("Tractor");
    const JobId other = committed(*garage, [&](Transaction &transaction) {
        return insertJob(transaction, {tractor, sample.engine, "Other", Moment{20}, {}});
    });
    const JobRow worked{sample.job, sample.vehicle, "Lorry", sample.engine, "Four", "Valves", Moment{10}, Moment{800}, {last, sample.job}};
    const JobRow opened{other, tractor, "Tractor", sample.engine, "Four", "Other", Moment{20}, {}, {last, other}};
    EXPECT_EQ(jobs(*garage, 10).value(), (std::vector{opened, worked})) << "nobody has worked on it, but it was opened since";
    EXPECT_EQ(jobs(*garage, 1).value(), (std::vector{opened}));
    EXPECT_EQ(jobs(*garage, 10, opened.place).value(), (std::vector{worked}));
    EXPECT_TRUE(jobs(*garage, 10, worked.place).value().empty());
    log(other, 0);
    EXPECT_EQ(jobs(*garage, 1).value().front().id, other);
    log(sample.job, 0);
    EXPECT_EQ(jobs(*garage, 1).value().front().id, sample.job);
    EXPECT_TRUE(engineWorkedOn(*garage, sample.engine).value());
}

TEST_F(Things, TellsLastWorkAnewFromTheActs)
{
    const Sample sample = storeSample(*garage);
    committed(*garage, [&](Transaction &transaction) { return append(transaction, actOf(sample, "a", NutOpenFact{sample.points[0]})); });
    const JobId other = committed(*garage, [&](Transaction &transaction) {
        return insertJob(transaction, {sample.vehicle, sample.engine, "Other", Moment{20}, {}});
    });
    const auto before = jobs(*garage, 10).value();
    EXPECT_TRUE(lastWorkedAsActsSay(*garage).value());
    for (const char *damage : {"UPDATE job_worked SET seq = 77", "DELETE FROM job_worked"}) {
        ASSERT_EQ(Raw(path).run(damage), SQLITE_OK);
        EXPECT_FALSE(lastWorkedAsActsSay(*garage).value()) << damage;
        EXPECT_TRUE(garage->check());
        EXPECT_TRUE(lastWorkedAsActsSay(*garage).value()) << damage;
        EXPECT_EQ(jobs(*garage, 10).value(), before) << damage;
    }
    EXPECT_EQ(before.front().id, other);
}

} // namespace things_tests
} // namespace asleft
