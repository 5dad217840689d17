#include "specs_driver.h"

#include "pages/joint_form.h"
#include "pages/pattern_board.h"
#include "pages/pattern_dot.h"
#include "pages/pattern_editor.h"
#include "parts/choice_keys.h"
#include "parts/key_button.h"
#include "parts/message_line.h"
#include "parts/value_field.h"

#include <QFileDialog>
#include <QPainter>

using namespace asleft;
using namespace asleft::testing;
using Field = JointField;
using Choice = JointChoice;

namespace {

struct OpenJoint : OpenSpecs {
    OpenJoint() { page.chooseJoint(std::nullopt); }

    JointForm &form() { return *page.jointForm(); }
    PatternEditor &pattern() { return *form().pattern(); }
    PatternDot *dot(int index) { return pattern().board()->dot(index); }

    /// As a person does: the field is emptied, and left by Enter.
    void typeInto(Field field, const QString &text)
    {
        form().field(field)->edit()->setFocus();
        form().field(field)->edit()->selectAll();
        press(Qt::Key_Delete);
        type(text);
        press(Qt::Key_Return);
    }
    void typeCover()
    {
        typeInto(Field::Name, QStringLiteral("Head cover"));
        typeInto(Field::Places, QStringLiteral("12 around a cover"));
        typeInto(Field::Thread, QStringLiteral("M8"));
        typeInto(Field::Strength, QStringLiteral("8.8"));
        typeInto(Field::Target, QStringLiteral("24 ± 2"));
    }
    void save()
    {
        form().focusFirst();
        press(Qt::Key_S, Qt::ControlModifier);
    }
    const Joint &stored()
    {
        if (specs.joints().empty())
            qFatal("no joint was stored");
        return specs.joints().back();
    }
    std::vector<int> numbers()
    {
        std::vector<int> numbers;
        for (const FastenerPlace &place : pattern().pattern().places)
            numbers.push_back(place.number);
        return numbers;
    }
    /// A picture of a plain cover, 400 by 200.
    QString photo()
    {
        QImage image(400, 200, QImage::Format_RGB32);
        image.fill(Qt::darkGray);
        const QString path = shop.folder.filePath(QStringLiteral("cover.png"));
        if (!image.save(path))
            qFatal("the picture could not be written");
        return path;
    }
    void clickPhoto(double across, double down)
    {
        const PatternBoard *board = pattern().board();
        const QPointF at = board->toBoard({20 * across, 10 * down});
        QTest::mouseClick(pattern().board(), Qt::LeftButton, {}, at.toPoint());
    }
};

void drag(PatternDot *dot, QPoint by)
{
    const QPoint from = dot->rect().center();
    QTest::mousePress(dot, Qt::LeftButton, {}, from);
    // The dot goes with the pointer, so what is said in its own coordinates is where it was taken hold of and a step on.
    const QPoint target = dot->mapToParent(from) + by;
    for (int step = 0; step < 4; ++step)
        QTest::mouseMove(dot, dot->mapFromParent(target));
    QMouseEvent move(QEvent::MouseMove, dot->mapFromParent(target), dot->mapToGlobal(dot->mapFromParent(target)), Qt::NoButton,
                     Qt::LeftButton, {});
    QApplication::sendEvent(dot, &move);
    QTest::mouseRelease(dot, Qt::LeftButton, {}, dot->mapFromParent(target));
}

} // namespace

class JointFormTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }

    void aJointIsTypedWhollyByKeyboard()
    {
        OpenJoint open;
        JointForm &form = open.form();
        form.focusFirst();
        type(QStringLiteral("Flange"));
        press(Qt::Key_Return);
        type(QStringLiteral("12 around a circle"));
        press(Qt::Key_Return);
        type(QStringLiteral("M10x1.25"));
        QVERIFY(form.field(Field::Thread)->message()->sentence().contains(QStringLiteral("61.2"))); // mm², ISO 898-1 table 5
        press(Qt::Key_Return);
        type(QStringLiteral("10.9"));
        press(Qt::Key_Return);
        press(Qt::Key_Right); // iron
        press(Qt::Key_Right); // steel
        press(Qt::Key_Right); // aluminium
        press(Qt::Key_Return);
        type(QStringLiteral("15 mm"));
        press(Qt::Key_Return);
        press(Qt::Key_Right); // a blind hole
        press(Qt::Key_Return);
        press(Qt::Key_Right); // used once
        press(Qt::Key_Return);
        type(QStringLiteral("60 ± 5"));
        QVERIFY2(form.field(Field::Target)->message()->sentence().contains(QStringLiteral("lbf")), "echoed in the other system");
        press(Qt::Key_Return);
        press(Qt::Key_Return); // no second band
        press(Qt::Key_Return); // N·m
        type(QStringLiteral("finger, 50 %, target, +90°"));
        QCOMPARE(form.field(Field::Passes)->message()->sentence(),
                 QStringLiteral("1. finger-tight\n2. to 50 %: 30 N·m\n3. to the target: 60 N·m\n4. turn on by 90°"));
        press(Qt::Key_Return);
        press(Qt::Key_Return); // the order is generated
        press(Qt::Key_Return); // never settled
        press(Qt::Key_Return); // zinc
        press(Qt::Key_Right);
        press(Qt::Key_Right); // oiled
        press(Qt::Key_Return);
        press(Qt::Key_Right); // a socket
        press(Qt::Key_Return);
        type(QStringLiteral("14 mm"));
        press(Qt::Key_Return);
        type(QStringLiteral("Workshop Manual"));
        press(Qt::Key_Return);
        type(QStringLiteral("88"));
        press(Qt::Key_Return);
        press(Qt::Key_Return); // read in the manual: saves
        QCOMPARE(form.message()->role(), MessageLine::Role::Done);
        const Joint &joint = open.stored();
        QCOMPARE(joint.revision, 1);
        QCOMPARE(joint.text.name, std::string("Flange"));
        QCOMPARE(joint.text.pattern, circlePattern(12).value());
        QCOMPARE(joint.thread->name, parseThread("M10x1.25")->name);
        QVERIFY(joint.orderGenerated);
        QCOMPARE(joint.passes.size(), std::size_t(4));
        QVERIFY(joint.text.female == FemaleMaterial::Aluminium);
        QVERIFY(joint.text.condition == ThreadCondition::Oiled);
        QVERIFY(joint.text.blindHole);
        QCOMPARE(joint.text.singleUse, SingleUse::TorqueToYield);
        QCOMPARE(joint.text.drive, DriveKind::Socket);
        QCOMPARE(joint.text.driveSize, std::string("14 mm"));
        QCOMPARE(joint.text.engagement, std::string("15 mm"));
        QCOMPARE(joint.text.source.page, std::string("88"));
    }

    void aStoredJointIsSeenAgain()
    {
        OpenJoint open;
        open.typeCover();
        open.typeInto(Field::Passes, QStringLiteral("50 %, target"));
        open.typeInto(Field::Order, QStringLiteral("7 1 4 10 2 3 5 6 8 9 11 12"));
        open.save();
        const JointId id = open.stored().id;
        const JointTyped typed = open.form().typed();
        QVERIFY(open.form().joint() == id);
        QCOMPARE(open.page.jointRows().rows().front().title, QStringLiteral("Head cover"));
        QVERIFY(open.page.jointRows().rows().front().note.contains(QStringLiteral("M8")));
        open.page.chooseJoint(std::nullopt);
        QVERIFY(open.form().field(Field::Name)->text().isEmpty());
        open.page.chooseSection(SpecsPage::Section::LockNut);
        QVERIFY(!open.form().isVisible());
        open.page.chooseJoint(id);
        QVERIFY(open.form().isVisible());
        QCOMPARE(open.form().typed(), typed);
        QVERIFY(!open.stored().orderGenerated);
    }

    void aBadFieldGivesOneSentenceThereAndNothingIsLost_data()
    {
        QTest::addColumn<Field>("field");
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("said");
        const auto row = [](const char *name, Field field, const char *text, const char *said) {
            QTest::newRow(name) << field << QString::fromUtf8(text) << QString::fromUtf8(said);
        };
        row("a duplicate in the order", Field::Order, "7-3-1-5-7-2-4-6-8-9-10-11-12", "Fastener 7 stands twice");
        row("one left out of the order", Field::Order, "1-2-3-4-5-6-7-8-9-10-11", "Fastener 12 is missing");
        row("a pass over 100 %", Field::Passes, "50 %, 120 %", "120 %");
        row("an angle without a snug pass", Field::Passes, "finger, +90°", "+90°");
        row("no pass at all", Field::Passes, "hard", "is no pass");
        row("settling without ground", Field::Passes, "target, settle 3", "limiters");
        row("a pattern of none", Field::Places, "0 around a circle", "A pattern of 0");
        row("a pattern of 10 000", Field::Places, "10000 around a circle", "A pattern of 10000");
        row("no pattern", Field::Places, "here and there", "is no pattern");
        row("a thread there is none of", Field::Thread, "M7x3", "There is no thread");
        row("no thread", Field::Thread, "thick", "is no thread");
        row("no class", Field::Strength, "strong", "is no strength class");
        row("no torque", Field::Target, "tight", "tight");
        row("a length for a torque", Field::Target, "3 mm", "mm");
        row("a second band of the same system", Field::OtherTarget, "25 N·m", "");
    }

    void aBadFieldGivesOneSentenceThereAndNothingIsLost()
    {
        QFETCH(Field, field);
        QFETCH(QString, text);
        QFETCH(QString, said);
        OpenJoint open;
        open.typeCover();
        open.typeInto(field, text);
        JointForm &form = open.form();
        QVERIFY(form.field(field)->isRefused());
        QVERIFY2(form.field(field)->message()->sentence().contains(said), qPrintable(form.field(field)->message()->sentence()));
        QCOMPARE(form.field(field)->text(), text);
        for (const Field other :
             {Field::Name, Field::Places, Field::Thread, Field::Strength, Field::Target, Field::OtherTarget, Field::Passes, Field::Order})
            QVERIFY2(other == field || !form.field(other)->isRefused(), qPrintable(form.field(other)->message()->sentence()));
        QCOMPARE(form.pattern()->pattern(), coverPattern(12).value());
        open.save();
        QVERIFY(open.specs.joints().empty());
        QVERIFY2(form.field(field)->edit()->hasFocus(), "the keyboard is where it has to be mended");
        QCOMPARE(form.field(Field::Name)->text(), QStringLiteral("Head cover"));
    }

    void anEmptyFormIsRefusedOnlyWhenSaved()
    {
        OpenJoint open;
        JointForm &form = open.form();
        form.focusFirst();
        press(Qt::Key_Return);
        press(Qt::Key_Return);
        QVERIFY(!form.field(Field::Name)->isRefused());
        QVERIFY(!form.field(Field::Places)->isRefused());
        open.save();
        for (const Field field : {Field::Name, Field::Places, Field::Target})
            QVERIFY(form.field(field)->isRefused());
        QVERIFY(form.field(Field::Name)->edit()->hasFocus());
    }

    void aTorqueInTheWrongUnitIsAskedAboutAndTheOtherTaken()
    {
        OpenJoint open;
        open.typeCover();
        open.typeInto(Field::Thread, QStringLiteral("M5"));
        open.typeInto(Field::Target, QStringLiteral("60 lbf·ft"));
        JointForm &form = open.form();
        QVERIFY2(form.preload()->sentence().contains(QStringLiteral("lbf·in")), "said while it is typed");
        QVERIFY(!form.question()->isVisible());
        open.save();
        QVERIFY(form.question()->isVisible());
        QVERIFY(form.question()->sentence().contains(QStringLiteral("M5")));
        QVERIFY(open.specs.joints().empty());
        QCOMPARE(form.otherUnitKey()->text(), QStringLiteral("Take 60 lbf·in"));
        click(form.otherUnitKey());
        QCOMPARE(open.stored().text.target, std::string("60 lbf·in"));
        QVERIFY(open.stored().text.answered.empty());
        QVERIFY(!form.otherUnitKey()->isVisible() && form.saveKey()->isVisible());
    }

    void theOtherUnitOfBareNumbersIsThatOfTheirKeys()
    {
        OpenJoint open;
        open.typeCover();
        open.typeInto(Field::Thread, QStringLiteral("M5"));
        click(open.form().choice(Choice::Unit)->key(1));
        open.typeInto(Field::Target, QStringLiteral("60 ± 5"));
        open.save();
        click(open.form().otherUnitKey());
        QCOMPARE(open.stored().text.unit, TorqueUnit::PoundInch);
        QCOMPARE(open.stored().text.target, std::string("60 ± 5"));
    }

    void aTorqueThatIsRightAllTheSameIsRemembered()
    {
        OpenJoint open;
        open.typeCover();
        open.typeInto(Field::Thread, QStringLiteral("M5"));
        open.typeInto(Field::Target, QStringLiteral("60 lbf·ft"));
        open.save();
        JointForm &form = open.form();
        form.reason()->edit()->setFocus();
        type(QStringLiteral("a special bolt"));
        press(Qt::Key_Return);
        QCOMPARE(open.stored().text.answered, std::string("a special bolt"));
        QVERIFY(!form.question()->isVisible());
        open.typeInto(Field::Engagement, QStringLiteral("20 mm"));
        open.save();
        QCOMPARE(open.stored().revision, 2);
        QCOMPARE(open.stored().text.answered, std::string("a special bolt"));
        open.typeInto(Field::Target, QStringLiteral("65 lbf·ft"));
        open.save();
        QVERIFY2(form.question()->isVisible() && open.stored().revision == 2, "another torque is another question");
        click(form.rightKey());
        QVERIFY(form.reason()->isAsking());
        click(form.rightKey());
        QCOMPARE(open.stored().revision, 3);
        QVERIFY2(!open.stored().text.answered.empty(), "asked, and never blocked");
    }

    void anEditEndsTheQuestion()
    {
        OpenJoint open;
        open.typeCover();
        open.typeInto(Field::Target, QStringLiteral("2000"));
        open.save();
        QVERIFY(open.form().rightKey()->isVisible());
        open.typeInto(Field::Target, QStringLiteral("24"));
        QVERIFY(!open.form().rightKey()->isVisible() && open.form().saveKey()->isVisible());
        open.save();
        QCOMPARE(open.specs.joints().size(), std::size_t(1));
    }

    void aDotIsDragged()
    {
        OpenJoint open;
        open.typeCover();
        const FastenerPlace before = open.pattern().pattern().places[2];
        const QPointF shown = open.pattern().board()->toBoard({before.x, before.y});
        drag(open.dot(2), {24, 16});
        const Pattern &now = open.pattern().pattern();
        QCOMPARE(now.kind, PatternKind::Free);
        QVERIFY(now.places[2].x > before.x && now.places[2].y > before.y);
        QCOMPARE(now.places[3], coverPattern(12)->places[3]);
        QCOMPARE(open.form().field(Field::Places)->text(), QStringLiteral("12 placed by hand"));
        QVERIFY(!open.form().field(Field::Places)->isRefused());
        Q_UNUSED(shown);
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
        QVERIFY(open.pattern().says()->sentence().contains(QStringLiteral("number 1")));
        for (const int at : {2, 0, 3}) {
            QTest::mouseClick(open.dot(at), Qt::LeftButton);
        }
        QVERIFY(open.pattern().says()->sentence().contains(QStringLiteral("number 4")));
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
        QVERIFY(open.pattern().says()->sentence().contains(QStringLiteral("none.jpg")));
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
        open.dot(4)->setFocus();
        ValueField *thread = open.pattern().ownThread();
        QVERIFY(thread->edit()->accessibleName().contains(QStringLiteral("fastener 5")));
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
        QCOMPARE(open.pattern().pattern().place(5)->thread, std::string("M6"));
    }

    void aDraftIsKeptWhileSomethingElseIsLookedAt()
    {
        OpenJoint open;
        open.typeCover();
        open.save();
        const JointId cover = open.stored().id;
        open.typeInto(Field::Target, QStringLiteral("2"));
        drag(open.dot(0), {20, 20});
        const JointTyped revised = open.form().typed();
        open.page.chooseJoint(std::nullopt);
        open.typeInto(Field::Name, QStringLiteral("Pan"));
        const JointTyped begun = open.form().typed();
        open.page.chooseSection(SpecsPage::Section::IntakeLash);
        open.specs.setEngine(OpenSpecs::addOne(*open.shop.garage, [](VehicleText &text) { text.name = "Another"; }).engine);
        open.page.chooseJoint(std::nullopt);
        QVERIFY(open.form().field(Field::Name)->text().isEmpty());
        open.specs.setEngine(open.added.engine);
        open.page.chooseJoint(std::nullopt);
        QCOMPARE(open.form().typed(), begun);
        open.page.chooseJoint(cover);
        QCOMPARE(open.form().typed(), revised);
    }

    void aChangedJointIsANewRevisionAndTheSameIsNone()
    {
        OpenJoint open;
        open.typeCover();
        open.save();
        open.save();
        QCOMPARE(open.stored().revision, 1);
        QCOMPARE(open.form().message()->role(), MessageLine::Role::Done);
        open.typeInto(Field::Target, QStringLiteral("26 ± 2"));
        open.save();
        QCOMPARE(open.specs.joints().size(), std::size_t(1));
        QCOMPARE(open.stored().revision, 2);
        QCOMPARE(open.specs.earlierOf(open.stored().id).size(), std::size_t(1));
        QVERIFY(open.form().saveKey()->text().contains(QLatin1Char('3')));
    }

    void aNameThatIsTakenIsRefusedThere()
    {
        OpenJoint open;
        open.typeCover();
        open.save();
        open.page.chooseJoint(std::nullopt);
        open.typeCover();
        open.save();
        QCOMPARE(open.specs.joints().size(), std::size_t(1));
        QVERIFY(open.form().field(Field::Name)->isRefused());
        QCOMPARE(open.form().field(Field::Target)->text(), QStringLiteral("24 ± 2"));
        QCOMPARE(open.pattern().pattern(), coverPattern(12).value());
    }

    void everythingHasANameAndFits()
    {
        OpenJoint open;
        open.typeCover();
        open.form().resize(open.form().minimumSizeHint());
        QVERIFY2(open.form().minimumSizeHint().width() < 1280 - 272 - 90,
                 qPrintable(QString::number(open.form().minimumSizeHint().width())));
        for (const auto *button : open.form().findChildren<QAbstractButton *>())
            QVERIFY(!button->accessibleName().isEmpty() || !button->text().isEmpty());
        for (const auto *edit : open.form().findChildren<QLineEdit *>())
            QVERIFY(!edit->accessibleName().isEmpty());
    }

    void twoHundredPlacesAreTypedWithoutDelay()
    {
        OpenJoint open;
        open.typeInto(Field::Places, QStringLiteral("200 around a circle"));
        QCOMPARE(open.pattern().pattern().places.size(), std::size_t(200));
        open.page.grab();
    }
};

APP_TEST(JointFormTest)
#include "joint_form_test.moc"
