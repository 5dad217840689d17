// Plans of crank positions, and turning the crank by them.

#include "bench_driver.h"

#include <words/crank.h>
#include <words/errors.h>
#include <words/job.h>

namespace asleft::testing::bench_crank_test {

namespace {

/// The six of TM 9-2815-256-24, with a known cam.
BenchEngine six()
{
    BenchEngine engine = four();
    engine.engine.cylinders = 6;
    engine.engine.firingOrder = "1-5-3-6-2-4";
    engine.engine.cam.assumed = false;
    engine.engine.barring = "132/11";
    return engine;
}

BenchEngine twoStroke()
{
    BenchEngine engine = four();
    engine.engine.cycle = Cycle::TwoStroke;
    engine.engine.cam = twoStrokeCam();
    return engine;
}

void typeInto(ValueField *field, const QString &text)
{
    QTest::mouseClick(field->edit(), Qt::LeftButton);
    field->edit()->selectAll();
    type(text);
}

QStringList waysOf(const PlanPane &sheet)
{
    QStringList ways;
    for (const RuledRow &row : sheet.rows()->rows())
        ways.append(row.title);
    return ways;
}

} // namespace

class BenchCrankTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void everyWayIsShown();
    void theManualsTableComesFirst();
    void theRuleOfNineOnlyWhereItApplies();
    void theFewestAskForMarksAndMargin();
    void refusalsAreOneSentence();
    void thePlanBeginsWhereTheCrankStands();
    void thePinionIsTold();
    void placesBetweenTheMarksAreFound();
    void oneAngleInTwoLinesStaysTwoLines();
    void theCrankStandsWhileTappetsBleedDown();
    void aSecondPressTurnsAllTheSame();
    void theOpenColumnTellsWhenItIsOver();
};

void BenchCrankTest::everyWayIsShown()
{
    Bench bench(six());
    click(bench.page->pane<ValvePane>()->planKey());
    PlanPane *sheet = bench.page->pane<PlanPane>();
    QCOMPARE(waysOf(*sheet).size(), 5);
    const QList<std::pair<PlanWay, qsizetype>> positions{
        {PlanWay::TwoPositions, 2},
        {PlanWay::EachOnCompression, 6},
        {PlanWay::CompanionAtOverlap, 6},
        // An exhaust opens at 120° and an intake closes at 600° after its own firing: four gaps of 120° apart, so two fall together.
        {PlanWay::OpeningAndClosing, 6}};
    for (const auto &[way, count] : positions) {
        clickRow(sheet->ways(), qint64(way));
        QCOMPARE(sheet->positions()->notes().size(), count);
        QVERIFY(readable(*sheet).contains(planWayNote(way)));
    }
    // A chosen one is worked by, and stays.
    click(sheet->workKey());
    QCOMPARE(bench.page->sheet(), bench.page->pane<ValvePane>());
    QCOMPARE(bench.state().plan->way, PlanWay::OpeningAndClosing);
    click(bench.page->pane<ValvePane>()->planKey());
    QVERIFY(!sheet->workKey()->isEnabled());
}

void BenchCrankTest::theManualsTableComesFirst()
{
    BenchEngine engine = four();
    engine.table = {{"1", CrankEvent::Compression, "IN 1 2 EX 1 3"}, {"1", CrankEvent::Overlap, "IN 3 4 EX 2 4"}};
    Bench bench(engine);
    QVERIFY(!bench.state().plan->generated);
    click(bench.page->pane<ValvePane>()->planKey());
    PlanPane *sheet = bench.page->pane<PlanPane>();
    QCOMPARE(waysOf(*sheet).front(), PlanPane::tr("the manual's table"));
    QVERIFY(!sheet->workKey()->isEnabled());
    QVERIFY(readable(*sheet).contains(QStringLiteral("Hollin workshop manual")));
}

void BenchCrankTest::theRuleOfNineOnlyWhereItApplies()
{
    const auto rule = planWayName(PlanWay::RuleOfNine);
    {
        Bench bench(six());
        click(bench.page->pane<ValvePane>()->planKey());
        QVERIFY(!waysOf(*bench.page->pane<PlanPane>()).contains(rule));
    }
    BenchEngine mirrored = four();
    mirrored.engine.valveOrder = "E I I E E I I E";
    {
        Bench bench(mirrored);
        click(bench.page->pane<ValvePane>()->planKey());
        clickRow(bench.page->pane<PlanPane>()->ways(), qint64(PlanWay::RuleOfNine));
        const EngineDesign &design = bench.state().frame->engine.design;
        QCOMPARE(planWarning(design, generatePlan(design, PlanWay::RuleOfNine)), QString());
        QCOMPARE(bench.page->pane<PlanPane>()->positions()->notes().size(), 8);
    }
    // Wrong by geometry for E I E I E I E I: warned of, and still the person's to choose.
    mirrored.engine.valveOrder = "E I E I E I E I";
    Bench bench(mirrored);
    click(bench.page->pane<ValvePane>()->planKey());
    clickRow(bench.page->pane<PlanPane>()->ways(), qint64(PlanWay::RuleOfNine));
    const EngineDesign &design = bench.state().frame->engine.design;
    const QString warning = planWarning(design, generatePlan(design, PlanWay::RuleOfNine));
    QVERIFY(!warning.isEmpty());
    QVERIFY(readable(*bench.page->pane<PlanPane>()).contains(warning));
    QVERIFY(bench.page->pane<PlanPane>()->workKey()->isEnabled());
}

void BenchCrankTest::theFewestAskForMarksAndMargin()
{
    Bench bench(six());
    click(bench.page->pane<ValvePane>()->planKey());
    PlanPane *sheet = bench.page->pane<PlanPane>();
    QVERIFY(!sheet->marks()->isVisible());
    clickRow(sheet->ways(), qint64(PlanWay::Fewest));
    QVERIFY(sheet->marks()->isVisible());
    QCOMPARE(sheet->positions()->notes().size(), 2);
    // An intake is free for 720° − 260° − 40° = 420°: none has more than 210° on either side.
    typeInto(sheet->leastMargin(), QStringLiteral("211"));
    QVERIFY(!sheet->workKey()->isEnabled());
    QVERIFY(sheet->positions()->notes().isEmpty());
    typeInto(sheet->leastMargin(), QStringLiteral("abc"));
    QVERIFY(sheet->leastMargin()->isRefused() && !sheet->workKey()->isEnabled());
    typeInto(sheet->leastMargin(), QStringLiteral("60°"));
    QVERIFY(!sheet->leastMargin()->isRefused());
    const auto fewer = sheet->positions()->notes().size();
    QVERIFY(fewer >= 2);
    clickRow(sheet->marks(), qint64(CrankMarks::AnyAngle));
    QVERIFY(!sheet->positions()->notes().isEmpty() && sheet->positions()->notes().size() <= fewer);
    click(sheet->workKey());
    QCOMPARE(bench.state().plan->way, PlanWay::Fewest);
}

void BenchCrankTest::refusalsAreOneSentence()
{
    {
        Bench bench; // its cam is assumed
        click(bench.page->pane<ValvePane>()->planKey());
        clickRow(bench.page->pane<PlanPane>()->ways(), qint64(PlanWay::Fewest));
        QVERIFY(readable(*bench.page->pane<PlanPane>()).contains(sentence(Error{ErrorKind::PlanNeedsCam, {}})));
        QVERIFY(!bench.page->pane<PlanPane>()->workKey()->isEnabled());
    }
    Bench bench(twoStroke());
    click(bench.page->pane<ValvePane>()->planKey());
    clickRow(bench.page->pane<PlanPane>()->ways(), qint64(PlanWay::CompanionAtOverlap));
    QVERIFY(readable(*bench.page->pane<PlanPane>()).contains(sentence(Error{ErrorKind::PlanNotForEngine, {}})));
}

void BenchCrankTest::thePlanBeginsWhereTheCrankStands()
{
    Bench bench(six());
    QVERIFY(bench.page->book()->confirmCrank(degrees(240)));
    click(bench.page->pane<ValvePane>()->planKey());
    PlanPane *sheet = bench.page->pane<PlanPane>();
    clickRow(sheet->ways(), qint64(PlanWay::EachOnCompression));
    // 1-5-3-6-2-4: the third fires at 240°.
    QCOMPARE(sheet->positions()->notes().front().head,
             crankPositionName(bench.state().frame->engine.design, {Cylinder{2}, CrankEvent::Compression}));
    click(sheet->workKey());
    QCOMPARE(bench.state().plan->positions.front().crank, degrees(240));
    QVERIFY(std::holds_alternative<next::FeelPoint>(nextValveAct(bench.state())));
}

void BenchCrankTest::thePinionIsTold()
{
    Bench bench(six());
    bench.page->turnCrank();
    const QString shown = readable(*bench.page->pane<TurnPane>());
    QVERIFY2(shown.contains(QStringLiteral("360°")), qPrintable(shown));
    // 132 teeth over 11: twelve turns of the pinion for one of the crank.
    const QString pinion = pinionSentence(bench.state().frame->engine.design, degrees(0), degrees(360));
    QVERIFY(pinion.contains(QStringLiteral("12")));
    QVERIFY2(shown.contains(pinion), qPrintable(shown));
    QVERIFY(shown.contains(overshotSentence()));
}

void BenchCrankTest::placesBetweenTheMarksAreFound()
{
    Bench bench(six());
    click(bench.page->pane<ValvePane>()->planKey());
    clickRow(bench.page->pane<PlanPane>()->ways(), qint64(PlanWay::OpeningAndClosing));
    click(bench.page->pane<PlanPane>()->workKey());
    bench.page->turnCrank();
    const CrankPlan &plan = *bench.state().plan;
    const auto &rows = bench.page->pane<TurnPane>()->rows()->rows();
    QCOMPARE(std::size_t(rows.size()), plan.positions.size());
    const EngineDesign &design = bench.state().frame->engine.design;
    for (qsizetype i = 0; i < rows.size(); ++i) {
        const PlanPosition &position = plan.positions[std::size_t(i)];
        QCOMPARE(rows[i].title, positionName(design, position));
        clickRow(bench.page->pane<TurnPane>()->positions(), rows[i].id);
        QVERIFY(readable(*bench.page->pane<TurnPane>()).contains(findingSentence(design, position)));
    }
    click(bench.page->pane<TurnPane>()->readKey());
    click(bench.page->pane<TurnPane>()->turnedKey());
    QCOMPARE(bench.state().crank->crank, std::optional(inCycle(design, plan.positions.back().crank)));
    QCOMPARE(bench.page->sheet(), bench.page->pane<ValvePane>());
}

void BenchCrankTest::oneAngleInTwoLinesStaysTwoLines()
{
    BenchEngine engine = four();
    engine.table = {{"1", CrankEvent::Compression, "IN 1 2"},
                    {"4", CrankEvent::Overlap, "EX 1 3"}, // the same angle, printed twice
                    {"1", CrankEvent::Overlap, "IN 3 4 EX 2 4"}};
    Bench bench(engine);
    bench.page->turnCrank();
    const auto &rows = bench.page->pane<TurnPane>()->rows()->rows();
    QCOMPARE(rows.size(), 3);
    QVERIFY(rows[0].note.contains(QStringLiteral("IN 1 2")) && rows[1].note.contains(QStringLiteral("EX 1 3")));
    QVERIFY(!rows[0].right.isEmpty() && rows[0].right == rows[1].right);
    // What either line sets is set here.
    for (const char *point : {"I1", "I2", "E1", "E3"})
        QCOMPARE(here(bench.state(), pointNamed(*bench.page->book(), point)), Here::InPlan);
}

void BenchCrankTest::theCrankStandsWhileTappetsBleedDown()
{
    const auto clock = std::make_shared<HandClock>();
    Bench bench(hydraulicFour(), clock);
    click(bench.page->pane<ValvePane>()->allHereKey());
    click(bench.page->pane<ValvePane>()->allHereKey());
    const Moment until = bleedDownUntil(bench.state()).value();
    QVERIFY(readable(*bench.page->pane<ValvePane>()).contains(bleedDownText(until, clock->now())));
    QCOMPARE(openCount<open::BleedingDown>(bench), 1);
    press(Qt::Key_Return);
    QCOMPARE(bench.page->sheet(), bench.page->pane<TurnPane>());
    press(Qt::Key_Return);
    const auto crank = bench.state().crank;
    press(Qt::Key_Return);
    QCOMPARE(bench.state().crank, crank);
    const Error waits{ErrorKind::StillBleedingDown, {std::to_string(until.utcMilliseconds)}};
    QCOMPARE(bench.page->pane<TurnPane>()->message()->sentence(),
             TurnPane::tr("%1 “It is turned” once more logs it all the same.").arg(sentence(waits)));
    // When it is over nothing is in the way.
    clock->forward(std::chrono::minutes(15));
    click(bench.page->pane<TurnPane>()->turnedKey());
    QCOMPARE(bench.state().crank->crank, std::optional(degrees(360)));
}

void BenchCrankTest::aSecondPressTurnsAllTheSame()
{
    Bench bench(hydraulicFour(), std::make_shared<HandClock>());
    press(Qt::Key_S);
    bench.page->turnCrank();
    TurnPane *sheet = bench.page->pane<TurnPane>();
    click(sheet->readKey());
    click(sheet->turnedKey());
    QCOMPARE(bench.page->sheet(), sheet);
    click(sheet->turnedKey());
    QCOMPARE(bench.page->sheet(), bench.page->pane<ValvePane>());
    QCOMPARE(bench.state().crank->how, CrankHow::Turned);
}

void BenchCrankTest::theOpenColumnTellsWhenItIsOver()
{
    const auto clock = std::make_shared<HandClock>();
    Bench bench(hydraulicFour(), clock);
    // Just before it is over something is found elsewhere, so that the wait is looked at again in a moment.
    press(Qt::Key_S);
    clock->forward(std::chrono::minutes(15) - std::chrono::milliseconds(300));
    bench.take("I2");
    press(Qt::Key_P);
    press(Qt::Key_F);
    QCOMPARE(openCount<open::BleedingDown>(bench), 1);
    const QString waits = bleedDownText(bleedDownUntil(bench.state()).value(), clock->now());
    QVERIFY(readable(*bench.page->pane<ValvePane>()).contains(waits));
    clock->forward(std::chrono::minutes(15));
    QTRY_COMPARE(openCount<open::BleedingDown>(bench), 0);
    QVERIFY(!readable(*bench.page->pane<ValvePane>()).contains(waits));
}

APP_TEST(BenchCrankTest)

} // namespace asleft::testing::bench_crank_test

#include "bench_crank_test.moc"
