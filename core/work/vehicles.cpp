#include <work/vehicles.h>

#include "inside.h"

#include <store/things.h>

#include <algorithm>
#include <limits>

namespace asleft {

namespace {

/// The longest name, plate or title; longer is a paste by mistake.
constexpr std::size_t longestName = 200;

/// A vehicle as typed, read and checked.
struct Checked {
    std::string name;
    std::string mark;
    std::string engineName;
    std::optional<MeterText> meter;
    EngineDesign design;
    ScrewText screw;
};

Result<std::string> checkedName(std::string_view text, const char *field)
{
    std::string name = trimmedText(text);
    if (name.empty())
        return fail(ErrorKind::NameMissing, field);
    if (name.size() > longestName)
        return fail(ErrorKind::TextTooLong, std::to_string(name.size()), std::to_string(longestName));
    return name;
}

Result<std::optional<MeterText>> checkedMeter(const VehicleText &text)
{
    if (trimmedText(text.meter).empty())
        return std::optional<MeterText>{};
    auto meter = parseMeter(text.meter, text.meterUnit);
    if (!meter)
        return tl::unexpected(meter.error());
    return std::optional(std::move(*meter));
}

Result<Checked> check(const VehicleText &text, DecimalMark mark)
{
    Checked checked;
    auto name = checkedName(text.name, "vehicle");
    if (!name)
        return tl::unexpected(name.error());
    checked.name = std::move(*name);
    checked.mark = trimmedText(text.mark);
    checked.engineName = trimmedText(text.engineName);
    if (const auto longest = std::max(checked.mark.size(), checked.engineName.size()); longest > longestName)
        return fail(ErrorKind::TextTooLong, std::to_string(longest), std::to_string(longestName));
    auto meter = checkedMeter(text);
    if (!meter)
        return tl::unexpected(meter.error());
    checked.meter = std::move(*meter);
    auto design = designEngine(text.engine, mark);
    if (!design)
        return tl::unexpected(design.error());
    checked.design = std::move(*design);
    if (const auto screw = readScrew(text.screw, mark); !screw)
        return tl::unexpected(screw.error());
    checked.screw = {trimmedText(text.screw.pitch), trimmedText(text.screw.ratio)};
    return checked;
}

Done storeMeter(Transaction &transaction, VehicleId vehicle, const MeterText &meter, Moment now)
{
    const auto stored = insertMeterReading(transaction, {vehicle, meter.unit, meter.thousandths, meter.text, now});
    return stored ? Done{} : Done(tl::unexpected(stored.error()));
}

/// The meter as it was last read stands in the form again; it was not read again by that.
Done storeMeterIfNew(Transaction &transaction, VehicleId vehicle, const std::optional<MeterText> &meter, Moment now)
{
    if (!meter)
        return {};
    const auto latest = latestMeter(transaction.database(), vehicle);
    if (!latest)
        return tl::unexpected(latest.error());
    if (*latest && (*latest)->unit == meter->unit && (*latest)->thousandths == meter->thousandths)
        return {};
    return storeMeter(transaction, vehicle, *meter, now);
}

/// Whether any job of this engine has acts already.
Result<bool> isWorkedOn(Database &database, VehicleId vehicle, EngineId engine)
{
    const auto rows = jobs(database, {.vehicle = vehicle, .before = {}, .most = std::numeric_limits<int>::max()});
    if (!rows)
        return tl::unexpected(rows.error());
    return std::ranges::any_of(*rows, [&](const JobRow &row) { return row.engine == engine && row.acts > 0; });
}

Result<VehicleRow> rowOf(Database &database, const Vehicle &vehicle)
{
    auto fitted = engines(database, vehicle.id);
    if (!fitted)
        return tl::unexpected(fitted.error());
    if (fitted->empty())
        return fail(ErrorKind::NotFound, "engine");
    auto meter = latestMeter(database, vehicle.id);
    if (!meter)
        return tl::unexpected(meter.error());
    return VehicleRow{vehicle, std::move(fitted->front()), std::move(*meter)};
}

} // namespace

Result<NewVehicle> addVehicle(Garage &garage, const VehicleText &text, DecimalMark mark)
{
    const auto checked = check(text, mark);
    if (!checked)
        return tl::unexpected(checked.error());
    auto added = inTransaction(garage, [&](Transaction &transaction) -> Result<NewVehicle> {
        const auto vehicle = insertVehicle(transaction, checked->name, checked->mark);
        if (!vehicle)
            return tl::unexpected(vehicle.error());
        const auto engine = insertEngine(transaction, {*vehicle, checked->engineName, checked->design, checked->screw, garage.now()});
        if (!engine)
            return tl::unexpected(engine.error());
        if (checked->meter) {
            if (const Done stored = storeMeter(transaction, *vehicle, *checked->meter, garage.now()); !stored)
                return tl::unexpected(stored.error());
        }
        return NewVehicle{*vehicle, *engine};
    });
    if (added)
        Q_EMIT garage.changed({Change::What::Vehicles, added->engine});
    return added;
}

Done changeVehicle(Garage &garage, VehicleId vehicleId, EngineId engineId, const VehicleText &text, DecimalMark mark)
{
    const auto checked = check(text, mark);
    if (!checked)
        return tl::unexpected(checked.error());
    Done changed = inTransaction(garage, [&](Transaction &transaction) -> Done {
        auto now = engine(transaction.database(), engineId);
        if (!now)
            return tl::unexpected(now.error());
        if (now->vehicle != vehicleId)
            return fail(ErrorKind::NotFound, "engine");
        // Points are kept by their cylinder's place among the labels, crank angles by the firing order: changed under a job, readings would
        // be exchanged and the crank would stand elsewhere than it was left.
        const bool sameFrame = now->design.labels == checked->design.labels && now->design.firingOrder == checked->design.firingOrder &&
                               now->design.gaps == checked->design.gaps;
        if (!sameFrame) {
            const auto worked = isWorkedOn(transaction.database(), vehicleId, engineId);
            if (!worked)
                return tl::unexpected(worked.error());
            if (*worked)
                return fail(ErrorKind::CylindersInUse, checked->name);
        }
        now->name = checked->engineName;
        now->design = checked->design;
        now->screw = checked->screw;
        if (Done stored = updateEngine(transaction, *now); !stored)
            return stored;
        if (Done stored = storeMeterIfNew(transaction, vehicleId, checked->meter, garage.now()); !stored)
            return stored;
        return updateVehicle(transaction, {vehicleId, checked->name, checked->mark});
    });
    if (changed)
        Q_EMIT garage.changed({Change::What::Vehicles, engineId});
    return changed;
}

Result<MeterReadingId> readMeter(Garage &garage, VehicleId vehicle, std::string_view text, MeterUnit fieldUnit)
{
    const auto meter = parseMeter(text, fieldUnit);
    if (!meter)
        return tl::unexpected(meter.error());
    auto stored = inTransaction(garage, [&](Transaction &transaction) {
        return insertMeterReading(transaction, {vehicle, meter->unit, meter->thousandths, meter->text, garage.now()});
    });
    if (stored)
        Q_EMIT garage.changed({Change::What::Vehicles});
    return stored;
}

Result<std::vector<VehicleRow>> vehicles(Garage &garage)
{
    Database &database = *garage.inside().database;
    const auto all = vehicles(database);
    if (!all)
        return tl::unexpected(all.error());
    std::vector<VehicleRow> rows;
    for (const Vehicle &vehicle : *all) {
        auto row = rowOf(database, vehicle);
        if (!row)
            return tl::unexpected(row.error());
        rows.push_back(std::move(*row));
    }
    return rows;
}

Result<PersonId> addPerson(Garage &garage, std::string_view initials, std::string_view name)
{
    const auto checked = checkedName(initials, "initials");
    if (!checked)
        return tl::unexpected(checked.error());
    const auto known = people(garage);
    if (!known)
        return tl::unexpected(known.error());
    if (const auto same = std::ranges::find(*known, *checked, &Person::initials); same != known->end())
        return same->id;
    auto added = inTransaction(garage, [&](Transaction &transaction) { return insertPerson(transaction, *checked, trimmedText(name)); });
    if (added)
        Q_EMIT garage.changed({Change::What::People});
    return added;
}

Result<std::vector<Person>> people(Garage &garage)
{
    return people(*garage.inside().database);
}

Result<ToolId> addFeelerSet(Garage &garage, std::string_view name, std::string_view leaves, LengthUnit fieldUnit, DecimalMark mark)
{
    const auto checked = checkedName(name, "feeler set");
    if (!checked)
        return tl::unexpected(checked.error());
    const auto read = parseLeaves(leaves, fieldUnit, mark);
    if (!read)
        return tl::unexpected(read.error());
    auto added =
        inTransaction(garage, [&](Transaction &transaction) { return insertFeelerSet(transaction, *checked, trimmedText(leaves), *read); });
    if (added)
        Q_EMIT garage.changed({Change::What::Tools});
    return added;
}

Result<std::vector<Tool>> tools(Garage &garage)
{
    return tools(*garage.inside().database);
}

} // namespace asleft
