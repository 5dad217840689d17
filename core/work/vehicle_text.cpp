#include "vehicle_text.h"

#include "internals.h"

#include <measure/text.h>

namespace asleft {

namespace {

Result<std::optional<MeterText>> checkedMeter(const VehicleText &text)
{
    if (isBlank(text.meter))
        return std::optional<MeterText>{};
    auto meter = parseMeter(text.meter, text.meterUnit);
    if (!meter)
        return tl::unexpected(meter.error());
    return std::optional(std::move(*meter));
}

Result<ScrewText> checkedScrew(const ScrewText &text, DecimalMark mark)
{
    if (const auto screw = readScrew(text, mark); !screw)
        return tl::unexpected(screw.error());
    if (const auto wait = readBleedDown(text, mark); !wait)
        return tl::unexpected(wait.error());
    return ScrewText{inOneLine(text.pitch), inOneLine(text.ratio), text.kind, inOneLine(text.bleedDown)};
}

} // namespace

Result<CheckedVehicle> checkVehicle(const VehicleText &text)
{
    auto name = checkedName(text.name, Noun::Vehicle);
    if (!name)
        return tl::unexpected(name.error());
    CheckedVehicle checked{std::move(*name), inOneLine(text.mark), inOneLine(text.number), {}, text.meterReplaced};
    if (const Done fits = shortEnough({checked.mark, checked.number}); !fits)
        return tl::unexpected(fits.error());
    auto meter = checkedMeter(text);
    if (!meter)
        return tl::unexpected(meter.error());
    checked.meter = std::move(*meter);
    return checked;
}

Result<CheckedEngine> checkEngine(const VehicleText &text, DecimalMark mark)
{
    std::string name = inOneLine(text.engineName);
    if (const Done fits = shortEnough({name}); !fits)
        return tl::unexpected(fits.error());
    auto design = designEngine(text.engine, mark);
    if (!design)
        return tl::unexpected(design.error());
    auto screw = checkedScrew(text.screw, mark);
    if (!screw)
        return tl::unexpected(screw.error());
    return CheckedEngine{std::move(name), std::move(*design), std::move(*screw)};
}

} // namespace asleft
