#pragma once

#include "sample.h"
#include "support.h"

namespace asleft {

/// A garage in which a vehicle or an engine is one line.
class ThingsTest : public GarageTest {
protected:
    VehicleId addVehicle(const std::string &name)
    {
        return committed(*garage, [&](Transaction &transaction) { return insertVehicle(transaction, newVehicle(name, "AB 123")); });
    }

    EngineId addEngine(VehicleId vehicle, const EngineDesign &design, const ScrewText &screw = {})
    {
        return committed(*garage, [&](Transaction &transaction) {
            return insertEngine(transaction, {vehicle, "Engine", design, screw, Moment{1}});
        });
    }
};

} // namespace asleft
