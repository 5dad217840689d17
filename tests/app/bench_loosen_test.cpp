#include "joint_driver.h"

#include <bench/joint_pane_top.h>
#include <words/errors.h>
#include <words/fasteners.h>
#include <words/numbers.h>
#include <words/readings.h>

#include <QSignalSpy>

namespace asleft::testing::bench_loosen_test {

using Key = LoosenPane::Key;

class BenchLoosenTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void looseningGoesTheOtherWay();
    void whatAnotherSeatBeganAnewIsShownFirst();
    void oneKeyForEachWay_data();
    void oneKeyForEachWay();
    void aTorqueIsShownAndNeverJudged();
    void torquesThatAreNone_data();
    void torquesThatAreNone();
    void aNoteGoesWithABrokenOne();
    void allTheRestIsOneAct();
    void severalLooseAreAFindingByOneClick();
    void doneAsksWhileSomethingIsNotNoted();
    void allNotedGoesOn();
    void undoBringsItBackInHand();
    void whatIsTickedAsksFirst();
    void theWrenchGivesTheUnit();
    void whatMayOnlyBeReadSaysSo();
};

void BenchLoosenTest::looseningGoesTheOtherWay()
{
    JointBench bench;
    bench.goLoosen();
    const TighteningOrder order = looseningOrder(jointInHand(bench.state(), *bench.joint).order);
    QCOMPARE(bench.page->sheet(), &bench.loosening());
    const QString inWords = QStringLiteral("loosen ") + QString::fromStdString(writeOrder(order));
    QVERIFY2(readable(*bench.loosening().top()).contains(inWords), qPrintable(readable(*bench.loosening().top())));
    QCOMPARE(QApplication::focusWidget(), static_cast<QWidget *>(bench.loosening().bar()->edit()));
    for (std::size_t i = 0; i + 1 < order.size(); ++i) {
        QCOMPARE(bench.loosening().inHand(), std::optional(order[i]));
        press(Qt::Key_O);
    }
    QCOMPARE(bench.loosening().inHand(), std::optional(order.back()));
}

void BenchLoosenTest::whatAnotherSeatBeganAnewIsShownFirst()
{
    JointBench bench(rowText());
    bench.tickTimes(1);
    bench.goLoosen();
    QVERIFY(reviseJoint(*bench.shop.garage, *bench.joint, bench.made.engine, rowText(4, "28 ± 3 N·m")));
    const OtherStation other(bench);
    QVERIFY(other.book->beginJoint(*bench.joint));
    press(Qt::Key_L);
    QCOMPARE(bench.loosening().bar()->message()->sentence(), sentence(Error{ErrorKind::JointChanged, {"Thermostat housing"}}));
    QVERIFY2(readable(*bench.loosening().top()).contains(QStringLiteral("28 ± 3 N·m")), qPrintable(readable(*bench.loosening().top())));
    const int first = *bench.loosening().inHand();
    QVERIFY(!bench.fastener(first).found);
    press(Qt::Key_L);
    QVERIFY(bench.fastener(first).found);
}

void BenchLoosenTest::oneKeyForEachWay_data()
{
    QTest::addColumn<int>("letter");
    QTest::addColumn<int>("how");
    QTest::newRow("loose") << int(Qt::Key_L) << int(FoundHow::LooseByFeel);
    QTest::newRow("tight") << int(Qt::Key_T) << int(FoundHow::TightByFeel);
    QTest::newRow("missing") << int(Qt::Key_M) << int(FoundHow::Missing);
    QTest::newRow("out") << int(Qt::Key_O) << int(FoundHow::NotNoted);
}

void BenchLoosenTest::oneKeyForEachWay()
{
    QFETCH(int, letter);
    QFETCH(int, how);
    JointBench bench(rowText());
    bench.goLoosen();
    const int first = *bench.loosening().inHand();
    press(Qt::Key(letter));
    QVERIFY(bench.fastener(first).found);
    QCOMPARE(int(bench.fastener(first).found->how), how);
    QVERIFY(bench.loosening().inHand() != first);
    // It is still said when it is in hand again, and under the drawing.
    const QString words = foundText(*bench.fastener(first).found);
    QVERIFY(bench.loosening().bar()->small()->text().contains(words));
    bench.loosening().takeInHand(first);
    QVERIFY(bench.loosening().bar()->now()->text().contains(words));
}

void BenchLoosenTest::aTorqueIsShownAndNeverJudged()
{
    JointBench bench(rowText());
    bench.goLoosen();
    const int first = *bench.loosening().inHand();
    logTyped(QStringLiteral("12 lbf·ft")); // far under the band: no question, no verdict
    QVERIFY(bench.fastener(first).found);
    QCOMPARE(typedText(*bench.fastener(first).found->torque), QStringLiteral("12 lbf·ft"));
    QVERIFY(!bench.fastener(first).verdict());
    const QString words = readable(bench.loosening());
    QVERIFY2(words.contains(QStringLiteral("12 lbf·ft")), qPrintable(words));
    QVERIFY2(!words.contains(verdictName(Verdict::Low)), qPrintable(words));
}

void BenchLoosenTest::torquesThatAreNone_data()
{
    QTest::addColumn<QString>("text");
    for (const char *text : {"hard", "12 mm", "-12", "1,250", "12 12"})
        QTest::newRow(text) << QString::fromUtf8(text);
}

void BenchLoosenTest::torquesThatAreNone()
{
    QFETCH(QString, text);
    JointBench bench(rowText());
    bench.goLoosen();
    const auto acts = bench.acts();
    bench.loosening().bar()->edit()->setText(text);
    press(Qt::Key_Return);
    QCOMPARE(bench.acts(), acts);
    QVERIFY(!bench.loosening().bar()->message()->sentence().isEmpty());
    QCOMPARE(bench.loosening().bar()->edit()->text(), text);
}

void BenchLoosenTest::aNoteGoesWithABrokenOne()
{
    JointBench bench(rowText());
    bench.goLoosen();
    const int first = *bench.loosening().inHand();
    press(Qt::Key_B);
    QVERIFY(bench.loosening().bar()->asksReason());
    type(QStringLiteral("head off"));
    press(Qt::Key_Return);
    QCOMPARE(bench.fastener(first).found->how, FoundHow::Broken);
    QCOMPARE(bench.fastener(first).found->note, std::string("head off"));
    // It may go without one, and can be left.
    const int second = *bench.loosening().inHand();
    press(Qt::Key_G);
    press(Qt::Key_Escape);
    QVERIFY(!bench.fastener(second).found);
    press(Qt::Key_G);
    press(Qt::Key_Return);
    QCOMPARE(bench.fastener(second).found->how, FoundHow::WrongLength);
}

void BenchLoosenTest::allTheRestIsOneAct()
{
    JointBench bench;
    bench.goLoosen();
    press(Qt::Key_L);
    const auto acts = bench.acts();
    press(Qt::Key_A);
    QCOMPARE(bench.acts(), acts);
    press(Qt::Key_A);
    QCOMPARE(bench.acts(), acts + 1);
    for (const auto &[number, fastener] : bench.worked().fasteners)
        QVERIFY(fastener.found);
    QVERIFY(stepDone(bench.state(), *bench.state().frame->step(bench.line(StepKind::Loosen))));
    press(Qt::Key_Z, Qt::ControlModifier);
    QCOMPARE(std::ranges::count_if(bench.worked().fasteners, [](const auto &each) { return each.second.found.has_value(); }), 1);
}

void BenchLoosenTest::severalLooseAreAFindingByOneClick()
{
    JointBench bench;
    bench.goLoosen();
    press(Qt::Key_L);
    QVERIFY(!bench.key(Key::Finding)->isVisible());
    press(Qt::Key_L);
    QVERIFY(bench.key(Key::Finding)->isVisible());
    const auto loose = foundLoose(bench.worked());
    const QString text = looseFinding(jointInHand(bench.state(), *bench.joint), loose);
    QCOMPARE(bench.loosening().bar()->asked()->text(), text);
    click(bench.key(Key::Finding));
    QCOMPARE(bench.state().findings.size(), std::size_t(1));
    QCOMPARE(bench.state().findings.front().what.text, text.toStdString());
    QVERIFY(bench.state().findings.front().what.subject == Subject(FastenerSubject{*bench.joint, loose}));
    QVERIFY(!bench.key(Key::Finding)->isVisible());
    QVERIFY(bench.keyboardIsOn(bench.loosening()));
    // A third one loose is another finding.
    press(Qt::Key_L);
    QVERIFY(bench.key(Key::Finding)->isVisible());
}

void BenchLoosenTest::doneAsksWhileSomethingIsNotNoted()
{
    JointBench bench(rowText());
    bench.goLoosen();
    press(Qt::Key_L);
    const auto acts = bench.acts();
    click(bench.key(Key::Done));
    QCOMPARE(bench.acts(), acts);
    QSignalSpy finished(&bench.loosening(), &JointPane::finished);
    click(bench.key(Key::Done));
    QVERIFY(stepDone(bench.state(), *bench.state().frame->step(bench.line(StepKind::Loosen))));
    QCOMPARE(finished.size(), 1);
    QCOMPARE(bench.page->sheet(), &bench.sheet());
}

void BenchLoosenTest::allNotedGoesOn()
{
    JointBench bench(rowText());
    bench.goLoosen();
    for (int i = 0; i < 4; ++i)
        press(Qt::Key_T);
    const auto acts = bench.acts();
    press(Qt::Key_Return);
    QCOMPARE(bench.acts(), acts);
    QCOMPARE(bench.page->sheet(), &bench.sheet());
}

void BenchLoosenTest::undoBringsItBackInHand()
{
    JointBench bench(rowText());
    bench.goLoosen();
    const int first = *bench.loosening().inHand();
    press(Qt::Key_L);
    press(Qt::Key_Z, Qt::ControlModifier);
    QVERIFY(!bench.fastener(first).found);
    QCOMPARE(bench.loosening().inHand(), std::optional(first));
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    QVERIFY(bench.fastener(first).found);
}

void BenchLoosenTest::whatIsTickedAsksFirst()
{
    JointBench bench(rowText());
    const int first = bench.inHand();
    bench.tickTimes(1);
    bench.goLoosen();
    bench.loosening().takeInHand(first);
    const auto acts = bench.acts();
    press(Qt::Key_L);
    QCOMPARE(bench.acts(), acts);
    press(Qt::Key_L);
    QCOMPARE(bench.acts(), acts + 1);
    QVERIFY(bench.fastener(first).ticks.empty());
}

void BenchLoosenTest::theWrenchGivesTheUnit()
{
    JointBench bench(rowText());
    TorqueWrenchText text = wrenchText("dial", "10", "150");
    text.kind = ToolKind::TorqueRead;
    text.unit = TorqueUnit::PoundFoot;
    const auto dial = addTorqueWrench(*bench.shop.garage, text);
    QVERIFY(dial);
    bench.goLoosen();
    const auto shown = [&] { return bench.key(Key::With)->text(); };
    for (int i = 0; i < 4 && shown() != QStringLiteral("dial"); ++i)
        click(bench.key(Key::With));
    QCOMPARE(shown(), QStringLiteral("dial"));
    const int first = *bench.loosening().inHand();
    logTyped(QStringLiteral("22"));
    QCOMPARE(typedText(*bench.fastener(first).found->torque), QStringLiteral("22 lbf·ft"));
}

void BenchLoosenTest::whatMayOnlyBeReadSaysSo()
{
    JointBench bench(rowText());
    bench.goLoosen();
    press(Qt::Key_L);
    const ReadOnlyBench reading(bench, bench.line(StepKind::Loosen));
    const BenchPage &page = reading.page;
    const LoosenPane &sheet = *page.pane<LoosenPane>();
    QCOMPARE(page.sheet(), &sheet);
    QVERIFY(sheet.bar()->edit()->isReadOnly());
    for (const Key key : {Key::Loose, Key::Out, Key::RestOut, Key::Done})
        QVERIFY(!sheet.key(key)->isEnabled());
    press(Qt::Key_L);
    QCOMPARE(page.book()->state().acts.size(), std::size_t(1));
}

APP_TEST(BenchLoosenTest)

} // namespace asleft::testing::bench_loosen_test

#include "bench_loosen_test.moc"
