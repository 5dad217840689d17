#pragma once

#include "desk.h"

#include <work/job_book.h>

#include <QWidget>

class QHBoxLayout;
class QStackedWidget;

namespace asleft {

class CrankSheet;
class Heading;
class KeyButton;
class Keypad;
class OpenColumn;
class PlanSheet;
class RuledList;
class RuledRows;
class SheetHead;
class SittingSheet;
class StepSheet;
class TurnSheet;
class ValveSheet;

/// Where a job is worked: the steps on the left, in the middle the sheet of the line in hand, on the right what is still open.
class BenchPage : public QWidget {
    Q_OBJECT

public:
    explicit BenchPage(Desk &desk, QWidget *parent = nullptr);
    ~BenchPage() override;

    /// Opens a job, or says why it cannot be opened. A job that is open already stays as it is.
    void openJob(JobId job);
    [[nodiscard]] std::optional<JobId> job() const;
    /// The open job; nullptr without one.
    [[nodiscard]] JobBook *book() const { return m_book.get(); }

    /// Opens the sitting as somebody would who presses Enter through what is asked; for pictures.
    void viewStep(StepId step);
    void turnCrank();
    void takeFocus();

    // What is in the middle, nullptr without a job.
    [[nodiscard]] SittingSheet *sittingSheet() const { return m_sitting; }
    [[nodiscard]] ValveSheet *valveSheet() const { return m_valves; }
    [[nodiscard]] CrankSheet *crankSheet() const { return m_crank; }
    [[nodiscard]] TurnSheet *turnSheet() const { return m_turn; }
    [[nodiscard]] StepSheet *stepSheet() const { return m_step; }
    [[nodiscard]] PlanSheet *planSheet() const { return m_plan; }
    [[nodiscard]] OpenColumn *openColumn() const { return m_open; }
    [[nodiscard]] RuledList *steps() const { return m_steps; }
    [[nodiscard]] KeyButton *keypadKey() const { return m_padKey; }
    [[nodiscard]] QWidget *sheet() const;

protected:
    void showEvent(QShowEvent *event) override;

private:
    void buildSteps(QHBoxLayout *columns);
    void buildSheets();
    void refresh();
    void showHeader();
    void showSteps();
    void showHead();
    void showSheet(QWidget *sheet);
    void buildSitting();
    void openSitting();
    void keepPlan();
    void goOn();
    void takeBack(bool again);

    Desk &m_desk;
    std::unique_ptr<JobBook> m_book;
    std::optional<StepId> m_viewed;
    SheetHead *m_head = nullptr;
    Heading *m_count = nullptr;
    RuledRows *m_stepRows = nullptr;
    RuledList *m_steps = nullptr;
    QStackedWidget *m_left = nullptr;
    Keypad *m_keypad = nullptr;
    KeyButton *m_padKey = nullptr;
    KeyButton *m_sittingKey = nullptr;
    QStackedWidget *m_middle = nullptr;
    Heading *m_nothing = nullptr;
    OpenColumn *m_open = nullptr;
    SittingSheet *m_sitting = nullptr;
    ValveSheet *m_valves = nullptr;
    CrankSheet *m_crank = nullptr;
    TurnSheet *m_turn = nullptr;
    StepSheet *m_step = nullptr;
    PlanSheet *m_plan = nullptr;
};

} // namespace asleft
