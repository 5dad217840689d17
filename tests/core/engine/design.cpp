#include "engines.h"

#include <numeric>

namespace asleft {
namespace design_tests {

EngineText fourWith(std::string EngineText::*field, std::string value)
{
    EngineText text = fourText();
    text.*field = std::move(value);
    return text;
}

EngineText vee4With(std::string EngineText::*field, std::string value)
{
    EngineText text = engineText(Layout::Vee, 4, "1-3-4-2");
    text.*field = std::move(value);
    return text;
}

std::vector<std::string> order(const EngineDesign &design)
{
    std::vector<std::string> labels;
    for (const Cylinder c : design.firingOrder)
        labels.push_back(design.label(c));
    return labels;
}

using Words = std::vector<std::string>;

TEST(Design, UsualInLineFour)
{
    const EngineDesign design = inLine4();
    EXPECT_EQ(design.labels, (Words{"1", "2", "3", "4"}));
    EXPECT_EQ(design.banks, (std::vector<std::vector<Cylinder>>{{{0}, {1}, {2}, {3}}}));
    EXPECT_EQ(order(design), (Words{"1", "3", "4", "2"}));
    EXPECT_EQ(design.gaps, std::vector<Angle>(4, degrees(180)));
    EXPECT_EQ(design.valveRows, ValveRows::Two);
    ASSERT_EQ(design.valveOrder.size(), 1U);
    EXPECT_EQ(design.valveOrder[0].size(), 8U);
    EXPECT_TRUE(design.cam.assumed);
}

TEST(Design, VeeStandsInTwoBanks)
{
    const EngineDesign design = vee8();
    EXPECT_EQ(design.labels, (Words{"1", "3", "5", "7", "2", "4", "6", "8"}));
    ASSERT_EQ(design.banks.size(), 2U);
    EXPECT_EQ(design.banks[1], (std::vector<Cylinder>{{4}, {5}, {6}, {7}}));
    EXPECT_EQ(order(design), (Words{"1", "8", "4", "3", "6", "5", "7", "2"}));
}

TEST(Design, FiringOrderTakesAnySeparator)
{
    for (const char *text : {"1 3 4 2", "1,3,4,2", " 1 - 3 - 4 - 2 ", "1-3, 4 2", "1\t3\n4 2"})
        EXPECT_EQ(made(engineText(Layout::InLine, 4, text)), inLine4()) << text;
}

TEST(Design, LettersInLabelsMatchInAnyCase)
{
    EngineText text = engineText(Layout::Vee, 4, "a1-B2-A2-b1");
    text.numbering = "A1 A2 / B1 B2";
    const EngineDesign design = made(text);
    EXPECT_EQ(order(design), (Words{"A1", "B2", "A2", "B1"}));
    EXPECT_EQ(design.named("b2"), Cylinder{3});
    EXPECT_EQ(design.named("b"), std::nullopt);
    EXPECT_EQ(design.named(""), std::nullopt);
    EXPECT_EQ(shortName(design, exhaust(design, "B2")), "EB2");
    EXPECT_EQ(shortName(design, intake(design, "A1")), "IA1");
}

TEST(Design, OneCylinderNeedsNoOrder)
{
    const EngineDesign alone = made(engineText(Layout::InLine, 1, ""));
    EXPECT_EQ(order(alone), Words{"1"});
    EXPECT_EQ(alone.gaps, std::vector<Angle>{degrees(720)});
    EXPECT_EQ(made(engineText(Layout::InLine, 1, "1")), alone);
    EXPECT_EQ(refusalOf(engineText(Layout::InLine, 1, "2")), (Error{ErrorKind::FiringOrderUnknown, {"2"}}));
}

TEST(Design, ValvesByBankIntakeFirst)
{
    const EngineDesign design = vee8();
    const auto valves = design.adjusters();
    ASSERT_EQ(valves.size(), 16U);
    EXPECT_EQ(valves[0], intake(design, "1"));
    EXPECT_EQ(valves[1], exhaust(design, "1"));
    EXPECT_EQ(valves[2], intake(design, "3"));
    EXPECT_EQ(valves[15], exhaust(design, "8"));
}

TEST(Design, EvenGapsAreWholeForEveryCount)
{
    for (int n = 1; n <= 12; ++n) {
        std::string order;
        for (int i = 1; i <= n; ++i)
            order += std::to_string(i) + ' ';
        const EngineDesign design = made(engineText(Layout::InLine, n, order));
        const Angle sum = std::accumulate(design.gaps.begin(), design.gaps.end(), Angle{});
        EXPECT_EQ(sum, degrees(720)) << n;
        EXPECT_EQ(design.gaps, std::vector<Angle>(static_cast<std::size_t>(n), design.gaps[0])) << n;
    }
}

TEST(Design, GapsTypedAndRepeated)
{
    const EngineDesign odd = made(fourWith(&EngineText::gaps, "90-270"));
    EXPECT_EQ(odd.gaps, (std::vector<Angle>{degrees(90), degrees(270), degrees(90), degrees(270)}));
    EXPECT_EQ(made(fourWith(&EngineText::gaps, "90, 270, 90, 270")), odd);
    EXPECT_EQ(made(fourWith(&EngineText::gaps, "90 - 270")), odd);
    EXPECT_EQ(made(fourWith(&EngineText::gaps, "180")), inLine4());
    EXPECT_EQ(made(fourWith(&EngineText::gaps, "360/2 180°")), inLine4());
    EXPECT_EQ(made(fourWith(&EngineText::gaps, "67.5-292.5")).gaps[1], millidegrees(292'500));
}

TEST(Design, CommaAsDecimalMarkInGaps)
{
    const auto design = designEngine(fourWith(&EngineText::gaps, "67,5-292,5"), DecimalMark::Comma);
    ASSERT_TRUE(design.has_value());
    EXPECT_EQ(design->gaps[0], millidegrees(67'500));
    EXPECT_EQ(designEngine(fourWith(&EngineText::gaps, "90, 270"), DecimalMark::Comma), made(fourWith(&EngineText::gaps, "90-270")));
    // With a point as decimal mark the comma parts: four gaps, of 67, 5, 292 and 5.
    EXPECT_EQ(refusalOf(fourWith(&EngineText::gaps, "67,5-292,5")), (Error{ErrorKind::GapsSum, {"369"}}));
}

TEST(Design, ValveOrderOfOneBankCountsForAll)
{
    const EngineDesign once = made(vee4With(&EngineText::valveOrder, "EIIE"));
    EXPECT_EQ(once.valveRows, ValveRows::One);
    ASSERT_EQ(once.valveOrder.size(), 2U);
    EXPECT_EQ(once.valveOrder[1], (std::vector<Side>{Side::Exhaust, Side::Intake, Side::Intake, Side::Exhaust}));
    EXPECT_EQ(made(vee4With(&EngineText::valveOrder, "e i i e / E I I E")), once);
    EXPECT_NE(made(vee4With(&EngineText::valveOrder, "EIIE/IEEI")), once);
}

struct BadRow {
    EngineText text;
    Error error;
};

TEST(Design, RefusesBadOrdersAndCounts)
{
    const BadRow rows[] = {
        {engineText(Layout::InLine, 0, ""), {ErrorKind::CylinderCount, {"0", "1", "12"}}},
        {engineText(Layout::InLine, -4, ""), {ErrorKind::CylinderCount, {"-4", "1", "12"}}},
        {engineText(Layout::InLine, 13, ""), {ErrorKind::CylinderCount, {"13", "1", "12"}}},
        {engineText(Layout::Vee, 5, ""), {ErrorKind::CylinderCount, {"5", "2", "24"}}},
        {engineText(Layout::Vee, 26, ""), {ErrorKind::CylinderCount, {"26", "2", "24"}}},
        {engineText(Layout::Flat, 18, ""), {ErrorKind::CylinderCount, {"18", "2", "16"}}},
        {engineText(Layout::InLine, 4, ""), {ErrorKind::FiringOrderMissing, {"1"}}},
        {engineText(Layout::InLine, 4, " - "), {ErrorKind::FiringOrderMissing, {"1"}}},
        {engineText(Layout::InLine, 4, "1-3-4"), {ErrorKind::FiringOrderMissing, {"2"}}},
        {engineText(Layout::InLine, 4, "1-3-3-2"), {ErrorKind::FiringOrderTwice, {"3"}}},
        {engineText(Layout::InLine, 4, "1-3-4-2-1"), {ErrorKind::FiringOrderTwice, {"1"}}},
        {engineText(Layout::InLine, 4, "1-3-5-2"), {ErrorKind::FiringOrderUnknown, {"5"}}},
        {engineText(Layout::InLine, 4, "1342"), {ErrorKind::FiringOrderUnknown, {"1342"}}},
        {engineText(Layout::InLine, 4, "1/3/4/2"), {ErrorKind::FiringOrderUnknown, {"1/3/4/2"}}},
        {engineText(Layout::InLine, 4, std::string("1-3-4-2\0", 8)), {ErrorKind::FiringOrderUnknown, {std::string("2\0", 2)}}},
    };
    for (const BadRow &row : rows)
        EXPECT_EQ(refusalOf(row.text), row.error) << row.text.cylinders << " cylinders, " << row.text.firingOrder;
}

TEST(Design, RefusesBadGaps)
{
    const std::pair<const char *, Error> rows[] = {
        {"90-270-90", {ErrorKind::GapsCount, {"3", "4"}}},
        {"180-180-180-180-180", {ErrorKind::GapsCount, {"5", "4"}}},
        {"-", {ErrorKind::GapsCount, {"0", "4"}}},
        {"90", {ErrorKind::GapsSum, {"360"}}},
        {"90-270.001", {ErrorKind::GapsSum, {"720.002"}}},
        {"90-9999", {ErrorKind::GapsSum, {"20178"}}},
        {"90-0", {ErrorKind::GapNotPositive, {"0"}}},
        {"0.00000000001-360", {ErrorKind::GapNotPositive, {"0.00000000001"}}},
        {"-90-450", {ErrorKind::GapNotPositive, {"-90"}}},
        {"−90-450", {ErrorKind::GapNotPositive, {"−90"}}},
        {"450--90", {ErrorKind::GapNotPositive, {"-90"}}},
        {"450, -90", {ErrorKind::GapNotPositive, {"-90"}}},
        {"90-many", {ErrorKind::GapNotAnAngle, {"many"}}},
        {"90-270-…", {ErrorKind::GapNotAnAngle, {"…"}}},
        {"720/7-1800/7", {ErrorKind::GapNotAnAngle, {"720/7"}}},
        {"720⁄7-1800⁄7", {ErrorKind::GapNotAnAngle, {"720⁄7"}}},
        {"90-999999999", {ErrorKind::GapNotAnAngle, {"999999999"}}},
        {"90-nan", {ErrorKind::GapNotAnAngle, {"nan"}}},
    };
    for (const auto &[gaps, error] : rows)
        EXPECT_EQ(refusalOf(fourWith(&EngineText::gaps, gaps)), error) << gaps;
    EXPECT_EQ(refusalOf(fourWith(&EngineText::gaps, "90,270,90,270"), DecimalMark::Comma),
              (Error{ErrorKind::GapNotAnAngle, {"90,270,90,270"}}));
}

TEST(Design, RefusesBadNumbering)
{
    const std::pair<const char *, Error> rows[] = {
        {"1 2 3 4", {ErrorKind::BanksForLayout, {"1", "2"}}},       {"1 2 / 3 / 4", {ErrorKind::BanksForLayout, {"3", "2"}}},
        {"1 2 / 3", {ErrorKind::CylinderLabelCount, {"3", "4"}}},   {"1 2 3 / 4", {ErrorKind::CylinderLabelCount, {"3", "2"}}},
        {"1 2 3 4 /", {ErrorKind::CylinderLabelCount, {"4", "2"}}}, {"1 2 / 3 2", {ErrorKind::CylinderLabelTwice, {"2"}}},
        {"a 2 / 3 A", {ErrorKind::CylinderLabelTwice, {"A"}}},      {"1 2 / 3 12345", {ErrorKind::TextTooLong, {"5", "4"}}},
        {"1 2 / 3 #4", {ErrorKind::TextLeftOver, {"#4"}}},          {"1 2 / 3 \xff", {ErrorKind::TextLeftOver, {"\xff"}}},
    };
    for (const auto &[numbering, error] : rows)
        EXPECT_EQ(refusalOf(vee4With(&EngineText::numbering, numbering)), error) << numbering;
    EXPECT_EQ(refusalOf(fourWith(&EngineText::numbering, "1 2 / 3 4")), (Error{ErrorKind::BanksForLayout, {"2", "1"}}));
}

TEST(Design, RefusesBadValveOrder)
{
    const std::pair<const char *, Error> rows[] = {
        {"EII", {ErrorKind::ValveOrderLength, {"3", "4"}}},
        {"EIIEE", {ErrorKind::ValveOrderLength, {"5", "4"}}},
        {"/", {ErrorKind::ValveOrderLength, {"0", "4"}}},
        {"EIIE/EII", {ErrorKind::ValveOrderLength, {"3", "4"}}},
        {"EIIE/EIIE/EIIE", {ErrorKind::BanksForLayout, {"3", "2"}}},
        {"EIXE", {ErrorKind::ValveOrderLetter, {"X"}}},
        {"EIxE", {ErrorKind::ValveOrderLetter, {"x"}}},
        {"EIéE", {ErrorKind::ValveOrderLetter, {"é"}}},
        {"EIEE", {ErrorKind::ValveOrderCount, {"1", "3", "2"}}},
        {"EIIE/IIIE", {ErrorKind::ValveOrderCount, {"3", "1", "2"}}},
        // as many of each, but two intakes stand on the first cylinder
        {"IIEE", {ErrorKind::ValveOrderCount, {"2", "0", "1"}}},
    };
    for (const auto &[valves, error] : rows)
        EXPECT_EQ(refusalOf(vee4With(&EngineText::valveOrder, valves)), error) << valves;
}

TEST(Design, RefusesAMegabyteUnread)
{
    const Error tooLong{ErrorKind::TextTooLong, {"1000000", "1000"}};
    const std::string million(1'000'000, '1');
    for (auto field : {&EngineText::firingOrder, &EngineText::gaps, &EngineText::numbering, &EngineText::valveOrder, &EngineText::valves,
                       &EngineText::barring})
        EXPECT_EQ(refusalOf(fourWith(field, million)), tooLong);
    EngineText text = fourText();
    text.cam.checkLift = million;
    EXPECT_EQ(refusalOf(text), tooLong);
}

} // namespace design_tests
} // namespace asleft
