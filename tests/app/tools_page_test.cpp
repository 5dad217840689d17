#include "garage_fixture.h"

#include <forms/feeler_form.h>
#include <forms/fitting_form.h>
#include <forms/gauge_form.h>
#include <forms/person_form.h>
#include <forms/rule_form.h>
#include <forms/torque_form.h>
#include <pages/tools_page.h>
#include <parts/choice_keys.h>
#include <parts/message_line.h>
#include <parts/ruled_list.h>
#include <parts/tools_model.h>
#include <parts/value_field.h>

#include <QClipboard>

#include <cmath>

namespace asleft::testing::tools_page_test {

class ToolsPageTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }

    void aFeelerSetIsTypedByKeyboard()
    {
        Shop shop;
        ToolsModel tools(*shop.garage);
        ToolsPage page(*shop.context, tools);
        present(page);
        page.feelers()->name()->edit()->setFocus();
        type(QStringLiteral("Long leaves"));
        press(Qt::Key_Return);
        type(QStringLiteral("0.05-1.00 by 0.05 mm"));
        QVERIFY(page.feelers()->leaves()->message()->sentence().contains(QStringLiteral("20")));
        press(Qt::Key_Return);
        QCOMPARE(tools.feelerRows()->rowCount(), 1);
        QCOMPARE(page.feelers()->message()->role(), MessageLine::Role::Done);
        QVERIFY(page.feelers()->name()->text().isEmpty());
    }

    void badLeavesAreRefusedAndStay_data()
    {
        QTest::addColumn<QString>("text");
        QTest::newRow("nothing") << QString();
        QTest::newRow("letters") << QStringLiteral("abc");
        QTest::newRow("below zero") << QStringLiteral("-3");
        QTest::newRow("upside down") << QStringLiteral("1.00-0.05 by 0.05");
        QTest::newRow("endless") << QStringLiteral("0.001-1000 by 0.001");
        QTest::newRow("a megabyte") << QString(1 << 20, QLatin1Char('5'));
    }

    void badLeavesAreRefusedAndStay()
    {
        QFETCH(QString, text);
        Shop shop;
        ToolsModel tools(*shop.garage);
        ToolsPage page(*shop.context, tools);
        present(page);
        page.feelers()->name()->edit()->setFocus();
        type(QStringLiteral("Set"));
        press(Qt::Key_Return);
        QApplication::clipboard()->setText(text);
        press(Qt::Key_V, Qt::ControlModifier);
        press(Qt::Key_Return);
        QVERIFY(page.feelers()->leaves()->isRefused());
        QCOMPARE(page.feelers()->leaves()->text(), text.left(longestPaste));
        QCOMPARE(page.feelers()->name()->text(), QStringLiteral("Set"));
        QCOMPARE(tools.feelerRows()->rowCount(), 0);
    }

    void aPersonIsTypedByKeyboard()
    {
        Shop shop;
        ToolsModel tools(*shop.garage);
        ToolsPage page(*shop.context, tools);
        present(page);
        page.chooseSection(ToolsPage::Section::People);
        page.people()->initials()->edit()->setFocus();
        type(QStringLiteral("M.K."));
        press(Qt::Key_Return);
        press(Qt::Key_Return);
        QCOMPARE(tools.peopleRows()->rowCount(), 1);
        press(Qt::Key_Return);
        press(Qt::Key_Return);
        QVERIFY(page.people()->initials()->isRefused());
        QCOMPARE(tools.peopleRows()->rowCount(), 1);
    }

    void aGaugeIsTypedByKeyboardAndItsWorthIsTold()
    {
        Shop shop;
        ToolsModel tools(*shop.garage);
        ToolsPage page(*shop.context, tools);
        present(page);
        page.chooseSection(ToolsPage::Section::Gauges);
        GaugeForm &form = *page.gauges();
        form.name()->edit()->setFocus();
        type(QStringLiteral("Dial gauge 4"));
        press(Qt::Key_Return);
        type(QStringLiteral("0.02"));
        press(Qt::Key_Return);
        type(QStringLiteral("0.01 mm"));
        // u² = (0.02² + 0.005²)/3 mm², U = 2u = 0.0238 mm (JCGM 100:2008, 4.3.7 and F.2.2.1).
        QVERIFY2(form.judgement()->sentence().contains(QStringLiteral("0.02")), qPrintable(form.judgement()->sentence()));
        QCOMPARE(form.judgement()->sentence().count(QChar(0x00B1)), 1);
        press(Qt::Key_Return);
        QCOMPARE(form.message()->role(), MessageLine::Role::Done);
        QCOMPARE(tools.gaugeRows()->rowCount(), 1);
        QCOMPARE(tools.feelerRows()->rowCount(), 0);
        const Tool *gauge = tools.tool(tools.gaugeRows()->rows().front().id);
        QVERIFY(gauge && gauge->kind == ToolKind::DialGauge);
        const auto uncertainty = uncertaintyOf(*gauge, {});
        QVERIFY(uncertainty);
        QVERIFY(std::abs(toMillimetres(*uncertainty) - 0.0238) < 0.0001);
        QVERIFY(tools.gaugeRows()->rows().front().note.contains(QChar(0x00B1)));
        QVERIFY(form.name()->text().isEmpty() && form.name()->edit()->hasFocus());
    }

    void aMicrometerOfUnknownErrorsIsTakenAndSaidSo()
    {
        Shop shop;
        ToolsModel tools(*shop.garage);
        ToolsPage page(*shop.context, tools);
        present(page);
        page.chooseSection(ToolsPage::Section::Gauges);
        click(page.gauges()->kind()->key(1));
        page.gauges()->name()->edit()->setFocus();
        type(QStringLiteral("Old micrometer"));
        click(buttonNamed(page, QStringLiteral("Save the gauge")));
        QCOMPARE(tools.gaugeRows()->rowCount(), 1);
        QCOMPARE(tools.tool(tools.gaugeRows()->rows().front().id)->kind, ToolKind::Micrometer);
        QVERIFY(!tools.gaugeRows()->rows().front().note.contains(QChar(0x00B1)));
    }

    void badErrorsOfAGaugeAreRefusedAndStay_data()
    {
        QTest::addColumn<QString>("text");
        QTest::newRow("letters") << QStringLiteral("abc");
        QTest::newRow("below zero") << QStringLiteral("-0.02");
        QTest::newRow("ambiguous") << QStringLiteral("1,250");
        QTest::newRow("a torque") << QStringLiteral("2 N·m");
        QTest::newRow("exponent") << QStringLiteral("1e9 mm");
        QTest::newRow("a megabyte") << QString(1 << 20, QLatin1Char('5'));
    }

    void badErrorsOfAGaugeAreRefusedAndStay()
    {
        QFETCH(QString, text);
        Shop shop;
        ToolsModel tools(*shop.garage);
        ToolsPage page(*shop.context, tools);
        present(page);
        page.chooseSection(ToolsPage::Section::Gauges);
        for (ValueField *field : {page.gauges()->permissibleError(), page.gauges()->resolution()}) {
            page.gauges()->name()->edit()->setFocus();
            page.gauges()->name()->edit()->selectAll();
            type(QStringLiteral("Dial gauge"));
            field->edit()->setFocus();
            QApplication::clipboard()->setText(text);
            press(Qt::Key_V, Qt::ControlModifier);
            QVERIFY2(!field->isRefused(), "not while it is typed");
            page.gauges()->save();
            QVERIFY(field->isRefused());
            QVERIFY(!field->message()->sentence().isEmpty());
            QVERIFY(field->edit()->hasFocus());
            QCOMPARE(field->text(), text.left(longestPaste));
            QCOMPARE(page.gauges()->name()->text(), QStringLiteral("Dial gauge"));
            QCOMPARE(tools.gaugeRows()->rowCount(), 0);
            field->edit()->selectAll();
            press(Qt::Key_Delete);
            QVERIFY(!field->isRefused());
        }
    }

    void aGaugeWantsAName()
    {
        Shop shop;
        ToolsModel tools(*shop.garage);
        ToolsPage page(*shop.context, tools);
        present(page);
        page.chooseSection(ToolsPage::Section::Gauges);
        page.gauges()->resolution()->edit()->setFocus();
        press(Qt::Key_Return);
        QVERIFY(page.gauges()->name()->isRefused());
        QVERIFY(page.gauges()->name()->edit()->hasFocus());
        type(QStringLiteral("D"));
        QVERIFY(!page.gauges()->name()->isRefused());
    }

    void theIndexIsWalkedByArrowsAndEnterGoesToTheForm()
    {
        Shop shop;
        ToolsModel tools(*shop.garage);
        ToolsPage page(*shop.context, tools);
        present(page);
        page.index()->setFocus();
        const QList<QWidget *> forms{page.feelers(),  page.gauges(),  page.wrenches(), page.angleGauges(),
                                     page.adapters(), page.sockets(), page.people(),   page.rule()};
        for (qsizetype at = 0; at < forms.size(); ++at) {
            QCOMPARE(page.section(), ToolsPage::Section(at));
            for (qsizetype other = 0; other < forms.size(); ++other)
                QCOMPARE(forms.at(other)->isVisible(), other == at);
            press(Qt::Key_Return);
            QVERIFY(forms.at(at)->isAncestorOf(QApplication::focusWidget()));
            page.index()->setFocus();
            press(Qt::Key_Down);
        }
    }

    void theIndexCountsWhatThereIs()
    {
        Shop shop;
        ToolsModel tools(*shop.garage);
        ToolsPage page(*shop.context, tools);
        present(page);
        const auto note = [&page](ToolsPage::Section section) {
            return page.index()->model()->index(int(section), 0).data(RuledRows::NoteRole).toString();
        };
        const QString none = note(ToolsPage::Section::TorqueWrenches);
        TorqueWrenchText wrench;
        wrench.name = "Long wrench";
        wrench.least = "20";
        wrench.most = "200";
        wrench.calibrationDue = "2027-03-31";
        QVERIFY(addTorqueWrench(*shop.garage, wrench));
        QVERIFY2(note(ToolsPage::Section::TorqueWrenches).startsWith(u'1'), qPrintable(note(ToolsPage::Section::TorqueWrenches)));
        QVERIFY(!note(ToolsPage::Section::TorqueWrenches).contains(QStringLiteral("overdue")));
        wrench.name = "Old wrench";
        wrench.calibrationDue = "2020-03-31";
        QVERIFY(addTorqueWrench(*shop.garage, wrench));
        QVERIFY2(note(ToolsPage::Section::TorqueWrenches).contains(QStringLiteral("overdue: 1")),
                 qPrintable(note(ToolsPage::Section::TorqueWrenches)));
        QCOMPARE(note(ToolsPage::Section::Adapters), none);
    }

    void nothingIsCutOffAtTheSmallestWindow()
    {
        Shop shop;
        ToolsModel tools(*shop.garage);
        ToolsPage page(*shop.context, tools);
        // The bar of places takes the rest of the 800.
        present(page, {1280, 744});
        for (int section = 0; section <= int(ToolsPage::Section::Rule); ++section) {
            page.chooseSection(ToolsPage::Section(section));
            QCoreApplication::processEvents();
            for (const auto *button : page.findChildren<QAbstractButton *>()) {
                if (!button->isVisible())
                    continue;
                const int right = button->mapTo(&page, QPoint(button->width(), 0)).x();
                QVERIFY2(right <= page.width(), qPrintable(button->text()));
                QVERIFY2(button->width() >= button->minimumSizeHint().width(), qPrintable(button->text()));
                QVERIFY2(button->mapTo(&page, QPoint(0, button->height())).y() <= page.height(), qPrintable(button->text()));
            }
        }
    }

    void theRuleIsChosenAndExplained()
    {
        Shop shop;
        ToolsModel tools(*shop.garage);
        ToolsPage page(*shop.context, tools);
        present(page);
        page.chooseSection(ToolsPage::Section::Rule);
        QCOMPARE(tools.rule(), DecisionRule::Simple);
        const QString simple = page.rule()->meaning()->sentence();
        QVERIFY(!simple.isEmpty());
        page.rule()->rule()->takeFocus();
        press(Qt::Key_Right);
        QCOMPARE(tools.rule(), DecisionRule::WithUncertainty);
        QVERIFY(page.rule()->meaning()->sentence() != simple);
        QCOMPARE(page.rule()->message()->role(), MessageLine::Role::Done);
        QVERIFY(decisionRule(*shop.garage) == DecisionRule::WithUncertainty);
        QVERIFY(setDecisionRule(*shop.garage, DecisionRule::Simple));
        QCOMPARE(page.rule()->rule()->choice(), 0);
        QCOMPARE(page.rule()->meaning()->sentence(), simple);
    }
};

APP_TEST(ToolsPageTest)

} // namespace asleft::testing::tools_page_test

#include "tools_page_test.moc"
