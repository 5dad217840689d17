#include <parts/ruled_list.h>

#include "ruled_delegate.h"
#include <parts/ink_of.h>
#include <parts/pane_scroll_bar.h>

#include <QKeyEvent>
#include <QPainter>

namespace asleft {

namespace {

constexpr int listInset = 8;
constexpr int emptyHeight = 64;

} // namespace

RuledList::RuledList(const QString &name, RuledRows *rows, QWidget *parent) : QListView(parent)
{
    setModel(rows);
    setItemDelegate(new RuledDelegate(this));
    setAccessibleName(name);
    setFrameShape(QFrame::NoFrame);
    setEditTriggers(NoEditTriggers);
    setSelectionMode(NoSelection);
    setResizeMode(Adjust); // what does not fit on a line takes a second one
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setMinimumWidth(160);
    viewport()->setBackgroundRole(QPalette::Window);
    setVerticalScrollBar(new PaneScrollBar);
    for (const auto changed : {&QAbstractItemModel::rowsInserted, &QAbstractItemModel::rowsRemoved})
        connect(rows, changed, this, &RuledList::fit);
    connect(this, &QListView::clicked, this, &RuledList::choose);
}

void RuledList::setPaintIcon(PaintIcon paint)
{
    m_paintIcon = std::move(paint);
    viewport()->update();
}

void RuledList::setEmptyWords(const QString &words)
{
    m_emptyWords = words;
    viewport()->update();
}

void RuledList::setFitted(bool fitted)
{
    m_fitted = fitted;
    fit();
}

void RuledList::setWhole(bool whole)
{
    m_whole = whole;
    setFitted(whole);
}

void RuledList::setWholeNotes(bool whole)
{
    m_wholeNotes = whole;
    scheduleDelayedItemsLayout();
    fit();
}

void RuledList::fit()
{
    if (!m_fitted)
        return;
    int height = model()->rowCount() == 0 ? emptyHeight : 0;
    for (int row = 0; row < model()->rowCount(); ++row)
        height += sizeHintForIndex(model()->index(row, 0)).height();
    setMaximumHeight(height);
    setMinimumHeight(m_whole ? height : qMin(height, 3 * touchHeight));
}

void RuledList::resizeEvent(QResizeEvent *event)
{
    QListView::resizeEvent(event);
    // A list that lost height to its neighbour keeps the chosen line in sight.
    if (event->size().height() < event->oldSize().height() && currentIndex().isValid())
        scrollTo(currentIndex());
    if (event->size().width() == event->oldSize().width())
        return;
    // How tall a line is hangs on its width, which the view does not know of: a list that flows down minds its height alone.
    scheduleDelayedItemsLayout();
    fit();
}

void RuledList::setCurrentId(std::optional<qint64> id)
{
    m_current = id;
    const QModelIndex index = id ? static_cast<RuledRows *>(model())->indexOf(*id) : QModelIndex();
    setCurrentIndex(index);
    if (index.isValid())
        scrollTo(index);
    viewport()->update();
}

void RuledList::choose(const QModelIndex &index)
{
    if (!index.isValid())
        return;
    const qint64 id = index.data(RuledRows::IdRole).toLongLong();
    m_current = id;
    viewport()->update();
    Q_EMIT chosen(id);
}

void RuledList::paintEvent(QPaintEvent *event)
{
    QListView::paintEvent(event);
    if (m_emptyWords.isEmpty() || model()->rowCount() > 0)
        return;
    QPainter painter(viewport());
    painter.setFont(textFont(TextSize::Body));
    painter.setPen(inkOf(*this).quietText);
    painter.drawText(viewport()->rect().adjusted(listInset, 14, -listInset, 0), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                     m_emptyWords);
}

void RuledList::focusInEvent(QFocusEvent *event)
{
    // The keyboard stands on a line from the start, or nobody would see that it is here. A click says itself which line; to scroll to the
    // first one under it would choose another.
    const bool clicked = event->reason() == Qt::MouseFocusReason;
    if (!clicked && !currentIndex().isValid() && model()->rowCount() > 0)
        setCurrentIndex(model()->index(0, 0));
    QListView::focusInEvent(event);
}

void RuledList::keyPressEvent(QKeyEvent *event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (!enter && event->key() != Qt::Key_Space) {
        const QModelIndex before = currentIndex();
        QListView::keyPressEvent(event);
        if (currentIndex() != before)
            choose(currentIndex());
        return;
    }
    if (event->isAutoRepeat() || !currentIndex().isValid())
        return;
    const qint64 id = currentIndex().data(RuledRows::IdRole).toLongLong();
    if (m_current != id)
        choose(currentIndex());
    if (enter)
        Q_EMIT opened(id);
}

void RuledList::mouseDoubleClickEvent(QMouseEvent *event)
{
    QListView::mouseDoubleClickEvent(event);
    const QModelIndex index = indexAt(event->pos());
    if (index.isValid())
        Q_EMIT opened(index.data(RuledRows::IdRole).toLongLong());
}

} // namespace asleft
