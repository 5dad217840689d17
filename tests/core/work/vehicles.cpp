// Vehicles and the engines in them: what is stored, what is refused, and what is told about it.
#include "support.h"

namespace asleft {
namespace vehicles_tests {

class Vehicles : public WorkTest {
protected:
    VehicleRow onlyOne() { return need(vehicles(*garage)).at(0); }
};

TEST_F(Vehicles, AreStoredAsTyped)
{
    VehicleText text = tractorText();
    text.name = "  Tractor ";
    text.number = " H 11874 ";
    text.engineName = "";
    const NewVehicle added = need(addVehicle(*garage, text));
    garage.reset();
    garage = openedBy("bench");
    const VehicleRow row = onlyOne();
    EXPECT_EQ(row.vehicle, (Vehicle{added.vehicle, "Tractor", "T 1", "H 11874"}));
    EXPECT_EQ(row.engine->id, added.engine);
    EXPECT_EQ(row.engine->name, "") << "an engine may be without a name";
    EXPECT_EQ(row.engine->design, designEngine(text.engine).value());
    EXPECT_EQ(row.engine->points.size(), 8U);
    ASSERT_TRUE(row.engine->adjuster);
    EXPECT_EQ(row.engine->adjuster->pitch, micrometres(1000));
    ASSERT_TRUE(row.meter);
    EXPECT_EQ(row.meter->thousandths, 3'812'000);
    EXPECT_EQ(row.meter->unit, MeterUnit::Hour);
    EXPECT_EQ(row.meter->at, Moment{1'000'000});
}

struct BadVehicle {
    const char *name;
    void (*spoil)(VehicleText &);
    ErrorKind kind;
};

class BadVehicles : public WorkTest, public testing::WithParamInterface<BadVehicle> {};

TEST_P(BadVehicles, StoreNothing)
{
    VehicleText text = tractorText();
    GetParam().spoil(text);
    int told = 0;
    QObject::connect(garage.get(), &Garage::changed, [&] { ++told; });
    EXPECT_EQ(refusal(addVehicle(*garage, text)), GetParam().kind);
    EXPECT_TRUE(need(vehicles(*garage)).empty());
    EXPECT_EQ(told, 0);

    const NewVehicle good = need(addVehicle(*garage, tractorText()));
    EXPECT_EQ(refusal(changeVehicle(*garage, good.vehicle, good.engine, text)), GetParam().kind);
    const VehicleRow row = need(vehicles(*garage)).at(0);
    EXPECT_EQ(row.vehicle.name, "Tractor");
    EXPECT_EQ(row.meter->thousandths, 3'812'000);
    EXPECT_EQ(told, 1);
}

INSTANTIATE_TEST_SUITE_P(
    All, BadVehicles,
    testing::Values(BadVehicle{"NoName", [](VehicleText &t) { t.name = "  "; }, ErrorKind::NameMissing},
                    BadVehicle{"LongName", [](VehicleText &t) { t.name.assign(201, 'x'); }, ErrorKind::TextTooLong},
                    BadVehicle{"LongMark", [](VehicleText &t) { t.mark.assign(201, 'x'); }, ErrorKind::TextTooLong},
                    BadVehicle{"LongNumber", [](VehicleText &t) { t.number.assign(201, 'x'); }, ErrorKind::TextTooLong},
                    BadVehicle{"LongEngine", [](VehicleText &t) { t.engineName.assign(201, 'x'); }, ErrorKind::TextTooLong},
                    BadVehicle{"Meter", [](VehicleText &t) { t.meter = "much"; }, ErrorKind::MeterUnread},
                    BadVehicle{"FiringOrder", [](VehicleText &t) { t.engine.firingOrder = "1-3-4"; }, ErrorKind::FiringOrderMissing},
                    BadVehicle{"Pitch", [](VehicleText &t) { t.screw.pitch = "9 mm"; }, ErrorKind::PitchOutOfRange},
                    BadVehicle{"BleedDown",
                               [](VehicleText &t) {
                                   t.screw.kind = AdjusterKind::Hydraulic;
                                   t.screw.bleedDown = "long";
                               },
                               ErrorKind::BleedDownUnread}),
    [](const auto &tested) { return tested.param.name; });

TEST_F(Vehicles, AreChangedInAllButTheirCylinders)
{
    const NewVehicle added = need(addVehicle(*garage, tractorText()));
    const auto points = onlyOne().engine->points;
    VehicleText text = tractorText();
    text.name = "Old tractor";
    text.mark = "";
    text.number = "H 2";
    text.engineName = "Second diesel";
    text.engine.firingOrder = "1-2-4-3";
    text.engine.valveOrder = "E I I E E I I E";
    text.screw = {};
    need(changeVehicle(*garage, added.vehicle, added.engine, text));
    const VehicleRow row = onlyOne();
    EXPECT_EQ(row.vehicle, (Vehicle{added.vehicle, "Old tractor", "", "H 2"}));
    EXPECT_EQ(row.engine->name, "Second diesel");
    EXPECT_EQ(row.engine->design, designEngine(text.engine).value());
    EXPECT_FALSE(row.engine->adjuster);
    EXPECT_EQ(row.engine->points, points);
}

TEST_F(Vehicles, MayStillBeMendedUntilTheyAreWorkedOn)
{
    const NewVehicle added = need(addVehicle(*garage, tractorText()));
    need(openJob(*garage, added.vehicle, added.engine, builtInSheets().front(), "Set the valves"));
    VehicleText six = tractorText();
    six.engine.cylinders = 6;
    six.engine.firingOrder = "1-5-3-6-2-4";
    need(changeVehicle(*garage, added.vehicle, added.engine, six));
    EXPECT_EQ(onlyOne().engine->points.size(), 12U);
}

TEST_F(Vehicles, KeepTheirCylindersOnceWorkedOn)
{
    const NewVehicle added = need(addVehicle(*garage, tractorText()));
    const JobId job = need(openJob(*garage, added.vehicle, added.engine, builtInSheets().front(), "Set the valves"));
    const auto book = need(JobBook::open(*garage, job));
    book->setWho(need(addPerson(*garage, "MK", "")));
    need(book->confirmCrank(degrees(0)));
    VehicleText more = tractorText();
    more.engine.cylinders = 6;
    more.engine.firingOrder = "1-5-3-6-2-4";
    VehicleText renamed = tractorText();
    renamed.engine.numbering = "1 2 3 5";
    renamed.engine.firingOrder = "1-3-5-2";
    VehicleText exchanged = tractorText();
    exchanged.engine.numbering = "4 3 2 1";
    for (const VehicleText &text : {more, renamed, exchanged})
        EXPECT_EQ(refusal(changeVehicle(*garage, added.vehicle, added.engine, text)), ErrorKind::CylindersInUse);
    EXPECT_EQ(onlyOne().engine->design, designEngine(tractorText().engine).value());
}

TEST_F(Vehicles, AreNotChangedThroughAnotherVehiclesEngine)
{
    const NewVehicle first = need(addVehicle(*garage, tractorText()));
    const NewVehicle second = need(addVehicle(*garage, tractorText()));
    EXPECT_EQ(refusal(changeVehicle(*garage, first.vehicle, second.engine, tractorText())), ErrorKind::NotFound);
    EXPECT_EQ(refusal(changeVehicle(*garage, VehicleId(99), first.engine, tractorText())), ErrorKind::NotFound);
    EXPECT_EQ(refusal(changeVehicle(*garage, first.vehicle, EngineId(99), tractorText())), ErrorKind::NotFound);
}

TEST_F(Vehicles, TheirAdjustersAreKeptWhole)
{
    VehicleText text = hydraulicText();
    text.screw.bleedDown = " 1 h ";
    need(addVehicle(*garage, text));
    const Engine engine = *onlyOne().engine;
    EXPECT_EQ(engine.screw, (ScrewText{"1 mm", "1", AdjusterKind::Hydraulic, "1 h"}));
    EXPECT_EQ(engine.bleedDown, std::chrono::minutes(60));
}

TEST_F(Vehicles, MayBeGivenMoreValvesAtAnyTime)
{
    const NewVehicle added = need(addVehicle(*garage, tractorText()));
    const JobId job = need(openJob(*garage, added.vehicle, added.engine, builtInSheets().front(), "Set the valves"));
    const auto book = need(JobBook::open(*garage, job));
    book->setWho(need(addPerson(*garage, "MK", "")));
    need(book->confirmCrank(degrees(0)));
    VehicleText four = tractorText();
    four.engine.valves = "4";
    need(changeVehicle(*garage, added.vehicle, added.engine, four));
    EXPECT_EQ(onlyOne().engine->points.size(), 16U);
    EXPECT_EQ(book->state().points.size(), 16U) << "an open book hears of it";
}

TEST_F(Vehicles, EachChangeIsToldOnceAfterItIsStored)
{
    std::vector<Change::What> told;
    std::size_t seenByOther = 0;
    const auto other = openedBy("other");
    QObject::connect(garage.get(), &Garage::changed, [&](const Change &change) {
        told.push_back(change.what);
        seenByOther = need(vehicles(*other)).size() + need(people(*other)).size() + need(tools(*other)).size();
    });
    const NewVehicle added = need(addVehicle(*garage, tractorText()));
    EXPECT_EQ(seenByOther, 1U);
    need(addPerson(*garage, "M.K.", ""));
    EXPECT_EQ(seenByOther, 2U);
    need(addFeelerSet(*garage, "Set", "0.05", LengthUnit::Millimetre));
    EXPECT_EQ(seenByOther, 3U);
    need(addPerson(*garage, "M.K.", ""));
    need(changeVehicle(*garage, added.vehicle, added.engine, tractorText()));
    need(readMeter(*garage, added.vehicle, "3813", MeterUnit::Hour));
    using What = Change::What;
    EXPECT_EQ(told, (std::vector{What::Vehicles, What::People, What::Tools, What::Vehicles, What::Vehicles}));
}

} // namespace vehicles_tests
} // namespace asleft
