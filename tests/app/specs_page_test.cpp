#include "garage_fixture.h"

#include "pages/spec_form.h"
#include "pages/specs_model.h"
#include "pages/specs_page.h"
#include "pages/table_form.h"
#include "pages/table_row.h"
#include "pages/vehicles_model.h"
#include "parts/choice_keys.h"
#include "parts/key_button.h"
#include "parts/message_line.h"
#include "parts/value_field.h"

#include <QClipboard>

using namespace asleft;
using namespace asleft::testing;
using Section = SpecsPage::Section;
using Field = SpecField;

namespace {

/// The page on a garage with one engine.
struct Open {
    Open() : added(addFour(*shop.garage)), vehicles(*shop.garage), specs(*shop.garage, vehicles), page(*shop.desk, specs, vehicles)
    {
        present(page);
    }

    SpecForm &form(Section section)
    {
        page.chooseSection(section);
        return *page.form(section);
    }

    Shop shop;
    NewVehicle added;
    VehiclesModel vehicles;
    SpecsModel specs;
    SpecsPage page;
};

} // namespace

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

    void theManualsTableIsTypedAndStored()
    {
        Open open;
        open.page.chooseSection(Section::CrankPositions);
        TableForm &table = *open.page.table();
        table.focusFirst();
        type(QStringLiteral("WM"));
        press(Qt::Key_Return);
        type(QStringLiteral("12"));
        press(Qt::Key_Return);
        typeRow(QStringLiteral("1"), false, QStringLiteral("IN 1 2 EX 1 3"));
        QVERIFY(table.row(0)->understood()->sentence().contains(QStringLiteral("IN 1 2 EX 1 3")));
        typeRow(QStringLiteral("1"), true, QStringLiteral("IN 3 4 EX 2 4"));
        press(Qt::Key_Return); // on the key that saves
        QVERIFY(open.specs.table());
        QCOMPARE(open.specs.table()->lines.size(), 2U);
        QCOMPARE(open.specs.table()->source.page, std::string("12"));
        QCOMPARE(table.message()->role(), MessageLine::Role::Done);
    }

    void aDoubtfulEntryIsAskedAboutOnce()
    {
        Open open;
        open.page.chooseSection(Section::CrankPositions);
        TableForm &table = *open.page.table();
        table.row(0)->cylinder()->edit()->setFocus();
        typeRow(QStringLiteral("1"), false, QStringLiteral("IN 1 2 EX 1 3 4"));
        press(Qt::Key_S, Qt::ControlModifier);
        QVERIFY2(!open.specs.table(), "asked first");
        QVERIFY(table.keepKey()->isVisible());
        QVERIFY(table.message()->sentence().contains(QStringLiteral("4")));
        QVERIFY(table.keepKey()->hasFocus());
        press(Qt::Key_Return);
        QVERIFY(open.specs.table());
        QVERIFY(!table.keepKey()->isVisible());
        table.row(0)->points()->edit()->setFocus();
        press(Qt::Key_S, Qt::ControlModifier);
        QVERIFY2(!table.keepKey()->isVisible(), "the same entry is not asked about again");
        QCOMPARE(table.message()->role(), MessageLine::Role::Done);
    }

    void aBadLineIsRefusedAtTheLine_data()
    {
        QTest::addColumn<QString>("cylinder");
        QTest::addColumn<QString>("points");
        QTest::newRow("no such cylinder") << QStringLiteral("9") << QStringLiteral("IN 1");
        QTest::newRow("no such valve") << QStringLiteral("1") << QStringLiteral("IN 9");
        QTest::newRow("no valves") << QStringLiteral("1") << QString();
        QTest::newRow("letters") << QStringLiteral("1") << QStringLiteral("abc");
        QTest::newRow("a valve twice") << QStringLiteral("1") << QStringLiteral("IN 1 1");
        QTest::newRow("a megabyte") << QStringLiteral("1") << QString(1 << 20, QLatin1Char('1'));
    }

    void aBadLineIsRefusedAtTheLine()
    {
        QFETCH(QString, cylinder);
        QFETCH(QString, points);
        Open open;
        open.page.chooseSection(Section::CrankPositions);
        TableForm &table = *open.page.table();
        table.row(0)->cylinder()->edit()->setFocus();
        type(cylinder);
        table.row(0)->points()->edit()->setFocus();
        QApplication::clipboard()->setText(points);
        press(Qt::Key_V, Qt::ControlModifier);
        press(Qt::Key_S, Qt::ControlModifier);
        QVERIFY(table.row(0)->points()->isRefused() || table.row(0)->cylinder()->isRefused());
        QCOMPARE(table.row(0)->points()->text(), points.left(longestPaste));
        QCOMPARE(table.message()->role(), MessageLine::Role::Refusal);
        QVERIFY(!open.specs.table());
    }

    void linesComeAndGo()
    {
        Open open;
        open.page.chooseSection(Section::CrankPositions);
        TableForm &table = *open.page.table();
        click(buttonNamed(open.page, QStringLiteral("One more position")));
        QCOMPARE(table.rows(), 3);
        QVERIFY(table.row(2)->cylinder()->edit()->hasFocus());
        typeRow(QStringLiteral("4"), true, QStringLiteral("IN 1"));
        while (table.rows() > 1)
            click(buttonNamed(open.page, QStringLiteral("Take out")));
        QCOMPARE(table.row(0)->points()->text(), QStringLiteral("IN 1"));
        click(buttonNamed(open.page, QStringLiteral("Take out")));
        QCOMPARE(table.rows(), 1);
        QVERIFY(table.row(0)->points()->text().isEmpty());
    }

private:
    /// Types a line where the keyboard stands, Enter by Enter.
    static void typeRow(const QString &cylinder, bool overlap, const QString &points)
    {
        type(cylinder);
        press(Qt::Key_Return);
        if (overlap)
            press(Qt::Key_Right);
        press(Qt::Key_Return);
        type(points);
        press(Qt::Key_Return);
    }
};

APP_TEST(SpecsPageTest)
#include "specs_page_test.moc"
