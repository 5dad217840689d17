#pragma once

#include <parts/ruled_rows.h>

#include <work/vehicles.h>

#include <QWidget>

namespace asleft {

class Heading;
class KeyButton;
class RuledList;
class VehiclesModel;

/// What stands in the place of the engine while a vehicle has none: put one in from the stand, or describe a new one.
class EngineGap : public QWidget {
    Q_OBJECT

public:
    explicit EngineGap(VehiclesModel &vehicles, QWidget *parent = nullptr);

    [[nodiscard]] RuledList *stand() const { return m_stand; }
    [[nodiscard]] KeyButton *putInKey() const { return m_putIn; }
    [[nodiscard]] KeyButton *describeKey() const { return m_describe; }

Q_SIGNALS:
    void putInWanted(asleft::EngineId engine);
    void describeWanted();

private:
    void buildLayout();
    void fill();
    void putIn();

    VehiclesModel &m_vehicles;
    RuledRows m_rows;
    RuledList *m_stand;
    KeyButton *m_putIn;
    KeyButton *m_describe;
};

} // namespace asleft
