#include <engine/design.h>

#include "cam.h"
#include "design_text.h"
#include "engine_words.h"

#include <algorithm>

namespace asleft {

namespace {

/// With plain blanks; what is refused is quoted with all else as typed.
EngineText inOneLine(EngineText text)
{
    for (std::string *typed : {&text.firingOrder, &text.gaps, &text.numbering, &text.valves, &text.valveOrder, &text.barring})
        *typed = asleft::inOneLine(*typed);
    text.cam.checkLift = asleft::inOneLine(text.cam.checkLift);
    return text;
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

EngineReading readEngine(const EngineText &typed, DecimalMark mark)
{
    const EngineText text = inOneLine(typed);
    EngineReading reading;
    EngineDesign &design = reading.design;
    design.layout = text.layout;
    design.cycle = text.cycle;
    design.rotation = text.rotation;
    /// Whether the field can be taken.
    const auto take = [&](EngineField field, std::string_view what, const auto &read) {
        const Done taken = notTooLong(what).and_then(read);
        if (!taken)
            reading.refusals.emplace(field, taken.error());
        return taken.has_value();
    };
    const bool labelled = take(EngineField::Cylinders, {}, [&] { return checkCylinders(text); }) &&
                          take(EngineField::Numbering, text.numbering, [&] { return readNumbering(text, design); });
    const bool valved = take(EngineField::Valves, text.valves, [&] { return readTrain(text, design); });
    if (labelled) {
        take(EngineField::FiringOrder, text.firingOrder, [&] { return readFiringOrder(text, design); });
        take(EngineField::Gaps, text.gaps, [&] { return readGaps(text, mark, design); });
    }
    // How many letters the order has follows from cylinders and valves.
    if (labelled && valved)
        take(EngineField::ValveOrder, text.valveOrder, [&] { return readValveOrder(text, design); });
    readCam(text, reading);
    take(EngineField::CheckLift, text.cam.checkLift, [] { return Done(); });
    take(EngineField::Barring, text.barring, [&] { return readBarring(text, design); });
    return reading;
}

Result<EngineDesign> designEngine(const EngineText &text, DecimalMark mark)
{
    EngineReading reading = readEngine(text, mark);
    if (!reading.refusals.empty())
        return tl::unexpected(reading.refusals.begin()->second);
    return std::move(reading.design);
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
