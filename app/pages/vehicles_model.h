#pragma once

#include "parts/ruled_rows.h"

#include <work/vehicles.h>

namespace asleft {

/// Every vehicle of the garage with its engine and its meter, kept up to date.
class VehiclesModel : public QObject {
    Q_OBJECT

public:
    explicit VehiclesModel(Garage &garage, QObject *parent = nullptr);

    [[nodiscard]] RuledRows *rows() { return &m_rows; }
    [[nodiscard]] const std::vector<VehicleRow> &vehicles() const { return m_vehicles; }
    /// The vehicle of a line; nothing if it is not there.
    [[nodiscard]] const VehicleRow *at(qint64 id) const;
    [[nodiscard]] const VehicleRow *withEngine(EngineId engine) const;
    /// Why the garage could not be read, if it could not.
    [[nodiscard]] const std::optional<Error> &failure() const { return m_failure; }

    // The acts. What they change comes back through the garage.
    Result<NewVehicle> add(const VehicleText &text, DecimalMark mark);
    Done change(const VehicleRow &row, const VehicleText &text, DecimalMark mark);
    Done readMeter(const VehicleRow &row, const QString &text, MeterUnit unit);

    void reload();

Q_SIGNALS:
    void changed();

private:
    Garage &m_garage;
    RuledRows m_rows;
    std::vector<VehicleRow> m_vehicles;
    std::optional<Error> m_failure;
};

/// The engine in few words: its name, else its layout and cylinders.
QString engineWords(const Engine &engine);

} // namespace asleft
