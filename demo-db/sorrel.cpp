// A van whose valves were set by its manual's own table, and again two years and three months later.
#include "telling.h"

namespace asleft {

namespace {

NewVehicle theVan(Telling &telling)
{
    VehicleText text;
    text.name = "Sorrel 8 van";
    text.mark = "BN 52 SRL";
    text.number = "S8 2140097";
    text.meter = "121,430 km";
    text.meterUnit = MeterUnit::Kilometre;
    text.engineName = "Sorrel flat four, 1.6";
    text.engine.layout = Layout::Flat;
    text.engine.firingOrder = "1-4-3-2";
    text.engine.numbering = "1 2 / 3 4";
    text.screw.pitch = "1 mm";
    text.screw.ratio = "1.2";
    return telling.vehicle(text);
}

void whatTheVanManualSays(Telling &telling, EngineId engine)
{
    const SpecSource page{"Sorrel 8 repair guide", "1-22"};
    telling.spec(engine, SpecSubject::IntakeLash, {.band = "0.15 ± 0.03 mm", .otherBand = ".006 ± .001 in", .source = page});
    telling.spec(engine, SpecSubject::ExhaustLash, {.band = "0.20 ± 0.03 mm", .otherBand = ".008 ± .001 in", .source = page});
    telling.spec(engine, SpecSubject::LockNut, {.band = "20 ± 2 N·m", .otherBand = {}, .source = page});
    const std::vector<TableLine> table{{"1", CrankEvent::Compression, "IN 1 EX 1"},
                                       {"4", CrankEvent::Compression, "IN 4 EX 4"},
                                       {"3", CrankEvent::Compression, "IN 3 EX 3"},
                                       {"2", CrankEvent::Compression, "IN 2 EX 2"}};
    told(reviseTable(telling.garage(), engine, table, {"Sorrel 8 repair guide", "1-23"}));
}

struct Pair {
    std::string_view intake;
    std::string_view intakeFound;
    std::string_view exhaust;
    std::string_view exhaustFound;
};

void setThePair(Sitter &sitter, const Pair &pair)
{
    sitter.found(pair.intake, pair.intakeFound);
    sitter.found(pair.exhaust, pair.exhaustFound);
    for (const std::string_view point : {pair.intake, pair.exhaust}) {
        sitter.nutOpen(point);
        sitter.leftAsTheSpecAsks(point);
    }
}

struct Drifted {
    std::string_view point;
    std::string_view found;
    std::string_view left;
};

void setWithThinLeaves(Sitter &sitter, std::initializer_list<Drifted> points)
{
    for (const Drifted &point : points) {
        sitter.found(point.point, point.found);
        sitter.nutOpen(point.point);
        sitter.left(point.point, point.left);
    }
}

void finish(Sitter &sitter)
{
    for (int line = 0; line < 6; ++line)
        sitter.step();
}

} // namespace

NewVehicle tellSorrelBefore(Telling &telling, const Workshop &workshop)
{
    using namespace std::chrono;
    telling.at(2023y / October / 6, 13h + 30min);
    const NewVehicle van = theVan(telling);
    whatTheVanManualSays(telling, van.engine);
    const auto book = telling.valveJob(van);

    Sitter anouk(telling, *book, workshop.anouk, workshop.thinLeaves);
    anouk.coldAt("17 °C", "19 h");
    anouk.step();
    anouk.step();
    anouk.beginValveSet();
    setWithThinLeaves(anouk, {{"I1", "0.11 mm", "0.16 mm"}, {"E1", "0.14 mm", "0.21 mm"}});
    anouk.turnTo(1);
    setWithThinLeaves(anouk, {{"I4", "0.13 mm", "0.15 mm"}, {"E4", "0.12 mm", "0.20 mm"}});
    anouk.turnTo(2);
    setWithThinLeaves(anouk, {{"I3", "0.12 mm", "0.15 mm"}, {"E3", "0.16 mm", "0.21 mm"}});
    anouk.turnTo(3);
    setWithThinLeaves(anouk, {{"I2", "0.14 mm", "0.16 mm"}, {"E2", "0.23 mm", "0.22 mm"}});
    finish(anouk);
    return van;
}

void tellSorrel(Telling &telling, const Workshop &workshop, const NewVehicle &van)
{
    using namespace std::chrono;
    telling.at(2026y / January / 16, 8h + 20min);
    told(readMeter(telling.garage(), van.vehicle, "146,980 km", MeterUnit::Kilometre));
    const auto book = telling.valveJob(van);

    Sitter tom(telling, *book, workshop.tom, workshop.metricLeaves);
    tom.step();
    tom.step();
    tom.beginValveSet();
    setThePair(tom, {"I1", "0.15 mm", "E1", "0.20 mm"});
    tom.turnTo(1);
    setThePair(tom, {"I4", "0.15 mm", "E4", "0.15 mm"});
    tom.turnTo(2);
    setThePair(tom, {"I3", "0.10 mm", "E3", "0.20 mm"});
    tom.turnTo(3);
    setThePair(tom, {"I2", "0.15 mm", "E2", "0.25 mm"});
    finish(tom);

    telling.at(2026y / April / 10, 16h);
    told(readMeter(telling.garage(), van.vehicle, "148,210 km", MeterUnit::Kilometre));
}

} // namespace asleft
