#pragma once

#include <bench/pane.h>
#include <parts/app_context.h>

#include <work/job_book.h>

#include <map>

class QStackedWidget;

namespace asleft {

/// The way from pane to pane of one open job. A pane is made when it is first wanted and stays while the job is open; this knows none of
/// them but through what every pane can do, and the registry that says which one works a kind of step.
class BenchFlow : public QObject {
    Q_OBJECT

public:
    /// The panes stand in the stack, whose current one is in sight.
    BenchFlow(AppContext &context, JobBook &book, QStackedWidget *stack);
    ~BenchFlow() override;

    /// Shows what is wanted, or what is to be seen to before. False where the pane in sight asks before it is left.
    bool show(const PaneWanted &wanted);
    void viewStep(StepId step);
    /// On to what is next.
    void goOn();
    /// Where this is worked, with it in hand.
    void openSubject(const Subject &about);
    /// Asks once more who is at the bench, with the people and tools there are by now.
    void openSession();
    /// Takes the last act back, or, again, what was taken back: in the pane in sight, else where it was done.
    void takeBack(bool again);

    /// Somebody is at the bench, or looks at a garage that may only be read.
    [[nodiscard]] bool hasBegun() const;
    [[nodiscard]] std::optional<StepId> viewed() const { return m_viewed; }
    /// nullptr where something else than a pane is in sight.
    [[nodiscard]] Pane *current() const;
    /// nullptr where it was not wanted yet.
    [[nodiscard]] Pane *pane(PaneMaker maker) const;
    /// Whether every pane lets the job be closed; one that does not is in sight then, and says why.
    [[nodiscard]] bool mayLoseJob();

Q_SIGNALS:
    /// A pane has come into sight.
    void shown();
    /// Said of what was done on the way to what is in sight now.
    void done(const QString &sentence);
    /// The pane in sight stays.
    void stayed();
    void keypadTargetChanged();

private:
    [[nodiscard]] Pane &made(PaneMaker maker);
    /// Whatever there would be to see to before.
    bool bring(Pane &pane);

    AppContext &m_context;
    JobBook &m_book;
    QStackedWidget *m_stack;
    std::map<PaneMaker, Pane *> m_panes;
    std::optional<StepId> m_viewed;
};

} // namespace asleft
