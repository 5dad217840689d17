#include "joint_text.h"

#include <words/numbers.h>
#include <words/times.h>
#include <words/tools.h>
#include <words/torque_tools.h>

#include <QCoreApplication>

#include <cmath>

namespace asleft {

namespace {

class JointToolWords {
    Q_DECLARE_TR_FUNCTIONS(JointToolWords)
};

QString percentNumber(double percent)
{
    return QLocale().toString(percent, 'g', 3);
}

QString calibrationText(const ToolReach &reach, const TorqueTool &tool)
{
    if (reach.calibrationUnknown || !tool.calibrationDue)
        return JointToolWords::tr("calibration not known");
    const QString day = dateText(*tool.calibrationDue);
    return reach.calibrationOverdue ? JointToolWords::tr("calibration overdue since %1").arg(day)
                                    : JointToolWords::tr("calibration due %1").arg(day);
}

/// A wrench may be marked for less than it is tested at.
QString belowTestText(const TorqueTool &tool)
{
    constexpr std::int64_t testedFrom = 5; // a fifth of the largest torque: ISO 6789
    const Torque least = Torque::ofSmallest(tool.most.value.smallest() / testedFrom);
    return JointToolWords::tr("below where it is tested, from %1", "torque").arg(torqueText(least, tool.most.unit));
}

/// Why a tool misses: its range, or an adapter that cannot be reckoned.
QString missText(const ToolReach &reach, const Tool &tool)
{
    const TorqueTool &torque = *tool.torque;
    const bool outside = reach.setting < torque.least.value || reach.setting > torque.most.value;
    if (outside)
        return JointToolWords::tr("outside its range %1").arg(rangeText(torque));
    return torque.lever ? JointToolWords::tr("the adapter reaches back too far for its lever")
                        : JointToolWords::tr("its lever is not known: measure from the drive to the grip mark to use it with an adapter");
}

QString angleWords(Angle angle)
{
    if (angle == Angle())
        return JointToolWords::tr("straight out");
    if (angle == degrees(180))
        return JointToolWords::tr("back along the handle");
    return angle == degrees(90) ? JointToolWords::tr("across, at 90°") : JointToolWords::tr("at %1", "angle").arg(degreesText(angle));
}

QString adapterLength(const AdapterFit &fit, TorqueUnit beside)
{
    return shortLengthText(fit.length, systemOf(beside) == UnitSystem::Metric ? LengthUnit::Millimetre : LengthUnit::Inch);
}

/// The tool behind an index into the rack; null where there is none.
const Tool *wrenchOf(const Rack &rack, std::size_t index)
{
    return index < rack.wrenches.size() ? rack.wrenches[index] : nullptr;
}

QString adapterWay(const WayOut &way, Torque wanted, const Rack &rack)
{
    const Tool *wrench = way.reach ? wrenchOf(rack, way.reach->tool) : nullptr;
    if (!wrench || !wrench->torque || !way.reach->adapter || *way.reach->adapter >= rack.adapterLengths.size())
        return JointToolWords::tr("use an adapter");
    const AdapterFit fit{rack.adapterLengths[*way.reach->adapter], way.angle.value_or(Angle())};
    const TorqueUnit own = wrench->torque->most.unit;
    const auto set = settingOn(*wrench, wanted, fit);
    const QString setting = set ? torqueText(set->value, set->unit) : torqueText(way.reach->setting, own);
    const QString words = wrench->kind == ToolKind::TorqueRead ? JointToolWords::tr("%1 read at %2 through the %3", "tool, torque, adapter")
                                                               : JointToolWords::tr("%1 set to %2 through the %3", "tool, torque, adapter");
    return words.arg(toolName(*wrench), setting, fitText(fit, own));
}

QString wayText(const WayOut &way, Torque wanted, TorqueUnit unit, const Rack &rack)
{
    switch (way.kind) {
    case WayOut::Kind::Borrow:
        return way.most ? JointToolWords::tr("borrow one of at most %1").arg(torqueText(*way.most, unit))
                        : JointToolWords::tr("borrow one that does");
    case WayOut::Kind::WithAdapter: return adapterWay(way, wanted, rack);
    case WayOut::Kind::ByFeel: return JointToolWords::tr("by feel, and said so");
    }
    return {};
}

/// The pass whose own torque is wanted here, and neither the target nor a part of it.
const AtTorque *ownTorque(const ToolWanted &wanted, const Joint &joint)
{
    for (const Pass &pass : joint.passes) {
        const auto *at = std::get_if<AtTorque>(&pass);
        if (at && !wanted.target && at->torque.value == wanted.torque)
            return at;
    }
    return nullptr;
}

QString setOrRead(const Tool &tool)
{
    return tool.kind == ToolKind::TorqueRead ? JointToolWords::tr("read", "how a wrench is used")
                                             : JointToolWords::tr("set", "how a wrench is used");
}

} // namespace

QString toolName(const Tool &tool)
{
    const QString name = QString::fromStdString(tool.name).trimmed();
    return name.isEmpty() ? toolKindName(tool.kind) : name;
}

QString deviationText(const Rational &percent)
{
    return JointToolWords::tr("± %1 %", "deviation of a tool").arg(percentNumber(percent.toDouble()));
}

QString rangeText(const TorqueTool &tool)
{
    const QString most = torqueText(tool.most.value, tool.most.unit);
    return tool.least.unit == tool.most.unit
               ? JointToolWords::tr("%1 to %2", "range of a tool").arg(torqueNumber(tool.least.value, tool.least.unit), most)
               : JointToolWords::tr("%1 to %2", "range of a tool").arg(torqueText(tool.least.value, tool.least.unit), most);
}

QString fitText(const AdapterFit &fit, TorqueUnit beside)
{
    return JointToolWords::tr("%1 adapter %2", "length, at what angle").arg(adapterLength(fit, beside), angleWords(fit.angle));
}

QString settingSentence(const Tool &tool, const Typed<Torque> &setting)
{
    const QString torque = torqueText(setting.value, setting.unit);
    return tool.kind == ToolKind::TorqueRead ? JointToolWords::tr("Read %1").arg(torque) : JointToolWords::tr("Set to %1").arg(torque);
}

QString trueTorqueSentence(Torque wanted, TorqueUnit unit, const std::optional<FitUsed> &fit)
{
    if (!fit || fit->fit.length == Length())
        return {};
    if (changesNothing(fit->fit))
        return JointToolWords::tr("%1 adapter across: the setting stays", "length").arg(adapterLength(fit->fit, unit));
    return JointToolWords::tr("%1 at the fastener, %2, hand on the grip mark", "torque, adapter")
        .arg(torqueText(wanted, unit), fitText(fit->fit, unit));
}

QString reachSentence(const ToolReach &reach, const Tool &tool)
{
    if (!tool.torque)
        return JointToolWords::tr("measures no torque");
    if (!reach.reaches)
        return missText(reach, tool);
    QStringList parts{deviationText(reach.deviation),
                      JointToolWords::tr("at %1 % of its range").arg(std::lround(reach.shareOfRange * hundredPercent))};
    if (!reach.wellInside)
        parts.append(belowTestText(*tool.torque));
    parts.append(calibrationText(reach, *tool.torque));
    return parts.join(JointToolWords::tr(", ", "between what is said of a tool"));
}

QString noneReachesSentence(const ToolAdvice &advice, Torque wanted, TorqueUnit unit, const Rack &rack)
{
    const QString none = JointToolWords::tr("No tool here reaches %1.").arg(torqueText(wanted, unit));
    QStringList ways;
    for (const WayOut &way : advice.waysOut)
        ways.append(wayText(way, wanted, unit, rack));
    if (ways.isEmpty())
        return none;
    return JointToolWords::tr("%1 Ways out: %2.", "none reaches, what helps")
        .arg(none, ways.join(JointToolWords::tr("; ", "between ways out")));
}

QString toolWantedLine(const ToolWanted &wanted, const Joint &joint, const Rack &rack)
{
    const AtTorque *own = ownTorque(wanted, joint);
    if (wanted.advice.reaching.empty())
        return noneReachesSentence(wanted.advice, wanted.torque, own ? own->torque.unit : unitOf(joint), rack);
    const ToolReach &best = wanted.advice.reaching.front();
    const QString torque = own ? typedText(own->torque) : jointTorqueText(joint, wanted.torque);
    const Tool *tool = wrenchOf(rack, best.tool);
    if (!tool)
        return torque;
    QString line = JointToolWords::tr("%1: %2, %3, %4", "torque, tool, set or read, deviation")
                       .arg(torque, toolName(*tool), setOrRead(*tool), deviationText(best.deviation));
    if (!best.wellInside)
        line = JointToolWords::tr("%1, %2", "line of the tool list, what is worth knowing").arg(line, belowTestText(*tool->torque));
    return best.calibrationOverdue ? JointToolWords::tr("%1, calibration overdue", "line of the tool list").arg(line) : line;
}

} // namespace asleft
