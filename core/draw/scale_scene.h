#pragma once

#include "scale_range.h"

#include <draw/palette.h>

#include <measure/judge.h>

#include <QRectF>
#include <QString>

class QPainter;

namespace asleft {

/// A figure under the scale: at its place, in the unit of the scale. Empty text: none.
struct ScaleFigure {
    QString text;
    double at = 0;
};

/// What is on a scale, whatever it measures.
struct ScaleScene {
    ScaleRange range;
    bool hasBand = false;
    ScaleEnds band;
    ScaleFigure low;
    ScaleFigure nominal;
    ScaleFigure high;

    bool hasValue = false;
    ScaleEnds value;
    bool eitherSide = false; ///< a value with its uncertainty on either side
    Verdict verdict = Verdict::NoSpec;
    QString verdictWords;
    QString otherUnit; ///< the value in the other unit system
};

void paintScene(QPainter &painter, const QRectF &area, const ScaleScene &scene, const Ink &ink);

} // namespace asleft
