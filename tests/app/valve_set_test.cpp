// A mechanic sets the valves of a V8, is called away for good in the middle, and picks up where they were: with real keys and clicks
// on the real window and a real file. The first half runs in a process of its own, which dies by SIGKILL.

#include "program_driver.h"

#include <forms/new_job_form.h>
#include <forms/spec_form.h>
#include <forms/table_form.h>
#include <forms/table_row.h>
#include <forms/vehicle_form.h>
#include <pages/jobs_page.h>
#include <pages/specs_page.h>
#include <pages/vehicles_page.h>
#include <words/cautions.h>
#include <words/crank.h>
#include <words/job.h>
#include <words/points.h>
#include <words/readings.h>

namespace asleft::testing::valve_set_test {

namespace {

const QString asTable = QStringLiteral("table");
const QString lastWords = QStringLiteral("one nut is open; killed now");

/// Widely printed in workshop manuals for V8, 1-8-4-3-6-5-7-2; from memory here.
const QString setAtFirst = QStringLiteral("IN 1 2 5 7 EX 1 3 4 8");
const QString setAtSecond = QStringLiteral("IN 3 4 6 8 EX 2 5 6 7");

void typeVehicle(Window &window)
{
    goTo(window, Page::Vehicles);
    VehicleForm *form = window.vehiclesPage()->form();
    typeInto(form->field(VehicleField::Name), QStringLiteral("Corran V8 saloon"));
    click(buttonNamed(*form, QStringLiteral("V")));
    typeInto(form->field(VehicleField::Cylinders), QStringLiteral("8"));
    typeInto(form->field(VehicleField::FiringOrder), QStringLiteral("1-8-4-3-6-5-7-2"));
    typeInto(form->field(VehicleField::Pitch), QStringLiteral("1 mm"));
    press(Qt::Key_S, Qt::ControlModifier);
    QCOMPARE(window.vehiclesPage()->message()->role(), MessageLine::Role::Done);
}

void typeSpec(Window &window, SpecsPage::Section section, const QString &band, const QString &page)
{
    window.specsPage()->chooseSection(section);
    SpecForm *form = window.specsPage()->form(section);
    typeInto(form->field(SpecField::Band), band);
    typeInto(form->field(SpecField::Manual), QStringLiteral("Corran workshop manual"));
    typeInto(form->field(SpecField::Page), page);
    press(Qt::Key_S, Qt::ControlModifier);
    QCOMPARE(form->message()->role(), MessageLine::Role::Done);
}

void typeTable(Window &window)
{
    window.specsPage()->chooseSection(SpecsPage::Section::CrankPositions);
    TableForm *table = window.specsPage()->table();
    typeInto(table->manual(), QStringLiteral("Corran workshop manual"));
    while (table->rows() < 2)
        table->addRow();
    typeInto(table->row(0)->cylinder(), QStringLiteral("1"));
    typeInto(table->row(0)->points(), setAtFirst);
    typeInto(table->row(1)->cylinder(), QStringLiteral("1"));
    click(table->row(1)->stroke()->key(1));
    typeInto(table->row(1)->points(), setAtSecond);
    press(Qt::Key_S, Qt::ControlModifier);
    QCOMPARE(table->message()->role(), MessageLine::Role::Done);
}

void openNewJob(Window &window)
{
    goTo(window, Page::Jobs);
    window.jobsPage()->beginNew(std::nullopt);
    click(buttonNamed(*window.jobsPage(), QStringLiteral("Open the job")));
    if (window.page() == Page::Jobs)
        click(buttonNamed(*window.jobsPage(), QStringLiteral("On the Bench")));
    QCOMPARE(window.page(), Page::Bench);
}

/// Initials, the two lines before the valve set, and where the crank stands.
void beginSession(BenchPage &bench)
{
    QCOMPARE(bench.sheet(), bench.pane<SessionPane>());
    type(QStringLiteral("MK"));
    press(Qt::Key_Return);
    QCOMPARE(bench.sheet(), bench.pane<StepPane>());
    QVERIFY(readable(*bench.pane<StepPane>()).contains(cautionWords(Caution::StandsAndChocks).title));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    QCOMPARE(bench.sheet(), bench.pane<CrankPane>());
    QVERIFY(!bench.pane<CrankPane>()->standsKey()->isEnabled());
    confirmFirstPlace();
    QCOMPARE(bench.sheet(), bench.pane<ValvePane>());
}

void checkPlan(BenchPage &bench, bool typed)
{
    const auto &plan = bench.book()->state().plan;
    QVERIFY(plan && plan->generated != typed);
    const QString shown = readable(*bench.pane<ValvePane>());
    QVERIFY2(shown.contains(setAtFirst) && shown.contains(setAtSecond), qPrintable(shown));
    const QString source = planSource(bench.book()->state().frame->engine.design, *plan);
    QVERIFY2(shown.contains(source), qPrintable(shown));
    QCOMPARE(source.contains(QStringLiteral("Corran workshop manual")), typed);
}

/// Logs one value at every point of a position, the Bench choosing the next one; returns the names in the order they came.
QStringList logEach(BenchPage &bench, int points, const std::function<QString(const QString &)> &valueFor)
{
    QStringList order;
    for (int i = 0; i < points; ++i) {
        const QString name = nameOf(*bench.book(), bench.pane<ValvePane>()->inHand());
        order.append(name);
        logTyped(valueFor(name));
    }
    return order;
}

QString foundInThou(const QString &point)
{
    return point.startsWith(QLatin1Char('I')) ? QStringLiteral("14") : QStringLiteral("20");
}

QString leftInMillimetres(const QString &point)
{
    return point.startsWith(QLatin1Char('I')) ? QStringLiteral("0.30 mm") : QStringLiteral("0,46 mm");
}

QStringList sorted(QStringList names)
{
    names.sort();
    return names;
}

const QStringList firstPoints{QStringLiteral("E1"), QStringLiteral("E3"), QStringLiteral("E4"), QStringLiteral("E8"),
                              QStringLiteral("I1"), QStringLiteral("I2"), QStringLiteral("I5"), QStringLiteral("I7")};
const QStringList secondPoints{QStringLiteral("E2"), QStringLiteral("E5"), QStringLiteral("E6"), QStringLiteral("E7"),
                               QStringLiteral("I3"), QStringLiteral("I4"), QStringLiteral("I6"), QStringLiteral("I8")};

} // namespace

/// The first half; its process does not outlive it.
class ValvesUntilKilled : public QObject {
    Q_OBJECT

public:
    ValvesUntilKilled(QString file, bool table) : m_file(std::move(file)), m_table(table) {}

private Q_SLOTS:
    void untilKilled()
    {
        const auto program = openProgram(Arguments::Wish::New, m_file);
        Window &window = *program->window();
        typeVehicle(window);
        goTo(window, Page::Specs);
        typeSpec(window, SpecsPage::Section::IntakeLash, QStringLiteral(".012 ± .003 in"), QStringLiteral("41"));
        typeSpec(window, SpecsPage::Section::ExhaustLash, QStringLiteral(".018 ± .003 in"), QStringLiteral("41"));
        if (m_table)
            typeTable(window);
        openNewJob(window);

        BenchPage &bench = *window.benchPage();
        beginSession(bench);
        checkPlan(bench, m_table);
        QCOMPARE(sorted(logEach(bench, 8, foundInThou)), firstPoints);
        const PointState &found = bench.book()->state().point(pointNamed(*bench.book(), "E3"));
        QCOMPARE(found.stage, PointStage::Found);
        QVERIFY(found.found->reading.value->value == thou(20));
        QCOMPARE(found.found->verdict, Verdict::Inside);

        const QStringList left = logEach(bench, 7, leftInMillimetres);
        QCOMPARE(bench.book()->state().point(pointNamed(*bench.book(), qPrintable(left.back()))).left->verdict, Verdict::Inside);
        press(Qt::Key_N);
        QCOMPARE(openNuts(bench.book()->state()).size(), std::size_t(1));
        sayAndDie(lastWords, nameOf(*bench.book(), openNuts(bench.book()->state()).front()));
    }

private:
    QString m_file;
    bool m_table;
};

class ValveSet : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void onAGeneratedPlan() { wholeStory(false); }
    void onTheManualsTable() { wholeStory(true); }

private:
    void wholeStory(bool table);
    void pickUp(BenchPage &bench, const QString &openPoint);
    void turnOnce(BenchPage &bench);
    void setTheRest(BenchPage &bench);
};

void ValveSet::wholeStory(bool table)
{
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("garage.asleft"));
    QString openPoint;
    runUntilKilled({file, table ? asTable : QString()}, lastWords, openPoint);
    if (QTest::currentTestFailed())
        return;

    const auto program = openProgram(Arguments::Wish::Open, file);
    QCOMPARE(program->window()->page(), Page::Bench);
    BenchPage &bench = *program->window()->benchPage();
    pickUp(bench, openPoint);
    checkPlan(bench, table);
    turnOnce(bench);
    setTheRest(bench);
}

void ValveSet::pickUp(BenchPage &bench, const QString &openPoint)
{
    QCOMPARE(bench.sheet(), bench.pane<SessionPane>());
    const PointId open = pointNamed(*bench.book(), qPrintable(openPoint));
    const QString name = pointInText(*bench.book()->state().frame, open);
    const QString resume = readable(*bench.pane<SessionPane>());
    QVERIFY2(resume.contains(name, Qt::CaseInsensitive), qPrintable(resume));
    const QString place = crankInText(bench.book()->state().frame->engine.design, degrees(0));
    QVERIFY2(resume.contains(place, Qt::CaseInsensitive), qPrintable(resume));
    press(Qt::Key_Return);
    // Where the crank was left is shown and asked for, once in this session.
    QCOMPARE(bench.sheet(), bench.pane<CrankPane>());
    QVERIFY(readable(*bench.pane<CrankPane>()).contains(place, Qt::CaseInsensitive));
    press(Qt::Key_Return);
    QCOMPARE(bench.sheet(), bench.pane<ValvePane>());
    QCOMPARE(nameOf(*bench.book(), bench.pane<ValvePane>()->inHand()), openPoint);

    // The crank is not turned over an open nut.
    const auto crankBefore = bench.book()->state().crank;
    click(bench.pane<ValvePane>()->turnKey());
    QCOMPARE(bench.sheet(), bench.pane<ValvePane>());
    QCOMPARE(bench.pane<ValvePane>()->bar()->message()->role(), MessageLine::Role::Refusal);
    QVERIFY(bench.pane<ValvePane>()->bar()->message()->sentence().contains(openPoint));
    QCOMPARE(bench.book()->state().crank, crankBefore);
    logTyped(leftInMillimetres(openPoint));
    QVERIFY(openNuts(bench.book()->state()).empty());
}

void ValveSet::turnOnce(BenchPage &bench)
{
    // Enter on nothing logs nothing and leads to what is next.
    const auto acts = bench.book()->state().acts.size();
    press(Qt::Key_Return);
    QCOMPARE(bench.sheet(), bench.pane<TurnPane>());
    QCOMPARE(bench.book()->state().acts.size(), acts);
    const QString shown = readable(*bench.pane<TurnPane>());
    for (const Caution caution : {Caution::Neutral, Caution::StandsAndChocks})
        QVERIFY2(shown.contains(cautionWords(caution).title), qPrintable(shown));
    QVERIFY2(shown.contains(QStringLiteral("360°")), qPrintable(shown));
    QVERIFY(!bench.pane<TurnPane>()->turnedKey()->isVisible());
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    QCOMPARE(bench.sheet(), bench.pane<ValvePane>());
    QVERIFY(bench.book()->state().crank->crank == degrees(360));
    QCOMPARE(bench.book()->state().crank->how, CrankHow::Turned);
}

void ValveSet::setTheRest(BenchPage &bench)
{
    QCOMPARE(sorted(logEach(bench, 8, foundInThou)), secondPoints);
    const QString odd = QStringLiteral("E6");
    for (int i = 0; i < 8; ++i) {
        const QString name = nameOf(*bench.book(), bench.pane<ValvePane>()->inHand());
        logTyped(name == odd ? QStringLiteral("24") : leftInMillimetres(name));
        if (name != odd)
            continue;
        // Out of its band: said in words, in the drawing and in the list, and it stays in hand until it is set or kept.
        QCOMPARE(nameOf(*bench.book(), bench.pane<ValvePane>()->inHand()), odd);
        QVERIFY(bench.pane<ValvePane>()->bar()->now()->text().contains(verdictName(Verdict::High)));
        QCOMPARE(lookOf(bench.book()->state(), pointNamed(*bench.book(), "E6"), true).verdict, Verdict::High);
        press(Qt::Key_K);
        logTyped(QStringLiteral("seat is due, watched until then"));
    }
    const StillOpen open = stillOpen(bench.book()->state(), SystemClock().now());
    const auto ofValves = [](const std::vector<OpenItem> &items) {
        return std::count_if(items.begin(), items.end(),
                             [](const OpenItem &item) { return !std::holds_alternative<open::StepUndone>(item); });
    };
    QCOMPARE(ofValves(open.turning), 0);
    QCOMPARE(ofValves(open.handOver), 0);
    QCOMPARE(ofValves(open.firstStart), 1);
    const auto *outside = std::get_if<open::OutOfBand>(&open.firstStart.front());
    QVERIFY(outside);
    QCOMPARE(nameOf(*bench.book(), outside->point), odd);
    QCOMPARE(outside->kept, std::optional<std::string>("seat is due, watched until then"));
    const auto &rows = bench.openColumn()->rows(Gate::FirstStart)->rows();
    QCOMPARE(rows.front().title, openWords(open.firstStart.front(), bench.book()->state(), SystemClock().now()).title);
    QCOMPARE(nextValveAct(bench.book()->state()), NextAct(next::NothingOpen{}));
}

APP_TEST_BY([](const QStringList &given) {
    return runProgramTest<ValveSet>(given, [](const QStringList &arguments) {
        return std::make_unique<ValvesUntilKilled>(arguments.value(0), arguments.value(1) == asTable);
    });
})

} // namespace asleft::testing::valve_set_test

#include "valve_set_test.moc"
