#pragma once

#include <string>
#include <string_view>
#include <vector>

/// Typed text: what is white space in it, how it is kept, and how it is taken apart. Every field a person types into is read with these, so
/// that a blank of one kind is as good as one of another.
namespace asleft {

/// White space of any kind: a tab, a line's end, a no-break space, a thin or a figure space.
bool isSpace(char32_t character);

/// Without the white space at its ends.
std::string_view trimmed(std::string_view text);
bool isBlank(std::string_view text);
/// As it is kept: every run of white space one ' ', none at the ends.
std::string inOneLine(std::string_view text);
/// As it is read: inOneLine(), and what a keyboard, a phone or a copied manual page puts where ASCII is meant as it is meant. Characters
/// that look alike on paper have one meaning: every dash is '-', every raised dot "·", "″" is '"', "⁄" is '/'.
std::string plainText(std::string_view text);
/// plainText() in small letters, "×" and "*" an 'x', a decimal comma a '.': what is looked up among words.
std::string plainWords(std::string_view text);

// The standard library's own tests of characters depend on the locale and are undefined for bytes above 127.
bool isAsciiDigit(char letter);
bool isAsciiLetter(char letter);
char inCapitals(char letter);
/// ASCII letters small; all else as it is.
std::string inSmallLetters(std::string_view text);
/// Whether two words are the same, ASCII letters in any case.
bool sameWord(std::string_view a, std::string_view b);

/// The words between any of `separators`; several in a row part two words once.
std::vector<std::string_view> wordsOf(std::string_view text, std::string_view separators);
/// The trimmed pieces between each `mark`, empty ones too: always one more than there are marks.
std::vector<std::string_view> piecesOf(std::string_view text, char mark);

/// What Scanner::peek() gives behind the last character.
constexpr char32_t endOfText = 0x110000;

bool isDigit(char32_t meaning);
/// A letter of any script; whatever has no meaning here counts as one, so that no unit ends before it.
bool isLetter(char32_t meaning);

/// Walks over UTF-8 text a character at a time, and gives each in its meaning (see plainText()); a byte that is not UTF-8 is U+FFFD. Parts
/// handed out are the text as typed.
class Scanner {
public:
    explicit Scanner(std::string_view text) : m_text(text) {}

    [[nodiscard]] std::string_view text() const { return m_text; }
    [[nodiscard]] bool atEnd() const { return m_at == m_text.size(); }
    [[nodiscard]] std::size_t position() const { return m_at; }
    void moveTo(std::size_t position) { m_at = position; }

    [[nodiscard]] char32_t peek() const;
    void advance();
    bool take(char32_t meaning);
    /// Takes an ASCII word, in any case, unless a letter follows it.
    bool takeWord(std::string_view lowerCaseWord);
    void skipSpaces();

    [[nodiscard]] std::string_view rest() const { return m_text.substr(m_at); }
    [[nodiscard]] std::string_view since(std::size_t begin) const { return m_text.substr(begin, m_at - begin); }
    /// What stands here, up to the next space.
    [[nodiscard]] std::string_view wordHere() const;

private:
    std::string_view m_text;
    std::size_t m_at = 0;
};

} // namespace asleft
