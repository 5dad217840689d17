// A tractor on the bench: the first position half set when its mechanic was called away, a lock nut open.
#include "telling.h"

namespace asleft {

namespace {

NewVehicle theTractor(Telling &telling)
{
    VehicleText text;
    text.name = "Hollin 40 tractor";
    text.mark = "H40 / 11874";
    text.number = "411874 R";
    text.meter = "3 812 h";
    text.meterUnit = MeterUnit::Hour;
    text.engineName = "Hollin four-cylinder diesel";
    text.engine.firingOrder = "1-3-4-2";
    text.screw.pitch = "1 mm";
    text.screw.ratio = "1";
    return telling.vehicle(text);
}

void whatTheManualSays(Telling &telling, EngineId engine)
{
    const SpecSource page{"Hollin 40 workshop manual", "41"};
    telling.spec(engine, SpecSubject::IntakeLash, {.band = "0.30 ± 0.05 mm", .otherBand = {}, .source = page});
    telling.spec(engine, SpecSubject::ExhaustLash, {.band = "0.40 ± 0.05 mm", .otherBand = {}, .source = page});
    telling.spec(engine, SpecSubject::LockNut, {.band = "22 ± 2 N·m", .otherBand = {}, .source = {"Hollin 40 workshop manual", "42"}});
}

} // namespace

void tellHollin(Telling &telling, const Workshop &workshop)
{
    using namespace std::chrono;
    telling.at(2026y / May / 15, 15h + 10min);
    const NewVehicle tractor = theTractor(telling);
    whatTheManualSays(telling, tractor.engine);
    const auto book = telling.valveJob(tractor);

    Sitter marta(telling, *book, workshop.marta, workshop.metricLeaves);
    marta.step();
    marta.step();
    marta.beginValveSet();
    marta.found("I1", "0.35 mm");
    marta.found("E1", "0.45 mm");
    marta.found("I2", "0.20 mm");
    marta.found("E3", "0.55 mm");
    marta.nutOpen("I1");
    marta.leftAsTheSpecAsks("I1");
    marta.left("E1", "0.40 mm");
    marta.nutOpen("I2");
}

} // namespace asleft
