// Who is at the Bench and with what, what later work may have moved, and the sheet to print.

#include "bench_driver.h"

#include <parts/bench_sheet_saving.h>

#include <QFileDialog>

#include <words/numbers.h>
#include <words/specs.h>

namespace asleft::testing::bench_panes_test {

namespace {

/// Opens the sheet on which somebody takes over.
SessionPane *takeOver(const Bench &bench)
{
    click(bench.page->stepsColumn()->sessionKey());
    return bench.page->pane<SessionPane>();
}

void typeInto(ValueField *field, const QString &text)
{
    QTest::mouseClick(field->edit(), Qt::LeftButton);
    field->edit()->selectAll();
    type(text);
}

} // namespace

class BenchPanesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void temperatureAndHoursAreKeptWithReadings();
    void whatSpeaksAgainstColdIsAskedOnce();
    void badEngineStatesAreRefused_data();
    void badEngineStatesAreRefused();
    void everyKindOfToolCanBeChosen();
    void theCauseChoosesHowFar();
    void aCauseIsKeptWithItsWords();
    void onlyWhatIsLeftIsSent();
    void theEmptySheetIsWritten();
    void whatCannotBeWrittenIsSaid();
};

void BenchPanesTest::temperatureAndHoursAreKeptWithReadings()
{
    Bench bench;
    SessionPane *sheet = takeOver(bench);
    typeInto(sheet->temperature(), QStringLiteral("20,5 °C"));
    press(Qt::Key_Return);
    QVERIFY(sheet->sinceRun()->edit()->hasFocus());
    type(QStringLiteral("14 h"));
    press(Qt::Key_Return);
    bench.page->viewStep(bench.valveStep());
    logTyped(QStringLiteral("28"));
    const ReadingFact &reading = bench.point("I1").found->reading;
    QVERIFY(reading.temperature);
    QCOMPARE(reading.temperature->value, Temperature::ofSmallest(184'500));
    QCOMPARE(reading.minutesSinceRun, std::optional<std::int64_t>(840));
    QVERIFY(readable(*bench.page).contains(QStringLiteral("20,5 °C")));
    // Left empty they are not known.
    sheet = takeOver(bench);
    typeInto(sheet->temperature(), QStringLiteral(" "));
    click(sheet->beginKey());
    bench.page->viewStep(bench.valveStep());
    logTyped(QStringLiteral("41"));
    QVERIFY(!bench.point("E1").found->reading.temperature);
}

void BenchPanesTest::whatSpeaksAgainstColdIsAskedOnce()
{
    Bench bench;
    SessionPane *sheet = takeOver(bench);
    typeInto(sheet->temperature(), QStringLiteral("80"));
    click(sheet->beginKey());
    QCOMPARE(bench.page->sheet(), sheet);
    const QString question = SessionPane::tr("%1, and yet %2? Nothing is begun yet; “Begin” once more if it is so.");
    QCOMPARE(sheet->message()->sentence(),
             question.arg(temperatureText(*parseTemperature("80", TemperatureUnit::Celsius)), conditionName(EngineCondition::Cold)));
    // Changed, it is another question.
    typeInto(sheet->temperature(), QStringLiteral("81"));
    click(sheet->beginKey());
    QCOMPARE(bench.page->sheet(), sheet);
    click(sheet->beginKey());
    QVERIFY(bench.page->sheet() != sheet);
    QCOMPARE(bench.page->book()->session().temperature->value, celsius(81));
    sheet = takeOver(bench);
    click(sheet->condition()->key(1));
    typeInto(sheet->temperature(), QStringLiteral("80"));
    click(sheet->beginKey());
    QVERIFY(bench.page->sheet() != sheet);
    QCOMPARE(bench.page->book()->session().condition, EngineCondition::Hot);
}

void BenchPanesTest::badEngineStatesAreRefused_data()
{
    QTest::addColumn<QString>("temperature");
    QTest::addColumn<QString>("sinceRun");
    QTest::newRow("no number") << "warm"
                               << "";
    QTest::newRow("of something else") << "20 mm"
                                       << "";
    QTest::newRow("colder than any") << "-80"
                                     << "";
    QTest::newRow("hotter than any") << "1000 °C"
                                     << "";
    QTest::newRow("hours that are none") << ""
                                         << "long";
    QTest::newRow("more than a year") << ""
                                      << "9000 h";
    QTest::newRow("before it ran") << ""
                                   << "-2";
}

void BenchPanesTest::badEngineStatesAreRefused()
{
    QFETCH(QString, temperature);
    QFETCH(QString, sinceRun);
    Bench bench;
    SessionPane *sheet = takeOver(bench);
    typeInto(sheet->temperature(), temperature);
    typeInto(sheet->sinceRun(), sinceRun);
    press(Qt::Key_Return);
    QCOMPARE(bench.page->sheet(), sheet);
    ValueField *refused = temperature.isEmpty() ? sheet->sinceRun() : sheet->temperature();
    QVERIFY(refused->isRefused() && refused->edit()->hasFocus());
    QCOMPARE(refused->text(), temperature.isEmpty() ? sinceRun : temperature);
    QVERIFY(!bench.page->book()->session().temperature);
}

void BenchPanesTest::everyKindOfToolCanBeChosen()
{
    Bench bench;
    const auto gauge =
        addGauge(*bench.shop.garage, {ToolKind::DialGauge, "Gauge on its arm", "0.02 mm", "0.01 mm", LengthUnit::Millimetre});
    const auto micrometer = addGauge(*bench.shop.garage, {ToolKind::Micrometer, "0 to 25", "0.004 mm", "0.01 mm", LengthUnit::Millimetre});
    QVERIFY(gauge && micrometer);
    bench.measureWith(*micrometer);
    QVERIFY(readable(*bench.page).contains(QStringLiteral("0 to 25")));
    logTyped(QStringLiteral("28"));
    QCOMPARE(bench.point("I1").found->reading.tool, std::optional(*micrometer));
    // A gauge has no leaves to touch.
    for (const auto *button : bench.bar()->findChildren<QAbstractButton *>())
        QVERIFY(!(button->isVisible() && button->accessibleName().startsWith(QStringLiteral("Leaf"))));
    // And something that is not on the rack.
    SessionPane *sheet = takeOver(bench);
    QCOMPARE(sheet->tools()->currentId(), std::optional(micrometer->key()));
    clickRow(sheet->tools(), 0);
    click(sheet->beginKey());
    QVERIFY(!bench.page->book()->session().tool);
}

void BenchPanesTest::theCauseChoosesHowFar()
{
    Bench bench;
    click(bench.page->pane<ValvePane>()->allHereKey());
    click(bench.page->pane<ValvePane>()->allHereKey());
    bench.take("I2");
    press(Qt::Key_C);
    CheckAgainPane *sheet = bench.page->pane<CheckAgainPane>();
    const auto namesFor = [&](Disturbance cause) {
        clickRow(sheet->causes(), qint64(cause));
        return sheet->names()->text();
    };
    // Set at no. 1 on compression: IN 1 2, EX 1 3 (TM 5-3895-383-24 p 6-60).
    QVERIFY(namesFor(Disturbance::HeadTightened).endsWith(QStringLiteral("I1, E1, I2, E3")));
    QVERIFY(namesFor(Disturbance::ValveOrSeatCut).endsWith(QStringLiteral("1: I2")));
    QVERIFY(namesFor(Disturbance::TimingMoved).endsWith(QStringLiteral("I1, E1, I2, E3")));
    QCOMPARE(sheet->reach()->choice(), int(CheckAgainPane::Reach::AllLeft));
    // What the person chose stays, whatever cause comes after it.
    click(sheet->reach()->key(int(CheckAgainPane::Reach::ThisPoint)));
    QVERIFY(namesFor(Disturbance::HeadTightened).endsWith(QStringLiteral("1: I2")));
}

void BenchPanesTest::aCauseIsKeptWithItsWords()
{
    Bench bench;
    press(Qt::Key_S);
    bench.take("I1");
    press(Qt::Key_C);
    CheckAgainPane *sheet = bench.page->pane<CheckAgainPane>();
    QVERIFY(sheet->causes()->hasFocus());
    // By keys alone: down to the cam drive, on to how far, on to the words.
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    QVERIFY(sheet->words()->edit()->hasFocus());
    logTyped(QStringLiteral("belt was off"));
    QCOMPARE(bench.page->sheet(), bench.page->pane<ValvePane>());
    QCOMPARE(bench.point("I1").stage, PointStage::CheckAgain);
    QCOMPARE(bench.point("I1").disturbance, std::optional(Disturbance::TimingMoved));
    QCOMPARE(bench.point("I1").checkAgainWhy, std::string("belt was off"));
    QCOMPARE(bench.bar()->message()->role(), MessageLine::Role::Done);
    press(Qt::Key_Z, Qt::ControlModifier);
    QVERIFY(bench.point("I1").settled());
}

void BenchPanesTest::onlyWhatIsLeftIsSent()
{
    Bench bench;
    // With nothing left there is nothing to send.
    press(Qt::Key_C);
    QCOMPARE(bench.page->sheet(), bench.page->pane<ValvePane>());
    press(Qt::Key_S);
    press(Qt::Key_C);
    QCOMPARE(bench.page->sheet(), bench.page->pane<CheckAgainPane>());
    const auto acts = bench.state().acts.size();
    click(bench.page->pane<CheckAgainPane>()->backKey());
    QCOMPARE(bench.state().acts.size(), acts);
    QCOMPARE(bench.page->sheet(), bench.page->pane<ValvePane>());
}

void BenchPanesTest::theEmptySheetIsWritten()
{
    Bench bench;
    const QString path = bench.shop.folder.filePath(QStringLiteral("sheet.pdf"));
    click(bench.page->stepsColumn()->printKey());
    auto *dialog = bench.page->findChild<QFileDialog *>();
    QVERIFY(dialog && dialog->isVisible());
    dialog->setOption(QFileDialog::DontConfirmOverwrite);
    dialog->selectFile(path);
    QVERIFY(QMetaObject::invokeMethod(dialog, "accept"));
    QTRY_COMPARE(bench.page->message()->role(), MessageLine::Role::Done);
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly));
    QCOMPARE(file.read(5), QByteArray("%PDF-"));
    // It is no act of the job.
    QVERIFY(std::none_of(bench.state().acts.begin(), bench.state().acts.end(),
                         [](const Act &act) { return std::holds_alternative<StepDoneFact>(act.what.fact); }));
}

void BenchPanesTest::whatCannotBeWrittenIsSaid()
{
    Bench bench;
    const QString path = bench.shop.folder.filePath(QStringLiteral("no such folder/sheet.pdf"));
    bench.page->saving()->write(*bench.shop.garage, *bench.page->job(), rememberedPaper(), path);
    QCOMPARE(bench.page->message()->role(), MessageLine::Role::Refusal);
    QVERIFY(bench.page->message()->isVisible());
    // What is gone on with takes the sentence away.
    bench.page->viewStep(bench.state().frame->job.steps.front().id);
    QVERIFY(!bench.page->message()->isVisible());
}

APP_TEST(BenchPanesTest)

} // namespace asleft::testing::bench_panes_test

#include "bench_panes_test.moc"
