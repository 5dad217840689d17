#include "sheet_table.h"

#include <show/palette.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

class SheetWords {
    Q_DECLARE_TR_FUNCTIONS(SheetWords)
};

constexpr double padding = 3;
constexpr double pointWidth = 92;
constexpr double boxWidth = 78;
constexpr double tickWidth = 44;
constexpr qsizetype mostSourceLines = 5; // of a source in its cell; a longer one is told below the table

/// Left edges of the columns on a page.
struct Columns {
    double point;
    double asked;
    double found;
    double left;
    double locked;
    double again;
    double end;
};

Columns columnsOf(const SheetPages &pages)
{
    const double end = pages.left() + pages.width();
    const double again = end - tickWidth;
    const double locked = again - tickWidth;
    const double left = locked - boxWidth;
    return {pages.left(), pages.left() + pointWidth, left - boxWidth, left, locked, again, end};
}

struct Cell {
    QStringList lines;
    SheetFont font = SheetFont::Body;
};

double heightOf(const std::vector<Cell> &cells)
{
    double height = 0;
    for (const Cell &cell : cells)
        height += static_cast<double>(cell.lines.size()) * sheetLine(cell.font);
    return height;
}

/// What stands in the cells of a row.
struct RowText {
    std::vector<Cell> point;
    std::vector<Cell> asked;
    QString below; ///< a source too long for its cell
    double height = 0;
};

RowText rowText(const SheetRow &row, const Columns &columns)
{
    const double askedWidth = columns.found - columns.asked - 2 * padding;
    RowText text;
    text.point = {{sheetLines(row.point, SheetFont::Strong, pointWidth - 2 * padding), SheetFont::Strong}};
    text.asked = {{sheetLines(row.asked, SheetFont::Body, askedWidth), SheetFont::Body}};
    QStringList source = sheetLines(row.source, SheetFont::Small, askedWidth);
    if (source.size() > mostSourceLines) {
        text.below = row.source;
        source = sheetLines(SheetWords::tr("source: below the table"), SheetFont::Small, askedWidth);
    }
    text.asked.push_back({source, SheetFont::Small});
    text.asked.push_back({sheetLines(row.note, SheetFont::Small, askedWidth), SheetFont::Small});
    text.height = 2 * padding + std::max({pencilHeight, heightOf(text.point), heightOf(text.asked)});
    return text;
}

void addCells(SheetPages &pages, const std::vector<Cell> &cells, QPointF topLeft, double height)
{
    double y = topLeft.y() + (height - heightOf(cells)) / 2;
    for (const Cell &cell : cells) {
        const QColor colour = cell.font == SheetFont::Small ? ink(Look::Light).quietText : ink(Look::Light).text;
        for (const QString &line : cell.lines) {
            pages.text({topLeft.x() + padding, y}, line, cell.font, colour);
            y += sheetLine(cell.font);
        }
    }
}

void addBox(SheetPages &pages, const QRectF &row, double from, const QString &unit)
{
    const QRectF box(from + padding, row.top() + padding, boxWidth - 2 * padding, row.height() - 2 * padding);
    pages.rectangle(box);
    const double width = sheetWidth(unit, SheetFont::Small);
    pages.text({box.right() - width - 3, box.bottom() - sheetLine(SheetFont::Small)}, unit, SheetFont::Small, ink(Look::Light).quietText);
}

void addTick(SheetPages &pages, const QRectF &row, double from)
{
    pages.rectangle({from + (tickWidth - pencilHeight) / 2, row.center().y() - pencilHeight / 2, pencilHeight, pencilHeight});
}

void addRow(SheetPages &pages, const Columns &columns, const SheetRow &row, const RowText &text)
{
    const QRectF box = pages.take(text.height);
    addCells(pages, text.point, {columns.point, box.top()}, box.height());
    addCells(pages, text.asked, {columns.asked, box.top()}, box.height());
    addBox(pages, box, columns.found, row.unit);
    addBox(pages, box, columns.left, row.unit);
    addTick(pages, box, columns.locked);
    addTick(pages, box, columns.again);
    pages.rule(box.bottom(), 0.5);
}

double headHeight()
{
    return 2 * sheetLine(SheetFont::Small) + 2 * padding;
}

void addHead(SheetPages &pages, const Columns &columns)
{
    const QRectF box = pages.take(headHeight());
    const auto head = [&](double from, double to, const QString &words) {
        const QStringList lines = sheetLines(words, SheetFont::Small, to - from - 2 * padding);
        double y = box.bottom() - padding - static_cast<double>(lines.size()) * sheetLine(SheetFont::Small);
        for (const QString &line : lines) {
            pages.text({from + padding, y}, line, SheetFont::Small, ink(Look::Light).quietText);
            y += sheetLine(SheetFont::Small);
        }
    };
    head(columns.point, columns.asked, SheetWords::tr("point"));
    head(columns.asked, columns.found, SheetWords::tr("asked for, and where it says so"));
    head(columns.found, columns.left, SheetWords::tr("as found"));
    head(columns.left, columns.locked, SheetWords::tr("as left"));
    head(columns.locked, columns.again, SheetWords::tr("locked"));
    head(columns.again, columns.end, SheetWords::tr("felt again"));
    pages.rule(box.bottom(), 1);
}

double linesHeight(const QString &words, SheetFont font, double width)
{
    return static_cast<double>(sheetLines(words, font, width).size()) * sheetLine(font);
}

/// Title, how to find the position and the names of the columns stay with the first row.
double openingHeight(const SheetPages &pages, const SheetTable &table, double firstRow)
{
    double height = std::max(pencilHeight, linesHeight(table.title, SheetFont::Heading, pages.width())) + headHeight() + firstRow;
    for (const QString &how : table.how)
        height += linesHeight(how, SheetFont::Body, pages.width());
    return height;
}

void addTurnedBox(SheetPages &pages, const QRectF &line)
{
    const QRectF box(line.right() - pencilHeight, line.center().y() - pencilHeight / 2, pencilHeight, pencilHeight);
    const QString words = SheetWords::tr("turned there");
    pages.rectangle(box);
    pages.text({box.left() - sheetWidth(words, SheetFont::Small) - 6, line.center().y() - sheetLine(SheetFont::Small) / 2}, words,
               SheetFont::Small, ink(Look::Light).quietText);
}

void addTitle(SheetPages &pages, const SheetTable &table)
{
    const double room =
        pages.width() - (table.turned ? pencilHeight + sheetWidth(SheetWords::tr("turned there"), SheetFont::Small) + 16 : 0);
    const QStringList lines = sheetLines(table.title, SheetFont::Heading, room);
    const double text = static_cast<double>(lines.size()) * sheetLine(SheetFont::Heading);
    const QRectF box = pages.take(std::max(text, pencilHeight + 2));
    double y = box.center().y() - text / 2;
    for (const QString &line : lines) {
        pages.text({box.left(), y}, line, SheetFont::Heading, ink(Look::Light).text);
        y += sheetLine(SheetFont::Heading);
    }
    if (table.turned)
        addTurnedBox(pages, box);
}

} // namespace

void addTable(SheetPages &pages, const SheetTable &table)
{
    const Columns columns = columnsOf(pages);
    std::vector<RowText> texts;
    for (const SheetRow &row : table.rows)
        texts.push_back(rowText(row, columns));
    if (texts.empty())
        return;
    if (!pages.hasRoom(openingHeight(pages, table, texts.front().height)))
        pages.nextPage();
    addTitle(pages, table);
    for (const QString &how : table.how)
        pages.paragraph(how);
    addHead(pages, columns);
    for (std::size_t row = 0; row < texts.size(); ++row) {
        if (!pages.hasRoom(texts[row].height)) {
            pages.nextPage();
            pages.paragraph(table.goesOn, SheetFont::Strong);
            addHead(pages, columns);
        }
        addRow(pages, columns, table.rows[row], texts[row]);
    }
    for (std::size_t row = 0; row < texts.size(); ++row) {
        if (!texts[row].below.isEmpty())
            pages.paragraph(SheetWords::tr("%1: %2", "point, source").arg(table.rows[row].point, texts[row].below), SheetFont::Small);
    }
    pages.gap(12);
}

} // namespace asleft
