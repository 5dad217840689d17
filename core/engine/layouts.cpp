#include "layouts.h"

#include <array>

namespace asleft {

namespace {

int usualBanks(Layout layout, int cylinders)
{
    switch (layout) {
    case Layout::InLine:
    case Layout::Single: return 1;
    case Layout::Vee:
    case Layout::Flat: return 2;
    case Layout::W: return cylinders % 4 == 0 ? 4 : 3;
    case Layout::Radial: return cylinders <= 9 ? 1 : 2;
    case Layout::Opposed: return cylinders % 4 == 0 ? 4 : 2;
    }
    return 1;
}

} // namespace

std::span<const int> bankChoices(Layout layout)
{
    static constexpr std::array one{1};
    static constexpr std::array two{2};
    static constexpr std::array threeOrFour{3, 4};
    static constexpr std::array upToFour{1, 2, 3, 4};
    static constexpr std::array twoOrFour{2, 4};
    switch (layout) {
    case Layout::InLine:
    case Layout::Single: return one;
    case Layout::Vee:
    case Layout::Flat: return two;
    case Layout::W: return threeOrFour;
    case Layout::Radial: return upToFour;
    case Layout::Opposed: return twoOrFour;
    }
    return {};
}

CylinderRange cylinderRange(Layout layout)
{
    switch (layout) {
    case Layout::InLine: return {1, 12, false};
    case Layout::Vee: return {2, 24, true};
    case Layout::Flat: return {2, 16, true};
    case Layout::Single: return {1, 1, false};
    case Layout::W:
    case Layout::Radial: return {3, 24, false};
    case Layout::Opposed: return {4, 24, true};
    }
    return {0, 0, false};
}

std::string usualNumbering(Layout layout, int cylinders)
{
    const int banks = usualBanks(layout, cylinders);
    std::string text;
    for (int bank = 1; bank <= banks; ++bank) {
        text += bank == 1 ? "" : " /";
        for (int number = bank; number <= cylinders; number += banks)
            text += (text.empty() ? "" : " ") + std::to_string(number);
    }
    return text;
}

} // namespace asleft
