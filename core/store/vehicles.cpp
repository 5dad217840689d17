#include <store/things.h>

#include "changes.h"
#include "thing_rows.h"

namespace asleft {

using namespace store;

Result<VehicleId> insertVehicle(Transaction &transaction, const Vehicle &vehicle)
{
    return insertDescribed<VehicleId>(Internals::of(transaction), "vehicle", vehicle);
}

Done updateVehicle(Transaction &transaction, const Vehicle &vehicle)
{
    return changeRow(Internals::of(transaction), "UPDATE vehicle SET name = ?, mark = ?, number = ? WHERE id = ? RETURNING id",
                     values(vehicle.name, vehicle.mark, vehicle.number, vehicle.id), Noun::Vehicle);
}

namespace {

const std::string vehicleColumns = "SELECT id, " + namesOf<Vehicle>() + " FROM vehicle ";

} // namespace

Result<std::vector<Vehicle>> vehicles(Database &database)
{
    return allRows(Internals::of(database), vehicleColumns + "ORDER BY id", {}, taken<Vehicle>);
}

Result<Vehicle> vehicle(Database &database, VehicleId id)
{
    return foundRow(Internals::of(database), vehicleColumns + "WHERE id = ?", values(id), taken<Vehicle>, Noun::Vehicle);
}

Result<MeterReadingId> insertMeterReading(Transaction &transaction, const NewMeterReading &reading)
{
    return insertDescribed<MeterReadingId>(
        Internals::of(transaction), "meter_reading",
        MeterReading{MeterReadingId(0), reading.vehicle, reading.unit, reading.thousandths, reading.text, reading.at, reading.replaced});
}

namespace {

const std::string meterColumns = "SELECT id, " + namesOf<MeterReading>() + " FROM meter_reading ";
const std::string metersOfOne = meterColumns + "WHERE vehicle = ? ";

} // namespace

Result<std::optional<MeterReading>> latestMeter(Database &database, VehicleId vehicle)
{
    return oneRow(Internals::of(database), metersOfOne + "ORDER BY at_ms DESC, id DESC LIMIT 1", values(vehicle), taken<MeterReading>);
}

Result<std::vector<MeterReading>> latestMeters(Database &database)
{
    return allRows(Internals::of(database),
                   meterColumns + "WHERE id IN (SELECT (SELECT latest.id FROM meter_reading AS latest WHERE latest.vehicle = vehicle.id "
                                  "ORDER BY latest.at_ms DESC, latest.id DESC LIMIT 1) FROM vehicle)",
                   {}, taken<MeterReading>);
}

Result<std::vector<MeterReading>> meterReadings(Database &database, VehicleId vehicle)
{
    return allRows(Internals::of(database), metersOfOne + "ORDER BY at_ms, id", values(vehicle), taken<MeterReading>);
}

} // namespace asleft
