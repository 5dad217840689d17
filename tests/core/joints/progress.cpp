// How far a joint has come, folded from its ticks in whatever order they were made.
#include <joints/passes.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <numeric>
#include <random>

namespace asleft {
namespace progress_tests {

std::vector<Pass> passes(std::string_view text)
{
    return parsePasses(text, TorqueUnit::NewtonMetre).value();
}

Tightening joint(std::vector<int> order, std::string_view text)
{
    return {std::move(order), passes(text)};
}

Tick tick(int fastener, int pass, int round = 1, bool moved = false)
{
    return {{fastener, pass, round}, moved};
}

std::vector<int> anyOrder(std::mt19937 &random, int count)
{
    std::vector<int> order(static_cast<std::size_t>(count));
    std::iota(order.begin(), order.end(), 1);
    std::shuffle(order.begin(), order.end(), random);
    return order;
}

std::vector<int> fastenersOf(const std::vector<TickSlot> &places)
{
    std::vector<int> fasteners;
    for (const TickSlot &place : places)
        fasteners.push_back(place.fastener);
    return fasteners;
}

void expectFinished(const Tightening &tightening, const TighteningProgress &progress)
{
    EXPECT_TRUE(progress.finished());
    EXPECT_EQ(progress.pass, static_cast<int>(tightening.passes.size()));
    EXPECT_EQ(progress.doneInRound, tightening.order);
    EXPECT_TRUE(restOfPass(tightening, progress).empty());
}

TEST(Progress, BeginsWithTheFirstFastenerOfTheFirstPass)
{
    const Tightening circle = joint({1, 3, 2, 4}, "finger, target");
    const TighteningProgress progress = progressOf(circle, {});
    EXPECT_EQ(progress.next, (TickSlot{1, 0, 1}));
    EXPECT_EQ(progress.pass, 0);
    EXPECT_EQ(progress.round, 1);
    EXPECT_TRUE(progress.doneInRound.empty());
    EXPECT_FALSE(progress.unsettled);
    EXPECT_EQ(restOfPass(circle, progress), (std::vector<TickSlot>{{1, 0, 1}, {3, 0, 1}, {2, 0, 1}, {4, 0, 1}}));
}

TEST(Progress, GoesOnAtTheFirstOneLeftOut)
{
    const Tightening circle = joint({1, 3, 2, 4}, "target");
    const std::vector<Tick> ticks{tick(2, 0), tick(1, 0)};
    const TighteningProgress progress = progressOf(circle, ticks);
    EXPECT_EQ(progress.next, (TickSlot{3, 0, 1}));
    EXPECT_EQ(progress.doneInRound, (std::vector<int>{1, 2})); // in the order of tightening, not of ticking
    EXPECT_EQ(fastenersOf(restOfPass(circle, progress)), (std::vector<int>{3, 4}));
}

TEST(Progress, APassBeginsOnceEveryFastenerHasTheOneBefore)
{
    const Tightening row = joint({2, 1}, "50 %, target");
    EXPECT_EQ(progressOf(row, std::vector{tick(2, 0)}).next, (TickSlot{1, 0, 1}));
    EXPECT_EQ(progressOf(row, std::vector{tick(2, 0), tick(1, 0)}).next, (TickSlot{2, 1, 1}));
}

TEST(Progress, ATickOfALaterPassWaitsForItsPass)
{
    const Tightening row = joint({1, 2, 3}, "50 %, target");
    std::vector<Tick> ticks{tick(1, 1), tick(3, 1), tick(1, 0)};
    TighteningProgress progress = progressOf(row, ticks);
    EXPECT_EQ(progress.pass, 0);
    EXPECT_EQ(progress.next, (TickSlot{2, 0, 1}));
    ticks.push_back(tick(2, 0));
    ticks.push_back(tick(3, 0));
    progress = progressOf(row, ticks);
    EXPECT_EQ(progress.pass, 1);
    EXPECT_EQ(progress.next, (TickSlot{2, 1, 1}));
    EXPECT_EQ(progress.doneInRound, (std::vector<int>{1, 3}));
}

TEST(Progress, TicksOfNoPlaceCountForNothing)
{
    const Tightening row = joint({1, 2}, "50 %, target");
    const std::vector<Tick> ticks{tick(3, 0),  tick(0, 0),    tick(-1, 0),   tick(1, 2),
                                  tick(1, -1), tick(1, 0, 2), tick(1, 0, 0), tick(1, 0, -7)};
    const TighteningProgress progress = progressOf(row, ticks);
    EXPECT_EQ(progress.next, (TickSlot{1, 0, 1}));
    EXPECT_TRUE(progress.doneInRound.empty());
}

TEST(Progress, ASecondTickOfAPlaceCountsForNothing)
{
    const Tightening row = joint({1, 2}, "50 %, target");
    const TighteningProgress progress = progressOf(row, std::vector{tick(1, 0), tick(1, 0), tick(1, 0)});
    EXPECT_EQ(progress.next, (TickSlot{2, 0, 1}));
    EXPECT_EQ(progress.doneInRound, (std::vector<int>{1}));
}

TEST(Progress, NothingMovesButInASettlePass)
{
    const Tightening row = joint({1, 2}, "target");
    const TighteningProgress progress = progressOf(row, std::vector{tick(1, 0, 1, true), tick(2, 0, 1, true)});
    EXPECT_TRUE(progress.movedInRound.empty());
    EXPECT_FALSE(progress.unsettled);
    expectFinished(row, progress);
}

TEST(Progress, WithoutFastenersOrPassesThereIsNothingToDo)
{
    const Tightening noFasteners = joint({}, "finger, target, settle 10");
    expectFinished(noFasteners, progressOf(noFasteners, std::vector{tick(1, 0)}));
    EXPECT_FALSE(progressOf(noFasteners, {}).unsettled);
    const Tightening noPasses{{1, 2}, {}};
    EXPECT_TRUE(progressOf(noPasses, std::vector{tick(1, 0)}).finished());
    EXPECT_EQ(progressOf(noPasses, {}).pass, 0);
    EXPECT_TRUE(restOfPass(noPasses, progressOf(noPasses, {})).empty());
}

TEST(Progress, SettlesInOneRoundWhereNoneMoved)
{
    const Tightening cover = joint({2, 1, 3}, "target, settle 3");
    const std::vector<Tick> ticks{tick(2, 0), tick(1, 0), tick(3, 0), tick(2, 1), tick(1, 1), tick(3, 1)};
    const TighteningProgress progress = progressOf(cover, ticks);
    expectFinished(cover, progress);
    EXPECT_EQ(progress.round, 1);
    EXPECT_FALSE(progress.unsettled);
}

TEST(Progress, OneThatMovedBringsAnotherRound)
{
    const Tightening cover = joint({2, 1, 3}, "settle 3");
    std::vector<Tick> ticks{tick(2, 0), tick(1, 0, 1, true)};
    TighteningProgress progress = progressOf(cover, ticks);
    EXPECT_EQ(progress.next, (TickSlot{3, 0, 1})); // the round is gone through to its end first
    EXPECT_EQ(progress.movedInRound, (std::vector<int>{1}));
    ticks.push_back(tick(3, 0));
    progress = progressOf(cover, ticks);
    EXPECT_EQ(progress.next, (TickSlot{2, 0, 2}));
    EXPECT_EQ(progress.round, 2);
    EXPECT_TRUE(progress.doneInRound.empty());
    EXPECT_TRUE(progress.movedInRound.empty());
    for (const int fastener : {2, 1, 3})
        ticks.push_back(tick(fastener, 0, 2));
    progress = progressOf(cover, ticks);
    expectFinished(cover, progress);
    EXPECT_EQ(progress.round, 2);
    EXPECT_FALSE(progress.unsettled);
}

TEST(Progress, TheLastWordOnMovedHolds)
{
    const Tightening cover = joint({1, 2}, "settle 3");
    std::vector<Tick> ticks{tick(1, 0, 1, true), tick(2, 0), tick(1, 0, 1, false)};
    EXPECT_TRUE(progressOf(cover, ticks).finished());
    ticks.push_back(tick(2, 0, 1, true));
    EXPECT_EQ(progressOf(cover, ticks).next, (TickSlot{1, 0, 2}));
}

TEST(Progress, RoundsAreCappedAndTheJointIsCalledUnsettled)
{
    for (int most = 1; most <= mostSettleRounds; ++most) {
        const Tightening cover = joint({1, 2, 3}, "target, settle " + std::to_string(most));
        std::vector<Tick> ticks{tick(1, 0), tick(2, 0), tick(3, 0)};
        for (int round = 1; round <= most; ++round) {
            EXPECT_EQ(progressOf(cover, ticks).next, (TickSlot{1, 1, round}));
            EXPECT_FALSE(progressOf(cover, ticks).unsettled);
            for (const int fastener : {1, 2, 3})
                ticks.push_back(tick(fastener, 1, round, fastener == 2));
        }
        const TighteningProgress progress = progressOf(cover, ticks);
        expectFinished(cover, progress);
        EXPECT_TRUE(progress.unsettled);
        EXPECT_EQ(progress.round, most);
        EXPECT_EQ(progress.movedInRound, (std::vector<int>{2}));
    }
}

TEST(Progress, UnsettledStaysSaidThroughLaterPasses)
{
    const Tightening head = joint({1}, "target, settle 1, +45°");
    std::vector<Tick> ticks{tick(1, 0), tick(1, 1, 1, true)};
    EXPECT_EQ(progressOf(head, ticks).next, (TickSlot{1, 2, 1}));
    EXPECT_TRUE(progressOf(head, ticks).unsettled);
    ticks.push_back(tick(1, 2));
    expectFinished(head, progressOf(head, ticks));
    EXPECT_TRUE(progressOf(head, ticks).unsettled);
}

TEST(Progress, RoundsPastTheOneThatSettledCountForNothing)
{
    const Tightening cover = joint({1, 2}, "settle 3");
    const std::vector<Tick> ticks{tick(1, 0), tick(2, 0), tick(1, 0, 2, true), tick(2, 0, 3, true)};
    const TighteningProgress progress = progressOf(cover, ticks);
    expectFinished(cover, progress);
    EXPECT_EQ(progress.round, 1);
    EXPECT_FALSE(progress.unsettled);
}

/// Ticks what is next until nothing is; the settle pass moves in its first rounds.
std::vector<Tick> leadThrough(const Tightening &tightening, int movingRounds)
{
    std::vector<Tick> ticks;
    for (auto progress = progressOf(tightening, ticks); progress.next; progress = progressOf(tightening, ticks)) {
        EXPECT_EQ(restOfPass(tightening, progress).front(), *progress.next);
        EXPECT_EQ(restOfPass(tightening, progress).size() + progress.doneInRound.size(), tightening.order.size());
        ticks.push_back({*progress.next, progress.next->round <= movingRounds});
    }
    return ticks;
}

TEST(Progress, WhatIsNextLeadsThroughEveryPlaceOnceInOrder)
{
    std::mt19937 random(4);
    for (int time = 0; time < 40; ++time) {
        const int count = std::uniform_int_distribution<int>(1, 24)(random);
        const int movingRounds = std::uniform_int_distribution<int>(0, 5)(random);
        const Tightening cover = joint(anyOrder(random, count), "finger, 30 %, 60 %, target, settle 4");
        const std::vector<Tick> ticks = leadThrough(cover, movingRounds);
        std::vector<TickSlot> expected;
        for (int pass = 0; pass < 5; ++pass) {
            const int rounds = pass < 4 ? 1 : std::min(movingRounds + 1, 4);
            for (int round = 1; round <= rounds; ++round)
                for (const int fastener : cover.order)
                    expected.push_back({fastener, pass, round});
        }
        std::vector<TickSlot> led;
        for (const Tick &made : ticks)
            led.push_back(made.place);
        ASSERT_EQ(led, expected);
        const TighteningProgress progress = progressOf(cover, ticks);
        expectFinished(cover, progress);
        EXPECT_EQ(progress.unsettled, movingRounds >= 4);
    }
}

/// The same by looking every place up in the ticks: slow, and too plain to be wrong.
std::optional<TickSlot> firstOpenPlace(const Tightening &tightening, const std::vector<Tick> &ticks)
{
    for (int pass = 0; pass < static_cast<int>(tightening.passes.size()); ++pass) {
        const auto *settle = std::get_if<Settle>(&tightening.passes[static_cast<std::size_t>(pass)]);
        bool again = true;
        for (int round = 1; again && round <= (settle ? settle->mostRounds : 1); ++round) {
            again = false;
            for (const int fastener : tightening.order) {
                const TickSlot place{fastener, pass, round};
                const auto last = std::find_if(ticks.rbegin(), ticks.rend(), [&](const Tick &made) { return made.place == place; });
                if (last == ticks.rend())
                    return place;
                again = again || (settle && last->moved);
            }
        }
    }
    return std::nullopt;
}

TEST(Progress, AgreesWithThePlainSearchOnShuffledTicks)
{
    std::mt19937 random(5);
    int finished = 0;
    for (int time = 0; time < 400; ++time) {
        const Tightening cover = joint(anyOrder(random, std::uniform_int_distribution<int>(1, 6)(random)), "50 %, target, settle 3");
        std::vector<Tick> all = leadThrough(cover, std::uniform_int_distribution<int>(0, 3)(random));
        all.insert(all.end(), all.begin(), all.begin() + static_cast<std::ptrdiff_t>(all.size() / 3)); // some twice
        std::shuffle(all.begin(), all.end(), random);
        std::vector<Tick> ticks;
        for (const Tick &made : all) {
            ASSERT_EQ(progressOf(cover, ticks).next, firstOpenPlace(cover, ticks));
            ticks.push_back(made);
        }
        ASSERT_EQ(progressOf(cover, ticks).next, firstOpenPlace(cover, ticks));
        finished += progressOf(cover, ticks).finished() ? 1 : 0;
    }
    EXPECT_EQ(finished, 400);
}

/// The least time of several, so that a busy machine does not decide.
std::chrono::nanoseconds timeToFold(const Tightening &tightening, const std::vector<Tick> &ticks)
{
    auto least = std::chrono::nanoseconds::max();
    for (int time = 0; time < 9; ++time) {
        const auto begin = std::chrono::steady_clock::now();
        EXPECT_TRUE(progressOf(tightening, ticks).finished());
        least = std::min<std::chrono::nanoseconds>(least, std::chrono::steady_clock::now() - begin);
    }
    return least;
}

Tightening largestJoint(std::mt19937 &random, int count)
{
    Tightening cover{anyOrder(random, count), {}};
    cover.passes.assign(mostPasses, Settle{mostSettleRounds});
    return cover;
}

std::vector<Tick> everyTick(std::mt19937 &random, const Tightening &cover)
{
    std::vector<Tick> ticks;
    for (int pass = 0; pass < mostPasses; ++pass)
        for (int round = 1; round <= mostSettleRounds; ++round)
            for (const int fastener : cover.order)
                ticks.push_back(tick(fastener, pass, round, true));
    std::shuffle(ticks.begin(), ticks.end(), random);
    return ticks;
}

TEST(Progress, FoldsInStepWithTheTicks)
{
    std::mt19937 random(6);
    const Tightening small = largestJoint(random, 20);
    const Tightening large = largestJoint(random, 200);
    const std::vector<Tick> fewTicks = everyTick(random, small);
    const std::vector<Tick> manyTicks = everyTick(random, large);
    ASSERT_EQ(manyTicks.size(), 24'000U);
    EXPECT_TRUE(progressOf(large, manyTicks).unsettled);
    // Ten times the ticks take about ten times as long; a search for each tick would take a hundred times.
    EXPECT_LT(timeToFold(large, manyTicks), timeToFold(small, fewTicks) * 40);
}

} // namespace progress_tests
} // namespace asleft
