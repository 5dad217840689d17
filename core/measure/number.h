#pragma once

#include <measure/parse.h>
#include <measure/text.h>

namespace asleft {

/// Whether the one mark in a run of digits may stand for thousands: `1,250`.
bool isAmbiguous(std::string_view digitsAndMark, DecimalMark mark);

/// Reads one decimal, fraction or mixed number where the scanner stands, and stops right behind it.
Result<Rational> readNumber(Scanner &in, DecimalMark mark);

/// The text a field handed over, trimmed; refused if it is empty or overlong.
Result<std::string_view> acceptText(std::string_view text);

} // namespace asleft
