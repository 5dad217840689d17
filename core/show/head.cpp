#include <show/head.h>

#include <QFontMetricsF>
#include <QPainter>

#include <cmath>

namespace asleft {

namespace {

QPainterPath chamfered(const QRectF &box, double corner)
{
    QPainterPath path(QPointF(box.left() + corner, box.top()));
    path.lineTo(box.right() - corner, box.top());
    path.lineTo(box.right(), box.top() + corner);
    path.lineTo(box.right(), box.bottom() - corner);
    path.lineTo(box.right() - corner, box.bottom());
    path.lineTo(box.left() + corner, box.bottom());
    path.lineTo(box.left(), box.bottom() - corner);
    path.lineTo(box.left(), box.top() + corner);
    path.closeSubpath();
    return path;
}

void paintCasting(QPainter &painter, const QRectF &casting, const Ink &ink)
{
    painter.setBrush(ink.casting);
    painter.setPen(QPen(ink.edge, 1.4));
    painter.drawPath(chamfered(casting, std::min(14.0, casting.height() / 6)));
}

/// Barrels between the crankcase and the two heads of a flat engine, so that the heads are seen to face away from each other.
void paintCrankcase(QPainter &painter, const HeadPlan &plan, const Ink &ink)
{
    if (plan.crankcase.isEmpty())
        return;
    painter.setPen(QPen(ink.edge, 1));
    painter.setBrush(ink.paper);
    for (const PlacedText &number : plan.numbers) {
        const bool above = number.box.center().y() < plan.crankcase.center().y();
        const double from = above ? plan.castings.first().bottom() : plan.crankcase.center().y();
        const double to = above ? plan.crankcase.center().y() : plan.castings.last().top();
        const double width = std::min(plan.pointDiameter * 0.9, number.box.width() * 0.7);
        painter.drawRect(QRectF(number.box.center().x() - width / 2, from, width, to - from));
    }
    painter.setBrush(ink.casting);
    painter.drawPath(chamfered(plan.crankcase, plan.crankcase.height() / 4));
}

void paintText(QPainter &painter, const PlacedText &text, const QColor &colour, bool strong)
{
    painter.setFont(textFont(strong ? TextSize::SmallStrong : text.size));
    painter.setPen(colour);
    painter.drawText(text.box, static_cast<int>(text.alignment) | Qt::TextDontClip | Qt::TextSingleLine, text.text);
}

void paintPointLabels(QPainter &painter, const HeadPlan &plan, const Ink &ink, const QList<PointLook> &looks)
{
    for (qsizetype index = 0; index < plan.pointLabels.size(); ++index) {
        const bool strong = index < looks.size() && (looks[index].here == Here::InPlan || looks[index].inHand);
        paintText(painter, plan.pointLabels[index], strong ? ink.text : ink.quietText, strong);
    }
}

} // namespace

void paintHead(QPainter &painter, const HeadPlan &plan, const Ink &ink, const QList<PointLook> &looks)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintCrankcase(painter, plan, ink);
    for (const QRectF &casting : plan.castings)
        paintCasting(painter, casting, ink);
    for (const PlacedText &label : plan.labels)
        paintText(painter, label, ink.quietText, false);
    for (const PlacedText &number : plan.numbers)
        paintText(painter, number, ink.quietText, false);
    paintPointLabels(painter, plan, ink, looks);
    painter.restore();
}

QPainterPath leaderLine(QPointF middle, double ring, QPointF foot)
{
    const double aside = foot.x() - middle.x();
    const double diagonal = ring * M_SQRT1_2;
    QPainterPath path;
    if (std::abs(aside) <= diagonal) {
        path.moveTo(foot.x(), middle.y() + std::sqrt(ring * ring - aside * aside));
    } else {
        const double side = aside < 0 ? -1 : 1;
        path.moveTo(middle + QPointF(side * diagonal, diagonal));
        path.lineTo(foot.x(), middle.y() + std::abs(aside));
    }
    path.lineTo(foot);
    return path;
}

QPainterPath leaderLine(const HeadPlan &plan, qsizetype point, double barTop)
{
    return leaderLine(plan.points.at(point), ringRadius(plan.pointDiameter), {plan.leaderX.at(point), barTop});
}

void paintLeaderLine(QPainter &painter, const QPainterPath &line, const Ink &ink)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.strongLine, 2.5, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.drawPath(line);
    painter.restore();
}

} // namespace asleft
