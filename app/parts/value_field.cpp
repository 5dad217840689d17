#include <parts/value_field.h>

#include <QVBoxLayout>

namespace asleft {

namespace {

constexpr int labelHeight = 19;

} // namespace

ValueField::ValueField(const QString &label, QWidget *parent)
    : QWidget(parent), m_label(new Heading(label, TextSize::Small, Heading::Tone::Quiet)), m_edit(new LineEdit), m_message(new MessageLine)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3);
    column->addWidget(m_label);
    column->addWidget(m_edit);
    column->addWidget(m_message);
    column->addStretch(1);
    m_label->setBuddy(m_edit);
    m_edit->setAccessibleName(label);
    setFocusProxy(m_edit);
    connect(m_edit, &QLineEdit::textEdited, this, &ValueField::edited);
    connect(m_edit, &LineEdit::entered, this, &ValueField::entered);
    connect(m_edit, &LineEdit::left, this, &ValueField::left);
}

ValueField::~ValueField()
{
    // A field with the keyboard in it loses that when its window goes, and would tell a ValueField that is none any more.
    m_edit->disconnect(this);
}

QString ValueField::text() const
{
    return m_edit->text();
}

void ValueField::setText(const QString &text)
{
    if (text == m_edit->text())
        return;
    m_edit->setText(text);
    // What is longer than its field is read from the start; where somebody types, the cursor stays behind the text.
    if (!m_edit->hasFocus())
        m_edit->setCursorPosition(0);
}

void ValueField::setLabel(const QString &label)
{
    m_label->setText(label);
    m_edit->setAccessibleName(label);
}

void ValueField::setPlaceholder(const QString &text)
{
    m_edit->setPlaceholderText(text);
}

void ValueField::setNote(const QString &note)
{
    m_note = note;
    if (!isRefused() && !m_asking)
        accept();
}

void ValueField::refuse(const QString &sentence)
{
    m_asking = false;
    m_edit->setRefused(true);
    m_edit->setAccessibleDescription(sentence);
    m_message->refuse(sentence);
}

void ValueField::ask(const QString &question)
{
    m_asking = true;
    m_edit->setRefused(false);
    m_edit->setAccessibleDescription(question);
    m_message->refuse(question);
}

void ValueField::accept()
{
    m_asking = false;
    m_edit->setRefused(false);
    m_edit->setAccessibleDescription(m_note);
    if (m_note.isEmpty())
        m_message->clear();
    else
        m_message->quiet(m_note);
}

bool ValueField::isRefused() const
{
    return m_edit->isRefused();
}

QLayout *besideFields(QWidget *key)
{
    auto *column = new QVBoxLayout;
    column->setSpacing(0);
    column->addSpacing(labelHeight);
    column->addWidget(key);
    column->addStretch(1);
    return column;
}

void chainByEnter(const QList<ValueField *> &fields)
{
    for (qsizetype i = 0; i + 1 < fields.size(); ++i)
        QObject::connect(fields[i], &ValueField::entered, fields[i + 1], [next = fields[i + 1]] {
            next->edit()->setFocus(Qt::TabFocusReason);
            next->edit()->selectAll();
        });
}

} // namespace asleft
