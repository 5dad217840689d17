#include <parts/vehicles_model.h>

#include <words/crank.h>
#include <words/vehicles.h>

#include <algorithm>

namespace asleft {

namespace {

RuledRow rowOf(const VehicleRow &vehicle)
{
    RuledRow row;
    row.id = idOf(vehicle);
    row.title = rowName(vehicle);
    row.right = vehicle.meter ? meterText(*vehicle.meter) : QString();
    if (vehicle.vehicle.stand) {
        row.note = VehiclesModel::tr("on the stand");
        return row;
    }
    QStringList notes{QString::fromStdString(vehicle.vehicle.mark),
                      vehicle.engine ? engineWords(*vehicle.engine) : VehiclesModel::tr("no engine in it")};
    notes.removeAll(QString());
    row.note = notes.join(QStringLiteral(" · "));
    return row;
}

} // namespace

qint64 idOf(const VehicleRow &row)
{
    // Keys of the garage are above zero: below it there is room for the engines on the stand, which all have the stand for a vehicle.
    return row.vehicle.stand && row.engine ? -row.engine->id.key() : row.vehicle.id.key();
}

QString engineKind(const EngineDesign &design)
{
    const QString layout = layoutName(design.layout);
    return design.layout == Layout::Single ? layout
                                           : VehiclesModel::tr("%1, cylinders: %2").arg(layout, QString::number(design.cylinders()));
}

QString engineWords(const Engine &engine)
{
    return engine.name.empty() ? engineKind(engine.design) : QString::fromStdString(engine.name);
}

QString rowName(const VehicleRow &row)
{
    return row.vehicle.stand && row.engine ? engineWords(*row.engine) : QString::fromStdString(row.vehicle.name);
}

VehiclesModel::VehiclesModel(Garage &garage, QObject *parent) : QObject(parent), m_garage(garage)
{
    connect(&garage, &Garage::changed, this, [this](const Change &change) {
        if (change.what != Change::What::Vehicles)
            return;
        if (m_isRead)
            reload();
        Q_EMIT changed();
    });
}

VehiclesModel &VehiclesModel::read()
{
    if (!m_isRead)
        reload();
    return *this;
}

const VehicleRow *VehiclesModel::at(qint64 id)
{
    read();
    const auto found = std::ranges::find(m_vehicles, id, idOf);
    return found == m_vehicles.end() ? nullptr : &*found;
}

const VehicleRow *VehiclesModel::withEngine(EngineId engine)
{
    read();
    const auto found = std::ranges::find_if(m_vehicles, [engine](const VehicleRow &row) { return row.engine && row.engine->id == engine; });
    return found == m_vehicles.end() ? nullptr : &*found;
}

std::optional<EngineId> VehiclesModel::firstEngine()
{
    read();
    const auto found = std::ranges::find_if(m_vehicles, [](const VehicleRow &row) { return row.engine.has_value(); });
    return found == m_vehicles.end() ? std::nullopt : std::optional(found->engine->id);
}

QString VehiclesModel::meterNote(const VehicleRow &row) const
{
    if (!row.meter)
        return {};
    const QString last = tr("last read %1").arg(meterText(*row.meter));
    const auto readings = meterReadings(m_garage, row.vehicle.id);
    const QString total = readings ? meterTotalText(*readings) : QString();
    return total.isEmpty() ? last : QStringLiteral("%1 · %2").arg(last, total);
}

Result<NewVehicle> VehiclesModel::add(const VehicleText &text, DecimalMark mark)
{
    return addVehicle(m_garage, text, mark);
}

Result<EngineId> VehiclesModel::addEngine(std::optional<VehicleId> into, const VehicleText &text, DecimalMark mark)
{
    return asleft::addEngine(m_garage, into, text, mark);
}

Done VehiclesModel::change(VehicleId vehicle, std::optional<EngineId> engine, const VehicleText &text, DecimalMark mark)
{
    return changeVehicle(m_garage, vehicle, engine, text, mark);
}

Done VehiclesModel::readMeter(const VehicleRow &row, const QString &text, MeterUnit unit, bool replaced)
{
    const auto read = asleft::readMeter(m_garage, row.vehicle.id, text.toStdString(), unit, replaced);
    return read ? Done{} : Done(tl::unexpected(read.error()));
}

Done VehiclesModel::move(EngineId engine, std::optional<VehicleId> into)
{
    return moveEngine(m_garage, engine, into);
}

void VehiclesModel::reload()
{
    m_isRead = true;
    auto read = asleft::vehicles(m_garage);
    m_failure = read ? std::nullopt : std::optional(read.error());
    if (read)
        m_vehicles = std::move(*read);
    // The vehicles first, then what stands beside them.
    std::ranges::stable_partition(m_vehicles, [](const VehicleRow &row) { return !row.vehicle.stand; });
    QList<RuledRow> rows;
    QList<RuledRow> engines;
    for (const VehicleRow &vehicle : m_vehicles) {
        rows.append(rowOf(vehicle));
        if (vehicle.engine)
            engines.append(rows.back());
    }
    m_rows.setRows(rows);
    m_engineRows.setRows(engines);
}

} // namespace asleft
