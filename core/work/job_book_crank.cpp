// The acts that move the crank, and taking back.
#include <work/job_book.h>

#include "engine_jobs.h"
#include "inside.h"
#include "names.h"

#include <algorithm>

namespace asleft {

namespace {

bool isWithdrawal(const Fact &fact)
{
    return std::holds_alternative<WithdrawFact>(fact);
}

/// Whether withdrawing this withdrawal would set a turn of the crank in force again.
bool bringsBackATurn(const JobState &state, ActSeq withdrawal)
{
    const auto act = std::ranges::find(state.acts, withdrawal, &Act::seq);
    if (act == state.acts.end() || !act->what.withdraws)
        return false;
    const auto target = std::ranges::find(state.acts, *act->what.withdraws, &Act::seq);
    const auto *crank = target == state.acts.end() ? nullptr : std::get_if<CrankFact>(&target->what.fact);
    return crank && crank->how == CrankHow::Turned;
}

/// What other jobs of the engine have left open: all of them have one crank.
Result<OpenElsewhere> leftElsewhere(Database &database, const JobState &state)
{
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

} // namespace

Result<ActSeq> JobBook::confirmCrank(std::optional<Angle> crank)
{
    const auto stands = crank ? std::optional(inCycle(m_state.frame->engine.design, *crank)) : std::nullopt;
    return log(CrankFact{m_state.frame->engine.id, stands, CrankHow::Confirmed});
}

Result<ActSeq> JobBook::turnCrank(Angle to, bool despiteBleedDown)
{
    if (const Done may = mayAct(); !may)
        return tl::unexpected(may.error());
    if (const Done fresh = catchUp(); !fresh)
        return tl::unexpected(fresh.error());
    const auto elsewhere = leftElsewhere(*m_garage.inside().database, m_state);
    if (!elsewhere)
        return tl::unexpected(elsewhere.error());
    if (const Done shut = noNutOpen(m_state, *elsewhere); !shut)
        return tl::unexpected(shut.error());
    if (!m_sitting.crankConfirmed || !m_state.crank || !m_state.crank->crank)
        return fail(ErrorKind::CrankNotConfirmed);
    if (!m_sitting.turningCautionsRead)
        return fail(ErrorKind::CautionsNotRead);
    if (const Done bled = bledDown(m_state, *elsewhere, m_garage.now()); !bled && !despiteBleedDown)
        return tl::unexpected(bled.error());
    return log(CrankFact{m_state.frame->engine.id, inCycle(m_state.frame->engine.design, to), CrankHow::Turned});
}

Result<ActSeq> JobBook::readTurningCautions()
{
    return log(CautionsFact{turningCautions()});
}

std::vector<Caution> JobBook::turningCautions()
{
    return {Caution::Neutral, Caution::StandsAndChocks, Caution::BatteryOff, Caution::HandsClear};
}

Result<ActSeq> JobBook::undo()
{
    const auto arrived = catchUpToTakeBack(isWithdrawal);
    if (!arrived)
        return tl::unexpected(arrived.error());
    if (*arrived)
        return **arrived;
    const auto last = undoable(m_state, m_garage.seat());
    if (!last)
        return fail(ErrorKind::NothingToUndo);
    if (const Act *resting = restingOn(m_state, *last))
        return fail(ErrorKind::RestedOn, placeOf(m_state, *resting));
    return log(WithdrawFact{}, *last);
}

Result<ActSeq> JobBook::redo()
{
    const auto arrived = catchUpToTakeBack(isWithdrawal);
    if (!arrived)
        return tl::unexpected(arrived.error());
    if (*arrived)
        return **arrived;
    const auto withdrawal = redoable(m_state, m_garage.seat());
    if (!withdrawal)
        return fail(ErrorKind::NothingToUndo);
    // Taking a turn of the crank up again is turning it.
    if (bringsBackATurn(m_state, *withdrawal)) {
        const auto elsewhere = leftElsewhere(*m_garage.inside().database, m_state);
        if (!elsewhere)
            return tl::unexpected(elsewhere.error());
        const Done free = noNutOpen(m_state, *elsewhere).and_then([&] { return bledDown(m_state, *elsewhere, m_garage.now()); });
        if (!free)
            return tl::unexpected(free.error());
    }
    return log(WithdrawFact{}, *withdrawal);
}

} // namespace asleft
