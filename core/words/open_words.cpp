#include "joint_text.h"

#include <words/job.h>
#include <words/numbers.h>
#include <words/points.h>
#include <words/readings.h>
#include <words/specs.h>
#include <words/times.h>

#include <QCoreApplication>

namespace asleft {

namespace {

class OpenItemWords {
    Q_DECLARE_TR_FUNCTIONS(OpenItemWords)
};

QString counted(int count, const QString &one, const QString &many)
{
    return count == 1 ? one : many.arg(QLocale().toString(count));
}

QString pointOf(const OpenItem &item, const JobState &state, bool atHead)
{
    if (!item.point)
        return {};
    return atHead ? pointName(*state.frame, *item.point) : pointInText(*state.frame, *item.point);
}

QString sinceNote(const OpenItem &item, Moment now)
{
    return item.since ? OpenItemWords::tr("since %1").arg(momentText(*item.since, now)) : QString();
}

OpenWords nutOpen(const OpenItem &item, const JobState &state, Moment now)
{
    return {OpenItemWords::tr("Nut open: %1").arg(pointOf(item, state, false)), sinceNote(item, now)};
}

const PointState *stateOf(const OpenItem &item, const JobState &state)
{
    const auto point = item.point ? state.points.find(*item.point) : state.points.end();
    return point == state.points.end() ? nullptr : &point->second;
}

QString keptNote(const OpenItem &item, const JobState &state)
{
    if (!item.kept)
        return OpenItemWords::tr("as left, not kept");
    const PointState *point = stateOf(item, state);
    const std::string reason = point ? point->kept.value_or("") : "";
    return reason.empty() ? OpenItemWords::tr("as left, kept") : OpenItemWords::tr("as left, kept: %1").arg(QString::fromStdString(reason));
}

OpenWords outOfBand(const OpenItem &item, const JobState &state)
{
    const PointState *point = stateOf(item, state);
    const Verdict verdict = point && point->left ? point->left->verdict : Verdict::High;
    return {OpenItemWords::tr("%1 %2", "point, verdict").arg(pointOf(item, state, true), verdictName(verdict)), keptNote(item, state)};
}

OpenWords stepUndone(const OpenItem &item, const JobState &state)
{
    const Step *step = item.step ? state.frame->step(*item.step) : nullptr;
    return {step ? stepTitle(*step, *state.frame) : OpenItemWords::tr("A line not done"), {}};
}

QString valveSetTitle(const JobState &state)
{
    for (const Step &step : state.frame->job.steps) {
        if (step.kind == StepKind::ValveSet)
            return stepTitle(step, *state.frame);
    }
    return OpenItemWords::tr("valve set");
}

QString specNote(const Spec &spec)
{
    const QString band = std::visit([](const auto &bands) { return bandText(bands.first); }, spec.asked);
    return OpenItemWords::tr("%1, %2", "subject, band").arg(subjectName(spec.subject), band);
}

QString unsureTitle(Certainty certainty)
{
    switch (certainty) {
    case Certainty::ReadInManual: return OpenItemWords::tr("Spec without its page");
    case Certainty::ToldByPerson: return OpenItemWords::tr("Spec told by a person");
    case Certainty::FromMemory: return OpenItemWords::tr("Spec from memory");
    case Certainty::Assumed: return OpenItemWords::tr("Spec assumed");
    }
    return {};
}

/// "0.30 mm T.B.": what was left and who left it.
QString leftByText(const Judged &left, const JobFrame &frame)
{
    const Person *person = frame.person(left.who);
    const QString value = readingText(left.reading);
    return person ? OpenItemWords::tr("%1 %2", "reading, initials").arg(value, QString::fromStdString(person->initials)) : value;
}

OpenWords setByTwo(const OpenItem &item, const JobState &state)
{
    const PointState *point = stateOf(item, state);
    const QString title = OpenItemWords::tr("%1 left by two seats").arg(pointOf(item, state, true));
    if (!point || !point->left || !point->leftByTwo)
        return {title, OpenItemWords::tr("feel it again")};
    return {title, OpenItemWords::tr("%1, then %2: feel it again", "two readings, each with initials")
                       .arg(leftByText(*point->leftByTwo, *state.frame), leftByText(*point->left, *state.frame))};
}

OpenWords bleedingDown(const OpenItem &item, Moment now)
{
    const QString note = item.until ? OpenItemWords::tr("not to be turned until %1").arg(momentText(*item.until, now)) : QString();
    return {OpenItemWords::tr("Hydraulic tappets bleeding down"), note};
}

OpenWords lashBeforeBridge(const OpenItem &item, const JobState &state)
{
    return {OpenItemWords::tr("%1 left before its bridge").arg(pointOf(item, state, true)),
            OpenItemWords::tr("bridge screw first, then this lash")};
}

OpenWords specUnsure(const OpenItem &item, const JobState &state)
{
    const Spec *spec = item.spec ? state.frame->spec(*item.spec) : nullptr;
    return spec ? OpenWords{unsureTitle(spec->source.certainty), specNote(*spec)} : OpenWords{OpenItemWords::tr("Spec not sure"), {}};
}

OpenWords toleranceAssumed(const OpenItem &item, const JobState &state)
{
    const Spec *spec = item.spec ? state.frame->spec(*item.spec) : nullptr;
    return {OpenItemWords::tr("Tolerance assumed"), spec ? specNote(*spec) : QString()};
}

} // namespace

QString gateName(Gate gate)
{
    switch (gate) {
    case Gate::TurningTheCrank: return OpenItemWords::tr("before turning the crank");
    case Gate::FirstStart: return OpenItemWords::tr("before first start");
    case Gate::HandOver: return OpenItemWords::tr("before hand-over");
    }
    return {};
}

OpenWords openWords(const OpenItem &item, const JobState &state, Moment now)
{
    const int count = item.count;
    switch (item.kind) {
    case OpenItem::Kind::NutOpen: return nutOpen(item, state, now);
    case OpenItem::Kind::PointsNotLeft:
        return {counted(count, OpenItemWords::tr("1 point not left"), OpenItemWords::tr("%1 points not left")), valveSetTitle(state)};
    case OpenItem::Kind::OutOfBand: return outOfBand(item, state);
    case OpenItem::Kind::TooClose:
        return {OpenItemWords::tr("%1 too close to call").arg(pointOf(item, state, true)), keptNote(item, state)};
    case OpenItem::Kind::StepUndone: return stepUndone(item, state);
    case OpenItem::Kind::SpecRevised:
        return {
            counted(count, OpenItemWords::tr("1 point judged by an older spec"), OpenItemWords::tr("%1 points judged by an older spec")),
            OpenItemWords::tr("the spec has changed since")};
    case OpenItem::Kind::SpecUnsure: return specUnsure(item, state);
    case OpenItem::Kind::ToleranceAssumed: return toleranceAssumed(item, state);
    case OpenItem::Kind::NoSpecYet:
        return {counted(count, OpenItemWords::tr("1 point left with no spec yet"), OpenItemWords::tr("%1 points left with no spec yet")),
                OpenItemWords::tr("nothing to judge by")};
    case OpenItem::Kind::NotComparable:
        return {counted(count, OpenItemWords::tr("1 point not comparable"), OpenItemWords::tr("%1 points not comparable")),
                OpenItemWords::tr("hot against cold, or turns against a clearance")};
    case OpenItem::Kind::ByFeel:
        return {counted(count, OpenItemWords::tr("1 point left by feel"), OpenItemWords::tr("%1 points left by feel")),
                OpenItemWords::tr("done, unmeasured")};
    case OpenItem::Kind::OutOfPosition:
        return {counted(count, OpenItemWords::tr("1 point set out of place"), OpenItemWords::tr("%1 points set out of place")),
                OpenItemWords::tr("the crank did not allow it")};
    case OpenItem::Kind::BleedingDown: return bleedingDown(item, now);
    case OpenItem::Kind::SetByTwo: return setByTwo(item, state);
    case OpenItem::Kind::LashBeforeBridge: return lashBeforeBridge(item, state);
    case OpenItem::Kind::FastenersLoose:
    case OpenItem::Kind::FastenerFound:
    case OpenItem::Kind::FastenerByFeel:
    case OpenItem::Kind::TorqueOutside:
    case OpenItem::Kind::TorqueUnproved:
    case OpenItem::Kind::Unsettled:
    case OpenItem::Kind::FittedUnsaid:
    case OpenItem::Kind::Reused:
    case OpenItem::Kind::JointRevised:
    case OpenItem::Kind::JointUnsure:
    case OpenItem::Kind::JointAssumed:
    case OpenItem::Kind::CalibrationOverdue: return jointOpenWords(item, state);
    }
    return {};
}

} // namespace asleft
