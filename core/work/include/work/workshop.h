#pragma once

#include <shop/tool_entry.h>
#include <work/garage.h>

#include <vector>

// The people of the shop, what they measure with, and how they decide.
namespace asleft {

/// Refuses initials that are empty; the same initials again give the same person back.
Result<PersonId> addPerson(Garage &garage, std::string_view initials, std::string_view name);
Result<std::vector<Person>> people(Garage &garage);

/// Each refuses what reading the text refuses.
Result<ToolId> addFeelerSet(Garage &garage, std::string_view name, std::string_view leaves, LengthUnit fieldUnit,
                            DecimalMark mark = DecimalMark::Point);
Result<ToolId> addGauge(Garage &garage, const GaugeText &text, DecimalMark mark = DecimalMark::Point);
Result<ToolId> addTorqueWrench(Garage &garage, const TorqueWrenchText &text, DecimalMark mark = DecimalMark::Point);
Result<ToolId> addFitting(Garage &garage, const FittingText &text, DecimalMark mark = DecimalMark::Point);

/// The day it is where the shop is: what calibration is due or overdue by.
std::chrono::sys_days localDay(Moment moment);

/// A torque wrench came back from calibration and is next due on this day (2027-03-31); empty: it is not known. What was tightened before
/// keeps what was known then. The same day again stores nothing. Refuses a tool there is not (NotFound) or that is no torque wrench
/// (ToolNotForTorque), and what is no date (DateUnread).
Done setCalibrationDue(Garage &garage, ToolId wrench, std::string_view due);

Result<std::vector<Tool>> tools(Garage &garage);

/// The rule readings to come are judged by. Old verdicts keep the one they had. The same rule again stores nothing.
Done setDecisionRule(Garage &garage, DecisionRule rule);
Result<DecisionRule> decisionRule(Garage &garage);

} // namespace asleft
