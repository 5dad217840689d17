#include "joint_sheets.h"

#include "joint_samples.h"

#include <draw/fonts.h>

#include <QPainter>

namespace asleft {

namespace {

void paintLegend(QPainter &painter, const Ink &ink)
{
    const QList<FastenerLegendLine> lines = fastenerLegend();
    for (qsizetype index = 0; index < lines.size(); ++index) {
        const double x = 10 + static_cast<double>(index % 3) * 420;
        const double y = 8 + static_cast<double>(index / 3) * 84;
        painter.fillRect(QRectF(x, y, 230, 80), ink.casting);
        FastenerLook look = lines[index].look;
        paintFastener(painter, QRectF(x + 4, y + 4, 72, 72), look, ink);
        paintFastener(painter, QRectF(x + 80, y + 18, 44, 44), look, ink);
        look.toTick = true;
        look.inHand = index % 2 == 0;
        paintFastener(painter, QRectF(x + 130, y + 8, 64, 64), look, ink);
        paintFastener(painter, QRectF(x + 200, y + 30, 20, 20), lines[index].look, ink);
        painter.setFont(textFont(TextSize::Small));
        painter.setPen(ink.quietText);
        painter.drawText(QRectF(x + 240, y, 170, 80), Qt::AlignVCenter | Qt::TextWordWrap, lines[index].words);
    }
}

/// As on the bench in the second of two passes: some done, one in hand, the rest to be ticked.
FastenerLook lookAt(std::size_t turn, std::size_t count)
{
    const std::size_t done = count / 3;
    if (turn < done) {
        const Verdict verdicts[] = {Verdict::Inside, Verdict::Inside, Verdict::Low, Verdict::ByFeel, Verdict::TooClose, Verdict::High};
        return {.stage = FastenerStage::Tight, .verdict = verdicts[turn % 6]};
    }
    FastenerLook look{.stage = turn % 5 == 4 ? FastenerStage::Loose : FastenerStage::Partway, .toTick = true};
    look.amiss = turn == count - 1;
    look.inHand = turn == done;
    return look;
}

void paintSample(QPainter &painter, const Pattern &pattern, QSizeF size, const Ink &ink)
{
    const TighteningOrder order = generateOrder(pattern);
    const JointPlan plan = planJoint(pattern, order, size);
    paintJoint(painter, plan, ink, true, static_cast<qsizetype>(order.size() / 3));
    for (std::size_t turn = 0; turn < order.size(); ++turn) {
        for (std::size_t index = 0; index < pattern.places.size(); ++index) {
            if (pattern.places[index].number == order[turn])
                paintFastener(painter, plan.fastenerRect(static_cast<qsizetype>(index)), lookAt(turn, order.size()), ink);
        }
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(ink.line);
    painter.drawRect(QRectF(QPointF(), plan.size));
}

} // namespace

void paintJointSheets(const PaintSheet &paint)
{
    paint(QStringLiteral("fasteners"), {1270, 440}, paintLegend);
    std::vector<JointSample> samples = jointSamples();
    const std::vector<JointSample> largest = largestJoints();
    samples.insert(samples.end(), largest.begin(), largest.end());
    for (const QSize size : {QSize(280, 160), QSize(600, 330), QSize(900, 520), QSize(1400, 800)}) {
        for (const auto &[name, pattern] : samples) {
            const QString file = QStringLiteral("joint-%1-%2").arg(QString::fromStdString(name)).arg(size.width());
            paint(file, size, [&, &places = pattern](QPainter &painter, const Ink &ink) { paintSample(painter, places, size, ink); });
        }
    }
}

} // namespace asleft
