#include "garage_fixture.h"

#include "seat.h"

using namespace asleft;
using namespace asleft::testing;

class SeatTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void copiesOpenAtOnceHaveSeatsOfTheirOwn()
    {
        const QTemporaryDir folder;
        const QString name = QStringLiteral("bench pc");
        const SeatPlace first(folder.path());
        QCOMPARE(first.seat(name), std::string("bench pc"));
        {
            const SeatPlace second(folder.path());
            QCOMPARE(second.number(), 2);
            QVERIFY(second.seat(name) != first.seat(name));
        }
        QCOMPARE(SeatPlace(folder.path()).number(), 2);
    }

    void thePlaceOfOneThatEndedIsTakenAgain()
    {
        const QTemporaryDir folder;
        for (int start = 0; start < 3; ++start)
            QCOMPARE(SeatPlace(folder.path()).number(), 1);
    }

    void withoutAFolderThereIsTheFirstPlace()
    {
        const QTemporaryDir folder;
        QCOMPARE(SeatPlace(folder.filePath(QStringLiteral("none/here"))).number(), 1);
    }
};

APP_TEST(SeatTest)
#include "seat_test.moc"
