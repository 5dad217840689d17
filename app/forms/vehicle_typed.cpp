// The form of a stored vehicle.
#include <forms/vehicle_reader.h>

#include <measure/format.h>

namespace asleft {

namespace {

using Field = VehicleField;

QString said(const std::string &text)
{
    return QString::fromStdString(text);
}

QString angleText(Angle angle, DecimalMark mark)
{
    QString text = said(formatExact(angle < Angle{} ? -angle : angle, AngleUnit::Degree, mark));
    text.remove(QChar(0x00B0));
    return angle < Angle{} ? QLatin1Char('-') + text.trimmed() : text.trimmed();
}

void fillVehicle(VehicleTyped &typed, const VehicleRow &row)
{
    typed.meterUnit = row.meter ? row.meter->unit : MeterUnit::Hour;
    typed.texts[Field::Name] = said(row.vehicle.name);
    typed.texts[Field::Mark] = said(row.vehicle.mark);
    typed.texts[Field::Number] = said(row.vehicle.number);
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
    typed.texts[Field::CheckLift] = said(cam.checkLift);
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
    typed.texts[Field::EngineName] = said(engine.name);
    if (typed.layout != Layout::Single) {
        typed.texts[Field::Cylinders] = QString::number(text.cylinders);
        typed.texts[Field::FiringOrder] = said(text.firingOrder);
        typed.texts[Field::Gaps] = said(text.gaps);
        typed.texts[Field::Numbering] = said(text.numbering);
    }
    typed.texts[Field::Barring] = said(text.barring);
    typed.texts[Field::Valves] = said(text.valves);
    typed.texts[Field::ValveOrder] = said(text.valveOrder);
    typed.texts[Field::Pitch] = said(engine.screw.pitch);
    typed.texts[Field::Ratio] = said(engine.screw.ratio);
    typed.texts[Field::BleedDown] = said(engine.screw.bleedDown);
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
    std::erase_if(typed.texts, [](const auto &text) { return text.second.isEmpty(); });
    return typed;
}

} // namespace asleft
