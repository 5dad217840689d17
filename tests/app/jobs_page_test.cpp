#include "jobs_driver.h"

#include <forms/new_job_form.h>
#include <pages/job_view.h>
#include <parts/bench_sheet_saving.h>
#include <parts/choice_keys.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/ruled_list.h>
#include <parts/value_field.h>

#include <records/bench_sheet.h>
#include <work/job_book.h>

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QRegularExpression>
#include <QSet>
#include <QSignalSpy>

#include <cmath>

namespace asleft::testing::jobs_page_test {

namespace {

struct Open : OpenJobs {
    /// Asks for a bench sheet and answers with a path.
    void choosePath(const QString &path)
    {
        click(page.sheet()->paperKey());
        auto *dialog = page.findChild<QFileDialog *>();
        if (!dialog)
            qFatal("nobody asks where to");
        dialog->setOption(QFileDialog::DontConfirmOverwrite);
        dialog->selectFile(path);
        QMetaObject::invokeMethod(dialog, "accept");
        // It goes once the events are seen.
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
};

} // namespace

class JobsPageTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }

    void aJobIsOpenedByKeyboardAndGoesToTheBench()
    {
        Open open;
        addFour(*open.shop.garage, "First");
        const NewVehicle second = addFour(*open.shop.garage, "Second");
        open.page.beginNew({});
        press(Qt::Key_Down);
        press(Qt::Key_Down);
        press(Qt::Key_Up);
        press(Qt::Key_Down);
        QCOMPARE(open.page.newJob()->vehicle(), std::optional<qint64>(second.vehicle.key()));
        open.page.newJob()->titleField()->edit()->setFocus();
        press(Qt::Key_Return);
        QCOMPARE(open.jobs.jobs().size(), 1U);
        QVERIFY(open.onBench == open.jobs.jobs().front().id);
        QCOMPARE(open.jobs.jobs().front().vehicleName, std::string("Second"));
        QCOMPARE(open.jobs.jobs().front().title, open.page.newJob()->sheet().title);
    }

    void withoutAVehicleItAsksForOne()
    {
        Open open;
        open.page.beginNew({});
        open.page.newJob()->titleField()->edit()->setFocus();
        press(Qt::Key_Return);
        QCOMPARE(open.page.newJob()->message()->role(), MessageLine::Role::Refusal);
        QVERIFY(open.jobs.jobs().empty());
    }

    void aJobWithoutATitleIsRefusedAndTheVehicleStays()
    {
        Open open;
        const NewVehicle added = addFour(*open.shop.garage);
        open.page.beginNew(added.engine);
        ValueField *title = open.page.newJob()->titleField();
        title->edit()->setFocus();
        title->edit()->selectAll();
        press(Qt::Key_Delete);
        press(Qt::Key_Return);
        QVERIFY(title->isRefused());
        QVERIFY(!title->message()->sentence().isEmpty());
        QCOMPARE(open.page.newJob()->vehicle(), std::optional<qint64>(added.vehicle.key()));
        QVERIFY(!open.onBench);
    }

    void anEngineOnTheStandGetsAJob()
    {
        Open open;
        const NewVehicle added = addFour(*open.shop.garage, "Hollin 40 tractor", "Old four");
        QVERIFY(moveEngine(*open.shop.garage, added.engine, std::nullopt));
        open.page.beginNew(added.engine);
        open.page.newJob()->titleField()->edit()->setFocus();
        press(Qt::Key_Return);
        QCOMPARE(open.jobs.jobs().size(), 1U);
        QVERIFY(open.onBench == open.jobs.jobs().front().id);
        const auto book = JobBook::open(*open.shop.garage, *open.onBench);
        QVERIFY(book);
        QCOMPARE((*book)->state().frame->engine.id, added.engine);
        QVERIFY((*book)->state().frame->vehicle.stand);
    }

    void aVehicleWithoutAnEngineIsToldSo()
    {
        Open open;
        const NewVehicle added = addFour(*open.shop.garage);
        QVERIFY(moveEngine(*open.shop.garage, added.engine, std::nullopt));
        open.page.beginNew({});
        open.page.newJob()->chooseVehicle(added.vehicle.key());
        click(buttonNamed(open.page, QStringLiteral("Open the job")));
        QCOMPARE(open.page.newJob()->message()->role(), MessageLine::Role::Refusal);
        QVERIFY(open.page.newJob()->message()->sentence().contains(QStringLiteral("Hollin 40 tractor")));
        QVERIFY(open.jobs.jobs().empty());
    }

    void theListOpensAJobOnTheBench()
    {
        Open open;
        const NewVehicle added = addFour(*open.shop.garage);
        const auto job = openJob(*open.shop.garage, added.vehicle, added.engine, builtInSheets().front(), "Set the valves");
        QVERIFY(job);
        open.page.list()->setFocus();
        press(Qt::Key_Down);
        press(Qt::Key_Return);
        QVERIFY(open.onBench == *job);
    }

    void aNewJobOfAnotherSeatLeavesTheLineInHand()
    {
        Open open;
        const NewVehicle added = addFour(*open.shop.garage);
        const auto first = openJob(*open.shop.garage, added.vehicle, added.engine, builtInSheets().front(), "First");
        open.page.choose(first->key());
        QVERIFY(openJob(*open.shop.garage, added.vehicle, added.engine, builtInSheets().front(), "Second"));
        QCOMPARE(open.jobs.jobs().size(), 2U);
        QCOMPARE(open.page.list()->currentId(), std::optional<qint64>(first->key()));
        QCOMPARE(open.page.list()->currentIndex().row(), 1);
    }

    void aBenchSheetIsWrittenForBothPapers()
    {
        Open open;
        const JobId job = open.openOne();
        // A4 is 210 mm by 297 mm, Letter 8½ in by 11 in: 595 × 842 and 612 × 792 points.
        const QList<std::pair<SheetPaper, QByteArray>> papers{{SheetPaper::A4, "595 842"}, {SheetPaper::Letter, "612 792"}};
        for (const auto &[paper, size] : papers) {
            click(open.page.sheet()->paperKeys()->key(int(paper)));
            QCOMPARE(rememberedPaper(), paper);
            const QString path = open.shop.folder.filePath(paperName(paper) + QStringLiteral(".pdf"));
            open.choosePath(path);
            const QByteArray bytes = contentOf(path);
            QVERIFY(bytes.startsWith("%PDF"));
            QVERIFY2(boxOf(bytes).startsWith(size), boxOf(bytes).constData());
            QCOMPARE(open.page.sheet()->paperMessage()->role(), MessageLine::Role::Done);
            QVERIFY(open.page.sheet()->paperMessage()->sentence().contains(QFileInfo(path).fileName()));
        }
        Open again;
        QCOMPARE(again.page.sheet()->paper(), SheetPaper::Letter);
        QVERIFY(JobBook::open(*open.shop.garage, job));
    }

    void aBenchSheetThatCannotBeWrittenIsToldInASentence()
    {
        Open open;
        const JobId job = open.openOne();
        BenchSheetSaving saving(&open.page);
        QSignalSpy written(&saving, &BenchSheetSaving::written);
        QSignalSpy refused(&saving, &BenchSheetSaving::refused);
        saving.write(*open.shop.garage, job, SheetPaper::A4, open.shop.folder.filePath(QStringLiteral("no/such/folder.pdf")));
        saving.write(*open.shop.garage, JobId(99), SheetPaper::A4, open.shop.folder.filePath(QStringLiteral("a.pdf")));
        QCOMPARE(written.size(), 0);
        QCOMPARE(refused.size(), 2);
        for (const QList<QVariant> &told : refused)
            QVERIFY(!told.front().toString().isEmpty());
        QVERIFY(!QFileInfo::exists(open.shop.folder.filePath(QStringLiteral("a.pdf"))));
    }

    void leavingTheQuestionWritesNothing()
    {
        Open open;
        open.openOne();
        click(open.page.sheet()->paperKey());
        auto *dialog = open.page.findChild<QFileDialog *>();
        QVERIFY(dialog);
        QVERIFY2(dialog->selectedFiles().constFirst().endsWith(QStringLiteral("Hollin 40 tractor, Valves- all of them.pdf")),
                 qPrintable(dialog->selectedFiles().constFirst()));
        dialog->reject();
        QVERIFY(open.page.sheet()->paperMessage()->sentence().isEmpty());
    }

    /// Nobody scrolls through all of them, but whoever does reaches the first.
    void aLongListIsReadOnAsItIsScrolled()
    {
        Shop shop;
        const NewVehicle added = addFour(*shop.garage);
        std::vector<JobId> opened;
        for (int job = 0; job < jobsAtOnce + 30; ++job)
            opened.push_back(openJob(*shop.garage, added.vehicle, added.engine, builtInSheets().front(), "Valves").value());
        JobsModel model(*shop.garage);
        RuledRows &rows = *model.rows();
        QCOMPARE(model.jobs().size(), std::size_t(jobsAtOnce));
        QVERIFY(model.jobs().front().id == opened.back());
        QVERIFY(rows.canFetchMore({}));

        // One of those not read yet is worked on: it is first from now on, and stands there once.
        const auto person = addPerson(*shop.garage, "MK", {});
        const auto book = JobBook::open(*shop.garage, opened.front());
        (*book)->setWho(*person);
        QVERIFY((*book)->confirmCrank(degrees(0)).has_value());
        model.refresh();
        QVERIFY(model.jobs().front().id == opened.front());
        while (rows.canFetchMore({}))
            rows.fetchMore({});
        QCOMPARE(model.jobs().size(), opened.size());
        QCOMPARE(rows.rowCount(), int(opened.size()));
        QSet<qint64> all;
        for (const RuledRow &row : rows.rows())
            all.insert(row.id);
        QCOMPARE(all.size(), qsizetype(opened.size()));
    }

private:
    static QByteArray contentOf(const QString &path)
    {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

    /// The size of the first page, in whole points.
    static QByteArray boxOf(const QByteArray &pdf)
    {
        const QRegularExpression box(QStringLiteral("/MediaBox\\s*\\[\\s*0 0 ([0-9.]+) ([0-9.]+)"));
        const auto found = box.match(QString::fromLatin1(pdf));
        const auto points = [&](int group) { return QByteArray::number(std::lround(found.captured(group).toDouble())); };
        return points(1) + ' ' + points(2);
    }
};

APP_TEST(JobsPageTest)

} // namespace asleft::testing::jobs_page_test

#include "jobs_page_test.moc"
