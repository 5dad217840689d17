// What stands between now and each of the three gates.
#include "story.h"

namespace asleft {
namespace still_open_tests {

using Kind = OpenItem::Kind;

/// Long after everything was done: no wait is left.
StillOpen openOf(const JobState &state)
{
    return stillOpen(state, Moment{1'000'000'000});
}

std::vector<Kind> kinds(const std::vector<OpenItem> &items)
{
    std::vector<Kind> found(items.size());
    std::ranges::transform(items, found.begin(), &OpenItem::kind);
    return found;
}

std::vector<OpenItem> ofKind(Kind kind, std::vector<OpenItem> items)
{
    std::erase_if(items, [kind](const OpenItem &item) { return item.kind != kind; });
    return items;
}

/// Every line of the job done and every point left inside its band.
Story finished()
{
    Story story;
    for (const int step : {1, 2, 4, 5})
        story.done(step);
    story.leaveInside({"I1", "E1", "I2", "E2", "I3", "E3", "I4", "E4"});
    return story;
}

TEST(StillOpen, AJobNotBegunHasItsLinesAndItsPoints)
{
    const StillOpen open = openOf(Story().state());
    const StillOpen wanted{
        .turning = {{.kind = Kind::StepUndone, .step = StepId(1)}},
        .firstStart = {{.kind = Kind::PointsNotLeft, .count = 8},
                       {.kind = Kind::StepUndone, .step = StepId(2)},
                       {.kind = Kind::StepUndone, .step = StepId(4)}},
        .handOver = {{.kind = Kind::StepUndone, .step = StepId(5)}},
    };
    EXPECT_EQ(open, wanted);
}

TEST(StillOpen, AFinishedJobHasNothing)
{
    EXPECT_EQ(openOf(finished().state()), StillOpen{});
}

TEST(StillOpen, AnOpenNutStandsBeforeTurningAndItsPointBeforeFirstStart)
{
    Story story = finished();
    story.clock = 5000;
    story.nutOpen("E2");
    const StillOpen open = openOf(story.state());
    const StillOpen wanted{
        .turning = {{.kind = Kind::NutOpen, .point = story.at("E2"), .since = Moment{5000}}},
        .firstStart = {{.kind = Kind::PointsNotLeft, .count = 1}},
        .handOver = {},
    };
    EXPECT_EQ(open, wanted);
}

TEST(StillOpen, PointsNotLeftAreUntouchedFoundNutOpenOrToCheckAgain)
{
    Story story;
    story.found("I1", "0.20 mm");
    story.nutOpen("I2");
    story.leaveInside({"I3", "I4", "E1"});
    story.checkAgain({story.at("I3")});
    const auto items = ofKind(Kind::PointsNotLeft, openOf(story.state()).firstStart);
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(items[0].count, 6);
}

TEST(StillOpen, AJobWithoutAValveSetAsksForNoPoints)
{
    Story story;
    std::erase_if(story.frame.job.steps, [](const Step &step) { return step.kind == StepKind::ValveSet; });
    EXPECT_EQ(kinds(openOf(story.state()).firstStart), (std::vector{Kind::StepUndone, Kind::StepUndone}));
}

TEST(StillOpen, OutOfBandUntilItIsSetAnewAndStillWhenKept)
{
    Story story = finished();
    const ActSeq low = story.left("I1", "0.20 mm");
    const ActSeq at = story.left("E1", "0.50 mm");
    story.keep(at, "E1");
    const std::vector<OpenItem> wanted{
        {.kind = Kind::OutOfBand, .point = story.at("I1"), .since = story.acts[static_cast<std::size_t>(low.key() - 1)].what.at},
        {.kind = Kind::OutOfBand,
         .point = story.at("E1"),
         .since = story.acts[static_cast<std::size_t>(at.key() - 1)].what.at,
         .kept = true},
    };
    EXPECT_EQ(openOf(story.state()).firstStart, wanted);
    story.leaveInside({"I1", "E1"});
    EXPECT_EQ(openOf(story.state()), StillOpen{});
}

TEST(StillOpen, TooClose)
{
    Story story = finished();
    ReadingFact bracket = story.reading("I1", Phase::AsLeft, "0.30 mm");
    bracket.form = ReadingForm::Bracket;
    bracket.next = length("0.40 mm");
    const ActSeq seq = story.log(bracket);
    const auto items = openOf(story.state()).firstStart;
    ASSERT_EQ(kinds(items), std::vector{Kind::TooClose});
    EXPECT_EQ(items[0].point, story.at("I1"));
    EXPECT_FALSE(items[0].kept);
    story.keep(seq, "I1");
    EXPECT_TRUE(openOf(story.state()).firstStart.at(0).kept);
}

TEST(StillOpen, WhatWasFoundOutsideIsNotOpen)
{
    Story story = finished();
    story.found("I1", "0.10 mm");
    EXPECT_EQ(openOf(story.state()), StillOpen{});
}

TEST(StillOpen, ARevisedSpecOpensAnItemUntilThePointIsLeftByTheNewOne)
{
    Story story = finished();
    story.found("I1", "0.10 mm");
    story.frame.specs.push_back(lash(SpecId(3), SpecSubject::IntakeLash, bands("0.28 ± 0.05 mm"), 2));
    const std::vector<OpenItem> four{{.kind = Kind::SpecRevised, .count = 4}};
    EXPECT_EQ(openOf(story.state()).firstStart, four) << "four intakes; exhausts have their own spec";

    story.leaveInside({"I1", "I2"});
    EXPECT_EQ(openOf(story.state()).firstStart.at(0).count, 2) << "what was found stays judged by the old one and is past";
    story.leaveInside({"I3", "I4"});
    EXPECT_EQ(openOf(story.state()), StillOpen{});
}

TEST(StillOpen, ARevisedSpecOpensAnItemForAPointFoundOnly)
{
    Story story;
    story.found("I1", "0.10 mm");
    story.frame.specs.push_back(lash(SpecId(3), SpecSubject::IntakeLash, bands("0.28 ± 0.05 mm"), 2));
    EXPECT_EQ(ofKind(Kind::SpecRevised, openOf(story.state()).firstStart), (std::vector<OpenItem>{{.kind = Kind::SpecRevised}}));
}

struct HandOverCase {
    const char *name;
    Kind kind;
    void (*leave)(ReadingFact &);
};

class HandOver : public testing::TestWithParam<HandOverCase> {};

TEST_P(HandOver, CountsThePointsLeftThatWayAndNoOthers)
{
    Story story = finished();
    for (const std::string_view point : {"I1", "E2"}) {
        ReadingFact reading = story.reading(point, Phase::AsLeft, "0.35 mm");
        GetParam().leave(reading);
        story.log(reading);
    }
    ReadingFact found = story.reading("I3", Phase::AsFound, "0.35 mm");
    GetParam().leave(found);
    story.log(found);
    const StillOpen wanted{.turning = {}, .firstStart = {}, .handOver = {{.kind = GetParam().kind, .count = 2}}};
    EXPECT_EQ(openOf(story.state()), wanted);

    story.checkAgain({story.at("I1")});
    EXPECT_EQ(openOf(story.state()).handOver, (std::vector<OpenItem>{{.kind = GetParam().kind, .count = 1}}))
        << "a point to check again is not left any more";
}

INSTANTIATE_TEST_SUITE_P(All, HandOver,
                         testing::Values(HandOverCase{"NoSpecYet", Kind::NoSpecYet, [](ReadingFact &r) { r.judgedBy.reset(); }},
                                         HandOverCase{"NotComparable", Kind::NotComparable,
                                                      [](ReadingFact &r) { r.condition = EngineCondition::Hot; }},
                                         HandOverCase{"ByFeel", Kind::ByFeel,
                                                      [](ReadingFact &r) {
                                                          r.form = ReadingForm::ByFeel;
                                                          r.value.reset();
                                                      }},
                                         HandOverCase{"OutOfPlace", Kind::OutOfPosition, [](ReadingFact &r) { r.outOfPosition = true; }}),
                         [](const auto &tested) { return tested.param.name; });

TEST(StillOpen, AnUnsureSpecThatJudgedSomething)
{
    for (const Certainty certainty : {Certainty::ToldByPerson, Certainty::FromMemory, Certainty::Assumed}) {
        Story story = finished();
        story.frame.specs[1].source.certainty = certainty;
        const std::vector<OpenItem> wanted{{.kind = Kind::SpecUnsure, .spec = exhaustSpec}};
        EXPECT_EQ(openOf(story.state()).handOver, wanted);
    }
    Story notUsed;
    notUsed.frame.specs[1].source.certainty = Certainty::FromMemory;
    EXPECT_TRUE(ofKind(Kind::SpecUnsure, openOf(notUsed.state()).handOver).empty());
}

TEST(StillOpen, AnAssumedToleranceOfTheBandThatJudged)
{
    Story story = finished();
    story.frame.specs[0].asked = bands("0.30 mm", ".012 ± .002 in");
    const std::vector<OpenItem> wanted{{.kind = Kind::ToleranceAssumed, .spec = intakeSpec}};
    EXPECT_EQ(openOf(story.state()).handOver, wanted);

    for (const std::string_view point : {"I1", "I2", "I3", "I4"})
        story.left(point, ".012 in");
    EXPECT_EQ(openOf(story.state()), StillOpen{}) << "the inch band has limits of its own";

    story.frame.specs[0].asked = bands("0.30 ± 0.05 mm", ".012 in");
    EXPECT_EQ(openOf(story.state()).handOver, wanted);
}

} // namespace still_open_tests
} // namespace asleft
