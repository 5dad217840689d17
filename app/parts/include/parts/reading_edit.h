#pragma once

#include <parts/line_edit.h>

namespace asleft {

/// Where a reading is typed, large. On an empty field the letters of the bar's keys press them (no value begins with a letter), and the
/// arrows go to the neighbouring point: hands stay in one place.
class ReadingEdit : public LineEdit {
    Q_OBJECT

public:
    explicit ReadingEdit(QWidget *parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override { return {188, 72}; }

    /// The letters that are keys, in lower case.
    void setLetters(const QString &letters) { m_letters = letters; }
    /// While a question stands one letter answers it, although something is typed; no letter: none does.
    void setAnswer(QChar letter) { m_answer = letter; }
    /// What the field says under the value: unit and phase, or the value in full.
    void setEcho(const QString &echo);

Q_SIGNALS:
    void letterPressed(QChar letter);
    void answerPressed();
    void arrowPressed(Qt::Key arrow);

protected:
    bool event(QEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void paintEvent(QPaintEvent *event) override;

private:
    void pressOnEmpty(QKeyEvent *event);
    /// A long value is set smaller, so that no digit of it is out of sight.
    void fitFont(const QString &text);

    QString m_letters;
    QChar m_answer;
    QString m_echo;
};

} // namespace asleft
