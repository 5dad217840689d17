#pragma once

#include <work/vehicles.h>

#include <QString>

namespace asleft {

/// The sentence that refuses a field: what to type where nothing is typed, else what is wrong.
QString refusalSentence(VehicleField field, const Error &error);

/// The form of a stored vehicle. Its meter is left empty: it is read anew or not at all.
VehicleTyped typedOf(const VehicleRow &row, DecimalMark mark);

} // namespace asleft
