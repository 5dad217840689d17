// Prints bench sheets of several engines as PDF and paints their pages into PNG files, to be looked at: records_sheets FOLDER

#include "samples.h"

#include <records/bench_sheet.h>
#include <words/translation.h>

#include <QDir>
#include <QGuiApplication>
#include <QImage>
#include <QLocale>
#include <QPainter>

#include <cstdio>

namespace asleft {

namespace {

constexpr double dotsPerPoint = 1.6;

QImage whitePage(SheetPaper paper)
{
    const QSizeF points = paper == SheetPaper::A4 ? QSizeF(595, 842) : QSizeF(612, 792);
    QImage image((points * dotsPerPoint).toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    return image;
}

/// The pages of a sheet side by side would be too small to read: one file each.
void paintPages(const QString &name, const JobState &state, const CrankPlan &plan, SheetPaper paper)
{
    QImage image = whitePage(paper);
    QPainter painter(&image);
    painter.scale(dotsPerPoint, dotsPerPoint);
    int page = 1;
    paintBenchSheet(painter, state, plan, paper, Moment{1'700'000'000'000}, [&] {
        image.save(QStringLiteral("%1-%2.png").arg(name).arg(page++));
        painter.fillRect(QRectF(0, 0, 700, 900), Qt::white);
    });
    painter.end();
    image.save(QStringLiteral("%1-%2.png").arg(name).arg(page));
}

void print(const QDir &folder, const char *name, const EngineText &text, SheetPaper paper, PlanWay way)
{
    const JobState state = stateOf(frameOf(text));
    const CrankPlan plan = generatePlan(state.frame->engine.design, way);
    const QString file = folder.filePath(QString::fromLatin1(name));
    paintPages(file, state, plan, paper);
    if (!writeBenchSheet(state, plan, paper, Moment{1'700'000'000'000}, (file + QStringLiteral(".pdf")).toStdString()))
        std::fprintf(stderr, "%s could not be written\n", name);
}

void printAll(const QDir &folder)
{
    print(folder, "line4", engineText(Layout::InLine, 4, "1-3-4-2"), SheetPaper::A4, PlanWay::TwoPositions);
    EngineText six = engineText(Layout::InLine, 6, "1-5-3-6-2-4");
    six.valves = "2+2";
    six.bridged = six.bridgeScrews = six.injectors = true;
    six.barring = "132/11";
    print(folder, "line6", six, SheetPaper::Letter, PlanWay::EachOnCompression);
    EngineText eight = engineText(Layout::Vee, 8);
    eight.cycle = Cycle::TwoStroke;
    eight.valves = "0+4";
    eight.bridged = eight.injectors = true;
    print(folder, "two-stroke8", eight, SheetPaper::A4, PlanWay::TwoPositions);
    print(folder, "v12", engineText(Layout::Vee, 12), SheetPaper::A4, PlanWay::OpeningAndClosing);
    print(folder, "radial9", engineText(Layout::Radial, 9, "1-3-5-7-9-2-4-6-8"), SheetPaper::Letter, PlanWay::EachOnCompression);
    print(folder, "opposed24", engineText(Layout::Opposed, 24), SheetPaper::A4, PlanWay::TwoPositions);
}

} // namespace

} // namespace asleft

int main(int count, char *arguments[])
{
    if (count != 2) {
        std::fprintf(stderr, "records_sheets FOLDER\n");
        return 2;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication application(count, arguments);
    asleft::installTranslation(application);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const QString folder = QString::fromLocal8Bit(arguments[1]);
    QDir().mkpath(folder);
    asleft::printAll(QDir(folder));
    return 0;
}
