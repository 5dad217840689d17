// A coupe that came in for its valves; nothing is done yet.
#include "telling.h"

namespace asleft {

void tellAldermoor(Telling &telling, const Workshop &)
{
    using namespace std::chrono;
    telling.at(2026y / May / 14, 10h + 5min);
    VehicleText text;
    text.name = "Aldermoor 50 coupe";
    text.mark = "YH 71 AMR";
    text.number = "0AM50C8VXKA031874";
    text.meter = "61,204 mi";
    text.meterUnit = MeterUnit::Mile;
    text.engineName = "Aldermoor V8, 305 cu in";
    text.engine.layout = Layout::Vee;
    text.engine.cylinders = 8;
    text.engine.firingOrder = "1-8-4-3-6-5-7-2";
    text.engine.valveOrder = "E I E I I E I E";
    text.screw.pitch = "1/24 in";
    text.screw.ratio = "1.5";
    const NewVehicle coupe = telling.vehicle(text);

    const SpecSource page{"Aldermoor shop manual", "6A-14"};
    telling.spec(coupe.engine, SpecSubject::IntakeLash,
                 {.band = ".016 ± .002 in", .otherBand = {}, .lengthUnit = LengthUnit::Inch, .source = page});
    telling.spec(coupe.engine, SpecSubject::ExhaustLash,
                 {.band = ".020 ± .002 in", .otherBand = {}, .lengthUnit = LengthUnit::Inch, .source = page});
    telling.spec(
        coupe.engine, SpecSubject::LockNut,
        {.band = "20 ± 3 lbf·ft", .otherBand = {}, .torqueUnit = TorqueUnit::PoundFoot, .source = {"", "", Certainty::ToldByPerson}});
    telling.valveJob(coupe);
}

} // namespace asleft
