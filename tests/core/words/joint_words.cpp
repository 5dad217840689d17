#include "gui.h"
#include "tractor.h"

#include <words/joint_names.h>
#include <words/joints.h>
#include <words/numbers.h>
#include <words/tools.h>
#include <words/torque_tools.h>

#include <QRegularExpression>

namespace asleft {

namespace joint_words_tests {

std::string text(const QString &words)
{
    return words.toStdString();
}

bool isClean(const QString &words)
{
    static const QRegularExpression left(QStringLiteral("%[0-9n]|\\s{2}|\\s[.,;:]"));
    return !words.isEmpty() && !words.contains(left);
}

template <class Enum>
void expectNamesApart(QString (*nameOf)(Enum), Enum last)
{
    QStringList names;
    for (int value = 0; value <= static_cast<int>(last); ++value)
        names.append(nameOf(static_cast<Enum>(value)));
    for (const QString &name : names)
        EXPECT_TRUE(isClean(name)) << text(name);
    EXPECT_EQ(names.removeDuplicates(), 0) << text(names.join(u'|'));
}

class Commas {
public:
    Commas() { QLocale::setDefault(QLocale(QLocale::German)); }
    ~Commas() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom)); }
    Commas(const Commas &) = delete;
    Commas &operator=(const Commas &) = delete;
};

TEST(JointNames, EveryValueHasAnOwn)
{
    expectNamesApart(strengthName, StrengthClass::A4_70);
    expectNamesApart(threadConditionName, ThreadCondition::AntiSeize);
    expectNamesApart(finishName, Finish::Cadmium);
    expectNamesApart(femaleMaterialName, FemaleMaterial::Insert);
    expectNamesApart(driveKindName, DriveKind::Screwdriver);
    expectNamesApart(singleUseName, SingleUse::CrushWasher);
    expectNamesApart(settleGroundName, SettleGround::ManualSaysSo);
    expectNamesApart(foundHowName, FoundHow::WrongLength);
    expectNamesApart(tickHowName, TickHow::ByFeel);
    expectNamesApart(fittedName, Fitted::Reused);
    expectNamesApart(acceptedWhatName, AcceptedWhat::Reused);
    expectNamesApart(toolKindName, ToolKind::Socket);
    EXPECT_EQ(text(strengthName(StrengthClass::C8_8)), "class 8.8");
    EXPECT_EQ(text(strengthName(StrengthClass::Sae5)), "grade 5");
    EXPECT_EQ(text(strengthName(StrengthClass::A2_70)), "A2-70");
}

TEST(FastenerNumbers, OneOrSeveral)
{
    EXPECT_EQ(text(fastenersName({3})), "Fastener 3");
    EXPECT_EQ(text(fastenersName({7, 2, 5})), "Fasteners 2, 5 and 7");
    EXPECT_EQ(text(fastenersName({1, 2})), "Fasteners 1 and 2");
    EXPECT_EQ(text(fastenersName({1, 2, 3})), "Fasteners 1, 2 and 3");
    EXPECT_EQ(text(fastenersName({4, 3, 2, 1, 9})), "Fasteners 1 to 4 and 9");
    EXPECT_EQ(text(fastenersName({5, 5})), "Fastener 5");
    EXPECT_EQ(text(fastenersName({})), "No fastener");
}

TEST(Torques, AreSaidInAsFewFiguresAsSayThem)
{
    EXPECT_EQ(text(torqueText(torque("32"), TorqueUnit::NewtonMetre)), "32 N·m");
    EXPECT_EQ(text(torqueText(torque("40 lbf·ft"), TorqueUnit::PoundFoot)), "40 lbf·ft");
    EXPECT_EQ(text(torqueText(torque("32"), TorqueUnit::PoundFoot)), "23.6 lbf·ft"); // 32/1.355 818
    EXPECT_EQ(text(torqueText(torque("0.125"), TorqueUnit::NewtonMetre)), "0.125 N·m");
    EXPECT_EQ(text(torqueText(torque("0.01"), TorqueUnit::PoundFoot)), "0.00738 lbf·ft"); // never nothing
    EXPECT_EQ(text(torqueText(torque("27.9996"), TorqueUnit::NewtonMetre)), "28 N·m");
    EXPECT_EQ(text(torqueText(torque("27.9996"), TorqueUnit::NewtonMetre, torque("28"))), "27.9996 N·m");
    const Commas commas;
    EXPECT_EQ(text(torqueText(torque("32"), TorqueUnit::PoundFoot)), "23,6 lbf·ft");
}

TEST(Torques, BandsAreSaidAsPrinted)
{
    const auto said = [](const char *typed) {
        return text(torqueBandText({*parseBand<Torque>(typed, TorqueUnit::NewtonMetre), std::nullopt}));
    };
    EXPECT_EQ(said("32 ± 4 N·m"), "32 ± 4 N·m");
    EXPECT_EQ(said("24 ± 3 lbf·ft"), "24 ± 3 lbf·ft");
    EXPECT_EQ(said("28 to 36 N·m"), "28 to 36 N·m");
    EXPECT_EQ(said("at least 20 N·m"), "at least 20 N·m");
    EXPECT_EQ(said("at most 20 N·m"), "at most 20 N·m");
    EXPECT_EQ(said("40 +5 -2 N·m"), "38 to 45 N·m");
    EXPECT_EQ(said("32 N·m"), "32 N·m");
}

TEST(Passes, SayWhatTheyAsk)
{
    const Joint cover = jointOfText(coverText());
    EXPECT_EQ(text(passName(cover, 0)), "to 50 %: 16 N·m");
    EXPECT_EQ(text(passName(cover, 1)), "to the target: 32 N·m");
    EXPECT_EQ(text(passName(cover, 2, 2)), "until none moves, round 2 of at most 3");
    EXPECT_EQ(text(passName(cover, 2, 0)), "until none moves, at most 3 rounds");
    EXPECT_EQ(text(passPlace(cover, 1)), "pass 2 of 3");
    JointText text2 = coverText();
    // 40 N·m, then 45° + 45° + 45° + 30° = 165° in all: TM 10-3930-669-20, Table E-1.
    text2.target = "";
    text2.settle = SettleGround::No;
    text2.passes = "finger, 40 N·m, +45°, +45°, +45°, +30°";
    const Joint head = jointOfText(text2);
    EXPECT_EQ(text(passName(head, 0)), "finger-tight");
    EXPECT_EQ(text(passName(head, 1)), "to 40 N·m");
    EXPECT_EQ(text(passName(head, 2)), "turn on by 45°");
    EXPECT_EQ(text(passName(head, 3)), "turn on by 45°, 90° in all");
    EXPECT_EQ(text(passName(head, 5)), "turn on by 30°, 165° in all");
    EXPECT_TRUE(isClean(jointSpecLine(head)));
}

TEST(JointLines, SayWhatAJointIs)
{
    const Joint cover = jointOfText(coverText());
    EXPECT_EQ(text(jointLine(cover)), "12 around a cover, M8, class 8.8");
    EXPECT_EQ(text(jointSpecLine(cover)), "32 ± 4 N·m oiled · Hollin workshop manual p. 41");
    EXPECT_EQ(text(driveLine(cover)), "socket 13 mm");
    EXPECT_TRUE(orderLine(cover).endsWith(QStringLiteral(" · generated, centre outward"))) << text(orderLine(cover));
    JointText four = coverText();
    four.pattern = *rowPattern(4);
    four.order = "2-3-1-4";
    four.target = "32 N·m";
    four.condition = {};
    four.source.certainty = Certainty::FromMemory;
    four.pattern.places[0].length = "40 mm";
    four.drive = DriveKind::Unsaid;
    four.driveSize = "";
    const Joint row = jointOfText(four);
    EXPECT_EQ(text(orderLine(row)), "2-3-1-4 · as the manual prints it");
    EXPECT_EQ(text(looseningLine(row)), "loosen 4-1-3-2 · the reverse of the manual's order");
    EXPECT_EQ(text(jointSpecLine(row)), "32 N·m, tolerance assumed · Hollin workshop manual p. 41, from memory");
    EXPECT_TRUE(jointLine(row).endsWith(QStringLiteral("lengths differ")));
    EXPECT_TRUE(driveLine(row).isEmpty());
}

TEST(JointLines, TheOrderOfACircleIsAStar)
{
    JointText circle = coverText();
    circle.pattern = *circlePattern(8);
    // ASME PCC-1, from memory.
    EXPECT_EQ(text(orderLine(jointOfText(circle))), "1-5-3-7-2-6-4-8 · generated, as a star");
    EXPECT_EQ(text(looseningLine(jointOfText(circle))), "loosen 8-4-6-2-7-3-5-1 · the reverse of a generated star");
}

TEST(JointLines, AGeneratedOrderIsLoosenedOutsideInward)
{
    JointText row = coverText();
    row.pattern = *rowPattern(4);
    EXPECT_EQ(text(orderLine(jointOfText(row))), "2-3-1-4 · generated, centre outward");
    EXPECT_EQ(text(looseningLine(jointOfText(row))), "loosen 4-1-3-2 · generated, outside inward");
    row.pattern = *rowPattern(1);
    EXPECT_EQ(looseningLine(jointOfText(row)), orderLine(jointOfText(row)));
}

TEST(Passes, AreSaidByTheTargetAsPrintedFirst)
{
    JointText both = coverText();
    both.otherTarget = "24 ± 3 lbf·ft";
    EXPECT_EQ(text(passName(jointOfText(both), 1)), "to the target: 32 N·m");
}

TEST(Passes, ATorqueOfItsOwnIsSaidAsTyped)
{
    JointText pounds = coverText();
    pounds.target = "40 ± 3 lbf·ft";
    pounds.passes = "30 N·m, target";
    pounds.settle = SettleGround::No;
    const Joint joint = jointOfText(pounds);
    EXPECT_EQ(text(passName(joint, 0)), "to 30 N·m");
    EXPECT_EQ(text(passName(joint, 1)), "to the target: 40 lbf·ft");
    const JobFrame frame = coverFrame(pounds);
    const Rack rack = rackOf(frame.tools);
    const auto wanted = toolsWanted(joint, rack, std::chrono::year(2026) / 1 / 1);
    ASSERT_EQ(wanted.size(), 2u);
    EXPECT_TRUE(toolWantedLine(wanted[0], joint, rack).startsWith(QStringLiteral("30 N·m: ")))
        << text(toolWantedLine(wanted[0], joint, rack));
    EXPECT_TRUE(toolWantedLine(wanted[1], joint, rack).startsWith(QStringLiteral("40 lbf·ft: ")));
    const Rack none;
    const auto unreached = toolsWanted(joint, none, std::chrono::year(2026) / 1 / 1);
    EXPECT_TRUE(toolWantedLine(unreached[0], joint, none).startsWith(QStringLiteral("No tool here reaches 30 N·m.")));
}

TEST(ToolWords, TheSettingIsInTheWrenchsOwnUnit)
{
    const JobFrame frame = coverFrame();
    const Tool &small = frame.tools[0];
    const auto setting = settingOn(small, torque("32"), std::nullopt);
    ASSERT_TRUE(setting);
    EXPECT_EQ(text(settingSentence(small, *setting)), "Set to 23.6 lbf·ft");
    EXPECT_EQ(text(settingSentence(frame.tools[1], typedTorque("32"))), "Read 32 N·m");
    const Commas commas;
    EXPECT_EQ(text(settingSentence(small, *setting)), "Set to 23,6 lbf·ft");
}

TEST(ToolWords, TheTrueTorqueIsSaidWhereAnAdapterChangesIt)
{
    const auto said = [](const std::optional<FitUsed> &fit) {
        return text(trueTorqueSentence(torque("32"), TorqueUnit::NewtonMetre, fit));
    };
    EXPECT_EQ(said(std::nullopt), "");
    EXPECT_EQ(said(FitUsed{crowfoot, {Length(), Angle()}}), "");
    EXPECT_EQ(said(FitUsed{crowfoot, {micrometres(40'000), degrees(90)}}), "40 mm adapter across: the setting stays");
    EXPECT_EQ(said(FitUsed{crowfoot, {micrometres(40'000), Angle()}}),
              "32 N·m at the fastener, 40 mm adapter straight out, hand on the grip mark");
    EXPECT_EQ(said(FitUsed{crowfoot, {micrometres(40'000), degrees(45)}}),
              "32 N·m at the fastener, 40 mm adapter at 45°, hand on the grip mark");
}

TEST(ToolWords, AToolExplainsItself)
{
    const JobFrame frame = coverFrame();
    ToolReach reach;
    reach.setting = torque("42");
    reach.reaches = reach.wellInside = true;
    reach.shareOfRange = 0.21;
    reach.deviation = Rational(4);
    const Tool &dial = frame.tools[1];
    EXPECT_EQ(text(reachSentence(reach, dial)), "± 4 %, at 21 % of its range, calibration due 31 Mar 2027");
    reach.calibrationOverdue = true;
    reach.wellInside = false;
    // A fifth of 200 N·m: ISO 6789 tests from there.
    EXPECT_EQ(text(reachSentence(reach, dial)),
              "± 4 %, at 21 % of its range, below where it is tested, from 40 N·m, calibration overdue since 31 Mar 2027");
    reach.reaches = false;
    reach.setting = torque("3");
    EXPECT_EQ(text(reachSentence(reach, dial)), "outside its range 20 to 200 N·m");
    reach.setting = torque("30");
    Tool unknown = dial;
    unknown.torque->lever = std::nullopt;
    EXPECT_TRUE(reachSentence(reach, unknown).startsWith(QStringLiteral("its lever is not known")));
}

TEST(ToolWords, NoneReachesNamesTheWaysOut)
{
    const JobFrame frame = coverFrame();
    const Rack rack = rackOf(frame.tools);
    const Joint screw = *coverFrame(coverText(), true).jointNow(screwId);
    const auto wanted = toolsWanted(screw, rack, std::chrono::year(2026) / 1 / 1);
    ASSERT_EQ(wanted.size(), 1u);
    // At most five times the torque: ISO 6789 tests a wrench from a fifth of its largest.
    EXPECT_EQ(text(toolWantedLine(wanted[0], screw, rack)),
              "No tool here reaches 3 N·m. Ways out: borrow one of at most 15 N·m; by feel, and said so.");
    const auto lines = toolsWanted(frame.joints.front(), rack, std::chrono::year(2026) / 1 / 1);
    ASSERT_EQ(lines.size(), 2u);
    EXPECT_EQ(text(toolWantedLine(lines[1], frame.joints.front(), rack)), "32 N·m: small wrench, set, ± 4 %");
    EXPECT_TRUE(toolWantedLine(lines[1], frame.joints.front(), {}).startsWith(QStringLiteral("32 N·m")));
}

TEST(ToolWords, AnAdapterThatHelpsIsNamedWithItsSetting)
{
    JobFrame frame = coverFrame();
    frame.tools.erase(frame.tools.begin());
    const Rack rack = rackOf(frame.tools);
    // 18 N·m through 40 mm back along a lever of 300 mm: 18·300/260 = 20.77 N·m.
    const ToolAdvice advice = chooseTool(torque("18"), rack.torqueTools, rack.adapterLengths, std::chrono::year(2026) / 1 / 1);
    EXPECT_EQ(text(noneReachesSentence(advice, torque("18"), TorqueUnit::NewtonMetre, rack)),
              "No tool here reaches 18 N·m. Ways out: dial wrench read at 20.8 N·m through the 40 mm adapter back along the handle; borrow "
              "one of at most 90 N·m; by feel, and said so.");
}

TEST(Preload, IsSaidWithItsShare)
{
    const Joint cover = jointOfText(coverText());
    PreloadCheck check;
    check.thread = *cover.thread;
    check.newtons = 21'214;
    check.shareOfProof = 0.752;
    EXPECT_EQ(text(preloadSentence(check, cover)), "21\u202f200 N, 75 % of its proof load");
    check.newtons = 87.4;
    check.shareOfProof = 0.0004;
    EXPECT_EQ(text(preloadSentence(check, cover)), "87 N, less than 1 % of its proof load");
    EXPECT_TRUE(preloadQuestion(check, cover).isEmpty());
    check.thread = *parseThread("M6");
    EXPECT_EQ(text(preloadSentence(check, cover)), "87 N in the M6, less than 1 % of its proof load");
}

TEST(Preload, AnAbsurdTorqueIsQuestioned)
{
    JointText small = coverText();
    small.thread = "M5";
    small.target = "60 lbf·ft";
    const Joint joint = jointOfText(small);
    PreloadCheck check;
    check.thread = *joint.thread;
    check.torque = typedTorque("60 lbf·ft");
    check.doubt = TorqueDoubt{13.2, TorqueUnit::PoundInch, torque("60 lbf·in")};
    EXPECT_EQ(text(preloadQuestion(check, joint)),
              "60 lbf·ft is 13 times what an M5 of class 8.8 takes; 60 lbf·in? Mend it, or say why it is right.");
    check.doubt = TorqueDoubt{0.031, std::nullopt, std::nullopt};
    EXPECT_EQ(text(preloadQuestion(check, joint)),
              "60 lbf·ft is only 3 % of what an M5 of class 8.8 takes. Compare it with the manual, or say why it is right.");
}

TEST(Preload, OfSeveralThreadsTheWorstIsNamed)
{
    JointText mixed = coverText();
    mixed.target = "";
    mixed.passes = "32 N·m, +90°";
    mixed.settle = SettleGround::No;
    mixed.pattern.places[4].thread = "M4";
    const Joint joint = jointOfText(mixed);
    const auto check = preloadCheck(joint);
    ASSERT_TRUE(check);
    // Without a target, of the torque the passes ask for.
    EXPECT_TRUE(preloadQuestion(*check, joint).startsWith(QStringLiteral("32 N·m is"))) << text(preloadQuestion(*check, joint));
    EXPECT_TRUE(preloadQuestion(*check, joint).contains(QStringLiteral("what an M4 of class 8.8 takes")));
    EXPECT_TRUE(preloadSentence(*check, joint).contains(QStringLiteral("N in the M4")));
}

TEST(JointCautions, NameWhatCanHurt)
{
    JointText cover = coverText();
    const auto all = [&cover] { return jointCautions(jointOfText(cover)).join(u'|'); };
    EXPECT_TRUE(all().contains(QStringLiteral("its own condition, oiled: nothing is taken off")));
    EXPECT_FALSE(all().contains(QStringLiteral("Blind hole")));
    cover.female = FemaleMaterial::Aluminium;
    EXPECT_FALSE(all().contains(QStringLiteral("general practice")));
    cover.condition = {};
    // 30 % into aluminium: TM 9-2320-362-14&P App. F.
    EXPECT_TRUE(all().contains(QStringLiteral("Into aluminium, general practice takes 30 %"))) << text(all());
    cover.blindHole = true;
    EXPECT_TRUE(all().contains(QStringLiteral("can crack the casting, or give a false torque")));
    cover.singleUse = SingleUse::TorqueToYield;
    EXPECT_TRUE(all().contains(QStringLiteral("Never tighten one again by torque")));
    for (const QString &caution : jointCautions(jointOfText(cover)))
        EXPECT_TRUE(isClean(caution) && caution.endsWith(u'.')) << text(caution);
}

} // namespace joint_words_tests

} // namespace asleft
