#include <work/workshop.h>

#include "internals.h"
#include "tool_text.h"

#include <measure/text.h>
#include <store/things.h>

#include <QDateTime>
#include <QtGlobal>

#include <algorithm>

namespace asleft {

Result<std::optional<Typed<Length>>> cardLength(const std::string &text, LengthUnit unit, DecimalMark mark)
{
    if (isBlank(text))
        return std::optional<Typed<Length>>{};
    auto length = parse<Length>(text, unit, mark);
    if (!length)
        return tl::unexpected(length.error());
    return std::optional(std::move(*length));
}

std::chrono::sys_days localDay(Moment moment)
{
    const QDate day = QDateTime::fromMSecsSinceEpoch(moment.utcMilliseconds).date();
    return std::chrono::sys_days(std::chrono::year(day.year()) / day.month() / day.day());
}

Result<ToolId> storeTool(Garage &garage, const Tool &tool)
{
    auto added = inTransaction(garage, [&](Transaction &transaction) { return insertTool(transaction, tool); });
    if (added)
        Q_EMIT garage.changed({Change::What::Tools});
    return added;
}

Result<PersonId> addPerson(Garage &garage, std::string_view initials, std::string_view name)
{
    if (const Done may = writable(garage); !may)
        return tl::unexpected(may.error());
    const auto checked = checkedName(initials, Noun::Initials);
    if (!checked)
        return tl::unexpected(checked.error());
    const auto known = people(garage);
    if (!known)
        return tl::unexpected(known.error());
    if (const auto same = std::ranges::find(*known, *checked, &Person::initials); same != known->end())
        return same->id;
    auto added = inTransaction(garage, [&](Transaction &transaction) { return insertPerson(transaction, *checked, inOneLine(name)); });
    if (added)
        Q_EMIT garage.changed({Change::What::People});
    return added;
}

Result<std::vector<Person>> people(Garage &garage)
{
    return people(*garage.internals().database);
}

Result<ToolId> addFeelerSet(Garage &garage, std::string_view name, std::string_view leaves, LengthUnit fieldUnit, DecimalMark mark)
{
    if (const Done may = writable(garage); !may)
        return tl::unexpected(may.error());
    auto checked = checkedName(name, Noun::FeelerSet);
    if (!checked)
        return tl::unexpected(checked.error());
    auto read = parseLeaves(leaves, fieldUnit, mark);
    if (!read)
        return tl::unexpected(read.error());
    return storeTool(garage, {.id = ToolId(0),
                              .name = std::move(*checked),
                              .leavesText = inOneLine(leaves),
                              .leaves = std::move(*read),
                              .permissibleError = {},
                              .resolution = {}});
}

Result<ToolId> addGauge(Garage &garage, const GaugeText &text, DecimalMark mark)
{
    Q_ASSERT(text.kind != ToolKind::FeelerSet);
    if (const Done may = writable(garage); !may)
        return tl::unexpected(may.error());
    auto checked = checkedName(text.name, Noun::Gauge);
    if (!checked)
        return tl::unexpected(checked.error());
    auto error = cardLength(text.permissibleError, text.unit, mark);
    if (!error)
        return tl::unexpected(error.error());
    auto resolution = cardLength(text.resolution, text.unit, mark);
    if (!resolution)
        return tl::unexpected(resolution.error());
    return storeTool(garage, {.id = ToolId(0),
                              .name = std::move(*checked),
                              .leavesText = {},
                              .leaves = {},
                              .kind = text.kind,
                              .permissibleError = std::move(*error),
                              .resolution = std::move(*resolution)});
}

Result<std::vector<Tool>> tools(Garage &garage)
{
    return tools(*garage.internals().database);
}

Done setDecisionRule(Garage &garage, DecisionRule rule)
{
    if (Done may = writable(garage); !may)
        return may;
    const auto now = decisionRule(garage);
    if (!now)
        return tl::unexpected(now.error());
    if (*now == rule)
        return {};
    Done set = inTransaction(garage, [&](Transaction &transaction) { return updateDecisionRule(transaction, rule); });
    if (set)
        Q_EMIT garage.changed({Change::What::Rules});
    return set;
}

Result<DecisionRule> decisionRule(Garage &garage)
{
    return decisionRule(*garage.internals().database);
}

} // namespace asleft
