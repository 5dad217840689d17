#include <shop/outlook.h>

#include "history.h"
#include "joint_open.h"

#include <algorithm>

namespace asleft {

namespace {

bool olderRevision(const JobFrame &frame, const std::optional<Judged> &judged)
{
    if (!judged || !judged->reading.judgedBy)
        return false;
    const Spec *spec = frame.spec(*judged->reading.judgedBy);
    return spec && frame.specNow(spec->subject)->id != spec->id;
}

void addNuts(const JobState &state, std::vector<OpenItem> &items)
{
    for (const PointId point : openNuts(state))
        items.push_back(open::NutOpen{point, *state.point(point).nutOpenSince});
}

void addBleedDown(const JobState &state, Moment now, std::vector<OpenItem> &items)
{
    if (const auto until = bleedDownUntil(state); until && *until > now)
        items.push_back(open::BleedingDown{*until});
}

/// Whether setting a point presses on a tappet, which then holds its valve off its seat until it has bled down.
bool bleedsDown(const SettingPoint &point, const Judged &left)
{
    return point.adjuster.kind == PointKind::Lash || left.reading.form == ReadingForm::Turned;
}

/// The points and fasteners that are open say more of a valve set or a tightening than its line would.
bool isListed(const JobState &state, const Step &step)
{
    switch (step.kind) {
    case StepKind::Note:
    case StepKind::Loosen: return true;
    case StepKind::ValveSet: return false;
    case StepKind::Tighten: return !jointOfStep(state, step);
    }
    return true;
}

void addSteps(const JobState &state, Gate gate, std::vector<OpenItem> &items)
{
    for (const Step &step : state.frame->job.steps) {
        if (isListed(state, step) && step.before == gate && !stepDone(state, step))
            items.push_back(open::StepUndone{step.id});
    }
}

bool hasValveSet(const JobState &state)
{
    return std::ranges::any_of(state.frame->job.steps, [](const Step &step) { return step.kind == StepKind::ValveSet; });
}

void addOutside(const JobState &state, std::vector<OpenItem> &items)
{
    for (const SettingPoint &point : state.frame->engine.points) {
        const PointState &now = state.point(point.id);
        if (now.stage != PointStage::Left || !now.left)
            continue;
        switch (now.left->verdict) {
        case Verdict::Low:
        case Verdict::High: items.push_back(open::OutOfBand{point.id, now.left->verdict, now.kept}); break;
        case Verdict::TooClose: items.push_back(open::TooClose{point.id, now.kept}); break;
        case Verdict::Inside:
        case Verdict::ByFeel:
        case Verdict::NotComparable:
        case Verdict::NoSpec: break;
        }
    }
}

void addByTwo(const JobState &state, std::vector<OpenItem> &items)
{
    for (const SettingPoint &point : state.frame->engine.points) {
        if (state.point(point.id).leftByTwo)
            items.push_back(open::SetByTwo{point.id});
    }
}

void addBeforeBridge(const JobState &state, std::vector<OpenItem> &items)
{
    for (const SettingPoint &point : state.frame->engine.points) {
        const SettingPoint *bridge = bridgeOf(*state.frame, point);
        const auto stageOf = [&](PointId id) { return state.point(id).stage; };
        if (bridge && stageOf(point.id) == PointStage::Left && stageOf(bridge->id) != PointStage::Left)
            items.push_back(open::LashBeforeBridge{point.id});
    }
}

/// Those of the engine's points for which it holds, as one item.
template <class Item, class Holds>
void addPoints(const JobState &state, Holds holds, std::vector<OpenItem> &items)
{
    std::vector<PointId> points;
    for (const SettingPoint &point : state.frame->engine.points) {
        if (holds(state.point(point.id)))
            points.push_back(point.id);
    }
    if (!points.empty())
        items.push_back(Item{std::move(points)});
}

/// A point to check again keeps its last reading, but is no longer said to be left by it.
bool isLeft(const PointState &point)
{
    return point.stage == PointStage::Left && point.left;
}

auto leftWith(Verdict verdict)
{
    return [verdict](const PointState &point) { return isLeft(point) && point.left->verdict == verdict; };
}

/// Of the two bands a manual prints, only one may stand without limits of its own.
bool toleranceAssumed(const Spec &spec, const ReadingFact &reading)
{
    if (const auto *turns = std::get_if<SpecBand<Angle>>(&spec.asked))
        return reading.turned && turns->printedFor(reading.turned->unit).toleranceAssumed;
    const auto *bands = std::get_if<SpecBand<Length>>(&spec.asked);
    return bands && reading.value && bands->printedFor(reading.value->unit).toleranceAssumed;
}

void addUnsureSpecs(const JobState &state, std::vector<OpenItem> &items)
{
    for (const Spec &spec : state.frame->specs) {
        bool judges = false;
        bool assumed = false;
        for (const auto &[id, point] : state.points) {
            if (!point.left || point.left->reading.judgedBy != spec.id)
                continue;
            judges = true;
            assumed = assumed || toleranceAssumed(spec, point.left->reading);
        }
        if (judges && spec.source.certainty != Certainty::ReadInManual)
            items.push_back(open::SpecUnsure{spec.id});
        if (assumed)
            items.push_back(open::ToleranceAssumed{spec.id});
    }
}

} // namespace

std::optional<Moment> bleedDownUntil(const JobState &state)
{
    const Engine &engine = state.frame->engine;
    if (engine.screw.kind != AdjusterKind::Hydraulic || !engine.bleedDown)
        return std::nullopt;
    std::optional<Moment> last;
    for (const SettingPoint &point : engine.points) {
        const auto &left = state.point(point.id).left;
        if (left && bleedsDown(point, *left))
            last = std::max(last, std::optional(takenAt(state, *left)));
    }
    if (!last)
        return std::nullopt;
    return Moment{last->utcMilliseconds + std::chrono::milliseconds(*engine.bleedDown).count()};
}

std::optional<Subject> subjectOf(const OpenItem &item)
{
    using Answer = std::optional<Subject>;
    return std::visit(Overloaded{
                          [](const open::OfPoint &one) { return Answer(one.point); },
                          [](const open::OfPoints &several) { return Answer(several.points.front()); },
                          [](const open::StepUndone &undone) { return Answer(undone.step); },
                          [](const open::OfJoint &whole) { return Answer(FastenerSubject{whole.joint}); },
                          [](const open::OfFastener &one) {
                              return Answer(FastenerSubject{one.joint, {one.fastener}});
                          },
                          [](const open::OfSpec &) { return Answer(); },
                          [](const open::BleedingDown &) { return Answer(); },
                      },
                      item);
}

StillOpen stillOpen(const JobState &state, Moment now)
{
    StillOpen all;
    addNuts(state, all.turning);
    addBleedDown(state, now, all.turning);
    addLooseFasteners(state, Gate::TurningTheCrank, all.turning);
    addSteps(state, Gate::TurningTheCrank, all.turning);

    addOutside(state, all.firstStart);
    addByTwo(state, all.firstStart);
    addBeforeBridge(state, all.firstStart);
    const auto notLeft = [](const PointState &point) { return point.stage != PointStage::Left; };
    if (hasValveSet(state))
        addPoints<open::PointsNotLeft>(state, notLeft, all.firstStart);
    const auto revised = [&](const PointState &point) { return olderRevision(*state.frame, point.left ? point.left : point.found); };
    addPoints<open::SpecRevised>(state, revised, all.firstStart);
    addLooseFasteners(state, Gate::FirstStart, all.firstStart);
    addJointsBeforeStart(state, all.firstStart);
    addSteps(state, Gate::FirstStart, all.firstStart);

    addPoints<open::NoSpecYet>(state, leftWith(Verdict::NoSpec), all.handOver);
    addPoints<open::NotComparable>(state, leftWith(Verdict::NotComparable), all.handOver);
    addPoints<open::ByFeel>(state, leftWith(Verdict::ByFeel), all.handOver);
    const auto outOfPosition = [](const PointState &point) { return isLeft(point) && point.left->reading.outOfPosition; };
    addPoints<open::OutOfPosition>(state, outOfPosition, all.handOver);
    addUnsureSpecs(state, all.handOver);
    addLooseFasteners(state, Gate::HandOver, all.handOver);
    addJointsAtHandOver(state, all.handOver);
    addSteps(state, Gate::HandOver, all.handOver);
    return all;
}

} // namespace asleft
