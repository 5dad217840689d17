#include <store/things.h>

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

Result<ToolId> insertFeelerSet(Transaction &transaction, const std::string &name, const std::string &leavesText,
                               const std::vector<Typed<Length>> &leaves)
{
    Connection &connection = Inside::of(transaction);
    auto id =
        insertRow<ToolId>(connection, "INSERT INTO feeler_set (name, leaves_text) VALUES (?, ?) RETURNING id", values(name, leavesText));
    for (std::size_t place = 0; id && place < leaves.size(); ++place) {
        const Typed<Length> &leaf = leaves[place];
        const Done done = connection.run("INSERT INTO feeler_leaf (feeler_set, place, nm, unit, text) VALUES (?, ?, ?, ?, ?)",
                                         values(*id, place, leaf.value, leaf.unit, leaf.text));
        if (!done)
            return tl::unexpected(done.error());
    }
    return id;
}

namespace {

Result<std::vector<Typed<Length>>> leavesOf(Connection &connection, ToolId id)
{
    return allRows(connection, "SELECT nm, unit, text FROM feeler_leaf WHERE feeler_set = ? ORDER BY place", values(id), [](Row &row) {
        const auto nanometre = row.quantity<Length>();
        const auto unit = row.word<LengthUnit>();
        return Typed<Length>{nanometre, unit, row.text()};
    });
}

} // namespace

Result<std::vector<Tool>> tools(Database &database)
{
    Connection &connection = Inside::of(database);
    auto sets = allRows(connection, "SELECT id, name, leaves_text FROM feeler_set ORDER BY id", {}, [](Row &row) {
        const auto id = row.id<ToolId>();
        auto name = row.text();
        return Tool{id, std::move(name), row.text(), {}};
    });
    if (!sets)
        return sets;
    for (Tool &set : *sets) {
        auto leaves = leavesOf(connection, set.id);
        if (!leaves)
            return tl::unexpected(leaves.error());
        set.leaves = *std::move(leaves);
    }
    return sets;
}

} // namespace asleft
