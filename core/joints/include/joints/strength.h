#pragma once

#include <base/result.h>
#include <joints/thread.h>

#include <optional>
#include <span>
#include <string_view>

namespace asleft {

/// What a screw is made to bear. Its stored word is name().
enum class StrengthClass { C4_6, C4_8, C5_6, C5_8, C6_8, C8_8, C9_8, C10_9, C12_9, Sae2, Sae5, Sae8, A2_70, A4_70 };

/// All of them, in the order they are offered.
std::span<const StrengthClass> strengthClasses();

/// "8.8", "grade 5", "A2-70": as it stands on the head or in the manual.
std::string_view name(StrengthClass strength);

/// Reads `8.8`, `10,9`, `grade 5`, `gr. 8`, `SAE 5`, `A2-70`, `a4 70`. Refuses with ClassUnknown, overlong
/// text with TextTooLong.
Result<StrengthClass> parseStrength(std::string_view text);

/// Proof stress in MPa: ISO 898-1 for the property classes (8.8 up to M16 580, above 600; 10.9 830; 12.9 970; …), SAE J429 for the grades,
/// by size, ISO 3506-1 for stainless (no proof load is given there: the 0.2 % stress stands in, 450). Nothing for a size the standard
/// does not cover.
std::optional<double> proofStressMegapascals(StrengthClass strength, const Thread &thread);

/// Proof load in newtons: proof stress times stress area.
std::optional<double> proofLoadNewtons(StrengthClass strength, const Thread &thread);

} // namespace asleft
