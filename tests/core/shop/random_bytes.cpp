// Whatever bytes are typed, the readers answer: with something that holds together, or with a refusal.
#include "bytes.h"
#include "story.h"

#include <shop/entry.h>
#include <shop/vehicle_number.h>

#include <measure/format.h>

namespace asleft {
namespace random_bytes_tests {

/// What nearly makes sense to the readers of this room.
class TypedShopBytes : public Bytes {
public:
    explicit TypedShopBytes(unsigned seed) : Bytes(seed, "0123456789..,, -mminkmhby\";/\t", 20) {}

    DecimalMark mark() { return draw(0, 1) == 0 ? DecimalMark::Point : DecimalMark::Comma; }
    LengthUnit unit() { return static_cast<LengthUnit>(draw(0, 2)); }
};

constexpr int rounds = 50'000;

TEST(RandomBytes, AsLeaves)
{
    TypedShopBytes bytes(1);
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
    TypedShopBytes bytes(2);
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
    TypedShopBytes bytes(3);
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
    TypedShopBytes bytes(4);
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

TEST(RandomBytes, AsTurns)
{
    Bytes bytes(5, "0123456789..,/ \u00B0-turnsevdg", 10);
    int read = 0;
    for (int round = 0; round < rounds; ++round) {
        const std::string text = bytes.next();
        const auto mark = bytes.draw(0, 1) == 0 ? DecimalMark::Point : DecimalMark::Comma;
        const auto turned = parseTurns(text, mark);
        if (!turned)
            continue;
        ++read;
        ASSERT_TRUE(turned->value >= Angle() && turned->value <= degrees(3600)) << text;
        const auto again = parseTurns(formatTyped(*turned), mark);
        ASSERT_TRUE(again.has_value()) << text;
        ASSERT_EQ(again->value, turned->value) << text;
    }
    EXPECT_GT(read, 500);
    EXPECT_LT(read, rounds - 1000);
}

TEST(RandomBytes, AsATime)
{
    Bytes bytes(6, "0123456789..,/ hhmminrs-:", 10);
    int read = 0;
    int waits = 0;
    for (int round = 0; round < rounds; ++round) {
        const std::string text = bytes.next();
        const auto mark = bytes.draw(0, 1) == 0 ? DecimalMark::Point : DecimalMark::Comma;
        if (const auto minutes = parseSinceRun(text, mark)) {
            ++read;
            ASSERT_TRUE(*minutes >= 0 && *minutes <= 525'600) << text;
            ASSERT_EQ(parseSinceRun(std::to_string(*minutes) + " min"), *minutes) << text;
        }
        const auto wait = readBleedDown({"", "", AdjusterKind::Hydraulic, text}, mark);
        if (wait && *wait) {
            ++waits;
            ASSERT_TRUE(**wait >= std::chrono::minutes(0) && **wait <= std::chrono::hours(24)) << text;
        }
    }
    EXPECT_GT(read, 500);
    EXPECT_GT(waits, 300);
    EXPECT_LT(read, rounds - 1000);
}

TEST(RandomBytes, AsAVehicleNumber)
{
    Bytes bytes(7, "0123456789ABCDEFGHJKLMNPRSTUVWXYZ", 20);
    int withDigit = 0;
    for (int round = 0; round < rounds; ++round) {
        const VehicleNumber number = checkVehicleNumber(bytes.next());
        const bool counted = number.check == NumberCheck::Agrees || number.check == NumberCheck::Differs;
        ASSERT_EQ(number.expected.has_value(), counted);
        withDigit += counted ? 1 : 0;
    }
    // A third of the letters can be a check digit.
    EXPECT_GT(withDigit, 300);
}

TEST(RandomBytes, AskedForTheUnitMeant)
{
    const std::array bandsOfManuals{bands("0.30 ± 0.05 mm"), bands(".016 ± .002 in", "0.40 ± 0.05 mm"), bands("12-16 thou")};
    TypedShopBytes bytes(8);
    int asked = 0;
    for (int round = 0; round < rounds; ++round) {
        if (const auto lash = parseBand<Length>(bytes.next(), bytes.unit(), bytes.mark())) {
            ASSERT_FALSE(unitMeant(*lash) == lash->unit) << lash->text;
        }
        const auto reading = parseReading(bytes.next(), bytes.unit(), bytes.mark());
        if (!reading)
            continue;
        const SpecBand<Length> &usual = bandsOfManuals.at(static_cast<std::size_t>(bytes.draw(0, 2)));
        const auto meant = unitMeant(*reading, usual);
        ASSERT_FALSE(meant == reading->value.unit);
        ASSERT_FALSE(meant && !farOff(*reading, usual.printedFor(reading->value.unit))) << "asked only where it is far off";
        asked += meant ? 1 : 0;
    }
    EXPECT_GT(asked, 100);
}

} // namespace random_bytes_tests
} // namespace asleft
