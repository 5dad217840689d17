#include <drawn/fastener_button.h>

#include <parts/ink_of.h>

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
    setToolTip(QStringLiteral("%1: %2").arg(name, words));
    if (look == m_look)
        return;
    m_look = look;
    update();
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
