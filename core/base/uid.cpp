#include <base/uid.h>

#include <array>
#include <random>

namespace asleft {

Uid RandomUids::next()
{
    std::random_device source;
    std::uniform_int_distribution<unsigned> digit(0, 15);
    static constexpr std::array<char, 16> digits{'0', '1', '2', '3', '4', '5', '6', '7', '8', '9', 'a', 'b', 'c', 'd', 'e', 'f'};
    Uid uid;
    for (int i = 0; i < 32; ++i)
        uid += digits.at(digit(source));
    return uid;
}

} // namespace asleft
