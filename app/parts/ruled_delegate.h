#pragma once

#include <QStyledItemDelegate>

namespace asleft {

class RuledList;
struct Ink;

/// Paints one line of a ruled list.
class RuledDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    explicit RuledDelegate(RuledList *list);

    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;
    void paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const override;

private:
    struct Line {
        QRect words;
        bool inHand;
        const Ink &ink;
    };
    void paintTitle(QPainter &painter, const Line &line, const QModelIndex &index) const;
    void paintNote(QPainter &painter, const Line &line, const QModelIndex &index) const;
    [[nodiscard]] QRect wordsIn(const QRect &row) const;
    [[nodiscard]] static int rightWidth(const QModelIndex &index, int width);
    /// The room a title that does not fit on one line wants below it.
    [[nodiscard]] static int secondLine(const QModelIndex &index, int width);
    [[nodiscard]] int noteHeight(const QString &note, int width) const;

    RuledList *m_list;
};

} // namespace asleft
