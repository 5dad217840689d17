#include <store/things.h>

#include "thing_rows.h"

#include <algorithm>
#include <limits>

namespace asleft {

using namespace store;

namespace {

std::optional<Rational> fractionOf(Row &row)
{
    const auto numerator = row.numberIfAny();
    const auto denominator = row.numberIfAny();
    if (numerator.has_value() != denominator.has_value() || denominator == 0)
        row.refuse();
    else if (numerator)
        return Rational(*numerator, *denominator);
    return std::nullopt;
}

} // namespace

void store::Cells<std::optional<TorqueTool>>::put(QVariantList &row, const std::optional<TorqueTool> &torque)
{
    using Range = Cells<std::optional<Typed<Torque>>>;
    Range::put(row, torque ? std::optional(torque->least) : std::nullopt);
    Range::put(row, torque ? std::optional(torque->most) : std::nullopt);
    const auto deviation = torque ? torque->deviationPercent : std::nullopt;
    row.append(deviation ? bound(static_cast<std::int64_t>(deviation->numerator())) : QVariant());
    row.append(deviation ? bound(static_cast<std::int64_t>(deviation->denominator())) : QVariant());
    row.append(bound(torque ? torque->calibrationDue : std::nullopt));
}

std::optional<TorqueTool> store::Cells<std::optional<TorqueTool>>::take(Row &row)
{
    auto least = row.typedIfAny<Typed<Torque>>();
    auto most = row.typedIfAny<Typed<Torque>>();
    auto deviation = fractionOf(row);
    const auto due = row.dayIfAny();
    if (least && most)
        return TorqueTool{false, *std::move(least), *std::move(most), deviation, due};
    if (least || most || deviation || due)
        row.refuse();
    return std::nullopt;
}

namespace {

bool fitsAColumn(Int128 number)
{
    return number >= std::numeric_limits<std::int64_t>::min() && number <= std::numeric_limits<std::int64_t>::max();
}

bool fitsColumns(const std::optional<Rational> &fraction)
{
    return !fraction || (fitsAColumn(fraction->numerator()) && fitsAColumn(fraction->denominator()));
}

Tool toolOf(Row &row)
{
    Tool tool = taken<Tool>(row);
    if (tool.torque) {
        tool.torque->read = tool.kind == ToolKind::TorqueRead;
        tool.torque->lever = tool.lever ? std::optional(tool.lever->value) : std::nullopt;
    }
    return tool;
}

/// A row of tool_calibration.
struct Calibration {
    ToolId tool;
    std::optional<std::chrono::sys_days> due;
};

/// The last one of each tool that has any.
Result<std::vector<Calibration>> calibrations(Connection &connection)
{
    return allRows(connection, "SELECT tool, due FROM tool_calibration WHERE id IN (SELECT max(id) FROM tool_calibration GROUP BY tool)",
                   {}, [](Row &row) {
                       return Calibration{row.id<ToolId>(), row.dayIfAny()};
                   });
}

/// What was said last of each wrench; only a torque wrench is ever due.
Done calibrate(Connection &connection, std::vector<Tool> &tools)
{
    const auto known = calibrations(connection);
    if (!known)
        return tl::unexpected(known.error());
    for (const Calibration &calibration : *known) {
        const auto tool = std::ranges::find(tools, calibration.tool, &Tool::id);
        if (tool == tools.end() || !tool->torque)
            return fail(ErrorKind::Damaged, Noun::Calibration, connection.path(), std::to_string(calibration.tool.key()));
        tool->torque->calibrationDue = calibration.due;
    }
    return {};
}

} // namespace

Result<ToolId> insertTool(Transaction &transaction, const Tool &tool)
{
    Connection &connection = Internals::of(transaction);
    if (tool.torque && !fitsColumns(tool.torque->deviationPercent))
        return connection.refuse({ErrorKind::DeviationOutOfRange, {tool.deviationText}});
    auto id = insertDescribed<ToolId>(connection, "tool", tool);
    if (!id)
        return id;
    return writeLists(connection, "tool", values(*id), tool).map([&] { return *id; });
}

Done insertCalibration(Transaction &transaction, ToolId wrench, std::optional<std::chrono::sys_days> due, Moment at)
{
    return Internals::of(transaction).run("INSERT INTO tool_calibration (tool, due, at_ms) VALUES (?, ?, ?)", values(wrench, due, at));
}

Result<std::vector<Tool>> tools(Database &database)
{
    static const std::string select = "SELECT id, " + namesOf<Tool>() + " FROM tool ORDER BY id";
    Connection &connection = Internals::of(database);
    auto tools = allRows(connection, select, {}, toolOf);
    if (!tools)
        return tools;
    if (const Done read = readListsOf(connection, "tool", Noun::Tool, *tools, [](const Tool &tool) { return tool.id.key(); }); !read)
        return tl::unexpected(read.error());
    if (const Done calibrated = calibrate(connection, *tools); !calibrated)
        return tl::unexpected(calibrated.error());
    return tools;
}

} // namespace asleft
