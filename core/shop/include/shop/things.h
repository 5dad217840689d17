#pragma once

#include <base/clock.h>
#include <base/ids.h>
#include <engine/adjuster.h>
#include <engine/plan.h>
#include <joints/choice.h>
#include <measure/band.h>
#include <measure/judge.h>
#include <measure/temperature.h>

#include <chrono>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace asleft {

/// The person who did it: initials, chosen once per session.
struct Person {
    PersonId id;
    std::string initials;
    std::string name; ///< may be empty
    bool operator==(const Person &) const = default;
};

enum class ToolKind {
    FeelerSet,
    DialGauge,
    Micrometer,
    TorqueSet,  ///< a torque wrench that is set, and gives way
    TorqueRead, ///< a torque wrench with a dial or figures, that is read
    AngleGauge,
    Adapter, ///< a crow-foot or an offset wrench, with its length
    Socket,  ///< a socket, a key or a spanner, with its size
};

/// What is measured and worked with.
struct Tool {
    ToolId id;
    std::string name;
    std::string leavesText;            ///< of a feeler set, as typed
    std::vector<Typed<Length>> leaves; ///< of a feeler set, smallest first; else empty
    ToolKind kind = ToolKind::FeelerSet;
    std::optional<Typed<Length>> permissibleError = {}; ///< of a gauge: the most it may be off
    std::optional<Typed<Length>> resolution = {};       ///< of a gauge: what it is read to
    std::optional<TorqueTool> torque = {};              ///< of a torque wrench; its lever is that of `lever`
    std::string deviationText = {};                     ///< of a torque wrench: percent, as typed; empty: by ISO 6789
    std::optional<Typed<Length>> lever = {};            ///< of a torque wrench: from its drive to the grip mark
    std::optional<Typed<Length>> length = {};           ///< of an adapter: from the middle of the drive to that of the fastener
    std::string size = {};                              ///< of an adapter or a socket: what it fits, as typed
    bool operator==(const Tool &) const = default;
};

/// Expanded uncertainty of a value read with a tool: of a feeler set one step of its leaves there (feelerUncertainty()), of a gauge
/// gaugeUncertainty(). The step at a leaf is the gap to its neighbour, the larger of both. Nothing where it is not known: no leaf of the
/// set is within a step of the value, a set of one leaf has no step, or the gauge's error or resolution was not given.
std::optional<Length> uncertaintyOf(const Tool &tool, Length value);

struct Vehicle {
    VehicleId id;
    std::string name;
    std::string mark;        ///< number plate, whatever is painted on it; may be empty
    std::string number = {}; ///< the maker's vehicle number, as typed; may be empty
    bool stand = false;      ///< no vehicle at all: where engines are kept that are in none
    bool operator==(const Vehicle &) const = default;
};

enum class MeterUnit { Kilometre, Mile, Hour };

/// Distance or running hours, read at a date. Of two readings of one meter the later is not less.
struct MeterReading {
    MeterReadingId id;
    VehicleId vehicle;
    MeterUnit unit;
    std::int64_t thousandths; ///< of the unit
    std::string text;         ///< as typed
    Moment at;
    bool replaced = false; ///< the first reading of another meter: counts on from what the old one last showed
    bool operator==(const MeterReading &) const = default;
};

/// What a vehicle has done over all its meters, in thousandths of the unit of the last reading: what the first of them showed, and every
/// stretch between two readings of one meter. A meter in another unit has a count of its own, which begins with what it shows where the
/// vehicle came with it, else with nothing. Nothing without readings. \pre oldest first
std::optional<std::int64_t> meterTotal(const std::vector<MeterReading> &readings);

/// How an engine's lash is set.
enum class AdjusterKind {
    Screw,     ///< a screw and a lock nut
    Hydraulic, ///< a tappet that takes the lash up by oil: turned on from zero lash, or its collapsed clearance measured
};

/// The adjusters of an engine, as far as they are known.
struct ScrewText {
    std::string pitch; ///< of the adjusting screw, as typed; empty if unknown
    std::string ratio; ///< leaf travel over screw travel, as typed; empty means 1
    AdjusterKind kind = AdjusterKind::Screw;
    std::string bleedDown = {}; ///< minutes a hydraulic tappet needs before the crank is turned, as typed; empty: no wait
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
    std::optional<ScrewAdjuster> adjuster;              ///< from `screw`; empty where the pitch is unknown
    std::optional<std::chrono::minutes> bleedDown = {}; ///< from `screw`, of hydraulic tappets
    std::vector<SettingPoint> points;                   ///< in the order of EngineDesign::adjusters()
};

/// How sure a value from outside is.
enum class Certainty { ReadInManual, ToldByPerson, FromMemory, Assumed };

/// Whether a clearance is meant, or was felt, on a cold or a hot engine.
enum class EngineCondition { Cold, Hot };

enum class SpecSubject { IntakeLash, ExhaustLash, LockNut, BridgeScrew, Decompressor, Injector };

/// The spec a setting point is set to.
SpecSubject subjectOf(AdjusterRef adjuster);

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
    /// A torque for LockNut; for the points a length, or an angle: so many turns from zero lash.
    std::variant<SpecBand<Length>, SpecBand<Torque>, SpecBand<Angle>> asked;
    bool operator==(const Spec &) const = default;
};

/// One revision of the manual's own table of crank positions, as it was typed.
struct TurningTable {
    EngineId engine;
    int revision = 1;
    SpecSource source;
    std::vector<TableLine> lines;
};

/// What may hurt; words/ has the sentences.
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

enum class StepKind {
    Note,
    ValveSet,
    Loosen,  ///< a joint comes loose; what is found is noted
    Tighten, ///< a joint is tightened
};

/// One line of a job.
struct Step {
    StepId id;
    StepKind kind = StepKind::Note;
    std::string title;              ///< as typed; empty where kind and joint tell it
    std::string detail;             ///< one or two sentences; may be empty
    Gate before = Gate::FirstStart; ///< what must not happen while this line is undone
    std::vector<Caution> cautions;
    std::optional<JointId> joint = {}; ///< of Loosen and Tighten
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
    std::optional<JointId> joint = {};
};
struct JobSheet {
    std::string title;
    std::vector<SheetLine> lines;
};

} // namespace asleft
