#include "things_test.h"

#include <sqlite3.h>

#include <algorithm>
#include <set>
#include <span>

namespace asleft {
namespace engines_tests {

using Engines = ThingsTest;

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
    text.cam = {millidegrees(-5'500), degrees(61), degrees(62), Angle::ofSmallest(123'456'789), degrees(7), {}, {}, "0,050 in", false};
    return designEngine(text).value();
}

/// Everything that can be set on an engine, with arcs of its own.
EngineDesign bridgedDesign()
{
    EngineText text = describeDesign(unusualDesign());
    text.valves = "4";
    text.bridged = text.bridgeScrews = text.injectors = text.decompressors = true;
    text.barring = "132/11";
    text.cam.exhaustAgain = CrankArc{degrees(-40), millidegrees(15'250)};
    text.cam.injector = CrankArc{degrees(-70), degrees(20)};
    return designEngine(text).value();
}

EngineDesign engineOf(Layout layout, const std::string &order, const std::string &valves, Cycle cycle = Cycle::FourStroke)
{
    EngineText text;
    text.layout = layout;
    text.cylinders = static_cast<int>(std::ranges::count(order, '-')) + 1;
    text.firingOrder = order;
    text.valves = valves;
    text.cycle = cycle;
    if (cycle == Cycle::TwoStroke)
        text.cam = twoStrokeCam();
    return designEngine(text).value();
}

/// Between them every layout, both cycles and every adjuster there is.
std::vector<EngineDesign> everyDesign()
{
    std::vector<EngineDesign> designs = {
        inLineFour(),
        unusualDesign(),
        bridgedDesign(),
        engineOf(Layout::Single, "1", "5"),
        engineOf(Layout::Flat, "1-4-3-2", "2+1"),
        engineOf(Layout::W, "1-2-3", ""),
        engineOf(Layout::Radial, "1-3-5-7-9-2-4-6-8", "2"),
        engineOf(Layout::Opposed, "1-2-3-4-5-6-7-8", "3"),
        engineOf(Layout::InLine, "1-3-2", "0+4", Cycle::TwoStroke),
    };
    EngineText bridges = describeDesign(designs.back());
    bridges.bridged = bridges.bridgeScrews = bridges.injectors = true;
    designs.push_back(designEngine(bridges).value());
    return designs;
}

TEST_F(Engines, KeepsEngineDesigns)
{
    const VehicleId lorry = addVehicle("Lorry");
    for (const EngineDesign &design : everyDesign()) {
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
    EXPECT_EQ(engines(*garage, lorry).value().size(), everyDesign().size());
}

TEST_F(Engines, KeepsWhatIsKnownOfTheTappets)
{
    const VehicleId lorry = addVehicle("Lorry");
    const ScrewText hydraulic{"0.75", "", AdjusterKind::Hydraulic, "1 h"};
    const EngineId id = addEngine(lorry, inLineFour(), hydraulic);
    EXPECT_EQ(engine(*garage, id).value().screw, hydraulic);
    EXPECT_EQ(engine(*garage, id).value().bleedDown, std::chrono::minutes(60));
    Engine screws = engine(*garage, id).value();
    screws.screw = {};
    done(*garage, [&](Transaction &transaction) { return updateEngine(transaction, screws); });
    EXPECT_EQ(engine(*garage, id).value().screw, ScrewText());
    EXPECT_EQ(engine(*garage, id).value().bleedDown, std::nullopt);
    Raw(path).run("UPDATE engine SET adjuster_kind = 'hydraulic', bleed_down = 'a while'");
    EXPECT_EQ(engine(*garage, id).error().kind, ErrorKind::Damaged);
}

TEST_F(Engines, GivesEveryAdjusterAPointInOrder)
{
    const VehicleId lorry = addVehicle("Lorry");
    for (const EngineDesign &design : everyDesign()) {
        const Engine read = engine(*garage, addEngine(lorry, design)).value();
        std::vector<AdjusterRef> adjusters;
        std::set<PointId> ids;
        for (const SettingPoint &point : read.points) {
            adjusters.push_back(point.adjuster);
            ids.insert(point.id);
        }
        EXPECT_EQ(adjusters, design.adjusters());
        EXPECT_EQ(ids.size(), adjusters.size());
        EXPECT_FALSE(read.adjuster) << "no pitch is known";
    }
}

/// Nothing an engine can have is without a word, and the words in use are those of the schema.
TEST_F(Engines, UseEveryWordForAnAdjuster)
{
    const VehicleId lorry = addVehicle("Lorry");
    for (const EngineDesign &design : everyDesign())
        addEngine(lorry, design);
    EXPECT_EQ(Raw(path).text("SELECT group_concat(adjuster) FROM (SELECT DISTINCT adjuster FROM setting_point ORDER BY 1)"),
              "decompressor,exhaust,exhaust_2,exhaust_3,exhaust_4,exhaust_bridge,exhaust_bridge_2,injector,intake,intake_2,intake_3,"
              "intake_bridge");
    EXPECT_EQ(Raw(path).run("INSERT INTO setting_point (engine, cylinder, adjuster) VALUES (1, 0, 'intake_4')"), SQLITE_CONSTRAINT_CHECK);
}

TEST_F(Engines, KeepsThePointsOfAnEngineThatIsEdited)
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

TEST_F(Engines, MovesEnginesBetweenVehicles)
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

TEST_F(Engines, RemembersWhereAnEngineHasBeen)
{
    const VehicleId lorry = addVehicle("Lorry");
    const VehicleId tractor = addVehicle("Tractor");
    const EngineId id = addEngine(lorry, inLineFour());
    addEngine(tractor, inLineFour());
    for (const auto &[vehicle, at] : {std::pair(tractor, 700), std::pair(lorry, 30)})
        done(*garage, [&](Transaction &transaction) { return fitEngine(transaction, id, vehicle, Moment{at}); });
    std::vector<std::pair<VehicleId, Moment>> stays;
    const auto fits = engineFits(*garage, id).value();
    for (const EngineFit &fit : fits)
        stays.emplace_back(fit.vehicle, fit.fitted);
    EXPECT_EQ(stays, (std::vector<std::pair<VehicleId, Moment>>{{lorry, {1}}, {tractor, {700}}, {lorry, {30}}}))
        << "in the order of moving, whatever a clock said";
    EXPECT_TRUE(engineFits(*garage, EngineId(99)).value().empty());
}

TEST_F(Engines, CallsAPointThatIsMissingDamaged)
{
    const EngineId id = addEngine(addVehicle("Lorry"), bridgedDesign());
    EXPECT_EQ(Raw(path).run("DELETE FROM setting_point WHERE cylinder = 2 AND adjuster = 'decompressor'"), SQLITE_OK);
    EXPECT_EQ(engine(*garage, id).error(), (Error{ErrorKind::Damaged, {path, std::to_string(id.key())}, Noun::Engine}));
}

TEST_F(Engines, CallsAnUnreadableEngineDamaged)
{
    const EngineId id = addEngine(addVehicle("Lorry"), inLineFour());
    Raw(path).run("UPDATE engine SET firing_order = '1-1-1-1'");
    EXPECT_EQ(engine(*garage, id).error(), (Error{ErrorKind::Damaged, {path, std::to_string(id.key())}, Noun::Engine}));
}

} // namespace engines_tests
} // namespace asleft
