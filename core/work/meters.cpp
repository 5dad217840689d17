#include "meters.h"

#include "internals.h"

#include <algorithm>

namespace asleft {

namespace {

/// The last reading in a unit: a vehicle may have a meter for its hours and one for its way.
Result<std::optional<MeterReading>> lastIn(Database &database, VehicleId vehicle, MeterUnit unit)
{
    const auto all = meterReadings(database, vehicle);
    if (!all)
        return tl::unexpected(all.error());
    const auto last = std::find_if(all->rbegin(), all->rend(), [&](const MeterReading &reading) { return reading.unit == unit; });
    return last == all->rend() ? std::optional<MeterReading>{} : std::optional(*last);
}

} // namespace

Result<MeterReadingId> storeMeter(Transaction &transaction, const NewMeterReading &reading)
{
    const auto last = lastIn(transaction.database(), reading.vehicle, reading.unit);
    if (!last)
        return tl::unexpected(last.error());
    if (*last && !reading.replaced && reading.thousandths < (*last)->thousandths)
        return fail(ErrorKind::MeterRunsBack, reading.text, (*last)->text);
    return insertMeterReading(transaction, reading);
}

Done storeMeterIfNew(Transaction &transaction, VehicleId vehicle, const CheckedVehicle &form, Moment now)
{
    if (!form.meter)
        return {};
    const MeterText &meter = *form.meter;
    const auto last = lastIn(transaction.database(), vehicle, meter.unit);
    if (!last)
        return tl::unexpected(last.error());
    const bool same = *last && (*last)->thousandths == meter.thousandths && (!form.meterReplaced || (*last)->replaced);
    if (same)
        return {};
    const auto stored = storeMeter(transaction, {vehicle, meter.unit, meter.thousandths, meter.text, now, form.meterReplaced});
    return stored ? Done{} : Done(tl::unexpected(stored.error()));
}

Result<MeterReadingId> readMeter(Garage &garage, VehicleId vehicle, std::string_view text, MeterUnit fieldUnit, bool replaced)
{
    if (const Done may = writable(garage); !may)
        return tl::unexpected(may.error());
    const auto meter = parseMeter(text, fieldUnit);
    if (!meter)
        return tl::unexpected(meter.error());
    auto stored = inTransaction(garage, [&](Transaction &transaction) {
        return storeMeter(transaction, {vehicle, meter->unit, meter->thousandths, meter->text, garage.now(), replaced});
    });
    if (stored)
        Q_EMIT garage.changed({Change::What::Vehicles});
    return stored;
}

Result<std::vector<MeterReading>> meterReadings(Garage &garage, VehicleId vehicle)
{
    return meterReadings(*garage.internals().database, vehicle);
}

} // namespace asleft
