#include <measure/text.h>

#include <algorithm>
#include <array>

namespace asleft {

namespace {

struct Decoded {
    char32_t codePoint;
    std::size_t size;
};

constexpr Decoded notUtf8{0xFFFD, 1};

/// How a sequence of a given length starts, and the smallest code point it may hold: a smaller one is an overlong spelling.
struct Sequence {
    unsigned leadMask;
    unsigned lead;
    std::size_t size;
    char32_t smallest;
};

constexpr std::array<Sequence, 4> sequences{{{0x80, 0x00, 1, 0}, {0xE0, 0xC0, 2, 0x80}, {0xF0, 0xE0, 3, 0x800}, {0xF8, 0xF0, 4, 0x10000}}};

Decoded decodeAs(const Sequence &sequence, std::string_view text)
{
    if (text.size() < sequence.size)
        return notUtf8;
    char32_t codePoint = static_cast<unsigned char>(text[0]) & ~sequence.leadMask;
    for (std::size_t i = 1; i < sequence.size; ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        if ((byte & 0xC0U) != 0x80U)
            return notUtf8;
        codePoint = (codePoint << 6U) | (byte & 0x3FU);
    }
    const bool surrogate = codePoint >= 0xD800 && codePoint <= 0xDFFF;
    if (codePoint < sequence.smallest || codePoint > 0x10FFFF || surrogate)
        return notUtf8;
    return {codePoint, sequence.size};
}

/// \pre text is not empty
Decoded decode(std::string_view text)
{
    const auto lead = static_cast<unsigned char>(text[0]);
    for (const Sequence &sequence : sequences) {
        if ((lead & sequence.leadMask) == sequence.lead)
            return decodeAs(sequence, text);
    }
    return notUtf8;
}

char32_t meaningOf(char32_t codePoint)
{
    if (isSpace(codePoint))
        return U' ';
    switch (codePoint) {
    case 0x2010:
    case 0x2011:
    case 0x2012:
    case 0x2013:
    case 0x2014:
    case 0x2212: return U'-';
    case 0x2022:
    case 0x2219:
    case 0x22C5: return U'·';
    case 0x2033:
    case 0x201D: return U'"';
    case 0x00BA: return U'°';
    case 0x2044: return U'/';
    default: return codePoint;
    }
}

char32_t lowerCase(char32_t c)
{
    return c >= U'A' && c <= U'Z' ? c + 32 : c;
}

/// In one line, every character that is no space put there by `put`, which is given its meaning and how it is typed.
template <class Put>
std::string lineOf(std::string_view text, Put put)
{
    std::string line;
    for (Scanner in(text); !in.atEnd();) {
        const std::size_t begin = in.position();
        const char32_t meaning = in.peek();
        in.advance();
        if (meaning != U' ')
            put(line, meaning, in.since(begin));
        else if (!line.empty() && line.back() != ' ')
            line += ' ';
    }
    if (line.ends_with(' '))
        line.pop_back();
    return line;
}

} // namespace

bool isSpace(char32_t c)
{
    return c == U' ' || (c >= 0x09 && c <= 0x0D) || c == 0x85 || c == 0xA0 || c == 0x1680 || (c >= 0x2000 && c <= 0x200A) || c == 0x2028 ||
           c == 0x2029 || c == 0x202F || c == 0x205F || c == 0x3000;
}

bool isBlank(std::string_view text)
{
    return trimmed(text).empty();
}

std::string inOneLine(std::string_view text)
{
    return lineOf(text, [](std::string &line, char32_t, std::string_view typed) { line += typed; });
}

std::string plainText(std::string_view text)
{
    return lineOf(text, [](std::string &line, char32_t meaning, std::string_view typed) {
        if (meaning < 0x80)
            line += static_cast<char>(meaning);
        else
            line += meaning == U'·' ? "·" : meaning == U'°' ? "°" : typed;
    });
}

std::string plainWords(std::string_view text)
{
    constexpr std::string_view times = "×";
    std::string words = inSmallLetters(plainText(text));
    for (std::size_t at = words.find(times); at != std::string::npos; at = words.find(times, at))
        words.replace(at, times.size(), "x");
    std::ranges::replace(words, '*', 'x');
    std::ranges::replace(words, ',', '.');
    return words;
}

bool isAsciiDigit(char letter)
{
    return letter >= '0' && letter <= '9';
}

bool isAsciiLetter(char letter)
{
    return inCapitals(letter) >= 'A' && inCapitals(letter) <= 'Z';
}

char inCapitals(char letter)
{
    return letter >= 'a' && letter <= 'z' ? static_cast<char>(letter - 'a' + 'A') : letter;
}

std::string inSmallLetters(std::string_view text)
{
    std::string letters(text);
    std::ranges::transform(letters, letters.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return letters;
}

bool sameWord(std::string_view a, std::string_view b)
{
    return std::ranges::equal(a, b, {}, inCapitals, inCapitals);
}

std::vector<std::string_view> wordsOf(std::string_view text, std::string_view separators)
{
    std::vector<std::string_view> words;
    std::size_t at = text.find_first_not_of(separators);
    while (at != std::string_view::npos) {
        const std::size_t end = std::min(text.find_first_of(separators, at), text.size());
        words.push_back(text.substr(at, end - at));
        at = text.find_first_not_of(separators, end);
    }
    return words;
}

std::vector<std::string_view> piecesOf(std::string_view text, char mark)
{
    std::vector<std::string_view> pieces;
    for (std::size_t at = text.find(mark); at != std::string_view::npos; at = text.find(mark)) {
        pieces.push_back(trimmed(text.substr(0, at)));
        text.remove_prefix(at + 1);
    }
    pieces.push_back(trimmed(text));
    return pieces;
}

bool isDigit(char32_t meaning)
{
    return meaning >= U'0' && meaning <= U'9';
}

bool isLetter(char32_t meaning)
{
    if (meaning == endOfText)
        return false;
    if (meaning < 0x80)
        return lowerCase(meaning) >= U'a' && lowerCase(meaning) <= U'z';
    return meaning != U'·' && meaning != U'°' && meaning != U'±' && meaning != U'≥' && meaning != U'≤';
}

std::string_view trimmed(std::string_view text)
{
    Scanner scanner(text);
    scanner.skipSpaces();
    const std::size_t begin = scanner.position();
    std::size_t end = begin;
    while (!scanner.atEnd()) {
        const bool space = scanner.peek() == U' ';
        scanner.advance();
        if (!space)
            end = scanner.position();
    }
    return text.substr(begin, end - begin);
}

char32_t Scanner::peek() const
{
    return atEnd() ? endOfText : meaningOf(decode(rest()).codePoint);
}

void Scanner::advance()
{
    if (!atEnd())
        m_at += decode(rest()).size;
}

bool Scanner::take(char32_t meaning)
{
    if (peek() != meaning)
        return false;
    advance();
    return true;
}

bool Scanner::takeWord(std::string_view lowerCaseWord)
{
    const std::size_t begin = m_at;
    for (const char letter : lowerCaseWord) {
        if (lowerCase(peek()) != static_cast<unsigned char>(letter)) {
            m_at = begin;
            return false;
        }
        advance();
    }
    if (!isLetter(peek()))
        return true;
    m_at = begin;
    return false;
}

void Scanner::skipSpaces()
{
    while (take(U' ')) {
    }
}

std::string_view Scanner::wordHere() const
{
    Scanner ahead = *this;
    while (!ahead.atEnd() && ahead.peek() != U' ')
        ahead.advance();
    return ahead.since(m_at);
}

} // namespace asleft
