#pragma once

#include <shop/entry.h>
#include <work/garage.h>

#include <vector>

// The people of the shop, what they measure with, and how they decide.
namespace asleft {

/// Refuses initials that are empty; the same initials again give the same person back.
Result<PersonId> addPerson(Garage &garage, std::string_view initials, std::string_view name);
Result<std::vector<Person>> people(Garage &garage);

Result<ToolId> addFeelerSet(Garage &garage, std::string_view name, std::string_view leaves, LengthUnit fieldUnit,
                            DecimalMark mark = DecimalMark::Point);

/// A dial gauge or a micrometer as a person types it.
struct GaugeText {
    ToolKind kind = ToolKind::DialGauge;
    std::string name;
    std::string permissibleError; ///< the most it may be off, from its card; may be empty
    std::string resolution;       ///< what it is read to; may be empty
    LengthUnit unit = LengthUnit::Millimetre;
};
/// Refuses a name, an error or a resolution that cannot be read. \pre the kind is not FeelerSet
Result<ToolId> addGauge(Garage &garage, const GaugeText &text, DecimalMark mark = DecimalMark::Point);
Result<std::vector<Tool>> tools(Garage &garage);

/// The rule readings to come are judged by. Old verdicts keep the one they had. The same rule again stores nothing.
Done setDecisionRule(Garage &garage, DecisionRule rule);
Result<DecisionRule> decisionRule(Garage &garage);

} // namespace asleft
