#include "joint_facts.h"

#include "facts.h"

namespace asleft::store {
namespace {

// What an act lists stands in a table of its own, in the order of `place`: fasteners, places or ticks.

template <class List, class ValuesOf>
Done writeList(Connection &connection, ActSeq act, std::string_view sql, const List &list, ValuesOf valuesOf)
{
    for (std::size_t place = 0; place < list.size(); ++place)
        if (auto done = connection.run(sql, values(act, place) + valuesOf(list[place])); !done)
            return done;
    return {};
}

template <class Make>
auto readList(Connection &connection, ActSeq act, const std::string &table, const std::string &columns, Make make)
{
    return allRows(connection, "SELECT " + columns + " FROM " + table + " WHERE act = ? ORDER BY place", values(act), make);
}

/// The same of a list that no act is without.
template <class Make>
auto readSome(Connection &connection, ActSeq act, const std::string &table, const std::string &columns, Make make)
{
    auto list = readList(connection, act, table, columns, make);
    if (list && list->empty())
        list = tl::unexpected(damagedAct(connection, act));
    return list;
}

/// After the fact's own row, if that was written.
Done writeFasteners(Connection &connection, ActSeq act, const std::string &table, const std::vector<int> &fasteners, const Done &row)
{
    if (!row)
        return row;
    return writeList(connection, act, "INSERT INTO " + table + " (act, place, fastener) VALUES (?, ?, ?)", fasteners,
                     [](int fastener) { return values(fastener); });
}

Result<std::vector<int>> readFasteners(Connection &connection, ActSeq act, const std::string &table)
{
    return readList(connection, act, table, "fastener", [](Row &row) { return row.small(); });
}

Result<std::vector<int>> readSomeFasteners(Connection &connection, ActSeq act, const std::string &table)
{
    return readSome(connection, act, table, "fastener", [](Row &row) { return row.small(); });
}

QVariantList placeValues(const TickSlot &place)
{
    return values(place.fastener, place.pass, place.round);
}

TickSlot placeOf(Row &row)
{
    return {row.small(), row.small(), row.small()};
}

/// A fact's own row and its list, read one after the other and put together.
template <class List, class Make>
Result<Fact> withList(Result<List> list, Connection &connection, ActSeq act, std::string_view sql, Make make)
{
    if (!list)
        return tl::unexpected(list.error());
    return onlyRow(connection, act, sql, [&](Row &row) { return make(row, std::move(*list)); });
}

std::optional<FitUsed> fitOf(Row &row)
{
    const auto adapter = row.idIfAny<ToolId>();
    const auto length = row.quantityIfAny<Length>();
    const auto angle = row.quantityIfAny<Angle>();
    if (length && angle)
        return FitUsed{adapter, {*length, *angle}};
    if (adapter || length || angle)
        row.refuse();
    return std::nullopt;
}

const std::string ticksColumns = "joint, revision, how, tool, setting, setting_unit, setting_text, reading, reading_unit, reading_text, "
                                 "adapter, adapter_nm, adapter_angle, lever_nm, uncertainty, out_of_range, calibration_overdue, reason";

TicksFact ticksOf(Row &row, std::vector<Tick> ticks)
{
    return {row.id<JointId>(),
            row.small(),
            std::move(ticks),
            row.word<TickHow>(),
            row.idIfAny<ToolId>(),
            row.typedIfAny<Typed<Torque>>(),
            row.typedIfAny<Typed<Torque>>(),
            fitOf(row),
            row.quantityIfAny<Length>(),
            row.quantityIfAny<Torque>(),
            row.flag(),
            row.flag(),
            row.text()};
}

} // namespace

Done writeLoosened(Connection &connection, ActSeq act, const LoosenedFact &fact)
{
    const Done row = connection.run("INSERT INTO fact_loosened (act, joint, revision, how, torque, torque_unit, torque_text, tool, note) "
                                    "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                                    values(act, fact.joint, fact.revision, fact.how, amountOf(fact.torque), unitOf(fact.torque),
                                           textOf(fact.torque), fact.tool, fact.note));
    return writeFasteners(connection, act, "loosened_fastener", fact.fasteners, row);
}

Result<Fact> readLoosened(Connection &connection, ActSeq act)
{
    return withList(readSomeFasteners(connection, act, "loosened_fastener"), connection, act,
                    "SELECT joint, revision, how, torque, torque_unit, torque_text, tool, note FROM fact_loosened WHERE act = ?",
                    [](Row &row, std::vector<int> &&fasteners) {
                        return LoosenedFact{
                            row.id<JointId>(),     row.small(), std::move(fasteners), row.word<FoundHow>(), row.typedIfAny<Typed<Torque>>(),
                            row.idIfAny<ToolId>(), row.text()};
                    });
}

Done writeTicks(Connection &connection, ActSeq act, const TicksFact &fact)
{
    static const std::string insert =
        "INSERT INTO fact_ticks (act, " + ticksColumns + ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
    const auto adapter = fact.fit ? fact.fit->adapter : std::nullopt;
    const auto length = fact.fit ? std::optional(fact.fit->fit.length) : std::nullopt;
    const auto angle = fact.fit ? std::optional(fact.fit->fit.angle) : std::nullopt;
    const Done done =
        connection.run(insert, values(act, fact.joint, fact.revision, fact.how, fact.tool, amountOf(fact.setting), unitOf(fact.setting),
                                      textOf(fact.setting), amountOf(fact.reading), unitOf(fact.reading), textOf(fact.reading), adapter,
                                      length, angle, fact.lever, fact.uncertainty, fact.outOfRange, fact.calibrationOverdue, fact.reason));
    if (!done)
        return done;
    return writeList(connection, act, "INSERT INTO tick (act, place, fastener, pass, round, moved) VALUES (?, ?, ?, ?, ?, ?)", fact.ticks,
                     [](const Tick &tick) { return placeValues(tick.place) + values(tick.moved); });
}

Result<Fact> readTicks(Connection &connection, ActSeq act)
{
    static const std::string select = "SELECT " + ticksColumns + " FROM fact_ticks WHERE act = ?";
    auto ticks = readSome(connection, act, "tick", "fastener, pass, round, moved", [](Row &row) { return Tick{placeOf(row), row.flag()}; });
    return withList(std::move(ticks), connection, act, select,
                    [](Row &row, std::vector<Tick> &&ticks) { return ticksOf(row, std::move(ticks)); });
}

Done writeUnticked(Connection &connection, ActSeq act, const UntickedFact &fact)
{
    const Done done = connection.run("INSERT INTO fact_unticked (act, joint) VALUES (?, ?)", values(act, fact.joint));
    if (!done)
        return done;
    return writeList(connection, act, "INSERT INTO unticked_place (act, place, fastener, pass, round) VALUES (?, ?, ?, ?, ?)", fact.places,
                     placeValues);
}

Result<Fact> readUnticked(Connection &connection, ActSeq act)
{
    auto places = readSome(connection, act, "unticked_place", "fastener, pass, round", placeOf);
    return withList(std::move(places), connection, act, "SELECT joint FROM fact_unticked WHERE act = ?",
                    [](Row &row, std::vector<TickSlot> &&places) {
                        return UntickedFact{row.id<JointId>(), std::move(places)};
                    });
}

Done writeJointBegun(Connection &connection, ActSeq act, const JointBegunFact &fact)
{
    return connection.run("INSERT INTO fact_joint_begun (act, joint, revision) VALUES (?, ?, ?)", values(act, fact.joint, fact.revision));
}

Result<Fact> readJointBegun(Connection &connection, ActSeq act)
{
    return onlyRow(connection, act, "SELECT joint, revision FROM fact_joint_begun WHERE act = ?", [](Row &row) {
        return JointBegunFact{row.id<JointId>(), row.small()};
    });
}

Done writeFitted(Connection &connection, ActSeq act, const FittedFact &fact)
{
    const Done row = connection.run("INSERT INTO fact_fitted (act, joint, fitted) VALUES (?, ?, ?)", values(act, fact.joint, fact.fitted));
    return writeFasteners(connection, act, "fitted_fastener", fact.fasteners, row);
}

Result<Fact> readFitted(Connection &connection, ActSeq act)
{
    return withList(readSomeFasteners(connection, act, "fitted_fastener"), connection, act,
                    "SELECT joint, fitted FROM fact_fitted WHERE act = ?", [](Row &row, std::vector<int> &&fasteners) {
                        return FittedFact{row.id<JointId>(), std::move(fasteners), row.word<Fitted>()};
                    });
}

Done writeAccepted(Connection &connection, ActSeq act, const AcceptedFact &fact)
{
    const Done row = connection.run("INSERT INTO fact_accepted (act, joint, what, reason) VALUES (?, ?, ?, ?)",
                                    values(act, fact.joint, fact.what, fact.reason));
    return writeFasteners(connection, act, "accepted_fastener", fact.fasteners, row);
}

Result<Fact> readAccepted(Connection &connection, ActSeq act)
{
    return withList(readFasteners(connection, act, "accepted_fastener"), connection, act,
                    "SELECT joint, what, reason FROM fact_accepted WHERE act = ?", [](Row &row, std::vector<int> &&fasteners) {
                        AcceptedFact fact{row.id<JointId>(), row.word<AcceptedWhat>(), std::move(fasteners), row.text()};
                        if ((fact.what == AcceptedWhat::Unsettled) != fact.fasteners.empty())
                            row.refuse();
                        return fact;
                    });
}

Done writeFinding(Connection &connection, ActSeq act, const FindingFact &fact)
{
    const Done row = connection.run("INSERT INTO fact_finding (act, joint, text) VALUES (?, ?, ?)", values(act, fact.joint, fact.text));
    return writeFasteners(connection, act, "finding_fastener", fact.fasteners, row);
}

Result<Fact> readFinding(Connection &connection, ActSeq act)
{
    return withList(readFasteners(connection, act, "finding_fastener"), connection, act,
                    "SELECT joint, text FROM fact_finding WHERE act = ?", [](Row &row, std::vector<int> &&fasteners) {
                        return FindingFact{row.id<JointId>(), std::move(fasteners), row.text()};
                    });
}

} // namespace asleft::store
