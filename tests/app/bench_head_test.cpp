// The head as it is drawn and walked through: every layout, and heads with more points than a finger has room for.

#include "bench_driver.h"

#include <drawn/point_button.h>

#include <QSignalSpy>
#include <QWheelEvent>

namespace asleft::testing::bench_head_test {

namespace {

EngineDesign designOf(const EngineText &text)
{
    const auto design = designEngine(text);
    if (!design)
        qFatal("the engine does not fit together");
    return *design;
}

EngineText bridgedSix()
{
    EngineText text = engineText(Layout::InLine, 6, "1-5-3-6-2-4");
    text.valves = "4";
    text.bridged = true;
    text.bridgeScrews = true;
    text.injectors = true;
    return text;
}

EngineText crowded()
{
    EngineText text = engineText(Layout::Vee, 24, "1-24-9-16-5-20-11-14-3-22-7-18-23-2-15-10-19-6-13-12-21-4-17-8");
    text.valves = "4";
    return text;
}

/// A head by itself, in a window of this size.
struct Shown {
    explicit Shown(const EngineText &text, QSize size = {634, 280})
    {
        const EngineDesign design = designOf(text);
        view.setDesign(design);
        present(view, size);
        QStringList names;
        QList<PointLook> looks;
        for (const AdjusterRef point : design.adjusters()) {
            names.append(QString::fromStdString(shortName(design, point)));
            looks.append(PointLook{});
        }
        this->names = names;
        this->looks = looks;
        take(0);
    }

    void take(qsizetype index)
    {
        for (qsizetype i = 0; i < looks.size(); ++i)
            looks[i].inHand = i == index;
        view.setPoints(names, looks, index);
    }

    /// Where a point is shown, in the view.
    [[nodiscard]] QRect rectOf(qsizetype index) const
    {
        const PointButton *button = view.button(index);
        return {button->mapTo(&view, QPoint(0, 0)), button->size()};
    }

    HeadView view;
    QStringList names;
    QList<PointLook> looks;
};

} // namespace

class BenchHeadTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void aWindowOnADrawing();
    void everyPointIsAButton_data();
    void everyPointIsAButton();
    void arrowsReachEveryPoint_data() { everyPointIsAButton_data(); }
    void arrowsReachEveryPoint();
    void arrowsGoThatWay();
    void aCrowdedHeadIsLargerThanItsView();
    void theKeysEnlargeAndShrink();
    void theKeysOfTheBarEnlargeToo();
    void theWheelEnlargesWithControl();
    void aDragMovesAndChoosesNothing();
    void theTouchKeysAreThereWhereTheyAreWanted();
};

void BenchHeadTest::aWindowOnADrawing()
{
    ZoomWindow window;
    window.setSize({400, 200});
    QCOMPARE(window.factor(), 1.0);
    window.moveBy({50, 50});
    QCOMPARE(window.corner(), QPointF(0, 0));
    window.zoomTo(2, {100, 50});
    // The place under the pointer stays: (100, 50) of the whole is at (200, 100) of the drawing, shown at (100, 50).
    QCOMPARE(window.corner(), QPointF(100, 50));
    window.bringIntoSight(QRectF(700, 300, 40, 40));
    QCOMPARE(window.corner(), QPointF(340, 140));
    window.bringIntoSight(QRectF(350, 150, 40, 40));
    QCOMPARE(window.corner(), QPointF(340, 140));
    window.moveBy({1000, 1000});
    QCOMPARE(window.corner(), QPointF(400, 200));
    window.zoomTo(100, {0, 0});
    QCOMPARE(window.factor(), ZoomWindow::most);
    window.zoomTo(0.1, {0, 0});
    QCOMPARE(window.factor(), 1.0);
    QCOMPARE(window.corner(), QPointF(0, 0));
}

void BenchHeadTest::everyPointIsAButton_data()
{
    QTest::addColumn<int>("which");
    const char *const names[] = {"in line", "V", "flat", "single", "W", "radial", "two-row radial", "opposed", "bridged", "crowded"};
    for (int i = 0; i < int(std::size(names)); ++i)
        QTest::newRow(names[i]) << i;
}

static EngineText engineOf(int which)
{
    switch (which) {
    case 0: return fourText();
    case 1: return engineText(Layout::Vee, 8, "1-8-4-3-6-5-7-2");
    case 2: return engineText(Layout::Flat, 6, "1-6-2-4-3-5");
    case 3: return engineText(Layout::Single, 1, "1");
    case 4: return engineText(Layout::W, 12, "1-2-3-4-5-6-7-8-9-10-11-12");
    case 5: return engineText(Layout::Radial, 9, "1-3-5-7-9-2-4-6-8");
    case 6: return engineText(Layout::Radial, 14, "1-10-5-14-9-4-13-8-3-12-7-2-11-6");
    case 7: return engineText(Layout::Opposed, 8, "1-2-3-4-5-6-7-8");
    case 8: return bridgedSix();
    default: return crowded();
    }
}

void BenchHeadTest::everyPointIsAButton()
{
    QFETCH(int, which);
    Shown shown(engineOf(which));
    QCOMPARE(shown.view.points(), shown.names.size());
    QVERIFY2(shown.view.pointSide() >= 44, qPrintable(QString::number(shown.view.pointSide())));
    QSignalSpy chosen(&shown.view, &HeadView::pointChosen);
    for (qsizetype i = 0; i < shown.names.size(); ++i) {
        shown.take(i);
        QCOMPARE(shown.view.button(i)->accessibleName(), shown.names[i]);
        // The point in hand is always in sight, whole.
        QVERIFY2(shown.view.rect().contains(shown.rectOf(i)), qPrintable(shown.names[i]));
        QTest::mouseClick(shown.view.button(i), Qt::LeftButton);
        QCOMPARE(chosen.size(), i + 1);
        QCOMPARE(chosen.last().front().toLongLong(), i);
    }
    // They stand side by side, none on another.
    for (qsizetype i = 0; i < shown.names.size(); ++i)
        for (qsizetype j = i + 1; j < shown.names.size(); ++j)
            QVERIFY2(!shown.rectOf(i).adjusted(1, 1, -1, -1).intersects(shown.rectOf(j).adjusted(1, 1, -1, -1)),
                     qPrintable(shown.names[i] + QLatin1Char(' ') + shown.names[j]));
}

void BenchHeadTest::arrowsReachEveryPoint()
{
    QFETCH(int, which);
    Shown shown(engineOf(which));
    QSet<qsizetype> reached{0};
    QList<qsizetype> open{0};
    while (!open.isEmpty()) {
        const qsizetype from = open.takeFirst();
        for (const Qt::Key arrow : {Qt::Key_Left, Qt::Key_Right, Qt::Key_Up, Qt::Key_Down}) {
            const auto next = shown.view.neighbour(from, arrow);
            if (!next || reached.contains(*next))
                continue;
            reached.insert(*next);
            open.append(*next);
        }
    }
    QCOMPARE(reached.size(), shown.names.size());
}

void BenchHeadTest::arrowsGoThatWay()
{
    for (int which = 0; which < 10; ++which) {
        Shown shown(engineOf(which));
        for (qsizetype from = 0; from < shown.names.size(); ++from) {
            const QPoint here = shown.rectOf(from).center();
            if (const auto right = shown.view.neighbour(from, Qt::Key_Right))
                QVERIFY(shown.rectOf(*right).center().x() > here.x());
            if (const auto up = shown.view.neighbour(from, Qt::Key_Up))
                QVERIFY(shown.rectOf(*up).center().y() < here.y());
        }
    }
}

void BenchHeadTest::aCrowdedHeadIsLargerThanItsView()
{
    Shown shown(crowded());
    QVERIFY(shown.view.window().factor() > 1);
    QVERIFY(shown.view.pointSide() >= 44);
    // Arrows walk out of sight, and the view follows.
    shown.view.button(0)->setFocus();
    connect(&shown.view, &HeadView::pointChosen, &shown.view, [&](qsizetype index) { shown.take(index); });
    for (int steps = 0; steps < 30; ++steps) {
        press(Qt::Key_Right);
        const auto *focused = qobject_cast<PointButton *>(QApplication::focusWidget());
        QVERIFY(focused);
        QVERIFY(shown.view.rect().contains(QRect(focused->mapTo(&shown.view, QPoint()), focused->size())));
    }
    QVERIFY(shown.view.window().corner().x() > 0);
}

void BenchHeadTest::theKeysEnlargeAndShrink()
{
    Shown shown(crowded());
    const double before = shown.view.window().factor();
    shown.view.button(0)->setFocus();
    press(Qt::Key_Plus);
    QVERIFY(shown.view.window().factor() > before);
    press(Qt::Key_Minus);
    QCOMPARE(shown.view.window().factor(), before);
    press(Qt::Key_0);
    QCOMPARE(shown.view.window().factor(), 1.0);
    for (qsizetype i = 0; i < shown.names.size(); ++i)
        QVERIFY(shown.view.rect().contains(shown.rectOf(i)));
    // A head that fits is enlarged too, and its point in hand stays in sight.
    Shown small(fourText());
    small.take(7);
    small.view.button(7)->setFocus();
    for (int i = 0; i < 4; ++i)
        press(Qt::Key_Plus);
    QVERIFY(small.view.window().factor() > 2);
    QVERIFY(small.view.rect().intersects(small.rectOf(7)));
}

void BenchHeadTest::theKeysOfTheBarEnlargeToo()
{
    Bench bench;
    const HeadView *head = bench.page->pane<ValvePane>()->head();
    QVERIFY(bench.bar()->edit()->hasFocus());
    // Where values are typed they belong to the value: no sign is lost. With Ctrl they belong to the head.
    type(QStringLiteral("-3"));
    QCOMPARE(bench.bar()->edit()->text(), QStringLiteral("-3"));
    QCOMPARE(head->window().factor(), 1.0);
    bench.bar()->edit()->selectAll();
    type(QStringLiteral("25-"));
    press(Qt::Key_Plus, Qt::ControlModifier);
    QVERIFY(head->window().factor() > 1);
    press(Qt::Key_0, Qt::ControlModifier);
    QCOMPARE(head->window().factor(), 1.0);
    QCOMPARE(bench.bar()->edit()->text(), QStringLiteral("25-"));
}

void BenchHeadTest::theWheelEnlargesWithControl()
{
    Shown shown(crowded());
    const auto turn = [&](int by, Qt::KeyboardModifiers modifiers) {
        const QPointF at(300, 140);
        QWheelEvent wheel(at, shown.view.mapToGlobal(at), {}, QPoint(0, by), Qt::NoButton, modifiers, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(&shown.view, &wheel);
    };
    const double before = shown.view.window().factor();
    turn(120, Qt::ControlModifier);
    QVERIFY(shown.view.window().factor() > before);
    const double larger = shown.view.window().factor();
    const QPointF corner = shown.view.window().corner();
    turn(-120, Qt::NoModifier);
    QCOMPARE(shown.view.window().factor(), larger);
    QVERIFY(shown.view.window().corner().y() > corner.y());
}

void BenchHeadTest::aDragMovesAndChoosesNothing()
{
    Shown shown(crowded());
    QSignalSpy chosen(&shown.view, &HeadView::pointChosen);
    PointButton *held = shown.view.button(0);
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

void BenchHeadTest::theTouchKeysAreThereWhereTheyAreWanted()
{
    Shown small(fourText());
    QVERIFY(!small.view.wholeKey()->isVisible());
    Shown shown(crowded());
    QVERIFY(shown.view.wholeKey()->isVisible() && shown.view.wholeKey()->height() >= 44);
    click(shown.view.wholeKey());
    QCOMPARE(shown.view.window().factor(), 1.0);
    QVERIFY(!shown.view.wholeKey()->isEnabled());
    click(shown.view.largerKey());
    QVERIFY(shown.view.window().factor() > 1);
    for (qsizetype i = 0; i < shown.names.size(); ++i)
        QVERIFY(!shown.view.largerKey()->geometry().intersects(
            shown.rectOf(i).intersected(QRect(0, 0, shown.view.width() - 50, shown.view.height()))));
}

APP_TEST(BenchHeadTest)

} // namespace asleft::testing::bench_head_test

#include "bench_head_test.moc"
