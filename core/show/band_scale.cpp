#include <show/band_scale.h>

#include "scale_range.h"

#include <show/fonts.h>
#include <show/words.h>

#include <QFontMetricsF>
#include <QPainter>

#include <array>
#include <cmath>

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
    [[nodiscard]] double x(Length value) const { return area.left() + range.share(value) * area.width(); }
};

bool isOutside(Verdict verdict)
{
    return verdict == Verdict::Low || verdict == Verdict::High;
}

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

void paintBar(const Scale &scale, const Band<Length> *band)
{
    const QRectF bar = scale.bar();
    scale.painter.fillRect(bar, scale.ink.track);
    if (!band)
        return;
    const double left = band->low ? scale.x(*band->low) : bar.left();
    const double right = band->high ? scale.x(*band->high) : bar.right();
    scale.painter.fillRect(QRectF(left, bar.top(), right - left, bar.height()), scale.ink.band);
    if (band->low)
        paintTick(scale, left);
    if (band->high)
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

bool overlap(const QRectF &a, const QRectF &b)
{
    return a.left() < b.right() + leastGap && b.left() < a.right() + leastGap;
}

/// A limit in the unit of the scale: exactly as printed, or rounded inward.
QString limitText(Length limit, const Band<Length> &band, LengthUnit unit, Rounding inward)
{
    const int decimals = stepDecimals(unit) + (unit == LengthUnit::Thou ? 1 : 0);
    QString exact = exactNumber(limit, unit);
    const qsizetype mark = exact.indexOf(QLocale().decimalPoint());
    const bool isShort = mark < 0 || exact.size() - mark - 1 <= decimals;
    if (unit == band.unit || isShort)
        return exact;
    return QString::fromStdString(formatNumber(limit, unit, decimals, decimalMark(), inward));
}

std::optional<Figure> lowFigure(const Scale &scale, const Band<Length> &band, LengthUnit unit)
{
    return band.low ? std::optional(Figure{limitText(*band.low, band, unit, Rounding::Up), scale.x(*band.low)}) : std::nullopt;
}

std::optional<Figure> highFigure(const Scale &scale, const Band<Length> &band, LengthUnit unit)
{
    return band.high ? std::optional(Figure{limitText(*band.high, band, unit, Rounding::Down), scale.x(*band.high)}) : std::nullopt;
}

/// A nominal that is also a limit has its figure there already.
std::optional<Figure> nominalFigure(const Scale &scale, const Band<Length> &band, LengthUnit unit)
{
    if (!band.nominal || band.nominal == band.low || band.nominal == band.high)
        return std::nullopt;
    return Figure{limitText(*band.nominal, band, unit, Rounding::HalfEven), scale.x(*band.nominal), true};
}

void paintFigure(const Scale &scale, const Figure &figure)
{
    scale.painter.setFont(textFont(figure.strong ? TextSize::SmallStrong : TextSize::Small));
    scale.painter.setPen(figure.strong ? scale.ink.text : scale.ink.quietText);
    scale.painter.drawText(figure.box(scale.area), Qt::AlignCenter | Qt::TextDontClip, figure.text);
}

void paintFigures(const Scale &scale, const Band<Length> &band, LengthUnit unit)
{
    auto low = lowFigure(scale, band, unit);
    auto high = highFigure(scale, band, unit);
    auto nominal = nominalFigure(scale, band, unit);
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

bool isPoint(const Interval<Length> &interval)
{
    return interval.low && interval.low == interval.high;
}

/// An end beyond the scale is an arrow at its edge.
void paintEnd(const Scale &scale, const std::optional<Length> &end, bool toRight, const QColor &colour)
{
    if (!end || !scale.range.holds(*end))
        paintArrow(scale, end ? scale.range.beyond(*end) > 0 : toRight, colour);
    else
        paintMark(scale, onScale(scale, scale.x(*end)), colour);
}

void paintValue(const Scale &scale, const ScaleValue &value)
{
    const QColor colour = markColour(value.verdict, scale.ink);
    const Interval<Length> &interval = value.interval;
    const double from = interval.low ? scale.x(*interval.low) : scale.bar().left();
    const double to = interval.high ? scale.x(*interval.high) : scale.bar().right();
    if (!isPoint(interval)) {
        paintSpan(scale, from, to, colour);
        paintEnd(scale, interval.high, true, colour);
    }
    paintEnd(scale, interval.low, false, colour);
    if (isOutside(value.verdict)) {
        const double x = isPoint(interval) ? from : value.verdict == Verdict::High && interval.low ? from : to;
        paintWedge(scale, onScale(scale, x), value.verdict == Verdict::High);
    }
}

std::optional<Length> limitBroken(const ScaleValue &value, const Band<Length> *band)
{
    if (!band || !isOutside(value.verdict))
        return std::nullopt;
    return value.verdict == Verdict::Low ? band->low : band->high;
}

QString inOtherUnit(const ScaleValue &value, const Band<Length> *band)
{
    const LengthUnit unit = otherUnit(value.unit);
    const auto limit = limitBroken(value, band);
    const Interval<Length> &interval = value.interval;
    QString low = interval.low ? convertedText(*interval.low, unit, limit) : QString();
    const QString high = interval.high ? convertedText(*interval.high, unit, limit) : QString();
    if (interval.low && interval.high && !isPoint(interval))
        low = low.chopped(unitText(unit).size()).trimmed();
    return intervalText(low, high, isPoint(interval));
}

void paintWords(const Scale &scale, const SpecBand<Length> *spec, const ScaleValue &value)
{
    const QRectF line(scale.area.left(), scale.area.top(), scale.area.width(), wordsHeight);
    const QString other = inOtherUnit(value, spec ? &spec->printedFor(value.unit) : nullptr);
    const QFont quiet = textFont(TextSize::Small);
    const QFont strong = textFont(TextSize::SmallStrong);
    const double otherWidth = QFontMetricsF(quiet).horizontalAdvance(other);
    scale.painter.setFont(quiet);
    scale.painter.setPen(scale.ink.quietText);
    scale.painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, other);

    const bool amount = spec && isOutside(value.verdict);
    const QString verdict = amount ? verdictText(value.interval, value.verdict, *spec, value.unit) : verdictName(value.verdict);
    const double room = line.width() - otherWidth - leastGap;
    scale.painter.setFont(strong);
    scale.painter.setPen(isOutside(value.verdict) ? scale.ink.wedgeText : scale.ink.text);
    scale.painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, QFontMetricsF(strong).elidedText(verdict, Qt::ElideRight, room));
}

} // namespace

void paintBandScale(QPainter &painter, const QRectF &area, const SpecBand<Length> *spec, LengthUnit unit,
                    const std::optional<ScaleValue> &value, const Ink &ink)
{
    const Band<Length> *band = spec ? &spec->printedFor(unit) : nullptr;
    const Scale scale{painter, area, scaleRange(band, value ? &value->interval : nullptr, unit), ink};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintBar(scale, band);
    if (band)
        paintFigures(scale, *band, unit);
    if (value) {
        paintValue(scale, *value);
        paintWords(scale, spec, *value);
    }
    painter.restore();
}

} // namespace asleft
