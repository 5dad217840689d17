// Engines with bridged pairs: the screw that seats a bridge goes before the lash of its pair, and undoes it when it is set after.
#include "kinds.h"
#include "story.h"

namespace asleft {
namespace bridges_tests {

Story bridged()
{
    return Story(bridgedFrame());
}

/// Every point at a position it may be set at, the crank at the first.
Story atFirstPosition()
{
    Story story = bridged();
    story.twoPositions();
    story.crank(0);
    return story;
}

std::vector<open::LashBeforeBridge> beforeBridge(const Story &story)
{
    return ofKind<open::LashBeforeBridge>(stillOpen(story.state(), Moment{1'000'000'000}).firstStart);
}

TEST(BridgeOf, IsOfTheSamePair)
{
    const Story story = bridged();
    const auto bridge = [&](std::string_view lash) { return bridgeOf(story.frame, *story.frame.point(story.at(lash))); };
    ASSERT_TRUE(bridge("I3"));
    EXPECT_EQ(bridge("I3")->id, story.at("BI3"));
    EXPECT_EQ(bridge("E1")->id, story.at("BE1"));
    for (const std::string_view other : {"BI3", "D3", "J3"})
        EXPECT_FALSE(bridge(other)) << other;
    EXPECT_FALSE(bridgeOf(usualFrame(), usualFrame().engine.points.front())) << "no bridges";
}

TEST(BridgeOf, TellsThePairsOfOneSideApart)
{
    JobFrame frame = bridgedFrame();
    const AdjusterRef second{Cylinder{1}, Side::Exhaust, PointKind::Lash, 1};
    AdjusterRef screw = second;
    screw.kind = PointKind::BridgeScrew;
    frame.engine.points.push_back({PointId(900), second});
    EXPECT_FALSE(bridgeOf(frame, frame.engine.points.back()));
    frame.engine.points.push_back({PointId(901), screw});
    EXPECT_EQ(bridgeOf(frame, *frame.point(PointId(900)))->id, PointId(901));
}

TEST(BridgeSet, AfterTheLashSendsItToCheckAgain)
{
    Story story = bridged();
    story.left("I2", "0.30 mm");
    story.left("E2", "0.40 mm");
    story.left("BI2", "0.07 mm");
    const PointState lash = story.point("I2");
    EXPECT_EQ(lash.stage, PointStage::CheckAgain);
    EXPECT_EQ(lash.disturbance, Disturbance::BridgeSet);
    EXPECT_TRUE(lash.checkAgainWhy.empty()) << "nobody said anything";
    EXPECT_TRUE(lash.left);
    EXPECT_FALSE(lash.settled());
    EXPECT_EQ(story.point("E2").stage, PointStage::Left) << "the other side's pair stands on another bridge";
    EXPECT_EQ(story.point("BI2").stage, PointStage::Left);

    story.left("I2", "0.30 mm");
    EXPECT_EQ(story.point("I2").stage, PointStage::Left);
    EXPECT_FALSE(story.point("I2").disturbance);
}

TEST(BridgeSet, BeforeTheLashDisturbsNothing)
{
    Story story = bridged();
    story.left("BI2", "0.07 mm");
    story.left("I2", "0.30 mm");
    EXPECT_EQ(story.point("I2").stage, PointStage::Left);
    story.found("BI2", "0.09 mm");
    EXPECT_EQ(story.point("I2").stage, PointStage::Left) << "feeling it moves nothing";
}

TEST(BridgeSet, ACorrectionOfItMovesNothing)
{
    Story story = bridged();
    const ActSeq wrong = story.left("BI2", "0.20 mm");
    story.left("I2", "0.30 mm");
    story.correct(wrong, "BI2", Phase::AsLeft, "0.07 mm");
    EXPECT_EQ(story.point("I2").stage, PointStage::Left);
    EXPECT_EQ(story.point("BI2").left->verdict, Verdict::Inside);
}

TEST(BridgeSet, LeavesALashAloneThatIsNotLeft)
{
    Story story = bridged();
    story.found("I1", "0.20 mm");
    story.nutOpen("I2");
    story.left("I3", "0.30 mm");
    story.checkAgain({story.at("I3")});
    for (const std::string_view bridge : {"BI1", "BI2", "BI3", "BI4"})
        story.left(bridge, "0.07 mm");
    EXPECT_EQ(story.point("I1").stage, PointStage::Found);
    EXPECT_EQ(story.point("I2").stage, PointStage::NutOpen);
    EXPECT_EQ(story.point("I3").disturbance, Disturbance::HeadTightened) << "the first cause stands";
    EXPECT_EQ(story.point("I4"), PointState{});
}

TEST(BridgeSet, AtOneStrokeWithItsLashDisturbsNothing)
{
    Story story = bridged();
    story.log(AllLeftFact{{story.reading("I1", Phase::AsLeft, "0.30 mm"), story.reading("BI1", Phase::AsLeft, "0.07 mm"),
                           story.reading("BI2", Phase::AsLeft, "0.07 mm"), story.reading("I2", Phase::AsLeft, "0.30 mm")}});
    EXPECT_EQ(story.point("I1").stage, PointStage::Left);
    EXPECT_EQ(story.point("I2").stage, PointStage::Left);
    story.log(AllLeftFact{{story.reading("BI1", Phase::AsLeft, "0.08 mm"), story.reading("BI3", Phase::AsLeft, "0.07 mm")}});
    EXPECT_EQ(story.point("I1").disturbance, Disturbance::BridgeSet) << "a stroke of its own";
}

TEST(BridgeSet, TakenBackRestoresTheLash)
{
    Story story = bridged();
    const ActSeq lash = story.left("I2", "0.30 mm");
    const PointState before = story.point("I2");
    const ActSeq bridge = story.left("BI2", "0.07 mm");
    const ActSeq undone = story.withdraw(bridge);
    EXPECT_EQ(story.point("I2"), before);
    story.withdraw(undone);
    EXPECT_EQ(story.point("I2").disturbance, Disturbance::BridgeSet);
    story.withdraw(lash);
    EXPECT_EQ(story.point("I2"), PointState{});
}

TEST(RestingOnABridge, TheLashLeftOverIt)
{
    Story story = bridged();
    const ActSeq before = story.left("I2", "0.30 mm");
    const ActSeq bridge = story.left("BI2", "0.07 mm");
    EXPECT_FALSE(restingOn(story.state(), before)) << "the bridge was set whatever the lash was";
    EXPECT_FALSE(restingOn(story.state(), bridge));
    story.found("I2", "0.28 mm");
    story.left("E2", "0.40 mm");
    EXPECT_FALSE(restingOn(story.state(), bridge)) << "felt, not set; and another bridge's lash";
    const ActSeq after = story.left("I2", "0.30 mm");
    ASSERT_TRUE(restingOn(story.state(), bridge));
    EXPECT_EQ(restingOn(story.state(), bridge)->seq, after);
    story.withdraw(after);
    EXPECT_FALSE(restingOn(story.state(), bridge));
    const ActSeq stroke =
        story.log(AllLeftFact{{story.reading("I3", Phase::AsLeft, "0.30 mm"), story.reading("I2", Phase::AsLeft, "0.30 mm")}});
    ASSERT_TRUE(restingOn(story.state(), bridge));
    EXPECT_EQ(restingOn(story.state(), bridge)->seq, stroke);
}

TEST(LashBeforeBridge, UntilTheBridgeIsLeft)
{
    Story story = bridged();
    story.left("I2", "0.30 mm");
    const std::vector wanted{open::LashBeforeBridge{story.at("I2")}};
    EXPECT_EQ(beforeBridge(story), wanted);
    story.found("BI2", "0.20 mm");
    EXPECT_EQ(beforeBridge(story), wanted) << "felt is not left";
    story.left("BI2", "0.07 mm");
    EXPECT_TRUE(beforeBridge(story).empty()) << "the lash is to check again now";
    story.left("I2", "0.30 mm");
    EXPECT_TRUE(beforeBridge(story).empty());
    story.nutOpen("BI2");
    EXPECT_EQ(beforeBridge(story).size(), 1U);
    story.left("BI2", "0.07 mm");
    story.left("I2", "0.30 mm");
    story.checkAgain({story.at("BI2")});
    EXPECT_EQ(beforeBridge(story).size(), 1U) << "a bridge to check again is not left";
}

TEST(NextOnABridgedEngine, FeelsEverythingThenSetsBridgesBeforeTheirLash)
{
    Story story = atFirstPosition();
    const auto here = [&] {
        std::vector<std::string> names;
        const JobState state = story.state();
        for (const PlanPoint &planned : state.plan->positions.at(0).points)
            names.push_back(shortName(story.frame.engine.design, planned.adjuster));
        return names;
    }();
    ASSERT_GE(here.size(), 8U);
    ASSERT_NE(std::ranges::find(here, "BI1"), here.end());
    for (const std::string &point : here) {
        EXPECT_EQ(nextValveAct(story.state()), NextAct(next::FeelPoint{story.at(point)}));
        story.found(point, "0.25 mm");
    }
    std::vector<std::string> order;
    for (std::size_t i = 0; i < here.size(); ++i) {
        const NextAct act = nextValveAct(story.state());
        ASSERT_TRUE(is<next::SetPoint>(act));
        order.push_back(shortName(story.frame.engine.design, story.frame.point(*pointOf(act))->adjuster));
        ReadingFact feel = story.reading(order.back(), Phase::AsLeft, "0.30 mm");
        feel.form = ReadingForm::ByFeel;
        story.log(feel);
    }
    EXPECT_TRUE(std::ranges::is_permutation(order, here));
    EXPECT_LT(std::ranges::find(order, "BI1"), std::ranges::find(order, "I1"));
    EXPECT_LT(std::ranges::find(order, "BE1"), std::ranges::find(order, "E1"));
    EXPECT_TRUE(is<next::TurnCrank>(nextValveAct(story.state())));
}

TEST(NextOnABridgedEngine, TheBridgeGoesFirstWhateverTheLashWants)
{
    Story story = atFirstPosition();
    story.left("I1", "0.60 mm");
    EXPECT_EQ(nextValveAct(story.state()), NextAct(next::FeelPoint{story.at("BI1")}))
        << "a lash outside its band is set once its bridge is";
    story.found("BI1", "0.20 mm");
    EXPECT_EQ(nextValveAct(story.state()), NextAct(next::SetPoint{story.at("BI1")}));
    story.nutOpen("I1");
    EXPECT_EQ(nextValveAct(story.state()), NextAct(next::SetPoint{story.at("BI1")}))
        << "the lash screw is backed off while the bridge is set";
    story.nutOpen("BI1");
    EXPECT_EQ(nextValveAct(story.state()), NextAct(next::LockNut{story.at("BI1")}));
    story.left("BI1", "0.07 mm");
    EXPECT_EQ(nextValveAct(story.state()), NextAct(next::LockNut{story.at("I1")}));
    story.left("I1", "0.30 mm");
    story.checkAgain({story.at("BI1"), story.at("I1")});
    story.found("BE1", "0.07 mm");
    story.left("BI1", "0.07 mm");
    const JobState state = story.state();
    EXPECT_EQ(pointAct(state, story.at("I1")), NextAct(next::SetPoint{story.at("I1")}));
}

TEST(NextOnABridgedEngine, AWithdrawnBridgeIsNextAgain)
{
    Story story = atFirstPosition();
    const ActSeq bridge = story.left("BI1", "0.07 mm");
    story.left("I1", "0.60 mm");
    EXPECT_EQ(nextValveAct(story.state()), NextAct(next::SetOrKeep{story.at("I1")}));
    story.withdraw(bridge);
    EXPECT_EQ(nextValveAct(story.state()), NextAct(next::FeelPoint{story.at("BI1")}));
}

TEST(LeftHere, ALashWaitsForItsBridge)
{
    Story story = atFirstPosition();
    const auto can = [&](std::string_view name) { return canBeLeftHere(story.state(), *story.frame.point(story.at(name))); };
    EXPECT_TRUE(can("BI1"));
    EXPECT_TRUE(can("I1")) << "its bridge can be left at the same stroke";
    EXPECT_FALSE(can("J1")) << "nobody knows what it should be";
    EXPECT_FALSE(can("I4")) << "not at this position";

    std::erase_if(story.frame.specs, [](const Spec &spec) { return spec.subject == SpecSubject::BridgeScrew; });
    EXPECT_FALSE(can("BI1"));
    EXPECT_FALSE(can("I1")) << "its bridge would be left out";
    story.left("BI1", "0.07 mm");
    EXPECT_TRUE(can("I1"));
    EXPECT_FALSE(can("BI1"));
}

} // namespace bridges_tests
} // namespace asleft
