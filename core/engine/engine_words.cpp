#include "engine_words.h"

#include <measure/rational.h>

#include <algorithm>

namespace asleft {

namespace {

/// dividend / divisor, a half going to the even neighbour, as the parser rounds. \pre neither is negative, divisor > 0
Int128 roundedQuotient(Int128 dividend, Int128 divisor)
{
    const Int128 below = dividend / divisor;
    const Int128 twiceTheRest = 2 * (dividend % divisor);
    const bool up = twiceTheRest > divisor || (twiceTheRest == divisor && below % 2 != 0);
    return below + (up ? 1 : 0);
}

std::string withDecimals(Int128 scaled, int decimals)
{
    std::string digits = std::to_string(static_cast<long long>(scaled));
    const auto fraction = static_cast<std::size_t>(decimals);
    if (digits.size() <= fraction)
        digits.insert(0, fraction + 1 - digits.size(), '0');
    if (fraction > 0)
        digits.insert(digits.size() - fraction, 1, '.');
    return digits;
}

} // namespace

Done notTooLong(std::string_view text)
{
    if (text.size() > longestEngineText)
        return fail(ErrorKind::TextTooLong, std::to_string(text.size()), std::to_string(longestEngineText));
    return {};
}

bool looksLikeLabel(std::string_view word)
{
    return !word.empty() && word.size() <= longestLabel &&
           std::ranges::all_of(word, [](char c) { return isAsciiDigit(c) || isAsciiLetter(c); });
}

std::string plainDegrees(Angle angle)
{
    // Ten decimals tell any two neighbouring angles apart.
    constexpr int mostDecimals = 10;
    const bool negative = angle < Angle{};
    const Int128 count = negative ? -Int128{angle.smallest()} : Int128{angle.smallest()};
    Int128 power = 1;
    for (int decimals = 0;; ++decimals, power *= 10) {
        const Int128 scaled = roundedQuotient(count * power, anglePerDegree);
        if (decimals == mostDecimals || roundedQuotient(scaled * anglePerDegree, power) == count)
            return (negative ? "-" : "") + withDecimals(scaled, decimals);
    }
}

} // namespace asleft
