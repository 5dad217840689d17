#pragma once

#include <forms/vehicle_reader.h>
#include <parts/value_field.h>

#include <QWidget>

#include <set>

class QGridLayout;

namespace asleft {

class ChoiceKeys;
class EngineView;
class KeyButton;

/// What is chosen in the vehicle form rather than typed.
enum class VehicleChoice {
    MeterUnit,
    MeterReplaced,
    Cycle,
    Layout,
    Rotation,
    Bridged,
    BridgeScrews,
    Injectors,
    Decompressors,
    Adjusters,
    CamKnown,
};

/// A vehicle and its engine, as they are typed: the vehicle with its meter, the engine, its valves, its cam. Refuses calmly: a field is
/// told what is wrong with it once it has been left, and the sentence goes as soon as it is mended. What does not apply is not shown.
class VehicleForm : public QWidget {
    Q_OBJECT

public:
    explicit VehicleForm(DecimalMark mark, QWidget *parent = nullptr);

    [[nodiscard]] VehicleTyped typed() const;
    /// A form that has not been looked at yet refuses nothing.
    void setTyped(const VehicleTyped &typed);
    /// What was read from the meter last, with the line under its field; nothing for a new vehicle.
    void setLastMeter(const std::optional<MeterReading> &last, const QString &note);
    /// Where the engine is and was, in the line over it.
    void setPlace(const QString &words);

    /// What was typed if all of it can be taken; else every refusal is shown and the first such field has the keyboard.
    std::optional<VehicleText> take();
    /// Shows a refusal that came from the garage at the field it speaks of; false if it speaks of none.
    bool refuse(const Error &error);
    void refuseMeter(const Error &error);

    [[nodiscard]] ValueField *field(VehicleField field) const { return m_fields.at(field); }
    [[nodiscard]] ChoiceKeys *choice(VehicleChoice choice) const { return m_choices.at(choice); }
    [[nodiscard]] KeyButton *readMeterKey() const { return m_readMeter; }
    [[nodiscard]] KeyButton *moveKey() const { return m_move; }
    [[nodiscard]] MeterUnit meterUnit() const;
    [[nodiscard]] bool meterReplaced() const;
    void focusFirst();

Q_SIGNALS:
    void edited();
    /// Enter on the last field.
    void finished();

private:
    // vehicle_form_fields.cpp
    ValueField *add(VehicleField field, const QString &label, const QString &placeholder = {}, const QString &note = {});
    void addFields();
    void addCamFields();
    void addChoices();
    void buildLayout();
    QWidget *vehicleGroup();
    QWidget *engineHead();
    void layEngine(QGridLayout &grid);
    void layValves(QGridLayout &grid);
    void layCam(QGridLayout &grid);

    void wire();
    void entered(VehicleField field);
    void showWhatApplies(const VehicleTyped &typed);
    void changedHere();
    void leftField(VehicleField field);
    void tell(const VehicleReading &reading);
    void tellNumber(bool whole);
    void offerAnotherMeter(const VehicleReading &reading);
    void redraw(const VehicleReading &reading);
    void mend(const VehicleReading &reading);
    [[nodiscard]] VehicleReading reading() const;
    [[nodiscard]] bool yes(VehicleChoice choice) const;

    DecimalMark m_mark;
    VehicleTyped::About m_about = VehicleTyped::About::Both;
    std::optional<MeterReading> m_lastMeter;
    std::map<VehicleField, ValueField *> m_fields;
    std::map<VehicleChoice, ChoiceKeys *> m_choices;
    std::set<VehicleField> m_left;
    KeyButton *m_readMeter;
    KeyButton *m_move;
    QLabel *m_place;
    EngineView *m_view;
    QWidget *m_vehicleGroup;
    QWidget *m_engineGroup;
};

} // namespace asleft
