#pragma once

#include <parts/app_context.h>

#include <work/job_book.h>

#include <QWidget>

class QHBoxLayout;
class QStackedWidget;
class QTimer;

namespace asleft {

class CheckAgainPane;
class CrankPane;
class Heading;
class JointPane;
class KeyButton;
class LoosenPane;
class MessageLine;
class Pane;
class OpenColumn;
class BenchSheetPane;
class PlanPane;
class RuledList;
class PageHead;
class BenchSheetSaving;
class SessionPane;
class StepsColumn;
class StepPane;
class TightenPane;
class TurnPane;
class ValvePane;

/// Where a job is worked: the steps on the left, in the middle the sheet of the line in hand, on the right what is still open.
class BenchPage : public QWidget {
    Q_OBJECT

public:
    explicit BenchPage(AppContext &context, QWidget *parent = nullptr);
    ~BenchPage() override;

    /// Opens a job, or says why it cannot be opened. A job that is open already stays as it is; one with a sheet half typed in is asked
    /// about once.
    void openJob(JobId job);
    [[nodiscard]] std::optional<JobId> job() const;
    /// The open job; nullptr without one.
    [[nodiscard]] JobBook *book() const { return m_book.get(); }

    /// Opens the session as somebody would who presses Enter through what is asked; for pictures.
    void viewStep(StepId step);
    void turnCrank();
    void typeSheet();
    void takeFocus();

    // What is in the middle, nullptr without a job.
    [[nodiscard]] SessionPane *sessionPane() const { return m_session; }
    [[nodiscard]] ValvePane *valvePane() const { return m_valves; }
    [[nodiscard]] CrankPane *crankPane() const { return m_crank; }
    [[nodiscard]] TurnPane *turnPane() const { return m_turn; }
    [[nodiscard]] StepPane *stepPane() const { return m_step; }
    [[nodiscard]] PlanPane *planPane() const { return m_plan; }
    [[nodiscard]] CheckAgainPane *checkAgainPane() const { return m_again; }
    [[nodiscard]] BenchSheetPane *benchSheetPane() const { return m_paper; }
    [[nodiscard]] TightenPane *tightenPane() const { return m_tighten; }
    [[nodiscard]] LoosenPane *loosenPane() const { return m_loosen; }
    [[nodiscard]] OpenColumn *openColumn() const { return m_open; }
    [[nodiscard]] StepsColumn *stepsColumn() const { return m_steps; }
    [[nodiscard]] RuledList *steps() const;
    [[nodiscard]] KeyButton *keypadKey() const;
    [[nodiscard]] MessageLine *message() const { return m_message; }
    [[nodiscard]] BenchSheetSaving *saving() const { return m_saving; }
    [[nodiscard]] QWidget *sheet() const;

protected:
    void resizeEvent(QResizeEvent *event) override;
    void showEvent(QShowEvent *event) override;

private:
    void build();
    void wire();
    void shortcuts();
    void buildPanes();
    void wirePanes();
    void takeJob(std::unique_ptr<JobBook> book);
    void refresh();
    void showHeader();
    void showSteps();
    void showHead();
    /// False where the sheet in the middle asks before it is left.
    bool showPane(Pane *sheet);
    void showValves();
    [[nodiscard]] Pane *currentPane() const;
    void buildSession();
    void openSession();
    void openPoint(PointId point);
    /// The line that tightens a joint, else the one that loosens it, with this fastener in hand.
    void openJoint(JointId joint, std::optional<int> fastener);
    void showJoint(const Step &step);
    /// The sheet of the joint the act that would be taken back is about; nullptr where it is about none.
    [[nodiscard]] JointPane *paneToTakeBack(bool again);
    void checkAgain(std::optional<PointId> point);
    void printSheet();
    void keepPlan();
    void waitForBleedDown();
    void goOn();
    void takeBack(bool again);
    /// Somebody is at the bench, or looks at a garage that may only be read.
    [[nodiscard]] bool hasBegun() const;
    [[nodiscard]] bool readOnly() const { return m_context.garage().readOnly(); }

    AppContext &m_context;
    std::unique_ptr<JobBook> m_book;
    std::optional<StepId> m_viewed;
    PageHead *m_head = nullptr;
    MessageLine *m_message = nullptr;
    StepsColumn *m_steps = nullptr;
    QStackedWidget *m_middle = nullptr;
    Heading *m_nothing = nullptr;
    OpenColumn *m_open = nullptr;
    BenchSheetSaving *m_saving = nullptr;
    QTimer *m_waitOver = nullptr; ///< rings when tappets have bled down
    QList<Pane *> m_panes;        ///< of the open job, but for the one that opens a session
    SessionPane *m_session = nullptr;
    ValvePane *m_valves = nullptr;
    CrankPane *m_crank = nullptr;
    TurnPane *m_turn = nullptr;
    StepPane *m_step = nullptr;
    PlanPane *m_plan = nullptr;
    CheckAgainPane *m_again = nullptr;
    BenchSheetPane *m_paper = nullptr;
    TightenPane *m_tighten = nullptr;
    LoosenPane *m_loosen = nullptr;
};

} // namespace asleft
