#pragma once

#include <work/job_book.h>

#include <QWidget>

class QLineEdit;
class QStackedWidget;
class QVBoxLayout;

namespace asleft {

class Heading;
class KeyButton;
class Keypad;
class RuledList;
class RuledRows;

/// The left of the Bench: the steps of the job, or in their place a keypad, and under them the keys that are wanted at every step.
class StepsColumn : public QWidget {
    Q_OBJECT

public:
    explicit StepsColumn(QWidget *parent = nullptr);

    /// Without a job there are no steps.
    void present(const JobBook *book, std::optional<StepId> viewed);
    /// What the keypad types into.
    void setKeypadTarget(QLineEdit *target);

    [[nodiscard]] RuledList *list() const { return m_list; }
    [[nodiscard]] KeyButton *keypadKey() const { return m_padKey; }
    [[nodiscard]] KeyButton *sessionKey() const { return m_session; }
    [[nodiscard]] KeyButton *typeKey() const { return m_type; }
    [[nodiscard]] KeyButton *printKey() const { return m_print; }

Q_SIGNALS:
    void stepChosen(asleft::StepId step);
    void sessionWanted();
    void typeWanted();
    void printWanted();
    /// The keypad has come or gone.
    void turnedOver();

private:
    void buildKeys(QVBoxLayout *column);
    void turnOver(bool keypad);

    const JobBook *m_book = nullptr;
    Heading *m_count = nullptr;
    RuledRows *m_rows = nullptr;
    RuledList *m_list = nullptr;
    Keypad *m_keypad = nullptr;
    QStackedWidget *m_stack = nullptr;
    KeyButton *m_padKey = nullptr;
    KeyButton *m_session = nullptr;
    KeyButton *m_type = nullptr;
    KeyButton *m_print = nullptr;
};

} // namespace asleft
