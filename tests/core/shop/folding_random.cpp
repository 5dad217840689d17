// Whatever is done in whatever order, and in whatever order it is heard of, the state is the same.
#include "story.h"

#include <random>

namespace asleft {
namespace {

class RandomStory {
public:
    explicit RandomStory(unsigned seed) : m_random(seed) {}

    Story tell(int acts)
    {
        Story story;
        for (int i = 0; i < acts; ++i) {
            story.job = draw(0, 4) == 0 ? otherJob : ourJob;
            story.seat = draw(0, 1) == 0 ? "bench" : "office";
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
    std::string_view somePoint()
    {
        static constexpr std::array<std::string_view, 3> names{"I1", "E1", "I2"};
        return names.at(static_cast<std::size_t>(draw(0, 2)));
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
        switch (draw(0, 12)) {
        case 0: story.found(point, someValue()); break;
        case 1:
        case 2: story.left(point, someValue()); break;
        case 3: story.correct(someEarlier(story), point, somePhase(), someValue()); break;
        case 4:
            story.log(AllLeftFact{{story.reading("I1", Phase::AsLeft, someValue()), story.reading("E1", Phase::AsLeft, someValue())}});
            break;
        case 5: story.nutOpen(point); break;
        case 6: story.keep(someEarlier(story), point); break;
        case 7: story.checkAgain({story.at("I1"), story.at("I2")}); break;
        case 8: story.crank(draw(0, 3) == 0 ? std::nullopt : std::optional(90 * draw(0, 7))); break;
        case 9: draw(0, 1) == 0 ? story.twoPositions() : story.done(draw(1, 5)); break;
        default: story.acts.empty() ? story.done(1) : story.withdraw(someEarlier(story)); break;
        }
    }

    std::mt19937 m_random;
};

void expectSame(const JobState &state, const JobState &wanted)
{
    ASSERT_EQ(state.acts, wanted.acts);
    ASSERT_EQ(state.withdrawn, wanted.withdrawn);
    ASSERT_EQ(state.points, wanted.points);
    ASSERT_EQ(state.crank, wanted.crank);
    ASSERT_EQ(state.plan, wanted.plan);
    ASSERT_EQ(state.stepsDone, wanted.stepsDone);
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
        for (auto *judged : {&point.found, &point.left})
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
        ASSERT_NO_FATAL_FAILURE(expectSame(withoutTimes(story.state()), withoutTimes(state))) << "round " << round;
    }
}

} // namespace
} // namespace asleft
