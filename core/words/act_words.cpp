#include "joint_text.h"

#include <words/crank.h>
#include <words/job.h>
#include <words/points.h>
#include <words/readings.h>
#include <words/times.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

class ActWords {
    Q_DECLARE_TR_FUNCTIONS(ActWords)
};

QString verdictOfReading(const ReadingFact &reading, const JobFrame &frame)
{
    const Spec *spec = reading.judgedBy ? frame.spec(*reading.judgedBy) : nullptr;
    return verdictName(verdictOf(reading, spec));
}

/// "at 0.30 mm", "loose on 0.40 mm", "by feel".
QString valueText(const ReadingFact &reading)
{
    const bool plain = reading.form == ReadingForm::Exact || reading.form == ReadingForm::Turned;
    return plain ? ActWords::tr("at %1").arg(readingText(reading)) : readingText(reading);
}

/// The same with its verdict: "at 0.30 mm, inside".
QString howText(const ReadingFact &reading, const JobFrame &frame)
{
    if (reading.form == ReadingForm::ByFeel)
        return readingText(reading);
    return ActWords::tr("%1, %2", "reading, verdict").arg(valueText(reading), verdictOfReading(reading, frame));
}

QString pointsText(const std::vector<PointId> &points, const JobFrame &frame)
{
    QStringList names;
    for (const PointId point : points)
        names.append(pointShort(frame, point));
    return names.join(ActWords::tr(", ", "between names of points"));
}

/// The cause, then a person's own words, as far as there are any.
QString whyText(const CheckAgainFact &again)
{
    const QString own = QString::fromStdString(again.why);
    if (again.cause == Disturbance::Other)
        return own;
    const QString cause = disturbanceName(again.cause);
    return own.isEmpty() ? cause : ActWords::tr("%1: %2", "cause, in a person's words").arg(cause, own);
}

/// What was noted, with what it is about where that is not plain.
struct FindingWords {
    const std::string &text;
    const JobFrame &frame;

    QString operator()(const FastenerSubject &about) const { return jointActText(about, text, frame); }
    QString operator()(PointId point) const { return about(pointInText(frame, point)); }
    QString operator()(StepId id) const
    {
        const Step *step = frame.step(id);
        return step ? about(QString::fromStdString(step->title)) : ActWords::tr("noted: %1").arg(QString::fromStdString(text));
    }
    QString operator()(EngineId) const { return about(ActWords::tr("the engine", "what a finding is about")); }
    QString operator()(VehicleId) const { return about(ActWords::tr("the vehicle", "what a finding is about")); }

private:
    [[nodiscard]] QString about(const QString &what) const
    {
        return ActWords::tr("noted, %1: %2", "what it is about, in a person's words").arg(what, QString::fromStdString(text));
    }
};

/// One sentence for each kind of fact.
class Telling {
public:
    Telling(const Act &act, const JobState &state) : m_act(act), m_state(state), m_frame(*state.frame) {}

    QString operator()(const ReadingFact &reading) const
    {
        const QString point = pointInText(m_frame, reading.point);
        const QString how = howText(reading, m_frame);
        if (reading.corrects)
            return ActWords::tr("corrected %1 %2: %3", "point, as found or as left, reading").arg(point, phaseName(reading.phase), how);
        return reading.phase == Phase::AsFound ? ActWords::tr("found %1 %2", "point, reading").arg(point, how)
                                               : ActWords::tr("left %1 %2", "point, reading").arg(point, how);
    }

    QString operator()(const AllLeftFact &all) const
    {
        return ActWords::tr("left %1 with the spec's leaf, locked, felt again").arg(pointsText(pointsOf(all), m_frame));
    }

    QString operator()(const NutOpenFact &open) const { return ActWords::tr("opened the nut of %1").arg(pointInText(m_frame, open.point)); }

    QString operator()(const CrankFact &crank) const
    {
        if (!crank.crank)
            return ActWords::tr("said that nobody knows where the crank stands");
        const QString place = crankInText(m_frame.engine.design, crank.crank);
        return crank.how == CrankHow::Confirmed ? ActWords::tr("confirmed the crank: %1").arg(place)
                                                : ActWords::tr("turned the crank to %1").arg(place);
    }

    QString operator()(const PlanFact &plan) const
    {
        return ActWords::tr("chose the plan: %1").arg(planSource(m_frame.engine.design, plan.plan));
    }

    QString operator()(const StepDoneFact &done) const
    {
        const Step *step = m_frame.step(done.step);
        return step ? ActWords::tr("done: %1").arg(stepTitle(*step, m_frame)) : ActWords::tr("a line done");
    }

    QString operator()(const KeepFact &keep) const
    {
        const QString point = pointInText(m_frame, keep.point);
        return keep.reason.empty() ? ActWords::tr("kept %1 as left").arg(point)
                                   : ActWords::tr("kept %1 as left: %2").arg(point, QString::fromStdString(keep.reason));
    }

    QString operator()(const CautionsFact &) const { return ActWords::tr("read the cautions"); }

    QString operator()(const CheckAgainFact &again) const
    {
        const QString points = pointsText(again.points, m_frame);
        const QString why = whyText(again);
        return why.isEmpty() ? ActWords::tr("check again: %1").arg(points) : ActWords::tr("check again: %1, because: %2").arg(points, why);
    }

    QString operator()(const WithdrawFact &) const
    {
        const auto &acts = m_state.acts;
        const auto target = std::find_if(acts.begin(), acts.end(), [this](const Act &act) { return act.seq == m_act.what.withdraws; });
        if (target == acts.end() || target->seq >= m_act.seq)
            return ActWords::tr("undid an act");
        if (!std::holds_alternative<WithdrawFact>(target->what.fact))
            return ActWords::tr("undid: %1").arg(actText(*target, m_state));
        // A withdrawal taken back is the first act brought back.
        const auto first = std::find_if(acts.begin(), acts.end(), [&](const Act &act) { return act.seq == target->what.withdraws; });
        return first == acts.end() ? ActWords::tr("brought an act back") : ActWords::tr("brought back: %1").arg(actText(*first, m_state));
    }

    QString operator()(const LoosenedFact &fact) const { return jointActText(fact, m_frame); }
    QString operator()(const TicksFact &fact) const { return jointActText(fact, m_frame); }
    QString operator()(const UntickedFact &fact) const { return jointActText(fact, m_frame); }
    QString operator()(const JointBegunFact &fact) const { return jointActText(fact, m_frame); }
    QString operator()(const FittedFact &fact) const { return jointActText(fact, m_frame); }
    QString operator()(const AcceptedFact &fact) const { return jointActText(fact, m_frame); }
    QString operator()(const FindingFact &fact) const { return std::visit(FindingWords{fact.text, m_frame}, fact.subject); }

private:
    const Act &m_act;
    const JobState &m_state;
    const JobFrame &m_frame;
};

QString lastActLine(const JobState &state, Moment now)
{
    const Act *last = lastAct(state);
    if (!last)
        return ActWords::tr("Nothing has been done in this job yet");
    const Person *person = state.frame->person(last->what.who);
    const QString when = momentText(last->what.at, now);
    if (!person)
        return ActWords::tr("Last: %1, %2", "act, time").arg(actText(*last, state), when);
    return ActWords::tr("Last: %1, %2, %3", "act, initials, time")
        .arg(actText(*last, state), QString::fromStdString(person->initials), when);
}

QString openNutsLine(const JobState &state)
{
    const std::vector<PointId> open = openNuts(state);
    if (open.empty())
        return ActWords::tr("No nut is open in this job");
    QStringList names;
    for (const PointId point : open)
        names.append(pointInText(*state.frame, point));
    return ActWords::tr("Nut open: %1").arg(names.join(QStringLiteral(", ")));
}

QString crankLine(const JobState &state, Moment now)
{
    if (!state.crank)
        return ActWords::tr("Crank: %1").arg(crankKnown(state, now));
    return ActWords::tr("Crank: %1, %2", "place, how it is known")
        .arg(crankInText(state.frame->engine.design, state.crank->crank), crankKnown(state, now));
}

} // namespace

QString disturbanceName(Disturbance cause)
{
    switch (cause) {
    case Disturbance::Other: return ActWords::tr("other work");
    case Disturbance::HeadTightened: return ActWords::tr("the head was tightened again");
    case Disturbance::RockersTightened: return ActWords::tr("a rocker stand was tightened again");
    case Disturbance::TimingMoved: return ActWords::tr("the cam drive was off");
    case Disturbance::ValveOrSeatCut: return ActWords::tr("a valve or its seat was cut or changed");
    case Disturbance::BridgeSet: return ActWords::tr("its bridge screw was set after it");
    }
    return {};
}

QString otherStationText(const Act &act, const JobState &state)
{
    const Person *person = state.frame->person(act.what.who);
    const QString who = person ? QString::fromStdString(person->initials) : ActWords::tr("somebody");
    const auto *reading = std::get_if<ReadingFact>(&act.what.fact);
    if (!reading || reading->corrects)
        return ActWords::tr("Meanwhile at another seat, %1: %2.", "initials, what was done").arg(who, actText(act, state));
    const QString point = pointInText(*state.frame, reading->point);
    const QString how = valueText(*reading);
    return reading->phase == Phase::AsFound
               ? ActWords::tr("Meanwhile %1 found %2 %3 at another seat.", "initials, point, reading").arg(who, point, how)
               : ActWords::tr("Meanwhile %1 left %2 %3 at another seat.", "initials, point, reading").arg(who, point, how);
}

QString actText(const Act &act, const JobState &state)
{
    return std::visit(Telling(act, state), act.what.fact);
}

QStringList resumeLines(const JobState &state, Moment now, const Tool *leaves)
{
    QStringList lines{lastActLine(state, now), openNutsLine(state)};
    lines << jointResumeLines(state) << crankLine(state, now)
          << ActWords::tr("Next: %1").arg(nextActSentence(nextAct(state), state, leaves));
    return lines;
}

} // namespace asleft
