#include "engines.h"

#include <engine/plan.h>

namespace asleft {
namespace table_tests {

EngineDesign lettered()
{
    EngineText text = engineText(Layout::Vee, 4, "A1-B1-A2-B2");
    text.numbering = "A1 A2 / B1 B2";
    return made(text);
}

std::string pointsRead(const EngineDesign &design, const std::string &points)
{
    const auto plan = planFromTable(design, {{design.labels[0], CrankEvent::Compression, points}}, "");
    return plan ? describePoints(design, plan->positions.at(0)) : "refused";
}

Error refusal(const EngineDesign &design, const std::vector<TableLine> &lines)
{
    const auto plan = planFromTable(design, lines, "");
    EXPECT_FALSE(plan.has_value());
    return plan ? Error{ErrorKind::Database, {"was not refused"}} : plan.error();
}

TEST(Table, ReadsEveryWayOfTyping)
{
    const EngineDesign six = inLine6();
    for (const char *points : {
             "IN 1 2 4 EX 1 3 5",
             "in 1 2 4 ex 1 3 5",
             "IN 1,2,4 EX 1,3,5",
             "intake 1, 2, 4; exhaust 1, 3, 5",
             "Intakes: 1 2 4  Exhausts: 1 3 5",
             "inlets 4 2 1\texh 5 3 1",
             "INLET 1 2 4\nEXH 1 3 5",
             "INT 1 2 4 EXHAUST 1 3 5",
             "I 1 2 4 E 1 3 5",
             "I1 I2 I4 E1 E3 E5",
             "e1 i1 e3 i2 e5 i4",
             "IN1 2 4 EX1 3 5",
             "IN 1 EX 1 IN 2 EX 3 5 IN 4",
             "IN I1 I2 I4 EX E1 E3 E5",
             "INTAKE1 INTAKE2 INLETS4 EXHAUST1 EXH3 EX5",
         })
        EXPECT_EQ(pointsRead(six, points), "IN 1 2 4 EX 1 3 5") << points;
}

TEST(Table, ReadsLabelsWithLetters)
{
    const EngineDesign design = lettered();
    EXPECT_EQ(pointsRead(design, "IN A1 B2"), "IN A1 B2");
    EXPECT_EQ(pointsRead(design, "IA1 ea2 EXB1"), "IN A1 EX A2 B1");
    EXPECT_EQ(pointsRead(design, "in a1 ex b2"), "IN A1 EX B2");
}

TEST(Table, ALabelGoesBeforeASideGluedToOne)
{
    EngineText text = engineText(Layout::InLine, 2, "E1 I1");
    text.numbering = "E1 I1";
    const EngineDesign odd = made(text);
    EXPECT_EQ(pointsRead(odd, "IN E1 EX I1"), "IN E1 EX I1");
    EXPECT_EQ(pointsRead(odd, "IE1 EI1"), "IN E1 EX I1");
}

TEST(Table, TypedFromThePublishedTablesIsTheGeneratedPlan)
{
    const struct {
        EngineDesign design;
        std::vector<TableLine> lines;
    } rows[] = {
        // TM 9-6115-670-14&P p 5-131
        {inLine3(), {{"1", CrankEvent::Compression, "IN 1 3 EX 1 2"}, {"1", CrankEvent::Overlap, "IN 2 EX 3"}}},
        // TM 5-3895-383-24 p 6-60; TM 5-3805-258-24-1 p 4-28
        {inLine4(), {{"1", CrankEvent::Compression, "IN 1 2 EX 1 3"}, {"4", CrankEvent::Compression, "IN 3 4 EX 2 4"}}},
        // TM 9-2815-256-24
        {inLine6(), {{"1", CrankEvent::Compression, "IN 1 2 4 EX 1 3 5"}, {"6", CrankEvent::Compression, "IN 3 5 6 EX 2 4 6"}}},
        // widely printed in workshop manuals; from memory
        {vee8(), {{"1", CrankEvent::Compression, "EX 1 3 4 8 IN 1 2 5 7"}, {"1", CrankEvent::Overlap, "EX 2 5 6 7 IN 3 4 6 8"}}},
    };
    for (const auto &row : rows) {
        const auto plan = planFromTable(row.design, row.lines, "manual, page");
        ASSERT_TRUE(plan.has_value());
        EXPECT_FALSE(plan->generated);
        EXPECT_EQ(plan->source, "manual, page");
        EXPECT_TRUE(plan->unreached.empty());
        const CrankPlan generated = generatePlan(row.design, PlanWay::TwoPositions);
        ASSERT_EQ(plan->positions.size(), generated.positions.size());
        for (std::size_t i = 0; i < plan->positions.size(); ++i) {
            EXPECT_EQ(plan->positions[i].points, generated.positions[i].points);
            EXPECT_EQ(plan->positions[i].crank, generated.positions[i].crank);
        }
    }
}

TEST(Table, KeepsWhatGeometryDoubts)
{
    const EngineDesign four = inLine4();
    // Intake 4 is at overlap with no. 1 on compression.
    const auto plan = planFromTable(four, {{"1", CrankEvent::Compression, "IN 1 4"}}, "p 3");
    ASSERT_TRUE(plan.has_value());
    ASSERT_EQ(plan->positions.at(0).points.size(), 2U);
    EXPECT_FALSE(plan->positions[0].points[0].doubtful());
    EXPECT_TRUE(plan->positions[0].points[1].doubtful());
    EXPECT_EQ(plan->positions[0].points[1].margin, degrees(-40));
    EXPECT_TRUE((PlanPoint{intake(four, "1"), Angle{}}.doubtful()));
}

TEST(Table, NamesTheValvesInNoLine)
{
    const EngineDesign four = inLine4();
    const auto plan = planFromTable(four, {{" 1 ", CrankEvent::Overlap, "IN 3 4 EX 4"}, {"", CrankEvent::Compression, " "}}, "");
    ASSERT_TRUE(plan.has_value());
    ASSERT_EQ(plan->positions.size(), 1U); // an empty line is no line
    EXPECT_EQ(plan->positions[0].crank, degrees(360));
    EXPECT_EQ(plan->positions[0].place, (CrankPosition{cylinder(four, "1"), CrankEvent::Overlap}));
    EXPECT_EQ(plan->unreached,
              (std::vector<AdjusterRef>{intake(four, "1"), exhaust(four, "1"), intake(four, "2"), exhaust(four, "2"), exhaust(four, "3")}));
}

TEST(Table, RefusesBadPoints)
{
    const EngineDesign four = inLine4();
    const std::pair<std::string, Error> rows[] = {
        {"", {ErrorKind::EmptyText, {}}},
        {" ,; ", {ErrorKind::EmptyText, {}}},
        {"1 2", {ErrorKind::TablePointUnread, {"1"}}}, // of which side?
        {"IN", {ErrorKind::TablePointUnread, {"IN"}}},
        {"IN EX 1", {ErrorKind::TablePointUnread, {"IN"}}},
        {"IN 1 EX", {ErrorKind::TablePointUnread, {"EX"}}},
        {"IN E1", {ErrorKind::TablePointUnread, {"E1"}}},
        {"IN 1-4", {ErrorKind::TablePointUnread, {"1-4"}}},
        {"IN one", {ErrorKind::TablePointUnread, {"one"}}},
        {"EXX1", {ErrorKind::TablePointUnread, {"EXX1"}}},
        {"IN 1 \xff", {ErrorKind::TablePointUnread, {"\xff"}}},
        {"IN 5", {ErrorKind::TableCylinder, {"5"}}},
        {"IN A1", {ErrorKind::TableCylinder, {"A1"}}},
        {"I1 E9", {ErrorKind::TableCylinder, {"9"}}},
        {"EX17", {ErrorKind::TableCylinder, {"17"}}},
        {"IN 1 1", {ErrorKind::TablePointTwice, {"I1"}}},
        {"EX 2 E2", {ErrorKind::TablePointTwice, {"E2"}}},
    };
    for (const auto &[points, error] : rows)
        EXPECT_EQ(refusal(four, {{"1", CrankEvent::Compression, points}}), error) << points;
}

TEST(Table, RefusesBadLines)
{
    const EngineDesign four = inLine4();
    EXPECT_EQ(refusal(four, {}), (Error{ErrorKind::TableEmpty, {}}));
    EXPECT_EQ(refusal(four, {{"", CrankEvent::Compression, ""}}), (Error{ErrorKind::TableEmpty, {}}));
    EXPECT_EQ(refusal(four, {{"", CrankEvent::Compression, "IN 1"}}), (Error{ErrorKind::TablePositionUnread, {""}}));
    EXPECT_EQ(refusal(four, {{"no. 1", CrankEvent::Compression, "IN 1"}}), (Error{ErrorKind::TablePositionUnread, {"no. 1"}}));
    EXPECT_EQ(refusal(four, {{"5", CrankEvent::Compression, "IN 1"}}), (Error{ErrorKind::TableCylinder, {"5"}}));
    EXPECT_EQ(refusal(four, {{"1", CrankEvent::Compression, "IN 1 2"}, {"1", CrankEvent::Overlap, "IN 2"}}),
              (Error{ErrorKind::TablePointTwice, {"I2"}}));
    const std::string million(1'000'000, 'I');
    EXPECT_EQ(refusal(four, {{"1", CrankEvent::Compression, million}}), (Error{ErrorKind::TextTooLong, {"1000000", "1000"}}));
    EXPECT_EQ(refusal(four, {{million, CrankEvent::Compression, "IN 1"}}), (Error{ErrorKind::TextTooLong, {"1000000", "1000"}}));
}

} // namespace table_tests
} // namespace asleft
