#include <parts/rule.h>

#include <parts/ink_of.h>

#include <QPainter>

namespace asleft {

Rule::Rule(Weight weight, Qt::Orientation orientation, QWidget *parent) : QWidget(parent), m_weight(weight)
{
    const int thickness = weight == Weight::Heavy ? 3 : 2;
    if (orientation == Qt::Horizontal)
        setFixedHeight(thickness);
    else
        setFixedWidth(thickness);
}

void Rule::paintEvent(QPaintEvent *)
{
    const Ink &ink = inkOf(*this);
    QPainter(this).fillRect(rect(), m_weight == Weight::Heavy ? ink.strongLine : ink.line);
}

} // namespace asleft
