#pragma once

#include <parts/heading.h>
#include <parts/line_edit.h>
#include <parts/message_line.h>

#include <QWidget>

class QLayout;

namespace asleft {

/// A field with its label above it and one line under it: a quiet note, the sentence that refuses what was typed, or a question about it.
class ValueField : public QWidget {
    Q_OBJECT

public:
    explicit ValueField(const QString &label, QWidget *parent = nullptr);
    ~ValueField() override;

    [[nodiscard]] QString text() const;
    void setText(const QString &text);
    void setLabel(const QString &label);
    void setPlaceholder(const QString &text);
    /// What stands under the field while nothing is refused.
    void setNote(const QString &note);

    void refuse(const QString &sentence);
    /// Asks about what was typed, which can be taken all the same.
    void ask(const QString &question);
    [[nodiscard]] bool isAsking() const { return m_asking; }
    /// Takes refusal and question away; the note comes back.
    void accept();
    [[nodiscard]] bool isRefused() const;

    /// Gives the keyboard to what comes after the field.
    void moveOn() { focusNextPrevChild(true); }

    [[nodiscard]] LineEdit *edit() const { return m_edit; }
    [[nodiscard]] MessageLine *message() const { return m_message; }

Q_SIGNALS:
    /// The person changed the text.
    void edited();
    /// Enter, once a press.
    void entered();
    /// The field was left.
    void left();

private:
    Heading *m_label;
    LineEdit *m_edit;
    MessageLine *m_message;
    QString m_note;
    bool m_asking = false;
};

/// A key that stands level with the fields beside it, which have a label above.
QLayout *besideFields(QWidget *key);

/// Enter in each field moves on to the next.
void chainByEnter(const QList<ValueField *> &fields);

} // namespace asleft
