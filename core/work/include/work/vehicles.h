#pragma once

#include <shop/vehicle_entry.h>
#include <work/garage.h>

#include <vector>

namespace asleft {

struct NewVehicle {
    VehicleId vehicle;
    EngineId engine;
};

/// Refuses a vehicle without a name and an engine that does not fit together, and then stores nothing.
Result<NewVehicle> addVehicle(Garage &garage, const VehicleText &text, DecimalMark mark = DecimalMark::Point);

/// Changes name, mark, engine name, screw and design. Cylinders, firing order and gaps can be changed only until a job of the
/// engine has acts (CylindersInUse): readings and the place of the crank hang on them. A meter that reads otherwise than the last time is
/// a further reading; one that reads less, on the same meter, is refused with MeterRunsBack. Of an engine on the stand only the engine is
/// changed. Without an engine, a vehicle whose engine was taken out: only the vehicle is.
Done changeVehicle(Garage &garage, VehicleId vehicle, std::optional<EngineId> engine, const VehicleText &text,
                   DecimalMark mark = DecimalMark::Point);

/// Stores a further reading of a vehicle's meter.
/// Refuses a reading below the last one in the same unit with MeterRunsBack; `replaced` says that it is another meter.
Result<MeterReadingId> readMeter(Garage &garage, VehicleId vehicle, std::string_view text, MeterUnit fieldUnit, bool replaced = false);
/// Every reading of a vehicle, oldest first.
Result<std::vector<MeterReading>> meterReadings(Garage &garage, VehicleId vehicle);

/// Puts an engine into a vehicle and the one that is in there onto the stand; without a vehicle, onto the stand itself. Its history goes
/// with it, and the jobs open on it stay open. Changes nothing where it is there already.
Done moveEngine(Garage &garage, EngineId engine, std::optional<VehicleId> into);
/// Describes another engine and puts it into a vehicle, or without one onto the stand. VehicleTaken where one is in there. What `text`
/// says of a vehicle is not looked at.
Result<EngineId> addEngine(Garage &garage, std::optional<VehicleId> into, const VehicleText &text, DecimalMark mark = DecimalMark::Point);

/// Where an engine has been, oldest first.
struct EngineStay {
    VehicleId vehicle;
    std::string vehicleName;
    bool stand = false;
    Moment since;
};
Result<std::vector<EngineStay>> engineStays(Garage &garage, EngineId engine);

/// A vehicle and the engine in it. The stand has a row for every engine on it, and none when it is empty.
struct VehicleRow {
    Vehicle vehicle;
    std::optional<Engine> engine; ///< empty: it was taken out
    std::optional<MeterReading> meter;
};
Result<std::vector<VehicleRow>> vehicles(Garage &garage);

} // namespace asleft
