// Whatever bytes are typed, the readers answer: with something that holds together, or with a refusal.
#include "story.h"

#include <shop/entry.h>

#include <random>

namespace asleft {
namespace {

/// Bytes of every kind, half of them from those that nearly make sense.
class Bytes {
public:
    explicit Bytes(unsigned seed) : m_random(seed) {}

    std::string next()
    {
        static constexpr std::string_view likely = "0123456789..,, -mminkmhby\";/\t";
        const bool onlyLikely = draw(0, 1) == 0;
        std::string text(static_cast<std::size_t>(draw(0, 20)), ' ');
        for (char &byte : text)
            byte = onlyLikely || draw(0, 1) == 0 ? likely[static_cast<std::size_t>(draw(0, static_cast<int>(likely.size()) - 1))]
                                                 : static_cast<char>(static_cast<unsigned char>(draw(0, 255)));
        return text;
    }
    int draw(int low, int high) { return std::uniform_int_distribution(low, high)(m_random); }
    DecimalMark mark() { return draw(0, 1) == 0 ? DecimalMark::Point : DecimalMark::Comma; }
    LengthUnit unit() { return static_cast<LengthUnit>(draw(0, 2)); }

private:
    std::mt19937 m_random;
};

constexpr int rounds = 50'000;

TEST(RandomBytes, AsLeaves)
{
    Bytes bytes(1);
    int read = 0;
    for (int round = 0; round < rounds; ++round) {
        const std::string text = bytes.next();
        const auto leaves = parseLeaves(text, bytes.unit(), bytes.mark());
        if (!leaves)
            continue;
        ++read;
        ASSERT_FALSE(leaves->empty()) << text;
        ASSERT_LE(leaves->size(), 100U) << text;
        ASSERT_GT(leaves->front().value, Length{}) << text;
        ASSERT_TRUE(std::ranges::is_sorted(*leaves, std::ranges::less_equal{}, &Typed<Length>::value) || leaves->size() == 1) << text;
    }
    EXPECT_GT(read, 1000);
    EXPECT_LT(read, rounds - 1000);
}

TEST(RandomBytes, AsAMeter)
{
    Bytes bytes(2);
    int read = 0;
    for (int round = 0; round < rounds; ++round) {
        const std::string text = bytes.next();
        const auto meter = parseMeter(text, static_cast<MeterUnit>(bytes.draw(0, 2)));
        if (!meter)
            continue;
        ++read;
        ASSERT_GE(meter->thousandths, 0) << text;
        const auto again = parseMeter(meter->text, meter->unit);
        ASSERT_TRUE(again.has_value()) << text;
        ASSERT_EQ(again->thousandths, meter->thousandths) << text;
    }
    EXPECT_GT(read, 500);
    EXPECT_LT(read, rounds - 1000);
}

TEST(RandomBytes, AsAScrew)
{
    Bytes bytes(3);
    int read = 0;
    for (int round = 0; round < rounds; ++round) {
        const bool pitch = bytes.draw(0, 1) == 0;
        const ScrewText text{pitch ? bytes.next() : "1", pitch ? "1" : bytes.next()};
        const auto screw = readScrew(text, bytes.mark());
        if (!screw || !*screw)
            continue;
        ++read;
        ASSERT_TRUE((*screw)->pitch >= micrometres(200) && (*screw)->pitch <= micrometres(5000)) << text.pitch;
        ASSERT_TRUE((*screw)->ratio >= 0.2 && (*screw)->ratio <= 5.0) << text.ratio;
    }
    EXPECT_GT(read, 500);
    EXPECT_LT(read, rounds - 1000);
}

TEST(RandomBytes, AsAReading)
{
    Bytes bytes(4);
    int read = 0;
    int brackets = 0;
    for (int round = 0; round < rounds; ++round) {
        const std::string text = bytes.next();
        const auto reading = parseReading(text, bytes.unit(), bytes.mark());
        if (!reading)
            continue;
        ++read;
        ASSERT_GE(reading->value.value, Length{}) << text;
        ASSERT_EQ(reading->form == ReadingForm::Bracket, reading->next.has_value()) << text;
        if (reading->next) {
            ++brackets;
            ASSERT_LT(reading->value.value, reading->next->value) << text;
        }
    }
    EXPECT_GT(read, 1000);
    EXPECT_GT(brackets, 5);
    EXPECT_LT(read, rounds - 1000);
}

} // namespace
} // namespace asleft
