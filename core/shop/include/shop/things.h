#pragma once

#include <base/clock.h>
#include <base/ids.h>
#include <engine/adjuster.h>
#include <engine/plan.h>
#include <measure/band.h>

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace asleft {

/// The person who did it: initials, chosen once per sitting.
struct Person {
    PersonId id;
    std::string initials;
    std::string name; ///< may be empty
    bool operator==(const Person &) const = default;
};

/// A set of feeler leaves, smallest first.
struct Tool {
    ToolId id;
    std::string name;
    std::string leavesText; ///< as typed
    std::vector<Typed<Length>> leaves;
    bool operator==(const Tool &) const = default;
};

struct Vehicle {
    VehicleId id;
    std::string name;
    std::string mark; ///< number plate, chassis number, whatever is painted on it; may be empty
    bool operator==(const Vehicle &) const = default;
};

enum class MeterUnit { Kilometre, Mile, Hour };

/// Distance or running hours, read at a date.
struct MeterReading {
    MeterReadingId id;
    VehicleId vehicle;
    MeterUnit unit;
    std::int64_t thousandths; ///< of the unit
    std::string text;         ///< as typed
    Moment at;
    bool operator==(const MeterReading &) const = default;
};

/// The screw adjusters of an engine, as far as they are known.
struct ScrewText {
    std::string pitch; ///< of the adjusting screw, as typed; empty if unknown
    std::string ratio; ///< leaf travel over screw travel, as typed; empty means 1
    bool operator==(const ScrewText &) const = default;
};

/// One adjuster of one engine.
struct SettingPoint {
    PointId id;
    AdjusterRef adjuster;
    bool operator==(const SettingPoint &) const = default;
};

struct Engine {
    EngineId id;
    VehicleId vehicle; ///< the vehicle it is fitted to now
    std::string name;
    EngineDesign design;
    ScrewText screw;
    std::optional<ScrewAdjuster> adjuster; ///< from `screw`; empty where the pitch is unknown
    std::vector<SettingPoint> points;      ///< in the order of EngineDesign::adjusters()
};

/// How sure a value from outside is.
enum class Certainty { ReadInManual, ToldByPerson, FromMemory, Assumed };

/// Whether a clearance is meant, or was felt, on a cold or a hot engine.
enum class EngineCondition { Cold, Hot };

enum class SpecSubject { IntakeLash, ExhaustLash, LockNut };

struct SpecSource {
    std::string manual;
    std::string page;
    Certainty certainty = Certainty::ReadInManual;
    bool operator==(const SpecSource &) const = default;
};

/// One revision of one value the manual asks for. Never edited: a change is a new revision, and readings keep the one they were judged by.
struct Spec {
    SpecId id;
    EngineId engine;
    SpecSubject subject;
    int revision = 1; ///< counts up from 1 within an engine's subject
    EngineCondition condition = EngineCondition::Cold;
    SpecSource source;
    std::variant<SpecBand<Length>, SpecBand<Torque>> asked; ///< a torque for LockNut, a length for the lashes
    bool operator==(const Spec &) const = default;
};

/// One revision of the manual's own table of crank positions, as it was typed.
struct TurningTable {
    EngineId engine;
    int revision = 1;
    SpecSource source;
    std::vector<TableLine> lines;
};

/// What may hurt; show/ has the sentences.
enum class Caution {
    StandsAndChocks,
    Neutral,
    BatteryOff,
    HandsClear,
    HotParts,
    FuelUnderPressure,
    FluidAndFire,
    Springs,
    TwoTurnsByHand,
    FluidsFilled,
    MeansToStop,
};

/// The three moments everything open is counted against.
enum class Gate { TurningTheCrank, FirstStart, HandOver };

enum class StepKind { Note, ValveSet };

/// One line of a job.
struct Step {
    StepId id;
    StepKind kind = StepKind::Note;
    std::string title;
    std::string detail;             ///< one or two sentences; may be empty
    Gate before = Gate::FirstStart; ///< what must not happen while this line is undone
    std::vector<Caution> cautions;
    bool operator==(const Step &) const = default;
};

struct Job {
    JobId id;
    VehicleId vehicle;
    EngineId engine;
    std::string title;
    Moment opened;
    std::vector<Step> steps; ///< in order
};

/// A reusable list of lines; its steps have no ids yet.
struct SheetLine {
    StepKind kind = StepKind::Note;
    std::string title;
    std::string detail;
    Gate before = Gate::FirstStart;
    std::vector<Caution> cautions;
};
struct JobSheet {
    std::string title;
    std::vector<SheetLine> lines;
};

} // namespace asleft
