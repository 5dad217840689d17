#pragma once

#include "samples.h"

#include <shop/outlook.h>

#include <QDateTime>

#include <memory>

namespace asleft {

/// 14 November 2023, 16:12 in local time, some minutes on.
inline Moment atMinute(int minute)
{
    const QDateTime start(QDate(2023, 11, 14), QTime(16, 12));
    return {start.toMSecsSinceEpoch() + minute * 60'000LL};
}

inline Spec lashSpec(std::int64_t id, SpecSubject subject, const char *band, SpecSource source)
{
    return {SpecId(id),
            EngineId(1),
            subject,
            1,
            EngineCondition::Cold,
            std::move(source),
            SpecBand<Length>{*parseBand<Length>(band, LengthUnit::Millimetre), std::nullopt}};
}

/// A tractor with an in-line four: intakes 0.30 ± 0.05 mm from memory, exhausts 0.40 ± 0.05 mm by the manual, all cold.
inline JobFrame tractorFrame()
{
    JobFrame frame{{JobId(1), VehicleId(1), EngineId(1), "Valve set", atMinute(-600), {}},
                   {VehicleId(1), "Hollin 40 tractor", "", "", false},
                   {EngineId(1),
                    VehicleId(1),
                    "Hollin four",
                    engineOf(Layout::InLine, 4, "1-3-4-2"),
                    {"1 mm", "", AdjusterKind::Screw, ""},
                    ScrewAdjuster{micrometres(1000)},
                    std::nullopt,
                    {}},
                   std::nullopt,
                   {},
                   std::nullopt,
                   {},
                   {}};
    std::int64_t id = 1;
    for (const AdjusterRef valve : frame.engine.design.adjusters())
        frame.engine.points.push_back({PointId(id++), valve});
    frame.specs = {lashSpec(1, SpecSubject::IntakeLash, "0.30 ± 0.05 mm", {"", "", Certainty::FromMemory}),
                   lashSpec(2, SpecSubject::ExhaustLash, "0.35 to 0.45 mm", {"Workshop Manual", "41", Certainty::ReadInManual}),
                   lashSpec(3, SpecSubject::ExhaustLash, "0.40 mm", {"Handbook", "7", Certainty::ToldByPerson})};
    frame.specs.pop_back();
    frame.people = {{PersonId(1), "M.K.", ""}};
    frame.job.steps = {{StepId(1), StepKind::Note, "Cover off", "", Gate::FirstStart, {}},
                       {StepId(2), StepKind::ValveSet, "Set the valves", "", Gate::FirstStart, {}}};
    return frame;
}

/// A job told act by act.
class Story {
public:
    explicit Story(JobFrame frame = tractorFrame()) : m_frame(std::make_shared<const JobFrame>(std::move(frame))) {}

    [[nodiscard]] const JobFrame &frame() const { return *m_frame; }
    [[nodiscard]] PointId intake(int cylinder) const { return PointId(2 * cylinder - 1); }
    [[nodiscard]] PointId exhaust(int cylinder) const { return PointId(2 * cylinder); }

    ActSeq then(Fact fact, std::optional<ActSeq> withdraws = std::nullopt)
    {
        const ActSeq seq(static_cast<std::int64_t>(m_acts.size()) + 1);
        const int minute = static_cast<int>(m_acts.size());
        m_acts.push_back(
            {seq, {"uid" + std::to_string(minute), JobId(1), PersonId(1), "seat", atMinute(minute), withdraws, std::move(fact)}});
        return seq;
    }

    [[nodiscard]] ReadingFact reading(PointId point, Phase phase, const char *value, ReadingForm form = ReadingForm::Exact) const
    {
        ReadingFact fact{point, phase, form,        std::nullopt, std::nullopt, std::nullopt, std::nullopt, EngineCondition::Cold,
                         false, false, std::nullopt};
        if (value)
            fact.value = *parse<Length>(value, LengthUnit::Millimetre);
        if (const Spec *spec = m_frame->specNow(m_frame->point(point)->adjuster))
            fact.judgedBy = spec->id;
        return fact;
    }

    [[nodiscard]] JobState state() const { return fold(m_frame, m_acts); }
    [[nodiscard]] const Act &last() const { return m_acts.back(); }

private:
    std::shared_ptr<const JobFrame> m_frame;
    std::vector<Act> m_acts;
};

} // namespace asleft
