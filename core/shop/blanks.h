#pragma once

#include <algorithm>
#include <cctype>
#include <string_view>

namespace asleft {

/// Without the white space of ASCII around it.
inline std::string_view withoutBlanks(std::string_view text)
{
    const auto isSpace = [](char c) { return std::isspace(static_cast<unsigned char>(c)) != 0; };
    const auto *const begin = std::find_if_not(text.begin(), text.end(), isSpace);
    text.remove_prefix(static_cast<std::size_t>(begin - text.begin()));
    while (!text.empty() && isSpace(text.back()))
        text.remove_suffix(1);
    return text;
}

} // namespace asleft
