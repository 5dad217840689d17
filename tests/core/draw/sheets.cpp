// Paints every shape, joint, head, engine and scale into PNG files, to be looked at: show_sheets FOLDER

#include "joint_sheets.h"
#include "samples.h"

#include <draw/band_scale.h>
#include <draw/engine_drawing.h>
#include <draw/fonts.h>
#include <draw/head.h>
#include <words/translation.h>

#include <QDir>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>

#include <cstdio>
#include <functional>

namespace asleft {

namespace {

class Sheets {
public:
    explicit Sheets(QString folder) : m_folder(std::move(folder)) {}

    void paint(const QString &name, QSize size, const std::function<void(QPainter &, const Ink &)> &draw)
    {
        for (const Look look : {Look::Light, Look::Dark}) {
            QImage image(size, QImage::Format_RGB32);
            image.fill(ink(look).paper);
            QPainter painter(&image);
            draw(painter, ink(look));
            painter.end();
            const QString file = name + (look == Look::Light ? QStringLiteral("-light.png") : QStringLiteral("-dark.png"));
            image.save(QDir(m_folder).filePath(file));
        }
    }

private:
    QString m_folder;
};

void say(QPainter &painter, const QRectF &box, const QString &text, const Ink &ink)
{
    painter.setFont(textFont(TextSize::Small));
    painter.setPen(ink.quietText);
    painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, text);
}

void paintShapes(QPainter &painter, const Ink &ink)
{
    const QList<LegendLine> lines = legend();
    for (qsizetype index = 0; index < lines.size(); ++index) {
        const double x = 10 + static_cast<double>(index % 3) * 420;
        const double y = 8 + static_cast<double>(index / 3) * 84;
        painter.fillRect(QRectF(x, y, 200, 80), ink.casting);
        PointLook look = lines[index].look;
        paintPoint(painter, QRectF(x + 4, y + 4, 72, 72), look, ink);
        paintPoint(painter, QRectF(x + 80, y + 18, 44, 44), look, ink);
        look.here = Here::InPlan;
        look.inHand = index % 2 == 0;
        paintPoint(painter, QRectF(x + 130, y + 8, 64, 64), look, ink);
        say(painter, QRectF(x + 210, y, 200, 80), lines[index].words, ink);
    }
    for (const StepLook look : {StepLook::ToDo, StepLook::InHand, StepLook::Begun, StepLook::Done}) {
        const double x = 10 + static_cast<double>(look) * 150;
        paintStep(painter, QRectF(x, 790, 34, 34), look, ink);
        say(painter, QRectF(x + 40, 790, 100, 34), stepWords(look), ink);
    }
}

QList<PointLook> mixedLooks(qsizetype count)
{
    const QList<PointLook> states = allStates();
    QList<PointLook> looks;
    for (qsizetype index = 0; index < count; ++index) {
        PointLook look = index % 3 == 0 ? PointLook{PointStage::Left, Verdict::Inside} : states[(index * 7) % states.size()];
        look.here = index % 4 < 2 ? Here::InPlan : index % 4 == 2 ? Here::NotHere : Here::Possible;
        look.inHand = index == count / 2 + 1;
        looks.append(look);
    }
    return looks;
}

void paintWholeHead(QPainter &painter, const EngineDesign &design, QSizeF size, const Ink &ink)
{
    const HeadPlan plan = planHead(design, size);
    const QList<PointLook> looks = mixedLooks(plan.points.size());
    paintHead(painter, plan, ink, looks);
    const double barTop = size.height() + 18;
    for (qsizetype index = 0; index < looks.size(); ++index) {
        if (looks[index].inHand)
            paintLeaderLine(painter, leaderLine(plan, index, barTop), ink);
    }
    for (qsizetype index = 0; index < looks.size(); ++index)
        paintPoint(painter, plan.pointRect(index), looks[index], ink);
    painter.fillRect(QRectF(0, barTop, size.width(), 2.5), ink.strongLine);
}

/// One head in three sizes: of a narrow Bench, of a usual one, and of a large screen.
void paintHeadSheets(Sheets &sheets, const QString &name, const EngineDesign &design)
{
    for (const QSizeF size : {QSizeF(600, 330), QSizeF(700, 330), QSizeF(1400, 800)}) {
        const QString file = QStringLiteral("head-%1-%2").arg(name).arg(size.width());
        const QSize sheet = (size + QSizeF(0, 24)).toSize();
        sheets.paint(file, sheet, [&](QPainter &painter, const Ink &ink) { paintWholeHead(painter, design, size, ink); });
    }
}

void paintHeads(Sheets &sheets)
{
    const std::pair<const char *, EngineDesign> engines[] = {
        {"line4", engineOf(Layout::InLine, 4, "1-3-4-2")},
        {"line1", engineOf(Layout::InLine, 1, "1")},
        {"single", engineOf(Layout::Single, 1, "1")},
        {"line6-onerow", engineOf(Layout::InLine, 6, "1-5-3-6-2-4", valvesInOneLine(6))},
        {"line8-onerow", engineOf(Layout::InLine, 8, plainOrder(8), valvesInOneLine(8))},
        {"line12", engineOf(Layout::InLine, 12, plainOrder(12))},
        {"v8", engineOf(Layout::Vee, 8, "1-8-4-3-6-5-7-2")},
        {"v8-onerow", engineOf(Layout::Vee, 8, "1-8-4-3-6-5-7-2", valvesInOneLine(4))},
        {"v12", engineOf(Layout::Vee, 12, plainOrder(12))},
        {"v24", engineOf(Layout::Vee, 24, plainOrder(24))},
        {"v2", engineOf(Layout::Vee, 2, "1-2")},
        {"flat4", engineOf(Layout::Flat, 4, "1-4-3-2")},
        {"flat12", engineOf(Layout::Flat, 12, plainOrder(12))},
        {"w8", engineOf(Layout::W, 8, plainOrder(8))},
        {"w9", engineOf(Layout::W, 9, plainOrder(9))},
        {"w12", engineOf(Layout::W, 12, plainOrder(12))},
        {"w24", engineOf(Layout::W, 24, plainOrder(24))},
        {"radial3", engineOf(Layout::Radial, 3, "1-2-3")},
        {"radial7", engineOf(Layout::Radial, 7, "1-3-5-7-2-4-6")},
        {"radial9", engineOf(Layout::Radial, 9, "1-3-5-7-9-2-4-6-8")},
        {"radial14", engineOf(Layout::Radial, 14, plainOrder(14))},
        {"radial24", engineOf(Layout::Radial, 24, plainOrder(24))},
        {"opposed4", engineOf(Layout::Opposed, 4, plainOrder(4))},
        {"opposed16", engineOf(Layout::Opposed, 16, plainOrder(16))},
        {"opposed24", engineOf(Layout::Opposed, 24, plainOrder(24))},
    };
    for (const auto &[name, design] : engines)
        paintHeadSheets(sheets, QString::fromLatin1(name), design);
}

/// Every valve train on a six in line, a V8 and a radial five.
void paintTrains(Sheets &sheets)
{
    const std::pair<const char *, EngineText> engines[] = {
        {"line6", engineText(Layout::InLine, 6, "1-5-3-6-2-4")},
        {"line1", engineText(Layout::Single, 1, "1")},
        {"v8", engineText(Layout::Vee, 8, "1-8-4-3-6-5-7-2")},
        {"radial5", engineText(Layout::Radial, 5, "1-3-5-2-4")},
    };
    for (const auto &[name, text] : engines) {
        for (const Train &train : allTrains) {
            const QString file =
                QStringLiteral("%1-%2").arg(QString::fromLatin1(name), QString::fromLatin1(train.name).replace(u' ', u'_'));
            paintHeadSheets(sheets, file, *designEngine(withTrain(text, train)));
        }
    }
}

void paintEngines(QPainter &painter, const Ink &ink)
{
    EngineText lettered = engineText(Layout::Vee, 8, "A1-B1-A4-B4");
    lettered.numbering = "A1 A2 A3 A4 / B1 B2 B3 B4";
    const EngineText texts[] = {
        fourText(),
        engineText(Layout::InLine, 6, "1-5-3-6-2-4"),
        engineText(Layout::InLine, 12, "1-12-5"),
        engineText(Layout::Vee, 8, "1-8-4-3-6-5-7-2"),
        lettered,
        engineText(Layout::Vee, 16, ""),
        engineText(Layout::Flat, 4, "1-4-3-2"),
        engineText(Layout::Flat, 2, "1-2"),
        engineText(Layout::InLine, 1, "1"),
        engineText(Layout::Flat, 6, "1-6-2-4-3-5"),
        engineText(Layout::Vee, 2, "1-2"),
        engineText(Layout::InLine, 3, "1-3-9"),
        engineText(Layout::Single, 1, "1"),
        engineText(Layout::W, 12, "1-12-5-8-3-10-6-7-2-11-4-9"),
        engineText(Layout::W, 9, "1-5-9-2-6-7"),
        engineText(Layout::Radial, 5, "1-3-5-2-4"),
        engineText(Layout::Radial, 9, "1-3-5-7-9-2-4-6-8"),
        engineText(Layout::Radial, 14, "1-10-5-14-9-4-13-8-3-12-7-2-11-6"),
        engineText(Layout::Opposed, 16, "1-2-3-4-5-6-7-8-9-10-11-12-13-14-15-16"),
        engineText(Layout::Opposed, 4, "1-2-3-4"),
        engineText(Layout::Radial, 24, ""),
    };
    int index = 0;
    for (const EngineText &text : texts) {
        const QRectF box(12 + index % 3 * 420, 10 + index / 3 * 212, 400, 190);
        painter.setPen(ink.line);
        painter.setBrush(Qt::NoBrush);
        painter.drawLine(box.bottomLeft() + QPointF(0, 8), box.bottomRight() + QPointF(0, 8));
        paintEngine(painter, box, sketchOf(text), ink);
        ++index;
    }
}

SpecBand<Length> bands(const char *text, LengthUnit unit = LengthUnit::Millimetre)
{
    return {*parseBand<Length>(text, unit), std::nullopt};
}

ScaleValue valueOf(const SpecBand<Length> &spec, Interval<Length> interval, LengthUnit unit = LengthUnit::Millimetre)
{
    return {interval, unit, judge(interval, spec.printedFor(unit))};
}

void paintScales(QPainter &painter, const Ink &ink)
{
    using I = Interval<Length>;
    const SpecBand<Length> plain = bands("0.40 ± 0.05 mm");
    SpecBand<Length> both = bands("0.30 ± 0.05 mm");
    both.second = *parseBand<Length>(".012 ± .002 in", LengthUnit::Inch);
    const struct {
        SpecBand<Length> spec;
        LengthUnit unit;
        std::optional<ScaleValue> value;
    } cases[] = {
        {plain, LengthUnit::Millimetre, std::nullopt},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::point(micrometres(500)))},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::point(micrometres(400)))},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::point(micrometres(300)))},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::point(micrometres(451)))},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::point(micrometres(2500)))},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::point(micrometres(20)))},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::bracket(micrometres(350), micrometres(400)))},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::bracket(micrometres(400), micrometres(500)))},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::looserThan(micrometres(400)))},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::looserThan(micrometres(450)))},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::tighterThan(micrometres(350)))},
        {both, LengthUnit::Inch, valueOf(both, I::point(thou(15)), LengthUnit::Inch)},
        {both, LengthUnit::Thou, valueOf(both, I::point(thou(12)), LengthUnit::Thou)},
        {bands("0.40 ± 0.001 mm"), LengthUnit::Millimetre, valueOf(bands("0.40 ± 0.001 mm"), I::point(micrometres(500)))},
        {bands("at least 0.2 mm"), LengthUnit::Millimetre, valueOf(bands("at least 0.2 mm"), I::point(micrometres(180)))},
        {bands("at most 0.3 mm"), LengthUnit::Millimetre, valueOf(bands("at most 0.3 mm"), I::point(micrometres(250)))},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::point(thou(18)), LengthUnit::Thou)},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::within(micrometres(400), micrometres(29)))},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::within(micrometres(440), micrometres(29)))},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::within(micrometres(460), micrometres(29)))},
        {plain, LengthUnit::Millimetre, valueOf(plain, I::within(micrometres(500), micrometres(29)))},
    };
    int index = 0;
    for (const auto &[spec, unit, value] : cases) {
        const QRectF box(14 + index % 2 * 460, 10 + index / 2 * 92, 428, bandScaleHeight);
        paintBandScale(painter, box, &spec, unit, value, ink);
        ++index;
    }
}

void paintTurnScales(QPainter &painter, const Ink &ink)
{
    const SpecBand<Angle> turns{*parseBand<Angle>("3/4 turn", AngleUnit::Turn), std::nullopt};
    const SpecBand<Angle> degreesAsked{*parseBand<Angle>("80 to 100 °", AngleUnit::Degree), std::nullopt};
    const struct {
        SpecBand<Angle> spec;
        AngleUnit unit;
        std::optional<ScaleTurns> value;
    } cases[] = {
        {turns, AngleUnit::Turn, std::nullopt},
        {turns, AngleUnit::Turn, ScaleTurns{degrees(270), AngleUnit::Turn, Verdict::Inside}},
        {turns, AngleUnit::Turn, ScaleTurns{degrees(360), AngleUnit::Turn, Verdict::High}},
        {turns, AngleUnit::Turn, ScaleTurns{degrees(180), AngleUnit::Degree, Verdict::Low}},
        {degreesAsked, AngleUnit::Degree, ScaleTurns{degrees(90), AngleUnit::Degree, Verdict::Inside}},
        {degreesAsked, AngleUnit::Degree, ScaleTurns{degrees(720), AngleUnit::Degree, Verdict::High}},
    };
    int index = 0;
    for (const auto &[spec, unit, value] : cases) {
        const QRectF box(14 + index % 2 * 460, 10 + index / 2 * 92, 428, bandScaleHeight);
        paintBandScale(painter, box, &spec, unit, value, ink);
        ++index;
    }
}

} // namespace

} // namespace asleft

int main(int count, char *arguments[])
{
    using namespace asleft;
    if (count != 2) {
        std::fprintf(stderr, "show_sheets FOLDER\n");
        return 2;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication application(count, arguments);
    asleft::installTranslation(application);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const QString folder = QString::fromLocal8Bit(arguments[1]);
    QDir().mkpath(folder);
    Sheets sheets(folder);
    sheets.paint(QStringLiteral("shapes"), {1270, 840}, paintShapes);
    sheets.paint(QStringLiteral("engines"), {1270, 1500}, paintEngines);
    sheets.paint(QStringLiteral("scales"), {920, 1040}, paintScales);
    sheets.paint(QStringLiteral("turns"), {920, 290}, paintTurnScales);
    paintJointSheets([&sheets](const QString &name, QSize size, const DrawSheet &draw) { sheets.paint(name, size, draw); });
    paintHeads(sheets);
    paintTrains(sheets);
    return 0;
}
