#include <joints/thread.h>

#include "thread_table.h"

#include <measure/parse.h>
#include <measure/text.h>

#include <algorithm>
#include <numbers>
#include <numeric>
#include <optional>
#include <utility>
#include <vector>

namespace asleft {

namespace {

constexpr std::int64_t nanometresPerInch = 25'400'000;

/// Walks over plain text, part by part; blanks between the parts do not count.
class Reader {
public:
    explicit Reader(std::string_view plain) : m_rest(plain) {}

    [[nodiscard]] bool atEnd() const { return m_rest.empty(); }
    bool take(std::string_view word)
    {
        if (!m_rest.starts_with(word))
            return false;
        m_rest.remove_prefix(word.size());
        skipBlanks();
        return true;
    }
    /// Digits, at most nine of them, so that they fit wherever they are counted.
    std::optional<std::int64_t> takeWhole()
    {
        const std::string_view digits = takeDigits();
        skipBlanks();
        return wholeOf(digits);
    }
    /// `8`, `1.25`, `.75` as millimetres, exactly.
    std::optional<Length> takeMillimetres()
    {
        const std::string_view whole = takeDigits();
        std::string_view decimals;
        if (m_rest.starts_with('.')) {
            m_rest.remove_prefix(1);
            decimals = takeDigits();
            if (decimals.empty())
                return std::nullopt;
        }
        skipBlanks();
        constexpr std::size_t decimalsOfNanometre = 6;
        if ((whole.empty() && decimals.empty()) || decimals.size() > decimalsOfNanometre)
            return std::nullopt;
        const std::string padded = std::string(decimals) + std::string(decimalsOfNanometre - decimals.size(), '0');
        const auto above = whole.empty() ? 0 : wholeOf(whole);
        const auto below = wholeOf(padded);
        if (!above || !below)
            return std::nullopt;
        return nanometres(*above * 1'000'000 + *below);
    }

private:
    void skipBlanks()
    {
        while (m_rest.starts_with(' '))
            m_rest.remove_prefix(1);
    }
    std::string_view takeDigits()
    {
        const auto end = std::find_if_not(m_rest.begin(), m_rest.end(), isAsciiDigit);
        const std::string_view digits = m_rest.substr(0, static_cast<std::size_t>(end - m_rest.begin()));
        m_rest.remove_prefix(digits.size());
        return digits;
    }
    static std::optional<std::int64_t> wholeOf(std::string_view digits)
    {
        constexpr std::size_t most = 9;
        if (digits.empty() || digits.size() > most)
            return std::nullopt;
        return std::accumulate(digits.begin(), digits.end(), std::int64_t{0},
                               [](std::int64_t sum, char digit) { return sum * 10 + (digit - '0'); });
    }

    std::string_view m_rest;
};

/// What a text asks for; what it leaves out is empty.
struct Asked {
    UnitSystem system = UnitSystem::Metric;
    std::vector<Length> diameters; ///< two where a whole number may be inches or a number size
    std::optional<Length> pitch = {};
    std::optional<bool> coarse = {};
};

Length numberSize(std::int64_t number)
{
    return thou(60 + 13 * number);
}

/// An inch size is a binary fraction in lowest terms; anything else between two numbers is a slip, as 10/32 for #10-32.
std::optional<Length> inches(std::int64_t whole, std::int64_t numerator, std::int64_t denominator)
{
    constexpr std::int64_t finest = 64;
    const bool binary = denominator >= 2 && denominator <= finest && (denominator & (denominator - 1)) == 0;
    if (!binary || numerator % 2 == 0 || numerator >= denominator)
        return std::nullopt;
    return nanometres(whole * nanometresPerInch + numerator * nanometresPerInch / denominator);
}

/// 25.4 mm over the count, to the nearest nanometre. \pre count > 0
Length pitchOfCount(std::int64_t count)
{
    return nanometres((nanometresPerInch + count / 2) / count);
}

/// `#10`, `3/8`, `1 1/8`, `1-1/8`, `1`: the diameters it may mean, none if it is no size.
std::vector<Length> takeUnifiedSize(Reader &reader)
{
    if (reader.take("#") || reader.take("no.")) {
        const auto number = reader.takeWhole();
        if (!number || reader.take("\""))
            return {};
        return {numberSize(*number)};
    }
    const auto first = reader.takeWhole();
    if (!first)
        return {};
    std::optional<Length> size;
    Reader ahead = reader;
    if (ahead.take("/")) {
        const auto denominator = ahead.takeWhole();
        size = denominator ? inches(0, *first, *denominator) : std::nullopt;
        if (!size)
            return {};
        reader = ahead;
        return {*size};
    }
    ahead.take("-"); // in 1-1/8-7, not in 1-8
    if (const auto numerator = ahead.takeWhole(); numerator && ahead.take("/")) {
        const auto denominator = ahead.takeWhole();
        size = denominator ? inches(*first, *numerator, *denominator) : std::nullopt;
        reader = ahead;
        return size ? std::vector{*size} : std::vector<Length>{};
    }
    return {numberSize(*first), nanometres(*first * nanometresPerInch)};
}

/// The mark of inches, which no number size has.
std::vector<Length> takeInchMark(Reader &reader, std::vector<Length> diameters)
{
    if (reader.take("\"") && diameters.size() > 1)
        diameters.erase(diameters.begin());
    return diameters;
}

std::optional<bool> takeSeries(Reader &reader)
{
    if (reader.take("unc"))
        return true;
    if (reader.take("unf"))
        return false;
    return std::nullopt;
}

std::optional<Asked> readMetric(Reader reader)
{
    const auto diameter = reader.takeMillimetres();
    if (!diameter)
        return std::nullopt;
    Asked asked{UnitSystem::Metric, {*diameter}};
    if (reader.take("x")) {
        asked.pitch = reader.takeMillimetres();
        if (!asked.pitch)
            return std::nullopt;
    } else {
        asked.coarse = true;
    }
    return reader.atEnd() ? std::optional(asked) : std::nullopt;
}

std::optional<Asked> readUnified(Reader reader)
{
    Asked asked{UnitSystem::Inch, takeUnifiedSize(reader)};
    asked.diameters = takeInchMark(reader, std::move(asked.diameters));
    if (reader.take("-")) {
        const auto count = reader.takeWhole();
        if (!count || *count == 0)
            return std::nullopt;
        asked.pitch = pitchOfCount(*count);
    }
    asked.coarse = takeSeries(reader);
    // A bare whole number could be anything.
    const bool bareNumber = asked.diameters.size() > 1 && !asked.pitch && !asked.coarse;
    if (asked.diameters.empty() || bareNumber || !reader.atEnd())
        return std::nullopt;
    return asked;
}

std::optional<Asked> readThread(std::string_view plain)
{
    Reader reader(plain);
    return reader.take("m") ? readMetric(reader) : readUnified(reader);
}

/// Of a table's own line: it has one diameter, said in a way that no other size shares.
Length diameterOf(const ThreadLine &line)
{
    Reader reader(line.size);
    return line.system == UnitSystem::Metric ? reader.takeMillimetres().value() : takeUnifiedSize(reader).back();
}

Thread threadOf(const ThreadLine &line)
{
    Reader pitch(line.pitch);
    Thread thread{{}, line.system, diameterOf(line), {}, line.coarse};
    if (line.system == UnitSystem::Metric) {
        thread.pitch = pitch.takeMillimetres().value();
        thread.name.append("M").append(line.size);
        if (!line.coarse)
            thread.name.append("x").append(line.pitch);
        return thread;
    }
    thread.pitch = pitchOfCount(pitch.takeWhole().value());
    const bool number = line.size.starts_with("no.");
    thread.name.append(number ? "#" : "").append(line.size.substr(number ? 3 : 0));
    thread.name.append("-").append(line.pitch).append(line.coarse ? " UNC" : " UNF");
    return thread;
}

std::vector<Thread> readTables()
{
    std::vector<Thread> threads;
    for (const ThreadLine &line : threadTable())
        threads.push_back(threadOf(line));
    std::ranges::sort(threads, [](const Thread &a, const Thread &b) {
        return a.diameter != b.diameter ? a.diameter < b.diameter : a.pitch > b.pitch; // a coarse pitch is the largest of its diameter
    });
    return threads;
}

bool isOfSize(const Thread &thread, const Asked &asked)
{
    return thread.system == asked.system && std::ranges::find(asked.diameters, thread.diameter) != asked.diameters.end();
}

bool fits(const Thread &thread, const Asked &asked)
{
    return isOfSize(thread, asked) && (!asked.pitch || thread.pitch == *asked.pitch) && (!asked.coarse || thread.coarse == *asked.coarse);
}

/// A unified size alone does not say which thread, even where the tables have only one.
bool saysWhich(const Asked &asked)
{
    return asked.pitch || asked.coarse;
}

std::string namesOfSize(const Asked &asked)
{
    std::string names;
    for (const Thread &thread : knownThreads()) {
        if (isOfSize(thread, asked))
            names.append(names.empty() ? "" : ", ").append(thread.name);
    }
    return names;
}

} // namespace

std::span<const Thread> knownThreads()
{
    static const std::vector<Thread> threads = readTables();
    return threads;
}

Result<Thread> parseThread(std::string_view text)
{
    if (text.size() > longestTypedText)
        return fail(ErrorKind::TextTooLong, std::to_string(text.size()), std::to_string(longestTypedText));
    const auto asked = readThread(plainWords(text));
    if (!asked)
        return fail(ErrorKind::ThreadUnread, text);
    const auto threads = knownThreads();
    const auto fitting = [&](const Thread &thread) { return fits(thread, *asked); };
    const auto found = std::ranges::find_if(threads, fitting);
    if (found == threads.end() || !saysWhich(*asked) || std::ranges::count_if(threads, fitting) != 1)
        return fail(ErrorKind::ThreadUnknown, text, namesOfSize(*asked));
    return *found;
}

double stressAreaSquareMillimetres(const Thread &thread)
{
    // The two standards take the mean of different diameters: 13/12 and 9/8 of the fundamental triangle's height come off.
    const double share = thread.system == UnitSystem::Metric ? 13.0 / 12 : 9.0 / 8;
    const double height = std::numbers::sqrt3 / 2 * toMillimetres(thread.pitch);
    const double diameter = toMillimetres(thread.diameter) - share * height;
    return std::numbers::pi / 4 * diameter * diameter;
}

} // namespace asleft
