// A bench sheet that was filled in with a pencil is typed in: fast, and all of it or nothing.

#include "bench_paper_driver.h"

#include <words/crank.h>
#include <words/errors.h>
#include <words/readings.h>

namespace asleft::testing::bench_paper_test {

class BenchPaperTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void itsLinesStandInThePlansOrder();
    void everyPointHasALine();
    void twentyFourPointsByDigitsAndEnterAlone();
    void oneKeyForEachWord();
    void wordsCanBeTouched();
    void theVerdictIsSeenAsItIsTyped();
    void whatCannotBeReadIsRefusedAtItsBox_data();
    void whatCannotBeReadIsRefusedAtItsBox();
    void oneBadBoxKeepsAllOfIt();
    void anEmptySheetIsRefused();
    void aSpecLeafWithoutASpecIsRefused();
    void farOffValuesAreAskedAboutOnce();
    void turnsAndBridgesAreTypedToo();
    void arrowsGoUpAndDown();
    void theKeypadTypesIntoTheBox();
};

void BenchPaperTest::itsLinesStandInThePlansOrder()
{
    Paper paper;
    // No. 1 on compression: IN 1 2, EX 1 3; one turn on: IN 3 4, EX 2 4 (TM 5-3895-383-24 p 6-60).
    QStringList first = paper.order().first(4);
    first.sort();
    QCOMPARE(first, (QStringList{QStringLiteral("E1"), QStringLiteral("E3"), QStringLiteral("I1"), QStringLiteral("I2")}));
    QVERIFY(readable(*paper.sheet).contains(crankPositionName(paper.state().frame->engine.design, {Cylinder{0}, CrankEvent::Compression})));
    QVERIFY(paper.sheet->lines().front()->field(Phase::AsFound)->hasFocus());
}

void BenchPaperTest::everyPointHasALine()
{
    BenchEngine engine = four();
    // A manual's table that forgets two of them.
    engine.table = {{"1", CrankEvent::Compression, "IN 1 2 EX 1"}, {"1", CrankEvent::Overlap, "IN 3 4 EX 2"}};
    Paper paper(engine);
    QStringList last = paper.order().last(2);
    last.sort();
    QCOMPARE(last, (QStringList{QStringLiteral("E3"), QStringLiteral("E4")}));
    QVERIFY(readable(*paper.sheet).contains(BenchSheetPane::tr("Set at no position of the plan")));
    QCOMPARE(Paper(twelve()).sheet->lines().size(), 24);
    QCOMPARE(Paper(bridged()).sheet->lines().size(), 20);
}

void BenchPaperTest::twentyFourPointsByDigitsAndEnterAlone()
{
    Paper paper(twelve());
    const auto acts = paper.state().acts.size();
    for (int point = 0; point < 24; ++point) {
        const bool intake = paper.order()[point].startsWith(QLatin1Char('I'));
        logTyped(intake ? QStringLiteral("36") : QStringLiteral("48"));
        logTyped(intake ? QStringLiteral("30") : QStringLiteral("41"));
    }
    QVERIFY(paper.sheet->logKey()->hasFocus());
    QCOMPARE(paper.state().acts.size(), acts);
    press(Qt::Key_Return);
    QVERIFY2(paper.state().acts.size() >= acts + 48, qPrintable(paper.sheet->message()->sentence()));
    for (const SettingPoint &point : paper.state().frame->engine.points) {
        const bool intake = point.adjuster.side == Side::Intake;
        QVERIFY(paper.state().point(point.id).settled());
        QCOMPARE(paper.state().point(point.id).found->verdict, Verdict::High);
        QCOMPARE(paper.state().point(point.id).left->reading.value->value, micrometres(intake ? 300 : 410));
        QVERIFY(!paper.state().point(point.id).left->reading.outOfPosition);
    }
    QCOMPARE(paper.sheet->draft(), 0);
}

void BenchPaperTest::oneKeyForEachWord()
{
    Paper paper;
    const QStringList order = paper.order();
    press(Qt::Key_L);
    QCOMPARE(paper.box(qPrintable(order[0]), Phase::AsFound)->text(), PaperBox::tr("loose"));
    press(Qt::Key_Return);
    press(Qt::Key_S);
    press(Qt::Key_Return);
    press(Qt::Key_T);
    press(Qt::Key_Return);
    press(Qt::Key_F);
    press(Qt::Key_Return);
    // Found as the spec's leaf is that value; left with it is a word of its own.
    press(Qt::Key_S);
    QVERIFY(paper.box(qPrintable(order[2]), Phase::AsFound)->text().contains(QStringLiteral("mm")));
    click(paper.sheet->logKey());
    const auto &state = paper.state();
    const PointState &first = state.point(pointNamed(*paper.page->book(), qPrintable(order[0])));
    QCOMPARE(first.found->reading.form, ReadingForm::Loose);
    QVERIFY(first.left->reading.specLeaf);
    const PointState &second = state.point(pointNamed(*paper.page->book(), qPrintable(order[1])));
    QCOMPARE(second.found->reading.form, ReadingForm::Tight);
    QCOMPARE(second.left->reading.form, ReadingForm::ByFeel);
    const PointState &third = state.point(pointNamed(*paper.page->book(), qPrintable(order[2])));
    QVERIFY(third.found->reading.value && !third.left);
}

void BenchPaperTest::wordsCanBeTouched()
{
    Paper paper;
    click(paper.sheet->wordKey(int(PaperBox::Word::Tight)));
    QCOMPARE(paper.sheet->lines().front()->field(Phase::AsFound)->text(), PaperBox::tr("tight"));
    QVERIFY(paper.sheet->lines().front()->field(Phase::AsFound)->hasFocus());
    QCOMPARE(paper.sheet->draft(), 1);
    // In place of what stood there.
    click(paper.sheet->wordKey(int(PaperBox::Word::ByFeel)));
    QCOMPARE(paper.sheet->lines().front()->field(Phase::AsFound)->text(), PaperBox::tr("by feel"));
}

void BenchPaperTest::theVerdictIsSeenAsItIsTyped()
{
    Paper paper;
    const auto worth = [&](const char *point, Phase phase) { return paper.line(point)->judgement(phase)->text(); };
    paper.typeAt("I1", Phase::AsFound, QStringLiteral("36"));
    QVERIFY2(worth("I1", Phase::AsFound).contains(QStringLiteral("0.36 mm")), qPrintable(worth("I1", Phase::AsFound)));
    QVERIFY(worth("I1", Phase::AsFound).contains(verdictName(Verdict::High)));
    press(Qt::Key_Backspace);
    press(Qt::Key_Backspace);
    QVERIFY(worth("I1", Phase::AsFound).isEmpty());
    type(QStringLiteral("30"));
    QVERIFY(worth("I1", Phase::AsFound).contains(verdictName(Verdict::Inside)));
    paper.typeAt("I1", Phase::AsLeft, QStringLiteral("0.30-0.40"));
    QVERIFY(worth("I1", Phase::AsLeft).contains(verdictName(Verdict::TooClose)));
    // Hot against a cold spec it is comparable no more.
    click(paper.sheet->top()->conditionKeys()->key(1));
    QVERIFY(worth("I1", Phase::AsFound).contains(verdictName(Verdict::NotComparable)));
}

void BenchPaperTest::whatCannotBeReadIsRefusedAtItsBox_data()
{
    QTest::addColumn<QString>("typed");
    for (const char *typed : {"1,250", "xyz", "-3", "12 bar", "30-20", "0.2 0.3", "1234567890123", "lose"})
        QTest::newRow(typed) << QString::fromLatin1(typed);
}

void BenchPaperTest::whatCannotBeReadIsRefusedAtItsBox()
{
    QFETCH(QString, typed);
    Paper paper;
    PaperLine *line = paper.sheet->lines().front();
    line->field(Phase::AsFound)->setText(typed);
    press(Qt::Key_Return);
    QVERIFY(line->field(Phase::AsFound)->isRefused() && line->field(Phase::AsFound)->hasFocus());
    QVERIFY(line->message()->sentence().size() > 15);
    QCOMPARE(line->field(Phase::AsFound)->text(), typed);
    // Mended, the refusal goes.
    line->field(Phase::AsFound)->selectAll();
    type(QStringLiteral("30"));
    QVERIFY(!line->field(Phase::AsFound)->isRefused() && line->message()->sentence().isEmpty());
}

void BenchPaperTest::oneBadBoxKeepsAllOfIt()
{
    Paper paper;
    const auto acts = paper.state().acts.size();
    paper.typeAt("I1", Phase::AsFound, QStringLiteral("28"));
    paper.box("E4", Phase::AsLeft)->setText(QStringLiteral("1,250"));
    click(paper.sheet->logKey());
    QCOMPARE(paper.state().acts.size(), acts);
    QVERIFY(paper.box("E4", Phase::AsLeft)->isRefused() && paper.box("E4", Phase::AsLeft)->hasFocus());
    QCOMPARE(paper.sheet->message()->role(), MessageLine::Role::Refusal);
    QCOMPARE(paper.box("I1", Phase::AsFound)->text(), QStringLiteral("28"));
    paper.box("E4", Phase::AsLeft)->setText(QStringLiteral("0.40"));
    press(Qt::Key_Return, Qt::ControlModifier);
    QVERIFY(paper.point("I1").found && paper.point("E4").left);
}

void BenchPaperTest::anEmptySheetIsRefused()
{
    Paper paper;
    const auto acts = paper.state().acts.size();
    click(paper.sheet->logKey());
    QCOMPARE(paper.state().acts.size(), acts);
    QCOMPARE(paper.sheet->message()->sentence(), sentence(Error{ErrorKind::NothingToLog, {}}));
    QCOMPARE(paper.page->sheet(), paper.sheet);
}

void BenchPaperTest::aSpecLeafWithoutASpecIsRefused()
{
    BenchEngine engine = four();
    engine.specs.clear();
    Paper paper(engine);
    paper.typeAt("I1", Phase::AsLeft, QStringLiteral("s"));
    press(Qt::Key_Return);
    QVERIFY(paper.box("I1", Phase::AsLeft)->isRefused());
    QCOMPARE(
        paper.line("I1")->message()->sentence(),
        PaperLine::tr(
            "There is no spec yet whose leaf could be meant. What was typed is kept; write the value instead, or type the spec first."));
    // A value is taken, and judged by nothing.
    paper.box("I1", Phase::AsLeft)->selectAll();
    type(QStringLiteral("30"));
    click(paper.sheet->logKey());
    QCOMPARE(paper.point("I1").left->verdict, Verdict::NoSpec);
}

void BenchPaperTest::farOffValuesAreAskedAboutOnce()
{
    Paper paper;
    const auto acts = paper.state().acts.size();
    paper.typeAt("I1", Phase::AsFound, QStringLiteral("300"));
    paper.typeAt("E1", Phase::AsFound, QStringLiteral("0.016 mm"));
    click(paper.sheet->logKey());
    QCOMPARE(paper.state().acts.size(), acts);
    QCOMPARE(paper.line("I1")->message()->sentence(), farOff("3.00 mm"));
    QVERIFY(paper.line("E1")->message()->sentence().contains(QStringLiteral("0.016 in")));
    // Changed, it is asked anew.
    paper.typeAt("I1", Phase::AsFound, QStringLiteral("0"));
    click(paper.sheet->logKey());
    QCOMPARE(paper.state().acts.size(), acts);
    click(paper.sheet->logKey());
    QCOMPARE(paper.point("I1").found->reading.value->value, micrometres(30'000));
    QCOMPARE(paper.point("E1").found->reading.value->value, micrometres(16));
}

void BenchPaperTest::turnsAndBridgesAreTypedToo()
{
    Paper paper(bridged());
    paper.typeAt("BI1", Phase::AsLeft, QStringLiteral("1/8"));
    paper.typeAt("BE1", Phase::AsLeft, QStringLiteral("s"));
    paper.typeAt("J1", Phase::AsLeft, QStringLiteral("50"));
    paper.typeAt("I1", Phase::AsLeft, QStringLiteral("30"));
    QCOMPARE(paper.line("BE1")->field(Phase::AsLeft)->text(), PaperBox::tr("spec turns"));
    click(paper.sheet->logKey());
    QVERIFY2(paper.point("BI1").settled(), qPrintable(paper.sheet->message()->sentence()));
    QCOMPARE(paper.point("BI1").left->reading.turned->value, degrees(45));
    QCOMPARE(paper.point("BE1").left->reading.turned->value, degrees(45));
    QVERIFY(paper.point("BE1").left->reading.specLeaf);
    QCOMPARE(paper.point("J1").left->reading.value->value, micrometres(500));
    // The bridge screw is logged before the lash of its pair.
    QVERIFY(paper.point("BI1").left->seq < paper.point("I1").left->seq);
}

void BenchPaperTest::arrowsGoUpAndDown()
{
    Paper paper;
    press(Qt::Key_Down);
    QVERIFY(paper.sheet->lines()[1]->field(Phase::AsFound)->hasFocus());
    press(Qt::Key_Up);
    press(Qt::Key_Up);
    QVERIFY(paper.sheet->lines()[0]->field(Phase::AsFound)->hasFocus());
    press(Qt::Key_Tab);
    QVERIFY(paper.sheet->lines()[0]->field(Phase::AsLeft)->hasFocus());
    press(Qt::Key_Tab);
    QVERIFY(paper.sheet->lines()[1]->field(Phase::AsFound)->hasFocus());
}

void BenchPaperTest::theKeypadTypesIntoTheBox()
{
    Paper paper;
    click(paper.page->keypadKey());
    for (const char *key : {"2", "8", "log", "3", "0", "log"})
        click(buttonNamed(*paper.page, QString::fromUtf8(key)));
    QCOMPARE(paper.sheet->lines()[0]->field(Phase::AsFound)->text(), QStringLiteral("28"));
    QCOMPARE(paper.sheet->lines()[0]->field(Phase::AsLeft)->text(), QStringLiteral("30"));
    QVERIFY(paper.sheet->lines()[1]->field(Phase::AsFound)->hasFocus());
    // Back at the head it types there.
    click(paper.sheet->backKey());
    click(paper.sheet->backKey());
    click(buttonNamed(*paper.page, QStringLiteral("7")));
    QCOMPARE(paper.bar()->edit()->text(), QStringLiteral("7"));
}

APP_TEST(BenchPaperTest)

} // namespace asleft::testing::bench_paper_test

#include "bench_paper_test.moc"
