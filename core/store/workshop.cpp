#include <store/things.h>

#include "changes.h"
#include "connection.h"

namespace asleft {

using namespace store;

Result<PersonId> insertPerson(Transaction &transaction, const std::string &initials, const std::string &name)
{
    return insertRow<PersonId>(Internals::of(transaction), "INSERT INTO person (initials, name) VALUES (?, ?) RETURNING id",
                               values(initials, name));
}

Result<std::vector<Person>> people(Database &database)
{
    return allRows(Internals::of(database), "SELECT id, initials, name FROM person ORDER BY id", {}, [](Row &row) {
        const auto id = row.id<PersonId>();
        auto initials = row.text();
        return Person{id, std::move(initials), row.text()};
    });
}

Result<DecisionRule> decisionRule(Database &database)
{
    return foundRow(
        Internals::of(database), "SELECT decision FROM shop_rule", {}, [](Row &row) { return row.word<DecisionRule>(); },
        Noun::DecisionRule);
}

Done updateDecisionRule(Transaction &transaction, DecisionRule rule)
{
    return changeRow(Internals::of(transaction), "UPDATE shop_rule SET decision = ? WHERE one = 1 RETURNING one", values(rule),
                     Noun::DecisionRule);
}

} // namespace asleft
