// The fewest positions by trying every choice there is, on engines small enough for that; and by hand.
#include "random_engine.h"

#include <engine/plan.h>

#include <climits>

namespace asleft {
namespace fewest_small_tests {

/// Better: fewer positions, then the greater least margin, then the earlier.
struct Choice {
    std::vector<int> cranks; ///< in half degrees, ascending
    int least = 0;           ///< in half degrees
    [[nodiscard]] bool betterThan(const Choice &other) const
    {
        return std::tuple(cranks.size(), -least, cranks) < std::tuple(other.cranks.size(), -other.least, other.cranks);
    }
};

using Table = std::vector<std::vector<int>>; ///< margins in half degrees: by half degree of the crank, then by adjuster

Table marginsByFormula(const EngineDesign &design, int halfCycle)
{
    Table table;
    for (int half = 0; half < 2 * halfCycle; ++half) {
        auto &row = table.emplace_back();
        for (const AdjusterRef adjuster : design.adjusters()) {
            const Angle here = margin(design, adjuster, Angle::ofSmallest(anglePerDegree / 2) * half);
            EXPECT_EQ(here.smallest() % (anglePerDegree / 2), 0);
            row.push_back(static_cast<int>(here.smallest() / (anglePerDegree / 2)));
        }
    }
    return table;
}

/// Goes through every choice of up to `most` of `cranks`, from the first on.
class EveryChoice {
public:
    EveryChoice(const Table &table, std::vector<int> cranks, int need) : m_table(table), m_cranks(std::move(cranks)), m_need(need) {}

    std::optional<Choice> best(std::size_t most)
    {
        for (std::size_t count = 1; count <= most && !m_best; ++count)
            choose(0, count, {}, std::vector<int>(m_table.front().size(), INT_MIN));
        return m_best;
    }

private:
    void choose(std::size_t first, std::size_t left, const std::vector<int> &chosen, const std::vector<int> &greatest)
    {
        if (left == 0) {
            const Choice choice{chosen, *std::min_element(greatest.begin(), greatest.end())};
            if (choice.least >= m_need && (!m_best || choice.betterThan(*m_best)))
                m_best = choice;
            return;
        }
        for (std::size_t i = first; i < m_cranks.size(); ++i) {
            auto with = chosen;
            with.push_back(m_cranks[i]);
            auto raised = greatest;
            const auto &row = m_table[static_cast<std::size_t>(m_cranks[i])];
            for (std::size_t point = 0; point < raised.size(); ++point)
                raised[point] = std::max(raised[point], row[point]);
            choose(i + 1, left - 1, with, raised);
        }
    }

    const Table &m_table;
    std::vector<int> m_cranks;
    int m_need;
    std::optional<Choice> m_best;
};

std::vector<int> cranksOf(const CrankPlan &plan)
{
    std::vector<int> halves;
    for (const PlanPosition &position : plan.positions) {
        EXPECT_EQ(position.crank.smallest() % (anglePerDegree / 2), 0);
        halves.push_back(static_cast<int>(position.crank.smallest() / (anglePerDegree / 2)));
    }
    return halves;
}

std::vector<int> marksOf(const WholeDegreeEngine &engine)
{
    std::set<int> marks;
    for (const int fires : engine.fires) {
        marks.insert(2 * fires);
        if (engine.cycle == 720)
            marks.insert(2 * ((fires + 360) % 720));
    }
    return {marks.begin(), marks.end()};
}

TEST(FewestSmall, FromEveryTdcTheBestOfAllChoices)
{
    EngineDraw draw(41, {.mostCylinders = 5});
    int planned = 0, several = 0;
    for (int round = 0; round < 300; ++round) {
        const WholeDegreeEngine engine = draw.next();
        const Table table = marginsByFormula(engine.design, engine.cycle);
        const int need = draw.draw(1, 40);
        const auto expected = EveryChoice(table, marksOf(engine), 2 * need).best(10);
        const auto plan = planFor(engine.design, {.way = PlanWay::Fewest, .leastMargin = degrees(need)});
        ASSERT_EQ(plan.has_value(), expected.has_value()) << round;
        if (!plan)
            continue;
        ++planned;
        several += plan->positions.size() > 1;
        EXPECT_EQ(cranksOf(*plan), expected->cranks) << round;
    }
    EXPECT_GT(planned, 100);
    EXPECT_GT(several, 50);
}

TEST(FewestSmall, FromAnyAngleTheBestOfAllChoices)
{
    // All end points are whole degrees, so the best choice is at half degrees; two of them can all be tried.
    EngineDraw draw(42, {.mostCylinders = 3});
    int single = 0, pairs = 0;
    for (int round = 0; round < 60; ++round) {
        const WholeDegreeEngine engine = draw.next();
        const int need = draw.draw(1, 40);
        const auto plan = planFor(engine.design, {.way = PlanWay::Fewest, .marks = CrankMarks::AnyAngle, .leastMargin = degrees(need)});
        const std::size_t positions = plan ? plan->positions.size() : 0;
        if (positions > 2 || (positions == 2 && pairs >= 12))
            continue;
        const Table table = marginsByFormula(engine.design, engine.cycle);
        std::vector<int> everywhere;
        for (int half = 0; half < 2 * engine.cycle; ++half)
            everywhere.push_back(half);
        const auto expected = EveryChoice(table, everywhere, 2 * need).best(std::max<std::size_t>(positions, 1));
        ASSERT_EQ(plan.has_value(), expected.has_value()) << round;
        if (!plan)
            continue;
        EXPECT_EQ(cranksOf(*plan), expected->cranks) << round;
        (positions == 1 ? single : pairs) += 1;
    }
    EXPECT_GT(single, 5);
    EXPECT_EQ(pairs, 12);
}

EngineDesign known(EngineText text)
{
    text.cam.assumed = false;
    return made(text);
}

TEST(Fewest, NeedsAKnownCam)
{
    const auto plan = planFor(inLine4(), {.way = PlanWay::Fewest});
    ASSERT_FALSE(plan.has_value());
    EXPECT_EQ(plan.error(), (Error{ErrorKind::PlanNeedsCam, {}}));
}

TEST(Fewest, OfAnInLineFourAreTheTwoPositions) // TM 5-3895-383-24 p 6-60, with the usual events known
{
    const EngineDesign four = known(fourText());
    const auto plan = planFor(four, {.way = PlanWay::Fewest});
    ASSERT_TRUE(plan.has_value());
    ASSERT_EQ(plan->positions.size(), 2U);
    EXPECT_EQ(describePoints(four, plan->positions[0]), "IN 1 2 EX 1 3");
    EXPECT_EQ(describePoints(four, plan->positions[1]), "IN 3 4 EX 2 4");
    const auto first = planFor(four, {.way = PlanWay::Fewest, .marks = CrankMarks::FirstOnly});
    EXPECT_EQ(first, plan);
    const auto later = planFor(four, {.way = PlanWay::Fewest, .from = degrees(90)});
    ASSERT_TRUE(later.has_value());
    EXPECT_EQ(later->positions[0], plan->positions[1]);
    EXPECT_EQ(later->positions[1], plan->positions[0]);
}

TEST(Fewest, MarginsOfHalvesOfHalvesAreExact)
{
    // One cylinder, one angle: intake free from 600 to 340, exhaust from 380 to 120 and a bit. Both are free from 600 to 120; the middle is
    // 0 and its margin 120 - 20. With the exhaust opening a thousandth of a degree later the middle is half a thousandth on.
    EngineText text = engineText(Layout::Single, 1, "");
    text.cam = events(degrees(20), degrees(60), degrees(60) - millidegrees(1), degrees(20), degrees(20));
    const EngineDesign single = made(text);
    const auto plan = planFor(single, {.way = PlanWay::Fewest, .marks = CrankMarks::AnyAngle});
    ASSERT_TRUE(plan.has_value());
    ASSERT_EQ(plan->positions.size(), 1U);
    const Angle halfAThousandth = Angle::ofSmallest(millidegrees(1).smallest() / 2);
    EXPECT_EQ(plan->positions[0].crank, halfAThousandth);
    EXPECT_EQ(plan->positions[0].points[0].margin, degrees(100) + halfAThousandth);
    EXPECT_EQ(plan->positions[0].place, (CrankPosition{{0}, CrankEvent::Compression}));
    // From marks it is set at the dead centre itself.
    EXPECT_EQ(planFor(single, {.way = PlanWay::Fewest})->positions[0].crank, Angle{});
}

TEST(Fewest, NamesWhatNoMarkReaches)
{
    EngineText text = engineText(Layout::InLine, 2, "1-2", "150-570");
    text.valves = "4";
    text.bridged = text.bridgeScrews = text.decompressors = text.injectors = true;
    text.cam = wholeDegrees(20, 80, 70, 130, 40);
    const EngineDesign twin = made(text);
    const auto refused = planFor(twin, {.way = PlanWay::Fewest, .marks = CrankMarks::FirstOnly, .leastMargin = degrees(41)});
    ASSERT_FALSE(refused.has_value());
    // By hand: at 0 the exhaust of no. 2 is at 570, 80 after its arc, less a ramp of 40; at 360 it is at 210 and open.
    EXPECT_EQ(refused.error(), (Error{ErrorKind::PlanNotReached, {"BE2, E2, D2"}}));
    EXPECT_TRUE(planFor(twin, {.way = PlanWay::Fewest, .marks = CrankMarks::FirstOnly, .leastMargin = degrees(40)}).has_value());
}

TEST(Fewest, AMarginOfNothingSetsNothing)
{
    // At 0 the intake of a single that closes 160 after BDC is 20 from its arc: just the ramp. It is set a turn later, if it is shut there.
    EngineText text = engineText(Layout::Single, 1, "");
    text.cam = wholeDegrees(-40, 160, 60, 20, 20);
    const EngineDesign single = made(text);
    EXPECT_EQ(margin(single, intake(single, "1"), degrees(0)), degrees(0));
    for (const Angle least : {Angle{}, degrees(-500), Angle::ofSmallest(INT64_MIN)}) {
        const auto plan = planFor(single, {.way = PlanWay::Fewest, .leastMargin = least});
        ASSERT_TRUE(plan.has_value());
        EXPECT_EQ(plan->positions.size(), 2U);
    }
    const auto refused = planFor(single, {.way = PlanWay::Fewest, .leastMargin = Angle::ofSmallest(INT64_MAX)});
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error(), (Error{ErrorKind::PlanNotReached, {"I1, E1"}}));
}

TEST(Fewest, ATwoStrokeHasOneTopDeadCentreATurn)
{
    EngineText text = engineText(Layout::InLine, 2, "1-2", "100-260");
    text.cycle = Cycle::TwoStroke;
    text.cam = twoStrokeCam();
    const EngineDesign twin = known(text);
    // By hand: exhausts are free from 260 to 70 after their firing. At 0 no. 2 is at 260 and just not free; at 100 no. 1 is at 100.
    const auto plan = planFor(twin, {.way = PlanWay::Fewest, .leastMargin = degrees(1)});
    ASSERT_TRUE(plan.has_value());
    EXPECT_EQ(cranksOf(*plan), (std::vector{0, 200}));
    // With a degree wheel both are free together from 0 to 70, best in the middle.
    const auto wheel = planFor(twin, {.way = PlanWay::Fewest, .marks = CrankMarks::AnyAngle, .leastMargin = degrees(1)});
    ASSERT_TRUE(wheel.has_value());
    EXPECT_EQ(cranksOf(*wheel), std::vector{70});
    EXPECT_EQ(wheel->positions[0].points[0].margin, degrees(35));
    EXPECT_EQ(wheel->positions[0].place, (CrankPosition{{0}, CrankEvent::Compression}));
}

} // namespace fewest_small_tests
} // namespace asleft
