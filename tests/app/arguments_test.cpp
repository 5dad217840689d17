#include "garage_fixture.h"

#include <pictures/pictures.h>
#include <window/arguments.h>
#include <window/page_picture.h>

namespace asleft::testing::arguments_test {

using Wish = Arguments::Wish;

class ArgumentsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void wishes_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<int>("wish");
        const auto row = [](const char *line, Wish wish) { QTest::newRow(line) << QString::fromLatin1(line) << int(wish); };
        row("asleft", Wish::Last);
        row("asleft a.asleft", Wish::Open);
        row("asleft --open a.asleft", Wish::Open);
        row("asleft --new a.asleft", Wish::New);
        row("asleft --open a --picture bench out.png", Wish::Picture);
        row("asleft --open a --picture bench out.png --look dark --size 1920x1080", Wish::Picture);
        row("asleft --help", Wish::Help);
        row("asleft --version", Wish::Version);
        row("asleft --nonsense", Wish::Refused);
        row("asleft --open", Wish::Refused);
        row("asleft a b", Wish::Refused);
        row("asleft --open a --new b", Wish::Refused);
        row("asleft --picture bench out.png", Wish::Refused);
        row("asleft --open a --picture bench", Wish::Refused);
        row("asleft --open a --picture moon out.png", Wish::Refused);
        row("asleft --open a --picture bench out.png --look pink", Wish::Refused);
        row("asleft --open a --picture bench out.png --size huge", Wish::Refused);
        row("asleft --open a --picture bench out.png --size 99999x10", Wish::Refused);
    }

    void wishes()
    {
        QFETCH(QString, line);
        QFETCH(int, wish);
        const Arguments arguments = readArguments(line.split(QLatin1Char(' ')));
        QCOMPARE(int(arguments.wish), wish);
        QCOMPARE(arguments.refusal.isEmpty(), arguments.wish != Wish::Refused);
    }

    void anUnknownPageIsToldWhichThereAre()
    {
        const Arguments arguments = readArguments(QStringLiteral("asleft --open a --picture moon out.png").split(QLatin1Char(' ')));
        for (const QString &page : pageNames())
            QVERIFY(arguments.refusal.contains(page));
    }

    void everyPageIsDrawnAsItIs()
    {
        testing::Shop shop;
        testing::addFour(*shop.garage);
        for (const QString &page : pageNames()) {
            const QString path = shop.folder.filePath(page + QStringLiteral(".png"));
            QCOMPARE(drawPage(QString::fromStdString(shop.garage->path()), Look::Light, page, {1280, 800}, path), QString());
            QCOMPARE(QImage(path).size(), QSize(1280, 800));
        }
    }

    void everyScreenIsDrawn()
    {
        testing::Shop shop;
        testing::addFour(*shop.garage);
        for (const QString &screen : pictureScreens()) {
            const QString path = shop.folder.filePath(screen + QStringLiteral(".png"));
            QCOMPARE(drawPicture(QString::fromStdString(shop.garage->path()), Look::Light, screen, {1280, 800}, path), QString());
            QCOMPARE(QImage(path).size(), QSize(1280, 800));
        }
        QVERIFY(!drawPicture(QString::fromStdString(shop.garage->path()), Look::Dark, QStringLiteral("tools"), {1280, 800},
                             shop.folder.filePath(QStringLiteral("no/such/a.png")))
                     .isEmpty());
    }
};

APP_TEST(ArgumentsTest)

} // namespace asleft::testing::arguments_test

#include "arguments_test.moc"
