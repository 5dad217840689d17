#include <words/numbers.h>

#include <measure/format.h>

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace asleft {

namespace {

class AngleWords {
    Q_DECLARE_TR_FUNCTIONS(AngleWords)
};

constexpr Angle oneTurn = degrees(360);

/// As few decimals as say it exactly, two at most.
QString decimalText(Angle value, AngleUnit unit, Rounding rounding)
{
    const DecimalMark mark = decimalMark();
    for (int decimals = 0; decimals < 2; ++decimals) {
        const std::string down = formatNumber(value, unit, decimals, mark, Rounding::Down);
        if (down == formatNumber(value, unit, decimals, mark, Rounding::Up))
            return QString::fromStdString(down);
    }
    // What is not nothing is never shown as nothing.
    const std::string number = formatNumber(value, unit, 2, mark, rounding);
    const bool vanished = number.find_first_not_of("0.,") == std::string::npos;
    return QString::fromStdString(vanished ? formatNumber(value, unit, 2, mark, Rounding::Up) : number);
}

/// The denominators screws are turned by, where one of them is exact: "3/4", "1 1/2"; nothing for a whole number.
QString fractionText(Angle value)
{
    for (const int parts : std::array{2, 3, 4, 6, 8, 12, 16}) {
        const std::int64_t times = value.smallest() * parts;
        if (times % oneTurn.smallest() != 0)
            continue;
        const std::int64_t count = times / oneTurn.smallest();
        const QString rest = QStringLiteral("%1/%2").arg(count % parts).arg(parts);
        if (count % parts == 0)
            return {};
        return count < parts ? rest : QStringLiteral("%1 %2").arg(count / parts).arg(rest);
    }
    return {};
}

QString numberText(Angle value, AngleUnit unit, Rounding rounding = Rounding::HalfEven)
{
    const QString fraction = unit == AngleUnit::Turn ? fractionText(value) : QString();
    return fraction.isEmpty() ? decimalText(value, unit, rounding) : fraction;
}

/// A number with its unit behind it; more than one turn are turns.
QString withUnit(const QString &number, AngleUnit unit, Angle largest)
{
    if (unit == AngleUnit::Degree)
        return AngleWords::tr("%1°").arg(number);
    const std::int64_t turns = (largest.smallest() + oneTurn.smallest() - 1) / oneTurn.smallest();
    return AngleWords::tr("%1 turn(s)", "number, also a fraction", static_cast<int>(std::max<std::int64_t>(turns, 1))).arg(number);
}

QString rangeText(const Band<Angle> &band)
{
    const QString low = decimalText(*band.low, band.unit, Rounding::Up);
    const QString high = decimalText(*band.high, band.unit, Rounding::Down);
    return AngleWords::tr("%1 to %2", "angles").arg(low, high);
}

} // namespace

QString unitText(AngleUnit unit)
{
    const std::string_view text = symbol(unit);
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString typedText(const Typed<Angle> &typed)
{
    const QString own = QString::fromStdString(typed.text);
    const QString whole = QString::fromStdString(formatTyped(typed));
    return own == whole ? own : withUnit(own, typed.unit, typed.value);
}

QString bandText(const Band<Angle> &band)
{
    if (band.low && band.high && band.nominal && band.low != band.high)
        return AngleWords::tr("%1 (%2)", "what is asked for, its range")
            .arg(withUnit(numberText(*band.nominal, band.unit), band.unit, *band.nominal), rangeText(band));
    if (band.low && band.high)
        return withUnit(band.low == band.high ? numberText(*band.low, band.unit) : rangeText(band), band.unit, *band.high);
    if (band.low)
        return AngleWords::tr("at least %1").arg(withUnit(numberText(*band.low, band.unit, Rounding::Up), band.unit, *band.low));
    if (band.high)
        return AngleWords::tr("at most %1").arg(withUnit(numberText(*band.high, band.unit, Rounding::Down), band.unit, *band.high));
    return QString::fromStdString(band.text);
}

QString bandText(const SpecBand<Angle> &bands)
{
    return bandText(bands.first);
}

QString turnedText(Angle value, AngleUnit unit)
{
    return withUnit(numberText(value, unit), unit, value);
}

QString degreesText(Angle angle)
{
    const double value = toDegrees(angle);
    const bool whole = angle.smallest() % anglePerDegree == 0;
    return AngleWords::tr("%1°").arg(QLocale().toString(value, 'f', whole ? 0 : 1));
}

} // namespace asleft
