#include <joints/strength.h>
#include <joints/thread.h>

#include <measure/parse.h>

#include <gtest/gtest.h>

#include <set>
#include <tuple>

namespace asleft {
namespace thread_tests {

constexpr double squareMillimetresPerSquareInch = 25.4 * 25.4;
constexpr double newtonsPerPound = 4.448'221'615'260'5;
constexpr double squareInchesToMillimetres(double squareInches)
{
    return squareInches * squareMillimetresPerSquareInch;
}

Thread thread(const char *text)
{
    const auto read = parseThread(text);
    EXPECT_TRUE(read) << text;
    return read.value_or(Thread{});
}

TEST(Thread, ReadsThreads)
{
    struct Row {
        const char *text;
        const char *name;
        std::int64_t diameterNanometres;
        std::int64_t pitchNanometres;
    };
    const Row rows[] = {
        {"M8", "M8", 8'000'000, 1'250'000},
        {"m8x1", "M8x1", 8'000'000, 1'000'000},
        {"M8X1.0", "M8x1", 8'000'000, 1'000'000},
        {"M8 × 1.25", "M8", 8'000'000, 1'250'000},
        {"M10*1,25", "M10x1.25", 10'000'000, 1'250'000},
        {" M 10 x 1 ", "M10x1", 10'000'000, 1'000'000},
        {"M6x.75", "M6x0.75", 6'000'000, 750'000},
        {"M1,6", "M1.6", 1'600'000, 350'000},
        {"M26\u00A0×\u00A01,5", "M26x1.5", 26'000'000, 1'500'000},
        {"M64", "M64", 64'000'000, 6'000'000},
        {"3/8-24", "3/8-24 UNF", 9'525'000, 1'058'333},
        {"3/8 – 24", "3/8-24 UNF", 9'525'000, 1'058'333},
        {"3/8\"-16", "3/8-16 UNC", 9'525'000, 1'587'500},
        {"1/4-20 UNC", "1/4-20 UNC", 6'350'000, 1'270'000},
        {"1/4-20unc", "1/4-20 UNC", 6'350'000, 1'270'000},
        {"1⁄4-28", "1/4-28 UNF", 6'350'000, 907'143},
        {"5/16 UNF", "5/16-24 UNF", 7'937'500, 1'058'333},
        {"#10-32", "#10-32 UNF", 4'826'000, 793'750},
        {"10-24", "#10-24 UNC", 4'826'000, 1'058'333},
        {"10 unf", "#10-32 UNF", 4'826'000, 793'750},
        {"no. 8-32", "#8-32 UNC", 4'165'600, 793'750},
        {"0-80", "#0-80 UNF", 1'524'000, 317'500},
        {"1-64", "#1-64 UNC", 1'854'200, 396'875},
        {"1-8", "1-8 UNC", 25'400'000, 3'175'000},
        {"1\"-12", "1-12 UNF", 25'400'000, 2'116'667},
        {"1\" UNC", "1-8 UNC", 25'400'000, 3'175'000},
        {"1 1/8-7", "1 1/8-7 UNC", 28'575'000, 3'628'571},
        {"1-1/8-12 UNF", "1 1/8-12 UNF", 28'575'000, 2'116'667},
        {"1 1/2 UNC", "1 1/2-6 UNC", 38'100'000, 4'233'333},
    };
    for (const Row &row : rows) {
        const auto read = parseThread(row.text);
        ASSERT_TRUE(read) << row.text;
        EXPECT_EQ(read->name, row.name) << row.text;
        EXPECT_EQ(read->diameter, nanometres(row.diameterNanometres)) << row.text;
        EXPECT_EQ(read->pitch, nanometres(row.pitchNanometres)) << row.text;
    }
}

TEST(Thread, RefusesWhatIsNoThread)
{
    const std::string longest(longestTypedText, '8');
    const std::string rows[] = {
        "",       " ",          "M",           "8",        "M8x",     "M8xx1",          "M8x1x1",  "M8.",
        "M8,,5",  "M-8",        "M8-1",        "M 1 0",    "M8 fine", "M8x1.2500001",   "MM8",     "x1",
        "3/8-",   "3/8-24 UNX", "3/-24",       "/8-24",    "3/0-24",  "3/8-0",          "2/8-20",  "10/32",
        "11/8-6", "3/7-24",     "#-32",        "#10\"-32", "# UNC",   "1/4-20 UNC UNF", "1/4--20", "1/4-20 M6",
        "UNC",    "-",          "#",           "bolt",     "½-13",    "\xFF\xFE",       "M\xC3",   "M8\n1",
        "G1/4",   "1 1/2/3-6",  "3/8-24 UNF!", "M1e3",     "M0x7F",   "Mnan",           "Minf",    std::string("M8\0", 3),
        longest,
    };
    for (const std::string &text : rows) {
        const auto read = parseThread(text);
        ASSERT_FALSE(read) << text << " was read as " << read->name;
        EXPECT_EQ(read.error(), (Error{ErrorKind::ThreadUnread, {text}})) << text;
    }
}

TEST(Thread, RefusesAThreadThereIsNotAndTellsWhatThereIs)
{
    struct Row {
        const char *text;
        const char *thereIs;
    };
    const Row rows[] = {
        {"M7.5", ""},
        {"M0", ""},
        {"M999999999", ""},
        {"M8x1.1", "M8, M8x1, M8x0.75"},
        {"M8x0", "M8, M8x1, M8x0.75"},
        {"M26", "M26x1.5"},
        {"3/8-25", "3/8-16 UNC, 3/8-24 UNF"},
        {"3/8", "3/8-16 UNC, 3/8-24 UNF"},
        {"1/4-20 UNF", "1/4-20 UNC, 1/4-28 UNF"},
        {"1/4-28 UNC", "1/4-20 UNC, 1/4-28 UNF"},
        {"13/16-16", ""},
        {"#7-32", ""},
        {"#0", "#0-80 UNF"},
        {"#10-8", "#10-24 UNC, #10-32 UNF"},
        {"10\"-32", ""},
        {"1\"-64", "1-8 UNC, 1-12 UNF"},
        {"1 UNC", "#1-64 UNC, #1-72 UNF, 1-8 UNC, 1-12 UNF"}, // a number size or an inch: not guessed
        {"999999999-999999999", ""},
    };
    for (const Row &row : rows) {
        const auto read = parseThread(row.text);
        ASSERT_FALSE(read) << row.text << " was read as " << read->name;
        EXPECT_EQ(read.error(), (Error{ErrorKind::ThreadUnknown, {row.text, row.thereIs}})) << row.text;
    }
}

TEST(Thread, RefusesOverlongText)
{
    const auto read = parseThread(std::string(100'000, 'M'));
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error(), (Error{ErrorKind::TextTooLong, {"100000", "200"}}));
    std::string longest(198, ' ');
    longest += "M8";
    EXPECT_EQ(parseThread(longest).value_or(Thread{}).name, "M8");
}

TEST(Thread, EveryThreadIsReadByItsNameAndByItsPitch)
{
    EXPECT_GT(knownThreads().size(), 160U);
    for (const Thread &known : knownThreads()) {
        EXPECT_EQ(parseThread(known.name), known) << known.name;
        if (known.system == UnitSystem::Inch) {
            EXPECT_EQ(parseThread(known.name.substr(0, known.name.rfind(' '))), known) << known.name;
        }
    }
}

TEST(Thread, TablesAreSortedAndSound)
{
    std::set<std::tuple<UnitSystem, Length, Length>> seen;
    std::set<std::tuple<UnitSystem, Length, bool>> coarse;
    const Thread *before = nullptr;
    for (const Thread &known : knownThreads()) {
        EXPECT_TRUE(seen.emplace(known.system, known.diameter, known.pitch).second) << known.name;
        if (known.coarse || known.system == UnitSystem::Inch) {
            EXPECT_TRUE(coarse.emplace(known.system, known.diameter, known.coarse).second) << known.name;
        }
        // A pitch is a good deal smaller than its thread, but a slip of a digit would not be.
        EXPECT_GT(known.diameter, known.pitch * 4) << known.name;
        EXPECT_LT(known.diameter, known.pitch * 43) << known.name;
        if (before != nullptr) {
            EXPECT_LE(before->diameter, known.diameter) << known.name;
            EXPECT_TRUE(before->diameter < known.diameter || before->pitch > known.pitch) << known.name;
            EXPECT_TRUE(before->diameter < known.diameter || !known.coarse) << known.name;
        }
        before = &known;
    }
}

TEST(Thread, CoarsePitchesAreThoseOfTheStandard)
{
    // ISO 261 and ASME B1.1, from memory; typed here apart from the tables.
    const std::pair<const char *, const char *> rows[] = {
        {"M2", "M2x0.4"},         {"M3", "M3x0.5"},         {"M4", "M4x0.7"},          {"M5", "M5x0.8"},        {"M6", "M6x1"},
        {"M7", "M7x1"},           {"M12", "M12x1.75"},      {"M14", "M14x2"},          {"M16", "M16x2"},        {"M18", "M18x2.5"},
        {"M20", "M20x2.5"},       {"M22", "M22x2.5"},       {"M24", "M24x3"},          {"M30", "M30x3.5"},      {"M36", "M36x4"},
        {"#6 UNC", "6-32"},       {"#8 UNF", "8-36"},       {"#12 UNF", "12-28"},      {"7/16 UNC", "7/16-14"}, {"7/16 UNF", "7/16-20"},
        {"1/2 UNC", "1/2-13"},    {"9/16 UNC", "9/16-12"},  {"3/4 UNF", "3/4-16"},     {"7/8 UNC", "7/8-9"},    {"7/8 UNF", "7/8-14"},
        {"1 1/4 UNC", "1 1/4-7"}, {"1 3/8 UNC", "1 3/8-6"}, {"1 3/8 UNF", "1 3/8-12"},
    };
    for (const auto &[said, counted] : rows)
        EXPECT_EQ(thread(said), thread(counted)) << said;
}

TEST(Thread, StressAreas)
{
    struct Row {
        const char *text;
        double area;
        double rounding; ///< half a unit of the last printed place, and a tenth of it for where the source rounds up
    };
    const Row rows[] = {
        // ISO 898-1, in mm²
        {"M6", 20.1, 0.055},
        {"M8", 36.6, 0.055},
        {"M10", 58.0, 0.055},
        {"M12", 84.3, 0.055},
        // Shigley, Table 8-2, in square inches
        {"1/4-20", squareInchesToMillimetres(0.0318), squareInchesToMillimetres(0.000'055)},
        {"1/4-28", squareInchesToMillimetres(0.0364), squareInchesToMillimetres(0.000'055)},
        {"3/8-16", squareInchesToMillimetres(0.0775), squareInchesToMillimetres(0.000'055)},
        {"3/8-24", squareInchesToMillimetres(0.0878), squareInchesToMillimetres(0.000'055)},
        {"1/2-13", squareInchesToMillimetres(0.1419), squareInchesToMillimetres(0.000'055)},
        {"1/2-20", squareInchesToMillimetres(0.1599), squareInchesToMillimetres(0.000'055)},
    };
    for (const Row &row : rows)
        EXPECT_NEAR(stressAreaSquareMillimetres(thread(row.text)), row.area, row.rounding) << row.text;
}

TEST(Strength, ProofLoads)
{
    struct Row {
        const char *text;
        StrengthClass strength;
        double newtons;
    };
    // ISO 898-1, coarse threads; printed in hundreds of newtons, rounded now up, now down.
    const Row rows[] = {
        {"M6", StrengthClass::C8_8, 11'600},  {"M6", StrengthClass::C10_9, 16'700},  {"M8", StrengthClass::C8_8, 21'200},
        {"M8", StrengthClass::C10_9, 30'400}, {"M10", StrengthClass::C8_8, 33'700},  {"M10", StrengthClass::C10_9, 48'100},
        {"M12", StrengthClass::C8_8, 48'900}, {"M12", StrengthClass::C10_9, 70'000},
    };
    for (const Row &row : rows)
        EXPECT_NEAR(proofLoadNewtons(row.strength, thread(row.text)).value_or(0), row.newtons, 100) << row.text;
    // SAE J429 by Shigley, Tables 8-2 and 8-9: 85 kpsi on 0.0775 square inches.
    EXPECT_NEAR(proofLoadNewtons(StrengthClass::Sae5, thread("3/8-16")).value_or(0), 85'000 * 0.0775 * newtonsPerPound, 30);
}

TEST(Strength, ProofStressBySize)
{
    using enum StrengthClass;
    constexpr double kpsi = 6.894'757'293'168'36;
    struct Row {
        StrengthClass strength;
        const char *thread;
        std::optional<double> megapascals;
    };
    const Row rows[] = {
        // ISO 898-1; 8.8 to 12.9 published, the others and the limits of size from memory
        {C4_6, "M8", 225},
        {C4_8, "M8", 310},
        {C5_6, "M8", 280},
        {C5_8, "M8", 380},
        {C6_8, "M8", 440},
        {C8_8, "M16", 580},
        {C8_8, "M16x1.5", 580},
        {C8_8, "M17x1.5", 600},
        {C8_8, "M18", 600},
        {C9_8, "M16", 650},
        {C9_8, "M18", {}},
        {C10_9, "M6", 830},
        {C10_9, "M39", 830},
        {C12_9, "M12", 970},
        {C8_8, "M1.6", 580},
        {C8_8, "M42", {}},
        {C8_8, "M8x1", 580},
        {C8_8, "M6x0.75", {}},
        {C8_8, "3/8-16", {}},
        // SAE J429 (Shigley, Table 8-9)
        {Sae2, "1/4-20", 55 * kpsi},
        {Sae2, "3/4-10", 55 * kpsi},
        {Sae2, "7/8-9", 33 * kpsi},
        {Sae5, "1/4-28", 85 * kpsi},
        {Sae5, "1-8", 85 * kpsi},
        {Sae5, "1 1/8-7", 74 * kpsi},
        {Sae8, "1/4-20", 120 * kpsi},
        {Sae8, "1 1/2-6", 120 * kpsi},
        {Sae8, "#10-32", {}},
        {Sae5, "M8", {}},
        // ISO 3506-1, from memory: the 0.2 % stress
        {A2_70, "M8", 450},
        {A4_70, "M24", 450},
        {A4_70, "M27", {}},
        {A2_70, "1/4-20", {}},
    };
    for (const Row &row : rows) {
        const auto stress = proofStressMegapascals(row.strength, thread(row.thread));
        ASSERT_EQ(stress.has_value(), row.megapascals.has_value()) << name(row.strength) << " " << row.thread;
        EXPECT_NEAR(stress.value_or(0), row.megapascals.value_or(0), 1e-9) << name(row.strength) << " " << row.thread;
        EXPECT_EQ(proofLoadNewtons(row.strength, thread(row.thread)).has_value(), stress.has_value());
    }
}

TEST(Strength, ReadsClasses)
{
    const std::pair<const char *, StrengthClass> rows[] = {
        {"8.8", StrengthClass::C8_8},     {" 8.8 ", StrengthClass::C8_8},       {"10,9", StrengthClass::C10_9},
        {"12.9", StrengthClass::C12_9},   {"4.6", StrengthClass::C4_6},         {"grade 5", StrengthClass::Sae5},
        {"Grade 2", StrengthClass::Sae2}, {"gr. 8", StrengthClass::Sae8},       {"gr8", StrengthClass::Sae8},
        {"SAE 5", StrengthClass::Sae5},   {"SAE grade 8", StrengthClass::Sae8}, {"SAE\u00A05", StrengthClass::Sae5},
        {"A2-70", StrengthClass::A2_70},  {"a4 70", StrengthClass::A4_70},      {"A4–70", StrengthClass::A4_70},
    };
    for (const auto &[text, strength] : rows)
        EXPECT_EQ(parseStrength(text), strength) << text;
    std::set<std::string_view> names;
    for (const StrengthClass strength : strengthClasses()) {
        EXPECT_EQ(parseStrength(name(strength)), strength) << name(strength);
        EXPECT_TRUE(names.insert(name(strength)).second);
    }
    EXPECT_EQ(names.size(), 14U);
}

TEST(Strength, RefusesWhatIsNoClass)
{
    const std::string rows[] = {"",       " ",     "5",         "8",         "88",
                                "8.9",    "-8.8",  "8.8-",      "1 0.9",     "8-8",
                                "A270",   "A2-80", "A5-70",     "grade",     "grade 3",
                                "gr. 55", "SAE",   "8.8x",      "10.9 12.9", "grade-",
                                "M8",     "\xFF",  "grade 8.8", "strong",    std::string(200, '8')};
    for (const std::string &text : rows) {
        const auto read = parseStrength(text);
        ASSERT_FALSE(read) << text << " was read as " << name(*read);
        EXPECT_EQ(read.error(), (Error{ErrorKind::ClassUnknown, {text}})) << text;
    }
    EXPECT_EQ(parseStrength(std::string(201, '8')).error(), (Error{ErrorKind::TextTooLong, {"201", "200"}}));
}

} // namespace thread_tests
} // namespace asleft
