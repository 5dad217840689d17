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
    default: return VehicleReader::tr("Type degrees, or say that the cam events are not known.");
    }
}

} // namespace asleft
