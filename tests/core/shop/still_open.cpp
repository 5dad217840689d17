// What stands between now and each of the three gates.
#include "kinds.h"
#include "story.h"

namespace asleft {
namespace still_open_tests {

/// Long after everything was done: no wait is left.
StillOpen openOf(const JobState &state)
{
    return stillOpen(state, Moment{1'000'000'000});
}

std::vector<PointId> pointsOf(const Story &story, const std::vector<std::string_view> &names)
{
    std::vector<PointId> points;
    for (const std::string_view name : names)
        points.push_back(story.at(name));
    return points;
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
    const Story story;
    const auto all = pointsOf(story, {"I1", "E1", "I2", "E2", "I3", "E3", "I4", "E4"});
    const StillOpen wanted{
        .turning = {open::StepUndone{StepId(1)}},
        .firstStart = {open::PointsNotLeft{all}, open::StepUndone{StepId(2)}, open::StepUndone{StepId(4)}},
        .handOver = {open::StepUndone{StepId(5)}},
    };
    EXPECT_EQ(openOf(story.state()), wanted);
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
    const StillOpen wanted{
        .turning = {open::NutOpen{story.at("E2"), Moment{5000}}},
        .firstStart = {open::PointsNotLeft{pointsOf(story, {"E2"})}},
        .handOver = {},
    };
    EXPECT_EQ(openOf(story.state()), wanted);
}

TEST(StillOpen, PointsNotLeftAreUntouchedFoundNutOpenOrToCheckAgain)
{
    Story story;
    story.found("I1", "0.20 mm");
    story.nutOpen("I2");
    story.leaveInside({"I3", "I4", "E1"});
    story.checkAgain({story.at("I3")});
    const auto items = ofKind<open::PointsNotLeft>(openOf(story.state()).firstStart);
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(items[0].count(), 6);
    EXPECT_EQ(items[0].points, pointsOf(story, {"I1", "I2", "E2", "I3", "E3", "E4"}));
}

TEST(StillOpen, AJobWithoutAValveSetAsksForNoPoints)
{
    Story story;
    std::erase_if(story.frame.job.steps, [](const Step &step) { return step.kind == StepKind::ValveSet; });
    EXPECT_TRUE((areOf<open::StepUndone, open::StepUndone>(openOf(story.state()).firstStart)));
}

TEST(StillOpen, OutOfBandUntilItIsSetAnewAndStillWhenKept)
{
    Story story = finished();
    story.left("I1", "0.20 mm");
    const ActSeq at = story.left("E1", "0.50 mm");
    story.keep(at, "E1");
    const std::vector<OpenItem> wanted{
        open::OutOfBand{story.at("I1"), Verdict::Low, std::nullopt},
        open::OutOfBand{story.at("E1"), Verdict::High, "worn seat"},
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
    EXPECT_EQ(items, (std::vector<OpenItem>{open::TooClose{story.at("I1"), std::nullopt}}));
    story.keep(seq, "I1");
    EXPECT_TRUE(std::get<open::TooClose>(openOf(story.state()).firstStart.at(0)).kept);
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
    story.frame.specs.push_back(specOf(SpecId(3), SpecSubject::IntakeLash, bands("0.28 ± 0.05 mm")));
    story.frame.specs.back().revision = 2;
    const std::vector<OpenItem> four{open::SpecRevised{pointsOf(story, {"I1", "I2", "I3", "I4"})}};
    EXPECT_EQ(openOf(story.state()).firstStart, four) << "four intakes; exhausts have their own spec";

    story.leaveInside({"I1", "I2"});
    EXPECT_EQ(ofKind<open::SpecRevised>(openOf(story.state()).firstStart).at(0).points, pointsOf(story, {"I3", "I4"}))
        << "what was found stays judged by the old one and is past";
    story.leaveInside({"I3", "I4"});
    EXPECT_EQ(openOf(story.state()), StillOpen{});
}

TEST(StillOpen, ARevisedSpecOpensAnItemForAPointFoundOnly)
{
    Story story;
    story.found("I1", "0.10 mm");
    story.frame.specs.push_back(specOf(SpecId(3), SpecSubject::IntakeLash, bands("0.28 ± 0.05 mm")));
    story.frame.specs.back().revision = 2;
    EXPECT_EQ(ofKind<open::SpecRevised>(openOf(story.state()).firstStart), (std::vector{open::SpecRevised{pointsOf(story, {"I1"})}}));
}

template <class Kind>
OpenItem ofPoints(std::vector<PointId> points)
{
    return Kind{std::move(points)};
}

struct HandOverCase {
    const char *name;
    OpenItem (*item)(std::vector<PointId> points);
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
    const StillOpen wanted{.turning = {}, .firstStart = {}, .handOver = {GetParam().item(pointsOf(story, {"I1", "E2"}))}};
    EXPECT_EQ(openOf(story.state()), wanted);

    story.checkAgain({story.at("I1")});
    EXPECT_EQ(openOf(story.state()).handOver, std::vector{GetParam().item(pointsOf(story, {"E2"}))})
        << "a point to check again is not left any more";
}

INSTANTIATE_TEST_SUITE_P(All, HandOver,
                         testing::Values(HandOverCase{"NoSpecYet", ofPoints<open::NoSpecYet>, [](ReadingFact &r) { r.judgedBy.reset(); }},
                                         HandOverCase{"NotComparable", ofPoints<open::NotComparable>,
                                                      [](ReadingFact &r) { r.condition = EngineCondition::Hot; }},
                                         HandOverCase{"ByFeel", ofPoints<open::ByFeel>,
                                                      [](ReadingFact &r) {
                                                          r.form = ReadingForm::ByFeel;
                                                          r.value.reset();
                                                      }},
                                         HandOverCase{"OutOfPlace", ofPoints<open::OutOfPosition>,
                                                      [](ReadingFact &r) { r.outOfPosition = true; }}),
                         [](const auto &tested) { return tested.param.name; });

TEST(StillOpen, AnUnsureSpecThatJudgedSomething)
{
    for (const Certainty certainty : {Certainty::ToldByPerson, Certainty::FromMemory, Certainty::Assumed}) {
        Story story = finished();
        story.frame.specs[1].source.certainty = certainty;
        const std::vector<OpenItem> wanted{open::SpecUnsure{exhaustSpec}};
        EXPECT_EQ(openOf(story.state()).handOver, wanted);
    }
    Story notUsed;
    notUsed.frame.specs[1].source.certainty = Certainty::FromMemory;
    EXPECT_TRUE(ofKind<open::SpecUnsure>(openOf(notUsed.state()).handOver).empty());
}

TEST(StillOpen, AnAssumedToleranceOfTheBandThatJudged)
{
    Story story = finished();
    story.frame.specs[0].asked = bands("0.30 mm", ".012 ± .002 in");
    const std::vector<OpenItem> wanted{open::ToleranceAssumed{intakeSpec}};
    EXPECT_EQ(openOf(story.state()).handOver, wanted);

    for (const std::string_view point : {"I1", "I2", "I3", "I4"})
        story.left(point, ".012 in");
    EXPECT_EQ(openOf(story.state()), StillOpen{}) << "the inch band has limits of its own";

    story.frame.specs[0].asked = bands("0.30 ± 0.05 mm", ".012 in");
    EXPECT_EQ(openOf(story.state()).handOver, wanted);
}

TEST(SubjectOf, OfSeveralPointsTheFirstOfASpecNothing)
{
    const Story story;
    EXPECT_EQ(subjectOf(open::SetByTwo{story.at("E2")}), Subject(story.at("E2")));
    EXPECT_EQ(subjectOf(open::ByFeel{pointsOf(story, {"I3", "E1"})}), Subject(story.at("I3")));
    EXPECT_EQ(subjectOf(open::StepUndone{StepId(2)}), Subject(StepId(2)));
    EXPECT_EQ(subjectOf(open::FastenersLoose{JointId(3), 4}), Subject(FastenerSubject{JointId(3)}));
    EXPECT_EQ(subjectOf(open::TorqueOutside{JointId(3), 7}), Subject(FastenerSubject{JointId(3), {7}}));
    EXPECT_EQ(subjectOf(open::SpecUnsure{exhaustSpec}), std::nullopt);
    EXPECT_EQ(subjectOf(open::BleedingDown{Moment{5000}}), std::nullopt);
}

} // namespace still_open_tests
} // namespace asleft
