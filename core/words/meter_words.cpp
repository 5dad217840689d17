#include <words/vehicles.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

class MeterWords {
    Q_DECLARE_TR_FUNCTIONS(MeterWords)
};

QString withUnit(const QString &number, MeterUnit unit)
{
    switch (unit) {
    case MeterUnit::Kilometre: return MeterWords::tr("%1 km").arg(number);
    case MeterUnit::Mile: return MeterWords::tr("%1 mi").arg(number);
    case MeterUnit::Hour: return MeterWords::tr("%1 h").arg(number);
    }
    return number;
}

/// Thousands parted by a thin space that does not break: no comma to be taken for a decimal mark.
QString grouped(std::int64_t whole)
{
    QString digits = QString::number(whole);
    for (qsizetype place = digits.size() - 3; place > 0; place -= 3)
        digits.insert(place, QChar(0x202f));
    return digits;
}

/// Whole, or with one decimal where the meter was read finer.
QString totalNumber(std::int64_t thousandths)
{
    const std::int64_t tenths = (thousandths + 50) / 100;
    const QString whole = grouped(tenths / 10);
    return tenths % 10 == 0 ? whole : whole + QLocale().decimalPoint() + QString::number(tenths % 10);
}

QString metersText(std::int64_t count)
{
    switch (count) {
    case 2: return MeterWords::tr("two meters");
    case 3: return MeterWords::tr("three meters");
    case 4: return MeterWords::tr("four meters");
    default: return MeterWords::tr("%n meter(s)", nullptr, static_cast<int>(count));
    }
}

} // namespace

QString meterText(const MeterReading &reading)
{
    const QString text = QString::fromStdString(reading.text).trimmed();
    return text.isEmpty() || !text.back().isDigit() ? text : withUnit(text, reading.unit);
}

QString meterTotalText(const std::vector<MeterReading> &readings)
{
    const auto replaced = std::count_if(readings.begin(), readings.end(), [](const MeterReading &reading) { return reading.replaced; });
    const auto total = meterTotal(readings);
    if (replaced == 0 || !total)
        return {};
    return MeterWords::tr("%1 over %2", "distance or hours, number of meters")
        .arg(withUnit(totalNumber(*total), readings.back().unit), metersText(replaced + 1));
}

QString vehicleNumberText(const VehicleNumber &number)
{
    switch (number.check) {
    case NumberCheck::None: return {};
    case NumberCheck::NoCheckDigit: return MeterWords::tr("No check digit to compare. Kept as typed.");
    case NumberCheck::Agrees: return MeterWords::tr("The check digit agrees.");
    case NumberCheck::Differs: break;
    }
    if (!number.expected)
        return MeterWords::tr("The check digit does not agree. Kept as typed; compare it with the number on the vehicle.");
    return MeterWords::tr("The check digit, the ninth, would be %1. Kept as typed; compare it with the number on the vehicle.")
        .arg(QChar::fromLatin1(*number.expected));
}

} // namespace asleft
