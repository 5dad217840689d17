#include <parts/line_edit.h>

#include <parts/ink_of.h>

#include <QKeyEvent>
#include <QPainter>

namespace asleft {

LineEdit::LineEdit(QWidget *parent) : QLineEdit(parent)
{
    setFrame(false);
    setMaxLength(longestPaste);
    setFont(textFont(TextSize::Body));
    setTextMargins(10, 0, 10, 0);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void LineEdit::setRefused(bool refused)
{
    if (refused == m_refused)
        return;
    m_refused = refused;
    update();
}

QSize LineEdit::sizeHint() const
{
    return {160, qMax(touchHeight, fontMetrics().height() + 16)};
}

QSize LineEdit::minimumSizeHint() const
{
    return {64, sizeHint().height()};
}

void LineEdit::paintEvent(QPaintEvent *event)
{
    QLineEdit::paintEvent(event);
    const Ink &ink = inkOf(*this);
    QPainter painter(this);
    painter.setPen(QPen(ink.edge, 1));
    painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
    if (m_refused)
        painter.fillRect(QRectF(0, 0, 5, height()), ink.wedge);
    if (hasFocus())
        paintFocusRing(painter, rect(), ink);
}

void LineEdit::keyPressEvent(QKeyEvent *event)
{
    if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter) {
        QLineEdit::keyPressEvent(event);
        return;
    }
    if (!event->isAutoRepeat())
        Q_EMIT entered();
}

void LineEdit::focusOutEvent(QFocusEvent *event)
{
    QLineEdit::focusOutEvent(event);
    // Another window or a menu on top is not leaving: the person comes back to this very field.
    if (event->reason() != Qt::ActiveWindowFocusReason && event->reason() != Qt::PopupFocusReason)
        Q_EMIT left();
}

} // namespace asleft
