// A van whose valves were set in January by its manual's own table.
#include "telling.h"

namespace asleft {

namespace {

NewVehicle theVan(Telling &telling)
{
    VehicleText text;
    text.name = "Sorrel 8 van";
    text.mark = "BN 52 SRL";
    text.meter = "146,980 km";
    text.meterUnit = MeterUnit::Kilometre;
    text.engineName = "Sorrel flat four, 1.6";
    text.engine.layout = Layout::Flat;
    text.engine.firingOrder = "1-4-3-2";
    text.engine.numbering = "1 2 / 3 4";
    text.screw = {"1 mm", "1.2"};
    return telling.vehicle(text);
}

void whatTheManualSays(Telling &telling, EngineId engine)
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
        sitter.leftWithSpecLeaf(point);
    }
}

} // namespace

void tellSorrel(Telling &telling, const Workshop &workshop)
{
    using namespace std::chrono;
    telling.at(2026y / January / 16, 8h + 20min);
    const NewVehicle van = theVan(telling);
    whatTheManualSays(telling, van.engine);
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
    for (int line = 0; line < 6; ++line)
        tom.step();

    telling.at(2026y / April / 10, 16h);
    told(readMeter(telling.garage(), van.vehicle, "148,210 km", MeterUnit::Kilometre));
}

} // namespace asleft
