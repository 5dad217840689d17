#include <shop/entry.h>

#include <measure/format.h>
#include <measure/parse.h>
#include <measure/text.h>

#include <algorithm>
#include <utility>

namespace asleft {

namespace {

constexpr std::size_t mostLeaves = 100;
constexpr std::size_t longestLeavesText = 2000;

/// "0.05-1.00" with the step in the word behind "by".
struct LeafRange {
    std::string from;
    std::string to;
};

std::optional<LeafRange> rangeIn(std::string_view word)
{
    const auto dash = word.find('-');
    if (dash == std::string::npos || dash == 0 || dash + 1 == word.size())
        return std::nullopt;
    return LeafRange{std::string(word.substr(0, dash)), std::string(word.substr(dash + 1))};
}

class LeafReader {
public:
    LeafReader(std::vector<std::string_view> words, LengthUnit unit, DecimalMark mark)
        : m_words(std::move(words)), m_unit(unit), m_mark(mark)
    {
    }

    Result<std::vector<Typed<Length>>> read()
    {
        takeUnitFromTheEnd();
        if (m_words.empty())
            return fail(ErrorKind::LeavesUnread, "");
        for (std::size_t i = 0; i < m_words.size(); ++i) {
            const bool stepped = i + 2 < m_words.size() && m_words[i + 1] == "by";
            const auto range = rangeIn(m_words[i]);
            const Done added = range && stepped ? addRange(*range, m_words[i + 2]) : addOne(m_words[i]);
            if (!added)
                return tl::unexpected(added.error());
            if (range && stepped)
                i += 2;
        }
        std::ranges::sort(m_leaves, {}, &Typed<Length>::value);
        const auto same = [](const Typed<Length> &a, const Typed<Length> &b) { return a.value == b.value; };
        m_leaves.erase(std::unique(m_leaves.begin(), m_leaves.end(), same), m_leaves.end());
        return m_leaves;
    }

private:
    void takeUnitFromTheEnd()
    {
        if (m_words.empty())
            return;
        // A unit by itself, or written to the last leaf without a blank.
        if (const auto unit = unitSpelled<Length>(m_words.back())) {
            m_unit = *unit;
            m_words.pop_back();
        } else if (const auto last = parse<Length>(m_words.back(), m_unit, m_mark)) {
            m_unit = last->unit;
        }
    }

    Result<Length> lengthIn(std::string_view word) const
    {
        const auto typed = parse<Length>(word, m_unit, m_mark);
        if (!typed || typed->value <= Length{})
            return fail(ErrorKind::LeavesUnread, word);
        return typed->value;
    }

    Done add(Length leaf, std::string_view word)
    {
        if (m_leaves.size() >= mostLeaves)
            return fail(ErrorKind::LeavesUnread, word);
        const std::string written = formatExact(leaf, m_unit);
        m_leaves.push_back({leaf, m_unit, written.substr(0, written.find(' '))});
        return {};
    }

    Done addOne(std::string_view word)
    {
        const auto leaf = lengthIn(word);
        return leaf ? add(*leaf, word) : Done(tl::unexpected(leaf.error()));
    }

    Done addRange(const LeafRange &range, std::string_view stepWord)
    {
        const auto from = lengthIn(range.from);
        const auto to = lengthIn(range.to);
        const auto step = lengthIn(stepWord);
        if (!from || !to || !step || *to < *from)
            return fail(ErrorKind::LeavesUnread, range.from + "-" + range.to);
        for (Length leaf = *from; leaf <= *to; leaf += *step) {
            if (Done added = add(leaf, stepWord); !added)
                return added;
        }
        return {};
    }

    std::vector<std::string_view> m_words;
    LengthUnit m_unit;
    DecimalMark m_mark;
    std::vector<Typed<Length>> m_leaves;
};

std::optional<MeterUnit> meterUnitSpelled(std::string_view unit)
{
    if (unit == "km")
        return MeterUnit::Kilometre;
    if (unit == "mi" || unit == "mile" || unit == "miles")
        return MeterUnit::Mile;
    if (unit == "h" || unit == "hr" || unit == "hrs" || unit == "hours")
        return MeterUnit::Hour;
    return std::nullopt;
}

/// Digits with spaces or commas before groups of three, and at most one decimal behind a point; in thousandths.
std::optional<std::int64_t> meterNumber(std::string_view text)
{
    std::int64_t whole = 0;
    int digits = 0;
    int sinceMark = -1;
    std::size_t i = 0;
    for (; i < text.size() && text[i] != '.'; ++i) {
        if (isAsciiDigit(text[i])) {
            whole = whole * 10 + (text[i] - '0');
            if (++digits > 9)
                return std::nullopt;
            if (sinceMark >= 0)
                ++sinceMark;
            continue;
        }
        const bool grouping = (text[i] == ' ' || text[i] == ',') && digits > 0 && (sinceMark == -1 ? digits <= 3 : sinceMark == 3);
        if (!grouping)
            return std::nullopt;
        sinceMark = 0;
    }
    if (digits == 0 || (sinceMark != -1 && sinceMark != 3))
        return std::nullopt;
    if (i == text.size())
        return whole * 1000;
    if (i + 2 != text.size() || !isAsciiDigit(text[i + 1]))
        return std::nullopt;
    return whole * 1000 + std::int64_t{text[i + 1] - '0'} * 100;
}

} // namespace

Result<std::string> checkedLine(std::string_view text)
{
    std::string line = inOneLine(text);
    if (line.size() > longestName)
        return fail(ErrorKind::TextTooLong, std::to_string(line.size()), std::to_string(longestName));
    return line;
}

Result<std::string> checkedName(std::string_view text, Noun noun)
{
    return isBlank(text) ? Result<std::string>(fail(ErrorKind::NameMissing, noun)) : checkedLine(text);
}

Result<std::vector<Typed<Length>>> parseLeaves(std::string_view text, LengthUnit fieldUnit, DecimalMark mark)
{
    if (text.size() > longestLeavesText)
        return fail(ErrorKind::TextTooLong, std::to_string(text.size()), std::to_string(longestLeavesText));
    const std::string plain = plainText(text);
    return LeafReader(wordsOf(plain, " ;"), fieldUnit, mark).read();
}

Result<MeterText> parseMeter(std::string_view text, MeterUnit fieldUnit)
{
    if (text.size() > longestTypedText)
        return fail(ErrorKind::TextTooLong, std::to_string(text.size()), std::to_string(longestTypedText));
    const std::string plain = plainText(text);
    const auto unitStart = std::ranges::find_if(plain, isAsciiLetter);
    const auto numberLength = static_cast<std::size_t>(unitStart - plain.begin());
    const std::string_view unitText = std::string_view(plain).substr(numberLength);
    const auto unit = unitText.empty() ? std::optional(fieldUnit) : meterUnitSpelled(unitText);
    if (!unit)
        return fail(ErrorKind::MeterUnread, std::string(unitText));
    const auto number = meterNumber(trimmed(std::string_view(plain).substr(0, numberLength)));
    if (!number)
        return fail(ErrorKind::MeterUnread, inOneLine(text));
    return MeterText{*unit, *number, inOneLine(text)};
}

Result<std::optional<ScrewAdjuster>> readScrew(const ScrewText &text, DecimalMark mark)
{
    if (isBlank(text.pitch))
        return std::optional<ScrewAdjuster>{};
    const auto pitch = parse<Length>(text.pitch, LengthUnit::Millimetre, mark);
    if (!pitch)
        return tl::unexpected(pitch.error());
    if (pitch->value < micrometres(200) || pitch->value > micrometres(5000))
        return fail(ErrorKind::PitchOutOfRange, pitch->text);
    ScrewAdjuster adjuster{pitch->value};
    if (isBlank(text.ratio))
        return std::optional(adjuster);
    const auto ratio = parseNumber(text.ratio, mark);
    if (!ratio)
        return tl::unexpected(ratio.error());
    adjuster.ratio = ratio->toDouble();
    if (adjuster.ratio < 0.2 || adjuster.ratio > 5.0)
        return fail(ErrorKind::PitchOutOfRange, text.ratio);
    return std::optional(adjuster);
}

} // namespace asleft
