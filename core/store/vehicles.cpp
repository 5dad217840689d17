#include <store/things.h>

#include "changes.h"
#include "connection.h"

namespace asleft {

using namespace store;

Result<VehicleId> insertVehicle(Transaction &transaction, const Vehicle &vehicle)
{
    return insertRow<VehicleId>(Internals::of(transaction),
                                "INSERT INTO vehicle (name, mark, number, stand) VALUES (?, ?, ?, ?) RETURNING id",
                                values(vehicle.name, vehicle.mark, vehicle.number, vehicle.stand));
}

Done updateVehicle(Transaction &transaction, const Vehicle &vehicle)
{
    return changeRow(Internals::of(transaction), "UPDATE vehicle SET name = ?, mark = ?, number = ? WHERE id = ? RETURNING id",
                     values(vehicle.name, vehicle.mark, vehicle.number, vehicle.id), Noun::Vehicle);
}

namespace {

Vehicle vehicleOf(Row &row)
{
    return {row.id<VehicleId>(), row.text(), row.text(), row.text(), row.flag()};
}

} // namespace

Result<std::vector<Vehicle>> vehicles(Database &database)
{
    return allRows(Internals::of(database), "SELECT id, name, mark, number, stand FROM vehicle ORDER BY id", {}, vehicleOf);
}

Result<Vehicle> vehicle(Database &database, VehicleId id)
{
    return foundRow(Internals::of(database), "SELECT id, name, mark, number, stand FROM vehicle WHERE id = ?", values(id), vehicleOf,
                    Noun::Vehicle);
}

Result<MeterReadingId> insertMeterReading(Transaction &transaction, const NewMeterReading &reading)
{
    return insertRow<MeterReadingId>(
        Internals::of(transaction),
        "INSERT INTO meter_reading (vehicle, unit, thousandths, text, at_ms, replaced) VALUES (?, ?, ?, ?, ?, ?) RETURNING id",
        values(reading.vehicle, reading.unit, reading.thousandths, reading.text, reading.at, reading.replaced));
}

namespace {

/// What meterOf() takes.
const std::string meterColumns = "SELECT id, vehicle, unit, thousandths, text, at_ms, replaced FROM meter_reading WHERE vehicle = ? ";

MeterReading meterOf(Row &row)
{
    return {row.id<MeterReadingId>(), row.id<VehicleId>(), row.word<MeterUnit>(), row.number(), row.text(), row.moment(), row.flag()};
}

} // namespace

Result<std::optional<MeterReading>> latestMeter(Database &database, VehicleId vehicle)
{
    return oneRow(Internals::of(database), meterColumns + "ORDER BY at_ms DESC, id DESC LIMIT 1", values(vehicle), meterOf);
}

Result<std::vector<MeterReading>> meterReadings(Database &database, VehicleId vehicle)
{
    return allRows(Internals::of(database), meterColumns + "ORDER BY at_ms, id", values(vehicle), meterOf);
}

} // namespace asleft
