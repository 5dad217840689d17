#include <store/things.h>

#include "changes.h"
#include "thing_rows.h"

namespace asleft {

using namespace store;

Result<PersonId> insertPerson(Transaction &transaction, const std::string &initials, const std::string &name)
{
    return insertDescribed<PersonId>(Internals::of(transaction), "person", Person{PersonId(0), initials, name});
}

Result<std::vector<Person>> people(Database &database)
{
    return allRows(Internals::of(database), "SELECT id, " + namesOf<Person>() + " FROM person ORDER BY id", {}, taken<Person>);
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
