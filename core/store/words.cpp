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
std::span<const Word<Side>> wordsFor()
{
    using enum Side;
    static constexpr auto words = std::to_array<Word<Side>>({
        {Intake, "intake"},
        {Exhaust, "exhaust"},
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
};

} // namespace

std::string_view kindOf(const Fact &fact)
{
    return std::visit(KindOf{}, fact);
}

} // namespace asleft::store
