// Where engines are: in vehicles, and on the stand.
#include "internals.h"
#include "vehicle_text.h"

#include <store/things.h>

#include <algorithm>

namespace asleft {

namespace {

/// The stand, made at its first need.
Result<Vehicle> theStand(Transaction &transaction)
{
    const auto all = vehicles(transaction.database());
    if (!all)
        return tl::unexpected(all.error());
    if (const auto stand = std::ranges::find(*all, true, &Vehicle::stand); stand != all->end())
        return *stand;
    Vehicle stand{.id = VehicleId(0), .name = "Engine stand", .mark = {}, .number = {}, .stand = true};
    const auto id = insertVehicle(transaction, stand);
    if (!id)
        return tl::unexpected(id.error());
    stand.id = *id;
    return stand;
}

Result<Vehicle> placeFor(Transaction &transaction, std::optional<VehicleId> into)
{
    return into ? vehicle(transaction.database(), *into) : theStand(transaction);
}

/// Of the stand, which has room for any number of them, nothing.
Result<std::vector<Engine>> inTheWay(Transaction &transaction, const Vehicle &place)
{
    return place.stand ? std::vector<Engine>{} : engines(transaction.database(), place.id);
}

Done clear(Transaction &transaction, const Vehicle &place, Moment now)
{
    const auto there = inTheWay(transaction, place);
    if (!there)
        return tl::unexpected(there.error());
    for (const Engine &engine : *there) {
        const auto stand = theStand(transaction);
        if (!stand)
            return tl::unexpected(stand.error());
        if (Done moved = fitEngine(transaction, engine.id, stand->id, now); !moved)
            return moved;
    }
    return {};
}

/// Whether it was elsewhere before.
Result<bool> moved(Transaction &transaction, EngineId engineId, std::optional<VehicleId> into, Moment now)
{
    const auto moving = engine(transaction.database(), engineId);
    if (!moving)
        return tl::unexpected(moving.error());
    const auto place = placeFor(transaction, into);
    if (!place)
        return tl::unexpected(place.error());
    if (moving->vehicle == place->id)
        return false;
    return clear(transaction, *place, now).and_then([&] { return fitEngine(transaction, engineId, place->id, now); }).map([] {
        return true;
    });
}

} // namespace

Done moveEngine(Garage &garage, EngineId engine, std::optional<VehicleId> into)
{
    if (Done may = writable(garage); !may)
        return may;
    const auto done = inTransaction(garage, [&](Transaction &transaction) { return moved(transaction, engine, into, garage.now()); });
    if (!done)
        return tl::unexpected(done.error());
    // Another engine may have had to make room: the change is not of one alone.
    if (*done)
        Q_EMIT garage.changed({Change::What::Vehicles});
    return {};
}

Result<EngineId> addEngine(Garage &garage, std::optional<VehicleId> into, const VehicleText &text, DecimalMark mark)
{
    if (const Done may = writable(garage); !may)
        return tl::unexpected(may.error());
    const auto checked = checkEngine(text, mark);
    if (!checked)
        return tl::unexpected(checked.error());
    auto added = inTransaction(garage, [&](Transaction &transaction) -> Result<EngineId> {
        const auto place = placeFor(transaction, into);
        if (!place)
            return tl::unexpected(place.error());
        const auto there = inTheWay(transaction, *place);
        if (!there)
            return tl::unexpected(there.error());
        if (!there->empty())
            return fail(ErrorKind::VehicleTaken, place->name);
        return insertEngine(transaction, {place->id, checked->name, checked->design, checked->screw, garage.now()});
    });
    if (added)
        Q_EMIT garage.changed({Change::What::Vehicles, *added});
    return added;
}

Result<std::vector<EngineStay>> engineStays(Garage &garage, EngineId engineId)
{
    Database &database = *garage.internals().database;
    const auto moment = Snapshot::begin(database);
    if (!moment)
        return tl::unexpected(moment.error());
    if (const auto known = engine(database, engineId); !known)
        return tl::unexpected(known.error());
    const auto fits = engineFits(database, engineId);
    if (!fits)
        return tl::unexpected(fits.error());
    std::vector<EngineStay> stays;
    for (const EngineFit &fit : *fits) {
        auto place = vehicle(database, fit.vehicle);
        if (!place)
            return tl::unexpected(place.error());
        stays.push_back({fit.vehicle, std::move(place->name), place->stand, fit.fitted});
    }
    return stays;
}

} // namespace asleft
