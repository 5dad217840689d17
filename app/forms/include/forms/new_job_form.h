#pragma once

#include <forms/engine_joints.h>
#include <parts/ruled_rows.h>

#include <shop/things.h>

#include <QWidget>

namespace asleft {

class Heading;
class JointTicks;
class KeyButton;
class MessageLine;
class Notes;
class RuledList;
class ValueField;
class VehiclesModel;

/// A new job: which vehicle, which job sheet, which joints come off, under what title. Shows the lines and cautions it comes with, and
/// the tools its joints want.
class NewJobForm : public QWidget {
    Q_OBJECT

public:
    explicit NewJobForm(VehiclesModel &vehicles, QWidget *parent = nullptr);

    /// A line of the list of vehicles: see idOf().
    void chooseVehicle(std::optional<qint64> vehicle);
    [[nodiscard]] std::optional<qint64> vehicle() const;
    /// The sheet chosen, with the lines of the joints that are ticked.
    [[nodiscard]] const JobSheet &sheet() const { return m_planned; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] ValueField *titleField() const { return m_title; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    [[nodiscard]] RuledList *vehicleList() const { return m_vehicleList; }
    [[nodiscard]] RuledList *sheetList() const { return m_sheetList; }
    [[nodiscard]] const RuledRows &lineRows() const { return m_lineRows; }
    [[nodiscard]] JointTicks *joints() const { return m_ticks; }
    /// Why there are no joints to tick; empty where there are.
    [[nodiscard]] MessageLine *jointsMessage() const { return m_noJoints; }
    [[nodiscard]] Notes *wanted() const { return m_wanted; }
    void focusFirst();
    /// The sheet's own title, no ticks and no refusals: ready for the next one.
    void clear();

Q_SIGNALS:
    void openWanted();

private:
    QWidget *choices();
    QWidget *planned();
    QWidget *minded();
    void wire();
    void showPane();
    void showEngine();
    void showJoints();
    void plan();
    void showCautions();
    [[nodiscard]] const JobSheet &chosenSheet() const;
    [[nodiscard]] std::vector<Joint> tickedJoints() const;

    VehiclesModel &m_vehicles;
    EngineJoints m_joints;
    std::vector<JobSheet> m_panes;
    JobSheet m_planned;
    RuledList *m_vehicleList;
    RuledRows m_sheetRows;
    RuledList *m_sheetList;
    ValueField *m_title;
    KeyButton *m_open;
    MessageLine *m_message;
    JointTicks *m_ticks;
    MessageLine *m_noJoints;
    Heading *m_wantedHead;
    Notes *m_wanted;
    RuledRows m_lineRows;
    RuledList *m_lines;
    RuledRows m_cautionRows;
    RuledList *m_cautions;
    QString m_presetTitle;
};

} // namespace asleft
