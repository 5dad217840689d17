#include "reading_fact.h"

#include "facts.h"

namespace asleft::store {
namespace {

const std::string readingColumns =
    "point, phase, form, value_nm, value_unit, value_text, next_nm, next_unit, next_text, judged_by, tool, condition, spec_leaf, "
    "out_of_place, corrects, turned, turned_unit, turned_text, uncertainty_nm, temperature, temperature_unit, temperature_text, "
    "minutes_since_run";

ReadingFact readingOf(Row &row)
{
    return {row.id<PointId>(),
            row.word<Phase>(),
            row.word<ReadingForm>(),
            row.typedIfAny<Typed<Length>>(),
            row.typedIfAny<Typed<Length>>(),
            row.idIfAny<SpecId>(),
            row.idIfAny<ToolId>(),
            row.word<EngineCondition>(),
            row.flag(),
            row.flag(),
            row.idIfAny<ActSeq>(),
            row.typedIfAny<Typed<Angle>>(),
            row.quantityIfAny<Length>(),
            row.typedIfAny<TypedTemperature>(),
            row.numberIfAny()};
}

Result<std::vector<ReadingFact>> readReadings(Connection &connection, ActSeq act)
{
    static const std::string ofAct = "SELECT " + readingColumns + " FROM fact_reading WHERE act = ? ORDER BY place";
    return allRows(connection, ofAct, values(act), readingOf);
}

} // namespace

Done writeReading(Connection &connection, ActSeq act, std::size_t place, const ReadingFact &fact)
{
    static const std::string insert = "INSERT INTO fact_reading (act, place, " + readingColumns +
                                      ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
    return connection.run(insert, values(act, place, fact.point, fact.phase, fact.form, amountOf(fact.value), unitOf(fact.value),
                                         textOf(fact.value), amountOf(fact.next), unitOf(fact.next), textOf(fact.next), fact.judgedBy,
                                         fact.tool, fact.condition, fact.specLeaf, fact.outOfPosition, fact.corrects, amountOf(fact.turned),
                                         unitOf(fact.turned), textOf(fact.turned), fact.uncertainty, amountOf(fact.temperature),
                                         unitOf(fact.temperature), textOf(fact.temperature), fact.minutesSinceRun));
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
