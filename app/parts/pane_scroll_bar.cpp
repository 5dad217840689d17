#include <parts/pane_scroll_bar.h>

#include <parts/ink_of.h>

#include <QPainter>
#include <QStyleOptionSlider>

namespace asleft {

namespace {

constexpr int barWidth = 16;
constexpr qreal thumbWidth = 6;

} // namespace

PaneScrollBar::PaneScrollBar(QWidget *parent) : QScrollBar(Qt::Vertical, parent) {}

QSize PaneScrollBar::sizeHint() const
{
    return {barWidth, QScrollBar::sizeHint().height()};
}

void PaneScrollBar::paintEvent(QPaintEvent *)
{
    const Ink &ink = inkOf(*this);
    QStyleOptionSlider option;
    initStyleOption(&option);
    const QRectF thumb = style()->subControlRect(QStyle::CC_ScrollBar, &option, QStyle::SC_ScrollBarSlider, this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), ink.paper);
    painter.fillRect(QRectF(width() / 2.0 - 1, 0, 2, height()), ink.line);
    painter.setPen(Qt::NoPen);
    painter.setBrush(isSliderDown() ? ink.strongLine : ink.edge);
    painter.drawRoundedRect(QRectF((width() - thumbWidth) / 2.0, thumb.top() + 1, thumbWidth, thumb.height() - 2), 3, 3);
}

} // namespace asleft
