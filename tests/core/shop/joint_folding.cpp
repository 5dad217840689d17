// What the acts on a joint amount to.
#include "joint_story.h"

namespace asleft {
namespace joint_folding_tests {

using Stage = FastenerStage;

TEST(JointFolding, EveryJointOfTheEngineIsThere)
{
    const JointStory story;
    const JobState state = story.state();
    ASSERT_EQ(state.joints.size(), 3U);
    EXPECT_EQ(state.joints.at(cover).fasteners.size(), 4U);
    EXPECT_FALSE(state.joints.at(cover).begun);
    EXPECT_EQ(story.stage(4), Stage::Untouched);
    EXPECT_EQ(story.next(), place(1, 0));
    EXPECT_TRUE(state.findings.empty());
}

TEST(JointFolding, AJointNobodyKnowsIsNoTrouble)
{
    JointStory story;
    story.joint = JointId(9);
    story.set("16 N·m", 0, {1});
    story.begin(1);
    EXPECT_EQ(story.state().joints.size(), 3U);
}

TEST(JointFolding, EveryPrefixKnowsTheNextFastener)
{
    JointStory story;
    std::vector<TickSlot> order;
    for (int pass = 0; pass < 3; ++pass) {
        for (const int number : {1, 3, 2, 4})
            order.push_back(place(number, pass));
    }
    for (std::size_t done = 0; done < order.size(); ++done) {
        ASSERT_EQ(story.next(), order[done]) << "killed after " << done;
        story.set("32 N·m", order[done].pass, {order[done].fastener});
    }
    EXPECT_FALSE(story.next());
    EXPECT_TRUE(story.settled());
}

TEST(JointFolding, StagesByHowManyPassesAreDone)
{
    JointStory story;
    story.set("16 N·m", 0, {1});
    EXPECT_EQ(story.stage(1), Stage::Partway);
    EXPECT_EQ(story.stage(3), Stage::Untouched);
    story.set("16 N·m", 0, {3, 2, 4});
    story.set("32 N·m", 1, {1, 3, 2, 4});
    story.settle(1, {1, 3, 2}, false);
    EXPECT_EQ(story.stage(1), Stage::Partway) << "settling is of the joint: another may still move";
    story.settle(1, {4}, false);
    EXPECT_EQ(story.stage(1), Stage::Tight);
    EXPECT_TRUE(story.settled());
}

TEST(JointFolding, WithoutSettlingAFastenerIsTightByItself)
{
    JointStory story;
    story.joint = headBolts;
    story.set("3 N·m", 0, {1});
    story.set("40 N·m", 1, {1});
    story.set("40 N·m", 2, {1});
    EXPECT_EQ(story.stage(1), Stage::Tight);
    EXPECT_EQ(story.stage(2), Stage::Untouched);
}

TEST(JointFolding, PlacesThereAreNotCountForNothing)
{
    JointStory story;
    story.set("16 N·m", 0, {5});
    story.set("16 N·m", 3, {1});
    story.set("16 N·m", -1, {1});
    story.log(story.ticked(0, {1}, 2));
    story.log(story.ticked(0, {1}, 0));
    story.settle(3, {1}, true);
    EXPECT_FALSE(story.now().begun);
    EXPECT_EQ(story.now().fasteners.size(), 4U);
    EXPECT_TRUE(story.fastener(1).ticks.empty());
    story.settle(2, {1}, true);
    EXPECT_EQ(story.fastener(1).ticks.size(), 1U);
}

TEST(JointFolding, TicksStandInTheOrderOfPassesWithWhoAndWhen)
{
    JointStory story;
    const ActSeq late = story.set("32 N·m", 1, {1, 2});
    const ActSeq early = story.set("16 N·m", 0, {1});
    const auto ticks = story.fastener(1).ticks;
    ASSERT_EQ(ticks.size(), 2U);
    EXPECT_EQ(ticks[0].seq, early);
    EXPECT_EQ(ticks[1].seq, late);
    EXPECT_EQ(ticks[1].at, story.acts[0].what.at);
    EXPECT_EQ(ticks[1].who, PersonId(1));
    EXPECT_TRUE(ticks[1].fact.ticks.empty());
    EXPECT_EQ(ticks[1].fact.setting, typedTorque("32 N·m"));
}

TEST(JointFolding, TwoSeatsTickingOneFastenerIsOneTick)
{
    JointStory story;
    story.set("16 N·m", 0, {1});
    story.station = "office";
    const ActSeq second = story.set("17 N·m", 0, {1});
    ASSERT_EQ(story.fastener(1).ticks.size(), 1U);
    EXPECT_EQ(story.fastener(1).ticks.front().seq, second);
    EXPECT_EQ(story.next(), place(3, 0));
    story.withdraw(second);
    EXPECT_EQ(story.fastener(1).ticks.front().fact.setting, typedTorque("16 N·m")) << "the first stands again";
}

TEST(JointFolding, AWholePassWithdrawnIsToBeDoneAgain)
{
    JointStory story;
    story.set("16 N·m", 0, {1, 3, 2, 4});
    const ActSeq wrong = story.set("32 N·m", 1, {1, 3, 2, 4});
    EXPECT_EQ(story.next(), place(1, 2));
    const ActSeq back = story.withdraw(wrong);
    EXPECT_EQ(story.next(), place(1, 1));
    EXPECT_EQ(story.stage(2), Stage::Partway);
    story.withdraw(back);
    EXPECT_EQ(story.next(), place(1, 2));
}

TEST(JointFolding, UntickedPlacesAreToBeDoneAgain)
{
    JointStory story;
    story.set("16 N·m", 0, {1, 3, 2, 4});
    story.untick(0, {3});
    EXPECT_EQ(story.next(), place(3, 0));
    EXPECT_EQ(story.stage(3), Stage::Loose);
    EXPECT_EQ(story.stage(1), Stage::Partway);
    story.untick(0, {7});
    story.untick(2, {1});
    EXPECT_EQ(story.stage(1), Stage::Partway) << "nothing was there to take off";
}

TEST(JointFolding, WorkOfAnotherJobIsNotOfThisOne)
{
    JointStory story;
    story.job = otherJob;
    story.tightenCover();
    story.loosened({1});
    story.finding("rust");
    EXPECT_FALSE(story.now().begun);
    EXPECT_FALSE(story.fastener(1).found);
    EXPECT_TRUE(story.state().findings.empty());
}

TEST(JointFolding, LooseningDropsTicksAcceptanceAndWhatWasFitted)
{
    JointStory story;
    story.joint = headBolts;
    story.fitted({1, 2, 3}, Fitted::Reused);
    story.accept(AcceptedWhat::Reused, {1, 2});
    story.byFeel(1, {1, 2, 3});
    story.accept(AcceptedWhat::ByFeel, {1, 2});
    story.loosened({1});
    const FastenerState out = story.fastener(1);
    EXPECT_EQ(out.stage, Stage::Loose);
    EXPECT_TRUE(out.ticks.empty());
    EXPECT_FALSE(out.fitted);
    EXPECT_FALSE(out.reuseAccepted);
    EXPECT_FALSE(out.feelAccepted);
    const FastenerState other = story.fastener(2);
    EXPECT_EQ(other.stage, Stage::Partway);
    EXPECT_EQ(other.fitted, Fitted::Reused);
    EXPECT_TRUE(other.reuseAccepted);
    EXPECT_TRUE(other.feelAccepted);
}

TEST(JointFolding, AsFoundIsWhatWasFirstFound)
{
    JointStory story;
    story.loosened({1, 2}, FoundHow::LooseByFeel);
    const ActSeq mended = story.loosened({1}, FoundHow::Measured, "20 N·m");
    EXPECT_EQ(story.fastener(1).found->how, FoundHow::Measured) << "a second one before any tick corrects";
    EXPECT_EQ(story.fastener(1).found->torque, typedTorque("20 N·m"));
    EXPECT_EQ(story.fastener(2).found->how, FoundHow::LooseByFeel);
    story.set("16 N·m", 0, {1});
    story.loosened({1}, FoundHow::TightByFeel);
    story.loosened({1}, FoundHow::Broken);
    EXPECT_EQ(story.fastener(1).found->seq, mended);
    EXPECT_EQ(story.stage(1), Stage::Loose);
}

TEST(JointFolding, NotNotedNeverTakesThePlaceOfWhatSaysMore)
{
    for (const FoundHow how : {FoundHow::Measured, FoundHow::LooseByFeel, FoundHow::Broken}) {
        JointStory story;
        story.loosened({2});
        const ActSeq said = story.loosened({1, 2}, how, how == FoundHow::Measured ? "20 N·m" : "");
        story.loosened({1, 2, 3});
        EXPECT_EQ(story.fastener(1).found->seq, said);
        EXPECT_EQ(story.fastener(2).found->how, how) << "it may be said later";
        EXPECT_EQ(story.fastener(3).found->how, FoundHow::NotNoted);
        story.loosened({1}, FoundHow::TightByFeel);
        EXPECT_EQ(story.fastener(1).found->how, FoundHow::TightByFeel) << "and corrected still";
    }
    JointStory story;
    story.loosened({1}, FoundHow::Broken);
    story.loosened({1});
    story.set("16 N·m", 0, {1});
    story.loosened({1}, FoundHow::Missing);
    EXPECT_EQ(story.fastener(1).found->how, FoundHow::Broken) << "there was a tick since";
}

TEST(JointFolding, ATickTakenOffAgainWasNone)
{
    JointStory story;
    story.loosened({1}, FoundHow::LooseByFeel);
    story.set("16 N·m", 0, {1});
    story.untick(0, {1});
    story.loosened({1}, FoundHow::Missing);
    EXPECT_EQ(story.fastener(1).found->how, FoundHow::Missing);
}

TEST(JointFolding, BegunAnewAllIsLooseAndFoundStays)
{
    JointStory story;
    story.loosened({1}, FoundHow::Measured, "20 N·m");
    story.set("16 N·m", 0, {1, 3, 2, 4});
    story.begin(1);
    for (const int number : {1, 2, 3, 4}) {
        EXPECT_EQ(story.stage(number), Stage::Loose) << number;
        EXPECT_TRUE(story.fastener(number).ticks.empty()) << number;
    }
    EXPECT_EQ(story.fastener(1).found->how, FoundHow::Measured);
    EXPECT_EQ(story.next(), place(1, 0));
    story.loosened({1}, FoundHow::Broken);
    EXPECT_EQ(story.fastener(1).found->how, FoundHow::Measured) << "it had been ticked before";
}

TEST(JointFolding, TheFirstTickSaysByWhichRevision)
{
    JointStory story;
    story.revise("target");
    EXPECT_EQ(story.now().revision, 2) << "the newest while nothing is done";
    story.set("16 N·m", 0, {1});
    EXPECT_EQ(story.now().revision, 1);
    story.revision = 2;
    story.set("32 N·m", 0, {3});
    EXPECT_TRUE(story.fastener(3).ticks.empty()) << "by another revision than the joint is worked by";
    EXPECT_EQ(story.next(), place(3, 0));
}

TEST(JointFolding, BegunByTheNewestMidWay)
{
    JointStory story;
    story.set("16 N·m", 0, {1, 3, 2, 4});
    story.set("32 N·m", 1, {1});
    story.revise("target");
    EXPECT_EQ(story.next(), place(3, 1)) << "a newer revision does not disturb the work";
    const ActSeq begun = story.begin(2);
    EXPECT_EQ(story.now().revision, 2);
    EXPECT_EQ(story.next(), place(1, 0));
    story.set("32 N·m", 0, {1});
    EXPECT_TRUE(story.fastener(1).ticks.empty()) << "a tick by the old one";
    story.revision = 2;
    story.set("32 N·m", 0, {1, 3, 2, 4});
    EXPECT_TRUE(story.settled());
    story.withdraw(begun);
    EXPECT_EQ(story.now().revision, 1);
    EXPECT_EQ(story.fastener(1).ticks.size(), 2U) << "its ticks by the old revision stand again";
    EXPECT_EQ(story.next(), place(3, 1));
}

TEST(JointFolding, WhollyLooseItGoesByTheNextTick)
{
    JointStory story;
    story.set("16 N·m", 0, {1, 2});
    story.revise("target");
    story.loosened({1});
    EXPECT_EQ(story.now().revision, 1);
    story.loosened({2});
    EXPECT_EQ(story.now().revision, 2);
    story.revision = 2;
    story.set("32 N·m", 0, {1});
    EXPECT_EQ(story.stage(1), Stage::Tight);
}

TEST(JointFolding, BegunByARevisionItKeepsToItThoughAllIsLoosened)
{
    JointStory story;
    story.revise("target");
    story.begin(1);
    EXPECT_TRUE(story.now().begun);
    story.loosened({1, 2, 3, 4});
    EXPECT_EQ(story.now().revision, 1);
    story.begin(7);
    EXPECT_EQ(story.now().revision, 1) << "there is no such revision";
}

TEST(JointFolding, ARevisionWithOtherFasteners)
{
    JointStory story;
    story.loosened({1, 4}, FoundHow::LooseByFeel);
    Joint three = jointOf(cover, "row of 3", "2-1-3", "target");
    three.revision = 2;
    story.frame.joints.push_back(three);
    EXPECT_EQ(story.now().fasteners.size(), 3U);
    EXPECT_TRUE(story.fastener(1).found);
    EXPECT_EQ(story.next(), place(2, 0));
}

TEST(JointFolding, SettlingGoesOnUntilNoneMoves)
{
    JointStory story;
    const std::vector<int> all{1, 3, 2, 4};
    story.set("16 N·m", 0, all);
    story.set("32 N·m", 1, all);
    story.settle(1, {1, 2, 4}, false);
    story.settle(1, {3}, true);
    EXPECT_EQ(story.next(), place(1, 2, 2));
    story.settle(2, all, false);
    EXPECT_TRUE(story.settled());
}

TEST(JointFolding, RoundsAreCappedAndThenItIsUnsettled)
{
    JointStory story;
    const std::vector<int> all{1, 3, 2, 4};
    story.set("16 N·m", 0, all);
    story.set("32 N·m", 1, all);
    story.accept(AcceptedWhat::Unsettled);
    story.settle(1, all, true);
    const ActSeq last = story.settle(2, all, true);
    EXPECT_FALSE(story.next());
    EXPECT_TRUE(story.now().progress.unsettled);
    EXPECT_FALSE(story.now().unsettledAccepted) << "accepted before it was so";
    EXPECT_EQ(story.wants().kind, JointWants::Kind::AcceptUnsettled);
    story.accept(AcceptedWhat::Unsettled);
    EXPECT_TRUE(story.settled());
    story.settle(2, {1}, true);
    EXPECT_FALSE(story.settled()) << "a new tick voids it";
    story.accept(AcceptedWhat::Unsettled);
    story.loosened({1});
    EXPECT_FALSE(story.now().unsettledAccepted);
    story.withdraw(last);
    EXPECT_FALSE(story.now().progress.unsettled);
}

TEST(JointFolding, SingleUseWantsAWordBeforeTheFirstTick)
{
    JointStory story;
    story.joint = headBolts;
    EXPECT_EQ(story.wants(), (JointWants{JointWants::Kind::SayFitted, {1, 2, 3}}));
    story.fitted({1, 3}, Fitted::New);
    EXPECT_EQ(story.wants(), (JointWants{JointWants::Kind::SayFitted, {2}}));
    story.fitted({2}, Fitted::Reused);
    EXPECT_EQ(story.wants(), JointWants{}) << "the rest is asked at the end";
    for (int pass = 0; pass < 3; ++pass)
        story.set("40 N·m", pass, {1, 2, 3});
    EXPECT_EQ(story.wants(), (JointWants{JointWants::Kind::AcceptReuse, {2}}));
    story.accept(AcceptedWhat::Reused, {1, 2});
    EXPECT_FALSE(story.fastener(1).reuseAccepted) << "it is new";
    EXPECT_TRUE(story.settled());
    story.fitted({2}, Fitted::New);
    story.fitted({2}, Fitted::Reused);
    EXPECT_FALSE(story.settled()) << "another one, fitted again";
}

TEST(JointFolding, FindingsInForceOldestFirst)
{
    JointStory story;
    const ActSeq first = story.finding("rust");
    const ActSeq second = story.finding("long ago cross-threaded");
    ASSERT_EQ(story.state().findings.size(), 2U);
    EXPECT_EQ(story.state().findings[1].seq, second);
    EXPECT_EQ(story.state().findings[1].what.text, "long ago cross-threaded");
    story.withdraw(first);
    ASSERT_EQ(story.state().findings.size(), 1U);
    EXPECT_EQ(story.state().findings[0].seq, second);
    EXPECT_FALSE(story.now().begun);
}

} // namespace joint_folding_tests
} // namespace asleft
