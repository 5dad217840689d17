// Whatever is done to joints in whatever order, and in whatever order it is heard of, the state is the same.
#include "joint_story.h"

#include <random>

namespace asleft {
namespace joint_random_tests {

class RandomStory {
public:
    explicit RandomStory(unsigned seed) : m_random(seed) {}

    JointStory tell(int acts)
    {
        JointStory story;
        story.joint = cover;
        story.revise("target, settle 3", Certainty::FromMemory);
        story.joint = headBolts;
        story.revise("finger, 45 N·m");
        for (int i = 0; i < acts; ++i) {
            story.job = draw(0, 9) == 0 ? otherJob : ourJob;
            story.station = std::array{"bench", "office", "shed"}.at(static_cast<std::size_t>(draw(0, 2)));
            story.joint = JointId(draw(0, 9) == 0 ? draw(3, 4) : draw(1, 2));
            story.revision = draw(0, 5) == 0 ? 3 - m_mostly : m_mostly;
            tellOne(story);
        }
        return story;
    }
    /// By which revision most of a story's ticks are made.
    void mostlyBy(int revision) { m_mostly = revision; }

    std::vector<Act> shuffled(std::vector<Act> acts)
    {
        std::ranges::shuffle(acts, m_random);
        return acts;
    }

    int draw(int low, int high) { return std::uniform_int_distribution(low, high)(m_random); }

private:
    std::vector<int> some()
    {
        switch (draw(0, 5)) {
        case 0: return {1, 2, 3, 4};
        case 1: return {1, 2, 3};
        case 2: return {draw(1, 4), draw(1, 5)};
        default: return {draw(1, 4)};
        }
    }
    std::string_view someTorque()
    {
        static constexpr std::array<std::string_view, 4> torques{"20 N·m", "31 N·m", "32 N·m", "41 N·m"};
        return torques.at(static_cast<std::size_t>(draw(0, 3)));
    }
    ActSeq someEarlier(const Story &story) { return story.acts.at(static_cast<std::size_t>(draw(0, int(story.acts.size()) - 1))).seq; }

    /// What the joint asks for next, as a person at the bench would do it.
    void goOn(JointStory &story)
    {
        const JobState state = story.state();
        const auto joint = state.joints.find(story.joint);
        if (joint == state.joints.end())
            return;
        if (!joint->second.progress.next) {
            story.accept(static_cast<AcceptedWhat>(draw(0, 3)), {1, 2, 3, 4});
            return;
        }
        story.revision = joint->second.revision;
        const auto rest = restOfPass(jointInHand(state, story.joint).tightening(), joint->second.progress);
        TicksFact fact = story.ticked(rest.front().pass, {}, rest.front().round);
        const bool moved = draw(0, 3) != 0;
        for (const TickSlot &place : rest)
            fact.ticks.push_back({place, moved});
        fact.setting = typedTorque("32 N·m");
        story.log(fact);
    }

    void tellOne(JointStory &story)
    {
        switch (draw(0, 17)) {
        case 0: story.loosened(some(), static_cast<FoundHow>(draw(0, 6)), draw(0, 1) == 0 ? "12 N·m" : ""); break;
        case 1: story.byFeel(draw(0, 2), some()); break;
        case 2: story.read(someTorque(), "3 N·m", draw(0, 2), some()); break;
        case 3: story.settle(draw(1, 3), some(), draw(0, 1) == 0, draw(1, 2)); break;
        case 4:
        case 5: story.set(someTorque(), draw(0, 2), some()); break;
        case 6: story.untick(draw(0, 2), some()); break;
        case 7: draw(0, 2) == 0 ? story.begin(draw(1, 3)) : story.finding("rust"); break;
        case 8: story.fitted(some(), draw(0, 1) == 0 ? Fitted::New : Fitted::Reused); break;
        case 9:
        case 10: story.accept(static_cast<AcceptedWhat>(draw(0, 3)), some()); break;
        case 11: story.done(draw(1, 3)); break;
        case 12:
        case 13:
            if (!story.acts.empty())
                story.withdraw(someEarlier(story));
            break;
        default: goOn(story); break;
        }
    }

    std::mt19937 m_random;
    int m_mostly = 1;
};

void expectSameJoint(const JointState &joint, const JointState &wanted)
{
    ASSERT_EQ(joint.revision, wanted.revision);
    ASSERT_EQ(joint.begun, wanted.begun);
    ASSERT_EQ(joint.fasteners, wanted.fasteners);
    ASSERT_EQ(joint.unsettledAccepted, wanted.unsettledAccepted);
    ASSERT_EQ(joint.progress.next, wanted.progress.next);
    ASSERT_EQ(joint.progress.pass, wanted.progress.pass);
    ASSERT_EQ(joint.progress.round, wanted.progress.round);
    ASSERT_EQ(joint.progress.doneInRound, wanted.progress.doneInRound);
    ASSERT_EQ(joint.progress.movedInRound, wanted.progress.movedInRound);
    ASSERT_EQ(joint.progress.unsettled, wanted.progress.unsettled);
}

void expectSameJoints(const JobState &state, const JobState &wanted)
{
    ASSERT_EQ(state.joints.size(), wanted.joints.size());
    for (const auto &[id, joint] : state.joints)
        ASSERT_NO_FATAL_FAILURE(expectSameJoint(joint, wanted.joints.at(id))) << "joint " << id.key();
    ASSERT_EQ(state.findings.size(), wanted.findings.size());
    for (std::size_t i = 0; i < state.findings.size(); ++i)
        ASSERT_EQ(state.findings[i].seq, wanted.findings[i].seq);
}

/// And whatever is read out of it.
void expectSame(const JobState &state, const JobState &wanted)
{
    ASSERT_EQ(state.acts, wanted.acts);
    ASSERT_NO_FATAL_FAILURE(expectSameJoints(state, wanted));
    ASSERT_EQ(stillOpen(state, Moment{0}), stillOpen(wanted, Moment{0}));
    ASSERT_EQ(nextAct(state), nextAct(wanted));
    ASSERT_EQ(undoable(state, "bench"), undoable(wanted, "bench"));
}

TEST(JointRandom, OneByOneInAnyOrderEqualsAllAtOnce)
{
    RandomStory random(20260401);
    for (int round = 0; round < 60; ++round) {
        const JointStory story = random.tell(random.draw(1, 40));
        const auto frame = std::make_shared<const JobFrame>(story.frame);
        JobState state = fold(frame, {});
        std::vector<Act> heard;
        for (const Act &act : random.shuffled(story.acts)) {
            foldOne(state, act);
            heard.insert(std::ranges::upper_bound(heard, act.seq, {}, &Act::seq), act);
            ASSERT_NO_FATAL_FAILURE(expectSame(state, fold(frame, heard))) << "round " << round << ", act " << act.seq.key();
        }
    }
}

TEST(JointRandom, InOrderEqualsAllAtOnceAtEveryAct)
{
    RandomStory random(5);
    for (int round = 0; round < 40; ++round) {
        const JointStory story = random.tell(60);
        const auto frame = std::make_shared<const JobFrame>(story.frame);
        JobState state = fold(frame, {});
        for (std::size_t done = 0; done < story.acts.size(); ++done) {
            foldOne(state, story.acts[done]);
            const auto wanted = fold(frame, std::span(story.acts).first(done + 1));
            ASSERT_NO_FATAL_FAILURE(expectSame(state, wanted)) << "round " << round << ", act " << done;
        }
    }
}

TEST(JointRandom, WhatIsTakenBackAtOnceWasNeverDone)
{
    RandomStory random(6);
    for (int round = 0; round < 300; ++round) {
        JointStory story = random.tell(random.draw(2, 40));
        if (story.acts.empty() || story.acts.back().what.withdraws)
            continue;
        JointStory before = story;
        before.acts.pop_back();
        story.withdraw(story.acts.back().seq);
        ASSERT_NO_FATAL_FAILURE(expectSameJoints(story.state(), before.state())) << "round " << round;
    }
}

struct Seen {
    int tight = 0;
    int settled = 0;
    int unsettled = 0;
    int accepted = 0;
    int old = 0;
    int found = 0;
};

/// What holds of every fastener, whatever was done.
void expectSound(const FastenerState &fastener)
{
    const bool ticked = !fastener.ticks.empty();
    EXPECT_EQ(ticked, fastener.stage == FastenerStage::Tight || fastener.stage == FastenerStage::Partway);
    EXPECT_TRUE(!fastener.found || fastener.stage != FastenerStage::Untouched);
    EXPECT_TRUE(!fastener.feelAccepted || fastener.byFeel());
    const auto verdict = fastener.verdict();
    EXPECT_TRUE(!fastener.torqueAccepted || verdict == Verdict::Low || verdict == Verdict::High || verdict == Verdict::TooClose);
    EXPECT_TRUE(!fastener.reuseAccepted || fastener.fitted == Fitted::Reused);
    const auto place = [](const TickMade &made) { return std::pair(made.tick.place.pass, made.tick.place.round); };
    EXPECT_TRUE(std::ranges::is_sorted(fastener.ticks, std::ranges::less_equal{}, place)) << "each place once, in order";
    for (const TickMade &made : fastener.ticks)
        EXPECT_NE(made.seq, ActSeq(0));
}

void expectSound(const JobState &state, JointId id, Seen &seen)
{
    const JointState &joint = state.joints.at(id);
    const Joint &inHand = jointInHand(state, id);
    EXPECT_EQ(joint.fasteners.size(), inHand.text.pattern.places.size());
    bool allTight = true;
    for (const auto &[number, fastener] : joint.fasteners) {
        expectSound(fastener);
        allTight = allTight && fastener.stage == FastenerStage::Tight;
        for (const TickMade &made : fastener.ticks)
            EXPECT_EQ(made.fact.revision, joint.revision);
        seen.tight += fastener.stage == FastenerStage::Tight ? 1 : 0;
        seen.found += fastener.found ? 1 : 0;
        seen.accepted += fastener.feelAccepted || fastener.torqueAccepted || fastener.reuseAccepted ? 1 : 0;
    }
    EXPECT_EQ(allTight, joint.progress.finished());
    EXPECT_TRUE(!joint.unsettledAccepted || joint.progress.unsettled);
    EXPECT_TRUE(!joint.settled(inHand) || allTight);
    seen.settled += joint.settled(inHand) ? 1 : 0;
    seen.unsettled += joint.progress.unsettled ? 1 : 0;
    seen.old += inHand.revision < state.frame->jointNow(id)->revision ? 1 : 0;
}

TEST(JointRandom, WhatIsSaidOfAJointHoldsTogether)
{
    RandomStory random(8);
    Seen seen;
    for (int round = 0; round < 600; ++round) {
        random.mostlyBy(1 + round % 2);
        const JobState state = random.tell(random.draw(1, 60)).state();
        for (const auto &[id, joint] : state.joints)
            expectSound(state, id, seen);
        ASSERT_FALSE(testing::Test::HasFailure()) << "round " << round;
    }
    EXPECT_GT(seen.tight, 300) << "the stories should lead somewhere";
    EXPECT_GT(seen.settled, 50);
    EXPECT_GT(seen.unsettled, 20);
    EXPECT_GT(seen.accepted, 60);
    EXPECT_GT(seen.old, 100);
    EXPECT_GT(seen.found, 300);
}

} // namespace joint_random_tests
} // namespace asleft
