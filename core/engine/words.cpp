#include "words.h"

#include <measure/rational.h>

#include <algorithm>

namespace asleft::words {

namespace {

constexpr std::string_view blanks = " \t\r\n";

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

std::string_view trimmed(std::string_view text)
{
    const std::size_t first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

std::vector<std::string_view> wordsOf(std::string_view text, std::string_view separators)
{
    std::vector<std::string_view> words;
    std::size_t at = text.find_first_not_of(separators);
    while (at != std::string_view::npos) {
        const std::size_t end = std::min(text.find_first_of(separators, at), text.size());
        words.push_back(text.substr(at, end - at));
        at = text.find_first_not_of(separators, end);
    }
    return words;
}

std::vector<std::string_view> piecesOf(std::string_view text, char mark)
{
    std::vector<std::string_view> pieces;
    for (std::size_t at = text.find(mark); at != std::string_view::npos; at = text.find(mark)) {
        pieces.push_back(trimmed(text.substr(0, at)));
        text.remove_prefix(at + 1);
    }
    pieces.push_back(trimmed(text));
    return pieces;
}

// The standard library's own tests of characters depend on the locale and are undefined for bytes above 127.
bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

bool isLetter(char c)
{
    return inCapitals(c) >= 'A' && inCapitals(c) <= 'Z';
}

char inCapitals(char c)
{
    return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}

bool sameWord(std::string_view a, std::string_view b)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](char x, char y) { return inCapitals(x) == inCapitals(y); });
}

bool looksLikeLabel(std::string_view word)
{
    return !word.empty() && word.size() <= longestLabel &&
           std::all_of(word.begin(), word.end(), [](char c) { return isDigit(c) || isLetter(c); });
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

} // namespace asleft::words
