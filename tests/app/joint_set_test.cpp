// A mechanic plans a job on a garage that was empty: a cover of twelve in two passes and until none moves, one of its screws through a
// crow-foot across the wrench and one with it straight out, and a sensor screw no wrench reaches. Called away for good in mid-pass, they
// pick up at the very next fastener. Real keys and clicks on the real window and a real file; the first half runs in a process of its
// own, which dies by SIGKILL.

#include "joint_driver.h"
#include "joint_hands.h"
#include "program_driver.h"

#include <forms/fitting_form.h>
#include <forms/joint_form.h>
#include <forms/joint_ticks.h>
#include <forms/new_job_form.h>
#include <forms/torque_form.h>
#include <forms/vehicle_form.h>
#include <pages/jobs_page.h>
#include <pages/specs_page.h>
#include <pages/tools_page.h>
#include <pages/vehicles_page.h>
#include <parts/notes.h>

namespace asleft::testing::joint_set_test {

namespace {

const QString lastWords = QStringLiteral("in mid-pass; killed now, next is");
constexpr int fasteners = 12;
/// In the second pass.
constexpr int tickedBeforeTheEnd = 7;

void save(const MessageLine *said)
{
    press(Qt::Key_S, Qt::ControlModifier);
    QVERIFY2(said->role() == MessageLine::Role::Done, qPrintable(said->sentence() + readable(*said->parentWidget())));
}

void typeVehicle(Window &window)
{
    goTo(window, Page::Vehicles);
    VehicleForm *form = window.vehiclesPage()->form();
    typeInto(form->field(VehicleField::Name), QStringLiteral("Corran 4 saloon"));
    typeInto(form->field(VehicleField::Cylinders), QStringLiteral("4"));
    typeInto(form->field(VehicleField::FiringOrder), QStringLiteral("1-3-4-2"));
    save(window.vehiclesPage()->message());
}

void typeWrench(Window &window, const QString &name, const QString &least, const QString &most, const QString &lever)
{
    window.toolsPage()->chooseSection(ToolsPage::Section::TorqueWrenches);
    TorqueForm *form = window.toolsPage()->wrenches();
    typeInto(form->name(), name);
    typeInto(form->least(), least);
    typeInto(form->most(), most);
    typeInto(form->lever(), lever);
    save(form->message());
}

void typeTools(Window &window)
{
    goTo(window, Page::Tools);
    typeWrench(window, QStringLiteral("small wrench"), QStringLiteral("6"), QStringLiteral("30"), QString());
    typeWrench(window, QStringLiteral("large wrench"), QStringLiteral("20"), QStringLiteral("200"), QStringLiteral("400 mm"));
    window.toolsPage()->chooseSection(ToolsPage::Section::Adapters);
    FittingForm *form = window.toolsPage()->adapters();
    typeInto(form->name(), QStringLiteral("crow-foot 13"));
    typeInto(form->length(), QStringLiteral("100 mm"));
    save(form->message());
}

struct TypedJoint {
    QString name, places, thread, target, passes, page;
};

void typeJoint(Window &window, const TypedJoint &typed, bool limiters)
{
    window.specsPage()->chooseJoint(std::nullopt);
    JointForm *form = window.specsPage()->jointForm();
    typeInto(form->field(JointField::Name), typed.name);
    typeInto(form->field(JointField::Places), typed.places);
    typeInto(form->field(JointField::Thread), typed.thread);
    typeInto(form->field(JointField::Strength), QStringLiteral("8.8"));
    typeInto(form->field(JointField::Target), typed.target);
    if (!typed.passes.isEmpty())
        typeInto(form->field(JointField::Passes), typed.passes);
    if (limiters)
        click(form->choice(JointChoice::Settle)->key(1));
    typeInto(form->field(JointField::Manual), QStringLiteral("Corran workshop manual"));
    typeInto(form->field(JointField::Page), typed.page);
    save(form->message());
}

void typeJoints(Window &window)
{
    goTo(window, Page::Specs);
    typeJoint(window,
              {QStringLiteral("Valve cover"), QStringLiteral("12 around a cover"), QStringLiteral("M8"), QStringLiteral("32 ± 4 N·m"),
               QStringLiteral("50 %, target, settle 3"), QStringLiteral("41")},
              true);
    typeJoint(
        window,
        {QStringLiteral("Sensor"), QStringLiteral("1"), QStringLiteral("M5"), QStringLiteral("3 ± 0.5 N·m"), {}, QStringLiteral("44")},
        false);
}

/// The job is planned: what no wrench reaches is said here, not when the fastener is in.
void planJob(Window &window)
{
    goTo(window, Page::Jobs);
    window.jobsPage()->beginNew(std::nullopt);
    NewJobForm *form = window.jobsPage()->newJob();
    clickRow(form->sheetList(), static_cast<RuledRows *>(form->sheetList()->model())->rows().back().id);
    QCOMPARE(form->joints()->ticks().size(), std::size_t(2));
    for (JointTick *tick : form->joints()->ticks())
        click(tick);
    QString wanted;
    for (const Notes::Note &note : form->wanted()->notes())
        wanted += note.head + QChar::LineFeed + note.words + QChar::LineFeed;
    const QString none = QCoreApplication::translate("ToolsWantedWords", "%1: none reaches it").arg(QStringLiteral("Sensor"));
    QVERIFY2(wanted.contains(none), qPrintable(wanted));
    QVERIFY2(wanted.contains(QStringLiteral("small wrench")) && wanted.contains(QStringLiteral("large wrench")), qPrintable(wanted));
    click(buttonNamed(*window.jobsPage(), QStringLiteral("Open the job")));
    if (window.page() == Page::Jobs)
        click(buttonNamed(*window.jobsPage(), QStringLiteral("On the Bench")));
    QCOMPARE(window.page(), Page::Bench);
}

const Joint &jointNamed(const BenchPage &bench, const char *name)
{
    for (const Joint &joint : bench.book()->state().frame->joints)
        if (joint.text.name == name)
            return joint;
    qFatal("no joint %s", name);
}

const JointState &workedOn(const BenchPage &bench, const char *name)
{
    return bench.book()->state().joints.at(jointNamed(bench, name).id);
}

/// Up to the line where this joint is tightened.
void workUpTo(const BenchPage &bench, const char *name)
{
    for (int acts = 0; acts < 40; ++acts) {
        const NextAct next = nextAct(bench.book()->state());
        const auto *tighten = std::get_if<next::TightenNext>(&next);
        const bool isNext = tighten && tighten->joint == jointNamed(bench, name).id;
        if (isNext && bench.pane<TightenPane>()->step() == tighten->step && bench.sheet() == bench.pane<TightenPane>())
            break;
        if (bench.sheet() == bench.pane<LoosenPane>())
            loosenOn(bench);
        else if (bench.sheet() == bench.pane<TightenPane>())
            tightenOn(bench);
        else
            press(Qt::Key_Return);
    }
    QCOMPARE(bench.sheet(), bench.pane<TightenPane>());
}

QString setTo(const BenchPage &bench)
{
    return bench.pane<TightenPane>()->bar()->large()->text();
}

/// How it is said that this wrench of the rack is set so.
QString wordsToSet(const BenchPage &bench, const char *wrench, const char *torque)
{
    const auto &tools = bench.book()->state().frame->tools;
    const auto tool = std::ranges::find(tools, wrench, &Tool::name);
    return tool == tools.end() ? QString() : settingSentence(*tool, typedTorque(torque));
}

/// The crow-foot goes on the wrench at this angle, or comes off.
void fitCrowFoot(const BenchPage &bench, std::optional<RigPane::Way> way)
{
    click(bench.pane<TightenPane>()->key(TightenPane::Key::Wrench));
    RigPane &rig = *bench.pane<TightenPane>()->rigPane();
    const auto rows = static_cast<RuledRows *>(rig.adapters()->model())->rows();
    const auto foot = std::ranges::find_if(rows, [](const RuledRow &row) { return row.title.contains(QStringLiteral("crow-foot")); });
    QVERIFY(foot != rows.end());
    clickRow(rig.adapters(), way ? foot->id : rows.front().id);
    if (way)
        click(rig.way()->key(int(*way)));
    click(rig.useKey());
}

/// Enter, once or as often as it asks, ticks the fastener in hand.
void tickInHand(const BenchPage &bench)
{
    const int number = bench.pane<TightenPane>()->inHand().value_or(0);
    tightenOn(bench);
    QVERIFY(!workedOn(bench, "Valve cover").fasteners.at(number).ticks.empty());
}

const TicksFact &lastTickOf(const BenchPage &bench, int number)
{
    return workedOn(bench, "Valve cover").fasteners.at(number).ticks.back().fact;
}

} // namespace

/// The first half; its process does not outlive it.
class JointsUntilKilled : public QObject {
    Q_OBJECT

public:
    explicit JointsUntilKilled(QString file) : m_file(std::move(file)) {}

private Q_SLOTS:
    void untilKilled()
    {
        const auto program = openProgram(Arguments::Wish::New, m_file);
        Window &window = *program->window();
        for (const auto &planning : {typeVehicle, typeTools, typeJoints, planJob}) {
            planning(window);
            if (QTest::currentTestFailed())
                return;
        }
        BenchPage &bench = *window.benchPage();
        type(QStringLiteral("MK"));
        press(Qt::Key_Return);
        workUpTo(bench, "Valve cover");
        firstPass(bench);
        secondPass(bench);
        if (QTest::currentTestFailed())
            return;
        const auto next = workedOn(bench, "Valve cover").progress.next;
        QVERIFY(next && next->pass == 1);
        sayAndDie(lastWords, QString::number(next->fastener));
    }

private:
    static void firstPass(const BenchPage &bench)
    {
        for (int i = 0; i < fasteners; ++i) {
            QCOMPARE(setTo(bench), wordsToSet(bench, "small wrench", "16 N·m"));
            QVERIFY(readable(*bench.pane<TightenPane>()).contains(QStringLiteral("small wrench")));
            tickInHand(bench);
        }
    }

    static void secondPass(const BenchPage &bench)
    {
        for (int i = 0; i < tickedBeforeTheEnd; ++i) {
            const int number = bench.pane<TightenPane>()->inHand().value_or(0);
            if (i == 2) { // across: T·L/(L + E·cos 90°) = T
                fitCrowFoot(bench, RigPane::Way::Across);
                QCOMPARE(setTo(bench), wordsToSet(bench, "large wrench", "32 N·m"));
            } else if (i == 3) { // straight out: 32·400/(400 + 100) = 25.6 (TM 9-254; FAA AC 43.13-1B, chapter 7)
                fitCrowFoot(bench, RigPane::Way::StraightOut);
                QCOMPARE(setTo(bench), wordsToSet(bench, "large wrench", "25.6 N·m"));
                QVERIFY(bench.pane<TightenPane>()->bar()->small()->text().contains(QStringLiteral("32 N·m")));
            } else if (i == 4) {
                fitCrowFoot(bench, std::nullopt);
            }
            if (i != 3)
                QCOMPARE(setTo(bench), wordsToSet(bench, "large wrench", "32 N·m"));
            tickInHand(bench);
            QCOMPARE(lastTickOf(bench, number).fit.has_value(), i == 2 || i == 3);
            QCOMPARE(workedOn(bench, "Valve cover").fasteners.at(number).verdict(), std::optional(Verdict::Inside));
        }
    }

    QString m_file;
};

class JointSet : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void wholeStory();

private:
    void pickUp(const BenchPage &bench, int expected);
    void settle(const BenchPage &bench);
    void finish(const BenchPage &bench);
};

void JointSet::wholeStory()
{
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("garage.asleft"));
    QString next;
    runUntilKilled({file}, lastWords, next);
    if (QTest::currentTestFailed())
        return;

    const auto program = openProgram(Arguments::Wish::Open, file);
    QCOMPARE(program->window()->page(), Page::Bench);
    const BenchPage &bench = *program->window()->benchPage();
    pickUp(bench, next.toInt());
    settle(bench);
    finish(bench);
}

void JointSet::pickUp(const BenchPage &bench, int expected)
{
    QCOMPARE(bench.sheet(), bench.pane<SessionPane>());
    const JointState &cover = workedOn(bench, "Valve cover");
    QCOMPARE(cover.progress.pass, 1);
    QCOMPARE(cover.progress.doneInRound.size(), std::size_t(tickedBeforeTheEnd));
    QCOMPARE(jointNamed(bench, "Valve cover").order.at(tickedBeforeTheEnd), expected);
    press(Qt::Key_Return);
    QCOMPARE(bench.sheet(), bench.pane<TightenPane>());
    QCOMPARE(bench.pane<TightenPane>()->inHand(), std::optional(expected));
    QCOMPARE(setTo(bench), wordsToSet(bench, "large wrench", "32 N·m"));
    for (int i = tickedBeforeTheEnd; i < fasteners; ++i)
        tickInHand(bench);
    QCOMPARE(workedOn(bench, "Valve cover").progress.pass, 2);
}

/// In the first round one moves still, in the second none.
void JointSet::settle(const BenchPage &bench)
{
    for (int round = 1; round <= 2; ++round) {
        for (int i = 0; i < fasteners; ++i) {
            QCOMPARE(workedOn(bench, "Valve cover").progress.round, round);
            QCOMPARE(setTo(bench), wordsToSet(bench, "large wrench", "32 N·m"));
            if (round == 1 && i == 5)
                click(bench.pane<TightenPane>()->key(TightenPane::Key::Moved));
            else
                tickInHand(bench);
        }
    }
    const JointState &cover = workedOn(bench, "Valve cover");
    QVERIFY(cover.progress.finished() && !cover.progress.unsettled);
    QVERIFY(cover.settled(jointNamed(bench, "Valve cover")));
}

void JointSet::finish(const BenchPage &bench)
{
    for (int acts = 0; acts < 20 && nextAct(bench.book()->state()) != NextAct(next::NothingOpen{}); ++acts)
        press(Qt::Key_Return);
    QCOMPARE(nextAct(bench.book()->state()), NextAct(next::NothingOpen{}));
    QVERIFY(bench.isAncestorOf(QApplication::focusWidget())); // it stays on the Bench
    const FastenerState &sensor = workedOn(bench, "Sensor").fasteners.at(1);
    QCOMPARE(sensor.stage, FastenerStage::Tight);
    QCOMPARE(sensor.verdict(), std::optional(Verdict::ByFeel));
    QVERIFY(!sensor.ticks.back().torque); // never a measured value

    const OpenColumn &open = *bench.openColumn();
    QVERIFY2(open.rows(Gate::TurningTheCrank)->rows().isEmpty(), qPrintable(readable(open)));
    QVERIFY2(open.rows(Gate::FirstStart)->rows().isEmpty(), qPrintable(readable(open)));
    const auto &rows = open.rows(Gate::HandOver)->rows();
    QCOMPARE(rows.size(), 1);
    const auto byFeel = openRows<open::FastenerByFeel>(bench, SystemClock().now());
    QVERIFY(byFeel && byFeel->size() == 1);
    QVERIFY2((rows.front().title + rows.front().note).contains(QStringLiteral("Sensor")), qPrintable(rows.front().title));
}

APP_TEST_BY([](const QStringList &given) {
    return runProgramTest<JointSet>(given,
                                    [](const QStringList &arguments) { return std::make_unique<JointsUntilKilled>(arguments.value(0)); });
})

} // namespace asleft::testing::joint_set_test

#include "joint_set_test.moc"
