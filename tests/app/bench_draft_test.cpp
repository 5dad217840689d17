// Who filled a bench sheet in and when, and what is typed of it is never lost.

#include "bench_paper_driver.h"

#include <bench/work_date.h>

namespace asleft::testing::bench_draft_test {

class BenchDraftTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void whoWhenAndHowTheEngineWas();
    void badDatesAreRefused_data();
    void badDatesAreRefused();
    void daysAreRead();
    void leavingAsksOnceAndKeepsADraft();
    void anotherJobAsksBeforeTheDraftIsLost();
    void anotherPlanKeepsWhatIsTyped();
    void theStepsLeadHereToo();
    void theCrankIsAskedForAfterwards();
};

void BenchDraftTest::whoWhenAndHowTheEngineWas()
{
    Paper paper;
    const auto tom = addPerson(*paper.shop.garage, "TB", {});
    const PersonId here = *paper.page->book()->session().who;
    QCoreApplication::processEvents();
    PaperTop *top = paper.sheet->top();
    click(top->whoKeys()->key(1));
    click(top->conditionKeys()->key(1));
    QTest::mouseClick(top->date()->edit(), Qt::LeftButton);
    type(QStringLiteral("2025-09-14"));
    press(Qt::Key_Return);
    QVERIFY(paper.sheet->lines().front()->field(Phase::AsFound)->hasFocus());
    logTyped(QStringLiteral("30"));
    click(paper.sheet->logKey());
    const PointId point = paper.sheet->lines().front()->point();
    const Judged &found = *paper.state().point(point).found;
    QCOMPARE(found.who, *tom);
    QCOMPARE(dayOf(found.at), QDate(2025, 9, 14));
    QCOMPARE(found.reading.condition, EngineCondition::Hot);
    // Whoever sits at the bench stays there.
    QCOMPARE(paper.page->book()->session().who, std::optional(here));
    QCOMPARE(paper.page->book()->session().condition, EngineCondition::Cold);
}

void BenchDraftTest::badDatesAreRefused_data()
{
    QTest::addColumn<QString>("typed");
    for (const char *typed : {"yesterday", "2025-13-01", "31 Feb 2025", "14", "2999-01-01"})
        QTest::newRow(typed) << QString::fromLatin1(typed);
}

void BenchDraftTest::badDatesAreRefused()
{
    QFETCH(QString, typed);
    Paper paper;
    const auto acts = paper.state().acts.size();
    logTyped(QStringLiteral("30"));
    paper.sheet->top()->date()->edit()->setText(typed);
    click(paper.sheet->logKey());
    QCOMPARE(paper.state().acts.size(), acts);
    QVERIFY(paper.sheet->top()->date()->isRefused());
    QVERIFY(paper.sheet->top()->date()->edit()->hasFocus());
    QCOMPARE(paper.sheet->draft(), 1);
}

void BenchDraftTest::daysAreRead()
{
    for (const char *typed : {"2026-05-14", " 14 May 2026 ", "14  May  2026", "5 Dec 2025"})
        QVERIFY2(readDay(QString::fromLatin1(typed)), typed);
    QCOMPARE(*readDay(QStringLiteral("14 May 2026")), QDate(2026, 5, 14));
    QVERIFY(!readDay({}));
    QCOMPARE(dayOf(noonOf(QDate(2026, 3, 29))), QDate(2026, 3, 29));
}

void BenchDraftTest::leavingAsksOnceAndKeepsADraft()
{
    Paper paper;
    logTyped(QStringLiteral("28"));
    click(paper.sheet->backKey());
    QCOMPARE(paper.page->sheet(), paper.sheet);
    const QString filled = BenchSheetPane::tr("%n box(es) are filled in and not logged.", nullptr, 1) + QChar::Space;
    QCOMPARE(paper.sheet->message()->sentence(),
             filled + BenchSheetPane::tr("Leaving keeps what is typed here while the job is open: once more leaves."));
    click(paper.sheet->backKey());
    QCOMPARE(paper.page->sheet(), paper.page->pane<ValvePane>());
    press(Qt::Key_B, Qt::ControlModifier);
    QCOMPARE(paper.page->sheet(), paper.sheet);
    QCOMPARE(paper.sheet->lines().front()->field(Phase::AsFound)->text(), QStringLiteral("28"));
    QVERIFY(paper.sheet->lines().front()->field(Phase::AsLeft)->hasFocus());
    // By the steps it asks too, once more since something was typed.
    logTyped(QStringLiteral("30"));
    const StepId first = paper.state().frame->job.steps.front().id;
    clickRow(paper.page->steps(), first.key());
    QCOMPARE(paper.page->sheet(), paper.sheet);
    QCOMPARE(paper.page->steps()->currentId(), std::optional(paper.valveStep().key()));
    clickRow(paper.page->steps(), first.key());
    QCOMPARE(paper.page->sheet(), paper.page->pane<StepPane>());
    // Empty it is left without a word.
    paper.page->viewStep(paper.valveStep());
    click(paper.page->pane<ValvePane>()->sheetKey());
    for (PaperLine *line : paper.sheet->lines())
        for (const Phase phase : {Phase::AsFound, Phase::AsLeft})
            line->field(phase)->clear();
    click(paper.sheet->backKey());
    QCOMPARE(paper.page->sheet(), paper.page->pane<ValvePane>());
}

void BenchDraftTest::anotherJobAsksBeforeTheDraftIsLost()
{
    Paper paper;
    logTyped(QStringLiteral("28"));
    // Left already, which was asked about: that it would be lost is another question.
    click(paper.sheet->backKey());
    click(paper.sheet->backKey());
    QCOMPARE(paper.page->sheet(), paper.page->pane<ValvePane>());
    const auto first = *paper.page->job();
    const auto second = openJob(*paper.shop.garage, paper.made->vehicle, paper.made->engine, builtInSheets().front(), "Once more");
    paper.page->openJob(*second);
    QCOMPARE(paper.page->job(), std::optional(first));
    QCOMPARE(paper.page->sheet(), paper.sheet);
    const QString lost =
        BenchSheetPane::tr("Another job was to be opened, and what is typed would be lost: log it, or open that job once more.");
    QCOMPARE(paper.sheet->message()->sentence(),
             BenchSheetPane::tr("%n box(es) are filled in and not logged.", nullptr, 1) + QChar::Space + lost);
    paper.page->openJob(*second);
    QCOMPARE(paper.page->job(), std::optional(*second));
    const auto *fresh = paper.page->pane<BenchSheetPane>();
    QVERIFY(!fresh || fresh->draft() == 0);
}

void BenchDraftTest::anotherPlanKeepsWhatIsTyped()
{
    Paper paper;
    paper.typeAt("E4", Phase::AsLeft, QStringLiteral("41"));
    QVERIFY(paper.page->book()->choosePlan(generatePlan(paper.state().frame->engine.design, PlanWay::EachOnCompression)));
    QCOMPARE(paper.page->sheet(), paper.sheet);
    QCOMPARE(paper.box("E4", Phase::AsLeft)->text(), QStringLiteral("41"));
    // 1-3-4-2, each on its own compression.
    QCOMPARE(paper.order(), QString::fromLatin1("I1 E1 I3 E3 I4 E4 I2 E2").split(QLatin1Char(' ')));
    QCOMPARE(paper.sheet->draft(), 1);
}

void BenchDraftTest::theStepsLeadHereToo()
{
    Bench bench;
    bench.page->viewStep(bench.state().frame->job.steps.front().id);
    click(bench.page->stepsColumn()->typeKey());
    QCOMPARE(bench.page->sheet(), bench.page->pane<BenchSheetPane>());
}

void BenchDraftTest::theCrankIsAskedForAfterwards()
{
    Paper paper;
    paper.typeAt("I1", Phase::AsLeft, QStringLiteral("30"));
    click(paper.sheet->logKey());
    QVERIFY(paper.point("I1").settled());
    QVERIFY(!paper.page->book()->session().crankConfirmed);
    paper.page->viewStep(paper.valveStep());
    QCOMPARE(paper.page->sheet(), paper.page->pane<CrankPane>());
}

APP_TEST(BenchDraftTest)

} // namespace asleft::testing::bench_draft_test

#include "bench_draft_test.moc"
