#include "gui.h"
#include "tractor.h"

#include <draw/point_shape.h>
#include <words/fasteners.h>
#include <words/job.h>
#include <words/points.h>

namespace asleft {

namespace joint_telling_tests {

std::string text(const QString &words)
{
    return words.toStdString();
}

TEST(StepTitles, AreTypedOrToldByWhatIsDoneToTheJoint)
{
    const JobFrame frame = coverFrame();
    Step step{StepId(1), StepKind::Loosen, {}, {}, Gate::FirstStart, {}, cover};
    EXPECT_EQ(text(stepTitle(step, frame)), "Loosen: Valve cover");
    step.kind = StepKind::Tighten;
    EXPECT_EQ(text(stepTitle(step, frame)), "Tighten: Valve cover");
    step.title = "Loosen: Valve cover"; // as an older program stored it
    EXPECT_EQ(text(stepTitle(step, frame)), "Loosen: Valve cover");
    step.title = {};
    step.joint = JointId(99);
    EXPECT_EQ(text(stepTitle(step, frame)), "Tighten: a joint");
    EXPECT_EQ(text(lineTitle({.kind = StepKind::Loosen, .title = {}, .detail = {}, .cautions = {}, .joint = cover}, frame.joints)),
              "Loosen: Valve cover");
}

TEST(JointActs, SayWhatWasDone)
{
    TractorStory story(coverFrame());
    const auto said = [&story](Fact fact) {
        story.log(std::move(fact));
        return text(actText(story.acts.back(), story.state()));
    };
    EXPECT_EQ(said(loosened({2, 5, 7}, FoundHow::LooseByFeel)), "found loose by feel: 2, 5 and 7");
    EXPECT_EQ(said(loosened({1}, FoundHow::Measured, "28 N·m")), "found 1 to loosen at 28 N·m");
    EXPECT_EQ(said(loosened({3}, FoundHow::Broken, {}, "head off")), "found broken: 3 (head off)");
    EXPECT_EQ(said(loosened({4, 6, 8, 9, 10, 11, 12}, FoundHow::NotNoted)), "loosened 4, 6 and 8 to 12");
    EXPECT_EQ(said(ticks({1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12}, 0, TickHow::SetTool, "11.8 lbf·ft")),
              "ticked 12 fasteners, pass 1 (50 %)");
    EXPECT_EQ(said(ticks({7}, 1, TickHow::SetTool, "23.6 lbf·ft")), "tightened 7 to 32 N·m");
    EXPECT_EQ(said(ticks({8}, 1, TickHow::ReadTool, "26.5 N·m")), "tightened 8 to 26.5 N·m, below its band");
    EXPECT_EQ(said(ticks({9}, 1, TickHow::ByFeel)), "fastener 9 by feel: no wrench reaches");
    EXPECT_EQ(said(UntickedFact{cover, {{9, 1, 1}}}), "took the tick of 9 back");
    EXPECT_EQ(said(FittedFact{cover, {1, 2}, Fitted::New}), "fitted new: fasteners 1 and 2");
    EXPECT_EQ(said(AcceptedFact{cover, AcceptedWhat::Torque, {8}, "worn thread"}), "accepted the torque of fastener 8: worn thread");
    EXPECT_EQ(said(FindingFact{FastenerSubject{cover, {}}, "gasket pinched"}), "noted: gasket pinched");
    const Engine &engine = story.frame.engine;
    EXPECT_EQ(said(FindingFact{engine.points.front().id, "worn"}),
              "noted, " + text(pointInText(engine.design, engine.points.front().adjuster)) + ": worn");
    EXPECT_EQ(said(FindingFact{story.frame.job.steps.front().id, "worn"}), "noted, " + story.frame.job.steps.front().title + ": worn");
    EXPECT_EQ(said(FindingFact{engine.id, "worn"}), "noted, the engine: worn");
    EXPECT_EQ(said(FindingFact{story.frame.vehicle.id, "worn"}), "noted, the vehicle: worn");
    EXPECT_EQ(said(JointBegunFact{cover, 1}), "began Valve cover from the first pass");
}

TEST(JointActs, OfSeveralJointsItIsNamed)
{
    TractorStory story(coverFrame(coverText(), true));
    story.log(ticks({7}, 0, TickHow::SetTool, "11.8 lbf·ft"));
    EXPECT_EQ(text(actText(story.acts.back(), story.state())), "tightened 7 to 16 N·m, Valve cover");
}

TEST(JointState, ATickSaysTorqueToolAndVerdict)
{
    const JobFrame frame = coverFrame();
    const Joint &cover = frame.joints.front();
    const auto said = [&](const TicksFact &fact) { return text(tickText(tickMade(fact, fact.ticks.front(), cover), frame)); };
    EXPECT_EQ(said(ticks({7}, 1, TickHow::SetTool, "23.6 lbf·ft")), "32 N·m with small wrench set to 23.6 lbf·ft, inside");
    EXPECT_EQ(said(ticks({7}, 1, TickHow::ReadTool, "31.5 N·m")), "31.5 N·m with dial wrench, inside");
    EXPECT_EQ(said(ticks({7}, 1, TickHow::ReadTool, "27.9996 N·m")), "27.9996 N·m with dial wrench, below its band");
    // L 300 mm, E 40 mm straight out: 28.2·340/300 = 31.96 N·m.
    TicksFact fitted = ticks({7}, 1, TickHow::ReadTool, "28.2 N·m");
    fitted.fit = FitUsed{crowfoot, {micrometres(40'000), Angle()}};
    fitted.lever = micrometres(300'000);
    EXPECT_EQ(said(fitted), "31.96 N·m with dial wrench which showed 28.2 N·m through a 40 mm adapter straight out, inside");
    EXPECT_EQ(said(ticks({7}, 1, TickHow::ByFeel)), "by feel: no wrench reaches");
    TicksFact doubtful = ticks({7}, 1, TickHow::SetTool, "23.6 lbf·ft");
    doubtful.calibrationOverdue = doubtful.outOfRange = true;
    EXPECT_TRUE(QString::fromStdString(said(doubtful)).endsWith(QStringLiteral("outside the wrench's range, calibration overdue")));
}

TEST(JointState, AReadingIsSaidAsItWasTyped)
{
    // 33 lbf·ft = 33 · 1.355 818 = 44.742 N·m.
    const TicksFact pounds = ticks({7}, 1, TickHow::ReadTool, "33 ft-lb");
    const auto said = [&pounds](const JobFrame &frame) {
        return text(tickText(tickMade(pounds, pounds.ticks.front(), frame.joints.front()), frame));
    };
    EXPECT_EQ(said(coverFrame()), "33 ft-lb (44.74 N·m) with dial wrench, above its band");
    JointText both = coverText();
    both.otherTarget = "24 ± 3 lbf·ft";
    EXPECT_EQ(said(coverFrame(both)), "33 ft-lb with dial wrench, above its band");
    TractorStory story(coverFrame());
    story.log(pounds);
    EXPECT_EQ(text(actText(story.acts.back(), story.state())), "tightened 7 to 33 ft-lb (44.74 N·m), above its band");
}

TEST(JointState, APassWithATorqueOfItsOwnIsSaidInItsUnit)
{
    JointText snug = coverText();
    snug.target = "40 ± 3 lbf·ft";
    snug.passes = "30 Nm, target";
    snug.settle = SettleGround::No;
    const JobFrame frame = coverFrame(snug);
    const auto said = [&frame](const TicksFact &fact) {
        return text(tickText(tickMade(fact, fact.ticks.front(), frame.joints.front()), frame));
    };
    // 22.1 lbf·ft = 22.1 · 1.355 818 = 29.964 N·m.
    EXPECT_EQ(said(ticks({7}, 0, TickHow::SetTool, "22.1 lbf·ft")), "29.96 N·m with small wrench set to 22.1 lbf·ft");
    EXPECT_EQ(said(ticks({7}, 0, TickHow::ReadTool, "30 N·m")), "30 N·m with dial wrench");
}

TEST(JointState, FoundIsSaidWithItsNote)
{
    FastenerFound found{ActSeq(1), Moment{}, PersonId(1), FoundHow::Measured, typedTorque("28 N·m"), ""};
    EXPECT_EQ(text(foundText(found)), "28 N·m");
    found.how = FoundHow::Broken;
    found.note = "head off";
    EXPECT_EQ(text(foundText(found)), "broken: head off");
}

TEST(JointState, AllThatIsKnownOfAFastener)
{
    TractorStory story(coverFrame());
    story.log(loosened({7}, FoundHow::LooseByFeel));
    story.log(ticks({7}, 0, TickHow::SetTool, "11.8 lbf·ft"));
    story.log(FindingFact{FastenerSubject{cover, {7}}, "washer bent"});
    const QStringList lines = fastenerLines(story.state(), cover, 7);
    ASSERT_EQ(lines.size(), 4) << text(lines.join(u'|'));
    EXPECT_TRUE(lines[0].startsWith(QStringLiteral("found: loose by feel (M.K., ")));
    EXPECT_TRUE(lines[1].startsWith(QStringLiteral("pass 1 of 3 (50 %): 16 N·m with small wrench set to 11.8 lbf·ft (M.K., ")))
        << text(lines[1]);
    EXPECT_EQ(text(lines[2]), "now: not tight yet");
    EXPECT_EQ(text(lines[3]), "noted: washer bent");
    EXPECT_TRUE(fastenerLines(story.state(), cover, 99).isEmpty());
    EXPECT_TRUE(fastenerLines(story.state(), JointId(77), 1).isEmpty());
}

TEST(JointState, SeveralLooseAreAFinding)
{
    const Joint cover = jointOfText(coverText());
    EXPECT_EQ(text(looseFinding(cover, {2, 5, 7})), "Several were loose: 2, 5 and 7 of 12.");
    EXPECT_EQ(text(looseFinding(cover, {2})), "One was loose: 2 of 12.");
}

TEST(JointState, WhatIsStillWantedIsAskedWithAWayOut)
{
    const Joint cover = jointOfText(coverText());
    const auto asked = [&cover](JointWants::Kind kind) { return jointWantsSentence({kind, {2, 5}}, cover); };
    EXPECT_TRUE(asked(JointWants::Kind::Nothing).isEmpty());
    for (const auto kind : {JointWants::Kind::SayFitted, JointWants::Kind::AcceptReuse, JointWants::Kind::TorqueOutside})
        EXPECT_TRUE(asked(kind).startsWith(QStringLiteral("Fasteners 2 and 5"))) << text(asked(kind));
    EXPECT_TRUE(asked(JointWants::Kind::AcceptUnsettled).contains(QStringLiteral("accept it with a reason")));
    // What was found broken is asked about too, where nothing is made to be used once.
    EXPECT_EQ(text(asked(JointWants::Kind::SayFitted)),
              "Fasteners 2 and 5: found missing, broken or of the wrong length. Say whether what goes in is new");
    EXPECT_FALSE(asked(JointWants::Kind::AcceptReuse).contains(QStringLiteral("once"))) << text(asked(JointWants::Kind::AcceptReuse));
    JointText yield = coverText();
    yield.singleUse = SingleUse::TorqueToYield;
    const QString outside = jointWantsSentence({JointWants::Kind::TorqueOutside, {2}}, jointOfText(yield));
    EXPECT_FALSE(outside.contains(QStringLiteral("ighten again"))) << text(outside);
}

TEST(JointNext, TheFirstLineOfTheBench)
{
    const TractorStory story(coverFrame());
    const auto said = [&story](const NextAct &act) { return text(nextActSentence(act, story.state())); };
    const next::OfJoint where{StepId(4), cover};
    EXPECT_EQ(said(next::TightenNext{where, {7, 0, 1}}), "Fastener 7: to 50 %, 16 N·m · pass 1 of 3");
    EXPECT_EQ(said(next::TightenNext{where, {7, 1, 1}}), "Fastener 7: to the target, 32 N·m · pass 2 of 3");
    EXPECT_EQ(said(next::TightenNext{where, {7, 2, 2}}),
              "Fastener 7: once more to 32 N·m, and note whether it moves · pass 3 of 3, round 2 of at most 3");
    EXPECT_EQ(said(next::LoosenJoint{where}), "Loosen the fasteners of Valve cover from the outside in, and note what was loose");
    EXPECT_EQ(said(next::SettleJoint{where}), "Look Valve cover over once more");
}

TEST(JointNext, AnUnknownJointIsNotFatal)
{
    const TractorStory story(coverFrame());
    const next::OfJoint where{StepId(4), JointId(99)};
    for (const NextAct &act : std::vector<NextAct>{next::LoosenJoint{where}, next::TightenNext{where, {}}, next::SettleJoint{where}})
        EXPECT_EQ(text(nextActSentence(act, story.state())), "Tighten the cover");
}

TEST(JointOpen, ItemsReadAsOnTheSheet)
{
    TractorStory story(coverFrame());
    story.log(loosened({3}, FoundHow::Broken, {}, "head off"));
    story.log(ticks({9}, 0, TickHow::ByFeel));
    const JobState state = story.state();
    const auto said = [&state](const OpenItem &item) {
        const OpenWords words = openWords(item, state, Moment{});
        return text(words.title + u'|' + words.note);
    };
    EXPECT_EQ(said(open::FastenersLoose{cover, 12}), "12 fasteners not tight|Valve cover");
    EXPECT_EQ(said(open::FastenerFound{cover, 3}), "Fastener 3 broken|Valve cover: head off");
    EXPECT_EQ(said(open::FastenerByFeel{cover, 9}), "Fastener 9 tightened by feel|Valve cover, done, unmeasured: no wrench reaches");
    EXPECT_EQ(said(open::CalibrationOverdue{cover, wrench}), "Calibration overdue: small wrench|Valve cover was tightened with it");
    EXPECT_EQ(said(open::JointAssumed{cover}), "Tolerance of a torque assumed|Valve cover: 32 ± 4 N·m");
}

TEST(JointSteps, AreBegunOnceBegun)
{
    TractorStory story(coverFrame());
    story.log(StepDoneFact{StepId(1)});
    const auto look = [&story](int step) { return stepLookOf(story.state(), *story.frame.step(StepId(step))); };
    EXPECT_EQ(look(3), StepLook::ToDo);
    story.log(loosened({3}, FoundHow::LooseByFeel));
    EXPECT_EQ(look(3), StepLook::Begun);
    EXPECT_EQ(look(4), StepLook::ToDo);
    story.log(ticks({1}, 0, TickHow::SetTool, "11.8 lbf·ft"));
    EXPECT_EQ(look(4), StepLook::Begun);
}

TEST(JointResume, ABegunJointIsCounted)
{
    TractorStory story(coverFrame());
    EXPECT_EQ(resumeLines(story.state(), Moment{}).size(), 4);
    story.log(ticks({1}, 0, TickHow::SetTool, "11.8 lbf·ft"));
    EXPECT_TRUE(resumeLines(story.state(), Moment{}).contains(QStringLiteral("Valve cover: 0 of 12 tight")));
}

} // namespace joint_telling_tests

} // namespace asleft
