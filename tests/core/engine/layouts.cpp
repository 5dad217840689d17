#include "engines.h"

#include <algorithm>

namespace asleft {
namespace layouts_tests {

constexpr Layout everyLayout[] = {Layout::InLine, Layout::Vee, Layout::Flat, Layout::Single, Layout::W, Layout::Radial, Layout::Opposed};

std::vector<std::size_t> bankLengths(const EngineDesign &design)
{
    std::vector<std::size_t> lengths;
    for (const auto &bank : design.banks)
        lengths.push_back(bank.size());
    return lengths;
}

using Lengths = std::vector<std::size_t>;

TEST(Layouts, Ranges)
{
    const struct {
        Layout layout;
        int fewest, most;
        bool evenOnly;
    } rows[] = {
        {Layout::InLine, 1, 12, false}, {Layout::Vee, 2, 24, true},     {Layout::Flat, 2, 16, true},    {Layout::Single, 1, 1, false},
        {Layout::W, 3, 24, false},      {Layout::Radial, 3, 24, false}, {Layout::Opposed, 4, 24, true},
    };
    for (const auto &row : rows) {
        const CylinderRange range = cylinderRange(row.layout);
        EXPECT_EQ(range.fewest, row.fewest);
        EXPECT_EQ(range.most, row.most);
        EXPECT_EQ(range.evenOnly, row.evenOnly);
    }
}

TEST(Layouts, UsualNumberingAlternatesBetweenTheBanks)
{
    EXPECT_EQ(usualNumbering(Layout::Single, 1), "1");
    EXPECT_EQ(usualNumbering(Layout::InLine, 3), "1 2 3");
    EXPECT_EQ(usualNumbering(Layout::Vee, 8), "1 3 5 7 / 2 4 6 8");
    EXPECT_EQ(usualNumbering(Layout::Flat, 2), "1 / 2");
    EXPECT_EQ(usualNumbering(Layout::W, 12), "1 5 9 / 2 6 10 / 3 7 11 / 4 8 12");
    EXPECT_EQ(usualNumbering(Layout::W, 6), "1 4 / 2 5 / 3 6");
    EXPECT_EQ(usualNumbering(Layout::Radial, 9), "1 2 3 4 5 6 7 8 9");
    EXPECT_EQ(usualNumbering(Layout::Radial, 10), "1 3 5 7 9 / 2 4 6 8 10");
    EXPECT_EQ(usualNumbering(Layout::Opposed, 8), "1 5 / 2 6 / 3 7 / 4 8");
    EXPECT_EQ(usualNumbering(Layout::Opposed, 6), "1 3 5 / 2 4 6");
}

TEST(Layouts, EveryCountThatDividesIsAnEngine)
{
    for (const Layout layout : everyLayout) {
        const CylinderRange range = cylinderRange(layout);
        for (int n = range.fewest - 1; n <= range.most + 1; ++n) {
            const bool allowed = n >= range.fewest && n <= range.most && !(range.evenOnly && n % 2 != 0);
            const auto design = designEngine(engineText(layout, n));
            if (!allowed) {
                ASSERT_FALSE(design.has_value()) << n;
                EXPECT_EQ(design.error().kind, ErrorKind::CylinderCount) << n;
                continue;
            }
            const bool uneven = (layout == Layout::W && n % 4 != 0 && n % 3 != 0) || (layout == Layout::Radial && n > 9 && n % 2 != 0);
            ASSERT_EQ(design.has_value(), !uneven) << n;
            if (uneven) {
                EXPECT_EQ(design.error(), (Error{ErrorKind::RowsUneven, {std::to_string(n), layout == Layout::W ? "3" : "2"}}));
            } else {
                EXPECT_EQ(design->cylinders(), n);
                EXPECT_EQ(bankLengths(*design), Lengths(design->banks.size(), static_cast<std::size_t>(n) / design->banks.size())) << n;
            }
        }
    }
}

TEST(Layouts, TypedNumberingDecidesTheBanks)
{
    const struct {
        Layout layout;
        const char *numbering;
        Lengths banks;
    } rows[] = {
        {Layout::W, "1 2 3 4 / 5 6 7 8 / 9 10 11 12", {4, 4, 4}},      {Layout::W, "1 2 3 / 4 5 6 / 7 8 9 / 10 11 12", {3, 3, 3, 3}},
        {Layout::Radial, "1 2 3 4 5 6 7 8 9 10 11 12", {12}},          {Layout::Radial, "1 2 3 / 4 5 6 / 7 8 9 / 10 11 12", {3, 3, 3, 3}},
        {Layout::Radial, "1 2 3 4 / 5 6 7 8 / 9 10 11 12", {4, 4, 4}}, {Layout::Opposed, "1 2 3 4 5 6 / 7 8 9 10 11 12", {6, 6}},
    };
    for (const auto &row : rows) {
        EngineText text = engineText(row.layout, 12);
        text.numbering = row.numbering;
        const EngineDesign design = made(text);
        EXPECT_EQ(bankLengths(design), row.banks) << row.numbering;
        EXPECT_EQ(made(describeDesign(design)), design) << row.numbering;
    }
}

TEST(Layouts, ElevenInOneRowOfARadial)
{
    EngineText text = engineText(Layout::Radial, 11);
    EXPECT_EQ(refusalOf(text), (Error{ErrorKind::RowsUneven, {"11", "2"}}));
    text.numbering = "1 2 3 4 5 6 7 8 9 10 11";
    EXPECT_EQ(bankLengths(made(text)), Lengths{11});
}

TEST(Layouts, RefusesBanksTheLayoutCannotHave)
{
    const struct {
        Layout layout;
        int cylinders;
        const char *numbering;
        Error error;
    } rows[] = {
        {Layout::Single, 1, "1 / ", {ErrorKind::BanksForLayout, {"2", "1"}}},
        {Layout::W, 4, "1 2 / 3 4", {ErrorKind::BanksForLayout, {"2", "3, 4"}}},
        {Layout::Radial, 5, "1 / 2 / 3 / 4 / 5", {ErrorKind::BanksForLayout, {"5", "1, 2, 3, 4"}}},
        {Layout::Opposed, 6, "1 2 / 3 4 / 5 6", {ErrorKind::BanksForLayout, {"3", "2, 4"}}},
        {Layout::Opposed, 6, "1 2 / 3 4 / 5 / 6", {ErrorKind::RowsUneven, {"6", "4"}}},
        {Layout::W, 10, "1 2 3 4 / 5 6 7 / 8 9 10", {ErrorKind::RowsUneven, {"10", "3"}}},
        // They would divide, but were not typed so.
        {Layout::W, 6, "1 2 3 / 4 5 / 6", {ErrorKind::CylinderLabelCount, {"3", "2"}}},
    };
    for (const auto &row : rows) {
        EngineText text = engineText(row.layout, row.cylinders);
        text.numbering = row.numbering;
        EXPECT_EQ(refusalOf(text), row.error) << row.numbering;
    }
}

TEST(Layouts, ARadialFiresEveryOtherCylinder) // nine in one row, 1-3-5-7-9-2-4-6-8: common practice, no source
{
    const EngineDesign nine = made(engineText(Layout::Radial, 9, "1-3-5-7-9-2-4-6-8"));
    EXPECT_EQ(nine.gaps, std::vector<Angle>(9, degrees(80)));
    EXPECT_EQ(bankLengths(nine), Lengths{9});
}

} // namespace layouts_tests
} // namespace asleft
