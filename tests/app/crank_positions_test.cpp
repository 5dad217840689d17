#include "specs_driver.h"

#include <forms/plan_preview.h>
#include <forms/table_form.h>
#include <forms/table_row.h>
#include <parts/choice_keys.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/notes.h>
#include <parts/ruled_list.h>
#include <parts/value_field.h>

#include <words/crank.h>
#include <words/errors.h>

#include <QClipboard>

namespace asleft::testing::crank_positions_test {

using Open = OpenSpecs;
using Section = SpecsPage::Section;

/// Where the manual, or geometry, turns the crank to.
class CrankPositionsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }

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

    void theWaysToTurnAreShown()
    {
        Open open;
        open.page.chooseSection(Section::CrankPositions);
        PlanPreview &preview = *open.page.table()->preview();
        // All six fit an in-line four with two valves a cylinder.
        QCOMPARE(preview.ways()->model()->rowCount(), 6);
        QCOMPARE(preview.positions()->notes().size(), 2);
        preview.ways()->setFocus();
        press(Qt::Key_Down);
        QCOMPARE(preview.positions()->notes().size(), 4);
        preview.choose(PlanWay::Fewest);
        QVERIFY2(!preview.warning()->sentence().isEmpty() && preview.positions()->notes().isEmpty(), "its cam is not known");
        QVERIFY(preview.marks()->isVisible());
        preview.choose(PlanWay::RuleOfNine);
        QVERIFY(!preview.marks()->isVisible());
        QCOMPARE(preview.warning()->sentence(), warningOf(open, PlanWay::RuleOfNine));
    }

    void theRuleOfNineWarnsWhereValvesDoNotMirror()
    {
        Open open([](VehicleText &text) { text.engine.valveOrder = "E I E I E I E I"; });
        open.page.chooseSection(Section::CrankPositions);
        PlanPreview &preview = *open.page.table()->preview();
        preview.choose(PlanWay::RuleOfNine);
        QVERIFY(!preview.warning()->sentence().isEmpty());
        QVERIFY(preview.warning()->isVisible());
        QCOMPARE(preview.warning()->sentence(), warningOf(open, PlanWay::RuleOfNine));
    }

    void aWayForAnotherKindOfEngineIsNotOffered()
    {
        Open open([](VehicleText &text) { text.engine.cycle = Cycle::TwoStroke; });
        open.page.chooseSection(Section::CrankPositions);
        const RuledList *ways = open.page.table()->preview()->ways();
        for (int row = 0; row < ways->model()->rowCount(); ++row) {
            const auto way = PlanWay(ways->model()->index(row, 0).data(RuledRows::IdRole).toInt());
            QVERIFY(way != PlanWay::RuleOfNine && way != PlanWay::CompanionAtOverlap && way != PlanWay::OpeningAndClosing);
        }
    }

    void theTableTakesEveryKindOfPoint()
    {
        Open open([](VehicleText &text) {
            text.engine.valves = "4";
            text.engine.bridged = text.engine.bridgeScrews = text.engine.injectors = text.engine.decompressors = true;
        });
        open.page.chooseSection(Section::CrankPositions);
        TableForm &table = *open.page.table();
        table.row(0)->cylinder()->edit()->setFocus();
        typeRow(QStringLiteral("1"), false, QStringLiteral("BI1 I1 BE1 E1 DEC 1"));
        const QString understood = table.row(0)->understood()->sentence();
        QVERIFY2(!understood.isEmpty() && !table.row(0)->points()->isRefused(), qPrintable(understood));
        press(Qt::Key_S, Qt::ControlModifier);
        QVERIFY(open.specs.table());
        QCOMPARE(open.specs.table()->lines.front().points, std::string("BI1 I1 BE1 E1 DEC 1"));
    }

private:
    static QString warningOf(const Open &open, PlanWay way)
    {
        const EngineDesign &design = open.specs.engine()->engine->design;
        const auto plan = planFor(design, {.way = way});
        return plan ? planWarning(design, *plan) : QStringLiteral("no plan");
    }

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

APP_TEST(CrankPositionsTest)

} // namespace asleft::testing::crank_positions_test

#include "crank_positions_test.moc"
