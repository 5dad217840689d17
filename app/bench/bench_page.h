#pragma once

#include "desk.h"

#include <work/job_book.h>

#include <QWidget>

class QHBoxLayout;
class QStackedWidget;
class QTimer;

namespace asleft {

class CheckAgainSheet;
class CrankSheet;
class Heading;
class JointSheet;
class KeyButton;
class LoosenSheet;
class MessageLine;
class MiddleSheet;
class OpenColumn;
class PaperSheet;
class PlanSheet;
class RuledList;
class SheetHead;
class SheetSaving;
class SittingSheet;
class StepsColumn;
class StepSheet;
class TightenSheet;
class TurnSheet;
class ValveSheet;

/// Where a job is worked: the steps on the left, in the middle the sheet of the line in hand, on the right what is still open.
class BenchPage : public QWidget {
    Q_OBJECT

public:
    explicit BenchPage(Desk &desk, QWidget *parent = nullptr);
    ~BenchPage() override;

    /// Opens a job, or says why it cannot be opened. A job that is open already stays as it is; one with a sheet half typed in is asked
    /// about once.
    void openJob(JobId job);
    [[nodiscard]] std::optional<JobId> job() const;
    /// The open job; nullptr without one.
    [[nodiscard]] JobBook *book() const { return m_book.get(); }

    /// Opens the sitting as somebody would who presses Enter through what is asked; for pictures.
    void viewStep(StepId step);
    void turnCrank();
    void typeSheet();
    void takeFocus();

    // What is in the middle, nullptr without a job.
    [[nodiscard]] SittingSheet *sittingSheet() const { return m_sitting; }
    [[nodiscard]] ValveSheet *valveSheet() const { return m_valves; }
    [[nodiscard]] CrankSheet *crankSheet() const { return m_crank; }
    [[nodiscard]] TurnSheet *turnSheet() const { return m_turn; }
    [[nodiscard]] StepSheet *stepSheet() const { return m_step; }
    [[nodiscard]] PlanSheet *planSheet() const { return m_plan; }
    [[nodiscard]] CheckAgainSheet *checkAgainSheet() const { return m_again; }
    [[nodiscard]] PaperSheet *paperSheet() const { return m_paper; }
    [[nodiscard]] TightenSheet *tightenSheet() const { return m_tighten; }
    [[nodiscard]] LoosenSheet *loosenSheet() const { return m_loosen; }
    [[nodiscard]] OpenColumn *openColumn() const { return m_open; }
    [[nodiscard]] StepsColumn *stepsColumn() const { return m_steps; }
    [[nodiscard]] RuledList *steps() const;
    [[nodiscard]] KeyButton *keypadKey() const;
    [[nodiscard]] MessageLine *message() const { return m_message; }
    [[nodiscard]] SheetSaving *saving() const { return m_saving; }
    [[nodiscard]] QWidget *sheet() const;

protected:
    void resizeEvent(QResizeEvent *event) override;
    void showEvent(QShowEvent *event) override;

private:
    void build();
    void wire();
    void shortcuts();
    void buildSheets();
    void wireSheets();
    void takeJob(std::unique_ptr<JobBook> book);
    void refresh();
    void showHeader();
    void showSteps();
    void showHead();
    /// False where the sheet in the middle asks before it is left.
    bool showSheet(MiddleSheet *sheet);
    void showValves();
    [[nodiscard]] MiddleSheet *middleSheet() const;
    void buildSitting();
    void openSitting();
    void openPoint(PointId point);
    /// The line that tightens a joint, else the one that loosens it, with this fastener in hand.
    void openJoint(JointId joint, std::optional<int> fastener);
    void showJoint(const Step &step);
    /// The sheet of the joint the act that would be taken back is about; nullptr where it is about none.
    [[nodiscard]] JointSheet *sheetToTakeBack(bool again);
    void checkAgain(std::optional<PointId> point);
    void printSheet();
    void keepPlan();
    void waitForBleedDown();
    void goOn();
    void takeBack(bool again);
    /// Somebody is at the bench, or looks at a garage that may only be read.
    [[nodiscard]] bool hasBegun() const;
    [[nodiscard]] bool readOnly() const { return m_desk.garage().readOnly(); }

    Desk &m_desk;
    std::unique_ptr<JobBook> m_book;
    std::optional<StepId> m_viewed;
    SheetHead *m_head = nullptr;
    MessageLine *m_message = nullptr;
    StepsColumn *m_steps = nullptr;
    QStackedWidget *m_middle = nullptr;
    Heading *m_nothing = nullptr;
    OpenColumn *m_open = nullptr;
    SheetSaving *m_saving = nullptr;
    QTimer *m_waitOver = nullptr;  ///< rings when tappets have bled down
    QList<MiddleSheet *> m_sheets; ///< of the open job, but for the one that opens a sitting
    SittingSheet *m_sitting = nullptr;
    ValveSheet *m_valves = nullptr;
    CrankSheet *m_crank = nullptr;
    TurnSheet *m_turn = nullptr;
    StepSheet *m_step = nullptr;
    PlanSheet *m_plan = nullptr;
    CheckAgainSheet *m_again = nullptr;
    PaperSheet *m_paper = nullptr;
    TightenSheet *m_tighten = nullptr;
    LoosenSheet *m_loosen = nullptr;
};

} // namespace asleft
