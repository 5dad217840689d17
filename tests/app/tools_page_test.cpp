#include "garage_fixture.h"

#include "pages/feeler_form.h"
#include "pages/person_form.h"
#include "pages/tools_model.h"
#include "pages/tools_page.h"
#include "parts/message_line.h"
#include "parts/value_field.h"

#include <QClipboard>

using namespace asleft;
using namespace asleft::testing;

class ToolsPageTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }

    void aFeelerSetIsTypedByKeyboard()
    {
        Shop shop;
        ToolsModel tools(*shop.garage);
        ToolsPage page(*shop.desk, tools);
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
        ToolsPage page(*shop.desk, tools);
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
        ToolsPage page(*shop.desk, tools);
        present(page);
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
};

APP_TEST(ToolsPageTest)
#include "tools_page_test.moc"
