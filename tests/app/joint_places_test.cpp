#include "joint_form_driver.h"

#include <drawn/pattern_window.h>

#include <QFileDialog>
#include <QScrollBar>

namespace asleft::testing::joint_places_test {

using Field = JointField;

class JointPlacesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }

    void aDotIsDragged()
    {
        OpenJoint open;
        open.typeCover();
        const FastenerPosition before = open.pattern().pattern().places[2];
        drag(open.dot(2), {24, 16});
        const Pattern &now = open.pattern().pattern();
        QCOMPARE(now.kind, PatternKind::Free);
        QVERIFY(now.places[2].x > before.x && now.places[2].y > before.y);
        QCOMPARE(now.places[3], coverPattern(12)->places[3]);
        QCOMPARE(open.form().field(Field::Places)->text(), QStringLiteral("12 placed by hand"));
        QVERIFY(!open.form().field(Field::Places)->isRefused());
        open.save();
        QCOMPARE(open.stored().text.pattern, now);
        click(open.pattern().backKey());
        QCOMPARE(open.pattern().pattern(), coverPattern(12).value());
        QCOMPARE(open.form().field(Field::Places)->text(), QStringLiteral("12 around a cover"));
    }

    void aDotIsMovedByKeysAndTwoAreNeverInOnePlace()
    {
        OpenJoint open;
        open.typeInto(Field::Places, QStringLiteral("row of 3"));
        open.dot(0)->setFocus();
        press(Qt::Key_PageDown);
        QVERIFY(open.dot(1)->hasFocus());
        const double x = open.pattern().pattern().places[1].x;
        press(Qt::Key_Right);
        QCOMPARE(open.pattern().pattern().places[1].x, x + 0.1);
        press(Qt::Key_Right, Qt::ShiftModifier);
        QVERIFY(qAbs(open.pattern().pattern().places[1].x - (x + 0.6)) < 1e-9);
        const Pattern before = open.pattern().pattern();
        press(Qt::Key_Right, Qt::ShiftModifier);
        press(Qt::Key_Left);
        press(Qt::Key_Left);
        QVERIFY(open.dot(1)->hasFocus());
        open.pattern().setPattern(before);
        open.dot(1)->setFocus();
        for (int i = 0; i < 4; ++i)
            press(Qt::Key_Right);
        QVERIFY2(open.pattern().says()->role() == MessageLine::Role::Refusal, "onto the third");
        QVERIFY(open.pattern().pattern().places[1].x < open.pattern().pattern().places[2].x);
    }

    void placesAreNumberedByClicking()
    {
        OpenJoint open;
        open.typeInto(Field::Places, QStringLiteral("4 around a circle"));
        click(open.pattern().numberKey());
        const QString numbering =
            PatternEditor::tr("Click number %1 on the drawing, or go to it with the arrow keys and press Enter. Esc stops.");
        QCOMPARE(open.pattern().says()->sentence(), numbering.arg(1));
        for (const int at : {2, 0, 3}) {
            QTest::mouseClick(open.dot(at), Qt::LeftButton);
        }
        QCOMPARE(open.pattern().says()->sentence(), numbering.arg(4));
        QTest::mouseClick(open.dot(0), Qt::LeftButton); // has its number
        QTest::mouseClick(open.dot(1), Qt::LeftButton);
        QCOMPARE(open.numbers(), (std::vector{2, 4, 1, 3}));
        QCOMPARE(open.pattern().pattern().kind, PatternKind::Circle);
        QCOMPARE(open.form().field(Field::Places)->text(), QStringLiteral("4 around a circle"));
        QCOMPARE(open.dot(2)->accessibleName(), QStringLiteral("Fastener 1"));
    }

    void numberingIsDoneByKeysAndStopped()
    {
        OpenJoint open;
        open.typeInto(Field::Places, QStringLiteral("row of 5"));
        open.pattern().numberKey()->setFocus();
        press(Qt::Key_Return);
        QVERIFY(open.dot(0)->hasFocus());
        press(Qt::Key_End);
        press(Qt::Key_Return);
        press(Qt::Key_Left);
        press(Qt::Key_Space);
        press(Qt::Key_Escape);
        QCOMPARE(open.numbers(), (std::vector{3, 4, 5, 2, 1}));
        QCOMPARE(open.pattern().pattern().kind, PatternKind::Row);
    }

    void placesAreClickedOnAPhoto()
    {
        OpenJoint open;
        open.typeCover();
        QVERIFY(open.pattern().showPhoto(open.photo()));
        QCOMPARE(open.pattern().pattern(), coverPattern(12).value()); // until there is one on the photo
        open.clickPhoto(0.1, 0.2);
        open.clickPhoto(0.9, 0.2);
        open.clickPhoto(0.5, 0.8);
        open.clickPhoto(0.7, 0.8);
        QCOMPARE(open.pattern().pattern().places.size(), std::size_t(4));
        press(Qt::Key_Backspace);
        QCOMPARE(open.numbers(), (std::vector{1, 2, 3}));
        const Pattern clicked = open.pattern().pattern();
        QVERIFY(qAbs(clicked.places[1].x - 18) < 0.1 && qAbs(clicked.places[1].y - 2) < 0.1);
        press(Qt::Key_Down);
        QVERIFY(open.pattern().pattern().places[2].y > clicked.places[2].y);
        click(open.pattern().photoKey());
        QVERIFY(!open.pattern().board()->hasPhoto());
        QCOMPARE(open.form().field(Field::Places)->text(), QStringLiteral("3 placed by hand"));
        open.save();
        QCOMPARE(open.stored().text.pattern.kind, PatternKind::Free);
        QCOMPARE(open.stored().order.size(), std::size_t(3));
    }

    void aPhotoWithoutAPlaceChangesNothing()
    {
        OpenJoint open;
        open.typeCover();
        QVERIFY(open.pattern().showPhoto(open.photo()));
        open.clickPhoto(0.5, 0.5);
        QCOMPARE(open.form().field(Field::Places)->text(), QStringLiteral("1 placed by hand"));
        press(Qt::Key_Backspace);
        QCOMPARE(open.form().field(Field::Places)->text(), QStringLiteral("12 around a cover"));
        press(Qt::Key_Insert);
        QCOMPARE(open.numbers(), std::vector{1});
        press(Qt::Key_Backspace);
        click(open.pattern().photoKey());
        QCOMPARE(open.pattern().pattern(), coverPattern(12).value());
        const QString none = open.shop.folder.filePath(QStringLiteral("none.jpg"));
        QVERIFY(!open.pattern().showPhoto(none));
        const QString unread = PatternEditor::tr("“%1” cannot be read as a picture. The places are as they were; choose another file.");
        QCOMPARE(open.pattern().says()->sentence(), unread.arg(none));
    }

    void aPhotoIsChosenInADialogThatBlocksNothing()
    {
        OpenJoint open;
        const QString path = open.photo();
        click(open.pattern().photoKey());
        auto *dialog = open.page.findChild<QFileDialog *>();
        QVERIFY(dialog);
        dialog->selectFile(path);
        Q_EMIT dialog->fileSelected(path);
        QVERIFY(open.pattern().board()->hasPhoto());
        dialog->close();
    }

    void placesAreAddedAndTakenOut()
    {
        OpenJoint open;
        open.typeInto(Field::Places, QStringLiteral("row of 3"));
        click(open.pattern().addKey());
        QCOMPARE(open.numbers(), (std::vector{1, 2, 3, 4}));
        open.dot(1)->setFocus();
        press(Qt::Key_Delete);
        QCOMPARE(open.numbers(), (std::vector{1, 2, 3}));
        QVERIFY(open.dot(1)->hasFocus());
    }

    void oneFastenerHasAThreadAndALengthOfItsOwn()
    {
        OpenJoint open;
        open.typeCover();
        // What an M6 bears too: the least of the threads is what the torque is judged by.
        open.typeInto(Field::Target, QStringLiteral("7-9"));
        open.dot(4)->setFocus();
        ValueField *thread = open.pattern().ownThread();
        QCOMPARE(thread->edit()->accessibleName(), PatternEditor::tr("Thread of fastener %1").arg(5));
        thread->edit()->setFocus();
        type(QStringLiteral("M99"));
        press(Qt::Key_Return);
        QVERIFY(thread->isRefused());
        type(QStringLiteral("45 mm"));
        press(Qt::Key_Tab);
        open.dot(7)->setFocus();
        QVERIFY(thread->text().isEmpty() && !thread->isRefused());
        open.save();
        QVERIFY2(thread->isRefused() && thread->text() == QStringLiteral("M99"), "the fastener is taken in hand again");
        QVERIFY(open.specs.joints().empty());
        thread->edit()->selectAll();
        type(QStringLiteral("M6"));
        open.save();
        QCOMPARE(open.stored().text.pattern.place(5)->thread, std::string("M6"));
        QCOMPARE(open.stored().text.pattern.place(5)->length, std::string("45 mm"));
        open.typeInto(Field::Places, QStringLiteral("8 around a cover"));
        QCOMPARE(open.pattern().pattern().places.size(), std::size_t(8));
        QCOMPARE(open.pattern().pattern().place(5)->thread, std::string("M6"));
        click(open.pattern().backKey());
        QCOMPARE(open.pattern().pattern(), open.stored().text.pattern);
    }

    void tabComesToTheDotInHandAndOnToItsKeys()
    {
        OpenJoint open;
        open.typeInto(Field::Places, QStringLiteral("4 around a circle"));
        open.pattern().take(3);
        open.form().choice(JointChoice::SingleUse)->takeFocus();
        press(Qt::Key_Tab);
        QVERIFY(open.dot(2)->hasFocus());
        press(Qt::Key_Tab);
        QVERIFY(open.pattern().numberKey()->hasFocus());
        press(Qt::Key_Tab, Qt::ShiftModifier);
        QVERIFY(open.dot(2)->hasFocus());
        for (int stop = 0; stop < 7; ++stop)
            press(Qt::Key_Tab);
        QVERIFY2(open.form().field(Field::Target)->edit()->hasFocus(), "past four keys and two fields: nothing can be taken back yet");
    }

    void aCrowdedDrawingIsEnlarged()
    {
        OpenJoint open;
        PatternWindow &drawing = *open.pattern().drawing();
        const KeyButton &enlarge = *open.pattern().enlargeKey();
        const auto inSight = [&](int dot) {
            const QRect at(open.dot(dot)->mapTo(drawing.viewport(), QPoint()), open.dot(dot)->size());
            return drawing.viewport()->rect().contains(at);
        };
        open.typeInto(Field::Places, QStringLiteral("12 around a cover"));
        QVERIFY2(!enlarge.isVisible() && open.dot(0)->width() >= 44, "there is room for all");
        open.typeInto(Field::Places, QStringLiteral("200 around a circle"));
        QVERIFY(enlarge.isVisible() && open.dot(0)->width() < 24);
        click(open.pattern().enlargeKey());
        QVERIFY2(open.dot(0)->width() >= 24, qPrintable(QString::number(open.dot(0)->width())));
        QVERIFY(inSight(0));
        QVERIFY(!inSight(100));
        open.dot(100)->setFocus();
        QVERIFY2(inSight(100), "the place in hand is brought into sight");
        const FastenerPosition before = open.pattern().pattern().places[100];
        drag(open.dot(100), {0, -60});
        QVERIFY(open.pattern().pattern().places[100].y < before.y);
        QVERIFY(drawing.isLarge());
        click(open.pattern().enlargeKey());
        QVERIFY(drawing.rect().contains(open.pattern().board()->geometry()));
        click(open.pattern().enlargeKey());
        open.typeInto(Field::Places, QStringLiteral("12 around a cover"));
        QVERIFY2(!enlarge.isVisible() && !drawing.isLarge(), "nothing to enlarge any more");
    }

    void twoHundredPlacesAreLaidOut()
    {
        OpenJoint open;
        open.typeInto(Field::Places, QStringLiteral("200 around a circle"));
        QCOMPARE(open.pattern().pattern().places.size(), std::size_t(200));
        QVERIFY(open.pattern().board()->rect().contains(open.dot(199)->geometry()));
        QVERIFY2(open.pattern().drawing()->rect().contains(open.pattern().board()->geometry()), "all of it is in sight");
        QVERIFY(open.form().field(Field::Order)->message()->sentence().contains(QStringLiteral(" - 200 ")));
        open.page.grab();
    }
};

APP_TEST(JointPlacesTest)

} // namespace asleft::testing::joint_places_test

#include "joint_places_test.moc"
