#pragma once

#include <work/vehicles.h>

#include <QString>

#include <map>

namespace asleft {

/// The fields of the vehicle form that can be refused, in the order they stand.
enum class VehicleField {
    Name,
    Mark,
    Number,
    Meter,
    EngineName,
    Cylinders,
    FiringOrder,
    Gaps,
    Numbering,
    Barring,
    Valves,
    ValveOrder,
    Pitch,
    Ratio,
    BleedDown,
    IntakeOpens,
    IntakeCloses,
    ExhaustOpens,
    ExhaustCloses,
    CheckLift,
    Ramp,
    ExhaustAgainFrom,
    ExhaustAgainTo,
    InjectorFrom,
    InjectorTo,
};

/// What stands in the form, as typed.
struct VehicleTyped {
    /// What the form is about: a vehicle with the engine in it, one whose engine was taken out, or an engine by itself.
    enum class About { Both, Vehicle, Engine };

    std::map<VehicleField, QString> texts;
    About about = About::Both;
    MeterUnit meterUnit = MeterUnit::Hour;
    bool meterReplaced = false;
    Layout layout = Layout::InLine;
    Cycle cycle = Cycle::FourStroke;
    Rotation rotation = Rotation::Clockwise;
    bool bridged = false;
    bool bridgeScrews = false;
    bool injectors = false;
    bool decompressors = false;
    AdjusterKind adjusters = AdjusterKind::Screw;
    bool camKnown = false;

    [[nodiscard]] QString text(VehicleField field) const;
    [[nodiscard]] std::string plain(VehicleField field) const { return text(field).toStdString(); }
    bool operator==(const VehicleTyped &) const = default;
};

/// Whether a field is asked for at all, after what else is typed: a two-stroke has no intake events, a hydraulic tappet no pitch. What
/// stands in one that is not is kept and not read.
bool isAskedFor(VehicleField field, const VehicleTyped &typed);

/// What it means, and what of it cannot be taken, field by field: a slip in one field hides none in another.
struct VehicleReading {
    VehicleText text;
    std::map<VehicleField, Error> refusals;
};

/// `lastMeter` is what the vehicle's meter was last read at; what is typed below that is refused unless it is another meter.
VehicleReading readVehicle(const VehicleTyped &typed, DecimalMark mark, const std::optional<MeterReading> &lastMeter = {});

/// The sentence that refuses a field: what to type where nothing is typed, else what is wrong.
QString refusalSentence(VehicleField field, const Error &error);

/// The form of a stored vehicle. Its meter is left empty: it is read anew or not at all.
VehicleTyped typedOf(const VehicleRow &row, DecimalMark mark);

} // namespace asleft
