// A reading judged by one revision of its spec.
#include "story.h"

namespace asleft {
namespace {

ReadingFact taken(ReadingForm form, std::string_view value = {}, std::string_view next = {})
{
    ReadingFact reading{.point = PointId(1), .form = form, .value = {}, .next = {}, .judgedBy = {}, .tool = {}, .corrects = {}};
    if (!value.empty())
        reading.value = length(value);
    if (!next.empty())
        reading.next = length(next);
    return reading;
}

struct VerdictCase {
    const char *band;
    const char *otherBand;
    ReadingFact reading;
    Verdict verdict;
};

class VerdictOf : public testing::TestWithParam<VerdictCase> {};

TEST_P(VerdictOf, ByItsBand)
{
    const auto &[first, second, reading, verdict] = GetParam();
    const Spec spec = lash(intakeSpec, SpecSubject::IntakeLash, bands(first, second));
    EXPECT_EQ(verdictOf(reading, &spec), verdict);
}

constexpr auto exact = ReadingForm::Exact;
constexpr auto bracket = ReadingForm::Bracket;

INSTANTIATE_TEST_SUITE_P(Exact, VerdictOf,
                         testing::Values(VerdictCase{"0.25-0.35 mm", "", taken(exact, "0.25 mm"), Verdict::Inside},
                                         VerdictCase{"0.25-0.35 mm", "", taken(exact, "0.35 mm"), Verdict::Inside},
                                         VerdictCase{"0.25-0.35 mm", "", taken(exact, "0.24 mm"), Verdict::Low},
                                         VerdictCase{"0.25-0.35 mm", "", taken(exact, "0.36 mm"), Verdict::High},
                                         VerdictCase{"at least 0.25 mm", "", taken(exact, "9 mm"), Verdict::Inside},
                                         VerdictCase{"at most 0.25 mm", "", taken(exact, "0.26 mm"), Verdict::High}));

// 0.012 in is 0.3048 mm and 0.010 in is 0.254 mm: printed limits rounded apart, each for its own system.
INSTANTIATE_TEST_SUITE_P(BothSystemsPrinted, VerdictOf,
                         testing::Values(VerdictCase{"0.25-0.30 mm", ".010-.012 in", taken(exact, ".012 in"), Verdict::Inside},
                                         VerdictCase{"0.25-0.30 mm", ".010-.012 in", taken(exact, "12 thou"), Verdict::Inside},
                                         VerdictCase{"0.25-0.30 mm", ".010-.012 in", taken(exact, "0.3048 mm"), Verdict::High},
                                         VerdictCase{"0.25-0.30 mm", ".010-.012 in", taken(exact, "0.25 mm"), Verdict::Inside},
                                         VerdictCase{".010-.012 in", "0.25-0.30 mm", taken(exact, "0.25 mm"), Verdict::Inside},
                                         VerdictCase{".010-.012 in", "", taken(exact, "0.25 mm"), Verdict::Low},
                                         VerdictCase{"0.25-0.30 mm", "", taken(exact, ".012 in"), Verdict::High}));

INSTANTIATE_TEST_SUITE_P(Intervals, VerdictOf,
                         testing::Values(VerdictCase{"0.25-0.35 mm", "", taken(bracket, "0.25 mm", "0.30 mm"), Verdict::Inside},
                                         VerdictCase{"0.25-0.35 mm", "", taken(bracket, "0.30 mm", "0.35 mm"), Verdict::Inside},
                                         VerdictCase{"0.25-0.35 mm", "", taken(bracket, "0.30 mm", "0.40 mm"), Verdict::TooClose},
                                         VerdictCase{"0.25-0.35 mm", "", taken(bracket, "0.20 mm", "0.25 mm"), Verdict::Low},
                                         VerdictCase{"0.25-0.35 mm", "", taken(bracket, "0.35 mm", "0.40 mm"), Verdict::TooClose},
                                         VerdictCase{"0.25-0.35 mm", "", taken(bracket, "0.36 mm", "0.40 mm"), Verdict::High},
                                         VerdictCase{"0.25-0.35 mm", "", taken(ReadingForm::Loose, "0.35 mm"), Verdict::High},
                                         VerdictCase{"0.25-0.35 mm", "", taken(ReadingForm::Loose, "0.30 mm"), Verdict::TooClose},
                                         VerdictCase{"at least 0.25 mm", "", taken(ReadingForm::Loose, "0.25 mm"), Verdict::Inside},
                                         VerdictCase{"0.25-0.35 mm", "", taken(ReadingForm::Tight, "0.25 mm"), Verdict::Low},
                                         VerdictCase{"0.25-0.35 mm", "", taken(ReadingForm::Tight, "0.30 mm"), Verdict::TooClose},
                                         VerdictCase{"at most 0.35 mm", "", taken(ReadingForm::Tight, "0.35 mm"), Verdict::Inside},
                                         VerdictCase{"0.25-0.35 mm", "", taken(ReadingForm::ByFeel), Verdict::ByFeel},
                                         VerdictCase{"0.25-0.35 mm", "", taken(ReadingForm::Loose), Verdict::NoSpec},
                                         VerdictCase{"0.25-0.35 mm", "", taken(bracket, "0.25 mm"), Verdict::NoSpec}));

TEST(Verdicts, WithoutASpecOrByATorqueThereIsNone)
{
    EXPECT_EQ(verdictOf(taken(exact, "0.3 mm"), nullptr), Verdict::NoSpec);
    EXPECT_EQ(verdictOf(taken(ReadingForm::ByFeel), nullptr), Verdict::ByFeel);
    Spec torque = lash(intakeSpec, SpecSubject::LockNut, bands("0.3 mm"));
    torque.asked = pairBands<Torque>(parseBand<Torque>("20 N·m", TorqueUnit::NewtonMetre).value(), std::nullopt).value();
    EXPECT_EQ(verdictOf(taken(exact, "0.3 mm"), &torque), Verdict::NoSpec);
}

TEST(Verdicts, HotAgainstColdIsNotComparable)
{
    Spec spec = lash(intakeSpec, SpecSubject::IntakeLash, bands("0.25-0.35 mm"));
    ReadingFact reading = taken(exact, "0.3 mm");
    for (const EngineCondition meant : {EngineCondition::Cold, EngineCondition::Hot}) {
        for (const EngineCondition felt : {EngineCondition::Cold, EngineCondition::Hot}) {
            spec.condition = meant;
            reading.condition = felt;
            EXPECT_EQ(verdictOf(reading, &spec), meant == felt ? Verdict::Inside : Verdict::NotComparable);
        }
    }
    ReadingFact feel = taken(ReadingForm::ByFeel);
    feel.condition = EngineCondition::Cold;
    EXPECT_EQ(verdictOf(feel, &spec), Verdict::ByFeel);
}

TEST(Intervals, OfEveryForm)
{
    const Length low = length("0.25 mm").value;
    const Length high = length("0.30 mm").value;
    EXPECT_EQ(intervalOf(taken(exact, "0.25 mm")), Interval<Length>::point(low));
    EXPECT_EQ(intervalOf(taken(bracket, "0.25 mm", "0.30 mm")), Interval<Length>::bracket(low, high));
    EXPECT_EQ(intervalOf(taken(ReadingForm::Loose, "0.25 mm")), Interval<Length>::looserThan(low));
    EXPECT_EQ(intervalOf(taken(ReadingForm::Tight, "0.25 mm")), Interval<Length>::tighterThan(low));
    EXPECT_FALSE(intervalOf(taken(ReadingForm::ByFeel)));
    EXPECT_FALSE(intervalOf(taken(ReadingForm::Loose)));
}

} // namespace
} // namespace asleft
