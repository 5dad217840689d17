#include <store/things.h>

#include "changes.h"
#include "connection.h"

namespace asleft {

using namespace store;

Result<VehicleId> insertVehicle(Transaction &transaction, const std::string &name, const std::string &mark)
{
    return insertRow<VehicleId>(Inside::of(transaction), "INSERT INTO vehicle (name, mark) VALUES (?, ?) RETURNING id", values(name, mark));
}

Done updateVehicle(Transaction &transaction, const Vehicle &vehicle)
{
    return changeRow(Inside::of(transaction), "UPDATE vehicle SET name = ?, mark = ? WHERE id = ? RETURNING id",
                     values(vehicle.name, vehicle.mark, vehicle.id), "vehicle");
}

namespace {

Vehicle vehicleOf(Row &row)
{
    const auto id = row.id<VehicleId>();
    auto name = row.text();
    return {id, std::move(name), row.text()};
}

} // namespace

Result<std::vector<Vehicle>> vehicles(Database &database)
{
    return allRows(Inside::of(database), "SELECT id, name, mark FROM vehicle ORDER BY id", {}, vehicleOf);
}

Result<Vehicle> vehicle(Database &database, VehicleId id)
{
    return foundRow(Inside::of(database), "SELECT id, name, mark FROM vehicle WHERE id = ?", values(id), vehicleOf, "vehicle");
}

Result<MeterReadingId> insertMeterReading(Transaction &transaction, const NewMeterReading &reading)
{
    return insertRow<MeterReadingId>(
        Inside::of(transaction), "INSERT INTO meter_reading (vehicle, unit, thousandths, text, at_ms) VALUES (?, ?, ?, ?, ?) RETURNING id",
        values(reading.vehicle, reading.unit, reading.thousandths, reading.text, reading.at));
}

Result<std::optional<MeterReading>> latestMeter(Database &database, VehicleId vehicle)
{
    return oneRow(Inside::of(database),
                  "SELECT id, vehicle, unit, thousandths, text, at_ms FROM meter_reading WHERE vehicle = ? "
                  "ORDER BY at_ms DESC, id DESC LIMIT 1",
                  values(vehicle), [](Row &row) {
                      const auto id = row.id<MeterReadingId>();
                      const auto of = row.id<VehicleId>();
                      const auto unit = row.word<MeterUnit>();
                      const auto thousandths = row.number();
                      auto text = row.text();
                      return MeterReading{id, of, unit, thousandths, std::move(text), row.moment()};
                  });
}

} // namespace asleft
