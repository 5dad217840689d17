#include "number.h"

#include "wholes.h"

#include <algorithm>

namespace asleft {

namespace {

constexpr std::string_view marks = ".,";

int digitsIn(std::string_view run)
{
    return static_cast<int>(std::count_if(run.begin(), run.end(), isAsciiDigit));
}

std::string_view takeDigits(Scanner &in)
{
    const std::size_t begin = in.position();
    while (isDigit(in.peek()))
        in.advance();
    return in.since(begin);
}

std::string_view takeDigitsAndMarks(Scanner &in)
{
    const std::size_t begin = in.position();
    while (isDigit(in.peek()) || in.peek() == U'.' || in.peek() == U',')
        in.advance();
    return in.since(begin);
}

/// \pre no more than mostDigits digits
Rational decimalValue(std::string_view run)
{
    Int128 digits = 0;
    for (const char c : run) {
        if (isAsciiDigit(c))
            digits = digits * 10 + (c - '0');
    }
    const std::size_t mark = run.find_first_of(marks);
    const std::size_t decimals = mark == std::string_view::npos ? 0 : run.size() - mark - 1;
    return {digits, powerOfTen(static_cast<int>(decimals))};
}

bool isWellFormed(std::string_view run)
{
    const std::size_t mark = run.find_first_of(marks);
    return digitsIn(run) > 0 && mark == run.find_last_of(marks) && (mark == std::string_view::npos || mark + 1 < run.size());
}

Result<Rational> decimalNumber(const Scanner &in, std::string_view run, DecimalMark mark)
{
    if (!isWellFormed(run))
        return fail(ErrorKind::NotANumber, run);
    if (digitsIn(run) > mostDigits)
        return fail(ErrorKind::TooManyDigits, in.text());
    if (isAmbiguous(run, mark))
        return fail(ErrorKind::AmbiguousNumber, in.text());
    return decimalValue(run);
}

/// The `5/8` of a mixed number, if one stands behind the spaces here.
bool mixedFractionFollows(Scanner ahead)
{
    if (ahead.peek() != U' ')
        return false;
    ahead.skipSpaces();
    return !takeDigits(ahead).empty() && ahead.take(U'/') && isDigit(ahead.peek());
}

bool fractionBarFollows(Scanner ahead)
{
    return ahead.take(U'/') && isDigit(ahead.peek());
}

/// Reads on from the numerator; `whole` is empty where none was typed.
Result<Rational> fraction(Scanner &in, std::size_t begin, std::string_view whole, std::string_view numerator)
{
    in.take(U'/');
    const std::string_view denominator = takeDigitsAndMarks(in);
    if (digitsIn(denominator) != static_cast<int>(denominator.size()) || digitsIn(numerator) != static_cast<int>(numerator.size()))
        return fail(ErrorKind::NotANumber, in.since(begin));
    if (digitsIn(whole) + digitsIn(numerator) + digitsIn(denominator) > mostDigits)
        return fail(ErrorKind::TooManyDigits, in.text());
    const Int128 parts = decimalValue(denominator).numerator();
    if (parts == 0)
        return fail(ErrorKind::DivisionByZero, in.text());
    // Twelve digits in all: neither product nor sum can come near 128 bits.
    return Rational(decimalValue(whole).numerator() * parts + decimalValue(numerator).numerator(), parts);
}

tl::unexpected<Error> refuseMinus(Scanner in)
{
    const std::string_view part = in.wordHere();
    in.take(U'-');
    in.skipSpaces();
    const std::string_view run = takeDigitsAndMarks(in);
    return digitsIn(run) > 0 ? fail(ErrorKind::NegativeValue, in.text()) : fail(ErrorKind::NotANumber, part);
}

} // namespace

bool isAmbiguous(std::string_view digitsAndMark, DecimalMark mark)
{
    const std::size_t at = digitsAndMark.find_first_of(marks);
    if (at == std::string_view::npos || (digitsAndMark[at] == '.' && mark == DecimalMark::Point))
        return false;
    const bool groupBefore = at >= 1 && at <= 3 && digitsAndMark[0] != '0';
    return groupBefore && digitsAndMark.size() - at - 1 == 3;
}

Result<Rational> readNumber(Scanner &in, DecimalMark mark)
{
    if (in.peek() == U'-')
        return refuseMinus(in);
    const std::size_t begin = in.position();
    const std::string_view run = takeDigitsAndMarks(in);
    if (digitsIn(run) == 0) {
        in.moveTo(begin);
        return fail(ErrorKind::NotANumber, in.wordHere());
    }
    if (fractionBarFollows(in))
        return fraction(in, begin, {}, run);
    if (digitsIn(run) == static_cast<int>(run.size()) && mixedFractionFollows(in)) {
        in.skipSpaces();
        return fraction(in, begin, run, takeDigits(in));
    }
    return decimalNumber(in, run, mark);
}

Result<std::string_view> acceptText(std::string_view text)
{
    if (text.size() > longestTypedText)
        return fail(ErrorKind::TextTooLong, std::to_string(text.size()), std::to_string(longestTypedText));
    const std::string_view kept = trimmed(text);
    if (kept.empty())
        return fail(ErrorKind::EmptyText);
    return kept;
}

} // namespace asleft
