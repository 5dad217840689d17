#pragma once

#include <measure/band.h>
#include <measure/parse.h>

#include <string_view>

namespace asleft {

// Values as they are typed, which must be readable.

inline Typed<Length> length(std::string_view text)
{
    return parse<Length>(text, LengthUnit::Millimetre).value();
}

inline Typed<Angle> turns(std::string_view text)
{
    return parse<Angle>(text, AngleUnit::Turn).value();
}

inline Typed<Torque> typedTorque(std::string_view text)
{
    return parse<Torque>(text, TorqueUnit::NewtonMetre).value();
}

inline Torque torque(std::string_view text)
{
    return typedTorque(text).value;
}

inline Band<Length> band(std::string_view text)
{
    return parseBand<Length>(text, LengthUnit::Millimetre).value();
}

inline SpecBand<Length> bands(std::string_view first, std::string_view second = {})
{
    std::optional<Band<Length>> other;
    if (!second.empty())
        other = band(second);
    return pairBands(band(first), other).value();
}

inline SpecBand<Angle> turnBands(std::string_view text)
{
    return pairBands<Angle>(parseBand<Angle>(text, AngleUnit::Turn).value(), std::nullopt).value();
}

inline SpecBand<Torque> torqueBands(std::string_view first, std::string_view second = {})
{
    std::optional<Band<Torque>> other;
    if (!second.empty())
        other = parseBand<Torque>(second, TorqueUnit::PoundFoot).value();
    return pairBands(parseBand<Torque>(first, TorqueUnit::NewtonMetre).value(), other).value();
}

} // namespace asleft
