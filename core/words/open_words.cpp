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

QString keptNote(const std::optional<std::string> &kept)
{
    if (!kept)
        return OpenItemWords::tr("as left, not kept");
    return kept->empty() ? OpenItemWords::tr("as left, kept") : OpenItemWords::tr("as left, kept: %1").arg(QString::fromStdString(*kept));
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

/// What stands open, one function for each kind.
class OpenTelling {
public:
    OpenTelling(const JobState &state, Moment now) : m_state(state), m_frame(*state.frame), m_now(now) {}

    OpenWords operator()(const open::NutOpen &item) const
    {
        return {OpenItemWords::tr("Nut open: %1").arg(pointInText(m_frame, item.point)),
                OpenItemWords::tr("since %1").arg(momentText(item.since, m_now))};
    }

    OpenWords operator()(const open::OutOfBand &item) const
    {
        return {OpenItemWords::tr("%1 %2", "point, verdict").arg(pointName(m_frame, item.point), verdictName(item.verdict)),
                keptNote(item.kept)};
    }

    OpenWords operator()(const open::TooClose &item) const
    {
        return {OpenItemWords::tr("%1 too close to call").arg(pointName(m_frame, item.point)), keptNote(item.kept)};
    }

    OpenWords operator()(const open::SetByTwo &item) const
    {
        const PointState &point = m_state.point(item.point);
        const QString title = OpenItemWords::tr("%1 left by two seats").arg(pointName(m_frame, item.point));
        if (!point.left || !point.leftByTwo)
            return {title, OpenItemWords::tr("feel it again")};
        return {title, OpenItemWords::tr("%1, then %2: feel it again", "two readings, each with initials")
                           .arg(leftByText(*point.leftByTwo, m_frame), leftByText(*point.left, m_frame))};
    }

    OpenWords operator()(const open::LashBeforeBridge &item) const
    {
        return {OpenItemWords::tr("%1 left before its bridge").arg(pointName(m_frame, item.point)),
                OpenItemWords::tr("bridge screw first, then this lash")};
    }

    OpenWords operator()(const open::PointsNotLeft &item) const
    {
        return {OpenItemWords::tr("%n point(s) not left", nullptr, item.count()), valveSetTitle(m_state)};
    }

    OpenWords operator()(const open::SpecRevised &item) const
    {
        return {OpenItemWords::tr("%n point(s) judged by an older spec", nullptr, item.count()),
                OpenItemWords::tr("the spec has changed since")};
    }

    OpenWords operator()(const open::NoSpecYet &item) const
    {
        return {OpenItemWords::tr("%n point(s) left with no spec yet", nullptr, item.count()), OpenItemWords::tr("nothing to judge by")};
    }

    OpenWords operator()(const open::NotComparable &item) const
    {
        return {OpenItemWords::tr("%n point(s) not comparable", nullptr, item.count()),
                OpenItemWords::tr("hot against cold, or turns against a clearance")};
    }

    OpenWords operator()(const open::ByFeel &item) const
    {
        return {OpenItemWords::tr("%n point(s) left by feel", nullptr, item.count()), OpenItemWords::tr("done, unmeasured")};
    }

    OpenWords operator()(const open::OutOfPosition &item) const
    {
        return {OpenItemWords::tr("%n point(s) set out of place", nullptr, item.count()), OpenItemWords::tr("the crank did not allow it")};
    }

    OpenWords operator()(const open::SpecUnsure &item) const
    {
        const Spec *spec = m_frame.spec(item.spec);
        return spec ? OpenWords{unsureTitle(spec->source.certainty), specNote(*spec)} : OpenWords{OpenItemWords::tr("Spec not sure"), {}};
    }

    OpenWords operator()(const open::ToleranceAssumed &item) const
    {
        const Spec *spec = m_frame.spec(item.spec);
        return {OpenItemWords::tr("Tolerance assumed"), spec ? specNote(*spec) : QString()};
    }

    OpenWords operator()(const open::StepUndone &item) const
    {
        const Step *step = m_frame.step(item.step);
        return {step ? stepTitle(*step, *m_state.frame) : OpenItemWords::tr("A line not done"), {}};
    }

    OpenWords operator()(const open::BleedingDown &item) const
    {
        return {OpenItemWords::tr("Hydraulic tappets bleeding down"),
                OpenItemWords::tr("not to be turned until %1").arg(momentText(item.until, m_now))};
    }

    template <std::derived_from<open::OfJoint> Item>
    OpenWords operator()(const Item &item) const
    {
        return jointOpenWords(item, m_state);
    }

private:
    const JobState &m_state;
    const JobFrame &m_frame;
    Moment m_now;
};

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
    return std::visit(OpenTelling(state, now), item);
}

} // namespace asleft
