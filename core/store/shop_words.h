#pragma once

#include "word.h"

#include <shop/acts.h>

namespace asleft::store {

template <>
struct Words<MeterUnit> {
    using enum MeterUnit;
    static constexpr auto list = std::to_array<Word<MeterUnit>>({
        {Kilometre, "kilometre"},
        {Mile, "mile"},
        {Hour, "hour"},
    });
};

template <>
struct Words<LengthUnit> {
    using enum LengthUnit;
    static constexpr auto list = std::to_array<Word<LengthUnit>>({
        {Millimetre, "mm"},
        {Inch, "in"},
        {Thou, "thou"},
    });
};

template <>
struct Words<TorqueUnit> {
    using enum TorqueUnit;
    static constexpr auto list = std::to_array<Word<TorqueUnit>>({
        {NewtonMetre, "Nm"},
        {PoundFoot, "lbf.ft"},
        {PoundInch, "lbf.in"},
        {KilogramForceMetre, "kgf.m"},
        {KilogramForceCentimetre, "kgf.cm"},
    });
};

template <>
struct Words<BandForm> {
    using enum BandForm;
    static constexpr auto list = std::to_array<Word<BandForm>>({
        {PlusMinus, "plus_minus"},
        {Range, "range"},
        {AtLeast, "at_least"},
        {AtMost, "at_most"},
        {NominalOnly, "nominal_only"},
    });
};

template <>
struct Words<Layout> {
    using enum Layout;
    static constexpr auto list = std::to_array<Word<Layout>>({
        {InLine, "in_line"},
        {Vee, "vee"},
        {Flat, "flat"},
        {Single, "single"},
        {W, "w"},
        {Radial, "radial"},
        {Opposed, "opposed"},
    });
};

template <>
struct Words<Rotation> {
    using enum Rotation;
    static constexpr auto list = std::to_array<Word<Rotation>>({
        {Clockwise, "clockwise"},
        {Anticlockwise, "anticlockwise"},
    });
};

template <>
struct Words<CrankEvent> {
    using enum CrankEvent;
    static constexpr auto list = std::to_array<Word<CrankEvent>>({
        {Compression, "compression"},
        {Overlap, "overlap"},
        {ExhaustOpens, "exhaust_opens"},
        {IntakeCloses, "intake_closes"},
        {IntakeFullyOpen, "intake_fully_open"},
        {ExhaustFullyOpen, "exhaust_fully_open"},
    });
};

template <>
struct Words<PlanWay> {
    using enum PlanWay;
    static constexpr auto list = std::to_array<Word<PlanWay>>({
        {TwoPositions, "two_positions"},
        {EachOnCompression, "each_on_compression"},
        {CompanionAtOverlap, "companion_at_overlap"},
        {OpeningAndClosing, "opening_and_closing"},
        {Fewest, "fewest"},
        {RuleOfNine, "rule_of_nine"},
    });
};

template <>
struct Words<Certainty> {
    using enum Certainty;
    static constexpr auto list = std::to_array<Word<Certainty>>({
        {ReadInManual, "read_in_manual"},
        {ToldByPerson, "told_by_person"},
        {FromMemory, "from_memory"},
        {Assumed, "assumed"},
    });
};

template <>
struct Words<EngineCondition> {
    using enum EngineCondition;
    static constexpr auto list = std::to_array<Word<EngineCondition>>({
        {Cold, "cold"},
        {Hot, "hot"},
    });
};

template <>
struct Words<SpecSubject> {
    using enum SpecSubject;
    static constexpr auto list = std::to_array<Word<SpecSubject>>({
        {IntakeLash, "intake_lash"},
        {ExhaustLash, "exhaust_lash"},
        {LockNut, "lock_nut"},
        {BridgeScrew, "bridge_screw"},
        {Decompressor, "decompressor"},
        {Injector, "injector"},
    });
};

template <>
struct Words<Caution> {
    using enum Caution;
    static constexpr auto list = std::to_array<Word<Caution>>({
        {StandsAndChocks, "stands_and_chocks"},
        {Neutral, "neutral"},
        {BatteryOff, "battery_off"},
        {HandsClear, "hands_clear"},
        {HotParts, "hot_parts"},
        {FuelUnderPressure, "fuel_under_pressure"},
        {FluidAndFire, "fluid_and_fire"},
        {Springs, "springs"},
        {TwoTurnsByHand, "two_turns_by_hand"},
        {FluidsFilled, "fluids_filled"},
        {MeansToStop, "means_to_stop"},
    });
};

template <>
struct Words<Gate> {
    using enum Gate;
    static constexpr auto list = std::to_array<Word<Gate>>({
        {TurningTheCrank, "turning_the_crank"},
        {FirstStart, "first_start"},
        {HandOver, "hand_over"},
    });
};

template <>
struct Words<StepKind> {
    using enum StepKind;
    static constexpr auto list = std::to_array<Word<StepKind>>({
        {Note, "note"},
        {ValveSet, "valve_set"},
        {Loosen, "loosen"},
        {Tighten, "tighten"},
    });
};

template <>
struct Words<Phase> {
    using enum Phase;
    static constexpr auto list = std::to_array<Word<Phase>>({
        {AsFound, "as_found"},
        {AsLeft, "as_left"},
    });
};

template <>
struct Words<ReadingForm> {
    using enum ReadingForm;
    static constexpr auto list = std::to_array<Word<ReadingForm>>({
        {Exact, "exact"},
        {Bracket, "bracket"},
        {Loose, "loose"},
        {Tight, "tight"},
        {ByFeel, "by_feel"},
        {Turned, "turned"},
    });
};

template <>
struct Words<CrankHow> {
    using enum CrankHow;
    static constexpr auto list = std::to_array<Word<CrankHow>>({
        {Confirmed, "confirmed"},
        {Turned, "turned"},
    });
};

template <>
struct Words<AngleUnit> {
    using enum AngleUnit;
    static constexpr auto list = std::to_array<Word<AngleUnit>>({
        {Degree, "deg"},
        {Turn, "turn"},
    });
};

template <>
struct Words<TemperatureUnit> {
    using enum TemperatureUnit;
    static constexpr auto list = std::to_array<Word<TemperatureUnit>>({
        {Celsius, "C"},
        {Fahrenheit, "F"},
    });
};

template <>
struct Words<Cycle> {
    using enum Cycle;
    static constexpr auto list = std::to_array<Word<Cycle>>({
        {FourStroke, "four_stroke"},
        {TwoStroke, "two_stroke"},
    });
};

template <>
struct Words<AdjusterKind> {
    using enum AdjusterKind;
    static constexpr auto list = std::to_array<Word<AdjusterKind>>({
        {Screw, "screw"},
        {Hydraulic, "hydraulic"},
    });
};

template <>
struct Words<ToolKind> {
    using enum ToolKind;
    static constexpr auto list = std::to_array<Word<ToolKind>>({
        {FeelerSet, "feeler_set"},
        {DialGauge, "dial_gauge"},
        {Micrometer, "micrometer"},
        {TorqueSet, "torque_set"},
        {TorqueRead, "torque_read"},
        {AngleGauge, "angle_gauge"},
        {Adapter, "adapter"},
        {Socket, "socket"},
    });
};

template <>
struct Words<DecisionRule> {
    using enum DecisionRule;
    static constexpr auto list = std::to_array<Word<DecisionRule>>({
        {Simple, "simple"},
        {WithUncertainty, "with_uncertainty"},
    });
};

template <>
struct Words<Disturbance> {
    using enum Disturbance;
    static constexpr auto list = std::to_array<Word<Disturbance>>({
        {Other, "other"},
        {HeadTightened, "head_tightened"},
        {RockersTightened, "rockers_tightened"},
        {TimingMoved, "timing_moved"},
        {ValveOrSeatCut, "valve_or_seat_cut"},
        {BridgeSet, "bridge_set"},
    });
};

} // namespace asleft::store
