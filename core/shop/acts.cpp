#include <shop/acts.h>

#include <algorithm>

namespace asleft {

namespace {

template <class... Visitors>
struct Overloaded : Visitors... {
    using Visitors::operator()...;
};
template <class... Visitors>
Overloaded(Visitors...) -> Overloaded<Visitors...>;

template <class F>
const F *factIn(const Act &act)
{
    return std::get_if<F>(&act.what.fact);
}

bool sharePoint(const Act &a, const Act &b)
{
    const auto ofB = pointsOf(b.what.fact);
    return std::ranges::any_of(pointsOf(a.what.fact), [&](PointId point) { return std::ranges::find(ofB, point) != ofB.end(); });
}

bool worksOnValves(const Act &act)
{
    return !pointsOf(act.what.fact).empty();
}

} // namespace

std::vector<PointId> pointsOf(const Fact &fact)
{
    return std::visit(Overloaded{
                          [](const ReadingFact &reading) { return std::vector{reading.point}; },
                          [](const AllLeftFact &all) {
                              std::vector<PointId> points;
                              for (const ReadingFact &reading : all.readings)
                                  points.push_back(reading.point);
                              return points;
                          },
                          [](const NutOpenFact &open) { return std::vector{open.point}; },
                          [](const KeepFact &keep) { return std::vector{keep.point}; },
                          [](const CheckAgainFact &again) { return again.points; },
                          [](const auto &) { return std::vector<PointId>{}; },
                      },
                      fact);
}

bool restsOn(const Act &later, const Act &earlier)
{
    if (later.seq <= earlier.seq)
        return false;
    if (sharePoint(later, earlier))
        return true;
    if (const auto *crank = factIn<CrankFact>(earlier)) {
        const auto *moved = factIn<CrankFact>(later);
        return (moved && moved->engine == crank->engine) || (later.what.job == earlier.what.job && worksOnValves(later));
    }
    if (factIn<PlanFact>(earlier)) {
        const auto *moved = factIn<CrankFact>(later);
        return later.what.job == earlier.what.job && (factIn<PlanFact>(later) || (moved && moved->how == CrankHow::Turned));
    }
    return false;
}

std::optional<Interval<Length>> intervalOf(const ReadingFact &reading)
{
    if (!reading.value)
        return std::nullopt;
    const Length value = reading.value->value;
    switch (reading.form) {
    case ReadingForm::Exact: return Interval<Length>::point(value);
    case ReadingForm::Bracket: return reading.next ? std::optional(Interval<Length>::bracket(value, reading.next->value)) : std::nullopt;
    case ReadingForm::Loose: return Interval<Length>::looserThan(value);
    case ReadingForm::Tight: return Interval<Length>::tighterThan(value);
    case ReadingForm::ByFeel: return std::nullopt;
    }
    return std::nullopt;
}

Verdict verdictOf(const ReadingFact &reading, const Spec *spec)
{
    if (reading.form == ReadingForm::ByFeel)
        return Verdict::ByFeel;
    const auto *bands = spec ? std::get_if<SpecBand<Length>>(&spec->asked) : nullptr;
    const auto interval = intervalOf(reading);
    if (!bands || !interval)
        return Verdict::NoSpec;
    if (spec->condition != reading.condition)
        return Verdict::NotComparable;
    return judge(*interval, bands->printedFor(reading.value->unit));
}

} // namespace asleft
