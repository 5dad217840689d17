#include <store/things.h>

#include "changes.h"
#include "connection.h"

namespace asleft {

using namespace store;

Result<PersonId> insertPerson(Transaction &transaction, const std::string &initials, const std::string &name)
{
    return insertRow<PersonId>(Inside::of(transaction), "INSERT INTO person (initials, name) VALUES (?, ?) RETURNING id",
                               values(initials, name));
}

Result<std::vector<Person>> people(Database &database)
{
    return allRows(Inside::of(database), "SELECT id, initials, name FROM person ORDER BY id", {}, [](Row &row) {
        const auto id = row.id<PersonId>();
        auto initials = row.text();
        return Person{id, std::move(initials), row.text()};
    });
}

Result<ToolId> insertTool(Transaction &transaction, const Tool &tool)
{
    Connection &connection = Inside::of(transaction);
    auto id = insertRow<ToolId>(connection,
                                "INSERT INTO tool (name, leaves_text, kind, error_nm, error_unit, error_text, resolution_nm, "
                                "resolution_unit, resolution_text) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING id",
                                values(tool.name, tool.leavesText, tool.kind, amountOf(tool.permissibleError),
                                       unitOf(tool.permissibleError), textOf(tool.permissibleError), amountOf(tool.resolution),
                                       unitOf(tool.resolution), textOf(tool.resolution)));
    for (std::size_t place = 0; id && place < tool.leaves.size(); ++place) {
        const Typed<Length> &leaf = tool.leaves[place];
        const Done done = connection.run("INSERT INTO feeler_leaf (tool, place, nm, unit, text) VALUES (?, ?, ?, ?, ?)",
                                         values(*id, place, leaf.value, leaf.unit, leaf.text));
        if (!done)
            return tl::unexpected(done.error());
    }
    return id;
}

namespace {

Result<std::vector<Typed<Length>>> leavesOf(Connection &connection, ToolId id)
{
    return allRows(connection, "SELECT nm, unit, text FROM feeler_leaf WHERE tool = ? ORDER BY place", values(id), [](Row &row) {
        return Typed<Length>{row.quantity<Length>(), row.word<LengthUnit>(), row.text()};
    });
}

} // namespace

Result<std::vector<Tool>> tools(Database &database)
{
    Connection &connection = Inside::of(database);
    auto tools = allRows(connection,
                         "SELECT id, name, leaves_text, kind, error_nm, error_unit, error_text, resolution_nm, resolution_unit, "
                         "resolution_text FROM tool ORDER BY id",
                         {}, [](Row &row) {
                             return Tool{row.id<ToolId>(),
                                         row.text(),
                                         row.text(),
                                         {},
                                         row.word<ToolKind>(),
                                         row.typedIfAny<Typed<Length>>(),
                                         row.typedIfAny<Typed<Length>>()};
                         });
    if (!tools)
        return tools;
    for (Tool &tool : *tools) {
        auto leaves = leavesOf(connection, tool.id);
        if (!leaves)
            return tl::unexpected(leaves.error());
        tool.leaves = *std::move(leaves);
    }
    return tools;
}

Result<DecisionRule> decisionRule(Database &database)
{
    return foundRow(
        Inside::of(database), "SELECT decision FROM shop_rule", {}, [](Row &row) { return row.word<DecisionRule>(); }, "decision rule");
}

Done updateDecisionRule(Transaction &transaction, DecisionRule rule)
{
    return changeRow(Inside::of(transaction), "UPDATE shop_rule SET decision = ? WHERE one = 1 RETURNING one", values(rule),
                     "decision rule");
}

} // namespace asleft
