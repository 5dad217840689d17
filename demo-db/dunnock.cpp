// A motorcycle with a V-twin on one crank pin and hydraulic tappets; its first cylinder is set and bleeding down.
#include "telling.h"

namespace asleft {

namespace {

NewVehicle theMotorcycle(Telling &telling)
{
    VehicleText text;
    text.name = "Dunnock 75 motorcycle";
    text.mark = "DN 75 TWN";
    text.meter = "31 870 km";
    text.meterUnit = MeterUnit::Kilometre;
    text.engineName = "Dunnock V-twin, 750";
    text.engine.layout = Layout::Vee;
    text.engine.cylinders = 2;
    text.engine.firingOrder = "1-2";
    text.engine.gaps = "270-450";
    text.screw = {.pitch = "0.8 mm", .ratio = "1.3", .kind = AdjusterKind::Hydraulic, .bleedDown = "20 min"};
    return telling.vehicle(text);
}

void whatTheMotorcycleManualSays(Telling &telling, EngineId engine)
{
    const SpecSource page{"Dunnock 75 service book", "3-11"};
    telling.spec(engine, SpecSubject::IntakeLash, "1 ± 1/4 turn", page);
    telling.spec(engine, SpecSubject::ExhaustLash, "1 1/4 ± 1/4 turn", page);
    telling.spec(engine, SpecSubject::LockNut, "14 ± 2 N·m", {"Dunnock 75 service book", "3-12"});
}

} // namespace

void tellDunnock(Telling &telling, const Workshop &workshop)
{
    using namespace std::chrono;
    telling.at(2026y / April / 22, 17h + 5min);
    const NewVehicle motorcycle = theMotorcycle(telling);
    whatTheMotorcycleManualSays(telling, motorcycle.engine);
    const auto book = telling.valveJob(motorcycle);

    Sitter marta(telling, *book, workshop.marta, workshop.metricLeaves);
    marta.coldAt("21 °C", "6 h");
    marta.step();
    marta.step();
    marta.beginValveSet();
    for (const std::string_view point : {"I1", "E1"}) {
        marta.foundByFeel(point);
        marta.nutOpen(point);
        marta.leftAsTheSpecAsks(point);
    }
}

} // namespace asleft
