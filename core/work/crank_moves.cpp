#include "crank_moves.h"

#include "internals.h"
#include "names.h"

#include <shop/outlook.h>

#include <algorithm>

namespace asleft {

CrankPlan proposedPlan(const JobState &state)
{
    const JobFrame &frame = *state.frame;
    const EngineDesign &design = frame.engine.design;
    if (frame.table) {
        const SpecSource &source = frame.table->source;
        if (auto plan = planFromTable(design, frame.table->lines, source.manual, source.page))
            return std::move(*plan);
    }
    const auto from = state.crank ? state.crank->crank : std::nullopt;
    const auto generated = [&](PlanWay way) {
        auto plan = planFor(design, {.way = way, .from = from});
        return plan ? std::move(*plan) : generatePlan(design, way);
    };
    CrankPlan two = generated(PlanWay::TwoPositions);
    if (two.unreached.empty())
        return two;
    CrankPlan each = generated(PlanWay::EachOnCompression);
    return each.unreached.size() < two.unreached.size() ? each : two;
}

Fact confirmedFrom(std::optional<Angle> crank, const JobState &state)
{
    const Engine &engine = state.frame->engine;
    return CrankFact{engine.id, crank ? std::optional(inCycle(engine.design, *crank)) : std::nullopt, CrankHow::Confirmed};
}

Result<Fact> turnedFrom(Angle to, bool despiteBleedDown, const JobState &state, const Session &session, Garage &garage)
{
    const auto elsewhere = leftElsewhere(garage, state);
    if (!elsewhere)
        return tl::unexpected(elsewhere.error());
    if (const Done shut = noNutOpen(state, *elsewhere); !shut)
        return tl::unexpected(shut.error());
    if (!session.crankConfirmed || !state.crank || !state.crank->crank)
        return fail(ErrorKind::CrankNotConfirmed);
    if (!session.turningCautionsRead)
        return fail(ErrorKind::CautionsNotRead);
    if (const Done bled = bledDown(state, *elsewhere, garage.now()); !bled && !despiteBleedDown)
        return tl::unexpected(bled.error());
    const Engine &engine = state.frame->engine;
    return CrankFact{engine.id, inCycle(engine.design, to), CrankHow::Turned};
}

Result<OpenElsewhere> leftElsewhere(Garage &garage, const JobState &state)
{
    Database &database = *garage.internals().database;
    const auto moment = Snapshot::begin(database);
    if (!moment)
        return tl::unexpected(moment.error());
    return openElsewhere(database, state);
}

Done noNutOpen(const JobState &state, const OpenElsewhere &elsewhere)
{
    if (const auto open = openNuts(state); !open.empty())
        return fail(ErrorKind::NutStillOpen, namesOf(*state.frame, open));
    if (!elsewhere.nuts.empty())
        return fail(ErrorKind::NutStillOpen, namesOf(*state.frame, elsewhere.nuts), elsewhere.job);
    return {};
}

Done bledDown(const JobState &state, const OpenElsewhere &elsewhere, Moment now)
{
    const auto until = std::max(bleedDownUntil(state), elsewhere.bleedsDown);
    return until && *until > now ? Done(fail(ErrorKind::StillBleedingDown, std::to_string(until->utcMilliseconds))) : Done{};
}

} // namespace asleft
