#pragma once

#include <bench/typed_reading.h>

namespace asleft {

/// What speaks against logging at this point with the crank where it is, in words; empty where nothing does.
QString placeDoubt(const JobState &state, PointId point);

/// What speaks against a length as it was typed.
struct ValueDoubt {
    QString question;                         ///< without how to answer it; empty where nothing does
    std::optional<TypedReading> instead = {}; ///< the same digits in the unit that was likely meant
};
/// A value far off its band is more likely a slip of the finger, or of the unit.
ValueDoubt valueDoubt(const JobFrame &frame, PointId point, const TypedReading &reading, DecimalMark mark);

} // namespace asleft
