#include <parts/tool_words.h>

#include <words/numbers.h>
#include <words/times.h>
#include <work/workshop.h>

#include <QCoreApplication>
#include <QLocale>

namespace asleft {

namespace {

class ToolWords {
    Q_DECLARE_TR_FUNCTIONS(ToolWords)
};

// ISO 6789 tests a wrench at 20, 60 and 100 % of its largest torque.
constexpr int testedFromAFifth = 5;

QString deviationWords(const TorqueTool &wrench)
{
    return ToolWords::tr("± %1 %").arg(QLocale().toString(deviationOf(wrench).toDouble(), 'g', 3));
}

QString rangeWords(const TorqueTool &wrench)
{
    const QString most = torqueText(wrench.most.value, wrench.most.unit);
    const QString least = wrench.least.unit == wrench.most.unit ? torqueNumber(wrench.least.value, wrench.least.unit)
                                                                : torqueText(wrench.least.value, wrench.least.unit);
    return ToolWords::tr("%1 to %2", "torques").arg(least, most);
}

} // namespace

std::chrono::sys_days todayIn(const Garage &garage)
{
    return localDay(garage.now());
}

QString leavesWords(const std::vector<Typed<Length>> &leaves)
{
    if (leaves.empty())
        return {};
    if (leaves.size() == 1)
        return ToolWords::tr("one leaf, %1").arg(typedText(leaves.front()));
    return ToolWords::tr("%n leaves, %1 to %2", nullptr, int(leaves.size())).arg(typedText(leaves.front()), typedText(leaves.back()));
}

QString gaugeWords(const Tool &gauge)
{
    const auto uncertainty = uncertaintyOf(gauge, {});
    if (!uncertainty)
        return ToolWords::tr("how far its readings may be off is not known");
    const LengthUnit unit = gauge.permissibleError ? gauge.permissibleError->unit
                            : gauge.resolution     ? gauge.resolution->unit
                                                   : LengthUnit::Millimetre;
    return ToolWords::tr("readings are good to %1").arg(uncertaintyText(*uncertainty, unit));
}

QString wrenchWords(const Tool &wrench, std::chrono::sys_days today)
{
    const TorqueTool &torque = *wrench.torque;
    const QString how = torque.read ? ToolWords::tr("read", "how a wrench is used") : ToolWords::tr("set", "how a wrench is used");
    return ToolWords::tr("%1, %2, %3, %4", "range, set or read, deviation, calibration")
        .arg(rangeWords(torque), how, deviationWords(torque), calibrationWords(torque.calibrationDue, today));
}

QString calibrationWords(std::optional<std::chrono::sys_days> due, std::chrono::sys_days today)
{
    if (!due)
        return ToolWords::tr("calibration not known");
    return *due < today ? ToolWords::tr("calibration overdue since %1").arg(dateText(*due))
                        : ToolWords::tr("calibration due %1").arg(dateText(*due));
}

QString worthWords(const TorqueTool &wrench)
{
    const Torque most = wrench.most.value;
    const QString source = wrench.deviationPercent ? ToolWords::tr("%1 by its own card") : ToolWords::tr("%1 by ISO 6789");
    const QString deviation = source.arg(deviationWords(wrench));
    if (Int128{wrench.least.value.smallest()} * testedFromAFifth >= most.smallest())
        return ToolWords::tr("tested over all of its range, %1, %2", "range, deviation").arg(rangeWords(wrench), deviation);
    return ToolWords::tr("tested from %1 (a fifth of its range), %2", "torque, deviation")
        .arg(torqueText(Torque::ofSmallest(most.smallest() / testedFromAFifth), wrench.most.unit), deviation);
}

QString fittingWords(const Tool &fitting)
{
    const QString size = QString::fromStdString(fitting.size);
    if (!fitting.length)
        return size;
    const QString length = typedText(*fitting.length);
    return size.isEmpty() ? ToolWords::tr("%1 from drive to fastener").arg(length)
                          : ToolWords::tr("%1 from drive to fastener, for %2", "length, size").arg(length, size);
}

} // namespace asleft
