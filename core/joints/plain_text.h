#pragma once

#include <string>
#include <string_view>

namespace asleft {

inline bool isAsciiDigit(char letter)
{
    return letter >= '0' && letter <= '9';
}

/// Typed text as the readers of threads and classes look at it: ASCII letters small, every blank ' ', every dash '-', "×" and "*" an 'x',
/// "⁄" a '/', "″" a '"', a decimal comma a '.', no blanks at the ends. All else stays as it is, to be refused.
std::string plainText(std::string_view typed);

} // namespace asleft
