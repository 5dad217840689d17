#include <store/things.h>

#include "connection.h"

#include <algorithm>
#include <limits>

namespace asleft {

using namespace store;

namespace {

const std::string toolColumns = "name, leaves_text, kind, error_nm, error_unit, error_text, resolution_nm, resolution_unit, "
                                "resolution_text, least, least_unit, least_text, most, most_unit, most_text, deviation_numerator, "
                                "deviation_denominator, calibration_due, deviation_text, lever_nm, lever_unit, lever_text, length_nm, "
                                "length_unit, length_text, size";

template <class T, class Of>
auto ofTorque(const Tool &tool, Of of) -> std::optional<T>
{
    return tool.torque ? std::optional<T>(of(*tool.torque)) : std::nullopt;
}

bool fitsAColumn(Int128 number)
{
    return number >= std::numeric_limits<std::int64_t>::min() && number <= std::numeric_limits<std::int64_t>::max();
}

bool fitsColumns(const std::optional<Rational> &fraction)
{
    return !fraction || (fitsAColumn(fraction->numerator()) && fitsAColumn(fraction->denominator()));
}

QVariantList valuesOf(const Tool &tool)
{
    const auto least = ofTorque<Typed<Torque>>(tool, [](const TorqueTool &torque) { return torque.least; });
    const auto most = ofTorque<Typed<Torque>>(tool, [](const TorqueTool &torque) { return torque.most; });
    const auto deviation = tool.torque ? tool.torque->deviationPercent : std::nullopt;
    const auto numerator = deviation ? std::optional(static_cast<std::int64_t>(deviation->numerator())) : std::nullopt;
    const auto denominator = deviation ? std::optional(static_cast<std::int64_t>(deviation->denominator())) : std::nullopt;
    const auto due = tool.torque ? tool.torque->calibrationDue : std::nullopt;
    return values(tool.name, tool.leavesText, tool.kind, amountOf(tool.permissibleError), unitOf(tool.permissibleError),
                  textOf(tool.permissibleError), amountOf(tool.resolution), unitOf(tool.resolution), textOf(tool.resolution),
                  amountOf(least), unitOf(least), textOf(least), amountOf(most), unitOf(most), textOf(most), numerator, denominator, due,
                  tool.deviationText, amountOf(tool.lever), unitOf(tool.lever), textOf(tool.lever), amountOf(tool.length),
                  unitOf(tool.length), textOf(tool.length), tool.size);
}

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

/// Takes the columns from least to calibration_due.
std::optional<TorqueTool> torqueOf(Row &row, ToolKind kind)
{
    auto least = row.typedIfAny<Typed<Torque>>();
    auto most = row.typedIfAny<Typed<Torque>>();
    auto deviation = fractionOf(row);
    const auto due = row.dayIfAny();
    if (least && most)
        return TorqueTool{kind == ToolKind::TorqueRead, *std::move(least), *std::move(most), deviation, due};
    if (least || most || deviation || due)
        row.refuse();
    return std::nullopt;
}

Tool toolOf(Row &row)
{
    Tool tool{row.id<ToolId>(),
              row.text(),
              row.text(),
              {},
              row.word<ToolKind>(),
              row.typedIfAny<Typed<Length>>(),
              row.typedIfAny<Typed<Length>>()};
    tool.torque = torqueOf(row, tool.kind);
    tool.deviationText = row.text();
    tool.lever = row.typedIfAny<Typed<Length>>();
    tool.length = row.typedIfAny<Typed<Length>>();
    tool.size = row.text();
    if (tool.torque)
        tool.torque->lever = amountOf(tool.lever);
    return tool;
}

Result<std::vector<Typed<Length>>> leavesOf(Connection &connection, ToolId id)
{
    return allRows(connection, "SELECT nm, unit, text FROM feeler_leaf WHERE tool = ? ORDER BY place", values(id), [](Row &row) {
        return Typed<Length>{row.quantity<Length>(), row.word<LengthUnit>(), row.text()};
    });
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
    static const std::string insert = "INSERT INTO tool (" + toolColumns +
                                      ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) "
                                      "RETURNING id";
    Connection &connection = Internals::of(transaction);
    if (tool.torque && !fitsColumns(tool.torque->deviationPercent))
        return connection.refuse({ErrorKind::DeviationOutOfRange, {tool.deviationText}});
    auto id = insertRow<ToolId>(connection, insert, valuesOf(tool));
    for (std::size_t place = 0; id && place < tool.leaves.size(); ++place) {
        const Typed<Length> &leaf = tool.leaves[place];
        const Done done = connection.run("INSERT INTO feeler_leaf (tool, place, nm, unit, text) VALUES (?, ?, ?, ?, ?)",
                                         values(*id, place, leaf.value, leaf.unit, leaf.text));
        if (!done)
            return tl::unexpected(done.error());
    }
    return id;
}

Done insertCalibration(Transaction &transaction, ToolId wrench, std::optional<std::chrono::sys_days> due, Moment at)
{
    return Internals::of(transaction).run("INSERT INTO tool_calibration (tool, due, at_ms) VALUES (?, ?, ?)", values(wrench, due, at));
}

Result<std::vector<Tool>> tools(Database &database)
{
    static const std::string select = "SELECT id, " + toolColumns + " FROM tool ORDER BY id";
    Connection &connection = Internals::of(database);
    auto tools = allRows(connection, select, {}, toolOf);
    if (!tools)
        return tools;
    for (Tool &tool : *tools) {
        auto leaves = leavesOf(connection, tool.id);
        if (!leaves)
            return tl::unexpected(leaves.error());
        tool.leaves = *std::move(leaves);
    }
    if (const Done calibrated = calibrate(connection, *tools); !calibrated)
        return tl::unexpected(calibrated.error());
    return tools;
}

} // namespace asleft
