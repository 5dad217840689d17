#include <words/numbers.h>
#include <words/times.h>

#include <measure/format.h>

#include <QCoreApplication>
#include <QDateTime>

#include <algorithm>

namespace asleft {

namespace {

class NumberWords {
    Q_DECLARE_TR_FUNCTIONS(NumberWords)
};

constexpr int mostDecimals = 9;

template <class Q>
QString symbolText(Unit<Q> unit)
{
    const std::string_view text = symbol(unit);
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

template <class Q>
QString numberText(Q value, Unit<Q> unit, int decimals)
{
    return QString::fromStdString(formatNumber(value, unit, decimals, decimalMark()));
}

/// With at least `decimals` decimals, and as many more as tell it from the other value.
QString numberApart(Length value, std::optional<Length> other, LengthUnit unit, int decimals)
{
    while (other && value != *other && decimals < mostDecimals && numberText(value, unit, decimals) == numberText(*other, unit, decimals))
        ++decimals;
    return numberText(value, unit, decimals);
}

/// The exact number without its symbol.
template <class Q>
QString exactText(Q value, Unit<Q> unit)
{
    QString text = QString::fromStdString(formatExact(value, unit, decimalMark()));
    text.chop(symbolText<Q>(unit).size());
    return text.trimmed();
}

template <class Q>
QString bandWords(const Band<Q> &band)
{
    const QString unit = symbolText<Q>(band.unit);
    if (band.low && band.high)
        return NumberWords::tr("%1 to %2 %3").arg(exactText(*band.low, band.unit), exactText(*band.high, band.unit), unit);
    if (band.low)
        return NumberWords::tr("at least %1 %2").arg(exactText(*band.low, band.unit), unit);
    if (band.high)
        return NumberWords::tr("at most %1 %2").arg(exactText(*band.high, band.unit), unit);
    return QString::fromStdString(band.text);
}

template <class Q>
QString bandWordsIn(const Band<Q> &band, Unit<Q> unit)
{
    const ShownLimits limits = shownLimits(band, unit, decimalMark());
    const QString low = QString::fromStdString(limits.low);
    const QString high = QString::fromStdString(limits.high);
    const QString symbol = symbolText<Q>(unit);
    if (!band.high)
        return NumberWords::tr("at least %1 %2").arg(low, symbol);
    if (!band.low)
        return NumberWords::tr("at most %1 %2").arg(high, symbol);
    return NumberWords::tr("%1 to %2 %3").arg(low, high, symbol);
}

template <class Q>
QString bothBands(const SpecBand<Q> &bands)
{
    if (!bands.second)
        return bandWords(bands.first);
    return NumberWords::tr("%1 (%2)").arg(bandWords(bands.first), bandWords(*bands.second));
}

QDateTime localTime(Moment at)
{
    return QDateTime::fromMSecsSinceEpoch(at.utcMilliseconds);
}

} // namespace

DecimalMark decimalMark(const QLocale &locale)
{
    return locale.decimalPoint() == QStringLiteral(",") ? DecimalMark::Comma : DecimalMark::Point;
}

QString unitText(LengthUnit unit)
{
    return symbolText<Length>(unit);
}

QStringList lengthUnitTexts()
{
    QStringList texts;
    for (const LengthUnit unit : lengthUnits)
        texts.append(unitText(unit));
    return texts;
}

QString unitText(TorqueUnit unit)
{
    return symbolText<Torque>(unit);
}

QString typedText(const Typed<Length> &typed)
{
    return QString::fromStdString(formatTyped(typed));
}

QString typedText(const Typed<Torque> &typed)
{
    return QString::fromStdString(formatTyped(typed));
}

QString exactNumber(Length value, LengthUnit unit)
{
    return exactText(value, unit);
}

QString convertedNumber(Length value, LengthUnit unit, std::optional<Length> beside)
{
    return numberApart(value, beside, unit, stepDecimals(unit) + 1);
}

QString convertedText(Length value, LengthUnit unit, std::optional<Length> beside)
{
    return NumberWords::tr("%1 %2", "number, unit").arg(convertedNumber(value, unit, beside), unitText(unit));
}

QString intervalText(const QString &low, const QString &high, bool isPoint)
{
    if (isPoint)
        return low;
    if (low.isEmpty())
        return high.isEmpty() ? QString() : NumberWords::tr("less than %1").arg(high);
    return high.isEmpty() ? NumberWords::tr("more than %1").arg(low) : NumberWords::tr("%1 to %2").arg(low, high);
}

LengthUnit otherUnit(LengthUnit unit)
{
    return systemOf(unit) == UnitSystem::Metric ? LengthUnit::Thou : LengthUnit::Millimetre;
}

QString numberBeside(Length value, Length limit, LengthUnit unit)
{
    return numberApart(value, limit, unit, stepDecimals(unit));
}

QString amountText(Length amount, LengthUnit unit)
{
    const QString number = numberBeside(amount, Length(), unit);
    return NumberWords::tr("%1 %2", "number, unit").arg(number, unitText(unit));
}

QString bandTextIn(const Band<Length> &band, LengthUnit unit)
{
    return bandWordsIn(band, unit);
}

QString bandTextIn(const Band<Torque> &band, TorqueUnit unit)
{
    return bandWordsIn(band, unit);
}

QString bandText(const Band<Length> &band)
{
    return bandWords(band);
}

QString bandText(const Band<Torque> &band)
{
    return bandWords(band);
}

QString bandText(const SpecBand<Length> &bands)
{
    return bothBands(bands);
}

QString bandText(const SpecBand<Torque> &bands)
{
    return bothBands(bands);
}

QString momentText(Moment at, Moment now)
{
    const QDateTime then = localTime(at);
    const QDate today = localTime(now).date();
    if (then.date() == today)
        return QLocale().toString(then.time(), NumberWords::tr("HH:mm", "time of day, as QLocale spells formats"));
    if (then.date().year() == today.year())
        return QLocale().toString(then.date(), NumberWords::tr("d MMM", "day and month, as QLocale spells formats"));
    return QLocale().toString(then.date(), NumberWords::tr("d MMM yyyy", "day, month and year, as QLocale spells formats"));
}

QString momentText(Moment at)
{
    return QLocale().toString(localTime(at), QLocale::ShortFormat);
}

} // namespace asleft
