#include <words/numbers.h>
#include <words/times.h>

#include <measure/format.h>

#include <QCoreApplication>
#include <QDate>

#include <cmath>

namespace asleft {

namespace {

class TorqueWords {
    Q_DECLARE_TR_FUNCTIONS(TorqueWords)
};

constexpr int mostTorqueDecimals = 9;
/// Rounded so that it is off by less than a hundredth of itself.
constexpr double stepsAValueHas = 100;
/// Two typed limits in pounds are each rounded to the smallest unit, and so may lie unevenly by as much.
constexpr std::int64_t roundedTwice = 2;

QString withoutZerosBehind(QString number)
{
    if (!number.contains(u'.') && !number.contains(u','))
        return number;
    while (number.endsWith(u'0'))
        number.chop(1);
    if (number.endsWith(u'.') || number.endsWith(u','))
        number.chop(1);
    return number;
}

qsizetype decimalsOf(const QString &number)
{
    const qsizetype mark = number.lastIndexOf(decimalMark() == DecimalMark::Comma ? u',' : u'.');
    return mark < 0 ? 0 : number.size() - mark - 1;
}

int decimalsFor(Torque value, TorqueUnit unit)
{
    int decimals = stepDecimals(unit) + 1;
    double steps = std::abs(static_cast<double>(value.smallest())) / factor(unit).toDouble() * std::pow(10, decimals);
    for (; steps > 0 && steps < stepsAValueHas && decimals < mostTorqueDecimals; steps *= 10)
        ++decimals;
    return decimals;
}

template <class Q>
QString exactDigits(Q value, Unit<Q> unit)
{
    QString text = QString::fromStdString(formatExact(value, unit, decimalMark()));
    text.chop(unitText(unit).size());
    return withoutZerosBehind(text.trimmed());
}

QString withDecimals(Torque value, TorqueUnit unit, int decimals)
{
    return withoutZerosBehind(QString::fromStdString(formatNumber(value, unit, decimals, decimalMark())));
}

QString withUnit(const QString &number, TorqueUnit unit)
{
    return TorqueWords::tr("%1 %2", "number, unit").arg(number, unitText(unit));
}

bool isEven(const Band<Torque> &band)
{
    if (!band.nominal || !band.low || !band.high)
        return false;
    const std::int64_t uneven = (*band.high - *band.nominal).smallest() - (*band.nominal - *band.low).smallest();
    return std::abs(uneven) <= roundedTwice;
}

QString oneBand(const Band<Torque> &band)
{
    if (band.toleranceAssumed && band.nominal)
        return torqueText(*band.nominal, band.unit);
    if (isEven(band))
        return TorqueWords::tr("%1 ± %2 %3", "torque, tolerance, unit")
            .arg(torqueNumber(*band.nominal, band.unit), torqueNumber(*band.high - *band.nominal, band.unit), unitText(band.unit));
    if (band.low && band.high)
        return TorqueWords::tr("%1 to %2 %3", "torques, unit")
            .arg(torqueNumber(*band.low, band.unit), torqueNumber(*band.high, band.unit), unitText(band.unit));
    if (band.low)
        return TorqueWords::tr("at least %1").arg(torqueText(*band.low, band.unit));
    return band.high ? TorqueWords::tr("at most %1").arg(torqueText(*band.high, band.unit)) : QString::fromStdString(band.text);
}

} // namespace

QString torqueNumber(Torque value, TorqueUnit unit, std::optional<Torque> beside)
{
    const QString exact = exactDigits(value, unit);
    int decimals = decimalsFor(value, unit);
    if (decimalsOf(exact) <= decimals)
        return exact;
    while (beside && value != *beside && decimals < mostTorqueDecimals &&
           withDecimals(value, unit, decimals) == withDecimals(*beside, unit, decimals))
        ++decimals;
    return withDecimals(value, unit, decimals);
}

QString torqueText(Torque value, TorqueUnit unit, std::optional<Torque> beside)
{
    return withUnit(torqueNumber(value, unit, beside), unit);
}

QString torqueBandText(const SpecBand<Torque> &bands)
{
    return bands.second ? TorqueWords::tr("%1 (%2)", "band, the same in the other system").arg(oneBand(bands.first), oneBand(*bands.second))
                        : oneBand(bands.first);
}

QString shortLengthText(Length value, LengthUnit unit)
{
    return TorqueWords::tr("%1 %2", "number, unit").arg(exactDigits(value, unit), unitText(unit));
}

QString dateText(std::chrono::sys_days day)
{
    const std::chrono::year_month_day date(day);
    const QDate shown(static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
                      static_cast<int>(static_cast<unsigned>(date.day())));
    return QLocale().toString(shown, TorqueWords::tr("d MMM yyyy", "day, month and year, as QLocale spells formats"));
}

} // namespace asleft
