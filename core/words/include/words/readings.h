#pragma once

#include <shop/acts.h>
#include <shop/entry.h>

#include <QString>

namespace asleft {

// Readings and their verdicts.

QString phaseName(Phase phase);             ///< "as found"
QString disturbanceName(Disturbance cause); ///< "the head was tightened again"
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

} // namespace asleft
