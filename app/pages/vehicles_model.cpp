#include "pages/vehicles_model.h"

#include <show/words.h>

#include <algorithm>

namespace asleft {

namespace {

RuledRow rowOf(const VehicleRow &vehicle)
{
    RuledRow row;
    row.id = vehicle.vehicle.id.key();
    row.title = QString::fromStdString(vehicle.vehicle.name);
    QStringList notes{QString::fromStdString(vehicle.vehicle.mark), engineWords(vehicle.engine)};
    notes.removeAll(QString());
    row.note = notes.join(QStringLiteral(" · "));
    row.right = vehicle.meter ? meterText(*vehicle.meter) : QString();
    return row;
}

} // namespace

QString engineWords(const Engine &engine)
{
    if (!engine.name.empty())
        return QString::fromStdString(engine.name);
    return VehiclesModel::tr("%1, cylinders: %2").arg(layoutName(engine.design.layout), QString::number(engine.design.cylinders()));
}

VehiclesModel::VehiclesModel(Garage &garage, QObject *parent) : QObject(parent), m_garage(garage)
{
    connect(&garage, &Garage::changed, this, [this](const Change &change) {
        if (change.what == Change::What::Vehicles)
            reload();
    });
    reload();
}

const VehicleRow *VehiclesModel::at(qint64 id) const
{
    const auto found = std::ranges::find_if(m_vehicles, [id](const VehicleRow &row) { return row.vehicle.id.key() == id; });
    return found == m_vehicles.end() ? nullptr : &*found;
}

const VehicleRow *VehiclesModel::withEngine(EngineId engine) const
{
    const auto found = std::ranges::find_if(m_vehicles, [engine](const VehicleRow &row) { return row.engine.id == engine; });
    return found == m_vehicles.end() ? nullptr : &*found;
}

Result<NewVehicle> VehiclesModel::add(const VehicleText &text, DecimalMark mark)
{
    return addVehicle(m_garage, text, mark);
}

Done VehiclesModel::change(const VehicleRow &row, const VehicleText &text, DecimalMark mark)
{
    return changeVehicle(m_garage, row.vehicle.id, row.engine.id, text, mark);
}

Done VehiclesModel::readMeter(const VehicleRow &row, const QString &text, MeterUnit unit)
{
    const auto read = asleft::readMeter(m_garage, row.vehicle.id, text.toStdString(), unit);
    return read ? Done{} : Done(tl::unexpected(read.error()));
}

void VehiclesModel::reload()
{
    auto read = asleft::vehicles(m_garage);
    m_failure = read ? std::nullopt : std::optional(read.error());
    if (read)
        m_vehicles = std::move(*read);
    QList<RuledRow> rows;
    for (const VehicleRow &vehicle : m_vehicles)
        rows.append(rowOf(vehicle));
    m_rows.setRows(rows);
    Q_EMIT changed();
}

} // namespace asleft
