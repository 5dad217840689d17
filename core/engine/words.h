#pragma once

#include <base/result.h>
#include <measure/quantity.h>

#include <string>
#include <string_view>
#include <vector>

/// How the engine room takes typed texts apart. A namespace of its own, because other rooms have private helpers of the same names.
namespace asleft::words {

/// The longest text an engine or a table line is typed in, in bytes: the wordiest list of 32 valves is under half of it.
constexpr std::size_t longestEngineText = 1000;
constexpr std::size_t longestLabel = 4;
/// What parts the words of an order.
constexpr std::string_view betweenWords = " \t\r\n,-";

/// Refuses a text too long to be meant, before anything reads it.
Done notTooLong(std::string_view text);

std::string_view trimmed(std::string_view text);

/// The words between any of `separators`; several in a row part two words once.
std::vector<std::string_view> wordsOf(std::string_view text, std::string_view separators);

/// The trimmed pieces between each `mark`, empty ones too: always one more than there are marks.
std::vector<std::string_view> piecesOf(std::string_view text, char mark);

bool isDigit(char c);
bool isLetter(char c);
char inCapitals(char c);

/// Whether two labels or words are the same, ASCII letters in any case.
bool sameWord(std::string_view a, std::string_view b);

/// One to four letters and digits.
bool looksLikeLabel(std::string_view word);

/// The shortest decimal number of degrees that reads back as `angle`, for every angle that was typed as a decimal number.
std::string plainDegrees(Angle angle);

} // namespace asleft::words
