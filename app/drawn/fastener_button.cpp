#include <drawn/fastener_button.h>

#include <parts/ink_of.h>

#include <QEvent>
#include <QPainter>

namespace asleft {

FastenerButton::FastenerButton(QWidget *parent) : QAbstractButton(parent)
{
    setCheckable(false);
}

void FastenerButton::setFastener(const QString &name, const FastenerLook &look)
{
    const QString words = lookWords(look);
    // Every fastener is told of every change: only what differs is said and painted again.
    if (accessibleName() != name)
        setAccessibleName(name);
    if (accessibleDescription() != words)
        setAccessibleDescription(words);
    if (look == m_look)
        return;
    m_look = look;
    update();
}

bool FastenerButton::event(QEvent *event)
{
    // Made when it is wanted: two hundred of them take longer than all the rest of a tick.
    if (event->type() == QEvent::ToolTip && m_tip)
        setToolTip(m_tip());
    return QAbstractButton::event(event);
}

void FastenerButton::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintFastener(painter, rect(), m_look, inkOf(*this));
    if (hasFocus())
        paintFocusRing(painter, rect(), inkOf(*this));
}

} // namespace asleft
