// Engines that move between vehicles and the stand.
#include "support.h"

#include <algorithm>

namespace asleft {
namespace engines_tests {

class Engines : public WorkTest {
protected:
    NewVehicle tractor = need(addVehicle(*garage, named("Tractor", "Diesel")));
    NewVehicle van = need(addVehicle(*garage, named("Van", "Flat four")));

    static VehicleText named(const std::string &vehicle, const std::string &engine)
    {
        VehicleText text = tractorText();
        text.name = vehicle;
        text.engineName = engine;
        return text;
    }
    /// "Tractor: Diesel; Van: -", in the order of the rows.
    std::string where()
    {
        std::string all;
        for (const VehicleRow &row : need(vehicles(*garage)))
            all += (all.empty() ? "" : "; ") + row.vehicle.name + ": " + (row.engine ? row.engine->name : "-");
        return all;
    }
    VehicleId stand()
    {
        const auto rows = need(vehicles(*garage));
        const auto found = std::ranges::find_if(rows, [](const VehicleRow &row) { return row.vehicle.stand; });
        if (found == rows.end())
            throw std::runtime_error("no stand");
        return found->vehicle.id;
    }
    std::unique_ptr<JobBook> jobOn(VehicleId vehicle, EngineId engine)
    {
        auto book = need(JobBook::open(*garage, need(openJob(*garage, vehicle, engine, builtInSheets().front(), "Valves"))));
        book->setWho(need(addPerson(*garage, "M.K.", "")));
        return book;
    }
    void tomorrow() { clock->forward(std::chrono::hours(24)); }
};

TEST_F(Engines, GoOntoTheStandWhichIsThereWhenItIsNeeded)
{
    EXPECT_EQ(where(), "Tractor: Diesel; Van: Flat four");
    need(moveEngine(*garage, tractor.engine, std::nullopt));
    EXPECT_EQ(where(), "Tractor: -; Van: Flat four; Engine stand: Diesel");
    need(moveEngine(*garage, van.engine, std::nullopt));
    EXPECT_EQ(where(), "Tractor: -; Van: -; Engine stand: Diesel; Engine stand: Flat four") << "one stand for all";
    EXPECT_FALSE(need(vehicles(*garage)).at(2).meter);
    need(moveEngine(*garage, tractor.engine, van.vehicle));
    need(moveEngine(*garage, van.engine, tractor.vehicle));
    EXPECT_EQ(where(), "Tractor: Flat four; Van: Diesel") << "an empty stand has no row";
}

TEST_F(Engines, TakeThePlaceOfTheOneThatIsThere)
{
    int told = 0;
    QObject::connect(garage.get(), &Garage::changed, [&](const Change &change) {
        EXPECT_EQ(change.what, Change::What::Vehicles);
        EXPECT_FALSE(change.engine) << "two have moved";
        ++told;
    });
    need(moveEngine(*garage, tractor.engine, van.vehicle));
    EXPECT_EQ(where(), "Tractor: -; Van: Diesel; Engine stand: Flat four");
    EXPECT_EQ(told, 1);
}

TEST_F(Engines, ThatAreThereAlreadyStay)
{
    need(moveEngine(*garage, van.engine, std::nullopt));
    int told = 0;
    QObject::connect(garage.get(), &Garage::changed, [&] { ++told; });
    need(moveEngine(*garage, van.engine, std::nullopt));
    need(moveEngine(*garage, van.engine, stand()));
    need(moveEngine(*garage, tractor.engine, tractor.vehicle));
    EXPECT_EQ(told, 0);
    EXPECT_EQ(need(engineStays(*garage, van.engine)).size(), 2U);
    EXPECT_EQ(need(engineStays(*garage, tractor.engine)).size(), 1U);
}

TEST_F(Engines, OrVehiclesThatAreNotThere)
{
    EXPECT_EQ(refusal(moveEngine(*garage, EngineId(99), van.vehicle)), ErrorKind::NotFound);
    EXPECT_EQ(refusal(moveEngine(*garage, EngineId(99), std::nullopt)), ErrorKind::NotFound);
    EXPECT_EQ(refusal(moveEngine(*garage, van.engine, VehicleId(99))), ErrorKind::NotFound);
    EXPECT_EQ(refusal(addEngine(*garage, VehicleId(99), tractorText())), ErrorKind::NotFound);
    EXPECT_EQ(refusal(engineStays(*garage, EngineId(99))), ErrorKind::NotFound);
    EXPECT_EQ(where(), "Tractor: Diesel; Van: Flat four");
}

TEST_F(Engines, AreAddedWhereThereIsRoom)
{
    const Result<EngineId> taken = addEngine(*garage, van.vehicle, named("", "Third"));
    ASSERT_FALSE(taken.has_value());
    EXPECT_EQ(taken.error(), (Error{ErrorKind::VehicleTaken, {"Van"}}));
    const EngineId spare = need(addEngine(*garage, std::nullopt, named("", "Third")));
    const EngineId second = need(addEngine(*garage, stand(), named("", "Fourth")));
    EXPECT_NE(spare, second);
    need(moveEngine(*garage, van.engine, std::nullopt));
    need(addEngine(*garage, van.vehicle, named("", "Fifth")));
    EXPECT_EQ(where(), "Tractor: Diesel; Van: Fifth; Engine stand: Flat four; Engine stand: Third; Engine stand: Fourth");
    VehicleText broken = tractorText();
    broken.engine.firingOrder = "1-3-4";
    EXPECT_EQ(refusal(addEngine(*garage, std::nullopt, broken)), ErrorKind::FiringOrderMissing);
}

TEST_F(Engines, AreFollowed)
{
    tomorrow();
    need(moveEngine(*garage, tractor.engine, van.vehicle));
    tomorrow();
    need(moveEngine(*garage, van.engine, tractor.vehicle));
    const Moment first{1'000'000};
    const Moment second{first.utcMilliseconds + 86'400'000};
    const auto stays = need(engineStays(*garage, van.engine));
    ASSERT_EQ(stays.size(), 3U);
    EXPECT_EQ(stays[0].vehicle, van.vehicle);
    EXPECT_EQ(stays[0].since, first);
    EXPECT_TRUE(stays[1].stand);
    EXPECT_EQ(stays[1].vehicleName, "Engine stand");
    EXPECT_EQ(stays[1].since, second);
    EXPECT_EQ(stays[2].vehicleName, "Tractor");
    EXPECT_FALSE(stays[2].stand);
    EXPECT_EQ(stays[2].since, clock->now());
}

TEST_F(Engines, MoveWithTheirOpenJobs)
{
    const auto book = jobOn(tractor.vehicle, tractor.engine);
    need(book->confirmCrank(degrees(180)));
    const PointId point = book->state().frame->engine.points.front().id;
    need(book->openNut(point));
    need(moveEngine(*garage, tractor.engine, van.vehicle));
    EXPECT_EQ(book->state().frame->engine.vehicle, van.vehicle) << "an open book hears of it";
    EXPECT_EQ(book->state().frame->vehicle.id, tractor.vehicle) << "the job was opened there";
    EXPECT_EQ(book->state().crank->crank, degrees(180));
    EXPECT_EQ(book->state().point(point).stage, PointStage::NutOpen);
    need(book->logReading({.point = point, .phase = Phase::AsLeft, .value = length("0.3 mm")}));

    const auto later = jobOn(van.vehicle, tractor.engine);
    EXPECT_EQ(later->state().crank->crank, degrees(180)) << "the crank belongs to the engine";
    EXPECT_EQ(later->state().frame->engine.points, book->state().frame->engine.points);
    const auto ofTheOther = jobOn(stand(), van.engine);
    EXPECT_FALSE(ofTheOther->state().crank);
}

TEST_F(Engines, OnTheStandAreWorkedOn)
{
    const EngineId spare = need(addEngine(*garage, std::nullopt, named("", "Spare")));
    const auto book = jobOn(stand(), spare);
    EXPECT_TRUE(book->state().frame->vehicle.stand);
    EXPECT_FALSE(book->state().frame->meter);
    need(book->confirmCrank(degrees(0)));
    EXPECT_EQ(need(jobs(*garage)).at(0).vehicleName, "Engine stand");
}

TEST_F(Engines, OnTheStandAreChangedAloneAndItKeepsItsName)
{
    need(moveEngine(*garage, tractor.engine, std::nullopt));
    VehicleText text = named("", "Renamed");
    text.engine.firingOrder = "1-2-4-3";
    text.meter = "not looked at";
    need(changeVehicle(*garage, stand(), tractor.engine, text));
    EXPECT_EQ(where(), "Tractor: -; Van: Flat four; Engine stand: Renamed");
    EXPECT_TRUE(need(meterReadings(*garage, stand())).empty());
    EXPECT_TRUE(need(vehicles(*garage)).at(2).vehicle.stand);
}

TEST_F(Engines, KeepTheirCylindersWhereverTheyWereWorkedOn)
{
    need(jobOn(tractor.vehicle, tractor.engine)->confirmCrank(degrees(0)));
    need(moveEngine(*garage, tractor.engine, std::nullopt));
    VehicleText text = tractorText();
    text.engine.firingOrder = "1-2-4-3";
    EXPECT_EQ(refusal(changeVehicle(*garage, stand(), tractor.engine, text)), ErrorKind::CylindersInUse);
    need(moveEngine(*garage, tractor.engine, van.vehicle));
    EXPECT_EQ(refusal(changeVehicle(*garage, van.vehicle, tractor.engine, text)), ErrorKind::CylindersInUse);
    need(changeVehicle(*garage, stand(), van.engine, text));
}

TEST_F(Engines, LeaveVehiclesThatCanStillBeChanged)
{
    const auto book = jobOn(tractor.vehicle, tractor.engine);
    need(moveEngine(*garage, tractor.engine, std::nullopt));
    VehicleText text = named("Old tractor", "not looked at");
    text.engine.firingOrder = "nor this";
    text.meter = "3900 h";
    need(changeVehicle(*garage, tractor.vehicle, std::nullopt, text));
    EXPECT_EQ(where(), "Old tractor: -; Van: Flat four; Engine stand: Diesel");
    EXPECT_EQ(need(vehicles(*garage)).at(0).meter->text, "3900 h");
    EXPECT_EQ(book->state().frame->vehicle.name, "Old tractor") << "a job opened there hears of it";
}

} // namespace engines_tests
} // namespace asleft
