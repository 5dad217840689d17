#include <work/workshop.h>

#include "internals.h"

#include <measure/text.h>
#include <store/things.h>

#include <QDateTime>

#include <algorithm>

namespace asleft {

namespace {

/// Stores a tool as it was read and tells of it; refuses it with the first of what is refused of its fields.
template <class Reading>
Result<ToolId> storeRead(Garage &garage, const Reading &reading)
{
    if (const Done may = writable(garage); !may)
        return tl::unexpected(may.error());
    if (!reading.refusals.empty())
        return tl::unexpected(reading.refusals.begin()->second);
    auto added = inTransaction(garage, [&](Transaction &transaction) { return insertTool(transaction, reading.tool); });
    if (added)
        Q_EMIT garage.changed({Change::What::Tools});
    return added;
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

} // namespace

std::chrono::sys_days localDay(Moment moment)
{
    const QDate day = QDateTime::fromMSecsSinceEpoch(moment.utcMilliseconds).date();
    return std::chrono::sys_days(std::chrono::year(day.year()) / day.month() / day.day());
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
    return storeRead(garage, readFeelerSet({std::string(name), std::string(leaves), fieldUnit}, mark));
}

Result<ToolId> addGauge(Garage &garage, const GaugeText &text, DecimalMark mark)
{
    return storeRead(garage, readGauge(text, mark));
}

Result<ToolId> addTorqueWrench(Garage &garage, const TorqueWrenchText &text, DecimalMark mark)
{
    return storeRead(garage, readTorqueWrench(text, mark));
}

Result<ToolId> addFitting(Garage &garage, const FittingText &text, DecimalMark mark)
{
    return storeRead(garage, readFitting(text, mark));
}

Done setCalibrationDue(Garage &garage, ToolId wrench, std::string_view due)
{
    if (Done may = writable(garage); !may)
        return may;
    const auto day = readCalibrationDue(due);
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
