#pragma once

#include <forms/vehicle_reader.h>
#include <parts/app_context.h>

#include <QWidget>

class QStackedLayout;

namespace asleft {

class EngineGap;
class KeyButton;
class MessageLine;
class MovePane;
class RuledList;
class ScrollPane;
class PageHead;
class VehicleForm;
class VehiclesModel;

/// The vehicles of the garage, each with its engine, and the engines on the stand; a new one is typed on the same sheet, and engines are
/// moved from there.
class VehiclesPage : public QWidget {
    Q_OBJECT

public:
    VehiclesPage(AppContext &context, VehiclesModel &vehicles, QWidget *parent = nullptr);

    /// An empty sheet for a new vehicle, or the one begun earlier.
    void beginNew();
    /// The same for an engine that goes onto the stand.
    void beginNewEngine();
    /// A line of the list: see idOf().
    void choose(qint64 row);
    /// The sheet on which the engine that is shown is moved.
    void beginMove();
    [[nodiscard]] std::optional<qint64> current() const { return m_current; }
    [[nodiscard]] VehicleForm *form() const { return m_form; }
    [[nodiscard]] EngineGap *gap() const { return m_gap; }
    [[nodiscard]] MovePane *movePane() const { return m_movePane; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    [[nodiscard]] RuledList *list() const { return m_list; }

Q_SIGNALS:
    void specsWanted(asleft::EngineId engine);
    void newJobWanted(asleft::EngineId engine);

private:
    /// What was typed and not saved, and the engine it was typed of.
    struct Draft {
        VehicleTyped typed;
        std::optional<EngineId> engine;
    };

    void buildLayout();
    QWidget *listColumn();
    QWidget *sheetColumn();
    void wire();
    void wireEngine();
    void showPane();
    void showHead();
    void showKeys();
    void keepDraft();
    void forgetDraft();
    bool mayMove();
    void describeEngine();
    void putIn(EngineId engine);
    void engineMoved(EngineId engine, const QString &sentence);
    void save();
    void saveNew(const VehicleText &text);
    void saveEngine(std::optional<VehicleId> into, const VehicleText &text);
    void saveChanged(const VehicleRow &row, const VehicleText &text);
    void readMeter();
    void refuse(const Error &error);
    void vehiclesChanged();
    void followEngine();
    [[nodiscard]] const VehicleRow *row() const;
    [[nodiscard]] bool describing() const;

    AppContext &m_context;
    VehiclesModel &m_vehicles;
    PageHead *m_head;
    RuledList *m_list;
    KeyButton *m_new;
    KeyButton *m_newEngine;
    ScrollPane *m_scroll;
    VehicleForm *m_form;
    EngineGap *m_gap;
    MovePane *m_movePane;
    QStackedLayout *m_stack;
    MessageLine *m_message;
    KeyButton *m_save;
    KeyButton *m_asStored;
    KeyButton *m_specs;
    KeyButton *m_job;
    std::optional<qint64> m_current;                 ///< empty: the new vehicle
    std::optional<EngineId> m_shownEngine;           ///< whose fields stand in the form
    std::map<std::optional<qint64>, Draft> m_drafts; ///< they wait until one comes back to them
};

} // namespace asleft
