#include <drawn/point_button.h>

#include <parts/ink_of.h>

#include <QEvent>
#include <QPainter>

namespace asleft {

PointButton::PointButton(QWidget *parent) : QAbstractButton(parent)
{
    setCheckable(false);
}

void PointButton::setPoint(const QString &name, const PointLook &look)
{
    const QStringList state{lookWords(look), hereWords(look.here)};
    const QString words = state.join(QStringLiteral(", "));
    // Every point is told of every change: only what differs is said and painted again.
    if (accessibleName() != name)
        setAccessibleName(name);
    if (accessibleDescription() != words)
        setAccessibleDescription(words);
    setFocusPolicy(look.inHand ? Qt::StrongFocus : Qt::ClickFocus);
    if (look == m_look)
        return;
    m_look = look;
    update();
}

bool PointButton::event(QEvent *event)
{
    if (event->type() == QEvent::ToolTip)
        setToolTip(QStringLiteral("%1: %2").arg(accessibleName(), accessibleDescription()));
    return QAbstractButton::event(event);
}

void PointButton::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintPoint(painter, rect(), m_look, inkOf(*this));
    if (hasFocus())
        paintFocusRing(painter, rect(), inkOf(*this));
}

} // namespace asleft
