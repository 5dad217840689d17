// The acts that move the crank, and taking back.
#include <work/job_book.h>

#include "engine_jobs.h"
#include "internals.h"
#include "names.h"

#include <algorithm>

namespace asleft {

namespace {

bool isWithdrawal(const Fact &fact)
{
    return std::holds_alternative<WithdrawFact>(fact);
}

/// What withdrawing this withdrawal would set in force again.
const Act *broughtBack(const JobState &state, ActSeq withdrawal)
{
    const auto act = std::ranges::find(state.acts, withdrawal, &Act::seq);
    if (act == state.acts.end() || !act->what.withdraws)
        return nullptr;
    const auto target = std::ranges::find(state.acts, *act->what.withdraws, &Act::seq);
    return target == state.acts.end() ? nullptr : &*target;
}

bool isATurn(const Act &act)
{
    const auto *crank = std::get_if<CrankFact>(&act.what.fact);
    return crank && crank->how == CrankHow::Turned;
}

/// Whether an act says how far the fasteners of a joint have come.
bool movesAJoint(const Fact &fact)
{
    return jointOf(fact) && !std::holds_alternative<AcceptedFact>(fact);
}

/// It would come to stand before what was done on its joint since, and ticks of another revision than the one in hand would be in force
/// and count for nothing.
Done jointAsLeft(const JobState &state, const Act &back, ActSeq withdrawal)
{
    if (!movesAJoint(back.what.fact))
        return {};
    const JointId joint = *jointOf(back.what.fact);
    const auto since = std::ranges::find_if(state.acts, [&](const Act &act) {
        return act.seq > withdrawal && act.what.job == back.what.job && jointOf(act.what.fact) == joint && state.inForce(act);
    });
    if (since != state.acts.end())
        return fail(ErrorKind::RestedOn, placeOf(state, *since));
    const auto *ticks = std::get_if<TicksFact>(&back.what.fact);
    const auto known = state.joints.find(joint);
    if (ticks && known != state.joints.end() && known->second.revision != ticks->revision)
        return fail(ErrorKind::RestedOn, placeOf(state, back));
    return {};
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
    const auto elsewhere = leftElsewhere(*m_garage.internals().database, m_state);
    if (!elsewhere)
        return tl::unexpected(elsewhere.error());
    if (const Done shut = noNutOpen(m_state, *elsewhere); !shut)
        return tl::unexpected(shut.error());
    if (!m_session.crankConfirmed || !m_state.crank || !m_state.crank->crank)
        return fail(ErrorKind::CrankNotConfirmed);
    if (!m_session.turningCautionsRead)
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
    const auto last = undoable(m_state, m_garage.station());
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
    const auto withdrawal = redoable(m_state, m_garage.station());
    if (!withdrawal)
        return fail(ErrorKind::NothingToUndo);
    const Act *back = broughtBack(m_state, *withdrawal);
    if (const Done asLeft = back ? jointAsLeft(m_state, *back, *withdrawal) : Done{}; !asLeft)
        return tl::unexpected(asLeft.error());
    // Taking a turn of the crank up again is turning it.
    if (back && isATurn(*back)) {
        const auto elsewhere = leftElsewhere(*m_garage.internals().database, m_state);
        if (!elsewhere)
            return tl::unexpected(elsewhere.error());
        const Done free = noNutOpen(m_state, *elsewhere).and_then([&] { return bledDown(m_state, *elsewhere, m_garage.now()); });
        if (!free)
            return tl::unexpected(free.error());
    }
    return log(WithdrawFact{}, *withdrawal);
}

} // namespace asleft
