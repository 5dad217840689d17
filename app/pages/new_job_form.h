#pragma once

#include "parts/ruled_rows.h"

#include <shop/things.h>

#include <QWidget>

namespace asleft {

class ChoiceKeys;
class KeyButton;
class MessageLine;
class RuledList;
class ValueField;
class VehiclesModel;

/// A new job: which vehicle, which job sheet, under what title. Shows the lines and cautions that come with the sheet.
class NewJobForm : public QWidget {
    Q_OBJECT

public:
    explicit NewJobForm(VehiclesModel &vehicles, QWidget *parent = nullptr);

    /// A line of the list of vehicles: see idOf().
    void chooseVehicle(std::optional<qint64> vehicle);
    [[nodiscard]] std::optional<qint64> vehicle() const;
    [[nodiscard]] const JobSheet &sheet() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] ValueField *titleField() const { return m_title; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    [[nodiscard]] RuledList *vehicleList() const { return m_vehicleList; }
    void focusFirst();
    /// The sheet's own title and no refusals: ready for the next one.
    void clear();

Q_SIGNALS:
    void openWanted();

private:
    QWidget *choices();
    QWidget *lines();
    QWidget *cautions();
    void showSheet();

    VehiclesModel &m_vehicles;
    std::vector<JobSheet> m_sheets;
    RuledList *m_vehicleList;
    ChoiceKeys *m_sheet;
    ValueField *m_title;
    KeyButton *m_open;
    MessageLine *m_message;
    RuledRows m_lineRows;
    RuledList *m_lines;
    RuledRows m_cautionRows;
    RuledList *m_cautions;
    QString m_presetTitle;
};

} // namespace asleft
