#include <parts/reading_edit.h>

#include <parts/ink_of.h>

#include <QKeyEvent>
#include <QPainter>

namespace asleft {

ReadingEdit::ReadingEdit(QWidget *parent) : LineEdit(parent)
{
    setFont(textFont(TextSize::Value));
    setAlignment(Qt::AlignHCenter);
    connect(this, &QLineEdit::textChanged, this, &ReadingEdit::fitFont);
    setTextMargins(8, 0, 8, 20);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void ReadingEdit::fitFont(const QString &text)
{
    const int room = sizeHint().width() - 36;
    QFont font = textFont(TextSize::Value);
    for (const TextSize smaller : {TextSize::Now, TextSize::Body})
        if (QFontMetrics(font).horizontalAdvance(text) > room)
            font = textFont(smaller);
    if (font != this->font())
        setFont(font);
}

void ReadingEdit::setEcho(const QString &echo)
{
    m_echo = echo;
    setAccessibleDescription(echo);
    update();
}

bool ReadingEdit::event(QEvent *event)
{
    // With nothing typed, undo means the last act and not the last letter: the field lets go of the key.
    const bool letsGo = event->type() == QEvent::ShortcutOverride && text().isEmpty();
    if (letsGo &&
        (static_cast<QKeyEvent *>(event)->matches(QKeySequence::Undo) || static_cast<QKeyEvent *>(event)->matches(QKeySequence::Redo))) {
        event->ignore();
        return false;
    }
    return LineEdit::event(event);
}

void ReadingEdit::keyPressEvent(QKeyEvent *event)
{
    const bool bare = (event->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier)) == Qt::NoModifier;
    const QChar letter = event->text().isEmpty() ? QChar() : event->text().front().toLower();
    if (bare && !m_answer.isNull() && letter == m_answer) {
        if (!event->isAutoRepeat())
            Q_EMIT answerPressed();
        return;
    }
    if (bare && text().isEmpty())
        pressOnEmpty(event);
    else
        LineEdit::keyPressEvent(event);
}

void ReadingEdit::pressOnEmpty(QKeyEvent *event)
{
    const auto key = static_cast<Qt::Key>(event->key());
    if (key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down) {
        Q_EMIT arrowPressed(key);
        return;
    }
    const QChar letter = event->text().isEmpty() ? QChar() : event->text().front().toLower();
    if (!letter.isNull() && m_letters.contains(letter)) {
        // A key held down must not log a row of acts.
        if (!event->isAutoRepeat())
            Q_EMIT letterPressed(letter);
        return;
    }
    LineEdit::keyPressEvent(event);
}

void ReadingEdit::paintEvent(QPaintEvent *event)
{
    LineEdit::paintEvent(event);
    QPainter painter(this);
    painter.setFont(textFont(TextSize::Small));
    painter.setPen(inkOf(*this).quietText);
    const QRect line = rect().adjusted(8, 0, -8, -6);
    painter.drawText(line, Qt::AlignHCenter | Qt::AlignBottom, painter.fontMetrics().elidedText(m_echo, Qt::ElideRight, line.width()));
}

} // namespace asleft
