#include <drawn/pattern_dot.h>

#include <parts/ink_of.h>

#include <QApplication>
#include <QKeyEvent>
#include <QPainter>

#include <algorithm>
#include <array>

namespace asleft {

namespace {

constexpr std::array ownKeys{Qt::Key_Left, Qt::Key_Right, Qt::Key_Up,     Qt::Key_Down,      Qt::Key_PageUp, Qt::Key_PageDown,
                             Qt::Key_Home, Qt::Key_End,   Qt::Key_Delete, Qt::Key_Backspace, Qt::Key_Insert, Qt::Key_Escape};

} // namespace

PatternDot::PatternDot(QWidget *parent) : QAbstractButton(parent)
{
    setFocusPolicy(Qt::ClickFocus);
    setCursor(Qt::OpenHandCursor);
}

void PatternDot::setLook(const FastenerLook &look)
{
    if (look == m_look)
        return;
    m_look = look;
    update();
}

void PatternDot::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintFastener(painter, rect(), m_look, inkOf(*this));
    if (hasFocus())
        paintFocusRing(painter, rect(), inkOf(*this));
}

void PatternDot::focusInEvent(QFocusEvent *event)
{
    QAbstractButton::focusInEvent(event);
    Q_EMIT focused();
}

void PatternDot::keyPressEvent(QKeyEvent *event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && !event->isAutoRepeat())
        click();
    if (enter)
        return;
    if (std::ranges::find(ownKeys, event->key()) != ownKeys.end())
        Q_EMIT keyed(event->key(), event->modifiers());
    else
        QAbstractButton::keyPressEvent(event);
}

void PatternDot::mousePressEvent(QMouseEvent *event)
{
    m_pressedAt = event->globalPosition().toPoint();
    m_grip = event->position() - QRectF(rect()).center();
    QAbstractButton::mousePressEvent(event);
}

void PatternDot::mouseMoveEvent(QMouseEvent *event)
{
    if (!(event->buttons() & Qt::LeftButton))
        return;
    const QPoint moved = event->globalPosition().toPoint() - m_pressedAt;
    if (!m_dragging && moved.manhattanLength() < QApplication::startDragDistance())
        return;
    m_dragging = true;
    setCursor(Qt::ClosedHandCursor);
    Q_EMIT dragged(mapToParent(event->position().toPoint()) - m_grip);
}

void PatternDot::mouseReleaseEvent(QMouseEvent *event)
{
    if (!m_dragging) {
        QAbstractButton::mouseReleaseEvent(event);
        return;
    }
    m_dragging = false;
    setDown(false);
    setCursor(Qt::OpenHandCursor);
    Q_EMIT dropped();
}

} // namespace asleft
