#include "joint_form_driver.h"

#include <work/job_book.h>
#include <work/jobs.h>
#include <work/workshop.h>

namespace asleft::testing::joint_form_test {

using Field = JointField;
using Choice = JointChoice;

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
        row("a pass over 100 %", Field::Passes, "50 %, 120 %", "120 %");
        row("passes that stop short", Field::Passes, "50 %, 80 %", "below the target");
        row("a pattern of none", Field::Places, "0 around a circle", "A pattern of 0");
        row("a thread there is none of", Field::Thread, "M7x3", "There is no thread");
        row("no class", Field::Strength, "strong", "is no strength class");
        row("no torque", Field::Target, "tight", "tight");
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

    void aTorqueIsAskedAboutAgainForAnotherThreadOfOneFastener()
    {
        OpenJoint open;
        open.typeCover();
        const auto giveOwnThread = [&open](const QString &thread) {
            open.pattern().take(5);
            open.pattern().ownThread()->edit()->setFocus();
            open.pattern().ownThread()->edit()->selectAll();
            type(thread);
            open.save();
        };
        giveOwnThread(QStringLiteral("M5"));
        QVERIFY(open.form().question()->isVisible() && open.specs.joints().empty());
        open.form().reason()->edit()->setFocus();
        type(QStringLiteral("a special bolt"));
        press(Qt::Key_Return);
        QCOMPARE(open.specs.joints().size(), std::size_t(1));
        giveOwnThread(QStringLiteral("M4"));
        QVERIFY2(open.form().question()->isVisible() && open.stored().revision == 1, "what was answered was about M5");
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
        open.specs.setEngine(addFour(*open.shop.garage, [](VehicleText &text) { text.name = "Another"; }).engine);
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

    void aJointThatJobsHaveWorkedOnKeepsItsPlaces()
    {
        OpenJoint open;
        open.typeCover();
        open.save();
        const Joint cover = open.stored();
        Garage &garage = *open.shop.garage;
        const auto person = addPerson(garage, "M.K.", "");
        const auto job = openJob(garage, open.added.vehicle, open.added.engine, withJoints(builtInSheets().front(), {cover}), "Cover");
        QVERIFY(person && job);
        auto book = JobBook::open(garage, *job);
        QVERIFY(book);
        (*book)->setWho(*person);
        QVERIFY((*book)->loosen({.joint = cover.id, .fasteners = {1}}));
        JointForm &form = open.form();
        open.typeInto(Field::Places, QStringLiteral("10 around a cover"));
        QVERIFY(!form.field(Field::Places)->isRefused());
        open.save();
        QVERIFY(form.field(Field::Places)->isRefused());
        QVERIFY2(
            form.field(Field::Places)->message()->sentence().contains(QStringLiteral("Jobs have worked on the fasteners of Head cover")),
            qPrintable(form.field(Field::Places)->message()->sentence()));
        QVERIFY(form.field(Field::Places)->edit()->hasFocus());
        QCOMPARE(form.field(Field::Places)->text(), QStringLiteral("10 around a cover"));
        QCOMPARE(open.stored().revision, 1);
        press(Qt::Key_Return);
        QVERIFY2(form.field(Field::Places)->isRefused(), "until something is changed");
        // The same numbers may sit elsewhere.
        open.typeInto(Field::Places, QStringLiteral("12 around a cover"));
        QVERIFY(!form.field(Field::Places)->isRefused());
        drag(open.dot(2), {24, 16});
        open.save();
        QCOMPARE(form.message()->role(), MessageLine::Role::Done);
        QCOMPARE(open.stored().revision, 2);
    }

    void passesThatStopShortTakeNothingElseAway()
    {
        OpenJoint open;
        open.typeCover();
        open.typeInto(Field::Passes, QStringLiteral("50 %"));
        QVERIFY(open.form().field(Field::Passes)->isRefused());
        QVERIFY2(open.form().preload()->sentence().contains(QLatin1Char('N')), "the torque is judged all the same");
        QVERIFY(!open.form().field(Field::Order)->message()->sentence().isEmpty());
        open.typeInto(Field::Passes, QStringLiteral("50 %, target"));
        QVERIFY(!open.form().field(Field::Passes)->isRefused());
        open.save();
        QCOMPARE(open.stored().passes.size(), std::size_t(2));
    }

    void everythingHasANameAndFits()
    {
        OpenJoint open;
        open.typeCover();
        open.form().resize(open.form().minimumSizeHint());
        QVERIFY2(open.form().minimumSizeHint().width() < 1280 - 272 - 90,
                 qPrintable(QString::number(open.form().minimumSizeHint().width())));
        for (const auto *button : open.form().findChildren<QAbstractButton *>())
            QVERIFY(button->isHidden() || !button->accessibleName().isEmpty() || !button->text().isEmpty());
        for (const auto *edit : open.form().findChildren<QLineEdit *>())
            QVERIFY(!edit->accessibleName().isEmpty());
    }
};

APP_TEST(JointFormTest)

} // namespace asleft::testing::joint_form_test

#include "joint_form_test.moc"
