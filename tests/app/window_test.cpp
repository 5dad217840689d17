#include "garage_fixture.h"

#include <forms/new_job_form.h>
#include <forms/rule_form.h>
#include <forms/vehicle_form.h>
#include <pages/jobs_page.h>
#include <pages/specs_page.h>
#include <pages/tools_page.h>
#include <pages/vehicles_page.h>
#include <parts/choice_keys.h>
#include <parts/heading.h>
#include <parts/ink_of.h>
#include <parts/ruled_list.h>
#include <parts/scroll_pane.h>
#include <parts/vehicles_model.h>
#include <window/window.h>

#include <words/errors.h>
#include <work/jobs.h>

#include <QAccessible>
#include <QLineEdit>
#include <QListView>
#include <QSet>

namespace asleft::testing::window_test {

namespace {

/// Everything on a page a person can put the keyboard on, that is in sight. The Bench has tests of its own.
QList<QWidget *> controlsOf(const QWidget &page)
{
    QList<QWidget *> controls;
    for (QWidget *widget : page.findChildren<QWidget *>())
        if (widget->isVisible() && widget->focusPolicy() != Qt::NoFocus && !widget->focusProxy())
            controls.append(widget);
    return controls;
}

QString nameOf(QWidget *widget)
{
    QAccessibleInterface *interface = QAccessible::queryAccessibleInterface(widget);
    return interface ? interface->text(QAccessible::Name) : QString();
}

/// The stops of Tab from where the keyboard stands until they come round.
QList<QWidget *> stops()
{
    QList<QWidget *> all;
    while (QWidget *now = QApplication::focusWidget()) {
        if (all.contains(now))
            return all;
        all.append(now);
        press(Qt::Key_Tab);
    }
    return all;
}

/// Notes every window that is shown while it lives.
class WindowsShown : public QObject {
public:
    WindowsShown() { qApp->installEventFilter(this); }
    [[nodiscard]] QStringList names() const { return m_names; }

protected:
    bool eventFilter(QObject *watched, QEvent *event) override
    {
        const auto *widget = qobject_cast<QWidget *>(watched);
        if (event->type() == QEvent::Show && widget && widget->isWindow())
            m_names.append(QString::fromLatin1(widget->metaObject()->className()));
        return false;
    }

private:
    QStringList m_names;
};

} // namespace

class WindowTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }

    void anEmptyGarageBeginsWithVehiclesAndOneWithJobsOnTheBench()
    {
        Shop shop;
        {
            Window window(*shop.context);
            window.begin();
            QCOMPARE(window.page(), Page::Vehicles);
        }
        const NewVehicle added = addFour(*shop.garage);
        QVERIFY(openJob(*shop.garage, added.vehicle, added.engine, builtInSheets().front(), "Set the valves"));
        Window window(*shop.context);
        window.begin();
        QCOMPARE(window.page(), Page::Bench);
    }

    void keysChangeThePlace()
    {
        Shop shop;
        Window window(*shop.context);
        window.goTo(Page::Vehicles);
        present(window);
        window.vehiclesPage()->form()->focusFirst();
        const QList<std::pair<Qt::Key, Page>> keys{
            {Qt::Key_2, Page::Jobs}, {Qt::Key_4, Page::Specs}, {Qt::Key_5, Page::Tools}, {Qt::Key_1, Page::Vehicles}};
        for (const auto &[key, place] : keys) {
            QTest::keyClick(&window, key, Qt::ControlModifier);
            QCOMPARE(window.page(), place);
        }
        QTest::keyClick(&window, Qt::Key_T, Qt::AltModifier);
        QCOMPARE(window.page(), Page::Tools);
        click(window.tabs()->tab(Page::Jobs));
        QCOMPARE(window.page(), Page::Jobs);
    }

    void theLookChangesEverywhere()
    {
        Shop shop;
        Window window(*shop.context);
        window.goTo(Page::Vehicles);
        present(window);
        click(window.tabs()->lookKey());
        QCOMPARE(shop.context->look(), Look::Dark);
        QCoreApplication::processEvents();
        for (QWidget *widget : window.findChildren<QWidget *>())
            QCOMPARE(&inkOf(*widget), &ink(Look::Dark));
        click(window.tabs()->lookKey());
        QCOMPARE(shop.context->look(), Look::Light);
    }

    void aVehiclesKeysLeadToItsSpecsAndANewJob()
    {
        Shop shop;
        addFour(*shop.garage);
        const NewVehicle second = addFour(*shop.garage, "Second");
        Window window(*shop.context);
        window.goTo(Page::Vehicles);
        present(window);
        window.vehiclesPage()->choose(second.vehicle.key());
        click(buttonNamed(window, QStringLiteral("Specs of this engine")));
        QCOMPARE(window.page(), Page::Specs);
        window.goTo(Page::Vehicles);
        click(buttonNamed(window, QStringLiteral("New job")));
        QCOMPARE(window.page(), Page::Jobs);
        QCOMPARE(window.jobsPage()->newJob()->vehicle(), std::optional<qint64>(second.vehicle.key()));
    }

    /// A sheet shown before it has a page flashes up as a window of its own and takes the keyboard away.
    void noPageOpensAWindowOfItsOwn_data() { places(); }
    void noPageOpensAWindowOfItsOwn()
    {
        QFETCH(int, place);
        Shop shop;
        addFour(*shop.garage);
        WindowsShown shown;
        Window window(*shop.context);
        window.goTo(Page::Tools);
        present(window);
        window.goTo(Page(place));
        QCoreApplication::processEvents();
        QCOMPARE(shown.names(), QStringList{QString::fromLatin1(window.metaObject()->className())});
        QVERIFY(window.isActiveWindow());
    }

    void everyControlHasANameAndIsLargeEnoughToTouch_data() { places(); }
    void everyControlHasANameAndIsLargeEnoughToTouch()
    {
        QFETCH(int, place);
        Shop shop;
        addFour(*shop.garage);
        Window window(*shop.context);
        window.goTo(Page::Vehicles);
        present(window);
        window.goTo(Page(place));
        QCoreApplication::processEvents();
        QSet<QString> names;
        for (QWidget *control : controlsOf(window)) {
            const QString name = nameOf(control);
            QVERIFY2(!name.isEmpty(), control->metaObject()->className());
            QVERIFY2(!names.contains(name), qPrintable(name));
            names.insert(name);
            QVERIFY2(control->height() >= touchHeight, qPrintable(name));
        }
    }

    void tabGoesRoundAllOfAPageDownwards_data() { places(); }
    void tabGoesRoundAllOfAPageDownwards()
    {
        QFETCH(int, place);
        Shop shop;
        addFour(*shop.garage);
        Window window(*shop.context);
        window.goTo(Page::Vehicles);
        present(window);
        window.goTo(Page(place));
        QCoreApplication::processEvents();
        window.tabs()->tab(Page(place))->setFocus();
        press(Qt::Key_Tab);
        QSet<QWidget *> reached;
        for (QWidget *stop : stops())
            reached.insert(stop);
        for (QWidget *control : controlsOf(window))
            if (control->isEnabled() && control->focusPolicy() & Qt::TabFocus)
                QVERIFY2(reached.contains(control), qPrintable(nameOf(control)));
    }

    void theFormOfAVehicleIsWalkedLineByLine()
    {
        Shop shop;
        Window window(*shop.context);
        window.goTo(Page::Vehicles);
        present(window);
        window.vehiclesPage()->form()->focusFirst();
        // With everything in sight that there is to type.
        for (const VehicleChoice choice : {VehicleChoice::Bridged, VehicleChoice::Injectors, VehicleChoice::CamKnown})
            click(window.vehiclesPage()->form()->choice(choice)->key(1));
        window.vehiclesPage()->form()->focusFirst();
        const QList<QWidget *> all = stops();
        int line = -1;
        int edge = -1;
        for (QWidget *stop : all) {
            if (!window.vehiclesPage()->form()->isAncestorOf(stop))
                continue;
            const QPoint corner = stop->mapTo(window.vehiclesPage()->form(), QPoint());
            QVERIFY2(corner.y() > line || (corner.y() == line && corner.x() > edge), qPrintable(nameOf(stop)));
            line = corner.y();
            edge = corner.x();
        }
        QVERIFY(line > 0);
    }

    void theSmallestWindowHoldsEveryPage()
    {
        Shop shop;
        addFour(*shop.garage);
        Window window(*shop.context);
        window.goTo(Page::Vehicles);
        present(window, {1024, 700});
        QCOMPARE(window.size(), QSize(1024, 700));
        for (const Page place : {Page::Vehicles, Page::Jobs, Page::Specs, Page::Tools}) {
            window.goTo(place);
            QCoreApplication::processEvents();
            for (const ScrollPane *sheet : window.findChildren<ScrollPane *>())
                if (sheet->isVisible())
                    QVERIFY(sheet->viewport()->width() >= sheet->widget()->width());
        }
    }

    void aGarageThatMayOnlyBeReadSaysSo()
    {
        Shop shop;
        const NewVehicle added = addFour(*shop.garage);
        QVERIFY(openJob(*shop.garage, added.vehicle, added.engine, builtInSheets().front(), "Set the valves"));
        {
            const Window usual(*shop.context);
            QVERIFY(!usual.readOnlyLine());
        }
        ReadOnlyShop reading(shop);
        QVERIFY(reading.garage->readOnly());
        Window window(*reading.context);
        present(window);
        QVERIFY(window.readOnlyLine() && window.readOnlyLine()->isVisible());
        QCOMPARE(window.readOnlyLine()->text(), readOnlySentence());
        QVERIFY(window.readOnlyLine()->mapTo(&window, QPoint()).y() < window.tabs()->mapTo(&window, QPoint()).y());
        QCOMPARE(window.windowTitle(), Window::tr("%1 (only to be read) - Asleft").arg(QStringLiteral("shop")));
        QVERIFY(window.height() <= 800);
    }

    void whatWouldWriteIsOffInAGarageThatMayOnlyBeRead()
    {
        Shop shop;
        const NewVehicle added = addFour(*shop.garage);
        QVERIFY(openJob(*shop.garage, added.vehicle, added.engine, builtInSheets().front(), "Set the valves"));
        ReadOnlyShop reading(shop);
        Window window(*reading.context);
        present(window);
        const QList<std::pair<Page, QStringList>> keys{
            {Page::Vehicles,
             {QStringLiteral("New vehicle"), QStringLiteral("New engine"), QStringLiteral("Save changes"), QStringLiteral("Read the meter"),
              QStringLiteral("Move engine"), QStringLiteral("New job")}},
            {Page::Jobs, {QStringLiteral("New job")}},
            {Page::Specs, {QStringLiteral("Save")}},
            {Page::Tools, {QStringLiteral("Save the feeler set")}}};
        for (const auto &[place, words] : keys) {
            window.goTo(place);
            for (const QString &text : words) {
                const QAbstractButton *key = buttonNamed(window, text);
                QVERIFY2(!key->isEnabled(), qPrintable(text));
                QVERIFY2(key->toolTip().contains(readOnlySentence().toHtmlEscaped()), qPrintable(text));
            }
        }
        QVERIFY(!window.toolsPage()->rule()->rule()->isEnabled());
        const QList<std::pair<ToolsPage::Section, QString>> saves{
            {ToolsPage::Section::Gauges, QStringLiteral("Save the gauge")},
            {ToolsPage::Section::TorqueWrenches, QStringLiteral("Save the torque wrench")},
            {ToolsPage::Section::AngleGauges, QStringLiteral("Save the angle gauge")},
            {ToolsPage::Section::Adapters, QStringLiteral("Save the adapter")},
            {ToolsPage::Section::Sockets, QStringLiteral("Save the socket or key")},
            {ToolsPage::Section::People, QStringLiteral("Save the person")}};
        for (const auto &[section, words] : saves) {
            window.toolsPage()->chooseSection(section);
            QVERIFY2(!buttonNamed(window, words)->isEnabled(), qPrintable(words));
        }
        // The keyboard gets no further: the sentence says why, and what is typed stays.
        window.goTo(Page::Vehicles);
        ValueField *name = window.vehiclesPage()->form()->field(VehicleField::Name);
        name->edit()->setFocus();
        press(Qt::Key_End);
        type(QStringLiteral(" II"));
        press(Qt::Key_S, Qt::ControlModifier);
        QCOMPARE(window.vehiclesPage()->message()->role(), MessageLine::Role::Refusal);
        QCOMPARE(name->text(), QStringLiteral("Hollin 40 tractor II"));
        window.goTo(Page::Jobs);
        QVERIFY2(buttonNamed(window, QStringLiteral("Bench sheet"))->isEnabled(), "paper is not the garage");
    }

    void anEngineOnTheStandIsOneKeyFromItsJob()
    {
        Shop shop;
        const NewVehicle added = addFour(*shop.garage, "Hollin 40 tractor", "Old four");
        addFour(*shop.garage, "Second");
        QVERIFY(moveEngine(*shop.garage, added.engine, std::nullopt));
        Window window(*shop.context);
        window.goTo(Page::Vehicles);
        present(window);
        const VehicleRow &row = *window.vehicles().withEngine(added.engine);
        window.vehiclesPage()->choose(idOf(row));
        click(buttonNamed(window, QStringLiteral("New job")));
        QCOMPARE(window.page(), Page::Jobs);
        QCOMPARE(window.jobsPage()->newJob()->vehicle(), std::optional(idOf(row)));
    }

private:
    static void places()
    {
        QTest::addColumn<int>("place");
        for (const Page place : {Page::Vehicles, Page::Jobs, Page::Specs, Page::Tools})
            QTest::addRow("%d", int(place)) << int(place);
    }
};

APP_TEST(WindowTest)

} // namespace asleft::testing::window_test

#include "window_test.moc"
