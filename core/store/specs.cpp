#include <store/things.h>

#include "bands.h"
#include "changes.h"
#include "connection.h"

#include <cassert>

namespace asleft {

using namespace store;

namespace {

template <class Q>
Done writeBand(Connection &connection, SpecId spec, int place, const Band<Q> &band)
{
    static const std::string insert = "INSERT INTO spec_band (spec, place, " + bandColumns + ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)";
    return connection.run(insert, values(spec, place) + bandValues(band));
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
    static const std::string select = "SELECT " + bandColumns + " FROM spec_band WHERE spec = ? ORDER BY place";
    auto bands = allRows(connection, select, values(spec), bandOf<Q>);
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
    auto id = insertRow<SpecId>(
        connection,
        "INSERT INTO spec (engine, subject, revision, condition, manual, page, certainty) VALUES (?, ?, ?, ?, ?, ?, ?) RETURNING id",
        values(spec.engine, spec.subject, *revision, spec.condition, spec.source.manual, spec.source.page, spec.source.certainty));
    if (!id)
        return id;
    return std::visit([&](const auto &bands) { return writeBands(connection, *id, bands); }, spec.asked).map([&] { return *id; });
}

Result<std::vector<Spec>> specs(Database &database, EngineId engine)
{
    Connection &connection = Internals::of(database);
    auto specs = allRows(
        connection, "SELECT id, engine, subject, revision, condition, manual, page, certainty FROM spec WHERE engine = ? ORDER BY id",
        values(engine), [](Row &row) {
            return Spec{
                row.id<SpecId>(), row.id<EngineId>(), row.word<SpecSubject>(), row.small(), row.word<EngineCondition>(), sourceOf(row), {}};
        });
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
    const auto id =
        connection.insert("INSERT INTO turning_table (engine, revision, manual, page, certainty) VALUES (?, ?, ?, ?, ?) RETURNING id",
                          values(engine, *revision, source.manual, source.page, source.certainty));
    if (!id)
        return tl::unexpected(id.error());
    for (std::size_t place = 0; place < lines.size(); ++place) {
        const TableLine &line = lines[place];
        const Done done =
            connection.run("INSERT INTO turning_table_line (turning_table, place, cylinder, stroke, points) VALUES (?, ?, ?, ?, ?)",
                           values(*id, place, line.cylinder, line.event, line.points));
        if (!done)
            return tl::unexpected(done.error());
    }
    return revision;
}

Result<std::optional<TurningTable>> table(Database &database, EngineId engine)
{
    struct TableHead {
        std::int64_t id;
        TurningTable table;
    };
    Connection &connection = Internals::of(database);
    auto head = oneRow(connection,
                       "SELECT id, engine, revision, manual, page, certainty FROM turning_table WHERE engine = ? "
                       "ORDER BY revision DESC LIMIT 1",
                       values(engine), [](Row &row) {
                           return TableHead{row.number(), {row.id<EngineId>(), row.small(), sourceOf(row), {}}};
                       });
    if (!head)
        return tl::unexpected(head.error());
    if (!*head)
        return std::nullopt;
    auto lines = allRows(connection, "SELECT cylinder, stroke, points FROM turning_table_line WHERE turning_table = ? ORDER BY place",
                         values((*head)->id), [](Row &row) {
                             return TableLine{row.text(), row.word<CrankEvent>(), row.text()};
                         });
    if (!lines)
        return tl::unexpected(lines.error());
    (*head)->table.lines = *std::move(lines);
    return std::move((*head)->table);
}

} // namespace asleft
