// What is painted of a joint, and what is not: two hundred fasteners are painted inside a frame because most of them are left out.

#include "joint_shown.h"

#include <QImage>
#include <QPainter>

#include <cmath>

namespace asleft::testing::bench_joint_paint_test {

namespace {

/// Notes which buttons are painted.
class PaintWatch : public QObject {
public:
    explicit PaintWatch(const JointView &view)
    {
        for (qsizetype i = 0; i < view.fasteners(); ++i)
            view.button(i)->installEventFilter(this);
    }

    bool eventFilter(QObject *watched, QEvent *event) override
    {
        if (event->type() == QEvent::Paint)
            painted.insert(static_cast<FastenerButton *>(watched));
        return false;
    }

    QSet<FastenerButton *> painted;
};

qsizetype placedText(const QList<PlacedText> &texts)
{
    return std::count_if(texts.begin(), texts.end(), [](const PlacedText &text) { return !text.text.isEmpty(); });
}

/// By how much two pictures differ where they differ most.
int farthestShade(const QImage &one, const QImage &other)
{
    int farthest = 0;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x)
            farthest = std::max(farthest, std::abs(qGray(one.pixel(x, y)) - qGray(other.pixel(x, y))));
    return farthest;
}

} // namespace

class BenchJointPaintTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }
    void onlyWhatIsInSightIsPainted();
    void whatChangesIsPaintedAlone();
    void aPartOfThePlanIsPaintedAsTheWhole();
    void theLeaderLineGoesDownBetweenFasteners();
    void thePathIsShownOrNot();
    void tickingPaintsOnlyWhatChanged();
};

void BenchJointPaintTest::onlyWhatIsInSightIsPainted()
{
    Shown shown(patternOf("row of 200"));
    QCoreApplication::processEvents();
    PaintWatch watch(shown.view);
    shown.take(100);
    QCoreApplication::processEvents();
    QVERIFY(!watch.painted.isEmpty());
    QVERIFY2(watch.painted.size() < 40, qPrintable(QString::number(watch.painted.size())));
}

void BenchJointPaintTest::whatChangesIsPaintedAlone()
{
    Shown shown(patternOf("10 rows of 20"));
    shown.view.showWhole();
    QCoreApplication::processEvents();
    PaintWatch watch(shown.view);
    shown.looks[45].stage = FastenerStage::Loose;
    shown.take(0);
    QCoreApplication::processEvents();
    QVERIFY(watch.painted.contains(shown.view.button(45)));
    // Whole pixels may be shared with those beside it.
    QVERIFY2(watch.painted.size() <= 9, qPrintable(QString::number(watch.painted.size())));
    watch.painted.clear();
    shown.take(0);
    QCoreApplication::processEvents();
    QVERIFY(watch.painted.isEmpty());
}

void BenchJointPaintTest::aPartOfThePlanIsPaintedAsTheWhole()
{
    Pattern pattern = patternOf("10 rows of 20");
    pattern.places[45].length = "60 mm";
    const JointPlan plan = planJoint(pattern, generateOrder(pattern), {2000, 1000});
    const QRect exposed(300, 200, 500, 240);
    const PartOfPlan part = partOfPlan(plan, exposed, 120);
    QVERIFY(placedText(part.plan.numbers) > 0);
    QVERIFY(placedText(part.plan.numbers) < placedText(plan.numbers) / 2);
    QVERIFY(!part.plan.legs.isEmpty() && part.plan.legs.size() < plan.legs.size());
    QVERIFY(part.done > 0 && part.done < part.plan.legs.size());
    const auto painted = [&](const JointPlan &what, qsizetype done) {
        QImage image(exposed.size(), QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.translate(-exposed.topLeft());
        paintJoint(painter, what, ink(Look::Light), true, done);
        return image;
    };
    // Where a leg is cut off its edges may be rounded by a shade or two.
    QVERIFY2(farthestShade(painted(part.plan, part.done), painted(plan, 120)) <= 24,
             qPrintable(QString::number(farthestShade(painted(part.plan, part.done), painted(plan, 120)))));
    QVERIFY(farthestShade(painted(part.plan, 0), painted(plan, 120)) > 100);
    // Nothing is drawn far beyond what is seen.
    for (const QPolygonF &leg : part.plan.legs)
        QVERIFY(!leg.isEmpty() && exposed.adjusted(-41, -41, 41, 41).contains(leg.first().toPoint()));
}

void BenchJointPaintTest::theLeaderLineGoesDownBetweenFasteners()
{
    const Pattern pattern = patternOf("2 rows of 7");
    const JointPlan plan = planJoint(pattern, generateOrder(pattern), {634, 280});
    for (qsizetype i = 0; i < plan.fasteners.size(); ++i) {
        const QPainterPath line = leaderLine(plan, i, 280);
        QCOMPARE(line.currentPosition().y(), 280.0);
        const double x = line.currentPosition().x();
        QVERIFY(x > 0 && x < 634);
        for (qsizetype j = 0; j < plan.fasteners.size(); ++j)
            if (j != i && plan.fasteners[j].y() > plan.fasteners[i].y())
                QVERIFY(std::abs(plan.fasteners[j].x() - x) > plan.diameter / 3);
    }
}

void BenchJointPaintTest::thePathIsShownOrNot()
{
    Shown shown(patternOf("12 around a circle"));
    const QImage with = shown.view.grab().toImage();
    shown.view.setPathShown(false);
    const QImage without = shown.view.grab().toImage();
    QVERIFY(with != without);
    shown.view.setPathShown(true);
    QCOMPARE(shown.view.grab().toImage(), with);
    // Legs that are done look done.
    shown.take(0, 5);
    QVERIFY(shown.view.grab().toImage() != with);
}

void BenchJointPaintTest::tickingPaintsOnlyWhatChanged()
{
    // The next in hand is in sight already: nothing moves.
    Shown shown(patternOf("10 rows of 20"));
    shown.view.showWhole();
    QCoreApplication::processEvents();
    PaintWatch watch(shown.view);
    shown.take(1, 1);
    QCoreApplication::processEvents();
    QVERIFY(watch.painted.contains(shown.view.button(0)) && watch.painted.contains(shown.view.button(1)));
    QVERIFY2(watch.painted.size() < 100, qPrintable(QString::number(watch.painted.size())));
}

APP_TEST(BenchJointPaintTest)

} // namespace asleft::testing::bench_joint_paint_test

#include "bench_joint_paint_test.moc"
