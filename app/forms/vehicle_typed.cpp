// The form of a stored vehicle.
#include <forms/vehicle_reader.h>

#include <measure/format.h>
#include <measure/text.h>

namespace asleft {

namespace {

using Field = VehicleField;

std::string angleText(Angle angle, DecimalMark mark)
{
    const std::string text = formatExact(angle < Angle{} ? -angle : angle, AngleUnit::Degree, mark);
    std::string signedText(angle < Angle{} ? "-" : "");
    return signedText.append(trimmed(std::string_view(text).substr(0, text.find("°"))));
}

void fillVehicle(VehicleTyped &typed, const VehicleRow &row)
{
    typed.meterUnit = row.meter ? row.meter->unit : MeterUnit::Hour;
    typed.texts[Field::Name] = row.vehicle.name;
    typed.texts[Field::Mark] = row.vehicle.mark;
    typed.texts[Field::Number] = row.vehicle.number;
}

void fillArc(VehicleTyped &typed, Field from, Field to, const std::optional<CrankArc> &arc, DecimalMark mark)
{
    if (!arc)
        return;
    typed.texts[from] = angleText(arc->starts, mark);
    typed.texts[to] = angleText(arc->ends, mark);
}

void fillCam(VehicleTyped &typed, const CamEvents &cam, DecimalMark mark)
{
    typed.camKnown = !cam.assumed;
    if (cam.assumed)
        return;
    if (typed.cycle == Cycle::FourStroke) {
        typed.texts[Field::IntakeOpens] = angleText(cam.intakeOpensBeforeTdc, mark);
        typed.texts[Field::IntakeCloses] = angleText(cam.intakeClosesAfterBdc, mark);
    }
    typed.texts[Field::ExhaustOpens] = angleText(cam.exhaustOpensBeforeBdc, mark);
    typed.texts[Field::ExhaustCloses] = angleText(cam.exhaustClosesAfterTdc, mark);
    typed.texts[Field::CheckLift] = cam.checkLift;
    typed.texts[Field::Ramp] = angleText(cam.rampAllowance, mark);
    fillArc(typed, Field::ExhaustAgainFrom, Field::ExhaustAgainTo, cam.exhaustAgain, mark);
    fillArc(typed, Field::InjectorFrom, Field::InjectorTo, cam.injector, mark);
}

void fillEngine(VehicleTyped &typed, const Engine &engine, DecimalMark mark)
{
    const EngineText text = describeDesign(engine.design);
    typed.layout = text.layout;
    typed.cycle = text.cycle;
    typed.rotation = text.rotation;
    typed.bridged = text.bridged;
    typed.bridgeScrews = text.bridgeScrews;
    typed.injectors = text.injectors;
    typed.decompressors = text.decompressors;
    typed.adjusters = engine.screw.kind;
    typed.texts[Field::EngineName] = engine.name;
    if (typed.layout != Layout::Single) {
        typed.texts[Field::Cylinders] = std::to_string(text.cylinders);
        typed.texts[Field::FiringOrder] = text.firingOrder;
        typed.texts[Field::Gaps] = text.gaps;
        typed.texts[Field::Numbering] = text.numbering;
    }
    typed.texts[Field::Barring] = text.barring;
    typed.texts[Field::Valves] = text.valves;
    typed.texts[Field::ValveOrder] = text.valveOrder;
    typed.texts[Field::Pitch] = engine.screw.pitch;
    typed.texts[Field::Ratio] = engine.screw.ratio;
    typed.texts[Field::BleedDown] = engine.screw.bleedDown;
    fillCam(typed, text.cam, mark);
}

} // namespace

VehicleTyped typedOf(const VehicleRow &row, DecimalMark mark)
{
    VehicleTyped typed;
    typed.about = row.vehicle.stand ? VehicleTyped::About::Engine : row.engine ? VehicleTyped::About::Both : VehicleTyped::About::Vehicle;
    if (!row.vehicle.stand)
        fillVehicle(typed, row);
    if (row.engine)
        fillEngine(typed, *row.engine, mark);
    std::erase_if(typed.texts, [](const auto &text) { return text.second.empty(); });
    return typed;
}

} // namespace asleft
