// What a refused field of a vehicle says.
#include <forms/vehicle_reader.h>

#include <words/errors.h>

#include <QCoreApplication>

namespace asleft {

namespace {

using Field = VehicleField;

class VehicleReader {
    Q_DECLARE_TR_FUNCTIONS(VehicleReader)
};

} // namespace

QString refusalSentence(VehicleField field, const Error &error)
{
    if (error.kind == ErrorKind::NameMissing)
        return VehicleReader::tr("Give the vehicle a name.");
    if (error.kind != ErrorKind::EmptyText)
        return sentence(error);
    switch (field) {
    case Field::Cylinders: return VehicleReader::tr("Type how many cylinders the engine has.");
    case Field::FiringOrder: return VehicleReader::tr("Type the firing order as the maker gives it, such as 1-3-4-2.");
    case Field::ExhaustAgainFrom:
    case Field::ExhaustAgainTo:
    case Field::InjectorFrom:
    case Field::InjectorTo: return VehicleReader::tr("Type both ends, or leave both empty.");
    case Field::Name:
    case Field::Mark:
    case Field::Number:
    case Field::Meter:
    case Field::EngineName:
    case Field::Gaps:
    case Field::Numbering:
    case Field::Barring:
    case Field::Valves:
    case Field::ValveOrder:
    case Field::Pitch:
    case Field::Ratio:
    case Field::BleedDown:
    case Field::IntakeOpens:
    case Field::IntakeCloses:
    case Field::ExhaustOpens:
    case Field::ExhaustCloses:
    case Field::CheckLift:
    case Field::Ramp: break; // an empty one is refused of the cam events alone
    }
    return VehicleReader::tr("Type degrees, or say that the cam events are not known.");
}

} // namespace asleft
