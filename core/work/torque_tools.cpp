// What fasteners are tightened with, as a person types it.
#include "internals.h"
#include "tool_text.h"

#include <store/things.h>

#include <measure/text.h>

#include <QtGlobal>

#include <algorithm>
#include <charconv>

namespace asleft {

namespace {

/// No tool in use was due before.
constexpr int earliestYear = 1900;

/// Percent with or without their sign, as typed but for that.
std::string withoutPercentSign(const std::string &text)
{
    std::string number = inOneLine(text);
    if (!number.empty() && number.back() == '%')
        number.pop_back();
    return inOneLine(number);
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

/// Nothing where none is given.
Result<std::optional<std::chrono::sys_days>> dayIfAny(std::string_view text)
{
    using Day = std::optional<std::chrono::sys_days>;
    return isBlank(text) ? Result<Day>(Day{}) : parseDay(text).map([](std::chrono::sys_days day) { return Day(day); });
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
    const auto due = dayIfAny(text.calibrationDue);
    if (!due)
        return tl::unexpected(due.error());
    wrench.calibrationDue = *due;
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

/// Whether anything was stored: none is where the same day stood already.
Result<bool> storeCalibration(Transaction &transaction, ToolId id, std::optional<std::chrono::sys_days> due, Moment at)
{
    const auto rack = tools(transaction.database());
    if (!rack)
        return tl::unexpected(rack.error());
    const auto tool = std::ranges::find(*rack, id, &Tool::id);
    if (tool == rack->end())
        return fail(ErrorKind::NotFound, Noun::TorqueWrench);
    if (!tool->torque)
        return fail(ErrorKind::ToolNotForTorque, tool->name);
    if (tool->torque->calibrationDue == due)
        return false;
    return insertCalibration(transaction, id, due, at).map([] { return true; });
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

Result<ToolId> addTorqueWrench(Garage &garage, const TorqueWrenchText &text, DecimalMark mark)
{
    Q_ASSERT(text.kind == ToolKind::TorqueSet || text.kind == ToolKind::TorqueRead);
    if (const Done may = writable(garage); !may)
        return tl::unexpected(may.error());
    auto name = checkedName(text.name, Noun::TorqueWrench);
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
    auto name = checkedName(text.name, nounOf(text.kind));
    if (!name)
        return tl::unexpected(name.error());
    Tool tool{.id = ToolId(0), .name = std::move(*name), .leavesText = {}, .leaves = {}, .kind = text.kind};
    if (text.kind != ToolKind::AngleGauge) {
        tool.size = inOneLine(text.size);
        if (const Done fits = shortEnough({tool.size}); !fits)
            return tl::unexpected(fits.error());
    }
    if (text.kind == ToolKind::Adapter) {
        auto length = adapterLength(text, mark);
        if (!length)
            return tl::unexpected(length.error());
        tool.length = std::move(*length);
    }
    return storeTool(garage, tool);
}

Done setCalibrationDue(Garage &garage, ToolId wrench, std::string_view due)
{
    if (Done may = writable(garage); !may)
        return may;
    const auto day = dayIfAny(due);
    if (!day)
        return tl::unexpected(day.error());
    const auto stored =
        inTransaction(garage, [&](Transaction &transaction) { return storeCalibration(transaction, wrench, *day, garage.now()); });
    if (!stored)
        return tl::unexpected(stored.error());
    if (*stored)
        Q_EMIT garage.changed({Change::What::Tools});
    return {};
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

} // namespace asleft
