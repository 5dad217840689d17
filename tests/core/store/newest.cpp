// What other jobs left at an engine is read back to the newest act that says so, and comes to the same as reading all of it.
#include "journal_test.h"

#include <shop/outlook.h>
#include <shop/state.h>
#include <store/things.h>

#include <algorithm>
#include <random>

namespace asleft {
namespace newest_tests {

class Newest : public Journal {
protected:
    static constexpr std::size_t jobCount = 3;

    void SetUp() override
    {
        Journal::SetUp();
        jobs.push_back(sample->job);
        while (jobs.size() < jobCount)
            jobs.push_back(committed(*garage, [&](Transaction &transaction) {
                return insertJob(transaction, {sample->vehicle, sample->engine, "Other", Moment{20}, {}});
            }));
        const Engine worked = engine(*garage, sample->engine).value();
        for (const JobId id : jobs)
            frames.push_back(std::make_shared<JobFrame>(JobFrame{job(*garage, id).value(),
                                                                 vehicle(*garage, sample->vehicle).value(),
                                                                 worked,
                                                                 {},
                                                                 specs(*garage, sample->engine).value(),
                                                                 {},
                                                                 people(*garage).value(),
                                                                 tools(*garage).value()}));
    }

    ActSeq log(std::size_t job, Fact fact, std::optional<ActSeq> withdraws = {})
    {
        NewAct act = actOf(*sample, "uid " + std::to_string(all.size()), std::move(fact));
        act.job = jobs[job];
        act.at = Moment{static_cast<std::int64_t>(all.size())};
        act.withdraws = withdraws;
        const ActSeq seq = stored(act);
        all.push_back({seq, act});
        return seq;
    }
    ActSeq crank(std::size_t job, int at) { return log(job, CrankFact{sample->engine, degrees(at), CrankHow::Confirmed}); }
    ActSeq withdraw(std::size_t job, ActSeq what) { return log(job, WithdrawFact{}, what); }

    [[nodiscard]] JobState read(std::size_t job) const { return fold(frames[job], jobActs(*garage, jobs[job], sample->engine).value()); }
    [[nodiscard]] std::vector<Act> others(std::size_t job) const { return newestAtPoints(*garage, sample->points, jobs[job]).value(); }
    /// What acts come to as if all were of one job.
    [[nodiscard]] JobState asOne(std::size_t job, std::vector<Act> acts) const
    {
        for (Act &act : acts)
            act.what.job = jobs[job];
        return fold(frames[job], acts);
    }

    std::vector<JobId> jobs;
    std::vector<std::shared_ptr<const JobFrame>> frames;
    std::vector<Act> all;
};

TEST_F(Newest, OfTheCrankOnlyTheLastMoveInForceIsRead)
{
    for (int turn = 0; turn < 30; ++turn)
        crank(1, turn);
    const ActSeq last = crank(1, 90);
    EXPECT_EQ(acts().size(), 1U);
    EXPECT_EQ(read(0).crank->crank, degrees(90));
    const ActSeq taken = withdraw(1, last);
    EXPECT_EQ(read(0).crank->crank, degrees(29));
    EXPECT_EQ(acts().size(), 3U) << "the one before, the one taken back and what took it back";
    withdraw(1, taken);
    EXPECT_EQ(read(0).crank->crank, degrees(90));
    EXPECT_EQ(read(1).acts.size(), 33U) << "a job has all its own";
}

TEST_F(Newest, OfAPointItIsReadBackToTheActThatOpenedOrLeftIt)
{
    for (int time = 0; time < 20; ++time) {
        log(1, NutOpenFact{sample->points[0]});
        ReadingFact left = readingOf(*sample, 0, 18);
        left.phase = Phase::AsLeft;
        log(1, left);
    }
    EXPECT_EQ(others(0).size(), 2U) << "the last that opened it, and the last that left it";
    EXPECT_TRUE(openNuts(asOne(0, others(0))).empty());
    const ActSeq opened = log(2, NutOpenFact{sample->points[0]});
    EXPECT_EQ(others(0).size(), 2U);
    EXPECT_EQ(openNuts(asOne(0, others(0))), std::vector{sample->points[0]});
    EXPECT_TRUE(openNuts(asOne(2, others(2))).empty()) << "what the job itself did is none of others'";
    withdraw(2, opened);
    EXPECT_EQ(others(0).size(), 4U);
    EXPECT_TRUE(openNuts(asOne(0, others(0))).empty());
}

/// Against the whole journal folded at once.
TEST_F(Newest, ComesToTheSameAsTheWholeJournal)
{
    std::mt19937 dice(20'261'201);
    const auto draw = [&dice](std::size_t count) { return std::uniform_int_distribution<std::size_t>(0, count - 1)(dice); };
    ActSeq seen(0);
    for (int step = 0; step < 300; ++step) {
        const std::size_t job = draw(jobCount);
        const std::size_t point = draw(2);
        switch (draw(5)) {
        case 0: crank(job, static_cast<int>(draw(720))); break;
        case 1: log(job, NutOpenFact{sample->points[point]}); break;
        case 2: {
            ReadingFact reading = readingOf(*sample, point, 18);
            reading.phase = draw(2) == 0 ? Phase::AsFound : Phase::AsLeft;
            log(job, reading);
            break;
        }
        default: {
            // Of the same job, and not withdrawn yet.
            const auto target = std::find_if(all.rbegin(), all.rend(), [&](const Act &act) {
                return act.what.job == jobs[job] &&
                       std::ranges::none_of(all, [&](const Act &other) { return other.what.withdraws == act.seq; });
            });
            if (target != all.rend())
                withdraw(job, target->seq);
        }
        }
        for (std::size_t looking = 0; looking < jobCount; ++looking) {
            SCOPED_TRACE("step " + std::to_string(step) + ", job " + std::to_string(looking));
            std::vector<Act> elsewhere;
            std::ranges::copy_if(all, std::back_inserter(elsewhere), [&](const Act &act) { return act.what.job != jobs[looking]; });
            const JobState whole = asOne(looking, all);
            const JobState state = read(looking);
            ASSERT_EQ(state.crank ? state.crank->seq : ActSeq(0), whole.crank ? whole.crank->seq : ActSeq(0));
            const JobState theirs = asOne(looking, elsewhere);
            const JobState newest = asOne(looking, others(looking));
            ASSERT_EQ(openNuts(newest), openNuts(theirs));
            for (const PointId id : sample->points)
                ASSERT_EQ(newest.point(id).left, theirs.point(id).left);
        }
        const auto since = actsAfter(*garage, seen, jobs[0], sample->engine).value();
        for (const Act &act : since)
            ASSERT_TRUE(seen < act.seq);
        seen = all.empty() ? seen : all.back().seq;
    }
}

} // namespace newest_tests
} // namespace asleft
