#pragma once

#include <bench/pane.h>
#include <parts/app_context.h>

#include <work/job_book.h>

#include <QWidget>

class QStackedWidget;
class QTimer;

namespace asleft {

class BenchFlow;
class BenchSheetSaving;
class Heading;
class KeyButton;
class MessageLine;
class OpenColumn;
class PageHead;
class RuledList;
class StepsColumn;

/// Where a job is worked: the steps on the left, in the middle the pane of the line in hand, on the right what is still open.
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

    /// A pane of the open job; nullptr where it was not wanted yet.
    template <class P>
    [[nodiscard]] P *pane() const
    {
        return static_cast<P *>(paneOf(makePane<P>));
    }
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
    void takeJob(std::unique_ptr<JobBook> book);
    void refresh();
    void showHeader();
    void showSteps();
    /// Another pane has come into sight.
    void paneShown();
    void aimKeypad();
    void printSheet();
    void waitForBleedDown();
    [[nodiscard]] Pane *paneOf(PaneMaker maker) const;

    AppContext &m_context;
    std::unique_ptr<JobBook> m_book;
    PageHead *m_head = nullptr;
    MessageLine *m_message = nullptr;
    StepsColumn *m_steps = nullptr;
    QStackedWidget *m_middle = nullptr;
    Heading *m_nothing = nullptr;
    OpenColumn *m_open = nullptr;
    BenchSheetSaving *m_saving = nullptr;
    QTimer *m_waitOver = nullptr;      ///< rings when tappets have bled down
    std::unique_ptr<BenchFlow> m_flow; ///< of the open job
};

} // namespace asleft
