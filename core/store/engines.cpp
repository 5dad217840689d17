#include <store/things.h>

#include "changes.h"
#include "connection.h"

#include <measure/parse.h>
#include <shop/entry.h>

namespace asleft {

using namespace store;

namespace {

std::optional<Angle> startOf(const std::optional<CrankArc> &arc)
{
    return arc ? std::optional(arc->starts) : std::nullopt;
}

std::optional<Angle> endOf(const std::optional<CrankArc> &arc)
{
    return arc ? std::optional(arc->ends) : std::nullopt;
}

/// The values of an engine's own columns, in the order in which they are written and read.
QVariantList columnsOf(const std::string &name, const EngineDesign &design, const ScrewText &screw)
{
    const EngineText text = describeDesign(design);
    const CamEvents &cam = design.cam;
    return values(name, text.layout, text.cylinders, text.firingOrder, text.gaps, text.numbering, text.valveOrder, design.rotation,
                  text.cycle, text.valves, text.bridged, text.bridgeScrews, text.injectors, text.decompressors, text.barring,
                  cam.intakeOpensBeforeTdc, cam.intakeClosesAfterBdc, cam.exhaustOpensBeforeBdc, cam.exhaustClosesAfterTdc,
                  cam.rampAllowance, startOf(cam.exhaustAgain), endOf(cam.exhaustAgain), startOf(cam.injector), endOf(cam.injector),
                  cam.checkLift, cam.assumed, screw.pitch, screw.ratio, screw.kind, screw.bleedDown);
}

/// What engineRowOf() takes, from engine and engine_fit.
const std::string engineColumns =
    "SELECT engine.id, engine_fit.vehicle, engine.name, engine.layout, engine.cylinders, engine.firing_order, engine.gaps, "
    "engine.numbering, engine.valve_order, engine.rotation, engine.cycle, engine.valves, engine.bridged, engine.bridge_screws, "
    "engine.injectors, engine.decompressors, engine.barring, engine.intake_opens_before_tdc, engine.intake_closes_after_bdc, "
    "engine.exhaust_opens_before_bdc, engine.exhaust_closes_after_tdc, engine.ramp_allowance, engine.exhaust_again_starts, "
    "engine.exhaust_again_ends, engine.injector_starts, engine.injector_ends, engine.check_lift, engine.cam_assumed, "
    "engine.screw_pitch, engine.screw_ratio, engine.adjuster_kind, engine.bleed_down ";

/// An engine's own row, with the vehicle it is in.
struct EngineRow {
    EngineId id;
    VehicleId vehicle;
    std::string name;
    EngineText text;
    ScrewText screw;
};

// Braces evaluate from left to right: the columns are taken in the order of the SELECT.

std::optional<CrankArc> arcOf(Row &row)
{
    const auto starts = row.quantityIfAny<Angle>();
    const auto ends = row.quantityIfAny<Angle>();
    return starts && ends ? std::optional(CrankArc{*starts, *ends}) : std::nullopt;
}

CamEvents camOf(Row &row)
{
    return {row.quantity<Angle>(),
            row.quantity<Angle>(),
            row.quantity<Angle>(),
            row.quantity<Angle>(),
            row.quantity<Angle>(),
            arcOf(row),
            arcOf(row),
            row.text(),
            row.flag()};
}

EngineText engineTextOf(Row &row)
{
    EngineText text;
    text.layout = row.word<Layout>();
    text.cylinders = row.small();
    text.firingOrder = row.text();
    text.gaps = row.text();
    text.numbering = row.text();
    text.valveOrder = row.text();
    text.rotation = row.word<Rotation>();
    text.cycle = row.word<Cycle>();
    text.valves = row.text();
    text.bridged = row.flag();
    text.bridgeScrews = row.flag();
    text.injectors = row.flag();
    text.decompressors = row.flag();
    text.barring = row.text();
    text.cam = camOf(row);
    return text;
}

EngineRow engineRowOf(Row &row)
{
    return {row.id<EngineId>(),
            row.id<VehicleId>(),
            row.text(),
            engineTextOf(row),
            {row.text(), row.text(), row.word<AdjusterKind>(), row.text()}};
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

Result<std::vector<SettingPoint>> storedPoints(Connection &connection, EngineId id)
{
    return allRows(connection, "SELECT id, cylinder, adjuster FROM setting_point WHERE engine = ?", values(id), [](Row &row) {
        return SettingPoint{row.id<PointId>(), row.adjuster()};
    });
}

/// The points of the design's adjusters, in their order.
Result<std::vector<SettingPoint>> pointsOf(Connection &connection, EngineId id, const EngineDesign &design)
{
    auto stored = storedPoints(connection, id);
    if (!stored)
        return stored;
    std::vector<SettingPoint> points;
    for (const AdjusterRef adjuster : design.adjusters()) {
        const auto found = std::ranges::find(*stored, adjuster, &SettingPoint::adjuster);
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
    auto bleedDown = readBleedDown(row.screw);
    if (!design || !adjuster || !bleedDown)
        return tl::unexpected(unreadable(connection, row.id));
    auto points = pointsOf(connection, row.id, *design);
    if (!points)
        return tl::unexpected(points.error());
    return Engine{row.id, row.vehicle, row.name, *std::move(design), row.screw, *adjuster, *bleedDown, *std::move(points)};
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
    auto id = insertRow<EngineId>(
        connection,
        "INSERT INTO engine (name, layout, cylinders, firing_order, gaps, numbering, valve_order, rotation, cycle, valves, bridged, "
        "bridge_screws, injectors, decompressors, barring, intake_opens_before_tdc, intake_closes_after_bdc, exhaust_opens_before_bdc, "
        "exhaust_closes_after_tdc, ramp_allowance, exhaust_again_starts, exhaust_again_ends, injector_starts, injector_ends, check_lift, "
        "cam_assumed, screw_pitch, screw_ratio, adjuster_kind, bleed_down) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING id",
        columnsOf(engine.name, engine.design, engine.screw));
    if (!id)
        return id;
    return insertPoints(connection, *id, engine.design)
        .and_then([&] { return fitEngine(transaction, *id, engine.vehicle, engine.fitted); })
        .map([&] { return *id; });
}

Done updateEngine(Transaction &transaction, const Engine &engine)
{
    Connection &connection = Internals::of(transaction);
    QVariantList columns = columnsOf(engine.name, engine.design, engine.screw);
    columns.append(bound(engine.id));
    return changeRow(connection,
                     "UPDATE engine SET name = ?, layout = ?, cylinders = ?, firing_order = ?, gaps = ?, numbering = ?, valve_order = ?, "
                     "rotation = ?, cycle = ?, valves = ?, bridged = ?, bridge_screws = ?, injectors = ?, decompressors = ?, barring = ?, "
                     "intake_opens_before_tdc = ?, intake_closes_after_bdc = ?, exhaust_opens_before_bdc = ?, "
                     "exhaust_closes_after_tdc = ?, ramp_allowance = ?, exhaust_again_starts = ?, exhaust_again_ends = ?, "
                     "injector_starts = ?, injector_ends = ?, check_lift = ?, cam_assumed = ?, screw_pitch = ?, screw_ratio = ?, "
                     "adjuster_kind = ?, bleed_down = ? WHERE id = ? RETURNING id",
                     columns, Noun::Engine)
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

Result<std::vector<Engine>> engines(Database &database, VehicleId vehicle)
{
    Connection &connection = Internals::of(database);
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
    Connection &connection = Internals::of(database);
    return foundRow(connection,
                    engineColumns + "FROM engine JOIN engine_fit ON engine_fit.engine = engine.id "
                                    "WHERE engine.id = ? ORDER BY engine_fit.id DESC LIMIT 1",
                    values(id), engineRowOf, Noun::Engine)
        .and_then([&](const EngineRow &row) { return fittedTogether(connection, row); });
}

} // namespace asleft
