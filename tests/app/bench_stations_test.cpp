// Two computers at one point, and a garage that may only be read.

#include "bench_driver.h"

#include <words/job.h>
#include <words/points.h>

#include <QTimer>

namespace asleft::testing::bench_stations_test {

class BenchStationsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void anActOnThePointInHandIsSaid();
    void whatIsBeingTypedStaysAndAsksOnce();
    void aSentenceFromOutsideStandsWhileOneTypes();
    void anotherPointsNewsDisturbNothing();
    void takingBackIsSaidToo();
    void aQuestionAskedBeforeIsVoid();
    void pointsSetByTwoAreOpen();
    void whoComesSecondIsTold();
    void aReadOnlyGarageIsLookedAt();
    void nothingWritesInAReadOnlyGarage();
};

void BenchStationsTest::anActOnThePointInHandIsSaid()
{
    Bench bench;
    const OtherStation other(bench);
    const auto looks = bench.page->findChildren<QTimer *>(Qt::FindDirectChildrenOnly);
    QVERIFY2(std::any_of(looks.begin(), looks.end(), [](const QTimer *timer) { return timer->isActive() && timer->interval() <= 1000; }),
             "it is looked for within a second");
    other.left("I1", "0.30");
    QTRY_VERIFY(bench.said().contains(QStringLiteral("TB")));
    QVERIFY(bench.said().contains(QStringLiteral("0.30 mm")));
    QCOMPARE(bench.inHand(), QStringLiteral("I1"));
    QVERIFY(bench.point("I1").settled());
    // Enter on nothing goes on to what is next.
    press(Qt::Key_Return);
    QCOMPARE(bench.inHand(), QStringLiteral("E1"));
}

void BenchStationsTest::whatIsBeingTypedStaysAndAsksOnce()
{
    Bench bench;
    const OtherStation other(bench);
    type(QStringLiteral("2"));
    other.left("I1", "0.30");
    QTRY_VERIFY(bench.point("I1").settled());
    QCOMPARE(bench.bar()->edit()->text(), QStringLiteral("2"));
    QVERIFY(bench.bar()->edit()->hasFocus());
    type(QStringLiteral("8"));
    const auto acts = bench.state().acts.size();
    press(Qt::Key_Return);
    QCOMPARE(bench.state().acts.size(), acts);
    QVERIFY(bench.said().contains(QStringLiteral("TB")));
    press(Qt::Key_Return);
    // It was begun as found, and is that still.
    QCOMPARE(bench.point("I1").found->reading.value->value, micrometres(280));
    QCOMPARE(bench.point("I1").left->reading.value->value, micrometres(300));
}

void BenchStationsTest::aSentenceFromOutsideStandsWhileOneTypes()
{
    Bench bench;
    const OtherStation other(bench);
    other.left("I1", "0.30");
    QTRY_VERIFY(!bench.said().isEmpty());
    type(QStringLiteral("29"));
    QVERIFY(bench.said().contains(QStringLiteral("TB")));
    // It came before anything was typed: one Enter is enough.
    press(Qt::Key_Return);
    const auto theirs = std::ranges::find(bench.state().acts, bench.point("I1").leftByTwo->seq, &Act::seq);
    QCOMPARE(bench.said(), otherStationText(*theirs, bench.state()));
    QCOMPARE(bench.point("I1").left->reading.value->value, micrometres(290));
}

void BenchStationsTest::anotherPointsNewsDisturbNothing()
{
    Bench bench;
    const OtherStation other(bench);
    logTyped(QStringLiteral("28"));
    const QString said = bench.said();
    other.left("E3", "0.40");
    QTRY_VERIFY(bench.point("E3").settled());
    QCOMPARE(bench.said(), said);
    QCOMPARE(bench.inHand(), QStringLiteral("E1"));
}

void BenchStationsTest::takingBackIsSaidToo()
{
    Bench bench;
    const OtherStation other(bench);
    other.left("I1", "0.30");
    QTRY_VERIFY(bench.point("I1").settled());
    bench.take("I1");
    QVERIFY(bench.said().isEmpty());
    QVERIFY(other.book->undo());
    QTRY_VERIFY(bench.said().contains(QStringLiteral("TB")));
    QCOMPARE(bench.point("I1").stage, PointStage::Untouched);
}

void BenchStationsTest::aQuestionAskedBeforeIsVoid()
{
    Bench bench;
    const OtherStation other(bench);
    logTyped(QStringLiteral("280"));
    const QString far = ValvePane::tr("%1 Enter again logs it as typed.").arg(farOff("2.80 mm"));
    QCOMPARE(bench.said(), far);
    other.left("I1", "0.30");
    QTRY_VERIFY(bench.said().contains(QStringLiteral("TB")));
    press(Qt::Key_Return);
    QVERIFY(!bench.point("I1").found);
    QVERIFY(bench.said().endsWith(far) && bench.said().contains(QStringLiteral("TB")));
    press(Qt::Key_Return);
    QCOMPARE(bench.point("I1").found->reading.value->value, micrometres(2800));
}

void BenchStationsTest::pointsSetByTwoAreOpen()
{
    Bench bench;
    const OtherStation other(bench);
    bench.take("I2");
    press(Qt::Key_S);
    other.left("I2", "0.31");
    QTRY_COMPARE(openCount<open::SetByTwo>(bench), 1);
    // Its line leads to the point.
    bench.take("E1");
    clickOpen<open::SetByTwo>(bench);
    QCOMPARE(bench.inHand(), QStringLiteral("I2"));
    // Felt once more by one of them, or kept, it is settled.
    press(Qt::Key_K);
    press(Qt::Key_Return);
    QVERIFY(bench.point("I2").settled());
}

void BenchStationsTest::whoComesSecondIsTold()
{
    Bench bench;
    const OtherStation other(bench);
    // Both at once: theirs is on the file before this computer has looked.
    other.left("I1", "0.30");
    press(Qt::Key_S);
    QVERIFY(bench.point("I1").leftByTwo);
    QVERIFY2(bench.said().contains(QStringLiteral("TB")), qPrintable(bench.said()));
}

void BenchStationsTest::aReadOnlyGarageIsLookedAt()
{
    Bench bench;
    logTyped(QStringLiteral("28"));
    const JobId job = *bench.page->job();
    bench.page.reset();
    ReadOnlyShop reading(bench.shop);
    BenchPage page(*reading.context);
    page.openJob(job);
    present(page);
    page.takeFocus();
    QCOMPARE(page.sheet(), page.pane<SessionPane>());
    QVERIFY(!page.pane<SessionPane>()->initials());
    QVERIFY(readable(*page.pane<SessionPane>()).contains(actText(page.book()->state().acts.back(), page.book()->state())));
    press(Qt::Key_Return);
    page.viewStep(page.book()->state().frame->job.steps[2].id);
    QCOMPARE(page.sheet(), page.pane<ValvePane>());
    // Points are walked through and told of.
    page.pane<ValvePane>()->takeInHand(pointNamed(*page.book(), "I1"));
    QVERIFY(page.pane<ValvePane>()->bar()->now()->text().contains(pointName(*page.book()->state().frame, pointNamed(*page.book(), "I1"))));
    press(Qt::Key_Right);
    QVERIFY(nameOf(*page.book(), page.pane<ValvePane>()->inHand()) != QStringLiteral("I1"));
    click(page.pane<ValvePane>()->planKey());
    QCOMPARE(page.sheet(), page.pane<PlanPane>());
    QVERIFY(!page.pane<PlanPane>()->workKey()->isEnabled());
}

void BenchStationsTest::nothingWritesInAReadOnlyGarage()
{
    Bench bench;
    press(Qt::Key_S);
    const JobId job = *bench.page->job();
    const auto acts = bench.state().acts.size();
    bench.page.reset();
    ReadOnlyShop reading(bench.shop);
    QVERIFY(reading.garage->readOnly());
    BenchPage page(*reading.context);
    page.openJob(job);
    present(page);
    page.takeFocus();
    press(Qt::Key_Return);
    page.viewStep(page.book()->state().frame->job.steps[2].id);
    ValvePane *valves = page.pane<ValvePane>();
    for (const KeyButton *key : {valves->turnKey(), valves->allHereKey(), valves->sheetKey(), valves->undoKey(),
                                 page.stepsColumn()->sessionKey(), page.stepsColumn()->typeKey()})
        QVERIFY2(!key->isEnabled(), qPrintable(key->text()));
    for (const KeyButton *key : valves->bar()->keys())
        QVERIFY2(!key->isEnabled(), qPrintable(key->accessibleName()));
    QVERIFY(page.stepsColumn()->printKey()->isEnabled());
    // Keys of the keyboard do no more.
    for (const Qt::Key key : {Qt::Key_S, Qt::Key_N, Qt::Key_L, Qt::Key_K, Qt::Key_C})
        press(key);
    logTyped(QStringLiteral("28"));
    press(Qt::Key_Z, Qt::ControlModifier);
    press(Qt::Key_B, Qt::ControlModifier);
    QCOMPARE(page.sheet(), valves);
    QVERIFY(valves->bar()->edit()->text().isEmpty());
    page.viewStep(page.book()->state().frame->job.steps.front().id);
    QVERIFY(!page.pane<StepPane>()->doneKey()->isEnabled());
    QVERIFY(page.book()->catchUp());
    QCOMPARE(page.book()->state().acts.size(), acts);
}

APP_TEST(BenchStationsTest)

} // namespace asleft::testing::bench_stations_test

#include "bench_stations_test.moc"
