// New or used: what was said of single-use fasteners, and what a later word does to their ticks.
#include "joint_story.h"

namespace asleft {
namespace joint_fitted_tests {

using Stage = FastenerStage;

class JointFitted : public testing::Test {
protected:
    JointFitted() { story.joint = headBolts; }

    void tighten(const std::vector<int> &fasteners)
    {
        for (int pass = 0; pass < 3; ++pass)
            story.set("40 N·m", pass, fasteners);
    }

    JointStory story;
};

TEST_F(JointFitted, BegunAnewWhatWasTurnedOnIsNoLongerNew)
{
    story.fitted({1, 2}, Fitted::New);
    story.fitted({3}, Fitted::Reused);
    story.accept(AcceptedWhat::Reused, {3});
    tighten({1, 3});
    story.begin(1);
    EXPECT_FALSE(story.fastener(1).fitted);
    EXPECT_EQ(story.fastener(2).fitted, Fitted::New) << "it was not ticked yet";
    EXPECT_FALSE(story.fastener(3).fitted);
    EXPECT_FALSE(story.fastener(3).reuseAccepted);
    EXPECT_EQ(story.wants(), (JointWants{JointWants::Kind::SayFitted, {1, 3}}));
}

TEST_F(JointFitted, NewInsteadOfReusedItIsTightenedAgain)
{
    story.fitted({1}, Fitted::Reused);
    story.fitted({2, 3}, Fitted::New);
    tighten({1, 2, 3});
    EXPECT_TRUE(story.fastener(1).reused());
    story.fitted({1}, Fitted::New);
    EXPECT_EQ(story.fastener(1).fitted, Fitted::New);
    EXPECT_EQ(story.stage(1), Stage::Loose);
    EXPECT_TRUE(story.fastener(1).ticks.empty());
    EXPECT_FALSE(story.fastener(1).reused());
    EXPECT_EQ(story.stage(3), Stage::Tight);
    EXPECT_FALSE(story.settled());
    tighten({1});
    EXPECT_TRUE(story.settled());
}

/// One that has yielded must not be turned on again because nobody was asked in time.
TEST_F(JointFitted, SaidLateItIsSaidOfWhatWasTightened)
{
    tighten({1, 2, 3});
    EXPECT_EQ(story.wants(), (JointWants{JointWants::Kind::SayFitted, {1, 2, 3}}));
    story.fitted({1, 2, 3}, Fitted::New);
    EXPECT_EQ(story.stage(2), Stage::Tight);
    EXPECT_TRUE(story.settled());
}

TEST_F(JointFitted, SaidOnceMoreNothingChanges)
{
    story.fitted({1, 2, 3}, Fitted::New);
    tighten({1, 2, 3});
    story.fitted({1, 2, 3}, Fitted::New);
    EXPECT_TRUE(story.settled());
}

TEST_F(JointFitted, NewInsteadOfReusedBeforeAnyTickTakesNothingAway)
{
    story.fitted({1, 2, 3}, Fitted::Reused);
    story.fitted({1}, Fitted::New);
    EXPECT_EQ(story.stage(1), Stage::Untouched);
    EXPECT_EQ(story.fastener(1).fitted, Fitted::New);
}

TEST_F(JointFitted, ReusedSaidLateKeepsTheTicks)
{
    tighten({1, 2, 3});
    story.fitted({1, 2, 3}, Fitted::Reused);
    EXPECT_EQ(story.stage(1), Stage::Tight);
    EXPECT_EQ(story.wants(), (JointWants{JointWants::Kind::AcceptReuse, {1, 2, 3}}));
}

TEST_F(JointFitted, AnExchangedFastenerKeepsHowItWasFound)
{
    story.loosened({1}, FoundHow::LooseByFeel);
    story.fitted({1}, Fitted::Reused);
    tighten({1});
    story.byFeel(2, {1});
    story.accept(AcceptedWhat::ByFeel, {1});
    const ActSeq exchanged = story.fitted({1}, Fitted::New);
    EXPECT_FALSE(story.fastener(1).feelAccepted);
    story.loosened({1}, FoundHow::Broken);
    EXPECT_EQ(story.fastener(1).found->how, FoundHow::LooseByFeel);
    story.acts.pop_back();
    story.withdraw(exchanged);
    EXPECT_EQ(story.stage(1), Stage::Tight) << "taken back, the ticks stand again";
    EXPECT_TRUE(story.fastener(1).feelAccepted);
}

} // namespace joint_fitted_tests
} // namespace asleft
