// The people of the shop, what they measure with, and how they decide.
#include "support.h"

namespace asleft {
namespace workshop_tests {

class TheWorkshop : public WorkTest {};

TEST_F(TheWorkshop, PeopleAreKnownByTheirInitials)
{
    const PersonId marta = need(addPerson(*garage, " M.K. ", "Marta"));
    const PersonId tom = need(addPerson(*garage, "T.B.", ""));
    EXPECT_NE(marta, tom);
    EXPECT_EQ(need(addPerson(*garage, "M.K.", "Somebody else")), marta);
    EXPECT_EQ(need(people(*garage)), (std::vector<Person>{{marta, "M.K.", "Marta"}, {tom, "T.B.", ""}}));
    EXPECT_EQ(refusal(addPerson(*garage, " ", "Nobody")), ErrorKind::NameMissing);
}

TEST_F(TheWorkshop, LeavesAreStoredSmallestFirst)
{
    const ToolId id = need(addFeelerSet(*garage, "Set", " 0.10 0.05 mm ", LengthUnit::Millimetre));
    EXPECT_EQ(refusal(addFeelerSet(*garage, "Set", "0.10 x", LengthUnit::Millimetre)), ErrorKind::LeavesUnread);
    EXPECT_EQ(refusal(addFeelerSet(*garage, "", "0.10", LengthUnit::Millimetre)), ErrorKind::NameMissing);
    const auto sets = need(tools(*garage));
    ASSERT_EQ(sets.size(), 1U);
    EXPECT_EQ(sets[0].id, id);
    EXPECT_EQ(sets[0].kind, ToolKind::FeelerSet);
    EXPECT_EQ(sets[0].leavesText, "0.10 0.05 mm");
    EXPECT_EQ(sets[0].leaves, (std::vector{length("0.05"), length("0.10")}));
    EXPECT_FALSE(sets[0].permissibleError);
}

TEST_F(TheWorkshop, GaugesAreStoredAsTyped)
{
    const ToolId dial = need(addGauge(*garage, {ToolKind::DialGauge, " Dial ", " 0.015 mm ", "0.01"}));
    const ToolId micrometer = need(addGauge(*garage, {ToolKind::Micrometer, "Micrometer", "", "", LengthUnit::Inch}));
    const auto known = need(tools(*garage));
    ASSERT_EQ(known.size(), 2U);
    EXPECT_EQ(known[0], (Tool{.id = dial,
                              .name = "Dial",
                              .leavesText = {},
                              .leaves = {},
                              .kind = ToolKind::DialGauge,
                              .permissibleError = length("0.015 mm"),
                              .resolution = length("0.01")}));
    EXPECT_EQ(known[1].id, micrometer);
    EXPECT_EQ(known[1].kind, ToolKind::Micrometer);
    EXPECT_FALSE(known[1].permissibleError) << "nobody gave it";
    EXPECT_FALSE(known[1].resolution);
}

TEST_F(TheWorkshop, AGaugesUnitIsThatOfItsBareNumbers)
{
    need(addGauge(*garage, {ToolKind::DialGauge, "Dial", "1", "0.5", LengthUnit::Thou}));
    EXPECT_EQ(need(tools(*garage)).at(0).permissibleError->value, thou(1));
}

TEST_F(TheWorkshop, BadGaugesStoreNothing)
{
    int told = 0;
    QObject::connect(garage.get(), &Garage::changed, [&] { ++told; });
    EXPECT_EQ(refusal(addGauge(*garage, {ToolKind::DialGauge, " ", "", ""})), ErrorKind::NameMissing);
    EXPECT_EQ(refusal(addGauge(*garage, {ToolKind::DialGauge, std::string(201, 'x'), "", ""})), ErrorKind::TextTooLong);
    EXPECT_EQ(refusal(addGauge(*garage, {ToolKind::DialGauge, "Dial", "little", ""})), ErrorKind::NotANumber);
    EXPECT_EQ(refusal(addGauge(*garage, {ToolKind::DialGauge, "Dial", "", "-0.01"})), ErrorKind::NegativeValue);
    EXPECT_TRUE(need(tools(*garage)).empty());
    EXPECT_EQ(told, 0);
}

TEST_F(TheWorkshop, DecidesSimplyUntilItSaysOtherwise)
{
    std::vector<Change::What> told;
    QObject::connect(garage.get(), &Garage::changed, [&](const Change &change) { told.push_back(change.what); });
    EXPECT_EQ(need(decisionRule(*garage)), DecisionRule::Simple);
    need(setDecisionRule(*garage, DecisionRule::Simple));
    EXPECT_TRUE(told.empty()) << "that was the rule already";
    need(setDecisionRule(*garage, DecisionRule::WithUncertainty));
    EXPECT_EQ(told, std::vector{Change::What::Rules});
    garage.reset();
    garage = openedBy("bench");
    EXPECT_EQ(need(decisionRule(*garage)), DecisionRule::WithUncertainty);
    need(setDecisionRule(*garage, DecisionRule::Simple));
    EXPECT_EQ(need(decisionRule(*garage)), DecisionRule::Simple);
}

} // namespace workshop_tests
} // namespace asleft
