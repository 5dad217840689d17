#pragma once

#include <work/vehicles.h>

#include <QString>

#include <map>

namespace asleft {

/// The fields of the vehicle form that can be refused, in the order they stand.
enum class VehicleField {
    Name,
    Mark,
    Meter,
    EngineName,
    Cylinders,
    FiringOrder,
    Gaps,
    Numbering,
    ValveOrder,
    Pitch,
    Ratio,
    IntakeOpens,
    IntakeCloses,
    ExhaustOpens,
    ExhaustCloses,
    CheckLift,
    Ramp,
};

/// What stands in the form, as typed.
struct VehicleTyped {
    std::map<VehicleField, QString> texts;
    MeterUnit meterUnit = MeterUnit::Hour;
    Layout layout = Layout::InLine;
    Rotation rotation = Rotation::Clockwise;
    bool camKnown = false;

    [[nodiscard]] QString text(VehicleField field) const;
    [[nodiscard]] std::string plain(VehicleField field) const { return text(field).toStdString(); }
    bool operator==(const VehicleTyped &) const = default;
};

/// What it means, and what of it cannot be taken, field by field: a slip in one field hides none in another.
struct VehicleReading {
    VehicleText text;
    std::map<VehicleField, Error> refusals;
};

VehicleReading readVehicle(const VehicleTyped &typed, DecimalMark mark);

/// The sentence that refuses a field: what to type where nothing is typed, else what is wrong.
QString refusalSentence(VehicleField field, const Error &error);

/// The form of a stored vehicle. Its meter is left empty: it is read anew or not at all.
VehicleTyped typedOf(const VehicleRow &row, DecimalMark mark);

} // namespace asleft
