// Engines that move between vehicles and the stand, on the page of vehicles.
#include "garage_fixture.h"

#include <forms/engine_gap.h>
#include <forms/move_pane.h>
#include <forms/vehicle_form.h>
#include <pages/vehicles_page.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/notes.h>
#include <parts/ruled_list.h>
#include <parts/vehicles_model.h>

namespace asleft::testing::engines_page_test {

using Field = VehicleField;

namespace {

/// A tractor with an old four in it, and a van with a new one.
struct Open {
    Open()
        : tractor(addFour(*shop.garage, "Hollin 40 tractor", "Old four")), van(addFour(*shop.garage, "Sorrel 8 van", "New four")),
          vehicles(*shop.garage), page(*shop.context, vehicles)
    {
        present(page);
    }

    [[nodiscard]] const VehicleRow &rowOf(EngineId engine) { return *vehicles.withEngine(engine); }
    [[nodiscard]] MovePane &moving()
    {
        page.beginMove();
        return *page.movePane();
    }

    Shop shop;
    NewVehicle tractor;
    NewVehicle van;
    VehiclesModel vehicles;
    VehiclesPage page;
};

} // namespace

class EnginesPageTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }

    void anEngineGoesOntoTheStandByKeyboard()
    {
        Open open;
        open.page.form()->moveKey()->setFocus();
        press(Qt::Key_Return);
        MovePane &sheet = *open.page.movePane();
        QVERIFY(sheet.isVisible());
        QVERIFY(sheet.places()->hasFocus());
        QVERIFY2(!sheet.moveKey()->isEnabled(), "nothing is chosen yet");
        press(Qt::Key_Space); // the first line: the stand
        QCOMPARE(sheet.places()->currentId(), std::optional(MovePane::onStand));
        QVERIFY(sheet.whatHappens()->sentence().contains(QStringLiteral("Old four")));
        press(Qt::Key_Return);
        press(Qt::Key_Return);
        const VehicleRow &row = open.rowOf(open.tractor.engine);
        QVERIFY(row.vehicle.stand);
        QCOMPARE(open.page.current(), std::optional(idOf(row)));
        QCOMPARE(open.page.message()->role(), MessageLine::Role::Done);
        QCOMPARE(open.page.form()->typed().about, VehicleTyped::About::Engine);
        QVERIFY(!open.page.form()->field(Field::Name)->isVisible());
        QCOMPARE(open.vehicles.rows()->rowCount(), 3);
        QVERIFY(!open.vehicles.at(open.tractor.vehicle.key())->engine);
    }

    void intoAnotherVehicleTheOneInThereGoesOntoTheStand()
    {
        Open open;
        MovePane &sheet = open.moving();
        sheet.places()->setCurrentId({});
        QTest::mouseClick(sheet.places()->viewport(), Qt::LeftButton, {},
                          sheet.places()->visualRect(sheet.places()->model()->index(1, 0)).center());
        QCOMPARE(sheet.places()->currentId(), std::optional(open.van.vehicle.key()));
        for (const char *said : {"Old four", "New four", "Sorrel 8 van", "stand"})
            QVERIFY2(sheet.whatHappens()->sentence().contains(QString::fromLatin1(said)), said);
        click(sheet.moveKey());
        QCOMPARE(open.rowOf(open.tractor.engine).vehicle.id, open.van.vehicle);
        QVERIFY(open.rowOf(open.van.engine).vehicle.stand);
        QVERIFY(!open.vehicles.at(open.tractor.vehicle.key())->engine);
        QCOMPARE(open.page.current(), std::optional<qint64>(open.van.vehicle.key()));
        QVERIFY2(!sheet.isVisible(), "the sheet of the vehicle is back");
        // Its stays are listed, the latest first.
        const QList<Notes::Note> stays = open.moving().stays()->notes();
        QCOMPARE(stays.size(), 2);
        QVERIFY(stays.front().words.contains(QStringLiteral("Sorrel 8 van")));
        QVERIFY(stays.back().words.contains(QStringLiteral("Hollin 40 tractor")));
    }

    void leavingItMovesNothing()
    {
        Open open;
        MovePane &sheet = open.moving();
        press(Qt::Key_Down);
        press(Qt::Key_Escape);
        QVERIFY(!sheet.isVisible());
        QVERIFY(open.page.form()->isVisible());
        QCOMPARE(open.rowOf(open.tractor.engine).vehicle.id, open.tractor.vehicle);
    }

    void whatIsTypedIsSavedBeforeAMove()
    {
        Open open;
        open.page.form()->field(Field::EngineName)->edit()->setFocus();
        press(Qt::Key_End);
        type(QStringLiteral(", bored out"));
        click(open.page.form()->moveKey());
        QVERIFY(!open.page.movePane()->isVisible());
        QCOMPARE(open.page.message()->role(), MessageLine::Role::Refusal);
        QCOMPARE(open.page.form()->typed().text(Field::EngineName), std::string("Old four, bored out"));
        click(buttonNamed(open.page, QStringLiteral("As stored")));
        QCOMPARE(open.page.form()->typed().text(Field::EngineName), std::string("Old four"));
        click(open.page.form()->moveKey());
        QVERIFY(open.page.movePane()->isVisible());
    }

    void aVehicleWithoutAnEngineTakesOneFromTheStand()
    {
        Open open;
        QVERIFY(moveEngine(*open.shop.garage, open.tractor.engine, std::nullopt));
        open.page.choose(open.tractor.vehicle.key());
        QVERIFY(open.page.gap()->isVisible());
        QVERIFY(!open.page.form()->field(Field::EngineName)->isVisible());
        QVERIFY(!open.page.gap()->putInKey()->isEnabled());
        open.page.gap()->stand()->setFocus();
        press(Qt::Key_Space);
        click(open.page.gap()->putInKey());
        QCOMPARE(open.rowOf(open.tractor.engine).vehicle.id, open.tractor.vehicle);
        QVERIFY(!open.page.gap()->isVisible());
        QVERIFY(open.page.form()->field(Field::EngineName)->isVisible());
        QCOMPARE(open.vehicles.rows()->rowCount(), 2);
    }

    void aVehicleWithoutAnEngineIsEditedByItself()
    {
        Open open;
        QVERIFY(moveEngine(*open.shop.garage, open.tractor.engine, std::nullopt));
        open.page.choose(open.tractor.vehicle.key());
        open.page.form()->field(Field::Mark)->edit()->setFocus();
        type(QStringLiteral("KD 7"));
        press(Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(open.page.message()->role(), MessageLine::Role::Done);
        QCOMPARE(open.vehicles.at(open.tractor.vehicle.key())->vehicle.mark, std::string("KD 7"));
    }

    void aNewEngineIsDescribedIntoAVehicle()
    {
        Open open;
        QVERIFY(moveEngine(*open.shop.garage, open.tractor.engine, std::nullopt));
        open.page.choose(open.tractor.vehicle.key());
        click(open.page.gap()->describeKey());
        QVERIFY(open.page.form()->field(Field::EngineName)->edit()->hasFocus());
        type(QStringLiteral("Twin"));
        typeInto(open, Field::Cylinders, QStringLiteral("2"));
        press(Qt::Key_S, Qt::ControlModifier);
        QVERIFY2(open.page.form()->field(Field::FiringOrder)->isRefused(), "an order is wanted here too");
        typeInto(open, Field::FiringOrder, QStringLiteral("1-2"));
        press(Qt::Key_S, Qt::ControlModifier);
        const VehicleRow &row = *open.vehicles.at(open.tractor.vehicle.key());
        QVERIFY(row.engine);
        QCOMPARE(row.engine->name, std::string("Twin"));
        QCOMPARE(open.page.form()->typed().about, VehicleTyped::About::Both);
    }

    void aNewEngineIsDescribedOntoTheStand()
    {
        Open open;
        click(buttonNamed(open.page, QStringLiteral("New engine")));
        type(QStringLiteral("Twin"));
        typeInto(open, Field::Cylinders, QStringLiteral("2"));
        typeInto(open, Field::FiringOrder, QStringLiteral("1-2"));
        open.page.choose(open.van.vehicle.key());
        open.page.beginNewEngine();
        QCOMPARE(open.page.form()->typed().text(Field::EngineName), std::string("Twin"));
        press(Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(open.page.message()->role(), MessageLine::Role::Done);
        const VehicleRow *row = open.page.current() ? open.vehicles.at(*open.page.current()) : nullptr;
        QVERIFY(row && row->vehicle.stand && row->engine->name == "Twin");
    }

    void anEngineOnTheStandIsEditedAndGetsItsJob()
    {
        Open open;
        QVERIFY(moveEngine(*open.shop.garage, open.tractor.engine, std::nullopt));
        open.page.choose(idOf(open.rowOf(open.tractor.engine)));
        typeInto(open, Field::EngineName, QStringLiteral("Old four, on its stand"));
        press(Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(open.rowOf(open.tractor.engine).engine->name, std::string("Old four, on its stand"));
        std::optional<EngineId> job;
        connect(&open.page, &VehiclesPage::newJobWanted, &open.page, [&](EngineId engine) { job = engine; });
        click(buttonNamed(open.page, QStringLiteral("New job")));
        QVERIFY(job == open.tractor.engine);
    }

    void whatIsTypedOfAnEngineGoesWithItWhenAnotherSeatMovesIt()
    {
        Open open;
        QVERIFY(moveEngine(*open.shop.garage, open.tractor.engine, std::nullopt));
        open.page.choose(idOf(open.rowOf(open.tractor.engine)));
        typeInto(open, Field::EngineName, QStringLiteral("Old four, half typed"));
        QVERIFY(moveEngine(*open.shop.garage, open.tractor.engine, open.tractor.vehicle));
        QCOMPARE(open.page.current(), std::optional<qint64>(open.tractor.vehicle.key()));
        QCOMPARE(open.page.form()->typed().text(Field::EngineName), std::string("Old four, half typed"));
        QCOMPARE(open.page.form()->typed().text(Field::Name), std::string("Hollin 40 tractor"));
        press(Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(open.rowOf(open.tractor.engine).engine->name, std::string("Old four, half typed"));
    }

    void anEngineTakenAwayMeanwhileIsNotOverwritten()
    {
        Open open;
        open.page.choose(open.tractor.vehicle.key());
        typeInto(open, Field::EngineName, QStringLiteral("Renamed too late"));
        QVERIFY(moveEngine(*open.shop.garage, open.van.engine, open.tractor.vehicle));
        press(Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(open.page.message()->role(), MessageLine::Role::Refusal);
        QCOMPARE(open.page.form()->typed().text(Field::EngineName), std::string("Renamed too late"));
        QCOMPARE(open.rowOf(open.van.engine).engine->name, std::string("New four"));
        QCOMPARE(open.rowOf(open.tractor.engine).engine->name, std::string("Old four"));
    }

private:
    static void typeInto(Open &open, Field field, const QString &text)
    {
        LineEdit *edit = open.page.form()->field(field)->edit();
        edit->setFocus();
        edit->selectAll();
        type(text);
    }
};

APP_TEST(EnginesPageTest)

} // namespace asleft::testing::engines_page_test

#include "engines_page_test.moc"
