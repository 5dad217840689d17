#include "joint_text.h"

#include <words/job.h>
#include <words/joint_names.h>
#include <words/joints.h>
#include <words/numbers.h>
#include <words/readings.h>

#include <QCoreApplication>

namespace asleft {

namespace {

class JointOpenWords {
    Q_DECLARE_TR_FUNCTIONS(JointOpenWords)
};

/// An item with what it speaks of, as far as the job has it.
struct About {
    const OpenItem &item;
    const JobState &state;
    const Joint *joint;

    [[nodiscard]] QString name() const { return joint ? jointName(*joint) : JointOpenWords::tr("a joint"); }
    [[nodiscard]] QString fastener() const { return fastenersName(item.fastener ? std::vector<int>{*item.fastener} : std::vector<int>()); }
    [[nodiscard]] bool isSingleUse() const { return joint && joint->text.singleUse != SingleUse::No; }
    [[nodiscard]] const FastenerState *fastenerState() const
    {
        const auto known = item.joint ? state.joints.find(*item.joint) : state.joints.end();
        if (known == state.joints.end() || !item.fastener || !known->second.fasteners.contains(*item.fastener))
            return nullptr;
        return &known->second.fasteners.at(*item.fastener);
    }
    /// The joint, then more.
    [[nodiscard]] QString note(const QString &more) const
    {
        return more.isEmpty() ? name() : JointOpenWords::tr("%1: %2", "joint, what of it").arg(name(), more);
    }
};

OpenWords fastenersLoose(const About &about)
{
    return {JointOpenWords::tr("%n fastener(s) not tight", nullptr, about.item.count), about.name()};
}

OpenWords fastenerFound(const About &about)
{
    const FastenerState *now = about.fastenerState();
    if (!now || !now->found)
        return {JointOpenWords::tr("%1 amiss", "fastener").arg(about.fastener()), about.name()};
    return {JointOpenWords::tr("%1 %2", "fastener, missing or broken").arg(about.fastener(), foundHowName(now->found->how)),
            about.note(QString::fromStdString(now->found->note))};
}

OpenWords byFeel(const About &about)
{
    const FastenerState *now = about.fastenerState();
    QString reason;
    for (std::size_t tick = now ? now->ticks.size() : 0; tick-- > 0 && reason.isEmpty();)
        reason = QString::fromStdString(now->ticks[tick].fact.reason);
    const QString unmeasured =
        reason.isEmpty() ? JointOpenWords::tr("done, unmeasured") : JointOpenWords::tr("done, unmeasured: %1", "reason").arg(reason);
    return {JointOpenWords::tr("%1 tightened by feel").arg(about.fastener()),
            JointOpenWords::tr("%1, %2", "joint, what of it").arg(about.name(), unmeasured)};
}

const TickMade *decidingTick(const About &about)
{
    const FastenerState *now = about.fastenerState();
    return now ? now->deciding() : nullptr;
}

OpenWords torqueOutside(const About &about)
{
    const TickMade *tick = decidingTick(about);
    const QString verdict = tick && tick->verdict ? verdictName(*tick->verdict) : JointOpenWords::tr("outside its band");
    const QString torque = tick && about.joint ? tickTorqueText(*tick, *about.joint) : QString();
    return {JointOpenWords::tr("%1 %2", "fastener, verdict").arg(about.fastener(), verdict), about.note(torque)};
}

OpenWords torqueUnproved(const About &about)
{
    const TickMade *tick = decidingTick(about);
    const QString why = tick && tick->fact.outOfRange ? JointOpenWords::tr("the wrench was outside its range")
                                                      : JointOpenWords::tr("too close to call with this wrench");
    return {JointOpenWords::tr("%1 not proved tight").arg(about.fastener()), about.note(why)};
}

OpenWords fittedUnsaid(const About &about)
{
    return {JointOpenWords::tr("%n fastener(s) not said to be new", nullptr, about.item.count),
            about.note(JointOpenWords::tr("used once only"))};
}

OpenWords reused(const About &about)
{
    return {JointOpenWords::tr("%n fastener(s) used again", nullptr, about.item.count),
            about.note(about.isSingleUse() ? JointOpenWords::tr("made to be used once: fit new, or accept")
                                           : JointOpenWords::tr("in place of what was amiss: fit new, or accept"))};
}

OpenWords revised(const About &about)
{
    const Joint *newest = about.item.joint ? about.state.frame->jointNow(*about.item.joint) : nullptr;
    const QString title = JointOpenWords::tr("Joint changed since it was worked on");
    if (!newest)
        return {title, about.name()};
    return {title, about.note(JointOpenWords::tr("compare with %1", "what the manual asks now").arg(jointSpecLine(*newest)))};
}

QString unsureTitle(const Joint *joint)
{
    switch (joint ? joint->text.source.certainty : Certainty::ReadInManual) {
    case Certainty::ReadInManual: return JointOpenWords::tr("Torque without its page");
    case Certainty::ToldByPerson: return JointOpenWords::tr("Torque told by a person");
    case Certainty::FromMemory: return JointOpenWords::tr("Torque from memory");
    case Certainty::Assumed: return JointOpenWords::tr("Torque assumed");
    }
    return {};
}

QString bandOf(const About &about)
{
    return about.joint && about.joint->target ? torqueBandText(*about.joint->target) : QString();
}

OpenWords overdue(const About &about)
{
    const Tool *tool = about.item.tool ? about.state.frame->tool(*about.item.tool) : nullptr;
    return {tool ? JointOpenWords::tr("Calibration overdue: %1", "tool").arg(toolName(*tool)) : JointOpenWords::tr("Calibration overdue"),
            JointOpenWords::tr("%1 was tightened with it", "joint").arg(about.name())};
}

int tightOf(const JointState &joint)
{
    int tight = 0;
    for (const auto &[number, fastener] : joint.fasteners)
        tight += fastener.stage == FastenerStage::Tight ? 1 : 0;
    return tight;
}

} // namespace

OpenWords jointOpenWords(const OpenItem &item, const JobState &state)
{
    const About about{item, state, jointOf(state, item.joint)};
    switch (item.kind) {
    case OpenItem::Kind::FastenersLoose: return fastenersLoose(about);
    case OpenItem::Kind::FastenerFound: return fastenerFound(about);
    case OpenItem::Kind::FastenerByFeel: return byFeel(about);
    case OpenItem::Kind::TorqueOutside: return torqueOutside(about);
    case OpenItem::Kind::TorqueUnproved: return torqueUnproved(about);
    case OpenItem::Kind::Unsettled:
        return {JointOpenWords::tr("Some still moved in the last round"), about.note(JointOpenWords::tr("find out why, or accept"))};
    case OpenItem::Kind::FittedUnsaid: return fittedUnsaid(about);
    case OpenItem::Kind::Reused: return reused(about);
    case OpenItem::Kind::JointRevised: return revised(about);
    case OpenItem::Kind::JointUnsure: return {unsureTitle(about.joint), about.note(bandOf(about))};
    case OpenItem::Kind::JointAssumed: return {JointOpenWords::tr("Tolerance of a torque assumed"), about.note(bandOf(about))};
    case OpenItem::Kind::CalibrationOverdue: return overdue(about);
    default: return {};
    }
}

QStringList jointResumeLines(const JobState &state)
{
    QStringList lines;
    for (const auto &[id, now] : state.joints) {
        const Joint *joint = jointOf(state, id);
        const int tight = tightOf(now);
        const auto all = static_cast<int>(now.fasteners.size());
        if (joint && now.begun && tight < all)
            lines.append(JointOpenWords::tr("%1: %2 of %3 tight", "joint, counts")
                             .arg(jointName(*joint), QString::number(tight), QString::number(all)));
    }
    return lines;
}

} // namespace asleft
