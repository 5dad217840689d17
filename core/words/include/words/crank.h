#pragma once

#include <shop/outlook.h>

#include <QString>

#include <optional>

namespace asleft {

// Where the crank stands, how it is turned, and the plan it is turned by.

QString crankPositionName(const EngineDesign &design, CrankPosition place);   ///< "No. 1 on compression"
QString crankPositionInText(const EngineDesign &design, CrankPosition place); ///< "no. 1 on compression"
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

} // namespace asleft
