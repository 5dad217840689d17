#include <joints/strength.h>

#include <measure/parse.h>
#include <measure/text.h>

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace asleft {

namespace {

using enum StrengthClass;

constexpr std::array classes{C4_6, C4_8, C5_6, C5_8, C6_8, C8_8, C9_8, C10_9, C12_9, Sae2, Sae5, Sae8, A2_70, A4_70};
constexpr std::array<std::string_view, classes.size()> names{"4.6",  "4.8",  "5.6",     "5.8",     "6.8",     "8.8",   "9.8",
                                                             "10.9", "12.9", "grade 2", "grade 5", "grade 8", "A2-70", "A4-70"};

constexpr double megapascalsPerKpsi = 6.894'757'293'168'36;

constexpr Length millimetres(std::int64_t count)
{
    return micrometres(count * 1000);
}
/// In 64ths, so that every size of the standard is whole.
constexpr Length inches64(std::int64_t count)
{
    return nanometres(25'400'000 / 64 * count);
}

/// ISO 898-1 is for M1.6 to M39, fine pitches from M8 (its scope, from memory).
bool inIso898(const Thread &thread)
{
    const Length least = thread.coarse ? micrometres(1600) : millimetres(8);
    return thread.system == UnitSystem::Metric && thread.diameter >= least && thread.diameter <= millimetres(39);
}

/// ISO 3506-1, class 70, is for M1.6 to M24 (from memory).
bool inIso3506(const Thread &thread)
{
    return thread.system == UnitSystem::Metric && thread.diameter >= micrometres(1600) && thread.diameter <= millimetres(24);
}

/// SAE J429 is for 1/4 to 1 1/2 in (from memory).
bool inJ429(const Thread &thread)
{
    return thread.system == UnitSystem::Inch && thread.diameter >= inches64(16) && thread.diameter <= inches64(96);
}

/// Stress under proof load in MPa, ISO 898-1 Table 3; 8.8, 10.9 and 12.9 checked against published loads, the rest from memory.
std::optional<double> propertyClassStress(StrengthClass strength, Length diameter)
{
    const bool large = diameter > millimetres(16);
    switch (strength) {
    case C4_6: return 225;
    case C4_8: return 310;
    case C5_6: return 280;
    case C5_8: return 380;
    case C6_8: return 440;
    case C8_8: return large ? 600 : 580;
    case C9_8: return large ? std::nullopt : std::optional<double>(650);
    case C10_9: return 830;
    case C12_9: return 970;
    case Sae2:
    case Sae5:
    case Sae8:
    case A2_70:
    case A4_70: break;
    }
    return std::nullopt;
}

/// SAE J429 in kpsi (Shigley, Table 8-9).
std::optional<double> gradeStress(StrengthClass strength, Length diameter)
{
    switch (strength) {
    case Sae2: return diameter <= inches64(48) ? 55 : 33;
    case Sae5: return diameter <= inches64(64) ? 85 : 74;
    case Sae8: return 120;
    case C4_6:
    case C4_8:
    case C5_6:
    case C5_8:
    case C6_8:
    case C8_8:
    case C9_8:
    case C10_9:
    case C12_9:
    case A2_70:
    case A4_70: break;
    }
    return std::nullopt;
}

/// Blanks and dashes between two digits are one '-', those beside a letter do not count; at the ends a dash stays, to be refused.
std::string joined(std::string_view plain)
{
    std::string text;
    bool gap = false;
    for (const char letter : plain) {
        const bool dash = letter == '-';
        if (letter == ' ' || (dash && !text.empty())) {
            gap = true;
            continue;
        }
        if (gap && isAsciiDigit(text.back()) && isAsciiDigit(letter))
            text += '-';
        gap = false;
        text += letter;
    }
    if (plain.ends_with('-'))
        text += '-';
    return text;
}

/// What follows the word that says it is a grade; nothing where none does.
std::optional<std::string_view> afterGradeWord(std::string_view text)
{
    for (const std::string_view word : {"saegrade", "saegr.", "saegr", "sae", "grade", "gr.", "gr"}) {
        if (text.starts_with(word))
            return text.substr(word.size());
    }
    return std::nullopt;
}

std::string spellingOf(StrengthClass strength)
{
    return joined(plainWords(name(strength)));
}

} // namespace

std::span<const StrengthClass> strengthClasses()
{
    return classes;
}

std::string_view name(StrengthClass strength)
{
    return names.at(static_cast<std::size_t>(strength));
}

Result<StrengthClass> parseStrength(std::string_view text)
{
    if (text.size() > longestTypedText)
        return fail(ErrorKind::TextTooLong, std::to_string(text.size()), std::to_string(longestTypedText));
    std::string spelling = joined(plainWords(text));
    if (const auto grade = afterGradeWord(spelling))
        spelling = "grade" + std::string(*grade);
    const auto found = std::ranges::find(classes, spelling, spellingOf);
    if (found == classes.end())
        return fail(ErrorKind::ClassUnknown, text);
    return *found;
}

std::optional<double> proofStressMegapascals(StrengthClass strength, const Thread &thread)
{
    switch (strength) {
    case A2_70:
    case A4_70: return inIso3506(thread) ? std::optional<double>(450) : std::nullopt;
    case Sae2:
    case Sae5:
    case Sae8: {
        const auto kpsi = inJ429(thread) ? gradeStress(strength, thread.diameter) : std::nullopt;
        return kpsi ? std::optional(*kpsi * megapascalsPerKpsi) : std::nullopt;
    }
    case C4_6:
    case C4_8:
    case C5_6:
    case C5_8:
    case C6_8:
    case C8_8:
    case C9_8:
    case C10_9:
    case C12_9: return inIso898(thread) ? propertyClassStress(strength, thread.diameter) : std::nullopt;
    }
    return std::nullopt;
}

std::optional<double> proofLoadNewtons(StrengthClass strength, const Thread &thread)
{
    const auto stress = proofStressMegapascals(strength, thread);
    return stress ? std::optional(*stress * stressAreaSquareMillimetres(thread)) : std::nullopt;
}

} // namespace asleft
