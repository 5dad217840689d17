#include "support.h"

#include "fact_rows.h"
#include "steps.h"

#include <gtest/gtest.h>

#include <set>

namespace asleft::store {
namespace words_tests {

/// Whether an enum has an enumerator for a number: the compiler spells out a value that has a name by it, and any other as
/// a number cast to the enum.
template <auto value>
constexpr bool isNamed()
{
    constexpr std::string_view spelled = __PRETTY_FUNCTION__;
    constexpr std::string_view mark = "value = ";
    return spelled.at(spelled.find(mark) + mark.size()) != '(';
}

/// How many enumerators an enum has that counts from 0.
template <class Enum, int count = 0>
constexpr std::size_t namesOf()
{
    if constexpr (isNamed<static_cast<Enum>(count)>())
        return namesOf<Enum, count + 1>();
    else
        return count;
}
static_assert(namesOf<Side>() == 2 && namesOf<PointKind>() == 4 && namesOf<StrengthClass>() == 14);

template <class Enum>
class StoredWords : public ::testing::Test {
};

using Enums = ::testing::Types<MeterUnit, LengthUnit, TorqueUnit, AngleUnit, TemperatureUnit, BandForm, Layout, Cycle, Rotation,
                               AdjusterKind, CrankEvent, PlanWay, Certainty, EngineCondition, SpecSubject, Caution, Gate, StepKind, Phase,
                               ReadingForm, CrankHow, ToolKind, DecisionRule, Disturbance, PatternKind, StrengthClass, ThreadCondition,
                               Finish, FemaleMaterial, DriveKind, SingleUse, SettleGround, FoundHow, TickHow, Fitted, AcceptedWhat>;
TYPED_TEST_SUITE(StoredWords, Enums);

TYPED_TEST(StoredWords, AreOneForEachValue)
{
    std::set<std::string_view> words;
    int place = 0;
    for (const auto &entry : Words<TypeParam>::list) {
        EXPECT_EQ(static_cast<int>(entry.value), place++);
        EXPECT_TRUE(words.insert(entry.word).second) << entry.word << " stands for two values";
        EXPECT_EQ(valueOf<TypeParam>(entry.word), entry.value);
        EXPECT_EQ(wordOf(entry.value), entry.word);
    }
    EXPECT_EQ(Words<TypeParam>::list.size(), namesOf<TypeParam>()) << "a value has no word";
    EXPECT_TRUE(wordOf(static_cast<TypeParam>(place)).empty());
    EXPECT_EQ(valueOf<TypeParam>("nonsense"), std::nullopt);
    EXPECT_EQ(valueOf<TypeParam>(""), std::nullopt);
}

TYPED_TEST(StoredWords, AreAllowedBySchema)
{
    std::string schema;
    for (const SchemaStep &step : builtInSteps())
        schema += step.text;
    for (const auto &entry : Words<TypeParam>::list)
        EXPECT_NE(schema.find("'" + std::string(entry.word) + "'"), std::string::npos) << entry.word;
}

/// Every word of a look-up table, sorted.
std::string inTable(Raw &garage, const std::string &table)
{
    return garage.text("SELECT group_concat(word, ' ') FROM (SELECT word FROM " + table + " ORDER BY word)");
}

std::string sorted(std::set<std::string_view> words)
{
    std::string joined;
    for (const std::string_view word : words)
        joined.append(joined.empty() ? "" : " ").append(word);
    return joined;
}

template <class Enum>
std::string wordsOf()
{
    std::set<std::string_view> words;
    for (const auto &entry : Words<Enum>::list)
        words.insert(entry.word);
    return sorted(std::move(words));
}

template <std::size_t... index>
std::string kindsOfFacts(std::index_sequence<index...>)
{
    return sorted({RowOf<std::variant_alternative_t<index, Fact>>::kind...});
}

using LookUpTables = GarageTest;

TEST_F(LookUpTables, HaveTheWordsOfTheProgramAndNoOthers)
{
    Raw raw(path);
    EXPECT_EQ(inTable(raw, "act_kind"), kindsOfFacts(std::make_index_sequence<std::variant_size_v<Fact>>()));
    EXPECT_EQ(inTable(raw, "step_kind"), wordsOf<StepKind>());
    EXPECT_EQ(inTable(raw, "tool_kind"), wordsOf<ToolKind>());
    EXPECT_EQ(inTable(raw, "caution_kind"), wordsOf<Caution>());
    EXPECT_EQ(inTable(raw, "disturbance_kind"), wordsOf<Disturbance>());
    EXPECT_EQ(inTable(raw, "spec_subject"), wordsOf<SpecSubject>());
}

TEST(StrengthWords, AreTheNamesOfJoints)
{
    for (const StrengthClass strength : strengthClasses())
        EXPECT_EQ(wordOf(strength), name(strength));
}

TEST(UnitWords, AreTheStoredNamesOfMeasure)
{
    for (const auto &entry : Words<LengthUnit>::list)
        EXPECT_EQ(entry.word, storedName(entry.value));
    for (const auto &entry : Words<TorqueUnit>::list)
        EXPECT_EQ(entry.word, storedName(entry.value));
    for (const auto &entry : Words<AngleUnit>::list)
        EXPECT_EQ(entry.word, storedName(entry.value));
    for (const auto &entry : Words<TemperatureUnit>::list)
        EXPECT_EQ(entry.word, storedName(entry.value));
}

TEST(AdjusterWords, AreThoseOfOldForTheFirstLashes)
{
    EXPECT_EQ(wordOf(AdjusterRef{Cylinder{3}, Side::Intake}), "intake");
    EXPECT_EQ(wordOf(AdjusterRef{Cylinder{0}, Side::Exhaust}), "exhaust");
}

TEST(AdjusterWords, StandForOneAdjusterEach)
{
    std::set<std::string_view> words;
    for (const Side side : {Side::Intake, Side::Exhaust})
        for (const PointKind kind : {PointKind::BridgeScrew, PointKind::Lash, PointKind::Decompressor, PointKind::Injector})
            for (int number = -1; number < 6; ++number) {
                const AdjusterRef adjuster{Cylinder{5}, side, kind, number};
                const std::string_view word = wordOf(adjuster);
                if (word.empty())
                    continue;
                EXPECT_TRUE(words.insert(word).second) << word;
                EXPECT_EQ(adjusterOf(Cylinder{5}, word), adjuster) << word;
            }
    EXPECT_EQ(words.size(), 12U);
    EXPECT_EQ(adjusterOf(Cylinder{5}, "intake_4"), std::nullopt);
    EXPECT_EQ(adjusterOf(Cylinder{5}, ""), std::nullopt);
}

} // namespace words_tests
} // namespace asleft::store
