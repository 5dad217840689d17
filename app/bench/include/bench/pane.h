#pragma once

#include <shop/subject.h>

#include <QScopedValueRollback>
#include <QString>
#include <QWidget>

#include <optional>

class QLineEdit;

namespace asleft {

class AppContext;
class JobBook;
class Pane;

/// Which pane: what makes it for an open job.
using PaneMaker = Pane *(*)(AppContext &context, JobBook &book);

/// makePane<TurnPane> is the pane to turn the crank with, made or not.
template <class P>
Pane *makePane(AppContext &context, JobBook &book)
{
    return new P(context, book);
}

/// Where to go on the Bench.
struct PaneWanted {
    PaneMaker pane = nullptr;
    std::optional<Subject> about = {}; ///< taken in hand there
    std::optional<ActSeq> done = {};   ///< logged just now, and told there
    QString refused = {};              ///< said there, since that is where it is mended
};

/// What stands in the middle of the Bench, one at a time. What it cannot do itself it asks of the Bench by its signals.
class Pane : public QWidget {
    Q_OBJECT

public:
    using QWidget::QWidget;

    /// Works this line of the job from now on; of a pane that works lines.
    virtual void showStep(StepId step);
    /// The line it works where nobody chose one.
    [[nodiscard]] virtual std::optional<StepId> ownStep() const { return {}; }
    /// What is to be seen to before it comes into sight; nothing where it may come.
    [[nodiscard]] virtual std::optional<PaneWanted> asksFirst() { return {}; }
    /// It comes into sight.
    virtual void open() { refresh(); }
    /// Shows the job as it is now.
    virtual void refresh() {}
    /// The job has changed: shows it, or, while an act of this pane's own is under way, leaves that to what comes after the act.
    void jobChanged()
    {
        m_missed = m_acting;
        if (!m_acting)
            refresh();
    }
    /// Gives the keyboard to what is wanted first.
    virtual void takeFocus() = 0;
    virtual void takeUp(const Subject &about);
    virtual void tellDone(ActSeq act);
    virtual void tellRefused(const QString &sentence);
    /// Whether another may take its place: it may ask once.
    [[nodiscard]] virtual bool mayLeave() { return true; }
    /// Whether it may go with the job that is closed: it may ask once.
    [[nodiscard]] virtual bool mayLose() { return true; }
    /// Takes the last act back or, `again`, takes the taking back back. False where this pane does neither.
    virtual bool takeBack(bool again);
    /// What the keypad types into; nullptr where nothing is typed.
    [[nodiscard]] virtual QLineEdit *keypadTarget() const { return nullptr; }

Q_SIGNALS:
    /// Nothing is left to do here: on to what is next. `done` is said there.
    void finished(const QString &done = {});
    void wanted(const asleft::PaneWanted &wanted);
    /// The keyboard has gone to another field.
    void keypadTargetChanged();

protected:
    /// Does an act of this pane's own. What it changes is shown once, when the pane has taken up what came of it.
    template <class Act>
    auto doing(Act act)
    {
        const QScopedValueRollback acting(m_acting, true);
        m_missed = false;
        return act();
    }
    /// Whether the job changed during the last act.
    [[nodiscard]] bool hasMissed() const { return m_missed; }

private:
    bool m_acting = false;
    bool m_missed = false;
};

} // namespace asleft
