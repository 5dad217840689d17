#pragma once

#include <compare>
#include <cstdint>

namespace asleft {

/// A physical quantity held as a whole number of one small unit, so that equal values are equal and nothing drifts.
/// Lengths times lengths are not lengths: only sums, differences and whole multiples exist.
template <class Kind>
class Quantity {
public:
    constexpr Quantity() = default;
    [[nodiscard]] static constexpr Quantity ofSmallest(std::int64_t count) { return Quantity(count); }
    [[nodiscard]] constexpr std::int64_t smallest() const { return m_count; }

    constexpr auto operator<=>(const Quantity &) const = default;
    constexpr Quantity operator-() const { return Quantity(-m_count); }
    constexpr Quantity &operator+=(Quantity other)
    {
        m_count += other.m_count;
        return *this;
    }
    constexpr Quantity &operator-=(Quantity other)
    {
        m_count -= other.m_count;
        return *this;
    }
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.m_count + b.m_count); }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.m_count - b.m_count); }
    friend constexpr Quantity operator*(Quantity a, std::int64_t times) { return Quantity(a.m_count * times); }

private:
    explicit constexpr Quantity(std::int64_t count) : m_count(count) {}
    std::int64_t m_count = 0;
};

/// Nanometres: 1 thou is 25 400 of them exactly, and every printed clearance in either system is whole or nearly so.
using Length = Quantity<struct LengthKind>;

/// Nanonewton-metres.
using Torque = Quantity<struct TorqueKind>;

/// 1/7 436 429 000 of a degree: the unit in which a thousandth of a degree and 720°/n for every n from 1 to 24 are whole,
/// so that phases and margins of evenly firing engines compare exactly. (7 436 429 = 7·11·13·17·19·23.)
using Angle = Quantity<struct AngleKind>;

/// 1/9000 of a kelvin, counted from 0 °C: a thousandth of a degree on either scale is whole. A place on the scale, not a difference.
using Temperature = Quantity<struct TemperatureKind>;

constexpr std::int64_t anglePerDegree = 7'436'429'000;

constexpr Angle degrees(std::int64_t whole)
{
    return Angle::ofSmallest(whole * anglePerDegree);
}
constexpr Angle millidegrees(std::int64_t thousandths)
{
    return Angle::ofSmallest(thousandths * (anglePerDegree / 1000));
}
constexpr double toDegrees(Angle angle)
{
    return static_cast<double>(angle.smallest()) / static_cast<double>(anglePerDegree);
}

constexpr Length nanometres(std::int64_t count)
{
    return Length::ofSmallest(count);
}
constexpr Length micrometres(std::int64_t count)
{
    return Length::ofSmallest(count * 1000);
}
constexpr Length thou(std::int64_t count)
{
    return Length::ofSmallest(count * 25'400);
}
constexpr double toMillimetres(Length length)
{
    return static_cast<double>(length.smallest()) / 1e6;
}
constexpr double toNewtonMetres(Torque torque)
{
    return static_cast<double>(torque.smallest()) / 1e9;
}

} // namespace asleft
