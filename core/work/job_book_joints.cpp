// The acts on joints.
#include <work/job_book.h>
#include <work/workshop.h>

#include "internals.h"
#include "joint_entries.h"

#include <algorithm>

namespace asleft {

namespace {

/// The last act in force that speaks of a joint.
const Act *lastOn(const JobState &state, JointId joint)
{
    const auto last = std::find_if(state.acts.rbegin(), state.acts.rend(),
                                   [&](const Act &act) { return state.inForce(act) && jointOf(act.what.fact) == joint; });
    return last == state.acts.rend() ? nullptr : &*last;
}

/// Those of a joint's fasteners where there is something to accept.
Result<std::vector<int>> acceptable(const Joint &joint, const JointState &state, AcceptedWhat what, const std::vector<int> &fasteners)
{
    if (what == AcceptedWhat::Unsettled) {
        if (!state.progress.unsettled || state.unsettledAccepted)
            return fail(ErrorKind::NothingToAccept);
        return std::vector<int>{};
    }
    const auto asked = fastenersIn(joint, fasteners);
    if (!asked)
        return tl::unexpected(asked.error());
    std::vector<int> having;
    std::ranges::copy_if(*asked, std::back_inserter(having), [&](int number) {
        const auto known = state.fasteners.find(number);
        return known != state.fasteners.end() && canAccept(what, known->second);
    });
    if (having.empty())
        return fail(ErrorKind::NothingToAccept);
    return having;
}

/// Refuses where another computer has made another revision of what was shown.
Done asShown(std::optional<int> revision, const Joint &joint)
{
    return revision && *revision != joint.revision ? Done(fail(ErrorKind::JointChanged, joint.text.name)) : Done{};
}

/// The last tick of a fastener.
const TickMade *lastTick(const FastenerState &fastener)
{
    return fastener.ticks.empty() ? nullptr : &fastener.ticks.back();
}

const TickMade *decidingTick(const FastenerState &fastener)
{
    return fastener.deciding();
}

/// Takes the tick `first` finds back, and all on top of it; nothing where it finds none.
std::optional<UntickedFact> takenBackFrom(const JobState &state, JointId joint, int number, const TickMade *(*first)(const FastenerState &))
{
    const auto known = state.joints.find(joint);
    if (known == state.joints.end())
        return std::nullopt;
    const auto fastener = known->second.fasteners.find(number);
    const TickMade *from = fastener == known->second.fasteners.end() ? nullptr : first(fastener->second);
    if (!from)
        return std::nullopt;
    UntickedFact unticked{joint, {}};
    for (const TickMade *made = from; made <= &fastener->second.ticks.back(); ++made)
        unticked.places.push_back(made->tick.place);
    return unticked;
}

/// A subject as it is noted; refuses one the job is not about.
struct OfThisJob {
    const JobState &state;

    Result<Subject> operator()(PointId point) const { return known(frame().point(point) != nullptr, point, "point"); }
    Result<Subject> operator()(StepId step) const { return known(frame().step(step) != nullptr, step, "step"); }
    Result<Subject> operator()(EngineId engine) const { return known(frame().engine.id == engine, engine, "engine"); }
    Result<Subject> operator()(VehicleId vehicle) const { return known(frame().vehicle.id == vehicle, vehicle, "vehicle"); }
    Result<Subject> operator()(const FastenerSubject &some) const
    {
        if (!frame().jointNow(some.joint))
            return fail(ErrorKind::WrongJob, "joint");
        if (some.fasteners.empty())
            return some;
        return fastenersIn(jointInHand(state, some.joint), some.fasteners).map([&](std::vector<int> &&numbers) {
            return Subject(FastenerSubject{some.joint, std::move(numbers)});
        });
    }

private:
    [[nodiscard]] const JobFrame &frame() const { return *state.frame; }
    static Result<Subject> known(bool isKnown, Subject subject, const char *what)
    {
        if (!isKnown)
            return fail(ErrorKind::WrongJob, what);
        return subject;
    }
};

} // namespace

Result<const Joint *> JobBook::jointToWork(JointId id)
{
    if (const Done may = mayAct(); !may)
        return tl::unexpected(may.error());
    if (const Done fresh = catchUp(); !fresh)
        return tl::unexpected(fresh.error());
    if (!m_state.frame->jointNow(id))
        return fail(ErrorKind::WrongJob, "joint");
    return &jointInHand(m_state, id);
}

Result<ActSeq> JobBook::loosen(const LoosenEntry &entry)
{
    const auto joint = jointToWork(entry.joint);
    if (!joint)
        return tl::unexpected(joint.error());
    if (const Done same = asShown(entry.revision, **joint); !same)
        return tl::unexpected(same.error());
    auto loosened = loosenedFrom(entry, **joint, *m_state.frame);
    if (!loosened)
        return tl::unexpected(loosened.error());
    return log(std::move(*loosened));
}

Result<ActSeq> JobBook::tick(const TickEntry &entry)
{
    const auto joint = jointToWork(entry.joint);
    if (!joint)
        return tl::unexpected(joint.error());
    if (const Done same = asShown(entry.revision, **joint); !same)
        return tl::unexpected(same.error());
    auto ticks = ticksFrom(entry, **joint, *m_state.frame, localDay(m_garage.now()));
    if (!ticks)
        return tl::unexpected(ticks.error());
    if (!arrivedBefore(*ticks)) {
        if (const Done turn = inTurn(*ticks, **joint, m_state.joints.at(entry.joint).progress); !turn)
            return tl::unexpected(turn.error());
    }
    return log(std::move(*ticks));
}

Result<ActSeq> JobBook::untickFrom(JointId joint, int fastener, const TickMade *(*first)(const FastenerState &))
{
    // As it stood when it was said: one that failed then and was on disk all the same says just this.
    const auto before = takenBackFrom(m_state, joint, fastener, first);
    const auto arrived = catchUpToTakeBack([&](const Fact &fact) { return before && fact == Fact(*before); });
    if (!arrived)
        return tl::unexpected(arrived.error());
    if (*arrived)
        return **arrived;
    const auto known = jointToWork(joint);
    if (!known)
        return tl::unexpected(known.error());
    if (const auto there = fastenersIn(**known, {fastener}); !there)
        return tl::unexpected(there.error());
    auto unticked = takenBackFrom(m_state, joint, fastener, first);
    if (!unticked)
        return fail(ErrorKind::NotTicked, std::to_string(fastener));
    return log(std::move(*unticked));
}

Result<ActSeq> JobBook::untick(JointId joint, int fastener)
{
    return untickFrom(joint, fastener, lastTick);
}

Result<ActSeq> JobBook::untickTarget(JointId joint, int fastener)
{
    return untickFrom(joint, fastener, decidingTick);
}

Result<ActSeq> JobBook::sayFitted(JointId joint, const std::vector<int> &fasteners, Fitted fitted)
{
    const auto known = jointToWork(joint);
    if (!known)
        return tl::unexpected(known.error());
    auto numbers = fastenersIn(**known, fasteners);
    if (!numbers)
        return tl::unexpected(numbers.error());
    const auto &states = m_state.joints.at(joint).fasteners;
    const bool said = std::ranges::all_of(*numbers, [&](int number) {
        const auto state = states.find(number);
        return state != states.end() && state->second.fitted == fitted;
    });
    return logOnce(FittedFact{joint, std::move(*numbers), fitted}, said);
}

Result<ActSeq> JobBook::acceptJoint(JointId joint, AcceptedWhat what, const std::vector<int> &fasteners, std::string_view reason)
{
    const auto known = jointToWork(joint);
    if (!known)
        return tl::unexpected(known.error());
    auto checked = checkedReason(reason);
    if (!checked)
        return tl::unexpected(checked.error());
    std::string why = std::move(*checked);
    auto numbers = acceptable(**known, m_state.joints.at(joint), what, fasteners);
    if (numbers)
        return log(AcceptedFact{joint, what, std::move(*numbers), std::move(why)});
    // It may have been on disk all the same: then there is nothing left to accept because of it.
    const Act *last = lastOn(m_state, joint);
    if (last && numbers.error().kind == ErrorKind::NothingToAccept && arrivedBefore(last->what.fact)) {
        const auto *accepted = std::get_if<AcceptedFact>(&last->what.fact);
        if (accepted && accepted->what == what && accepted->reason == why)
            return log(*accepted);
    }
    return tl::unexpected(numbers.error());
}

Result<ActSeq> JobBook::beginJoint(JointId joint)
{
    if (const auto known = jointToWork(joint); !known)
        return tl::unexpected(known.error());
    const Fact begun = JointBegunFact{joint, m_state.frame->jointNow(joint)->revision};
    const Act *last = lastOn(m_state, joint);
    return logOnce(begun, last && last->what.fact == begun);
}

Result<ActSeq> JobBook::noteFinding(const Subject &subject, std::string_view text)
{
    if (const Done may = mayAct(); !may)
        return tl::unexpected(may.error());
    if (const Done fresh = catchUp(); !fresh)
        return tl::unexpected(fresh.error());
    auto about = std::visit(OfThisJob{m_state}, subject);
    if (!about)
        return tl::unexpected(about.error());
    auto checked = checkedNote(text);
    if (!checked)
        return tl::unexpected(checked.error());
    if (checked->empty())
        return fail(ErrorKind::EmptyText);
    return log(FindingFact{*std::move(about), *std::move(checked)});
}

} // namespace asleft
