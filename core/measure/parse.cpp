#include <measure/parse.h>

#include "shown.h"
#include "value.h"

#include <algorithm>

namespace asleft {

namespace {

/// One value from where the scanner stands to the end of the text.
template <class Q>
Result<Typed<Q>> readToEnd(Scanner &in, Unit<Q> fieldUnit, DecimalMark mark)
{
    const auto read = readValue<Q>(in, mark);
    if (!read)
        return tl::unexpected(read.error());
    in.skipSpaces();
    if (!in.atEnd())
        return refuseRest(in, *read);
    const Unit<Q> unit = read->unit.value_or(fieldUnit);
    const auto value = roundOnce<Q>(read->number.times(factor(unit)), unit, in.text());
    if (!value)
        return tl::unexpected(value.error());
    return Typed<Q>{*value, unit, std::string(in.text())};
}

template <class Q>
Result<Typed<Q>> parseUnsigned(std::string_view text, Unit<Q> fieldUnit, DecimalMark mark)
{
    const auto accepted = acceptText(text);
    if (!accepted)
        return tl::unexpected(accepted.error());
    Scanner in(*accepted);
    return readToEnd<Q>(in, fieldUnit, mark);
}

bool isDigitsOnly(std::string_view text)
{
    return std::ranges::all_of(text, isAsciiDigit);
}

} // namespace

template <class Q>
Result<Typed<Q>> parse(std::string_view text, Unit<Q> fieldUnit, DecimalMark mark)
{
    return parseUnsigned<Q>(text, fieldUnit, mark);
}

template <>
Result<Typed<Length>> parse<Length>(std::string_view text, LengthUnit fieldUnit, DecimalMark mark)
{
    return parseUnsigned<Length>(text, fieldUnit, mark);
}

template <>
Result<Typed<Torque>> parse<Torque>(std::string_view text, TorqueUnit fieldUnit, DecimalMark mark)
{
    return parseUnsigned<Torque>(text, fieldUnit, mark);
}

template <>
Result<Typed<Angle>> parse<Angle>(std::string_view text, AngleUnit fieldUnit, DecimalMark mark)
{
    return parseUnsigned<Angle>(text, fieldUnit, mark);
}

Result<Angle> parseSignedAngle(std::string_view text, DecimalMark mark)
{
    const auto accepted = acceptText(text);
    if (!accepted)
        return tl::unexpected(accepted.error());
    Scanner in(*accepted);
    const bool negative = in.take(U'-');
    in.skipSpaces();
    if (negative && in.peek() == U'-')
        return fail(ErrorKind::NotANumber, *accepted);
    const auto typed = readToEnd<Angle>(in, AngleUnit::Degree, mark);
    if (!typed)
        return tl::unexpected(typed.error());
    return negative ? -typed->value : typed->value;
}

Result<Typed<Length>> parseInSteps(std::string_view text, LengthUnit fieldUnit, DecimalMark mark)
{
    const auto accepted = acceptText(text);
    if (!accepted)
        return tl::unexpected(accepted.error());
    if (!isDigitsOnly(*accepted))
        return parse<Length>(*accepted, fieldUnit, mark);
    Scanner in(*accepted);
    const auto steps = readNumber(in, mark);
    if (!steps)
        return tl::unexpected(steps.error());
    const auto value = roundOnce<Length>(steps->times(Rational(stepOf(fieldUnit).smallest())), fieldUnit, *accepted);
    if (!value)
        return tl::unexpected(value.error());
    return Typed<Length>{*value, fieldUnit, exactNumber(*value, fieldUnit, mark)};
}

Result<Rational> parseNumber(std::string_view text, DecimalMark mark)
{
    const auto accepted = acceptText(text);
    if (!accepted)
        return tl::unexpected(accepted.error());
    Scanner in(*accepted);
    auto number = readNumber(in, mark);
    in.skipSpaces();
    if (number && !in.atEnd())
        return fail(ErrorKind::TextLeftOver, in.rest());
    return number;
}

} // namespace asleft
