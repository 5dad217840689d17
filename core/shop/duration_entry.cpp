// How long: since the engine ran, until hydraulic tappets have bled down.
#include <shop/entry.h>

#include <measure/text.h>

#include <algorithm>

namespace asleft {

namespace {

constexpr std::int64_t minutesAnHour = 60;
constexpr std::int64_t mostBleedDown = 24 * minutesAnHour;
constexpr std::int64_t mostSinceRun = 365 * 24 * minutesAnHour;

/// How many minutes the unit is; nothing where it is none.
std::optional<std::int64_t> minutesOfUnit(std::string_view unit)
{
    const std::string word = inSmallLetters(unit);
    for (const std::string_view hour : {"h", "hr", "hrs", "hour", "hours"})
        if (word == hour)
            return minutesAnHour;
    for (const std::string_view minute : {"min", "mins", "minute", "minutes"})
        if (word == minute)
            return 1;
    return std::nullopt;
}

/// `2 h`, `30 min`, or without a unit `30`.
struct Part {
    Rational number;
    std::optional<std::int64_t> unit; ///< in minutes
};

/// Takes a part off the front of `rest`. \pre it is not empty
Result<Part> takePart(std::string_view &rest, DecimalMark mark)
{
    const auto unitBegins = std::ranges::find_if(rest, isAsciiLetter);
    const auto unitEnds = std::find_if_not(unitBegins, rest.end(), isAsciiLetter);
    const std::string_view unit(unitBegins, unitEnds);
    const auto number = parseNumber(std::string_view(rest.begin(), unitBegins), mark);
    if (!number)
        return tl::unexpected(number.error().kind == ErrorKind::EmptyText ? Error{ErrorKind::NotANumber, {std::string(rest)}}
                                                                          : number.error());
    rest.remove_prefix(static_cast<std::size_t>(unitEnds - rest.begin()));
    const auto minutes = minutesOfUnit(unit);
    if (!unit.empty() && !minutes)
        return fail(ErrorKind::UnknownUnit, unit, "h, min");
    return Part{*number, minutes};
}

std::optional<Rational> minutesOf(const Part &part, std::int64_t bareUnit)
{
    return part.number.times(Rational(part.unit.value_or(bareUnit)));
}

/// `2 h 30`, `45 min`, `1.5 h`; a number alone counts in `bareUnit` minutes. Rounded once, to whole minutes.
Result<std::int64_t> parseMinutes(std::string_view text, std::int64_t bareUnit, DecimalMark mark)
{
    if (text.size() > longestTypedText)
        return fail(ErrorKind::TextTooLong, std::to_string(text.size()), std::to_string(longestTypedText));
    if (isBlank(text))
        return fail(ErrorKind::EmptyText);
    const std::string plain = plainText(text);
    std::string_view rest = plain;
    const auto first = takePart(rest, mark);
    if (!first)
        return tl::unexpected(first.error());
    auto minutes = minutesOf(*first, bareUnit);
    const std::string_view behind = rest = trimmed(rest);
    if (!behind.empty() && first->unit == minutesAnHour) {
        const auto second = takePart(rest, mark);
        if (!second)
            return tl::unexpected(second.error());
        if (second->unit == minutesAnHour)
            return fail(ErrorKind::TextLeftOver, behind);
        const auto more = minutesOf(*second, 1);
        minutes = minutes && more ? minutes->plus(*more) : std::nullopt;
    }
    if (!isBlank(rest))
        return fail(ErrorKind::TextLeftOver, trimmed(rest));
    // A number of twelve digits fits; the sum of two with twelve decimals each may not, and is no time anybody measured.
    const auto whole = minutes ? minutes->rounded() : std::nullopt;
    if (!whole)
        return fail(ErrorKind::TooManyDigits, text);
    return *whole;
}

} // namespace

Result<std::int64_t> parseSinceRun(std::string_view text, DecimalMark mark)
{
    const auto minutes = parseMinutes(text, minutesAnHour, mark);
    if (minutes && *minutes > mostSinceRun)
        return fail(ErrorKind::ValueTooLarge, text, std::to_string(mostSinceRun / minutesAnHour) + " h");
    return minutes;
}

Result<std::optional<std::chrono::minutes>> readBleedDown(const ScrewText &text, DecimalMark mark)
{
    if (text.kind != AdjusterKind::Hydraulic || isBlank(text.bleedDown))
        return std::optional<std::chrono::minutes>{};
    const auto minutes = parseMinutes(text.bleedDown, 1, mark);
    if (!minutes || *minutes > mostBleedDown)
        return fail(ErrorKind::BleedDownUnread, text.bleedDown);
    return std::optional(std::chrono::minutes(*minutes));
}

} // namespace asleft
