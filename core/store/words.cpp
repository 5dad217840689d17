#include "words.h"

namespace asleft::store {

template <>
std::span<const Word<MeterUnit>> wordsFor()
{
    using enum MeterUnit;
    static constexpr auto words = std::to_array<Word<MeterUnit>>({
        {Kilometre, "kilometre"},
        {Mile, "mile"},
        {Hour, "hour"},
    });
    return words;
}

template <>
std::span<const Word<LengthUnit>> wordsFor()
{
    using enum LengthUnit;
    static constexpr auto words = std::to_array<Word<LengthUnit>>({
        {Millimetre, "mm"},
        {Inch, "in"},
        {Thou, "thou"},
    });
    return words;
}

template <>
std::span<const Word<TorqueUnit>> wordsFor()
{
    using enum TorqueUnit;
    static constexpr auto words = std::to_array<Word<TorqueUnit>>({
        {NewtonMetre, "Nm"},
        {PoundFoot, "lbf.ft"},
        {PoundInch, "lbf.in"},
        {KilogramForceMetre, "kgf.m"},
        {KilogramForceCentimetre, "kgf.cm"},
    });
    return words;
}

template <>
std::span<const Word<BandForm>> wordsFor()
{
    using enum BandForm;
    static constexpr auto words = std::to_array<Word<BandForm>>({
        {PlusMinus, "plus_minus"},
        {Range, "range"},
        {AtLeast, "at_least"},
        {AtMost, "at_most"},
        {NominalOnly, "nominal_only"},
    });
    return words;
}

template <>
std::span<const Word<Layout>> wordsFor()
{
    using enum Layout;
    static constexpr auto words = std::to_array<Word<Layout>>({
        {InLine, "in_line"},
        {Vee, "vee"},
        {Flat, "flat"},
        {Single, "single"},
        {W, "w"},
        {Radial, "radial"},
        {Opposed, "opposed"},
    });
    return words;
}

template <>
std::span<const Word<Rotation>> wordsFor()
{
    using enum Rotation;
    static constexpr auto words = std::to_array<Word<Rotation>>({
        {Clockwise, "clockwise"},
        {Anticlockwise, "anticlockwise"},
    });
    return words;
}

template <>
std::span<const Word<CrankEvent>> wordsFor()
{
    using enum CrankEvent;
    static constexpr auto words = std::to_array<Word<CrankEvent>>({
        {Compression, "compression"},
        {Overlap, "overlap"},
        {ExhaustOpens, "exhaust_opens"},
        {IntakeCloses, "intake_closes"},
        {IntakeFullyOpen, "intake_fully_open"},
        {ExhaustFullyOpen, "exhaust_fully_open"},
    });
    return words;
}

template <>
std::span<const Word<PlanWay>> wordsFor()
{
    using enum PlanWay;
    static constexpr auto words = std::to_array<Word<PlanWay>>({
        {TwoPositions, "two_positions"},
        {EachOnCompression, "each_on_compression"},
        {CompanionAtOverlap, "companion_at_overlap"},
        {OpeningAndClosing, "opening_and_closing"},
        {Fewest, "fewest"},
        {RuleOfNine, "rule_of_nine"},
    });
    return words;
}

template <>
std::span<const Word<Certainty>> wordsFor()
{
    using enum Certainty;
    static constexpr auto words = std::to_array<Word<Certainty>>({
        {ReadInManual, "read_in_manual"},
        {ToldByPerson, "told_by_person"},
        {FromMemory, "from_memory"},
        {Assumed, "assumed"},
    });
    return words;
}

template <>
std::span<const Word<EngineCondition>> wordsFor()
{
    using enum EngineCondition;
    static constexpr auto words = std::to_array<Word<EngineCondition>>({
        {Cold, "cold"},
        {Hot, "hot"},
    });
    return words;
}

template <>
std::span<const Word<SpecSubject>> wordsFor()
{
    using enum SpecSubject;
    static constexpr auto words = std::to_array<Word<SpecSubject>>({
        {IntakeLash, "intake_lash"},
        {ExhaustLash, "exhaust_lash"},
        {LockNut, "lock_nut"},
        {BridgeScrew, "bridge_screw"},
        {Decompressor, "decompressor"},
        {Injector, "injector"},
    });
    return words;
}

template <>
std::span<const Word<Caution>> wordsFor()
{
    using enum Caution;
    static constexpr auto words = std::to_array<Word<Caution>>({
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
    return words;
}

template <>
std::span<const Word<Gate>> wordsFor()
{
    using enum Gate;
    static constexpr auto words = std::to_array<Word<Gate>>({
        {TurningTheCrank, "turning_the_crank"},
        {FirstStart, "first_start"},
        {HandOver, "hand_over"},
    });
    return words;
}

template <>
std::span<const Word<StepKind>> wordsFor()
{
    using enum StepKind;
    static constexpr auto words = std::to_array<Word<StepKind>>({
        {Note, "note"},
        {ValveSet, "valve_set"},
        {Loosen, "loosen"},
        {Tighten, "tighten"},
    });
    return words;
}

template <>
std::span<const Word<Phase>> wordsFor()
{
    using enum Phase;
    static constexpr auto words = std::to_array<Word<Phase>>({
        {AsFound, "as_found"},
        {AsLeft, "as_left"},
    });
    return words;
}

template <>
std::span<const Word<ReadingForm>> wordsFor()
{
    using enum ReadingForm;
    static constexpr auto words = std::to_array<Word<ReadingForm>>({
        {Exact, "exact"},
        {Bracket, "bracket"},
        {Loose, "loose"},
        {Tight, "tight"},
        {ByFeel, "by_feel"},
        {Turned, "turned"},
    });
    return words;
}

template <>
std::span<const Word<CrankHow>> wordsFor()
{
    using enum CrankHow;
    static constexpr auto words = std::to_array<Word<CrankHow>>({
        {Confirmed, "confirmed"},
        {Turned, "turned"},
    });
    return words;
}

template <>
std::span<const Word<AngleUnit>> wordsFor()
{
    using enum AngleUnit;
    static constexpr auto words = std::to_array<Word<AngleUnit>>({
        {Degree, "deg"},
        {Turn, "turn"},
    });
    return words;
}

template <>
std::span<const Word<TemperatureUnit>> wordsFor()
{
    using enum TemperatureUnit;
    static constexpr auto words = std::to_array<Word<TemperatureUnit>>({
        {Celsius, "C"},
        {Fahrenheit, "F"},
    });
    return words;
}

template <>
std::span<const Word<Cycle>> wordsFor()
{
    using enum Cycle;
    static constexpr auto words = std::to_array<Word<Cycle>>({
        {FourStroke, "four_stroke"},
        {TwoStroke, "two_stroke"},
    });
    return words;
}

template <>
std::span<const Word<AdjusterKind>> wordsFor()
{
    using enum AdjusterKind;
    static constexpr auto words = std::to_array<Word<AdjusterKind>>({
        {Screw, "screw"},
        {Hydraulic, "hydraulic"},
    });
    return words;
}

template <>
std::span<const Word<ToolKind>> wordsFor()
{
    using enum ToolKind;
    static constexpr auto words = std::to_array<Word<ToolKind>>({
        {FeelerSet, "feeler_set"},
        {DialGauge, "dial_gauge"},
        {Micrometer, "micrometer"},
        {TorqueSet, "torque_set"},
        {TorqueRead, "torque_read"},
        {AngleGauge, "angle_gauge"},
        {Adapter, "adapter"},
        {Socket, "socket"},
    });
    return words;
}

template <>
std::span<const Word<DecisionRule>> wordsFor()
{
    using enum DecisionRule;
    static constexpr auto words = std::to_array<Word<DecisionRule>>({
        {Simple, "simple"},
        {WithUncertainty, "with_uncertainty"},
    });
    return words;
}

template <>
std::span<const Word<Disturbance>> wordsFor()
{
    using enum Disturbance;
    static constexpr auto words = std::to_array<Word<Disturbance>>({
        {Other, "other"},
        {HeadTightened, "head_tightened"},
        {RockersTightened, "rockers_tightened"},
        {TimingMoved, "timing_moved"},
        {ValveOrSeatCut, "valve_or_seat_cut"},
        {BridgeSet, "bridge_set"},
    });
    return words;
}

namespace {

struct KindOf {
    std::string_view operator()(const ReadingFact &) const { return "reading"; }
    std::string_view operator()(const AllLeftFact &) const { return "all_left"; }
    std::string_view operator()(const NutOpenFact &) const { return "nut_open"; }
    std::string_view operator()(const CrankFact &) const { return "crank"; }
    std::string_view operator()(const PlanFact &) const { return "plan"; }
    std::string_view operator()(const StepDoneFact &) const { return "step_done"; }
    std::string_view operator()(const KeepFact &) const { return "keep"; }
    std::string_view operator()(const CautionsFact &) const { return "cautions"; }
    std::string_view operator()(const CheckAgainFact &) const { return "check_again"; }
    std::string_view operator()(const WithdrawFact &) const { return "withdraw"; }
    std::string_view operator()(const LoosenedFact &) const { return "loosened"; }
    std::string_view operator()(const TicksFact &) const { return "ticks"; }
    std::string_view operator()(const UntickedFact &) const { return "unticked"; }
    std::string_view operator()(const JointBegunFact &) const { return "joint_begun"; }
    std::string_view operator()(const FittedFact &) const { return "fitted"; }
    std::string_view operator()(const AcceptedFact &) const { return "accepted"; }
    std::string_view operator()(const FindingFact &) const { return "finding"; }
};

} // namespace

std::string_view kindOf(const Fact &fact)
{
    return std::visit(KindOf{}, fact);
}

} // namespace asleft::store
