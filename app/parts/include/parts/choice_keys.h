#pragma once

#include <QRadioButton>
#include <QWidget>

class QButtonGroup;

namespace asleft {

/// One key of a row of which one is chosen: bold words over a heavy line when it is.
class ChoiceKey : public QRadioButton {
    Q_OBJECT

public:
    explicit ChoiceKey(const QString &text, QWidget *parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

    /// Gives the keyboard to what comes after the row.
    void moveOn() { focusNextChild(); }

Q_SIGNALS:
    /// Enter, once a press.
    void entered();

protected:
    [[nodiscard]] bool hitButton(const QPoint &position) const override;
    void paintEvent(QPaintEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
};

/// A row of keys of which one is chosen, with its label above. One stop for Tab; arrows move, Enter moves on.
class ChoiceKeys : public QWidget {
    Q_OBJECT

public:
    ChoiceKeys(const QString &label, const QStringList &choices, QWidget *parent = nullptr);

    /// -1 where there is nothing to choose.
    [[nodiscard]] int choice() const;
    /// Says nothing.
    void setChoice(int choice);
    [[nodiscard]] ChoiceKey *key(int choice) const;
    /// Enter on the row then says entered() instead of moving on.
    void setLast(bool last) { m_last = last; }
    void takeFocus();

Q_SIGNALS:
    /// The person chose another one.
    void chosen(int choice);
    void entered();

private:
    void stopAtChosen();

    QButtonGroup *m_group;
    bool m_last = false;
};

} // namespace asleft
