#include <shop/tool_entry.h>

#include "taken.h"

#include <measure/text.h>

#include <cassert>
#include <charconv>

namespace asleft {

namespace {

/// No tool in use was due before.
constexpr int earliestYear = 1900;

Tool unreadTool(ToolKind kind)
{
    return {.id = ToolId(0), .name = {}, .leavesText = {}, .leaves = {}, .kind = kind};
}

/// A length of a tool's card; nothing where none is given.
Result<std::optional<Typed<Length>>> cardLength(std::string_view text, LengthUnit unit, DecimalMark mark)
{
    using Card = std::optional<Typed<Length>>;
    return isBlank(text) ? Result<Card>(Card{})
                         : parse<Length>(text, unit, mark).map([](Typed<Length> length) { return Card(std::move(length)); });
}

Result<std::optional<Typed<Length>>> leverOn(const TorqueWrenchText &text, DecimalMark mark)
{
    auto lever = cardLength(text.lever, text.lengthUnit, mark);
    if (!lever || !*lever)
        return lever;
    const Done sound = checkLever((*lever)->value);
    return sound ? lever : tl::unexpected(sound.error());
}

/// Percent with or without their sign, as typed but for that.
std::string withoutPercentSign(std::string_view text)
{
    std::string number = inOneLine(text);
    if (!number.empty() && number.back() == '%')
        number.pop_back();
    return inOneLine(number);
}

Result<std::optional<Rational>> deviationIn(std::string_view text, DecimalMark mark)
{
    const std::string percent = withoutPercentSign(text);
    if (percent.empty())
        return std::optional<Rational>();
    const auto deviation = parseNumber(percent, mark);
    const Done sound = deviation ? checkDeviation(*deviation) : Done();
    if (!deviation || !sound)
        return tl::unexpected(deviation ? sound.error() : deviation.error());
    return std::optional(*deviation);
}

/// The number in so many digits and no others.
std::optional<int> digitsIn(std::string_view text)
{
    int number = 0;
    const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool read = trouble == std::errc() && end == text.data() + text.size() && text.front() != '-';
    return read ? std::optional(number) : std::nullopt;
}

Result<std::optional<Typed<Length>>> adapterLength(const FittingText &text, DecimalMark mark)
{
    auto length = cardLength(text.length, text.unit, mark);
    if (length && !*length)
        return fail(ErrorKind::NameMissing, Noun::Length);
    if (length && (*length)->value > longestAdapterLength)
        return fail(ErrorKind::AdapterOutOfRange);
    return length;
}

Noun nounOf(ToolKind kind)
{
    switch (kind) {
    case ToolKind::AngleGauge: return Noun::AngleGauge;
    case ToolKind::Adapter: return Noun::Adapter;
    case ToolKind::Socket: return Noun::Socket;
    case ToolKind::FeelerSet:
    case ToolKind::DialGauge:
    case ToolKind::Micrometer:
    case ToolKind::TorqueSet:
    case ToolKind::TorqueRead: break;
    }
    return Noun::Tool;
}

} // namespace

FeelerReading readFeelerSet(const FeelerText &text, DecimalMark mark)
{
    using Field = FeelerField;
    FeelerReading reading{unreadTool(ToolKind::FeelerSet), {}};
    auto &[tool, refusals] = reading;
    tool.name = taken(refusals, Field::Name, checkedName(text.name, Noun::FeelerSet)).value_or("");
    tool.leavesText = inOneLine(text.leaves);
    if (auto leaves = taken(refusals, Field::Leaves, parseLeaves(text.leaves, text.unit, mark)))
        tool.leaves = *std::move(leaves);
    return reading;
}

GaugeReading readGauge(const GaugeText &text, DecimalMark mark)
{
    assert(text.kind == ToolKind::DialGauge || text.kind == ToolKind::Micrometer);
    using Field = GaugeField;
    GaugeReading reading{unreadTool(text.kind), {}};
    auto &[tool, refusals] = reading;
    tool.name = taken(refusals, Field::Name, checkedName(text.name, Noun::Gauge)).value_or("");
    tool.permissibleError =
        taken(refusals, Field::PermissibleError, cardLength(text.permissibleError, text.unit, mark)).value_or(std::nullopt);
    tool.resolution = taken(refusals, Field::Resolution, cardLength(text.resolution, text.unit, mark)).value_or(std::nullopt);
    return reading;
}

TorqueWrenchReading readTorqueWrench(const TorqueWrenchText &text, DecimalMark mark)
{
    assert(text.kind == ToolKind::TorqueSet || text.kind == ToolKind::TorqueRead);
    using Field = TorqueWrenchField;
    TorqueWrenchReading reading{unreadTool(text.kind), {}};
    auto &[tool, refusals] = reading;
    TorqueTool &wrench = tool.torque.emplace();
    wrench.read = text.kind == ToolKind::TorqueRead;
    tool.name = taken(refusals, Field::Name, checkedName(text.name, Noun::TorqueWrench)).value_or("");
    const auto least = taken(refusals, Field::Least, parse<Torque>(text.least, text.unit, mark));
    const auto most = taken(refusals, Field::Most, parse<Torque>(text.most, text.unit, mark));
    wrench.least = least.value_or(Typed<Torque>{});
    wrench.most = most.value_or(Typed<Torque>{});
    if (const Done range = checkTorqueRange(wrench.least, wrench.most); least && most && !range)
        refusals.emplace(Field::Most, range.error());
    wrench.deviationPercent = taken(refusals, Field::Deviation, deviationIn(text.deviation, mark)).value_or(std::nullopt);
    tool.deviationText = withoutPercentSign(text.deviation);
    wrench.calibrationDue = taken(refusals, Field::CalibrationDue, readCalibrationDue(text.calibrationDue)).value_or(std::nullopt);
    tool.lever = taken(refusals, Field::Lever, leverOn(text, mark)).value_or(std::nullopt);
    if (tool.lever)
        wrench.lever = tool.lever->value;
    return reading;
}

FittingReading readFitting(const FittingText &text, DecimalMark mark)
{
    assert(text.kind == ToolKind::AngleGauge || text.kind == ToolKind::Adapter || text.kind == ToolKind::Socket);
    using Field = FittingField;
    FittingReading reading{unreadTool(text.kind), {}};
    auto &[tool, refusals] = reading;
    tool.name = taken(refusals, Field::Name, checkedName(text.name, nounOf(text.kind))).value_or("");
    if (text.kind != ToolKind::AngleGauge)
        tool.size = taken(refusals, Field::Size, checkedLine(text.size)).value_or("");
    if (text.kind == ToolKind::Adapter)
        tool.length = taken(refusals, Field::Length, adapterLength(text, mark)).value_or(std::nullopt);
    return reading;
}

Result<std::chrono::sys_days> parseDay(std::string_view text)
{
    const std::string day = plainText(text);
    // The same year-month-day that it is shown and stored as: any other order would have to be guessed.
    const bool shaped = day.size() == 10 && day[4] == '-' && day[7] == '-';
    const std::string_view digits = day;
    const auto year = shaped ? digitsIn(digits.substr(0, 4)) : std::nullopt;
    const auto month = shaped ? digitsIn(digits.substr(5, 2)) : std::nullopt;
    const auto number = shaped ? digitsIn(digits.substr(8, 2)) : std::nullopt;
    if (!year || !month || !number || *year < earliestYear)
        return fail(ErrorKind::DateUnread, day);
    const std::chrono::year_month_day date{std::chrono::year(*year), std::chrono::month(static_cast<unsigned>(*month)),
                                           std::chrono::day(static_cast<unsigned>(*number))};
    if (!date.ok())
        return fail(ErrorKind::DateUnread, day);
    return std::chrono::sys_days(date);
}

Result<std::optional<std::chrono::sys_days>> readCalibrationDue(std::string_view text)
{
    using Day = std::optional<std::chrono::sys_days>;
    return isBlank(text) ? Result<Day>(Day{}) : parseDay(text).map([](std::chrono::sys_days day) { return Day(day); });
}

} // namespace asleft
