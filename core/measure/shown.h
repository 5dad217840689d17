#pragma once

#include <measure/format.h>

namespace asleft {

/// A count of the last decimal shown, written with so many decimals: -125 with two is "-1.25".
std::string decimalText(Int128 count, int decimals, DecimalMark mark);

/// `value` counted in units of the last decimal shown; Down and Up mean towards the lower and the higher number.
template <class Q>
Int128 countOfLastDecimal(Q value, Unit<Q> unit, int decimals, Rounding rounding);

/// The number of formatExact(), without the symbol.
template <class Q>
std::string exactNumber(Q value, Unit<Q> unit, DecimalMark mark);

/// "0.18 mm", "12°".
template <class Q>
std::string withSymbol(std::string number, Unit<Q> unit);

} // namespace asleft
