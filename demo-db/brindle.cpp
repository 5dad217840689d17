// A generator with a small diesel of four valves a cylinder, opened in pairs through bridges; the first bridges are seated.
#include "telling.h"

namespace asleft {

namespace {

NewVehicle theGenerator(Telling &telling)
{
    VehicleText text;
    text.name = "Brindle 20 generator";
    text.mark = "hire 7";
    text.number = "B20 5519";
    text.meter = "2 466 h";
    text.meterUnit = MeterUnit::Hour;
    text.engineName = "Brindle three-cylinder diesel";
    text.engine.cylinders = 3;
    text.engine.firingOrder = "1-2-3";
    text.engine.valves = "4";
    text.engine.bridged = true;
    text.engine.bridgeScrews = true;
    text.engine.injectors = true;
    text.screw.pitch = "1 mm";
    text.screw.ratio = "1.5";
    return telling.vehicle(text);
}

void whatTheGeneratorManualSays(Telling &telling, EngineId engine)
{
    const SpecSource lash{"Brindle engine handbook", "28"};
    const SpecSource bridges{"Brindle engine handbook", "27"};
    telling.spec(engine, SpecSubject::IntakeLash, "0.25 ± 0.05 mm", lash);
    telling.spec(engine, SpecSubject::ExhaustLash, "0.40 ± 0.05 mm", lash);
    telling.spec(engine, SpecSubject::LockNut, "25 ± 3 N·m", lash);
    telling.spec(engine, SpecSubject::BridgeScrew, "45° ± 15°", bridges);
    telling.spec(engine, SpecSubject::Injector, "0.50 ± 0.05 mm", {"Brindle engine handbook", "30"});
}

} // namespace

void tellBrindle(Telling &telling, const Workshop &workshop)
{
    using namespace std::chrono;
    telling.at(2026y / May / 6, 9h + 25min);
    const NewVehicle generator = theGenerator(telling);
    whatTheGeneratorManualSays(telling, generator.engine);
    const auto book = telling.valveJob(generator);

    Sitter tom(telling, *book, workshop.tom, workshop.metricLeaves);
    tom.coldAt("14 °C", "16 h");
    tom.step();
    tom.step();
    tom.beginValveSet();
    tom.foundByFeel("BI1");
    tom.foundByFeel("BE1");
    tom.nutOpen("BI1");
    tom.leftAsTheSpecAsks("BI1");
    tom.nutOpen("BE1");
    tom.leftAsTheSpecAsks("BE1");
    tom.found("I1", "0.35 mm");
    tom.found("E1", "0.40 mm");
}

} // namespace asleft
