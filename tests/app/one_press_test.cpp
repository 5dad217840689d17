// One press writes one act, as a keyboard sends it: a press, repeats, a release.
#include "bench_driver.h"

#include <parts/message_line.h>
#include <window/one_press.h>
#include <window/window.h>

#include <QAction>
#include <QLineEdit>
#include <QWindow>

namespace asleft::testing::one_press_test {

/// Counts what comes through to the widget in hand, and writes to the garage with some of it.
class Hand : public QLineEdit {
public:
    explicit Hand(Garage &garage) : m_garage(garage) {}

    int enters = 0;
    int letters = 0;
    int clicks = 0;
    bool writes = true;

protected:
    void keyPressEvent(QKeyEvent *event) override
    {
        const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
        ++(enter ? enters : letters);
        write();
    }
    void mousePressEvent(QMouseEvent *) override
    {
        ++clicks;
        write();
    }

private:
    void write()
    {
        if (writes)
            Q_EMIT m_garage.changed({Change::What::Acts});
    }

    Garage &m_garage;
};

class OnePressTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void aHeldKeyActsOnce_data();
    void aHeldKeyActsOnce();
    void repeatsThatAreNotToldAsSuchActOnce();
    void aHeldKeyStillMovesAndTypes();
    void aSecondPressShortlyAfterIsSwallowedAndSaid();
    void thePauseCanBeSet();
    void whatWritesNothingMayBePressedAsOftenAsOneLikes();
    void aDoubleClickWritesOnce();
    void aShortcutHeldDownActsOnce();

private:
    struct Bench {
        Bench() : window(*shop.context)
        {
            hand = new Hand(*shop.garage);
            hand->setParent(&window);
            hand->setGeometry(10, 10, 200, 40);
            present(window);
            hand->show();
            hand->raise();
            hand->setFocus();
        }
        void send(QEvent::Type type, int key, bool repeats = false, quint64 at = 0, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
        {
            const QString text = key >= Qt::Key_A && key <= Qt::Key_Z ? QString(QChar(key)).toLower() : QString();
            QKeyEvent event(type, key, modifiers, text, repeats);
            event.setTimestamp(at);
            QCoreApplication::sendEvent(window.windowHandle(), &event);
        }
        void press(int key, bool repeats = false, quint64 at = 0) { send(QEvent::KeyPress, key, repeats, at); }
        void release(int key, bool repeats = false, quint64 at = 0) { send(QEvent::KeyRelease, key, repeats, at); }

        Shop shop;
        Window window;
        Hand *hand;
    };
};

void OnePressTest::aHeldKeyActsOnce_data()
{
    QTest::addColumn<int>("key");
    QTest::newRow("Enter") << int(Qt::Key_Return);
    QTest::newRow("Enter of the number pad") << int(Qt::Key_Enter);
    QTest::newRow("Space") << int(Qt::Key_Space);
    QTest::newRow("a letter") << int(Qt::Key_S);
}

void OnePressTest::aHeldKeyActsOnce()
{
    QFETCH(int, key);
    Bench bench;
    bench.press(key);
    for (int repeat = 0; repeat < 20; ++repeat) {
        bench.release(key, true);
        bench.press(key, true);
    }
    QCOMPARE(bench.hand->enters + bench.hand->letters, 1);
    bench.release(key);
    QVERIFY(bench.window.notice()->isHidden());
}

/// Under load X11 sends a release and a press at one moment, and no word that it is a repeat.
void OnePressTest::repeatsThatAreNotToldAsSuchActOnce()
{
    Bench bench;
    bench.window.onePress()->setPause(std::chrono::milliseconds(0));
    bench.press(Qt::Key_Return, false, 1000);
    for (quint64 at = 1500; at < 2500; at += 33) {
        bench.release(Qt::Key_Return, false, at);
        bench.press(Qt::Key_Return, false, at);
    }
    QCOMPARE(bench.hand->enters, 1);
    bench.release(Qt::Key_Return, false, 2600);
    bench.press(Qt::Key_Return, false, 2900);
    QCOMPARE(bench.hand->enters, 2);
}

void OnePressTest::aHeldKeyStillMovesAndTypes()
{
    Bench bench;
    bench.hand->writes = false;
    for (const int key : {int(Qt::Key_Left), int(Qt::Key_Backspace), int(Qt::Key_X)}) {
        bench.hand->letters = 0;
        bench.press(key);
        for (int repeat = 0; repeat < 5; ++repeat)
            bench.press(key, true);
        bench.release(key);
        QCOMPARE(bench.hand->letters, 6);
    }
}

void OnePressTest::aSecondPressShortlyAfterIsSwallowedAndSaid()
{
    Bench bench;
    bench.window.onePress()->setPause(std::chrono::hours(1));
    bench.press(Qt::Key_Return);
    bench.release(Qt::Key_Return);
    bench.press(Qt::Key_Enter);
    bench.release(Qt::Key_Enter);
    QCOMPARE(bench.hand->enters, 1);
    QVERIFY(bench.window.notice()->isVisible());
    QVERIFY(!bench.window.notice()->sentence().isEmpty());
    // Another key is another thing.
    bench.press(Qt::Key_S);
    QCOMPARE(bench.hand->letters, 1);
}

void OnePressTest::thePauseCanBeSet()
{
    Bench bench;
    bench.window.onePress()->setPause(std::chrono::milliseconds(0));
    for (int time = 0; time < 3; ++time) {
        bench.press(Qt::Key_Return);
        bench.release(Qt::Key_Return);
    }
    QCOMPARE(bench.hand->enters, 3);
    QVERIFY(bench.window.notice()->isHidden());
}

void OnePressTest::whatWritesNothingMayBePressedAsOftenAsOneLikes()
{
    Bench bench;
    bench.window.onePress()->setPause(std::chrono::hours(1));
    bench.hand->writes = false;
    for (int time = 0; time < 3; ++time) {
        bench.press(Qt::Key_Return);
        bench.release(Qt::Key_Return);
    }
    QCOMPARE(bench.hand->enters, 3);
}

void OnePressTest::aDoubleClickWritesOnce()
{
    Bench bench;
    bench.window.onePress()->setPause(std::chrono::hours(1));
    const auto click = [&](QPoint at) { QTest::mouseClick(bench.window.windowHandle(), Qt::LeftButton, {}, at); };
    click({50, 30});
    click({53, 31});
    QCOMPARE(bench.hand->clicks, 1);
    QVERIFY(bench.window.notice()->isVisible());
    click({150, 30});
    QCOMPARE(bench.hand->clicks, 2);
}

void OnePressTest::aShortcutHeldDownActsOnce()
{
    Bench bench;
    int acted = 0;
    QAction action;
    action.setShortcut(QKeySequence(Qt::CTRL | Qt::Key_S));
    connect(&action, &QAction::triggered, &action, [&] { ++acted; });
    bench.window.addAction(&action);
    QTest::keyPress(bench.window.windowHandle(), Qt::Key_S, Qt::ControlModifier);
    QCOMPARE(acted, 1);
    for (int repeat = 0; repeat < 5; ++repeat) {
        QKeyEvent event(QEvent::ShortcutOverride, Qt::Key_S, Qt::ControlModifier, {}, true);
        event.ignore();
        QCoreApplication::sendEvent(bench.window.windowHandle(), &event);
        QVERIFY(event.isAccepted()); // taken as a key, so that no shortcut follows
        bench.send(QEvent::KeyPress, Qt::Key_S, true, 0, Qt::ControlModifier);
    }
    QTest::keyRelease(bench.window.windowHandle(), Qt::Key_S, Qt::ControlModifier);
    QCOMPARE(acted, 1);
}

APP_TEST(OnePressTest)

} // namespace asleft::testing::one_press_test

#include "one_press_test.moc"
