#include "garage_fixture.h"

#include "pages/jobs_model.h"
#include "pages/jobs_page.h"
#include "pages/new_job_form.h"
#include "pages/vehicles_model.h"
#include "parts/message_line.h"
#include "parts/ruled_list.h"
#include "parts/value_field.h"

using namespace asleft;
using namespace asleft::testing;

namespace {

struct Open {
    Open() : vehicles(*shop.garage), jobs(*shop.garage), page(jobs, vehicles)
    {
        QObject::connect(&page, &JobsPage::benchWanted, &page, [this](JobId job) { onBench = job; });
        present(page);
    }

    Shop shop;
    VehiclesModel vehicles;
    JobsModel jobs;
    JobsPage page;
    std::optional<JobId> onBench;
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
        open.page.beginNew(added.vehicle);
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
};

APP_TEST(JobsPageTest)
#include "jobs_page_test.moc"
