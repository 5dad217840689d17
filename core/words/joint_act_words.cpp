#include "joint_text.h"

#include <words/numbers.h>
#include <words/readings.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

class JointActWords {
    Q_DECLARE_TR_FUNCTIONS(JointActWords)
};

QString textOf(const std::string &text)
{
    return QString::fromStdString(text);
}

/// An engine with several joints wants to know which one; with one it is plain.
QString ofJoint(const QString &pending, JointId joint, const JobFrame &frame)
{
    const bool several = std::any_of(frame.joints.begin(), frame.joints.end(), [joint](const Joint &other) { return other.id != joint; });
    const Joint *now = several ? frame.jointNow(joint) : nullptr;
    return now ? JointActWords::tr("%1, %2", "what was done, the joint").arg(pending, jointName(*now)) : pending;
}

QString withWords(const QString &pending, const std::string &words)
{
    return words.empty() ? pending : JointActWords::tr("%1: %2", "what was done, in a person's words").arg(pending, textOf(words));
}

QString found(const LoosenedFact &fact)
{
    const QString which = numbersText(fact.fasteners);
    switch (fact.how) {
    case FoundHow::NotNoted: return JointActWords::tr("loosened %1", "fasteners").arg(which);
    case FoundHow::Measured:
        return fact.torque ? JointActWords::tr("found %1 to loosen at %2", "fasteners, torque").arg(which, typedText(*fact.torque))
                           : JointActWords::tr("loosened %1", "fasteners").arg(which);
    case FoundHow::LooseByFeel: return JointActWords::tr("found loose by feel: %1", "fasteners").arg(which);
    case FoundHow::TightByFeel: return JointActWords::tr("found tight by feel: %1", "fasteners").arg(which);
    case FoundHow::Missing: return JointActWords::tr("found missing: %1", "fasteners").arg(which);
    case FoundHow::Broken: return JointActWords::tr("found broken: %1", "fasteners").arg(which);
    case FoundHow::WrongLength: return JointActWords::tr("found of the wrong length: %1", "fasteners").arg(which);
    }
    return {};
}

std::size_t passOf(const TicksFact &fact)
{
    return static_cast<std::size_t>(std::max(0, fact.ticks.front().place.pass));
}

/// "pass 2 (target)"
QString passOfTicks(const TicksFact &fact, const Joint &joint)
{
    const std::size_t pass = passOf(fact);
    return JointActWords::tr("pass %1 (%2)", "number, what it asks")
        .arg(pass + 1)
        .arg(passShort(joint, pass, fact.ticks.front().place.round));
}

QString tightened(const TicksFact &fact, const Joint &joint)
{
    const TickMade tick = tickMade(fact, fact.ticks.front(), joint);
    const QString torque = tickTorqueText(tick, joint);
    QString pending = torque.isEmpty()
                          ? JointActWords::tr("tightened %1", "fastener").arg(tick.tick.place.fastener)
                          : JointActWords::tr("tightened %1 to %2", "fastener, torque").arg(tick.tick.place.fastener).arg(torque);
    if (tick.verdict && *tick.verdict != Verdict::Inside)
        pending = JointActWords::tr("%1, %2", "what was done, verdict").arg(pending, verdictName(*tick.verdict));
    return tick.tick.moved ? JointActWords::tr("%1, and it moved", "what was done").arg(pending) : pending;
}

QString turnedOn(const TicksFact &fact, const Joint &joint)
{
    const int fastener = fact.ticks.front().place.fastener;
    const std::size_t pass = passOf(fact);
    const AngleOn *on = pass < joint.passes.size() ? std::get_if<AngleOn>(&joint.passes[pass]) : nullptr;
    return on ? JointActWords::tr("turned %1 on by %2", "fastener, angle").arg(fastener).arg(turnedText(on->angle.value, on->angle.unit))
              : JointActWords::tr("turned %1 on", "fastener").arg(fastener);
}

QString oneTick(const TicksFact &fact, const Joint &joint)
{
    const int fastener = fact.ticks.front().place.fastener;
    switch (fact.how) {
    case TickHow::ByHand: return JointActWords::tr("tightened %1 by hand, finger-tight").arg(fastener);
    case TickHow::SetTool:
    case TickHow::ReadTool: return tightened(fact, joint);
    case TickHow::ByAngle: return turnedOn(fact, joint);
    case TickHow::ByFeel: return withWords(JointActWords::tr("fastener %1 by feel").arg(fastener), fact.reason);
    }
    return {};
}

QString manyTicks(const TicksFact &fact, const Joint &joint)
{
    const auto count = static_cast<int>(fact.ticks.size());
    const QString pass = passOfTicks(fact, joint);
    if (fact.how == TickHow::ByFeel)
        return withWords(JointActWords::tr("%n fastener(s) by feel, %1", "count, pass", count).arg(pass), fact.reason);
    return JointActWords::tr("ticked %n fastener(s), %1", "count, pass", count).arg(pass);
}

std::vector<int> numbersOf(const std::vector<TickSlot> &places)
{
    std::vector<int> numbers;
    for (const TickSlot &place : places)
        numbers.push_back(place.fastener);
    return numbers;
}

QString accepted(const AcceptedFact &fact)
{
    const QString which = fastenersInText(fact.fasteners);
    switch (fact.what) {
    case AcceptedWhat::ByFeel: return JointActWords::tr("accepted %1 by feel", "fasteners").arg(which);
    case AcceptedWhat::Torque: return JointActWords::tr("accepted the torque of %1", "fasteners").arg(which);
    case AcceptedWhat::Unsettled: return JointActWords::tr("accepted that some still moved");
    case AcceptedWhat::Reused: return JointActWords::tr("accepted %1 used again", "fasteners").arg(which);
    }
    return {};
}

} // namespace

QString jointActText(const LoosenedFact &fact, const JobFrame &frame)
{
    const QString pending = found(fact);
    const QString noted =
        fact.note.empty() ? pending : JointActWords::tr("%1 (%2)", "what was found, its note").arg(pending, textOf(fact.note));
    return ofJoint(noted, fact.joint, frame);
}

QString jointActText(const TicksFact &fact, const JobFrame &frame)
{
    const Joint *joint = frame.joint(fact.joint, fact.revision);
    if (!joint || fact.ticks.empty())
        return JointActWords::tr("ticked fasteners");
    return ofJoint(fact.ticks.size() == 1 ? oneTick(fact, *joint) : manyTicks(fact, *joint), fact.joint, frame);
}

QString jointActText(const UntickedFact &fact, const JobFrame &frame)
{
    const std::vector<int> numbers = numbersOf(fact.places);
    const QString pending =
        JointActWords::tr("took the tick(s) of %1 back", "fasteners", static_cast<int>(numbers.size())).arg(numbersText(numbers));
    return ofJoint(pending, fact.joint, frame);
}

QString jointActText(const JointBegunFact &fact, const JobFrame &frame)
{
    const Joint *joint = frame.joint(fact.joint, fact.revision);
    return joint ? JointActWords::tr("began %1 from the first pass", "joint").arg(jointName(*joint))
                 : JointActWords::tr("began a joint from the first pass");
}

QString jointActText(const FittedFact &fact, const JobFrame &frame)
{
    const QString which = fastenersInText(fact.fasteners);
    const QString pending = fact.fitted == Fitted::New ? JointActWords::tr("fitted new: %1", "fasteners").arg(which)
                                                       : JointActWords::tr("used again: %1", "fasteners").arg(which);
    return ofJoint(pending, fact.joint, frame);
}

QString jointActText(const AcceptedFact &fact, const JobFrame &frame)
{
    return ofJoint(withWords(accepted(fact), fact.reason), fact.joint, frame);
}

QString jointActText(const FastenerSubject &about, const std::string &finding, const JobFrame &frame)
{
    return ofJoint(JointActWords::tr("noted: %1").arg(textOf(finding)), about.joint, frame);
}

} // namespace asleft
