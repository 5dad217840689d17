#pragma once

#include <parts/ruled_rows.h>

#include <draw/palette.h>

#include <QListView>

#include <functional>

namespace asleft {

/// A list in the way of a ruled sheet: at least 44 px a line, a fine rule under each, the line in hand on a darker ground and bold.
class RuledList : public QListView {
    Q_OBJECT

public:
    /// Paints what stands before a line into a square; `area` is in the painter's coordinates.
    using PaintIcon = std::function<void(QPainter &painter, const QRectF &area, qint64 id, const Ink &ink)>;

    /// `name` is said to screen readers.
    RuledList(const QString &name, RuledRows *rows, QWidget *parent = nullptr);

    void setPaintIcon(PaintIcon paint);
    [[nodiscard]] const PaintIcon &paintIcon() const { return m_paintIcon; }

    /// As tall as its lines and no taller.
    void setFitted(bool fitted);
    /// Fitted, and never less tall either: for a list that stands on a sheet which scrolls as a whole.
    void setWhole(bool whole);
    /// Notes are shown whole, on as many lines as they take, instead of being cut short.
    void setWholeNotes(bool whole);
    [[nodiscard]] bool wholeNotes() const { return m_wholeNotes; }

    /// Words shown while there are no lines.
    void setEmptyWords(const QString &words);

    /// The line in hand. The keyboard may stand on another one until that is chosen.
    [[nodiscard]] std::optional<qint64> currentId() const { return m_current; }
    /// Makes a line the current one; says nothing.
    void setCurrentId(std::optional<qint64> id);

Q_SIGNALS:
    /// The person chose a line, by click or by arrow.
    void chosen(qint64 id);
    /// Enter or a double click on a line.
    void opened(qint64 id);

protected:
    void paintEvent(QPaintEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void mouseDoubleClickEvent(QMouseEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void choose(const QModelIndex &index);
    void fit();

    PaintIcon m_paintIcon;
    QString m_emptyWords;
    std::optional<qint64> m_current;
    bool m_fitted = false;
    bool m_whole = false;
    bool m_wholeNotes = false;
};

} // namespace asleft
