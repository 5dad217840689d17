#include <measure/format.h>

#include "number.h"
#include "shown.h"
#include "wholes.h"

#include <cassert>

namespace asleft {

namespace {

// Ten decimals tell any two quantities apart in any unit but the turn, which takes thirteen; one more escapes an ambiguous three.
constexpr int mostDecimals(LengthUnit /*unit*/)
{
    return 11;
}
constexpr int mostDecimals(TorqueUnit /*unit*/)
{
    return 11;
}
constexpr int mostDecimals(AngleUnit unit)
{
    return unit == AngleUnit::Turn ? 14 : 11;
}

Int128 wholeBy(Rounding rounding, const Rational &value)
{
    switch (rounding) {
    case Rounding::HalfEven: return wholeNearest(value);
    case Rounding::Down: return wholeBelow(value);
    case Rounding::Up: return wholeAbove(value);
    }
    return wholeNearest(value);
}

std::string digitsOf(Int128 count)
{
    std::string digits;
    for (; count > 0; count /= 10)
        digits.insert(digits.begin(), static_cast<char>('0' + static_cast<int>(count % 10)));
    return digits;
}

template <class Q>
bool readsBackAs(Q value, Int128 count, int decimals, Unit<Q> unit)
{
    const auto exact = Rational(count, powerOfTen(decimals)).times(factor(unit));
    return exact && exact->rounded() == value.smallest();
}

std::string_view withoutMinus(std::string_view number)
{
    return number.substr(number.front() == '-' ? 1 : 0);
}

} // namespace

int stepDecimals(LengthUnit unit)
{
    switch (unit) {
    case LengthUnit::Millimetre: return 2;
    case LengthUnit::Inch: return 3;
    case LengthUnit::Thou: return 0;
    }
    return 0;
}

int stepDecimals(TorqueUnit unit)
{
    switch (unit) {
    case TorqueUnit::NewtonMetre: return 1;
    case TorqueUnit::KilogramForceMetre: return 2;
    case TorqueUnit::PoundFoot:
    case TorqueUnit::PoundInch:
    case TorqueUnit::KilogramForceCentimetre: return 0;
    }
    return 0;
}

int stepDecimals(AngleUnit unit)
{
    return unit == AngleUnit::Turn ? 2 : 0;
}

Length stepOf(LengthUnit unit)
{
    const auto wholeUnit = static_cast<std::int64_t>(factor(unit).numerator()); // a length unit is a whole number of nanometres
    return nanometres(wholeUnit / static_cast<std::int64_t>(powerOfTen(stepDecimals(unit))));
}

std::string decimalText(Int128 count, int decimals, DecimalMark mark)
{
    const auto behind = static_cast<std::size_t>(decimals);
    std::string text = digitsOf(count < 0 ? -count : count);
    if (text.size() <= behind)
        text.insert(0, behind + 1 - text.size(), '0');
    if (behind > 0)
        text.insert(text.size() - behind, 1, mark == DecimalMark::Comma ? ',' : '.');
    return count < 0 ? "-" + text : text;
}

template <class Q>
Int128 countOfLastDecimal(Q value, Unit<Q> unit, int decimals, Rounding rounding)
{
    assert(decimals >= 0 && decimals <= mostDecimals(unit));
    const Rational one = factor(unit);
    const auto scaled = Rational(value.smallest()).times(Rational(one.denominator() * powerOfTen(decimals), one.numerator()));
    assert(scaled); // 64 bits of quantity, 24 of a factor's denominator and 37 of decimals
    return wholeBy(rounding, *scaled);
}

template <class Q>
std::string formatNumber(Q value, Unit<Q> unit, int decimals, DecimalMark mark, Rounding rounding)
{
    return decimalText(countOfLastDecimal(value, unit, decimals, rounding), decimals, mark);
}

template <class Q>
std::string exactNumber(Q value, Unit<Q> unit, DecimalMark mark)
{
    for (int decimals = stepDecimals(unit); decimals < mostDecimals(unit); ++decimals) {
        const Int128 count = countOfLastDecimal(value, unit, decimals, Rounding::HalfEven);
        std::string text = decimalText(count, decimals, mark);
        if (readsBackAs(value, count, decimals, unit) && !isAmbiguous(withoutMinus(text), mark))
            return text;
    }
    return formatNumber(value, unit, mostDecimals(unit), mark);
}

template <class Q>
std::string withSymbol(std::string number, Unit<Q> unit)
{
    const std::string_view gap = symbol(unit) == "°" ? "" : " ";
    return number.append(gap).append(symbol(unit));
}

template <class Q>
std::string formatExact(Q value, Unit<Q> unit, DecimalMark mark)
{
    return withSymbol<Q>(exactNumber(value, unit, mark), unit);
}

template <class Q>
std::string formatTyped(const Typed<Q> &typed)
{
    // A number ends in a digit, no unit does.
    const bool bare = !typed.text.empty() && isDigit(static_cast<unsigned char>(typed.text.back()));
    return bare ? withSymbol<Q>(typed.text, typed.unit) : typed.text;
}

template Int128 countOfLastDecimal(Length, LengthUnit, int, Rounding);
template Int128 countOfLastDecimal(Torque, TorqueUnit, int, Rounding);
template Int128 countOfLastDecimal(Angle, AngleUnit, int, Rounding);
template std::string formatNumber(Length, LengthUnit, int, DecimalMark, Rounding);
template std::string formatNumber(Torque, TorqueUnit, int, DecimalMark, Rounding);
template std::string formatNumber(Angle, AngleUnit, int, DecimalMark, Rounding);
template std::string exactNumber(Length, LengthUnit, DecimalMark);
template std::string exactNumber(Torque, TorqueUnit, DecimalMark);
template std::string exactNumber(Angle, AngleUnit, DecimalMark);
template std::string withSymbol<Length>(std::string, LengthUnit);
template std::string withSymbol<Torque>(std::string, TorqueUnit);
template std::string withSymbol<Angle>(std::string, AngleUnit);
template std::string formatExact(Length, LengthUnit, DecimalMark);
template std::string formatExact(Torque, TorqueUnit, DecimalMark);
template std::string formatExact(Angle, AngleUnit, DecimalMark);
template std::string formatTyped(const Typed<Length> &);
template std::string formatTyped(const Typed<Torque> &);
template std::string formatTyped(const Typed<Angle> &);

} // namespace asleft
