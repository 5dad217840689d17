#include <shop/vehicle_number.h>

#include <measure/text.h>

#include <array>
#include <string>

namespace asleft {

namespace {

constexpr std::size_t placeOfCheck = 8; ///< the ninth character
constexpr std::array<int, 17> weights{8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};

/// The characters that count, in capitals.
std::string counted(std::string_view text)
{
    std::string number;
    for (const char c : plainText(text))
        if (c != ' ' && c != '-')
            number += inCapitals(c);
    return number;
}

/// What a character is worth; nothing for one that is not of the alphabet.
std::optional<int> valueOf(char c)
{
    if (c >= '0' && c <= '9')
        return c - '0';
    // 49 CFR 565.15: A to H, J to R and S to Z count up from 1, 1 and 2, with I, O and Q left out.
    constexpr std::string_view letters = "ABCDEFGHJKLMNPRSTUVWXYZ";
    constexpr std::array<int, letters.size()> values{1, 2, 3, 4, 5, 6, 7, 8, 1, 2, 3, 4, 5, 7, 9, 2, 3, 4, 5, 6, 7, 8, 9};
    const auto place = letters.find(c);
    return place == std::string_view::npos ? std::nullopt : std::optional(values.at(place));
}

bool isCheckDigit(char c)
{
    return (c >= '0' && c <= '9') || c == 'X';
}

/// Nothing for a number that has none: makers outside North America fill its place with what they like.
std::optional<char> checkDigit(std::string_view number)
{
    if (number.size() != weights.size() || !isCheckDigit(number[placeOfCheck]))
        return std::nullopt;
    int sum = 0;
    for (std::size_t i = 0; i < number.size(); ++i) {
        const auto value = valueOf(number[i]);
        if (!value)
            return std::nullopt;
        sum += *value * weights.at(i);
    }
    const int rest = sum % 11;
    return rest == 10 ? 'X' : static_cast<char>('0' + rest);
}

} // namespace

VehicleNumber checkVehicleNumber(std::string_view text)
{
    const std::string number = counted(text);
    if (number.empty())
        return {NumberCheck::None, std::nullopt};
    const auto expected = checkDigit(number);
    if (!expected)
        return {NumberCheck::NoCheckDigit, std::nullopt};
    return {number[placeOfCheck] == *expected ? NumberCheck::Agrees : NumberCheck::Differs, expected};
}

} // namespace asleft
