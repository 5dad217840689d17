#pragma once

#include <parts/ruled_rows.h>

#include <work/vehicles.h>

namespace asleft {

/// The id of a row in every list of vehicles: a vehicle's own, and one of its own for each engine on the stand.
qint64 idOf(const VehicleRow &row);

/// Every vehicle of the garage with its engine and its meter, and every engine on the stand: read when first looked at, and kept up to date
/// from then on.
class VehiclesModel : public QObject {
    Q_OBJECT

public:
    explicit VehiclesModel(Garage &garage, QObject *parent = nullptr);

    [[nodiscard]] RuledRows *rows() { return &read().m_rows; }
    /// Only those with an engine, under the same ids.
    [[nodiscard]] RuledRows *engineRows() { return &read().m_engineRows; }
    [[nodiscard]] const std::vector<VehicleRow> &vehicles() { return read().m_vehicles; }
    /// The vehicle, or engine on the stand, of a line; nothing if it is not there.
    [[nodiscard]] const VehicleRow *at(qint64 id);
    [[nodiscard]] const VehicleRow *withEngine(EngineId engine);
    [[nodiscard]] std::optional<EngineId> firstEngine();
    /// Why the garage could not be read, if it could not.
    [[nodiscard]] const std::optional<Error> &failure() const { return m_failure; }
    [[nodiscard]] Garage &garage() const { return m_garage; }

    /// "last read 61,204 mi": and over all meters, where there were several.
    [[nodiscard]] QString meterNote(const VehicleRow &row) const;
    Result<std::vector<EngineStay>> stays(EngineId engine) const { return engineStays(m_garage, engine); }

    // The acts. What they change comes back through the garage.
    Result<NewVehicle> add(const VehicleText &text, DecimalMark mark);
    /// Without a vehicle, onto the stand.
    Result<EngineId> addEngine(std::optional<VehicleId> into, const VehicleText &text, DecimalMark mark);
    Done change(VehicleId vehicle, std::optional<EngineId> engine, const VehicleText &text, DecimalMark mark);
    Done readMeter(const VehicleRow &row, const QString &text, MeterUnit unit, bool replaced);
    /// Without a vehicle, onto the stand.
    Done move(EngineId engine, std::optional<VehicleId> into);

Q_SIGNALS:
    void changed();

private:
    VehiclesModel &read();
    void reload();

    Garage &m_garage;
    RuledRows m_rows;
    RuledRows m_engineRows;
    std::vector<VehicleRow> m_vehicles;
    std::optional<Error> m_failure;
    bool m_isRead = false;
};

/// "in line, cylinders: 4"
QString engineKind(const EngineDesign &design);

/// The engine in few words: its name, else its kind.
QString engineWords(const Engine &engine);

/// The vehicle's name; of an engine on the stand, the engine.
QString rowName(const VehicleRow &row);

} // namespace asleft
