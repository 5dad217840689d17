#include "garage_fixture.h"

#include "pages/vehicle_reader.h"

using namespace asleft;
using Field = VehicleField;

namespace {

VehicleTyped four()
{
    VehicleTyped typed;
    typed.texts = {
        {Field::Name, QStringLiteral("Hollin")}, {Field::Cylinders, QStringLiteral("4")}, {Field::FiringOrder, QStringLiteral("1-3-4-2")}};
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
        row("ratio out of range", Field::Ratio, QStringLiteral("80"));
        row("ratio in letters", Field::Ratio, QStringLiteral("abc"));
    }

    void refusesEachSlipAtItsOwnField()
    {
        QFETCH(int, field);
        QFETCH(QString, text);
        VehicleTyped typed = four();
        typed.texts[Field(field)] = text;
        QCOMPARE(refusedIn(typed), QList<Field>{Field(field)});
    }

    void oneSlipHidesNoOther()
    {
        VehicleTyped typed = four();
        typed.texts[Field::FiringOrder] = QStringLiteral("1-3-4");
        typed.texts[Field::Gaps] = QStringLiteral("abc");
        typed.texts[Field::Pitch] = QStringLiteral("1,250");
        QCOMPARE(refusedIn(typed), (QList<Field>{Field::FiringOrder, Field::Gaps, Field::Pitch}));
    }

    void camEventsAreAskedForOnlyWhereTheyAreKnown()
    {
        VehicleTyped typed = four();
        typed.camKnown = true;
        QCOMPARE(refusedIn(typed), (QList<Field>{Field::IntakeOpens, Field::IntakeCloses, Field::ExhaustOpens, Field::ExhaustCloses}));
        typed.texts[Field::IntakeOpens] = QStringLiteral("-4");
        typed.texts[Field::IntakeCloses] = QStringLiteral("45");
        typed.texts[Field::ExhaustOpens] = QStringLiteral("45");
        typed.texts[Field::ExhaustCloses] = QStringLiteral("10.5");
        QCOMPARE(refusedIn(typed), QList<Field>());
        const CamEvents cam = readVehicle(typed, DecimalMark::Point).text.engine.cam;
        QCOMPARE(cam.intakeOpensBeforeTdc, degrees(-4));
        QCOMPARE(cam.exhaustClosesAfterTdc, millidegrees(10'500));
        QVERIFY(!cam.assumed);
        typed.texts[Field::ExhaustOpens] = QStringLiteral("700");
        QCOMPARE(refusedIn(typed), QList<Field>{Field::ExhaustCloses});
    }

    void whatIsStoredComesBackAsTyped()
    {
        testing::Shop shop;
        VehicleTyped typed = four();
        typed.camKnown = true;
        typed.texts[Field::Pitch] = QStringLiteral("1.25");
        typed.texts[Field::IntakeOpens] = QStringLiteral("-4");
        typed.texts[Field::IntakeCloses] = QStringLiteral("45");
        typed.texts[Field::ExhaustOpens] = QStringLiteral("45");
        typed.texts[Field::ExhaustCloses] = QStringLiteral("10.5");
        const auto added = addVehicle(*shop.garage, readVehicle(typed, DecimalMark::Point).text);
        QVERIFY(added);
        const auto rows = vehicles(*shop.garage);
        QVERIFY(rows && rows->size() == 1);
        const VehicleTyped back = typedOf(rows->front(), DecimalMark::Point);
        for (const Field field :
             {Field::Name, Field::Cylinders, Field::FiringOrder, Field::Pitch, Field::IntakeOpens, Field::ExhaustCloses})
            QCOMPARE(back.text(field), typed.text(field));
        QVERIFY(readVehicle(back, DecimalMark::Point).refusals.empty());
    }
};

APP_TEST(VehicleReaderTest)
#include "vehicle_reader_test.moc"
