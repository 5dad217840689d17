#include <engine/design.h>

#include "cam.h"
#include "design_text.h"
#include "words.h"

#include <algorithm>

namespace asleft {

using namespace words;

namespace {

Done checkLengths(const EngineText &text)
{
    for (const std::string *typed :
         {&text.firingOrder, &text.gaps, &text.numbering, &text.valves, &text.valveOrder, &text.barring, &text.cam.checkLift})
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

void addAdjusters(const ValveTrain &train, Cylinder cylinder, std::vector<AdjusterRef> &all)
{
    for (const Side side : {Side::Intake, Side::Exhaust})
        for (int number = 0; number < train.lashes(side); ++number) {
            if (train.bridgeScrews && train.isBridged(side))
                all.push_back({cylinder, side, PointKind::BridgeScrew, number});
            all.push_back({cylinder, side, PointKind::Lash, number});
        }
    if (train.decompressors)
        all.push_back({cylinder, Side::Exhaust, PointKind::Decompressor});
    if (train.injectors)
        all.push_back({cylinder, Side::Intake, PointKind::Injector});
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
            addAdjusters(train, cylinder, all);
    return all;
}

bool ValveTrain::isBridged(Side side) const
{
    const int valves = side == Side::Intake ? intakes : exhausts;
    return bridged && valves >= 2 && valves % 2 == 0;
}

int ValveTrain::lashes(Side side) const
{
    const int valves = side == Side::Intake ? intakes : exhausts;
    return isBridged(side) ? valves / 2 : valves;
}

Result<EngineDesign> designEngine(const EngineText &text, DecimalMark mark)
{
    EngineDesign design;
    design.layout = text.layout;
    design.cycle = text.cycle;
    design.rotation = text.rotation;
    const Done read = checkLengths(text)
                          .and_then([&] { return checkCylinders(text); })
                          .and_then([&] { return readNumbering(text, design); })
                          .and_then([&] { return readFiringOrder(text, design); })
                          .and_then([&] { return readGaps(text, mark, design); })
                          .and_then([&] { return readTrain(text, design); })
                          .and_then([&] { return readValveOrder(text, design); })
                          .and_then([&] { return readCam(text, design); })
                          .and_then([&] { return readBarring(text, design); });
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
    text.cycle = design.cycle;
    text.valves = writeValves(design);
    text.bridged = design.train.bridged;
    text.bridgeScrews = design.train.bridgeScrews;
    text.injectors = design.train.injectors;
    text.decompressors = design.train.decompressors;
    text.barring = writeBarring(design);
    return text;
}

std::string shortName(const EngineDesign &design, AdjusterRef valve)
{
    const std::string &label = design.label(valve.cylinder);
    if (valve.kind == PointKind::Decompressor)
        return 'D' + label;
    if (valve.kind == PointKind::Injector)
        return 'J' + label;
    std::string name = valve.kind == PointKind::BridgeScrew ? "B" : "";
    name += (valve.side == Side::Intake ? 'I' : 'E') + label;
    if (design.train.lashes(valve.side) > 1)
        name += static_cast<char>('a' + valve.number);
    return name;
}

} // namespace asleft
