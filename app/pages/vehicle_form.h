#pragma once

#include "pages/vehicle_reader.h"
#include "parts/value_field.h"

#include <QWidget>

#include <set>

class QGridLayout;

namespace asleft {

class ChoiceKeys;
class EngineView;
class KeyButton;

/// A vehicle and its engine, as they are typed. Refuses calmly: a field is told what is wrong with it once it has been left, and the
/// sentence goes as soon as it is mended.
class VehicleForm : public QWidget {
    Q_OBJECT

public:
    explicit VehicleForm(DecimalMark mark, QWidget *parent = nullptr);

    [[nodiscard]] VehicleTyped typed() const;
    /// A form that has not been looked at yet refuses nothing.
    void setTyped(const VehicleTyped &typed);
    /// What was read from the meter last, for the line under its field; empty for a new vehicle.
    void setMeterNote(const QString &note);

    /// What was typed if all of it can be taken; else every refusal is shown and the first such field has the keyboard.
    std::optional<VehicleText> take();
    /// Shows a refusal that came from the garage at the field it speaks of; false if it speaks of none.
    bool refuse(const Error &error);

    [[nodiscard]] ValueField *field(VehicleField field) const { return m_fields.at(field); }
    [[nodiscard]] MeterUnit meterUnit() const;
    void focusFirst();

Q_SIGNALS:
    void edited();
    /// Enter on the last field.
    void finished();

private:
    ValueField *add(VehicleField field, const QString &label);
    void addFields();
    void layVehicle(QGridLayout &grid);
    void layEngine(QGridLayout &grid);
    void layCam(QGridLayout &grid);
    void chain();
    void wire();
    void showCam(bool known);
    void changedHere();
    void leftField(VehicleField field);
    void redraw();
    void mend(const VehicleReading &reading);
    [[nodiscard]] VehicleReading reading() const;

    DecimalMark m_mark;
    std::map<VehicleField, ValueField *> m_fields;
    std::set<VehicleField> m_left;
    ChoiceKeys *m_meterUnit;
    ChoiceKeys *m_layout;
    ChoiceKeys *m_rotation;
    ChoiceKeys *m_cam;
    EngineView *m_view;
};

} // namespace asleft
