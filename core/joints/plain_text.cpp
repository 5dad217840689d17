#include "plain_text.h"

#include <utility>

namespace asleft {

namespace {

// What a keyboard, a phone or a copied manual page puts where ASCII is meant.
constexpr std::pair<std::string_view, char> lookAlikes[] = {
    {"\u00A0", ' '}, {"\u2009", ' '}, {"\u202F", ' '}, {"\t", ' '},     {"\n", ' '}, {"\r", ' '}, {"\u2010", '-'}, {"\u2011", '-'},
    {"\u2013", '-'}, {"\u2014", '-'}, {"\u2212", '-'}, {"\u00D7", 'x'}, {"*", 'x'},  {",", '.'},  {"\u2044", '/'}, {"\u2033", '"'},
};

char small(char letter)
{
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

/// The next character in its plain form; takes it from the text.
char takePlain(std::string_view &text)
{
    for (const auto &[spelling, plain] : lookAlikes) {
        if (text.starts_with(spelling)) {
            text.remove_prefix(spelling.size());
            return plain;
        }
    }
    const char letter = small(text.front());
    text.remove_prefix(1);
    return letter;
}

} // namespace

std::string plainText(std::string_view typed)
{
    std::string plain;
    while (!typed.empty())
        plain += takePlain(typed);
    const std::size_t begin = plain.find_first_not_of(' ');
    if (begin == std::string::npos)
        return {};
    return plain.substr(begin, plain.find_last_not_of(' ') + 1 - begin);
}

} // namespace asleft
