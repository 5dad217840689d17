#include "taking_back.h"

#include "crank_moves.h"
#include "names.h"

#include <shop/outlook.h>

#include <algorithm>

namespace asleft {

namespace {

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

} // namespace

bool isWithdrawal(const Fact &fact)
{
    return std::holds_alternative<WithdrawFact>(fact);
}

Result<ActSeq> toUndo(const JobState &state, Garage &garage)
{
    const auto last = undoable(state, garage.station());
    if (!last)
        return fail(ErrorKind::NothingToUndo);
    if (const Act *resting = restingOn(state, *last))
        return fail(ErrorKind::RestedOn, placeOf(state, *resting));
    return *last;
}

Result<ActSeq> toRedo(const JobState &state, Garage &garage)
{
    const auto withdrawal = redoable(state, garage.station());
    if (!withdrawal)
        return fail(ErrorKind::NothingToUndo);
    const Act *back = broughtBack(state, *withdrawal);
    if (const Done asLeft = back ? jointAsLeft(state, *back, *withdrawal) : Done{}; !asLeft)
        return tl::unexpected(asLeft.error());
    // Taking a turn of the crank up again is turning it.
    if (back && isATurn(*back)) {
        const auto elsewhere = leftElsewhere(garage, state);
        if (!elsewhere)
            return tl::unexpected(elsewhere.error());
        const Done free = noNutOpen(state, *elsewhere).and_then([&] { return bledDown(state, *elsewhere, garage.now()); });
        if (!free)
            return tl::unexpected(free.error());
    }
    return *withdrawal;
}

} // namespace asleft
