#include "sheet_table.h"
#include "sheet_words.h"

#include <draw/palette.h>

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace asleft {

namespace {

constexpr double padding = 3;
constexpr double pointWidth = 96;
constexpr double boxWidth = 73;
constexpr double lockedWidth = 42;
constexpr double againWidth = 53;
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
    const double again = end - againWidth;
    const double locked = again - lockedWidth;
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
    text.point = {{sheetLines(row.point, SheetFont::Strong, pointWidth - 2 * padding), SheetFont::Strong},
                  {sheetLines(row.name, SheetFont::Small, pointWidth - 2 * padding), SheetFont::Small}};
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

void addBox(SheetPages &pages, const QRectF &row, double from, const QString &words)
{
    const QRectF box(from + padding, row.top() + padding, boxWidth - 2 * padding, row.height() - 2 * padding);
    pages.rectangle(box);
    const double width = sheetWidth(words, SheetFont::Small);
    pages.text({box.right() - width - 3, box.bottom() - sheetLine(SheetFont::Small)}, words, SheetFont::Small, ink(Look::Light).quietText);
}

void addTick(SheetPages &pages, const QRectF &row, double from)
{
    pages.rectangle({from + padding, row.center().y() - pencilHeight / 2, pencilHeight, pencilHeight});
}

void addRow(SheetPages &pages, const Columns &columns, const SheetRow &row, const RowText &text)
{
    const QRectF box = pages.take(text.height);
    addCells(pages, text.point, {columns.point, box.top()}, box.height());
    addCells(pages, text.asked, {columns.asked, box.top()}, box.height());
    addBox(pages, box, columns.found, row.found);
    addBox(pages, box, columns.left, row.left);
    addTick(pages, box, columns.locked);
    addTick(pages, box, columns.again);
    pages.rule(box.bottom(), 0.5);
}

/// The name of a column, above it.
struct ColumnName {
    double from;
    QStringList lines;
};

std::vector<ColumnName> columnNames(const Columns &columns)
{
    const auto name = [](double from, double to, const QString &words) {
        return ColumnName{from, sheetLines(words, SheetFont::Small, to - from - 2 * padding)};
    };
    return {name(columns.point, columns.asked, SheetWords::tr("point")),
            name(columns.asked, columns.found, SheetWords::tr("asked for, and where it says so")),
            name(columns.found, columns.left, SheetWords::tr("as found")),
            name(columns.left, columns.locked, SheetWords::tr("as left")),
            name(columns.locked, columns.again, SheetWords::tr("locked")),
            name(columns.again, columns.end, SheetWords::tr("felt again"))};
}

double linesHeight(const QStringList &lines, SheetFont font)
{
    return static_cast<double>(lines.size()) * sheetLine(font);
}

double namesHeight(const std::vector<ColumnName> &names)
{
    double height = 0;
    for (const ColumnName &name : names)
        height = std::max(height, linesHeight(name.lines, SheetFont::Small));
    return height + 2 * padding;
}

void addColumnNames(SheetPages &pages, const Columns &columns)
{
    const auto names = columnNames(columns);
    const QRectF box = pages.take(namesHeight(names));
    for (const ColumnName &name : names) {
        double y = box.bottom() - padding - linesHeight(name.lines, SheetFont::Small);
        for (const QString &line : name.lines) {
            pages.text({name.from + padding, y}, line, SheetFont::Small, ink(Look::Light).quietText);
            y += sheetLine(SheetFont::Small);
        }
    }
    pages.rule(box.bottom(), 1);
}

/// The title, broken left of the box to be ticked.
QStringList titleLines(const SheetPages &pages, const SheetTable &table)
{
    const double tick = table.tick.isEmpty() ? 0 : pencilHeight + sheetWidth(table.tick, SheetFont::Small) + 16;
    return sheetLines(table.title, SheetFont::Heading, pages.width() - tick);
}

double titleHeight(const QStringList &lines)
{
    return std::max(linesHeight(lines, SheetFont::Heading), pencilHeight + 2);
}

void addTitleTick(SheetPages &pages, const QRectF &line, const QString &words)
{
    const QRectF box(line.right() - pencilHeight, line.center().y() - pencilHeight / 2, pencilHeight, pencilHeight);
    pages.rectangle(box);
    const QPointF topLeft(box.left() - sheetWidth(words, SheetFont::Small) - 6, line.center().y() - sheetLine(SheetFont::Small) / 2);
    pages.text(topLeft, words, SheetFont::Small, ink(Look::Light).quietText);
}

void addTitle(SheetPages &pages, const SheetTable &table)
{
    const QStringList lines = titleLines(pages, table);
    const QRectF box = pages.take(titleHeight(lines));
    double y = box.center().y() - linesHeight(lines, SheetFont::Heading) / 2;
    for (const QString &line : lines) {
        pages.text({box.left(), y}, line, SheetFont::Heading, ink(Look::Light).text);
        y += sheetLine(SheetFont::Heading);
    }
    if (!table.tick.isEmpty())
        addTitleTick(pages, box, table.tick);
}

std::vector<RowText> rowTexts(const SheetTable &table, const Columns &columns)
{
    std::vector<RowText> texts;
    for (const SheetRow &row : table.rows)
        texts.push_back(rowText(row, columns));
    return texts;
}

/// The rows; what has no room goes on on the next page, below its title and the names of the columns.
void addRows(SheetPages &pages, const SheetTable &table, const Columns &columns, const std::vector<RowText> &texts)
{
    for (std::size_t row = 0; row < texts.size(); ++row) {
        if (!pages.hasRoom(texts[row].height)) {
            pages.nextPage();
            pages.paragraph(table.goesOn, SheetFont::Strong);
            addColumnNames(pages, columns);
        }
        addRow(pages, columns, table.rows[row], texts[row]);
    }
}

/// Sources too long for their cells, each once with the points it is for.
void addSourcesBelow(SheetPages &pages, const SheetTable &table, const std::vector<RowText> &texts)
{
    std::map<QString, QStringList> points;
    for (std::size_t row = 0; row < texts.size(); ++row) {
        if (!texts[row].below.isEmpty())
            points[texts[row].below].append(table.rows[row].point);
    }
    for (const auto &[source, names] : points) {
        const QString all = names.join(SheetWords::tr(", ", "between points"));
        pages.paragraph(SheetWords::tr("%1: %2", "points, source").arg(all, source), SheetFont::Small);
    }
}

} // namespace

double openingHeight(const SheetPages &pages, const SheetTable &table)
{
    const Columns columns = columnsOf(pages);
    double height = titleHeight(titleLines(pages, table)) + namesHeight(columnNames(columns)) + rowText(table.rows.front(), columns).height;
    for (const QString &how : table.how)
        height += pages.heightOf(how, SheetFont::Body);
    return height;
}

void addTable(SheetPages &pages, const SheetTable &table)
{
    if (table.rows.empty())
        return;
    const Columns columns = columnsOf(pages);
    const auto texts = rowTexts(table, columns);
    if (!pages.hasRoom(openingHeight(pages, table)))
        pages.nextPage();
    addTitle(pages, table);
    for (const QString &how : table.how)
        pages.paragraph(how);
    addColumnNames(pages, columns);
    addRows(pages, table, columns, texts);
    addSourcesBelow(pages, table, texts);
    pages.gap(12);
}

} // namespace asleft
