#include "garage_fixture.h"

#include <forms/vehicle_reader.h>

namespace asleft::testing::vehicle_reader_test {

using Field = VehicleField;

namespace {

VehicleTyped four()
{
    VehicleTyped typed;
    typed.texts = {{Field::Name, "Hollin"}, {Field::Cylinders, "4"}, {Field::FiringOrder, "1-3-4-2"}};
    return typed;
}

VehicleTyped withCam()
{
    VehicleTyped typed = four();
    typed.camKnown = true;
    typed.texts[Field::IntakeOpens] = "-4";
    typed.texts[Field::IntakeCloses] = "45";
    typed.texts[Field::ExhaustOpens] = "45";
    typed.texts[Field::ExhaustCloses] = "10.5";
    return typed;
}

QList<Field> refusedIn(const VehicleTyped &typed)
{
    QList<Field> fields;
    for (const auto &[field, error] : readVehicle(typed, DecimalMark::Point).refusals) {
        fields.append(field);
        if (refusalSentence(field, error).isEmpty())
            qFatal("a refusal without a sentence");
    }
    return fields;
}

} // namespace

class VehicleReaderTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void takesAPlainFour() { QCOMPARE(refusedIn(four()), QList<Field>()); }

    void refusesEachSlipAtItsOwnField_data()
    {
        QTest::addColumn<int>("field");
        QTest::addColumn<QString>("text");
        const auto row = [](const char *name, Field field, const QString &text) { QTest::newRow(name) << int(field) << text; };
        row("no name", Field::Name, QStringLiteral("  "));
        row("a page as name", Field::Name, QString(1000, QLatin1Char('x')));
        row("a page as plate", Field::Mark, QString(1000, QLatin1Char('x')));
        row("meter in letters", Field::Meter, QStringLiteral("abc"));
        row("meter below zero", Field::Meter, QStringLiteral("-3"));
        row("no cylinders", Field::Cylinders, QString());
        row("cylinders in letters", Field::Cylinders, QStringLiteral("four"));
        row("half a cylinder", Field::Cylinders, QStringLiteral("4.5"));
        row("too many cylinders", Field::Cylinders, QStringLiteral("400"));
        row("no order", Field::FiringOrder, QString());
        row("a cylinder missing", Field::FiringOrder, QStringLiteral("1-3-4"));
        row("a cylinder twice", Field::FiringOrder, QStringLiteral("1-3-3-2"));
        row("a cylinder it has not", Field::FiringOrder, QStringLiteral("1-3-4-9"));
        row("a page as order", Field::FiringOrder, QString(2000, QLatin1Char('1')));
        row("gaps of 710", Field::Gaps, QStringLiteral("180-180-180-170"));
        row("gaps below zero", Field::Gaps, QStringLiteral("-180"));
        row("gaps in letters", Field::Gaps, QStringLiteral("abc"));
        row("too few labels", Field::Numbering, QStringLiteral("1 2 3"));
        row("a label twice", Field::Numbering, QStringLiteral("1 2 3 3"));
        row("two banks in line", Field::Numbering, QStringLiteral("1 2 / 3 4"));
        row("too few valves", Field::ValveOrder, QStringLiteral("E I I E"));
        row("valves in letters", Field::ValveOrder, QStringLiteral("E I I E E I I X"));
        row("ambiguous pitch", Field::Pitch, QStringLiteral("1,250"));
        row("pitch in letters", Field::Pitch, QStringLiteral("abc"));
        row("pitch below zero", Field::Pitch, QStringLiteral("-3"));
        row("endless pitch", Field::Pitch, QStringLiteral("1e9 mm"));
        row("a page as number", Field::Number, QString(1000, QLatin1Char('x')));
        row("six valves a cylinder", Field::Valves, QStringLiteral("6"));
        row("valves in letters a cylinder", Field::Valves, QStringLiteral("abc"));
        row("an exhaust valve missing", Field::Valves, QStringLiteral("2+0"));
        row("teeth in letters", Field::Barring, QStringLiteral("abc"));
        row("no pinion", Field::Barring, QStringLiteral("132"));
        row("pinion without teeth", Field::Barring, QStringLiteral("132/0"));
        row("ratio out of range", Field::Ratio, QStringLiteral("80"));
        row("ratio in letters", Field::Ratio, QStringLiteral("abc"));
    }

    void refusesEachSlipAtItsOwnField()
    {
        QFETCH(int, field);
        QFETCH(QString, text);
        VehicleTyped typed = four();
        typed.texts[Field(field)] = text.toStdString();
        QCOMPARE(refusedIn(typed), QList<Field>{Field(field)});
    }

    void aBridgeNeedsAPair()
    {
        VehicleTyped typed = four();
        typed.texts[Field::Valves] = "1+1";
        typed.bridged = true;
        QCOMPARE(refusedIn(typed), QList<Field>{Field::Valves});
        typed.texts[Field::Valves] = "4";
        typed.bridgeScrews = true;
        typed.injectors = true;
        typed.decompressors = true;
        QCOMPARE(refusedIn(typed), QList<Field>());
        const VehicleReading read = readVehicle(typed, DecimalMark::Point);
        const auto design = designEngine(read.text.engine);
        QVERIFY(design);
        // A four-valve head with bridges has two lashes and two bridge screws a cylinder, one decompressor and one injector.
        QCOMPARE(design->adjusters().size(), std::size_t(4 * (2 + 2 + 1 + 1)));
    }

    void everyLayoutIsTakenWithItsUsualNumbering_data()
    {
        QTest::addColumn<int>("layout");
        QTest::addColumn<int>("cylinders");
        const auto row = [](const char *name, Layout layout, int cylinders) { QTest::newRow(name) << int(layout) << cylinders; };
        row("in line", Layout::InLine, 5);
        row("V", Layout::Vee, 12);
        row("flat", Layout::Flat, 6);
        row("W", Layout::W, 12);
        row("radial", Layout::Radial, 9);
        row("opposed", Layout::Opposed, 8);
    }

    void everyLayoutIsTakenWithItsUsualNumbering()
    {
        QFETCH(int, layout);
        QFETCH(int, cylinders);
        VehicleTyped typed = four();
        typed.layout = Layout(layout);
        QStringList labels;
        for (int label = 1; label <= cylinders; ++label)
            labels.append(QString::number(label));
        typed.texts[Field::Cylinders] = std::to_string(cylinders);
        typed.texts[Field::FiringOrder] = labels.join(QLatin1Char('-')).toStdString();
        QCOMPARE(refusedIn(typed), QList<Field>());
        typed.texts[Field::Cylinders] = "25";
        QCOMPARE(refusedIn(typed), QList<Field>{Field::Cylinders});
    }

    void aSingleHasNeitherOrderNorNumbers()
    {
        VehicleTyped typed = four();
        typed.layout = Layout::Single;
        typed.texts[Field::FiringOrder] = "left from before";
        QVERIFY(!isAskedFor(Field::FiringOrder, typed));
        QCOMPARE(refusedIn(typed), QList<Field>());
        const auto design = designEngine(readVehicle(typed, DecimalMark::Point).text.engine);
        QVERIFY(design);
        QCOMPARE(design->cylinders(), 1);
    }

    void aTwoStrokeHasNoIntakeEvents()
    {
        VehicleTyped typed = four();
        typed.cycle = Cycle::TwoStroke;
        QCOMPARE(refusedIn(typed), QList<Field>());
        QCOMPARE(readVehicle(typed, DecimalMark::Point).text.engine.cam, twoStrokeCam());
        typed.camKnown = true;
        QVERIFY(!isAskedFor(Field::IntakeOpens, typed));
        QCOMPARE(refusedIn(typed), (QList<Field>{Field::ExhaustOpens, Field::ExhaustCloses}));
    }

    void hydraulicTappetsHaveAWaitAndNoPitch()
    {
        VehicleTyped typed = four();
        typed.texts[Field::Pitch] = "abc";
        typed.texts[Field::BleedDown] = "15 min";
        typed.adjusters = AdjusterKind::Hydraulic;
        QVERIFY(!isAskedFor(Field::Pitch, typed));
        QCOMPARE(refusedIn(typed), QList<Field>());
        QCOMPARE(readVehicle(typed, DecimalMark::Point).text.screw.bleedDown, std::string("15 min"));
        for (const char *bad : {"abc", "-3", "3 days", "1e9"}) {
            typed.texts[Field::BleedDown] = bad;
            QCOMPARE(refusedIn(typed), QList<Field>{Field::BleedDown});
        }
    }

    void anArcWantsBothEnds()
    {
        VehicleTyped typed = withCam();
        typed.injectors = true;
        typed.texts[Field::ExhaustAgainFrom] = "-40";
        typed.texts[Field::InjectorTo] = "abc";
        QCOMPARE(refusedIn(typed), (QList<Field>{Field::ExhaustAgainTo, Field::InjectorFrom, Field::InjectorTo}));
        typed.texts[Field::ExhaustAgainTo] = "60";
        typed.texts[Field::InjectorFrom] = "-70";
        typed.texts[Field::InjectorTo] = "70";
        QCOMPARE(refusedIn(typed), QList<Field>());
        const CamEvents cam = readVehicle(typed, DecimalMark::Point).text.engine.cam;
        QCOMPARE(cam.exhaustAgain, std::optional(CrankArc{degrees(-40), degrees(60)}));
        QCOMPARE(cam.injector, std::optional(CrankArc{degrees(-70), degrees(70)}));
        typed.texts[Field::InjectorTo] = "800";
        QCOMPARE(refusedIn(typed), QList<Field>{Field::InjectorTo});
        typed.injectors = false;
        QCOMPARE(refusedIn(typed), QList<Field>());
    }

    void aMeterRunsBackOnlyOnTheSameMeter()
    {
        const MeterReading last{MeterReadingId(1), VehicleId(1), MeterUnit::Hour, 3'812'000, "3 812 h", {}};
        VehicleTyped typed = four();
        const auto refusalOf = [&](const char *text, MeterUnit unit, bool replaced) -> std::optional<ErrorKind> {
            typed.texts[Field::Meter] = text;
            typed.meterUnit = unit;
            typed.meterReplaced = replaced;
            const auto refusals = readVehicle(typed, DecimalMark::Point, last).refusals;
            return refusals.empty() ? std::nullopt : std::optional(refusals.at(Field::Meter).kind);
        };
        QCOMPARE(refusalOf("3811", MeterUnit::Hour, false), std::optional(ErrorKind::MeterRunsBack));
        QCOMPARE(refusalOf("3812", MeterUnit::Hour, false), std::optional<ErrorKind>());
        QCOMPARE(refusalOf("12", MeterUnit::Hour, true), std::optional<ErrorKind>());
        QCOMPARE(refusalOf("12", MeterUnit::Kilometre, false), std::optional<ErrorKind>());
        QCOMPARE(refusalOf("abc", MeterUnit::Hour, true), std::optional(ErrorKind::MeterUnread));
    }

    void anEngineAloneIsAskedForNoName()
    {
        VehicleTyped typed = four();
        typed.texts.erase(Field::Name);
        typed.about = VehicleTyped::About::Engine;
        QCOMPARE(refusedIn(typed), QList<Field>());
        typed.about = VehicleTyped::About::Vehicle;
        typed.texts[Field::FiringOrder] = "1-1";
        QCOMPARE(refusedIn(typed), QList<Field>{Field::Name});
    }

    void oneSlipHidesNoOther()
    {
        VehicleTyped typed = four();
        typed.texts[Field::FiringOrder] = "1-3-4";
        typed.texts[Field::Gaps] = "abc";
        typed.texts[Field::Pitch] = "1,250";
        QCOMPARE(refusedIn(typed), (QList<Field>{Field::FiringOrder, Field::Gaps, Field::Pitch}));
    }

    void camEventsAreAskedForOnlyWhereTheyAreKnown()
    {
        VehicleTyped typed = four();
        typed.camKnown = true;
        QCOMPARE(refusedIn(typed), (QList<Field>{Field::IntakeOpens, Field::IntakeCloses, Field::ExhaustOpens, Field::ExhaustCloses}));
        typed.texts[Field::IntakeOpens] = "-4";
        typed.texts[Field::IntakeCloses] = "45";
        typed.texts[Field::ExhaustOpens] = "45";
        typed.texts[Field::ExhaustCloses] = "10.5";
        QCOMPARE(refusedIn(typed), QList<Field>());
        const CamEvents cam = readVehicle(typed, DecimalMark::Point).text.engine.cam;
        QCOMPARE(cam.intakeOpensBeforeTdc, degrees(-4));
        QCOMPARE(cam.exhaustClosesAfterTdc, millidegrees(10'500));
        QVERIFY(!cam.assumed);
        typed.texts[Field::ExhaustOpens] = "700";
        QCOMPARE(refusedIn(typed), QList<Field>{Field::ExhaustCloses});
    }

    void whatIsStoredComesBackAsTyped()
    {
        testing::Shop shop;
        VehicleTyped typed = withCam();
        typed.bridged = true;
        typed.bridgeScrews = true;
        typed.decompressors = true;
        typed.injectors = true;
        typed.texts[Field::Number] = "1G4AH59H45G118341";
        typed.texts[Field::Valves] = "4";
        typed.texts[Field::Barring] = "132/11";
        typed.texts[Field::Pitch] = "1.25";
        typed.texts[Field::ExhaustAgainFrom] = "-40";
        typed.texts[Field::ExhaustAgainTo] = "60";
        typed.texts[Field::InjectorFrom] = "-65.5";
        typed.texts[Field::InjectorTo] = "70";
        const auto added = addVehicle(*shop.garage, readVehicle(typed, DecimalMark::Point).text);
        QVERIFY(added);
        const auto rows = vehicles(*shop.garage);
        QVERIFY(rows && rows->size() == 1);
        const VehicleTyped back = typedOf(rows->front(), DecimalMark::Point);
        for (const Field field :
             {Field::Name, Field::Number, Field::Cylinders, Field::FiringOrder, Field::Barring, Field::Pitch, Field::IntakeOpens,
              Field::ExhaustCloses, Field::ExhaustAgainFrom, Field::ExhaustAgainTo, Field::InjectorFrom, Field::InjectorTo})
            QCOMPARE(back.text(field), typed.text(field));
        QVERIFY(back.bridged && back.bridgeScrews && back.decompressors && back.injectors);
        QCOMPARE(rows->front().engine->design.train.lashes(Side::Intake), 1);
        QVERIFY(readVehicle(back, DecimalMark::Point).refusals.empty());
    }
};

APP_TEST(VehicleReaderTest)

} // namespace asleft::testing::vehicle_reader_test

#include "vehicle_reader_test.moc"
