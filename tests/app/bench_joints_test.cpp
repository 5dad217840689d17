#include "joint_driver.h"

#include <words/errors.h>

#include <QKeyEvent>
#include <QSignalSpy>

namespace asleft::testing::bench_joints_test {

using Key = TightenPane::Key;

class BenchJointsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void enterTicksInOrder();
    void enterThatIsHeldTicksOnce();
    void settledJointsGoOn();
    void movedAsksForAnotherRound();
    void wholePassAsksOnce();
    void wrongTicksAreTakenBack();
    void undoAndRedo();
    void outOfOrderAsksOnce();
    void clicksAndArrowsTakeInHand();
    void enterOnTickedLogsNothing();
    void noneReachesIsByFeel();
    void byFeelAsksOneReason();
    void byFeelIsAccepted();
    void openItemsLeadToTheFastener();
    void everythingHasANameAndIsLargeEnough();
    void theKeyboardIsNeverLost();
    void whatMayOnlyBeReadSaysSo();
};

void BenchJointsTest::enterTicksInOrder()
{
    JointBench bench;
    QCOMPARE(bench.page->sheet(), &bench.sheet());
    QVERIFY(bench.now().contains(passPlace(bench.text(), 0)));
    // Half of 32 N·m: the small wrench, 6 to 30 N·m, is the only one that reaches.
    QCOMPARE(bench.large_(), bench.toBe(bench.small, "16 N·m"));
    QVERIFY(bench.small_().contains(QStringLiteral("small wrench")));
    const TighteningOrder order = jointInHand(bench.state(), *bench.joint).order;
    for (const int number : order) {
        QCOMPARE(bench.inHand(), number);
        const auto acts = bench.acts();
        press(Qt::Key_Return);
        QCOMPARE(bench.acts(), acts + 1);
        QCOMPARE(bench.fastener(number).ticks.size(), std::size_t(1));
        QCOMPARE(bench.fastener(number).ticks.front().fact.tool, bench.small);
        QCOMPARE(bench.sheet().bar()->message()->role(), MessageLine::Role::Done);
    }
    // The target is past the small wrench: the large one is proposed.
    QCOMPARE(bench.inHand(), order.front());
    QCOMPARE(bench.large_(), bench.toBe(bench.large, "32 N·m"));
    QVERIFY(bench.small_().contains(QStringLiteral("large wrench")));
}

void BenchJointsTest::enterThatIsHeldTicksOnce()
{
    JointBench bench;
    const auto acts = bench.acts();
    QKeyEvent held(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, QString(), true);
    for (int i = 0; i < 5; ++i)
        QCoreApplication::sendEvent(QApplication::focusWidget(), &held);
    QCOMPARE(bench.acts(), acts);
    press(Qt::Key_Return);
    QCOMPARE(bench.acts(), acts + 1);
}

void BenchJointsTest::settledJointsGoOn()
{
    JointBench bench;
    bench.tickTimes(36); // 12 at half, 12 at the target, 12 that did not move
    QVERIFY(bench.worked().progress.finished());
    QVERIFY(!bench.worked().progress.unsettled);
    const Step *line = bench.state().frame->step(bench.line(StepKind::Tighten));
    QVERIFY(stepDone(bench.state(), *line));
    const auto acts = bench.acts();
    QSignalSpy finished(&bench.sheet(), &JointPane::finished);
    press(Qt::Key_Return);
    QCOMPARE(finished.size(), 1);
    QCOMPARE(bench.acts(), acts);
    // Of this job only the loosening is left.
    QCOMPARE(bench.page->sheet(), &bench.loosening());
}

void BenchJointsTest::movedAsksForAnotherRound()
{
    JointBench bench;
    bench.tickTimes(24);
    QVERIFY(bench.key(Key::Moved)->isVisible());
    press(Qt::Key_M);
    QCOMPARE(bench.worked().progress.movedInRound.size(), std::size_t(1));
    bench.tickTimes(11);
    QCOMPARE(bench.worked().progress.round, 2);
    QVERIFY(bench.now().contains(passName(bench.text(), 2, 2)));
    for (int round = 2; round <= 3; ++round) {
        press(Qt::Key_M);
        bench.tickTimes(11);
    }
    // Three rounds at most, and one moved still.
    QVERIFY(bench.worked().progress.unsettled);
    QVERIFY(!bench.sheet().bar()->asked()->text().isEmpty());
    QVERIFY(bench.key(Key::AcceptAsked)->isVisible());
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    QCOMPARE(bench.said(), sentence(Error{ErrorKind::ReasonMissing, {}}));
    type(QStringLiteral("the gasket is new"));
    press(Qt::Key_Return);
    QCOMPARE(bench.worked().unsettledAccepted, std::optional<std::string>("the gasket is new"));
    QVERIFY(bench.worked().settled(jointInHand(bench.state(), *bench.joint)));
}

void BenchJointsTest::wholePassAsksOnce()
{
    JointBench bench;
    press(Qt::Key_Return);
    const auto acts = bench.acts();
    click(bench.key(Key::WholePass));
    QCOMPARE(bench.acts(), acts);
    QCOMPARE(bench.said(), JointBench::asking({bench.wholePass(11)}));
    // Enter is another act: it answers nothing.
    press(Qt::Key_A);
    QCOMPARE(bench.acts(), acts + 1);
    QCOMPARE(bench.worked().progress.pass, 1);
    press(Qt::Key_Z, Qt::ControlModifier);
    QCOMPARE(bench.worked().progress.doneInRound.size(), std::size_t(1));
    QCOMPARE(bench.worked().progress.pass, 0);
}

void BenchJointsTest::wrongTicksAreTakenBack()
{
    JointBench bench;
    const int first = bench.inHand();
    bench.tickTimes(2);
    bench.sheet().takeInHand(first);
    press(Qt::Key_T);
    QVERIFY(bench.fastener(first).ticks.empty());
    QCOMPARE(bench.worked().progress.next->fastener, first);
    QCOMPARE(bench.inHand(), first);
    // There is nothing more to take back.
    const auto acts = bench.acts();
    press(Qt::Key_T);
    QCOMPARE(bench.acts(), acts);
    QCOMPARE(bench.said(),
             BarKeys::tr("%1: there is nothing to do that to here. Nothing was logged.").arg(bench.key(Key::TakeBack)->accessibleName()));
    press(Qt::Key_Return);
    QCOMPARE(bench.worked().progress.doneInRound.size(), std::size_t(2));
}

void BenchJointsTest::undoAndRedo()
{
    JointBench bench;
    const int first = bench.inHand();
    press(Qt::Key_Return);
    press(Qt::Key_Z, Qt::ControlModifier);
    QVERIFY(bench.fastener(first).ticks.empty());
    QCOMPARE(bench.inHand(), first);
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    QCOMPARE(bench.fastener(first).ticks.size(), std::size_t(1));
    // From another sheet the joint comes in sight again.
    bench.goLoosen();
    click(bench.loosening().undoKey());
    QVERIFY(bench.fastener(first).ticks.empty());
}

void BenchJointsTest::outOfOrderAsksOnce()
{
    JointBench bench;
    const TighteningOrder order = jointInHand(bench.state(), *bench.joint).order;
    const auto acts = bench.acts();
    bench.sheet().takeInHand(order[5]);
    press(Qt::Key_Return);
    QCOMPARE(bench.acts(), acts);
    QCOMPARE(bench.said(), JointBench::leavesOrder(order[0], order[5]));
    press(Qt::Key_Return);
    QCOMPARE(bench.fastener(order[5]).ticks.size(), std::size_t(1));
    QCOMPARE(bench.inHand(), order[0]);
    // Once is enough for this pass.
    bench.sheet().takeInHand(order[7]);
    press(Qt::Key_Return);
    QCOMPARE(bench.fastener(order[7]).ticks.size(), std::size_t(1));
}

void BenchJointsTest::clicksAndArrowsTakeInHand()
{
    JointBench bench;
    const auto &places = jointInHand(bench.state(), *bench.joint).text.pattern.places;
    for (std::size_t i = 0; i < places.size(); ++i) {
        QTest::mouseClick(bench.sheet().view()->button(qsizetype(i)), Qt::LeftButton);
        QCOMPARE(bench.inHand(), places[i].number);
        QCOMPARE(QApplication::focusWidget(), bench.key(Key::Done));
    }
    bench.sheet().takeInHand(1);
    const auto right = bench.sheet().view()->neighbour(0, Qt::Key_Right);
    QVERIFY(right);
    press(Qt::Key_Right);
    QCOMPARE(bench.inHand(), places[std::size_t(*right)].number);
}

void BenchJointsTest::enterOnTickedLogsNothing()
{
    JointBench bench;
    const int first = bench.inHand();
    press(Qt::Key_Return);
    const int second = bench.inHand();
    bench.sheet().takeInHand(first);
    const auto acts = bench.acts();
    QCOMPARE(bench.key(Key::Done)->text(), TightenPane::tr("Next"));
    press(Qt::Key_Return);
    QCOMPARE(bench.acts(), acts);
    QCOMPARE(bench.inHand(), second);
}

void BenchJointsTest::noneReachesIsByFeel()
{
    JointBench bench(sensorText());
    const Rig none = bench.rigBy({});
    QCOMPARE(bench.small_(), noneReachesSentence(none.advice, torque("3"), TorqueUnit::NewtonMetre, none.rack));
    QVERIFY(!bench.key(Key::Done)->isVisible());
    QCOMPARE(QApplication::focusWidget(), bench.key(Key::ByFeel));
    const auto acts = bench.acts();
    press(Qt::Key_Return);
    QVERIFY(bench.sheet().bar()->asksReason());
    press(Qt::Key_Return); // a reason is wanted
    QCOMPARE(bench.acts(), acts);
    type(QStringLiteral("no wrench reaches"));
    press(Qt::Key_Return);
    QCOMPARE(bench.fastener(1).verdict(), std::optional(Verdict::ByFeel));
    QCOMPARE(bench.fastener(1).ticks.front().fact.reason, std::string("no wrench reaches"));
    QVERIFY(bench.worked().progress.finished());
    QCOMPARE(openCount<open::FastenerByFeel>(bench), 1);
}

void BenchJointsTest::byFeelAsksOneReason()
{
    JointBench bench(rowText());
    press(Qt::Key_F);
    press(Qt::Key_Escape);
    QVERIFY(!bench.sheet().bar()->asksReason());
    QVERIFY(bench.keyboardIsOn(*bench.sheet().bar()));
    press(Qt::Key_F);
    type(QStringLiteral("no room for a wrench"));
    press(Qt::Key_Return);
    const auto acts = bench.acts();
    const int second = bench.inHand();
    press(Qt::Key_F);
    QCOMPARE(bench.acts(), acts + 1);
    QCOMPARE(bench.fastener(second).ticks.front().fact.reason, std::string("no room for a wrench"));
}

void BenchJointsTest::byFeelIsAccepted()
{
    JointBench bench(sensorText());
    press(Qt::Key_Return);
    type(QStringLiteral("no wrench reaches"));
    press(Qt::Key_Return);
    bench.sheet().takeInHand(1);
    press(Qt::Key_C);
    type(QStringLiteral("it sits in plastic"));
    press(Qt::Key_Return);
    QCOMPARE(bench.fastener(1).feelAccepted, std::optional<std::string>("it sits in plastic"));
    QVERIFY(!bench.key(Key::Accept)->isVisible());
}

void BenchJointsTest::openItemsLeadToTheFastener()
{
    JointBench bench(rowText());
    bench.tickTimes(1);
    const int second = bench.inHand();
    press(Qt::Key_F);
    type(QStringLiteral("no room"));
    press(Qt::Key_Return);
    bench.goLoosen();
    clickOpen<open::FastenerByFeel>(bench);
    QCOMPARE(bench.page->sheet(), &bench.sheet());
    QCOMPARE(bench.inHand(), second);
}

void BenchJointsTest::everythingHasANameAndIsLargeEnough()
{
    JointText text = coverText();
    text.singleUse = SingleUse::TorqueToYield;
    JointBench bench(text);
    int seen = 0;
    const std::vector<std::function<void()>> ways{[] {}, [&] { click(bench.key(Key::Wrench)); },
                                                  [&] {
                                                      click(bench.rig().notNowKey());
                                                      press(Qt::Key_F);
                                                  },
                                                  [&] { bench.goLoosen(); }};
    for (const auto &go : ways) {
        go();
        QCoreApplication::processEvents();
        expectNamesAndSizes(*bench.page, seen);
    }
    QVERIFY(seen > 80);
}

void BenchJointsTest::theKeyboardIsNeverLost()
{
    JointBench bench;
    for (const Qt::Key key : {Qt::Key_Return, Qt::Key_A, Qt::Key_A, Qt::Key_T, Qt::Key_M, Qt::Key_W, Qt::Key_Escape, Qt::Key_F,
                              Qt::Key_Escape, Qt::Key_Right, Qt::Key_Return, Qt::Key_Return}) {
        press(key);
        QVERIFY2(bench.keyboardIsOn(bench.sheet()), qPrintable(QKeySequence(key).toString()));
    }
}

void BenchJointsTest::whatMayOnlyBeReadSaysSo()
{
    JointBench bench;
    bench.tickTimes(3);
    const ReadOnlyBench reading(bench, bench.line(StepKind::Tighten));
    const BenchPage &page = reading.page;
    const TightenPane &sheet = *page.pane<TightenPane>();
    QCOMPARE(page.sheet(), &sheet);
    for (const Key key : {Key::Done, Key::ByFeel, Key::WholePass, Key::TakeBack}) {
        QVERIFY(!sheet.key(key)->isEnabled());
        QCOMPARE(sheet.key(key)->accessibleDescription(), readOnlySentence());
    }
    // One can look at what it would be done with.
    QVERIFY(QApplication::focusWidget() && QApplication::focusWidget()->isVisible());
    click(sheet.key(Key::Wrench));
    click(sheet.rigPane()->useKey());
    QCOMPARE(page.book()->state().acts.size(), std::size_t(3));
}

APP_TEST(BenchJointsTest)

} // namespace asleft::testing::bench_joints_test

#include "bench_joints_test.moc"
