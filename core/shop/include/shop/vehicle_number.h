#pragma once

#include <optional>
#include <string_view>

namespace asleft {

/// What can be said of a maker's vehicle number. Nothing is ever refused: before 1981, and outside North America, a number need not have
/// a check digit, nor seventeen characters.
enum class NumberCheck {
    None,         ///< nothing typed
    NoCheckDigit, ///< not seventeen letters and digits of the standard's alphabet, or the ninth neither a digit nor X
    Agrees,       ///< the ninth character is the check digit of the others (49 CFR 565.15)
    Differs,      ///< it is not: a slip of the finger, or a number without one
};

struct VehicleNumber {
    NumberCheck check = NumberCheck::None;
    std::optional<char> expected; ///< the check digit the other characters would have, where the number has one
};

/// Looks at a number as typed; blanks and hyphens between its characters do not count, nor does case. I, O and Q are not in the alphabet.
VehicleNumber checkVehicleNumber(std::string_view text);

} // namespace asleft
