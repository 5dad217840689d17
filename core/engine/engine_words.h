#pragma once

#include <base/result.h>
#include <measure/quantity.h>
#include <measure/text.h>

// What the typed texts of an engine are made of.
namespace asleft {

/// The longest text an engine or a table line is typed in, in bytes: the wordiest list of 32 valves is under half of it.
constexpr std::size_t longestEngineText = 1000;
constexpr std::size_t longestLabel = 4;
/// What parts the words of an order.
constexpr std::string_view betweenWords = " ,-";

/// Refuses a text too long to be meant, before anything reads it.
Done notTooLong(std::string_view text);

/// One to four letters and digits.
bool looksLikeLabel(std::string_view word);

/// The shortest decimal number of degrees that reads back as `angle`, for every angle that was typed as a decimal number.
std::string plainDegrees(Angle angle);

} // namespace asleft
