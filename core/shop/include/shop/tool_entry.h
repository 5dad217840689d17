#pragma once

#include <shop/entry.h>
#include <shop/things.h>

#include <map>

// Tools as a person types them: what each text means, and what of it cannot be taken, field by field. A slip in one field hides none in
// another. The ids of the tools are not meant.
namespace asleft {

/// A feeler set as it is typed.
struct FeelerText {
    std::string name;
    std::string leaves; ///< as parseLeaves() reads them
    LengthUnit unit = LengthUnit::Millimetre;
};
enum class FeelerField { Name, Leaves };
struct FeelerReading {
    Tool tool; ///< as far as it can be read
    std::map<FeelerField, Error> refusals;
};
FeelerReading readFeelerSet(const FeelerText &text, DecimalMark mark = DecimalMark::Point);

/// A dial gauge or a micrometer as it is typed.
struct GaugeText {
    ToolKind kind = ToolKind::DialGauge;
    std::string name;
    std::string permissibleError; ///< the most it may be off, from its card; may be empty
    std::string resolution;       ///< what it is read to; may be empty
    LengthUnit unit = LengthUnit::Millimetre;
};
enum class GaugeField { Name, PermissibleError, Resolution };
struct GaugeReading {
    Tool tool; ///< as far as it can be read
    std::map<GaugeField, Error> refusals;
};
/// \pre the kind is DialGauge or Micrometer
GaugeReading readGauge(const GaugeText &text, DecimalMark mark = DecimalMark::Point);

/// A torque wrench as it is typed.
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
enum class TorqueWrenchField { Name, Least, Most, Deviation, CalibrationDue, Lever };
struct TorqueWrenchReading {
    Tool tool; ///< as far as it can be read
    std::map<TorqueWrenchField, Error> refusals;
};
/// Refuses what checkTorqueTool() refuses too, a range that is none at its end. \pre the kind is TorqueSet or TorqueRead
TorqueWrenchReading readTorqueWrench(const TorqueWrenchText &text, DecimalMark mark = DecimalMark::Point);

/// An angle gauge, an adapter or a socket as it is typed.
struct FittingText {
    ToolKind kind = ToolKind::AngleGauge; ///< or Adapter, or Socket
    std::string name;
    std::string size;   ///< what it fits; of an adapter or a socket; may be empty
    std::string length; ///< of an adapter: from the middle of the drive to that of the fastener
    LengthUnit unit = LengthUnit::Millimetre;
};
enum class FittingField { Name, Size, Length };
struct FittingReading {
    Tool tool; ///< as far as it can be read
    std::map<FittingField, Error> refusals;
};
/// Reads what is asked of such a tool. Refuses an adapter without a length (NameMissing) or longer than 2 m (AdapterOutOfRange).
/// \pre the kind is AngleGauge, Adapter or Socket
FittingReading readFitting(const FittingText &text, DecimalMark mark = DecimalMark::Point);

/// Reads 2027-03-31. Refuses with DateUnread.
Result<std::chrono::sys_days> parseDay(std::string_view text);
/// When a calibration is due: nothing where none is typed.
Result<std::optional<std::chrono::sys_days>> readCalibrationDue(std::string_view text);

} // namespace asleft
