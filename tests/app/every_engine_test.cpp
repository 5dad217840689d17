// Every engine of the invented garage, whatever its layout, valves and adjusters, is set from its spec until nothing is open: by keys and
// clicks on the real window, each on a copy of the garage of its own.

#include "bench_mechanic.h"

#include "demo_garage.h"

namespace asleft::testing::every_engine_test {

class EveryEngineTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init() { failOnWarnings(); }
    void isSetUntilNothingIsOpen_data();
    void isSetUntilNothingIsOpen();
    void isTypedInFromPaper_data() { isSetUntilNothingIsOpen_data(); }
    void isTypedInFromPaper();
    void everyWayWasUsed();

private:
    void set(bool allHere, bool onPaper);

    QTemporaryDir m_folder;
    QString m_demo;
    QSet<int> m_used;
    int m_engines = 0;
};

void EveryEngineTest::initTestCase()
{
    m_demo = m_folder.filePath(QStringLiteral("demo.asleft"));
    QVERIFY(makeDemoGarage(m_demo.toStdString()));
}

void EveryEngineTest::isSetUntilNothingIsOpen_data()
{
    QTest::addColumn<qint64>("engine");
    const auto garage = Garage::open(m_demo.toStdString(), {std::make_shared<SystemClock>(), std::make_shared<RandomUids>(), "test"});
    QVERIFY(garage);
    const auto rows = vehicles(**garage);
    m_engines = 0;
    for (const VehicleRow &row : *rows) {
        if (!row.engine)
            continue;
        QTest::newRow(row.engine->name.c_str()) << qint64(row.engine->id.key());
        ++m_engines;
    }
}

void EveryEngineTest::set(bool allHere, bool onPaper)
{
    QFETCH(qint64, engine);
    const QString copy = m_folder.filePath(QStringLiteral("%1-%2.asleft").arg(engine).arg(onPaper ? 1 : 0));
    QVERIFY(QFile::copy(m_demo, copy));
    Mechanic mechanic(copy, EngineId(engine), m_used);
    mechanic.openJob();
    if (QTest::currentTestFailed())
        return;
    mechanic.workUntilNothingIsOpen(allHere, onPaper);
    if (QTest::currentTestFailed())
        return;
    QVERIFY(mechanic.isDone());
    // The person sees it too: three times nothing.
    const OpenColumn &open = *mechanic.bench().openColumn();
    for (const Gate gate : {Gate::TurningTheCrank, Gate::FirstStart, Gate::HandOver})
        QVERIFY2(open.rows(gate)->rows().isEmpty(), qPrintable(readable(open)));
    QCOMPARE(readable(open).count(QStringLiteral("nothing")), 3);
}

void EveryEngineTest::isSetUntilNothingIsOpen()
{
    // Every other engine has one position set at a stroke.
    QFETCH(qint64, engine);
    set(engine % 2 == 0, false);
}

void EveryEngineTest::isTypedInFromPaper()
{
    set(false, true);
}

void EveryEngineTest::everyWayWasUsed()
{
    QVERIFY(m_engines >= 3);
    for (const Way way :
         {Way::Exact, Way::Bracket, Way::Loose, Way::Tight, Way::ByFeel, Way::Turned, Way::SpecLeaf, Way::AllHere, Way::Sheet})
        QVERIFY2(m_used.contains(int(way)), qPrintable(QString::number(int(way))));
}

APP_TEST(EveryEngineTest)

} // namespace asleft::testing::every_engine_test

#include "every_engine_test.moc"
