#include "sheet_pages.h"
#include "sheet_words.h"

#include <records/bench_sheet.h>

#include <draw/fonts.h>
#include <draw/palette.h>

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace asleft {

namespace {

constexpr double underHead = 10; // between the head's rule and what follows
constexpr double overFoot = 6;

struct Setting {
    int pixels;
    QFont::Weight weight;
};

Setting settingOf(SheetFont font)
{
    switch (font) {
    case SheetFont::Title: return {15, QFont::Bold};
    case SheetFont::Heading: return {12, QFont::Bold};
    case SheetFont::Body: return {10, QFont::Normal};
    case SheetFont::Strong: return {10, QFont::Bold};
    case SheetFont::Small: return {9, QFont::Normal};
    }
    return {10, QFont::Normal};
}

void paintText(QPainter &painter, QPointF topLeft, const QString &line, SheetFont font, const QColor &colour)
{
    const QFontMetricsF metrics(sheetFont(font));
    painter.setFont(sheetFont(font));
    painter.setPen(colour);
    painter.drawText(topLeft + QPointF(0, (sheetLine(font) - metrics.height()) / 2 + metrics.ascent()), line);
}

/// Lines one below the other. Where they end.
double paintLines(QPainter &painter, QPointF topLeft, const QStringList &lines, SheetFont font, const QColor &colour)
{
    for (const QString &line : lines) {
        paintText(painter, topLeft, line, font, colour);
        topLeft.ry() += sheetLine(font);
    }
    return topLeft.y();
}

QString pageNumber(std::size_t number, std::size_t count)
{
    return SheetWords::tr("page %1 of %2").arg(number).arg(count);
}

/// As much of a word as fits, at least one letter.
qsizetype fittingLetters(const QString &word, SheetFont font, double width)
{
    qsizetype count = word.size();
    while (count > 1 && sheetWidth(word.first(count), font) > width)
        --count;
    return count;
}

} // namespace

QFont sheetFont(SheetFont font)
{
    const Setting setting = settingOf(font);
    QFont made(textFamily());
    made.setPixelSize(setting.pixels);
    made.setWeight(setting.weight);
    // Letters fitted to the dots of a screen would be of another width on paper.
    made.setHintingPreference(QFont::PreferNoHinting);
    return made;
}

double sheetLine(SheetFont font)
{
    return settingOf(font).pixels * 1.3;
}

double sheetWidth(const QString &text, SheetFont font)
{
    return QFontMetricsF(sheetFont(font)).horizontalAdvance(text);
}

QStringList sheetLines(const QString &text, SheetFont font, double width)
{
    QStringList lines;
    QString line;
    for (QString word : text.simplified().split(u' ', Qt::SkipEmptyParts)) {
        const QString longer = line.isEmpty() ? word : line + u' ' + word;
        if (sheetWidth(longer, font) <= width) {
            line = longer;
            continue;
        }
        if (!line.isEmpty())
            lines.append(line);
        while (sheetWidth(word, font) > width && word.size() > 1) {
            const qsizetype count = fittingLetters(word, font, width);
            lines.append(word.first(count));
            word = word.sliced(count);
        }
        line = word;
    }
    if (!line.isEmpty())
        lines.append(line);
    return lines;
}

SheetPages::SheetPages(QSizeF paper, Frame frame) : m_paper(paper), m_frame(std::move(frame)), m_pages(1)
{
    m_y = top();
}

double SheetPages::left() const
{
    return paperMargin;
}

double SheetPages::width() const
{
    return m_paper.width() - 2 * paperMargin;
}

QStringList SheetPages::titleLines() const
{
    return sheetLines(m_frame.title, SheetFont::Title, headWidth());
}

QStringList SheetPages::underLines() const
{
    return sheetLines(m_frame.under, SheetFont::Body, headWidth());
}

double SheetPages::headWidth() const
{
    const double right = std::max(sheetWidth(m_frame.printed, SheetFont::Small), sheetWidth(pageNumber(99, 99), SheetFont::Strong));
    return width() - right - 14;
}

double SheetPages::top() const
{
    const double title = static_cast<double>(titleLines().size()) * sheetLine(SheetFont::Title);
    const double under = static_cast<double>(underLines().size()) * sheetLine(SheetFont::Body);
    return paperMargin + title + under + 4 + underHead;
}

double SheetPages::bottom() const
{
    return m_paper.height() - paperMargin - heightOf(m_frame.foot, SheetFont::Small) - overFoot;
}

bool SheetPages::hasRoom(double height) const
{
    return m_y + height <= bottom();
}

void SheetPages::nextPage()
{
    m_pages.emplace_back();
    m_y = top();
}

void SheetPages::gap(double height)
{
    m_y += height;
}

QRectF SheetPages::take(double height)
{
    if (!hasRoom(height) && m_y > top())
        nextPage();
    const QRectF box(left(), m_y, width(), height);
    m_y += height;
    return box;
}

void SheetPages::add(Painting painting)
{
    m_pages.back().push_back(std::move(painting));
}

void SheetPages::text(QPointF topLeft, const QString &line, SheetFont font, const QColor &colour)
{
    add([=](QPainter &painter) { paintText(painter, topLeft, line, font, colour); });
}

void SheetPages::rectangle(const QRectF &box, double penWidth)
{
    add([=](QPainter &painter) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(ink(Look::Light).edge, penWidth, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter.drawRect(box);
    });
}

void SheetPages::rule(double y, double penWidth)
{
    const QLineF line(left(), y, left() + width(), y);
    add([=](QPainter &painter) {
        painter.setPen(QPen(ink(Look::Light).strongLine, penWidth, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(line);
    });
}

void SheetPages::writingLines(int count)
{
    const QRectF box = take(count * pencilHeight);
    for (int line = 1; line <= count; ++line)
        rule(box.top() + line * pencilHeight, 0.5);
}

void SheetPages::paragraph(const QString &words, SheetFont font)
{
    for (const QString &line : sheetLines(words, font, width()))
        text(take(sheetLine(font)).topLeft(), line, font, ink(Look::Light).text);
}

double SheetPages::heightOf(const QString &words, SheetFont font) const
{
    return static_cast<double>(sheetLines(words, font, width()).size()) * sheetLine(font);
}

void SheetPages::paintHead(QPainter &painter, std::size_t index) const
{
    const double right = left() + width();
    const QString number = pageNumber(index + 1, count());
    double y = paperMargin;
    const double numberDown = sheetLine(SheetFont::Title) - sheetLine(SheetFont::Strong) - 1; // on the title's base line
    paintText(painter, {right - sheetWidth(number, SheetFont::Strong), y + numberDown}, number, SheetFont::Strong, ink(Look::Light).text);
    y = paintLines(painter, {left(), y}, titleLines(), SheetFont::Title, ink(Look::Light).text);
    const QPointF printed(right - sheetWidth(m_frame.printed, SheetFont::Small), y + 1);
    paintText(painter, printed, m_frame.printed, SheetFont::Small, ink(Look::Light).quietText);
    y = paintLines(painter, {left(), y}, underLines(), SheetFont::Body, ink(Look::Light).quietText);
    painter.setPen(QPen(ink(Look::Light).strongLine, 1.6, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(left(), y + 3), QPointF(right, y + 3));
}

void SheetPages::paintFoot(QPainter &painter) const
{
    const QStringList lines = sheetLines(m_frame.foot, SheetFont::Small, width());
    paintLines(painter, {left(), bottom() + overFoot}, lines, SheetFont::Small, ink(Look::Light).quietText);
}

void SheetPages::paint(QPainter &painter, std::size_t index) const
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintHead(painter, index);
    paintFoot(painter);
    for (const Painting &painting : m_pages[index])
        painting(painter);
    painter.restore();
}

} // namespace asleft
