#include <words/errors.h>
#include <words/job.h>
#include <words/numbers.h>
#include <words/readings.h>
#include <words/specs.h>
#include <words/times.h>
#include <words/tools.h>

#include <measure/format.h>
#include <shop/entry.h>

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

namespace asleft {

namespace {

class MeasuringWords {
    Q_DECLARE_TR_FUNCTIONS(MeasuringWords)
};

constexpr std::int64_t minutesAnHour = 60;
constexpr std::int64_t hoursUntilDaysAreSaid = 72;

double amount(Length length)
{
    return static_cast<double>(length.smallest());
}

/// Rounded up, since it must not look better than it is, but by a tenth at most.
QString roundedUp(Length length, LengthUnit unit)
{
    for (int decimals = stepDecimals(unit); decimals < 9; ++decimals) {
        const std::string number = formatNumber(length, unit, decimals, DecimalMark::Point, Rounding::Up);
        const auto shown = parse<Length>(number, unit);
        if (shown && amount(shown->value) <= 1.1 * amount(length))
            return QString::fromStdString(formatNumber(length, unit, decimals, decimalMark(), Rounding::Up));
    }
    return exactNumber(length, unit);
}

std::optional<Interval<Length>> meantInterval(const ReadingText &reading, LengthUnit meant)
{
    const auto value = sameDigits(reading.value.value, reading.value.unit, meant);
    const auto next = reading.next ? sameDigits(reading.next->value, reading.next->unit, meant) : std::nullopt;
    if (!value)
        return std::nullopt;
    return next && *value < *next ? Interval<Length>::bracket(*value, *next) : Interval<Length>::point(*value);
}

QString withUnit(Length value, LengthUnit unit)
{
    return MeasuringWords::tr("%1 %2", "number, unit").arg(exactNumber(value, unit), unitText(unit));
}

QString intervalIn(const Interval<Length> &interval, LengthUnit unit)
{
    const bool isPoint = interval.low == interval.high;
    const QString low = interval.low ? (isPoint ? withUnit(*interval.low, unit) : exactNumber(*interval.low, unit)) : QString();
    return intervalText(low, interval.high ? withUnit(*interval.high, unit) : QString(), isPoint);
}

QString typedReading(const ReadingText &reading)
{
    return reading.next ? intervalText(typedText(reading.value), typedText(*reading.next), false) : typedText(reading.value);
}

} // namespace

QString uncertaintyText(Length uncertainty, LengthUnit unit)
{
    return MeasuringWords::tr("± %1 %2", "number, unit").arg(roundedUp(uncertainty, unit), unitText(unit));
}

QString likelihoodText(double probability)
{
    const long percent = std::lround(probability * 100);
    if (percent < 1)
        return MeasuringWords::tr("less than 1 % likely inside");
    if (percent > 99)
        return MeasuringWords::tr("more than 99 % likely inside");
    return MeasuringWords::tr("%1 % likely inside").arg(percent);
}

QString temperatureText(const TypedTemperature &temperature)
{
    return QString::fromStdString(formatTyped(temperature));
}

QString sinceRunText(std::int64_t minutes)
{
    const std::int64_t hours = minutes / minutesAnHour;
    const std::int64_t rest = minutes % minutesAnHour;
    if (minutes <= 0)
        return MeasuringWords::tr("just after it ran");
    if (hours == 0)
        return MeasuringWords::tr("%1 min after it ran").arg(minutes);
    if (hours >= hoursUntilDaysAreSaid)
        return MeasuringWords::tr("%n day(s) after it ran", nullptr, static_cast<int>(hours / 24));
    return rest == 0 ? MeasuringWords::tr("%1 h after it ran").arg(hours)
                     : MeasuringWords::tr("%1 h %2 min after it ran").arg(hours).arg(rest);
}

QString conditionText(const ReadingFact &reading)
{
    QStringList parts{conditionName(reading.condition)};
    if (reading.temperature)
        parts.append(temperatureText(*reading.temperature));
    if (reading.minutesSinceRun)
        parts.append(sinceRunText(*reading.minutesSinceRun));
    return parts.join(MeasuringWords::tr(", ", "between cold, its temperature, and how long after it ran"));
}

QString toolKindName(ToolKind kind)
{
    switch (kind) {
    case ToolKind::FeelerSet: return MeasuringWords::tr("feeler set");
    case ToolKind::DialGauge: return MeasuringWords::tr("dial gauge");
    case ToolKind::Micrometer: return MeasuringWords::tr("micrometer");
    case ToolKind::TorqueSet: return MeasuringWords::tr("torque wrench that is set");
    case ToolKind::TorqueRead: return MeasuringWords::tr("torque wrench that is read");
    case ToolKind::AngleGauge: return MeasuringWords::tr("angle gauge");
    case ToolKind::Adapter: return MeasuringWords::tr("adapter");
    case ToolKind::Socket: return MeasuringWords::tr("socket or key");
    }
    return {};
}

QString adjusterKindName(AdjusterKind kind)
{
    switch (kind) {
    case AdjusterKind::Screw: return MeasuringWords::tr("screw and lock nut");
    case AdjusterKind::Hydraulic: return MeasuringWords::tr("hydraulic tappet");
    }
    return {};
}

QString decisionRuleName(DecisionRule rule)
{
    switch (rule) {
    case DecisionRule::Simple: return MeasuringWords::tr("the value as read decides");
    case DecisionRule::WithUncertainty: return MeasuringWords::tr("what the tool's uncertainty leaves open is too close to call");
    }
    return {};
}

QString wrongUnitQuestion(const ReadingText &reading, LengthUnit meant, const SpecBand<Length> &bands)
{
    const auto interval = meantInterval(reading, meant);
    if (!interval)
        return {};
    const QString typed = typedReading(reading);
    const QString other = intervalIn(*interval, meant);
    const bool inside = judge(*interval, bands.printedFor(meant)) == Verdict::Inside;
    const QString question = inside ? MeasuringWords::tr("%1 is far from what the manual asks; %2 would be inside.")
                                    : MeasuringWords::tr("%1 is far from what the manual asks; %2 would be near it.");
    return MeasuringWords::tr("%1 Nothing is logged yet: say which it is.").arg(question.arg(typed, other));
}

QString wrongUnitQuestion(const Band<Length> &lash, LengthUnit meant)
{
    const std::optional<Length> value = lash.nominal ? lash.nominal : lash.high ? lash.high : lash.low;
    const auto other = value ? sameDigits(*value, lash.unit, meant) : std::nullopt;
    if (!other)
        return {};
    const QString question =
        *value > *other ? MeasuringWords::tr("%1 is more than any lash; %2? Nothing is saved yet: mend it, or Enter again keeps it.")
                        : MeasuringWords::tr("%1 is less than any lash; %2? Nothing is saved yet: mend it, or Enter again keeps it.");
    return question.arg(withUnit(*value, lash.unit), withUnit(*other, meant));
}

QString bleedDownText(Moment until, Moment now)
{
    return MeasuringWords::tr("The crank stands until %1: hydraulic tappets are bleeding down.").arg(momentText(until, now));
}

QString readOnlySentence()
{
    return MeasuringWords::tr("This garage can be read only: its file or folder may not be written to, or its disk is full or locked. "
                              "Everything stored in it is kept; allow writing or copy it to another place, then open it again.");
}

} // namespace asleft
