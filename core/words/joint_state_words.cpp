#include "joint_text.h"

#include <words/fasteners.h>
#include <words/joint_names.h>
#include <words/joints.h>
#include <words/numbers.h>
#include <words/readings.h>
#include <words/times.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

class JointStateWords {
    Q_DECLARE_TR_FUNCTIONS(JointStateWords)
};

QString withNote(const QString &words, const std::string &note)
{
    return note.empty() ? words : JointStateWords::tr("%1: %2", "what was found, its note").arg(words, QString::fromStdString(note));
}

const Typed<Torque> *shownOnWrench(const TicksFact &fact)
{
    if (fact.how == TickHow::SetTool && fact.setting)
        return &*fact.setting;
    return fact.how == TickHow::ReadTool && fact.reading ? &*fact.reading : nullptr;
}

/// What its pass asks for, where it has a torque of its own; else null.
const Typed<Torque> *ownTorque(const TickMade &tick, const Joint &joint)
{
    const auto pass = static_cast<std::size_t>(std::max(0, tick.tick.place.pass));
    const AtTorque *at = pass < joint.passes.size() ? std::get_if<AtTorque>(&joint.passes[pass]) : nullptr;
    return at ? &at->torque : nullptr;
}

bool isFitted(const TickMade &tick)
{
    return tick.fact.fit && !changesNothing(tick.fact.fit->fit);
}

/// As the manual prints it in the wrench's own system, and a pass its own torque.
TorqueUnit unitOfTick(const TickMade &tick, const Joint &joint)
{
    if (const Typed<Torque> *own = ownTorque(tick, joint))
        return own->unit;
    const Typed<Torque> *shown = shownOnWrench(tick.fact);
    const auto target = targetOf(joint, shown ? std::optional(shown->unit) : std::nullopt);
    return target ? target->unit : unitOf(joint);
}

std::optional<Torque> limitBroken(const TickMade &tick, const Joint &joint)
{
    const auto pass = static_cast<std::size_t>(std::max(0, tick.tick.place.pass));
    const Typed<Torque> *shown = shownOnWrench(tick.fact);
    const Band<Torque> *band = shown && pass < joint.passes.size() ? bandOfPass(joint, pass, shown->unit) : nullptr;
    if (band && tick.verdict == Verdict::Low)
        return band->low;
    return band && tick.verdict == Verdict::High ? band->high : std::nullopt;
}

/// What stood on the wrench, where that is not what the fastener got: "set to 23.6 lbf·ft through a 40 mm adapter straight out".
QString onWrench(const TickMade &tick, const Joint *joint)
{
    const Typed<Torque> *shown = shownOnWrench(tick.fact);
    const bool fitted = isFitted(tick);
    // A reading is said as it was typed in any case.
    if (!shown || (!fitted && (tick.fact.how == TickHow::ReadTool || (joint && shown->unit == unitOfTick(tick, *joint)))))
        return {};
    const QString torque = typedText(*shown);
    if (!fitted)
        return JointStateWords::tr("set to %1").arg(torque);
    const QString adapter = fitText(tick.fact.fit->fit, shown->unit);
    return tick.fact.how == TickHow::SetTool ? JointStateWords::tr("set to %1 through a %2", "torque, adapter").arg(torque, adapter)
                                             : JointStateWords::tr("which showed %1 through a %2", "torque, adapter").arg(torque, adapter);
}

QString byWrench(const TickMade &tick, const JobFrame &frame, const Joint *joint)
{
    const Typed<Torque> *shown = shownOnWrench(tick.fact);
    QString torque = joint ? tickTorqueText(tick, *joint) : QString();
    if (torque.isEmpty())
        torque = shown ? typedText(*shown) : JointStateWords::tr("tightened");
    const Tool *tool = tick.fact.tool ? frame.tool(*tick.fact.tool) : nullptr;
    if (!tool)
        return torque;
    const QString name = toolName(*tool);
    const QString own = onWrench(tick, joint);
    return own.isEmpty() ? JointStateWords::tr("%1 with %2", "torque, tool").arg(torque, name)
                         : JointStateWords::tr("%1 with %2 %3", "torque, tool, what stood on it").arg(torque, name, own);
}

QString byAngle(const TickMade &tick, const JobFrame &frame, const Joint *joint)
{
    const auto pass = static_cast<std::size_t>(std::max(0, tick.tick.place.pass));
    const AngleOn *on = joint && pass < joint->passes.size() ? std::get_if<AngleOn>(&joint->passes[pass]) : nullptr;
    const QString turned =
        on ? JointStateWords::tr("turned on by %1").arg(turnedText(on->angle.value, on->angle.unit)) : JointStateWords::tr("turned on");
    const Tool *tool = tick.fact.tool ? frame.tool(*tick.fact.tool) : nullptr;
    return tool ? JointStateWords::tr("%1 with %2", "angle, tool").arg(turned, toolName(*tool))
                : JointStateWords::tr("%1 by a mark", "angle").arg(turned);
}

QString howTicked(const TickMade &tick, const JobFrame &frame, const Joint *joint)
{
    switch (tick.fact.how) {
    case TickHow::ByHand: return tickHowName(tick.fact.how);
    case TickHow::SetTool:
    case TickHow::ReadTool: return byWrench(tick, frame, joint);
    case TickHow::ByAngle: return byAngle(tick, frame, joint);
    case TickHow::ByFeel: return withNote(tickHowName(tick.fact.how), tick.fact.reason);
    }
    return {};
}

QString whoAndWhen(PersonId who, Moment at, const JobFrame &frame)
{
    const Person *person = frame.person(who);
    const QString when = momentText(at);
    return person ? JointStateWords::tr("%1, %2", "initials, time").arg(QString::fromStdString(person->initials), when) : when;
}

QString placeOf(const Tick &tick, const Joint &joint)
{
    const auto pass = static_cast<std::size_t>(std::max(0, tick.place.pass));
    return JointStateWords::tr("%1 (%2)", "pass 2 of 3, what it asks")
        .arg(passPlace(joint, pass), passShort(joint, pass, tick.place.round));
}

void addOwnSize(QStringList &lines, const Joint &joint, int fastener)
{
    const FastenerPosition *place = joint.text.pattern.place(fastener);
    if (place && !place->thread.empty())
        lines.append(JointStateWords::tr("thread %1").arg(QString::fromStdString(place->thread)));
    if (place && !place->length.empty())
        lines.append(JointStateWords::tr("length %1").arg(QString::fromStdString(place->length)));
}

void addAccepted(QStringList &lines, const FastenerState &now)
{
    const auto add = [&lines](AcceptedWhat what, const std::optional<std::string> &reason) {
        if (reason)
            lines.append(
                JointStateWords::tr("accepted, %1: %2", "what, reason").arg(acceptedWhatName(what), QString::fromStdString(*reason)));
    };
    add(AcceptedWhat::ByFeel, now.feelAccepted);
    add(AcceptedWhat::Torque, now.torqueAccepted);
    add(AcceptedWhat::Reused, now.reuseAccepted);
}

void addFindings(QStringList &lines, const JobState &state, JointId joint, int fastener)
{
    for (const Finding &finding : state.findings) {
        const auto *about = std::get_if<FastenerSubject>(&finding.what.subject);
        if (about && about->joint == joint && std::ranges::find(about->fasteners, fastener) != about->fasteners.end())
            lines.append(JointStateWords::tr("noted: %1").arg(QString::fromStdString(finding.what.text)));
    }
}

QString stageText(FastenerStage stage)
{
    switch (stage) {
    case FastenerStage::Untouched: return JointStateWords::tr("untouched");
    case FastenerStage::Loose: return JointStateWords::tr("loose");
    case FastenerStage::Partway: return JointStateWords::tr("not tight yet");
    case FastenerStage::Tight: return JointStateWords::tr("tight");
    }
    return {};
}

QString sayFitted(const std::vector<int> &fasteners, const Joint &joint)
{
    const QString which = fastenersName(fasteners);
    if (joint.text.singleUse == SingleUse::No)
        return JointStateWords::tr("%1: found missing, broken or of the wrong length. Say whether what goes in is new").arg(which);
    const bool washers = joint.text.singleUse == SingleUse::CrushWasher;
    const auto count = static_cast<int>(fasteners.size());
    return washers ? JointStateWords::tr("%1 have crush washers, used once only. Say whether new ones are fitted", "fasteners", count)
                         .arg(which)
                   : JointStateWords::tr("%1 are used once only. Say whether new ones are fitted", "fasteners", count).arg(which);
}

QString torqueOutside(const std::vector<int> &fasteners, const Joint &joint)
{
    const QString which = fastenersName(fasteners);
    return joint.text.singleUse == SingleUse::TorqueToYield
               ? JointStateWords::tr("%1: outside the band, or not proved inside. Fit new and begin anew, or accept it with a reason")
                     .arg(which)
               : JointStateWords::tr("%1: outside the band, or not proved inside. Tighten again, or accept it with a reason").arg(which);
}

} // namespace

const Joint *jointOf(const JobState &state, std::optional<JointId> joint)
{
    if (!joint)
        return nullptr;
    return state.joints.contains(*joint) ? &jointInHand(state, *joint) : state.frame->jointNow(*joint);
}

QString tickTorqueText(const TickMade &tick, const Joint &joint)
{
    const Typed<Torque> *shown = shownOnWrench(tick.fact);
    if (!tick.torque)
        return {};
    const TorqueUnit unit = unitOfTick(tick, joint);
    const QString converted = torqueText(*tick.torque, unit, limitBroken(tick, joint));
    if (tick.fact.how == TickHow::ReadTool && shown && !isFitted(tick))
        return shown->unit == unit
                   ? typedText(*shown)
                   : JointStateWords::tr("%1 (%2)", "torque as it was read, the same in another unit").arg(typedText(*shown), converted);
    const Typed<Torque> *own = ownTorque(tick, joint);
    return own && torqueText(own->value, unit) == converted ? typedText(*own) : converted;
}

QString foundText(const FastenerFound &found)
{
    if (found.how == FoundHow::Measured && found.torque)
        return withNote(typedText(*found.torque), found.note);
    return withNote(foundHowName(found.how), found.note);
}

QString tickText(const TickMade &tick, const JobFrame &frame)
{
    const Joint *joint = frame.joint(tick.fact.joint, tick.fact.revision);
    QStringList parts{howTicked(tick, frame, joint)};
    if (tick.verdict && *tick.verdict != Verdict::ByFeel)
        parts.append(verdictName(*tick.verdict));
    if (tick.fact.outOfRange)
        parts.append(JointStateWords::tr("outside the wrench's range"));
    if (tick.fact.calibrationOverdue)
        parts.append(JointStateWords::tr("calibration overdue"));
    if (tick.tick.moved)
        parts.append(JointStateWords::tr("it moved"));
    return parts.join(JointStateWords::tr(", ", "between what is said of a tick"));
}

QStringList fastenerLines(const JobState &state, JointId joint, int fastener)
{
    const Joint *inHand = jointOf(state, joint);
    const auto known = state.joints.find(joint);
    if (!inHand || known == state.joints.end() || !known->second.fasteners.contains(fastener))
        return {};
    const FastenerState &now = known->second.fasteners.at(fastener);
    QStringList lines;
    addOwnSize(lines, *inHand, fastener);
    if (now.found)
        lines.append(JointStateWords::tr("found: %1 (%2)", "what, who and when")
                         .arg(foundText(*now.found), whoAndWhen(now.found->who, now.found->at, *state.frame)));
    if (now.fitted)
        lines.append(JointStateWords::tr("fitted: %1").arg(fittedName(*now.fitted)));
    for (const TickMade &tick : now.ticks)
        lines.append(JointStateWords::tr("%1: %2 (%3)", "pass, how, who and when")
                         .arg(placeOf(tick.tick, *inHand), tickText(tick, *state.frame), whoAndWhen(tick.who, tick.at, *state.frame)));
    lines.append(JointStateWords::tr("now: %1", "state of a fastener").arg(stageText(now.stage)));
    addAccepted(lines, now);
    addFindings(lines, state, joint, fastener);
    return lines;
}

QString looseFinding(const Joint &joint, const std::vector<int> &fasteners)
{
    const auto all = joint.text.pattern.places.size();
    if (fasteners.size() == 1)
        return JointStateWords::tr("One was loose: %1 of %2.", "fastener, how many there are").arg(fasteners.front()).arg(all);
    return JointStateWords::tr("Several were loose: %1 of %2.", "fasteners, how many there are").arg(numbersText(fasteners)).arg(all);
}

QString jointWantsSentence(const JointWants &wants, const Joint &joint)
{
    const QString which = fastenersName(wants.fasteners);
    switch (wants.kind) {
    case JointWants::Kind::Nothing: return {};
    case JointWants::Kind::SayFitted: return sayFitted(wants.fasteners, joint);
    case JointWants::Kind::AcceptReuse:
        return joint.text.singleUse == SingleUse::No
                   ? JointStateWords::tr("%1: what went in is not new. Fit new, or accept it with a reason").arg(which)
                   : JointStateWords::tr("%1: used again, though made to be used once. Fit new, or accept it with a reason").arg(which);
    case JointWants::Kind::TorqueOutside: return torqueOutside(wants.fasteners, joint);
    case JointWants::Kind::AcceptUnsettled:
        return JointStateWords::tr("Some still moved in the last round. Find out why and begin anew, or accept it with a reason");
    }
    return {};
}

} // namespace asleft
