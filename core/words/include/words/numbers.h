#pragma once

#include <measure/band.h>
#include <measure/parse.h>
#include <measure/temperature.h>

#include <QLocale>
#include <QString>
#include <QStringList>

#include <cstdint>
#include <optional>

namespace asleft {

// Numbers with their units.

/// The mark people of this locale write; for core's parser and formats.
DecimalMark decimalMark(const QLocale &locale = QLocale());

QString unitText(LengthUnit unit);
QStringList lengthUnitTexts(); ///< of all of them, for choosing
QString unitText(TorqueUnit unit);
QString unitText(AngleUnit unit);
/// A typed value in its own words, with its unit: "18 thou".
QString typedText(const Typed<Length> &typed);
QString typedText(const Typed<Torque> &typed);
QString typedText(const Typed<Angle> &typed); ///< "3/4 turn"
/// The exact number in a unit, alone: "0.40".
QString exactNumber(Length value, LengthUnit unit);
/// A converted value, rounded to one decimal more than the unit is read to: "19.7 thou"; to more where it would else have the
/// digits of a limit it stands `beside` and does not equal.
QString convertedText(Length value, LengthUnit unit, std::optional<Length> beside = std::nullopt);
/// The number of it alone: "19.7".
QString convertedNumber(Length value, LengthUnit unit, std::optional<Length> beside = std::nullopt);
/// What is known of a value whose ends are these texts: one text for a point, "0.25 to 0.30 mm", or one-sided where an end is empty.
QString intervalText(const QString &low, const QString &high, bool isPoint);
/// A torque that was reckoned, in as few figures as say it: "32 N·m", "23.6 lbf·ft"; in as many as tell it from a limit it stands `beside`
/// and does not equal.
QString torqueText(Torque value, TorqueUnit unit, std::optional<Torque> beside = std::nullopt);
/// The same without its unit.
QString torqueNumber(Torque value, TorqueUnit unit, std::optional<Torque> beside = std::nullopt);
/// "32 ± 4 N·m", "28 to 36 N·m", "at least 20 N·m": a band of torque as it is printed, both systems where there are two.
QString torqueBandText(const SpecBand<Torque> &bands);
/// "40 mm": as few figures as say it.
QString shortLengthText(Length value, LengthUnit unit);
/// The unit a value is repeated in for people of the other system: thou for mm, mm for in and thou.
LengthUnit otherUnit(LengthUnit unit);
/// The number alone, with as many decimals more than the unit is read to as make it differ from the limit it stands beside:
/// never equal digits beside "low" or "high".
QString numberBeside(Length value, Length limit, LengthUnit unit);
/// An amount that is never shown as nothing: "0.05 mm", "0.002 mm".
QString amountText(Length amount, LengthUnit unit);
/// "0.35 to 0.45 mm", in the unit it is printed in.
QString bandText(const Band<Length> &band);
/// In another unit, its limits rounded inward.
QString bandTextIn(const Band<Length> &band, LengthUnit unit);
QString bandTextIn(const Band<Torque> &band, TorqueUnit unit);
QString bandText(const Band<Torque> &band);
/// Both printed bands: "0.30 to 0.40 mm (0.012 to 0.016 in)".
QString bandText(const SpecBand<Length> &bands);
QString bandText(const SpecBand<Torque> &bands);
QString bandText(const Band<Angle> &band);
QString bandText(const SpecBand<Angle> &bands);
/// An angle a screw is turned by, in a unit: "3/4 turn", "1 1/2 turns", "270°".
QString turnedText(Angle value, AngleUnit unit);
/// "± 0.03 mm": never shown as nothing.
QString uncertaintyText(Length uncertainty, LengthUnit unit);
/// "92 % likely inside", as it is said of a value too close to call; never 0 % or 100 %.
QString likelihoodText(double probability);
QString temperatureText(const TypedTemperature &temperature);
QString sinceRunText(std::int64_t minutes); ///< "3 h after it ran"

/// "360°", with one decimal where it is not whole.
QString degreesText(Angle angle);

} // namespace asleft
