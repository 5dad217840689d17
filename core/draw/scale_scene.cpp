#include "scale_scene.h"

#include <draw/fonts.h>

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace asleft {

namespace {

constexpr double wordsHeight = 18;
constexpr double barTop = 30;
constexpr double barHeight = 15;
constexpr double figuresTop = 55;
constexpr double figuresHeight = 17;
constexpr double tickReach = 5;
constexpr double leastGap = 8; // between two figures

struct Scale {
    QPainter &painter;
    QRectF area;
    ScaleRange range;
    const Ink &ink;

    [[nodiscard]] QRectF bar() const { return {area.left(), area.top() + barTop, area.width(), barHeight}; }
    [[nodiscard]] double x(double value) const { return area.left() + range.share(value) * area.width(); }
};

QColor markColour(Verdict verdict, const Ink &ink)
{
    if (isOutside(verdict))
        return ink.wedge;
    return verdict == Verdict::Inside ? ink.accent : ink.shape;
}

void paintTick(const Scale &scale, double x)
{
    const QRectF bar = scale.bar();
    scale.painter.setPen(QPen(scale.ink.strongLine, 2, Qt::SolidLine, Qt::FlatCap));
    scale.painter.drawLine(QPointF(x, bar.top() - tickReach), QPointF(x, bar.bottom() + tickReach));
}

void paintBar(const Scale &scale, const ScaleScene &scene)
{
    const QRectF bar = scale.bar();
    scale.painter.fillRect(bar, scale.ink.track);
    if (!scene.hasBand)
        return;
    const double left = scene.band.low ? scale.x(*scene.band.low) : bar.left();
    const double right = scene.band.high ? scale.x(*scene.band.high) : bar.right();
    scale.painter.fillRect(QRectF(left, bar.top(), right - left, bar.height()), scale.ink.band);
    if (scene.band.low)
        paintTick(scale, left);
    if (scene.band.high)
        paintTick(scale, right);
}

/// One figure under the bar.
struct Figure {
    QString text;
    double x = 0;
    bool strong = false;
    bool left = false; ///< stands to the left of its tick instead of centred under it
    bool right = false;

    [[nodiscard]] QRectF box(const QRectF &area) const
    {
        const double width = QFontMetricsF(textFont(strong ? TextSize::SmallStrong : TextSize::Small)).horizontalAdvance(text);
        const double start = left ? x - width : right ? x : x - width / 2;
        const double inside = std::clamp(start, area.left(), std::max(area.left(), area.right() - width));
        return {inside, area.top() + figuresTop, width, figuresHeight};
    }
};

std::optional<Figure> figureOf(const Scale &scale, const ScaleFigure &figure, bool strong = false)
{
    return figure.text.isEmpty() ? std::nullopt : std::optional(Figure{figure.text, scale.x(figure.at), strong});
}

bool overlap(const QRectF &a, const QRectF &b)
{
    return a.left() < b.right() + leastGap && b.left() < a.right() + leastGap;
}

void paintFigure(const Scale &scale, const Figure &figure)
{
    scale.painter.setFont(textFont(figure.strong ? TextSize::SmallStrong : TextSize::Small));
    scale.painter.setPen(figure.strong ? scale.ink.text : scale.ink.quietText);
    scale.painter.drawText(figure.box(scale.area), Qt::AlignCenter | Qt::TextDontClip, figure.text);
}

void paintFigures(const Scale &scale, const ScaleScene &scene)
{
    auto low = figureOf(scale, scene.low);
    auto high = figureOf(scale, scene.high);
    auto nominal = figureOf(scale, scene.nominal, true);
    const auto meets = [&](const std::optional<Figure> &a, const std::optional<Figure> &b) {
        return a && b && overlap(a->box(scale.area), b->box(scale.area));
    };
    if (meets(nominal, low) || meets(nominal, high))
        nominal.reset();
    if (meets(low, high)) {
        low->left = true;
        high->right = true;
        low->x -= leastGap / 2;
        high->x += leastGap / 2;
        if (meets(low, high))
            high.reset();
    }
    for (const auto *figure : {&low, &nominal, &high}) {
        if (*figure)
            paintFigure(scale, **figure);
    }
}

/// Far enough from the ends for a mark and its wedge to be seen whole.
double onScale(const Scale &scale, double x)
{
    return std::clamp(x, scale.area.left() + 7, std::max(scale.area.left() + 7, scale.area.right() - 7));
}

void paintWedge(const Scale &scale, double x, bool above)
{
    const QRectF bar = scale.bar();
    const double base = above ? bar.top() - 3 : bar.bottom() + 3;
    const double tip = above ? base - 8 : base + 8;
    scale.painter.setPen(Qt::NoPen);
    scale.painter.setBrush(scale.ink.wedge);
    scale.painter.drawPolygon(QPolygonF{{QPointF(x - 7, base), QPointF(x + 7, base), QPointF(x, tip)}});
}

void paintMark(const Scale &scale, double x, const QColor &colour)
{
    const QRectF bar = scale.bar().adjusted(0, -2, 0, 2);
    scale.painter.fillRect(QRectF(x - 3, bar.top(), 6, bar.height()), colour);
}

/// An arrow head at the end of the scale: what was learned goes on beyond it.
void paintArrow(const Scale &scale, bool toRight, const QColor &colour)
{
    const QRectF bar = scale.bar();
    const double tip = toRight ? bar.right() : bar.left();
    const double back = toRight ? tip - 11 : tip + 11;
    scale.painter.setPen(Qt::NoPen);
    scale.painter.setBrush(colour);
    scale.painter.drawPolygon(QPolygonF{{QPointF(back, bar.top()), QPointF(back, bar.bottom()), QPointF(tip, bar.center().y())}});
}

void paintSpan(const Scale &scale, double from, double to, const QColor &colour)
{
    const QRectF bar = scale.bar();
    scale.painter.fillRect(QRectF(from, bar.center().y() - 2, to - from, 4), colour);
}

/// An end beyond the scale is an arrow at its edge.
void paintEnd(const Scale &scale, std::optional<double> end, bool toRight, const QColor &colour)
{
    if (!end || !scale.range.holds(*end))
        paintArrow(scale, end ? scale.range.beyond(*end) > 0 : toRight, colour);
    else
        paintMark(scale, onScale(scale, scale.x(*end)), colour);
}

/// A thin end of an uncertainty, on paper so that it is seen over the band's edge as well.
void paintReach(const Scale &scale, double x, const QColor &colour)
{
    const QRectF bar = scale.bar();
    scale.painter.fillRect(QRectF(x - 1, bar.top() + 1, 2, bar.height() - 2), colour);
}

/// The value as it was read, and how far the truth may lie to either side.
void paintEitherSide(const Scale &scale, const ScaleEnds &value, const QColor &colour)
{
    const double from = scale.x(*value.low);
    const double to = scale.x(*value.high);
    paintSpan(scale, from, to, colour);
    for (const auto &[end, x] : {std::pair(*value.low, from), std::pair(*value.high, to)}) {
        if (scale.range.holds(end))
            paintReach(scale, x, colour);
        else
            paintArrow(scale, scale.range.beyond(end) > 0, colour);
    }
    const double middle = (*value.low + *value.high) / 2;
    if (scale.range.holds(middle))
        paintMark(scale, onScale(scale, scale.x(middle)), colour);
}

/// Where the wedge of a value outside its band stands: at its mark, or the end nearest the band.
double wedgeAt(const Scale &scale, const ScaleScene &scene)
{
    const ScaleEnds &value = scene.value;
    if (scene.eitherSide)
        return scale.x((*value.low + *value.high) / 2);
    if (value.low && (value.isPoint() || scene.verdict == Verdict::High))
        return scale.x(*value.low);
    return value.high ? scale.x(*value.high) : scale.bar().right();
}

void paintValue(const Scale &scale, const ScaleScene &scene)
{
    const QColor colour = markColour(scene.verdict, scale.ink);
    const ScaleEnds &value = scene.value;
    if (scene.eitherSide) {
        paintEitherSide(scale, value, colour);
    } else if (value.isPoint()) {
        paintEnd(scale, value.low, false, colour);
    } else {
        paintSpan(scale, value.low ? scale.x(*value.low) : scale.bar().left(), value.high ? scale.x(*value.high) : scale.bar().right(),
                  colour);
        paintEnd(scale, value.high, true, colour);
        paintEnd(scale, value.low, false, colour);
    }
    if (isOutside(scene.verdict))
        paintWedge(scale, onScale(scale, wedgeAt(scale, scene)), scene.verdict == Verdict::High);
}

void paintWords(const Scale &scale, const ScaleScene &scene)
{
    const QRectF line(scale.area.left(), scale.area.top(), scale.area.width(), wordsHeight);
    const QFont quiet = textFont(TextSize::Small);
    const QFont strong = textFont(TextSize::SmallStrong);
    const double otherWidth = QFontMetricsF(quiet).horizontalAdvance(scene.otherUnit);
    scale.painter.setFont(quiet);
    scale.painter.setPen(scale.ink.quietText);
    scale.painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, scene.otherUnit);
    const double room = line.width() - otherWidth - leastGap;
    scale.painter.setFont(strong);
    scale.painter.setPen(isOutside(scene.verdict) ? scale.ink.wedgeText : scale.ink.text);
    scale.painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                           QFontMetricsF(strong).elidedText(scene.verdictWords, Qt::ElideRight, room));
}

} // namespace

void paintScene(QPainter &painter, const QRectF &area, const ScaleScene &scene, const Ink &ink)
{
    const Scale scale{painter, area, scene.range, ink};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintBar(scale, scene);
    if (scene.hasBand)
        paintFigures(scale, scene);
    if (scene.hasValue) {
        paintValue(scale, scene);
        paintWords(scale, scene);
    }
    painter.restore();
}

} // namespace asleft
