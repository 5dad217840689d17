#pragma once

#include <draw/palette.h>

#include <measure/judge.h>

#include <QRectF>
#include <QString>

#include <optional>

class QPainter;

namespace asleft {

/// The value on the scale, as it is typed or as it was logged.
struct ScaleValue {
    Interval<Length> interval;
    LengthUnit unit = LengthUnit::Millimetre; ///< the unit it was typed in
    Verdict verdict = Verdict::NoSpec;
};

/// The same of a screw turned on from zero lash.
struct ScaleTurns {
    Angle turned;
    AngleUnit unit = AngleUnit::Turn; ///< the unit it was typed in
    Verdict verdict = Verdict::NoSpec;
};

/// The height the scale wants: a line of words, the bar, a line of figures.
constexpr double bandScaleHeight = 72;

/// Paints the scale of the reading bar into `area`: the band to scale, its limits and nominal in figures under it, the value as a mark (a
/// value with its uncertainty as a mark between two thin ends, an interval as a block, one-sided with an arrow to its open side), a wedge
/// where it lies outside, the verdict in words on the left above and the value in the other unit system on the right above. Without a
/// band only the value. Figures never overlap: those that have no room are left out, the nominal first. Nothing is judged here.
void paintBandScale(QPainter &painter, const QRectF &area, const SpecBand<Length> *spec, LengthUnit unit,
                    const std::optional<ScaleValue> &value, const Ink &ink);
void paintBandScale(QPainter &painter, const QRectF &area, const SpecBand<Angle> *spec, AngleUnit unit,
                    const std::optional<ScaleTurns> &value, const Ink &ink);

} // namespace asleft
