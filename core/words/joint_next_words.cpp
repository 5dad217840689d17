#include "joint_text.h"

#include <words/fasteners.h>
#include <words/job.h>
#include <words/joints.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

class JointNextWords {
    Q_DECLARE_TR_FUNCTIONS(JointNextWords)
};

/// Where the joint is not known, the line's own words.
QString lineOf(const next::OfJoint &act, const JobState &state)
{
    const Step *step = state.frame->step(act.step);
    return step ? stepTitle(*step, *state.frame) : JointNextWords::tr("Go on with the next joint");
}

QString loosen(const Joint &joint)
{
    const QString name = jointName(joint);
    if (joint.order.size() == 1)
        return JointNextWords::tr("Loosen the fastener of %1, and note whether it was loose", "joint").arg(name);
    const bool star = joint.text.pattern.kind == PatternKind::Circle;
    return joint.orderGenerated && !star
               ? JointNextWords::tr("Loosen the fasteners of %1 from the outside in, and note what was loose", "joint").arg(name)
               : JointNextWords::tr("Loosen the fasteners of %1 in the reverse of their order, and note what was loose", "joint").arg(name);
}

/// "pass 2 of 3"; of settling, also its round. Empty where there is one pass, and no round to tell.
QString passAndRound(const Joint &joint, const TickSlot &tick, std::size_t pass)
{
    const auto *settle = pass < joint.passes.size() ? std::get_if<Settle>(&joint.passes[pass]) : nullptr;
    if (settle)
        return JointNextWords::tr("%1, round %2 of at most %3", "pass 2 of 3, rounds")
            .arg(passPlace(joint, pass))
            .arg(tick.round)
            .arg(settle->mostRounds);
    return joint.passes.size() > 1 ? passPlace(joint, pass) : QString();
}

QString tighten(const Joint &joint, const TickSlot &tick)
{
    const auto pass = static_cast<std::size_t>(std::max(0, tick.pass));
    const QString pending =
        JointNextWords::tr("%1: %2", "fastener, what to do").arg(fastenersName({tick.fastener}), passInstruction(joint, pass));
    const QString place = passAndRound(joint, tick, pass);
    return place.isEmpty() ? pending : JointNextWords::tr("%1 · %2", "what to do, pass 2 of 3").arg(pending, place);
}

QString settle(const Joint &joint, const JobState &state)
{
    const auto known = state.joints.find(joint.id);
    const QString asked = known == state.joints.end() ? QString() : jointWantsSentence(jointWants(joint, known->second), joint);
    return asked.isEmpty() ? JointNextWords::tr("Look %1 over once more", "joint").arg(jointName(joint)) : asked;
}

} // namespace

QString jointNextSentence(const next::LoosenJoint &act, const JobState &state)
{
    const Joint *joint = jointOf(state, act.joint);
    return joint ? loosen(*joint) : lineOf(act, state);
}

QString jointNextSentence(const next::TightenNext &act, const JobState &state)
{
    const Joint *joint = jointOf(state, act.joint);
    return joint ? tighten(*joint, act.tick) : lineOf(act, state);
}

QString jointNextSentence(const next::SettleJoint &act, const JobState &state)
{
    const Joint *joint = jointOf(state, act.joint);
    return joint ? settle(*joint, state) : lineOf(act, state);
}

} // namespace asleft
