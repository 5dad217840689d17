#include "joint_text.h"

#include <words/joint_names.h>
#include <words/joints.h>
#include <words/numbers.h>
#include <words/specs.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

class JointLines {
    Q_DECLARE_TR_FUNCTIONS(JointLines)
};

/// The torque a pass asks for, in words; empty for one that asks for none.
QString torqueOf(const Joint &joint, std::size_t pass)
{
    const auto torque = wantedInPass(joint, pass);
    return torque ? jointTorqueText(joint, *torque) : QString();
}

QString angleInstruction(const Joint &joint, std::size_t pass, const AngleOn &on)
{
    const QString own = turnedText(on.angle.value, on.angle.unit);
    const Angle total = totalAngle(joint.passes, pass);
    return total == on.angle.value ? JointLines::tr("turn on by %1").arg(own)
                                   : JointLines::tr("turn on by %1, %2 in all").arg(own, turnedText(total, on.angle.unit));
}

/// A sentence for each kind of pass; `deed` says it as part of what to do now.
class PassWords {
public:
    PassWords(const Joint &joint, std::size_t pass, int round, bool pending) : m_joint(joint), m_pass(pass), m_round(round), m_deed(pending)
    {
    }

    QString operator()(const FingerTight &) const { return JointLines::tr("finger-tight"); }
    QString operator()(const PercentOfTarget &part) const
    {
        const QString torque = torqueOf(m_joint, m_pass);
        if (torque.isEmpty())
            return JointLines::tr("to %1 %").arg(part.percent);
        return (m_deed ? JointLines::tr("to %1 %, %2", "of the target, torque") : JointLines::tr("to %1 %: %2", "of the target, torque"))
            .arg(part.percent)
            .arg(torque);
    }
    QString operator()(const AtTarget &) const
    {
        const QString torque = torqueOf(m_joint, m_pass);
        if (torque.isEmpty())
            return JointLines::tr("to the target");
        return m_deed ? JointLines::tr("to the target, %1", "torque").arg(torque)
                      : JointLines::tr("to the target: %1", "torque").arg(torque);
    }
    QString operator()(const AtTorque &at) const { return JointLines::tr("to %1", "torque").arg(typedText(at.torque)); }
    QString operator()(const AngleOn &on) const { return angleInstruction(m_joint, m_pass, on); }
    QString operator()(const Settle &settle) const
    {
        if (!m_deed && m_round == 0)
            return JointLines::tr("until none moves, at most %n round(s)", nullptr, settle.mostRounds);
        if (!m_deed)
            return JointLines::tr("until none moves, round %1 of at most %2").arg(m_round).arg(settle.mostRounds);
        const QString torque = torqueOf(m_joint, m_pass);
        return torque.isEmpty() ? JointLines::tr("once more, and note whether it moves")
                                : JointLines::tr("once more to %1, and note whether it moves", "torque").arg(torque);
    }

private:
    const Joint &m_joint;
    std::size_t m_pass;
    int m_round;
    bool m_deed;
};

class ShortPass {
public:
    explicit ShortPass(int round) : m_round(round) {}

    QString operator()(const FingerTight &) const { return JointLines::tr("finger-tight"); }
    QString operator()(const PercentOfTarget &part) const { return JointLines::tr("%1 %").arg(part.percent); }
    QString operator()(const AtTarget &) const { return JointLines::tr("target"); }
    QString operator()(const AtTorque &at) const { return typedText(at.torque); }
    QString operator()(const AngleOn &on) const { return JointLines::tr("+%1", "angle").arg(turnedText(on.angle.value, on.angle.unit)); }
    QString operator()(const Settle &) const { return JointLines::tr("settling, round %1").arg(m_round); }

private:
    int m_round;
};

QString patternWords(const Pattern &pattern)
{
    const PatternCounts counts = countsOf(pattern);
    if (pattern.places.size() == 1)
        return JointLines::tr("%n fastener(s)", nullptr, 1);
    switch (counts.kind) {
    case PatternKind::Row: return JointLines::tr("row of %n", "fasteners", counts.count);
    case PatternKind::Rows: return JointLines::tr("%n rows of %1", "fasteners", counts.count).arg(counts.each);
    case PatternKind::Circle: return JointLines::tr("%n around a circle", "fasteners", counts.count);
    case PatternKind::Rectangle: return JointLines::tr("%1 by %2 rectangle", "fasteners").arg(counts.count).arg(counts.each);
    case PatternKind::Cover: return JointLines::tr("%n around a cover", "fasteners", counts.count);
    case PatternKind::Free: break;
    }
    return JointLines::tr("%n placed by hand", "fasteners", counts.count);
}

bool anyPlace(const Pattern &pattern, std::string FastenerPosition::*text)
{
    return std::any_of(pattern.places.begin(), pattern.places.end(),
                       [text](const FastenerPosition &place) { return !(place.*text).empty(); });
}

/// What the passes ask for one after the other, where there is no target to say it for them.
QString passesInARow(const Joint &joint)
{
    QStringList names;
    for (std::size_t pass = 0; pass < joint.passes.size(); ++pass)
        names.append(passName(joint, pass, 0));
    return names.isEmpty() ? JointLines::tr("no target") : names.join(JointLines::tr(", then ", "between passes"));
}

QString oneFastener()
{
    return JointLines::tr("one fastener, no order to keep");
}

bool isStar(const Joint &joint)
{
    return joint.text.pattern.kind == PatternKind::Circle;
}

QString targetWords(const Joint &joint)
{
    if (!joint.target)
        return passesInARow(joint);
    QString words = torqueBandText(*joint.target);
    if (joint.target->first.toleranceAssumed)
        words = JointLines::tr("%1, tolerance assumed").arg(words);
    for (std::size_t pass = joint.passes.size(); pass-- > 0;) {
        if (const auto *on = std::get_if<AngleOn>(&joint.passes[pass]))
            return JointLines::tr("%1, then turned on by %2", "torque, angle")
                .arg(words, turnedText(totalAngle(joint.passes, pass), on->angle.unit));
    }
    return words;
}

} // namespace

TorqueUnit unitOf(const Joint &joint)
{
    if (joint.target)
        return joint.target->first.unit;
    for (const Pass &pass : joint.passes) {
        if (const auto *at = std::get_if<AtTorque>(&pass))
            return at->torque.unit;
    }
    return joint.text.unit;
}

QString jointTorqueText(const Joint &joint, Torque value)
{
    return torqueText(value, unitOf(joint));
}

QString passName(const Joint &joint, std::size_t pass, int round)
{
    if (pass >= joint.passes.size())
        return JointLines::tr("every pass is done");
    return std::visit(PassWords(joint, pass, round, false), joint.passes[pass]);
}

QString passInstruction(const Joint &joint, std::size_t pass)
{
    return pass < joint.passes.size() ? std::visit(PassWords(joint, pass, 1, true), joint.passes[pass]) : QString();
}

QString passShort(const Joint &joint, std::size_t pass, int round)
{
    return pass < joint.passes.size() ? std::visit(ShortPass(round), joint.passes[pass]) : QString();
}

QString passPlace(const Joint &joint, std::size_t pass)
{
    const std::size_t count = joint.passes.size();
    return JointLines::tr("pass %1 of %2").arg(std::min(pass + 1, count)).arg(count);
}

QString jointLine(const Joint &joint)
{
    QStringList parts{patternWords(joint.text.pattern)};
    if (joint.thread)
        parts.append(QString::fromStdString(joint.thread->name));
    if (joint.strength)
        parts.append(strengthName(*joint.strength));
    if (anyPlace(joint.text.pattern, &FastenerPosition::thread))
        parts.append(JointLines::tr("threads differ"));
    if (anyPlace(joint.text.pattern, &FastenerPosition::length))
        parts.append(JointLines::tr("lengths differ"));
    if (joint.text.singleUse != SingleUse::No)
        parts.append(singleUseName(joint.text.singleUse));
    return parts.join(JointLines::tr(", ", "between what a joint is"));
}

QString jointSpecLine(const Joint &joint)
{
    QString asked = targetWords(joint);
    if (joint.text.condition)
        asked = JointLines::tr("%1 %2", "torque, dry or oiled").arg(asked, threadConditionName(*joint.text.condition));
    return JointLines::tr("%1 · %2", "torque, source").arg(asked, sourceText(joint.text.source));
}

QString orderLine(const Joint &joint)
{
    if (joint.order.size() < 2)
        return oneFastener();
    const QString order = QString::fromStdString(writeOrder(joint.order));
    if (!joint.orderGenerated)
        return JointLines::tr("%1 · as the manual prints it", "order").arg(order);
    return isStar(joint) ? JointLines::tr("%1 · generated, as a star", "order").arg(order)
                         : JointLines::tr("%1 · generated, centre outward", "order").arg(order);
}

QString looseningLine(const Joint &joint)
{
    if (joint.order.size() < 2)
        return oneFastener();
    const QString order = QString::fromStdString(writeOrder(looseningOrder(joint.order)));
    if (!joint.orderGenerated)
        return JointLines::tr("loosen %1 · the reverse of the manual's order", "order").arg(order);
    return isStar(joint) ? JointLines::tr("loosen %1 · the reverse of a generated star", "order").arg(order)
                         : JointLines::tr("loosen %1 · generated, outside inward", "order").arg(order);
}

} // namespace asleft
