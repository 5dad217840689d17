// The valves of a cylinder, what else is set there, and how all of it is named and ordered.
#include "engines.h"

namespace asleft {
namespace train_tests {

EngineText fourWithValves(std::string valves)
{
    EngineText text = fourText();
    text.valves = std::move(valves);
    return text;
}

EngineText twoStrokeWithValves(std::string valves)
{
    EngineText text = fourWithValves(std::move(valves));
    text.cycle = Cycle::TwoStroke;
    return text;
}

std::string adjustersOfFirst(const EngineText &text)
{
    const EngineDesign design = made(text);
    auto all = design.adjusters();
    EXPECT_EQ(all.size() % 4, 0U);
    all.resize(all.size() / 4);
    return namesOf(design, all);
}

TEST(Train, ValvesAsTyped)
{
    const struct {
        const char *valves;
        int intakes, exhausts;
        const char *writtenBack;
    } rows[] = {
        {"", 1, 1, ""},     {"  ", 1, 1, ""},     {"2", 1, 1, ""},      {"3", 2, 1, "3"},     {"4", 2, 2, "4"},
        {"5", 3, 2, "5"},   {"1+1", 1, 1, ""},    {"2+1", 2, 1, "3"},   {"1+2", 1, 2, "1+2"}, {"1 + 3", 1, 3, "1+3"},
        {"3+2", 3, 2, "5"}, {"2+3", 2, 3, "2+3"}, {"1+4", 1, 4, "1+4"}, {"3+1", 3, 1, "3+1"}, {" 4 ", 2, 2, "4"},
    };
    for (const auto &row : rows) {
        const EngineDesign design = made(fourWithValves(row.valves));
        EXPECT_EQ(design.train.intakes, row.intakes) << row.valves;
        EXPECT_EQ(design.train.exhausts, row.exhausts) << row.valves;
        EXPECT_EQ(describeDesign(design).valves, row.writtenBack) << row.valves;
    }
}

TEST(Train, ATwoStrokeHasExhaustsAlone)
{
    const struct {
        const char *valves;
        int exhausts;
        const char *writtenBack;
    } rows[] = {{"", 2, ""}, {"2", 2, ""}, {"3", 3, "3"}, {"4", 4, "4"}, {"0+4", 4, "4"}, {"0+2", 2, ""}, {"0+1", 1, "0+1"}};
    for (const auto &row : rows) {
        const EngineDesign design = made(twoStrokeWithValves(row.valves));
        EXPECT_EQ(design.train.intakes, 0) << row.valves;
        EXPECT_EQ(design.train.exhausts, row.exhausts) << row.valves;
        EXPECT_EQ(describeDesign(design).valves, row.writtenBack) << row.valves;
    }
}

TEST(Train, RefusesValvesNoEngineHas)
{
    for (const char *valves : {"1", "6", "0", "0+2", "2+0", "3+3", "4+1", "1+5", "4+", "+4", "2+2+1", "two", "2.5", "-2", "+",
                               "2+1 exhaust", "é", "99999999999999999999", "2/2"})
        EXPECT_EQ(refusalOf(fourWithValves(valves)), (Error{ErrorKind::ValvesACylinder, {valves}})) << valves;
    for (const char *valves : {"1", "5", "2+2", "0+5", "0+0", "1+1", "-1+2"})
        EXPECT_EQ(refusalOf(twoStrokeWithValves(valves)), (Error{ErrorKind::ValvesACylinder, {valves}})) << valves;
}

TEST(Train, ABridgeOpensAPair)
{
    const struct {
        const char *valves;
        int intakeLashes, exhaustLashes;
    } rows[] = {{"4", 1, 1}, {"5", 3, 1}, {"2+1", 1, 1}, {"1+2", 1, 1}, {"1+4", 1, 2}};
    for (const auto &row : rows) {
        EngineText text = fourWithValves(row.valves);
        text.bridged = true;
        const EngineDesign design = made(text);
        EXPECT_EQ(design.train.lashes(Side::Intake), row.intakeLashes) << row.valves;
        EXPECT_EQ(design.train.lashes(Side::Exhaust), row.exhaustLashes) << row.valves;
        EXPECT_EQ(design.train.isBridged(Side::Intake), design.train.intakes == 2) << row.valves;
        EXPECT_EQ(made(describeDesign(design)), design) << row.valves;
    }
    EngineText four = twoStrokeWithValves("4");
    four.bridged = true;
    EXPECT_EQ(made(four).train.lashes(Side::Exhaust), 2);
    EXPECT_EQ(made(four).train.lashes(Side::Intake), 0);
    EXPECT_FALSE(made(four).train.isBridged(Side::Intake));
}

TEST(Train, RefusesABridgeWithoutAPair)
{
    for (const char *valves : {"", "2", "1+3", "3+1"}) {
        EngineText text = fourWithValves(valves);
        text.bridged = true;
        EXPECT_EQ(refusalOf(text), (Error{ErrorKind::BridgeWithoutPair, {}})) << valves;
    }
    EngineText three = twoStrokeWithValves("3");
    three.bridged = true;
    EXPECT_EQ(refusalOf(three), (Error{ErrorKind::BridgeWithoutPair, {}}));
}

TEST(Train, BridgeScrewsOnlyWithBridges)
{
    EngineText text = fourWithValves("4");
    text.bridgeScrews = true;
    const EngineDesign design = made(text);
    EXPECT_FALSE(design.train.bridgeScrews);
    EXPECT_EQ(design, made(fourWithValves("4")));
}

TEST(Train, AdjustersInOrderByTheirShortNames)
{
    EngineText text = fourWithValves("");
    EXPECT_EQ(adjustersOfFirst(text), "I1 E1");
    text.injectors = text.decompressors = true;
    EXPECT_EQ(adjustersOfFirst(text), "I1 E1 D1 J1");
    text.valves = "4";
    EXPECT_EQ(adjustersOfFirst(text), "I1a I1b E1a E1b D1 J1");
    text.bridged = true;
    EXPECT_EQ(adjustersOfFirst(text), "I1 E1 D1 J1");
    text.bridgeScrews = true;
    EXPECT_EQ(adjustersOfFirst(text), "BI1 I1 BE1 E1 D1 J1");
    text.valves = "5"; // three intakes, which no bridge pairs
    EXPECT_EQ(adjustersOfFirst(text), "I1a I1b I1c BE1 E1 D1 J1");
    text.valves = "1+4";
    EXPECT_EQ(adjustersOfFirst(text), "I1 BE1a E1a BE1b E1b D1 J1");
    text.valves = "0+4";
    text.cycle = Cycle::TwoStroke;
    text.decompressors = false;
    EXPECT_EQ(adjustersOfFirst(text), "BE1a E1a BE1b E1b J1");
}

TEST(Train, OneNameForEveryAdjuster)
{
    EngineText text = engineText(Layout::Vee, 4, "A1-B1-A2-B2");
    text.numbering = "A1 A2 / B1 B2";
    text.valves = "4";
    text.bridged = text.bridgeScrews = text.injectors = text.decompressors = true;
    const EngineDesign design = made(text);
    EXPECT_EQ(shortName(design, bridgeScrew(design, "B2", Side::Intake)), "BIB2");
    EXPECT_EQ(shortName(design, decompressor(design, "A2")), "DA2");
    EXPECT_EQ(shortName(design, injector(design, "A2")), "JA2");
    const auto all = design.adjusters();
    ASSERT_EQ(all.size(), 24U);
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            EXPECT_NE(shortName(design, all[i]), shortName(design, all[j]));
}

TEST(ValveOrder, LettersCountLashes)
{
    EngineText text = engineText(Layout::InLine, 2, "1-2");
    text.valves = "3";
    text.valveOrder = "IEI IIE";
    const EngineDesign three = made(text);
    EXPECT_EQ(three.valveOrder[0], (std::vector{Side::Intake, Side::Exhaust, Side::Intake, Side::Intake, Side::Intake, Side::Exhaust}));
    EXPECT_EQ(made(describeDesign(three)), three);

    text.valves = "4";
    text.bridged = true; // one letter a pair
    text.valveOrder = "EI IE";
    EXPECT_EQ(made(text).valveOrder[0].size(), 4U);
    text.bridged = false;
    EXPECT_EQ(refusalOf(text), (Error{ErrorKind::ValveOrderLength, {"4", "8"}}));

    text.valves = "0+2";
    text.cycle = Cycle::TwoStroke;
    text.valveOrder = "EEEE";
    EXPECT_EQ(made(text).valveOrder[0], std::vector<Side>(4, Side::Exhaust));
}

TEST(ValveOrder, EachCylindersStretchHasItsOwn)
{
    EngineText text = engineText(Layout::InLine, 2, "1-2");
    text.valves = "3";
    const std::pair<const char *, Error> rows[] = {
        {"IIE IE", {ErrorKind::ValveOrderLength, {"5", "6"}}},
        {"IIE IEE", {ErrorKind::ValveOrderCount, {"3", "3", "4+2"}}},
        {"III IEE", {ErrorKind::ValveOrderCount, {"3", "0", "2+1"}}}, // four and two, but not by cylinders
        {"EEI III", {ErrorKind::ValveOrderCount, {"1", "2", "2+1"}}},
    };
    for (const auto &[order, error] : rows) {
        text.valveOrder = order;
        EXPECT_EQ(refusalOf(text), error) << order;
    }
}

TEST(ValveOrder, WithoutOneTheIntakesOfACylinderStandFirst)
{
    EngineText text = engineText(Layout::InLine, 2, "1-2");
    text.valves = "3";
    const EngineDesign three = made(text);
    EXPECT_EQ(three.valveRows, ValveRows::Two);
    EXPECT_EQ(three.valveOrder[0], (std::vector{Side::Intake, Side::Intake, Side::Exhaust, Side::Intake, Side::Intake, Side::Exhaust}));
}

TEST(BarringGear, TeethAsTyped)
{
    EngineText text = fourText();
    EXPECT_EQ(made(text).barring, std::nullopt);
    for (const char *typedTeeth : {"132/11", " 132 / 11 "}) {
        text.barring = typedTeeth;
        EXPECT_EQ(made(text).barring, (Barring{132, 11})) << typedTeeth;
        EXPECT_EQ(describeDesign(made(text)).barring, "132/11") << typedTeeth;
    }
    text.barring = "1000/1";
    EXPECT_EQ(made(text).barring, (Barring{1000, 1}));
    for (const char *bad : {"132", "132/", "/11", "11/132", "11/11", "1001/11", "132/0", "132/-11", "132/11/2", "132.5/11", "ring/pinion",
                            "/", "132:11", "99999999999999999999/2"}) {
        text.barring = bad;
        EXPECT_EQ(refusalOf(text), (Error{ErrorKind::BarringUnread, {bad}})) << bad;
    }
}

} // namespace train_tests
} // namespace asleft
