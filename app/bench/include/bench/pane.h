#pragma once

#include <QScopedValueRollback>
#include <QWidget>

namespace asleft {

/// What stands in the middle of the Bench, one at a time.
class Pane : public QWidget {
    Q_OBJECT

public:
    using QWidget::QWidget;

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
