#pragma once

#include <joints/pattern.h>

#include <string>
#include <string_view>
#include <vector>

namespace asleft {

/// The numbers of a joint's fasteners in the order they are tightened.
using TighteningOrder = std::vector<int>;

/// Reads the manual's order: `7-3-1-5`, `7 3 1 5`, `7, 3, 1, 5`, also over several lines, with any kind of dash or `→`. Refuses what is
/// no number (OrderUnread), a number no fastener has (OrderUnknown), one twice (OrderTwice), one left out (OrderMissing, the lowest), and
/// more than 4000 bytes (TextTooLong).
Result<TighteningOrder> parseOrder(std::string_view text, const Pattern &pattern);
/// "7-3-1-5".
std::string writeOrder(const TighteningOrder &order);

/// The order where the manual gives none. Circle: a star over the places as they lie round it, whatever their numbers: opposite pairs,
/// every four crosswise where the number divides by four, each next pair or four as far round from the last as it can be, as ASME PCC-1
/// has it; all others from the centre outward, of places equally far the lowest number first and then always the one farthest from the
/// last. A permutation of the pattern's numbers, the same every time.
/// \pre checkedPattern() takes it
TighteningOrder generateOrder(const Pattern &pattern);

/// Loosening goes the reverse way.
TighteningOrder looseningOrder(TighteningOrder order);

} // namespace asleft
