#include "demo_garage.h"

#include "telling.h"

namespace asleft {

namespace {

Workshop peopleAndLeaves(Telling &telling)
{
    using namespace std::chrono;
    telling.at(2023y / September / 4, 9h);
    Garage &garage = telling.garage();
    const auto wrench = [&](std::string name, std::string least, std::string most, std::string due) {
        return told(addTorqueWrench(garage, {.name = std::move(name),
                                             .least = std::move(least),
                                             .most = std::move(most),
                                             .deviation = {},
                                             .calibrationDue = std::move(due),
                                             .lever = "300"}));
    };
    return {
        .anouk = told(addPerson(garage, "A.V.", "Anouk Vale")),
        .marta = told(addPerson(garage, "M.K.", "Marta Kestrel")),
        .tom = told(addPerson(garage, "T.B.", "Tom Birch")),
        .metricLeaves = told(addFeelerSet(garage, "Metric, long leaves", "0.05-1.00 by 0.05 mm", LengthUnit::Millimetre)),
        .inchLeaves = told(addFeelerSet(garage, "Inch, bent leaves", ".004-.025 by .001 in", LengthUnit::Inch)),
        .thinLeaves = told(addFeelerSet(garage, "Metric, thin leaves", "0.03-0.40 by 0.01 mm", LengthUnit::Millimetre)),
        .dialGauge = told(addGauge(garage, {ToolKind::DialGauge, "Dial gauge on its arm", "0.015 mm", "0.01 mm"})),
        .micrometer = told(addGauge(garage, {ToolKind::Micrometer, "Micrometer, 0 to 25 mm", "0.004 mm", "0.01 mm"})),
        .smallWrench = wrench("Click wrench, small", "6", "30", "2026-11-30"),
        .largeWrench = told(addTorqueWrench(garage, {.name = "Click wrench, large",
                                                     .least = "20",
                                                     .most = "200",
                                                     .deviation = {},
                                                     .calibrationDue = "2026-11-30",
                                                     .lever = "450"})),
        .crowFoot = told(addFitting(garage, {.kind = ToolKind::Adapter, .name = "Crow-foot", .size = "13 mm", .length = "40"})),
    };
}

} // namespace

Done makeDemoGarage(const std::string &path)
{
    const auto clock = std::make_shared<ScriptedClock>();
    auto garage = Garage::create(path, {clock, std::make_shared<ScriptedUids>("demo"), "demo"});
    if (!garage)
        return tl::unexpected(std::move(garage.error()));
    try {
        Telling telling(**garage, *clock);
        const Workshop workshop = peopleAndLeaves(telling);
        const NewVehicle van = tellSorrelBefore(telling, workshop);
        tellCorrow(telling, workshop);
        tellPintail(telling, workshop);
        tellSorrel(telling, workshop, van);
        tellDunnock(telling, workshop);
        tellBrindle(telling, workshop);
        tellAldermoor(telling, workshop);
        tellHollin(telling, workshop);
    } catch (const Refused &refused) {
        return tl::unexpected(refused.error);
    }
    return {};
}

} // namespace asleft
