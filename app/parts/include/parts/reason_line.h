#pragma once

#include <QWidget>

namespace asleft {

class Heading;
class KeyButton;
class LineEdit;

/// One line for a reason or a note. Enter gives what is typed, which may be nothing; Escape leaves it.
class ReasonLine : public QWidget {
    Q_OBJECT

public:
    explicit ReasonLine(QWidget *parent = nullptr);

    /// Empty, with the keyboard in it. `asked` stands above it, `take` on its key.
    void begin(const QString &asked, const QString &take);
    [[nodiscard]] LineEdit *edit() const { return m_edit; }
    [[nodiscard]] KeyButton *takeKey() const { return m_take; }
    [[nodiscard]] KeyButton *notNowKey() const { return m_notNow; }

Q_SIGNALS:
    void given(const QString &reason);
    void left();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    Heading *m_asked;
    LineEdit *m_edit;
    KeyButton *m_take;
    KeyButton *m_notNow;
};

} // namespace asleft
