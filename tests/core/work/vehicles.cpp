// Vehicles, meters, people and leaves: what is stored, what is refused, and what is told about it.
#include "support.h"

namespace asleft {
namespace {

class Vehicles : public WorkTest {
protected:
    VehicleRow onlyOne() { return need(vehicles(*garage)).at(0); }
};

TEST_F(Vehicles, AreStoredAsTyped)
{
    VehicleText text = tractorText();
    text.name = "  Tractor ";
    text.engineName = "";
    const NewVehicle added = need(addVehicle(*garage, text));
    garage.reset();
    garage = openedBy("bench");
    const VehicleRow row = onlyOne();
    EXPECT_EQ(row.vehicle, (Vehicle{added.vehicle, "Tractor", "T 1"}));
    EXPECT_EQ(row.engine.id, added.engine);
    EXPECT_EQ(row.engine.name, "") << "an engine may be without a name";
    EXPECT_EQ(row.engine.design, designEngine(text.engine).value());
    EXPECT_EQ(row.engine.points.size(), 8U);
    ASSERT_TRUE(row.engine.adjuster);
    EXPECT_EQ(row.engine.adjuster->pitch, micrometres(1000));
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
                    BadVehicle{"LongEngine", [](VehicleText &t) { t.engineName.assign(201, 'x'); }, ErrorKind::TextTooLong},
                    BadVehicle{"Meter", [](VehicleText &t) { t.meter = "much"; }, ErrorKind::MeterUnread},
                    BadVehicle{"FiringOrder", [](VehicleText &t) { t.engine.firingOrder = "1-3-4"; }, ErrorKind::FiringOrderMissing},
                    BadVehicle{"Pitch", [](VehicleText &t) { t.screw.pitch = "9 mm"; }, ErrorKind::PitchOutOfRange}),
    [](const auto &tested) { return tested.param.name; });

TEST_F(Vehicles, AreChangedInAllButTheirCylinders)
{
    const NewVehicle added = need(addVehicle(*garage, tractorText()));
    const auto points = onlyOne().engine.points;
    VehicleText text = tractorText();
    text.name = "Old tractor";
    text.mark = "";
    text.engineName = "Second diesel";
    text.engine.firingOrder = "1-2-4-3";
    text.engine.valveOrder = "E I I E E I I E";
    text.screw = {};
    need(changeVehicle(*garage, added.vehicle, added.engine, text));
    const VehicleRow row = onlyOne();
    EXPECT_EQ(row.vehicle, (Vehicle{added.vehicle, "Old tractor", ""}));
    EXPECT_EQ(row.engine.name, "Second diesel");
    EXPECT_EQ(row.engine.design, designEngine(text.engine).value());
    EXPECT_FALSE(row.engine.adjuster);
    EXPECT_EQ(row.engine.points, points);
}

TEST_F(Vehicles, MayStillBeMendedUntilTheyAreWorkedOn)
{
    const NewVehicle added = need(addVehicle(*garage, tractorText()));
    need(openJob(*garage, added.vehicle, added.engine, builtInSheets().front(), "Set the valves"));
    VehicleText six = tractorText();
    six.engine.cylinders = 6;
    six.engine.firingOrder = "1-5-3-6-2-4";
    need(changeVehicle(*garage, added.vehicle, added.engine, six));
    EXPECT_EQ(onlyOne().engine.points.size(), 12U);
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
    EXPECT_EQ(onlyOne().engine.design, designEngine(tractorText().engine).value());
}

TEST_F(Vehicles, AreNotChangedThroughAnotherVehiclesEngine)
{
    const NewVehicle first = need(addVehicle(*garage, tractorText()));
    const NewVehicle second = need(addVehicle(*garage, tractorText()));
    EXPECT_EQ(refusal(changeVehicle(*garage, first.vehicle, second.engine, tractorText())), ErrorKind::NotFound);
    EXPECT_EQ(refusal(changeVehicle(*garage, VehicleId(99), first.engine, tractorText())), ErrorKind::NotFound);
    EXPECT_EQ(refusal(changeVehicle(*garage, first.vehicle, EngineId(99), tractorText())), ErrorKind::NotFound);
}

TEST_F(Vehicles, TheMeterStandsWhereItWasLastRead)
{
    const NewVehicle added = need(addVehicle(*garage, tractorText()));
    clock->set({2'000'000});
    need(changeVehicle(*garage, added.vehicle, added.engine, tractorText()));
    EXPECT_EQ(onlyOne().meter->at, Moment{1'000'000}) << "saving the form again reads no meter";

    need(readMeter(*garage, added.vehicle, "3820", MeterUnit::Hour));
    EXPECT_EQ(onlyOne().meter->text, "3820");
    EXPECT_EQ(onlyOne().meter->at, Moment{2'000'000});

    clock->set({3'000'000});
    VehicleText text = tractorText();
    text.meter = "3825 h";
    need(changeVehicle(*garage, added.vehicle, added.engine, text));
    EXPECT_EQ(onlyOne().meter->thousandths, 3'825'000);
    EXPECT_EQ(refusal(readMeter(*garage, added.vehicle, "lots", MeterUnit::Hour)), ErrorKind::MeterUnread);
}

TEST_F(Vehicles, PeopleAreKnownByTheirInitials)
{
    const PersonId marta = need(addPerson(*garage, " M.K. ", "Marta"));
    const PersonId tom = need(addPerson(*garage, "T.B.", ""));
    EXPECT_NE(marta, tom);
    EXPECT_EQ(need(addPerson(*garage, "M.K.", "Somebody else")), marta);
    EXPECT_EQ(need(people(*garage)), (std::vector<Person>{{marta, "M.K.", "Marta"}, {tom, "T.B.", ""}}));
    EXPECT_EQ(refusal(addPerson(*garage, " ", "Nobody")), ErrorKind::NameMissing);
}

TEST_F(Vehicles, LeavesAreStoredSmallestFirst)
{
    const ToolId id = need(addFeelerSet(*garage, "Set", " 0.10 0.05 mm ", LengthUnit::Millimetre));
    EXPECT_EQ(refusal(addFeelerSet(*garage, "Set", "0.10 x", LengthUnit::Millimetre)), ErrorKind::LeavesUnread);
    EXPECT_EQ(refusal(addFeelerSet(*garage, "", "0.10", LengthUnit::Millimetre)), ErrorKind::NameMissing);
    const auto sets = need(tools(*garage));
    ASSERT_EQ(sets.size(), 1U);
    EXPECT_EQ(sets[0].id, id);
    EXPECT_EQ(sets[0].leavesText, "0.10 0.05 mm");
    EXPECT_EQ(sets[0].leaves, (std::vector{length("0.05"), length("0.10")}));
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
    need(readMeter(*garage, added.vehicle, "9", MeterUnit::Hour));
    using What = Change::What;
    EXPECT_EQ(told, (std::vector{What::Vehicles, What::People, What::Tools, What::Vehicles, What::Vehicles}));
}

} // namespace
} // namespace asleft
