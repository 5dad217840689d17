// A wheel loader whose hours meter was replaced; one position of two is set, measured with a dial gauge.
#include "telling.h"

namespace asleft {

namespace {

NewVehicle theLoader(Telling &telling)
{
    VehicleText text;
    text.name = "Corrow 90 wheel loader";
    text.mark = "C90 no. 23";
    text.number = "C90-00623";
    text.meter = "8 946 h";
    text.meterUnit = MeterUnit::Hour;
    text.engineName = "Corrow six-cylinder diesel";
    text.engine.cylinders = 6;
    text.engine.firingOrder = "1-5-3-6-2-4";
    text.engine.valveOrder = "I E I E I E I E I E I E";
    text.engine.barring = "138/12";
    text.screw.pitch = "1.25 mm";
    text.screw.ratio = "1.4";
    return telling.vehicle(text);
}

void whatTheLoaderManualSays(Telling &telling, EngineId engine)
{
    const SpecSource page{"Corrow 90 engine manual", "12-8"};
    telling.spec(engine, SpecSubject::IntakeLash, {.band = "0.30 ± 0.05 mm", .otherBand = ".012 ± .002 in", .source = page});
    telling.spec(engine, SpecSubject::ExhaustLash, {.band = "0.50 ± 0.05 mm", .otherBand = ".020 ± .002 in", .source = page});
    telling.spec(engine, SpecSubject::LockNut, "34 ± 4 N·m", {"Corrow 90 engine manual", "12-9"});
}

void setFirstPosition(Sitter &sitter)
{
    sitter.found("I1", "0.33 mm");
    sitter.found("E1", "0.47 mm");
    sitter.found("I2", "0.36 mm");
    sitter.found("E3", "0.58 mm");
    sitter.found("I4", "0.31 mm");
    sitter.found("E5", "0.41 mm");
    struct Left {
        std::string_view point;
        std::string_view value;
    };
    for (const Left &left : {Left{"I1", "0.30 mm"}, Left{"E1", "0.51 mm"}, Left{"I2", "0.29 mm"}, Left{"E3", "0.50 mm"},
                             Left{"I4", "0.31 mm"}, Left{"E5", "0.49 mm"}}) {
        sitter.nutOpen(left.point);
        sitter.left(left.point, left.value);
    }
}

} // namespace

void tellCorrow(Telling &telling, const Workshop &workshop)
{
    using namespace std::chrono;
    telling.at(2025y / September / 22, 10h);
    const NewVehicle loader = theLoader(telling);
    whatTheLoaderManualSays(telling, loader.engine);
    telling.at(2025y / October / 13, 8h + 15min);
    told(readMeter(telling.garage(), loader.vehicle, "8 990 h", MeterUnit::Hour));
    told(readMeter(telling.garage(), loader.vehicle, "3 h", MeterUnit::Hour, true));
    telling.at(2025y / November / 27, 7h + 50min);
    told(readMeter(telling.garage(), loader.vehicle, "214 h", MeterUnit::Hour));
    const auto book = telling.valveJob(loader);

    Sitter anouk(telling, *book, workshop.anouk, workshop.dialGauge);
    anouk.coldAt("9 °C", "15 h");
    anouk.step();
    anouk.step();
    anouk.beginValveSet();
    setFirstPosition(anouk);
    anouk.turnTo(1);
    anouk.found("I3", "0.38 mm");
    anouk.found("E2", "0.46 mm");
}

} // namespace asleft
