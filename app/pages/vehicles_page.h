#pragma once

#include "desk.h"
#include "pages/vehicle_reader.h"

#include <QWidget>

namespace asleft {

class KeyButton;
class MessageLine;
class RuledList;
class SheetHead;
class VehicleForm;
class VehiclesModel;

/// The vehicles of the garage, each with its engine; a new one is typed on the same sheet.
class VehiclesPage : public QWidget {
    Q_OBJECT

public:
    VehiclesPage(Desk &desk, VehiclesModel &vehicles, QWidget *parent = nullptr);

    /// An empty sheet for a new vehicle, or the one begun earlier.
    void beginNew();
    void choose(qint64 vehicle);
    [[nodiscard]] std::optional<qint64> current() const { return m_current; }
    [[nodiscard]] VehicleForm *form() const { return m_form; }
    [[nodiscard]] MessageLine *message() const { return m_message; }

Q_SIGNALS:
    void specsWanted(asleft::EngineId engine);
    void newJobWanted(asleft::VehicleId vehicle);

private:
    void lay();
    QWidget *listColumn();
    QWidget *sheetColumn();
    void wire();
    void showSheet();
    void keepDraft();
    void save();
    void saveNew(const VehicleText &text);
    void saveChanged(const VehicleRow &row, const VehicleText &text);
    void readMeter();
    void refuse(const Error &error);
    void vehiclesChanged();
    [[nodiscard]] const VehicleRow *row() const;

    Desk &m_desk;
    VehiclesModel &m_vehicles;
    SheetHead *m_head;
    RuledList *m_list;
    KeyButton *m_new;
    VehicleForm *m_form;
    MessageLine *m_message;
    KeyButton *m_save;
    KeyButton *m_readMeter;
    KeyButton *m_specs;
    KeyButton *m_job;
    std::optional<qint64> m_current;                        ///< empty: the new one
    std::map<std::optional<qint64>, VehicleTyped> m_drafts; ///< what was typed and not saved; it waits until one comes back to it
};

} // namespace asleft
