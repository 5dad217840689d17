#include <draw/point_shape.h>

#include <words/readings.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

class LookWords {
    Q_DECLARE_TR_FUNCTIONS(LookWords)
};

std::optional<Verdict> verdictShown(const PointState &point)
{
    if (point.left)
        return point.left->verdict;
    if (point.found)
        return point.found->verdict;
    return std::nullopt;
}

bool anyLeft(const JobState &state)
{
    return std::any_of(state.points.begin(), state.points.end(), [](const auto &entry) { return entry.second.left.has_value(); });
}

/// A loosening is begun by the first fastener that was found one way or another, a tightening by the first tick.
bool jointBegun(const JobState &state, const Step &step)
{
    const auto joint = step.joint ? state.joints.find(*step.joint) : state.joints.end();
    if (joint == state.joints.end())
        return false;
    const auto &fasteners = joint->second.fasteners;
    return std::any_of(fasteners.begin(), fasteners.end(), [&step](const auto &entry) {
        return step.kind == StepKind::Loosen ? entry.second.found.has_value() : !entry.second.ticks.empty();
    });
}

bool stepBegun(const JobState &state, const Step &step)
{
    switch (step.kind) {
    case StepKind::Note: return false;
    case StepKind::ValveSet: return anyLeft(state);
    case StepKind::Loosen:
    case StepKind::Tighten: return jointBegun(state, step);
    }
    return false;
}

QString leftWords(const PointLook &look)
{
    const QString verdict = verdictName(look.verdict.value_or(Verdict::NoSpec));
    return look.kept ? LookWords::tr("as left, %1, kept").arg(verdict) : LookWords::tr("as left, %1").arg(verdict);
}

} // namespace

PointLook lookOf(const JobState &state, PointId point, bool inHand)
{
    const PointState &now = state.point(point);
    PointLook look;
    look.stage = now.stage;
    look.verdict = verdictShown(now);
    look.kept = now.kept.has_value() && now.stage == PointStage::Left;
    look.here = here(state, point);
    look.inHand = inHand;
    return look;
}

QString lookWords(const PointLook &look)
{
    switch (look.stage) {
    case PointStage::Untouched: return LookWords::tr("untouched");
    case PointStage::Found: return LookWords::tr("as found, %1").arg(verdictName(look.verdict.value_or(Verdict::NoSpec)));
    case PointStage::NutOpen: return look.verdict ? LookWords::tr("nut open, felt before") : LookWords::tr("nut open");
    case PointStage::Left: return leftWords(look);
    case PointStage::CheckAgain: return LookWords::tr("check again");
    }
    return {};
}

QString hereWords(Here here)
{
    switch (here) {
    case Here::InPlan: return LookWords::tr("may be set here");
    case Here::Possible: return LookWords::tr("could be set here, the plan sets it elsewhere");
    case Here::NotHere: return LookWords::tr("not to be set here");
    case Here::Unknown: return {};
    }
    return {};
}

QList<LegendLine> legend()
{
    QList<LegendLine> lines;
    const auto add = [&lines](const PointLook &look) { lines.append({look, lookWords(look)}); };
    add({});
    for (const Verdict verdict :
         {Verdict::Inside, Verdict::Low, Verdict::High, Verdict::TooClose, Verdict::ByFeel, Verdict::NoSpec, Verdict::NotComparable})
        add({PointStage::Found, verdict});
    add({PointStage::NutOpen, std::nullopt});
    add({PointStage::NutOpen, Verdict::Inside});
    for (const Verdict verdict :
         {Verdict::Inside, Verdict::Low, Verdict::High, Verdict::TooClose, Verdict::ByFeel, Verdict::NoSpec, Verdict::NotComparable})
        add({PointStage::Left, verdict});
    for (const Verdict verdict : {Verdict::Low, Verdict::High, Verdict::TooClose})
        add({PointStage::Left, verdict, true});
    add({PointStage::CheckAgain, Verdict::Inside});
    for (const Here here : {Here::InPlan, Here::Possible})
        lines.append({PointLook{.here = here}, hereWords(here)});
    lines.append({PointLook{.inHand = true}, LookWords::tr("in hand")});
    return lines;
}

StepLook stepLookOf(const JobState &state, const Step &step)
{
    if (stepDone(state, step))
        return StepLook::Done;
    if (stepBegun(state, step))
        return StepLook::Begun;
    const Step *first = firstUndone(state);
    return first && first->id == step.id ? StepLook::InHand : StepLook::ToDo;
}

QString stepWords(StepLook look)
{
    switch (look) {
    case StepLook::ToDo: return LookWords::tr("to do");
    case StepLook::InHand: return LookWords::tr("to do now");
    case StepLook::Begun: return LookWords::tr("begun");
    case StepLook::Done: return LookWords::tr("done");
    }
    return {};
}

} // namespace asleft
