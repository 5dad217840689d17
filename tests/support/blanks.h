#pragma once

#include <array>
#include <string>
#include <string_view>

namespace asleft::typing {

/// Every kind of white space a person's keyboard, phone or clipboard puts into a field.
inline constexpr std::array<std::string_view, 7> blanks{" ",             // the plain one
                                                        "\u00A0",        // no-break
                                                        "\u202F",        // narrow no-break
                                                        "\u2009",        // thin
                                                        "\u2007",        // as wide as a figure
                                                        "\t",     "\n"}; // pasted from a table, or with the end of its line

/// The text with each '_' that kind of blank.
inline std::string with(std::string_view blank, std::string_view text)
{
    std::string typed;
    for (const char letter : text)
        letter == '_' ? typed += blank : typed += letter;
    return typed;
}

} // namespace asleft::typing
