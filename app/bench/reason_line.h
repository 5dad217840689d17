#pragma once

#include <QWidget>

namespace asleft {

class KeyButton;
class LineEdit;

/// One line for why a point is kept as it is. Enter gives what is typed, which may be nothing; Escape leaves it.
class ReasonLine : public QWidget {
    Q_OBJECT

public:
    explicit ReasonLine(QWidget *parent = nullptr);

    /// Empty, with the keyboard in it.
    void begin();
    [[nodiscard]] LineEdit *edit() const { return m_edit; }
    [[nodiscard]] KeyButton *notNowKey() const { return m_notNow; }

Q_SIGNALS:
    void given(const QString &reason);
    void left();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    LineEdit *m_edit;
    KeyButton *m_keep;
    KeyButton *m_notNow;
};

} // namespace asleft
