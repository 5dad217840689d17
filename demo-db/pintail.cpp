// A motor barrow whose engine was taken out and lies on the stand: a single with a decompressor.
#include "telling.h"

namespace asleft {

namespace {

NewVehicle theBarrow(Telling &telling)
{
    VehicleText text;
    text.name = "Pintail motor barrow";
    text.number = "PB 338";
    text.meter = "1 205 h";
    text.meterUnit = MeterUnit::Hour;
    text.engineName = "Pintail single, 420";
    text.engine.layout = Layout::Single;
    text.engine.cylinders = 1;
    text.engine.firingOrder = "1";
    text.engine.decompressors = true;
    text.screw.pitch = "0.75 mm";
    text.screw.ratio = "1";
    return telling.vehicle(text);
}

void whatTheBookSays(Telling &telling, EngineId engine)
{
    const SpecSource page{"Pintail hand book", "17"};
    telling.spec(engine, SpecSubject::IntakeLash, "0.10 ± 0.03 mm", page);
    telling.spec(engine, SpecSubject::ExhaustLash, "0.15 ± 0.03 mm", page);
    telling.spec(engine, SpecSubject::LockNut, "9 ± 1 N·m", page);
    telling.spec(engine, SpecSubject::Decompressor, "0.4-0.6 mm", {"Pintail hand book", "18"});
}

} // namespace

void tellPintail(Telling &telling, const Workshop &workshop)
{
    using namespace std::chrono;
    telling.at(2025y / December / 11, 14h + 40min);
    const NewVehicle barrow = theBarrow(telling);
    whatTheBookSays(telling, barrow.engine);
    telling.later(35);
    told(moveEngine(telling.garage(), barrow.engine, std::nullopt));

    const auto book = telling.valveJobOn(barrow.engine);
    Sitter tom(telling, *book, workshop.tom, workshop.thinLeaves);
    tom.step();
    tom.beginValveSet();
    tom.found("I1", "0.09 mm");
    tom.found("E1", "0.22 mm");
    tom.foundLoose("D1");
}

} // namespace asleft
