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

QString jointNameOf(const open::OfJoint &item, const JobState &state)
{
    const Joint *joint = jointOf(state, item.joint);
    return joint ? jointName(*joint) : JointOpenWords::tr("a joint");
}

/// The joint, then more.
QString noteOf(const open::OfJoint &item, const JobState &state, const QString &more)
{
    const QString name = jointNameOf(item, state);
    return more.isEmpty() ? name : JointOpenWords::tr("%1: %2", "joint, what of it").arg(name, more);
}

const FastenerState *fastenerOf(const open::OfFastener &item, const JobState &state)
{
    const auto joint = state.joints.find(item.joint);
    if (joint == state.joints.end() || !joint->second.fasteners.contains(item.fastener))
        return nullptr;
    return &joint->second.fasteners.at(item.fastener);
}

const TickMade *decidingTick(const open::OfFastener &item, const JobState &state)
{
    const FastenerState *now = fastenerOf(item, state);
    return now ? now->deciding() : nullptr;
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

QString bandNote(const open::OfJoint &item, const JobState &state)
{
    const Joint *joint = jointOf(state, item.joint);
    return noteOf(item, state, joint && joint->target ? torqueBandText(*joint->target) : QString());
}

int tightOf(const JointState &joint)
{
    int tight = 0;
    for (const auto &[number, fastener] : joint.fasteners)
        tight += fastener.stage == FastenerStage::Tight ? 1 : 0;
    return tight;
}

} // namespace

OpenWords jointOpenWords(const open::FastenersLoose &item, const JobState &state)
{
    return {JointOpenWords::tr("%n fastener(s) not tight", nullptr, item.count), jointNameOf(item, state)};
}

OpenWords jointOpenWords(const open::FittedUnsaid &item, const JobState &state)
{
    return {JointOpenWords::tr("%n fastener(s) not said to be new", nullptr, item.count),
            noteOf(item, state, JointOpenWords::tr("used once only"))};
}

OpenWords jointOpenWords(const open::Reused &item, const JobState &state)
{
    const Joint *joint = jointOf(state, item.joint);
    const bool isSingleUse = joint && joint->text.singleUse != SingleUse::No;
    return {JointOpenWords::tr("%n fastener(s) used again", nullptr, item.count),
            noteOf(item, state,
                   isSingleUse ? JointOpenWords::tr("made to be used once: fit new, or accept")
                               : JointOpenWords::tr("in place of what was amiss: fit new, or accept"))};
}

OpenWords jointOpenWords(const open::FastenerFound &item, const JobState &state)
{
    const FastenerState *now = fastenerOf(item, state);
    const QString name = fastenersName({item.fastener});
    if (!now || !now->found)
        return {JointOpenWords::tr("%1 amiss", "fastener").arg(name), jointNameOf(item, state)};
    return {JointOpenWords::tr("%1 %2", "fastener, missing or broken").arg(name, foundHowName(now->found->how)),
            noteOf(item, state, QString::fromStdString(now->found->note))};
}

OpenWords jointOpenWords(const open::FastenerByFeel &item, const JobState &state)
{
    const FastenerState *now = fastenerOf(item, state);
    QString reason;
    for (std::size_t tick = now ? now->ticks.size() : 0; tick-- > 0 && reason.isEmpty();)
        reason = QString::fromStdString(now->ticks[tick].fact.reason);
    const QString unmeasured =
        reason.isEmpty() ? JointOpenWords::tr("done, unmeasured") : JointOpenWords::tr("done, unmeasured: %1", "reason").arg(reason);
    return {JointOpenWords::tr("%1 tightened by feel").arg(fastenersName({item.fastener})),
            JointOpenWords::tr("%1, %2", "joint, what of it").arg(jointNameOf(item, state), unmeasured)};
}

OpenWords jointOpenWords(const open::TorqueOutside &item, const JobState &state)
{
    const TickMade *tick = decidingTick(item, state);
    const Joint *joint = jointOf(state, item.joint);
    const QString verdict = tick && tick->verdict ? verdictName(*tick->verdict) : JointOpenWords::tr("outside its band");
    const QString torque = tick && joint ? tickTorqueText(*tick, *joint) : QString();
    return {JointOpenWords::tr("%1 %2", "fastener, verdict").arg(fastenersName({item.fastener}), verdict), noteOf(item, state, torque)};
}

OpenWords jointOpenWords(const open::TorqueUnproved &item, const JobState &state)
{
    const TickMade *tick = decidingTick(item, state);
    const QString why = tick && tick->fact.outOfRange ? JointOpenWords::tr("the wrench was outside its range")
                                                      : JointOpenWords::tr("too close to call with this wrench");
    return {JointOpenWords::tr("%1 not proved tight").arg(fastenersName({item.fastener})), noteOf(item, state, why)};
}

OpenWords jointOpenWords(const open::Unsettled &item, const JobState &state)
{
    return {JointOpenWords::tr("Some still moved in the last round"), noteOf(item, state, JointOpenWords::tr("find out why, or accept"))};
}

OpenWords jointOpenWords(const open::JointRevised &item, const JobState &state)
{
    const Joint *newest = state.frame->jointNow(item.joint);
    const QString title = JointOpenWords::tr("Joint changed since it was worked on");
    if (!newest)
        return {title, jointNameOf(item, state)};
    return {title, noteOf(item, state, JointOpenWords::tr("compare with %1", "what the manual asks now").arg(jointSpecLine(*newest)))};
}

OpenWords jointOpenWords(const open::JointUnsure &item, const JobState &state)
{
    return {unsureTitle(jointOf(state, item.joint)), bandNote(item, state)};
}

OpenWords jointOpenWords(const open::JointAssumed &item, const JobState &state)
{
    return {JointOpenWords::tr("Tolerance of a torque assumed"), bandNote(item, state)};
}

OpenWords jointOpenWords(const open::CalibrationOverdue &item, const JobState &state)
{
    const Tool *tool = item.tool ? state.frame->tool(*item.tool) : nullptr;
    return {tool ? JointOpenWords::tr("Calibration overdue: %1", "tool").arg(toolName(*tool)) : JointOpenWords::tr("Calibration overdue"),
            JointOpenWords::tr("%1 was tightened with it", "joint").arg(jointNameOf(item, state))};
}

QStringList jointResumeLines(const JobState &state)
{
    QStringList lines;
    for (const auto &[id, now] : state.joints) {
        const Joint *joint = jointOf(state, id);
        const int tight = tightOf(now);
        const auto all = static_cast<int>(now.fasteners.size());
        if (joint && now.begun && tight < all)
            lines.append(JointOpenWords::tr("%1: %2 of %3 tight", "joint, counts").arg(jointName(*joint)).arg(tight).arg(all));
    }
    return lines;
}

} // namespace asleft
