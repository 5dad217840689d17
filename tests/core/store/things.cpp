#include "sample.h"
#include "support.h"

#include <store/journal.h>

#include <algorithm>
#include <set>
#include <span>

namespace asleft {
namespace {

class Things : public GarageTest {
protected:
    VehicleId addVehicle(const std::string &name)
    {
        return committed(*garage, [&](Transaction &transaction) { return insertVehicle(transaction, name, "AB 123"); });
    }

    EngineId addEngine(VehicleId vehicle, const EngineDesign &design, const ScrewText &screw = {})
    {
        return committed(*garage, [&](Transaction &transaction) {
            return insertEngine(transaction, {vehicle, "Engine", design, screw, Moment{1}});
        });
    }
};

/// An engine that has something unusual in every field.
EngineDesign unusualDesign()
{
    EngineText text;
    text.layout = Layout::Vee;
    text.cylinders = 4;
    text.numbering = "A1 A2 / B1 B2";
    text.firingOrder = "A1-B2-A2-B1";
    text.gaps = "90-270";
    text.valveOrder = "E I I E";
    text.rotation = Rotation::Anticlockwise;
    text.cam = {millidegrees(-5'500), degrees(61), degrees(62), Angle::ofSmallest(123'456'789), degrees(7), "0,050 in", false};
    return designEngine(text).value();
}

TEST_F(Things, KeepsVehicles)
{
    const VehicleId lorry = addVehicle("Lorry");
    const VehicleId tractor = addVehicle("Tractor");
    EXPECT_EQ(vehicles(*garage).value(), (std::vector<Vehicle>{{lorry, "Lorry", "AB 123"}, {tractor, "Tractor", "AB 123"}}));
    done(*garage, [&](Transaction &transaction) { return updateVehicle(transaction, {lorry, "Crane lorry", ""}); });
    reopen();
    EXPECT_EQ(vehicle(*garage, lorry).value(), (Vehicle{lorry, "Crane lorry", ""}));
    EXPECT_EQ(vehicle(*garage, tractor).value(), (Vehicle{tractor, "Tractor", "AB 123"}));
}

TEST_F(Things, SaysWhatIsNotThere)
{
    EXPECT_EQ(vehicle(*garage, VehicleId(9)).error(), (Error{ErrorKind::NotFound, {"vehicle"}}));
    EXPECT_EQ(engine(*garage, EngineId(9)).error(), (Error{ErrorKind::NotFound, {"engine"}}));
    EXPECT_EQ(job(*garage, JobId(9)).error(), (Error{ErrorKind::NotFound, {"job"}}));
    {
        auto transaction = Transaction::begin(*garage);
        EXPECT_EQ(updateVehicle(*transaction, {VehicleId(9), "x", ""}).error(), (Error{ErrorKind::NotFound, {"vehicle"}}));
        EXPECT_EQ(transaction->commit().error(), (Error{ErrorKind::NotFound, {"vehicle"}}));
    }
    EXPECT_TRUE(vehicles(*garage).value().empty());
    EXPECT_EQ(latestMeter(*garage, VehicleId(9)).value(), std::nullopt);
    EXPECT_EQ(table(*garage, EngineId(9)).value().has_value(), false);
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
    const auto nameless = insertVehicle(*transaction, "", "");
    ASSERT_FALSE(nameless);
    EXPECT_EQ(nameless.error().kind, ErrorKind::Database);
}

TEST_F(Things, KeepsEngineDesigns)
{
    const VehicleId lorry = addVehicle("Lorry");
    for (const EngineDesign &design : {inLineFour(), unusualDesign()}) {
        const EngineId id = addEngine(lorry, design, {"1,25", "5/4"});
        reopen();
        const Engine read = engine(*garage, id).value();
        EXPECT_EQ(read.design, design);
        EXPECT_EQ(read.vehicle, lorry);
        EXPECT_EQ(read.name, "Engine");
        EXPECT_EQ(read.screw, (ScrewText{"1,25", "5/4"}));
        ASSERT_TRUE(read.adjuster);
        EXPECT_EQ(read.adjuster->pitch, micrometres(1250));
        EXPECT_EQ(read.adjuster->ratio, 1.25);
    }
    EXPECT_EQ(engines(*garage, lorry).value().size(), 2U);
}

TEST_F(Things, GivesEveryValveAPointInOrder)
{
    const EngineDesign design = unusualDesign();
    const Engine read = engine(*garage, addEngine(addVehicle("Lorry"), design)).value();
    std::vector<AdjusterRef> valves;
    std::set<PointId> ids;
    for (const SettingPoint &point : read.points) {
        valves.push_back(point.adjuster);
        ids.insert(point.id);
    }
    EXPECT_EQ(valves, design.adjusters());
    EXPECT_EQ(ids.size(), 8U);
    EXPECT_FALSE(read.adjuster) << "no pitch is known";
}

TEST_F(Things, KeepsThePointsOfAnEngineThatIsEdited)
{
    const EngineId id = addEngine(addVehicle("Lorry"), inLineFour());
    const Engine before = engine(*garage, id).value();
    Engine edited = before;
    edited.name = "Renamed";
    EngineText text = describeDesign(before.design);
    text.cylinders = 6;
    text.firingOrder = "1-5-3-6-2-4";
    text.gaps = text.numbering = "";
    edited.design = designEngine(text).value();
    edited.screw.pitch = "1 mm";
    done(*garage, [&](Transaction &transaction) { return updateEngine(transaction, edited); });
    const Engine after = engine(*garage, id).value();
    EXPECT_EQ(after.name, "Renamed");
    EXPECT_EQ(after.design, edited.design);
    EXPECT_EQ(after.adjuster->pitch, micrometres(1000));
    ASSERT_EQ(after.points.size(), 12U);
    EXPECT_TRUE(std::ranges::equal(before.points, std::span(after.points).first(8)));

    done(*garage, [&](Transaction &transaction) { return updateEngine(transaction, before); });
    EXPECT_EQ(engine(*garage, id).value().points, before.points);
}

TEST_F(Things, MovesEnginesBetweenVehicles)
{
    const VehicleId lorry = addVehicle("Lorry");
    const VehicleId tractor = addVehicle("Tractor");
    const EngineId id = addEngine(lorry, inLineFour());
    const auto fit = [&](VehicleId vehicle) {
        done(*garage, [&](Transaction &transaction) { return fitEngine(transaction, id, vehicle, Moment{}); });
    };
    fit(tractor);
    EXPECT_EQ(engine(*garage, id).value().vehicle, tractor);
    EXPECT_TRUE(engines(*garage, lorry).value().empty());
    EXPECT_EQ(engines(*garage, tractor).value().size(), 1U);
    fit(lorry);
    EXPECT_EQ(engines(*garage, lorry).value().size(), 1U) << "once, although it was fitted there twice";
    EXPECT_TRUE(engines(*garage, tractor).value().empty());
}

TEST_F(Things, CallsAnUnreadableEngineDamaged)
{
    const EngineId id = addEngine(addVehicle("Lorry"), inLineFour());
    Raw(path).run("UPDATE engine SET firing_order = '1-1-1-1'");
    EXPECT_EQ(engine(*garage, id).error(), (Error{ErrorKind::Damaged, {path, "engine " + std::to_string(id.key())}}));
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

TEST_F(Things, KeepsPeopleAndFeelerSets)
{
    const PersonId person = committed(*garage, [](Transaction &transaction) { return insertPerson(transaction, "jk", "Jo Köhler"); });
    const std::vector<Typed<Length>> leaves = {hundredths(5), {thou(8), LengthUnit::Thou, "8"}, {thou(12), LengthUnit::Inch, ".012"}};
    const ToolId set = committed(
        *garage, [&](Transaction &transaction) { return insertFeelerSet(transaction, "Bent", "0.05 mm, 8 thou, .012 in", leaves); });
    EXPECT_EQ(people(*garage).value(), (std::vector<Person>{{person, "jk", "Jo Köhler"}}));
    EXPECT_EQ(tools(*garage).value(), (std::vector<Tool>{{set, "Bent", "0.05 mm, 8 thou, .012 in", leaves}}));
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
    const std::vector<TableLine> lines = {{"4", CrankEvent::Overlap, "IN 1 2"}, {"1", CrankEvent::Compression, "EX 1"}};
    EXPECT_EQ(add({"Old", "1", {}}, {{"1", {}, "I1"}, {"2", {}, "I2"}, {"3", {}, "I3"}}), 1);
    EXPECT_EQ(add({"New", "2", Certainty::FromMemory}, lines), 2);
    const TurningTable read = table(*garage, four).value().value();
    EXPECT_EQ(read.engine, four);
    EXPECT_EQ(read.revision, 2);
    EXPECT_EQ(read.source, (SpecSource{"New", "2", Certainty::FromMemory}));
    ASSERT_EQ(read.lines.size(), 2U);
    for (std::size_t place = 0; place < 2; ++place) {
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

TEST_F(Things, ListsTheNewestJobsFirst)
{
    const Sample sample = storeSample(*garage);
    const VehicleId tractor = addVehicle("Tractor");
    const JobId other = committed(*garage, [&](Transaction &transaction) {
        return insertJob(transaction, {tractor, sample.engine, "Other", Moment{20}, {}});
    });
    NewAct act = actOf(sample, "a", NutOpenFact{sample.points[0]});
    for (const std::int64_t at : {900, 800}) {
        act.uid += "x";
        act.at = Moment{at};
        committed(*garage, [&](Transaction &transaction) { return append(transaction, act); });
    }
    const JobRow first{sample.job, sample.vehicle, "Lorry", sample.engine, "Four", "Valves", Moment{10}, Moment{800}, 2};
    const JobRow second{other, tractor, "Tractor", sample.engine, "Four", "Other", Moment{20}, {}, 0};
    EXPECT_EQ(jobs(*garage).value(), (std::vector{second, first}));
    EXPECT_EQ(jobs(*garage, {sample.vehicle, {}, 10}).value(), (std::vector{first}));
    EXPECT_EQ(jobs(*garage, {{}, other, 10}).value(), (std::vector{first}));
    EXPECT_EQ(jobs(*garage, {{}, {}, 1}).value(), (std::vector{second}));
    EXPECT_TRUE(jobs(*garage, {tractor, other, 10}).value().empty());
}

} // namespace
} // namespace asleft
