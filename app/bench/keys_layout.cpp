#include "keys_layout.h"

#include <QWidget>

namespace asleft {

namespace {

constexpr int gap = 8;

} // namespace

KeysLayout::KeysLayout(QWidget *parent) : QLayout(parent)
{
    setContentsMargins(0, 0, 0, 0);
}

KeysLayout::~KeysLayout()
{
    qDeleteAll(m_items);
}

QLayoutItem *KeysLayout::takeAt(int index)
{
    return index >= 0 && index < m_items.size() ? m_items.takeAt(index) : nullptr;
}

int KeysLayout::arrange(const QRect &area, bool moves) const
{
    QPoint at = area.topLeft();
    int line = 0;
    for (QLayoutItem *item : m_items) {
        if (item->isEmpty())
            continue;
        const QSize size = item->sizeHint();
        const bool fits = at.x() == area.left() || at.x() + size.width() <= area.left() + area.width();
        if (!fits) {
            at = {area.left(), at.y() + line + gap};
            line = 0;
        }
        if (moves)
            item->setGeometry({at, size});
        at.rx() += size.width() + gap;
        line = qMax(line, size.height());
    }
    return at.y() + line - area.top();
}

int KeysLayout::heightForWidth(int width) const
{
    return arrange({0, 0, width, 0}, false);
}

QSize KeysLayout::sizeHint() const
{
    QSize all;
    for (const QLayoutItem *item : m_items)
        if (!item->isEmpty())
            all = {all.width() + item->sizeHint().width() + (all.isEmpty() ? 0 : gap), qMax(all.height(), item->sizeHint().height())};
    return all;
}

QSize KeysLayout::minimumSize() const
{
    QSize widest;
    for (const QLayoutItem *item : m_items)
        if (!item->isEmpty())
            widest = widest.expandedTo(item->minimumSize());
    return widest;
}

void KeysLayout::setGeometry(const QRect &area)
{
    QLayout::setGeometry(area);
    arrange(area, true);
}

} // namespace asleft
