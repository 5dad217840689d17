#include <measure/rational.h>

#include "wholes.h"

#include <cassert>
#include <limits>

namespace asleft {

namespace {

__extension__ typedef unsigned __int128 UInt128;

// The most negative number has no positive twin, so magnitudes are taken unsigned.
UInt128 magnitude(Int128 value)
{
    return value < 0 ? UInt128{0} - static_cast<UInt128>(value) : static_cast<UInt128>(value);
}

UInt128 greatestCommonDivisor(UInt128 a, UInt128 b)
{
    while (b != 0) {
        const UInt128 rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

/// \pre b > 0
Int128 commonDivisor(Int128 a, Int128 b)
{
    return static_cast<Int128>(greatestCommonDivisor(magnitude(a), magnitude(b)));
}

std::optional<Int128> product(Int128 a, Int128 b)
{
    Int128 result = 0;
    if (__builtin_mul_overflow(a, b, &result))
        return std::nullopt;
    return result;
}

std::optional<std::int64_t> fitted(Int128 whole)
{
    if (whole < std::numeric_limits<std::int64_t>::min() || whole > std::numeric_limits<std::int64_t>::max())
        return std::nullopt;
    return static_cast<std::int64_t>(whole);
}

/// Two fractions brought to one denominator.
struct Aligned {
    Int128 first;
    Int128 second;
    Int128 denominator;
};

std::optional<Aligned> aligned(const Rational &a, const Rational &b)
{
    // The least common denominator: the plain product would overflow for two typed values of many decimals.
    const Int128 common = commonDivisor(a.denominator(), b.denominator());
    const auto first = product(a.numerator(), b.denominator() / common);
    const auto second = product(b.numerator(), a.denominator() / common);
    const auto denominator = product(a.denominator(), b.denominator() / common);
    if (!first || !second || !denominator)
        return std::nullopt;
    return Aligned{*first, *second, *denominator};
}

} // namespace

Rational::Rational(Int128 numerator, Int128 denominator)
{
    assert(denominator != 0);
    const UInt128 common = greatestCommonDivisor(magnitude(numerator), magnitude(denominator));
    const UInt128 top = magnitude(numerator) / common;
    m_numerator = static_cast<Int128>((numerator < 0) != (denominator < 0) ? UInt128{0} - top : top);
    m_denominator = static_cast<Int128>(magnitude(denominator) / common);
    assert(m_denominator > 0 && (m_numerator < 0) == (numerator != 0 && (numerator < 0) != (denominator < 0)));
}

double Rational::toDouble() const
{
    return static_cast<double>(m_numerator) / static_cast<double>(m_denominator);
}

std::optional<Rational> Rational::plus(const Rational &other) const
{
    const auto both = aligned(*this, other);
    Int128 sum = 0;
    if (!both || __builtin_add_overflow(both->first, both->second, &sum))
        return std::nullopt;
    return Rational(sum, both->denominator);
}

std::optional<Rational> Rational::minus(const Rational &other) const
{
    const auto both = aligned(*this, other);
    Int128 difference = 0;
    if (!both || __builtin_sub_overflow(both->first, both->second, &difference))
        return std::nullopt;
    return Rational(difference, both->denominator);
}

std::optional<Rational> Rational::times(const Rational &other) const
{
    // Cancelled crosswise first, so that only a result that does not fit is refused.
    const Int128 here = commonDivisor(m_numerator, other.m_denominator);
    const Int128 there = commonDivisor(other.m_numerator, m_denominator);
    const auto numerator = product(m_numerator / here, other.m_numerator / there);
    const auto denominator = product(m_denominator / there, other.m_denominator / here);
    if (!numerator || !denominator)
        return std::nullopt;
    return Rational(*numerator, *denominator);
}

std::optional<std::int64_t> Rational::rounded() const
{
    return fitted(wholeNearest(*this));
}

std::optional<std::int64_t> Rational::floored() const
{
    return fitted(wholeBelow(*this));
}

Int128 wholeBelow(const Rational &value)
{
    const Int128 whole = value.numerator() / value.denominator();
    const bool cutUpwards = value.numerator() % value.denominator() < 0;
    return cutUpwards ? whole - 1 : whole;
}

Int128 wholeAbove(const Rational &value)
{
    const Int128 below = wholeBelow(value);
    return value.denominator() == 1 ? below : below + 1;
}

Int128 wholeNearest(const Rational &value)
{
    const Int128 below = wholeBelow(value);
    const Int128 remainder = value.numerator() % value.denominator();
    const Int128 over = remainder < 0 ? remainder + value.denominator() : remainder;
    const Int128 under = value.denominator() - over;
    if (over == under)
        return below % 2 == 0 ? below : below + 1;
    return over < under ? below : below + 1;
}

Int128 powerOfTen(int exponent)
{
    assert(exponent >= 0 && exponent <= 37);
    Int128 power = 1;
    for (int i = 0; i < exponent; ++i)
        power *= 10;
    return power;
}

} // namespace asleft
