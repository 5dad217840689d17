#include <shop/joint.h>

#include <measure/format.h>

#include <cassert>
#include <cstdlib>

namespace asleft {

namespace {

constexpr int mostWrittenDecimals = 10; // they tell any two torques apart in any unit

/// The shortest number that says the value, give or take `slack` of its smallest unit, and the value of that number.
Typed<Torque> writtenOut(Torque value, TorqueUnit unit, std::int64_t slack)
{
    for (int decimals = 0; decimals <= mostWrittenDecimals; ++decimals) {
        const auto written = parse<Torque>(formatNumber(value, unit, decimals), unit);
        if (written && std::abs(written->value.smallest() - value.smallest()) <= slack)
            return *written;
    }
    return {value, unit, formatExact(value, unit)};
}

/// Of a band with one limit, that.
Typed<Torque> middleOf(const Band<Torque> &band)
{
    if (!band.low || !band.high)
        return writtenOut(band.low ? *band.low : *band.high, band.unit, 0);
    const auto middle = Rational(Int128{band.low->smallest()} + band.high->smallest(), 2).rounded();
    // Either limit was rounded once already: between 20 and 25 lbf·ft lies 22.5, not a nanonewton-metre beside it.
    return writtenOut(Torque::ofSmallest(middle.value_or(band.low->smallest())), band.unit, 1);
}

/// A torque of its own is the target where it is what the passes go by, however it is typed.
bool isToTarget(const Joint &joint, const Pass &pass)
{
    const auto *own = std::get_if<AtTorque>(&pass);
    if (!own)
        return std::holds_alternative<AtTarget>(pass) || std::holds_alternative<Settle>(pass);
    const auto target = targetOf(joint);
    return target && target->value == own->torque.value;
}

} // namespace

std::optional<Typed<Torque>> targetOf(const Joint &joint, std::optional<TorqueUnit> unit)
{
    if (!joint.target)
        return std::nullopt;
    const Band<Torque> &band = unit ? joint.target->printedFor(*unit) : joint.target->first;
    if (!band.nominal)
        return band.low || band.high ? std::optional(middleOf(band)) : std::nullopt;
    if (band.form == BandForm::NominalOnly)
        return Typed<Torque>{*band.nominal, band.unit, band.text};
    return writtenOut(*band.nominal, band.unit, 0);
}

std::optional<Torque> wantedInPass(const Joint &joint, std::size_t pass, std::optional<TorqueUnit> unit)
{
    assert(pass < joint.passes.size());
    const auto target = targetOf(joint, unit);
    const auto value = target ? std::optional(target->value) : std::nullopt;
    return isToTarget(joint, joint.passes[pass]) ? value : torqueOfPass(joint.passes[pass], value);
}

const Band<Torque> *bandOfPass(const Joint &joint, std::size_t pass, TorqueUnit unit)
{
    assert(pass < joint.passes.size());
    return joint.target && isToTarget(joint, joint.passes[pass]) ? &joint.target->printedFor(unit) : nullptr;
}

} // namespace asleft
