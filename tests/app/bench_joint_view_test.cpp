// The joint as it is drawn and walked through: every kind of pattern, and two hundred fasteners, which no view has room for.

#include "joint_shown.h"

#include <parts/key_button.h>

#include <QAccessible>
#include <QSignalSpy>
#include <QWheelEvent>

#include <random>

namespace asleft::testing::bench_joint_view_test {

namespace {

/// Two hundred as somebody clicks them on a picture: on a grid, each a little beside its place.
Pattern scattered()
{
    std::mt19937 random(7); // NOLINT(cert-msc51-cpp): the same every time
    std::uniform_real_distribution<double> beside(-0.3, 0.3);
    Pattern pattern;
    pattern.kind = PatternKind::Free;
    for (int i = 0; i < mostFasteners; ++i)
        pattern.places.push_back({i + 1, i % 20 + beside(random), i / 20 + beside(random)});
    return *checkedPattern(pattern);
}

} // namespace

class BenchJointViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void everyFastenerIsAButton_data();
    void everyFastenerIsAButton();
    void arrowsReachEveryFastener_data() { everyFastenerIsAButton_data(); }
    void arrowsReachEveryFastener();
    void arrowsTakeTheNextAndTheViewFollows();
    void oneStopForTab();
    void tabShowsWhereItStops();
    void aScreenReaderIsToldNameAndState();
    void aDragMovesAndChoosesNothing();
    void theKeysEnlargeAndShrink();
    void theWheelEnlargesWithControl();
    void theOneInHandStaysInSightWhenTheViewChanges();
    void theSameJointChangesNothing();
    void placesThatAreDraggedKeepTheirButtons();
    void anotherJointHasItsOwnFasteners();
};

void BenchJointViewTest::everyFastenerIsAButton_data()
{
    QTest::addColumn<Pattern>("pattern");
    for (const char *text : {"1", "row of 4", "2 rows of 7", "12 around a circle", "4 by 6 rectangle", "12 around a cover", "row of 200",
                             "10 rows of 20", "200 around a circle", "cover of 200", "2 by 100 rectangle"})
        QTest::newRow(text) << patternOf(text);
    QTest::newRow("200 placed by hand") << scattered();
}

void BenchJointViewTest::everyFastenerIsAButton()
{
    QFETCH(Pattern, pattern);
    Shown shown(pattern);
    QCOMPARE(shown.view.fasteners(), qsizetype(pattern.places.size()));
    QSignalSpy chosen(&shown.view, &JointView::fastenerChosen);
    for (qsizetype i = 0; i < shown.view.fasteners(); ++i) {
        shown.take(i);
        const QRect rect = shown.rectOf(i);
        QVERIFY2(rect.width() >= 44 && rect.height() >= 44, qPrintable(QString::number(rect.width())));
        // The one in hand is always in sight, whole.
        QVERIFY2(shown.isInSight(i), qPrintable(shown.names[i]));
        QTest::mouseClick(shown.view.button(i), Qt::LeftButton);
        QCOMPARE(chosen.size(), i + 1);
        QCOMPARE(chosen.last().front().toLongLong(), i);
    }
    for (qsizetype i = 0; i < shown.view.fasteners(); ++i)
        for (qsizetype j = i + 1; j < shown.view.fasteners(); ++j)
            QVERIFY2(!shown.rectOf(i).adjusted(1, 1, -1, -1).intersects(shown.rectOf(j).adjusted(1, 1, -1, -1)),
                     qPrintable(shown.names[i] + QLatin1Char(' ') + shown.names[j]));
}

void BenchJointViewTest::arrowsReachEveryFastener()
{
    QFETCH(Pattern, pattern);
    Shown shown(pattern);
    QSet<qsizetype> reached{0};
    QList<qsizetype> open{0};
    while (!open.isEmpty()) {
        const qsizetype from = open.takeFirst();
        const QPoint here = shown.rectOf(from).center();
        for (const Qt::Key arrow : {Qt::Key_Left, Qt::Key_Right, Qt::Key_Up, Qt::Key_Down}) {
            const auto next = shown.view.neighbour(from, arrow);
            if (!next)
                continue;
            const QPoint there = shown.rectOf(*next).center();
            QVERIFY(arrow != Qt::Key_Left || there.x() < here.x());
            QVERIFY(arrow != Qt::Key_Right || there.x() > here.x());
            QVERIFY(arrow != Qt::Key_Up || there.y() < here.y());
            QVERIFY(arrow != Qt::Key_Down || there.y() > here.y());
            if (reached.contains(*next))
                continue;
            reached.insert(*next);
            open.append(*next);
        }
    }
    QCOMPARE(reached.size(), shown.view.fasteners());
}

void BenchJointViewTest::arrowsTakeTheNextAndTheViewFollows()
{
    Shown shown(patternOf("row of 200"));
    shown.takeWhatIsChosen();
    QSignalSpy chosen(&shown.view, &JointView::fastenerChosen);
    shown.view.button(0)->setFocus();
    for (qsizetype i = 1; i < shown.view.fasteners(); ++i) {
        press(Qt::Key_Right);
        QCOMPARE(chosen.last().front().toLongLong(), i);
        QVERIFY(shown.view.button(i)->hasFocus());
        QVERIFY2(shown.isInSight(i), qPrintable(shown.names[i]));
    }
    // At the end there is nowhere to go.
    press(Qt::Key_Right);
    QCOMPARE(chosen.size(), shown.view.fasteners() - 1);
    // Where nobody takes in hand what is chosen, the keyboard is followed all the same.
    shown.view.disconnect(&shown.view);
    for (int i = 0; i < 100; ++i)
        press(Qt::Key_Left);
    QVERIFY(shown.view.button(99)->hasFocus());
    QVERIFY(shown.isInSight(99));
}

static QList<QWidget *> stopsOf(const JointView &view)
{
    QList<QWidget *> stops;
    for (auto *child : view.findChildren<QWidget *>())
        if (child->focusPolicy() & Qt::TabFocus)
            stops.append(child);
    return stops;
}

void BenchJointViewTest::oneStopForTab()
{
    Shown shown(patternOf("12 around a circle"));
    for (const std::optional<qsizetype> inHand : {std::optional<qsizetype>(0), std::optional<qsizetype>(7)}) {
        shown.take(inHand);
        QCOMPARE(stopsOf(shown.view), QList<QWidget *>{shown.view.button(*inHand)});
    }
    // Where none is in hand the keyboard still finds in.
    shown.take(std::nullopt);
    QCOMPARE(stopsOf(shown.view), QList<QWidget *>{shown.view.button(0)});
    JointView fresh;
    fresh.setJoint(patternOf("row of 4"), {2, 3, 1, 4});
    QCOMPARE(stopsOf(fresh), QList<QWidget *>{fresh.button(0)});
}

void BenchJointViewTest::tabShowsWhereItStops()
{
    QWidget page;
    auto *before = new KeyButton(QStringLiteral("before"), &page);
    auto *view = new JointView(&page);
    auto *after = new KeyButton(QStringLiteral("after"), &page);
    view->setGeometry(0, 50, 634, 280);
    view->setJoint(patternOf("row of 200"), generateOrder(patternOf("row of 200")));
    present(page, {640, 340});
    QTest::mousePress(view, Qt::LeftButton, {}, {500, 270});
    QTest::mouseMove(view, {20, 270});
    QTest::mouseRelease(view, Qt::LeftButton, {}, {20, 270});
    QWheelEvent wheel(QPoint(300, 140), view->mapToGlobal(QPoint(300, 140)), {}, QPoint(-9000, 0), Qt::NoButton, {}, Qt::NoScrollPhase,
                      false);
    QCoreApplication::sendEvent(view, &wheel);
    QVERIFY(!view->rect().contains(view->button(0)->geometry()));
    before->setFocus();
    press(Qt::Key_Tab);
    QVERIFY(view->button(0)->hasFocus());
    QVERIFY(view->rect().contains(view->button(0)->geometry()));
    press(Qt::Key_Tab);
    QVERIFY(after->hasFocus());
}

void BenchJointViewTest::aScreenReaderIsToldNameAndState()
{
    Shown shown(patternOf("2 rows of 7"));
    shown.looks[2].stage = FastenerStage::Loose;
    shown.looks[3].stage = FastenerStage::Tight;
    shown.looks[3].verdict = Verdict::Inside;
    shown.looks[4].stage = FastenerStage::Tight;
    shown.looks[4].byFeel = true;
    shown.take(3);
    QSet<QString> words;
    for (qsizetype i = 0; i < shown.view.fasteners(); ++i) {
        QAccessibleInterface *told = QAccessible::queryAccessibleInterface(shown.view.button(i));
        QVERIFY(told);
        QCOMPARE(told->role(), QAccessible::Button);
        QCOMPARE(told->text(QAccessible::Name), shown.names[i]);
        QCOMPARE(told->text(QAccessible::Description), lookWords(shown.looks[i]));
        QVERIFY(!told->text(QAccessible::Description).isEmpty());
        words.insert(told->text(QAccessible::Description));
    }
    QCOMPARE(words.size(), 4);
    QVERIFY(!shown.view.accessibleName().isEmpty());
    for (const auto *key : shown.view.findChildren<KeyButton *>())
        QVERIFY(!key->accessibleName().isEmpty());
    // All of them are children of what is read, none is left out.
    QAccessibleInterface *ground = QAccessible::queryAccessibleInterface(shown.view.ground());
    QCOMPARE(ground->childCount(), int(shown.view.fasteners()));
}

void BenchJointViewTest::aDragMovesAndChoosesNothing()
{
    Shown shown(patternOf("10 rows of 20"));
    QSignalSpy chosen(&shown.view, &JointView::fastenerChosen);
    FastenerButton *held = shown.view.button(0);
    const QPoint middle = held->rect().center();
    QTest::mousePress(held, Qt::LeftButton, {}, middle);
    const QPoint to = held->mapTo(&shown.view, middle) - QPoint(120, 60);
    QTest::mouseMove(held, held->mapFrom(&shown.view, to));
    QTest::mouseRelease(held, Qt::LeftButton, {}, held->mapFrom(&shown.view, to));
    QVERIFY(chosen.isEmpty());
    QVERIFY(shown.view.window().corner() != QPointF(0, 0));
    // Held still it is a click.
    QTest::mouseClick(held, Qt::LeftButton);
    QCOMPARE(chosen.size(), 1);
}

void BenchJointViewTest::theKeysEnlargeAndShrink()
{
    Shown shown(patternOf("200 around a circle"));
    const double before = shown.view.window().factor();
    QVERIFY(before > 1);
    shown.take(150);
    shown.view.button(150)->setFocus();
    press(Qt::Key_Minus);
    QVERIFY(shown.view.window().factor() < before);
    QVERIFY(shown.isInSight(150));
    press(Qt::Key_Plus);
    QCOMPARE(shown.view.window().factor(), before);
    press(Qt::Key_0);
    QCOMPARE(shown.view.window().factor(), 1.0);
    for (qsizetype i = 0; i < shown.view.fasteners(); ++i)
        QVERIFY(shown.isInSight(i));
    click(shown.view.largerKey());
    QVERIFY(shown.view.window().factor() > 1);
    QVERIFY(shown.isInSight(150));
    // A joint that fits has no keys for it, and is enlarged by the keyboard all the same.
    Shown small(patternOf("row of 4"));
    QVERIFY(!small.view.wholeKey()->isVisible());
    small.take(3);
    small.view.button(3)->setFocus();
    for (int i = 0; i < 4; ++i)
        press(Qt::Key_Plus);
    QVERIFY(small.view.window().factor() > 2);
    QVERIFY(small.isInSight(3));
    for (int i = 0; i < 20; ++i)
        press(Qt::Key_Plus);
    QCOMPARE(small.view.window().factor(), ZoomWindow::most);
}

void BenchJointViewTest::theWheelEnlargesWithControl()
{
    Shown shown(patternOf("10 rows of 20"));
    const auto turn = [&](int by, Qt::KeyboardModifiers modifiers) {
        const QPoint at(300, 140);
        QWheelEvent wheel(at, shown.view.mapToGlobal(at), {}, QPoint(0, by), Qt::NoButton, modifiers, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(&shown.view, &wheel);
    };
    const double before = shown.view.window().factor();
    turn(-120, Qt::ControlModifier);
    QVERIFY(shown.view.window().factor() < before);
    const double factor = shown.view.window().factor();
    const QPointF corner = shown.view.window().corner();
    turn(-120, Qt::NoModifier);
    QCOMPARE(shown.view.window().factor(), factor);
    QVERIFY(shown.view.window().corner().y() > corner.y());
}

void BenchJointViewTest::theOneInHandStaysInSightWhenTheViewChanges()
{
    for (const char *text : {"row of 200", "10 rows of 20", "200 around a circle"}) {
        Shown shown(patternOf(text));
        for (const qsizetype inHand : {qsizetype(199), qsizetype(57)}) {
            shown.take(inHand);
            for (const QSize size : {QSize(360, 140), QSize(900, 500), QSize(400, 620), QSize(634, 280)}) {
                shown.view.resize(size);
                QCoreApplication::processEvents();
                QVERIFY2(shown.isInSight(inHand), text);
                QVERIFY(shown.rectOf(inHand).width() >= 44);
            }
        }
        // Also where the person has chosen how large it is.
        shown.view.zoomOut();
        shown.view.resize(380, 150);
        QCoreApplication::processEvents();
        QVERIFY2(shown.isInSight(57), text);
    }
}

void BenchJointViewTest::theSameJointChangesNothing()
{
    const Pattern pattern = patternOf("10 rows of 20");
    Shown shown(pattern);
    shown.view.showWhole();
    const FastenerButton *first = shown.view.button(0);
    shown.view.setJoint(pattern, generateOrder(pattern));
    QCOMPARE(shown.view.button(0), first);
    QCOMPARE(shown.view.window().factor(), 1.0);
}

void BenchJointViewTest::placesThatAreDraggedKeepTheirButtons()
{
    Pattern pattern = patternOf("row of 4");
    pattern.kind = PatternKind::Free;
    Shown shown(pattern);
    FastenerButton *held = shown.view.button(1);
    held->setFocus();
    const QRect before = shown.rectOf(1);
    pattern.places[1].y += 1;
    shown.view.setJoint(pattern, generateOrder(pattern));
    QCOMPARE(shown.view.button(1), held);
    QVERIFY(held->hasFocus());
    QVERIFY(shown.rectOf(1) != before);
}

void BenchJointViewTest::anotherJointHasItsOwnFasteners()
{
    Shown shown(patternOf("10 rows of 20"));
    shown.take(199);
    shown.view.button(199)->setFocus();
    const Pattern pattern = patternOf("2 rows of 7");
    shown.view.setJoint(pattern, generateOrder(pattern));
    QCOMPARE(shown.view.fasteners(), 14);
    QCOMPARE(shown.view.window().factor(), 1.0);
    QCOMPARE(stopsOf(shown.view), QList<QWidget *>{shown.view.button(0)});
    shown.names.resize(14);
    shown.looks.resize(14);
    shown.take(13);
    QVERIFY(shown.isInSight(13));
    QSignalSpy chosen(&shown.view, &JointView::fastenerChosen);
    QTest::mouseClick(shown.view.button(13), Qt::LeftButton);
    QCOMPARE(chosen.size(), 1);
}

APP_TEST(BenchJointViewTest)

} // namespace asleft::testing::bench_joint_view_test

#include "bench_joint_view_test.moc"
