#pragma once

#include <shop/things.h>
#include <shop/vehicle_number.h>

#include <QString>

#include <vector>

namespace asleft {

// Meters and vehicle numbers.

/// "3 812 h": as typed, with its unit.
QString meterText(const MeterReading &reading);
/// "61 204 mi over two meters": what the vehicle did in all, where its meter was replaced; else empty.
QString meterTotalText(const std::vector<MeterReading> &readings);
/// What the check digit says of a vehicle number, and what was kept; empty where nothing was typed.
QString vehicleNumberText(const VehicleNumber &number);

} // namespace asleft
