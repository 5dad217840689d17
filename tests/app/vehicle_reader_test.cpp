#include "garage_fixture.h"

#include <forms/vehicle_reader.h>

#include <set>

namespace asleft::testing::vehicle_reader_test {

using Field = VehicleField;

class VehicleReaderTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void anEmptyFieldIsToldWhatToType()
    {
        VehicleTyped typed;
        typed.texts[Field::Cylinders] = "4";
        typed.camKnown = true;
        typed.texts[Field::ExhaustAgainFrom] = "-40";
        std::set<QString> sentences;
        for (const auto &[field, error] : readVehicle(typed, DecimalMark::Point).refusals)
            sentences.insert(refusalSentence(field, error));
        QCOMPARE(sentences, (std::set<QString>{QStringLiteral("Give the vehicle a name."),
                                               QStringLiteral("Type the firing order as the maker gives it, such as 1-3-4-2."),
                                               QStringLiteral("Type degrees, or say that the cam events are not known."),
                                               QStringLiteral("Type both ends, or leave both empty.")}));
        typed.texts.erase(Field::Cylinders);
        QCOMPARE(refusalSentence(Field::Cylinders, readVehicle(typed, DecimalMark::Point).refusals.at(Field::Cylinders)),
                 QStringLiteral("Type how many cylinders the engine has."));
    }

    void whatIsStoredComesBackAsTyped()
    {
        testing::Shop shop;
        VehicleTyped typed;
        typed.texts = {{Field::Name, "Hollin"},       {Field::Cylinders, "4"},     {Field::FiringOrder, "1-3-4-2"},
                       {Field::IntakeOpens, "-4"},    {Field::IntakeCloses, "45"}, {Field::ExhaustOpens, "45"},
                       {Field::ExhaustCloses, "10.5"}};
        typed.camKnown = true;
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
