#pragma once

#include "vehicle_text.h"

#include <store/things.h>

namespace asleft {

/// Stores a reading; refuses one below the last in the same unit with MeterRunsBack, unless it is of another meter.
Result<MeterReadingId> storeMeter(Transaction &transaction, const NewMeterReading &reading);

/// The same of the meter as it stands in a vehicle's form, if any does: as it was last read, it was not read again.
Done storeMeterIfNew(Transaction &transaction, VehicleId vehicle, const CheckedVehicle &form, Moment now);

} // namespace asleft
