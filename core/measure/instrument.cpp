#include <measure/instrument.h>

#include "wholes.h"

#include <cassert>
#include <cmath>
#include <limits>

namespace asleft {

namespace {

/// The smallest whole n with n² ≥ square / 3: √(square/3) rounded up.
std::int64_t rootOfThird(Int128 square)
{
    const auto enough = [square](std::int64_t n) { return 3 * Int128{n} * n >= square; };
    // The double is right to one part in 10^16; the steps make it exact.
    auto root = static_cast<std::int64_t>(std::sqrt(static_cast<double>(square) / 3));
    while (!enough(root))
        ++root;
    while (root > 0 && enough(root - 1))
        --root;
    return root;
}

/// U = 2u of what may lie anywhere within ±a: 2a/√3, the root of 4a²/3.
std::int64_t expandedOfBound(Int128 bound)
{
    return rootOfThird(4 * bound * bound);
}

} // namespace

Length feelerUncertainty(Length step)
{
    assert(step >= Length());
    const Int128 count = step.smallest();
    return Length::ofSmallest(rootOfThird(count * count));
}

Length gaugeUncertainty(Length permissibleError, Length resolution)
{
    assert(permissibleError >= Length() && resolution >= Length());
    const Int128 error = permissibleError.smallest();
    const Int128 read = resolution.smallest();
    return Length::ofSmallest(rootOfThird(4 * error * error + read * read));
}

Torque torqueToolUncertainty(Torque reading, const Rational &percent)
{
    assert(reading >= Torque() && !percent.isNegative());
    const auto share = Rational(reading.smallest()).times(percent);
    const auto bound = share ? share->times(Rational(1, 100)) : std::nullopt;
    assert(bound && wholeAbove(*bound) <= std::numeric_limits<std::int64_t>::max() / 2); // a typed torque and not many times itself
    return Torque::ofSmallest(expandedOfBound(wholeAbove(*bound)));
}

Rational clickWrenchDeviation(Torque largest)
{
    constexpr Torque tenNewtonMetres = Torque::ofSmallest(10'000'000'000);
    return Rational(largest <= tenNewtonMetres ? 6 : 4);
}

} // namespace asleft
