#include "garage_fixture.h"

#include <parts/station_number.h>

namespace asleft::testing::station_number_test {

class SeatTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void copiesOpenAtOnceHaveSeatsOfTheirOwn()
    {
        const QTemporaryDir folder;
        const QString name = QStringLiteral("bench pc");
        const StationNumber first(folder.path());
        QCOMPARE(first.station(name), std::string("bench pc"));
        {
            const StationNumber second(folder.path());
            QCOMPARE(second.number(), 2);
            QVERIFY(second.station(name) != first.station(name));
        }
        QCOMPARE(StationNumber(folder.path()).number(), 2);
    }

    void thePlaceOfOneThatEndedIsTakenAgain()
    {
        const QTemporaryDir folder;
        for (int start = 0; start < 3; ++start)
            QCOMPARE(StationNumber(folder.path()).number(), 1);
    }

    void withoutAFolderThereIsTheFirstPlace()
    {
        const QTemporaryDir folder;
        QCOMPARE(StationNumber(folder.filePath(QStringLiteral("none/here"))).number(), 1);
    }
};

APP_TEST(SeatTest)

} // namespace asleft::testing::station_number_test

#include "station_number_test.moc"
