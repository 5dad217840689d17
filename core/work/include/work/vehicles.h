#pragma once

#include <shop/entry.h>
#include <work/garage.h>

#include <vector>

namespace asleft {

/// A vehicle and its engine as a person types them.
struct VehicleText {
    std::string name;
    std::string mark;
    std::string meter; ///< empty: not read
    MeterUnit meterUnit = MeterUnit::Hour;
    std::string engineName; ///< may be empty
    EngineText engine;
    ScrewText screw;
};

struct NewVehicle {
    VehicleId vehicle;
    EngineId engine;
};

/// Refuses a vehicle without a name and an engine that does not fit together, and then stores nothing.
Result<NewVehicle> addVehicle(Garage &garage, const VehicleText &text, DecimalMark mark = DecimalMark::Point);

/// Changes name, mark, engine name, screw and design. Cylinders, firing order and gaps can be changed only until a job of the
/// engine has acts (CylindersInUse): readings and the place of the crank hang on them. A meter that reads otherwise than the last time is
/// a further reading.
Done changeVehicle(Garage &garage, VehicleId vehicle, EngineId engine, const VehicleText &text, DecimalMark mark = DecimalMark::Point);

/// Stores a further reading of a vehicle's meter.
Result<MeterReadingId> readMeter(Garage &garage, VehicleId vehicle, std::string_view text, MeterUnit fieldUnit);

struct VehicleRow {
    Vehicle vehicle;
    Engine engine;
    std::optional<MeterReading> meter;
};
Result<std::vector<VehicleRow>> vehicles(Garage &garage);

/// Refuses initials that are empty; the same initials again give the same person back.
Result<PersonId> addPerson(Garage &garage, std::string_view initials, std::string_view name);
Result<std::vector<Person>> people(Garage &garage);

Result<ToolId> addFeelerSet(Garage &garage, std::string_view name, std::string_view leaves, LengthUnit fieldUnit,
                            DecimalMark mark = DecimalMark::Point);
Result<std::vector<Tool>> tools(Garage &garage);

} // namespace asleft
