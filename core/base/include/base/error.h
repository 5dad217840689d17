#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace asleft {

/// What went wrong, in the world or in what a person typed. Bugs of ours are assertions, never an Error.
/// The comment behind a kind names its arguments in order; words/ turns a kind and its arguments into a sentence.
enum class ErrorKind {
    // text typed as a value
    EmptyText,       ///< -
    NotANumber,      ///< the part that is not one
    AmbiguousNumber, ///< the text, with a mark that may be decimal or thousands
    TooManyDigits,   ///< the text
    NegativeValue,   ///< the text
    UnknownUnit,     ///< the part, then the units accepted
    TextLeftOver,    ///< the part nobody asked for
    ValueTooLarge,   ///< the text, then the largest accepted
    ValueTooSmall,   ///< the text, then the smallest accepted
    TextTooLong,     ///< how many characters, then the most accepted
    DivisionByZero,  ///< the text
    // bands
    BandUpsideDown,    ///< low end, high end
    BandWithoutValue,  ///< the text
    BandSystemsDiffer, ///< first band, second band: the two printed systems do not overlap
    BandSameSystem,    ///< second band: printed in the system of the first
    // engines
    CylinderCount,       ///< the count, fewest, most
    BanksForLayout,      ///< banks typed, banks the layout has
    CylinderLabelTwice,  ///< label
    CylinderLabelCount,  ///< labels typed, cylinders
    CylindersInUse,      ///< the vehicle whose engine jobs were worked on
    FiringOrderMissing,  ///< the label that never fires
    FiringOrderTwice,    ///< the label that fires twice
    FiringOrderUnknown,  ///< the label the engine does not have
    GapNotAnAngle,       ///< the part
    GapsCount,           ///< gaps typed, gaps expected
    GapsSum,             ///< the sum in degrees
    GapNotPositive,      ///< the part
    ValveOrderLength,    ///< letters typed, valves in the bank
    ValveOrderLetter,    ///< the letter
    ValveOrderCount,     ///< intakes typed, exhausts typed, of each expected
    CamArcTooLong,       ///< noun: whose arc; degrees open
    ValvesACylinder,     ///< the text: valves of a cylinder that cannot be read, or that no engine has
    BridgeWithoutPair,   ///< -: bridged, but neither side has an even number of valves
    RowsUneven,          ///< cylinders, banks: they do not divide
    BarringUnread,       ///< the text: teeth of ring gear and pinion
    PlanNeedsCam,        ///< -: the fewest positions cannot be counted with an assumed cam
    PlanNotReached,      ///< the points no position reaches with this margin
    PlanNotForEngine,    ///< -: this way of turning is for another kind of engine
    TableEmpty,          ///< -
    TablePositionUnread, ///< the part
    TablePointUnread,    ///< the part
    TableCylinder,       ///< the label the engine does not have
    TablePointTwice,     ///< the point
    LeavesUnread,        ///< the part
    // things of the shop
    NameMissing,     ///< noun: what has no name
    PitchOutOfRange, ///< the text
    MeterUnread,     ///< the part
    MeterRunsBack,   ///< what was read, what was read last: a slip, or another meter
    BleedDownUnread, ///< the text
    VehicleTaken,    ///< the vehicle: another engine is in it
    NotFound,        ///< noun: what was looked for
    // acts
    WrongJob,          ///< noun: what does not belong to the job
    NothingToUndo,     ///< -
    RestedOn,          ///< what later act rests on it
    NutStillOpen,      ///< the points whose lock nut is open
    CrankNotConfirmed, ///< -
    CautionsNotRead,   ///< -
    NothingToKeep,     ///< the point
    StillBleedingDown, ///< until when, milliseconds since 1970 UTC
    NothingToLog,      ///< -
    PersonMissing,     ///< -
    // joints
    ThreadUnread,        ///< the text
    ThreadUnknown,       ///< the text, what there is of that diameter (may be empty)
    ClassUnknown,        ///< the text
    PatternUnread,       ///< the text
    PatternCount,        ///< the count, fewest, most
    PatternNumber,       ///< the number that stands twice or cannot be one
    PlacesTooClose,      ///< two fastener numbers
    OrderUnread,         ///< the part
    OrderUnknown,        ///< the number no fastener has
    OrderTwice,          ///< the number
    OrderMissing,        ///< the number
    PassUnread,          ///< the part
    PassOverTarget,      ///< the pass
    PassesTooMany,       ///< the count, the most
    PassesEmpty,         ///< -
    PassesFall,          ///< the pass
    FingerNotFirst,      ///< -
    TargetMissing,       ///< the pass
    AngleWithoutSnug,    ///< the pass
    AngleTooLarge,       ///< the sum in degrees
    SettleNotAllowed,    ///< -
    SettleAfterAngle,    ///< -
    SettleMisplaced,     ///< -
    TorqueAfterAngle,    ///< the pass
    PassesStopShort,     ///< the last torque pass
    AdapterOutOfRange,   ///< -
    AdapterReversed,     ///< -
    TorqueRange,         ///< least, most
    DeviationOutOfRange, ///< the text
    LeverOutOfRange,     ///< -
    LeverMissing,        ///< the tool
    DateUnread,          ///< the text
    LoosenedUnread,      ///< the text
    // joints on the bench
    JointInUse,       ///< the joint, whose fasteners jobs have worked on
    JointTaken,       ///< the name another joint of the engine has
    FastenerUnknown,  ///< the number
    TickOutOfTurn,    ///< the fastener number: not of the pass in hand, or ticked in it already
    NotTicked,        ///< the fastener number
    ReasonMissing,    ///< -
    NothingToAccept,  ///< -
    ToolNotForTorque, ///< the tool
    JointChanged,     ///< the joint, revised by another computer meanwhile
    StepByFasteners,  ///< the line, which its fasteners do
    ToolNotThat,      ///< the tool, which is of another kind
    // the garage file
    FileMissing,    ///< path
    FileExists,     ///< path
    NotAGarage,     ///< path
    GarageNewer,    ///< path, its version, ours
    GarageReadOnly, ///< path
    GarageBusy,     ///< path
    NoRoom,         ///< path
    GarageMoved,    ///< path: renamed or replaced while open
    DiskFault,      ///< path, what the system said
    Damaged,        ///< path, what the database said; or noun, path, number and perhaps revision of what cannot be read
    UpgradeFailed,  ///< path, step, what was said
    Database,       ///< what the database said
};

/// What an error speaks of by its name, which every language has a word of its own for.
enum class Noun {
    // things of the shop
    Vehicle,
    Engine,
    Job,
    Step,
    Joint,
    LashSpec,
    DecisionRule,
    Initials,
    Length,
    // setting points
    Point,
    PointThatWasLeft,
    PointToSetHere,
    // tools
    FeelerSet,
    Gauge,
    TorqueWrench,
    AngleGauge,
    Adapter,
    Socket,
    Tool,
    // arcs of a cam
    IntakeArc,
    ExhaustArc,
    SecondExhaustArc,
    InjectorArc,
    // what stands in a garage file, with its numbers
    Act,
    Spec,
    Calibration,
    FilePage,
};

/// One failure: a kind, its arguments, and where it has one its noun, without a sentence.
struct Error {
    ErrorKind kind;
    std::vector<std::string> arguments;
    std::optional<Noun> noun = std::nullopt;

    bool operator==(const Error &) const = default;
};

} // namespace asleft
