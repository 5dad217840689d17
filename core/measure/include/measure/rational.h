#pragma once

#include <compare>
#include <cstdint>
#include <optional>

namespace asleft {

__extension__ typedef __int128 Int128;

/// An exact fraction of 128-bit whole numbers, always in lowest terms with a positive denominator. Typed values of at most
/// 12 digits, times any unit's factor, fit; an operation that would not fit gives nothing rather than a wrong number.
class Rational {
public:
    constexpr Rational() = default;
    explicit Rational(Int128 whole) : m_numerator(whole) {}
    /// \pre denominator != 0
    Rational(Int128 numerator, Int128 denominator);

    [[nodiscard]] Int128 numerator() const { return m_numerator; }
    [[nodiscard]] Int128 denominator() const { return m_denominator; }
    [[nodiscard]] bool isNegative() const { return m_numerator < 0; }
    [[nodiscard]] double toDouble() const;

    [[nodiscard]] std::optional<Rational> plus(const Rational &other) const;
    [[nodiscard]] std::optional<Rational> minus(const Rational &other) const;
    [[nodiscard]] std::optional<Rational> times(const Rational &other) const;

    /// The nearest whole number, a half going to the even neighbour; nothing if it does not fit an int64.
    [[nodiscard]] std::optional<std::int64_t> rounded() const;
    /// The whole number at or below; nothing if it does not fit an int64.
    [[nodiscard]] std::optional<std::int64_t> floored() const;

    bool operator==(const Rational &) const = default;

private:
    Int128 m_numerator = 0;
    Int128 m_denominator = 1;
};

} // namespace asleft
