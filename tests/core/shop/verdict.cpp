// A reading judged by one revision of its spec.
#include "story.h"

namespace asleft {
namespace verdict_tests {

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
    const Spec spec = specOf(intakeSpec, SpecSubject::IntakeLash, bands(first, second));
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
    Spec torque = specOf(intakeSpec, SpecSubject::LockNut, bands("0.3 mm"));
    torque.asked = pairBands<Torque>(parseBand<Torque>("20 N·m", TorqueUnit::NewtonMetre).value(), std::nullopt).value();
    EXPECT_EQ(verdictOf(taken(exact, "0.3 mm"), &torque), Verdict::NoSpec);
}

TEST(Verdicts, HotAgainstColdIsNotComparable)
{
    Spec spec = specOf(intakeSpec, SpecSubject::IntakeLash, bands("0.25-0.35 mm"));
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

// The rule of ISO 14253-1 for 0.20 to 0.30 mm and U = 0.02: proved inside 0.22 to 0.28, proved outside from 0.18 and 0.32.
TEST(Verdicts, AnExactReadingWithItsUncertainty)
{
    const Spec spec = specOf(intakeSpec, SpecSubject::IntakeLash, bands("0.20-0.30 mm"));
    const auto verdict = [&](std::string_view value, std::string_view uncertainty) {
        ReadingFact reading = taken(exact, value);
        reading.uncertainty = length(uncertainty).value;
        return verdictOf(reading, &spec);
    };
    EXPECT_EQ(verdict("0.22 mm", "0.02 mm"), Verdict::Inside);
    EXPECT_EQ(verdict("0.28 mm", "0.02 mm"), Verdict::Inside);
    EXPECT_EQ(verdict("0.21 mm", "0.02 mm"), Verdict::TooClose);
    EXPECT_EQ(verdict("0.31 mm", "0.02 mm"), Verdict::TooClose);
    EXPECT_EQ(verdict("0.18 mm", "0.02 mm"), Verdict::Low);
    EXPECT_EQ(verdict("0.32 mm", "0.02 mm"), Verdict::High);
    EXPECT_EQ(verdict("0.30 mm", "0 mm"), Verdict::Inside) << "no uncertainty is simple acceptance";
}

TEST(Verdicts, WithUncertaintyEachReadingByItsOwnSystemsBand)
{
    const Spec spec = specOf(intakeSpec, SpecSubject::IntakeLash, bands("0.25-0.30 mm", ".010-.012 in"));
    ReadingFact reading = taken(exact, ".012 in");
    EXPECT_EQ(verdictOf(reading, &spec), Verdict::Inside);
    reading.uncertainty = length("0.0005 in").value;
    EXPECT_EQ(verdictOf(reading, &spec), Verdict::TooClose);
    reading = taken(exact, ".0115 in");
    reading.uncertainty = length("0.0005 in").value;
    EXPECT_EQ(verdictOf(reading, &spec), Verdict::Inside);
}

TEST(Verdicts, BracketsAndOneSidedReadingsHaveTheirOwnEnds)
{
    const Spec spec = specOf(intakeSpec, SpecSubject::IntakeLash, bands("0.25-0.35 mm"));
    for (ReadingFact reading : {taken(bracket, "0.25 mm", "0.35 mm"), taken(ReadingForm::Loose, "0.35 mm"),
                                taken(ReadingForm::Tight, "0.25 mm"), taken(ReadingForm::ByFeel)}) {
        const Verdict without = verdictOf(reading, &spec);
        const auto interval = intervalOf(reading);
        reading.uncertainty = length("0.04 mm").value;
        EXPECT_EQ(verdictOf(reading, &spec), without);
        EXPECT_EQ(intervalOf(reading), interval);
    }
}

ReadingFact turnedBy(std::string_view text)
{
    ReadingFact reading = taken(ReadingForm::Turned);
    reading.turned = parse<Angle>(text, AngleUnit::Turn).value();
    return reading;
}

TEST(Verdicts, TurnsByTurnsAndLengthsByLengths)
{
    const Spec lengths = specOf(intakeSpec, SpecSubject::IntakeLash, bands("0.25-0.35 mm"));
    Spec angles = lengths;
    angles.asked = turnBands("3/4 ± 1/8 turn");
    EXPECT_EQ(verdictOf(turnedBy("3/4"), &angles), Verdict::Inside);
    EXPECT_EQ(verdictOf(turnedBy("7/8 turn"), &angles), Verdict::Inside);
    EXPECT_EQ(verdictOf(turnedBy("0.876 turn"), &angles), Verdict::High);
    EXPECT_EQ(verdictOf(turnedBy("224°"), &angles), Verdict::Low);
    EXPECT_EQ(verdictOf(turnedBy("3/4"), &lengths), Verdict::NotComparable);
    EXPECT_EQ(verdictOf(taken(exact, "0.30 mm"), &angles), Verdict::NotComparable);
    EXPECT_EQ(verdictOf(taken(bracket, "0.30 mm", "0.35 mm"), &angles), Verdict::NotComparable);
    EXPECT_EQ(verdictOf(taken(ReadingForm::Loose), &angles), Verdict::NotComparable) << "no leaf was tried, and none is asked";
    EXPECT_EQ(verdictOf(taken(ReadingForm::ByFeel), &angles), Verdict::ByFeel);
    EXPECT_EQ(verdictOf(taken(ReadingForm::Turned), &angles), Verdict::NoSpec) << "nobody said how far";
    EXPECT_EQ(verdictOf(turnedBy("3/4"), nullptr), Verdict::NoSpec);
    Spec torque = lengths;
    torque.asked = pairBands<Torque>(parseBand<Torque>("20 N·m", TorqueUnit::NewtonMetre).value(), std::nullopt).value();
    EXPECT_EQ(verdictOf(turnedBy("3/4"), &torque), Verdict::NoSpec);
    angles.condition = EngineCondition::Hot;
    EXPECT_EQ(verdictOf(turnedBy("3/4"), &angles), Verdict::NotComparable) << "cold against hot";
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
    EXPECT_FALSE(intervalOf(turnedBy("3/4")));
    ReadingFact measured = taken(exact, "0.25 mm");
    measured.uncertainty = length("0.02 mm").value;
    EXPECT_EQ(intervalOf(measured), Interval<Length>::within(low, length("0.02 mm").value));
}

} // namespace verdict_tests
} // namespace asleft
