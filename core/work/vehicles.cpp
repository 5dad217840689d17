#include <work/vehicles.h>

#include "internals.h"
#include "meters.h"
#include "vehicle_text.h"

#include <store/things.h>

#include <map>

namespace asleft {

namespace {

/// What readings and the place of the crank hang on: points are kept by their cylinder's place among the labels, crank angles by the
/// firing order. Changed under a job, readings would be exchanged and the crank would stand elsewhere than it was left.
bool sameCylinders(const EngineDesign &a, const EngineDesign &b)
{
    return a.labels == b.labels && a.firingOrder == b.firingOrder && a.gaps == b.gaps;
}

Done changeOwner(Transaction &transaction, VehicleId vehicle, const CheckedVehicle &checked, Moment now)
{
    if (Done stored = storeMeterIfNew(transaction, vehicle, checked, now); !stored)
        return stored;
    return updateVehicle(transaction, {.id = vehicle, .name = checked.name, .mark = checked.mark, .number = checked.number});
}

Done changeEngine(Transaction &transaction, const Vehicle &place, EngineId engineId, const CheckedEngine &checked)
{
    auto now = engine(transaction.database(), engineId);
    if (!now)
        return tl::unexpected(now.error());
    if (now->vehicle != place.id)
        return fail(ErrorKind::NotFound, Noun::Engine);
    if (!sameCylinders(now->design, checked.design)) {
        const auto worked = engineWorkedOn(transaction.database(), engineId);
        if (!worked)
            return tl::unexpected(worked.error());
        if (*worked)
            return fail(ErrorKind::CylindersInUse, place.name);
    }
    now->name = checked.name;
    now->design = checked.design;
    now->screw = checked.screw;
    return updateEngine(transaction, *now);
}

/// A checked half of the text, or the refusal; nothing where it is not asked for.
template <class Checked, class Check>
Result<std::optional<Checked>> checkedIf(bool asked, Check check)
{
    if (!asked)
        return std::optional<Checked>{};
    Result<Checked> checked = check();
    if (!checked)
        return tl::unexpected(checked.error());
    return std::optional(std::move(*checked));
}

} // namespace

Result<NewVehicle> addVehicle(Garage &garage, const VehicleText &text, DecimalMark mark)
{
    if (const Done may = writable(garage); !may)
        return tl::unexpected(may.error());
    const auto owner = checkVehicle(text);
    if (!owner)
        return tl::unexpected(owner.error());
    const auto fitted = checkEngine(text, mark);
    if (!fitted)
        return tl::unexpected(fitted.error());
    auto added = inTransaction(garage, [&](Transaction &transaction) -> Result<NewVehicle> {
        const auto vehicle =
            insertVehicle(transaction, {.id = VehicleId(0), .name = owner->name, .mark = owner->mark, .number = owner->number});
        if (!vehicle)
            return tl::unexpected(vehicle.error());
        const auto engine = insertEngine(transaction, {*vehicle, fitted->name, fitted->design, fitted->screw, garage.now()});
        if (!engine)
            return tl::unexpected(engine.error());
        return storeMeterIfNew(transaction, *vehicle, *owner, garage.now()).map([&] { return NewVehicle{*vehicle, *engine}; });
    });
    if (added)
        Q_EMIT garage.changed({Change::What::Vehicles, added->engine});
    return added;
}

Done changeVehicle(Garage &garage, VehicleId vehicleId, std::optional<EngineId> engineId, const VehicleText &text, DecimalMark mark)
{
    if (Done may = writable(garage); !may)
        return may;
    const auto known = vehicle(*garage.internals().database, vehicleId);
    if (!known)
        return tl::unexpected(known.error());
    const auto owner = checkedIf<CheckedVehicle>(!known->stand, [&] { return checkVehicle(text); });
    if (!owner)
        return tl::unexpected(owner.error());
    const auto fitted = checkedIf<CheckedEngine>(engineId.has_value(), [&] { return checkEngine(text, mark); });
    if (!fitted)
        return tl::unexpected(fitted.error());
    Done changed = inTransaction(garage, [&](Transaction &transaction) -> Done {
        if (engineId) {
            if (Done stored = changeEngine(transaction, *known, *engineId, **fitted); !stored)
                return stored;
        }
        return *owner ? changeOwner(transaction, vehicleId, **owner, garage.now()) : Done{};
    });
    if (changed)
        Q_EMIT garage.changed({Change::What::Vehicles, engineId});
    return changed;
}

Result<std::vector<VehicleRow>> vehicles(Garage &garage)
{
    Database &database = *garage.internals().database;
    const auto moment = Snapshot::begin(database); // else an engine moved meanwhile would be in two vehicles, or in none
    if (!moment)
        return tl::unexpected(moment.error());
    const auto all = vehicles(database);
    if (!all)
        return tl::unexpected(all.error());
    auto fitted = engines(database);
    if (!fitted)
        return tl::unexpected(fitted.error());
    const auto meters = latestMeters(database);
    if (!meters)
        return tl::unexpected(meters.error());
    std::map<VehicleId, MeterReading> meterOf;
    for (const MeterReading &meter : *meters)
        meterOf.emplace(meter.vehicle, meter);
    std::multimap<VehicleId, Engine> enginesOf;
    for (Engine &engine : *fitted)
        enginesOf.emplace(engine.vehicle, std::move(engine));

    // A row for each engine there; a vehicle without one has a row all the same, an empty stand none.
    std::vector<VehicleRow> rows;
    for (const Vehicle &vehicle : *all) {
        const auto read = meterOf.find(vehicle.id);
        const auto meter = read == meterOf.end() ? std::nullopt : std::optional(read->second);
        const auto [first, last] = enginesOf.equal_range(vehicle.id);
        for (auto engine = first; engine != last; ++engine)
            rows.push_back({vehicle, std::move(engine->second), meter});
        if (first == last && !vehicle.stand)
            rows.push_back({vehicle, std::nullopt, meter});
    }
    return rows;
}

} // namespace asleft
