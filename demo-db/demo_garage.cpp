#include "demo_garage.h"

#include "telling.h"

namespace asleft {

namespace {

Workshop peopleAndLeaves(Telling &telling)
{
    using namespace std::chrono;
    telling.at(2026y / January / 12, 9h);
    Garage &garage = telling.garage();
    told(addPerson(garage, "A.V.", "Anouk Vale"));
    return {
        told(addPerson(garage, "M.K.", "Marta Kestrel")),
        told(addPerson(garage, "T.B.", "Tom Birch")),
        told(addFeelerSet(garage, "Metric, long leaves", "0.05-1.00 by 0.05 mm", LengthUnit::Millimetre)),
        told(addFeelerSet(garage, "Inch, bent leaves", ".004-.025 by .001 in", LengthUnit::Inch)),
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
        tellSorrel(telling, workshop);
        tellAldermoor(telling, workshop);
        tellHollin(telling, workshop);
    } catch (const Refused &refused) {
        return tl::unexpected(refused.error);
    }
    return {};
}

} // namespace asleft
