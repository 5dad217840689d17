#include <engine/design.h>
#include <engine/phase.h>

#include "design_text.h"
#include "words.h"

#include <algorithm>

namespace asleft {

using namespace words;

namespace {

Done checkLengths(const EngineText &text)
{
    for (const std::string *typed : {&text.firingOrder, &text.gaps, &text.numbering, &text.valveOrder, &text.cam.checkLift})
        if (Done fits = notTooLong(*typed); !fits)
            return fits;
    return {};
}

Done checkCylinders(const EngineText &text)
{
    const CylinderRange range = cylinderRange(text.layout);
    const bool fits = text.cylinders >= range.fewest && text.cylinders <= range.most && !(range.evenOnly && text.cylinders % 2 != 0);
    if (fits)
        return {};
    return fail(ErrorKind::CylinderCount, std::to_string(text.cylinders), std::to_string(range.fewest), std::to_string(range.most));
}

Done checkArc(const std::string &side, Angle opensEarly, Angle closesLate)
{
    // An event a whole cycle away is no event, however well the other one makes up for it.
    const auto held = [](Angle event) { return std::clamp(event, -fullCycle, fullCycle); };
    const bool eventsFit = held(opensEarly) == opensEarly && held(closesLate) == closesLate;
    const Angle open = degrees(180) + held(opensEarly) + held(closesLate);
    if (eventsFit && open > Angle{} && open < fullCycle)
        return {};
    return fail(ErrorKind::CamArcTooLong, side, plainDegrees(open));
}

Done checkRamp(Angle ramp)
{
    constexpr std::int64_t most = 360;
    if (ramp < Angle{})
        return fail(ErrorKind::NegativeValue, plainDegrees(ramp));
    if (ramp > degrees(most))
        return fail(ErrorKind::ValueTooLarge, plainDegrees(ramp), std::to_string(most));
    return {};
}

Done checkCam(const CamEvents &cam)
{
    return checkArc("intake", cam.intakeOpensBeforeTdc, cam.intakeClosesAfterBdc)
        .and_then([&] { return checkArc("exhaust", cam.exhaustOpensBeforeBdc, cam.exhaustClosesAfterTdc); })
        .and_then([&] { return checkRamp(cam.rampAllowance); });
}

} // namespace

std::optional<Cylinder> EngineDesign::named(std::string_view label) const
{
    const auto found = std::find_if(labels.begin(), labels.end(), [&](const std::string &own) { return sameWord(own, label); });
    if (found == labels.end())
        return std::nullopt;
    return Cylinder{static_cast<int>(found - labels.begin())};
}

std::vector<AdjusterRef> EngineDesign::adjusters() const
{
    std::vector<AdjusterRef> all;
    for (const auto &bank : banks)
        for (const Cylinder cylinder : bank)
            for (const Side side : {Side::Intake, Side::Exhaust})
                all.push_back({cylinder, side});
    return all;
}

CylinderRange cylinderRange(Layout layout)
{
    switch (layout) {
    case Layout::InLine: return {1, 12, false};
    case Layout::Vee: return {2, 16, true};
    case Layout::Flat: return {2, 12, true};
    }
    return {0, 0, false};
}

std::string usualNumbering(Layout layout, int cylinders)
{
    const int banks = layout == Layout::InLine ? 1 : 2;
    std::string text;
    for (int bank = 1; bank <= banks; ++bank) {
        text += bank == 1 ? "" : " /";
        for (int number = bank; number <= cylinders; number += banks)
            text += (text.empty() ? "" : " ") + std::to_string(number);
    }
    return text;
}

Result<EngineDesign> designEngine(const EngineText &text, DecimalMark mark)
{
    EngineDesign design;
    design.layout = text.layout;
    design.cam = text.cam;
    design.rotation = text.rotation;
    const Done read = checkLengths(text)
                          .and_then([&] { return checkCylinders(text); })
                          .and_then([&] { return readNumbering(text, design); })
                          .and_then([&] { return readFiringOrder(text, design); })
                          .and_then([&] { return readGaps(text, mark, design); })
                          .and_then([&] { return readValveOrder(text, design); })
                          .and_then([&] { return checkCam(text.cam); });
    if (!read)
        return tl::unexpected(read.error());
    return design;
}

EngineText describeDesign(const EngineDesign &design)
{
    EngineText text;
    text.layout = design.layout;
    text.cylinders = design.cylinders();
    text.firingOrder = writeFiringOrder(design);
    text.gaps = writeGaps(design);
    text.numbering = writeNumbering(design);
    text.valveOrder = writeValveOrder(design);
    text.cam = design.cam;
    text.rotation = design.rotation;
    return text;
}

std::string shortName(const EngineDesign &design, AdjusterRef valve)
{
    return (valve.side == Side::Intake ? "I" : "E") + design.label(valve.cylinder);
}

} // namespace asleft
