#include "joint_driver.h"

#include <words/errors.h>

namespace asleft::testing::bench_anew_test {

using Key = TightenPane::Key;

/// What another computer, another revision or a last look changes about a joint on the Bench.
class BenchAnewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void whatAnotherSeatTicksArrives();
    void singleUseIsAsked();
    void whatWasMissingIsAskedAbout();
    void aNewerRevisionIsSaid();
    void whatAnotherSeatBeganAnewIsShownFirst();
    void beginAnewIsOfferedWhereItNeverSettled();
    void whatWasTakenToYieldIsBegunAnew();
};

void BenchAnewTest::whatAnotherSeatTicksArrives()
{
    JointBench bench;
    const int first = bench.inHand();
    const OtherStation other(bench);
    other.tickNext(*bench.joint, *bench.small);
    QTRY_COMPARE(bench.fastener(first).ticks.size(), std::size_t(1));
    QVERIFY2(bench.said().contains(QStringLiteral("TB")), qPrintable(bench.said()));
    QCOMPARE(bench.inHand(), first);
    // It has this pass: Enter goes on and logs nothing.
    const auto acts = bench.acts();
    press(Qt::Key_Return);
    QCOMPARE(bench.acts(), acts);
    QCOMPARE(bench.inHand(), bench.worked().progress.next->fastener);
}

void BenchAnewTest::singleUseIsAsked()
{
    JointText text = rowText();
    text.singleUse = SingleUse::CrushWasher;
    JointBench bench(text);
    QVERIFY(!bench.sheet().bar()->asked()->text().isEmpty());
    QCOMPARE(QApplication::focusWidget(), bench.key(Key::AllNew));
    press(Qt::Key_U);
    const int reused = bench.inHand();
    QCOMPARE(bench.fastener(reused).fitted, std::optional(Fitted::Reused));
    // Enter out of habit says nothing of what was not looked at.
    const auto acts = bench.acts();
    press(Qt::Key_N);
    QCOMPARE(bench.acts(), acts);
    const auto others = jointWants(bench.text(), bench.worked()).fasteners;
    QCOMPARE(others.size(), std::size_t(3));
    QCOMPARE(bench.said(),
             JointBench::asking({TightenPane::tr("%1: looked at, and new? The same again logs it.").arg(fastenersName(others))}));
    press(Qt::Key_N);
    QCOMPARE(bench.acts(), acts + 1);
    QCOMPARE(QApplication::focusWidget(), bench.key(Key::Done));
    bench.tickTimes(4);
    QVERIFY(bench.worked().progress.finished());
    QCOMPARE(jointWants(jointInHand(bench.state(), *bench.joint), bench.worked()).kind, JointWants::Kind::AcceptReuse);
    press(Qt::Key_C);
    type(QStringLiteral("annealed"));
    press(Qt::Key_Return);
    QCOMPARE(bench.fastener(reused).reuseAccepted, std::optional<std::string>("annealed"));
    QVERIFY(bench.worked().settled(jointInHand(bench.state(), *bench.joint)));
}

void BenchAnewTest::whatWasMissingIsAskedAbout()
{
    JointBench bench(rowText());
    QVERIFY(bench.page->book()->loosen({.joint = *bench.joint, .fasteners = {3}, .how = FoundHow::Missing}));
    QVERIFY(bench.sheet().bar()->asked()->text().contains(QStringLiteral("3")));
    // A whole pass does not sweep it in without a word.
    const auto acts = bench.acts();
    click(bench.key(Key::WholePass));
    QCOMPARE(bench.acts(), acts);
    const QString missing =
        TightenPane::tr("Fastener %1 was found so: %2. Say first what went in instead; the same again ticks it all the same.");
    QCOMPARE(bench.said(), JointBench::asking({bench.wholePass(4), missing.arg(3).arg(foundText(*bench.fastener(3).found))}));
    QCOMPARE(openCount<open::FastenerFound>(bench), 1);
    press(Qt::Key_N);
    press(Qt::Key_N);
    QCOMPARE(bench.fastener(3).fitted, std::optional(Fitted::New));
    QVERIFY(!bench.fastener(3).amiss);
    QCOMPARE(openCount<open::FastenerFound>(bench), 0);
}

void BenchAnewTest::aNewerRevisionIsSaid()
{
    JointBench bench(rowText());
    bench.tickTimes(2);
    JointText text = rowText(4, "28 ± 3 N·m");
    QVERIFY(reviseJoint(*bench.shop.garage, *bench.joint, bench.made.engine, text));
    QTRY_VERIFY(bench.key(Key::BeginAnew)->isVisible());
    QCOMPARE(bench.large_(), bench.toBe(bench.large, "32 N·m"));
    const auto acts = bench.acts();
    click(bench.key(Key::BeginAnew));
    QCOMPARE(bench.acts(), acts);
    click(bench.key(Key::BeginAnew));
    QCOMPARE(bench.worked().revision, 2);
    QVERIFY(bench.worked().progress.doneInRound.empty());
    QCOMPARE(bench.large_(), bench.toBe(bench.large, "28 N·m"));
    QVERIFY(!bench.key(Key::BeginAnew)->isVisible());
}

void BenchAnewTest::whatAnotherSeatBeganAnewIsShownFirst()
{
    JointBench bench(rowText());
    bench.tickTimes(1);
    QVERIFY(reviseJoint(*bench.shop.garage, *bench.joint, bench.made.engine, rowText(4, "28 ± 3 N·m")));
    const OtherStation other(bench);
    QVERIFY(other.book->beginJoint(*bench.joint));
    // Nothing has been read on here yet: what is shown is the old revision.
    QCOMPARE(bench.large_(), bench.toBe(bench.large, "32 N·m"));
    press(Qt::Key_Return);
    QCOMPARE(bench.said(), sentence(Error{ErrorKind::JointChanged, {"Thermostat housing"}}));
    QVERIFY(bench.worked().progress.doneInRound.empty());
    QCOMPARE(bench.large_(), bench.toBe(bench.large, "28 N·m"));
    // The one under the hand stays in hand, though another is the first now.
    const int held = bench.inHand();
    QVERIFY(held != bench.worked().progress.next->fastener);
    press(Qt::Key_Return);
    QCOMPARE(bench.said(), JointBench::leavesOrder(bench.worked().progress.next->fastener, held));
    press(Qt::Key_Return);
    QCOMPARE(bench.fastener(held).ticks.size(), std::size_t(1));
    QCOMPARE(bench.fastener(held).ticks.front().fact.revision, 2);
}

void BenchAnewTest::beginAnewIsOfferedWhereItNeverSettled()
{
    JointBench bench;
    QVERIFY(!bench.key(Key::BeginAnew)->isVisible());
    bench.tickTimes(24);
    for (int round = 1; round <= 3; ++round) {
        press(Qt::Key_M);
        bench.tickTimes(11);
    }
    QVERIFY(bench.worked().progress.unsettled);
    QVERIFY(bench.key(Key::BeginAnew)->isVisible());
    const QString anew = TightenPane::tr("begin anew");
    QCOMPARE(bench.key(Key::BeginAnew)->text(), anew);
    const auto acts = bench.acts();
    press(Qt::Key_B);
    QCOMPARE(bench.acts(), acts);
    const QString question = TightenPane::tr("Every fastener is to be tightened again from the first pass. “%1” once more begins it.");
    QCOMPARE(bench.said(), JointBench::asking({question.arg(anew)}));
    press(Qt::Key_B);
    QCOMPARE(bench.acts(), acts + 1);
    QCOMPARE(bench.worked().progress.pass, 0);
    QVERIFY(!bench.worked().progress.unsettled);
    QVERIFY(!bench.key(Key::BeginAnew)->isVisible());
}

void BenchAnewTest::whatWasTakenToYieldIsBegunAnew()
{
    JointText text = rowText();
    text.singleUse = SingleUse::TorqueToYield;
    JointBench bench(text, Wall::OneRead);
    press(Qt::Key_N);
    press(Qt::Key_N); // all new, looked at
    logTyped(QStringLiteral("37"));
    for (int i = 0; i < 3; ++i)
        logTyped(QStringLiteral("32"));
    QCOMPARE(jointWants(jointInHand(bench.state(), *bench.joint), bench.worked()).kind, JointWants::Kind::TorqueOutside);
    QVERIFY(!bench.key(Key::Again)->isVisible());
    QCOMPARE(QApplication::focusWidget(), bench.key(Key::BeginAnew));
}

APP_TEST(BenchAnewTest)

} // namespace asleft::testing::bench_anew_test

#include "bench_anew_test.moc"
