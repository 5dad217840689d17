#include <joints/adapter.h>

#include <measure/rational.h>

#include <cmath>
#include <cstdlib>
#include <numbers>

namespace asleft {

namespace {

constexpr std::int64_t straight = 180 * anglePerDegree;

/// How far the angle is from straight out, 0 to 180°: to which side an adapter points makes no difference.
Angle fromStraightOut(Angle angle)
{
    const std::int64_t turned = std::abs(angle.smallest() % (2 * straight));
    return Angle::ofSmallest(turned > straight ? 2 * straight - turned : turned);
}

/// Exact wherever it is a fraction (0, 60, 90, 120, 180°), where the cosine of a rounded π would not be.
double cosine(Angle angle)
{
    const Angle toAcross = degrees(90) - fromStraightOut(angle);
    if (toAcross == degrees(30) || toAcross == degrees(-30))
        return toAcross > Angle() ? 0.5 : -0.5;
    return std::sin(toDegrees(toAcross) * std::numbers::pi / 180);
}

// Arms count in 2^-30 nm: no cosine is felt at that size, a torque times an arm fits 128 bits, and the quotient is then rounded only once.
constexpr int armBits = 30;

struct Arms {
    Int128 hand;     ///< from the drive to the hand
    Int128 fastener; ///< from the fastener to the hand, along the wrench
};

Result<Arms> armsOf(Length lever, const AdapterFit &fit)
{
    if (lever <= Length() || lever > longestLever || fit.length < Length() || fit.length > longestAdapterLength)
        return fail(ErrorKind::AdapterOutOfRange);
    const double along = static_cast<double>(fit.length.smallest()) * cosine(fit.angle);
    const Int128 hand = Int128{lever.smallest()} << armBits;
    const Int128 fastener = hand + std::llround(std::ldexp(along, armBits));
    if (10 * fastener <= hand)
        return fail(ErrorKind::AdapterReversed);
    return Arms{hand, fastener};
}

Result<Torque> scaled(Torque torque, Int128 times, Int128 over)
{
    const auto exact = Rational(torque.smallest()).times(Rational(times, over));
    const auto smallest = exact ? exact->rounded() : std::nullopt;
    if (!smallest) // a lever of next to nothing, which no wrench has
        return fail(ErrorKind::AdapterOutOfRange);
    return Torque::ofSmallest(*smallest);
}

} // namespace

bool changesNothing(const AdapterFit &fit)
{
    return fit.length == Length() || fromStraightOut(fit.angle) == degrees(90);
}

Result<Torque> wrenchSetting(Torque wanted, Length lever, const AdapterFit &fit)
{
    return armsOf(lever, fit).and_then([wanted](const Arms &arms) { return scaled(wanted, arms.hand, arms.fastener); });
}

Result<Torque> torqueAtFastener(Torque setting, Length lever, const AdapterFit &fit)
{
    return armsOf(lever, fit).and_then([setting](const Arms &arms) { return scaled(setting, arms.fastener, arms.hand); });
}

} // namespace asleft
