#include <store/things.h>

#include "changes.h"
#include "connection.h"

#include <measure/parse.h>

namespace asleft {

using namespace store;

namespace {

/// The values of an engine's own columns, in the order in which they are written and read.
QVariantList columnsOf(const std::string &name, const EngineDesign &design, const ScrewText &screw)
{
    const EngineText text = describeDesign(design);
    const CamEvents &cam = design.cam;
    return values(name, text.layout, text.cylinders, text.firingOrder, text.gaps, text.numbering, text.valveOrder, design.rotation,
                  cam.intakeOpensBeforeTdc, cam.intakeClosesAfterBdc, cam.exhaustOpensBeforeBdc, cam.exhaustClosesAfterTdc,
                  cam.rampAllowance, cam.checkLift, cam.assumed, screw.pitch, screw.ratio);
}

/// What engineRowOf() takes, from engine and engine_fit.
const std::string engineColumns =
    "SELECT engine.id, engine_fit.vehicle, engine.name, engine.layout, engine.cylinders, engine.firing_order, engine.gaps, "
    "engine.numbering, engine.valve_order, engine.rotation, engine.intake_opens_before_tdc, engine.intake_closes_after_bdc, "
    "engine.exhaust_opens_before_bdc, engine.exhaust_closes_after_tdc, engine.ramp_allowance, engine.check_lift, engine.cam_assumed, "
    "engine.screw_pitch, engine.screw_ratio ";

/// An engine's own row, with the vehicle it is in.
struct EngineRow {
    EngineId id;
    VehicleId vehicle;
    std::string name;
    EngineText text;
    ScrewText screw;
};

CamEvents camOf(Row &row)
{
    return {row.quantity<Angle>(),
            row.quantity<Angle>(),
            row.quantity<Angle>(),
            row.quantity<Angle>(),
            row.quantity<Angle>(),
            row.text(),
            row.flag()};
}

EngineRow engineRowOf(Row &row)
{
    // Braces evaluate from left to right: the columns are taken in the order of the SELECT.
    EngineRow engine{row.id<EngineId>(),
                     row.id<VehicleId>(),
                     row.text(),
                     {row.word<Layout>(), row.small(), row.text(), row.text(), row.text(), row.text(), {}, Rotation::Clockwise},
                     {}};
    engine.text.rotation = row.word<Rotation>();
    engine.text.cam = camOf(row);
    engine.screw = {row.text(), row.text()};
    return engine;
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
    return {ErrorKind::Damaged, {connection.path(), "engine " + std::to_string(id.key())}};
}

Result<std::vector<SettingPoint>> storedPoints(Connection &connection, EngineId id)
{
    return allRows(connection, "SELECT id, cylinder, side FROM setting_point WHERE engine = ?", values(id), [](Row &row) {
        const auto point = row.id<PointId>();
        const Cylinder cylinder{row.small()};
        return SettingPoint{point, {cylinder, row.word<Side>()}};
    });
}

/// The points of the design's valves, in their order.
Result<std::vector<SettingPoint>> pointsOf(Connection &connection, EngineId id, const EngineDesign &design)
{
    auto stored = storedPoints(connection, id);
    if (!stored)
        return stored;
    std::vector<SettingPoint> points;
    for (const AdjusterRef valve : design.adjusters()) {
        const auto found = std::ranges::find(*stored, valve, &SettingPoint::adjuster);
        if (found == stored->end())
            return tl::unexpected(unreadable(connection, id));
        points.push_back(*found);
    }
    return points;
}

Result<Engine> fittedTogether(Connection &connection, const EngineRow &row)
{
    auto design = designEngine(row.text);
    auto adjuster = adjusterOf(row.screw);
    if (!design || !adjuster)
        return tl::unexpected(unreadable(connection, row.id));
    auto points = pointsOf(connection, row.id, *design);
    if (!points)
        return tl::unexpected(points.error());
    return Engine{row.id, row.vehicle, row.name, *std::move(design), row.screw, *adjuster, *std::move(points)};
}

Done insertPoints(Connection &connection, EngineId id, const EngineDesign &design)
{
    for (const AdjusterRef valve : design.adjusters())
        if (auto done = connection.run("INSERT INTO setting_point (engine, cylinder, side) VALUES (?, ?, ?) "
                                       "ON CONFLICT (engine, cylinder, side) DO NOTHING",
                                       values(id, valve.cylinder.index, valve.side));
            !done)
            return done;
    return {};
}

} // namespace

Result<EngineId> insertEngine(Transaction &transaction, const NewEngine &engine)
{
    Connection &connection = Inside::of(transaction);
    auto id = insertRow<EngineId>(
        connection,
        "INSERT INTO engine (name, layout, cylinders, firing_order, gaps, numbering, valve_order, rotation, intake_opens_before_tdc, "
        "intake_closes_after_bdc, exhaust_opens_before_bdc, exhaust_closes_after_tdc, ramp_allowance, check_lift, cam_assumed, "
        "screw_pitch, screw_ratio) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING id",
        columnsOf(engine.name, engine.design, engine.screw));
    if (!id)
        return id;
    return insertPoints(connection, *id, engine.design)
        .and_then([&] { return fitEngine(transaction, *id, engine.vehicle, engine.fitted); })
        .map([&] { return *id; });
}

Done updateEngine(Transaction &transaction, const Engine &engine)
{
    Connection &connection = Inside::of(transaction);
    QVariantList columns = columnsOf(engine.name, engine.design, engine.screw);
    columns.append(bound(engine.id));
    return changeRow(connection,
                     "UPDATE engine SET name = ?, layout = ?, cylinders = ?, firing_order = ?, gaps = ?, numbering = ?, valve_order = ?, "
                     "rotation = ?, intake_opens_before_tdc = ?, intake_closes_after_bdc = ?, exhaust_opens_before_bdc = ?, "
                     "exhaust_closes_after_tdc = ?, ramp_allowance = ?, check_lift = ?, cam_assumed = ?, screw_pitch = ?, "
                     "screw_ratio = ? WHERE id = ? RETURNING id",
                     columns, "engine")
        .and_then([&] { return insertPoints(connection, engine.id, engine.design); });
}

Done fitEngine(Transaction &transaction, EngineId engine, VehicleId vehicle, Moment fitted)
{
    return Inside::of(transaction)
        .run("INSERT INTO engine_fit (engine, vehicle, fitted_ms) VALUES (?, ?, ?)", values(engine, vehicle, fitted));
}

Result<std::vector<Engine>> engines(Database &database, VehicleId vehicle)
{
    Connection &connection = Inside::of(database);
    const auto rows = allRows(
        connection,
        engineColumns +
            "FROM engine_fit JOIN engine ON engine.id = engine_fit.engine "
            "WHERE engine_fit.vehicle = ? AND engine_fit.id = (SELECT max(id) FROM engine_fit AS newest WHERE newest.engine = engine.id) "
            "ORDER BY engine.id",
        values(vehicle), engineRowOf);
    if (!rows)
        return tl::unexpected(rows.error());
    std::vector<Engine> engines;
    for (const EngineRow &row : *rows) {
        auto engine = fittedTogether(connection, row);
        if (!engine)
            return tl::unexpected(engine.error());
        engines.push_back(*std::move(engine));
    }
    return engines;
}

Result<Engine> engine(Database &database, EngineId id)
{
    Connection &connection = Inside::of(database);
    return foundRow(connection,
                    engineColumns + "FROM engine JOIN engine_fit ON engine_fit.engine = engine.id "
                                    "WHERE engine.id = ? ORDER BY engine_fit.id DESC LIMIT 1",
                    values(id), engineRowOf, "engine")
        .and_then([&](const EngineRow &row) { return fittedTogether(connection, row); });
}

} // namespace asleft
