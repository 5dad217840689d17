#pragma once

#include <random>
#include <string>
#include <string_view>

namespace asleft {

/// Bytes of every kind, half of them from those that nearly make sense to the reader under test.
class Bytes {
public:
    Bytes(unsigned seed, std::string_view likely, int longest) : m_random(seed), m_likely(likely), m_longest(longest) {}

    std::string next()
    {
        const bool onlyLikely = draw(0, 1) == 0;
        std::string text(static_cast<std::size_t>(draw(0, m_longest)), ' ');
        for (char &byte : text)
            byte = onlyLikely || draw(0, 1) == 0 ? m_likely[static_cast<std::size_t>(draw(0, static_cast<int>(m_likely.size()) - 1))]
                                                 : static_cast<char>(static_cast<unsigned char>(draw(0, 255)));
        return text;
    }
    int draw(int low, int high) { return std::uniform_int_distribution(low, high)(m_random); }

private:
    std::mt19937 m_random;
    std::string_view m_likely;
    int m_longest;
};

} // namespace asleft
