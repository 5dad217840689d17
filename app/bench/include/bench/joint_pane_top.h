#pragma once

#include <shop/state.h>

#include <QWidget>

namespace asleft {

class Heading;
class KeyButton;

/// Above a drawn joint: its name, what is asked of it and where that is printed, what takes hold of it, the order, and what to mind.
class JointPaneTop : public QWidget {
    Q_OBJECT

public:
    explicit JointPaneTop(QWidget *parent = nullptr);

    void present(const JobState &state, StepId step, const Joint &joint, const QString &order);
    void showUndo(const JobState &state, std::string_view station);
    /// In a low window what is drawn below is not said here too, and what to mind takes one line.
    void setBrief(bool brief);
    [[nodiscard]] KeyButton *undoKey() const { return m_undo; }

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    /// An order of two hundred is cut in its middle: it is drawn as numbers and a path below.
    void showOrder();
    void showCautions();
    [[nodiscard]] int room() const;

    Heading *m_name;
    Heading *m_spec;
    Heading *m_order;
    Heading *m_cautions;
    KeyButton *m_undo;
    QString m_orderWords;
    QString m_cautionWords;
    bool m_brief = false;
};

} // namespace asleft
