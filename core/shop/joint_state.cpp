#include <shop/state.h>

#include <algorithm>
#include <functional>

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

/// The pass of a tick; nothing where the joint has none such.
std::optional<std::size_t> passOf(const Joint &joint, const TickSlot &place)
{
    const auto pass = static_cast<std::size_t>(place.pass);
    return place.pass >= 0 && pass < joint.passes.size() ? std::optional(pass) : std::nullopt;
}

bool goesToTarget(const Joint &joint, std::size_t pass)
{
    const Pass &what = joint.passes[pass];
    return std::holds_alternative<AtTarget>(what) || std::holds_alternative<Settle>(what) || bandOfPass(joint, pass, joint.text.unit);
}

Brings whatBrings(const Joint &joint, std::size_t pass)
{
    if (std::holds_alternative<AngleOn>(joint.passes[pass]))
        return Brings::Angle;
    return goesToTarget(joint, pass) || isLastTorque(joint.passes, pass) ? Brings::Torque : Brings::Nothing;
}

/// Judged by the band, or not proved where nobody knows what the fastener got.
Verdict verdictAtTarget(const TicksFact &fact, std::optional<Torque> torque, const Joint &joint, std::size_t pass)
{
    if (!joint.target)
        return Verdict::NoSpec;
    if (fact.outOfRange || !torque)
        return Verdict::TooClose;
    const bool isRead = fact.how == TickHow::ReadTool;
    const Torque uncertainty = isRead ? fact.uncertainty.value_or(Torque()) : Torque();
    return judge(Interval<Torque>::within(*torque, uncertainty), *bandOfPass(joint, pass, onTheWrench(fact)->unit));
}

std::optional<Verdict> verdictOf(const TickMade &made, const Joint &joint, std::size_t pass)
{
    if (goesToTarget(joint, pass))
        return verdictAtTarget(made.fact, made.torque, joint, pass);
    // No torque after it makes up for a wrench of which nothing is known here, though there is no band to hold it against.
    if (made.brings == Brings::Torque && made.fact.outOfRange)
        return Verdict::TooClose;
    return std::nullopt;
}

bool wantsTorque(const FastenerState &fastener)
{
    return fastener.outside() && !fastener.torqueAccepted;
}

template <class Wants>
std::vector<int> numbersThat(const JointState &state, Wants wants)
{
    std::vector<int> numbers;
    for (const auto &[number, fastener] : state.fasteners) {
        if (std::invoke(wants, fastener))
            numbers.push_back(number);
    }
    return numbers;
}

} // namespace

const TickMade *FastenerState::deciding() const
{
    const auto decides = [](const TickMade &made) { return made.verdict && made.verdict != Verdict::ByFeel; };
    const auto last = std::find_if(ticks.rbegin(), ticks.rend(), decides);
    return last == ticks.rend() ? nullptr : &*last;
}

std::optional<Verdict> FastenerState::verdict() const
{
    if (const TickMade *made = deciding())
        return made->verdict;
    return byFeel() ? std::optional(Verdict::ByFeel) : std::nullopt;
}

bool FastenerState::outside() const
{
    const auto is = verdict();
    return is == Verdict::Low || is == Verdict::High || is == Verdict::TooClose;
}

bool FastenerState::byFeel() const
{
    const auto isByFeel = [](const TickMade &made) { return made.fact.how == TickHow::ByFeel; };
    const auto turnedByFeel = [&](const TickMade &made) { return made.brings == Brings::Angle && isByFeel(made); };
    if (std::ranges::any_of(ticks, turnedByFeel))
        return true;
    const auto last = std::find_if(ticks.rbegin(), ticks.rend(), [](const TickMade &made) { return made.brings == Brings::Torque; });
    return last != ticks.rend() && isByFeel(*last);
}

bool JointState::settled(const Joint &joint) const
{
    return progress.finished() && jointWants(joint, *this).kind == JointWants::Kind::Nothing;
}

TickMade tickMade(const TicksFact &fact, const Tick &tick, const Joint &joint)
{
    // Who made it and when is the act's to say.
    TickMade made{ActSeq(0), {}, PersonId(0), tick, fact, atFastener(fact), std::nullopt, Brings::Nothing};
    made.fact.ticks.clear();
    const auto pass = passOf(joint, tick.place);
    if (pass)
        made.brings = whatBrings(joint, *pass);
    if (fact.how == TickHow::ByFeel)
        made.verdict = Verdict::ByFeel;
    else if (pass)
        made.verdict = verdictOf(made, joint, *pass);
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
    auto unsaid = numbersThat(state, [once](const FastenerState &fastener) { return fastener.amiss || (once && !fastener.fitted); });
    if (!unsaid.empty())
        return {Kind::SayFitted, std::move(unsaid)};
    if (!state.progress.finished())
        return {};
    auto reused = numbersThat(state, &FastenerState::reused);
    if (!reused.empty())
        return {Kind::AcceptReuse, std::move(reused)};
    auto outside = numbersThat(state, wantsTorque);
    if (!outside.empty())
        return {Kind::TorqueOutside, std::move(outside)};
    if (state.progress.unsettled && !state.unsettledAccepted)
        return {Kind::AcceptUnsettled, {}};
    return {};
}

std::vector<int> foundLoose(const JointState &state)
{
    return numbersThat(state, [](const FastenerState &fastener) { return fastener.found && fastener.found->how == FoundHow::LooseByFeel; });
}

} // namespace asleft
