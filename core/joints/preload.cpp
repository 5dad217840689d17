#include <joints/preload.h>

#include <measure/text.h>

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

namespace asleft {

namespace {

/// What a thread takes in ordinary work: three quarters of its proof load (Shigley 8-9, reused connections).
constexpr double ordinaryShare = 0.75;
constexpr double tooMuch = 1.5;
constexpr double tooLittle = 0.05;

constexpr std::array torqueUnits{TorqueUnit::NewtonMetre, TorqueUnit::PoundFoot, TorqueUnit::PoundInch, TorqueUnit::KilogramForceMetre,
                                 TorqueUnit::KilogramForceCentimetre};

constexpr double oiledNutFactor = 0.18;

double dryNutFactor(Finish finish)
{
    switch (finish) {
    case Finish::Black: return 0.30;
    case Finish::Zinc: return 0.20;
    case Finish::Cadmium: return 0.16;
    }
    return 0.20;
}

/// The number in front of the unit: no unit of torque has a digit in it.
std::string_view digitsOf(std::string_view text)
{
    const auto last = std::find_if(text.rbegin(), text.rend(), isAsciiDigit);
    return text.substr(0, static_cast<std::size_t>(text.rend() - last));
}

/// The digits of the text in another unit, if they are what the value was read from.
std::optional<Torque> readAgain(const Typed<Torque> &torque, TorqueUnit unit)
{
    // Read with a decimal point: whatever a comma country's fields accept reads the same there, or is refused.
    const std::string_view digits = digitsOf(torque.text);
    const auto own = parse<Torque>(digits, torque.unit);
    const auto other = parse<Torque>(digits, unit);
    if (own && other && own->value == torque.value)
        return other->value;
    return std::nullopt;
}

std::optional<Torque> scaled(const Typed<Torque> &torque, TorqueUnit unit)
{
    const Rational own = factor(torque.unit);
    const auto count = Rational(torque.value.smallest()).times(Rational(own.denominator(), own.numerator()));
    const auto other = count ? count->times(factor(unit)) : std::nullopt;
    const auto whole = other ? other->rounded() : std::nullopt;
    return whole ? std::optional(Torque::ofSmallest(*whole)) : std::nullopt;
}

/// The same digits in another unit. Read again where that can be done, so that it is to the last unit what typing them would give.
std::optional<Torque> sameDigits(const Typed<Torque> &torque, TorqueUnit unit)
{
    const auto read = readAgain(torque, unit);
    return read ? read : scaled(torque, unit);
}

bool isSensible(double times)
{
    return times >= tooLittle && times <= tooMuch;
}

} // namespace

double nutFactor(ThreadCondition condition, Finish finish)
{
    switch (condition) {
    case ThreadCondition::Dry: return dryNutFactor(finish);
    case ThreadCondition::Oiled:
    case ThreadCondition::ThreadLock:
    case ThreadCondition::Sealant: return std::min(oiledNutFactor, dryNutFactor(finish));
    case ThreadCondition::AntiSeize: return 0.12;
    }
    return dryNutFactor(finish);
}

double preloadNewtons(Torque torque, double nutFactor, Length diameter)
{
    assert(nutFactor > 0 && diameter > Length{});
    // Nanonewton-metres over nanometres are newtons.
    return static_cast<double>(torque.smallest()) / (nutFactor * static_cast<double>(diameter.smallest()));
}

Torque torqueForPreload(double newtons, double nutFactor, Length diameter)
{
    assert(std::isfinite(newtons));
    return Torque::ofSmallest(std::llround(nutFactor * static_cast<double>(diameter.smallest()) * newtons));
}

std::optional<double> shareOfProof(Torque torque, const Thread &thread, StrengthClass strength, double nutFactor)
{
    const auto load = proofLoadNewtons(strength, thread);
    return load ? std::optional(preloadNewtons(torque, nutFactor, thread.diameter) / *load) : std::nullopt;
}

std::optional<TorqueDoubt> questionTorque(const Typed<Torque> &torque, const Thread &thread, StrengthClass strength, double nutFactor,
                                          bool floorCounts)
{
    const auto timesOf = [&](Torque value) -> std::optional<double> {
        const auto share = shareOfProof(value, thread, strength, nutFactor);
        return share ? std::optional(*share / ordinaryShare) : std::nullopt;
    };
    const auto times = timesOf(torque.value);
    if (!times || isSensible(*times) || (*times < tooLittle && !floorCounts))
        return std::nullopt;
    TorqueDoubt doubt{*times, {}, {}};
    for (const TorqueUnit unit : torqueUnits) {
        const auto value = unit == torque.unit ? std::nullopt : sameDigits(torque, unit);
        if (!value || !isSensible(*timesOf(*value)))
            continue;
        doubt.meant = unit;
        doubt.meantValue = value;
        break;
    }
    return doubt;
}

int generalAllowancePercent(bool oiled, bool newlyPlated, FemaleMaterial material)
{
    return std::max({oiled ? 10 : 0, newlyPlated ? 20 : 0, material == FemaleMaterial::Aluminium ? 30 : 0});
}

} // namespace asleft
