// What acts on joints speak of, what rests on what, and which can be taken back.
#include "joint_story.h"

namespace asleft {
namespace joint_acts_tests {

TEST(JointActs, WhatTheySpeakOf)
{
    JointStory story;
    story.set("16 N·m", 0, {1, 3});
    story.untick(0, {3});
    story.loosened({2});
    story.fitted({4}, Fitted::New);
    story.accept(AcceptedWhat::ByFeel, {1});
    story.begin(1);
    story.finding("rust");
    story.done(1);
    const std::vector<std::vector<int>> wanted{{1, 3}, {3}, {2}, {4}, {1}, {}, {}, {}};
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        EXPECT_EQ(fastenersOf(story.acts[i].what.fact), wanted[i]) << i;
        EXPECT_EQ(jointOf(story.acts[i].what.fact).has_value(), i < 6) << i;
        EXPECT_TRUE(pointsOf(story.acts[i].what.fact).empty()) << i;
    }
}

TEST(JointActs, RestOnEarlierOnesOfTheSameFastener)
{
    JointStory story;
    story.loosened({1, 2});      // 0
    story.set("16 N·m", 0, {1}); // 1
    story.set("16 N·m", 0, {3}); // 2
    story.untick(0, {1});        // 3
    story.joint = headBolts;
    story.set("16 N·m", 0, {1}); // 4
    story.joint = cover;
    story.job = otherJob;
    story.set("16 N·m", 0, {1}); // 5
    const auto rests = [&](std::size_t later, std::size_t earlier) { return restsOn(story.acts[later], story.acts[earlier]); };
    EXPECT_TRUE(rests(1, 0));
    EXPECT_FALSE(rests(0, 1));
    EXPECT_FALSE(rests(2, 0)) << "another fastener";
    EXPECT_TRUE(rests(3, 1));
    EXPECT_FALSE(rests(3, 2));
    EXPECT_FALSE(rests(4, 1)) << "another joint";
    EXPECT_FALSE(rests(5, 1)) << "another job";
}

TEST(JointActs, ABeginningHasToDoWithEveryFastener)
{
    JointStory story;
    story.set("16 N·m", 0, {1}); // 0
    story.begin(1);              // 1
    story.set("16 N·m", 0, {3}); // 2
    story.begin(1);              // 3
    story.joint = headBolts;
    story.begin(1); // 4
    const auto rests = [&](std::size_t later, std::size_t earlier) { return restsOn(story.acts[later], story.acts[earlier]); };
    EXPECT_TRUE(rests(1, 0));
    EXPECT_TRUE(rests(2, 1));
    EXPECT_TRUE(rests(3, 1));
    EXPECT_FALSE(rests(2, 0));
    EXPECT_FALSE(rests(4, 0));
}

TEST(JointActs, AcceptingRestsOnTicksAndFindingsOnNothing)
{
    JointStory story;
    story.settle(1, {1, 2}, true);           // 0
    story.accept(AcceptedWhat::Torque, {1}); // 1
    story.accept(AcceptedWhat::Torque, {3}); // 2
    story.accept(AcceptedWhat::Unsettled);   // 3
    story.finding("rust");                   // 4
    story.settle(1, {1}, false);             // 5
    story.loosened({4});                     // 6
    story.accept(AcceptedWhat::Unsettled);   // 7
    const auto rests = [&](std::size_t later, std::size_t earlier) { return restsOn(story.acts[later], story.acts[earlier]); };
    EXPECT_TRUE(rests(1, 0));
    EXPECT_FALSE(rests(2, 0));
    EXPECT_TRUE(rests(3, 0)) << "whether it moves is of the joint";
    EXPECT_FALSE(rests(3, 1));
    EXPECT_FALSE(rests(5, 3));
    EXPECT_TRUE(rests(7, 5));
    EXPECT_FALSE(rests(7, 6));
    for (const std::size_t other : {0U, 1U, 3U})
        EXPECT_FALSE(rests(4, other)) << other;
    EXPECT_FALSE(rests(5, 4));
}

TEST(JointActs, AreTakenBackAndBroughtBack)
{
    JointStory story;
    const ActSeq first = story.set("16 N·m", 0, {1});
    const ActSeq second = story.set("16 N·m", 0, {3});
    const ActSeq found = story.finding("rust");
    EXPECT_EQ(undoable(story.state(), "bench"), found);
    EXPECT_EQ(lastAct(story.state())->seq, found);
    EXPECT_FALSE(restingOn(story.state(), found));
    story.withdraw(found);
    EXPECT_EQ(undoable(story.state(), "bench"), second);
    const ActSeq back = story.withdraw(second);
    EXPECT_EQ(story.next(), place(3, 0));
    EXPECT_EQ(redoable(story.state(), "bench"), back);
    story.withdraw(back);
    EXPECT_EQ(story.next(), place(2, 0));
    story.station = "office";
    const ActSeq onTop = story.set("32 N·m", 1, {1});
    EXPECT_EQ(undoable(story.state(), "bench"), second);
    EXPECT_EQ(restingOn(story.state(), first)->seq, onTop) << "another seat went on from it";
    EXPECT_FALSE(restingOn(story.state(), second));
}

} // namespace joint_acts_tests
} // namespace asleft
