#include "joint_fold.h"

#include <algorithm>
#include <utility>

namespace asleft {

namespace {

using ActsOfJoint = std::vector<const Act *>;

/// One tick that counts, with the act it was made by.
struct Laid {
    const Act *act;
    Tick tick;
};

/// What is known of a fastener while the acts are gone through.
struct Fastener {
    std::map<std::pair<int, int>, Laid> ticks = {}; ///< by pass and round
    std::optional<FastenerFound> found = {};
    bool tickedSinceFound = false; ///< it had ticks since, which were dropped again
    bool amiss = false;            ///< found so, and not said what went in instead
    bool loose = false;            ///< loosened, or to be done from the beginning
    std::optional<Fitted> fitted = {};
    std::optional<std::string> feelAccepted = {};
    std::optional<std::string> torqueAccepted = {};
    std::optional<std::string> reuseAccepted = {};

    [[nodiscard]] bool tickedAgain() const { return tickedSinceFound || !ticks.empty(); }
};

FastenerFound foundBy(const Act &act, const LoosenedFact &loosened)
{
    return {act.seq, act.what.at, act.what.who, loosened.how, loosened.torque, loosened.note};
}

/// That it came out says nothing of how it was found.
bool saysLess(const LoosenedFact &loosened, const FastenerFound &found)
{
    if (loosened.how != FoundHow::NotNoted)
        return false;
    return found.how != FoundHow::NotNoted || (loosened.note.empty() && !found.note.empty());
}

bool isAmiss(FoundHow how)
{
    return how == FoundHow::Missing || how == FoundHow::Broken || how == FoundHow::WrongLength;
}

/// Goes through the acts of one joint in order, then says what they amount to. What follows from all ticks together is worked out once,
/// at the end: an acceptance that is still there then was made of what is there then, since every change of the ticks voids it.
class JointFold {
public:
    JointFold(const JobFrame &frame, JointId id, const ActsOfJoint &acts) : m_frame(frame), m_id(id)
    {
        for (const Act *act : acts) {
            m_act = act;
            std::visit(*this, act->what.fact);
        }
    }

    void operator()(const LoosenedFact &loosened)
    {
        m_begun = true;
        m_unsettledAccepted.reset();
        for (const int number : loosened.fasteners) {
            Fastener &fastener = m_fasteners[number];
            const bool ticked = fastener.tickedAgain();
            if (fastener.found && (ticked || saysLess(loosened, *fastener.found))) {
                fastener.tickedSinceFound = ticked;
            } else {
                fastener.found = foundBy(*m_act, loosened);
                fastener.tickedSinceFound = false;
                fastener.amiss = isAmiss(loosened.how);
            }
            dropTicks(fastener);
            forgetFitted(fastener);
        }
        standsByNothing();
    }

    void operator()(const TicksFact &ticks)
    {
        if (!m_inHand)
            takeInHand(m_frame.joint(m_id, ticks.revision));
        if (!m_inHand || m_inHand->revision != ticks.revision)
            return;
        for (const Tick &tick : ticks.ticks) {
            if (isPlace(tick.place))
                applyTick(tick);
        }
        standsByNothing();
    }

    void operator()(const UntickedFact &unticked)
    {
        for (const TickSlot &place : unticked.places) {
            const auto fastener = m_fasteners.find(place.fastener);
            if (fastener == m_fasteners.end() || fastener->second.ticks.erase({place.pass, place.round}) == 0)
                continue;
            --m_ticks;
            fastener->second.loose = true;
            changed(fastener->second);
        }
        standsByNothing();
    }

    void operator()(const JointBegunFact &begun)
    {
        const Joint *joint = m_frame.joint(m_id, begun.revision);
        if (!joint)
            return;
        m_begun = true;
        m_unsettledAccepted.reset();
        for (auto &[number, fastener] : m_fasteners) {
            // It has been under torque since it was said to be new.
            if (!fastener.ticks.empty())
                forgetFitted(fastener);
            fastener.tickedSinceFound = fastener.tickedAgain();
            dropTicks(fastener);
        }
        takeInHand(joint);
        m_chosen = true;
        // Also those nothing was said of yet.
        for (const int number : m_numbers)
            m_fasteners[number].loose = true;
    }

    void operator()(const FittedFact &fitted)
    {
        for (const int number : fitted.fasteners) {
            Fastener &fastener = m_fasteners[number];
            // Said late, it is what was tightened; said of one that was said to be used, another one has gone in since.
            const bool exchanged = fitted.fitted == Fitted::New && fastener.fitted == Fitted::Reused;
            fastener.fitted = fitted.fitted;
            fastener.amiss = false;
            if (fitted.fitted == Fitted::New)
                fastener.reuseAccepted.reset();
            // What was ticked was the one before it.
            if (exchanged && !fastener.ticks.empty()) {
                fastener.tickedSinceFound = true;
                dropTicks(fastener);
            }
        }
        standsByNothing();
    }

    void operator()(const AcceptedFact &accepted)
    {
        if (accepted.what == AcceptedWhat::Unsettled) {
            m_unsettledAccepted = accepted.reason;
            return;
        }
        for (const int number : accepted.fasteners) {
            if (const auto fastener = m_fasteners.find(number); fastener != m_fasteners.end())
                accept(fastener->second, accepted);
        }
    }

    // Of no joint: none of its acts.
    void operator()(const PointFact auto &) {}
    void operator()(const OtherFact auto &) {}

    [[nodiscard]] JointState result() const
    {
        JointState state;
        const Joint *joint = m_inHand ? m_inHand : m_frame.jointNow(m_id);
        state.revision = joint->revision;
        state.begun = m_begun;
        std::vector<Tick> ticks;
        for (const FastenerPosition &place : joint->text.pattern.places) {
            FastenerState &fastener = state.fasteners[place.number];
            if (const auto known = m_fasteners.find(place.number); known != m_fasteners.end())
                fastener = fastenerState(known->second, *joint);
            for (const TickMade &made : fastener.ticks)
                ticks.push_back(made.tick);
        }
        state.progress = progressOf(joint->tightening(), ticks);
        for (auto &[number, fastener] : state.fasteners) {
            if (!fastener.ticks.empty())
                fastener.stage = isTight(fastener, *joint, state.progress) ? FastenerStage::Tight : FastenerStage::Partway;
        }
        if (state.progress.unsettled)
            state.unsettledAccepted = m_unsettledAccepted;
        return state;
    }

private:
    void takeInHand(const Joint *joint)
    {
        m_inHand = joint;
        m_numbers.clear();
        if (!joint)
            return;
        for (const FastenerPosition &place : joint->text.pattern.places)
            m_numbers.push_back(place.number);
        std::ranges::sort(m_numbers);
    }

    /// Without a tick nothing goes by the revision in hand, unless the joint was begun by it.
    void standsByNothing()
    {
        if (m_ticks == 0 && !m_chosen)
            m_inHand = nullptr;
    }

    [[nodiscard]] bool isPlace(const TickSlot &place) const
    {
        const auto &passes = m_inHand->passes;
        if (place.pass < 0 || static_cast<std::size_t>(place.pass) >= passes.size())
            return false;
        const int rounds = roundsOf(passes[static_cast<std::size_t>(place.pass)]);
        return place.round >= 1 && place.round <= rounds && std::ranges::binary_search(m_numbers, place.fastener);
    }

    void applyTick(const Tick &tick)
    {
        Fastener &fastener = m_fasteners[tick.place.fastener];
        const auto [at, isNew] = fastener.ticks.insert_or_assign({tick.place.pass, tick.place.round}, Laid{m_act, tick});
        m_ticks += isNew ? 1 : 0;
        m_begun = true;
        changed(fastener);
    }

    void dropTicks(Fastener &fastener)
    {
        m_ticks -= fastener.ticks.size();
        fastener.ticks.clear();
        fastener.loose = true;
        changed(fastener);
    }

    static void forgetFitted(Fastener &fastener)
    {
        fastener.fitted.reset();
        fastener.reuseAccepted.reset();
    }

    /// Its ticks are others now; what was accepted is no more.
    void changed(Fastener &fastener)
    {
        fastener.feelAccepted.reset();
        fastener.torqueAccepted.reset();
        m_unsettledAccepted.reset();
    }

    static void accept(Fastener &fastener, const AcceptedFact &accepted)
    {
        switch (accepted.what) {
        case AcceptedWhat::ByFeel: fastener.feelAccepted = accepted.reason; break;
        case AcceptedWhat::Torque: fastener.torqueAccepted = accepted.reason; break;
        case AcceptedWhat::Reused:
            if (fastener.fitted == Fitted::Reused)
                fastener.reuseAccepted = accepted.reason;
            break;
        case AcceptedWhat::Unsettled: break;
        }
    }

    /// A fact without its list of ticks, which is as long as the joint: copied once for an act and not once for each of its ticks.
    [[nodiscard]] const TicksFact &bare(const Act &act) const
    {
        const auto known = m_bare.find(act.seq);
        if (known != m_bare.end())
            return known->second;
        TicksFact fact = std::get<TicksFact>(act.what.fact);
        fact.ticks.clear();
        return m_bare.emplace(act.seq, std::move(fact)).first->second;
    }

    [[nodiscard]] FastenerState fastenerState(const Fastener &fastener, const Joint &joint) const
    {
        FastenerState state;
        state.stage = fastener.loose ? FastenerStage::Loose : FastenerStage::Untouched;
        state.found = fastener.found;
        state.amiss = fastener.amiss;
        state.fitted = fastener.fitted;
        state.reuseAccepted = fastener.reuseAccepted;
        for (const auto &[place, laid] : fastener.ticks) {
            TickMade made = tickMade(bare(*laid.act), laid.tick, joint);
            made.seq = laid.act->seq;
            made.at = laid.act->what.at;
            made.who = laid.act->what.who;
            state.ticks.push_back(std::move(made));
        }
        if (state.byFeel())
            state.feelAccepted = fastener.feelAccepted;
        if (state.outside())
            state.torqueAccepted = fastener.torqueAccepted;
        return state;
    }

    static bool isTight(const FastenerState &fastener, const Joint &joint, const TighteningProgress &progress)
    {
        std::size_t once = 0; // passes of one round that are done; each has one tick at most
        for (const TickMade &made : fastener.ticks)
            once += std::holds_alternative<Settle>(joint.passes[static_cast<std::size_t>(made.tick.place.pass)]) ? 0 : 1;
        const auto settles = std::ranges::count_if(joint.passes, [](const Pass &pass) { return std::holds_alternative<Settle>(pass); });
        const bool all = once + static_cast<std::size_t>(settles) == joint.passes.size();
        return all && (settles == 0 || progress.finished());
    }

    const JobFrame &m_frame;
    JointId m_id;
    const Act *m_act = nullptr;
    const Joint *m_inHand = nullptr; ///< the revision that decides which ticks count; nothing while there are none
    bool m_chosen = false;           ///< the joint was begun by it
    std::vector<int> m_numbers;      ///< of the revision in hand, sorted
    std::map<int, Fastener> m_fasteners;
    std::size_t m_ticks = 0;
    bool m_begun = false;
    std::optional<std::string> m_unsettledAccepted;
    mutable std::map<ActSeq, TicksFact> m_bare;
};

bool countsFor(const JobState &state, const Act &act)
{
    return act.what.job == state.frame->job.id && state.inForce(act);
}

ActsOfJoint actsOf(const JobState &state, JointId joint)
{
    ActsOfJoint acts;
    for (const Act &act : state.acts) {
        if (jointOf(act.what.fact) == joint && countsFor(state, act))
            acts.push_back(&act);
    }
    return acts;
}

} // namespace

void foldJoints(JobState &state)
{
    std::map<JointId, ActsOfJoint> acts;
    for (const Joint &joint : state.frame->joints)
        acts.try_emplace(joint.id);
    for (const Act &act : state.acts) {
        const auto joint = jointOf(act.what.fact);
        if (const auto known = joint ? acts.find(*joint) : acts.end(); known != acts.end() && countsFor(state, act))
            known->second.push_back(&act);
    }
    state.joints.clear();
    for (const auto &[id, ofJoint] : acts)
        state.joints.emplace(id, JointFold(*state.frame, id, ofJoint).result());
}

void foldJoint(JobState &state, JointId joint)
{
    if (const auto known = state.joints.find(joint); known != state.joints.end())
        known->second = JointFold(*state.frame, joint, actsOf(state, joint)).result();
}

} // namespace asleft
