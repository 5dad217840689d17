#include <store/things.h>

#include "changes.h"
#include "thing_rows.h"

#include <measure/parse.h>
#include <shop/entry.h>

#include <map>

namespace asleft {

using namespace store;

namespace {

EngineRow rowOf(const std::string &name, const EngineDesign &design, const ScrewText &screw)
{
    return {name, describeDesign(design), screw};
}

/// An engine's own row, with the vehicle it is in.
struct FittedRow {
    EngineId id;
    VehicleId vehicle;
    EngineRow engine;
};

/// What fittedRowOf() takes, from engine and engine_fit.
const std::string fittedColumns = "SELECT engine.id, engine_fit.vehicle, " + namesOf<EngineRow>() + " ";

FittedRow fittedRowOf(Row &row)
{
    return {row.id<EngineId>(), row.id<VehicleId>(), taken<EngineRow>(row)};
}

/// Nothing where the pitch is unknown.
Result<std::optional<ScrewAdjuster>> adjusterOf(const ScrewText &screw)
{
    if (screw.pitch.empty())
        return std::nullopt;
    const auto pitch = parse<Length>(screw.pitch, LengthUnit::Millimetre);
    if (!pitch)
        return tl::unexpected(pitch.error());
    if (screw.ratio.empty())
        return ScrewAdjuster{pitch->value};
    const auto ratio = parseNumber(screw.ratio);
    if (!ratio)
        return tl::unexpected(ratio.error());
    return ScrewAdjuster{pitch->value, ratio->toDouble()};
}

Error unreadable(const Connection &connection, EngineId id)
{
    return {ErrorKind::Damaged, {connection.path(), std::to_string(id.key())}, Noun::Engine};
}

using PointsByEngine = std::map<EngineId, std::vector<SettingPoint>>;

/// The points of one engine; without one, of all.
Result<PointsByEngine> storedPoints(Connection &connection, std::optional<EngineId> of)
{
    struct Stored {
        EngineId engine;
        SettingPoint point;
    };
    const auto stored = [](Row &row) {
        const auto engine = row.id<EngineId>();
        const auto id = row.id<PointId>();
        return Stored{engine, {id, row.adjuster()}};
    };
    static const std::string all = "SELECT engine, id, cylinder, adjuster FROM setting_point";
    const auto rows = of ? allRows(connection, all + " WHERE engine = ?", values(*of), stored) : allRows(connection, all, {}, stored);
    if (!rows)
        return tl::unexpected(rows.error());
    PointsByEngine points;
    for (const Stored &row : *rows)
        points[row.engine].push_back(row.point);
    return points;
}

/// The points of the design's adjusters, in their order.
std::optional<std::vector<SettingPoint>> inOrderOf(const EngineDesign &design, const std::vector<SettingPoint> &stored)
{
    std::vector<SettingPoint> points;
    for (const AdjusterRef adjuster : design.adjusters()) {
        const auto found = std::ranges::find(stored, adjuster, &SettingPoint::adjuster);
        if (found == stored.end())
            return std::nullopt;
        points.push_back(*found);
    }
    return points;
}

Result<Engine> fittedTogether(const Connection &connection, const FittedRow &row, PointsByEngine &stored)
{
    auto design = designEngine(row.engine.text);
    auto adjuster = adjusterOf(row.engine.screw);
    auto bleedDown = readBleedDown(row.engine.screw);
    auto points = design ? inOrderOf(*design, stored[row.id]) : std::nullopt;
    if (!points || !adjuster || !bleedDown)
        return tl::unexpected(unreadable(connection, row.id));
    return Engine{row.id, row.vehicle, row.engine.name, *std::move(design), row.engine.screw, *adjuster, *bleedDown, *std::move(points)};
}

Done insertPoints(Connection &connection, EngineId id, const EngineDesign &design)
{
    for (const AdjusterRef adjuster : design.adjusters())
        if (auto done = connection.run("INSERT INTO setting_point (engine, cylinder, adjuster) VALUES (?, ?, ?) "
                                       "ON CONFLICT (engine, cylinder, adjuster) DO NOTHING",
                                       values(id, adjuster.cylinder.index, wordOf(adjuster)));
            !done)
            return done;
    return {};
}

} // namespace

Result<EngineId> insertEngine(Transaction &transaction, const NewEngine &engine)
{
    Connection &connection = Internals::of(transaction);
    auto id = insertDescribed<EngineId>(connection, "engine", rowOf(engine.name, engine.design, engine.screw));
    if (!id)
        return id;
    return insertPoints(connection, *id, engine.design)
        .and_then([&] { return fitEngine(transaction, *id, engine.vehicle, engine.fitted); })
        .map([&] { return *id; });
}

Done updateEngine(Transaction &transaction, const Engine &engine)
{
    Connection &connection = Internals::of(transaction);
    static const std::string update = "UPDATE engine SET " + assignmentsOf(namesOf<EngineRow>()) + " WHERE id = ? RETURNING id";
    return changeRow(connection, update, valuesOf(rowOf(engine.name, engine.design, engine.screw)) + values(engine.id), Noun::Engine)
        .and_then([&] { return insertPoints(connection, engine.id, engine.design); });
}

Done fitEngine(Transaction &transaction, EngineId engine, VehicleId vehicle, Moment fitted)
{
    return Internals::of(transaction)
        .run("INSERT INTO engine_fit (engine, vehicle, fitted_ms) VALUES (?, ?, ?)", values(engine, vehicle, fitted));
}

Result<std::vector<EngineFit>> engineFits(Database &database, EngineId engine)
{
    return allRows(Internals::of(database), "SELECT vehicle, fitted_ms FROM engine_fit WHERE engine = ? ORDER BY id", values(engine),
                   [](Row &row) {
                       return EngineFit{row.id<VehicleId>(), row.moment()};
                   });
}

Result<std::vector<Engine>> engines(Database &database, std::optional<VehicleId> in)
{
    static const std::string fittedNow = fittedColumns +
                                         "FROM engine_fit JOIN engine ON engine.id = engine_fit.engine WHERE engine_fit.id = "
                                         "(SELECT max(id) FROM engine_fit AS newest WHERE newest.engine = engine.id) ";
    static const std::string all = fittedNow + "ORDER BY engine.id";
    static const std::string ofOne = fittedNow + "AND engine_fit.vehicle = ? ORDER BY engine.id";
    Connection &connection = Internals::of(database);
    const auto rows = in ? allRows(connection, ofOne, values(*in), fittedRowOf) : allRows(connection, all, {}, fittedRowOf);
    if (!rows)
        return tl::unexpected(rows.error());
    PointsByEngine points;
    for (std::size_t place = 0; place < (in ? rows->size() : 1); ++place) {
        auto stored = storedPoints(connection, in ? std::optional((*rows)[place].id) : std::nullopt);
        if (!stored)
            return tl::unexpected(stored.error());
        points.merge(*stored);
    }
    std::vector<Engine> engines;
    for (const FittedRow &row : *rows) {
        auto engine = fittedTogether(connection, row, points);
        if (!engine)
            return tl::unexpected(engine.error());
        engines.push_back(*std::move(engine));
    }
    return engines;
}

Result<Engine> engine(Database &database, EngineId id)
{
    Connection &connection = Internals::of(database);
    static const std::string select = fittedColumns + "FROM engine JOIN engine_fit ON engine_fit.engine = engine.id "
                                                      "WHERE engine.id = ? ORDER BY engine_fit.id DESC LIMIT 1";
    const auto row = foundRow(connection, select, values(id), fittedRowOf, Noun::Engine);
    if (!row)
        return tl::unexpected(row.error());
    auto points = storedPoints(connection, id);
    if (!points)
        return tl::unexpected(points.error());
    return fittedTogether(connection, *row, *points);
}

} // namespace asleft
