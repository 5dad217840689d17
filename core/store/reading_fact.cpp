#include "reading_fact.h"

#include "facts.h"

namespace asleft::store {
namespace {

std::optional<Length> amount(const std::optional<Typed<Length>> &typed)
{
    return typed ? std::optional(typed->value) : std::nullopt;
}

std::optional<LengthUnit> unit(const std::optional<Typed<Length>> &typed)
{
    return typed ? std::optional(typed->unit) : std::nullopt;
}

std::optional<std::string> text(const std::optional<Typed<Length>> &typed)
{
    return typed ? std::optional(typed->text) : std::nullopt;
}

std::optional<Typed<Length>> lengthIfAny(Row &row)
{
    const auto nanometre = row.quantityIfAny<Length>();
    if (!nanometre) {
        row.skip(2);
        return std::nullopt;
    }
    const auto unit = row.word<LengthUnit>();
    return Typed<Length>{*nanometre, unit, row.text()};
}

ReadingFact readingOf(Row &row)
{
    return {row.id<PointId>(),     row.word<Phase>(),     row.word<ReadingForm>(),     lengthIfAny(row), lengthIfAny(row),
            row.idIfAny<SpecId>(), row.idIfAny<ToolId>(), row.word<EngineCondition>(), row.flag(),       row.flag(),
            row.idIfAny<ActSeq>()};
}

Result<std::vector<ReadingFact>> readReadings(Connection &connection, ActSeq act)
{
    return allRows(connection,
                   "SELECT point, phase, form, value_nm, value_unit, value_text, next_nm, next_unit, next_text, judged_by, tool, "
                   "condition, spec_leaf, out_of_place, corrects FROM fact_reading WHERE act = ? ORDER BY place",
                   values(act), readingOf);
}

} // namespace

Done writeReading(Connection &connection, ActSeq act, std::size_t place, const ReadingFact &fact)
{
    return connection.run("INSERT INTO fact_reading (act, place, point, phase, form, value_nm, value_unit, value_text, next_nm, next_unit, "
                          "next_text, judged_by, tool, condition, spec_leaf, out_of_place, corrects) "
                          "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                          values(act, place, fact.point, fact.phase, fact.form, amount(fact.value), unit(fact.value), text(fact.value),
                                 amount(fact.next), unit(fact.next), text(fact.next), fact.judgedBy, fact.tool, fact.condition,
                                 fact.specLeaf, fact.outOfPlace, fact.corrects));
}

Done writeAllLeft(Connection &connection, ActSeq act, const AllLeftFact &fact)
{
    Done done;
    for (std::size_t place = 0; done && place < fact.readings.size(); ++place)
        done = writeReading(connection, act, place, fact.readings[place]);
    return done;
}

Result<Fact> readReading(Connection &connection, ActSeq act)
{
    auto readings = readReadings(connection, act);
    if (!readings)
        return tl::unexpected(readings.error());
    if (readings->size() != 1)
        return tl::unexpected(damagedAct(connection, act));
    return Fact(std::move(readings->front()));
}

Result<Fact> readAllLeft(Connection &connection, ActSeq act)
{
    return readReadings(connection, act).map([](std::vector<ReadingFact> &&readings) { return Fact(AllLeftFact{std::move(readings)}); });
}

} // namespace asleft::store
