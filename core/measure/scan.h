#pragma once

#include <string_view>

namespace asleft {

/// What Scanner::peek() gives behind the last character.
constexpr char32_t endOfText = 0x110000;

bool isDigit(char32_t meaning);
/// A letter of any script; whatever has no meaning here counts as one, so that no unit ends before it.
bool isLetter(char32_t meaning);

/// Without the white space at its ends, Unicode's included.
std::string_view trimmed(std::string_view text);

/// Walks over UTF-8 text a character at a time. Characters that look alike on paper have one meaning: every dash is '-', every
/// space ' ', every raised dot U'·'; a byte that is not UTF-8 is U+FFFD. Parts handed out are the text as typed.
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
