// Whatever is done in whatever order, and in whatever order it is heard of, the state is the same.
#include "story.h"

#include <random>

namespace asleft {
namespace folding_random_tests {

class RandomStory {
public:
    explicit RandomStory(unsigned seed) : m_random(seed) {}

    Story tell(int acts)
    {
        Story story(tappetsOverBridges());
        for (int i = 0; i < acts; ++i) {
            story.job = draw(0, 4) == 0 ? otherJob : ourJob;
            story.station = std::array{"bench", "office", "shed"}.at(static_cast<std::size_t>(draw(0, 2)));
            story.clock = draw(0, 100'000);
            tellOne(story);
        }
        return story;
    }

    std::vector<Act> shuffled(std::vector<Act> acts)
    {
        std::ranges::shuffle(acts, m_random);
        return acts;
    }

    int draw(int low, int high) { return std::uniform_int_distribution(low, high)(m_random); }

private:
    /// Everything that can be the matter with a point at once.
    static JobFrame tappetsOverBridges()
    {
        JobFrame frame = bridgedFrame();
        frame.engine.screw.kind = AdjusterKind::Hydraulic;
        frame.engine.bleedDown = std::chrono::minutes(1);
        return frame;
    }

    std::string_view somePoint()
    {
        static constexpr std::array<std::string_view, 4> names{"I1", "E1", "I2", "BI1"};
        return names.at(static_cast<std::size_t>(draw(0, 3)));
    }
    ReadingFact someReading(const Story &story, std::string_view point)
    {
        ReadingFact reading = draw(0, 3) == 0 ? story.turned(point, somePhase(), "3/4") : story.reading(point, somePhase(), someValue());
        if (draw(0, 1) == 0)
            reading.uncertainty = micrometres(draw(0, 60));
        reading.condition = draw(0, 5) == 0 ? EngineCondition::Hot : EngineCondition::Cold;
        return reading;
    }
    std::string_view someValue()
    {
        static constexpr std::array<std::string_view, 4> values{"0.20 mm", "0.30 mm", "0.40 mm", "0.55 mm"};
        return values.at(static_cast<std::size_t>(draw(0, 3)));
    }
    ActSeq someEarlier(const Story &story)
    {
        return story.acts.empty() ? ActSeq(1)
                                  : story.acts.at(static_cast<std::size_t>(draw(0, static_cast<int>(story.acts.size()) - 1))).seq;
    }
    Phase somePhase() { return draw(0, 1) == 0 ? Phase::AsFound : Phase::AsLeft; }

    void tellOne(Story &story)
    {
        const std::string_view point = somePoint();
        switch (draw(0, 15)) {
        case 0: story.log(someReading(story, point)); break;
        case 1:
        case 2: story.left(point, someValue()); break;
        case 10:
        case 11: story.left("BI1", "0.07 mm"); break;
        case 12: story.leaveInside({"I1"}); break;
        case 3: story.correct(someEarlier(story), point, somePhase(), someValue()); break;
        case 4:
            story.log(AllLeftFact{{story.reading("I1", Phase::AsLeft, someValue()), story.reading("E1", Phase::AsLeft, someValue())}});
            break;
        case 5: story.nutOpen(point); break;
        case 6: story.keep(someEarlier(story), point); break;
        case 7: story.log(CheckAgainFact{{story.at("I1"), story.at("I2")}, "", static_cast<Disturbance>(draw(0, 5))}); break;
        case 8: story.crank(draw(0, 3) == 0 ? std::nullopt : std::optional(90 * draw(0, 7))); break;
        case 9: draw(0, 1) == 0 ? story.twoPositions() : story.done(draw(1, 5)); break;
        default: story.acts.empty() ? story.done(1) : story.withdraw(someEarlier(story)); break;
        }
    }

    std::mt19937 m_random;
};

void expectSamePoints(const JobState &state, const JobState &wanted)
{
    ASSERT_EQ(state.acts, wanted.acts);
    ASSERT_EQ(state.withdrawn, wanted.withdrawn);
    ASSERT_EQ(state.points, wanted.points);
    ASSERT_EQ(state.crank, wanted.crank);
    ASSERT_EQ(state.plan, wanted.plan);
    ASSERT_EQ(state.stepsDone, wanted.stepsDone);
}

/// And whatever is read out of it; that a wait ends is of the clock alone.
void expectSame(const JobState &state, const JobState &wanted)
{
    ASSERT_NO_FATAL_FAILURE(expectSamePoints(state, wanted));
    ASSERT_EQ(bleedDownUntil(state), bleedDownUntil(wanted));
    ASSERT_EQ(stillOpen(state, Moment{50'000}), stillOpen(wanted, Moment{50'000}));
    ASSERT_EQ(nextAct(state), nextAct(wanted));
}

TEST(FoldingRandom, OneByOneInAnyOrderEqualsAllAtOnce)
{
    RandomStory random(20260314);
    int settled = 0;
    for (int round = 0; round < 200; ++round) {
        const Story story = random.tell(random.draw(1, 40));
        const auto frame = std::make_shared<const JobFrame>(story.frame);
        JobState state = fold(frame, {});
        std::vector<Act> heard;
        for (const Act &act : random.shuffled(story.acts)) {
            foldOne(state, act);
            heard.insert(std::ranges::upper_bound(heard, act.seq, {}, &Act::seq), act);
            ASSERT_NO_FATAL_FAILURE(expectSame(state, fold(frame, heard))) << "round " << round << ", act " << act.seq.key();
        }
        settled += static_cast<int>(std::ranges::count_if(state.points, [](const auto &point) { return point.second.settled(); }));
    }
    EXPECT_GT(settled, 50) << "the stories should lead somewhere";
}

struct Seen {
    int byTwo = 0;
    int disturbedByBridge = 0;
    int waits = 0;
};

/// What holds of every point, whatever was done.
void expectSound(const PointState &point)
{
    EXPECT_EQ(point.disturbance.has_value(), point.stage == PointStage::CheckAgain);
    EXPECT_EQ(point.nutOpenSince.has_value(), point.stage == PointStage::NutOpen);
    if (point.stage == PointStage::Left || point.stage == PointStage::CheckAgain)
        EXPECT_TRUE(point.left);
    else
        EXPECT_FALSE(point.left);
    if (point.leftByTwo) {
        EXPECT_EQ(point.stage, PointStage::Left);
        EXPECT_FALSE(point.kept);
        EXPECT_FALSE(point.settled());
        EXPECT_NE(point.leftByTwo->seq, point.left->seq);
    }
}

TEST(FoldingRandom, WhatIsSaidOfAPointHoldsTogether)
{
    RandomStory random(77);
    Seen seen;
    for (int round = 0; round < 1000; ++round) {
        const JobState state = random.tell(random.draw(1, 40)).state();
        for (const auto &[id, point] : state.points) {
            expectSound(point);
            seen.byTwo += point.leftByTwo ? 1 : 0;
            seen.disturbedByBridge += point.disturbance == Disturbance::BridgeSet ? 1 : 0;
        }
        seen.waits += bleedDownUntil(state) ? 1 : 0;
        ASSERT_FALSE(testing::Test::HasFailure()) << "round " << round;
    }
    EXPECT_GT(seen.byTwo, 50);
    EXPECT_GT(seen.disturbedByBridge, 50);
    EXPECT_GT(seen.waits, 50);
}

TEST(FoldingRandom, WhatIsTakenBackAtOnceWasNeverDone)
{
    RandomStory random(78);
    for (int round = 0; round < 500; ++round) {
        Story story = random.tell(random.draw(2, 40));
        const Act last = story.acts.back();
        if (last.what.withdraws)
            continue;
        story.withdraw(last.seq);
        Story without = story;
        without.acts.erase(without.acts.end() - 2, without.acts.end());
        ASSERT_EQ(story.state().points, without.state().points) << "round " << round;
        ASSERT_EQ(bleedDownUntil(story.state()), bleedDownUntil(without.state())) << "round " << round;
    }
}

TEST(FoldingRandom, InOrderEqualsAllAtOnce)
{
    RandomStory random(7);
    for (int round = 0; round < 200; ++round) {
        const Story story = random.tell(40);
        JobState state = fold(std::make_shared<const JobFrame>(story.frame), {});
        for (const Act &act : story.acts)
            foldOne(state, act);
        ASSERT_NO_FATAL_FAILURE(expectSame(state, story.state())) << "round " << round;
    }
}

Act withoutTime(Act act)
{
    act.what.at = {};
    return act;
}

JobState withoutTimes(JobState state)
{
    std::ranges::transform(state.acts, state.acts.begin(), withoutTime);
    for (auto &[id, point] : state.points) {
        for (auto *judged : {&point.found, &point.left, &point.leftByTwo})
            if (*judged)
                (*judged)->at = {};
        if (point.nutOpenSince)
            point.nutOpenSince = Moment{};
    }
    if (state.crank)
        state.crank->at = {};
    return state;
}

TEST(FoldingRandom, TheClockDecidesNothing)
{
    RandomStory random(3);
    for (int round = 0; round < 200; ++round) {
        Story story = random.tell(40);
        const JobState state = story.state();
        for (Act &act : story.acts)
            act.what.at = {random.draw(0, 100'000)};
        ASSERT_NO_FATAL_FAILURE(expectSamePoints(withoutTimes(story.state()), withoutTimes(state))) << "round " << round;
    }
}

} // namespace folding_random_tests
} // namespace asleft
