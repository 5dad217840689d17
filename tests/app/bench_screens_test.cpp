// Every screen that can be drawn comes to stand in whatever garage it is drawn from.

#include "bench_driver.h"

#include <pictures/screens.h>
#include <window/window.h>

namespace asleft::testing::bench_screens_test {

class BenchScreensTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void standsInAnEmptyGarage_data() { screenNames(); }
    void standsInAnEmptyGarage();
    void standsInAGarageOfOneEngine_data() { screenNames(); }
    void standsInAGarageOfOneEngine();
    void namesAreTold();

private:
    static void screenNames();
    static const Screen &named(const QString &name);
    static void show(Shop &shop, const QString &name);
};

void BenchScreensTest::screenNames()
{
    QTest::addColumn<QString>("name");
    for (const Screen &screen : screens())
        QTest::newRow(screen.name) << QString::fromLatin1(screen.name);
}

const Screen &BenchScreensTest::named(const QString &name)
{
    return *std::ranges::find_if(screens(), [&](const Screen &screen) { return name == QLatin1String(screen.name); });
}

void BenchScreensTest::show(Shop &shop, const QString &name)
{
    Window window(*shop.context);
    present(window);
    window.goTo(named(name).page);
    if (named(name).prepare)
        named(name).prepare(window);
    QCoreApplication::processEvents();
    QVERIFY(!window.grab().isNull());
    QCOMPARE(window.size(), QSize(1280, 800));
}

void BenchScreensTest::standsInAnEmptyGarage()
{
    QFETCH(QString, name);
    Shop shop;
    show(shop, name);
}

void BenchScreensTest::standsInAGarageOfOneEngine()
{
    QFETCH(QString, name);
    Shop shop;
    const NewVehicle added = addFour(*shop.garage);
    QVERIFY(addPerson(*shop.garage, "MK", {}));
    QVERIFY(openJob(*shop.garage, added.vehicle, added.engine, builtInSheets().front(), "Set the valves"));
    show(shop, name);
}

void BenchScreensTest::namesAreTold()
{
    QSet<QString> names;
    for (const Screen &screen : screens())
        names.insert(QString::fromLatin1(screen.name));
    QCOMPARE(names.size(), qsizetype(screens().size()));
    for (const char *name : {"bench-sheet", "bench-sheet-typed", "bench-again", "bench-plan", "bench-turn-waits", "bench-bridged",
                             "bench-radial", "bench-v-twin", "bench-six"})
        QVERIFY2(names.contains(QString::fromLatin1(name)), name);
}

APP_TEST(BenchScreensTest)

} // namespace asleft::testing::bench_screens_test

#include "bench_screens_test.moc"
