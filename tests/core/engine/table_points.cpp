// Bridges, injectors and decompressors in a manual's table, and sides with several lashes.
#include "engines.h"

#include <engine/plan.h>

namespace asleft {
namespace table_points_tests {

EngineText fourWith(const std::string &valves)
{
    EngineText text = fourText();
    text.valves = valves;
    text.injectors = text.decompressors = true;
    return text;
}

/// Two intakes and two exhausts, each on its own.
EngineDesign fourValves()
{
    return made(fourWith("4"));
}
/// An intake, and two bridges for the exhausts.
EngineDesign twoBridges()
{
    EngineText text = fourWith("1+4");
    text.bridged = text.bridgeScrews = true;
    return made(text);
}
/// A bridge for each side.
EngineDesign bridged()
{
    EngineText text = fourWith("4");
    text.bridged = text.bridgeScrews = true;
    return made(text);
}

Result<CrankPlan> table(const EngineDesign &design, const std::string &points)
{
    return planFromTable(design, {{design.labels[0], CrankEvent::Compression, points}}, "");
}

std::string namesRead(const EngineDesign &design, const std::string &points)
{
    const auto plan = table(design, points);
    if (!plan)
        return "refused";
    std::vector<AdjusterRef> adjusters;
    for (const PlanPoint &point : plan->positions.at(0).points)
        adjusters.push_back(point.adjuster);
    return namesOf(design, adjusters);
}

std::string describedAgain(const EngineDesign &design, const std::string &points)
{
    const auto plan = table(design, points);
    return plan ? describePoints(design, plan->positions.at(0)) : "refused";
}

TEST(TablePoints, ASideIsAllItsLashesAndBridgeScrews)
{
    EXPECT_EQ(namesRead(fourValves(), "IN 1 EX 2"), "I1a I1b E2a E2b");
    EXPECT_EQ(namesRead(bridged(), "IN 1 EX 2"), "BI1 I1 BE2 E2");
    EXPECT_EQ(namesRead(twoBridges(), "IN 1 EX1 2"), "I1 BE1a E1a BE1b E1b BE2a E2a BE2b E2b");
}

TEST(TablePoints, SingleOnesByTheirShortNames)
{
    const EngineDesign four = fourValves();
    EXPECT_EQ(namesRead(four, "I3a"), "I3a");
    EXPECT_EQ(namesRead(four, "i3A e2b"), "E2b I3a");
    EXPECT_EQ(namesRead(four, "IN 3a 4"), "I3a I4a I4b");
    EXPECT_EQ(namesRead(four, "INTAKE3b; EXHAUST 1a"), "E1a I3b");
    EXPECT_EQ(namesRead(four, "IN I3a I3b"), "I3a I3b");
    EXPECT_EQ(namesRead(bridged(), "I3"), "I3"); // the lash alone, while IN 3 takes the screw along
    EXPECT_EQ(namesRead(bridged(), "IN3"), "BI3 I3");
    EXPECT_EQ(namesRead(twoBridges(), "E2b BE2a"), "BE2a E2b");
}

TEST(TablePoints, EverythingHasItsWords)
{
    const EngineDesign design = bridged();
    for (const char *points : {"INJ 3 4", "inj 3, 4", "Injectors: 3 4", "INJECTOR 3 4", "J3 J4", "J 3 4", "j3 4", "INJ3 INJ4", "INJ3 4"})
        EXPECT_EQ(namesRead(design, points), "J3 J4") << points;
    for (const char *points : {"DEC 1 2", "DECOMP 1 2", "decompressors 1 2", "Decompressor 2 1", "DECOMPS 1 2", "D1 D2", "D 1 2", "DEC1 2"})
        EXPECT_EQ(namesRead(design, points), "D1 D2") << points;
    for (const char *points : {"BRIDGE IN 1 2", "bridges intake 1, 2", "BI 1 2", "BI1 BI2", "BRIDGE INLETS 1 BI2"})
        EXPECT_EQ(namesRead(design, points), "BI1 BI2") << points;
    EXPECT_EQ(namesRead(design, "BRIDGE EX 1 EX 2 BRIDGE IN 3"), "BE1 BE2 E2 BI3");
    EXPECT_EQ(namesRead(twoBridges(), "BRIDGE EX 1a 2"), "BE1a BE2a BE2b");
    EXPECT_EQ(namesRead(twoBridges(), "BE1 2"), "BE1a BE1b BE2a BE2b");
    EXPECT_EQ(namesRead(design, "IN 1 EX 1 INJ 3 DEC 1"), "BI1 I1 BE1 E1 D1 J3");
}

TEST(TablePoints, DescribedByWholeSidesWhereTheyAreWhole)
{
    EXPECT_EQ(describedAgain(bridged(), "DEC 1 IN 1 2 4 INJ 3 EX 1 3"), "IN 1 2 4 EX 1 3 INJ 3 DEC 1");
    EXPECT_EQ(describedAgain(bridged(), "BI1 I1 BI2 E3 I4"), "BI2 E3 I4 IN 1");
    EXPECT_EQ(describedAgain(fourValves(), "I1a I1b I2a EX 3 E4b"), "I2a E4b IN 1 EX 3");
    EXPECT_EQ(describedAgain(twoBridges(), "BE1a E1a BE1b"), "BE1a E1a BE1b");
    EXPECT_EQ(describedAgain(twoBridges(), "BE1a E1a BE1b E1b"), "EX 1");
}

TEST(TablePoints, CylindersNamedByLetters)
{
    EngineText text = engineText(Layout::InLine, 5, "A-B-D-E-J");
    text.numbering = "A B D E J";
    text.injectors = text.decompressors = true;
    const EngineDesign five = made(text);
    EXPECT_EQ(namesRead(five, "IN A D E J"), "IA ID IE IJ");
    EXPECT_EQ(namesRead(five, "EX D J INJ E DEC D"), "ED DD JE EJ");
    EXPECT_EQ(namesRead(five, "JD DJ EE"), "JD EE DJ");
}

TEST(TablePoints, ALetterBehindALabelMayBeALabelOfItsOwn)
{
    EngineText text = engineText(Layout::InLine, 2, "3-3A");
    text.numbering = "3 3A";
    text.valves = "4";
    const EngineDesign odd = made(text);
    EXPECT_EQ(namesRead(odd, "IN 3A"), "I3Aa I3Ab");
    EXPECT_EQ(namesRead(odd, "I3a"), "I3a"); // a short name
    EXPECT_EQ(namesRead(odd, "I3Ab IN 3"), "I3a I3b I3Ab");
    EXPECT_EQ(describedAgain(odd, "I3a EX 3A"), "I3a EX 3A");
}

TEST(TablePoints, Refused)
{
    const std::tuple<EngineDesign, std::string, Error> rows[] = {
        {inLine4(), "INJ 1", {ErrorKind::TablePointUnread, {"INJ"}}},
        {inLine4(), "J1", {ErrorKind::TablePointUnread, {"J1"}}},
        {inLine4(), "J9", {ErrorKind::TableCylinder, {"9"}}},
        {inLine4(), "DEC 1", {ErrorKind::TablePointUnread, {"DEC"}}},
        {inLine4(), "BRIDGE IN 1", {ErrorKind::TablePointUnread, {"IN"}}},
        {inLine4(), "BI1", {ErrorKind::TablePointUnread, {"BI1"}}},
        {inLine4(), "I1a", {ErrorKind::TablePointUnread, {"I1a"}}},
        {inLine4(), "IN 1a", {ErrorKind::TablePointUnread, {"1a"}}},
        {twoStroke(2, "1-2"), "IN 1", {ErrorKind::TablePointUnread, {"IN"}}},
        {fourValves(), "I3c", {ErrorKind::TablePointUnread, {"I3c"}}},
        {fourValves(), "IN 3c", {ErrorKind::TablePointUnread, {"3c"}}},
        {fourValves(), "I9a", {ErrorKind::TableCylinder, {"9a"}}},
        {fourValves(), "I3a 4", {ErrorKind::TablePointUnread, {"4"}}}, // all of 4, or its first too?
        {fourValves(), "IN 3 I3a", {ErrorKind::TablePointTwice, {"I3a"}}},
        {fourValves(), "IN E3a", {ErrorKind::TablePointUnread, {"E3a"}}},
        {bridged(), "BRIDGE", {ErrorKind::TablePointUnread, {"BRIDGE"}}},
        {bridged(), "BRIDGE 1", {ErrorKind::TablePointUnread, {"1"}}},
        {bridged(), "BRIDGE INJ 1", {ErrorKind::TablePointUnread, {"BRIDGE"}}},
        {bridged(), "BRIDGE BRIDGE IN 1", {ErrorKind::TablePointUnread, {"BRIDGE"}}},
        {bridged(), "IN BRIDGE 1", {ErrorKind::TablePointUnread, {"IN"}}},
        {bridged(), "BRIDGE IN", {ErrorKind::TablePointUnread, {"IN"}}},
        {bridged(), "IN 1 BI1", {ErrorKind::TablePointTwice, {"BI1"}}},
        {bridged(), "BI1 2", {ErrorKind::TablePointUnread, {"2"}}},
        {bridged(), "INJ IN 1", {ErrorKind::TablePointUnread, {"INJ"}}},
        {bridged(), "D1 DEC 1", {ErrorKind::TablePointTwice, {"D1"}}},
    };
    for (const auto &[design, points, error] : rows) {
        const auto plan = table(design, points);
        ASSERT_FALSE(plan.has_value()) << points;
        EXPECT_EQ(plan.error(), error) << points;
    }
}

TEST(TablePoints, AtAnyEvent)
{
    const EngineDesign four = fourValves();
    const auto plan = planFromTable(four, {{"1", CrankEvent::ExhaustOpens, "IN 1"}, {"4", CrankEvent::ExhaustFullyOpen, "E1a"}}, "p 12");
    ASSERT_TRUE(plan.has_value());
    EXPECT_EQ(plan->positions[0].crank, degrees(120));
    EXPECT_EQ(plan->positions[0].points[0].margin, degrees(220 - 20));
    EXPECT_EQ(plan->positions[1].crank, degrees(610));
    EXPECT_EQ(plan->unreached.size(), four.adjusters().size() - 3);
}

TEST(TablePoints, TheLongestDescriptionIsShortEnoughToRead)
{
    EngineText text = engineText(Layout::Vee, 24, "");
    for (int i = 0; i < 24; ++i) {
        const std::string label = "C" + std::to_string(100 + i);
        text.numbering += (i == 12 ? " / " : " ") + label;
        text.firingOrder += label + ' ';
    }
    text.valves = "5";
    text.injectors = text.decompressors = true;
    const EngineDesign largest = made(text);
    PlanPosition position{{{0}, CrankEvent::Compression}, {}, {}};
    for (const AdjusterRef adjuster : largest.adjusters())
        if (adjuster.kind != PointKind::Lash || adjuster.number > 0) // no side is whole
            position.points.push_back({adjuster, margin(largest, adjuster, {})});
    const auto again = table(largest, describePoints(largest, position));
    ASSERT_TRUE(again.has_value());
    EXPECT_EQ(again->positions[0].points, position.points);
}

} // namespace table_points_tests
} // namespace asleft
