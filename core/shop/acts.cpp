#include <shop/acts.h>

#include <algorithm>

namespace asleft {

namespace {

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

/// A generated plan begins where the crank stands.
bool isListedFromTheCrank(const Act &act)
{
    const auto *chosen = factIn<PlanFact>(act);
    return chosen && chosen->plan.generated;
}

bool worksOnValves(const Act &act)
{
    return !pointsOf(act.what.fact).empty();
}

/// \pre the spec asks for a length
Verdict judgedByLength(const ReadingFact &reading, const Spec &spec)
{
    const auto interval = intervalOf(reading);
    if (!interval)
        return Verdict::NoSpec;
    if (spec.condition != reading.condition)
        return Verdict::NotComparable;
    return judge(*interval, std::get<SpecBand<Length>>(spec.asked).printedFor(reading.value->unit));
}

/// \pre the spec asks for turns
Verdict judgedByTurns(const ReadingFact &reading, const Spec &spec)
{
    if (!reading.turned)
        return Verdict::NoSpec;
    if (spec.condition != reading.condition)
        return Verdict::NotComparable;
    const Typed<Angle> &turned = *reading.turned;
    return judge(Interval<Angle>::point(turned.value), std::get<SpecBand<Angle>>(spec.asked).printedFor(turned.unit));
}

template <class Ticked>
std::vector<int> numbersOf(const std::vector<Ticked> &ticked, int (*number)(const Ticked &))
{
    std::vector<int> numbers;
    numbers.reserve(ticked.size());
    for (const Ticked &each : ticked)
        numbers.push_back(number(each));
    return numbers;
}

/// Whether both name a fastener.
bool shareNumber(const Act &a, const Act &b)
{
    auto ofB = fastenersOf(b.what.fact);
    std::ranges::sort(ofB);
    return std::ranges::any_of(fastenersOf(a.what.fact), [&](int number) { return std::ranges::binary_search(ofB, number); });
}

/// Work of one job on one joint. Which fasteners a joint has stands in no act: what begins all of it anew has to do with each of them.
bool shareFastener(const Act &later, const Act &earlier)
{
    const auto joint = jointOf(later.what.fact);
    if (!joint || later.what.job != earlier.what.job || jointOf(earlier.what.fact) != joint)
        return false;
    if (factIn<JointBegunFact>(later) || factIn<JointBegunFact>(earlier))
        return true;
    const auto *accepted = factIn<AcceptedFact>(later);
    if (accepted && accepted->what == AcceptedWhat::Unsettled)
        return factIn<TicksFact>(earlier);
    return shareNumber(later, earlier);
}

} // namespace

std::vector<PointId> pointsOf(const Fact &fact)
{
    using Points = std::vector<PointId>;
    return std::visit(Overloaded{
                          [](const ReadingFact &reading) { return Points{reading.point}; },
                          [](const AllLeftFact &all) {
                              Points points;
                              for (const ReadingFact &reading : all.readings)
                                  points.push_back(reading.point);
                              return points;
                          },
                          [](const NutOpenFact &open) { return Points{open.point}; },
                          [](const KeepFact &keep) { return Points{keep.point}; },
                          [](const CheckAgainFact &again) { return again.points; },
                          [](const JointFact auto &) { return Points{}; },
                          [](const OtherFact auto &) { return Points{}; },
                      },
                      fact);
}

std::optional<JointId> jointOf(const Fact &fact)
{
    using Joint = std::optional<JointId>;
    return std::visit(Overloaded{
                          [](const JointFact auto &work) { return Joint(work.joint); },
                          [](const PointFact auto &) { return Joint(); },
                          [](const OtherFact auto &) { return Joint(); },
                      },
                      fact);
}

std::vector<int> fastenersOf(const Fact &fact)
{
    using Numbers = std::vector<int>;
    return std::visit(
        Overloaded{
            [](const LoosenedFact &loosened) { return loosened.fasteners; },
            [](const TicksFact &ticks) { return numbersOf<Tick>(ticks.ticks, [](const Tick &tick) { return tick.place.fastener; }); },
            [](const UntickedFact &unticked) {
                return numbersOf<TickSlot>(unticked.places, [](const TickSlot &place) { return place.fastener; });
            },
            [](const JointBegunFact &) { return Numbers{}; },
            [](const FittedFact &fitted) { return fitted.fasteners; },
            [](const AcceptedFact &accepted) { return accepted.fasteners; },
            [](const PointFact auto &) { return Numbers{}; },
            [](const OtherFact auto &) { return Numbers{}; },
        },
        fact);
}

bool restsOn(const Act &later, const Act &earlier)
{
    if (later.seq <= earlier.seq)
        return false;
    if (sharePoint(later, earlier) || shareFastener(later, earlier))
        return true;
    if (const auto *crank = factIn<CrankFact>(earlier)) {
        const auto *moved = factIn<CrankFact>(later);
        const bool worked = worksOnValves(later) || isListedFromTheCrank(later);
        return (moved && moved->engine == crank->engine) || (later.what.job == earlier.what.job && worked);
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
    case ReadingForm::Exact: return Interval<Length>::within(value, reading.uncertainty.value_or(Length()));
    case ReadingForm::Bracket: return reading.next ? std::optional(Interval<Length>::bracket(value, reading.next->value)) : std::nullopt;
    case ReadingForm::Loose: return Interval<Length>::looserThan(value);
    case ReadingForm::Tight: return Interval<Length>::tighterThan(value);
    case ReadingForm::ByFeel:
    case ReadingForm::Turned: return std::nullopt;
    }
    return std::nullopt;
}

Verdict verdictOf(const ReadingFact &reading, const Spec *spec)
{
    if (reading.form == ReadingForm::ByFeel)
        return Verdict::ByFeel;
    if (!spec || std::holds_alternative<SpecBand<Torque>>(spec->asked))
        return Verdict::NoSpec;
    const bool turned = reading.form == ReadingForm::Turned;
    if (turned != std::holds_alternative<SpecBand<Angle>>(spec->asked))
        return Verdict::NotComparable;
    return turned ? judgedByTurns(reading, *spec) : judgedByLength(reading, *spec);
}

} // namespace asleft
