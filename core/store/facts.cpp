#include "facts.h"

#include "fact_rows.h"

#include <algorithm>
#include <array>
#include <utility>

namespace asleft::store {

void Cells<Subject>::put(QVariantList &row, const Subject &subject)
{
    const auto column = [&row]<class Kind>(const Kind *about) { row.append(about ? bound(*about) : QVariant()); };
    const auto *some = std::get_if<FastenerSubject>(&subject);
    column(some ? &some->joint : nullptr);
    column(std::get_if<PointId>(&subject));
    column(std::get_if<StepId>(&subject));
    column(std::get_if<EngineId>(&subject));
    column(std::get_if<VehicleId>(&subject));
    static_assert(std::variant_size_v<Subject> == 5, "a column for each kind of thing");
}

Subject Cells<Subject>::take(Row &row)
{
    std::vector<Subject> about;
    const auto column = [&]<class Id, class Kind>(Id, Kind) {
        if (const auto id = row.idIfAny<Id>())
            about.emplace_back(Kind{*id});
    };
    column(JointId(0), FastenerSubject{JointId(0)});
    column(PointId(0), PointId(0));
    column(StepId(0), StepId(0));
    column(EngineId(0), EngineId(0));
    column(VehicleId(0), VehicleId(0));
    if (about.size() == 1)
        return about.front();
    row.refuse();
    return FastenerSubject{JointId(0)};
}

namespace {

const std::string actKey = "act";

template <class F>
constexpr bool hasTable = requires
{
    RowOf<F>::table;
};

template <class F>
Done writeOwnRow(Connection &connection, ActSeq act, const F &fact)
{
    std::string names = actKey;
    QVariantList row = values(act);
    if constexpr (requires { RowOf<F>::listedAs; }) {
        addNames(names, RowOf<F>::listedAs);
        row.append(bound(0));
    }
    addNames(names, namesOf<F>());
    putRow(row, fact);
    return connection.run(insertInto(RowOf<F>::table, names), row);
}

/// The rows of facts that have one each. What stands there of another act, twice or not at all is refused.
template <class F>
Result<std::vector<F>> readOwnRows(Connection &connection, Owners &owners, const std::vector<ActSeq> &acts)
{
    std::vector<F> facts;
    facts.reserve(acts.size());
    const Done done = owners.read(connection, RowOf<F>::table, actKey + ", " + namesOf<F>(), actKey, [&](Row &row) {
        const auto act = row.id<ActSeq>();
        const bool expected = facts.size() < acts.size() && act == acts[facts.size()];
        F fact = taken<F>(row);
        if (row.unread() || !expected)
            owners.refuse((expected || facts.size() == acts.size() ? act : std::min(act, acts[facts.size()])).key());
        else
            facts.push_back(std::move(fact));
    });
    if (!done)
        return tl::unexpected(done.error());
    if (facts.size() < acts.size())
        owners.refuse(acts[facts.size()].key());
    return facts;
}

template <class F>
bool isWhole(const F &fact)
{
    if constexpr (requires { RowOf<F>::isWhole(fact); })
        return RowOf<F>::isWhole(fact);
    else
        return hasItsLists(fact);
}

template <class F>
Result<std::vector<Fact>> readAll(Connection &connection, const std::vector<ActSeq> &acts)
{
    std::vector<std::int64_t> seqs;
    for (const ActSeq act : acts)
        seqs.push_back(act.key());
    Owners owners(actKey, seqs);
    std::vector<F> facts;
    if constexpr (hasTable<F>) {
        auto read = readOwnRows<F>(connection, owners, acts);
        if (!read)
            return tl::unexpected(read.error());
        facts = *std::move(read);
    } else {
        facts.resize(acts.size());
    }
    if (!owners.refused()) {
        const Done done = readLists<F>(connection, owners, actKey, [&](Row &row) {
            const std::int64_t act = row.number();
            const auto at = std::ranges::lower_bound(seqs, act);
            return std::pair(at != seqs.end() && *at == act ? &facts[static_cast<std::size_t>(at - seqs.begin())] : nullptr, act);
        });
        if (!done)
            return tl::unexpected(done.error());
    }
    if (!owners.refused())
        if (const auto part = std::ranges::find_if_not(facts, isWhole<F>); part != facts.end())
            owners.refuse(seqs[static_cast<std::size_t>(part - facts.begin())]);
    if (owners.refused())
        return tl::unexpected(damagedAct(connection, ActSeq(*owners.refused())));
    return std::vector<Fact>(std::move_iterator(facts.begin()), std::move_iterator(facts.end()));
}

struct Reader {
    std::string_view kind;
    Result<std::vector<Fact>> (*read)(Connection &, const std::vector<ActSeq> &);
};

template <std::size_t... index>
constexpr auto readersOf(std::index_sequence<index...>)
{
    return std::array{Reader{RowOf<std::variant_alternative_t<index, Fact>>::kind, readAll<std::variant_alternative_t<index, Fact>>}...};
}

constexpr auto readers = readersOf(std::make_index_sequence<std::variant_size_v<Fact>>());

} // namespace

std::string_view kindOf(const Fact &fact)
{
    return readers.at(fact.index()).kind;
}

Done writeFact(Connection &connection, ActSeq act, const Fact &fact)
{
    return std::visit(
        [&]<class F>(const F &said) {
            Done done;
            if constexpr (hasTable<F>)
                done = writeOwnRow(connection, act, said);
            return done ? writeLists(connection, actKey, values(act), said) : done;
        },
        fact);
}

Result<std::vector<Fact>> readFacts(Connection &connection, std::string_view kind, const std::vector<ActSeq> &acts)
{
    const auto *const reader = std::ranges::find(readers, kind, &Reader::kind);
    if (reader == readers.end())
        return tl::unexpected(damagedAct(connection, acts.front()));
    auto facts = reader->read(connection, acts);
    if (facts || facts.error().kind != ErrorKind::Damaged || facts.error().noun == Noun::Act)
        return facts;
    // A page that cannot be read: one after the other they tell which act stands there.
    if (acts.size() == 1)
        return tl::unexpected(damagedAct(connection, acts.front()));
    for (const ActSeq act : acts)
        if (auto one = readFacts(connection, kind, {act}); !one)
            return one;
    return facts;
}

Error damagedAct(const Connection &connection, ActSeq act)
{
    return {ErrorKind::Damaged, {connection.path(), std::to_string(act.key())}, Noun::Act};
}

} // namespace asleft::store
