#include "specs_driver.h"

#include <forms/joint_form.h>
#include <forms/spec_form.h>
#include <parts/choice_keys.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/value_field.h>

#include <QClipboard>

namespace asleft::testing::specs_page_test {

using Open = OpenSpecs;
using Section = SpecsPage::Section;
using Field = SpecField;

class SpecsPageTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }

    void aSpecIsTypedWhollyByKeyboard()
    {
        Open open;
        SpecForm &form = open.form(Section::IntakeLash);
        form.focusFirst();
        type(QStringLiteral("0.35-0.45"));
        QVERIFY2(form.field(Field::Band)->message()->sentence().contains(QStringLiteral("thou")), "echoed in the other system");
        press(Qt::Key_Return);
        press(Qt::Key_Return); // no second band
        press(Qt::Key_Return); // mm
        press(Qt::Key_Return); // cold
        type(QStringLiteral("Workshop Manual"));
        press(Qt::Key_Return);
        type(QStringLiteral("41"));
        press(Qt::Key_Return);
        press(Qt::Key_Return); // read in the manual: saves
        const Spec *now = open.specs.now(SpecSubject::IntakeLash);
        QVERIFY(now);
        QCOMPARE(now->revision, 1);
        QCOMPARE(now->source.page, std::string("41"));
        QCOMPARE(form.message()->role(), MessageLine::Role::Done);
    }

    void aChangedSpecIsANewRevisionAndTheSameTextIsNone()
    {
        Open open;
        SpecForm &form = open.form(Section::ExhaustLash);
        form.focusFirst();
        type(QStringLiteral("0.40 mm"));
        press(Qt::Key_S, Qt::ControlModifier);
        press(Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(open.specs.now(SpecSubject::ExhaustLash)->revision, 1);
        form.focusFirst();
        form.field(Field::Band)->edit()->selectAll();
        type(QStringLiteral("0.45 mm"));
        press(Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(open.specs.now(SpecSubject::ExhaustLash)->revision, 2);
        QCOMPARE(open.specs.earlier(SpecSubject::ExhaustLash).size(), 1U);
    }

    void manualAndPageAreCarriedOn()
    {
        Open open;
        SpecForm &form = open.form(Section::IntakeLash);
        form.focusFirst();
        type(QStringLiteral("0.40 mm"));
        form.field(Field::Manual)->edit()->setFocus();
        type(QStringLiteral("WM"));
        press(Qt::Key_Return);
        type(QStringLiteral("41"));
        press(Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(open.form(Section::LockNut).field(Field::Manual)->text(), QStringLiteral("WM"));
        QCOMPARE(open.form(Section::LockNut).field(Field::Page)->text(), QStringLiteral("41"));
    }

    void aBadBandGivesOneSentenceAndStays_data()
    {
        QTest::addColumn<QString>("text");
        QTest::newRow("upside down") << QStringLiteral("0.45-0.35");
        QTest::newRow("ambiguous") << QStringLiteral("1,250");
        QTest::newRow("letters") << QStringLiteral("abc");
        QTest::newRow("below zero") << QStringLiteral("-3");
        QTest::newRow("exponent") << QStringLiteral("1e9 mm");
        QTest::newRow("nothing") << QString();
        QTest::newRow("a torque") << QStringLiteral("22 N·m");
        QTest::newRow("a megabyte") << QString(1 << 20, QLatin1Char('3'));
    }

    void aBadBandGivesOneSentenceAndStays()
    {
        QFETCH(QString, text);
        Open open;
        SpecForm &form = open.form(Section::IntakeLash);
        form.focusFirst();
        QApplication::clipboard()->setText(text);
        press(Qt::Key_V, Qt::ControlModifier);
        QVERIFY2(!form.field(Field::Band)->isRefused(), "not while it is typed");
        press(Qt::Key_S, Qt::ControlModifier);
        QVERIFY(form.field(Field::Band)->isRefused());
        QVERIFY(!form.field(Field::Band)->message()->sentence().isEmpty());
        QCOMPARE(form.field(Field::Band)->text(), text.left(longestPaste));
        QVERIFY(form.field(Field::Band)->edit()->hasFocus());
        QVERIFY(!open.specs.now(SpecSubject::IntakeLash));
    }

    void aSecondBandOfTheSameSystemIsRefusedThere()
    {
        Open open;
        SpecForm &form = open.form(Section::IntakeLash);
        form.focusFirst();
        type(QStringLiteral("0.35-0.45 mm"));
        press(Qt::Key_Return);
        type(QStringLiteral("0.36-0.46 mm"));
        press(Qt::Key_Return);
        QVERIFY(form.field(Field::OtherBand)->isRefused());
        QVERIFY(!form.field(Field::Band)->isRefused());
    }

    void aBareNumberOfTheOtherSystemIsReadBackAsItWasStored()
    {
        Open open;
        SpecForm &form = open.form(Section::ExhaustLash);
        form.focusFirst();
        type(QStringLiteral("0.016 in"));
        press(Qt::Key_Return);
        // Bare numbers count in millimetres here; once stored, the form counts in the inches of the first band.
        type(QStringLiteral("0.41"));
        press(Qt::Key_S, Qt::ControlModifier);
        QVERIFY(open.specs.now(SpecSubject::ExhaustLash));
        QCOMPARE(form.field(Field::OtherBand)->text(), QStringLiteral("0.41 mm"));
        press(Qt::Key_S, Qt::ControlModifier);
        QVERIFY(!form.field(Field::OtherBand)->isRefused());
        QCOMPARE(open.specs.now(SpecSubject::ExhaustLash)->revision, 1);
    }

    void onlyWhatAnEngineHasIsAskedFor()
    {
        {
            Open plain;
            QCOMPARE(sectionsOf(plain.page),
                     (QList<Section>{Section::IntakeLash, Section::ExhaustLash, Section::LockNut, Section::CrankPositions}));
        }
        Open all([](VehicleText &text) {
            text.engine.valves = "4";
            text.engine.bridged = text.engine.bridgeScrews = text.engine.injectors = text.engine.decompressors = true;
        });
        QCOMPARE(sectionsOf(all.page),
                 (QList<Section>{Section::IntakeLash, Section::ExhaustLash, Section::BridgeScrew, Section::Decompressor, Section::Injector,
                                 Section::LockNut, Section::CrankPositions}));
        SpecForm &form = all.form(Section::Injector);
        QVERIFY(form.isVisible());
        form.focusFirst();
        type(QStringLiteral("78.2 ± 0.1 mm"));
        press(Qt::Key_S, Qt::ControlModifier);
        QVERIFY2(all.specs.now(SpecSubject::Injector), "an injector's height is no lash: nothing is asked");
    }

    void aTwoStrokeWithoutIntakeValvesHasNoIntakeLash()
    {
        Open open([](VehicleText &text) { text.engine.cycle = Cycle::TwoStroke; });
        QCOMPARE(sectionsOf(open.page), (QList<Section>{Section::ExhaustLash, Section::LockNut, Section::CrankPositions}));
        QCOMPARE(open.page.section(), Section::ExhaustLash);
        QVERIFY(open.page.form(Section::ExhaustLash)->isVisible());
    }

    void hydraulicTappetsAreAskedForInTurns()
    {
        Open open([](VehicleText &text) { text.screw.kind = AdjusterKind::Hydraulic; });
        SpecForm &form = open.form(Section::IntakeLash);
        QCOMPARE(form.units()->choice(), turnsChoice(SpecSubject::IntakeLash).value());
        form.focusFirst();
        type(QStringLiteral("1/2-3/4"));
        QVERIFY(form.field(Field::Band)->message()->sentence().contains(QStringLiteral("zero lash")));
        QVERIFY2(!form.field(Field::OtherBand)->isVisible(), "turns have one system");
        press(Qt::Key_S, Qt::ControlModifier);
        const Spec *now = open.specs.now(SpecSubject::IntakeLash);
        QVERIFY(now);
        const auto *turns = std::get_if<SpecBand<Angle>>(&now->asked);
        QVERIFY(turns);
        QCOMPARE(turns->first.low, std::optional(degrees(180)));
        QCOMPARE(turns->first.high, std::optional(degrees(270)));
        // The collapsed clearance is another way to ask, of another size than a lash.
        click(form.units()->key(0));
        form.focusFirst();
        form.field(Field::Band)->edit()->selectAll();
        type(QStringLiteral("2.8-5.3 mm"));
        press(Qt::Key_S, Qt::ControlModifier);
        QVERIFY(std::holds_alternative<SpecBand<Length>>(open.specs.now(SpecSubject::IntakeLash)->asked));
    }

    void turnsAreOfferedOnlyWhereTheyMakeSense()
    {
        Open open;
        SpecForm &form = open.form(Section::IntakeLash);
        QVERIFY(!form.units()->key(turnsChoice(SpecSubject::IntakeLash).value())->isVisible());
        QVERIFY(!turnsChoice(SpecSubject::LockNut));
    }

    void aWrongUnitIsAskedAboutOnce()
    {
        Open open;
        SpecForm &form = open.form(Section::IntakeLash);
        form.focusFirst();
        click(form.units()->key(1)); // bare numbers count in inches
        form.focusFirst();
        type(QStringLiteral("0.30"));
        press(Qt::Key_Return);
        ValueField *band = form.field(Field::Band);
        QVERIFY(band->isAsking());
        QVERIFY(!band->isRefused());
        QVERIFY(band->edit()->hasFocus());
        QVERIFY(band->message()->sentence().contains(QStringLiteral("0.30")));
        press(Qt::Key_Return);
        QVERIFY2(!band->edit()->hasFocus(), "the same Enter again goes on");
        press(Qt::Key_S, Qt::ControlModifier);
        const Spec *now = open.specs.now(SpecSubject::IntakeLash);
        QVERIFY(now);
        QCOMPARE(std::get<SpecBand<Length>>(now->asked).first.text, std::string("0.30"));
        QCOMPARE(std::get<SpecBand<Length>>(now->asked).first.unit, LengthUnit::Inch);
        form.focusFirst();
        press(Qt::Key_Return);
        QVERIFY2(!band->isAsking(), "it was answered");
        form.focusFirst();
        band->edit()->selectAll();
        type(QStringLiteral("0.35"));
        press(Qt::Key_S, Qt::ControlModifier);
        QVERIFY2(band->isAsking() && open.specs.now(SpecSubject::IntakeLash)->revision == 1, "another text is another question");
        press(Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(open.specs.now(SpecSubject::IntakeLash)->revision, 2);
    }

    void aQuestionGoesWithItsText()
    {
        Open open;
        SpecForm &form = open.form(Section::ExhaustLash);
        form.focusFirst();
        type(QStringLiteral("0.016"));
        press(Qt::Key_Tab);
        ValueField *band = form.field(Field::Band);
        QVERIFY2(band->isAsking(), "0.016 mm is less than any lash");
        form.focusFirst();
        press(Qt::Key_End);
        type(QStringLiteral(" in"));
        QVERIFY(!band->isAsking());
        press(Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(form.message()->role(), MessageLine::Role::Done);
    }

    void aVehicleWithoutAnEngineIsNotInTheList()
    {
        Open open;
        QVERIFY(moveEngine(*open.shop.garage, open.added.engine, std::nullopt));
        QCOMPARE(open.vehicles.rows()->rowCount(), 2);
        QCOMPARE(open.vehicles.engineRows()->rowCount(), 1);
        SpecForm &form = open.form(Section::IntakeLash);
        form.focusFirst();
        type(QStringLiteral("0.30 mm"));
        press(Qt::Key_S, Qt::ControlModifier);
        QVERIFY2(open.specs.now(SpecSubject::IntakeLash), "the engine on the stand keeps its sheet");
    }

    void jointsStandUnderTheirOwnHeading()
    {
        Open open;
        QCOMPARE(titlesOf(open.page.jointRows()), QStringList{QStringLiteral("New joint")});
        QVERIFY(!open.page.showsJoint());
        const JointId cover = addPlainJoint(open, "Cover", "12 around a cover");
        const JointId flange = addPlainJoint(open, "Flange", "4 around a circle");
        QCOMPARE(titlesOf(open.page.jointRows()),
                 (QStringList{QStringLiteral("Cover"), QStringLiteral("Flange"), QStringLiteral("New joint")}));
        QVERIFY(open.page.jointRows().rows().front().note.startsWith(QStringLiteral("12 around a cover")));
        open.page.chooseJoint(flange);
        QVERIFY(open.page.jointForm()->isVisible() && open.page.showsJoint());
        QVERIFY(open.page.jointForm()->joint() == flange);
        open.page.chooseJoint(cover);
        QCOMPARE(open.page.jointForm()->field(JointField::Name)->text(), QStringLiteral("Cover"));
        open.page.chooseSection(Section::ExhaustLash);
        QVERIFY(open.page.form(Section::ExhaustLash)->isVisible() && !open.page.showsJoint());
    }

    void aJointOfAnotherEngineIsNotShown()
    {
        Open open;
        const JointId cover = addPlainJoint(open, "Cover", "12 around a cover");
        open.page.chooseJoint(cover);
        const auto other = addFour(*open.shop.garage, [](VehicleText &text) { text.name = "Another"; });
        open.page.chooseEngine(other.engine);
        QCOMPARE(titlesOf(open.page.jointRows()), QStringList{QStringLiteral("New joint")});
        QVERIFY(!open.page.jointForm()->joint());
        open.page.chooseEngine(open.added.engine);
        open.page.chooseJoint(cover);
        QCOMPARE(open.page.jointForm()->field(JointField::Name)->text(), QStringLiteral("Cover"));
    }

    void theNextValueTakesOnTheSourceOfAJoint()
    {
        Open open;
        addPlainJoint(open, "Cover", "12 around a cover");
        open.page.chooseJoint(std::nullopt);
        QCOMPARE(open.page.jointForm()->field(JointField::Page)->text(), QStringLiteral("41"));
    }

private:
    static QStringList titlesOf(const RuledRows &rows)
    {
        QStringList titles;
        for (const RuledRow &row : rows.rows())
            titles.append(row.title);
        return titles;
    }

    /// As another computer would.
    static JointId addPlainJoint(Open &open, const char *name, const char *places)
    {
        JointText text;
        text.name = name;
        text.pattern = parsePattern(places).value();
        text.target = "24";
        text.source = {"Workshop Manual", "41", Certainty::ReadInManual};
        const auto added = addJoint(*open.shop.garage, open.added.engine, text);
        if (!added)
            qFatal("the joint could not be added");
        return *added;
    }

    static QList<Section> sectionsOf(const SpecsPage &page)
    {
        QList<Section> sections;
        for (const RuledRow &row : page.sections().rows())
            sections.append(Section(row.id));
        return sections;
    }
};

APP_TEST(SpecsPageTest)

} // namespace asleft::testing::specs_page_test

#include "specs_page_test.moc"
