#include "value.h"

#include "shown.h"

#include <algorithm>

namespace asleft {

namespace {

/// Whether a unit that ends at `position` is not merely the beginning of a longer word.
bool wordEndsAt(std::string_view text, std::size_t position, char32_t last)
{
    Scanner next(text);
    next.moveTo(position);
    return !isLetter(last) || !(isLetter(next.peek()) || isDigit(next.peek()));
}

/// How many bytes from here spell a unit of Q; the longest such spelling, so that "in-lb" is not taken for "in". 0: none.
template <class Q>
std::size_t unitLength(const Scanner &in)
{
    const std::size_t begin = in.position();
    std::size_t longest = 0;
    for (Scanner ahead = in; !ahead.atEnd();) {
        const char32_t last = ahead.peek();
        if (isDigit(last))
            break;
        ahead.advance();
        if (wordEndsAt(in.text(), ahead.position(), last) && unitSpelled<Q>(ahead.since(begin)))
            longest = ahead.position() - begin;
    }
    return longest;
}

std::size_t anyUnitLength(const Scanner &in)
{
    return std::max({unitLength<Length>(in), unitLength<Torque>(in), unitLength<Angle>(in)});
}

bool looksLikeUnit(char32_t c)
{
    return isLetter(c) || c == U'%' || c == U'"' || c == U'\'' || c == U'°';
}

bool holdsDigit(std::string_view word)
{
    return std::any_of(word.begin(), word.end(), [](char c) { return c >= '0' && c <= '9'; });
}

} // namespace

template <class Q>
Result<ReadValue<Q>> readValue(Scanner &in, DecimalMark mark)
{
    ReadValue<Q> value;
    value.begin = in.position();
    const auto number = readNumber(in, mark);
    if (!number)
        return tl::unexpected(number.error());
    value.number = *number;
    value.numberEnd = in.position();
    in.skipSpaces();

    const std::size_t begin = in.position();
    const std::size_t ours = unitLength<Q>(in);
    const std::size_t anyones = anyUnitLength(in);
    if (anyones > ours)
        return fail(ErrorKind::UnknownUnit, in.rest().substr(0, anyones), acceptedUnits<Q>());
    in.moveTo(ours > 0 ? begin + ours : value.numberEnd);
    if (ours > 0)
        value.unit = unitSpelled<Q>(in.since(begin));
    return value;
}

tl::unexpected<Error> refuseRest(const Scanner &in, const NumberPlace &last, const std::string &accepted)
{
    if (last.hasUnit || !looksLikeUnit(in.peek()))
        return fail(ErrorKind::TextLeftOver, in.rest());
    const std::string_view word = in.wordHere();
    const bool touches = in.position() == last.end;
    if (touches && holdsDigit(word)) // 1e9, 0x1F
        return fail(ErrorKind::NotANumber, in.text().substr(last.begin, last.end - last.begin + word.size()));
    return fail(ErrorKind::UnknownUnit, word, accepted);
}

template <class Q>
Result<Q> roundOnce(const std::optional<Rational> &exact, Unit<Q> unit, std::string_view text)
{
    if (!exact)
        return fail(ErrorKind::TooManyDigits, text);
    const auto smallest = exact->rounded();
    if (smallest && *smallest <= largest<Q>.smallest())
        return Q::ofSmallest(*smallest);
    const std::string most = formatNumber(largest<Q>, unit, 0, DecimalMark::Point, Rounding::Down);
    return fail(ErrorKind::ValueTooLarge, text, withSymbol<Q>(most, unit));
}

template Result<ReadValue<Length>> readValue(Scanner &, DecimalMark);
template Result<ReadValue<Torque>> readValue(Scanner &, DecimalMark);
template Result<ReadValue<Angle>> readValue(Scanner &, DecimalMark);
template Result<Length> roundOnce<Length>(const std::optional<Rational> &, LengthUnit, std::string_view);
template Result<Torque> roundOnce<Torque>(const std::optional<Rational> &, TorqueUnit, std::string_view);
template Result<Angle> roundOnce<Angle>(const std::optional<Rational> &, AngleUnit, std::string_view);

} // namespace asleft
