#pragma once

#include <measure/rational.h>

namespace asleft {

/// Rounding without the int64 limit of Rational's own: shown numbers may carry more digits than a stored quantity.
Int128 wholeBelow(const Rational &value);
Int128 wholeAbove(const Rational &value);
/// A half goes to the even neighbour.
Int128 wholeNearest(const Rational &value);

/// \pre 0 <= exponent <= 37
Int128 powerOfTen(int exponent);

} // namespace asleft
