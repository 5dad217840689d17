#pragma once

#include <QLineEdit>
#include <QPointer>
#include <QWidget>

namespace asleft {

/// Digits to be touched with oily hands, in place of the steps. Types into the field it is given, as the keyboard would.
class Keypad : public QWidget {
    Q_OBJECT

public:
    explicit Keypad(QWidget *parent = nullptr);

    void setTarget(QLineEdit *target) { m_target = target; }

private:
    void press(int key, const QString &text);

    QPointer<QLineEdit> m_target;
};

} // namespace asleft
