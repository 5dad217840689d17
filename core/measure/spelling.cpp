#include <measure/text.h>
#include <measure/unit.h>

#include <algorithm>

namespace asleft {

namespace {

/// Spellings are in lower case; a '.' stands where the parts of a product meet, and may be written in any way or left out.
template <class U>
struct Spelling {
    std::string_view text;
    U unit;
};

// "mil" is left out on purpose: spoken in a workshop it is as often a millimetre as a thou.
constexpr Spelling<LengthUnit> lengthSpellings[] = {
    {"mm", LengthUnit::Millimetre},
    {"millimetre", LengthUnit::Millimetre},
    {"millimetres", LengthUnit::Millimetre},
    {"millimeter", LengthUnit::Millimetre},
    {"millimeters", LengthUnit::Millimetre},
    {"in", LengthUnit::Inch},
    {"\"", LengthUnit::Inch},
    {"inch", LengthUnit::Inch},
    {"inches", LengthUnit::Inch},
    {"thou", LengthUnit::Thou},
};

// Old manuals print kg and kp for kgf. In a torque none of these spellings means anything else, so letter case does not matter.
constexpr Spelling<TorqueUnit> torqueSpellings[] = {
    {"n.m", TorqueUnit::NewtonMetre},
    {"newton.metre", TorqueUnit::NewtonMetre},
    {"newton.metres", TorqueUnit::NewtonMetre},
    {"newton.meter", TorqueUnit::NewtonMetre},
    {"newton.meters", TorqueUnit::NewtonMetre},
    {"lbf.ft", TorqueUnit::PoundFoot},
    {"lb.ft", TorqueUnit::PoundFoot},
    {"lbs.ft", TorqueUnit::PoundFoot},
    {"ft.lbf", TorqueUnit::PoundFoot},
    {"ft.lb", TorqueUnit::PoundFoot},
    {"ft.lbs", TorqueUnit::PoundFoot},
    {"foot.pound", TorqueUnit::PoundFoot},
    {"foot.pounds", TorqueUnit::PoundFoot},
    {"pound.foot", TorqueUnit::PoundFoot},
    {"pound.feet", TorqueUnit::PoundFoot},
    {"lbf.in", TorqueUnit::PoundInch},
    {"lb.in", TorqueUnit::PoundInch},
    {"lbs.in", TorqueUnit::PoundInch},
    {"in.lbf", TorqueUnit::PoundInch},
    {"in.lb", TorqueUnit::PoundInch},
    {"in.lbs", TorqueUnit::PoundInch},
    {"inch.pound", TorqueUnit::PoundInch},
    {"inch.pounds", TorqueUnit::PoundInch},
    {"pound.inch", TorqueUnit::PoundInch},
    {"pound.inches", TorqueUnit::PoundInch},
    {"kgf.m", TorqueUnit::KilogramForceMetre},
    {"kg.m", TorqueUnit::KilogramForceMetre},
    {"kp.m", TorqueUnit::KilogramForceMetre},
    {"m.kgf", TorqueUnit::KilogramForceMetre},
    {"m.kg", TorqueUnit::KilogramForceMetre},
    {"m.kp", TorqueUnit::KilogramForceMetre},
    {"kgf.cm", TorqueUnit::KilogramForceCentimetre},
    {"kg.cm", TorqueUnit::KilogramForceCentimetre},
    {"kp.cm", TorqueUnit::KilogramForceCentimetre},
    {"cm.kgf", TorqueUnit::KilogramForceCentimetre},
    {"cm.kg", TorqueUnit::KilogramForceCentimetre},
    {"cm.kp", TorqueUnit::KilogramForceCentimetre},
};

constexpr Spelling<AngleUnit> angleSpellings[] = {
    {"°", AngleUnit::Degree},       {"deg", AngleUnit::Degree}, {"degree", AngleUnit::Degree},
    {"degrees", AngleUnit::Degree}, {"turn", AngleUnit::Turn},  {"turns", AngleUnit::Turn},
    {"tr", AngleUnit::Turn},        {"rev", AngleUnit::Turn},   {"revs", AngleUnit::Turn},
};

/// What stands between two parts of a spelling: spaces, at most one period and at most one dash or raised dot.
struct Join {
    int spaces = 0;
    int periods = 0;
    int signs = 0;

    [[nodiscard]] bool isEmpty() const { return spaces + periods + signs == 0; }
    [[nodiscard]] bool isWellFormed() const { return periods <= 1 && signs <= 1; }
    [[nodiscard]] bool isPeriodOnly() const { return spaces == 0 && periods == 1 && signs == 0; }
};

Join takeJoin(Scanner &in)
{
    Join join;
    for (;; in.advance()) {
        switch (in.peek()) {
        case U' ': ++join.spaces; break;
        case U'.': ++join.periods; break;
        case U'-':
        case U'·': ++join.signs; break;
        default: return join;
        }
    }
}

std::string takePart(Scanner &in)
{
    if (in.take(U'"'))
        return "\"";
    if (in.take(U'°'))
        return "°";
    const std::size_t begin = in.position();
    while (isLetter(in.peek()))
        in.advance();
    return inSmallLetters(in.since(begin));
}

/// The spelling in the form of the tables; empty if it has not even the shape of one.
std::string folded(std::string_view spelling)
{
    Scanner in(spelling);
    std::string result = takePart(in);
    while (!in.atEnd()) {
        const Join join = takeJoin(in);
        if (join.isEmpty() || !join.isWellFormed())
            return {};
        if (in.atEnd())
            return join.isPeriodOnly() ? result : std::string(); // the period of an abbreviation: "in."
        const std::string part = takePart(in);
        if (part.empty())
            return {};
        result.append(".").append(part);
    }
    return result;
}

/// Whether a spelling of the tables, its joins left out, is this one.
bool isWrittenTogether(std::string_view known, std::string_view wanted)
{
    std::size_t at = 0;
    for (const char c : known) {
        if (c == '.')
            continue;
        if (at == wanted.size() || wanted[at++] != c)
            return false;
    }
    return at == wanted.size();
}

template <class U, std::size_t Count>
std::optional<U> find(const Spelling<U> (&spellings)[Count], std::string_view spelling)
{
    const std::string wanted = folded(spelling);
    const auto same = [&](const Spelling<U> &known) { return known.text == wanted || isWrittenTogether(known.text, wanted); };
    const auto *found = std::find_if(std::begin(spellings), std::end(spellings), same);
    return found == std::end(spellings) ? std::nullopt : std::optional(found->unit);
}

} // namespace

template <>
std::optional<LengthUnit> unitSpelled<Length>(std::string_view spelling)
{
    return find(lengthSpellings, spelling);
}

template <>
std::optional<TorqueUnit> unitSpelled<Torque>(std::string_view spelling)
{
    return find(torqueSpellings, spelling);
}

template <>
std::optional<AngleUnit> unitSpelled<Angle>(std::string_view spelling)
{
    return find(angleSpellings, spelling);
}

} // namespace asleft
