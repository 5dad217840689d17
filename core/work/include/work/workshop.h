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

/// A torque wrench as a person types it.
struct TorqueWrenchText {
    ToolKind kind = ToolKind::TorqueSet; ///< or TorqueRead
    std::string name;
    std::string least; ///< the range marked on it
    std::string most;
    TorqueUnit unit = TorqueUnit::NewtonMetre;
    std::string deviation;      ///< permissible, percent of the reading; may be empty: by ISO 6789
    std::string calibrationDue; ///< 2027-03-31; may be empty
    std::string lever;          ///< from the drive to the grip mark; may be empty
    LengthUnit lengthUnit = LengthUnit::Millimetre;
};
/// Refuses a name or a number that cannot be read, what checkTorqueTool() refuses, and what is no date (DateUnread).
Result<ToolId> addTorqueWrench(Garage &garage, const TorqueWrenchText &text, DecimalMark mark = DecimalMark::Point);

/// An angle gauge, an adapter or a socket as a person types it.
struct FittingText {
    ToolKind kind = ToolKind::AngleGauge; ///< or Adapter, or Socket
    std::string name;
    std::string size;   ///< what it fits; of an adapter or a socket; may be empty
    std::string length; ///< of an adapter: from the middle of the drive to that of the fastener
    LengthUnit unit = LengthUnit::Millimetre;
};
/// Refuses a name or a length that cannot be read, an adapter without a length (NameMissing) or longer than 2 m (AdapterOutOfRange).
Result<ToolId> addFitting(Garage &garage, const FittingText &text, DecimalMark mark = DecimalMark::Point);
/// The day it is where the shop is: what calibration is due or overdue by.
std::chrono::sys_days localDay(Moment moment);

/// Reads 2027-03-31. Refuses with DateUnread.
Result<std::chrono::sys_days> parseDay(std::string_view text);

/// A torque wrench came back from calibration and is next due on this day (2027-03-31); empty: it is not known. What was tightened before
/// keeps what was known then. The same day again stores nothing. Refuses a tool there is not (NotFound) or that is no torque wrench
/// (ToolNotForTorque), and what is no date (DateUnread).
Done setCalibrationDue(Garage &garage, ToolId wrench, std::string_view due);

Result<std::vector<Tool>> tools(Garage &garage);

/// The rule readings to come are judged by. Old verdicts keep the one they had. The same rule again stores nothing.
Done setDecisionRule(Garage &garage, DecisionRule rule);
Result<DecisionRule> decisionRule(Garage &garage);

} // namespace asleft
