// Whatever bytes are typed, the readers of this room answer: with what writes out and reads back the same, or with a refusal.
#include "bytes.h"

#include <joints/order.h>
#include <joints/passes.h>
#include <joints/strength.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <vector>

namespace asleft {
namespace random_bytes_tests {

/// How many texts a reader is given.
int rounds()
{
    return std::getenv("ASLEFT_LONG") != nullptr ? 1'000'000 : 20'000;
}

/// Text put together from pieces the reader may know, with any bytes between, or from bytes alone.
class NearlyText {
public:
    NearlyText(unsigned seed, std::vector<std::string> pieces, int most)
        : m_bytes(seed, " ,;-+.0123456789", 40), m_pieces(std::move(pieces)), m_most(most)
    {
    }

    std::string next()
    {
        if (draw(0, 9) == 0)
            return m_bytes.next();
        std::string text;
        for (int left = draw(0, m_most); left > 0; --left) {
            const bool stray = draw(0, 39) == 0;
            text += stray ? std::string(1, static_cast<char>(static_cast<unsigned char>(draw(0, 255)))) : piece();
        }
        return text;
    }
    int draw(int low, int high) { return m_bytes.draw(low, high); }

private:
    const std::string &piece() { return m_pieces[static_cast<std::size_t>(draw(0, static_cast<int>(m_pieces.size()) - 1))]; }

    Bytes m_bytes;
    std::vector<std::string> m_pieces;
    int m_most;
};

/// Gives a reader its texts; `accepts` says whether one was accepted, and checks what came of it.
template <class Accepts>
void expectReadAndRefused(NearlyText text, int fewestRead, Accepts accepts)
{
    int read = 0;
    int refused = 0;
    for (int round = 0; round < rounds(); ++round) {
        const std::string typed = text.next();
        SCOPED_TRACE(testing::PrintToString(typed));
        const bool accepted = accepts(typed, text);
        ++(accepted ? read : refused);
        if (testing::Test::HasFailure())
            return; // the first text that goes wrong says enough
    }
    EXPECT_GT(read, fewestRead); // else the texts have missed the accepting paths
    EXPECT_GT(refused, 1000);
}

void expectSound(const std::vector<Pass> &passes)
{
    EXPECT_FALSE(passes.empty());
    EXPECT_LE(passes.size(), static_cast<std::size_t>(mostPasses));
    for (const Pass &pass : passes) {
        if (const auto *share = std::get_if<PercentOfTarget>(&pass)) {
            EXPECT_TRUE(share->percent >= 1 && share->percent <= 99) << share->percent;
        }
        if (const auto *settle = std::get_if<Settle>(&pass)) {
            EXPECT_TRUE(settle->mostRounds >= 1 && settle->mostRounds <= mostSettleRounds) << settle->mostRounds;
        }
        if (const auto torque = torqueOfPass(pass, Torque::ofSmallest(1'000'000'000))) {
            EXPECT_GT(*torque, Torque());
        }
    }
    EXPECT_GE(totalAngle(passes, passes.size()), Angle());
    static_cast<void>(checkPasses(passes, {}));
    static_cast<void>(checkPasses(passes, {Torque::ofSmallest(32'000'000'000), true}));
}

TEST(RandomBytes, InPasses)
{
    const NearlyText text(1, {"finger", "Hand", "50", "%",      "100 %", "target", "40",     "N·m",      "Nm", "ft-lb",
                              "+",      "90",   "°",  "deg",    "1/4",   "turn",   "settle", "settle 3", ", ", ", ",
                              ";",      ",",    " ",  "\u00A0", "2.5",   "0",      "-",      "kgf·m",    ".",  "\u2009"},
                          9);
    expectReadAndRefused(text, 500, [](const std::string &typed, NearlyText &random) {
        const DecimalMark mark = random.draw(0, 1) == 0 ? DecimalMark::Point : DecimalMark::Comma;
        const auto passes = parsePasses(typed, TorqueUnit::PoundFoot, mark);
        if (!passes)
            return false;
        expectSound(*passes);
        const std::string written = writePasses(*passes);
        EXPECT_EQ(parsePasses(written, TorqueUnit::NewtonMetre, mark), *passes) << written;
        EXPECT_EQ(parsePasses(written, TorqueUnit::PoundFoot, DecimalMark::Point), *passes) << written; // as it is kept
        return true;
    });
}

TEST(RandomBytes, InThreads)
{
    const NearlyText text(2, {"M",    "m", "8", "10", "12", "x",   "×",   "*", "1", "1.25", "1,25",   "1.5", "3/8", "1/4",
                              "5/16", "-", "–", "24", "20", "UNC", "unf", "#", " ", "32",   "\u00A0", "0",   "."},
                          6);
    expectReadAndRefused(text, 100, [](const std::string &typed, NearlyText & /*random*/) {
        const auto thread = parseThread(typed);
        if (!thread)
            return false;
        EXPECT_EQ(parseThread(thread->name), *thread) << thread->name;
        const auto known = knownThreads();
        EXPECT_NE(std::find(known.begin(), known.end(), *thread), known.end()) << thread->name;
        EXPECT_GT(stressAreaSquareMillimetres(*thread), 0);
        return true;
    });
}

TEST(RandomBytes, InStrengthClasses)
{
    const NearlyText text(
        3, {"8", ".", ",", "8.8", "10", "9", "12", "4", "6", "5", "grade", "gr.", "Gr", "SAE", " ", "A2", "a4", "-", "70", "80", "2"}, 4);
    expectReadAndRefused(text, 100, [](const std::string &typed, NearlyText & /*random*/) {
        const auto strength = parseStrength(typed);
        if (!strength)
            return false;
        EXPECT_EQ(parseStrength(name(*strength)), *strength) << name(*strength);
        return true;
    });
}

TEST(RandomBytes, InPatterns)
{
    const NearlyText text(4, {"12",     "8",      "2",          "200",       "4",       "0",   "10000", " around a ",
                              " in a ", "circle", "circle of ", " rows of ", "row of ", "row", "cover", "rectangle",
                              " by ",   "×",      " ",          "7",         "-",       "1",   "Rows",  "of"},
                          4);
    expectReadAndRefused(text, 100, [](const std::string &typed, NearlyText & /*random*/) {
        const auto pattern = parsePattern(typed);
        if (!pattern)
            return false;
        EXPECT_LE(pattern->places.size(), static_cast<std::size_t>(mostFasteners));
        EXPECT_EQ(parsePattern(writePattern(*pattern)), *pattern) << writePattern(*pattern);
        EXPECT_EQ(checkedPattern(*pattern), *pattern);
        return true;
    });
}

TEST(RandomBytes, InOrders)
{
    const Pattern three = circlePattern(3).value();
    const NearlyText text(5, {"1-", "2-", "3-", "1, ", "2 ", "3\n", "1", "2", "3", "–", "4", "0", "999999999999"}, 5);
    expectReadAndRefused(text, 100, [&](const std::string &typed, NearlyText & /*random*/) {
        const auto order = parseOrder(typed, three);
        if (!order)
            return false;
        TighteningOrder sorted = *order;
        std::sort(sorted.begin(), sorted.end());
        EXPECT_EQ(sorted, (TighteningOrder{1, 2, 3}));
        EXPECT_EQ(parseOrder(writeOrder(*order), three), *order) << writeOrder(*order);
        return true;
    });
}

} // namespace random_bytes_tests
} // namespace asleft
