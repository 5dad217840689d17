#pragma once

#include <draw/palette.h>

#include <engine/design.h>

#include <QList>
#include <QRectF>
#include <QString>

class QPainter;

namespace asleft {

/// As much of an engine as has been typed so far.
struct EngineSketch {
    Layout layout = Layout::InLine;
    QList<QList<QString>> banks; ///< labels along each bank, front first
    QList<QString> firingOrder;  ///< those labels that could be read, in order, each once
    bool complete = false;       ///< the engine is one that designEngine() takes
    Rotation rotation = Rotation::Clockwise;
};

EngineSketch sketchOf(const EngineDesign &design);
/// What can be made of an engine that is still being typed; never fails.
EngineSketch sketchOf(const EngineText &text, DecimalMark mark = DecimalMark::Point);

/// Paints the engine in plan view, front on the left, or a radial one as it is seen from the front: cylinders in their banks with their
/// labels, beside each its place in the firing order, the order as a thin path from cylinder to cylinder, the crank line, and which way
/// it turns. Cylinders not in the order yet are drawn in broken outline.
void paintEngine(QPainter &painter, const QRectF &area, const EngineSketch &sketch, const Ink &ink);

} // namespace asleft
