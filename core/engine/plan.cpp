#include <engine/plan.h>

#include "fewest.h"
#include "margins.h"

#include <algorithm>
#include <cassert>

namespace asleft {

namespace {

constexpr int nineLashes = 8;

bool nineFits(const EngineDesign &design)
{
    return design.layout == Layout::InLine && design.cycle == Cycle::FourStroke && design.cylinders() == 4 &&
           design.train.lashes(Side::Intake) == 1 && design.train.lashes(Side::Exhaust) == 1;
}

/// Where the lash that goes with this one by the rule of nine has its valve fully open. \pre nineFits
CrankPosition placeByNine(const EngineDesign &design, Cylinder cylinder, Side side)
{
    const auto &bank = design.banks.front();
    const auto &sides = design.valveOrder.front();
    for (std::size_t own = 0; own < nineLashes; ++own) {
        if (bank[own / 2] != cylinder || sides[own] != side)
            continue;
        const std::size_t other = nineLashes - 1 - own;
        return {bank[other / 2], sides[other] == Side::Intake ? CrankEvent::IntakeFullyOpen : CrankEvent::ExhaustFullyOpen};
    }
    assert(false);
    return {};
}

/// Where the way says that this adjuster is set; nothing where it goes to the position with the greatest margin.
std::optional<CrankPosition> ownPlace(const EngineDesign &design, PlanWay way, AdjusterRef adjuster)
{
    if (adjuster.kind == PointKind::Injector)
        return std::nullopt;
    const CrankPosition onCompression{adjuster.cylinder, CrankEvent::Compression};
    switch (way) {
    case PlanWay::EachOnCompression: return onCompression;
    case PlanWay::CompanionAtOverlap:
        if (const auto other = companion(design, adjuster.cylinder))
            return CrankPosition{*other, CrankEvent::Overlap};
        return onCompression;
    case PlanWay::OpeningAndClosing:
        return CrankPosition{adjuster.cylinder, adjuster.side == Side::Intake ? CrankEvent::ExhaustOpens : CrankEvent::IntakeCloses};
    case PlanWay::RuleOfNine: return placeByNine(design, adjuster.cylinder, adjuster.side);
    case PlanWay::TwoPositions:
    case PlanWay::Fewest: break;
    }
    return std::nullopt;
}

/// Every adjuster with the place the way gives it.
struct Wish {
    AdjusterRef adjuster;
    std::optional<Angle> crank;
};

/// The positions the way turns to, by crank angle, each angle once; and who is set where.
std::vector<PlanPosition> placesOf(const EngineDesign &design, PlanWay way, std::vector<Wish> &wishes)
{
    std::vector<PlanPosition> positions;
    std::optional<CrankPosition> last;
    for (Wish &wish : wishes) {
        const auto place = ownPlace(design, way, wish.adjuster);
        if (!place)
            continue;
        if (place == last) { // the adjusters of a cylinder stand together
            wish.crank = positions.back().crank;
            continue;
        }
        wish.crank = crankAt(design, *place);
        positions.push_back({*place, *wish.crank, {}});
        last = place;
    }
    const auto crank = [](const PlanPosition &position) { return position.crank; };
    std::ranges::stable_sort(positions, {}, crank);
    const auto [first, end] = std::ranges::unique(positions, {}, crank);
    positions.erase(first, end);
    return positions;
}

std::vector<PlanPosition> placesAt(const EngineDesign &design, std::vector<Angle> cranks)
{
    std::sort(cranks.begin(), cranks.end());
    std::vector<PlanPosition> positions;
    positions.reserve(cranks.size());
    for (const Angle crank : cranks)
        positions.push_back({readCrank(design, crank).place, crank, {}});
    return positions;
}

/// Gives every adjuster to its own position, or to the one where its margin is greatest, the earlier on a tie.
CrankPlan planAt(const EngineDesign &design, PlanWay way, std::vector<PlanPosition> positions, const std::vector<Wish> &wishes)
{
    const Margins margins(design);
    CrankPlan plan;
    plan.generated = true;
    plan.way = way;
    plan.positions = std::move(positions);
    for (const Wish &wish : wishes) {
        const auto there = [&](const PlanPosition &position) { return margins.at(wish.adjuster, position.crank); };
        const auto chosen = wish.crank ? std::ranges::find(plan.positions, *wish.crank, &PlanPosition::crank)
                                       : std::ranges::max_element(plan.positions, {}, there);
        const Angle margin = there(*chosen);
        const bool asTheRuleSays = way == PlanWay::RuleOfNine && wish.crank.has_value();
        if (margin > Angle{} || asTheRuleSays)
            chosen->points.push_back({wish.adjuster, margin});
        else
            plan.unreached.push_back(wish.adjuster);
    }
    std::erase_if(plan.positions, [](const PlanPosition &position) { return position.points.empty(); });
    return plan;
}

std::vector<Wish> wishesOf(const EngineDesign &design)
{
    std::vector<Wish> wishes;
    for (const AdjusterRef adjuster : design.adjusters())
        wishes.push_back({adjuster, {}});
    return wishes;
}

CrankPlan planAtCranks(const EngineDesign &design, PlanWay way, std::vector<Angle> cranks)
{
    return planAt(design, way, placesAt(design, std::move(cranks)), wishesOf(design));
}

CrankPlan halfACycleApart(const EngineDesign &design, Angle first)
{
    const Angle half = Angle::ofSmallest(cycleOf(design).smallest() / 2);
    return planAtCranks(design, PlanWay::TwoPositions, {inCycle(design, first), inCycle(design, first + half)});
}

/// Begins with the dead centre the engine stands at, if that reaches as many points as the first one's.
CrankPlan twoPositions(const EngineDesign &design, std::optional<Angle> from)
{
    CrankPlan usual = halfACycleApart(design, {});
    if (!from || readCrank(design, *from).after != Angle{})
        return usual;
    CrankPlan here = halfACycleApart(design, *from);
    return here.unreached.size() <= usual.unreached.size() ? here : usual;
}

Done checkWay(const EngineDesign &design, PlanWay way)
{
    const bool valvesChangeOver = way == PlanWay::CompanionAtOverlap || way == PlanWay::OpeningAndClosing;
    if (valvesChangeOver && design.cycle == Cycle::TwoStroke)
        return fail(ErrorKind::PlanNotForEngine);
    if (way == PlanWay::RuleOfNine && !nineFits(design))
        return fail(ErrorKind::PlanNotForEngine);
    if (way == PlanWay::Fewest && design.cam.assumed)
        return fail(ErrorKind::PlanNeedsCam);
    return {};
}

void listFrom(const EngineDesign &design, Angle from, std::vector<PlanPosition> &positions)
{
    const auto ahead = [&](const PlanPosition &position) { return travel(design, from, position.crank); };
    const auto next = std::ranges::min_element(positions, {}, ahead);
    std::rotate(positions.begin(), next, positions.end());
}

} // namespace

Result<CrankPlan> planFor(const EngineDesign &design, const PlanAsk &ask)
{
    if (const Done fits = checkWay(design, ask.way); !fits)
        return tl::unexpected(fits.error());
    CrankPlan plan;
    if (ask.way == PlanWay::Fewest) {
        auto cranks = fewestCranks(design, ask.marks, ask.leastMargin);
        if (!cranks)
            return tl::unexpected(cranks.error());
        plan = planAtCranks(design, ask.way, *std::move(cranks));
    } else {
        plan = ask.way == PlanWay::TwoPositions ? twoPositions(design, ask.from) : generatePlan(design, ask.way);
    }
    if (ask.from)
        listFrom(design, *ask.from, plan.positions);
    return plan;
}

bool ruleOfNineHolds(const EngineDesign &design)
{
    assert(nineFits(design));
    const CrankPlan plan = generatePlan(design, PlanWay::RuleOfNine);
    return std::ranges::all_of(plan.positions,
                               [](const PlanPosition &position) { return std::ranges::none_of(position.points, &PlanPoint::doubtful); });
}

CrankPlan generatePlan(const EngineDesign &design, PlanWay way)
{
    assert(way != PlanWay::Fewest && (way != PlanWay::RuleOfNine || nineFits(design)));
    if (way == PlanWay::TwoPositions)
        return halfACycleApart(design, {});
    auto wishes = wishesOf(design);
    auto positions = placesOf(design, way, wishes);
    return planAt(design, way, std::move(positions), wishes);
}

} // namespace asleft
