#pragma once

#include <shop/entry.h>
#include <shop/things.h>

#include <map>

namespace asleft {

/// A vehicle and its engine as a person types them.
struct VehicleText {
    std::string name;
    std::string mark;
    std::string number = {}; ///< the maker's vehicle number
    std::string meter;       ///< empty: not read
    MeterUnit meterUnit = MeterUnit::Hour;
    bool meterReplaced = false; ///< what is read stands on another meter than before
    std::string engineName;     ///< may be empty
    EngineText engine;
    ScrewText screw;
};

/// The fields of a vehicle and its engine that can be refused, in the order they are filled in.
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

/// A vehicle and its engine as the fields stand.
struct VehicleTyped {
    /// What it is about: a vehicle with the engine in it, one whose engine was taken out, or an engine by itself.
    enum class About { Both, Vehicle, Engine };

    std::map<VehicleField, std::string> texts;
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

    [[nodiscard]] std::string text(VehicleField field) const;
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

} // namespace asleft
