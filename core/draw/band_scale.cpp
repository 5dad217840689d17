#include <draw/band_scale.h>

#include "scale_scene.h"

#include <words/numbers.h>
#include <words/readings.h>

#include <measure/format.h>

namespace asleft {

namespace {

template <class Q>
double amount(Q value)
{
    return static_cast<double>(value.smallest());
}

template <class Q>
ScaleEnds endsOf(const std::optional<Q> &low, const std::optional<Q> &high)
{
    ScaleEnds ends;
    if (low)
        ends.low = amount(*low);
    if (high)
        ends.high = amount(*high);
    return ends;
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

QString limitText(Angle limit, const Band<Angle> &, AngleUnit unit, Rounding)
{
    return turnedText(limit, unit);
}

/// Band and figures; a nominal that is also a limit has its figure there already.
template <class Q>
void setBand(ScaleScene &scene, const Band<Q> &band, Unit<Q> unit)
{
    scene.hasBand = true;
    scene.band = endsOf(band.low, band.high);
    if (band.low)
        scene.low = {limitText(*band.low, band, unit, Rounding::Up), amount(*band.low)};
    if (band.high)
        scene.high = {limitText(*band.high, band, unit, Rounding::Down), amount(*band.high)};
    if (band.nominal && band.nominal != band.low && band.nominal != band.high)
        scene.nominal = {limitText(*band.nominal, band, unit, Rounding::HalfEven), amount(*band.nominal)};
}

bool isEitherSide(const Interval<Length> &interval)
{
    return interval.low && interval.high && interval.lowOpen && interval.highOpen;
}

std::optional<Length> limitBroken(const ScaleValue &value, const Band<Length> *band)
{
    if (!band || !isOutside(value.verdict))
        return std::nullopt;
    return value.verdict == Verdict::Low ? band->low : band->high;
}

/// "19.7 thou", "19.7 ± 1.2 thou", "15.7 to 19.7 thou".
QString inOtherUnit(const ScaleValue &value, const Band<Length> *band)
{
    const LengthUnit unit = otherUnit(value.unit);
    const Interval<Length> &interval = value.interval;
    const auto limit = limitBroken(value, band);
    if (isEitherSide(interval)) {
        const std::int64_t low = interval.low->smallest();
        const std::int64_t half = (interval.high->smallest() - low) / 2;
        const QString middle = convertedNumber(Length::ofSmallest(low + half), unit, limit);
        return middle + QChar::Space + uncertaintyText(Length::ofSmallest(half), unit);
    }
    const bool isPoint = interval.low && interval.low == interval.high;
    const QString high = interval.high ? convertedText(*interval.high, unit, limit) : QString();
    // The unit stands once, behind the high end.
    const bool isBetween = interval.low && interval.high && !isPoint;
    const QString low = !interval.low ? QString()
                        : isBetween   ? convertedNumber(*interval.low, unit, limit)
                                      : convertedText(*interval.low, unit, limit);
    return intervalText(low, high, isPoint);
}

/// By how much it lies outside, or how likely inside where its uncertainty leaves that open.
QString verdictWords(const ScaleValue &value, const SpecBand<Length> *spec)
{
    const bool more = isOutside(value.verdict) || (value.verdict == Verdict::TooClose && isEitherSide(value.interval));
    return spec && more ? verdictText(value.interval, value.verdict, *spec, value.unit) : verdictName(value.verdict);
}

QString verdictWords(const ScaleTurns &value, const Band<Angle> *band)
{
    const auto limit = !band || !isOutside(value.verdict) ? std::nullopt : value.verdict == Verdict::Low ? band->low : band->high;
    return limit ? outsideText(value.verdict, value.turned, *limit, value.unit) : verdictName(value.verdict);
}

double stepOfTurns(AngleUnit unit)
{
    return amount(unit == AngleUnit::Turn ? degrees(4) : degrees(1));
}

} // namespace

void paintBandScale(QPainter &painter, const QRectF &area, const SpecBand<Length> *spec, LengthUnit unit,
                    const std::optional<ScaleValue> &value, const Ink &ink)
{
    ScaleScene scene;
    if (spec)
        setBand(scene, spec->printedFor(unit), unit);
    if (value) {
        scene.hasValue = true;
        scene.value = endsOf(value->interval.low, value->interval.high);
        scene.eitherSide = isEitherSide(value->interval);
        scene.verdict = value->verdict;
        scene.verdictWords = verdictWords(*value, spec);
        scene.otherUnit = inOtherUnit(*value, spec ? &spec->printedFor(value->unit) : nullptr);
    }
    scene.range = scaleRange(scene.band, scene.value, amount(stepOf(unit)));
    paintScene(painter, area, scene, ink);
}

void paintBandScale(QPainter &painter, const QRectF &area, const SpecBand<Angle> *spec, AngleUnit unit,
                    const std::optional<ScaleTurns> &value, const Ink &ink)
{
    ScaleScene scene;
    const Band<Angle> *band = spec ? &spec->printedFor(unit) : nullptr;
    if (band)
        setBand(scene, *band, unit);
    if (value) {
        scene.hasValue = true;
        scene.value = {amount(value->turned), amount(value->turned)};
        scene.verdict = value->verdict;
        scene.verdictWords = verdictWords(*value, band);
        scene.otherUnit = turnedText(value->turned, value->unit == AngleUnit::Turn ? AngleUnit::Degree : AngleUnit::Turn);
    }
    scene.range = scaleRange(scene.band, scene.value, stepOfTurns(unit));
    paintScene(painter, area, scene, ink);
}

} // namespace asleft
