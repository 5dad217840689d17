#include <parts/ink_of.h>

#include <QPainter>
#include <QWidget>

namespace asleft {

const Ink &inkOf(const QWidget &widget)
{
    const bool light = widget.palette().color(QPalette::Window).lightness() > 127;
    return ink(light ? Look::Light : Look::Dark);
}

void paintFocusRing(QPainter &painter, const QRectF &area, const Ink &ink)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.chosen, 3));
    painter.drawRoundedRect(area.adjusted(1.5, 1.5, -1.5, -1.5), 3, 3);
    painter.restore();
}

} // namespace asleft
