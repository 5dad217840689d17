#include <shop/state.h>

#include <algorithm>

namespace asleft {

namespace {

/// What stood on the wrench.
const std::optional<Typed<Torque>> &onTheWrench(const TicksFact &fact)
{
    static const std::optional<Typed<Torque>> nothing;
    switch (fact.how) {
    case TickHow::SetTool: return fact.setting;
    case TickHow::ReadTool: return fact.reading;
    case TickHow::ByHand:
    case TickHow::ByAngle:
    case TickHow::ByFeel: break;
    }
    return nothing;
}

std::optional<Torque> atFastener(const TicksFact &fact)
{
    const auto &shown = onTheWrench(fact);
    if (!shown)
        return std::nullopt;
    if (!fact.fit || changesNothing(fact.fit->fit))
        return shown->value;
    if (!fact.lever)
        return std::nullopt;
    const auto torque = torqueAtFastener(shown->value, *fact.lever, fact.fit->fit);
    return torque ? std::optional(*torque) : std::nullopt;
}

/// Whether a pass ends at the target, so that a tick of it can be judged.
bool isJudged(const Joint &joint, const TickPlace &place)
{
    const auto pass = static_cast<std::size_t>(place.pass);
    if (place.pass < 0 || pass >= joint.passes.size())
        return false;
    return std::holds_alternative<AtTarget>(joint.passes[pass]) || std::holds_alternative<Settle>(joint.passes[pass]);
}

/// Judged by the band, or not proved where nobody knows what the fastener got.
Verdict verdictAtTarget(const TicksFact &fact, std::optional<Torque> torque, const Joint &joint)
{
    if (!joint.target)
        return Verdict::NoSpec;
    if (fact.outOfRange || !torque)
        return Verdict::TooClose;
    const bool isRead = fact.how == TickHow::ReadTool;
    const Torque uncertainty = isRead ? fact.uncertainty.value_or(Torque()) : Torque();
    return judge(Interval<Torque>::within(*torque, uncertainty), joint.target->printedFor(onTheWrench(fact)->unit));
}

bool wantsTorque(const FastenerState &fastener)
{
    const auto verdict = fastener.verdict();
    const bool wrong = verdict == Verdict::Low || verdict == Verdict::High || verdict == Verdict::TooClose;
    return wrong && !fastener.torqueAccepted;
}

template <class Wants>
std::vector<int> numbersThat(const JointState &state, Wants wants)
{
    std::vector<int> numbers;
    for (const auto &[number, fastener] : state.fasteners) {
        if (wants(fastener))
            numbers.push_back(number);
    }
    return numbers;
}

/// What a loosening torque is held against.
std::optional<Torque> lowEndOf(const Joint &joint)
{
    if (!joint.target)
        return std::nullopt;
    const Band<Torque> &band = joint.target->first;
    return band.low ? band.low : band.nominal;
}

} // namespace

std::optional<Verdict> FastenerState::verdict() const
{
    for (auto made = ticks.rbegin(); made != ticks.rend(); ++made) {
        if (made->verdict)
            return made->verdict;
    }
    return std::nullopt;
}

bool FastenerState::byFeel() const
{
    return std::ranges::any_of(ticks, [](const TickMade &made) { return made.fact.how == TickHow::ByFeel; });
}

bool JointState::settled(const Joint &joint) const
{
    return progress.finished() && jointWants(joint, *this).kind == JointWants::Kind::Nothing;
}

TickMade tickMade(const TicksFact &fact, const Tick &tick, const Joint &joint)
{
    // Who made it and when is the act's to say.
    TickMade made{ActSeq(0), {}, PersonId(0), tick, fact, atFastener(fact), std::nullopt};
    made.fact.ticks.clear();
    if (fact.how == TickHow::ByFeel)
        made.verdict = Verdict::ByFeel;
    else if (isJudged(joint, tick.place))
        made.verdict = verdictAtTarget(fact, made.torque, joint);
    return made;
}

const Joint &jointInHand(const JobState &state, JointId id)
{
    return *state.frame->joint(id, state.joints.at(id).revision);
}

JointWants jointWants(const Joint &joint, const JointState &state)
{
    using Kind = JointWants::Kind;
    const bool once = joint.text.singleUse != SingleUse::No;
    if (once) {
        auto unsaid = numbersThat(state, [](const FastenerState &fastener) { return !fastener.fitted; });
        if (!unsaid.empty())
            return {Kind::SayFitted, std::move(unsaid)};
    }
    if (!state.progress.finished())
        return {};
    if (once) {
        const auto isReused = [](const FastenerState &fastener) { return fastener.fitted == Fitted::Reused && !fastener.reuseAccepted; };
        auto reused = numbersThat(state, isReused);
        if (!reused.empty())
            return {Kind::AcceptReuse, std::move(reused)};
    }
    auto outside = numbersThat(state, wantsTorque);
    if (!outside.empty())
        return {Kind::TorqueOutside, std::move(outside)};
    if (state.progress.unsettled && !state.unsettledAccepted)
        return {Kind::AcceptUnsettled, {}};
    return {};
}

std::vector<int> foundLoose(const Joint &joint, const JointState &state)
{
    const auto low = lowEndOf(joint);
    return numbersThat(state, [&](const FastenerState &fastener) {
        if (!fastener.found)
            return false;
        const FastenerFound &found = *fastener.found;
        const bool measuredLow = found.how == FoundHow::Measured && found.torque && low && found.torque->value * 2 < *low;
        return found.how == FoundHow::LooseByFeel || measuredLow;
    });
}

} // namespace asleft
