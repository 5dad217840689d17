#include <shop/outlook.h>

#include "history.h"
#include "joint_open.h"

#include <algorithm>

namespace asleft {

namespace {

using Kind = OpenItem::Kind;

OpenItem counted(Kind kind, int count)
{
    return {.kind = kind, .count = count};
}

OpenItem ofPoint(Kind kind, PointId point, const PointState &state)
{
    OpenItem item{.kind = kind, .point = point, .kept = state.kept.has_value()};
    if (state.left)
        item.since = state.left->at;
    return item;
}

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
        items.push_back({.kind = Kind::NutOpen, .point = point, .since = state.point(point).nutOpenSince});
}

void addBleedDown(const JobState &state, Moment now, std::vector<OpenItem> &items)
{
    if (const auto until = bleedDownUntil(state); until && *until > now)
        items.push_back({.kind = Kind::BleedingDown, .until = until});
}

/// Whether setting a point presses on a tappet, which then holds its valve off the computer until it has bled down.
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
            items.push_back({.kind = Kind::StepUndone, .step = step.id});
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
        if (now.left->verdict == Verdict::Low || now.left->verdict == Verdict::High)
            items.push_back(ofPoint(Kind::OutOfBand, point.id, now));
        else if (now.left->verdict == Verdict::TooClose)
            items.push_back(ofPoint(Kind::TooClose, point.id, now));
    }
}

void addByTwo(const JobState &state, std::vector<OpenItem> &items)
{
    for (const SettingPoint &point : state.frame->engine.points) {
        const PointState &now = state.point(point.id);
        if (now.leftByTwo)
            items.push_back(ofPoint(Kind::SetByTwo, point.id, now));
    }
}

void addBeforeBridge(const JobState &state, std::vector<OpenItem> &items)
{
    for (const SettingPoint &point : state.frame->engine.points) {
        const SettingPoint *bridge = bridgeOf(*state.frame, point);
        const PointState &now = state.point(point.id);
        if (bridge && now.stage == PointStage::Left && state.point(bridge->id).stage != PointStage::Left)
            items.push_back(ofPoint(Kind::LashBeforeBridge, point.id, now));
    }
}

template <class Holds>
void addCount(const JobState &state, Kind kind, Holds holds, std::vector<OpenItem> &items)
{
    const auto count = std::ranges::count_if(state.points, [&](const auto &point) { return holds(point.second); });
    if (count > 0)
        items.push_back(counted(kind, static_cast<int>(count)));
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
            items.push_back({.kind = Kind::SpecUnsure, .spec = spec.id});
        if (assumed)
            items.push_back({.kind = Kind::ToleranceAssumed, .spec = spec.id});
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

StillOpen stillOpen(const JobState &state, Moment now)
{
    StillOpen open;
    addNuts(state, open.turning);
    addBleedDown(state, now, open.turning);
    addLooseFasteners(state, Gate::TurningTheCrank, open.turning);
    addSteps(state, Gate::TurningTheCrank, open.turning);

    addOutside(state, open.firstStart);
    addByTwo(state, open.firstStart);
    addBeforeBridge(state, open.firstStart);
    if (hasValveSet(state))
        addCount(
            state, Kind::PointsNotLeft, [](const PointState &point) { return point.stage != PointStage::Left; }, open.firstStart);
    addCount(
        state, Kind::SpecRevised,
        [&](const PointState &point) { return olderRevision(*state.frame, point.left ? point.left : point.found); }, open.firstStart);
    addLooseFasteners(state, Gate::FirstStart, open.firstStart);
    addJointsBeforeStart(state, open.firstStart);
    addSteps(state, Gate::FirstStart, open.firstStart);

    addCount(state, Kind::NoSpecYet, leftWith(Verdict::NoSpec), open.handOver);
    addCount(state, Kind::NotComparable, leftWith(Verdict::NotComparable), open.handOver);
    addCount(state, Kind::ByFeel, leftWith(Verdict::ByFeel), open.handOver);
    addCount(
        state, Kind::OutOfPosition, [](const PointState &point) { return isLeft(point) && point.left->reading.outOfPosition; },
        open.handOver);
    addUnsureSpecs(state, open.handOver);
    addLooseFasteners(state, Gate::HandOver, open.handOver);
    addJointsAtHandOver(state, open.handOver);
    addSteps(state, Gate::HandOver, open.handOver);
    return open;
}

} // namespace asleft
