// Hydraulic tappets: turned on from zero lash or set by their collapsed clearance, and left to bleed down before the crank is turned.
#include "kinds.h"
#include "story.h"

namespace asleft {
namespace hydraulic_tests {

constexpr std::int64_t minute = 60'000;

Story hydraulic()
{
    Story story(hydraulicFrame());
    story.clock = 10 * minute;
    return story;
}

std::vector<open::BleedingDown> bleedingAt(const Story &story, std::int64_t now)
{
    return ofKind<open::BleedingDown>(stillOpen(story.state(), Moment{now}).turning);
}

TEST(Turned, IsJudgedByTheTurnsTheSpecAsks)
{
    Story story = hydraulic();
    story.log(story.turned("I1", Phase::AsLeft, "3/4"));
    story.log(story.turned("I2", Phase::AsLeft, "1/2 turn"));
    story.log(story.turned("I3", Phase::AsLeft, "360°"));
    EXPECT_EQ(story.point("I1").left->verdict, Verdict::Inside);
    EXPECT_TRUE(story.point("I1").settled());
    EXPECT_EQ(story.point("I2").left->verdict, Verdict::Low);
    EXPECT_FALSE(story.point("I2").settled());
    EXPECT_EQ(story.point("I3").left->verdict, Verdict::High);
}

TEST(Turned, AndLengthsAreNotComparable)
{
    Story story = hydraulic();
    story.left("I1", "0.30 mm");
    EXPECT_EQ(story.point("I1").left->verdict, Verdict::NotComparable);
    story.log(story.turned("E1", Phase::AsLeft, "3/4"));
    EXPECT_EQ(story.point("E1").left->verdict, Verdict::NotComparable);
    story.left("E2", "0.40 mm");
    EXPECT_EQ(story.point("E2").left->verdict, Verdict::Inside) << "a collapsed clearance is a length";
    const auto notComparable = ofKind<open::NotComparable>(stillOpen(story.state(), Moment{60 * minute}).handOver);
    EXPECT_EQ(notComparable, (std::vector{open::NotComparable{std::vector{story.at("I1"), story.at("E1")}}}));
}

TEST(Turned, AssumedToleranceIsSaid)
{
    Story story = hydraulic();
    story.frame.specs[0].asked = turnBands("3/4 turn");
    story.log(story.turned("I1", Phase::AsLeft, "0.8"));
    EXPECT_EQ(story.point("I1").left->verdict, Verdict::Inside) << "ten percent";
    const OpenItem assumed = open::ToleranceAssumed{intakeSpec};
    const auto handOver = stillOpen(story.state(), Moment{60 * minute}).handOver;
    EXPECT_NE(std::ranges::find(handOver, assumed), handOver.end());
    story.frame.specs[0].asked = turnBands("3/4 ± 1/8 turn");
    const auto without = stillOpen(story.state(), Moment{60 * minute}).handOver;
    EXPECT_EQ(std::ranges::find(without, assumed), without.end());
}

TEST(BleedDown, FromTheLastTappetSet)
{
    Story story = hydraulic();
    EXPECT_FALSE(bleedDownUntil(story.state()));
    story.found("I1", "0.30 mm");
    story.nutOpen("I1");
    story.crank(0);
    EXPECT_FALSE(bleedDownUntil(story.state())) << "nothing was set";
    story.clock = 20 * minute;
    story.log(story.turned("I1", Phase::AsLeft, "3/4"));
    EXPECT_EQ(bleedDownUntil(story.state()), Moment{35 * minute});
    story.clock = 24 * minute;
    const ActSeq clearance = story.left("E1", "0.40 mm");
    EXPECT_EQ(bleedDownUntil(story.state()), Moment{39 * minute});
    story.withdraw(clearance);
    EXPECT_EQ(bleedDownUntil(story.state()), Moment{35 * minute}) << "what was taken back was not done";
    story.clock = 26 * minute;
    story.log(AllLeftFact{{story.turned("I2", Phase::AsLeft, "3/4"), story.reading("E2", Phase::AsLeft, "0.40 mm")}});
    EXPECT_EQ(bleedDownUntil(story.state()), Moment{41 * minute});
}

TEST(BleedDown, TheClockNotTheOrderOfTheJournalSaysWhichIsLast)
{
    Story story = hydraulic();
    story.clock = 30 * minute;
    story.left("E1", "0.40 mm");
    story.clock = 20 * minute; // a sheet filled in before, typed after
    story.left("E2", "0.40 mm");
    EXPECT_EQ(bleedDownUntil(story.state()), Moment{45 * minute});
}

TEST(BleedDown, ACorrectionDoesNotBeginItAnew)
{
    Story story = hydraulic();
    const ActSeq left = story.left("E1", "0.50 mm");
    story.clock = 50 * minute;
    const ActSeq corrected = story.correct(left, "E1", Phase::AsLeft, "0.40 mm");
    EXPECT_EQ(bleedDownUntil(story.state()), Moment{25 * minute});
    story.correct(corrected, "E1", Phase::AsLeft, "0.42 mm");
    EXPECT_EQ(bleedDownUntil(story.state()), Moment{25 * minute}) << "nor does one of a correction";
    EXPECT_EQ(story.point("E1").left->at, Moment{50 * minute + 1});

    const ActSeq all =
        story.log(AllLeftFact{{story.reading("E2", Phase::AsLeft, "0.40 mm"), story.reading("E3", Phase::AsLeft, "0.40 mm")}});
    story.clock = 90 * minute;
    story.correct(all, "E3", Phase::AsLeft, "0.41 mm");
    EXPECT_EQ(bleedDownUntil(story.state()), Moment{65 * minute + 2}) << "of one of several left at a stroke";
}

TEST(BleedDown, NothingForScrewsOrWithoutAWait)
{
    Story story = hydraulic();
    story.left("E1", "0.40 mm");
    story.log(story.turned("I1", Phase::AsLeft, "3/4"));
    ASSERT_TRUE(bleedDownUntil(story.state()));
    story.frame.engine.bleedDown.reset();
    EXPECT_FALSE(bleedDownUntil(story.state()));
    story.frame.engine.bleedDown = std::chrono::minutes(15);
    story.frame.engine.screw.kind = AdjusterKind::Screw;
    EXPECT_FALSE(bleedDownUntil(story.state()));
}

TEST(BleedDown, OnlyTappetsBleedDown)
{
    JobFrame frame = bridgedFrame();
    frame.engine.screw.kind = AdjusterKind::Hydraulic;
    frame.engine.bleedDown = std::chrono::minutes(15);
    Story story(frame);
    for (const std::string_view screw : {"BI1", "J1", "D1"})
        story.left(screw, "0.07 mm");
    EXPECT_FALSE(bleedDownUntil(story.state())) << "no oil under these screws";
    story.clock = 10 * minute;
    story.left("I1", "0.30 mm");
    EXPECT_EQ(bleedDownUntil(story.state()), Moment{25 * minute});
}

TEST(BleedDown, IsOpenBeforeTurningUntilItIsOver)
{
    Story story = hydraulic();
    story.log(story.turned("I1", Phase::AsLeft, "3/4"));
    const std::vector wanted{open::BleedingDown{Moment{25 * minute}}};
    EXPECT_EQ(bleedingAt(story, 10 * minute), wanted);
    EXPECT_EQ(bleedingAt(story, 25 * minute - 1), wanted);
    EXPECT_TRUE(bleedingAt(story, 25 * minute).empty());
    EXPECT_TRUE(bleedingAt(story, 26 * minute).empty());
}

TEST(LeftHere, WithTheTurnsTheSpecAsks)
{
    Story story = hydraulic();
    story.twoPositions();
    story.crank(0);
    const auto can = [&](std::string_view name) { return canBeLeftHere(story.state(), *story.frame.point(story.at(name))); };
    EXPECT_TRUE(can("I1"));
    EXPECT_TRUE(can("E1"));
    story.log(story.turned("I1", Phase::AsLeft, "3/4"));
    EXPECT_FALSE(can("I1")) << "it is settled";
    std::erase_if(story.frame.specs, [](const Spec &spec) { return spec.subject == SpecSubject::IntakeLash; });
    EXPECT_FALSE(can("I2"));
}

} // namespace hydraulic_tests
} // namespace asleft
