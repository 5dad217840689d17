#include <records/bench_sheet.h>

#include "sheet_content.h"
#include "sheet_words.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace asleft {

namespace {

constexpr int dotsPerInch = 1200;
constexpr double pointsPerInch = 72;

void paintPages(QPainter &painter, const SheetPages &pages, const std::function<void()> &nextPage)
{
    for (std::size_t page = 0; page < pages.count(); ++page) {
        if (page > 0)
            nextPage();
        pages.paint(painter, page);
    }
}

QByteArray pdfOf(const SheetPages &pages, SheetPaper paper, const QString &title)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPageSize(QPageSize(paper == SheetPaper::A4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setPageMargins(QMarginsF());
    writer.setResolution(dotsPerInch);
    writer.setCreator(QStringLiteral("Asleft"));
    writer.setTitle(title);
    QPainter painter(&writer);
    const double scale = dotsPerInch / pointsPerInch;
    painter.scale(scale, scale);
    paintPages(painter, pages, [&writer] { writer.newPage(); });
    painter.end();
    return buffer.data();
}

Done writeWhole(const QByteArray &bytes, const std::string &path)
{
    QSaveFile file(QString::fromStdString(path));
    const bool written = file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
    if (!written)
        return fail(ErrorKind::DiskFault, path, file.errorString().toStdString());
    return {};
}

} // namespace

void paintBenchSheet(QPainter &painter, const JobState &state, const CrankPlan &plan, SheetPaper paper, Moment printed,
                     const std::function<void()> &nextPage)
{
    paintPages(painter, layOutSheet(state, plan, paper, printed), nextPage);
}

Done writeBenchSheet(const JobState &state, const CrankPlan &plan, SheetPaper paper, Moment printed, const std::string &path)
{
    const QString title = SheetWords::tr("Bench sheet: %1").arg(sheetTitle(*state.frame));
    return writeWhole(pdfOf(layOutSheet(state, plan, paper, printed), paper, title), path);
}

} // namespace asleft
