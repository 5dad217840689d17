// What fasteners are tightened with, as a person types it.
#include "inside.h"
#include "tool_text.h"

#include <store/things.h>

#include <QtGlobal>

#include <charconv>

namespace asleft {

namespace {

/// The longest adapter that is believed, as wrenchSetting() has it.
constexpr Length longestAdapter = micrometres(2'000'000);
/// No tool in use was due before.
constexpr int earliestYear = 1900;

/// Percent with or without their sign, as typed but for that.
std::string withoutPercentSign(const std::string &text)
{
    std::string number = trimmedText(text);
    if (!number.empty() && number.back() == '%')
        number.pop_back();
    return trimmedText(number);
}

Done readRange(const TorqueWrenchText &text, DecimalMark mark, TorqueTool &wrench)
{
    auto least = parse<Torque>(text.least, text.unit, mark);
    if (!least)
        return tl::unexpected(least.error());
    auto most = parse<Torque>(text.most, text.unit, mark);
    if (!most)
        return tl::unexpected(most.error());
    wrench.least = std::move(*least);
    wrench.most = std::move(*most);
    return {};
}

/// What may be left empty on its card.
Done readRest(const TorqueWrenchText &text, DecimalMark mark, TorqueTool &wrench)
{
    if (const std::string percent = withoutPercentSign(text.deviation); !percent.empty()) {
        const auto deviation = parseNumber(percent, mark);
        if (!deviation)
            return tl::unexpected(deviation.error());
        wrench.deviationPercent = *deviation;
    }
    if (!trimmedText(text.calibrationDue).empty()) {
        const auto due = parseDay(text.calibrationDue);
        if (!due)
            return tl::unexpected(due.error());
        wrench.calibrationDue = *due;
    }
    return {};
}

/// The number in so many digits and no others.
std::optional<int> digitsIn(std::string_view text)
{
    int number = 0;
    const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool read = trouble == std::errc() && end == text.data() + text.size() && text.front() != '-';
    return read ? std::optional(number) : std::nullopt;
}

Result<std::string> checkedSize(const std::string &text)
{
    std::string size = trimmedText(text);
    if (size.size() > longestName)
        return fail(ErrorKind::TextTooLong, std::to_string(size.size()), std::to_string(longestName));
    return size;
}

Result<std::optional<Typed<Length>>> adapterLength(const FittingText &text, DecimalMark mark)
{
    auto length = cardLength(text.length, text.unit, mark);
    if (length && !*length)
        return fail(ErrorKind::NameMissing, "length");
    if (length && (*length)->value > longestAdapter)
        return fail(ErrorKind::AdapterOutOfRange);
    return length;
}

const char *fieldOf(ToolKind kind)
{
    switch (kind) {
    case ToolKind::AngleGauge: return "angle gauge";
    case ToolKind::Adapter: return "adapter";
    case ToolKind::Socket: return "socket";
    default: return "tool";
    }
}

} // namespace

Result<ToolId> addTorqueWrench(Garage &garage, const TorqueWrenchText &text, DecimalMark mark)
{
    Q_ASSERT(text.kind == ToolKind::TorqueSet || text.kind == ToolKind::TorqueRead);
    if (const Done may = writable(garage); !may)
        return tl::unexpected(may.error());
    auto name = checkedName(text.name, "torque wrench");
    if (!name)
        return tl::unexpected(name.error());
    TorqueTool wrench{.read = text.kind == ToolKind::TorqueRead, .least = {}, .most = {}};
    const Done read = readRange(text, mark, wrench).and_then([&] { return readRest(text, mark, wrench); });
    if (!read)
        return tl::unexpected(read.error());
    auto lever = cardLength(text.lever, text.lengthUnit, mark);
    if (!lever)
        return tl::unexpected(lever.error());
    if (*lever)
        wrench.lever = (*lever)->value;
    if (const Done sound = checkTorqueTool(wrench); !sound)
        return tl::unexpected(sound.error());
    return storeTool(garage, {.id = ToolId(0),
                              .name = std::move(*name),
                              .leavesText = {},
                              .leaves = {},
                              .kind = text.kind,
                              .torque = std::move(wrench),
                              .deviationText = withoutPercentSign(text.deviation),
                              .lever = std::move(*lever)});
}

Result<ToolId> addFitting(Garage &garage, const FittingText &text, DecimalMark mark)
{
    Q_ASSERT(text.kind == ToolKind::AngleGauge || text.kind == ToolKind::Adapter || text.kind == ToolKind::Socket);
    if (const Done may = writable(garage); !may)
        return tl::unexpected(may.error());
    auto name = checkedName(text.name, fieldOf(text.kind));
    if (!name)
        return tl::unexpected(name.error());
    Tool tool{.id = ToolId(0), .name = std::move(*name), .leavesText = {}, .leaves = {}, .kind = text.kind};
    if (text.kind != ToolKind::AngleGauge) {
        auto size = checkedSize(text.size);
        if (!size)
            return tl::unexpected(size.error());
        tool.size = std::move(*size);
    }
    if (text.kind == ToolKind::Adapter) {
        auto length = adapterLength(text, mark);
        if (!length)
            return tl::unexpected(length.error());
        tool.length = std::move(*length);
    }
    return storeTool(garage, tool);
}

Result<std::chrono::sys_days> parseDay(std::string_view text)
{
    const std::string day = trimmedText(text);
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

} // namespace asleft
