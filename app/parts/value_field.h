#pragma once

#include "parts/heading.h"
#include "parts/line_edit.h"
#include "parts/message_line.h"

#include <QWidget>

namespace asleft {

/// A field with its label above it and one line under it: a quiet note, or the sentence that refuses what was typed.
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
    /// Takes the refusal away; the note comes back.
    void accept();
    [[nodiscard]] bool isRefused() const;

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
};

/// Enter in each field moves on to the next.
void chainByEnter(const QList<ValueField *> &fields);

} // namespace asleft
