#include "bench_driver.h"

#include <QClipboard>

namespace asleft::testing::bench_readings_test {

class BenchReadingsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void digitsCountInStepsOfTheSpec();
    void anythingWithAMarkIsTakenLiterally();
    void keysSayWhatHasNoNumber_data();
    void keysSayWhatHasNoNumber();
    void badInputIsRefusedAndKept_data();
    void badInputIsRefusedAndKept();
    void aMegabytePastedIsRefused();
    void enterOnNothingLogsNothing();
    void aHeldKeyLogsOnce();
    void farOffWantsASecondEnter();
    void unitsAreSwitched();
    void withoutASpecItIsKeptAndSaid();
    void aBracketIsABracket();
    void thePersonChoosesThePhase();
    void chipsLogTheirLeaf();
    void theKeypadTypes();
    void anActIsShownOnce();
};

namespace {

/// The head on a sheet of its own, told of the job as the page tells it.
class CountingPane : public ValvePane {
public:
    explicit CountingPane(Bench &bench) : ValvePane(*bench.shop.context, *bench.page->book())
    {
        connect(bench.page->book(), &JobBook::changed, this, &Pane::jobChanged);
    }
    void refresh() override
    {
        ++shown;
        ValvePane::refresh();
    }
    int shown = 0;
};

} // namespace

void BenchReadingsTest::anActIsShownOnce()
{
    Bench bench;
    CountingPane pane(bench);
    present(pane);
    pane.takeFocus();
    pane.shown = 0;
    logTyped(QStringLiteral("28"));
    QCOMPARE(bench.point("I1").stage, PointStage::Found);
    QCOMPARE(pane.shown, 1);
    pane.takeBack(false);
    QCOMPARE(pane.shown, 2);
    // What comes from elsewhere is shown as it comes.
    QVERIFY(bench.page->book()->openNut(*pane.inHand()));
    QCOMPARE(pane.shown, 3);
}

void BenchReadingsTest::digitsCountInStepsOfTheSpec()
{
    Bench bench;
    QCOMPARE(bench.inHand(), QStringLiteral("I1"));
    type(QStringLiteral("28"));
    QVERIFY(bench.bar()->edit()->accessibleDescription().contains(QStringLiteral("0.28 mm")));
    press(Qt::Key_Return);
    QCOMPARE(bench.point("I1").found->reading.value->value, micrometres(280));
    QCOMPARE(bench.point("I1").found->verdict, Verdict::Inside);
    QCOMPARE(bench.point("I1").stage, PointStage::Found);
    QCOMPARE(bench.inHand(), QStringLiteral("E1"));
}

void BenchReadingsTest::anythingWithAMarkIsTakenLiterally()
{
    Bench bench;
    logTyped(QStringLiteral("12 thou"));
    QCOMPARE(bench.point("I1").found->reading.value->value, thou(12));
    QCOMPARE(bench.point("I1").found->reading.value->text, std::string("12 thou"));
    logTyped(QStringLiteral("0,4"));
    QCOMPARE(bench.point("E1").found->reading.value->value, micrometres(400));
}

void BenchReadingsTest::keysSayWhatHasNoNumber_data()
{
    QTest::addColumn<int>("key");
    QTest::addColumn<int>("form");
    QTest::addColumn<int>("stage");
    QTest::addColumn<int>("verdict");
    QTest::newRow("loose") << int(Qt::Key_L) << int(ReadingForm::Loose) << int(PointStage::Found) << int(Verdict::TooClose);
    QTest::newRow("tight") << int(Qt::Key_T) << int(ReadingForm::Tight) << int(PointStage::Found) << int(Verdict::TooClose);
    QTest::newRow("by feel") << int(Qt::Key_F) << int(ReadingForm::ByFeel) << int(PointStage::Found) << int(Verdict::ByFeel);
    QTest::newRow("spec leaf") << int(Qt::Key_S) << int(ReadingForm::Exact) << int(PointStage::Left) << int(Verdict::Inside);
}

void BenchReadingsTest::keysSayWhatHasNoNumber()
{
    QFETCH(int, key);
    QFETCH(int, form);
    QFETCH(int, stage);
    QFETCH(int, verdict);
    Bench bench;
    press(Qt::Key(key));
    const PointState &point = bench.point("I1");
    QCOMPARE(int(point.stage), stage);
    const auto &judged = point.left ? point.left : point.found;
    QVERIFY(judged);
    QCOMPARE(int(judged->reading.form), form);
    QCOMPARE(int(judged->verdict), verdict);
    QCOMPARE(judged->reading.specLeaf, key == Qt::Key_S);
}

void BenchReadingsTest::badInputIsRefusedAndKept_data()
{
    QTest::addColumn<QString>("typed");
    for (const char *typed :
         {"1,250", "abc", "-3", "1e9 mm", "1000000000 mm", "12 bar", "0.2 0.3 mm", "0.30-0.20", "nan mm", "1234567890123"})
        QTest::newRow(typed) << QString::fromLatin1(typed);
}

void BenchReadingsTest::badInputIsRefusedAndKept()
{
    QFETCH(QString, typed);
    Bench bench;
    const auto acts = bench.state().acts.size();
    // A letter that is a key of the bar presses it on an empty field, so a word that begins with one is pasted as a whole.
    QGuiApplication::clipboard()->setText(typed);
    press(Qt::Key_V, Qt::ControlModifier);
    press(Qt::Key_Return);
    QCOMPARE(bench.state().acts.size(), acts);
    QCOMPARE(bench.bar()->edit()->text(), typed);
    QCOMPARE(bench.bar()->message()->role(), MessageLine::Role::Refusal);
    QVERIFY(bench.said().endsWith(QLatin1Char('.')) && bench.said().size() > 15);
    QCOMPARE(bench.inHand(), QStringLiteral("I1"));
}

void BenchReadingsTest::aMegabytePastedIsRefused()
{
    Bench bench;
    const auto acts = bench.state().acts.size();
    QGuiApplication::clipboard()->setText(QString(1 << 20, QLatin1Char('7')));
    press(Qt::Key_V, Qt::ControlModifier);
    press(Qt::Key_Return);
    QCOMPARE(bench.state().acts.size(), acts);
    QCOMPARE(bench.bar()->message()->role(), MessageLine::Role::Refusal);
    QVERIFY(bench.said().size() < 300);
}

void BenchReadingsTest::enterOnNothingLogsNothing()
{
    Bench bench;
    const auto acts = bench.state().acts.size();
    press(Qt::Key_Return);
    type(QStringLiteral("   "));
    press(Qt::Key_Return);
    QCOMPARE(bench.state().acts.size(), acts);
    QCOMPARE(bench.inHand(), QStringLiteral("I1"));
}

void BenchReadingsTest::aHeldKeyLogsOnce()
{
    Bench bench;
    const auto acts = bench.state().acts.size();
    type(QStringLiteral("28"));
    press(Qt::Key_Return);
    for (const int key : {int(Qt::Key_Return), int(Qt::Key_S), int(Qt::Key_N)}) {
        QKeyEvent held(QEvent::KeyPress, key, Qt::NoModifier, key == Qt::Key_Return ? QStringLiteral("\r") : QString(QChar(key)).toLower(),
                       true);
        QCoreApplication::sendEvent(QApplication::focusWidget(), &held);
    }
    QCOMPARE(bench.state().acts.size(), acts + 1);
}

void BenchReadingsTest::farOffWantsASecondEnter()
{
    Bench bench;
    const auto acts = bench.state().acts.size();
    logTyped(QStringLiteral("280"));
    QCOMPARE(bench.state().acts.size(), acts);
    QCOMPARE(bench.bar()->edit()->text(), QStringLiteral("280"));
    QCOMPARE(bench.said(), ValvePane::tr("%1 Enter again logs it as typed.").arg(farOff("2.80 mm")));
    QVERIFY(!bench.bar()->insteadKey()->isVisible());
    press(Qt::Key_Return);
    QCOMPARE(bench.point("I1").found->reading.value->value, micrometres(2800));
    // Another value is another question.
    logTyped(QStringLiteral("300"));
    type(QStringLiteral("0"));
    press(Qt::Key_Return);
    QVERIFY(!bench.point("E1").found);
}

void BenchReadingsTest::unitsAreSwitched()
{
    Bench bench;
    click(bench.bar()->unitKey(LengthUnit::Thou));
    logTyped(QStringLiteral("12"));
    QCOMPARE(bench.point("I1").found->reading.value->value, thou(12));
    QCOMPARE(bench.point("I1").found->reading.value->unit, LengthUnit::Thou);
    click(bench.bar()->unitKey(LengthUnit::Millimetre));
    logTyped(QStringLiteral("41"));
    QCOMPARE(bench.point("E1").found->reading.value->value, micrometres(410));
}

void BenchReadingsTest::withoutASpecItIsKeptAndSaid()
{
    Bench bench(false);
    QVERIFY(readable(*bench.bar()).contains(ValvePane::tr("No spec yet: what is logged is kept and judged by nothing")));
    QVERIFY(!bench.page->pane<ValvePane>()->key(ValvePane::Key::SpecLeaf)->isEnabled());
    logTyped(QStringLiteral("28"));
    QCOMPARE(bench.point("I1").found->verdict, Verdict::NoSpec);
    bench.take("I1");
    logTyped(QStringLiteral("30"));
    QVERIFY(bench.point("I1").settled());
    const auto open = stillOpen(bench.state(), bench.shop.garage->now());
    QVERIFY(std::any_of(open.handOver.begin(), open.handOver.end(),
                        [](const OpenItem &item) { return std::holds_alternative<open::NoSpecYet>(item); }));
}

void BenchReadingsTest::aBracketIsABracket()
{
    Bench bench;
    logTyped(QStringLiteral("0.25-0.30 mm"));
    const auto &found = bench.point("I1").found;
    QCOMPARE(found->reading.form, ReadingForm::Bracket);
    QCOMPARE(found->verdict, Verdict::Inside);
    logTyped(QStringLiteral("40-50"));
    QCOMPARE(bench.point("E1").found->verdict, Verdict::TooClose);
}

void BenchReadingsTest::thePersonChoosesThePhase()
{
    Bench bench;
    press(Qt::Key_P);
    logTyped(QStringLiteral("30"));
    QCOMPARE(bench.point("I1").stage, PointStage::Left);
    QVERIFY(!bench.point("I1").found);
    // What was found can still be written down, and mended, when the point is left already.
    bench.take("I1");
    press(Qt::Key_P);
    logTyped(QStringLiteral("20"));
    QCOMPARE(bench.point("I1").found->verdict, Verdict::Low);
    QVERIFY(bench.point("I1").settled());
}

void BenchReadingsTest::chipsLogTheirLeaf()
{
    Bench bench;
    bench.page->book()->setTool(bench.state().frame->tools.front().id);
    QCoreApplication::processEvents();
    click(buttonNamed(*bench.bar(), QStringLiteral("0.30")));
    QCOMPARE(bench.point("I1").found->reading.value->value, micrometres(300));
    QVERIFY(bench.point("I1").found->reading.tool.has_value());
}

void BenchReadingsTest::theKeypadTypes()
{
    Bench bench;
    click(buttonNamed(*bench.page, QStringLiteral("Keypad")));
    for (const char *key : {"2", "9", "←", "8"})
        click(buttonNamed(*bench.page, QString::fromUtf8(key)));
    QCOMPARE(bench.bar()->edit()->text(), QStringLiteral("28"));
    click(buttonNamed(*bench.page, QStringLiteral("log")));
    QCOMPARE(bench.point("I1").found->reading.value->value, micrometres(280));
}

APP_TEST(BenchReadingsTest)

} // namespace asleft::testing::bench_readings_test

#include "bench_readings_test.moc"
