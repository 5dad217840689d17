#include "joint_driver.h"

#include <joints/adapter.h>
#include <words/errors.h>
#include <words/numbers.h>
#include <words/readings.h>

#include <QSignalSpy>

namespace asleft::testing::bench_rig_test {

using Key = TightenPane::Key;

/// The wrench, the adapter and what is read on a joint on the Bench.
class BenchRigTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void outOfRangeAsksOnce();
    void anAdapterStraightOutChangesTheSetting();
    void anAdapterAcrossChangesNothing();
    void aTypedLengthAndAngle();
    void whatCannotBeTypedIsRefused_data();
    void whatCannotBeTypedIsRefused();
    void anAdapterOnAnUnknownLeverIsRefused();
    void aReadWrenchWantsItsReading();
    void aReadingIsJudgedAsItIsTyped();
    void whatTheBarSaysIsWhatIsLogged();
    void readingsThatAreNone_data();
    void readingsThatAreNone();
    void aFarReadingAsksOnce();
    void aReadingOutsideIsTightenedAgainOrAccepted();
    void tightenAgainGoesBackToTheTarget();
    void theTargetIsTheOnePrintedInTheWrenchsUnits();
    void anAngleIsTurnedOn();
    void itFitsANarrowWindow();
};

void BenchRigTest::outOfRangeAsksOnce()
{
    JointBench bench(rowText());
    QCOMPARE(bench.large_(), bench.toBe(bench.large, "32 N·m"));
    bench.choose(*bench.small); // 6 to 30 N·m
    const Rig small = bench.rigBy({.wrench = bench.small});
    QCOMPARE(bench.small_(), rigSmall(small, bench.text(), 0));
    QVERIFY(!small.reach->reaches);
    const auto acts = bench.acts();
    press(Qt::Key_Return);
    QCOMPARE(bench.acts(), acts);
    QCOMPARE(bench.said(), JointBench::asking({TightenPane::tr("%1: %2. The same again ticks it with this wrench all the same.")
                                                   .arg(QStringLiteral("small wrench"), reachSentence(*small.reach, *small.tool))}));
    const int first = bench.inHand();
    press(Qt::Key_Return);
    QVERIFY(bench.fastener(first).ticks.front().fact.outOfRange);
    QCOMPARE(bench.fastener(first).verdict(), std::optional(Verdict::TooClose));
    // It was asked for this joint and setting.
    press(Qt::Key_Return);
    QCOMPARE(bench.acts(), acts + 2);
}

void BenchRigTest::anAdapterStraightOutChangesTheSetting()
{
    JointBench bench(rowText());
    click(bench.key(Key::Wrench));
    clickRow(bench.rig().tools(), bench.large->key());
    clickRow(bench.rig().adapters(), bench.foot->key());
    // T·L/(L + E) = 32·400/(400 + 100) (TM 9-254; FAA AC 43.13-1B ch. 7).
    QCOMPARE(bench.rig().result()->text(), bench.toBe(bench.large, "25.6 N·m"));
    click(bench.rig().useKey());
    QCOMPARE(bench.large_(), bench.toBe(bench.large, "25.6 N·m"));
    const FitUsed straightOut{*bench.foot, {micrometres(100'000), Angle()}};
    QVERIFY2(bench.small_().startsWith(trueTorqueSentence(torque("32"), TorqueUnit::NewtonMetre, straightOut)), qPrintable(bench.small_()));
    const int first = bench.inHand();
    press(Qt::Key_Return);
    const TickMade &made = bench.fastener(first).ticks.front();
    QVERIFY(made.fact.fit);
    QCOMPARE(made.fact.fit->adapter, bench.foot);
    QCOMPARE(made.torque, std::optional(parse<Torque>("32", TorqueUnit::NewtonMetre)->value));
    QCOMPARE(made.verdict, std::optional(Verdict::Inside));
    // It is kept for the next.
    QCOMPARE(bench.large_(), bench.toBe(bench.large, "25.6 N·m"));
}

void BenchRigTest::anAdapterAcrossChangesNothing()
{
    JointBench bench(rowText());
    click(bench.key(Key::Wrench));
    clickRow(bench.rig().adapters(), bench.foot->key());
    click(bench.rig().way()->key(int(RigPane::Way::Across)));
    click(bench.rig().useKey());
    QCOMPARE(bench.large_(), bench.toBe(bench.large, "32 N·m"));
    const int first = bench.inHand();
    press(Qt::Key_Return);
    const TickMade &made = bench.fastener(first).ticks.front();
    QCOMPARE(made.fact.fit->adapter, bench.foot);
    QCOMPARE(made.torque, std::optional(made.fact.setting->value));
}

void BenchRigTest::aTypedLengthAndAngle()
{
    JointBench bench(rowText());
    press(Qt::Key_W);
    clickRow(bench.rig().tools(), bench.large->key());
    const auto &lines = static_cast<RuledRows *>(bench.rig().adapters()->model())->rows();
    clickRow(bench.rig().adapters(), lines.back().id);
    bench.rig().length()->edit()->setFocus();
    type(QStringLiteral("60 mm"));
    click(bench.rig().way()->key(int(RigPane::Way::Other)));
    bench.rig().angle()->edit()->setFocus();
    type(QStringLiteral("45"));
    press(Qt::Key_Return);
    // 32·400/(400 + 60·cos 45°) = 28.93.
    QCOMPARE(bench.large_(), bench.toBe(bench.large, "28.9 N·m"));
    QCOMPARE(QApplication::focusWidget(), bench.key(Key::Done));
}

void BenchRigTest::whatCannotBeTypedIsRefused_data()
{
    QTest::addColumn<QString>("length");
    QTest::addColumn<QString>("angle");
    QTest::newRow("no length") << QString() << QStringLiteral("45");
    QTest::newRow("words") << QStringLiteral("long") << QStringLiteral("45");
    QTest::newRow("a torque") << QStringLiteral("60 N·m") << QStringLiteral("45");
    QTest::newRow("less than nothing") << QStringLiteral("-60 mm") << QStringLiteral("45");
    QTest::newRow("no angle") << QStringLiteral("60 mm") << QString();
    QTest::newRow("a length for an angle") << QStringLiteral("60 mm") << QStringLiteral("5 mm");
}

void BenchRigTest::whatCannotBeTypedIsRefused()
{
    QFETCH(QString, length);
    QFETCH(QString, angle);
    JointBench bench(rowText());
    press(Qt::Key_W);
    const auto &lines = static_cast<RuledRows *>(bench.rig().adapters()->model())->rows();
    clickRow(bench.rig().adapters(), lines.back().id);
    click(bench.rig().way()->key(int(RigPane::Way::Other)));
    bench.rig().length()->setText(length);
    bench.rig().angle()->setText(angle);
    click(bench.rig().useKey());
    // It stays, says why, and has the keyboard where it is mended.
    QVERIFY(bench.rig().isVisible());
    QVERIFY(bench.rig().length()->isRefused() || bench.rig().angle()->isRefused());
    QVERIFY(QApplication::focusWidget() == bench.rig().length()->edit() || QApplication::focusWidget() == bench.rig().angle()->edit());
    press(Qt::Key_Escape);
    QVERIFY(!bench.rig().isVisible());
    QCOMPARE(bench.large_(), bench.toBe(bench.large, "32 N·m"));
}

void BenchRigTest::anAdapterOnAnUnknownLeverIsRefused()
{
    JointBench bench(rowText(4, "20 ± 2 N·m"));
    click(bench.key(Key::Wrench));
    clickRow(bench.rig().tools(), bench.small->key());
    clickRow(bench.rig().adapters(), bench.foot->key());
    click(bench.rig().useKey());
    const auto acts = bench.acts();
    press(Qt::Key_Return);
    QCOMPARE(bench.acts(), acts);
    QCOMPARE(bench.said(), sentence(Error{ErrorKind::LeverMissing, {"small wrench"}}));
}

void BenchRigTest::aReadWrenchWantsItsReading()
{
    JointBench bench(rowText(), Wall::OneRead);
    QCOMPARE(bench.large_(), bench.toBe(bench.large, "32 N·m"));
    QCOMPARE(QApplication::focusWidget(), static_cast<QWidget *>(bench.sheet().bar()->edit()));
    const auto acts = bench.acts();
    press(Qt::Key_Return);
    QCOMPARE(bench.acts(), acts);
    QVERIFY(!bench.key(Key::WholePass)->isEnabled());
    const int first = bench.inHand();
    logTyped(QStringLiteral("31.5"));
    QCOMPARE(bench.acts(), acts + 1);
    QCOMPARE(typedText(*bench.fastener(first).ticks.front().fact.reading), QStringLiteral("31.5 N·m"));
    QCOMPARE(bench.fastener(first).verdict(), std::optional(Verdict::Inside));
    QVERIFY(bench.sheet().bar()->edit()->text().isEmpty());
}

void BenchRigTest::aReadingIsJudgedAsItIsTyped()
{
    JointBench bench(rowText(), Wall::OneRead);
    QVERIFY2(bench.small_().contains(QStringLiteral("32 ± 4 N·m")), qPrintable(bench.small_()));
    type(QStringLiteral("37"));
    QVERIFY2(bench.small_().contains(verdictName(Verdict::High)), qPrintable(bench.small_()));
    press(Qt::Key_Backspace);
    press(Qt::Key_Backspace);
    type(QStringLiteral("25 lbf·ft")); // 33.9 N·m
    QVERIFY2(bench.small_().contains(verdictName(Verdict::Inside)), qPrintable(bench.small_()));
}

void BenchRigTest::whatTheBarSaysIsWhatIsLogged()
{
    JointBench bench(rowText(), Wall::OneRead);
    QVERIFY(setDecisionRule(*bench.shop.garage, DecisionRule::WithUncertainty));
    const int first = bench.inHand();
    type(QStringLiteral("28.1")); // inside by a tenth, which the wrench cannot tell
    QVERIFY2(bench.small_().contains(verdictName(Verdict::TooClose)), qPrintable(bench.small_()));
    press(Qt::Key_Return);
    QCOMPARE(bench.fastener(first).verdict(), std::optional(Verdict::TooClose));
}

void BenchRigTest::readingsThatAreNone_data()
{
    QTest::addColumn<QString>("text");
    for (const char *text : {"strong", "32 mm", "-32", "1,250", "32 32", "32 N", "1/0"})
        QTest::newRow(text) << QString::fromUtf8(text);
}

void BenchRigTest::readingsThatAreNone()
{
    QFETCH(QString, text);
    JointBench bench(rowText(), Wall::OneRead);
    const auto acts = bench.acts();
    bench.sheet().bar()->edit()->setText(text);
    press(Qt::Key_Return);
    QCOMPARE(bench.acts(), acts);
    QVERIFY(!bench.said().isEmpty());
    QCOMPARE(bench.sheet().bar()->edit()->text(), text);
    QVERIFY(bench.sheet().bar()->edit()->isRefused());
}

void BenchRigTest::aFarReadingAsksOnce()
{
    JointBench bench(rowText(), Wall::OneRead);
    const auto acts = bench.acts();
    logTyped(QStringLiteral("320"));
    QCOMPARE(bench.acts(), acts);
    QCOMPARE(bench.said(), JointBench::asking({TightenPane::tr("%1 is far from the %2 asked for. Enter again logs it as typed.")
                                                   .arg(QStringLiteral("320 N·m"), QStringLiteral("32.0 N·m"))}));
    press(Qt::Key_Return);
    QCOMPARE(bench.acts(), acts + 1);
}

void BenchRigTest::aReadingOutsideIsTightenedAgainOrAccepted()
{
    JointBench bench(rowText(), Wall::OneRead);
    const int first = bench.inHand();
    logTyped(QStringLiteral("37"));
    for (int i = 0; i < 3; ++i)
        logTyped(QStringLiteral("32"));
    QCOMPARE(bench.inHand(), first);
    QCOMPARE(QApplication::focusWidget(), bench.key(Key::Again));
    press(Qt::Key_Return);
    QVERIFY(bench.fastener(first).ticks.empty());
    logTyped(QStringLiteral("37"));
    press(Qt::Key_C);
    type(QStringLiteral("the manual allows 38"));
    press(Qt::Key_Return);
    QCOMPARE(bench.fastener(first).torqueAccepted, std::optional<std::string>("the manual allows 38"));
    QSignalSpy finished(&bench.sheet(), &JointPane::finished);
    press(Qt::Key_Return);
    QCOMPARE(finished.size(), 1);
}

void BenchRigTest::tightenAgainGoesBackToTheTarget()
{
    JointText text = rowText();
    text.passes = "target, + 90°";
    JointBench bench(text, Wall::OneRead);
    const int first = bench.inHand();
    logTyped(QStringLiteral("37"));
    for (int i = 0; i < 3; ++i)
        logTyped(QStringLiteral("32"));
    bench.tickTimes(4);
    QVERIFY(bench.worked().progress.finished());
    QVERIFY(bench.key(Key::BeginAnew)->isVisible());
    click(bench.key(Key::Again));
    // The turn on came on top of the torque that was wrong.
    QVERIFY(bench.fastener(first).ticks.empty());
    QCOMPARE(bench.inHand(), first);
    QCOMPARE(bench.large_(), bench.toBe(bench.large, "32 N·m"));
}

void BenchRigTest::theTargetIsTheOnePrintedInTheWrenchsUnits()
{
    JointText text = rowText();
    text.otherTarget = "24 ± 3 lbf·ft";
    JointBench bench(text);
    TorqueWrenchText pounds = wrenchText("pound wrench", "10", "80");
    pounds.unit = TorqueUnit::PoundFoot;
    const auto wrench = addTorqueWrench(*bench.shop.garage, pounds);
    QVERIFY(wrench);
    QTRY_VERIFY(bench.state().frame->tool(*wrench));
    bench.choose(*bench.large);
    QCOMPARE(bench.large_(), bench.toBe(bench.large, "32 N·m"));
    bench.choose(*wrench);
    QCOMPARE(bench.large_(), bench.toBe(*wrench, "24 lbf·ft")); // 32 N·m would be 23.6
    const int first = bench.inHand();
    press(Qt::Key_Return);
    QCOMPARE(bench.fastener(first).ticks.front().fact.setting->value, parse<Torque>("24", TorqueUnit::PoundFoot)->value);
    QCOMPARE(bench.fastener(first).verdict(), std::optional(Verdict::Inside));
}

void BenchRigTest::anAngleIsTurnedOn()
{
    JointText text = rowText();
    text.passes = "target, + 90°, + 45°";
    JointBench bench(text);
    bench.tickTimes(4);
    const Rig byMark = bench.rigBy({.byMark = true});
    QCOMPARE(bench.large_(), rigLarge(byMark, bench.text(), 1));
    QVERIFY(bench.large_().contains(turnedText(degrees(90), AngleUnit::Degree)));
    QCOMPARE(bench.small_(), rigSmall(byMark, bench.text(), 1));
    const int first = bench.inHand();
    press(Qt::Key_Return);
    QCOMPARE(bench.fastener(first).ticks.back().fact.how, TickHow::ByAngle);
    QVERIFY(!bench.fastener(first).ticks.back().fact.tool);
    bench.tickTimes(3);
    QVERIFY2(bench.small_().contains(turnedText(degrees(135), AngleUnit::Degree)), qPrintable(bench.small_()));
}

void BenchRigTest::itFitsANarrowWindow()
{
    JointText text = coverText();
    text.singleUse = SingleUse::TorqueToYield;
    text.blindHole = true;
    for (const Wall wall : {Wall::TwoSet, Wall::OneRead}) {
        JointBench bench(text, wall);
        // The least window, without the places along its edge.
        bench.page->setMinimumSize(1024, 640);
        bench.page->resize(1024, 640);
        const std::vector<std::function<void()>> ways{[] {}, [&] { press(Qt::Key_F); }, [&] { bench.goLoosen(); },
                                                      [&] {
                                                          for (int i = 0; i < 3; ++i)
                                                              press(Qt::Key_L);
                                                      },
                                                      [&] {
                                                          bench.page->viewStep(bench.line(StepKind::Tighten));
                                                          click(bench.key(Key::Wrench));
                                                      }};
        for (const auto &go : ways) {
            go();
            QCoreApplication::processEvents();
            QCOMPARE(bench.page->size(), QSize(1024, 640));
            const auto *shown = qobject_cast<JointPane *>(bench.page->sheet());
            for (const KeyButton *key : shown->bar()->keys())
                QVERIFY2(!key->isVisible() || key->visibleRegion().boundingRect().size() == key->sizeHint(), qPrintable(key->text()));
        }
    }
}

APP_TEST(BenchRigTest)

} // namespace asleft::testing::bench_rig_test

#include "bench_rig_test.moc"
