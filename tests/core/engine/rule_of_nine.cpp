// In-line four, lashes 1 to 8 from the front: where valve k is fully open, 9 - k is set. CHECKVALUES section 2, published for heads whose
// intakes and exhausts mirror each other.
#include "engines.h"

#include <engine/plan.h>

#include <set>

namespace asleft {
namespace rule_of_nine_tests {

EngineText fourWithHead(const std::string &valveOrder)
{
    EngineText text = fourText();
    text.valveOrder = valveOrder;
    return text;
}

/// The lash that stands k-th from the front, counted from 1.
AdjusterRef lashAt(const EngineDesign &four, std::size_t k)
{
    return {four.banks[0].at((k - 1) / 2), four.valveOrder[0].at(k - 1)};
}

CrankPlan byNine(const EngineDesign &design)
{
    const auto plan = planFor(design, {.way = PlanWay::RuleOfNine});
    EXPECT_TRUE(plan.has_value());
    return plan.value_or(CrankPlan{});
}

/// Where the plan sets an adjuster, and with what margin.
std::pair<Angle, Angle> setAt(const CrankPlan &plan, AdjusterRef adjuster)
{
    for (const PlanPosition &position : plan.positions)
        for (const PlanPoint &point : position.points)
            if (point.adjuster == adjuster)
                return {position.crank, point.margin};
    ADD_FAILURE() << "is set nowhere";
    return {};
}

TEST(RuleOfNine, SetsNineLessK)
{
    for (const char *head : {"E I I E E I I E", "I E E I I E E I", "E I E I E I E I", "I E I E I E I E", "E I I E I E E I"})
        for (const char *order : {"1-3-4-2", "1-2-4-3"}) {
            EngineText text = fourWithHead(head);
            text.firingOrder = order;
            const EngineDesign four = made(text);
            const CrankPlan plan = byNine(four);
            EXPECT_TRUE(plan.generated);
            EXPECT_EQ(plan.way, PlanWay::RuleOfNine);
            EXPECT_TRUE(plan.unreached.empty());
            std::size_t set = 0;
            for (const PlanPosition &position : plan.positions)
                set += position.points.size();
            EXPECT_EQ(set, 8U);
            for (std::size_t k = 1; k <= 8; ++k) {
                const AdjusterRef open = lashAt(four, k);
                const int fullyOpen = open.side == Side::Exhaust ? 250 : 470; // the centrelines of the assumed cam
                const Angle crank = inCycle(four, firingAngle(four, open.cylinder) + degrees(fullyOpen));
                EXPECT_EQ(setAt(plan, lashAt(four, 9 - k)).first, crank) << head << k;
            }
        }
}

TEST(RuleOfNine, HoldsForAMirroredHeadOnly)
{
    const EngineDesign mirrored = made(fourWithHead("E I I E E I I E"));
    EXPECT_TRUE(ruleOfNineHolds(mirrored));
    EXPECT_TRUE(ruleOfNineHolds(made(fourWithHead("I E E I I E E I"))));
    const EngineDesign alternating = made(fourWithHead("E I E I E I E I"));
    EXPECT_FALSE(ruleOfNineHolds(alternating));
    EXPECT_FALSE(ruleOfNineHolds(made(fourWithHead("")))); // two lines: counted as I E I E
    for (std::size_t k = 1; k <= 8; ++k) {
        EXPECT_GT(setAt(byNine(mirrored), lashAt(mirrored, k)).second, degrees(200)) << k;
        // Ten degrees clear of the arc (CHECKVALUES section 2), and so within the ramp: kept, and doubtful.
        EXPECT_EQ(setAt(byNine(alternating), lashAt(alternating, k)).second, degrees(10 - 20)) << k;
    }
    for (const PlanPosition &position : byNine(alternating).positions)
        for (const PlanPoint &point : position.points)
            EXPECT_TRUE(point.doubtful());
}

TEST(RuleOfNine, IsSaidByTheOpenValve)
{
    const EngineDesign four = made(fourWithHead("E I I E E I I E"));
    const CrankPlan plan = byNine(four);
    ASSERT_EQ(plan.positions.size(), 8U);
    std::set<CrankEvent> events;
    for (std::size_t i = 0; i < plan.positions.size(); ++i) {
        EXPECT_EQ(crankAt(four, plan.positions[i].place), plan.positions[i].crank);
        events.insert(plan.positions[i].place.event);
        if (i > 0) {
            EXPECT_LT(plan.positions[i - 1].crank, plan.positions[i].crank);
        }
    }
    EXPECT_EQ(events, (std::set{CrankEvent::IntakeFullyOpen, CrankEvent::ExhaustFullyOpen}));
}

TEST(RuleOfNine, TakesScrewsAndDecompressorsAlong)
{
    EngineText text = fourWithHead("E I I E E I I E"); // letters of bridged pairs
    text.valves = "4";
    text.bridged = text.bridgeScrews = text.injectors = text.decompressors = true;
    const EngineDesign four = made(text);
    const CrankPlan plan = byNine(four);
    EXPECT_TRUE(plan.unreached.empty());
    EXPECT_TRUE(ruleOfNineHolds(four));
    for (const Cylinder c : four.firingOrder) {
        EXPECT_EQ(setAt(plan, {c, Side::Intake, PointKind::BridgeScrew}), setAt(plan, {c, Side::Intake}));
        EXPECT_EQ(setAt(plan, {c, Side::Exhaust, PointKind::BridgeScrew}), setAt(plan, {c, Side::Exhaust}));
        EXPECT_EQ(setAt(plan, {c, Side::Exhaust, PointKind::Decompressor}), setAt(plan, {c, Side::Exhaust}));
        // The injector is no lash: it goes where its own margin is greatest.
        const AdjusterRef ownInjector{c, Side::Intake, PointKind::Injector};
        for (const PlanPosition &position : plan.positions)
            EXPECT_LE(margin(four, ownInjector, position.crank), setAt(plan, ownInjector).second);
    }
}

TEST(RuleOfNine, ValvesFullyOpenTogetherAreOnePosition)
{
    // With both centrelines 90 from the dead centre between them, one cylinder's intake is fully open with another's exhaust.
    EngineText text = fourWithHead("E I I E E I I E");
    text.cam = wholeDegrees(20, 20, 20, 20, 10);
    const EngineDesign four = made(text);
    const CrankPlan plan = byNine(four);
    ASSERT_EQ(plan.positions.size(), 4U);
    for (const PlanPosition &position : plan.positions)
        EXPECT_EQ(position.points.size(), 2U);
}

TEST(RuleOfNine, RefusesEveryOtherEngine)
{
    EngineText fourValves = fourWithHead("");
    fourValves.valves = "4";
    EngineText flat = engineText(Layout::Flat, 4, "1-3-2-4");
    for (const EngineDesign &design :
         {inLine3(), inLine6(), vee8(), made(fourValves), made(flat), made(engineText(Layout::InLine, 1, ""))}) {
        const auto plan = planFor(design, {.way = PlanWay::RuleOfNine});
        ASSERT_FALSE(plan.has_value());
        EXPECT_EQ(plan.error(), (Error{ErrorKind::PlanNotForEngine, {}}));
    }
    fourValves.bridged = true; // one intake lash and one exhaust lash a cylinder again
    EXPECT_TRUE(planFor(made(fourValves), {.way = PlanWay::RuleOfNine}).has_value());
}

} // namespace rule_of_nine_tests
} // namespace asleft
