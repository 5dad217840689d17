#include "words.h"
#include "steps.h"

#include <gtest/gtest.h>

#include <set>

namespace asleft::store {
namespace {

template <class Enum>
class Words : public ::testing::Test {
};

using Enums = ::testing::Types<MeterUnit, LengthUnit, TorqueUnit, BandForm, Layout, Rotation, Side, CrankEvent, PlanWay, Certainty,
                               EngineCondition, SpecSubject, Caution, Gate, StepKind, Phase, ReadingForm, CrankHow>;
TYPED_TEST_SUITE(Words, Enums);

TYPED_TEST(Words, AreOneForEachValue)
{
    std::set<std::string_view> words;
    int place = 0;
    for (const auto &entry : wordsFor<TypeParam>()) {
        EXPECT_EQ(static_cast<int>(entry.value), place++) << "a value has no word";
        EXPECT_TRUE(words.insert(entry.word).second) << entry.word << " stands for two values";
        EXPECT_EQ(valueOf<TypeParam>(entry.word), entry.value);
        EXPECT_EQ(wordOf(entry.value), entry.word);
    }
    EXPECT_TRUE(wordOf(static_cast<TypeParam>(place)).empty());
    EXPECT_EQ(valueOf<TypeParam>("nonsense"), std::nullopt);
    EXPECT_EQ(valueOf<TypeParam>(""), std::nullopt);
}

TYPED_TEST(Words, AreAllowedBySchema)
{
    std::string schema;
    for (const SchemaStep &step : builtInSteps())
        schema += step.text;
    for (const auto &entry : wordsFor<TypeParam>())
        EXPECT_NE(schema.find("'" + std::string(entry.word) + "'"), std::string::npos) << entry.word;
}

TEST(UnitWords, AreTheStoredNamesOfMeasure)
{
    for (const auto &entry : wordsFor<LengthUnit>())
        EXPECT_EQ(entry.word, storedName(entry.value));
    for (const auto &entry : wordsFor<TorqueUnit>())
        EXPECT_EQ(entry.word, storedName(entry.value));
}

} // namespace
} // namespace asleft::store
