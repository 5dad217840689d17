#pragma once

#include <base/error.h>
#include <shop/entry.h>
#include <shop/outlook.h>
#include <shop/vehicle_number.h>

#include <QLocale>
#include <QString>
#include <QStringList>

#include <chrono>
#include <optional>

namespace asleft {

// Failures

/// What is wrong, what was kept, what to do.
QString sentence(const Error &error);

// Numbers and units

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

// Times

/// "16:12" on the same day, "14 Nov" in the same year, else "14 Nov 2019"; in local time.
QString momentText(Moment at, Moment now);
/// The whole date and time.
QString momentText(Moment at);
/// "31 Mar 2027".
QString dateText(std::chrono::sys_days day);

// Setting points

QString sideName(Side side);                                        ///< "intake"
QString pointName(const EngineDesign &design, AdjusterRef valve);   ///< "Intake 2", at the head of a line
QString pointInText(const EngineDesign &design, AdjusterRef valve); ///< "intake 2", within a sentence
QString pointShort(const EngineDesign &design, AdjusterRef valve);  ///< "I2"
QString pointName(const JobFrame &frame, PointId point);
QString pointInText(const JobFrame &frame, PointId point);
QString pointShort(const JobFrame &frame, PointId point);

// The crank

QString placeName(const EngineDesign &design, CrankPlace place);   ///< "No. 1 on compression"
QString placeInText(const EngineDesign &design, CrankPlace place); ///< "no. 1 on compression"
/// A position of a plan: its place, or "37° after no. 3 on compression" where it stands between the marks.
QString positionName(const EngineDesign &design, const PlanPosition &position);
QString positionInText(const EngineDesign &design, const PlanPosition &position);
/// How a position that is no dead centre is found: "turn until exhaust 3 just begins to open"; else empty.
QString findingSentence(const EngineDesign &design, const PlanPosition &position);
/// "37° after no. 3 on compression"; "Unknown" where nobody knows.
QString crankName(const EngineDesign &design, std::optional<Angle> crank);
QString crankInText(const EngineDesign &design, std::optional<Angle> crank);
/// How the crank of a job stands and how that is known: "confirmed 16:05", "turned there 16:05", "nobody has said yet".
QString crankKnown(const JobState &state, Moment now);
/// How to tell the stroke of a cylinder at its mark: what to look at, or that looseness proves nothing.
QString strokeCheckSentence(const EngineDesign &design, const StrokeCheck &check);
/// "Turn 360° in the normal direction, clockwise seen from the front."
QString travelSentence(const EngineDesign &design, Angle from, Angle to);
/// Where the engine is turned by a pinion on the ring gear: which way the pinion goes and how many turns; else empty.
QString pinionSentence(const EngineDesign &design, Angle from, Angle to);
/// The standing advice for one that went past its mark.
QString overshotSentence();
QString rotationName(Rotation rotation); ///< "clockwise seen from the front"
QString layoutName(Layout layout);
QString planWayName(PlanWay way);
QString planWayNote(PlanWay way); ///< one sentence: what is done, for choosing
QString crankMarksName(CrankMarks marks);
/// What to mind before working by a plan: points by rule that geometry is against, points unreached; empty where there is nothing.
QString planWarning(const EngineDesign &design, const CrankPlan &plan);
QString cycleName(Cycle cycle);
/// Where the plan comes from: the manual's page, or "generated" with how it was chosen, and whether the cam is assumed.
QString planSource(const EngineDesign &design, const CrankPlan &plan);
/// The margin of a point at a position: "80° clear"; for a doubtful one, what to question.
QString marginText(const EngineDesign &design, const PlanPoint &point);

// Specs

QString conditionName(EngineCondition condition); ///< "cold"
QString subjectName(SpecSubject subject);         ///< "Intake lash"
QString certaintyName(Certainty certainty);       ///< "read in the manual"
/// "0.35 to 0.45 mm cold · Workshop Manual p. 41"; says where it was not read in a manual or its tolerance is assumed.
QString specLine(const Spec &spec);
/// Only where it comes from: "Workshop Manual p. 41", "from memory".
QString sourceText(const SpecSource &source);

// Readings

QString phaseName(Phase phase);              ///< "as found"
QString disturbanceName(Disturbance cause);  ///< "the head was tightened again"
QString toolKindName(ToolKind kind);         ///< "feeler set"
QString adjusterKindName(AdjusterKind kind); ///< "screw and lock nut"
QString decisionRuleName(DecisionRule rule);
/// What the engine was like when a reading was taken: "cold, 20 °C, 14 h after it ran".
QString conditionText(const ReadingFact &reading);
/// "0.016 mm is far from what the manual asks; 0.016 in would be inside." with what to do about it.
QString wrongUnitQuestion(const ReadingText &reading, LengthUnit meant, const SpecBand<Length> &bands);
/// The same of a band just typed: "0.30 in is more than any lash; 0.30 mm?"
QString wrongUnitQuestion(const Band<Length> &lash, LengthUnit meant);
/// "18 thou", "loose on 0.40 mm", "between 0.25 and 0.30 mm", "by feel".
QString readingText(const ReadingFact &reading);
QString verdictName(Verdict verdict); ///< "inside", "below its band"
/// The verdict with its amount: "above its band by 0.05 mm"; for a reading not comparable, why not.
QString verdictText(const ReadingFact &reading, Verdict verdict, const Spec *spec);
QString verdictText(const Interval<Length> &interval, Verdict verdict, const SpecBand<Length> &bands, LengthUnit unit);
/// "above its band by 1/8 turn", of a screw turned on from zero lash past the limit it broke.
QString outsideText(Verdict verdict, Angle turned, Angle limit, AngleUnit unit);

// The job

QString gateName(Gate gate); ///< "before turning the crank"

/// An open item: a line and the small line under it, which may be empty.
struct OpenWords {
    QString title;
    QString note;
};
OpenWords openWords(const OpenItem &item, const JobState &state, Moment now);

/// What to do now: "Exhaust 3: above its band. Turn in about 1/10, lock, feel 0.40 again".
QString nextActSentence(const NextAct &next, const JobState &state, const Tool *leaves = nullptr);

/// What an act was: "left intake 1 at 0.30 mm, inside"; also for the tooltip of undo.
QString actText(const Act &act, const JobState &state);

/// Where the job was left: last act, open nuts, the crank, the next act. One line each.
QStringList resumeLines(const JobState &state, Moment now, const Tool *leaves = nullptr);

/// "3 812 h": as typed, with its unit.
QString meterText(const MeterReading &reading);
/// "61 204 mi over two meters": what the vehicle did in all, where its meter was replaced; else empty.
QString meterTotalText(const std::vector<MeterReading> &readings);
/// What the check digit says of a vehicle number, and what was kept; empty where nothing was typed.
QString vehicleNumberText(const VehicleNumber &number);
/// "The crank stands until 16:25: hydraulic tappets are bleeding down."
QString bleedDownText(Moment until, Moment now);
/// That this garage may only be read, why that may be, and what to do.
QString readOnlySentence();
/// What another seat has just done to a point: "Meanwhile T.B. left intake 1 at 0.30 mm at another seat."
QString otherSeatText(const Act &act, const JobState &state);

// Cautions

struct CautionWords {
    QString title;
    QString sentence;
};
CautionWords cautionWords(Caution caution);
/// The manual, local codes and licensed practice go before this program.
QString standingSentence();

} // namespace asleft
