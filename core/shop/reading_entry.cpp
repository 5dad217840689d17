#include <shop/entry.h>

#include <measure/format.h>
#include <measure/parse.h>
#include <measure/text.h>

#include <algorithm>

namespace asleft {

namespace {

struct Halves {
    std::string_view goes;
    std::string_view next;
};

/// Parts a bracket at its dash or its "to"; a minus sign at the front is no dash.
std::optional<Halves> halvesOf(std::string_view text)
{
    static constexpr std::string_view marks[] = {" to ", "-"};
    for (const std::string_view mark : marks) {
        const auto at = text.find(mark, 1);
        if (at == std::string_view::npos)
            continue;
        const Halves halves{text.substr(0, at), text.substr(at + mark.size())};
        const bool digitsBefore = isAsciiDigit(text.front()) || text.front() == '.' || text.front() == ',';
        if (digitsBefore && !halves.next.empty())
            return halves;
    }
    return std::nullopt;
}

bool namesUnit(std::string_view text)
{
    return std::ranges::any_of(text, [](char c) { return isAsciiLetter(c) || c == '"' || static_cast<unsigned char>(c) >= 0x80; });
}

} // namespace

Result<Typed<Angle>> parseTurns(std::string_view text, DecimalMark mark)
{
    constexpr Angle most = degrees(10 * 360);
    const auto turns = parse<Angle>(text, AngleUnit::Turn, mark);
    const bool tooMany = turns ? turns->value > most : turns.error().kind == ErrorKind::ValueTooLarge;
    if (tooMany)
        return fail(ErrorKind::ValueTooLarge, text, formatExact(most, turns ? turns->unit : AngleUnit::Turn));
    return turns;
}

Result<ReadingText> parseReading(std::string_view text, LengthUnit fieldUnit, DecimalMark mark)
{
    // Longer texts are refused by the parser without being looked at.
    const std::string plain = text.size() > longestTypedText ? std::string() : plainText(text);
    const auto halves = plain.empty() ? std::nullopt : halvesOf(plain);
    if (!halves) {
        const auto value = parseInSteps(text, fieldUnit, mark);
        return value ? Result<ReadingText>(ReadingText{ReadingForm::Exact, *value, std::nullopt}) : tl::unexpected(value.error());
    }
    const auto next = parseInSteps(halves->next, fieldUnit, mark);
    if (!next)
        return tl::unexpected(next.error());
    const bool unitOfNext = namesUnit(halves->next) && !namesUnit(halves->goes);
    const auto goes = unitOfNext ? parse<Length>(halves->goes, next->unit, mark) : parseInSteps(halves->goes, fieldUnit, mark);
    if (!goes)
        return tl::unexpected(goes.error());
    if (goes->value >= next->value)
        return fail(ErrorKind::BandUpsideDown, goes->text, next->text);
    return ReadingText{ReadingForm::Bracket, *goes, *next};
}

bool farOff(const ReadingText &reading, const Band<Length> &band)
{
    const Length least = reading.value.value;
    const Length most = reading.next ? reading.next->value : least;
    return (band.low && most * 2 < *band.low) || (band.high && least > *band.high * 2);
}

} // namespace asleft
