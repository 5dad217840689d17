#pragma once

#include <forms/vehicle_fields.h>

#include <QWidget>

#include <set>

namespace asleft {

/// A vehicle and its engine, as they are typed: the vehicle with its meter, the engine, its valves, its cam. Refuses calmly: a field is
/// told what is wrong with it once it has been left, and the sentence goes as soon as it is mended. What does not apply is not shown.
class VehicleForm : public QWidget {
    Q_OBJECT

public:
    explicit VehicleForm(DecimalMark mark, QWidget *parent = nullptr);

    [[nodiscard]] VehicleTyped typed() const { return m_fields->typed(); }
    /// A form that has not been looked at yet refuses nothing.
    void setTyped(const VehicleTyped &typed);
    /// What was read from the meter last, with the line under its field; nothing for a new vehicle.
    void setLastMeter(const std::optional<MeterReading> &last, const QString &note);
    /// Where the engine is and was, in the line over it.
    void setPlace(const QString &words) { m_fields->setPlace(words); }

    /// What was typed if all of it can be taken; else every refusal is shown and the first such field has the keyboard.
    std::optional<VehicleText> take();
    /// Shows a refusal that came from the garage at the field it speaks of; false if it speaks of none.
    bool refuse(const Error &error);
    void refuseMeter(const Error &error);

    [[nodiscard]] ValueField *field(VehicleField field) const { return m_fields->field(field); }
    [[nodiscard]] ChoiceKeys *choice(VehicleChoice choice) const { return m_fields->choice(choice); }
    [[nodiscard]] KeyButton *readMeterKey() const { return m_fields->readMeterKey(); }
    [[nodiscard]] KeyButton *moveKey() const { return m_fields->moveKey(); }
    [[nodiscard]] MeterUnit meterUnit() const;
    [[nodiscard]] bool meterReplaced() const;
    void focusFirst() { m_fields->focusFirst(); }

Q_SIGNALS:
    void edited();
    /// Enter on the last field.
    void finished();

private:
    void changedHere();
    void leftField(VehicleField field);
    void tell(const VehicleReading &reading);
    void tellNumber(bool whole);
    void offerAnotherMeter(const VehicleReading &reading);
    void redraw(const VehicleReading &reading);
    [[nodiscard]] VehicleReading reading() const;

    DecimalMark m_mark;
    VehicleFields *m_fields;
    std::optional<MeterReading> m_lastMeter;
    std::set<VehicleField> m_left;
};

} // namespace asleft
