#pragma once

#include <shop/acts.h>

#include <array>
#include <optional>
#include <span>
#include <string_view>
#include <utility>

namespace asleft::store {

template <class Enum>
struct Word {
    Enum value;
    std::string_view word;
};

/// The words an enum is kept as in files, one for each of its values. A word never changes once a garage was made with it.
template <class Enum>
std::span<const Word<Enum>> wordsFor();

template <>
std::span<const Word<MeterUnit>> wordsFor();
template <>
std::span<const Word<LengthUnit>> wordsFor();
template <>
std::span<const Word<TorqueUnit>> wordsFor();
template <>
std::span<const Word<BandForm>> wordsFor();
template <>
std::span<const Word<Layout>> wordsFor();
template <>
std::span<const Word<Rotation>> wordsFor();
template <>
std::span<const Word<CrankEvent>> wordsFor();
template <>
std::span<const Word<PlanWay>> wordsFor();
template <>
std::span<const Word<Certainty>> wordsFor();
template <>
std::span<const Word<EngineCondition>> wordsFor();
template <>
std::span<const Word<SpecSubject>> wordsFor();
template <>
std::span<const Word<Caution>> wordsFor();
template <>
std::span<const Word<Gate>> wordsFor();
template <>
std::span<const Word<StepKind>> wordsFor();
template <>
std::span<const Word<Phase>> wordsFor();
template <>
std::span<const Word<ReadingForm>> wordsFor();
template <>
std::span<const Word<CrankHow>> wordsFor();
template <>
std::span<const Word<AngleUnit>> wordsFor();
template <>
std::span<const Word<TemperatureUnit>> wordsFor();
template <>
std::span<const Word<Cycle>> wordsFor();
template <>
std::span<const Word<AdjusterKind>> wordsFor();
template <>
std::span<const Word<ToolKind>> wordsFor();
template <>
std::span<const Word<DecisionRule>> wordsFor();
template <>
std::span<const Word<Disturbance>> wordsFor();
template <>
std::span<const Word<PatternKind>> wordsFor();
template <>
std::span<const Word<StrengthClass>> wordsFor();
template <>
std::span<const Word<ThreadCondition>> wordsFor();
template <>
std::span<const Word<Finish>> wordsFor();
template <>
std::span<const Word<FemaleMaterial>> wordsFor();
template <>
std::span<const Word<DriveKind>> wordsFor();
template <>
std::span<const Word<SingleUse>> wordsFor();
template <>
std::span<const Word<SettleGround>> wordsFor();
template <>
std::span<const Word<FoundHow>> wordsFor();
template <>
std::span<const Word<TickHow>> wordsFor();
template <>
std::span<const Word<Fitted>> wordsFor();
template <>
std::span<const Word<AcceptedWhat>> wordsFor();

/// The word of a value. \pre the value is one of the enum's
template <class Enum>
std::string_view wordOf(Enum value)
{
    for (const auto &entry : wordsFor<Enum>())
        if (entry.value == value)
            return entry.word;
    return {};
}

template <class Enum>
std::optional<Enum> valueOf(std::string_view word)
{
    for (const auto &entry : wordsFor<Enum>())
        if (entry.word == word)
            return entry.value;
    return std::nullopt;
}

/// The word an adjuster is kept as beside its cylinder: `intake` and `exhaust` for the first lash of a side, `intake_2`,
/// `exhaust_bridge`, `decompressor`, `injector`; empty for one no engine has. The first two are older than the others.
std::string_view wordOf(AdjusterRef adjuster);
/// The adjuster of a cylinder that has this word.
std::optional<AdjusterRef> adjusterOf(Cylinder cylinder, std::string_view word);

/// The word for what an act says: act.kind.
std::string_view kindOf(const Fact &fact);

} // namespace asleft::store
