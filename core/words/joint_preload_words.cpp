#include "joint_text.h"

#include <words/joint_names.h>
#include <words/joints.h>
#include <words/numbers.h>

#include <QCoreApplication>

#include <cmath>

namespace asleft {

namespace {

class PreloadWords {
    Q_DECLARE_TR_FUNCTIONS(PreloadWords)
};

constexpr qsizetype digitsInAGroup = 3;

/// What is reckoned by a nut factor is not known to more than three figures; thousands parted by a thin space that does not break.
QString forceNumber(double newtons)
{
    const double step = newtons < 1000 ? 1 : std::pow(10, std::floor(std::log10(newtons)) - 2);
    QString digits = QString::number(std::llround(newtons / step) * std::llround(step));
    for (qsizetype place = digits.size() - digitsInAGroup; place > 0; place -= digitsInAGroup)
        digits.insert(place, QChar(0x202f));
    return digits;
}

QString timesNumber(double times)
{
    constexpr double wholeFrom = 10;
    return times < wholeFrom ? QLocale().toString(times, 'f', 1) : QString::number(std::lround(times));
}

/// "an M8 of class 8.8": what a thread is made to bear hangs on its class.
QString threadWords(const PreloadCheck &check, const Joint &joint)
{
    const QString thread = QString::fromStdString(check.thread.name);
    const bool an = thread.startsWith(u'M');
    if (!joint.strength)
        return an ? PreloadWords::tr("an %1", "thread; M8").arg(thread) : PreloadWords::tr("a %1", "thread; 3/8-16 UNC").arg(thread);
    return an ? PreloadWords::tr("an %1 of %2", "thread, class; M8").arg(thread, strengthName(*joint.strength))
              : PreloadWords::tr("a %1 of %2", "thread, class; 3/8-16 UNC").arg(thread, strengthName(*joint.strength));
}

/// Where the fasteners differ, with the thread that is meant.
QString forceWords(const PreloadCheck &check, const Joint &joint)
{
    const QString number = forceNumber(check.newtons);
    const bool own = joint.thread && joint.thread->name == check.thread.name;
    return own ? PreloadWords::tr("%1 N", "force").arg(number)
               : PreloadWords::tr("%1 N in the %2", "force, thread").arg(number, QString::fromStdString(check.thread.name));
}

/// Too little is as much a slip of the unit as too much.
QString howFarOff(double times, const QString &thread)
{
    if (times >= 1)
        return PreloadWords::tr("is %1 times what %2 takes").arg(timesNumber(times), thread);
    const double percent = times * hundredPercent;
    return percent < 1 ? PreloadWords::tr("is less than 1 % of what %1 takes").arg(thread)
                       : PreloadWords::tr("is only %1 % of what %2 takes").arg(std::lround(percent)).arg(thread);
}

QString blindHoleCaution(const Joint &joint)
{
    const bool wet = joint.text.condition && *joint.text.condition != ThreadCondition::Dry;
    return wet ? PreloadWords::tr(
                     "Blind hole: clean it out to the bottom, and wet the fastener only, thinly. Liquid shut in under it can crack "
                     "the casting, or give a false torque.")
               : PreloadWords::tr(
                     "Blind hole: clean it out to the bottom. Oil or coolant shut in under the fastener can crack the casting, or "
                     "give a false torque.");
}

QString conditionCaution(const Joint &joint)
{
    if (joint.text.condition)
        return PreloadWords::tr("The manual states its own condition, %1: nothing is taken off its torque for oil, plating or aluminium.")
            .arg(threadConditionName(*joint.text.condition));
    const int percent = joint.text.female ? generalAllowancePercent(false, false, *joint.text.female) : 0;
    return percent > 0
               ? PreloadWords::tr("The manual states no condition. Into %1, general practice takes %2 % or more off a torque; look in the "
                                  "manual for the condition first.")
                     .arg(femaleMaterialName(*joint.text.female))
                     .arg(percent)
               : PreloadWords::tr("The manual states no condition. Look whether the torque is meant dry or oiled before it is used.");
}

bool hasAngle(const Joint &joint)
{
    for (const Pass &pass : joint.passes) {
        if (std::holds_alternative<AngleOn>(pass))
            return true;
    }
    return false;
}

QString singleUseCaution(const Joint &joint)
{
    switch (joint.text.singleUse) {
    case SingleUse::No: break;
    case SingleUse::TorqueToYield:
        return PreloadWords::tr("Torque-to-yield fasteners are used once. Never tighten one again by torque: fit new ones and begin the "
                                "sequence anew.");
    case SingleUse::CrushWasher: return PreloadWords::tr("Crush washers are used once: fit new ones each time.");
    }
    return {};
}

} // namespace

QString preloadSentence(const PreloadCheck &check, const Joint &joint)
{
    const QString force = forceWords(check, joint);
    if (!check.shareOfProof)
        return joint.strength ? PreloadWords::tr("%1; its class gives no proof load for this size").arg(force)
                              : PreloadWords::tr("%1; without its class the share of proof load is not known").arg(force);
    const double percent = *check.shareOfProof * hundredPercent;
    return percent < 1 ? PreloadWords::tr("%1, less than 1 % of its proof load", "force").arg(force)
                       : PreloadWords::tr("%1, %2 % of its proof load", "force, share").arg(force).arg(std::lround(percent));
}

QString preloadQuestion(const PreloadCheck &check, const Joint &joint)
{
    if (!check.doubt)
        return {};
    const QString off = howFarOff(check.doubt->times, threadWords(check, joint));
    const QString torque = torqueText(check.torque.value, check.torque.unit);
    if (!check.doubt->meant || !check.doubt->meantValue)
        return PreloadWords::tr("%1 %2. Compare it with the manual, or say why it is right.",
                                "torque, is so many times what a thread takes")
            .arg(torque, off);
    return PreloadWords::tr("%1 %2; %3? Mend it, or say why it is right.", "torque, is so many times what a thread takes, other torque")
        .arg(torque, off, torqueText(*check.doubt->meantValue, *check.doubt->meant));
}

QStringList jointCautions(const Joint &joint)
{
    QStringList cautions;
    if (joint.text.blindHole)
        cautions.append(blindHoleCaution(joint));
    if (joint.target || !joint.passes.empty())
        cautions.append(conditionCaution(joint));
    const QString once = singleUseCaution(joint);
    if (!once.isEmpty())
        cautions.append(once);
    if (hasAngle(joint) && joint.text.singleUse != SingleUse::TorqueToYield)
        cautions.append(PreloadWords::tr("What was turned on by an angle is not checked with a torque wrench: loosen it and begin anew."));
    return cautions;
}

} // namespace asleft
