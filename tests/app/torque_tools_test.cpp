#include "garage_fixture.h"

#include <forms/calibration_form.h>
#include <forms/fitting_form.h>
#include <forms/torque_form.h>
#include <pages/tools_page.h>
#include <parts/choice_keys.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/ruled_list.h>
#include <parts/tools_model.h>
#include <parts/value_field.h>

#include <QClipboard>

namespace asleft::testing::torque_tools_test {

namespace {

using Section = ToolsPage::Section;

ToolId hangWrench(Garage &garage, const char *name, const char *due)
{
    TorqueWrenchText text;
    text.name = name;
    text.least = "20";
    text.most = "200";
    text.calibrationDue = due;
    const auto wrench = addTorqueWrench(garage, text);
    if (!wrench)
        qFatal("the wrench could not be hung up");
    return *wrench;
}

/// The page with one section in hand.
struct OpenRack {
    explicit OpenRack(Section section) : tools(*shop.garage), page(*shop.context, tools)
    {
        present(page);
        page.chooseSection(section);
    }

    [[nodiscard]] TorqueForm &wrench() const { return *page.wrenches(); }
    [[nodiscard]] RuledRow onlyRow(ToolGroup group)
    {
        const auto rows = tools.rowsOf(group)->rows();
        return rows.size() == 1 ? rows.front() : RuledRow{};
    }

    /// Types a wrench by keyboard, Enter after each field but the last.
    void typeWrench(const QStringList &texts) const
    {
        wrench().name()->edit()->setFocus();
        for (qsizetype at = 0; at < texts.size(); ++at) {
            type(texts.at(at));
            if (at + 1 < texts.size())
                press(Qt::Key_Return);
        }
    }

    ToolId hang(const char *name, const char *due) const { return hangWrench(*shop.garage, name, due); }
    [[nodiscard]] RuledList &wrenchList() const { return *page.list(Section::TorqueWrenches); }
    /// The words of a section in the index.
    [[nodiscard]] QString noteInIndex(Section section) const
    {
        return page.index()->model()->index(int(section), 0).data(RuledRows::NoteRole).toString();
    }

    Shop shop;
    ToolsModel tools;
    ToolsPage page;
};

QStringList goodWrench()
{
    return {QStringLiteral("Long wrench"), QStringLiteral("20"), QStringLiteral("200"), QString(),
            QStringLiteral("2027-03-31"),  QStringLiteral("400")};
}

} // namespace

class TorqueToolsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }

    void aWrenchIsTypedByKeyboardAndItsWorthIsTold()
    {
        OpenRack rack(Section::TorqueWrenches);
        rack.typeWrench(goodWrench());
        // ISO 6789: tested at 20, 60 and 100 % of the largest torque; ± 4 % above 10 N·m.
        QCOMPARE(rack.wrench().judgement()->sentence(), QString::fromUtf8("tested from 40 N·m (a fifth of its range), ± 4 % by ISO 6789"));
        QCOMPARE(rack.tools.wrenchRows()->rowCount(), 0);
        press(Qt::Key_Return);
        QCOMPARE(rack.wrench().message()->role(), MessageLine::Role::Done);
        const RuledRow row = rack.onlyRow(ToolGroup::TorqueWrenches);
        QCOMPARE(row.title, QStringLiteral("Long wrench"));
        QCOMPARE(row.note, QString::fromUtf8("20 to 200 N·m, set, ± 4 %, calibration due 31 Mar 2027"));
        const Tool *tool = rack.tools.tool(row.id);
        QVERIFY(tool && tool->kind == ToolKind::TorqueSet && tool->lever);
        QCOMPARE(toMillimetres(tool->lever->value), 400.0);
        QVERIFY(rack.wrench().name()->text().isEmpty() && rack.wrench().name()->edit()->hasFocus());
        QVERIFY(rack.wrench().judgement()->sentence().isEmpty());
    }

    void worth_data()
    {
        QTest::addColumn<QString>("least");
        QTest::addColumn<QString>("most");
        QTest::addColumn<QString>("deviation");
        QTest::addColumn<int>("unit");
        QTest::addColumn<QString>("worth");
        const auto words = [](const char *text) { return QString::fromUtf8(text); };
        // ISO 6789: ± 6 % up to a largest torque of 10 N·m.
        QTest::newRow("small") << QStringLiteral("1") << QStringLiteral("10") << QString() << 0
                               << words("tested from 2 N·m (a fifth of its range), ± 6 % by ISO 6789");
        QTest::newRow("all of its range") << QStringLiteral("6") << QStringLiteral("30") << QString() << 0
                                          << words("tested over all of its range, 6 to 30 N·m, ± 4 % by ISO 6789");
        QTest::newRow("its own card") << QStringLiteral("20") << QStringLiteral("200") << QStringLiteral("2.5 %") << 0
                                      << words("tested from 40 N·m (a fifth of its range), ± 2.5 % by its own card");
        QTest::newRow("pound-foot") << QStringLiteral("10") << QStringLiteral("150") << QStringLiteral("3") << 1
                                    << words("tested from 30 lbf·ft (a fifth of its range), ± 3 % by its own card");
        QTest::newRow("half typed") << QStringLiteral("20") << QString() << QString() << 0 << QString();
        QTest::newRow("upside down") << QStringLiteral("200") << QStringLiteral("20") << QString() << 0 << QString();
    }

    void worth()
    {
        QFETCH(QString, least);
        QFETCH(QString, most);
        QFETCH(QString, deviation);
        QFETCH(int, unit);
        QFETCH(QString, worth);
        OpenRack rack(Section::TorqueWrenches);
        click(rack.wrench().unit()->key(unit));
        rack.typeWrench({QStringLiteral("W"), least, most, deviation});
        QCOMPARE(rack.wrench().judgement()->sentence(), worth);
    }

    void badWrenchesAreRefusedAndStay_data()
    {
        QTest::addColumn<int>("field");
        QTest::addColumn<QString>("text");
        QTest::newRow("no name") << 0 << QString();
        QTest::newRow("no least") << 1 << QString();
        QTest::newRow("no most") << 2 << QString();
        QTest::newRow("letters") << 1 << QStringLiteral("abc");
        QTest::newRow("below nothing") << 1 << QStringLiteral("-5");
        QTest::newRow("upside down") << 2 << QStringLiteral("10");
        QTest::newRow("from nothing to nothing") << 2 << QStringLiteral("0");
        QTest::newRow("a length") << 2 << QStringLiteral("200 mm");
        QTest::newRow("ambiguous") << 2 << QStringLiteral("1,250");
        QTest::newRow("deviation 0") << 3 << QStringLiteral("0");
        QTest::newRow("deviation 80") << 3 << QStringLiteral("80 %");
        QTest::newRow("deviation below 0") << 3 << QStringLiteral("-4");
        QTest::newRow("deviation of words") << 3 << QStringLiteral("little");
        QTest::newRow("no such day") << 4 << QStringLiteral("2027-02-30");
        QTest::newRow("no date") << 4 << QStringLiteral("next spring");
        QTest::newRow("lever 0") << 5 << QStringLiteral("0");
        QTest::newRow("lever of 4 m") << 5 << QStringLiteral("4000 mm");
        QTest::newRow("lever of words") << 5 << QStringLiteral("long");
        QTest::newRow("lever of a page") << 5 << QString(1 << 20, QLatin1Char('5'));
    }

    void badWrenchesAreRefusedAndStay()
    {
        QFETCH(int, field);
        QFETCH(QString, text);
        OpenRack rack(Section::TorqueWrenches);
        TorqueForm &form = rack.wrench();
        const QList<ValueField *> fields{form.name(), form.least(), form.most(), form.deviation(), form.due(), form.lever()};
        QStringList texts = goodWrench();
        texts[field].clear();
        rack.typeWrench(texts);
        fields.at(field)->edit()->setFocus();
        QApplication::clipboard()->setText(text);
        press(Qt::Key_V, Qt::ControlModifier);
        QVERIFY2(!fields.at(field)->isRefused() || text.isEmpty(), "not while it is typed");
        click(buttonNamed(rack.page, QStringLiteral("Save the torque wrench")));
        QVERIFY(fields.at(field)->isRefused());
        QVERIFY(!fields.at(field)->message()->sentence().isEmpty());
        QVERIFY(fields.at(field)->edit()->hasFocus());
        for (int other = 0; other < fields.size(); ++other) {
            QCOMPARE(fields.at(other)->text(), other == field ? text.left(longestPaste) : texts.at(other));
            QVERIFY2(other == field || !fields.at(other)->isRefused(), qPrintable(fields.at(other)->message()->sentence()));
        }
        QCOMPARE(rack.tools.wrenchRows()->rowCount(), 0);
        // Mended, it goes on the rack.
        fields.at(field)->edit()->selectAll();
        const QString good = goodWrench().at(field);
        good.isEmpty() ? press(Qt::Key_Delete) : type(good);
        click(buttonNamed(rack.page, QStringLiteral("Save the torque wrench")));
        QCOMPARE(rack.tools.wrenchRows()->rowCount(), 1);
    }

    void allThatIsWrongIsSaidAtOnce()
    {
        OpenRack rack(Section::TorqueWrenches);
        rack.typeWrench(
            {QString(), QStringLiteral("200"), QStringLiteral("20"), QStringLiteral("80"), QStringLiteral("spring"), QStringLiteral("0")});
        press(Qt::Key_Return);
        TorqueForm &form = rack.wrench();
        for (const ValueField *field : {form.name(), form.most(), form.deviation(), form.due()})
            QVERIFY(field->isRefused());
        form.due()->setText({});
        form.save();
        for (const ValueField *field : {form.name(), form.most(), form.deviation(), form.lever()})
            QVERIFY(field->isRefused());
        QVERIFY(!form.due()->isRefused());
        QVERIFY(form.name()->edit()->hasFocus());
    }

    void aRangeUpsideDownIsRefusedWhenItIsLeft()
    {
        OpenRack rack(Section::TorqueWrenches);
        rack.typeWrench({QStringLiteral("W"), QStringLiteral("200"), QStringLiteral("20")});
        QVERIFY(!rack.wrench().most()->isRefused());
        press(Qt::Key_Return);
        QVERIFY(rack.wrench().most()->isRefused());
        QVERIFY(rack.wrench().deviation()->edit()->hasFocus());
        type(QStringLiteral("4"));
        QVERIFY(rack.wrench().most()->isRefused());
        rack.wrench().least()->edit()->setFocus();
        rack.wrench().least()->edit()->selectAll();
        type(QStringLiteral("5"));
        QVERIFY(!rack.wrench().most()->isRefused());
        QVERIFY(!rack.wrench().judgement()->sentence().isEmpty());
    }

    void anOverdueWrenchThatIsReadIsSaidInWords()
    {
        OpenRack rack(Section::TorqueWrenches);
        click(rack.wrench().how()->key(1));
        click(rack.wrench().unit()->key(1));
        rack.typeWrench({QStringLiteral("Dial wrench"), QStringLiteral("5"), QStringLiteral("75"), QStringLiteral("3"),
                         QStringLiteral("2020-03-31"), QString()});
        QVERIFY2(rack.wrench().due()->message()->sentence().contains(QStringLiteral("overdue since 31 Mar 2020")),
                 qPrintable(rack.wrench().due()->message()->sentence()));
        press(Qt::Key_Return);
        const RuledRow row = rack.onlyRow(ToolGroup::TorqueWrenches);
        QCOMPARE(row.note, QString::fromUtf8("5 to 75 lbf·ft, read, ± 3 %, calibration overdue since 31 Mar 2020"));
        const Tool *tool = rack.tools.tool(row.id);
        QVERIFY(tool && tool->kind == ToolKind::TorqueRead && tool->torque->read && !tool->lever);
    }

    void aWrenchWithoutADateSaysSo()
    {
        OpenRack rack(Section::TorqueWrenches);
        rack.typeWrench({QStringLiteral("W"), QStringLiteral("6"), QStringLiteral("30"), QString(), QString(), QString()});
        press(Qt::Key_Return);
        QCOMPARE(rack.onlyRow(ToolGroup::TorqueWrenches).note, QString::fromUtf8("6 to 30 N·m, set, ± 4 %, calibration not known"));
    }

    void aWrenchComesBackFromCalibration()
    {
        OpenRack rack(Section::TorqueWrenches);
        rack.hang("Old wrench", "2020-03-31");
        const ToolId other = rack.hang("Other wrench", "2027-03-31");
        CalibrationForm &form = *rack.page.calibration();
        QVERIFY2(!form.isVisible(), "nothing is chosen");
        QVERIFY(rack.noteInIndex(Section::TorqueWrenches).contains(QStringLiteral("overdue: 1")));
        rack.wrenchList().setFocus();
        press(Qt::Key_Home);
        press(Qt::Key_Space);
        QVERIFY(form.isVisible());
        QCOMPARE(form.due()->text(), QStringLiteral("2020-03-31"));
        QVERIFY(form.due()->message()->sentence().contains(QStringLiteral("overdue since 31 Mar 2020")));
        press(Qt::Key_Return);
        QVERIFY(form.due()->edit()->hasFocus());
        type(QStringLiteral("2028-04-01"));
        QCOMPARE(form.due()->message()->sentence(), QStringLiteral("calibration due 1 Apr 2028"));
        click(form.keepKey());
        QCOMPARE(form.message()->role(), MessageLine::Role::Done);
        QCOMPARE(form.message()->sentence(), QStringLiteral("Old wrench: calibration due 1 Apr 2028."));
        const auto rows = rack.tools.wrenchRows()->rows();
        QCOMPARE(rows.front().note, QString::fromUtf8("20 to 200 N·m, set, ± 4 %, calibration due 1 Apr 2028"));
        QCOMPARE(rack.noteInIndex(Section::TorqueWrenches), QStringLiteral("2 on the rack"));
        QVERIFY(rack.tools.tool(other.key())->torque->calibrationDue == parseDay("2027-03-31").value());
        // Emptied, it is not known any more.
        form.focusDue();
        press(Qt::Key_Delete);
        press(Qt::Key_Return);
        QVERIFY(!rack.tools.tool(rows.front().id)->torque->calibrationDue);
    }

    void whatIsNoDateIsRefusedBesideIt_data()
    {
        QTest::addColumn<QString>("text");
        QTest::newRow("words") << QStringLiteral("next spring");
        QTest::newRow("no such day") << QStringLiteral("2027-02-30");
        QTest::newRow("the other way round") << QStringLiteral("31.03.2027");
    }

    void whatIsNoDateIsRefusedBesideIt()
    {
        QFETCH(QString, text);
        OpenRack rack(Section::TorqueWrenches);
        const ToolId wrench = rack.hang("Old wrench", "2020-03-31");
        CalibrationForm &form = *rack.page.calibration();
        form.showWrench(*rack.tools.tool(wrench.key()));
        form.focusDue();
        type(text);
        QVERIFY2(!form.due()->isRefused(), "not while it is typed");
        press(Qt::Key_S, Qt::ControlModifier);
        QVERIFY(form.due()->isRefused());
        QVERIFY(form.due()->message()->sentence().contains(QStringLiteral("is no date")));
        QVERIFY(form.due()->edit()->hasFocus());
        QCOMPARE(form.due()->text(), text);
        QVERIFY2(!rack.wrench().name()->isRefused(), "it is not the new wrench that was to be saved");
        QVERIFY(rack.tools.tool(wrench.key())->torque->calibrationDue == parseDay("2020-03-31").value());
    }

    void aDateBeingTypedStaysWhateverComesIn()
    {
        OpenRack rack(Section::TorqueWrenches);
        const ToolId wrench = rack.hang("Old wrench", "2020-03-31");
        CalibrationForm &form = *rack.page.calibration();
        form.showWrench(*rack.tools.tool(wrench.key()));
        form.focusDue();
        type(QStringLiteral("2028"));
        rack.hang("Another", "");
        QCOMPARE(form.due()->text(), QStringLiteral("2028"));
        QVERIFY(!form.due()->isRefused());
        form.showWrench(*rack.tools.tool(wrench.key()));
        QCOMPARE(form.due()->text(), QStringLiteral("2028"));
    }

    void whereNothingMayBeWrittenNoDateIsKept()
    {
        Shop shop;
        const ToolId wrench = hangWrench(*shop.garage, "Wrench", "2020-03-31");
        const ReadOnlyShop only(shop);
        ToolsModel tools(*only.garage);
        ToolsPage page(*only.context, tools);
        present(page);
        page.chooseSection(Section::TorqueWrenches);
        page.calibration()->showWrench(*tools.tool(wrench.key()));
        QVERIFY(page.calibration()->isVisible() && !page.calibration()->keepKey()->isEnabled());
        page.calibration()->focusDue();
        type(QStringLiteral("2028-04-01"));
        press(Qt::Key_Return);
        QCOMPARE(page.calibration()->message()->role(), MessageLine::Role::Refusal);
    }

    void anAdapterIsTypedByKeyboard()
    {
        OpenRack rack(Section::Adapters);
        FittingForm &form = *rack.page.adapters();
        form.name()->edit()->setFocus();
        type(QStringLiteral("Crow-foot"));
        press(Qt::Key_Return);
        type(QStringLiteral("13 mm"));
        press(Qt::Key_Return);
        type(QStringLiteral("1.5 in"));
        press(Qt::Key_Return);
        const RuledRow row = rack.onlyRow(ToolGroup::Adapters);
        QCOMPARE(row.note, QStringLiteral("1.5 in from drive to fastener, for 13 mm"));
        QCOMPARE(toMillimetres(rack.tools.tool(row.id)->length->value), 38.1);
        QVERIFY(form.name()->edit()->hasFocus() && form.length()->text().isEmpty());
    }

    void badAdaptersAreRefusedAndStay_data()
    {
        QTest::addColumn<QString>("length");
        QTest::newRow("nothing") << QString();
        QTest::newRow("letters") << QStringLiteral("short");
        QTest::newRow("below nothing") << QStringLiteral("-40");
        QTest::newRow("of 3 m") << QStringLiteral("3000 mm");
        QTest::newRow("a torque") << QStringLiteral("40 N·m");
    }

    void badAdaptersAreRefusedAndStay()
    {
        QFETCH(QString, length);
        OpenRack rack(Section::Adapters);
        FittingForm &form = *rack.page.adapters();
        form.name()->edit()->setFocus();
        type(QStringLiteral("Crow-foot"));
        form.length()->edit()->setFocus();
        type(length);
        press(Qt::Key_Return);
        QVERIFY(form.length()->isRefused());
        QVERIFY(!form.length()->message()->sentence().isEmpty());
        QVERIFY(form.length()->edit()->hasFocus());
        QCOMPARE(form.length()->text(), length);
        QCOMPARE(form.name()->text(), QStringLiteral("Crow-foot"));
        QCOMPARE(rack.tools.rowsOf(ToolGroup::Adapters)->rowCount(), 0);
    }

    void socketsAndAngleGaugesHaveOnlyWhatTheyNeed()
    {
        OpenRack rack(Section::Sockets);
        QVERIFY(rack.page.sockets()->size()->isVisible() && !rack.page.sockets()->length()->isVisible());
        rack.page.sockets()->name()->edit()->setFocus();
        press(Qt::Key_Return);
        press(Qt::Key_Return);
        QVERIFY(rack.page.sockets()->name()->isRefused());
        type(QStringLiteral("Deep socket"));
        press(Qt::Key_Return);
        type(QStringLiteral("10 mm"));
        press(Qt::Key_Return);
        QCOMPARE(rack.onlyRow(ToolGroup::Sockets).note, QStringLiteral("10 mm"));
        rack.page.chooseSection(Section::AngleGauges);
        QVERIFY(!rack.page.angleGauges()->size()->isVisible());
        rack.page.angleGauges()->name()->edit()->setFocus();
        type(QStringLiteral("Protractor"));
        press(Qt::Key_Return);
        QCOMPARE(rack.onlyRow(ToolGroup::AngleGauges).title, QStringLiteral("Protractor"));
        QCOMPARE(rack.tools.gaugeRows()->rowCount(), 0);
    }
};

APP_TEST(TorqueToolsTest)

} // namespace asleft::testing::torque_tools_test

#include "torque_tools_test.moc"
