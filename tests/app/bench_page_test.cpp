#include "bench_driver.h"

#include <bench/doubts.h>

#include <drawn/point_button.h>

#include <words/crank.h>

namespace asleft::testing::bench_page_test {

class BenchPageTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void outOfPlaceAsksOnce();
    void anotherPointVoidsTheQuestion();
    void undoAndRedo();
    void allOfAPositionIsOneAct();
    void whatWorkMovedIsCheckedAgain();
    void arrowsGoFromPointToPoint();
    void clicksTakeAPointInHand();
    void unknownIsAnAnswer();
    void anotherPlanIsChosen();
    void openItemsLeadToTheirPoint();
    void whatAnotherSeatDoesArrives();
    void firstStartAsksWhileSomethingIsOpen();
    void somebodyElseTakesOver();
    void theKeypadRestsWhileTheHeadIsHidden();
    void everythingHasANameAndIsLargeEnough();
    void anOpenJobIsLeftAsItIs();
};

void BenchPageTest::outOfPlaceAsksOnce()
{
    Bench bench;
    bench.take("I3");
    const auto acts = bench.state().acts.size();
    logTyped(QStringLiteral("30"));
    QCOMPARE(bench.state().acts.size(), acts);
    QCOMPARE(here(bench.state(), pointNamed(*bench.page->book(), "I3")), Here::NotHere);
    QCOMPARE(bench.said(), placeDoubt(bench.state(), pointNamed(*bench.page->book(), "I3")));
    press(Qt::Key_Return);
    QVERIFY(bench.point("I3").found->reading.outOfPosition);
    QVERIFY(!bench.point("I1").found);
}

void BenchPageTest::anotherPointVoidsTheQuestion()
{
    Bench bench;
    bench.take("I3");
    logTyped(QStringLiteral("30"));
    bench.take("E4");
    logTyped(QStringLiteral("30"));
    QVERIFY(!bench.point("E4").found);
    QCOMPARE(here(bench.state(), pointNamed(*bench.page->book(), "E4")), Here::NotHere);
    QCOMPARE(bench.said(), placeDoubt(bench.state(), pointNamed(*bench.page->book(), "E4")));
}

void BenchPageTest::undoAndRedo()
{
    Bench bench;
    logTyped(QStringLiteral("28"));
    logTyped(QStringLiteral("41"));
    press(Qt::Key_Z, Qt::ControlModifier);
    QCOMPARE(bench.point("E1").stage, PointStage::Untouched);
    QCOMPARE(bench.inHand(), QStringLiteral("E1"));
    press(Qt::Key_Z, Qt::ControlModifier);
    QCOMPARE(bench.point("I1").stage, PointStage::Untouched);
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    QCOMPARE(bench.point("I1").stage, PointStage::Found);
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    QCOMPARE(bench.point("E1").found->reading.value->value, micrometres(410));
}

void BenchPageTest::allOfAPositionIsOneAct()
{
    Bench bench;
    const auto acts = bench.state().acts.size();
    click(bench.page->pane<ValvePane>()->allHereKey());
    QCOMPARE(bench.state().acts.size(), acts);
    QVERIFY(!bench.said().isEmpty());
    click(bench.page->pane<ValvePane>()->allHereKey());
    QCOMPARE(bench.state().acts.size(), acts + 1);
    // Inline 4, 1-3-4-2, no. 1 on compression: IN 1 2, EX 1 3 (TM 5-3895-383-24 p 6-60).
    for (const char *set : {"I1", "I2", "E1", "E3"})
        QVERIFY(bench.point(set).settled() && bench.point(set).left->reading.specLeaf);
    for (const char *elsewhere : {"I3", "I4", "E2", "E4"})
        QCOMPARE(bench.point(elsewhere).stage, PointStage::Untouched);
    press(Qt::Key_Z, Qt::ControlModifier);
    QCOMPARE(bench.point("E3").stage, PointStage::Untouched);
}

void BenchPageTest::whatWorkMovedIsCheckedAgain()
{
    Bench bench;
    press(Qt::Key_S);
    QVERIFY(bench.point("I1").settled());
    // At a point that is not left the others can be sent all the same.
    press(Qt::Key_C);
    CheckAgainPane *sheet = bench.page->pane<CheckAgainPane>();
    QCOMPARE(bench.page->sheet(), sheet);
    QVERIFY(!sheet->reach()->key(int(CheckAgainPane::Reach::ThisPoint))->isEnabled());
    clickRow(sheet->causes(), qint64(Disturbance::RockersTightened));
    QCOMPARE(sheet->reach()->choice(), int(CheckAgainPane::Reach::Bank));
    click(sheet->logKey());
    QCOMPARE(bench.page->sheet(), bench.page->pane<ValvePane>());
    QCOMPARE(bench.point("I1").stage, PointStage::CheckAgain);
    QCOMPARE(bench.point("I1").disturbance, std::optional(Disturbance::RockersTightened));
    QCOMPARE(bench.point("E1").stage, PointStage::Untouched);
    bench.take("I1");
    logTyped(QStringLiteral("29"));
    QVERIFY(bench.point("I1").settled());
}

void BenchPageTest::arrowsGoFromPointToPoint()
{
    Bench bench;
    press(Qt::Key_Right);
    QCOMPARE(bench.inHand().right(1), QStringLiteral("2"));
    press(Qt::Key_Left);
    press(Qt::Key_Left);
    QCOMPARE(bench.inHand(), QStringLiteral("I1"));
    press(Qt::Key_Up);
    QCOMPARE(bench.inHand(), QStringLiteral("E1"));
}

void BenchPageTest::clicksTakeAPointInHand()
{
    Bench bench;
    const auto &points = bench.state().frame->engine.points;
    for (std::size_t i = 0; i < points.size(); ++i) {
        QTest::mouseClick(bench.page->pane<ValvePane>()->head()->button(qsizetype(i)), Qt::LeftButton);
        QCOMPARE(bench.page->pane<ValvePane>()->inHand(), std::optional(points[i].id));
        QCOMPARE(QApplication::focusWidget(), static_cast<QWidget *>(bench.bar()->edit()));
    }
}

void BenchPageTest::unknownIsAnAnswer()
{
    Bench bench;
    press(Qt::Key_Z, Qt::ControlModifier);
    // The crank's place taken back is asked for again at once.
    QCOMPARE(bench.page->sheet(), bench.page->pane<CrankPane>());
    click(bench.page->pane<CrankPane>()->unknownKey());
    QVERIFY(bench.state().crank && !bench.state().crank->crank);
    QCOMPARE(bench.page->sheet(), bench.page->pane<ValvePane>());
    QVERIFY(readable(*bench.page->pane<ValvePane>()).contains(crankName(bench.state().frame->engine.design, std::nullopt)));
    QVERIFY(std::holds_alternative<next::ConfirmCrank>(nextValveAct(bench.state())));
    press(Qt::Key_Return);
    QCOMPARE(bench.page->sheet(), bench.page->pane<CrankPane>());
}

void BenchPageTest::anotherPlanIsChosen()
{
    Bench bench;
    click(bench.page->pane<ValvePane>()->planKey());
    QCOMPARE(bench.page->sheet(), bench.page->pane<PlanPane>());
    PlanPane *sheet = bench.page->pane<PlanPane>();
    QCOMPARE(sheet->ways()->currentId(), std::optional(qint64(PlanWay::TwoPositions)));
    QVERIFY(!sheet->workKey()->isEnabled());
    clickRow(sheet->ways(), qint64(PlanWay::EachOnCompression));
    click(sheet->workKey());
    QCOMPARE(bench.page->sheet(), bench.page->pane<ValvePane>());
    QCOMPARE(bench.state().plan->positions.size(), std::size_t(4));
    QVERIFY(readable(*bench.page->pane<ValvePane>()).contains(QStringLiteral("IN 1 EX 1")));
}

void BenchPageTest::openItemsLeadToTheirPoint()
{
    Bench bench;
    bench.take("E3");
    press(Qt::Key_N);
    bench.take("I1");
    QCOMPARE(openCount<open::NutOpen>(bench), 1);
    clickOpen<open::NutOpen>(bench);
    QCOMPARE(bench.inHand(), QStringLiteral("E3"));
}

void BenchPageTest::whatAnotherSeatDoesArrives()
{
    Bench bench;
    type(QStringLiteral("2"));
    const OtherStation other(bench);
    QVERIFY(other.book->openNut(pointNamed(*other.book, "I2")));
    QTRY_COMPARE(bench.point("I2").stage, PointStage::NutOpen);
    QCOMPARE(bench.page->openColumn()->rows(Gate::TurningTheCrank)->rows().size(), 2);
    // Nothing of it disturbs what is being typed here.
    QCOMPARE(bench.bar()->edit()->text(), QStringLiteral("2"));
    QCOMPARE(bench.inHand(), QStringLiteral("I1"));
    press(Qt::Key_Backspace);
    press(Qt::Key_Z, Qt::ControlModifier);
    QCOMPARE(bench.point("I2").stage, PointStage::NutOpen);
}

void BenchPageTest::firstStartAsksWhileSomethingIsOpen()
{
    Bench bench;
    const auto &steps = bench.state().frame->job.steps;
    const auto firstStart = std::find_if(steps.begin(), steps.end(), [](const Step &step) { return step.before == Gate::HandOver; });
    bench.page->viewStep(firstStart->id);
    press(Qt::Key_Return);
    QVERIFY(!stepDone(bench.state(), *firstStart));
    QStringList open;
    const StillOpen all = stillOpen(bench.state(), {});
    for (const auto *items : {&all.turning, &all.firstStart})
        for (const OpenItem &item : *items)
            open.append(openWords(item, bench.state(), {}).title);
    QVERIFY(std::ranges::any_of(all.firstStart, [](const OpenItem &item) { return std::holds_alternative<open::PointsNotLeft>(item); }));
    const QString question =
        StepPane::tr("Still open before first start: %1. Nothing is logged yet; “Done” once more if it is done all the same.");
    QVERIFY(readable(*bench.page->pane<StepPane>()).contains(question.arg(open.join(QStringLiteral(", ")))));
    press(Qt::Key_Return);
    QVERIFY(stepDone(bench.state(), *firstStart));
}

void BenchPageTest::somebodyElseTakesOver()
{
    Bench bench;
    click(bench.page->stepsColumn()->sessionKey());
    QCOMPARE(bench.page->sheet(), bench.page->pane<SessionPane>());
    QTest::mouseClick(bench.page->pane<SessionPane>()->initials()->edit(), Qt::LeftButton);
    type(QStringLiteral("TB"));
    press(Qt::Key_Return);
    bench.page->viewStep(bench.valveStep());
    // The crank was confirmed in this session already.
    QCOMPARE(bench.page->sheet(), bench.page->pane<ValvePane>());
    logTyped(QStringLiteral("28"));
    QCOMPARE(bench.state().frame->person(bench.point("I1").found->who)->initials, std::string("TB"));
}

void BenchPageTest::theKeypadRestsWhileTheHeadIsHidden()
{
    Bench bench;
    click(buttonNamed(*bench.page, QStringLiteral("Keypad")));
    bench.page->viewStep(bench.state().frame->job.steps.front().id);
    const auto acts = bench.state().acts.size();
    for (const char *key : {"2", "8", "log"})
        click(buttonNamed(*bench.page, QString::fromUtf8(key)));
    QCOMPARE(bench.state().acts.size(), acts);
    QVERIFY(bench.bar()->edit()->text().isEmpty());
}

void BenchPageTest::everythingHasANameAndIsLargeEnough()
{
    Bench bench;
    int seen = 0;
    press(Qt::Key_S);
    const std::vector<std::function<void()>> ways{[] {},
                                                  [&] { click(bench.page->pane<ValvePane>()->planKey()); },
                                                  [&] { press(Qt::Key_C); },
                                                  [&] { click(bench.page->pane<ValvePane>()->sheetKey()); },
                                                  [&] { bench.page->turnCrank(); },
                                                  [&] { click(bench.page->stepsColumn()->sessionKey()); }};
    for (const auto &go : ways) {
        bench.page->viewStep(bench.valveStep());
        go();
        QCoreApplication::processEvents();
        expectNamesAndSizes(*bench.page, seen);
    }
    QVERIFY(seen > 80);
}

void BenchPageTest::anOpenJobIsLeftAsItIs()
{
    Bench bench;
    type(QStringLiteral("2"));
    bench.page->openJob(*bench.page->job());
    QCOMPARE(bench.page->sheet(), bench.page->pane<ValvePane>());
    QCOMPARE(bench.bar()->edit()->text(), QStringLiteral("2"));
}

APP_TEST(BenchPageTest)

} // namespace asleft::testing::bench_page_test

#include "bench_page_test.moc"
