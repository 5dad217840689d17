#include "ruled_delegate.h"

#include <parts/ink_of.h>
#include <parts/ruled_list.h>

#include <QPainter>

namespace asleft {

namespace {

constexpr int inset = 8; ///< the line in hand stands out of the rules by this much
constexpr int ruleHeight = 2;
constexpr int iconSide = 30;
constexpr int iconRoom = 42;
constexpr int plainHeight = 50;
constexpr int titleTop = 8;
constexpr int titleHeight = 22;
constexpr int noteTop = 31;
constexpr int noteBelow = 9;
constexpr int beforeRight = 12;

} // namespace

RuledDelegate::RuledDelegate(RuledList *list) : QStyledItemDelegate(list), m_list(list) {}

QRect RuledDelegate::wordsIn(const QRect &row) const
{
    return row.adjusted(inset + (m_list->paintIcon() ? iconRoom : 0), 0, -inset, -ruleHeight);
}

int RuledDelegate::noteHeight(const QString &note, int width) const
{
    const QFontMetrics metrics(textFont(TextSize::Small));
    if (!m_list->wholeNotes())
        return metrics.height();
    return metrics.boundingRect(QRect(0, 0, width, 10'000), Qt::TextWordWrap, note).height();
}

int RuledDelegate::rightWidth(const QModelIndex &index, int width)
{
    const QString right = index.data(RuledRows::RightRole).toString();
    return right.isEmpty() ? 0 : qMin(QFontMetrics(textFont(TextSize::Small)).horizontalAdvance(right) + beforeRight, width / 2);
}

int RuledDelegate::secondLine(const QModelIndex &index, int width)
{
    // Measured in bold, so that nothing moves when a line is taken in hand.
    const int title = QFontMetrics(textFont(TextSize::BodyStrong)).horizontalAdvance(index.data().toString());
    return title > width - rightWidth(index, width) ? titleHeight - 2 : 0;
}

QSize RuledDelegate::sizeHint(const QStyleOptionViewItem &, const QModelIndex &index) const
{
    const QString note = index.data(RuledRows::NoteRole).toString();
    const int width = wordsIn(QRect(0, 0, m_list->viewport()->width(), plainHeight)).width();
    const int more = secondLine(index, width);
    if (note.isEmpty())
        return {120, plainHeight + more};
    return {120, noteTop + more + noteHeight(note, width) + noteBelow + ruleHeight};
}

void RuledDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const Ink &ink = inkOf(*m_list);
    const qint64 id = index.data(RuledRows::IdRole).toLongLong();
    const Line line{wordsIn(option.rect), m_list->currentId() == id, ink};
    if (line.inHand)
        painter->fillRect(option.rect.adjusted(0, 0, 0, -ruleHeight), ink.casting);
    painter->fillRect(QRect(option.rect.left() + inset, option.rect.bottom() - 1, option.rect.width() - 2 * inset, ruleHeight), ink.line);
    if (m_list->paintIcon())
        m_list->paintIcon()(*painter, QRectF(option.rect.left() + inset, line.words.center().y() - iconSide / 2.0, iconSide, iconSide), id,
                            ink);
    paintTitle(*painter, line, index);
    paintNote(*painter, line, index);
    if (m_list->hasFocus() && m_list->currentIndex() == index)
        paintFocusRing(*painter, option.rect.adjusted(0, 0, 0, -ruleHeight), ink);
}

void RuledDelegate::paintTitle(QPainter &painter, const Line &line, const QModelIndex &index) const
{
    const bool alone = index.data(RuledRows::NoteRole).toString().isEmpty();
    const int more = secondLine(index, line.words.width());
    QRect title = alone ? line.words : QRect(line.words.left(), line.words.top() + titleTop, line.words.width(), titleHeight + more);
    if (const int width = rightWidth(index, title.width()); width > 0) {
        const QFontMetrics metrics(textFont(TextSize::Small));
        const QString right = metrics.elidedText(index.data(RuledRows::RightRole).toString(), Qt::ElideRight, width);
        painter.setFont(textFont(TextSize::Small));
        painter.setPen(line.ink.quietText);
        painter.drawText(title, Qt::AlignRight | Qt::AlignVCenter, right);
        title.setRight(title.right() - width);
    }
    const QFont font = textFont(line.inHand ? TextSize::BodyStrong : TextSize::Body);
    painter.setFont(font);
    painter.setPen(index.data(RuledRows::QuietRole).toBool() && !line.inHand ? line.ink.quietText : line.ink.text);
    // Two lines at most; a name longer than that ends in dots and is whole in its tooltip.
    const int room = more > 0 ? title.width() * 2 - titleHeight * 2 : title.width();
    const QString words = QFontMetrics(font).elidedText(index.data().toString(), Qt::ElideRight, room);
    painter.drawText(title, Qt::AlignLeft | Qt::AlignVCenter | (more > 0 ? Qt::TextWordWrap : 0), words);
}

void RuledDelegate::paintNote(QPainter &painter, const Line &line, const QModelIndex &index) const
{
    const QString note = index.data(RuledRows::NoteRole).toString();
    if (note.isEmpty())
        return;
    painter.setFont(textFont(TextSize::Small));
    painter.setPen(line.ink.quietText);
    const int top = line.words.top() + noteTop + secondLine(index, line.words.width());
    const QRect area(line.words.left(), top, line.words.width(), noteHeight(note, line.words.width()));
    if (m_list->wholeNotes())
        painter.drawText(area, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, note);
    else
        painter.drawText(area, Qt::AlignLeft | Qt::AlignVCenter, painter.fontMetrics().elidedText(note, Qt::ElideRight, area.width()));
}

} // namespace asleft
