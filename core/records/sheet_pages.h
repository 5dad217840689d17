#pragma once

#include <QColor>
#include <QFont>
#include <QRectF>
#include <QString>
#include <QStringList>

#include <functional>
#include <vector>

class QPainter;

namespace asleft {

constexpr double pointsPerMillimetre = 72 / 25.4;
/// High enough to write into with a pencil.
constexpr double pencilHeight = 8 * pointsPerMillimetre;

/// What text on a sheet is set in. Nothing is smaller than 9 points.
enum class SheetFont { Title, Heading, Body, Strong, Small };

QFont sheetFont(SheetFont font);
/// From line to line.
double sheetLine(SheetFont font);
double sheetWidth(const QString &text, SheetFont font);
/// A text in lines no wider than `width`: broken between words, a word that is wider itself wherever it has to be.
QStringList sheetLines(const QString &text, SheetFont font, double width);

/// Pages that are filled from the top; what has no room goes on the next one. Lengths are points, 0,0 is the corner of the paper.
class SheetPages {
public:
    /// What stands on each page: at its head the title, to its right the number of the page, and the two lines under both; at its foot
    /// a paragraph.
    struct Frame {
        QString title;
        QString under;
        QString printed; ///< to the right of `under`
        QString foot;
    };
    using Painting = std::function<void(QPainter &)>;

    SheetPages(QSizeF paper, Frame frame);

    [[nodiscard]] double left() const;
    [[nodiscard]] double width() const;
    [[nodiscard]] bool hasRoom(double height) const;
    void nextPage();
    void gap(double height);
    /// A piece of the page that is not torn: on the next page, if this one has no room for it.
    QRectF take(double height);
    /// Paints on the page at hand, later.
    void add(Painting painting);
    void text(QPointF topLeft, const QString &line, SheetFont font, const QColor &colour);
    void rectangle(const QRectF &box, double penWidth = 0.8);
    void rule(double y, double penWidth);
    /// Lines to write on, `count` of them, kept together.
    void writingLines(int count);
    /// Lines one below the other, torn between two of them where the page ends.
    void paragraph(const QString &text, SheetFont font = SheetFont::Body);
    [[nodiscard]] double heightOf(const QString &text, SheetFont font) const;

    [[nodiscard]] std::size_t count() const { return m_pages.size(); }
    /// The page with its head, its foot and its number. \pre index < count()
    void paint(QPainter &painter, std::size_t index) const;

private:
    [[nodiscard]] double top() const;
    [[nodiscard]] double bottom() const;
    /// Room for title and line under it, left of what is to their right.
    [[nodiscard]] double headWidth() const;
    [[nodiscard]] QStringList titleLines() const;
    [[nodiscard]] QStringList underLines() const;
    void paintHead(QPainter &painter, std::size_t index) const;
    void paintFoot(QPainter &painter) const;

    QSizeF m_paper;
    Frame m_frame;
    std::vector<std::vector<Painting>> m_pages;
    double m_y = 0;
};

} // namespace asleft
