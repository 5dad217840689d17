#include "garage_fixture.h"

#include <forms/vehicle_form.h>
#include <pages/vehicles_page.h>
#include <parts/choice_keys.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/vehicles_model.h>

#include <words/errors.h>
#include <words/vehicles.h>
#include <work/job_book.h>
#include <work/jobs.h>
#include <work/workshop.h>

#include <QClipboard>
#include <QSignalSpy>

namespace asleft::testing::vehicles_page_test {

using Field = VehicleField;

class VehiclesPageTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }

    void aNewVehicleIsTypedWhollyByKeyboard()
    {
        Shop shop;
        VehiclesModel model(*shop.garage);
        VehiclesPage page(*shop.context, model);
        present(page);
        page.beginNew();
        const QStringList typed{QStringLiteral("Hollin 40"), QStringLiteral("KD 1"), QStringLiteral("1G4AH59H45G118341"),
                                QStringLiteral("3812")};
        for (const QString &text : typed) {
            type(text);
            press(Qt::Key_Return);
        }
        press(Qt::Key_Return); // the meter counts hours
        type(QStringLiteral("H40"));
        press(Qt::Key_Return);
        press(Qt::Key_Return); // four-stroke
        press(Qt::Key_Return); // in line
        type(QStringLiteral("4"));
        press(Qt::Key_Return);
        type(QStringLiteral("1-3-4-2"));
        for (int field = 0; field < 3; ++field)
            press(Qt::Key_Return); // gaps and numbers as usual
        type(QStringLiteral("132/11"));
        for (int field = 0; field < 8; ++field)
            press(Qt::Key_Return); // clockwise; two valves, no bridges, injectors or decompressors; screws
        type(QStringLiteral("1"));
        press(Qt::Key_Return);
        press(Qt::Key_Return); // ratio
        press(Qt::Key_Return); // cam events not known: saves
        QCOMPARE(page.message()->role(), MessageLine::Role::Done);
        QCOMPARE(model.vehicles().size(), 1U);
        const VehicleRow &row = model.vehicles().front();
        QCOMPARE(row.vehicle.name, std::string("Hollin 40"));
        QCOMPARE(row.vehicle.mark, std::string("KD 1"));
        QCOMPARE(row.vehicle.number, std::string("1G4AH59H45G118341"));
        QVERIFY(row.engine);
        QCOMPARE(row.engine->name, std::string("H40"));
        QCOMPARE(row.engine->design.cylinders(), 4);
        QCOMPARE(row.engine->design.barring, std::optional(Barring{132, 11}));
        QVERIFY(row.engine->adjuster);
        QVERIFY(row.meter && row.meter->unit == MeterUnit::Hour && row.meter->thousandths == 3'812'000);
        QCOMPARE(page.current(), std::optional<qint64>(row.vehicle.id.key()));
    }

    void arrowsChooseTheLayout()
    {
        Shop shop;
        VehiclesModel model(*shop.garage);
        VehiclesPage page(*shop.context, model);
        present(page);
        page.form()->field(Field::EngineName)->edit()->setFocus();
        press(Qt::Key_Return);
        press(Qt::Key_Return);
        QCOMPARE(page.form()->typed().layout, Layout::InLine);
        for (const Layout layout : {Layout::Vee, Layout::Flat, Layout::W, Layout::Radial, Layout::Opposed}) {
            press(Qt::Key_Right);
            QCOMPARE(page.form()->typed().layout, layout);
        }
        for (int key = 0; key < 6; ++key)
            press(Qt::Key_Left);
        QCOMPARE(page.form()->typed().layout, Layout::Single);
        QVERIFY2(!page.form()->field(Field::FiringOrder)->isVisible(), "a single cylinder has no order");
    }

    void aSlipIsToldWhenTheFieldIsLeftAndGoesWhenMended()
    {
        Shop shop;
        VehiclesModel model(*shop.garage);
        VehiclesPage page(*shop.context, model);
        present(page);
        page.form()->field(Field::Cylinders)->edit()->setFocus();
        type(QStringLiteral("4"));
        ValueField *order = page.form()->field(Field::FiringOrder);
        order->edit()->setFocus();
        type(QStringLiteral("1-3-4"));
        QVERIFY2(!order->isRefused(), "not while it is typed");
        press(Qt::Key_Tab);
        QVERIFY(order->isRefused());
        QVERIFY(!order->message()->sentence().isEmpty());
        QCOMPARE(order->edit()->accessibleDescription(), order->message()->sentence());
        order->edit()->setFocus();
        press(Qt::Key_End);
        type(QStringLiteral("-2"));
        QVERIFY(!order->isRefused());
    }

    void aRefusedFormKeepsWhatWasTyped_data()
    {
        QTest::addColumn<int>("field");
        QTest::addColumn<QString>("text");
        const QString page = QString(1 << 20, QLatin1Char('7'));
        QTest::newRow("order short") << int(Field::FiringOrder) << QStringLiteral("1-3-4");
        QTest::newRow("order twice") << int(Field::FiringOrder) << QStringLiteral("1-3-3-2");
        QTest::newRow("order of a megabyte") << int(Field::FiringOrder) << page;
        QTest::newRow("gaps of 710") << int(Field::Gaps) << QStringLiteral("180-180-180-170");
        QTest::newRow("pitch 1,250") << int(Field::Pitch) << QStringLiteral("1,250");
        QTest::newRow("pitch abc") << int(Field::Pitch) << QStringLiteral("abc");
        QTest::newRow("pitch -3") << int(Field::Pitch) << QStringLiteral("-3");
        QTest::newRow("pitch 1e9 mm") << int(Field::Pitch) << QStringLiteral("1e9 mm");
        QTest::newRow("pitch of a megabyte") << int(Field::Pitch) << page;
        QTest::newRow("name of a megabyte") << int(Field::Name) << page;
        QTest::newRow("meter abc") << int(Field::Meter) << QStringLiteral("abc");
        QTest::newRow("valves a cylinder") << int(Field::Valves) << QStringLiteral("9");
        QTest::newRow("teeth") << int(Field::Barring) << QStringLiteral("132 and some");
        QTest::newRow("teeth of a megabyte") << int(Field::Barring) << page;
        QTest::newRow("vehicle number of a megabyte") << int(Field::Number) << page;
    }

    void aRefusedFormKeepsWhatWasTyped()
    {
        QFETCH(int, field);
        QFETCH(QString, text);
        Shop shop;
        VehiclesModel model(*shop.garage);
        VehiclesPage page(*shop.context, model);
        present(page);
        VehicleTyped typed;
        typed.texts = {{Field::Name, "H"}, {Field::Cylinders, "4"}, {Field::FiringOrder, "1-3-4-2"}};
        page.form()->setTyped(typed);
        LineEdit *edit = page.form()->field(Field(field))->edit();
        edit->setFocus();
        edit->selectAll();
        QApplication::clipboard()->setText(text);
        press(Qt::Key_V, Qt::ControlModifier);
        press(Qt::Key_S, Qt::ControlModifier);
        QVERIFY(page.form()->field(Field(field))->isRefused());
        QVERIFY(!page.form()->field(Field(field))->message()->sentence().isEmpty());
        QCOMPARE(edit->text(), text.left(longestPaste));
        QVERIFY2(edit->hasFocus(), "the keyboard goes where the slip is");
        QCOMPARE(page.message()->role(), MessageLine::Role::Refusal);
        QVERIFY(model.vehicles().empty());
        const int refused = int(std::ranges::count_if(page.form()->findChildren<ValueField *>(), &ValueField::isRefused));
        QCOMPARE(refused, 1);
        QVERIFY2(page.minimumSizeHint().width() <= 1024, "no sentence pushes the sheet apart");
    }

    void aStoredVehicleIsChangedAndItsMeterRead()
    {
        Shop shop;
        addFour(*shop.garage);
        VehiclesModel model(*shop.garage);
        VehiclesPage page(*shop.context, model);
        present(page);
        ValueField *name = page.form()->field(Field::Name);
        QCOMPARE(name->text(), QStringLiteral("Hollin 40 tractor"));
        name->edit()->setFocus();
        press(Qt::Key_End);
        type(QStringLiteral(" II"));
        press(Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(model.vehicles().front().vehicle.name, std::string("Hollin 40 tractor II"));
        page.form()->field(Field::Meter)->edit()->setFocus();
        type(QStringLiteral("3 900"));
        click(buttonNamed(page, QStringLiteral("Read the meter")));
        QVERIFY(model.vehicles().front().meter);
        QCOMPARE(model.vehicles().front().meter->thousandths, 3'900'000);
        QVERIFY(page.form()->field(Field::Meter)->text().isEmpty());
    }

    void cylindersStayOnceWorkedOn()
    {
        Shop shop;
        const NewVehicle four = addFour(*shop.garage);
        const auto book = JobBook::open(*shop.garage, *openJob(*shop.garage, four.vehicle, four.engine, builtInSheets().front(), "Valves"));
        (*book)->setWho(*addPerson(*shop.garage, "MK", {}));
        QVERIFY((*book)->confirmCrank(degrees(0)));
        VehiclesModel model(*shop.garage);
        VehiclesPage page(*shop.context, model);
        present(page);
        VehicleTyped typed = page.form()->typed();
        typed.texts[Field::Cylinders] = "3";
        typed.texts[Field::FiringOrder] = "1-2-3";
        typed.texts.erase(Field::Numbering);
        page.form()->setTyped(typed);
        page.form()->focusFirst();
        press(Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(page.message()->role(), MessageLine::Role::Refusal);
        QCOMPARE(model.vehicles().front().engine->design.cylinders(), 4);
        QCOMPARE(page.form()->typed().text(Field::Cylinders), std::string("3"));
    }

    void aNumberIsNeverInTheWay()
    {
        Shop shop;
        addFour(*shop.garage);
        VehiclesModel model(*shop.garage);
        VehiclesPage page(*shop.context, model);
        present(page);
        ValueField *number = page.form()->field(Field::Number);
        number->edit()->setFocus();
        type(QStringLiteral("1G4AH59H"));
        QVERIFY2(number->message()->sentence().isEmpty(), "not while it is typed");
        type(QStringLiteral("45G118341"));
        // The sample calculation of 49 CFR 565.15: its check digit is 4.
        QCOMPARE(number->message()->sentence(), vehicleNumberText({NumberCheck::Agrees, '4'}));
        press(Qt::Key_Backspace);
        type(QStringLiteral("2"));
        const QString differs = number->message()->sentence();
        QVERIFY(!differs.isEmpty());
        QCOMPARE(number->message()->role(), MessageLine::Role::Quiet);
        press(Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(page.message()->role(), MessageLine::Role::Done);
        QCOMPARE(model.vehicles().front().vehicle.number, std::string("1G4AH59H45G118342"));
        QCOMPARE(number->message()->sentence(), differs);
        number->edit()->selectAll();
        type(QStringLiteral("H40 / 7"));
        press(Qt::Key_Tab);
        QVERIFY2(!number->message()->sentence().isEmpty() && !number->isRefused(), "an old number has no check digit");
    }

    void aMeterThatRunsBackMayBeAnotherOne()
    {
        Shop shop;
        const NewVehicle four = addFour(*shop.garage);
        QVERIFY(readMeter(*shop.garage, four.vehicle, "3812", MeterUnit::Hour));
        VehiclesModel model(*shop.garage);
        VehiclesPage page(*shop.context, model);
        present(page);
        ValueField *meter = page.form()->field(Field::Meter);
        ChoiceKeys *which = page.form()->choice(VehicleChoice::MeterReplaced);
        QVERIFY(!which->isVisible());
        meter->edit()->setFocus();
        type(QStringLiteral("12"));
        QVERIFY2(!which->isVisible(), "it may become 12 000 yet");
        press(Qt::Key_Return);
        QVERIFY(meter->isRefused());
        QVERIFY(which->isVisible());
        press(Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(page.message()->role(), MessageLine::Role::Refusal);
        QCOMPARE(meter->text(), QStringLiteral("12"));
        press(Qt::Key_Return);
        press(Qt::Key_Return); // the meter counts hours
        QVERIFY(which->isAncestorOf(QApplication::focusWidget()));
        press(Qt::Key_Right);
        QVERIFY(!meter->isRefused());
        press(Qt::Key_Left);
        QVERIFY2(meter->isRefused() && which->isVisible(), "and back again");
        press(Qt::Key_Right);
        click(page.form()->readMeterKey());
        QVERIFY2(meter->edit()->hasFocus(), "not on the key that moves the engine");
        QVERIFY(model.vehicles().front().meter);
        QCOMPARE(model.vehicles().front().meter->thousandths, 12'000);
        QVERIFY(model.vehicles().front().meter->replaced);
        QVERIFY(!which->isVisible());
        // Nothing was run between the last reading of the one and the first of the other.
        QVERIFY(readMeter(*shop.garage, four.vehicle, "20", MeterUnit::Hour));
        const auto readings = meterReadings(*shop.garage, four.vehicle);
        QVERIFY(readings);
        const QString total = meterTotalText(*readings);
        QVERIFY(!total.isEmpty());
        QVERIFY(meter->message()->sentence().contains(total));
    }

    void whatDoesNotApplyIsNotShown()
    {
        Shop shop;
        VehiclesModel model(*shop.garage);
        VehiclesPage page(*shop.context, model);
        present(page);
        VehicleForm *form = page.form();
        const auto shown = [form](Field field) { return form->field(field)->isVisible(); };
        QVERIFY(shown(Field::Pitch) && shown(Field::Ratio) && !shown(Field::BleedDown) && !shown(Field::IntakeOpens));
        click(form->choice(VehicleChoice::Adjusters)->key(1));
        QVERIFY(!shown(Field::Pitch) && !shown(Field::Ratio) && shown(Field::BleedDown));
        click(form->choice(VehicleChoice::CamKnown)->key(1));
        QVERIFY(shown(Field::IntakeOpens) && shown(Field::ExhaustOpens) && shown(Field::ExhaustAgainFrom) && !shown(Field::InjectorFrom));
        click(form->choice(VehicleChoice::Injectors)->key(1));
        QVERIFY(shown(Field::InjectorFrom) && shown(Field::InjectorTo));
        click(form->choice(VehicleChoice::Cycle)->key(1));
        QVERIFY(!shown(Field::IntakeOpens) && !shown(Field::IntakeCloses) && shown(Field::ExhaustCloses));
        QVERIFY(!form->choice(VehicleChoice::BridgeScrews)->isVisible());
        click(form->choice(VehicleChoice::Bridged)->key(1));
        QVERIFY(form->choice(VehicleChoice::BridgeScrews)->isVisible());
    }

    void enterOnTheLastFieldOfTheCamSaves()
    {
        Shop shop;
        VehiclesModel model(*shop.garage);
        VehiclesPage page(*shop.context, model);
        present(page);
        VehicleTyped typed;
        typed.camKnown = true;
        typed.injectors = true;
        typed.texts = {{Field::Name, "H"},          {Field::Cylinders, "4"},     {Field::FiringOrder, "1-3-4-2"},
                       {Field::IntakeOpens, "10"},  {Field::IntakeCloses, "40"}, {Field::ExhaustOpens, "40"},
                       {Field::ExhaustCloses, "10"}};
        page.form()->setTyped(typed);
        page.form()->choice(VehicleChoice::CamKnown)->takeFocus();
        for (const Field field : {Field::IntakeOpens, Field::IntakeCloses, Field::ExhaustOpens, Field::ExhaustCloses, Field::CheckLift,
                                  Field::Ramp, Field::ExhaustAgainFrom, Field::ExhaustAgainTo, Field::InjectorFrom, Field::InjectorTo}) {
            press(Qt::Key_Return);
            QVERIFY(page.form()->field(field)->edit()->hasFocus());
        }
        QVERIFY(model.vehicles().empty());
        press(Qt::Key_Return);
        QCOMPARE(model.vehicles().size(), 1U);
    }

    void whatIsHalfTypedWaits()
    {
        Shop shop;
        const NewVehicle stored = addFour(*shop.garage);
        VehiclesModel model(*shop.garage);
        VehiclesPage page(*shop.context, model);
        present(page);
        page.beginNew();
        type(QStringLiteral("Half"));
        page.choose(stored.vehicle.key());
        QCOMPARE(page.form()->typed().text(Field::Name), std::string("Hollin 40 tractor"));
        addFour(*shop.garage, "Another seat's");
        page.beginNew();
        QCOMPARE(page.form()->typed().text(Field::Name), std::string("Half"));
        addFour(*shop.garage, "One more");
        QCOMPARE(page.form()->typed().text(Field::Name), std::string("Half"));
    }

    void theNextPagesAreOneKeyAway()
    {
        Shop shop;
        const NewVehicle stored = addFour(*shop.garage);
        VehiclesModel model(*shop.garage);
        VehiclesPage page(*shop.context, model);
        present(page);
        std::optional<EngineId> specs;
        std::optional<EngineId> job;
        connect(&page, &VehiclesPage::specsWanted, &page, [&](EngineId engine) { specs = engine; });
        connect(&page, &VehiclesPage::newJobWanted, &page, [&](EngineId engine) { job = engine; });
        click(buttonNamed(page, QStringLiteral("Specs of this engine")));
        click(buttonNamed(page, QStringLiteral("New job")));
        QVERIFY(specs == stored.engine);
        QVERIFY(job == stored.engine);
    }
};

APP_TEST(VehiclesPageTest)

} // namespace asleft::testing::vehicles_page_test

#include "vehicles_page_test.moc"
