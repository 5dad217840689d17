#pragma once

#include <forms/vehicle_reader.h>
#include <parts/value_field.h>

#include <QWidget>

class QGridLayout;

namespace asleft {

class ChoiceKeys;
class EngineView;
class KeyButton;

/// What is chosen of a vehicle rather than typed.
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

/// The fields of a vehicle and its engine, what is chosen, and how they lie. What does not apply is not shown.
class VehicleFields : public QWidget {
    Q_OBJECT

public:
    explicit VehicleFields(QWidget *parent = nullptr);

    [[nodiscard]] VehicleTyped typed() const;
    /// Fields that have not been looked at yet refuse nothing.
    void setTyped(const VehicleTyped &typed);
    [[nodiscard]] ValueField *field(VehicleField field) const { return m_fields.at(field); }
    [[nodiscard]] ChoiceKeys *choice(VehicleChoice choice) const { return m_choices.at(choice); }
    [[nodiscard]] bool yes(VehicleChoice choice) const;
    [[nodiscard]] KeyButton *readMeterKey() const { return m_readMeter; }
    [[nodiscard]] KeyButton *moveKey() const { return m_move; }
    /// The drawing of the engine.
    [[nodiscard]] EngineView *view() const { return m_view; }
    /// Where the engine is and was, in the line over it.
    void setPlace(const QString &words);
    void focusFirst();

    /// While typing, refusals only go or follow what is typed.
    void mend(const VehicleReading &reading);
    /// Refuses everything that is wrong and gives the keyboard to the first of it. False where nothing is.
    bool refuse(const VehicleReading &reading);

Q_SIGNALS:
    void edited();
    void left(VehicleField field);
    /// Enter on the last of them.
    void finished();

private:
    ValueField *add(VehicleField field, const QString &label, const QString &placeholder = {}, const QString &note = {});
    void addFields();
    void addCamFields();
    void addChoices();
    void buildLayout();
    QWidget *vehicleGroup();
    QWidget *engineHead();
    void buildEngine(QGridLayout &grid);
    void buildValves(QGridLayout &grid);
    void buildCam(QGridLayout &grid);
    void wire();
    void changedHere();
    void entered(VehicleField field);
    void showWhatApplies(const VehicleTyped &typed);

    VehicleTyped::About m_about = VehicleTyped::About::Both;
    std::map<VehicleField, ValueField *> m_fields;
    std::map<VehicleChoice, ChoiceKeys *> m_choices;
    KeyButton *m_readMeter;
    KeyButton *m_move;
    Heading *m_place;
    EngineView *m_view;
    QWidget *m_vehicleGroup = nullptr;
    QWidget *m_engineGroup = nullptr;
};

} // namespace asleft
