#pragma once

#include <work/vehicles.h>

namespace asleft {

/// What a VehicleText says of the vehicle, read and checked.
struct CheckedVehicle {
    std::string name;
    std::string mark;
    std::string number;
    std::optional<MeterText> meter;
    bool meterReplaced = false;
};
/// Refuses a vehicle without a name, and a meter that cannot be read.
Result<CheckedVehicle> checkVehicle(const VehicleText &text);

/// What it says of the engine.
struct CheckedEngine {
    std::string name; ///< may be empty
    EngineDesign design;
    ScrewText screw;
};
/// Refuses an engine that does not fit together, and adjusters that cannot be.
Result<CheckedEngine> checkEngine(const VehicleText &text, DecimalMark mark);

} // namespace asleft
