#pragma once

#include "engine_texts.h"
#include "typed.h"

#include <shop/outlook.h>

#include <gtest/gtest.h>

#include <algorithm>

namespace asleft {

inline const JobId ourJob{1};
inline const JobId otherJob{2};
inline const EngineId ourEngine{1};
inline const SpecId intakeSpec{1};
inline const SpecId exhaustSpec{2};

/// The first revision of a spec for a cold engine, read in the manual.
inline Spec specOf(SpecId id, SpecSubject subject, decltype(Spec::asked) asked, SpecSource source = {"Hollin workshop manual", "41"})
{
    return {id, ourEngine, subject, 1, EngineCondition::Cold, std::move(source), std::move(asked)};
}

/// Its engine becomes one of this design.
inline void fit(JobFrame &frame, const EngineDesign &design)
{
    frame.engine.design = design;
    frame.engine.points.clear();
    std::int64_t key = 100;
    for (const AdjusterRef adjuster : design.adjusters())
        frame.engine.points.push_back({PointId(++key), adjuster});
}

/// An in-line four whose intakes want 0.30 ± 0.05 mm and exhausts 0.40 ± 0.05 mm cold, with a job of five lines.
inline JobFrame usualFrame()
{
    const Engine engine{ourEngine, VehicleId(1), "four", {}, {}, {}, {}, {}};
    const Job job{ourJob,
                  VehicleId(1),
                  ourEngine,
                  "Set the valves",
                  {},
                  {{StepId(1), StepKind::Note, "Chocks", "", Gate::TurningTheCrank, {}},
                   {StepId(2), StepKind::Note, "Cover off", "", Gate::FirstStart, {}},
                   {StepId(3), StepKind::ValveSet, "Valve set", "", Gate::FirstStart, {}},
                   {StepId(4), StepKind::Note, "Two turns by hand", "", Gate::FirstStart, {}},
                   {StepId(5), StepKind::Note, "Leaks looked for", "", Gate::HandOver, {}}}};
    JobFrame frame{job,
                   {VehicleId(1), "Hollin 40 tractor", ""},
                   engine,
                   {},
                   {specOf(intakeSpec, SpecSubject::IntakeLash, bands("0.30 ± 0.05 mm")),
                    specOf(exhaustSpec, SpecSubject::ExhaustLash, bands("0.40 ± 0.05 mm"))},
                   {},
                   {},
                   {}};
    fit(frame, designEngine(fourText()).value());
    return frame;
}

/// The same with two bridged valves a side, each bridge with its screw, a cam-driven injector and a decompressor at each cylinder. The
/// screws want 0.05 to 0.10 mm, the rest has no spec.
inline JobFrame bridgedFrame()
{
    EngineText text = fourText();
    text.valves = "2+2";
    text.bridged = true;
    text.bridgeScrews = true;
    text.injectors = true;
    text.decompressors = true;
    JobFrame frame = usualFrame();
    fit(frame, designEngine(text).value());
    frame.specs.push_back(specOf(SpecId(7), SpecSubject::BridgeScrew, bands("0.05-0.10 mm")));
    return frame;
}

/// An engine whose intakes are turned on 3/4 ± 1/8 turn from zero lash and whose exhausts have a collapsed clearance; a quarter of an
/// hour's wait.
inline JobFrame hydraulicFrame()
{
    JobFrame frame = usualFrame();
    frame.engine.screw.kind = AdjusterKind::Hydraulic;
    frame.engine.bleedDown = std::chrono::minutes(15);
    frame.specs[0].asked = turnBands("3/4 ± 1/8 turn");
    return frame;
}

/// Acts of one job, told in order; the state is folded from them.
class Story {
public:
    Story() = default;
    explicit Story(JobFrame told) : frame(std::move(told)) {}

    JobFrame frame = usualFrame();
    std::vector<Act> acts;
    // Of the acts told from here on.
    std::string station = "bench";
    JobId job = ourJob;
    std::int64_t clock = 1000;
    std::int64_t betweenActs = 1; ///< in milliseconds

    [[nodiscard]] PointId at(std::string_view name) const
    {
        const auto &points = frame.engine.points;
        const auto named = [&](const SettingPoint &point) { return shortName(frame.engine.design, point.adjuster) == name; };
        return std::ranges::find_if(points, named)->id;
    }

    ActSeq log(Fact fact, std::optional<ActSeq> withdraws = {})
    {
        const ActSeq seq(acts.empty() ? 1 : acts.back().seq.key() + 1);
        acts.push_back({seq, {"uid" + std::to_string(seq.key()), job, PersonId(1), station, {clock}, withdraws, std::move(fact)}});
        clock += betweenActs;
        return seq;
    }

    /// Without a value where that is empty.
    [[nodiscard]] ReadingFact reading(PointId point, Phase phase, std::string_view value, ReadingForm form = ReadingForm::Exact) const
    {
        ReadingFact fact{.point = point, .phase = phase, .form = form, .value = {}, .next = {}, .judgedBy = {}, .tool = {}, .corrects = {}};
        if (!value.empty())
            fact.value = length(value);
        if (const Spec *spec = frame.specNow(frame.point(point)->adjuster))
            fact.judgedBy = spec->id;
        return fact;
    }
    [[nodiscard]] ReadingFact reading(std::string_view point, Phase phase, std::string_view value,
                                      ReadingForm form = ReadingForm::Exact) const
    {
        return reading(at(point), phase, value, form);
    }

    ActSeq found(std::string_view point, std::string_view value) { return log(reading(point, Phase::AsFound, value)); }
    ActSeq left(std::string_view point, std::string_view value) { return log(reading(point, Phase::AsLeft, value)); }
    ActSeq correct(ActSeq wrong, std::string_view point, Phase phase, std::string_view value)
    {
        ReadingFact fact = reading(point, phase, value);
        fact.corrects = wrong;
        return log(fact);
    }
    /// Turned on from zero lash.
    [[nodiscard]] ReadingFact turned(std::string_view point, Phase phase, std::string_view turns) const
    {
        ReadingFact fact = reading(point, phase, "", ReadingForm::Turned);
        fact.turned = asleft::turns(turns);
        return fact;
    }

    ActSeq nutOpen(std::string_view point) { return log(NutOpenFact{at(point)}); }
    ActSeq keep(ActSeq kept, std::string_view point) { return log(KeepFact{kept, at(point), "worn seat"}); }
    ActSeq checkAgain(std::vector<PointId> points)
    {
        return log(CheckAgainFact{std::move(points), "head re-torqued", Disturbance::HeadTightened});
    }
    ActSeq withdraw(ActSeq act) { return log(WithdrawFact{}, act); }
    ActSeq crank(std::optional<int> stands, CrankHow how = CrankHow::Confirmed)
    {
        return log(CrankFact{ourEngine, stands ? std::optional(degrees(*stands)) : std::nullopt, how});
    }
    ActSeq twoPositions() { return log(PlanFact{ourEngine, generatePlan(frame.engine.design, PlanWay::TwoPositions)}); }
    ActSeq done(int step) { return log(StepDoneFact{StepId(step)}); }

    /// Leaves points inside their bands.
    void leaveInside(std::initializer_list<std::string_view> points)
    {
        for (const std::string_view point : points)
            left(point, point.front() == 'I' ? "0.30 mm" : "0.40 mm");
    }

    [[nodiscard]] JobState state() const { return fold(std::make_shared<const JobFrame>(frame), acts); }
    [[nodiscard]] PointState point(std::string_view name) const { return state().point(at(name)); }
};

} // namespace asleft
