#include <store/things.h>

#include "bands.h"
#include "changes.h"
#include "connection.h"

#include <cassert>

namespace asleft {

using namespace store;

namespace {

using TableId = RowId<struct TableTag>;

template <class Q>
Done writeBand(Connection &connection, SpecId spec, int place, const Band<Q> &band)
{
    return connection.run(insertInto("spec_band", "spec, place, " + namesOf<Band<Q>>()), values(spec, place) + valuesOf(band));
}

template <class Q>
Done writeBands(Connection &connection, SpecId spec, const SpecBand<Q> &bands)
{
    const Done done = writeBand(connection, spec, 0, bands.first);
    return done && bands.second ? writeBand(connection, spec, 1, *bands.second) : done;
}

template <class Q>
Result<SpecBand<Q>> readBands(Connection &connection, SpecId spec)
{
    auto bands = readBandsOf<Q>(connection, "spec_band", "spec", spec.key());
    if (!bands)
        return tl::unexpected(bands.error());
    auto paired = pairOf(*std::move(bands));
    if (!paired)
        return fail(ErrorKind::Damaged, Noun::Spec, connection.path(), std::to_string(spec.key()));
    return *std::move(paired);
}

template <class Q>
Done readBandsInto(Connection &connection, Spec &spec)
{
    return readBands<Q>(connection, spec.id).map([&](SpecBand<Q> &&bands) { spec.asked = std::move(bands); });
}

Done readAsked(Connection &connection, Spec &spec)
{
    if (spec.subject == SpecSubject::LockNut)
        return readBandsInto<Torque>(connection, spec);
    // A point is set to a length or to turns: the unit tells.
    const auto unit =
        oneRow(connection, "SELECT unit FROM spec_band WHERE spec = ? AND place = 0", values(spec.id), [](Row &row) { return row.text(); });
    if (!unit)
        return tl::unexpected(unit.error());
    return valueOf<AngleUnit>(unit->value_or("")) ? readBandsInto<Angle>(connection, spec) : readBandsInto<Length>(connection, spec);
}

Result<int> nextRevision(Connection &connection, std::string_view sql, const QVariantList &values)
{
    const auto revision = oneRow(connection, sql, values, [](Row &row) { return row.small(); });
    if (!revision)
        return tl::unexpected(revision.error());
    return revision->value_or(1);
}

} // namespace

Result<SpecId> insertSpec(Transaction &transaction, const NewSpec &spec)
{
    assert(std::holds_alternative<SpecBand<Torque>>(spec.asked) == (spec.subject == SpecSubject::LockNut));
    Connection &connection = Internals::of(transaction);
    const auto revision = nextRevision(connection, "SELECT coalesce(max(revision), 0) + 1 FROM spec WHERE engine = ? AND subject = ?",
                                       values(spec.engine, spec.subject));
    if (!revision)
        return tl::unexpected(revision.error());
    const Spec row{SpecId(0), spec.engine, spec.subject, *revision, spec.condition, spec.source, {}};
    auto id = insertDescribed<SpecId>(connection, "spec", row);
    if (!id)
        return id;
    return std::visit([&](const auto &bands) { return writeBands(connection, *id, bands); }, spec.asked).map([&] { return *id; });
}

Result<std::vector<Spec>> specs(Database &database, EngineId engine)
{
    Connection &connection = Internals::of(database);
    static const std::string select = "SELECT id, " + namesOf<Spec>() + " FROM spec WHERE engine = ? ORDER BY id";
    auto specs = allRows(connection, select, values(engine), taken<Spec>);
    if (!specs)
        return specs;
    for (Spec &spec : *specs)
        if (auto read = readAsked(connection, spec); !read)
            return tl::unexpected(read.error());
    return specs;
}

Result<int> insertTable(Transaction &transaction, EngineId engine, const SpecSource &source, const std::vector<TableLine> &lines)
{
    Connection &connection = Internals::of(transaction);
    auto revision = nextRevision(connection, "SELECT coalesce(max(revision), 0) + 1 FROM turning_table WHERE engine = ?", values(engine));
    if (!revision)
        return revision;
    const TurningTable table{engine, *revision, source, lines};
    const auto id = insertDescribed<TableId>(connection, "turning_table", table);
    if (!id)
        return tl::unexpected(id.error());
    if (const Done done = writeLists(connection, "turning_table", values(*id), table); !done)
        return tl::unexpected(done.error());
    return revision;
}

Result<std::optional<TurningTable>> table(Database &database, EngineId engine)
{
    struct TableHead {
        TableId id;
        TurningTable table;
    };
    static const std::string select =
        "SELECT id, " + namesOf<TurningTable>() + " FROM turning_table WHERE engine = ? ORDER BY revision DESC LIMIT 1";
    Connection &connection = Internals::of(database);
    auto head = oneRow(connection, select, values(engine), [](Row &row) { return TableHead{row.id<TableId>(), taken<TurningTable>(row)}; });
    if (!head)
        return tl::unexpected(head.error());
    if (!*head)
        return std::nullopt;
    std::vector<TurningTable> tables{std::move((*head)->table)};
    return readListsOf(connection, "turning_table", Noun::Spec, tables, [&](const TurningTable &) { return (*head)->id.key(); }).map([&] {
        return std::optional(std::move(tables.front()));
    });
}

} // namespace asleft
