#pragma once

#include <draw/band_scale.h>
#include <work/job_book.h>

#include <QString>

#include <optional>

namespace asleft {

/// What a text is read as.
struct TypedAs {
    LengthUnit unit = LengthUnit::Millimetre; ///< what a length without a unit counts in
    bool turns = false;                       ///< digits alone are turns from zero lash, not a length
    DecimalMark mark = DecimalMark::Point;
};

/// A reading as it was typed, of no point yet: a length, a bracket of two, turns, or one that has no number.
struct TypedReading {
    ReadingForm form = ReadingForm::Exact;
    std::optional<Typed<Length>> value = {};
    std::optional<Typed<Length>> next = {};
    std::optional<Typed<Angle>> turned = {};
    bool specLeaf = false;
};

/// Reads a length, a bracket or turns. A unit of the other kind that is written out is taken literally: `3/4 turn` where a length is
/// asked for, `0.30 mm` where turns are. Refuses what parseReading() and parseTurns() refuse.
Result<TypedReading> readTyped(const QString &text, const TypedAs &as);

/// The same digits in another unit of length; refuses what parse() refuses.
Result<TypedReading> inOtherUnit(const TypedReading &reading, LengthUnit unit, DecimalMark mark);

/// What was typed, in full: "0.28 mm", "0.25 mm goes, 0.30 mm does not", "3/4 turn"; empty for one without a number.
QString typedText(const TypedReading &reading);

ReadingEntry entryOf(const TypedReading &reading, PointId point, Phase phase);

/// The newest bands of what a point is set to where they are lengths; nullptr without.
const SpecBand<Length> *lashBandsOf(const JobFrame &frame, PointId point);

/// What a reading would be worth if it were logged now.
struct Judgement {
    Verdict verdict = Verdict::NoSpec;
    QString words = {};                          ///< "above its band by 0.05 mm"
    QString uncertainty = {};                    ///< "± 0.03 mm", where the shop judges with it and the tool's is known
    QString likelihood = {};                     ///< of one that is too close to call: "92 % likely inside"
    std::optional<ScaleValue> onScale = {};      ///< of a length
    std::optional<ScaleTurns> turnsOnScale = {}; ///< of turns from zero lash
};
Judgement judgementOf(const JobBook &book, const ReadingEntry &entry, EngineCondition condition);
/// What one that was logged is worth.
Judgement judgementOf(const JobFrame &frame, const Judged &judged);

} // namespace asleft
