#include "jobs_driver.h"
#include "joint_texts.h"
#include "work_texts.h"

#include <forms/add_joint_pane.h>
#include <forms/joint_ticks.h>
#include <forms/new_job_form.h>
#include <pages/job_view.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/notes.h>
#include <parts/ruled_list.h>
#include <parts/value_field.h>

#include <work/job_book.h>
#include <work/joints.h>
#include <work/workshop.h>

#include <words/job.h>
#include <words/joints.h>
#include <words/torque_tools.h>

namespace asleft::testing::job_joints_test {

namespace {

using Open = OpenJobs;

/// The words under "Tools wanted", heads and all.
QString wordsOf(const Notes &notes)
{
    QStringList words;
    for (const Notes::Note &note : notes.notes())
        words << note.head << note.words;
    return words.join(u'\n');
}

/// A cover of twelve in two passes.
JointText coverJoint()
{
    JointText text = coverText();
    text.passes = "50 %, target";
    text.settle = SettleGround::No;
    return text;
}

/// A small screw that a wrench from 6 N·m does not reach, with a name to be escaped.
JointText sensorJoint()
{
    JointText text = sensorText();
    text.name = "Sensor & bracket";
    return text;
}

void hangWrench(Garage &garage, const char *name, const char *least, const char *most)
{
    if (!addTorqueWrench(garage, wrenchText(name, least, most)))
        qFatal("the wrench could not be hung up");
}

/// What stands above a torque no wrench of the rack reaches.
QString noneReaches(const char *joint)
{
    return QCoreApplication::translate("ToolsWantedWords", "%1: none reaches it").arg(QString::fromUtf8(joint));
}

QString titleOf(StepKind kind, JointId joint, const std::vector<Joint> &known)
{
    return lineTitle({.kind = kind, .title = {}, .detail = {}, .cautions = {}, .joint = joint}, newestOf(known));
}

QStringList titlesOf(const RuledRows &rows)
{
    QStringList titles;
    for (const RuledRow &row : rows.rows())
        titles.append(row.title);
    return titles;
}

} // namespace

class JobJointsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }

    void jointsAreTickedByKeyboardAndPutTheirLinesIntoTheJob()
    {
        Open open;
        const NewVehicle added = addFour(*open.shop.garage);
        const JointId cover = *addJoint(*open.shop.garage, added.engine, coverJoint());
        const JointId sensor = *addJoint(*open.shop.garage, added.engine, sensorJoint());
        hangWrench(*open.shop.garage, "small wrench", "6", "30");
        hangWrench(*open.shop.garage, "large wrench", "20", "200");
        open.page.beginNew(added.engine);
        QCoreApplication::processEvents();
        NewJobForm &form = *open.page.newJob();
        QCOMPARE(form.joints()->ticks().size(), 2U);
        const auto plain = form.lineRows().rowCount();
        QVERIFY(!form.wanted()->isVisible());
        form.joints()->tickOf(cover)->setFocus();
        press(Qt::Key_Down);
        QVERIFY(form.joints()->tickOf(sensor)->hasFocus());
        press(Qt::Key_Space);
        press(Qt::Key_Up);
        press(Qt::Key_Space);
        // The sensor was ticked first: it comes off first and goes on last.
        QCOMPARE(form.joints()->ticked(), (std::vector<JointId>{sensor, cover}));
        QCOMPARE(form.joints()->tickOf(cover)->place(), 2);
        QCOMPARE(form.lineRows().rowCount(), plain + 4);
        const QStringList titles = titlesOf(form.lineRows());
        const auto known = *joints(*open.shop.garage, added.engine);
        const auto placeOf = [&](StepKind kind, JointId joint) { return titles.indexOf(titleOf(kind, joint, known)); };
        QVERIFY(placeOf(StepKind::Loosen, sensor) >= 0);
        QVERIFY(placeOf(StepKind::Loosen, sensor) < placeOf(StepKind::Loosen, cover));
        QVERIFY(placeOf(StepKind::Loosen, cover) < placeOf(StepKind::Tighten, cover));
        QVERIFY(placeOf(StepKind::Tighten, cover) < placeOf(StepKind::Tighten, sensor));
        // What each wants; 16 N·m lies above a fifth of the small one, 32 N·m below a fifth of the large one (ISO 6789).
        const QString wanted = wordsOf(*form.wanted());
        QVERIFY(form.wanted()->isVisible());
        QVERIFY2(wanted.contains(driveLine(jointOfText(coverJoint()))), qPrintable(wanted));
        const auto onTheWall = *tools(*open.shop.garage);
        const Rack rack = rackOf(onTheWall);
        const auto lineOf = [&](const JointText &text, std::size_t which) {
            const Joint joint = jointOfText(text);
            return toolWantedLine(toolsWanted(joint, rack, {}).at(which), joint, rack);
        };
        QVERIFY(lineOf(coverJoint(), 0).contains(QStringLiteral("small wrench")));
        QVERIFY(lineOf(coverJoint(), 1).contains(QStringLiteral("large wrench")));
        for (const QString &line :
             {lineOf(coverJoint(), 0), lineOf(coverJoint(), 1), noneReaches("Sensor & bracket"), lineOf(sensorJoint(), 0)})
            QVERIFY2(wanted.contains(line), qPrintable(wanted));
        form.titleField()->edit()->setFocus();
        press(Qt::Key_Return);
        QVERIFY(open.onBench);
        const auto book = JobBook::open(*open.shop.garage, *open.onBench);
        QVERIFY(book);
        std::vector<std::pair<StepKind, JointId>> lines;
        for (const Step &step : (*book)->state().frame->job.steps)
            if (step.joint)
                lines.emplace_back(step.kind, *step.joint);
        QCOMPARE(lines,
                 (std::vector<std::pair<StepKind, JointId>>{
                     {StepKind::Loosen, sensor}, {StepKind::Loosen, cover}, {StepKind::Tighten, cover}, {StepKind::Tighten, sensor}}));
        // The next job begins without them.
        QVERIFY(form.joints()->ticked().empty());
        QCOMPARE(form.lineRows().rowCount(), plain);
    }

    void aTickIsTakenBackByClick()
    {
        Open open;
        const NewVehicle added = addFour(*open.shop.garage);
        const JointId cover = *addJoint(*open.shop.garage, added.engine, coverJoint());
        const JointId sensor = *addJoint(*open.shop.garage, added.engine, sensorJoint());
        open.page.beginNew(added.engine);
        QCoreApplication::processEvents();
        JointTicks &ticks = *open.page.newJob()->joints();
        click(ticks.tickOf(cover));
        click(ticks.tickOf(sensor));
        QCOMPARE(ticks.tickOf(sensor)->place(), 2);
        click(ticks.tickOf(cover));
        QCOMPARE(ticks.ticked(), std::vector<JointId>{sensor});
        QCOMPARE(ticks.tickOf(cover)->place(), 0);
        QCOMPARE(ticks.tickOf(sensor)->place(), 1);
        QVERIFY(!titlesOf(open.page.newJob()->lineRows()).join(u' ').contains(QStringLiteral("Valve cover")));
    }

    void newJointsAndToolsComeInUnderTheTicks()
    {
        Open open;
        const NewVehicle added = addFour(*open.shop.garage);
        const JointId sensor = *addJoint(*open.shop.garage, added.engine, sensorJoint());
        open.page.beginNew(added.engine);
        QCoreApplication::processEvents();
        NewJobForm &form = *open.page.newJob();
        click(form.joints()->tickOf(sensor));
        form.joints()->tickOf(sensor)->setFocus();
        QVERIFY(wordsOf(*form.wanted()).contains(noneReaches("Sensor & bracket")));
        hangWrench(*open.shop.garage, "screwdriver", "1", "5");
        QVERIFY2(wordsOf(*form.wanted()).contains(QStringLiteral("screwdriver")), qPrintable(wordsOf(*form.wanted())));
        QVERIFY(!wordsOf(*form.wanted()).contains(noneReaches("Sensor & bracket")));
        QVERIFY(addJoint(*open.shop.garage, added.engine, coverJoint()));
        QCOMPARE(form.joints()->ticks().size(), 2U);
        QCOMPARE(form.joints()->ticked(), std::vector<JointId>{sensor});
        QVERIFY(form.joints()->tickOf(sensor)->hasFocus());
    }

    void theJointsAreThoseOfTheEngineInHand()
    {
        Open open;
        const NewVehicle first = addFour(*open.shop.garage, "First");
        const NewVehicle second = addFour(*open.shop.garage, "Second");
        const JointId cover = *addJoint(*open.shop.garage, first.engine, coverJoint());
        open.page.beginNew(first.engine);
        QCoreApplication::processEvents();
        NewJobForm &form = *open.page.newJob();
        click(form.joints()->tickOf(cover));
        form.vehicleList()->setFocus();
        press(Qt::Key_Down);
        QCOMPARE(form.vehicle(), std::optional<qint64>(second.vehicle.key()));
        QVERIFY(form.joints()->ticks().empty());
        QVERIFY(form.joints()->ticked().empty());
        QVERIFY(!form.jointsMessage()->sentence().isEmpty());
        QVERIFY(!titlesOf(form.lineRows()).join(u' ').contains(QStringLiteral("Valve cover")));
        QVERIFY(!form.wanted()->isVisible());
    }

    void aJointIsPutOnAnOpenJob()
    {
        Open open;
        const JobId job = open.openOne();
        const auto before = JobBook::open(*open.shop.garage, job);
        const EngineId engine = (*before)->state().frame->engine.id;
        const std::size_t steps = (*before)->state().frame->job.steps.size();
        const JointId cover = *addJoint(*open.shop.garage, engine, coverJoint());
        const JointId sensor = *addJoint(*open.shop.garage, engine, sensorJoint());
        click(open.page.jointKey());
        AddJointPane &sheet = *open.page.moreJoints();
        QVERIFY(sheet.isVisible() && sheet.list()->hasFocus());
        click(sheet.addKey());
        QCOMPARE(sheet.message()->role(), MessageLine::Role::Refusal);
        sheet.list()->setFocus();
        press(Qt::Key_Space);
        QCOMPARE(sheet.list()->currentId(), std::optional<qint64>(cover.key()));
        QVERIFY(wordsOf(*sheet.wanted()).contains(QString::fromUtf8("No tool here reaches 32 N·m.")));
        press(Qt::Key_Return);
        QVERIFY(!sheet.isVisible() && open.page.sheet()->isVisible());
        QCOMPARE(open.page.message()->role(), MessageLine::Role::Done);
        const auto after = JobBook::open(*open.shop.garage, job);
        const auto &lines = (*after)->state().frame->job.steps;
        QCOMPARE(lines.size(), steps + 2);
        QVERIFY(lines.at(steps).kind == StepKind::Loosen && lines.at(steps).joint == cover);
        QVERIFY(lines.at(steps + 1).kind == StepKind::Tighten && lines.at(steps + 1).joint == cover);
        // What is there already is not offered again, and a single one is chosen already.
        click(open.page.jointKey());
        QCOMPARE(sheet.list()->currentId(), std::optional<qint64>(sensor.key()));
        click(sheet.addKey());
        click(open.page.jointKey());
        QCOMPARE(sheet.rows().rowCount(), 0);
        QVERIFY2(!sheet.addKey()->isEnabled(), "there is nothing to put on");
        press(Qt::Key_Return);
        QVERIFY(sheet.isVisible());
        JointText pan = coverJoint();
        pan.name = "Pan";
        QVERIFY(addJoint(*open.shop.garage, engine, pan));
        QVERIFY2(sheet.addKey()->isEnabled(), "a joint came in meanwhile");
        sheet.leaveKey()->setFocus();
        press(Qt::Key_Escape);
        QVERIFY(open.page.sheet()->isVisible());
        QCOMPARE((*JobBook::open(*open.shop.garage, job))->state().frame->job.steps.size(), steps + 4);
    }

    void anotherSheetKeepsTheTicks()
    {
        Open open;
        const NewVehicle added = addFour(*open.shop.garage);
        const JointId cover = *addJoint(*open.shop.garage, added.engine, coverJoint());
        open.page.beginNew(added.engine);
        QCoreApplication::processEvents();
        NewJobForm &form = *open.page.newJob();
        if (builtInSheets().size() < 2)
            QSKIP("there is one sheet only");
        click(form.joints()->tickOf(cover));
        form.sheetList()->setFocus();
        press(Qt::Key_Down);
        QCOMPARE(QString::fromStdString(form.sheet().title), QString::fromStdString(builtInSheets().at(1).title));
        QCOMPARE(form.titleField()->text(), QString::fromStdString(builtInSheets().at(1).title));
        QVERIFY(titlesOf(form.lineRows()).contains(titleOf(StepKind::Tighten, cover, *joints(*open.shop.garage, added.engine))));
        QCOMPARE(form.joints()->ticked(), std::vector<JointId>{cover});
    }

    void nothingOfANewJobIsCutOffInTheSmallestWindow()
    {
        Open open;
        const NewVehicle added = addFour(*open.shop.garage);
        JointText text = coverJoint();
        text.name = "Oil pressure sender clamp behind the long intake manifold";
        const JointId joint = *addJoint(*open.shop.garage, added.engine, text);
        open.page.beginNew(added.engine);
        // What the smallest window leaves to a page.
        open.page.resize(1024, 636);
        for (int round = 0; round < 3; ++round)
            QCoreApplication::processEvents();
        const JointTick *tick = open.page.newJob()->joints()->tickOf(joint);
        QVERIFY(tick->height() >= tick->heightForWidth(tick->width()));
        for (const auto *button : open.page.findChildren<QAbstractButton *>()) {
            if (button->isVisible())
                QVERIFY2(button->width() >= button->minimumSizeHint().width(), qPrintable(button->text()));
        }
    }

    void aNewJobHasNoJobToPutAJointOn()
    {
        Open open;
        open.openOne();
        QVERIFY(open.page.jointKey()->isEnabled());
        open.page.beginNew({});
        QVERIFY(!open.page.jointKey()->isEnabled());
    }
};

APP_TEST(JobJointsTest)

} // namespace asleft::testing::job_joints_test

#include "job_joints_test.moc"
