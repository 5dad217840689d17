// The check digit of a maker's vehicle number: 49 CFR 565.15.
#include <shop/vehicle_number.h>

#include <gtest/gtest.h>

#include <array>
#include <random>
#include <string>

namespace asleft {
namespace vehicle_number_tests {

/// The sample calculation of the regulation: its check digit is 4.
const std::string sample = "1G4AH59H45G118341";
constexpr std::string_view alphabet = "0123456789ABCDEFGHJKLMNPRSTUVWXYZ";

TEST(VehicleNumberCheck, TheSampleOfTheRegulation)
{
    const VehicleNumber number = checkVehicleNumber(sample);
    EXPECT_EQ(number.check, NumberCheck::Agrees);
    EXPECT_EQ(number.expected, '4');
    EXPECT_EQ(checkVehicleNumber("11111111111111111").check, NumberCheck::Agrees);
}

TEST(VehicleNumberCheck, BlanksHyphensAndCaseDoNotCount)
{
    for (const char *text : {"1g4ah59h45g118341", "1G4-AH59H-4-5G118341", " 1G4 AH5 9H4 5G1 183 41 ", "1G4AH59H45G118341\n"})
        EXPECT_EQ(checkVehicleNumber(text).check, NumberCheck::Agrees) << text;
}

TEST(VehicleNumberCheck, NothingTyped)
{
    for (const char *text : {"", " ", "\t\n", "-", " - "}) {
        EXPECT_EQ(checkVehicleNumber(text).check, NumberCheck::None) << text;
        EXPECT_FALSE(checkVehicleNumber(text).expected);
    }
}

TEST(VehicleNumberCheck, WithoutACheckDigit)
{
    for (const char *text : {"4711", "1G4AH59H45G11834", "1G4AH59H45G1183411", "IG4AH59H45G118341", "1G4AH59H45G11834O",
                             "1Q4AH59H45G118341", "1G4AH59H45G11834*", "1G4AH59H45G11834\xC3", "1G4AH59H45G1183ä"}) {
        EXPECT_EQ(checkVehicleNumber(text).check, NumberCheck::NoCheckDigit) << text;
        EXPECT_FALSE(checkVehicleNumber(text).expected) << text;
    }
}

TEST(VehicleNumberCheck, TenIsWrittenX)
{
    // Ones in the places of weight 8 and 2 add up to ten.
    std::string number(17, '0');
    number[0] = '1';
    number[16] = '1';
    EXPECT_EQ(checkVehicleNumber(number).expected, 'X');
    EXPECT_EQ(checkVehicleNumber(number).check, NumberCheck::Differs);
    number[8] = 'x';
    EXPECT_EQ(checkVehicleNumber(number).check, NumberCheck::Agrees);
}

TEST(VehicleNumberCheck, EveryOtherCheckDigitDiffers)
{
    for (const char c : std::string_view("0123456789X")) {
        std::string number = sample;
        number[8] = c;
        EXPECT_EQ(checkVehicleNumber(number).check, c == '4' ? NumberCheck::Agrees : NumberCheck::Differs) << c;
        EXPECT_EQ(checkVehicleNumber(number).expected, '4') << "the ninth place has no weight";
    }
}

TEST(VehicleNumberCheck, ALetterThatIsNoXIsNoCheckDigit)
{
    for (const char c : alphabet) {
        if (c <= '9' || c == 'X')
            continue;
        std::string number = sample;
        number[8] = c;
        EXPECT_EQ(checkVehicleNumber(number).check, NumberCheck::NoCheckDigit) << c;
        EXPECT_FALSE(checkVehicleNumber(number).expected) << c;
    }
    // From memory: a number as it is given outside North America, its seventh to ninth places filled up.
    EXPECT_EQ(checkVehicleNumber("WP0ZZZ99ZTS392124").check, NumberCheck::NoCheckDigit);
}

/// The values of the letters as the regulation's table prints them.
int valueOf(char c)
{
    constexpr std::string_view letters = "A1B2C3D4E5F6G7H8J1K2L3M4N5P7R9S2T3U4V5W6X7Y8Z9";
    return c <= '9' ? c - '0' : letters[letters.find(c) + 1] - '0';
}

TEST(VehicleNumberCheck, ASlipInOnePlaceChangesTheDigit)
{
    for (std::size_t place = 0; place < sample.size(); ++place) {
        if (place == 8)
            continue;
        for (const char c : alphabet) {
            std::string number = sample;
            number[place] = c;
            const bool same = valueOf(c) == valueOf(sample[place]);
            EXPECT_EQ(checkVehicleNumber(number).check, same ? NumberCheck::Agrees : NumberCheck::Differs) << number;
        }
    }
}

/// A number whose ninth character is its check digit.
std::string mended(std::string number)
{
    number[8] = '0';
    number[8] = checkVehicleNumber(number).expected.value();
    return number;
}

/// Whether two neighbours changing places is seen wherever they differ in value; the ninth place counts by the character itself.
void expectTransposedNeighboursSeen(const std::string &number)
{
    for (std::size_t place = 0; place + 1 < number.size(); ++place) {
        std::string swapped = number;
        std::swap(swapped[place], swapped[place + 1]);
        const bool ninth = place == 7 || place == 8;
        const bool same = ninth ? swapped == number : valueOf(number[place]) == valueOf(number[place + 1]);
        const VehicleNumber seen = checkVehicleNumber(swapped);
        if (same)
            EXPECT_EQ(seen.check, NumberCheck::Agrees) << swapped;
        else if (!ninth)
            EXPECT_EQ(seen.check, NumberCheck::Differs) << swapped;
        else // the digit moved into a place with a weight: it agrees only if what came into the ninth is right by chance
            EXPECT_EQ(seen.check == NumberCheck::Agrees, seen.expected == swapped[8]) << swapped; // none is expected of a letter
    }
}

TEST(VehicleNumberCheck, TransposedNeighboursAreSeen)
{
    expectTransposedNeighboursSeen(sample);
    std::string swapped = sample;
    std::swap(swapped[8], swapped[9]);
    EXPECT_EQ(checkVehicleNumber(swapped).check, NumberCheck::Differs) << swapped;
    // An H comes into the ninth place: then there is no check digit to differ.
    swapped = sample;
    std::swap(swapped[7], swapped[8]);
    EXPECT_EQ(checkVehicleNumber(swapped).check, NumberCheck::NoCheckDigit) << swapped;
    std::mt19937 random(565);
    std::uniform_int_distribution<std::size_t> any(0, alphabet.size() - 1);
    for (int i = 0; i < 200; ++i) {
        std::string number(17, '0');
        for (char &c : number)
            c = alphabet[any(random)];
        expectTransposedNeighboursSeen(mended(number));
    }
}

} // namespace vehicle_number_tests
} // namespace asleft
