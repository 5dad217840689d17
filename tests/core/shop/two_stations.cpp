// Two people at two computers set the same point, each not knowing of the other.
#include "kinds.h"
#include "story.h"

namespace asleft {
namespace two_stations_tests {

class AtStations : public Story {
public:
    AtStations() = default;
    explicit AtStations(JobFrame told) : Story(std::move(told)) {}

    ActSeq leftAt(std::string_view where, std::string_view value = "0.30 mm")
    {
        station = where;
        return left("I1", value);
    }
    ActSeq correctAt(std::string_view where, ActSeq wrong, std::string_view value)
    {
        station = where;
        return correct(wrong, "I1", Phase::AsLeft, value);
    }
    /// The reading in doubt, if there is one.
    [[nodiscard]] std::optional<ActSeq> doubted() const
    {
        const auto &byTwo = point("I1").leftByTwo;
        return byTwo ? std::optional(byTwo->seq) : std::nullopt;
    }
    [[nodiscard]] std::vector<open::SetByTwo> byTwo() const
    {
        return ofKind<open::SetByTwo>(stillOpen(state(), Moment{1'000'000'000}).firstStart);
    }
};

TEST(LeftByTwo, OneOnTopOfTheOther)
{
    AtStations story;
    const ActSeq first = story.leftAt("bench");
    EXPECT_FALSE(story.doubted());
    const ActSeq second = story.leftAt("office", "0.32 mm");
    EXPECT_EQ(story.doubted(), first);
    const PointState point = story.point("I1");
    EXPECT_EQ(point.left->seq, second);
    EXPECT_EQ(point.left->station, "office");
    EXPECT_EQ(point.leftByTwo->station, "bench");
    EXPECT_EQ(point.stage, PointStage::Left);
    EXPECT_FALSE(point.settled());
    EXPECT_TRUE(is<next::SetOrKeep>(pointAct(story.state(), story.at("I1"))));
    EXPECT_EQ(story.byTwo(), std::vector{open::SetByTwo{story.at("I1")}});
}

TEST(LeftByTwo, ByOneStrokeToo)
{
    AtStations story;
    const ActSeq first = story.leftAt("bench");
    story.station = "office";
    story.log(AllLeftFact{{story.reading("I1", Phase::AsLeft, "0.30 mm"), story.reading("I2", Phase::AsLeft, "0.30 mm")}});
    EXPECT_EQ(story.doubted(), first);
    EXPECT_FALSE(story.point("I2").leftByTwo);
}

TEST(LeftByTwo, NotByOneSeatAlone)
{
    AtStations story;
    story.leftAt("bench");
    story.leftAt("bench", "0.33 mm");
    EXPECT_FALSE(story.doubted());
    EXPECT_TRUE(story.point("I1").settled());
}

TEST(LeftByTwo, NotAfterSomethingWasOpenedOrAskedFor)
{
    for (const bool opened : {true, false}) {
        AtStations story;
        story.leftAt("bench");
        opened ? story.nutOpen("I1") : story.checkAgain({story.at("I1")});
        story.leftAt("office");
        EXPECT_FALSE(story.doubted()) << opened;
        EXPECT_TRUE(story.point("I1").settled()) << opened;
    }
}

TEST(LeftByTwo, WhatWasFoundIsNotSet)
{
    AtStations story;
    story.found("I1", "0.20 mm");
    story.leftAt("office");
    EXPECT_FALSE(story.doubted());
    story.station = "bench";
    story.found("I1", "0.20 mm");
    EXPECT_FALSE(story.doubted());
}

TEST(LeftByTwo, ASeatThatCorrectedAReadingKnowsOfIt)
{
    AtStations story;
    const ActSeq first = story.leftAt("bench", "0.50 mm");
    story.correctAt("office", first, "0.30 mm");
    EXPECT_FALSE(story.doubted()) << "a correction is no second setting";
    story.leftAt("office");
    EXPECT_FALSE(story.doubted()) << "it knew";

    AtStations other;
    const ActSeq theirs = other.leftAt("bench", "0.50 mm");
    const ActSeq mended = other.correctAt("bench", theirs, "0.30 mm");
    other.leftAt("office");
    EXPECT_EQ(other.doubted(), mended) << "mended at its own seat, the office still knew nothing";

    AtStations back;
    back.correctAt("office", back.leftAt("bench", "0.50 mm"), "0.30 mm");
    back.leftAt("bench");
    EXPECT_FALSE(back.doubted()) << "the bench had set it itself, whoever mended the writing";
}

TEST(LeftByTwo, SettledOnceItIsKept)
{
    AtStations story;
    story.leftAt("bench");
    const ActSeq second = story.leftAt("office");
    story.keep(second, "I1");
    EXPECT_FALSE(story.doubted());
    EXPECT_TRUE(story.byTwo().empty());
    EXPECT_TRUE(story.point("I1").settled());
    EXPECT_EQ(story.point("I1").kept, "worn seat");
}

TEST(LeftByTwo, AKeepOfThePastReadingSettlesNothing)
{
    AtStations story;
    const ActSeq first = story.leftAt("bench", "0.60 mm");
    story.leftAt("office");
    story.keep(first, "I1");
    EXPECT_EQ(story.doubted(), first);
}

TEST(LeftByTwo, SettledOnceItIsOpenedOrToCheckAgain)
{
    for (const bool opened : {true, false}) {
        AtStations story;
        story.leftAt("bench");
        story.leftAt("office");
        opened ? story.nutOpen("I1") : story.checkAgain({story.at("I1")});
        EXPECT_FALSE(story.doubted());
        EXPECT_TRUE(story.byTwo().empty());
    }
}

TEST(LeftByTwo, SettledOnceOneOfTheTwoSetsItOnceMore)
{
    for (const std::string_view station : {"bench", "office"}) {
        AtStations story;
        story.leftAt("bench");
        story.leftAt("office");
        story.leftAt(station);
        EXPECT_FALSE(story.doubted()) << station;
        EXPECT_TRUE(story.point("I1").settled()) << station;
    }
}

TEST(LeftByTwo, AThirdSeatOnTopIsAnotherDoubt)
{
    AtStations story;
    story.leftAt("bench");
    const ActSeq second = story.leftAt("office");
    story.leftAt("shed");
    EXPECT_EQ(story.doubted(), second);
}

TEST(LeftByTwo, ACorrectionAtTheOtherSeatSettlesIt)
{
    AtStations story;
    const ActSeq first = story.leftAt("bench");
    const ActSeq second = story.leftAt("office", "0.50 mm");
    const ActSeq mended = story.correctAt("office", second, "0.31 mm");
    EXPECT_EQ(story.doubted(), first) << "mending a slip at its own seat shows no sign of knowing";
    story.correctAt("shed", mended, "0.32 mm");
    EXPECT_EQ(story.doubted(), first) << "nor does a third seat's word";
    const ActSeq now = story.point("I1").left->seq;
    story.correctAt("bench", now, "0.33 mm");
    EXPECT_FALSE(story.doubted());
    EXPECT_TRUE(story.point("I1").settled());
}

TEST(LeftByTwo, TakenBackWithTheReadingThatRaisedIt)
{
    AtStations story;
    const ActSeq first = story.leftAt("bench");
    const PointState before = story.point("I1");
    const ActSeq second = story.leftAt("office");
    ASSERT_TRUE(restingOn(story.state(), first)) << "the bench cannot take its own back under it";
    story.withdraw(second);
    EXPECT_EQ(story.point("I1"), before);
}

TEST(LeftByTwo, TheBridgeSetAfterItSettlesItToo)
{
    AtStations story(bridgedFrame());
    story.leftAt("bench");
    story.leftAt("office");
    ASSERT_TRUE(story.doubted());
    story.left("BI1", "0.07 mm");
    EXPECT_FALSE(story.doubted()) << "it has to be set again anyway";
}

} // namespace two_stations_tests
} // namespace asleft
